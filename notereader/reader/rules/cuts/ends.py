"""How the ends of a tendon were found."""

from itertools import pairwise

from notereader.reader.desk import Desk, Finding, is_correction
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import UNITS
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.rules.carried import carried
from notereader.reader.rules.cuts.edges_of_a_hole import edges_of_a_hole
from notereader.reader.rules.cuts.ends_alone import alone_in_its_part, ends_alone
from notereader.reader.rules.cuts.ends_taken_up import ends_taken_up, of_other_ends
from notereader.reader.rules.cuts.ends_together import fetched_before, told_together
from notereader.reader.rules.cuts.parted import of_the_parted, of_those_cut_through
from notereader.reader.rules.finger_lines import of_one_finger
from notereader.reader.rules.owners import named_so_far, tendon_owner
from notereader.reader.rules.results.behaviour import foreign
from notereader.reader.rules.results.dealt_results import holders_of_result
from notereader.reader.rules.strangers import of_a_stranger
from notereader.reader.rules.sutures.suture_owners import respective
from notereader.reader.scene import Scene, group_targets, series
from notereader.vocabulary.wordlists import word_list

_OF_TENDON_WORDS = word_list("quality", "of_tendon_words")
_END_NOUNS = frozenset(["ends", "end", "edges", "stumps", "faces"])
_STUMPS = frozenset(["stumps", "stump"])
_MANY_ENDS = frozenset(["ends", "stumps", "stump"])
_TORN_OFF = frozenset(["apart", "off", "from", "away", "out", "loose"])
_COLLECTIVE = frozenset(["all", "both", "each", "every", "three", "four", "pair"])
_SEWN = frozenset(["repair", "repairs", "repaired", "sutured"])
_WHEN = frozenset(["when", "while", "as", "after", "finger", "fingers", "thumb", "wrist"])
_THESE = frozenset(["these", "those", "them"])


def _of_no_tendon(scene: Scene, noun: Mention) -> bool:
    return [w for w in scene.words(noun.j, noun.j + 3) if w != "the"][:2] in _OF_OTHERS


_OF_OTHERS = [
    ["of", word] for word in ("finger", "thumb", "digit", "wire", "wound", "incision", "bone", "hand", "pulp")
]


@needs(kinds=["ends"])
def ends(desk: Desk, scene: Scene) -> None:
    """Find how the ends were: 'ends clean', 'ragged stumps', 'the profundus was frayed'."""
    found = [m for m in scene.of("ends") if scene.told(m.i) and not _of_another(desk, scene, m)]
    if not found or of_other_ends(desk, scene):
        return
    nouns = scene.of("endword")
    if any(_of_no_tendon(scene, m) for m in nouns) and not scene.of("tendon"):
        return  # 'The stump of the finger was clean'
    of_ends = nouns or not _MANY_ENDS.isdisjoint(scene.said)  # 'a clean wound and clean tendon ends'
    if _edges_of_a_cover(scene):
        return
    if "wound" in scene.said and not of_ends and not scene.of("tendon"):
        return  # 'Volar wound 6 cm, clean edges'
    asked = next((m.i for m in scene.of("ends") if _asked_and_denied(scene, m)), len(scene.page.words))
    dealt = [m for m in found if nouns and holders_of_result(desk, scene, m.i)]
    said = [m for m in found if m.i > asked or _said_of_ends(scene, m, nouns) or (nouns and _finger_behind(scene, m))]
    said = dealt or said
    said = said or [m for m in found if _of_the_cuts_before(desk, scene, m)]
    said = said or [m for m in found if ends_alone(desk, scene, m) or ends_taken_up(desk, scene, m)]
    kept = [m for m in said if not _negated_quality(scene, m) and not _soft_and_frayed(scene, m)]
    laid: list[tuple[Mention, list[Target]]] = []
    for mention in kept:
        owners = _on_the_one_behind(scene, mention) or end_owners(desk, scene, mention)
        owners = told_together(desk, scene, mention, owners) or owners
        targets = named_so_far(desk, scene, deep_of_column(scene, owners), collective=True)
        laid.append((mention, respective(scene, mention.i, [m.i for m in found], targets)))
    left_out = {d for g in scene.setting.groups if g.excepted and not g.tendons for d in g.digits}
    parted = "stumps" in scene.said or any(scene.word_before(m.i) in _THROUGH for m in nouns)
    for mention, targets in laid:
        for target in targets:
            if len(targets) > 1 and target.digit in left_out:
                continue  # 'All ends but the middle were clean'
            known = len(desk.findings)
            if len(targets) > 1 and parted and desk.extents.get(target) == "partial":
                continue  # 'All the stumps were smooth', 'all the severed ends': what was cut in part has none
            if mention.value == "clean" and len(targets) == 1 and _left_in_part(desk, target):
                continue  # 'FDS middle: partial cut left alone, fibres tidy': it has edges, but no ends
            if _as_found(scene, mention, [m for m, others in laid if target in others]):
                spot = _with_noun(scene, mention, nouns)
                desk.tendon(scene, target, "ends", mention.value, [spot], "ends as found")
            if "edges" not in scene.said:  # which a cut in part has too
                mark_unsettled(desk, target, targets, known)


def _edges_of_a_cover(scene: Scene) -> bool:
    """'Sheath closed over the repair, edges clean', 'The skin was sutured, its edges clean': of no tendon."""
    if edges_of_a_hole(scene):
        return True
    opening = [w for w in scene.words(scene.sentence.i, scene.sentence.i + 3) if w not in ("the", "flexor", "a")]
    closed = not _CLOSED.isdisjoint(scene.said) and _MANY_ENDS.isdisjoint(scene.said) and not scene.of("tendon")
    return opening[:1] != [] and opening[0] in _COVERS and closed and not _EDGES.isdisjoint(scene.said)


_COVERS = frozenset(["sheath", "wound", "wounds", "skin", "incision", "pulley"])
_CLOSED = frozenset(["closed", "sewn", "sutured", "stitched", "repaired", "closure"])
_EDGES = frozenset(["edges", "edge"])


def _on_the_one_behind(scene: Scene, mention: Mention) -> list[Target]:
    """'FDP and FDS cut all the way and the edges were ragged on the profundus': of the one named right behind."""
    group = next((g for g in scene.setting.groups if g.i >= mention.j and g.tendons), None)
    lead = scene.words(mention.j, group.i) if group is not None else []
    lead = lead[:-1] if lead[-1:] == ["the"] else lead
    several = any(len(g.tendons) > 1 and g.j <= mention.i for g in scene.setting.groups)
    return group_targets(scene, group) if group is not None and several and lead in (["on"], ["in"]) else []


def _soft_and_frayed(scene: Scene, mention: Mention) -> bool:
    """'Soft and somewhat frayed': what is frayed as well is called so, for soft it is all the same."""
    if mention.value != "attenuated" or scene.page.words[mention.i] not in _SOFT or mention.j - mention.i > 1:
        return False
    part = scene.part(mention.i)
    beside = [m for m in scene.of("ends") if m.value == "ragged" and scene.part(m.i) == part]
    return any("and" in scene.words(min(m.j, mention.j), max(m.i, mention.i)) for m in beside)


_SOFT = frozenset(["soft", "softened"])


def _left_in_part(desk: Desk, target: Target) -> bool:
    """Tell whether a tendon was not cut through and not sewn."""
    return desk.treatments.get(target) in ("left", "trimmed") and desk.extents.get(target) != "complete"


def _of_another(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether a state belongs to another structure than a tendon.

    'FPL cut over the phalanx, stumps ragged': a bone is a place where the ends have words of their own behind the
    comma; 'NVBs ok, ends clean': what was found whole has no ends.
    """
    if not foreign(scene, mention.i, mention.j):
        return False
    subject = scene.owner(mention.i, mention.j)
    first, _ = scene.part(mention.i)
    behind = subject is not None and subject.i >= mention.j
    told_of_ends = not _MANY_ENDS.isdisjoint(scene.words(first, mention.i if behind else mention.j))
    if subject is None or not told_of_ends or first <= subject.i < mention.i:
        return True
    if of_a_stranger(scene, mention.i, mention.j):
        return True
    if subject.kind in ("bone", "role"):
        if scene.word_before(subject.i) == "no":
            return False  # 'no bony fragment zone one the end was frayed'
        return not any((g.tendons or g.generic) and g.j <= mention.i for g in scene.setting.groups)
    if behind:
        return False
    states = {m.value for m in scene.of("extent", "hurt", "nervestate") if m.i < mention.i}
    return states != {"intact"}


def mark_unsettled(desk: Desk, target: Target, targets: list[Target], known: int) -> None:
    """'All ends clean' is a guess for a tendon cut in part, which may yet turn out not to be sewn."""
    if len(targets) > 1 and desk.extents.get(target) == "partial" and target not in desk.treatments:
        for finding in desk.findings[known:]:
            finding.carried = True


def deep_of_column(scene: Scene, targets: list[Target]) -> list[Target]:
    """Return of one digit's tendons the deep one, where a row of a grid names none: it tells of what was sewn first."""
    named = any(g.tendons for g in scene.setting.groups)
    if not scene.sentence.prefix or named or len({t.digit for t in targets}) != 1:
        return targets
    return [t for t in targets if t.tendon in ("FDP", "FPL")] or targets


_SINGLE_ENDS = frozenset(["end", "edge", "stump", "face"])
_WIDELY = frozenset(["throughout", "everywhere"])
_RIMS = frozenset(["edge", "edges", "rim", "lip", "margin", "border"])


def _said_of_ends(scene: Scene, mention: Mention, nouns: list[Mention]) -> bool:
    if not _END_NOUNS.isdisjoint(scene.words(mention.i, mention.j)):
        return True
    pulley = any(m.kind == "pulley" and 0 <= m.i - mention.j <= 4 for m in scene.mentions)
    if scene.next_word(mention.j) in _RIMS and pulley:
        return False  # 'caught on the shredded edge of A2'
    spots = [n.i for n in nouns if not _of_a_pulley(scene, n) and scene.word_before(n.i) not in _NOT_OF_A_TENDON]
    words = scene.page.words
    spots += [k for k in range(*scene.part(mention.i)) if words[k] in _STUMPS]  # 'both stumps were furry'
    spots += [k for k in range(*scene.part(mention.i)) if words[k - 1] == "every" and words[k] in _SINGLE_ENDS]
    if any(k < mention.i for k in spots) and _points_back(scene, mention):
        return True
    spots = [k for k in spots if scene.word_before(k) not in _NOT_OF_A_TENDON]
    near = any(_apart(scene, k, mention.i) <= _NEAR for k in spots)
    near = near or _behind_its_place(scene, mention, spots)
    return near or _of_the_subject(scene, mention, spots) or _of_tendon(scene, mention)


def _behind_its_place(scene: Scene, mention: Mention, spots: list[int]) -> bool:
    """'The end was sitting under the A3 pulley, swollen and rather frayed': the part before says where it was."""
    first, _ = scene.part(mention.i)
    if first == scene.sentence.i or not alone_in_its_part(scene, mention):
        return False
    begin, end = scene.part(first - 1)
    return any(begin <= k < end for k in spots)


_NEAR = 9  # words
_NOT_OF_A_TENDON = frozenset(["bone", "nerve", "wound", "skin"])


def _apart(scene: Scene, a: int, b: int) -> int:
    """Return how many words lie from one word to another; options of a form that nobody ticked are none."""
    first, last = min(a, b), max(a, b)
    return sum(scene.page.standing[k] != "unticked" for k in range(first, last))


def _of_the_subject(scene: Scene, mention: Mention, spots: list[int]) -> bool:
    """'Its end lay at the A3 pulley, held by the vinculum, frayed', 'ENDS  middle: ragged, 1 mm off.  ring: clean'."""
    opens = any(k - scene.sentence.i <= _OPENING for k in spots)
    labelled = bool(spots) and spots[0] == scene.sentence.i
    return (opens and alone_in_its_part(scene, mention)) or (labelled and scene.word_before(mention.i) == ":")


_OPENING = 3  # words


def _of_the_cuts_before(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'FDP and FDS 100%. Clean cut.', '... divided. All cuts were tidy.': of what was just told cut, or of all."""
    rest = [w for w in scene.words(scene.sentence.i, mention.i) if w not in _FILLS]
    rest += [w for w in scene.words(mention.j, scene.sentence.j) if w not in _FILLS]
    if scene.sentence.prefix or any(g.tendons or g.digits for g in scene.setting.groups):
        return []
    if "cuts" in scene.said and _OF_SKIN.isdisjoint(scene.said) and (rest in ([], ["cuts"]) or _all_the_cuts(scene)):
        return [t for t in _parted(desk, scene, None) if _named_before(desk, scene, t)]
    if rest not in ([], ["cuts"], ["cut"]) or _all_words(scene):
        return []  # 'All ends ragged' is said of more than the last
    told = _cuts_just_told(desk, scene)
    cut = [f for f in told if f.value != "intact"]
    if any(f.group != "repairs" for f in cut):
        return []
    return list(dict.fromkeys(Target(*f.entry) for f in cut))


_FILLS = frozenset(
    ["a", "the", "all", "both", "was", "were", "is", "are", "quite", "very", "nice", ".", "!", "these", "*", "-"]
)
_OF_SKIN = frozenset(["skin", "wound", "wounds", "incision", "nerve", "nerves"])
_BACK = 3  # sentences


def _all_the_cuts(scene: Scene) -> bool:
    """'All cuts as straight as a ruler', 'all cuts are smooth from glass'."""
    return ("all", "cuts") in pairwise(scene.words(scene.sentence.i, min(scene.sentence.i + 4, scene.sentence.j)))


def _cuts_just_told(desk: Desk, scene: Scene) -> list[Finding]:
    """Return the cuts told by the last sentence of the paragraph that told any: 'FDP off. Zone I. Clean cut.'"""
    before = desk.scene_before(scene)
    for _ in range(_BACK):
        if before is None or before.sentence.block != scene.sentence.block:
            break
        told = desk.laid("extent", since=before.sentence.i, before=scene.sentence.i)
        if told or before.setting.groups or before.of("deed", "pulley", "structure", "sided", "bundle", "bone"):
            return told
        before = desk.scene_before(before)
    return []


def _of_a_pulley(scene: Scene, noun: Mention) -> bool:
    """'The edges of A2 were clean': a rim, not the end of a tendon."""
    return scene.next_word(noun.j) == "of" and any(0 < m.i - noun.j <= 2 for m in scene.of("pulley", "pulleys"))


def _points_back(scene: Scene, mention: Mention) -> bool:
    """'The stumps in the long finger were crisp, those in the ring finger ragged': 'those' are ends too."""
    words = scene.words(scene.part(mention.i)[0], mention.i)
    subject = scene.owner(mention.i, mention.j)
    if subject is None or subject.kind not in ("tendon", "digit"):
        return False
    pointed = any(a in ("those", "that") and b in ("of", "in", "on") for a, b in pairwise(words))
    return pointed or [w for w in words[:2] if w not in _SINCE][:1] in (["they"], ["both"])


_SINCE = frozenset(["as", "since", "because", "and", "for"])


def _of_the_finger(scene: Scene, mention: Mention) -> bool:
    """'Until the pulp touched the palm', 'half of the pulp was numb': the finger's own, no state of a tendon."""
    return scene.words(mention.i, mention.j) == ["pulp"] and scene.word_before(mention.i) in _NAMES_PULP


_NAMES_PULP = frozenset(["the", "finger", "fingertip", "tip", "thumb", "digital", "its", "his", "her", "index"])


def _asked_and_denied(scene: Scene, mention: Mention) -> bool:
    """'Ends ragged? No, clean.': what was only asked; what is answered behind it is said of the ends."""
    return scene.words(mention.j, mention.j + 2) in (["?", "no"], ["?", "not"])


_RUNS = word_list("quality", "run_forms") | word_list("quality", "glide_forms")


def _negated_quality(scene: Scene, mention: Mention) -> bool:
    if _asked_and_denied(scene, mention):
        return True
    if scene.page.words[mention.i] == "cleanly" and scene.word_before(mention.i) in _RUNS:
        return True  # 'the repairs slid cleanly'
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    if scene.page.words[mention.i] == "stretched" and not _WHEN.isdisjoint(lead):
        return True  # 'neither gapped when the finger was stretched out'
    if scene.next_word(mention.j) in ("core", "repair", "suture", "stitch", "result", "join"):
        return True  # 'too short for a tidy core'
    singular = "end" in scene.words(mention.i, mention.j + 1) and "of" in scene.words(mention.j, mention.j + 2)
    if singular and scene.words(mention.j, mention.j + 3)[-1:] not in (["the"], ["it"], ["fdp"], ["fds"], ["fpl"]):
        return True  # 'onto the sharp end of a steel strap'
    if scene.page.words[mention.j - 1] == "torn" and scene.next_word(mention.j) in _TORN_OFF:
        return True  # 'the ends were torn off the bone' tells how, not what they looked like
    if _tore_cleanly(scene, mention) or _of_the_finger(scene, mention):
        return True
    answered = scene.arrow(mention.i - 1)  # 'Ends attenuated? no -> clean'
    return (not answered and scene.negated(mention.i, mention.j, 3)) or (
        mention.value == "clean" and scene.word_before(mention.i) in ("washed", "to", "until")
    )


def _tore_cleanly(scene: Scene, mention: Mention) -> bool:
    """'It had torn away cleanly', 'avulsed cleanly from the bone': how it came off, not how its end looked."""
    words = scene.words(mention.i, mention.j)
    if words[-1:] in (["clean"], ["cleanly"]) and "off" in (scene.next_word(mention.j), scene.word_before(mention.i)):
        return True  # 'gone clean off'
    if "cleanly" not in words:
        return False
    around = scene.words(max(scene.part(mention.i)[0], mention.i - 4), mention.j + 2)
    return not _TEARING.isdisjoint(around) or any(pair in _OFF_ITS for pair in pairwise(around))


_TEARING = word_list("quality", "tearing")
_OFF_ITS = [("off", word) for word in ("bone", "its", "the")]


def _as_found(scene: Scene, mention: Mention, told: list[Mention]) -> bool:
    """'ragged, trimmed back to clean tendon': as found counts; a clean end after trimming does not."""
    if mention.value != "clean":
        return True
    if _seen_elsewhere(scene, mention) or _of_one_end(scene, mention, told):
        return False
    worse = [m for m in told if m.value != "clean"]
    return not _after_trimming(scene, mention) and (not worse or mention.i < worse[0].i)


def _of_one_end(scene: Scene, mention: Mention, told: list[Mention]) -> bool:
    """'Ends: clean proximally': of the other end nothing is told."""
    return scene.next_word(mention.j) in _AT_ONE_END and len(told) == 1 and _OTHER_END.isdisjoint(scene.said)


_AT_ONE_END = frozenset(["proximally", "distally"])
_OTHER_END = frozenset(["both", "and"])


def _seen_elsewhere(scene: Scene, mention: Mention) -> bool:
    """'The ends had looked clean in casualty; today they were ragged': how they looked before the operation."""
    behind = scene.words(mention.j, min(mention.j + _WHERE_IN, scene.sentence.j))
    near = behind[: behind.index(",")] if "," in behind else behind
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    led = any(a in _AT and not _ELSEWHERE.isdisjoint(lead[k + 1 : k + 4]) for k, a in enumerate(lead))
    led = led or lead[1:4] == ["a", "&", "e"]
    return led or not _ELSEWHERE.isdisjoint(near)


_AT = frozenset(["in", "at", "on"])


_WHERE_IN = 9  # words
_ELSEWHERE = word_list("quality", "seen_elsewhere")


def _after_trimming(scene: Scene, mention: Mention) -> bool:
    behind = scene.words(mention.j, min(mention.j + 2, scene.sentence.j))
    if behind[:1] in (["after"], ["following"], ["once"]) and not _TRIMMING.isdisjoint(behind):
        return True  # 'Ends clean after trimming'
    if _trimmed_first(scene, mention):
        return True
    trims = [m for m in scene.of("restored", "deed") if m.value == "trimmed" and m.j <= mention.i]
    return any(set(scene.words(t.j, mention.i)) & {"to", "until", "back", "for"} for t in trims)


def _trimmed_first(scene: Scene, mention: Mention) -> bool:
    """'Once trimmed the ends were clean', 'with 2 mm off, clean'; not 'no trimming was needed, clean ends'."""
    named = [g.j for g in scene.setting.groups if (g.tendons or g.digits) and g.j <= mention.i]
    words = scene.words(max([scene.sentence.i, *named]), mention.i)  # '2 mm off the ring; that of the small was clean'
    cut = [k for k, word in enumerate(words) if word in _TRIMMING or (word, *words[k + 1 : k + 2]) in _CUT_BACK]
    return any(_DENIES_TRIMMING.isdisjoint(words[max(0, k - 6) : k + 5]) for k in cut)


_CUT_BACK = frozenset([("cut", "back"), ("pared", "back"), ("mm", "off"), ("taken", "back"), ("trimmed", "back")])
_DENIES_TRIMMING = frozenset(
    ["no", "not", "none", "without", "nothing", "never", "unnecessary", "needless", "neither", "nor"]
)
_TRIMMING = frozenset(
    [
        *("trimming", "debridement", "freshening", "resection", "refreshing", "trimmed", "freshened", "debrided"),
        *("refreshed", "resected", "pared"),
    ]
)


def _of_tendon(scene: Scene, mention: Mention) -> bool:
    """'the profundus was frayed', 'cut through cleanly': said of the tendon itself."""
    subject = scene.owner(mention.i, mention.j)
    if subject is None or subject.kind != "tendon":
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    first, last = scene.part(mention.i)
    short = last - first <= 2 + (scene.page.words[last - 1] == ".")
    if (word in _LONE and short) or (word == "clean" and scene.word_before(mention.i) == "cut"):
        return True
    if word in _OF_TENDON_WORDS:
        return False
    return abs(subject.j - mention.i) <= 8 or abs(subject.i - mention.j) <= 3


_LONE = frozenset(["clean", "neat", "crisp", "sharp", "tidy", "clean edge", "edge clean", "clean cut"])


def _with_noun(scene: Scene, mention: Mention, nouns: list[Mention]) -> tuple[int, int]:
    near = [n for n in nouns if abs(n.i - mention.i) <= 6]
    if not near:
        return mention.i, mention.j
    noun = min(near, key=lambda n: abs(n.i - mention.i))
    return min(noun.i, mention.i), max(noun.j, mention.j)


# --- whose


def end_owners(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the cut tendons that a remark on their ends is about."""
    told = holders_of_result(desk, scene, mention.i) or _of_the_left_out(scene, mention)
    told = told or _of_the_cuts_before(desk, scene, mention)
    told = told or _of_both(desk, scene, mention) or _each_named(desk, scene, mention)
    told = told or ends_alone(desk, scene, mention)
    if told:
        return told
    finger = _finger_behind(scene, mention)
    if finger:
        return _parted(desk, scene, finger)
    if _on_a_line_of_its_own(scene):
        return [t for t in scene.setting.focus if desk.is_cut(t)]
    subject = scene.owner(mention.i, mention.j)
    later = subject is not None and subject.i >= scene.part(mention.i)[1] and not _collects(subject.group)
    targets, group = ([], None) if later else tendon_owner(desk, scene, mention.i, mention.j)
    loose = group.tendons if group is not None and {"FDP", "FDS"}.issuperset(group.tendons) else ()
    if loose and any(t.digit is None for t in targets):
        targets = [t for t in _parted(desk, scene, None) if t.tendon in loose] or targets  # 'FDP ends clean'
    if targets and group is not None and scene.next_word(group.j) == "pair":
        return [t for t in desk.cut() if t.tendon in group.tendons]
    if targets and _intact_here(desk, scene, group):
        cut = _parted(desk, scene, scene.setting.digits or None)
        return cut if len(cut) == 1 and cut[0].digit in scene.setting.digits else []
    if targets:
        cut = of_the_parted(desk, scene, [t for t in targets if desk.extents.get(t) != "intact"])
        return cut or _of_the_kinds(desk, scene, group)
    digits = group.digits if group is not None else ()
    if group is not None and _collects(group):
        return _through(desk, scene, _of_all(desk, scene, group))
    listed = _of_the_list(desk, scene)
    if listed:
        return listed
    if _all_words(scene) or _of_the_tendons(desk, scene):
        told = [t for t in _parted(desk, scene, digits or None) if _named_before(desk, scene, t)]
        return _through(desk, scene, told if len(told) > 1 else _parted(desk, scene, digits or None))
    alone = _only_one_named(desk, scene, mention) if group is None else []
    if alone:
        return alone
    focus = of_those_cut_through(desk, scene, _in_focus(desk, scene, digits, mention, group is not None))
    return _of_the_sewn(desk, scene, focus)


def _of_the_sewn(desk: Desk, scene: Scene, targets: list[Target]) -> list[Target]:
    """'FDS: partial, edge trimmed' over 'Ends: clean' of a form: of the one tendon of the finger that has ends."""
    if len(targets) != 1 or scene.setting.groups or not _only_smoothed(desk, targets[0], ""):
        return targets
    cut = _parted(desk, scene, (targets[0].digit,)) if targets[0].digit else []
    return cut if len(cut) == 1 and not _MANY_ENDS.isdisjoint(_label_words(scene)) else targets


def _label_words(scene: Scene) -> set[str]:
    """Return the words of a sentence and of the labels it answers."""
    return {w for i, j in scene.sentence.prefix or () for w in scene.page.words[i:j]} | scene.said


def _of_both(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'Ends of both clean', 'ends sharp on both tendons', 'Tendon ends: ragged (both)': of both flexors of a finger."""
    behind = [w for w in scene.words(mention.j, min(mention.j + 5, scene.sentence.j)) if w not in _FILLS]
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    led = ("of", "both") in pairwise(lead) and len([w for w in lead if w not in _FILLS]) <= _ENDS_OF
    bracketed = scene.words(mention.j, mention.j + 2) == ["(", "both"]
    told = behind[:1] in (["on"], ["of"], ["in"]) and "both" in scene.words(mention.j, mention.j + 3)
    told = told and behind[1:2] in (["tendons"], ["flexors"], ["of"], [])
    named = any(g.tendons or g.digits for g in scene.setting.groups if g.j <= mention.i)
    one = scene.setting.digits if len(scene.setting.digits) == 1 else ()
    here = desk.cut(one) if one and (told or (not named and (led or bracketed))) else []
    return here if len({t.tendon for t in here}) == len(_FLEXORS) else []


_ENDS_OF = 2  # words: 'ends of'
_FLEXORS = ("FDP", "FDS")


def _of_the_kinds(desk: Desk, scene: Scene, group: Group | None) -> list[Target]:
    """'Tendon ends: FDS and FDP ragged' behind words on whole tendons: of those of the kind that were cut."""
    if group is None or group.digits or not group.tendons or _MANY_ENDS.isdisjoint(scene.said):
        return []
    return [t for t in _parted(desk, scene, None) if t.tendon in group.tendons and t.slip is None]


def _through(desk: Desk, scene: Scene, targets: list[Target]) -> list[Target]:
    """'Ends of the three cut through: all clean', 'the cut-across tendons': not of one that was cut in part."""
    words = [w for w in scene.words(scene.sentence.i, scene.sentence.j) if w != "-"]
    said = any(a == "cut" and b in _WHOLE_WAY for a, b in pairwise(words))
    return [t for t in targets if desk.extents.get(t) != "partial"] if said else targets


_WHOLE_WAY = frozenset(["through", "across"])


def _only_one_named(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'Long profundus: same core, no epi, as the ends were frayed': the one tendon that the sentence names.

    So it is in 'FDP 100% just distal to A2, ends tidy' of the one finger spoken of.
    """
    one = len(scene.setting.digits) == 1
    groups = [g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)]
    named = [g for g in groups if g.digits or one or g.tendons == ("FPL",)]
    if len(named) != 1 or named[0].j > mention.i or scene.of("tendon")[1:]:
        return []
    return [t for t in group_targets(scene, named[0]) if desk.extents.get(t) != "intact"]


def _on_a_line_of_its_own(scene: Scene) -> bool:
    """'FDS: radial slip cut.' over 'FDP: cut, 100 %. Ends clean.': the ends are of the tendon heading the line."""
    if any(g.tendons or g.digits or g.generic for g in scene.setting.groups) or not scene.setting.focus:
        return False
    page, k = scene.page, scene.sentence.i
    while k > 0 and page.breaks[k] < Break.LINE:
        k -= 1
    while k < scene.sentence.i and (page.words[k].isdecimal() or not page.words[k][0].isalnum()):
        k += 1
    return k + 1 < scene.sentence.i and k in page.tendon_words and page.words[k + 1] == ":"


def _of_the_left_out(scene: Scene, mention: Mention) -> list[Target]:
    """'Clean but for the ring profundus, the ends of which were frayed': the tendon left out, told of by itself."""
    before = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and not g.reference]
    if not before or not before[-1].excepted or _TAKES_UP.isdisjoint(scene.words(before[-1].j, mention.i)):
        return []
    return group_targets(scene, before[-1])


_TAKES_UP = frozenset(["which", "whose"])


def _finger_behind(scene: Scene, mention: Mention) -> tuple[str, ...]:
    """'The tendon ends were clean in the ring finger but ragged in the small finger': each state of its finger."""
    if len(scene.of("ends")) < 2 or any(g.tendons and g.i < mention.i for g in scene.setting.groups):
        return ()
    fingers = [g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference)]
    behind = next((g for g in fingers if 0 < g.i - mention.j <= 2), None)
    led = behind is not None and scene.words(mention.j, behind.i) in (["in", "the"], ["in"], ["on", "the"])
    return behind.digits if behind is not None and led and len(fingers) > 1 else ()


def _intact_here(desk: Desk, scene: Scene, group: Group | None) -> bool:
    """Tell whether the sentence says the tendon is whole: 'the superficialis is intact the ends looked clean'."""
    if group is None or group.digits or not scene.setting.digits:
        return False
    told = desk.laid("extent", since=scene.sentence.i, before=scene.sentence.j)
    here = [f for f in told if f.value == "intact"]
    return any(f.entry[0] in scene.setting.digits and f.entry[1] in group.tendons for f in here)


def _collects(group: Group | None) -> bool:
    return group is not None and (group.generic == "all" or group.every)


def _each_named(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'FDP and FDS cut, all ends clean', '..., both with ragged edges': every tendon named before in the sentence."""
    first = scene.part(mention.i)[0]
    around = scene.words(max(first, mention.i - 6), min(mention.j + 5, scene.sentence.j))
    if _COLLECTIVE.isdisjoint(around) and "respectively" not in scene.words(mention.i, scene.sentence.j):
        return _joined_before(desk, scene, first)
    groups = [g for g in scene.setting.groups if g.tendons and g.i < mention.i and not g.reference]
    named = list(dict.fromkeys(t for g in groups for t in group_targets(scene, g)))
    own = [g for g in groups if g.i >= first]
    if len(named) == 1 and "all" in scene.words(max(groups[-1].j, mention.i - 3), mention.j):
        kind = {t.tendon for t in named} if not own or not groups[-1].digits else set()
        told = [t for t in _parted(desk, scene, None) if _named_before(desk, scene, t)]
        return [t for t in told if not kind or t.tendon in kind]  # 'FDP ends all clean'
    if len(named) < 2 or (own and own[0].i > first):
        return []
    return [t for t in named if desk.extents.get(t) != "intact"]


def _joined_before(desk: Desk, scene: Scene, first: int) -> list[Target]:
    """'FDP and FDS severed under A2, tendon ends crisp': said behind the comma of both that were named together."""
    told = [s for s in scene.subjects if s.j <= first and s.i >= scene.part(first - 1)[0]]
    before = [s for s in told if s.kind != "pulley"]
    own = [s for s in scene.subjects if s.i >= first and s.i < scene.part(first)[1]]
    if own or not before or any(s.kind != "tendon" for s in before) or first == scene.sentence.i:
        return []
    groups = [s.group for s in series(scene, before[-1], first) if s.group is not None and s.group.tendons]
    added = [s.group for s in before if s.group is not None and scene.word_before(s.i) in ("+", "&")]
    if added and len(added) == len(before) - 1:
        groups = [s.group for s in before if s.group is not None]  # 'FDP 100% + FDS 100%, ends clean'
    named = list(dict.fromkeys(t for g in groups for t in group_targets(scene, g)))
    return [t for t in named if desk.extents.get(t) != "intact"] if len(named) > 1 else []


def _of_all(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'the ends of these tendons', 'both repairs: ends clean', 'ends clean in both'."""
    words = set(scene.words(group.i - 1, group.j))
    these = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"] if words & _THESE else []
    if these:
        return these
    told = [g for g in scene.setting.groups if g.digits and not g.excepted]
    digits = group.digits or tuple(d for g in told for d in g.digits)
    if words & _SEWN:
        return desk.sewn(digits or None)
    if "both" in words and not digits and len(scene.setting.digits) == 1:
        here = [t for t in _parted(desk, scene, scene.setting.digits) if t.digit]
        if len(here) == 2:
            return here  # 'both tendons' under the heading of one finger
    return _parted(desk, scene, digits or None)


def _in_focus(desk: Desk, scene: Scene, digits: tuple[str, ...], mention: Mention, grouped: bool) -> list[Target]:
    old = [f for f in desk.laid("ends", before=scene.sentence.i) if not f.addendum]
    if not grouped and is_correction(scene) and len({f.entry for f in old}) == 1:
        return [Target(*old[0].entry)]  # 'The ends were in fact ragged', whatever was told of last
    fetched = fetched_before(desk, scene)
    if fetched:
        return fetched
    if not scene.subjects and scene.setting.digits:
        here = [t for t in _parted(desk, scene, scene.setting.digits) if _named_before(desk, scene, t)]
        live = [t for t in here if not _taken_out_before(desk, scene, t, titles=False)]
        if len(here) > 1 and live:
            return live
    if (
        not scene.setting.groups
        and _END_NOUNS & scene.said
        and all(desk.extents.get(t) == "intact" for t in scene.setting.focus)
    ):
        told = _told_before(desk, scene)
        if told:
            return told
    if "these" in scene.words(scene.sentence.i, mention.i) and scene.setting.focus:
        return [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    if scene.setting.wide and not digits:
        return [t for t in desk.repairable() if t.tendon in scene.setting.wide]
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact" and (not digits or t.digit in digits)]
    if focus and all(_taken_out_before(desk, scene, t) for t in focus):
        focus = carried(desk, scene, digits or None)[0] or focus  # 'FDS excised. Stumps cut back 3 mm, then ...'
    if focus:
        return focus
    cut = _parted(desk, scene, digits or scene.setting.digits or None)
    return cut if len(cut) == 1 or grouped else carried(desk, scene, digits or None)[0]


def _told_before(desk: Desk, scene: Scene) -> list[Target]:
    """'Both profundi were divided; both index tendons were intact. The divided ends were sharp.': the divided ones."""
    before = desk.scene_before(scene)
    if before is None:
        return []
    named = dict.fromkeys(t for g in before.setting.groups if g.tendons for t in group_targets(before, g))
    return [t for t in named if desk.extents.get(t) == "complete"]


def _taken_out_before(desk: Desk, scene: Scene, target: Target, titles: bool = True) -> bool:
    """Tell whether a tendon was told to be taken out or left before this sentence: its ends are trimmed no more."""
    told = [f for f in desk.told_of("repairs", target) if f.field == "treatment" and f.order < scene.sentence.i]
    told = [f for f in told if titles or not f.header]
    return bool(told) and told[-1].value in ("excised", "left")


def _named_before(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether the extent of a tendon was told before this sentence."""
    entry = (target.digit, target.tendon, target.slip)
    told = [f.order for f in desk.told_of("repairs", entry) if f.field == "extent" and not f.header]
    return bool(told) and min(told) < scene.sentence.j


def _of_the_list(desk: Desk, scene: Scene) -> list[Target]:
    """'Ends sharp, no fray.' on a line of its own under a list of several fingers: of every cut tendon told of."""
    first = scene.sentence.i
    words = [
        w for w in scene.words(first, first + 6) if w not in ("the", "-", "*", "all", "of", "these", "tendon", "cut")
    ]
    opens = words[:1] in (["ends"], ["stumps"]) or scene.words(first, first + 1) == ["all"]
    own_line = scene.page.breaks[first] >= Break.LINE or scene.words(first, first + 1) in (["all"], ["tendon"])
    named = any(g.digits or g.tendons for g in scene.setting.groups)
    if not (opens and own_line) or named or scene.sentence.prefix or of_one_finger(desk, scene):
        return []
    cut = [t for t in _parted(desk, scene, None) if _named_before(desk, scene, t)]
    told = {f.entry for f in desk.laid("ends")}
    several = len({t.digit for t in cut}) > 1
    return cut if several and not any((t.digit, t.tendon, t.slip) in told for t in cut) else []


def _of_the_tendons(desk: Desk, scene: Scene) -> bool:
    """'The tendon ends were clean.' behind a sentence on something else: of every tendon told cut before."""
    first = scene.sentence.i + (scene.page.words[scene.sentence.i] == "the")
    before = desk.scene_before(scene)
    bare = scene.words(first, first + 2) in (["tendon", "ends"], ["tendon", "stumps"])
    if not bare or before is None or of_one_finger(desk, scene):
        return False
    return not before.of("tendon", "slip") and bool(before.subjects)


def _all_words(scene: Scene) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if "every" in words and not _SINGLE_ENDS.isdisjoint(words):
        return True
    if not _END_NOUNS.isdisjoint(words) and (not _WIDELY.isdisjoint(words) or "the lot" in " ".join(words)):
        return True
    if _END_NOUNS.intersection(words) and any(g.excepted for g in scene.setting.groups):
        return True  # 'the ends were clean but for those of the ring finger'
    words = [w for k, w in enumerate(words) if w not in ("all", "four") or _tells_of_ends(words, k)]
    collective = not {"all", "four", "every"}.isdisjoint(words)
    of_ends = not {"ends", "stumps", "edges"}.isdisjoint({*words, *_label_words(scene)})
    return collective and of_ends and "both" not in words


_ALL_OF_THEM = 3  # words


def _tells_of_ends(words: list[str], k: int) -> bool:
    """'all ends', 'the four stumps'; not '5 mm in all.', 'a four-strand core'."""
    if words[k] == "four":
        return not _END_NOUNS.isdisjoint(words[k + 1 : k + 3]) or words[k + 1 : k + 2] == ["tendons"]
    if k == 0 and len(words) <= _ALL_OF_THEM:
        return True  # 'Tendon ends: all clean'
    if words[max(0, k - 1) : k] == ["in"] and not _END_NOUNS.isdisjoint(words[:k]):
        return words[k - 2] not in UNITS  # 'ends ragged in all', not 'the ends were cut back, 5 mm in all'
    return words[max(0, k - 1) : k] != ["in"] or words[k + 1 : k + 2] not in ([], ["."], [","], [";"])


def _parted(desk: Desk, scene: Scene, digits: tuple[str, ...] | None) -> list[Target]:
    """Return every cut tendon of the digits given; partial cuts that were only smoothed have edges, but no ends."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    edges = "edges" in words and "ends" not in words
    unsure = "" if _THROUGH.isdisjoint(words) else "left"  # 'clean in all the divided tendons'
    of_fingers = any(a in _OF_FINGERS and b in ("flexors", "tendons") for a, b in pairwise(words))
    cut = [t for t in desk.cut(digits) if t.tendon in ("FDP", "FDS") or not of_fingers]
    return [t for t in cut if edges or not _only_smoothed(desk, t, unsure)]


_OF_FINGERS = frozenset(["finger", "digital"])  # 'the divided finger flexors': none of the wrist's


_THROUGH = frozenset(["divided", "severed", "transected"])


def _only_smoothed(desk: Desk, target: Target, unsure: str) -> bool:
    """Tell whether a tendon was cut in part and not sewn; a slip without a word of its own goes by its tendon.

    `unsure` is what to take one for of which nothing is told.
    """
    extent = desk.extents.get(target) or desk.extents.get(Target(target.digit, target.tendon))
    if extent != "partial":
        return False
    return desk.treatments.get(target, unsure) not in ("", "repaired") or _edge_only(desk, target)


def _edge_only(desk: Desk, target: Target) -> bool:
    """'Just a running 5-0 to bring the cut edge down': a suture around the cut and no core, so no ends met."""
    told = {f.field for f in desk.told_of("repairs", (target.digit, target.tendon, target.slip)) if not f.header}
    return "peripheral" in told and told.isdisjoint(("size", "stitch", "strands"))
