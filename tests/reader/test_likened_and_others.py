"""'As described for the index', 'FPL the same again', 'the other FDPs whole': taken over, and left alone."""

import pytest
from reader_sentences import each

INDEX = (
    "Index finger opened. FDP cut through, and both slips of the FDS. The FDP was repaired with 4-0 FiberWire in a"
    " locked cruciate, four strands. FDS slips: figure-of-eight 5-0 Ethibond. Middle finger then. FDP complete, the"
    " FDS here was intact. "
)


@pytest.mark.parametrize(
    "words", ["Same core as described for the index finger.", "Repaired as performed in the index finger."]
)
def test_as_described_elsewhere(words: str) -> None:
    assert each(INDEX + words, "strands")["middle FDP"] == 4
    assert each(INDEX + words, "size")["middle FDP"] == "4-0"
    assert "middle FDS" not in each(INDEX + words, "size")


def test_the_finger_compared_with_is_not_turned_to() -> None:
    words = INDEX + "Same core as described for the index finger. A4 intact."
    assert each(words, "finding", group="pulleys") == {"middle A4": "intact"}


@pytest.mark.parametrize("words", ["FPL the same again.", "FPL the same again, since it was more than half."])
def test_the_same_again(words: str) -> None:
    text = "Wrist. FDP index and FPL cut. FDP index repaired with a four-strand cruciate of 3-0 Ticron. " + words
    assert each(text, "strands") == {"index FDP": 4, "thumb FPL": 4}


@pytest.mark.parametrize("words", ["FPL was cut again.", "FPL the same again tomorrow."])
def test_not_the_same_again(words: str) -> None:
    text = "Wrist. FDP index and FPL cut. FDP index repaired with a four-strand cruciate of 3-0 Ticron. " + words
    assert each(text, "strands") == {"index FDP": 4}


@pytest.mark.parametrize(
    ("words", "whole"),
    [
        ("FDP index cut; remaining FDPs ok.", {"middle FDP", "ring FDP", "small FDP"}),
        ("FDS middle and ring cut, other superficialis tendons whole.", {"index FDS", "small FDS"}),
        ("FDP small cut. The other FDPs intact.", {"index FDP", "middle FDP", "ring FDP"}),
    ],
)
def test_the_others_are_not_those_named(words: str, whole: set[str]) -> None:
    extents = each("Zone V. FCR cut. " + words, "extent")
    assert {name for name, value in extents.items() if value == "intact"} == whole


def test_all_fine() -> None:
    words = "Wrist. FCU, ulnar nerve and ulnar artery all seen and all fine. FCR cut through."
    assert each(words, "extent")["FCU"] == "intact"


UNDER_HEADS = (
    "INDEX\n  FDP - complete. Ends ragged. Savage, 6 strands, 4-0 FiberWire, running 6-0 Prolene epitendinous.\n"
    "  FDS - complete. {ends} Repaired with 4-0 Ethibond.\nMIDDLE\n  FDP - complete. {middle}\n  FDS - half cut.\n"
)


@pytest.mark.parametrize("ends", ["Ends as the FDP.", "Edges like those of the FDP.", "Ends: as the FDP."])
@pytest.mark.parametrize("middle", ["Everything as in the index (ends, core, epitendinous).", "All as on the index."])
def test_a_likeness_turns_to_no_other_tendon(ends: str, middle: str) -> None:
    note = UNDER_HEADS.format(ends=ends, middle=middle)
    assert each(note, "extent")["middle FDS"] == "partial"
    assert each(note, "strands") == {"index FDP": 6, "middle FDP": 6}
    assert each(note, "size")["index FDS"] == "4-0"


@pytest.mark.parametrize("ends", ["Ends as the FDP.", "Edges like those of the FDP."])
def test_like_ends_are_no_like_suture(ends: str) -> None:
    note = UNDER_HEADS.format(ends=ends, middle="Not repaired.")
    assert "index FDS" not in each(note, "peripheral")
    assert "index FDS" not in each(note, "stitch")
