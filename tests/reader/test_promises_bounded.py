"""What bounds a promise, leaves it open or takes it back promises nothing."""

import pytest
from reader_sentences import told

HEAD = "Ring FDP repaired. "


@pytest.mark.parametrize(
    "words",
    [
        "A2: intact (partly).",
        "A2: preserved 50%.",
        "A2 was all but intact.",
        "A2 was not opened more than 5 mm.",
        "A2: ok after repair with 5-0.",
        "A2 was preserved until the end, when it had to give way.",
        "A2 and A4 were preserved in the drawing.",
    ],
)
def test_pulleys(words: str) -> None:
    found = told(HEAD + words, group="pulleys")
    assert all(facts.get("finding") != "intact" for facts in found.values())


@pytest.mark.parametrize("words", ["Glide: free except last 10 deg.", "It ran freely save in the last few degrees."])
def test_glide_but_for_its_end(words: str) -> None:
    assert told(HEAD + words, "glide") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Gap: nil before closing sheath, 1 mm after.",
        "Neither gap nor catching could be judged.",
        "Neither a gap nor tension could be assessed.",
    ],
)
def test_gaps(words: str) -> None:
    assert told(HEAD + words, "gap", "glide") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Peripheral: tbc",
        "Peripheral: as per protocol",
        "The epitendinous had to be left for another day.",
        "The epitendinous 6-0 Prolene snapped; no second one at hand.",
    ],
)
def test_peripheral_sutures(words: str) -> None:
    assert told(HEAD + words, "peripheral").get("ring FDP") in (None, {"peripheral": "absent"})


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("Four strands had been the aim.", None),
        ("The set for a six-strand repair was opened.", None),
        ("We do six strands in children, four in adults.", None),
        ("It has 4 strands in name, two in fact.", 2),
        ("It has 6 strands by name, four in truth.", 4),
        ("It has four strands distally, two proximally.", 2),
    ],
)
def test_counts(words: str, count: int | None) -> None:
    assert told(HEAD + words, "strands").get("ring FDP") == (None if count is None else {"strands": count})


@pytest.mark.parametrize(
    "words", ["Tension free repair was not possible.", "A tension-free repair could not be achieved."]
)
def test_no_tension_free_repair(words: str) -> None:
    assert told(HEAD + words, "tension").get("ring FDP") in (None, {"tension": "present"})


@pytest.mark.parametrize("words", ["Ends: clean proximally.", "The ends were clean distally."])
def test_one_end(words: str) -> None:
    assert told(HEAD + words, "ends") == {}


def test_plain_words_stay() -> None:
    note = HEAD + "Four strands. A2 was preserved. It glided freely, no gap, no tension. Ends clean. Epitendinous 6-0."
    assert told(note, "strands", "glide", "gap", "tension", "ends", "peripheral")["ring FDP"] == {
        "strands": 4,
        "glide": "free",
        "gap": "none",
        "tension": "none",
        "ends": "clean",
        "peripheral": "present",
    }
    assert told(note, group="pulleys") == {"ring A2": {"finding": "intact"}}


@pytest.mark.parametrize(
    "note",
    [
        "What remained of A2 was intact.",
        "The undamaged portion of A2 was kept.",
        "Most of A2 was intact.",
        "All but the edge of A2 was intact.",
        "A2, or what was left of it, was intact.",
    ],
)
def test_a_part_of_a_pulley_is_no_whole_one(note: str) -> None:
    assert told(f"Ring FDP repaired. {note}", "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    ("note", "strands"),
    [("It has six strands minus one that broke.", 5), ("The core was of 8 strands, less two lost to fraying.", 6)],
)
def test_strands_taken_away_are_not_counted(note: str, strands: int) -> None:
    assert told(f"Ring FDP repaired. {note}", "strands") == {"ring FDP": {"strands": strands}}
