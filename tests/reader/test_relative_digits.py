"""Fingers told by where they stand: 'the two ulnar digits', 'the outer two', 'the first two', 'the last of these'."""

import pytest
from reader_sentences import each, told

THREE = "Index, middle and ring FDP were repaired with 4 strands. "


@pytest.mark.parametrize(
    ("words", "fingers"),
    [
        ("Two ulnar digits: FDP and FDS cut. FDP repaired with four strands.", ["ring", "small"]),
        ("FDP of the ulnar three fingers cut and repaired with four strands.", ["middle", "ring", "small"]),
        ("FDP of the radial two fingers cut and repaired with four strands.", ["index", "middle"]),
        ("FDP of the border digits repaired with four strands.", ["index", "small"]),
    ],
)
def test_fingers_of_the_hand(words: str, fingers: list[str]) -> None:
    assert each(words, "strands") == {f"{finger} FDP": 4 for finger in fingers}


@pytest.mark.parametrize(
    ("words", "fingers"),
    [
        ("The last of these also got an epitendinous 6-0.", ["ring"]),
        ("All but the last had an epitendinous 6-0.", ["index", "middle"]),
        ("The outer two had an epitendinous 6-0.", ["index", "ring"]),
        ("Only the middle of the three had an epitendinous 6-0.", ["middle"]),
        ("The two ulnar ones had an epitendinous 6-0.", ["middle", "ring"]),
        ("Epitendinous 6-0 in the first two.", ["index", "middle"]),
    ],
)
def test_of_those_listed(words: str, fingers: list[str]) -> None:
    assert sorted(told(THREE + words, "peripheral")) == sorted(f"{finger} FDP" for finger in fingers)


def test_each_with_its_own_count() -> None:
    border = each("Index to small FDP cut. Border digits 4 strands, central digits 6 strands.", "strands")
    assert border == {"index FDP": 4, "middle FDP": 6, "ring FDP": 6, "small FDP": 4}
    turn = "Middle, ring and small fingers: FDP cut. In the first two a six-strand repair, in the last a four-strand."
    assert each(turn, "strands") == {"middle FDP": 6, "ring FDP": 6, "small FDP": 4}


def test_the_first_named() -> None:
    found = told("Middle and ring FDP were cut. The first-named was repaired with 4 strands, the other left.")
    assert found["middle FDP"]["strands"] == 4
    assert "strands" not in found.get("ring FDP", {})


@pytest.mark.parametrize(
    "words",
    [
        "Ring and small fingers. Ulnar digital nerve of the ring cut, the radial one intact. FDP small 4 strands.",
        "Index and small fingers. The ulnar one of the two FDS slips of the small finger was cut. FDP small 4 strands.",
    ],
)
def test_sides_of_other_things(words: str) -> None:
    assert each(words, "strands") == {"small FDP": 4}


@pytest.mark.parametrize(
    "words",
    [
        "The FDP was cut, and both FDS slips. FDP 4 strands of 3-0. The slips were repaired with 4-0 mattress sutures.",
        "FDP and FDS cut. The deep one was repaired with 4 strands of 3-0, the superficial one with 4-0 mattresses.",
    ],
)
def test_the_slips_and_the_superficial_one(words: str) -> None:
    assert each(f"Middle finger. {words}", "size") == {"middle FDP": "3-0", "middle FDS": "4-0"}


def test_a_grid_whose_label_counts() -> None:
    assert told("Finger    FDP cut in    extent\nboth     cut in     , whole", "strands") == {}


@pytest.mark.parametrize("words", ["Rehab: place and hold from d4.", "Therapy to start d4.", "Splint off by d5."])
def test_a_day_is_no_finger(words: str) -> None:
    assert list(each(f"Left hand. FDP cut, 4 strands.\n{words}", "strands")) == ["FDP"]


@pytest.mark.parametrize("head", ["19 Sept 2031 // L hand // MIDDLE", "Left hand - MIDDLE"])
def test_a_finger_at_the_end_of_the_title(head: str) -> None:
    assert each(f"{head}\nself + SHO // GA\n\nFDP cut, 4 strands.", "strands") == {"middle FDP": 4}
