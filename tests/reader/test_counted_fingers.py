"""'FDP of three fingers' is of all the note names; lengths, shares and pieces told in the same plain way."""

import pytest
from reader_sentences import each, told

HEAD = (
    "Left index, middle and ring fingers, zone 2. In the index finger FDP was completely cut. In the middle "
    "finger both FDP and FDS were completely cut. In the ring finger FDP was completely cut. "
)


@pytest.mark.parametrize("words", ["FDP of three fingers was repaired", "The FDP in 3 fingers was sutured"])
def test_of_as_many_fingers_as_the_note_names(words: str) -> None:
    facts = told(f"{HEAD}{words} with a six-strand Yoshizu of 4-0 nylon.", "strands")
    assert facts == {f"{finger} FDP": {"strands": 6} for finger in ("index", "middle", "ring")}


def test_fewer_fingers_than_the_note_names_are_not_all() -> None:
    facts = told(f"{HEAD}FDP of two fingers was repaired with a six-strand Yoshizu of 4-0 nylon.", "strands")
    assert len(facts) < 3


@pytest.mark.parametrize(
    "words",
    [
        "FDS was partially injured, about 40%. Index FDS was not sutured; the loose fibers were cut off.",
        "FDS was 40% cut. The FDS was not repaired, its loose fibres were cut away.",
    ],
)
def test_loose_fibres_cut_off(words: str) -> None:
    facts = told(f"Left index finger. FDP was completely cut. {words}", "extent", "treatment")
    assert facts["index FDS"] == {"extent": "partial", "treatment": "trimmed"}


def test_a_distance_to_the_locking() -> None:
    words = "Left index finger. FDP was cut through and repaired with four strands of 4-0 nylon. The distance from the "
    assert "purchase_mm" in told(words + "stump to the locking was 10 to 12 mm.", "purchase_mm")["index FDP"]


@pytest.mark.parametrize(
    ("words", "facts"),
    [
        ("FDS radial slip cut about 1/2, ulnar slip no damage.", {"radial": "partial", "ulnar": "intact"}),
        ("FDS radial slip cut 1/2, ulnar slip without damage.", {"radial": "partial", "ulnar": "intact"}),
    ],
)
def test_halves_and_no_damage(words: str, facts: dict[str, str]) -> None:
    expected = {f"index FDS {slip}": {"extent": extent} for slip, extent in facts.items()}
    assert told(f"Left index finger. {words}", "extent") == expected


def test_a_repair_without_damage_to_something_else() -> None:
    words = "Left index finger. FDP and FDS cut through. FDS was repaired without damage to the pulleys."
    assert each(words, "extent") == {"index FDP": "complete", "index FDS": "complete"}
