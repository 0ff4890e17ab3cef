"""A share of a cut put right in an addendum: 'I wrote 55 per cent. The drawing says 70', 'given as 40 %; it was 60'.

The sentence names no tendon: it is the one of which the first share was told.
"""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.page import Quantity
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_WROTE = word_list("misstated", "wrote")
_HOLDS = word_list("misstated", "holds")
_WHOLE = 100
_NEAR = 4  # words between the verb of writing and the share written
_FAR = 9  # words between that share and the one that holds


@needs(words=_WROTE, units=["%"])
def misstated_shares(desk: Desk, scene: Scene) -> None:
    """Put the share that holds in the place of the one written, and keep the latter from being told anew."""
    if not scene.page.in_addendum(scene.sentence) or any(g.tendons for g in scene.setting.groups):
        return
    for q in scene.quantities:
        if q.unit != "%" or _WROTE.isdisjoint(scene.words(max(scene.sentence.i, q.i - _NEAR), q.i)):
            continue
        holders = _holders(desk, q)
        holds = _that_holds(desk, scene, q) if holders else None
        if holds is None:
            continue
        where, share = holds
        scene.page.mark(q.i, q.j, "teaching")
        for target in holders:
            desk.tendon(where, target, "extent_percent", share.high or 0, [(share.i, share.j)], "share put right")


def _holders(desk: Desk, q: Quantity) -> list[Target]:
    """Return the tendons of which a share was told before."""
    told = (f for f in desk.laid("extent_percent", before=q.i) if f.group == "repairs")
    return list(dict.fromkeys(Target(*f.entry) for f in told if f.value == q.high))


def _that_holds(desk: Desk, scene: Scene, q: Quantity) -> tuple[Scene, Quantity] | None:
    """Return the share that follows, in the sentence or the next one, behind a word for what holds."""
    after = desk.scene_after(scene)
    for where in (scene, after) if after is not None and after.sentence.i - q.j <= 1 else (scene,):
        for share in where.quantities:
            led = where.words(max(where.sentence.i, q.j, share.i - _NEAR), share.i)
            fits = share.i >= q.j and share.unit in ("", "%") and 0 < (share.high or 0) <= _WHOLE
            if fits and share.i - max(q.j, where.sentence.i) <= _FAR and not _HOLDS.isdisjoint(led):
                return where, share
    return None
