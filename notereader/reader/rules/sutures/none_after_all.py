"""A peripheral suture only spoken of, and then: 'An edge stitch adds strength, I told him. None was placed here.'.

That a repair has none promises nothing. What was spoken of may be a lesson, a habit or the suture of an artery; what is
denied is that of the tendon just told to be sewn.
"""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.rules.sutures.no_peripheral import RULE
from notereader.reader.rules.sutures.roles import PERIPHERAL
from notereader.reader.rules.sutures.suture_owners import suture_owners
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import phrases_by_first_word

_DENIALS = phrases_by_first_word("none_after_all", "denials")
_CLOSES = frozenset(["", ".", ",", ";", "here", "in", "today", "because", "as", "for", "this"])
_OF_OTHERS = ("gap", "glide", "tension", "bulk", "strandword", "stitch", "sided", "structure", "pulley", "test")


def none_after_all(desk: Desk, scene: Scene) -> None:
    """Lay down that the tendon spoken of has none, where the words before a denial name a peripheral suture."""
    if _DENIALS.keys().isdisjoint(scene.said) or scene.header:
        return
    for k in range(scene.sentence.i, scene.sentence.j):
        end = next((k + len(p) for p in _DENIALS.get(scene.page.words[k], ()) if _stands_at(scene, k, p)), 0)
        if end and _said_of_today(scene, k) and scene.next_word(end) in _CLOSES and _spoken_of(desk, scene, k):
            for target in suture_owners(desk, scene, k, end)[0]:
                if _may_have_none(desk, target):
                    desk.tendon(scene, target, "peripheral", "absent", [(k, end)], RULE)
            return


def _said_of_today(scene: Scene, k: int) -> bool:
    """'I usually finish with a running 6-0 but was called away, and the edges were left without one'."""
    turned = not {"but", "today", "here"}.isdisjoint(scene.words(scene.sentence.i, k))
    return scene.told(k) or (scene.page.standing[k] == "teaching" and turned)


def _stands_at(scene: Scene, k: int, phrase: list[str]) -> bool:
    return scene.page.words[k : k + len(phrase)] == phrase


def _spoken_of(desk: Desk, scene: Scene, k: int) -> bool:
    """Tell whether an edge suture is named before word k, in its sentence or the one before, and nothing else since."""
    if not scene.kinds.isdisjoint(_OF_OTHERS):
        return False
    if _names_one(scene, k):
        return True
    before = desk.scene_before(scene)
    near = before is not None and before.sentence.block == scene.sentence.block
    return near and before is not None and _names_one(before, before.sentence.j)


def _names_one(scene: Scene, k: int) -> bool:
    named = any(m.value == PERIPHERAL and m.i < k for m in scene.of("role"))
    return named or any(m.value.startswith("running") and m.i < k for m in scene.of("pattern"))


def _may_have_none(desk: Desk, target: Target) -> bool:
    """Tell whether a tendon was sewn, and no peripheral suture of it was told of."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    sewn = desk.has_suture(target) or desk.treatments.get(target) in ("repaired", "reinserted")
    return sewn and not any(f.field == "peripheral" for f in told)
