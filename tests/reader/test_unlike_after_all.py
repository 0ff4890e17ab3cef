"""'Addendum: FDS small was not the same as the ring': what was told alike is taken back."""

import pytest
from reader_sentences import told

NOTE = "FDP ring was repaired with a 3-0 Ticron Savage. FDP middle likewise.\n\nADDENDUM\n"
SUTURE = ("strands", "stitch", "size")


@pytest.mark.parametrize(
    "text",
    [
        "The FDP of the middle was not identical to the ring.",
        "FDP middle not the same as ring: I am told it was something else.",
        "The middle FDP was not like that of the ring.",
    ],
)
def test_no_longer_alike(text: str) -> None:
    assert list(told(NOTE + text, *SUTURE)) == ["ring FDP"]


@pytest.mark.parametrize(
    "text",
    ["The FDP of the middle was not tested in the same way.", "The FDS of the middle was not the same colour."],
)
def test_still_alike(text: str) -> None:
    assert told(NOTE + text, "strands") == {"middle FDP": {"strands": 6}, "ring FDP": {"strands": 6}}
