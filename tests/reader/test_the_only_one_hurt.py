"""'No flexor other than the FDP was cut' tells of the FDP that it was; what else is left out stays left out."""

import pytest
from reader_sentences import told

END = " Four strands of 3-0 Ethibond."


@pytest.mark.parametrize(
    "note",
    [
        "No flexor other than the FDP was cut; that one was completely divided, while the FDS was intact.",
        "No flexor other than the FDP was cut; it was completely divided, FDS intact.",
        "Nothing apart from the FDP was divided; the FDS was whole.",
    ],
)
def test_what_follows_is_of_the_one_that_was_cut(note: str) -> None:
    found = told("Small finger. " + note + END, "extent", "strands")
    assert found == {"small FDP": {"extent": "complete", "strands": 4}, "small FDS": {"extent": "intact"}}


@pytest.mark.parametrize("note", ["No tendon other than the FDP was repaired.", "Nothing but the FDP could be seen."])
def test_what_is_left_out_of_other_things_is_not_told_cut(note: str) -> None:
    assert told("Small finger. " + note, "extent") == {}
