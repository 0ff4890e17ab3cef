"""What is the same as before told in short: the thread, its size, the knot, the count; and taken back at once."""

import pytest
from reader_sentences import each, told

FIRST = "Ring FDP and FDS cut through, zone II. FDP: four-strand cruciate, 3-0 Ticron, knot buried. "


@pytest.mark.parametrize(
    ("note", "facts"),
    [
        ("FDS: modified Kessler, same 3-0.", {"size": "3-0", "material": "braided polyester"}),
        ("FDS: Tajima, 5-0 of the same.", {"size": "5-0", "material": "braided polyester"}),
        ("FDS: two mattress stitches of the same.", {"size": "3-0", "material": "braided polyester"}),
        ("FDS: Kessler, same stitch.", {"size": "3-0", "material": "braided polyester"}),
        (
            "FDS: modified Kessler of 4-0 PDS, same knot.",
            {"size": "4-0", "material": "polydioxanone", "knot": "buried"},
        ),
    ],
)
def test_the_thread_or_the_knot_is_the_same(note: str, facts: dict[str, object]) -> None:
    assert told(FIRST + note, "size", "material", "knot")["ring FDS"] == facts


@pytest.mark.parametrize("note", ["FDS: the same 4-strand.", "The FDS got the same four-strand."])
def test_the_same_count_is_the_same_core(note: str) -> None:
    shown = told(FIRST + note, "stitch", "strands", "size", "peripheral", "purchase_mm")["ring FDS"]
    assert shown == {"stitch": "cruciate", "strands": 4, "size": "3-0"}


@pytest.mark.parametrize("taken", ["scratch that", "no wait"])
def test_the_same_taken_back(taken: str) -> None:
    note = FIRST + "Small FDP cut through. The small FDP got the same thing, " + taken + ", it got 4-0 Ticron."
    shown = told(note, "size", "strands", "knot")["small FDP"]
    assert shown == {"size": "4-0"}


@pytest.mark.parametrize("away", ["3 mm taken back on the proximal side", "4 mm taken off the distal end"])
def test_a_length_cut_away_is_none_that_another_repair_shares(away: str) -> None:
    first = f"Index FDP - cut through, {away}. Six-strand repair, 3-0 nylon."
    note = f"{first}\nMiddle FDP - cut through. Same repair as index."
    assert each(note, "purchase_mm") == {}
    assert each(note, "strands") == {"index FDP": 6, "middle FDP": 6}


def test_a_length_taken_is_shared() -> None:
    first = "Index FDP - cut through. Six-strand repair, bites of 9 mm."
    note = f"{first}\nMiddle FDP - cut through. Same repair as index."
    assert each(note, "purchase_mm") == {"index FDP": (9, 9), "middle FDP": (9, 9)}


@pytest.mark.parametrize("words", ["same core, same outer stitch.", "same core and outer suture."])
def test_the_outer_stitch_is_the_peripheral_one(words: str) -> None:
    head = "Index FDP: 4-strand Adelaide, 3-0 Ticron, plus 5-0 Prolene running outside. "
    found = told(head + "Middle FDP: " + words)["middle FDP"]
    assert found["peripheral_size"] == "5-0"
    assert found["peripheral_pattern"] == "running"


def test_no_outer_stitch_is_none() -> None:
    head = "Index FDP: 4-strand Adelaide, 3-0 Ticron, plus 5-0 Prolene running outside. "
    found = told(head + "Middle FDP: same core but no outer stitch.")["middle FDP"]
    assert found.get("peripheral") != "present"
