"""Threads that close wounds, told where nothing names the skin: 'two 4-0 nylon mattress stitches to each wound'."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "closed",
    [
        "Two 4-0 nylon mattress stitches to each wound.",
        "5-0 nylon mattress to both wounds.",
        "4-0 nylon to the wound.",
        "4-0 nylon interrupted sutures to both incisions.",
        "Three 4-0 Prolene simple sutures for each incision.",
    ],
)
def test_no_suture_of_the_tendon(closed: str) -> None:
    assert told(f"Ring FDP repaired. {closed}") == {"ring FDP": {"treatment": "repaired"}}


def test_a_repair_placed_in_the_wound() -> None:
    note = "Ring FDP cut, ends found. Four-strand repair with 4-0 Prolene in the wound."
    assert told(note, "size") == {"ring FDP": {"size": "4-0"}}
