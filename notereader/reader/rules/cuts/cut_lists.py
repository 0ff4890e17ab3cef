"""Lists of tendons under a line that says how far they were cut: 'Divided completely -', then a line for each."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.rules.structures.structures import parts_of
from notereader.reader.scene import Scene, group_targets

_NAMES = ("tendon", "digit", "structure", "sided", "anynerve", "anyartery", "bundle", "quantifier", "plural", "generic")
_JOINS = frozenset(
    [",", "and", "+", "&", "/", "to", "of", "the", "-", ">", "|", ";", "*", ".", "both", "all", "four", "three", "two"]
)
_MOST_LINES = 12
_LONGEST_HEAD = 8  # words
_FULLY = frozenset(["fully", "completely", "totally", "entirely"])


def listed_below(desk: Desk, scene: Scene) -> None:
    """Lay down, for the tendons that a line names and nothing more, what the line at the head of its list says."""
    listed = not scene.header or scene.sentence.section == "diagnosis"
    head = _head_of(desk, scene) if listed and _only_names(scene) else None
    if head is None:
        return
    value = "complete" if head.kind == "hurt" else head.value
    if head.kind == "hurt" and _FULLY.isdisjoint(scene.said):
        return  # 'What was cut: - FDP ring': how far is not told
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        proof = [(group.i, group.j), (head.i, head.j)]  # the name, and what its list says
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", value, proof, f"extent {value}")
    for part in parts_of(desk, scene) if scene.of("structure") else ():
        for side in part.sides if not part.digits else ():
            proof = [(part.i, part.j), (head.i, head.j)]
            desk.add(scene, "injuries", (None, part.structure, side), "extent", value, proof, f"extent {value}")


def listed_beside(desk: Desk, scene: Scene) -> None:
    """'What was cut: the FDP, fully; the FDS, both slips fully': of a list on one line what is told to be cut fully."""
    words = scene.page.words
    colon = next(
        (k for k in range(scene.sentence.i, scene.sentence.i + _LONGEST_LABEL) if words[k : k + 1] == [":"]), 0
    )
    if not colon or words[colon - 1] not in _CUT or "not" in scene.words(scene.sentence.i, colon):
        return
    groups = [g for g in scene.setting.groups if g.tendons and g.i > colon and not (g.reference or g.excepted)]
    for n, group in enumerate(groups):
        end = groups[n + 1].i if n + 1 < len(groups) else scene.sentence.j
        at = next((k for k in range(group.j, end) if words[k] in _FULLY and scene.told(k)), None)
        if at is None or any(group.j <= m.i < at for m in scene.of(*_OTHERS)):
            continue
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", "complete", [(group.i, at + 1)], "extent complete")


_LONGEST_LABEL = 5  # words: 'What was cut:'
_CUT = frozenset(["cut", "severed", "divided", "injured", "lacerated"])
_OTHERS = ("structure", "sided", "anynerve", "anyartery", "bundle", "pulley")


def _head_of(desk: Desk, scene: Scene) -> Mention | None:
    """Return what the head of the list says: the nearest line above that is no line of names."""
    before: Scene | None = scene
    for _ in range(_MOST_LINES):
        at = before.sentence.i if before is not None else 0
        before = desk.scene_before(before) if before is not None else None
        if before is None or not Break.LINE <= scene.page.breaks[at] < Break.BLANK:
            return None
        if not (_only_names(before) or _names_and_share(before)):
            break
    if before is None or before.setting.groups:
        return None
    if before.sentence.j - before.sentence.i > _LONGEST_HEAD + 1:
        return _leads_to_list(before)
    told = [m for m in before.of("extent") if before.told(m.i) or (_says(before, m) and m.value == "complete")]
    told = told or [m for m in before.of("hurt") if _says(before, m) and m.value == "hurt"]
    closes = scene.page.words[before.sentence.j - 1] in (":", "-")
    return told[0] if closes and len(told) == 1 and told[0].value in ("complete", "intact", "hurt") else None


def _leads_to_list(scene: Scene) -> Mention | None:
    """'Right wrist laceration, zone V, with division of:': a longer head, whose last words lead to its list."""
    end = scene.sentence.j - 1
    for m in scene.of("extent"):
        led = [w for w in scene.words(m.j, end) if w not in _FOLLOWING]
        open_still = scene.word_before(m.i) in _SOUGHT or scene.negated(m.i, m.j)
        if scene.told(m.i) and m.value == "complete" and led == ["of"] and scene.words(end, end + 1) == [":"]:
            return None if open_still else m
    return None


_SOUGHT = frozenset(["for", "any", "possible", "suspected"])  # 'explored for division of:'
_FOLLOWING = frozenset(
    ["the", "following", "structures", "tendons", "both", "all", "division", "divisions", "laceration", "lacerations"]
)


def _says(scene: Scene, mention: Mention) -> bool:
    """Tell whether the head of a list says its word; 'What was cut:' on its own line is no empty field of a form."""
    return scene.told(mention.i) or scene.page.standing[mention.i] == "unfilled"


def _names_and_share(scene: Scene) -> bool:
    """'- FDP index and middle: not cut', '- FCR 20%': a line of the same list that tells its own extent."""
    bullet = scene.page.words[scene.sentence.i] in ("-", "*") or scene.page.words[scene.sentence.i - 1] in ("-", "*")
    return bullet and any(g.tendons for g in scene.setting.groups)


def _only_names(scene: Scene, first: int | None = None) -> bool:
    """Tell whether nothing but names, and that they were cut fully, stands in a sentence or behind a word of it."""
    first = scene.sentence.i if first is None else first
    named = {k for m in scene.of(*_NAMES) for k in range(max(m.i, first), m.j)}
    named |= {k for g in scene.setting.groups for k in range(max(g.i, first), g.j)}
    whole = {k for m in scene.of("extent") if m.value == "complete" for k in range(m.i, m.j)}
    words = scene.page.words
    rest = [words[k] for k in range(first, scene.sentence.j) if k not in named and k not in whole]
    return bool(named) and all(w in _JOINS or w in _FULLY or w.isdecimal() for w in rest)


def listed_whole(desk: Desk, scene: Scene) -> None:
    """'Divided: PL, FCU 100 %, FDS x 3': where a list says of one that it was cut fully, the others were as well."""
    told = scene.of("extent")
    if len(told) < _HEAD_AND_ONE or told[0].i != scene.sentence.i or {m.value for m in told} != {"complete"}:
        return
    head = told[0]
    marked = scene.page.words[head.j : head.j + 1] in ([":"], ["-"])
    if not marked or not scene.told(head.i) or not _only_names(scene, head.j + 1):
        return
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", "complete", [(head.i, head.j), (group.i, group.j)], "extent complete")


_HEAD_AND_ONE = 2  # words that say how far: that of the head, and one behind a name


def listed_with_share(desk: Desk, scene: Scene) -> None:
    """'Cut: FCR, FDS 2-5, FPL 50 %': where one of a list is told to be cut in part, the others are cut through."""
    first, words = scene.sentence.i, scene.page.words
    labelled = words[first] in _CUT and words[first + 1 : first + 2] == [":"] and scene.page.breaks[first] >= Break.LINE
    told = any(any(w.isalpha() for w in scene.words(m.i, m.j)) for m in scene.of("extent"))  # not only a "100 %"
    if not labelled or "%" not in scene.units or told or scene.of("ends", "deed", "slip"):
        return
    laid = {f.entry for f in desk.laid("extent", since=first) if f.group == "repairs"}
    partial = {f.entry for f in desk.laid("extent_percent") if f.group == "repairs"} & laid
    for group in scene.setting.groups if partial else ():
        for target in group_targets(scene, group) if group.tendons and not group.reference else ():
            if (target.digit, target.tendon, target.slip) not in laid:
                proof = [(first, first + 1), (group.i, group.j)]
                desk.tendon(scene, target, "extent", "complete", proof, "extent complete")
