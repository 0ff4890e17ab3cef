"""Tendons worn but in one piece, torn off cleanly, tacked around the edge; grafts that head their sentence."""

import pytest
from reader_sentences import each, told

CUT = "Index. FDP has a cut through about 40% of its width.\n"


@pytest.mark.parametrize(
    "words",
    [
        "Index. The FDS was fraying on the spike but in continuity.",
        "Index. FDS attenuated over the plate, still in continuity.",
    ],
)
def test_a_worn_tendon_in_continuity_is_not_whole(words: str) -> None:
    assert each(words, "extent") == {}


def test_ends_of_another_tendon_do_not_wear_it() -> None:
    extents = each("Index. FDP divided, ends frayed. FDS in continuity.", "extent")
    assert extents == {"index FDP": "complete", "index FDS": "intact"}


@pytest.mark.parametrize(
    ("words", "ends"),
    [
        ("The profundus had torn away cleanly from the distal phalanx and was reinserted with an anchor.", {}),
        ("FDP snapped off cleanly at its insertion, reinserted with an anchor.", {}),
        ("FDP was cut cleanly in zone II and repaired.", {"ring FDP": "clean"}),
    ],
)
def test_how_a_tendon_tore_is_not_how_its_end_looked(words: str, ends: dict[str, str]) -> None:
    assert each("Ring finger. " + words, "ends") == ends


@pytest.mark.parametrize(
    "words",
    [
        "Index FDP: flap trimmed flush and edge smoothed with two 6/0 Prolene epitendinous stitches. No core suture.",
        "FDP index: rim pared and smoothed with a peripheral 6-0 Prolene, no core.",
    ],
)
def test_an_edge_smoothed_with_an_outer_stitch_is_trimmed(words: str) -> None:
    facts = told(CUT + words, "treatment", "peripheral", "peripheral_size")
    assert facts == {"index FDP": {"treatment": "trimmed", "peripheral": "present", "peripheral_size": "6-0"}}


@pytest.mark.parametrize(
    ("words", "bulk"),
    [
        ("Nothing thicker would go in without splitting it.", {}),
        ("Anything thicker would have torn so small a tendon.", {}),
        ("The repair was no thicker than the tendon.", {"index FDP": "none"}),
        ("The join is thicker than I like.", {"index FDP": "present"}),
    ],
)
def test_a_thread_too_thick_is_no_bulk(words: str, bulk: dict[str, str]) -> None:
    assert each("Index FDP divided and repaired with a modified Kessler of 4-0 Ethibond. " + words, "bulk") == bulk


@pytest.mark.parametrize(
    "words",
    [
        "Palmaris longus, taken from the same forearm, was interposed with a Pulvertaft weave at each end, 3-0 Ticron.",
        "The palmaris longus was interposed between the stumps and woven at both ends with 3-0 Ticron.",
    ],
)
def test_a_graft_that_heads_its_sentence(words: str) -> None:
    assert each("The flexor pollicis longus had ruptured. " + words, "treatment") == {"thumb FPL": "grafted"}


def test_a_palmaris_that_was_cut_is_sewn() -> None:
    note = "Zone V. FCR and PL cut. FCR and PL repaired with 3-0 Prolene."
    assert each(note, "treatment") == {"FCR": "repaired", "PL": "repaired"}


@pytest.mark.parametrize(
    "words",
    ["The profundus had torn away cleanly from the distal phalanx.", "FDP had come loose from its insertion."],
)
def test_a_tendon_off_its_bone_is_cut_through(words: str) -> None:
    assert each("Ring finger. " + words, "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize(
    "words", ["The sheath had torn away from the FDP.", "FDP was not torn from the bone.", "FDP pulled through."]
)
def test_what_did_not_come_off_the_bone(words: str) -> None:
    assert each("Ring finger. " + words, "extent") == {}


def test_a_slip_in_perfect_continuity_is_whole() -> None:
    note = "Ring FDP divided. The superficialis had lost its ulnar slip, the radial slip being in perfect continuity."
    assert each(note, "extent")["ring FDS radial"] == "intact"
