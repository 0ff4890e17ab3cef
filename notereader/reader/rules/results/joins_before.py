"""What is told of the join of a nerve, a vessel, a pulley or a plate right behind it, and of no tendon."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.rules.sutures.roles import MENDED
from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_JOINED = MENDED | word_list("roles", "joined")
_TESTING = word_list("quality", "testing")
_LABELLED = frozenset([":", "=", "-", "?"])
_OPENING = 8  # words: 'under the microscope the ulnar digital nerve'
_THINGS = ("structure", "sided", "bundle", "anynerve", "anyartery", "pulley")


def of_another_join(desk: Desk, scene: Scene, result: Mention) -> bool:
    """'Ulnar digital nerve repaired with 9-0. No gap, no tension.': of the nerve, for all that is said.

    Not where the sentence names a tendon, a finger or a repair, or tells how it was tested or ran, and not on a line
    of its own or behind a label, which answer for the whole finger.
    """
    before = desk.scene_before(scene)
    if before is None or scene.page.breaks[scene.sentence.i] >= Break.COLUMN or scene.sentence.prefix:
        return False
    if scene.next_word(result.j) in _LABELLED:
        return False  # 'Tension: fair amount'
    tested = not scene.kinds.isdisjoint(("test", "glide")) or not _TESTING.isdisjoint(scene.said)
    if scene.setting.groups or (tested and "there" not in scene.said):  # 'no tension there with the wrist flexed'
        return False
    opens = any(m.i - before.sentence.i <= _OPENING for m in before.of(*_THINGS))
    if not opens or before.of("glide") or any(g.tendons or g.generic for g in before.setting.groups):
        return False
    return not _JOINED.isdisjoint(before.said) or bool(find_sizes(before))
