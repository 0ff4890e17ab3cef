"""Counts and deeds that a note denies: 'not repaired with six strands but with four', 'FDS repaired: no'."""

import pytest
from reader_sentences import each

HEAD = "Left ring finger FDP cut through. "


@pytest.mark.parametrize(
    "text",
    [
        "The FDP was not repaired with six strands but with four.",
        "The FDP was repaired not with six strands but with four.",
        "The FDP was sutured with four strands, not six.",
    ],
)
def test_the_count_that_was_not_placed_is_not_read(text: str) -> None:
    assert each(HEAD + text, "strands") == {"ring FDP": 4}


def test_a_denied_count_alone_tells_none() -> None:
    assert each(HEAD + "The FDP was not repaired with six strands.", "strands") == {}


@pytest.mark.parametrize("lines", ["FDS repaired: no\nFDP repaired: yes", "FDS repair: no\nFDP repair: yes\n"])
def test_no_at_the_end_of_a_line_answers_it(lines: str) -> None:
    assert each(f"Left ring finger, zone II.\n{lines}", "treatment")["ring FDS"] == "left"
