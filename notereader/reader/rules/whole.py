"""What the rules for the whole note share: an entry without a place, and the sentence a word stands in."""

from notereader.reader.desk import Desk
from notereader.reader.scene import Scene

NOWHERE = ("", "", None)

Span = tuple[int, int]


def scene_at(desk: Desk, k: int) -> Scene:
    """Return the scene that word k stands in, or the last one before it where no sentence holds the word."""
    found = desk.scenes[0]
    for scene in desk.scenes:
        if scene.sentence.i > k:
            continue
        if k < scene.sentence.j:
            return scene
        if scene.sentence.i > found.sentence.i:
            found = scene
    return found
