"""Sutures and results dealt out over the two flexors of a finger, and tendons told cut with no word of how far."""

import pytest
from reader_sentences import each, told

CUT = "The FDP and FDS of the ring finger were completely divided. Both were repaired with two strands of 4-0 nylon. "


@pytest.mark.parametrize(
    "text",
    [
        "There was no gap in the FDP and a 2 mm gap in the FDS.",
        "No gap in the profundus, a gap of 2 mm in the superficialis.",
    ],
)
def test_each_gap_is_of_its_tendon(text: str) -> None:
    assert each(CUT + text, "gap") == {"ring FDP": "none", "ring FDS": "seen"}
    assert each(CUT + text, "gap_mm") == {"ring FDS": 2}


@pytest.mark.parametrize(
    "text",
    [
        "Gliding was free in the FDP and restricted in the FDS.",
        "Excursion was free in the profundus but restricted in the superficialis.",
    ],
)
def test_each_glide_is_of_its_tendon(text: str) -> None:
    assert each(CUT + text, "glide") == {"ring FDP": "free", "ring FDS": "restricted"}


@pytest.mark.parametrize(
    "text",
    [
        "The FDP had a running 6-0 as well, the FDS none.",
        "Epitendinous 6-0 for the FDP, none for the FDS.",
        "Running 6-0 on the profundus and none on the superficialis.",
        "A running 6-0 went round the FDP and the FDS was left without.",
        "Round the FDP went a running 6-0; the FDS was left without.",
        "The FDP was given a running 6-0, the FDS was not.",
    ],
)
def test_the_other_tendon_got_no_peripheral_suture(text: str) -> None:
    found = told(CUT + text, "peripheral", "treatment", "glide")
    assert found["ring FDP"] == {"peripheral": "present", "treatment": "repaired"}
    assert found["ring FDS"] == {"peripheral": "absent", "treatment": "repaired"}


def test_a_suture_round_both_is_round_both() -> None:
    assert each(CUT + "A running 6-0 was added to the FDP and the FDS.", "peripheral") == {
        "ring FDP": "present",
        "ring FDS": "present",
    }


@pytest.mark.parametrize(
    "text",
    [
        "The FDP and FDS of the ring finger were lacerated. Both were repaired with two strands of 4-0 nylon.",
        "FDP and FDS of the ring finger were found cut. Both tendons received two strands of 4-0 nylon.",
    ],
)
def test_both_means_the_two_told_to_be_cut(text: str) -> None:
    assert each(text, "strands") == {"ring FDP": 2, "ring FDS": 2}
    assert each(text, "extent") == {}


def test_a_tendon_told_not_to_be_cut_is_not_meant() -> None:
    text = (
        "The FDP of the ring and small fingers was lacerated. The FDS was not cut. Both were repaired with 4-0 nylon."
    )
    assert set(each(text, "size")) == {"ring FDP", "small FDP"}


def test_as_well_is_no_word_of_glide() -> None:
    assert each("Ring FDP repaired. A running 6-0 was placed as well.", "glide") == {}
    assert each("Ring FDP repaired. On passive motion it ran well.", "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    "text",
    [
        "Middle: FDP 70 % divided. In the ring and small fingers the FDP was completely divided. The divided FDP "
        "tendons received a four-strand core.",
        "The FDP of the ring and small fingers was cut through, that of the middle finger to 60 %. The divided "
        "profundi were sewn with a four-strand core.",
    ],
)
def test_the_divided_tendons_are_those_cut_through(text: str) -> None:
    assert each(text, "strands") == {"ring FDP": 4, "small FDP": 4}
    assert each(text, "extent")["middle FDP"] == "partial"


@pytest.mark.parametrize("place", ["In the middle the FDP was cut to 70 %.", "In the small both flexors were intact."])
def test_a_sentence_opens_on_its_finger(place: str) -> None:
    found = each(f"In the ring finger the FDP was completely divided. {place}", "extent")
    assert found["ring FDP"] == "complete"
    assert {name.split()[0] for name in found} == {"ring", place.split()[2]}
