"""Which repairs, told by their make, alone had an edge suture: 'none was run round except the three Becker repairs'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.rules.sutures.repairs_of_a_make import is_alone, is_excepted, leaves_out_of_all, named_by_make
from notereader.reader.scene import Scene

_NONE = "peripheral suture said to be left out"


def edges_of_a_make(desk: Desk, scene: Scene, spots: list[tuple[int, int]]) -> bool:
    """Lay down who had an edge suture and who had none; `spots`: where the sentence names one. RETURNS: whether it did.

    'All but the two-strand repairs' had one: those left out had none.
    """
    make = named_by_make(desk, scene) if spots else None
    if make is None or not (is_excepted(scene, make) or is_alone(scene, make)) or not scene.told(spots[0][0]):
        return False
    given, without = make.targets, make.others
    if leaves_out_of_all(scene, make):
        given, without = without, given
    _lay(desk, scene, given, "present", spots[0], "peripheral suture named")
    _lay(desk, scene, without, "absent", (min(spots[0][0], make.i), max(spots[0][1], make.j)), _NONE)
    return True


def _lay(desk: Desk, scene: Scene, targets: list[Target], value: str, span: tuple[int, int], rule: str) -> None:
    for target in targets:
        desk.tendon(scene, target, "peripheral", value, [span], rule)
