"""What the rules for the whole note share: an entry without a place, and the sentence a word stands in."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention, within
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene
from notereader.reader.standing.cue_scopes import no_condition
from notereader.vocabulary.wordlists import word_list

NOWHERE = ("", "", None)

Span = tuple[int, int]
Told = tuple[Scene, Mention]

_SPANS = 6  # a value is shown in so many places at most


def scene_at(desk: Desk, k: int) -> Scene:
    """Return the scene that word k stands in, or the last one before it where no sentence holds the word."""
    return desk.scene_at(k)


def lay(desk: Desk, name: str, chosen: Mention, told: list[Told], rule: str, *reasons: Reason) -> None:
    """Lay down a value of the operation with the words of its mentions.

    The chosen one comes first, then those of other sections, then the rest.
    """
    same = [f for f in told if f[1].value == chosen.value]
    scene = next(s for s, m in same if m is chosen)
    sections = {scene.sentence.section}
    first: list[Span] = [(chosen.i, chosen.j)]
    rest: list[Span] = []
    for other, m in same:
        if m is chosen:
            continue
        (rest if other.sentence.section in sections else first).append((m.i, m.j))
        sections.add(other.sentence.section)
    desk.add(scene, "operation", NOWHERE, name, chosen.value, [*first, *rest][:_SPANS], rule, *reasons)


def case_list(name: str) -> frozenset[str]:
    """Return a list of words of the operation by its name in reading.toml."""
    return word_list("operation", name)


def order_list(name: str) -> frozenset[str]:
    """Return a list of words of the orders by its name in reading.toml."""
    return word_list("aftercare", name)


def is_order(desk: Desk, scene: Scene, k: int) -> bool:
    """Tell whether word k is an order: not conditional, not history, not a teaching remark, not an unticked choice."""
    if desk.page.standing[k] not in ("", "plan") or _set_aside(scene):
        return False
    return not (scene.sentence.section in ("instructions", "addendum") and _conditional(desk, scene, k))


def _conditional(desk: Desk, scene: Scene, k: int) -> bool:
    """In the orders a clause with 'if', 'should the ...' or 'may consider' is no order."""
    for cue in within(desk.page.cues, scene.sentence.i, scene.sentence.j):
        if (
            cue.value != "conditional"
            or no_condition(desk.page, cue)
            or any(gap >= Break.LINE for gap in desk.page.breaks[cue.j : k + 1])
        ):
            continue  # a condition ends with its line
        if cue.i <= k or cue.i <= scene.sentence.i + 2:
            return True
    words = scene.words(scene.sentence.i, k)
    return any(a == "may" and b == "consider" for a, b in pairwise(words))


def _set_aside(scene: Scene) -> bool:
    """'The usual regime (early active, day 4) does NOT apply', 'some of you prefer place and hold'."""
    words = scene.words(scene.sentence.i, scene.sentence.j) if "apply" in scene.said else []
    if any(a == "not" and b == "apply" for a, b in pairwise(words)):
        return True
    return not (scene.said.isdisjoint(_PREFERS) or scene.said.isdisjoint(_OTHERS))


_PREFERS = frozenset(["prefer", "prefers", "favour", "favor"])
_OTHERS = frozenset(["some", "you", "many"])


def is_other_section(scene: Scene) -> bool:
    """Tell whether a sentence stands where no orders are given: the story, the diagnosis, the findings, the titles.

    Orders without a heading of their own stand at the end of the findings.
    """
    if scene.sentence.section == "findings":
        return 2 * scene.sentence.i < len(scene.page.words)
    return scene.sentence.section in ("indication", "diagnosis", "previous", "procedure")


def element_list(name: str) -> frozenset[str]:
    """Return a list of words of the elements by its name in reading.toml."""
    return word_list("elements", name)
