"""A pulley's repair undone, a second count of strands, ends that part, and what was only to come or seen elsewhere."""

import pytest
from reader_sentences import told

HEAD = "Ring finger, zone II. The FDP was cut and repaired with 3-0. "


@pytest.mark.parametrize(
    "words",
    [
        "A2 was sewn but blocked the glide and the stitches were taken out again.",
        "The A2 repair was reversed.",
        "A2 was repaired. This blocked the glide, so the repair was taken down again.",
        "A2 was repaired with 6-0 nylon. It gave way when the finger was extended.",
    ],
)
def test_a_pulley_repair_undone(words: str) -> None:
    assert told(HEAD + words, "finding", group="pulleys").get("ring A2") in (None, {"finding": "injured"})


@pytest.mark.parametrize(
    "words", ["A2 was repaired. It was opened again.", "A2 was repaired, tore out and was vented over 5 mm."]
)
def test_the_last_deed_wins(words: str) -> None:
    assert told(HEAD + words, group="pulleys")["ring A2"]["finding"] == "vented"


@pytest.mark.parametrize(
    "words",
    [
        "A2 was repaired with 6-0 nylon, tore out and was repaired again.",
        "A2 was repaired. Skin closed. The tourniquet was taken down.",
        "A2 was repaired. It did not pull out.",
    ],
)
def test_a_pulley_repair_that_lasts(words: str) -> None:
    assert told(HEAD + words, group="pulleys")["ring A2"]["finding"] == "repaired"


@pytest.mark.parametrize(
    "words",
    [
        "A two- or a four-strand repair was done.",
        "I counted two strands, the nurse four.",
        "I counted four strands, the nurse only two.",
        "Four strands (the registrar wrote two).",
    ],
)
def test_the_lower_of_two_counts(words: str) -> None:
    assert told(HEAD + words, "strands")["ring FDP"] == {"strands": 2}


@pytest.mark.parametrize("words", ["Four strands, the nurse counted two swabs.", "Four strands, and I used two hooks."])
def test_a_count_of_other_things(words: str) -> None:
    assert told(HEAD + words, "strands")["ring FDP"] == {"strands": 4}


@pytest.mark.parametrize(
    "words",
    [
        "In extension the ends were 2 mm apart.",
        "On pulling the ends came 2 mm apart.",
        "No gap in flexion; in extension the ends stood 2 mm apart.",
    ],
)
def test_ends_apart_after_the_repair(words: str) -> None:
    assert told(HEAD + words, "gap", "gap_mm")["ring FDP"] == {"gap": "seen", "gap_mm": 2}


@pytest.mark.parametrize("words", ["The bites lay 2 mm apart.", "When found the ends were 5 mm apart."])
def test_apart_but_no_gap(words: str) -> None:
    assert told(HEAD + words, "gap") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Epitendinous to follow once the bleeding stops.",
        "Epitendinous will follow.",
        "Epitendinous suture still pending.",
    ],
)
def test_a_peripheral_suture_to_come(words: str) -> None:
    assert told(HEAD + words, "peripheral") == {}


@pytest.mark.parametrize("words", ["In A&E the ends looked clean.", "The ends looked clean in casualty."])
def test_ends_seen_elsewhere(words: str) -> None:
    assert told(HEAD + words, "ends") == {}


@pytest.mark.parametrize("words", ["The active test could not be done.", "An active test was refused."])
def test_no_active_test(words: str) -> None:
    assert told(HEAD + words, "test") == {}


@pytest.mark.parametrize(
    "words",
    ["In the laboratory a four-strand repair holds more.", "On the bench a six-strand repair is the strongest."],
)
def test_what_the_bench_says(words: str) -> None:
    assert told(HEAD + words, "strands") == {}
