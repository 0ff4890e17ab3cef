"""'Part 2 - addendum by ...' heads an addendum, though the word stands behind a number and in small letters."""

import pytest
from reader_sentences import each

BODY = (
    "Left middle finger, zone II. FDP cut through. Six-strand Lim-Tsai repair with 4-0 looped Supramid. A2 intact.\n\n"
)
PUT_RIGHT = "What went in was a four-strand cruciate of 3-0 Prolene. A2 was in fact vented over its distal third.\n"


@pytest.mark.parametrize(
    "heading",
    [
        "PART 2 - addendum by the surgeon, next morning",
        "Part 2: addendum",
        "Section 3 - correction by the consultant",
        "Part II. Addendum by the attending",
        "FIRST LATE ENTRY, 23 June 2034",
        "Second addendum, by the registrar.",
        "2nd late entry, 4 May",
        "Addendum no. 2, 4 May 2031.",
        "ADDENDUM II (the consultant).",
        "ADDENDUM 1, same evening.",
    ],
)
def test_a_numbered_addendum_puts_right_what_stands_before(heading: str) -> None:
    note = f"{BODY}{heading}\n\n{PUT_RIGHT}"
    assert each(note, "strands") == {"middle FDP": 4}
    assert each(note, "size") == {"middle FDP": "3-0"}
    assert each(note, "finding", group="pulleys") == {"middle A2": "vented"}


@pytest.mark.parametrize(
    "heading", ["First late entry, 23 June.", "Addendum II (the consultant).", "Another addendum:"]
)
def test_a_counted_addendum_ends_the_instructions(heading: str) -> None:
    note = f"{BODY}Instructions: active motion from day 3.\n\n{heading} {PUT_RIGHT}"
    assert each(note, "finding", group="pulleys") == {"middle A2": "vented"}


def test_a_second_correction_told_in_a_sentence_heads_nothing() -> None:
    note = f"{BODY}Instructions: active motion from day 3.\n\nSecond correction of the splint was needed. {PUT_RIGHT}"
    assert each(note, "finding", group="pulleys") == {"middle A2": "intact"}


def test_part_of_a_sentence_heads_nothing() -> None:
    note = BODY + "Part 2 of the consent form was completed with the addition of nerve repair.\n"
    assert each(note, "strands") == {"middle FDP": 6}
