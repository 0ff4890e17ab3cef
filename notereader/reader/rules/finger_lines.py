"""Lines that one finger's name opens or heads: what they tell is of that finger, and of no other."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break
from notereader.reader.scene import Scene


def of_one_finger(desk: Desk, scene: Scene) -> bool:
    """'SMALL FDP: glide free. Gap none', or 'Small finger', '- strands: 2', '- gap: no', each on a line of its own."""
    breaks, last = scene.page.breaks, scene
    for before in reversed(desk.scenes[: desk.scenes.index(scene)]):
        if breaks[last.sentence.i] == Break.BLANK:
            return False
        groups, first = before.setting.groups, before.sentence.i
        digits = {digit for group in groups for digit in group.digits}
        if digits:
            alone = before.sentence.j - first - sum(g.j - g.i for g in groups) <= 1
            on_its_line = max(breaks[first + 1 : scene.sentence.i + 1]) < Break.LINE
            opened = on_its_line and before.next_word(groups[0].j) == ":"
            return len(digits) == 1 and breaks[first] >= Break.LINE and (alone or opened)
        last = before
    return False
