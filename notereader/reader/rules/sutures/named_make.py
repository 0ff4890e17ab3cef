"""'The locks of the Adelaide are 3 mm', 'the Becker was locked': a stitch told before, and its tendons."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene


def of_the_make(desk: Desk, scene: Scene) -> list[Target]:
    """Return the tendons sewn with the stitch that a sentence takes up with 'the', naming no tendon and no finger."""
    named = scene.of("stitch")
    if len(named) != 1 or any(g.tendons or g.digits or g.generic for g in scene.setting.groups):
        return []
    if scene.word_before(named[0].i) != "the" or not scene.told(named[0].i):
        return []
    told = desk.laid("stitch", before=scene.sentence.i)
    holders = [Target(*f.entry) for f in told if f.value == named[0].value]
    others = [f for f in told if f.value != named[0].value and Target(*f.entry) not in holders]
    return list(dict.fromkeys(holders)) if others else []
