"""Therapy that starts so long after the operation: 'two weeks after operation', and 'two weeks from today'."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("Therapy to commence two weeks after operation with passive flexion.", 14),
        ("Therapy commences 2 weeks after the operation, passive flexion first.", 14),
        ("To start passive motion two weeks from today.", 14),
        ("To start passive motion one week from surgery.", 7),
        ("To start passive motion from today.", 0),
    ],
)
def test_counted_from_the_operation(words: str, day: int) -> None:
    note = "Left ring finger. FDP repaired with four strands of 3-0 Ethibond.\n\n" + words
    assert told(note, "start_day", group="aftercare")[""]["start_day"] == (day, day)


@pytest.mark.parametrize("words", ["Splint off six weeks after operation.", "No therapy. X-ray two weeks from today."])
def test_what_else_is_counted_so(words: str) -> None:
    note = "Left ring finger. FDP repaired with four strands of 3-0 Ethibond.\n\n" + words
    assert not told(note, "start_day", group="aftercare")
