"""Core stitches by name, and fixation to bone by anchor or pull-out."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.reasons import Reason
from notereader.reader.rules.deeds.grafts import has_donor, into_another, of_the_far_end
from notereader.reader.rules.strangers import has_strange_subject
from notereader.reader.rules.sutures.nail_traction import pulls_on_a_nail
from notereader.reader.rules.sutures.roles import CORE, MENDED, PERIPHERAL, TENDON, Anchor, placed, role_of
from notereader.reader.rules.sutures.suture_owners import respective, suture_owners
from notereader.reader.rules.sutures.threads import Thread
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_DOUBLES = {"modified kessler": "double modified kessler", "tsuge": "double tsuge"}
_MODIFIED = frozenset(["kessler", "savage"])
_TRIPLES = {"tsuge": "triple tsuge"}
_BASES = {double: single for names in (_DOUBLES, _TRIPLES) for single, double in names.items()}
_TIMES = {
    "x2": 2,
    "x3": 3,
    "two": 2,
    "2": 2,
    "twice": 2,
    "doubled": 2,
    "double": 2,
    "three": 3,
    "3": 3,
    "tripled": 3,
    "triple": 3,
}
_OF_COUNT = frozenset(
    [",", "fashion", "technique", "style", "type", "and", "then", "done", "placed", "(", "a", "such", "up"]
)
_COUNTED = frozenset(["such", "times", "loops", "of", "sutures", "stitches"])
_WEAK_STITCHES = frozenset(["horizontal mattress", "figure-of-eight", "simple"])
_OTHER_THINGS = word_list("sutures", "other_things")
_PLAIN_THINGS = word_list("sutures", "plain_things")
_TITLES = frozenset(["dr", "mr", "ms", "mrs", "miss", "prof", "professor", "sister", "nurse", "from"])
_DONE = word_list("sutures", "done")
_NO_ROOM = (["no", "room"], ["no", "space"], ["not", "enough"], ["too", "little"], ["too", "short"], ["too", "small"])
_TURNS = frozenset([",", ";", ":", "so", "but", "then"])
_BONE = frozenset(["p3", "p2", "bone", "phalanx", "footprint", "tuft", "metaphysis"])


_KNOTS_OF = (["knots", "of", "the"], ["knot", "of", "the"])
_MORE = frozenset(["more", "extra", "further", "additional", "another"])
_FAR_BEHIND = 12  # words
# 'two modified Kesslers, one in each slip': one core, not a doubled one.
_ONE_EACH = (["one", "in", "each"], ["one", "to", "each"], ["one", "for", "each"], ["one", "per", "slip"])
# What follows an anchor told without a verb: 'Micro anchor, films happy. Armed with 3-0 ...'.
_BESIDE_ANCHOR = frozenset([",", ".", "armed", "loaded", "with", "x", "+"])


@needs(kinds=["stitch", "anchor", "button"])
def stitches(desk: Desk, scene: Scene, found: list[Anchor], threads: list[Thread]) -> None:
    """Find the names of core stitches, and anchors and pull-outs."""
    peers = [m.i for m in scene.of("stitch") if m.value not in _WEAK_STITCHES]
    for mention in scene.of("stitch"):
        if (
            not scene.told(mention.i)
            or scene.negated(mention.i, mention.j, 3)
            or of_other_structure(scene, mention.i, mention.j)
        ):
            continue
        if (
            _is_the_second(scene, mention)
            or _named_in_full(scene, mention)
            or (mention.value == "pull-out" and of_the_far_end(desk, scene, mention))
        ):
            continue
        if scene.words(mention.i - 3, mention.i) in _KNOTS_OF:
            continue  # 'the knots of the cruciate lie outside': one told before
        if _no_room_for(scene, mention) or _is_person(scene, mention) or _names_other_thing(scene, mention):
            continue
        if mention.value in _WEAK_STITCHES and not _weak_is_core(desk, scene, mention, found, threads):
            continue
        if mention.value in _WEAK_STITCHES and not _MORE.isdisjoint(scene.words(mention.i - 3, mention.i)):
            continue  # 'a gap of 1 mm; one more simple stitch put in'
        reasons = [Reason("misspelt", (mention.value,))] if mention.rescued else []
        value, i, j = _doubled(scene, mention)
        value = _same_as_before(desk, scene, mention) or value
        targets, doubts = suture_owners(desk, scene, i, j)
        for target in respective(scene, mention.i, peers, targets):
            desk.tendon(scene, target, "stitch", value, [(i, j)], "core stitch named", *doubts, *reasons)
            woven_in = "grafted" in desk.values_told("deed") or has_donor(desk)
            tenodesed = desk.treatments.get(target) == "tenodesed" or into_another(scene)  # woven into its neighbour
            if value == "pulvertaft" and target.tendon in ("FDP", "FPL") and woven_in and not tenodesed:
                desk.tendon(scene, target, "treatment", "grafted", [(i, j)], "a graft woven in", *doubts)
    for mention in scene.of("anchor"):
        if (scene.told(mention.i) and not scene.negated(mention.i, mention.j, 4) and not scene.header) or (
            scene.header and mention.kind == "anchor"
        ):
            _lay_fixation(desk, scene, mention, "anchor")
    buttons = [] if pulls_on_a_nail(scene) else scene.of("button")
    for mention in (m for m in buttons if not _told_of_again(desk, scene, m, threads)):
        if scene.told(mention.i) and not scene.negated(mention.i, mention.j, 4):
            _lay_fixation(desk, scene, mention, "pull-out")


def _named_in_full(scene: Scene, mention: Mention) -> bool:
    """'A cruciate configuration whose corners were locked (locked cruciate)': its full name follows in brackets."""
    fuller = (m for m in scene.of("stitch") if m.value.endswith(f" {mention.value}") and scene.told(m.i))
    full = next((m for m in fuller if 0 < m.i - mention.j <= _FAR_BEHIND), None)
    if full is None or scene.word_before(full.i) != "(":
        return False
    between = range(mention.j, full.i)
    return not any(g.i in between for g in scene.setting.groups if g.tendons or g.digits)


_OF_ITS_KIND = frozenset([",", "and", "fashion", "then", "technique", "type"])


def _doubled(scene: Scene, mention: Mention) -> tuple[str, int, int]:
    """'modified Kessler, doubled', 'run as a Tsuge and doubled up', '2x modified Kessler': the stitch, its words."""
    counts = scene.words(mention.j, min(mention.j + 2, scene.sentence.j))
    one_each = scene.words(mention.j, mention.j + 4)[:3] in _ONE_EACH
    if one_each or scene.words(mention.j + 1, mention.j + 4) in _ONE_EACH or _in_each_slip(scene, mention):
        return _BASES.get(mention.value, mention.value), mention.i, mention.j
    numbered = mention.value in _BASES and scene.page.words[mention.j - 1] in ("2", "x2", "3", "x3")
    if numbered and any(w.startswith("strand") for w in counts):
        return _BASES[mention.value], mention.i, mention.j  # 'modified Kessler x 2 strands'
    form = [w for w in scene.words(mention.j, min(mention.j + 7, scene.sentence.j)) if w not in _SMALL]
    if mention.value in _MODIFIED and form[:2] == ["modified", "form"]:
        end = mention.j + scene.words(mention.j, mention.j + 8).index("form") + 1
        return f"modified {mention.value}", mention.i, end  # 'Kessler's stitch, in its modified form'
    if scene.words(mention.j, mention.j + 2) in ([",", "modified"], ["(", "modified"]) and mention.value in _MODIFIED:
        return f"modified {mention.value}", mention.i, mention.j + 2  # 'Savage, modified'
    value = _DOUBLES.get(mention.value)
    if value is None:
        return mention.value, mention.i, mention.j
    end = min(mention.j + 4, scene.sentence.j)
    after = next((k for k in range(mention.j, end) if scene.page.words[k] == "doubled"), None)
    if after is not None and set(scene.words(mention.j, after)) <= _OF_ITS_KIND:
        return value, mention.i, after + 1
    if scene.next_word(mention.j) == "double" and scene.next_word(mention.j + 1) in _CLOSES:
        return value, mention.i, mention.j + 1  # 'with a point of Tsuge double, four strands'
    counted = _counted(scene, mention) or _loops_before(scene, mention)
    if counted is not None:
        return counted
    end = _second_of_it(scene, mention)
    if end:
        return value, mention.i, end
    before = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    times = before[-1:] in (["2x"], ["double"]) or before in (["2", "x"], ["x", "2"])
    return (value, mention.i - len(before), mention.j) if times else (mention.value, mention.i, mention.j)


_CLOSES = frozenset(["", ",", ".", ";"])
_SMALL = frozenset([",", "in", "its", "the", "stitch", "suture", "technique", "(", "method"])


def _in_each_slip(scene: Scene, mention: Mention) -> bool:
    """'2x Tsuge, loop 4-0 (one per slip)': where nothing else is sewn between."""
    others = [m.i for m in scene.of("stitch", "tendon", "strandword") if m.i >= mention.j]
    words = scene.words(mention.j, min([mention.j + _FAR_BEHIND, scene.sentence.j, *others]))
    return any(words[n : n + 3] in _ONE_EACH and "slip" in words[n : n + 4] for n in range(len(words)))


def _same_as_before(desk: Desk, scene: Scene, mention: Mention) -> str:
    """'Modified Kessler for the FPL, then index FDS same Kessler': the full name of the one told before, else ''."""
    if scene.word_before(mention.i) != "same":
        return ""
    told = [f.value for f in desk.laid("stitch", before=mention.i)]
    return next((str(value) for value in told[-1:] if str(value).endswith(f" {mention.value}")), "")


def _second_of_it(scene: Scene, mention: Mention) -> int:
    """'a Tsuge repeated once, four strands', 'a modified Kessler and a second one at right angles': where that ends.

    RETURNS: 0 where no second one is told of, or where neither its strands nor its turn shows that it is of the core.
    """
    groups = [g.i for g in scene.setting.groups if g.i >= mention.j and (g.tendons or g.digits)]
    last = min([scene.sentence.j, mention.j + 16, *groups])
    words = scene.words(mention.j, last)
    at = next((k for k in range(len(words)) if words[k : k + 2] in _AGAIN or words[k : k + 3] in _DOUBLE_ONES), -1)
    other = any(m.value != mention.value for m in scene.of("stitch") if mention.j <= m.i < mention.j + at + 3)
    if at < 0 or other or not scene.told(mention.j + at):
        return 0
    twice = 2 * _STRANDS_OF_ONE
    counts = {count_of(w) for m in scene.of("strandword") for w in scene.words(max(0, m.i - 2), m.i)}
    crossed = any(pair in _TURNED for pair in pairwise([*words, ""]))
    return mention.j + at + 2 if twice in counts or crossed else 0


_STRANDS_OF_ONE = 2  # of every stitch that is doubled by name
_AGAIN = (["second", "one"], ["repeated", "once"], ["second", "modified"], ["second", "tsuge"], ["second", "of"])
_DOUBLE_ONES = (["a", "double", "one"], ["plus", "a", "second"])
_TURNED = frozenset(
    [("right", "angles"), ("at", "90"), ("turned", "90"), ("perpendicular", ""), ("perpendicular", "to")]
)


def _is_the_second(scene: Scene, mention: Mention) -> bool:
    """'..., then a second modified Kessler at right angles': told with the first one, whose double it makes."""
    first = next((m for m in scene.of("stitch") if m.value == mention.value), mention)
    led = scene.word_before(mention.i) in ("second", "another", "further")
    return first is not mention and led and _second_of_it(scene, first) > 0


def _loops_before(scene: Scene, mention: Mention) -> tuple[str, int, int] | None:
    """'Three looped 4-0 stitches after Tsuge', 'triple looped suture by Tsuge method', '3-looped Tsuge'."""
    words = scene.page.words
    for k in range(max(scene.part(mention.i)[0], scene.sentence.i, mention.i - _LOOPS_FAR), mention.i):
        looped = words[k + 1 + (words[k + 1] == "-")] in ("looped", "loops")
        name = (_DOUBLES if _TIMES.get(words[k]) == 2 else _TRIPLES).get(mention.value)
        if looped and words[k] in _TIMES and name:
            return name, k, mention.j
    return None


_LOOPS_FAR = 8  # words


def _leads_to_count(word: str) -> bool:
    return word in _OF_COUNT or word in ("times", "x") or word.endswith("-0")


_FEW = 4  # words


def _counted(scene: Scene, mention: Mention) -> tuple[str, int, int] | None:
    """'Tsuge fashion, two such loops', 'Tsuge times three', 'Tsuge with looped 4-0 nylon, three of them'."""
    k, words = mention.j, scene.page.words
    of_thread = {n for m in scene.of("material", "looped") for n in range(m.i, m.j)}
    of_thread |= {n - 1 for n in of_thread if scene.page.words[n - 1] == "with"}
    small = 0  # words between that are not of the thread
    while k < scene.sentence.j and small < _FEW and (_leads_to_count(words[k]) or k in of_thread):
        small += k not in of_thread and not words[k].endswith("-0")
        k += 1
    if k >= scene.sentence.j or words[k] not in _TIMES or (k == mention.j and words[k] not in ("twice", "doubled")):
        return None
    behind = scene.next_word(k + 1)
    if any(w.startswith("strand") for w in scene.words(k + 1, min(k + 3, scene.sentence.j))):
        return None  # 'modified Kessler x 2 strands', '(two-strand)'
    bracketed = words[k - 1] == "(" and behind == ")" and not words[k].isdigit()
    plain = words[k] in ("twice", "doubled", "tripled", "triple") or words[k - 1] in ("times", "x") or bracketed
    if not plain and not (behind in _COUNTED and (behind != "of" or scene.next_word(k + 2) in ("them", "these"))):
        return None  # 'Tsuge, two strands'
    value = (_DOUBLES if _TIMES[words[k]] == 2 else _TRIPLES).get(mention.value)
    return (value, mention.i, k + 1 if plain else k + 2) if value else None


def of_other_structure(scene: Scene, i: int, j: int) -> bool:
    """Tell whether a strand count or stitch belongs to an extensor tendon, a nerve or a plate."""
    subject = scene.owner(i, j)
    if subject is not None and subject.mention is not None:
        other = subject.kind in ("structure", "sided", "anynerve") and subject.mention.kind != "role"
        return other and not _told_next(scene, subject.mention, j)
    return any(m.kind == "structure" and m.value == "extensor tendon" for m in scene.mentions) and not any(
        g.tendons for g in scene.setting.groups
    )


def _told_next(scene: Scene, thing: Mention, j: int) -> bool:
    """'A four-strand core of 3-0 was placed, and the ulnar nerve was sewn with 9-0': a statement behind the suture's.

    An extensor tendon may have strands of its own, 'a four-strand core was used, the extensor tendon being sewn'.
    """
    if thing.value == "extensor tendon":
        return False
    timed = scene.page.words[scene.sentence.i] in ("after", "once", "when")
    if thing.i < j:  # 'After the nerve was sewn with 9-0, a four-strand core was placed'
        return timed and "," in scene.words(thing.j, j)
    k = thing.i - 1
    while k > j and scene.page.words[k] in _NAMING:
        k -= 1
    if scene.page.words[k] == ";":
        return True
    opens = scene.page.words[k] in _OPENING or timed
    return opens and not MENDED.isdisjoint(scene.words(thing.j, min(thing.j + _SOON, scene.sentence.j)))


_NAMING = frozenset(["the", "ulnar", "radial", "digital", "both", "common", "collateral", "proper", "volar"])
_OPENING = frozenset([",", ";", "and", "then", "before", "while", "whereas"])
_SOON = 5  # words: 'nerve was then sewn'


def _no_room_for(scene: Scene, mention: Mention) -> bool:
    """'No room in there for an M-Tang, so two loops': a stitch that could not be put in."""
    before = scene.words(max(scene.sentence.i, mention.i - 9), mention.i)
    at = next((k for k in range(len(before) - 1) if before[k : k + 2] in _NO_ROOM), None)
    return at is not None and {"for", "to"}.isdisjoint(before[:at]) and _TURNS.isdisjoint(before[at:])


def _is_person(scene: Scene, mention: Mention) -> bool:
    """'Assisted by Dr Evans', 'from Adelaide': a name that stitches bear too."""
    before = [w for w in scene.words(max(scene.sentence.i, mention.i - 2), mention.i) if w != "."]
    owned = scene.page.raw(mention.i, mention.j).lower().endswith(("'s", "\u2019s"))
    if owned and scene.next_word(mention.j) in _OWNED:
        return False  # 'Mr Kessler's stitch', 'the stitch of my teacher, Mr Kessler's, in its modified form'
    if mention.rescued and _joined_to_a_name(scene, mention.j):
        return True  # 'Kestler-Rowe / registrar'
    return bool(before) and before[-1] in _TITLES


def _joined_to_a_name(scene: Scene, j: int) -> bool:
    joined = scene.next_word(j) == "-" and scene.page.breaks[j] == Break.NONE and j + 1 < scene.sentence.j
    return joined and scene.page.breaks[j + 1] == Break.NONE and scene.page.raw(j + 1, j + 2).istitle()


_OWNED = frozenset([",", "stitch", "suture", "method", "technique", "repair", "pattern", "core"])


def _names_other_thing(scene: Scene, mention: Mention) -> bool:
    """'Tang's subdivision', 'a Bunnell needle', 'cruciate pulley', 'a simple two-strand Kessler'."""
    after = [w for w in scene.words(mention.j, min(mention.j + 3, scene.sentence.j)) if w not in ("-", "type")]
    if after and (after[0] in _OTHER_THINGS or (mention.value == "simple" and after[0] in _PLAIN_THINGS)):
        return True
    later = [m for m in scene.of("stitch") if 0 <= m.i - mention.j <= 3 and m.value not in _WEAK_STITCHES]
    return mention.value == "simple" and (bool(later) or after[:1] == ["grasps"])


def _weak_is_core(desk: Desk, scene: Scene, mention: Mention, found: list[Anchor], threads: list[Thread]) -> bool:
    """A mattress or figure of eight is a tendon's stitch only beside a tendon, not in skin or around the outside."""
    thread = next((t for t in threads if -3 <= t.i - mention.j <= 4 or 0 <= mention.i - t.j <= 6), None)
    role = role_of(scene, mention.i, mention.j, placed(scene, found, mention.j))
    if role in ("", TENDON, "pattern"):
        role = (
            thread.role
            if thread
            else (CORE if desk.topic in (CORE, TENDON, PERIPHERAL) or role == TENDON else desk.topic)
        )
    return role == CORE


def _of_a_ligament(desk: Desk) -> bool:
    """'Rupture of the ulnar collateral ligament. Open repair with bone anchor.': a note that names no tendon."""
    ligament = any("ligament" in m.value for s in desk.having("structure") for m in s.of("structure"))
    return ligament and not desk.having("tendon") and not desk.having("generic")


def _lay_fixation(desk: Desk, scene: Scene, mention: Mention, stitch: str) -> None:
    """An anchor or a button puts the tendon back to bone."""
    done = bool(_DONE & set(scene.words(scene.sentence.i, scene.sentence.j))) or _set_in_bone(scene, mention)
    done = done or (mention.i == scene.sentence.i and scene.next_word(mention.j) in _BESIDE_ANCHOR)
    done = done or any(d.value == "reinserted" and scene.told(d.i) for d in scene.of("deed"))
    labels = [scene.words(i, j) for i, j in scene.sentence.prefix] + [scene.words(scene.sentence.i, mention.i)]
    done = done or any(not _FIXATION.isdisjoint(label) for label in labels)  # 'Fixation: [x] suture anchor'
    done = done or _answers_a_tendon(scene, mention)
    if stitch == "anchor" and not scene.header and not done:
        return
    if scene.sentence.section in ("implants", "instructions") or of_the_far_end(desk, scene, mention):
        return
    if scene.next_word(mention.j) == "hole" or scene.word_before(mention.i) in ("bell", "shirt"):
        return
    if stitch == "anchor" and has_strange_subject(scene, mention.i):
        return  # 'The ligament was repaired with a bone anchor'
    subject = scene.owner(mention.i, mention.j)
    if subject is not None and subject.mention is not None and subject.kind == "structure":
        return
    targets, doubts = suture_owners(desk, scene, mention.i, mention.j)
    targets = [t for t in targets if t.tendon in ("FDP", "FPL", "FDS")]
    if stitch == "anchor" and _of_a_ligament(desk):
        return
    for target in targets:
        desk.tendon(scene, target, "stitch", stitch, [(mention.i, mention.j)], f"fixed by {stitch}", *doubts)
        known = desk.treatments.get(target)
        by_anchor = known == "tenodesed" and stitch == "anchor"  # 'tenodesis of the stump, held by an anchor'
        if known != "reinserted" and not by_anchor:
            desk.tendon(
                scene, target, "treatment", "reinserted", [(mention.i, mention.j)], f"fixed by {stitch}", *doubts
            )


_FIXATION = frozenset(["fixation", "refixation", "attachment"])


def _answers_a_tendon(scene: Scene, mention: Mention) -> bool:
    """'FDP fix | Mitek anchor', 'FDP core, small: suture anchor 3-0': it is what the label of a tendon asks for."""
    begin = mention.i - (scene.word_before(mention.i) in _ONE)
    if begin == scene.sentence.i:
        label = [k for i, j in scene.sentence.prefix for k in range(i, j)]
    elif scene.word_before(begin) == ":":
        label = list(range(scene.sentence.i, begin))
    else:
        return False
    return any(k in scene.page.tendon_words for k in label)


_ONE = frozenset(["a", "one", "1"])


def _told_of_again(desk: Desk, scene: Scene, mention: Mention, threads: list[Thread]) -> bool:
    """'The button comes off at six weeks', 'not early active, because of the button': one that was placed before."""
    known = scene.word_before(mention.i) == "the"
    deeds = any(d.value in ("repaired", "reinserted") for d in scene.of("deed"))
    if not threads and not deeds and _left_in(desk, scene, mention):
        return True
    return (known and not (threads or deeds)) or not _COMES_OFF.isdisjoint(scene.words(mention.j, mention.j + 3))


def _left_in(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Nothing untoward, wires + button in', 'button left in place': a list of what stays, of one told before."""
    behind = scene.words(mention.j, min(mention.j + 2, scene.sentence.j))
    stays = behind[:1] == ["in"] and behind[1:] in ([], ["."], [","], [";"], ["situ"], ["place"])
    stays = stays or behind == ["left", "in"]
    named = any(g.tendons or g.digits for g in scene.setting.groups)
    return stays and not named and any(f.value == "pull-out" for f in desk.laid("stitch"))


_COMES_OFF = frozenset(["off", "removed", "out", "removal"])


_TO_BONE = 9  # words
_TOWARDS = frozenset(["to", "onto", "into"])
_AT = frozenset(["in", "into", "at", "to", "onto", "on"])
_BY_MEANS_OF = frozenset(["by", "with", "via", "using", "through"])


def _set_in_bone(scene: Scene, mention: Mention) -> bool:
    """'Mini anchor in P3', 'bone anchor x1 into the footprint', 'FDP back to P3 by anchor': told without a verb."""
    first = max(scene.part(mention.i)[0], mention.i - _TO_BONE)
    named = [g.j for g in scene.setting.groups if g.tendons and first <= g.i < mention.i]
    lead = scene.words(named[-1], mention.i) if named else []
    bone = next((k for k, word in enumerate(lead) if word in _BONE), len(lead))
    if not _TOWARDS.isdisjoint(lead[:bone]) and not _BY_MEANS_OF.isdisjoint(lead[bone:]):
        return True
    after = scene.words(mention.j, min(mention.j + 6, scene.sentence.j))
    place = next((k for k, word in enumerate(after) if word in _AT), None)
    return place is not None and not _BONE.isdisjoint(after[place + 1 :])
