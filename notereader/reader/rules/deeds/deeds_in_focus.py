"""Deeds told without a name, 'It was sewn with ...': of the tendon in focus, where it is known to be cut."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.layout.boxes import BOX_ENDS
from notereader.reader.page import Mention
from notereader.reader.rules.deeds.sewn_now import sewn_now
from notereader.reader.rules.deeds.taken_out_whole import taken_out_whole
from notereader.reader.rules.strangers import has_strange_subject
from notereader.reader.scene import Scene

OF_BONE = frozenset(
    ["bone", "phalanx", "insertion", "button", "anchor", "p2", "p3", "drill", "pull-out", "transosseous"]
)
_OF_NERVES = frozenset(["structure", "sided", "anynerve", "anyartery"])


def from_focus(desk: Desk, scene: Scene, deed: Mention) -> list[Target]:
    """'It was sewn with ...', 'Edge smoothed off, no stitch': the tendon in focus, where it is known to be cut."""
    value = deed.value
    strange = value != "trimmed" and has_strange_subject(scene, deed.i)  # 'The flap was trimmed smooth.'
    if _of_other_thing(desk, scene) or strange:
        return []
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    near, first = deed.i - scene.sentence.i <= 8, scene.sentence.i
    opens = deed.i <= scene.sentence.i + 1 or (scene.words(first, first + 1) == ["it"] and near)
    if value == "excised" and opens and all(t.tendon == "FDS" for t in focus):
        return [] if _another_it(desk, scene, deed) else focus
    if value == "excised" and opens:
        return taken_out_whole(desk, scene, deed, focus)
    if value == "trimmed" and near and not focus:
        return the_one_nicked(desk, scene.setting.digits)  # 'FDP nicked. FDS fine. I trimmed the flap.'
    if value in ("trimmed", "left") and (near or ticked(scene, deed) or _closes_its_cut(desk, scene, deed)):
        if value == "left" and not ticked(scene, deed) and any(known_sewn(desk, scene, deed, t) for t in focus):
            return []
        return focus
    if value in ("reinserted",) and scene.header:
        return focus
    if value == "grafted" and scene.header and "tendon" in scene.said and not _OF_NERVES & scene.kinds:
        return desk.deep_named if len(desk.deep_named) == 1 else []  # '(x) Tendon graft'
    if value == "grafted" and not scene.header and _graft_put_in(scene, deed):
        deep = [t for t in focus if t.tendon in ("FDP", "FPL")]
        return deep if len(deep) == 1 and (deep[0] in desk.extents or deep[0] in desk.hurt) else []
    to_bone = value == "reinserted" and not OF_BONE.isdisjoint(scene.said)  # 'Reattached to bone with 2-0'
    tied = scene.words(deed.i, deed.i + 1) == ["tied"]
    threaded = to_bone and (tied or bool(scene.of("material", "stitch")))  # '3-0 Prolene, tied over a button'
    if (value == "repaired" or to_bone) and (near or threaded) and not scene.header:
        return sewn_now(desk, scene, deed)
    return []


def _graft_put_in(scene: Scene, deed: Mention) -> bool:
    """'A palmaris graft was placed', 'a tendon graft was then inserted': and nothing of a nerve or a pulley."""
    if not (_OF_NERVES | {"pulley", "pulleys"}).isdisjoint(scene.kinds):
        return False
    if _DONORS.isdisjoint(scene.words(max(scene.sentence.i, deed.i - 2), deed.j)):
        return False
    behind = scene.words(deed.j, min(deed.j + _SOON, scene.sentence.j))
    return behind[:1] in (["was"], ["graft"]) and not _PUT_IN.isdisjoint(behind) and "not" not in behind


_DONORS = frozenset(["palmaris", "plantaris", "longus", "tendon", "pl"])
_PUT_IN = frozenset(["placed", "put", "inserted", "interposed", "used", "laid", "fitted", "passed"])
_SOON = 4  # words: 'was then put in'


def the_one_nicked(desk: Desk, digits: tuple[str, ...]) -> list[Target]:
    """Return the one tendon of the digits given that was cut in part, or none where there are more of them."""
    nicked = [t for t in desk.cut(digits or None) if desk.extents.get(t) == "partial"]
    return nicked if len(nicked) == 1 else []


def ticked(scene: Scene, mention: Mention) -> bool:
    """'[x] not repaired': the option of a ticked box."""
    return not BOX_ENDS.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 2), mention.i))


def known_sewn(desk: Desk, scene: Scene, mention: Mention, target: Target) -> bool:
    """Tell whether a tendon is known to be repaired; of one cut in part the title alone does not say so.

    'Operation: repair of FDP. FDP was cut for a third of its width. It was left as it was.'
    """
    repaired = desk.treatments.get(target) == "repaired"
    denied = scene.page.words[mention.i] in _DENIES  # 'No repair was made and no trimming either'
    at_its_end = denied or scene.next_word(mention.j) in _CLAUSE_ENDS
    if not repaired or desk.extents.get(target) != "partial" or not at_its_end:
        return repaired  # also of 'It was left slightly bulky'
    told = desk.told_of("repairs", target)
    found = next((f.order for f in told if f.field == "extent"), 0)
    return any(f.field in TELL_SEWN and f.order > found for f in told)


_CLAUSE_ENDS = frozenset(["", ".", ",", ";"])
_DENIES = frozenset(["no", "not", "never", "nothing"])
TELL_SEWN = ("treatment", "strands", "stitch", "size", "peripheral")


def _closes_its_cut(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'FDP' above '- 20% cut on the radial edge, smooth, left alone': the sentence tells of one cut in part."""
    focus = scene.setting.focus
    partly = len(focus) == 1 and desk.extents.get(focus[0]) == "partial"
    told = any(m.i < mention.i for m in scene.of("hurt", "extent"))
    return partly and told and not scene.subjects and scene.next_word(mention.j) in ("", ".", ",", ";")


def _another_it(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'There was glass in the wound. I took it out.', 'A 5-0 had torn out. I took it out.': no tendon was told of."""
    before = desk.scene_before(scene)
    if {"it", "them"}.isdisjoint(scene.words(mention.i, mention.j)) or before is None:
        return False
    return not any(g.tendons for g in before.setting.groups) or bool(before.of("material", "stitch"))


def _of_other_thing(desk: Desk, scene: Scene) -> bool:
    """'Digital nerve bruised, unbroken. Left.': the sentence before was about no tendon and no finger."""
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or scene.sentence.j - scene.sentence.i > 4:
        return False
    return bool(before.subjects) and all(s.kind not in ("tendon", "digit", "role") for s in before.subjects)
