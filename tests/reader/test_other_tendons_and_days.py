"""Earlier operations under a label, other patients by name, tendons used for practice: nothing of this repair."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "Past surgery: index FDP, 4-strand cruciate, healed. Now a fresh cut of the FDP; repaired with two strands.",
        "Surgical history: index FDP, six-strand repair, healed. Today: FDP cut again, repaired with two strands.",
        "Prior surgery: index FDP four-strand repair. Today's surgery: FDP ruptured again, repaired with two strands.",
        "Past operations: index FDP, six strands. This operation: index FDP cut, repaired with two strands.",
    ],
)
def test_past_surgery_and_what_was_done_now(note: str) -> None:
    assert each(note, "strands") == {"index FDP": 2}


def test_past_surgery_goes_on_without_a_turn() -> None:
    note = "Surgical history: index FDP, six-strand repair. It healed with no gap and a running epitendinous."
    assert told(note, "strands", "gap", "peripheral") == {}


@pytest.mark.parametrize(
    "note",
    [
        "Dictated after Mr Penhallow's thumb (FPL, 8-strand, no gap) on the same morning. ",
        "Done straight after Mrs Orrin's thumb (FPL, six strands). ",
        "Not to be mixed up with Mrs Dunleath's thumb of the same day (FPL, 6 strands). ",
    ],
)
def test_another_patient_by_name(note: str) -> None:
    text = note + "Left small finger FDP divided, repaired with two strands."
    assert each(text, "strands") == {"small FDP": 2}


@pytest.mark.parametrize(
    "note",
    [
        "Mr Penhallow's left thumb was explored. FPL was divided and repaired with four strands.",
        "After Mr Penhallow's left thumb was washed, the FPL was repaired with four strands.",
    ],
)
def test_this_patient_by_name(note: str) -> None:
    assert each(note, "strands") == {"thumb FPL": 4}


@pytest.mark.parametrize(
    "note",
    [
        "The resident was shown on a spare length of tendon how an Adelaide cross-lock is laid. ",
        "The trainee practised a six-strand Savage on a pig's tendon. ",
        "On a piece of discarded tendon I showed the registrar a locked cruciate. ",
        "A model tendon served to demonstrate the eight-strand Winters-Gelberman. ",
    ],
)
def test_a_tendon_that_is_nobodys(note: str) -> None:
    text = note + "The ring FDP, divided, was repaired with a modified Kessler."
    assert told(text, "stitch", "strands", "hold") == {"ring FDP": {"stitch": "modified kessler", "strands": 2}}


def test_a_spare_piece_of_tendon_that_was_used() -> None:
    note = "Ring A2 was reconstructed with a spare piece of tendon."
    assert each(note, "finding", group="pulleys") == {"ring A2": "reconstructed"}
    note = "The resident was shown the ring FDP, which was repaired with an Adelaide."
    assert each(note, "stitch") == {"ring FDP": "adelaide"}


@pytest.mark.parametrize(
    "note",
    [
        "The window was closed with interrupted 6-0 nylon.",
        "The nail bed beside it was mended with 6-0 Vicryl in a running stitch.",
        "Nail bed sutured, running 6-0 Vicryl.",
    ],
)
def test_a_window_and_a_nail_bed(note: str) -> None:
    text = "Index FDP cut, repaired with a six-strand Savage in 4-0 Ethibond. "
    assert told(text + note, "peripheral") == {}
    assert each(text + "The edge was closed with running 6-0 nylon.", "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    "note",
    [
        "The sheath over it was closed, snug and without bulk.",
        "A2 was repaired without bulk.",
        "The pulley lies flat and is not bulky.",
        "A2 was closed over with a 5-0, without tension.",
    ],
)
def test_a_sheath_or_pulley_without_bulk(note: str) -> None:
    text = "Ring FDP cut, four-strand repair. "
    assert told(text + note, "bulk", "tension") == {}
    assert each(text + "A2 was vented and the repair was not bulky.", "bulk") == {"ring FDP": "none"}
