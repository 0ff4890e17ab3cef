"""What the rules for the whole note share: an entry without a place, and the sentence a word stands in."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import within
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

NOWHERE = ("", "", None)

Span = tuple[int, int]


def scene_at(desk: Desk, k: int) -> Scene:
    """Return the scene that word k stands in, or the last one before it where no sentence holds the word."""
    return desk.scene_at(k)


def order_list(name: str) -> frozenset[str]:
    """Return a list of words of the orders by its name in reading.toml."""
    return word_list("aftercare", name)


def is_order(desk: Desk, scene: Scene, k: int) -> bool:
    """Tell whether word k is an order: not conditional, not history, not a teaching remark, not an unticked choice."""
    if desk.page.standing[k] not in ("", "plan"):
        return False
    return not (scene.sentence.section == "instructions" and _conditional(desk, scene, k))


def _conditional(desk: Desk, scene: Scene, k: int) -> bool:
    """In the orders a clause with 'if', 'should the ...' or 'may consider' is no order."""
    for cue in within(desk.page.cues, scene.sentence.i, scene.sentence.j):
        if cue.value == "conditional" and (cue.i <= k or cue.i <= scene.sentence.i + 2):
            return True
    words = scene.words(scene.sentence.i, k)
    return any(a == "may" and b == "consider" for a, b in pairwise(words))


def is_other_section(scene: Scene) -> bool:
    """Tell whether a sentence stands where no orders are given: the story, the diagnosis, the findings, the titles."""
    return scene.sentence.section in ("indication", "diagnosis", "findings", "previous", "procedure")


def element_list(name: str) -> frozenset[str]:
    """Return a list of words of the elements by its name in reading.toml."""
    return word_list("elements", name)
