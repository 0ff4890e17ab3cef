"""Knots told of all repairs together, and tendons told to be whole with others."""

import pytest
from reader_sentences import each

SEWN = (
    "FDP index and FDP ring cut through. FDP index: Strickland, 4 strands, 3-0 Ticron. FDP ring: modified Kessler, "
    "3-0 Ticron.\n"
)


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("Knots: all outside.", "external"),
        ("Knots of the two repairs lie between the tendon ends.", "buried"),
        ("The knots of both were left outside.", "external"),
    ],
)
def test_knots_of_every_repair(text: str, place: str) -> None:
    assert each(SEWN + text, "knot") == {"index FDP": place, "ring FDP": place}


def test_knots_of_another_number_are_not_of_all() -> None:
    assert each(SEWN + "Knots of the three repairs lie outside.", "knot") != {
        "index FDP": "external",
        "ring FDP": "external",
    }


@pytest.mark.parametrize(
    "text",
    [
        "The FDS of the index was intact, as were all four profundi and the flexor pollicis longus.",
        "The FDS of the index was found whole, as were the four profundi and the FPL.",
    ],
)
def test_as_were_all_four(text: str) -> None:
    fingers = ("index", "middle", "ring", "small")
    expected = {f"{finger} FDP": "intact" for finger in fingers} | {"index FDS": "intact", "thumb FPL": "intact"}
    assert each(text, "extent") == expected


def test_a_pulley_told_before_what_was_done_to_it() -> None:
    text = (
        "ring finger fdp complete, a two pulley i vented the proximal part by four millimetres because the repair was "
        "knocking on its edge and a four i left that alone its intact and a three well that one was divided along its "
        "whole length so released"
    )
    assert each(text, "finding", group="pulleys") == {"ring A2": "vented", "ring A4": "intact", "ring A3": "released"}
