"""Counts and names that are of a thread or a fibre, and whose repair words behind several tendons tell of."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "sentence",
    [
        "Kessler repair with 4-0 stainless steel, which is itself a multi-strand (seven filament) wire.",
        "Kessler repair with a seven-strand 4-0 wire.",
        "Kessler repair, the suture being a six strand braided cable.",
    ],
)
def test_the_strands_of_a_wire_are_none_of_the_core(sentence: str) -> None:
    assert each(f"Small finger FDP cut through. {sentence}", "strands") == {"small FDP": 2}


def test_a_core_of_wire_has_its_strands() -> None:
    assert each("Small finger FDP cut through. Four-strand 4-0 wire core.", "strands") == {"small FDP": 4}


@pytest.mark.parametrize(
    "sentence", ["Cruciate fibres of the sheath intact.", "The cruciate fibers had to be divided."]
)
def test_cruciate_fibres_are_no_stitch(sentence: str) -> None:
    assert told(f"Index. FDP cut through, repaired. {sentence}", "stitch", "strands") == {}


@pytest.mark.parametrize(
    "sentence",
    [
        "FDP repaired four-strand; FDS repaired too, radial and ulnar slips alike, using 4-0 in both.",
        "FDP repaired four-strand; FDS slips repaired, 4-0 for both.",
    ],
)
def test_both_behind_slips_are_the_slips(sentence: str) -> None:
    assert each(f"Ring. FDP and FDS severed. {sentence}", "size") == {"ring FDS": "4-0"}


def test_both_behind_two_tendons_are_the_tendons() -> None:
    note = "Ring. FDP and FDS severed. FDP and FDS repaired, 4-0 in both."
    assert each(note, "size") == {"ring FDP": "4-0", "ring FDS": "4-0"}


@pytest.mark.parametrize(
    "before", ["Middle FDP: ragged ends. Ring FDP: clean ends.", "Middle FDP explored. Then the ring FDP."]
)
def test_both_tendons_are_the_two_named_of_two_fingers(before: str) -> None:
    """'Middle FDP ... Ring FDP ... Both tendons had been cut across': no superficialis of the ring."""
    found = told(f"{before} Both tendons had been cut across and both were repaired.", "extent", "treatment")
    cut = {"extent": "complete", "treatment": "repaired"}
    assert found == {"middle FDP": cut, "ring FDP": cut}


def test_both_tendons_of_the_one_finger_spoken_of_are_its_two() -> None:
    found = told("Ring finger. FDP found in the palm. Both tendons had been cut across.", "extent")
    assert found == {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "complete"}}


MIDDLE = "Left middle FDP severed, four-strand repair plus epitendinous."


@pytest.mark.parametrize(
    "sentence",
    [
        "Ring FDP likewise severed and likewise given four strands; whether it got an epitendinous I cannot recall.",
        "Ring FDP severed, likewise four strands in its repair.",
        "Ring FDP severed and repaired likewise; epitendinous not recorded.",
    ],
)
def test_likewise_told_of_the_core_gives_no_peripheral_suture(sentence: str) -> None:
    """'Likewise given four strands': alike is what stands behind, and no more is taken over."""
    found = told(f"{MIDDLE} {sentence}", "strands", "peripheral")
    assert found == {"middle FDP": {"strands": 4, "peripheral": "present"}, "ring FDP": {"strands": 4}}


@pytest.mark.parametrize("sentence", ["Ring FDP severed and repaired likewise.", "Ring FDP likewise."])
def test_likewise_alone_takes_over_the_whole(sentence: str) -> None:
    found = told(f"{MIDDLE} {sentence}", "strands", "peripheral")["ring FDP"]
    assert found == {"strands": 4, "peripheral": "present"}
