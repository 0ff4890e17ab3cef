"""Sutures that did not stay: a core sewn anew, an outer stitch taken out again, an extra thread."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided in zone II. A two-strand Kessler of 4-0 Prolene was "
            "placed but pulled straight out. The fresh repair was a four-strand cruciate of 3-0 Ethibond.",
            {"index FDP": {"strands": 4, "size": "3-0"}},
        ),
        (
            "Left index finger. FDP completely divided in zone II. I first placed a six-strand core of 4-0 "
            "nylon, which cheesewired. A two-strand Kessler of 3-0 Ethibond went in for good.",
            {"index FDP": {"strands": 2, "size": "3-0"}},
        ),
        (
            "Left index finger. FDP completely divided in zone II. The first version was a six-strand "
            "Lim-Tsai of 4-0 Supramid; it cut out as the ends were drawn together. The second version was a "
            "two-strand Kessler of 3-0 Prolene.",
            {"index FDP": {"strands": 2, "size": "3-0"}},
        ),
        (
            "Left index finger. FDP completely divided in zone II. A six-strand Savage of 4-0 Prolene had to "
            "be redone, this time as a four-strand cruciate of 3-0 Ethibond.",
            {"index FDP": {"strands": 4, "size": "3-0"}},
        ),
    ],
)
def test_the_core_that_stayed(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided in zone II. Sewn again as a four-strand cruciate with "
            "3-0 Ethibond this time, because the 4-0 had torn through.",
            {"index FDP": "3-0"},
        ),
        (
            "Left index finger. FDP completely divided in zone II. The core is a four-strand cruciate of 4-0 "
            "Prolene, as the 3-0 had frayed the ends.",
            {"index FDP": "4-0"},
        ),
    ],
)
def test_the_thread_that_failed_is_not_the_core(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["size"] for entry, facts in told(note, "size").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided in zone II. Core: four-strand cruciate of 3-0 "
            "Ethibond. A gap of 1 mm opened, so an extra 5-0 figure-of-eight was added to the index FDP.",
            {"index FDP": "3-0"},
        ),
        (
            "Left index finger. FDP completely divided in zone II. Core: two-strand Kessler of 3-0 Prolene. "
            "Under load a gap of 2 mm, closed with another 4-0 stitch.",
            {"index FDP": "3-0"},
        ),
    ],
)
def test_an_extra_thread_is_not_the_core(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["size"] for entry, facts in told(note, "size").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided in zone II. Core four-strand cruciate of 3-0 "
            "Ethibond. I began a running 6-0 Prolene epitendinous suture. It bunched the tendon, so I "
            "unpicked it.",
            {"index FDP": "absent"},
        ),
        (
            "Left index finger. FDP completely divided in zone II. Core four-strand cruciate of 3-0 "
            "Ethibond. Epitendinous 6-0 nylon, running. It jammed under A2 and had to come out.",
            {"index FDP": "absent"},
        ),
        (
            "Left index finger. FDP completely divided in zone II. Core four-strand cruciate of 3-0 "
            "Ethibond. A circumferential 6-0 Prolene was started. The circumferential suture was abandoned "
            "because the ends crumbled.",
            {"index FDP": "absent"},
        ),
        (
            "Left index finger. FDP completely divided in zone II. Core four-strand cruciate of 3-0 "
            "Ethibond. A running 6-0 Prolene epitendinous suture was placed. The tourniquet was let down and "
            "the drain removed.",
            {"index FDP": "present"},
        ),
    ],
)
def test_an_outer_suture_taken_out_again(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral"] for entry, facts in told(note, "peripheral").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided in zone II. There was no room for a Savage, so a "
            "two-strand Kessler of 4-0 Prolene was used.",
            {"index FDP": {"stitch": "kessler", "strands": 2}},
        ),
        (
            "Left index finger. FDP completely divided in zone II. Not enough tendon for an M-Tang; repaired "
            "with a modified Kessler, two strands of 4-0 Prolene.",
            {"index FDP": {"stitch": "modified kessler", "strands": 2}},
        ),
    ],
)
def test_a_stitch_there_was_no_room_for(note: str, expected: Shown) -> None:
    assert told(note, "stitch", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left index finger. FDP completely divided in zone II. Repaired with a two-strand modified "
            "Kessler of 4-0 Prolene, not a six-strand Savage of 3-0 Ethibond.",
            {"index FDP": {"stitch": "modified kessler", "strands": 2, "size": "4-0"}},
        ),
        (
            "Left index finger. FDP completely divided in zone II. Repaired with a four-strand cruciate of "
            "4-0 Prolene (not an eight-strand core of 3-0).",
            {"index FDP": {"stitch": "cruciate", "strands": 4, "size": "4-0"}},
        ),
    ],
)
def test_a_core_it_was_not(note: str, expected: Shown) -> None:
    assert told(note, "stitch", "strands", "size") == expected
