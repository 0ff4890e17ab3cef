"""A stump sewn into the side of a whole tendon beside it: a tenodesis of the one, and nothing done to the other."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "words",
    [
        "The distal stump was sewn into the side of the ring FDP, end to side, with 3-0 Ethibond.",
        "Its muscle was gone, so the distal tendon was attached to the side of the FDP of the ring finger by a "
        "Pulvertaft weave of 3-0 Ethibond.",
    ],
)
def test_the_tendon_that_takes_it_in_is_not_sewn(words: str) -> None:
    shown = told("Middle finger. The FDP was avulsed from its muscle. " + words, "treatment", "size", "strands")
    assert shown == {"middle FDP": {"treatment": "tenodesed", "size": "3-0"}}


def test_a_tendon_that_lay_to_the_side_of_another() -> None:
    shown = told("Ring FDP and FDS cut through. FDP repaired. The FDS lay to the side of the FDP.", "treatment")
    assert shown == {"ring FDP": {"treatment": "repaired"}}


RUPTURED = "The index profundus was completely ruptured; the middle profundus was intact. "


@pytest.mark.parametrize(
    "words",
    [
        "The distal end of the index profundus was woven into the intact middle profundus, using 4-0 Ethibond.",
        "The index FDP was passed through the sound middle FDP and sewn with 4-0 Ethibond.",
        "The index FDP was joined to the adjacent middle FDP by a weave, 4-0 Ethibond.",
        "The index profundus was woven side to side into the middle profundus with 4-0 Ethibond.",
    ],
)
def test_a_sound_neighbour_that_takes_one_in_is_not_sewn(words: str) -> None:
    shown = told(RUPTURED + words, "extent", "treatment", "size")
    assert shown["index FDP"] == {"extent": "complete", "treatment": "tenodesed", "size": "4-0"}
    assert shown["middle FDP"] == {"extent": "intact"}


def test_a_graft_into_the_cut_tendon_is_no_tenodesis() -> None:
    note = "FDP of the index completely divided. A palmaris graft was woven into the index FDP with 3-0 Ethibond."
    assert told(note, "treatment") == {"index FDP": {"treatment": "grafted"}}


RUPTURED_SMALL = "FDP of the little finger was completely ruptured. FDP of the ring finger was intact. "


@pytest.mark.parametrize(
    "words",
    [
        "The distal stump was passed twice through the ring FDP in interlacing manner and fixed with 3-0 Ticron.",
        "The distal end of the little FDP was woven into the ring FDP (Pulvertaft, 3-0 Ethibond).",
        "The stump was led through that of the ring finger and sewn with 3-0 Ticron.",
    ],
)
def test_a_stump_woven_through_a_whole_tendon(words: str) -> None:
    shown = told(RUPTURED_SMALL + words, "extent", "size", "treatment")
    assert shown["ring FDP"] == {"extent": "intact"}
    assert shown["small FDP"]["size"] == "3-0"
    assert shown["small FDP"].get("treatment") != "grafted"


def test_a_graft_woven_into_the_tendon_itself() -> None:
    words = "A PL graft was woven through the proximal end of the little FDP with a Pulvertaft weave of 3-0 Ticron."
    assert told(RUPTURED_SMALL + words, "size", "treatment") == {"small FDP": {"size": "3-0", "treatment": "grafted"}}


def test_the_ends_of_a_graft_woven_in() -> None:
    words = "FPL ruptured. I took palmaris longus, distal end woven into the stump of the FPL, proximal end woven into"
    shown = told(f"{words} the thumb FPL motor, both with a Pulvertaft weave of 3-0 Ethibond.", "size")
    assert shown["thumb FPL"] == {"size": "3-0"}


@pytest.mark.parametrize(
    "words",
    [
        "FDP ruptured, end-to-side tenodesis to ring FDP.",
        "FDP ruptured, tenodesed to the FDP of the ring finger with 3-0 Ethibond.",
    ],
)
def test_tenodesed_to_a_neighbour(words: str) -> None:
    assert told("Small finger. " + words, "extent", "treatment") == {
        "small FDP": {"extent": "complete", "treatment": "tenodesed"}
    }


@pytest.mark.parametrize(
    "words",
    [
        "DIP joint tenodesis. The distal FDP was sewn to the edge of A4 and the periosteum with 3-0 Ethibond.",
        "Tenodesis of FDP. The stump was stitched down to the neck of the phalanx with 3-0 Ethibond. Nothing gave.",
    ],
)
def test_a_stump_sewn_down_in_a_tenodesis(words: str) -> None:
    shown = told(f"Right ring finger. {words}", "treatment", "gap")
    assert shown == {"ring FDP": {"treatment": "tenodesed"}}


def test_ends_sewn_to_each_other_are_repaired() -> None:
    assert told("Right ring finger. The FDP was sewn to its own stump with 4-0 Prolene.", "treatment") == {
        "ring FDP": {"treatment": "repaired"}
    }
