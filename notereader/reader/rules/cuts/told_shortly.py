"""Extents told in a word or two behind a tendon: 'FDP total', 'the slip held well', 'had lost its radial slip'."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.cuts.cut_owners import any_hurt
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_IN_FULL = word_list("tendons", "in_full")
_HOLDS = tuple(phrase.split() for phrase in sorted(word_list("tendons", "holds_phrases")))
_LOOKED = word_list("tendons", "looked_at")
_CLOSES = frozenset(["", ",", ".", ";", "+", "and", "&", ")"])
_TOO = frozenset(["too", "also"])
_OTHERS = ("pulley", "pulleys", "structure", "sided", "bundle", "anynerve", "anyartery", "bone")
_BEFORE_WHOLE = frozenset(["both", "all", "two", "four", "and", "found", "were", "was", ":", ",", "are", "quite"])


def told_shortly(desk: Desk, scene: Scene) -> None:
    """Find what a word or two behind a tendon's name says of its cut."""
    if scene.sentence.section in ("instructions", "closure", "admin"):
        return
    for rule in (_in_full, _held, _lost_a_slip, _cut_as_well, _looked_at, _everything):
        rule(desk, scene)


def _named(scene: Scene) -> list[Group]:
    """Return the tendons that a sentence names as its own."""
    return [g for g in scene.setting.groups if g.tendons and g.i < g.j and not (g.reference or g.excepted)]


@needs(words=_IN_FULL)
def _in_full(desk: Desk, scene: Scene) -> None:
    """'FDP total, ends smooth', 'FCU fully. PL fully.': how far, right behind the name and with nothing after it."""
    for group in _named(scene):
        k = group.j
        zone = any(m.i == k + 1 for m in scene.of("zone"))  # 'RF   FDS + FDP   compl   z III'
        if scene.next_word(k) not in _IN_FULL or not scene.told(k) or not (zone or scene.next_word(k + 1) in _CLOSES):
            continue
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", "complete", [(group.i, k + 1)], "extent complete")


@needs(kinds=["tendon", "slip"])
def _held(desk: Desk, scene: Scene) -> None:
    """'Left unsutured as the radial slip held well', 'FDS good': of one not sewn; not 'the FDS repair held'."""
    for group in _named(scene):
        at = group.j + (scene.next_word(group.j) == ":")
        phrase = next((p for p in _HOLDS if scene.words(at, at + len(p)) == p), None)
        if phrase is None or group.tendons != ("FDS",) or not scene.told(at):
            continue
        end = at + len(phrase)
        if len(phrase) == 1 and scene.next_word(end) not in _CLOSES:
            continue
        for target in group_targets(scene, group):
            if target not in desk.treatments and desk.extents.get(target) not in HURT_KINDS:
                desk.tendon(scene, target, "extent", "intact", [(group.i, end)], "extent intact")


@needs(words=["lost"])
def _lost_a_slip(desk: Desk, scene: Scene) -> None:
    """'The superficialis had lost just its radial slip': that slip is cut through, and nothing is said of the other."""
    for slip in (m for m in scene.of("slip") if m.value in ("radial", "ulnar") and scene.told(m.i)):
        lead = [w for w in scene.words(max(scene.sentence.i, slip.i - 5), slip.i) if w not in _JUST]
        tendon = next((g for g in reversed(scene.setting.groups) if g.j <= slip.i and not g.reference), None)
        if lead[-1:] != ["lost"] or tendon is None or scene.next_word(slip.j) not in _ENDS_LOSS:
            continue
        of_one = group_targets(scene, tendon) if tendon.tendons == ("FDS",) else []
        for target in of_one:
            told = target._replace(slip=slip.value)
            desk.tendon(scene, told, "extent", "complete", [(tendon.i, slip.j)], "slip lost")


_JUST = frozenset(["only", "just", "its", "the", "all", "of"])
_ENDS_LOSS = _CLOSES | {"to", "while", "whereas", "but", "in"}


@needs(kinds=["hurt"])
def _cut_as_well(desk: Desk, scene: Scene) -> None:
    """'FDP was severed. FDS ulnar slip cut also', 'FDS had been cut as well': as far as the one before."""
    for cut in (m for m in scene.of("hurt") if scene.words(m.i, m.j) == ["cut"] and scene.told(m.i)):
        behind = scene.words(cut.j, cut.j + 2)
        also = behind[:1] != [] and (behind[0] in _TOO or behind == ["as", "well"])
        end = cut.j + (1 if behind[:1] != [] and behind[0] in _TOO else 2)
        group = next((g for g in reversed(_named(scene)) if g.j <= cut.i), None)
        if not also or group is None or scene.next_word(end) not in _CLOSES | {"at", "in", "both"}:
            continue
        between = [w for w in scene.words(group.j, cut.i) if w not in _WAS]
        if (between and between[0] != ",") or not _complete_before(desk, scene, group):
            continue
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", "complete", [(group.i, end)], "cut as the one before")


_WAS = frozenset(["was", "were", "had", "been", "is", "has", "have", "the"])


def _complete_before(desk: Desk, scene: Scene, group: Group) -> bool:
    """Tell whether the last cut told, here or in the sentence before, went all the way."""
    before = desk.scene_before(scene)
    first = before.sentence.i if before is not None else scene.sentence.i
    told = desk.laid("extent", since=first, before=group.i)
    own = {(t.digit, t.tendon) for t in group_targets(scene, group)}
    return bool(told) and told[-1].value == "complete" and not any((f.entry[0], f.entry[1]) in own for f in told)


@needs(words=_LOOKED)
def _looked_at(desk: Desk, scene: Scene) -> None:
    """'FDP and FDS explored through the wound: both intact', 'Ring: both tendons seen and whole.'"""
    for whole in (m for m in scene.of("extent") if m.value == "intact" and scene.told(m.i)):
        denied_in_itself = " ".join(scene.words(whole.i, whole.j)).startswith(("not", "no", "un"))
        if scene.negated(whole.i, whole.j) and not denied_in_itself:
            continue
        groups = [g for g in scene.setting.groups if g.j <= whole.i]
        tendons = [g for g in groups if g.tendons or g.generic == "all"]
        if len(tendons) != 1 or any(g.i > tendons[0].i for g in groups) or scene.next_word(whole.j) not in _CLOSES:
            continue
        between = scene.words(tendons[0].j, whole.i)
        named = [m for m in scene.of("hurt", "deed", "fraction", *_OTHERS) if tendons[0].j <= m.i < whole.i]
        others = any(scene.page.words[m.i] != "wound" for m in named)
        if others or _LOOKED.isdisjoint(between) or between[-1] not in _BEFORE_WHOLE:
            continue
        for target in _flexors(desk, scene, tendons[0], whole):
            desk.tendon(scene, target, "extent", "intact", [(tendons[0].i, whole.j)], "extent intact")


@needs(words=["everything"])
def _everything(desk: Desk, scene: Scene) -> None:
    """'Ring: everything fine.': both flexors of the finger that opens the sentence, where none was told hurt."""
    groups = scene.setting.groups
    whole = [m for m in scene.of("extent") if m.value == "intact" and scene.told(m.i)]
    if len(groups) != 1 or not groups[0].digits or groups[0].tendons or groups[0].i != scene.sentence.i or not whole:
        return
    lead = scene.words(groups[0].j, whole[0].i)
    if lead not in ([":", "everything"], ["-", "everything"], [",", "everything"]) or len(groups[0].digits) != 1:
        return
    digit = groups[0].digits[0]
    if scene.next_word(whole[0].j) not in _CLOSES or any_hurt(desk, scene, (digit,)):
        return
    for tendon in ("FPL",) if digit == "thumb" else ("FDP", "FDS"):
        span = [(groups[0].i, whole[0].j)]
        desk.tendon(scene, Target(digit, tendon), "extent", "intact", span, "extent intact")


def _flexors(desk: Desk, scene: Scene, group: Group, whole: Mention) -> list[Target]:
    """Return the tendons named, or both flexors of the fingers of 'both tendons', where none of them was told hurt."""
    if group.tendons:
        return [t for t in group_targets(scene, group) if desk.extents.get(t) not in HURT_KINDS]
    before = [g for g in scene.setting.groups if g.digits and g.j <= group.i and not g.reference]
    digits = group.digits or (before[-1].digits if before else scene.setting.digits)
    if any_hurt(desk, scene, digits) or len(digits) > 1 + bool(before):
        return []
    return [Target(d, t) for d in digits for t in (("FPL",) if d == "thumb" else ("FDP", "FDS"))]
