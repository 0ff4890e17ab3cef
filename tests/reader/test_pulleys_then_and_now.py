"""A pulley's fate at an earlier operation and today, on the way in and at the end, and words that are of no pulley."""

import pytest
from reader_sentences import each

CUT = "Ring FDP completely divided and repaired. "


@pytest.mark.parametrize(
    ("note", "finding"),
    [
        ("A4 was vented at the first procedure and was now repaired.", "repaired"),
        ("A4 was released at the primary operation but was now found scarred and was excised.", "excised"),
    ],
)
def test_what_was_done_today(note: str, finding: str) -> None:
    assert each("Ring finger, re-exploration. " + note, "finding", group="pulleys") == {"ring A4": finding}


@pytest.mark.parametrize("note", ["A2 intact on the way in.", "A2 was intact on entry.", "A2 intact at the start."])
def test_what_it_was_on_the_way_in_is_not_what_it_came_to(note: str) -> None:
    assert each(CUT + note, "finding", group="pulleys") == {}


def test_at_the_start_and_at_the_end() -> None:
    assert each(CUT + "A2 intact at the start and at the end.", "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "note",
    [
        "A2 intact. Retrieval of the proximal stump needed a second cut in the palm, closed with 5-0 Prolene.",
        "A2 intact. The distal end needed a cut in the pulp, closed with 5-0 nylon.",
    ],
)
def test_a_cut_in_the_palm_is_no_pulley(note: str) -> None:
    assert each(CUT + note, "finding", group="pulleys") == {"ring A2": "intact"}


def test_a_part_of_the_pulley_before() -> None:
    note = "A2 caught the repair. The distal 4 mm was incised."
    assert each(CUT + note, "finding", group="pulleys") == {"ring A2": "vented"}
