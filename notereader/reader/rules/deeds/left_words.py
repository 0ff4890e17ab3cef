"""Whether the word 'left' tells of a tendon that was left as it was, or of a side, a gap, an end or a stump."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.layout.boxes import find_boxes
from notereader.reader.page import Mention
from notereader.reader.rules.cuts.spared import of_a_wound
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_HOW_MUCH = frozenset(["little", "much", "enough", "nothing"])
_LEFT_IS_DEED_WORDS = word_list("tendons", "left_is_deed_words")
_NOUNS_OF_LEFT = word_list("tendons", "nouns_of_left")
_LEFT_AFTER = word_list("tendons", "left_after") | {""}
_SIDES = frozenset(["left", "right", "l", "r", "and", "the", "of"])


def tells_left(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether a word for leaving says that a tendon was left as it was."""
    if of_a_wound(scene, mention) or _of_a_muscle(scene, mention) or _of_a_suture(scene, mention):
        return False  # 'the bite had left the superficialis alone'
    if _of_a_stump(desk, scene, mention) or _of_ends_or_knots(scene, mention) or _of_what_stayed(scene, mention):
        return False
    if _of_a_test(scene, mention) or _of_gap_before(desk, scene):
        return False
    if scene.words(mention.i, mention.j) == ["left"] and not _left_is_deed(scene, mention):
        return False
    return not _of_a_result(scene, mention)


def _of_a_result(scene: Scene, mention: Mention) -> bool:
    """'It catches; left it': the finding was left; 'no diastasis of either repair was observed': it was looked for."""
    if "left" in " ".join(scene.words(mention.i, mention.j)):
        return _leaves_a_gap(scene, mention)
    return bool(scene.of("gap")) and scene.owner(mention.i, mention.j) is not None


def _of_a_test(scene: Scene, mention: Mention) -> bool:
    """'The repairs were then observed during passive extension'."""
    watched = " ".join(scene.words(mention.i, mention.j)).endswith("observed")
    return watched and not _WATCHED.isdisjoint(scene.words(mention.j, mention.j + 2))


_WATCHED = frozenset(["during", "while", "as", "through", "throughout", "under", "on", "in", "with", "when"])


def _of_what_stayed(scene: Scene, mention: Mention) -> bool:
    """'The little bit that was left on the bone'."""
    was_left = scene.words(mention.i, mention.j) == ["was", "left"]
    return was_left and not _LITTLE.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 5), mention.i))


_LITTLE = frozenset(["little", "bit", "what", "enough", "much"])


def _of_a_suture(scene: Scene, mention: Mention) -> bool:
    """'The running suture was left out', '... an epitendinous suture; the superficialis was left without'."""
    if not scene.of("pattern", "role"):
        return False
    if scene.next_word(mention.j) == "out":
        return True
    without = scene.words(mention.j - 1, mention.j + 1) == ["left", "without"]
    return without and scene.next_word(mention.j + 1) in ("one", "", ".", ",", ";")


def _of_a_muscle(scene: Scene, mention: Mention) -> bool:
    """'The lumbrical came off with the distal FDP stump; not sutured': the muscle, which opens the sentence."""
    first = scene.sentence.i
    return any(m.value == "muscle" and first <= m.i <= first + 1 and m.j <= mention.i for m in scene.of("role"))


def _left_is_deed(scene: Scene, mention: Mention) -> bool:
    """Tell whether a bare 'left' says that a tendon was left as it was."""
    before, after = scene.word_before(mention.i), scene.next_word(mention.j)
    lead = range(max(scene.sentence.i, mention.i - 6), mention.i)
    fingers = {k for m in scene.of("digit") for k in range(m.i, m.j)}  # 'Little FDS: 40%, left.'
    much = [k for k in lead if scene.page.words[k] in _HOW_MUCH and scene.page.words[k + 1] != "to"]
    if any(k not in fingers for k in much):
        return False  # 'how little good tendon was left'
    if _ticked_among_deeds(scene, mention):
        return True
    if after in _NOUNS_OF_LEFT or before in ("the", "his", "her", "of", "r", "l"):
        return False
    if mention.i == scene.sentence.i and scene.sentence.j - mention.i <= 3 and after in _LEFT_AFTER:
        return True
    if before == ")" and mention.j >= scene.sentence.j - 1 and any(g.tendons for g in scene.setting.groups):
        return after in ("", ".")  # 'FDS (ring) left.'
    if (
        before in ("nick", "cut", "flap")
        and after in ("", ".", ";", ",")
        and any(g.tendons for g in scene.setting.groups)
    ):
        return True  # 'MF FDS nick left.'
    if before in _SPEAKERS and _left_it(scene, mention.j):
        return True
    if before == "," and _only_names(scene):
        return False  # 'Thumb, left, FPL.'
    if any(g.i < mention.i < g.j for g in scene.setting.groups):
        return False  # 'Small finger, left, FDP severed': between a finger and its tendon it is the hand
    if scene.header and before == "," and after in ("", ",", ";", ".", "and", "in", "("):
        return False  # 'Suture of both deep flexors, left; ...'
    if scene.words(mention.j, mention.j + 2) == ["as", "found"] or before.startswith(".."):
        return True
    told = any(m is not mention and m.value in ("repaired", "excised") for m in scene.of("deed"))
    others = len({m.value for m in scene.of("tendon")}) > 1  # else 'Four-strand repair of the FDP, left'
    told = told or (others and bool(scene.of("stitch", "strandword"))) or _tendon_alone(scene, mention)
    ends = mention.j >= scene.sentence.j or after in (".", ";", ",", "and", "but")
    own = any(m.kind == "tendon" and m.j == mention.i for m in scene.of("tendon"))
    slip = any(g.j == mention.i and any(slip for _, _, slip in g.pairs) for g in scene.setting.groups)
    if told and ends and not scene.header and (own or slip):
        return True  # 'FCR repaired, PL left.', 'FDS left, FDP repaired', 'radial slip left, ulnar slip repaired'
    hurt = scene.of("extent") or any(q.unit == "%" for q in scene.quantities)
    beside = any(g.tendons and g.j == mention.i - 1 for g in scene.setting.groups)
    if before == "," == after and (beside or not hurt or _side_of_a_finger(scene, mention)):
        return False  # 'reconstruction of the flexor pollicis longus, left, with a graft'
    if before == "," and hurt and ends and not scene.header and any(g.tendons for g in scene.setting.groups):
        return True  # 'FDS 40% cut, left.'
    if slip and ends and any(m.j < mention.i for m in scene.of("stitch", "material")):
        return True  # 'FDS US 4-0 mattress, RS left.'
    return after in _LEFT_AFTER and before in _LEFT_IS_DEED_WORDS


def _tendon_alone(scene: Scene, mention: Mention) -> bool:
    """'PL left.' as a sentence of its own, in a note that names its hand elsewhere."""
    alone = any(m.i == scene.sentence.i and m.j == mention.i for m in scene.of("tendon"))
    sides = [m for m in scene.page.mentions if m.kind == "side"] if alone else []
    return alone and mention.j >= scene.sentence.j - 1 and any(m.i < scene.sentence.i for m in sides)


def _side_of_a_finger(scene: Scene, mention: Mention) -> bool:
    """'Small finger, left, FDP severed in full': behind a finger of which nothing was told, 'left' is its side."""
    finger = any(m.j == mention.i - 1 for m in scene.of("digit"))
    return finger and not any(m.j <= mention.i for m in scene.of("extent", "deed", "tendon"))


def _ticked_among_deeds(scene: Scene, mention: Mention) -> bool:
    """'FDS   repaired [ ]   left [x]   excised [ ]': a ticked option of a row of what was done to a tendon."""
    boxes = {k for i, j, _ in find_boxes(scene.page, scene.sentence) for k in (i, j)}
    if not {mention.i, mention.j} & boxes or not any(g.tendons and g.j <= mention.i for g in scene.setting.groups):
        return False
    return any({m.i, m.j} & boxes for m in scene.of("deed") if m.value in ("repaired", "excised"))


_SPEAKERS = frozenset(["i", "we"])
_AS_IT_WAS = (
    ["as", "it"],
    ["as", "is"],
    ["as", "found"],
    ["that", "way"],
    ["like", "that"],
    ["to", "heal"],
    ["well", "alone"],
)


def _left_it(scene: Scene, k: int) -> bool:
    """'I left the superficialis', 'We left the FDS as it was': a tendon, and no more said of it, from word k on."""
    group = next((g for g in scene.setting.groups if g.tendons and g.i >= k), None)
    if group is None or [w for w in scene.words(k, group.i) if w not in _OWN]:
        return False
    after = scene.next_word(group.j)
    return after in _STOPS or after in _ALONE or scene.words(group.j, group.j + 2) in _AS_IT_WAS


_STOPS = frozenset(["", ".", ",", ";", "and"])
_ALONE = frozenset(["alone", "untouched", "undisturbed", "unsutured", "unsewn", "unrepaired", "be"])


_OWN = frozenset(["the", "this", "that", "his", "her", "its"])


def _only_names(scene: Scene) -> bool:
    """Tell whether a sentence says no more than which tendons of which finger and side it is about."""
    named = {k for g in scene.setting.groups for k in range(g.i, g.j)}
    rest = [
        w for k, w in enumerate(scene.words(scene.sentence.i, scene.sentence.j), scene.sentence.i) if k not in named
    ]
    return bool(named) and all(w in _SIDES or not w[0].isalnum() for w in rest)


def _leaves_a_gap(scene: Scene, mention: Mention) -> bool:
    """'opened 1 mm and was left that way', 'it catches; left it': the finding is left, not the tendon."""
    if {"unrepaired", "unsutured", "unsewn"} & set(scene.words(mention.i, mention.j + 1)):
        return False
    first, _ = scene.part(mention.i)
    results = scene.of("gap", "glide", "bulk", "tension")
    if scene.next_word(mention.j) in ("it", "that", "with") and any(0 < m.i - mention.j <= 6 for m in results):
        return True  # 'so we left it with a bit of tension'
    said = [m for m in results if m.i < mention.i and mention.i - m.i <= 20]
    said = [m for m in said if scene.words(m.i, m.j) not in (["opened"], ["opened", "up"], ["thick"], ["caught"])]
    said = [
        m for m in said if scene.words(m.i - 2, m.i) != ["nothing", "to"]
    ]  # 'edges flat, nothing to catch, so left'
    return bool(said) or any(q.unit == "mm" and first <= q.i < mention.i for q in scene.quantities)


def _of_gap_before(desk: Desk, scene: Scene) -> bool:
    """'A gap of 1 mm was seen. I left it.': what was left is the gap."""
    before = desk.scene_before(scene)
    short = scene.sentence.j - scene.sentence.i <= 6 and not any(g.tendons for g in scene.setting.groups)
    return short and before is not None and bool(before.of("gap", "glide", "bulk", "tension")) and bool(desk.treatments)


def _of_ends_or_knots(scene: Scene, mention: Mention) -> bool:
    """'the knots were left on the surface', 'both its ends were clean and needed nothing done to them'.

    'The middle ends were clean, those of the ring were left as found': the ends again.
    """
    first, _ = scene.part(mention.i)
    if scene.words(first, first + 2) == ["those", "of"]:
        first = scene.sentence.i
    told = [m for m in scene.of("knotword", "knot") if first <= m.i < mention.i]
    knots = [m.i for m in told if not any(cut.i == m.j for cut in scene.of("extent"))]  # 'a superficial nick'
    ends = [k for k in range(first, mention.i) if scene.page.words[k] in ("ends", "stumps")]
    named = [g.i for g in scene.setting.groups if first <= g.i < mention.i and g.tendons and not _of_ends(scene, g)]
    return bool(knots or ends) and not any(k > max([*knots, *ends]) for k in named)


def _of_ends(scene: Scene, group: Group) -> bool:
    """'The ends of the ring FDP', 'those of the ring': a tendon named only to say whose ends they are."""
    lead = [w for w in scene.words(max(scene.sentence.i, group.i - 3), group.i) if w != "the"]
    return lead[-2:] in (["ends", "of"], ["stumps", "of"], ["those", "of"])


def _of_a_stump(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Distal stump tenodesed. Proximal stump shortened and left in the palm.': one end of a tendon dealt with."""
    if "stump" not in scene.words(scene.sentence.i, mention.i):
        return False
    return any(
        f.value != "left" for t in scene.setting.focus for f in desk.told_of("repairs", t) if f.field == "treatment"
    )
