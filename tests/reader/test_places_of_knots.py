"""Where knots lie, told in small words, of the rest, of as many, or as a dictation hears it."""

import pytest
from reader_sentences import each

ONE = "Ring FDP cut through, zone II. FDP: four-strand cruciate, 3-0 Ticron. "
TWO = "Ring and middle FDP cut through, zone II. Both: four-strand cruciate, 3-0 Ticron. "


@pytest.mark.parametrize(
    ("note", "place"),
    [
        ("Purchase 9 mm, knots in.", "buried"),
        ("Knot: out.", "external"),
        ("With the knot within.", "buried"),
        ("Knot's between the ends.", "buried"),
        ("The knots lie in the suture gap.", "buried"),
        ("The not was buried between the ends.", "buried"),
        ("Nots were buried.", "buried"),
        ("Finished with a running 6-0 epitendinous, and the knots of the core buried.", "buried"),
    ],
)
def test_places_told_in_small_words(note: str, place: str) -> None:
    assert each(ONE + note, "knot") == {"ring FDP": place}


@pytest.mark.parametrize(
    "note",
    ["The epitendinous knot was buried.", "The knots in the skin were removed.", "The not was not looked for."],
)
def test_no_place_of_the_core_knots(note: str) -> None:
    assert each(ONE + note, "knot") == {}


@pytest.mark.parametrize(
    ("note", "ring", "middle"),
    [
        ("In the ring finger FDP the knot lay on the outside, the remaining knots being buried.", "external", "buried"),
        ("The ring FDP knot was left outside, the other knots lie between the ends.", "external", "buried"),
        ("All core sutures were grasping, knots buried.", "buried", "buried"),
        ("The knots in all two lie outside.", "external", "external"),
    ],
)
def test_knots_of_the_rest_and_of_all(note: str, ring: str, middle: str) -> None:
    assert each(TWO + note, "knot") == {"middle FDP": middle, "ring FDP": ring}


@pytest.mark.parametrize("stitch", ["cruciate", "Becker"])
def test_knots_of_one_stitch(stitch: str) -> None:
    note = (
        f"Ring FDP and FDS cut through. FDP: four-strand {stitch}, 3-0 Ticron. FDS: Tajima of 4-0 Ticron. "
        f"The knots of the {stitch} were left outside."
    )
    assert each(note, "knot") == {"ring FDP": "external"}


@pytest.mark.parametrize("before", ["Purchase 10 mm in both.", "No gap at either repair."])
def test_knots_of_those_told_of_together(before: str) -> None:
    assert each(TWO + before + " The knots lie between the ends.", "knot") == {
        "middle FDP": "buried",
        "ring FDP": "buried",
    }


@pytest.mark.parametrize(
    ("form", "place"),
    [("Knot  [ ] between ends  [x] outside", "external"), ("Knot  [x] between ends  [ ] outside", "buried")],
)
def test_the_ticked_place(form: str, place: str) -> None:
    assert each(ONE + "\n" + form, "knot") == {"ring FDP": place}


_THREE = (
    "Index and middle FDP divided and FDS of the index. FDPs sewn with 3-0 Ticron. "
    "FDS with a modified Kessler of 4-0 Ticron, two strand. "
)


@pytest.mark.parametrize(
    "words", ["The knots lie between the ends in all.", "Knots buried in all.", "Every knot is buried."]
)
def test_knots_of_all_told_behind_the_last(words: str) -> None:
    assert each(_THREE + words, "knot") == {"index FDP": "buried", "index FDS": "buried", "middle FDP": "buried"}


def test_so_many_knots_in_all_are_those_of_the_last() -> None:
    assert each(_THREE + "Four knots in all, buried.", "knot") == {"index FDS": "buried"}
