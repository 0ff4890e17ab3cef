"""What an exception from 'repaired' says of the one left out: 'all but PL were repaired', 'except for the ring'."""

from notereader.reader.desk import Desk
from notereader.reader.drafting.settling import EXCEPTED
from notereader.reader.groups import Group, Target
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, group_targets

_ENDS = frozenset(["", ",", ".", ";", ")", "were", "was"])
_TURNS = frozenset(["which", "where", "whose", "that", "it", "as", "because", "since"])
_NEAR = 3  # words between the exception and the deed: ', all repaired', 'were then repaired'


def left_by_exception(desk: Desk, scene: Scene) -> None:
    """Take a cut tendon for left where a sentence says that all but it were repaired, and no more of it."""
    if scene.header:
        return
    for group in scene.left_out:
        deed = next((m for m in scene.of("deed") if m.value == "repaired" and _beside(scene, group, m)), None)
        if deed is None or scene.negated(deed.i, deed.j) or not scene.told(deed.i):
            continue
        span = (min(deed.i, group.i), max(deed.j, group.j))
        for target in _cut_ones(desk, scene, group):
            entry = (target.digit, target.tendon, target.slip)
            desk.add(scene, "repairs", entry, "treatment", "left", [span], EXCEPTED, of_excepted=True)


def _beside(scene: Scene, group: Group, deed: Mention) -> bool:
    """'Except for the ring, all repaired', 'all were repaired except PL.': what stands further off is of a suture."""
    if scene.page.words[deed.j - 1] in ("repair", "repairs"):
        return False
    if group.j <= deed.i:
        return deed.i - group.j <= _NEAR and _TURNS.isdisjoint(scene.words(group.j, deed.i))
    lead = scene.words(deed.j, group.i)
    closed = scene.next_word(group.j) in _ENDS and scene.next_word(group.j + 1) not in _TURNS
    return len(lead) <= _NEAR + 2 and "with" not in lead[:1] and closed


def _cut_ones(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """Return the tendons of an exception that are known to be cut, and of which nothing else was told."""
    if group.tendons:
        meant = group_targets(scene, group)
    else:
        kinds = {t.tendon for t in scene.setting.focus} | {t for g in scene.setting.groups for t in g.tendons}
        meant = [t for t in desk.cut(group.digits) if t.digit in group.digits and t.tendon in kinds]
    return [t for t in meant if desk.extents.get(t) in ("complete", "partial") and not _told(desk, t)]


def _told(desk: Desk, target: Target) -> bool:
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    return any(f.field == "treatment" and not f.header for f in told)
