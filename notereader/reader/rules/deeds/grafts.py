"""A tendon mended with a graft whose donor is named: 'the palmaris longus as a graft, woven into both ends'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.rules.carried import carried
from notereader.reader.scene import Scene, group_targets

_SETS_IN = frozenset(
    ["wove", "woven", "weave", "weaves", "bridged", "spanned", "filled", "bridge", "span", "interposed", "pulvertaft"]
)


def grafted_with(desk: Desk, scene: Scene) -> None:
    """Lay down as grafted the tendon that the palmaris longus, a donor, was set into."""
    donor = next((g for g in scene.setting.groups if g.tendons == ("PL",) and g.reference), None)
    if donor is None or _SETS_IN.isdisjoint(scene.said) or not scene.told(donor.i) or scene.of("pulley"):
        return  # 'a strip of palmaris longus woven between the tags: a serviceable A4'
    verbs = [k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] in _SETS_IN and scene.told(k)]
    verbs = [k for k in verbs if not scene.negated(k, k + 1)]
    if not verbs:
        return
    named = [g for g in scene.setting.groups if g.tendons and not g.reference]
    targets = (
        [t for g in named for t in group_targets(scene, g)] or carried(desk, scene)[0] or list(scene.setting.focus)
    )
    span = (min(donor.i, verbs[0]), max(donor.j, verbs[0] + 1))
    for target in [t for t in targets if _mended(desk, t)]:
        desk.tendon(scene, target, "treatment", "grafted", [span], "grafted with a named donor")


def put_in_as_graft(desk: Desk, scene: Scene) -> None:
    """'I took the palmaris longus and put it in as a graft': for the one deep flexor told to be torn or cut through."""
    donor = next((g for g in scene.setting.groups if g.tendons == ("PL",)), None)
    if donor is None or not scene.told(donor.i) or scene.of("pulley", "pulleys"):
        return
    at = next((k for k in range(donor.j, scene.sentence.j) if _as_a_graft(scene, k)), None)
    if at is None or not scene.told(at) or scene.negated(at, at + 1):
        return
    if _TAKEN.isdisjoint(scene.words(scene.sentence.i, at)):
        return  # 'the palmaris was looked at as a possible graft'
    deep = [t for t in (*scene.setting.focus, *desk.cut()) if t.tendon in ("FDP", "FPL") and _mended(desk, t)]
    targets = list(dict.fromkeys(deep))
    if len(targets) == 1:
        desk.tendon(scene, targets[0], "treatment", "grafted", [(donor.i, at + 1)], "grafted with a named donor")


def _as_a_graft(scene: Scene, k: int) -> bool:
    lead = scene.words(max(scene.sentence.i, k - _NEAR), k)
    return scene.page.words[k] == "graft" and "as" in lead and _OTHER_GRAFTS.isdisjoint(lead)


_TAKEN = frozenset(["took", "taken", "harvested", "used", "put", "inserted", "placed", "served", "removed", "raised"])
_NEAR = 4  # words: 'as a free tendon graft'
_OTHER_GRAFTS = frozenset(["nerve", "vein", "skin", "bone", "pulley"])


def into_another(scene: Scene) -> bool:
    """'The distal stump was woven into the ring FDP': fastened to its neighbour, and no graft."""
    stump = not {"stump", "end"}.isdisjoint(scene.said)
    taken_in = any(g.reference and g.tendons and scene.word_before(g.i) in _INTO for g in scene.setting.groups)
    return stump and taken_in and "graft" not in scene.said


_INTO = frozenset(["through", "into", "the", "intact"])


def has_donor(desk: Desk) -> bool:
    """Tell whether a note tells of the palmaris longus as what was taken to mend something else."""
    named = ((s, g) for s in desk.having("tendon") for g in s.setting.groups if g.tendons == ("PL",))
    return any(g.reference and s.told(g.i) for s, g in named)


def _mended(desk: Desk, target: Target) -> bool:
    return target.tendon != "PL" and desk.extents.get(target) != "intact"


def of_the_far_end(desk: Desk, scene: Scene, fixed: Mention | None = None) -> bool:
    """'Distally the graft was tied over a button; proximally it was woven in by a Pulvertaft weave': its far end.

    The weave is what joins the tendon; what holds a graft to the bone is no core suture of it. Where words are given
    that fix it, the weave may be told in another clause of their sentence: 'its end was fixed over a button; in the
    palm it was woven in after Pulvertaft'.
    """
    if _FAR.isdisjoint(scene.said) or _HOLDS.isdisjoint(scene.said):
        return False
    woven = "pulvertaft" in desk.values_told("stitch") and "grafted" in desk.values_told("deed")
    here = [m for m in scene.of("stitch") if m.value == "pulvertaft"]
    if fixed is not None:
        between = (scene.words(min(m.j, fixed.j), max(m.i, fixed.i)) for m in here)
        return woven and all(not _ANOTHER_CLAUSE.isdisjoint(words) for words in between)
    return woven and not here


_ANOTHER_CLAUSE = frozenset([";", ",", "and"])


_FAR = frozenset(["graft", "grafts", "distally", "juncture", "distal"])
_HOLDS = frozenset(["button", "buttons", "anchor", "anchors", "pullout", "pull", "drilled", "drill", "bone"])
