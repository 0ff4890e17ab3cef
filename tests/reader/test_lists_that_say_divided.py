"""A line that says 'divided' before it lists what was: all of its tendons, but one with a share of its own."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize("head", ["Structures found divided:", "The following tendons were divided:", "Divided:"])
def test_every_tendon_of_the_list(head: str) -> None:
    note = f"Zone V. {head} FCR, PL, FDS x4, FDP index and middle, FPL about 50%, median nerve."
    found = each(note, "extent")
    assert {entry for entry, value in found.items() if value == "complete"} == {
        *("FCR", "PL", "index FDP", "middle FDP"),
        *(f"{digit} FDS" for digit in ("index", "middle", "ring", "small")),
    }
    assert told(note, "extent", "extent_percent")["thumb FPL"] == {"extent": "partial", "extent_percent": 50}


def test_semicolons_part_a_list_too() -> None:
    note = "Zone V. Divided: FCR; FDS index and ring; FDP index and middle; FPL 60%; median nerve."
    assert each(note, "extent") == {
        **dict.fromkeys(("FCR", "index FDS", "ring FDS", "index FDP", "middle FDP"), "complete"),
        "thumb FPL": "partial",
    }


def test_a_share_of_two_named_together() -> None:
    found = told("Ring finger. FDP and FDS cut 50%.", "extent_percent")
    assert found == {"ring FDP": {"extent_percent": 50}, "ring FDS": {"extent_percent": 50}}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("FDS of the index: sectioned. FDP of the index: respected.", {"index FDS": "complete", "index FDP": "intact"}),
        ("FDP ring sectioned, FDS ring respected.", {"ring FDP": "complete", "ring FDS": "intact"}),
        ("FDP ring cut across, so that the FDS was safe.", {"ring FDP": "complete", "ring FDS": "intact"}),
        ("FCR: sectioned for two thirds.", {"FCR": "partial"}),
    ],
)
def test_sectioned_and_respected(words: str, expected: dict[str, object]) -> None:
    assert each("Left hand. " + words, "extent") == expected


@pytest.mark.parametrize("words", ["Rupture of the FDP suture line.", "Found: rupture of the FDP repair."])
def test_a_suture_line_that_ruptured(words: str) -> None:
    assert told("Re-operation, small finger. " + words) == {"small FDP": {"extent": "complete"}}


@pytest.mark.parametrize("words", ["She knows of the risk of rupture of the FDP repair.", "Rupture of A2 noted."])
def test_a_rupture_feared_or_of_something_else(words: str) -> None:
    assert each("Small finger. " + words, "extent") == {}


@pytest.mark.parametrize(
    "words",
    [
        "division of FDP and FDS, long finger; division of FDP with partial FDS laceration, ring finger.",
        "FDP and FDS cut through, left long finger; FDP cut through with partial FDS laceration, left ring finger.",
    ],
)
def test_a_clause_of_a_diagnosis_that_ends_with_its_finger(words: str) -> None:
    assert each("DIAGNOSIS: " + words, "extent") == {
        **dict.fromkeys(("middle FDP", "middle FDS", "ring FDP"), "complete"),
        "ring FDS": "partial",
    }


@pytest.mark.parametrize("words", ["contused but in continuity", "bruised but in continuity"])
def test_a_bruised_tendon_is_whole(words: str) -> None:
    assert each(f"Small finger. The FDS was {words}. FDP cut through.", "extent")["small FDS"] == "intact"


def test_a_flap_that_catches_at_a_pulley() -> None:
    note = "Middle finger. FDP cut about one third from the radial side with a flap which catches under A2."
    assert told(note, "extent_percent") == {"middle FDP": {"extent_percent": 33}}
