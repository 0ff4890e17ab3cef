"""A thread too fine for a core, the palmaris as a donor, and fingers named by their hand alone."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    ["The running 6-0 was removed again.", "The edge was tidied with a couple of 7-0 Prolene."],
)
def test_a_thread_that_fine_is_no_core(words: str) -> None:
    found = told(f"Index FDP cut through, four-strand repair. {words}", "size", "material")
    assert "size" not in found.get("index FDP", {})


@pytest.mark.parametrize("words", ["modified Kessler of 6-0 Prolene", "a two-strand core of 6-0 nylon"])
def test_a_core_said_to_be_that_fine_is_one(words: str) -> None:
    assert each(f"Child of two. Index FDP cut through and repaired with {words}.", "size") == {"index FDP": "6-0"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 torn; rebuilt by three turns of palmaris longus, sewn to itself with 3-0 FiberWire.",
        "I took the palmaris longus from the same forearm and wove it in at both ends, held with 3-0 Ethibond.",
        "I bridged the defect with palmaris longus, woven in at each end and stitched with 3-0 Ethibond.",
    ],
)
def test_a_palmaris_that_was_drawn_upon_was_not_repaired(words: str) -> None:
    assert "PL" not in told(f"Ring finger FDP cut through. {words}")


@pytest.mark.parametrize(
    "words",
    [
        "The nerve needed no graft. The palmaris longus was divided and repaired with 3-0 Ethibond.",
        "FCR and PL cut, both repaired with 3-0 PDS.",
    ],
)
def test_a_palmaris_that_was_cut_and_sewn_was_repaired(words: str) -> None:
    assert told(f"Wrist wound. {words}", "treatment")["PL"] == {"treatment": "repaired"}


@pytest.mark.parametrize(
    "words",
    [
        "FDP of the left middle, cut through, was repaired with four strands.",
        "On the left middle the FDP was cut through. It was repaired with four strands.",
    ],
)
def test_a_finger_is_named_by_its_hand_alone(words: str) -> None:
    assert each(words, "strands") == {"middle FDP": 4}


def test_the_middle_third_is_no_finger() -> None:
    words = "The cut ran to the left middle third of the forearm. FDP cut through, four-strand repair."
    assert "middle FDP" not in told(words)
