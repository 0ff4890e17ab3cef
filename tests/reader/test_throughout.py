"""Remarks on every repair: 'no gap anywhere', 'everything ran freely', 'nothing caught'."""

import pytest
from reader_sentences import each

TWO = (
    "Index FDP: 4-strand cruciate of 3-0 Ethibond. Middle FDP: 4-strand cruciate of 3-0 Ethibond.\n\n"
    "The radial digital nerve of the ring finger was repaired with 9-0 nylon.\n\n"
)
BOTH = ("index FDP", "middle FDP")


@pytest.mark.parametrize(
    "text",
    [
        "No gaps anywhere.",
        "No tendon gapped.",
        "Full passive flexion and extension produced no gap at any site.",
        "Everything ran freely, no gap.",
        "Nothing gapped.",
    ],
)
def test_no_gap_in_any(text: str) -> None:
    assert each(TWO + text, "gap") == dict.fromkeys(BOTH, "none")


@pytest.mark.parametrize("text", ["Everything glided freely.", "Nothing caught.", "No gap, and everything ran freely."])
def test_all_of_them_ran(text: str) -> None:
    assert each(TWO + text, "glide") == dict.fromkeys(BOTH, "free")


def test_everything_ran_smoothly_tells_of_the_operation() -> None:
    assert each(TWO + "All was done by noon and everything ran smoothly.", "glide") == {}


def test_moved_by_the_wrist_and_not_pulled_on() -> None:
    text = "I let the wrist flex and extend and everything pulled through, no gaps anywhere."
    assert each(TWO + text, "test") == dict.fromkeys(BOTH, "passive")


@pytest.mark.parametrize(
    "text",
    [
        "The middle gapped 1 mm and was left so. Nothing else gapped.",
        "I looked at the join of the middle finger: no gapping anywhere.",
        "Middle finger again: nothing gapped.",
    ],
)
def test_not_of_all(text: str) -> None:
    found = each(TWO + text, "gap")
    assert "none" not in (found.get("index FDP"), found.get("middle FDP")) or len(found) < len(BOTH)


def test_what_gapped_before_stays_told() -> None:
    found = each(TWO + "The middle FDP gapped 1 mm and was left so.\n\nOtherwise tidy. No gap anywhere.", "gap")
    assert found["middle FDP"] == "seen"


def test_nothing_is_of_the_paragraph() -> None:
    ring = "RING FINGER: FDP 4-strand cruciate of 3-0. It caught on A2.\n\n"
    small = "SMALL FINGER: FDP 4-strand cruciate of 3-0. Nothing caught."
    assert each(ring + small, "glide") == {"ring FDP": "catching", "small FDP": "free"}


def test_no_tendon_here_is_of_one_place() -> None:
    text = "THUMB: FPL repaired with four strands.\n\nWRIST: FCR repaired with four strands. No tendon here gapped."
    assert "thumb FPL" not in each(text, "gap")
