"""Which of two threads is the core, whose a thread is that stands behind 'for which', and what was not given up."""

import pytest
from reader_sentences import each, told

HALF = "Ring FDP cut half through, zone II. "


@pytest.mark.parametrize(
    "note",
    [
        "Repair was a single figure of eight in 5-0 Prolene, plus a running 6-0 Prolene round the cut half.",
        "I put in one figure of eight of 5-0 Prolene and then a running 6-0 Prolene around.",
    ],
)
def test_a_stitch_beside_its_thread_is_the_core_of_two(note: str) -> None:
    shown = told(HALF + note, "stitch", "size", "peripheral_size", "peripheral_pattern")["ring FDP"]
    assert shown == {
        "stitch": "figure-of-eight",
        "size": "5-0",
        "peripheral_size": "6-0",
        "peripheral_pattern": "running",
    }


BOTH = "Index FDP and FDS cut through. The FDP was united with a Savage of 3-0 Ticron and a running 6-0 nylon. "


@pytest.mark.parametrize(
    "note",
    [
        "The 6-0 was not run around the superficialis, for which two mattress sutures of 4-0 Ticron were enough.",
        "A running 6-0 went around the FDP, but not around the FDS, for which two mattress sutures of 4-0 sufficed.",
    ],
)
def test_the_thread_of_what_it_was_enough_for(note: str) -> None:
    shown = told(BOTH + note, "size", "peripheral")
    assert shown == {
        "index FDP": {"size": "3-0", "peripheral": "present"},
        "index FDS": {"size": "4-0", "peripheral": "absent"},
    }


@pytest.mark.parametrize("word", ["throughout", "throughout, four strands"])
def test_a_thread_throughout(word: str) -> None:
    note = "Ring and middle FDP cut through. Core suture: 3-0 Ticron " + word + "."
    assert each(note, "size") == {"middle FDP": "3-0", "ring FDP": "3-0"}


@pytest.mark.parametrize("rim", ["fine adaptation here was abandoned", "the epitendinous suture was omitted"])
def test_only_the_rim_was_given_up(rim: str) -> None:
    note = "Ring FDP cut through. FDP: modified Kessler of 4-0 Prolene, " + rim + "."
    shown = told(note, "stitch", "size", "peripheral_size")["ring FDP"]
    assert shown == {"stitch": "modified kessler", "size": "4-0"}


@pytest.mark.parametrize("pulley", ["A three was in bits so I took it out.", "A3 hung loose, so I took it out."])
def test_what_was_taken_out_is_the_pulley(pulley: str) -> None:
    note = "Ring FDP cut through. FDP: cruciate, 3-0 Ticron, then 6-0 Prolene running around it. " + pulley
    assert each(note, "peripheral") == {"ring FDP": "present"}


def test_the_o_of_a_size_is_no_mark() -> None:
    note = "Ring FDP cut through. Core: cruciate, 3/O Ticron.\nRing FDP   6/O Prolene epitendinous, interrupted x 5\n"
    assert told(note, "peripheral_pattern", "peripheral_size")["ring FDP"] == {
        "peripheral_pattern": "interrupted",
        "peripheral_size": "6-0",
    }


@pytest.mark.parametrize(
    "note",
    [
        "The distal FDP stump was tenodesed to the superficialis with 3-0 Ticron, figure-of-eight.",
        "FDP tenodesed to the FDS with a figure of eight of 3-0 Ticron.",
    ],
)
def test_what_a_stump_is_fastened_to_is_not_sewn(note: str) -> None:
    shown = told("Middle FDP cut through, zone I, FDS intact. " + note, "treatment", "stitch", "size")
    assert shown == {"middle FDP": {"treatment": "tenodesed", "stitch": "figure-of-eight", "size": "3-0"}}


@pytest.mark.parametrize(
    "note",
    [
        "All four FDS & the FDP index sewn with a Kessler of 3-0 Prolene, circumferential 5-0 to FDP index only.",
        "All four FDS and the index FDP got a Kessler of 3-0 Prolene; running 5-0 epitendinous for the index FDP only.",
    ],
)
def test_a_rim_for_one_of_those_named(note: str) -> None:
    cut = "Index, middle, ring and small FDS and index FDP were cut through. "
    shown = each(cut + note, "peripheral")
    assert shown["index FDP"] == "present"
    assert {shown[f"{digit} FDS"] for digit in ("index", "middle", "ring", "small")} == {"absent"}
