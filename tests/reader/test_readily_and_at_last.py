"""Passing readily, pulleys that needed no opening, knots in the interior and smooth faces: more words for the same."""

import pytest
from reader_sentences import each

SEWN = "Middle. FDP cut through and repaired with four strands of 4-0. "


@pytest.mark.parametrize(
    "text",
    [
        "At first it snagged on the A4 rim; after the plasty it passed under it readily.",
        "It passes readily under A4.",
        "No gap, no trigger.",
        "It passes smoothly beneath what is left of the sheath.",
    ],
)
def test_free_glide_in_other_words(text: str) -> None:
    assert each(SEWN + text, "glide") == {"middle FDP": "free"}


@pytest.mark.parametrize(
    "text",
    [
        "There was no trigger finger on the other hand.",
        "No trigger release was needed.",
        "The sheath glided freely under the skin.",
        "He passed the examination readily.",
    ],
)
def test_what_only_looks_like_free_glide(text: str) -> None:
    assert each(SEWN + text, "glide") == {}


@pytest.mark.parametrize(
    "text", ["A4 was dilated with sounds and needed no incision.", "A4 required no opening.", "A4 needed no division."]
)
def test_a_pulley_that_needed_no_opening(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"middle A4": "intact"}


def test_a_skin_that_needed_no_incision() -> None:
    found = each(SEWN + "The skin needed no incision, A2 was vented.", "finding", group="pulleys")
    assert found == {"middle A2": "vented"}


@pytest.mark.parametrize("place", ["in the interior of the junction", "in the interior of the tendon"])
def test_knots_in_the_interior(place: str) -> None:
    assert each(SEWN + f"The knots were lodged {place}.", "knot") == {"middle FDP": "buried"}


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("Middle FDP severed, its faces being smooth and free of contusion.", "clean"),
        ("Middle FDP severed, the cut faces smooth.", "clean"),
        ("Middle FDP severed. The articular faces of the joint are smooth.", None),
        ("Middle FDP severed. The joint surfaces were smooth.", None),
    ],
)
def test_smooth_faces(text: str, ends: str | None) -> None:
    assert each(text, "ends").get("middle FDP") == ends
