"""'Both ...' at the head of a sentence: the two tendons, or the two pulleys, of the sentence before."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "FDP and FDS were a single conglomerate. Both were excised, save a 1 cm tongue of FDP at the bone.",
        "FDP and FDS lay in one block of scar. Both were resected.",
    ],
)
def test_both_tendons(words: str) -> None:
    shown = told("Right index finger. " + words, "treatment", "trimmed_mm")
    assert shown == {"index FDP": {"treatment": "excised"}, "index FDS": {"treatment": "excised"}}


@pytest.mark.parametrize(
    "words",
    [
        "A2 was there by its proximal edge only and A4 was absent. Both were rebuilt with strips of palmaris.",
        "A2 was torn and A4 was gone. Both were reconstructed.",
    ],
)
def test_both_pulleys(words: str) -> None:
    shown = told("Right index finger. " + words, "finding", group="pulleys")
    assert shown == {"index A2": {"finding": "reconstructed"}, "index A4": {"finding": "reconstructed"}}


def test_it_is_the_last_pulley_alone() -> None:
    shown = told("Right index finger. A2 was intact and A4 was torn. It was rebuilt.", "finding", group="pulleys")
    assert shown == {"index A2": {"finding": "intact"}, "index A4": {"finding": "reconstructed"}}


@pytest.mark.parametrize("words", ["FDP repair found pulled apart.", "The FDP repair was found to have come apart."])
def test_a_repair_found_broken_is_none_of_now(words: str) -> None:
    assert "treatment" not in told("Small finger. " + words).get("small FDP", {})


@pytest.mark.parametrize(
    "words",
    ["Closed reduction, rotation corrected by tenodesis.", "No malrotation on tenodesis. Wires passed."],
)
def test_a_tenodesis_that_only_checks_the_fingers(words: str) -> None:
    assert each("Ring finger. FDS looked at. " + words, "treatment") == {}
