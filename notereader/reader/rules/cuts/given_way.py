"""Tendons torn off or come apart: avulsions, and earlier repairs that gave way."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.scene import Scene, group_targets

TORN_NOUNS = frozenset(["avulsion", "rupture"])
GAVE_WAY = frozenset(["way", "ruptured", "parted", "snapped", "dehisced", "failed", "apart"])
_OLD_REPAIR = frozenset(["repair", "repairs", "suture", "sutures", "join", "tenorrhaphy"])


@needs(words=TORN_NOUNS)
def avulsion(desk: Desk, scene: Scene) -> None:
    """'Closed avulsion of the profundus', 'Rupture of the FDP suture line': torn off its bone, or in two again."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] not in TORN_NOUNS or scene.next_word(k + 1) != "of" or not scene.told(k):
            continue
        if scene.negated(k, k + 1) or not _FEARED.isdisjoint(scene.words(max(scene.sentence.i, k - 3), k)):
            continue
        groups = [g for g in scene.setting.groups if g.tendons and not g.reference]
        named = [g for g in groups if 0 < g.i - k <= 3]
        if words[k] == "rupture" and not (named and scene.next_word(named[0].j) in _OLD_REPAIR):
            continue
        for target in (t for g in named[:1] for t in group_targets(scene, g) if t.tendon in ("FDP", "FPL", "FDS")):
            desk.tendon(scene, target, "extent", "complete", [(min(k, named[0].i), max(k + 1, named[0].j))], "avulsion")


_FEARED = frozenset(["risk", "risks", "chance", "possible", "possibility", "fear", "feared", "against", "if"])


def gave_way(desk: Desk, scene: Scene) -> None:
    """'The repair had given way', 'the old suture line has parted': the deep flexor sewn before is in two again."""
    if GAVE_WAY.isdisjoint(scene.said) or scene.header:
        return
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        before = scene.words(max(scene.sentence.i, k - 5), k)
        if words[k] not in GAVE_WAY or not scene.told(k) or scene.negated(k, k + 1):
            continue
        for target in _fell_apart(desk, scene, k, before):
            desk.tendon(scene, target, "extent", "complete", [(k - len(before), k + 1)], "the repair gave way")


def _fell_apart(desk: Desk, scene: Scene, k: int, before: list[str]) -> list[Target]:
    """Return the tendons found in two at word k: the one named, or that whose repair is spoken of."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= k and k - g.j <= _FAR_APART and not g.reference]
    if named:
        found = (
            group_targets(scene, named[-1]) if scene.page.words[k - 1] in _CAME_APART and not scene.of("test") else []
        )
        told = (t for t in found if t not in desk.extents)  # 'FDS repair had given way. FDS excised.'
        return [t for t in told if desk.treatments.get(t, "excised") == "excised"]
    if not _repair_fell(before) or scene.of("tendon") or len(scene.setting.digits) != 1:
        return []
    return [t for t in desk.deep_named if t.digit == scene.setting.digits[0] and t not in desk.extents]


def _repair_fell(before: list[str]) -> bool:
    """'The old suture line has now given': the repair is what gave way, not the lamp that failed beside it."""
    subject = [word for word in before if word not in _HAD]
    return subject[-1:] != [] and (subject[-1] in _OLD_REPAIR or (subject[-1] == "line" and "suture" in subject))


_HAD = frozenset(
    [
        "had",
        "has",
        "have",
        "found",
        "then",
        "just",
        "completely",
        "clearly",
        "obviously",
        "been",
        "was",
        "is",
        "were",
        "now",
    ]
) | {"since", "simply", "again", "evidently", "come", "given", "pulled", "fallen", "all", "wholly", "partly", "cleanly"}
_FAR_APART = 7  # words
_CAME_APART = frozenset(["pulled", "come", "came", "lay", "drawn", "sprung", "given", "fallen"])


def torn_off(desk: Desk, scene: Scene) -> None:
    """'The profundus had torn away cleanly from the distal phalanx', 'FDP pulled off the bone': off its insertion."""
    if TORN.isdisjoint(scene.said) or scene.header or scene.of("test", "gap"):
        return
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        behind = scene.words(k + 1, min(k + 8, scene.sentence.j))
        if scene.page.words[k] not in TORN or not scene.told(k) or scene.negated(k, k + 1) or not _off_bone(behind):
            continue
        named = [g for g in scene.setting.groups if g.tendons and g.j <= k and k - g.j <= _CLOSE and not g.reference]
        for target in group_targets(scene, named[-1]) if named else []:
            if target.tendon in ("FDP", "FPL", "FDS"):
                desk.tendon(scene, target, "extent", "complete", [(named[-1].i, k + 1)], "torn off its bone")


def _off_bone(behind: list[str]) -> bool:
    """Tell whether the words behind a verb of tearing lead from a bone: 'away cleanly from the distal phalanx'."""
    end = next((n for n, word in enumerate(behind) if word in _BONES), 0)
    lead = behind[:end]
    return not {"from", "off"}.isdisjoint(lead) and _LEADS_OFF.issuperset(lead)


TORN = frozenset(["torn", "pulled", "came", "come", "stripped", "snapped", "ripped", "detached"])
_BONES = frozenset(["phalanx", "bone", "insertion", "footprint", "p3"])
_LEADS_OFF = frozenset(
    ["away", "off", "loose", "cleanly", "clean", "from", "the", "its", "distal", "terminal", "base", "of"]
)
_CLOSE = 3  # words between a tendon and what happened to it
