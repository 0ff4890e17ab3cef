"""'The ends' behind words on a tendon cut in part are those of the tendons cut through before it."""

import pytest
from reader_sentences import each

CUT = "FDP of the ring and small fingers cut through. The FDS of the middle was cut by 25%. "


@pytest.mark.parametrize(("words", "value"), [("The ends were ragged.", "ragged"), ("The stumps were clean.", "clean")])
def test_ends_behind_a_partial_cut(words: str, value: str) -> None:
    assert each(CUT + words, "ends") == {"ring FDP": value, "small FDP": value}


def test_trimmed_in_the_next_paragraph() -> None:
    words = CUT + "\n\nThe ends were trimmed by 3 mm on each side."
    assert each(words, "trimmed_mm") == {"ring FDP": 3, "small FDP": 3}


def test_ends_of_a_tendon_by_name() -> None:
    words = CUT + "The ends of the small FDP were ragged."
    assert each(words, "ends") == {"small FDP": "ragged"}


def test_ends_of_the_one_cut_in_part_alone() -> None:
    words = "The FDP of the ring was cut by 80% and repaired. The ends were clean."
    assert not each(words, "ends").keys() - {"ring FDP"}


def test_labels_keep_their_own() -> None:
    words = "FDP ring: cut 100%, ends: ragged\nFDP small: cut 75%, ends: clean\n"
    assert each(words, "ends").get("ring FDP") == "ragged"


@pytest.mark.parametrize(
    "words",
    [
        "The cut surfaces of all the divided tendons were sharp and clean.",
        "The ends of the severed tendons were clean.",
    ],
)
def test_ends_of_the_divided_tendons(words: str) -> None:
    note = "Index FDP completely divided. Ring FDP cut through 70% of its width. " + words
    assert each(note, "ends") == {"index FDP": "clean"}


@pytest.mark.parametrize("words", ["FDP 100% just distal to A2, ends tidy", "FDP cut through at A4, ends clean"])
def test_ends_of_the_tendon_the_line_names(words: str) -> None:
    note = f"L index FDP + FDS RS, zone 2\n\n- {words}\n- FDS: radial slip 100%, ulnar slip OK"
    assert list(each(note, "ends")) == ["index FDP"]


@pytest.mark.parametrize("ends", ["All the severed ends were crisp.", "All the divided ends were clean."])
def test_all_the_severed_ends(ends: str) -> None:
    note = f"Index: FDP half cut. Sutured.\nRing: FDP: cut through.\nSmall: FDP: cut through.\n\nComments. {ends}"
    assert each(note, "ends") == {"ring FDP": "clean", "small FDP": "clean"}


def test_all_the_cut_ends_are_of_those_cut_in_part_too() -> None:
    note = "Index: FDP half cut. Sutured.\nRing: FDP: cut through.\n\nComments. All the ends were ragged."
    assert set(each(note, "ends")) == {"index FDP", "ring FDP"}


@pytest.mark.parametrize(
    "words",
    [
        "The three cut-across tendons had clean ends.",
        "The ends of the three cut-through tendons were clean.",
        "The cut-across tendons had even cut surfaces.",
        "All the cut-through tendons: cut surfaces level.",
    ],
)
def test_ends_of_the_cut_across_tendons(words: str) -> None:
    note = "Middle FDP and FDS cut across, sewn. Ring FDP cut across, sewn. Ring FDS 2/3 cut, sewn with 4-0 nylon. "
    assert each(note + words, "ends") == dict.fromkeys(("middle FDP", "middle FDS", "ring FDP"), "clean")


def test_what_crosses_tendons_names_none() -> None:
    note = "Middle FDP and FDS cut across. The ring FDS was ragged. A synovial band ran across tendons with clean ends."
    assert "middle FDP" not in each(note, "ends")
