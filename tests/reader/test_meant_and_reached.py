"""What was only meant, what a pulley was opened for, and what was added: none of it tells of the finished repair."""

import pytest
from reader_sentences import told

SEWN = "Left ring finger. FDP completely divided and repaired with four strands of 3-0 Ethibond."


@pytest.mark.parametrize(
    "remark",
    [
        "I meant to add a running 6-0 but the needle broke and I did not.",
        "It was my intention to run a 6-0 Prolene round the repair; the lamp failed before I could.",
        "I was going to add a 6-0 Prolene peripheral stitch but time was up.",
        "We had hoped to lay a 6-0 nylon around the edge.",
    ],
)
def test_what_was_meant_was_not_done(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "peripheral", "peripheral_size", "peripheral_material") == {}


@pytest.mark.parametrize(
    "remark",
    [
        "I meant to add a running 6-0 Prolene around it and did so.",
        "I wanted a tidy edge; a running 6-0 went round it.",
    ],
)
def test_what_was_meant_and_done_is_kept(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "peripheral_size") == {"ring FDP": {"peripheral_size": "6-0"}}


def test_ends_that_were_to_be_sewn_are_told_of() -> None:
    assert told(f"{SEWN} The ends that we meant to sew were ragged.", "ends") == {"ring FDP": {"ends": "ragged"}}


@pytest.mark.parametrize(
    "note",
    [
        "Thumb: the oblique pulley was opened to get at the tendon and then sewn back with 5-0 PDS.",
        "Ring finger. A2 was opened to expose the FDP and then repaired with 5-0 PDS.",
        "Index: the sheath was opened to find the FDP and closed again with 6-0 Vicryl.",
    ],
)
def test_a_tendon_only_reached_is_not_sewn(note: str) -> None:
    assert told(note, "treatment", "size", "material") == {}


def test_a_tendon_reached_and_named_again_is_sewn() -> None:
    note = "Ring finger. A2 was opened to expose the FDP. The tendon was repaired with 4-0 nylon."
    assert told(note, "size") == {"ring FDP": {"size": "4-0"}}


@pytest.mark.parametrize(
    "remark", ["It parted by 1 mm, so I put in a further two strands.", "It gave a little and got another two strands."]
)
def test_strands_added_are_not_the_count(remark: str) -> None:
    note = f"Ring FDP completely divided and sutured with 3-0 Ethibond. {remark}"
    assert told(note, "strands") == {}


@pytest.mark.parametrize(
    ("remark", "extent"),
    [
        ("It was my wish to see it move; the lamp failed before I could.", {}),
        ("On traction it parted by a good millimetre.", {}),
        ("The old suture line had parted.", {"ring FDP": {"extent": "complete"}}),
    ],
)
def test_only_a_repair_that_gave_way_is_in_two(remark: str, extent: dict[str, dict[str, str]]) -> None:
    assert told(f"Ring FDP sutured with 3-0 Ethibond. {remark}", "extent") == extent


@pytest.mark.parametrize(
    "remark", ["The old repair had pulled apart with a 2 cm gap.", "The earlier suture had given, leaving a 4 mm gap."]
)
def test_the_gap_of_an_earlier_repair_is_none_of_this_one(remark: str) -> None:
    assert told(f"Ring FDP. {remark} It was redone with 3-0 Ethibond.", "gap", "gap_mm") == {}


def test_ends_are_of_the_one_tendon_a_line_names() -> None:
    note = "Index FDP - 4 strands 3-0 Ticron. Middle FDP - same core, no epi, as the ends were too frayed to take one."
    assert told(note, "ends") == {"middle FDP": {"ends": "ragged"}}


@pytest.mark.parametrize("cut", ["a 30 % nick in FDP", "a 30% cut of the FDP", "a 30 % partial laceration of its FDP"])
def test_a_cut_is_of_the_tendon_it_is_in(cut: str) -> None:
    note = f"In the index finger {cut} was trimmed."
    assert told(note, "extent", "extent_percent") == {"index FDP": {"extent": "partial", "extent_percent": 30}}
