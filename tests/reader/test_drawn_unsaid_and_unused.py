"""What was drawn on a board, left unsaid above, handed back unused or only down to be done."""

import pytest
from reader_sentences import each

SEWN = "Small finger FDP, two strands. "
WHOLE = "Middle FDP, complete, repaired 4-0 Prolene, no gap. "


def test_drawn_on_a_board() -> None:
    text = "Ring FDP repair. I drew a six-strand M-Tang on the board, then repaired it as always: modified Kessler."
    assert each(text, "stitch") == {"ring FDP": "modified kessler"}
    assert each(text, "strands") == {"ring FDP": 2}
    text = "Ring FDP repair. Having sketched an eight-strand repair on the whiteboard, I placed two strands."
    assert each(text, "strands") == {"ring FDP": 2}


def test_a_pattern_drawn_and_sewn() -> None:
    text = "Ring FDP repair. The attending drew the pattern on the drape, locked cruciate, 4 strands."
    assert each(text, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "text",
    [
        "At first no triggering. On the tenth active flexion it began to trigger and did so to the end.",
        "Initially it glided freely. On repeated flexion it began to stick at A2.",
    ],
)
def test_a_catch_that_came(text: str) -> None:
    assert each(SEWN + text, "glide") == {"small FDP": "catching"}


@pytest.mark.parametrize(
    "text",
    [
        "Addendum: I omitted to say that it gapped by 1.5 mm on the final active test and was left thus.",
        "I failed to mention that it gapped 1 mm on the last test.",
        "Addendum: forgot to dictate that there was a gap of 1 mm.",
    ],
)
def test_left_unsaid(text: str) -> None:
    assert each(WHOLE + text, "gap") == {"middle FDP": "seen"}


def test_left_undone() -> None:
    assert each(WHOLE + "I omitted to test it for a gap.", "gap") == {"middle FDP": "none"}


@pytest.mark.parametrize(
    "text",
    [
        "3-0 FiberWire was on the table for the FDP but proved too thick and was handed back unused; 4-0 Prolene used.",
        "A 2-0 nylon was given out first, found too thick and sent back unused; the core is 4-0 Prolene.",
    ],
)
def test_handed_back_unused(text: str) -> None:
    assert each("Right index FDP divided and repaired. " + text, "material") == {"index FDP": "polypropylene"}


@pytest.mark.parametrize("text", ["A2 was down to be vented on the plan of the clinic.", "A4 was due to be vented."])
def test_only_down_to_be_done(text: str) -> None:
    assert not each("Small finger FDP: " + text, "finding", "pulleys")


def test_in_two_strands() -> None:
    text = "Procedure: FPL repair, thumb.\nThe FPL was repaired in two strands."
    assert not each(text, "extent")
    assert each("Small finger: FDS was sutured in two-strand fashion.", "treatment") == {"small FDS": "repaired"}
    assert each("Thumb: FPL was cut in two and sewn.", "extent") == {"thumb FPL": "complete"}


@pytest.mark.parametrize(
    "text",
    [
        "The slight gap on the dorsal face was drawn in by the running edge stitch and none was left on re-testing.",
        "A gap of 1 mm was closed with another bite and none was seen thereafter.",
    ],
)
def test_a_gap_of_which_none_was_left(text: str) -> None:
    assert each("Small FDP sutured. " + text, "gap") == {"small FDP": "none"}


def test_a_gap_that_remained() -> None:
    assert each("Small FDP sutured. A gap of 1 mm remained.", "gap") == {"small FDP": "seen"}


def test_bunching_gone() -> None:
    text = "Middle finger FDP repaired with 4-0 nylon. Bunching gone: the repair is not bulky."
    assert each(text, "bulk") == {"middle FDP": "none"}


def test_the_thread_used_instead_of_one_handed_back() -> None:
    text = "Right index. 3-0 FiberWire was laid out for the FDP and handed back unused; 5-0 Prolene used, two strands."
    assert each(text, "size") == {"index FDP": "5-0"}
    assert each(text, "strands") == {"index FDP": 2}


@pytest.mark.parametrize("text", ["That was not needed: A2 was left intact.", "Venting was not needed: A2 is intact."])
def test_not_needed_and_what_stands_behind(text: str) -> None:
    assert each("Small finger FDP repaired. " + text, "finding", "pulleys") == {"small A2": "intact"}


@pytest.mark.parametrize(
    "text",
    [
        "Alternatives not used: six-strand Savage.",
        "Options discussed: six strands of 3-0 FiberWire.",
        "Sutures opened and rejected: six-strand 3-0 FiberWire.",
    ],
)
def test_a_label_of_what_was_not_used(text: str) -> None:
    assert not each("Small finger FDP repaired. " + text, "strands")


@pytest.mark.parametrize(
    "text", ["Suture used: six-strand Savage.", "Suture: six-strand Savage, other options rejected."]
)
def test_a_label_of_what_was_used(text: str) -> None:
    assert each("Small finger FDP repaired. " + text, "strands") == {"small FDP": 6}
