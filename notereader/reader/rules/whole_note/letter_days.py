"""The day of the operation counted back from that of a letter: 'We operated yesterday', 'three days ago I repaired'."""

from datetime import date, timedelta
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import FoundDate
from notereader.reader.rules.whole_note.whole import case_list
from notereader.reader.scene import Scene

_NEAR = 7  # words between the verb and the day
_GREETING = 60  # words in which a letter greets its reader


def counted_day(desk: Desk, written: FoundDate) -> tuple[str, int, int] | None:
    """Return the day on which a letter of the day `written` says that its writer operated, and the words for it."""
    page = desk.page
    if "dear" not in page.words[:_GREETING]:
        return None
    for scene in desk.scenes:
        if scene.said.isdisjoint(("yesterday", "ago")) or scene.said.isdisjoint(("i", "we")):
            continue
        if scene.sentence.section in case_list("not_operation_sections") or scene.of("mechanism"):
            continue
        found = _back(scene)
        if found is not None and page.standing[found[1]] != "future":
            day = date.fromisoformat(written.value) - timedelta(days=found[0])
            return day.isoformat(), found[1], found[2]
    return None


def _back(scene: Scene) -> tuple[int, int, int] | None:
    """Return how many days ago it was that 'I' or 'we' operated, and the words that say so."""
    for k in range(scene.sentence.i, scene.sentence.j):
        word = scene.page.words[k]
        if word == "yesterday":
            before = scene.words(k - 3, k) == ["the", "day", "before"]
            days, i, j = (2, k - 3, k + 1) if before else (1, k, k + 1)
        elif word == "ago" and scene.word_before(k) == "days":
            days, i, j = count_of(scene.page.words[k - 2]), k - 2, k + 1
        else:
            continue
        if days and _by_the_writer(scene, i, j):
            return days, i, j
    return None


def _by_the_writer(scene: Scene, i: int, j: int) -> bool:
    near = scene.words(max(scene.sentence.i, i - _NEAR), j + _NEAR)
    acts = any(a in ("i", "we") and b in case_list("operating") for a, b in pairwise(near))
    return acts and case_list("injury").isdisjoint(near)
