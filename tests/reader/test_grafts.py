"""Tendons mended with a graft whose donor is named, and tendons taken out instead of being sewn."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "words",
    [
        "I took the palmaris longus as a graft and wove it into both stumps, held with 3-0 Ethibond.",
        "The defect was bridged with palmaris longus, a Pulvertaft weave at each end, 3-0 Ethibond.",
    ],
)
def test_the_donor_is_not_the_tendon_mended(words: str) -> None:
    found = told(f"Left thumb. The FPL was torn in two. {words}", "treatment", "size")
    assert found == {"thumb FPL": {"treatment": "grafted", "size": "3-0"}}


def test_a_bridged_defect_is_no_gap_of_a_repair() -> None:
    note = "Ring finger. FDP completely cut. A gap of 4 cm was bridged with palmaris longus, woven into both ends."
    assert told(note, "gap", "gap_mm") == {}


@pytest.mark.parametrize(
    "words",
    ["was excised over 3 cm rather than sewn", "was excised instead of repaired", "was resected rather than sutured"],
)
def test_taken_out_rather_than_sewn(words: str) -> None:
    note = f"Ring finger. The FDS was completely divided and {words}."
    assert told(note, "treatment", "trimmed_mm") == {"ring FDS": {"treatment": "excised"}}


def test_ends_taken_back_are_no_purchase() -> None:
    note = "Ring finger. FDP divided, its ends were mashed and taken back 3 mm. Repaired with 4-0 nylon."
    assert told(note, "purchase_mm") == {}


@pytest.mark.parametrize(
    ("words", "without"),
    [
        ("A running epitendinous 6-0 was added to the two profundi; the others had none.", {"index FDS", "ring FDS"}),
        ("The profundi had an epitendinous suture of 6-0. The others received none.", {"index FDS", "ring FDS"}),
    ],
)
def test_the_others_had_no_peripheral_suture(words: str, without: set[str]) -> None:
    note = f"FDP and FDS of the index and ring fingers completely divided and repaired with 4-0 nylon. {words}"
    found = told(note, "peripheral")
    assert {name for name, facts in found.items() if facts["peripheral"] == "absent"} == without
    assert found["index FDP"] == found["ring FDP"] == {"peripheral": "present"}


@pytest.mark.parametrize(
    "words",
    [
        "The PL was left unrepaired, and so was the partial cut of the FCU.",
        "The PL was not sutured, nor was the FCU.",
    ],
)
def test_left_as_well(words: str) -> None:
    note = f"Left wrist. PL completely cut, FCU cut through a third. {words}"
    assert told(note, "treatment") == {"FCU": {"treatment": "left"}, "PL": {"treatment": "left"}}


def test_each_with_a_suture_of_some_size_is_of_those_named() -> None:
    note = (
        "Left wrist. FDP of the index completely cut, FCU cut through a third. I repaired the FDP of the index and the "
        "FDP of the middle finger, each with a modified Kessler suture of 3-0 nylon."
    )
    assert "treatment" not in told(note)["FCU"]


@pytest.mark.parametrize(
    "words", ["4-0 Ethibond (the 3-0 was opened and not used)", "4-0 Ethibond; a 3-0 was put aside"]
)
def test_a_suture_that_was_only_opened(words: str) -> None:
    assert told(f"Ring finger. FDP completely cut and repaired with {words}.", "size") == {"ring FDP": {"size": "4-0"}}


def test_bites_for_each_lock_are_no_purchase() -> None:
    note = "Ring FDP divided and sewn, locking 3-0 Ethibond, 2 mm bites for each lock, core to about 12 mm either side."
    assert told(note, "purchase_mm", "lock_mm") == {"ring FDP": {"purchase_mm": (12, 12), "lock_mm": (2, 2)}}


@pytest.mark.parametrize("words", ["the three oh was opened and went back", "a 3-0 was opened and not used"])
def test_a_correction_beside_a_suture_that_went_back(words: str) -> None:
    note = f"FCR divided and repaired with 3-0 Ticron. Sorry, correction, the core was a four oh Ticron, {words}."
    assert told(note, "size") == {"FCR": {"size": "4-0"}}


@pytest.mark.parametrize("words", ["with 4-strand repairs of 3-0 nylon", "by six-strand locking repairs, 3-0 nylon"])
def test_repairs_as_a_means_are_no_other_tendons(words: str) -> None:
    note = (
        "Ring and small FDP completely divided. Ring FDS completely divided.\n"
        f"FDP ring and small {words}. FDS ring with a two-strand Kessler of 4-0 nylon."
    )
    assert told(note, "size")["ring FDS"] == {"size": "4-0"}
    assert told(note, "strands")["ring FDS"] == {"strands": 2}


SECOND_STAGE = "Right small finger, second stage tendon graft. FDP completely divided. "


@pytest.mark.parametrize(
    "words",
    [
        "I took the palmaris tendon, tied it to the rod, and drew it through. Its far end I fixed into the distal "
        "phalanx and over a button; in the palm I wove it into the stump of the profundus after Pulvertaft, "
        "with 3/0 Ethibond.",
        "The palmaris graft was sutured to the rod and railroaded through the sheath. It was fixed to the distal "
        "phalanx over a button and woven into the FDP in the palm by a Pulvertaft weave of 3-0 Ethibond.",
    ],
)
def test_a_rod_that_leads_a_graft_in(words: str) -> None:
    found = told(SECOND_STAGE + words, "treatment", "stitch", "size")
    assert found == {"small FDP": {"treatment": "grafted", "stitch": "pulvertaft", "size": "3-0"}}


def test_a_rod_that_awaits_its_graft() -> None:
    words = "A silicone rod was laid in. It was sutured to the FDP stump with 4-0 nylon."
    assert told(SECOND_STAGE + words, "treatment", "size") == {}
