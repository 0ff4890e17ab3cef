"""'FDP x2 and FPL: cruciate', 'FDS to all 4 fingers': so many tendons of a kind, counted in figures."""

import pytest
from reader_sentences import each, told

HURT = "FPL completely divided. FDP of index and middle completely divided. "
DEEP = ("index FDP", "middle FDP")


@pytest.mark.parametrize(
    "words",
    [
        "FDP x2: 4-strand cruciate 3-0 Ethibond.",
        "FDP (x 2): 4-strand cruciate, 3-0 Ethibond.",
        "FDP x2 4 strand cruciate, 3-0 Ethibond.",
    ],
)
def test_as_many_of_the_kind(words: str) -> None:
    found = told(HURT + words, "strands", "size")
    assert found == {entry: {"strands": 4, "size": "3-0"} for entry in DEEP}


@pytest.mark.parametrize(
    "words",
    [
        "FDP x2 and FPL: 4-strand cruciate 3-0 Ethibond.",
        "FPL + FDP (x2): 4-strand cruciate 3-0 Ethibond.",
        "FDPs and FPL: 4-strand cruciate 3-0 Ethibond.",
    ],
)
def test_as_many_beside_one(words: str) -> None:
    assert each(HURT + words, "strands") == dict.fromkeys(("thumb FPL", *DEEP), 4)


def test_two_kinds_counted_one_behind_the_other() -> None:
    found = each("Ring and small fingers. FDP x2 and FDS x2 completely divided.", "extent")
    assert found == {f"{finger} {kind}": "complete" for finger in ("ring", "small") for kind in ("FDP", "FDS")}


@pytest.mark.parametrize("words", ["FDP x 2 strands, 4-0 nylon.", "Repaired with two two-strand sutures."])
def test_counted_strands_are_no_tendons(words: str) -> None:
    assert len(each("Index. FDP and FDS completely divided. FDP of the ring intact. " + words, "strands")) == 1


@pytest.mark.parametrize(
    "words",
    [
        "Transected: FCR, PL, FDS to all 4 fingers, FDP to index and middle.",
        "FDS of the 4 fingers, FDP of index and middle were completely divided.",
        "All 4 FDS and the FDP of index and middle were completely divided.",
    ],
)
def test_four_in_figures(words: str) -> None:
    found = each(words, "extent")
    fingers = {f"{finger} FDS" for finger in ("index", "middle", "ring", "small")}
    assert {name for name in found if name not in ("FCR", "PL")} == fingers | set(DEEP)


def test_four_strands_are_not_four_fingers() -> None:
    assert set(each("FDS to the ring completely divided, all 4 strands passed.", "extent")) == {"ring FDS"}
