"""'8.3 FDP ring - 70 %', then 're 8.3: modified Kessler': lines that carry a code, and what is told by it."""

from reader_sentences import each, quote_of, told

NUMBERED = """Left hand, zone III.
   8.1 FDP 3 - scratch, 10 %
   8.2 FDS 3 - 20 %
   8.3 FDP 4 - 70 %
   8.4 FDS 4 - complete
Measures
   re 8.1, 8.2: loose fibres tidied, no thread
   re 8.3: modified Kessler, 4-0 Prolene, 2 strands
   re 8.4: not joined
"""
LETTERED = """Left ring finger.
F1  FDP parted, both halves soft
F2  FDS in the finger: scarred, its two slips unhurt
F3  A2 present
D1  ends cut back 3 mm each
D2  FDP sutured, 3-0 Fiberwire, Savage
D3  A2 enlarged with a V-Y plasty
"""


def test_numbers_of_a_section() -> None:
    assert each(NUMBERED, "extent_percent") == {"middle FDP": 10, "middle FDS": 20, "ring FDP": 70}
    assert each(NUMBERED, "treatment") == {
        "middle FDP": "trimmed",
        "middle FDS": "trimmed",
        "ring FDP": "repaired",
        "ring FDS": "left",
    }
    assert each(NUMBERED, "strands") == {"ring FDP": 2}
    assert quote_of(NUMBERED, "ring FDP", "size") == "4-0"


def test_letters_are_no_fingers() -> None:
    assert each(LETTERED, "strands") == {"ring FDP": 6}
    assert each(LETTERED, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}
    assert each(LETTERED, "trimmed_mm") == {"ring FDP": 3}


def test_other_letters() -> None:
    words = "Right hand.\nT1. FDP index: divided\nT2. FDP small: half cut\n"
    words += "N1. ulnar nerve of the index whole\nN2. radial nerve whole\n"
    words += "T1: four strands, 4-0 nylon\nT2: left alone\n"
    assert each(words, "strands") == {"index FDP": 4}
    assert each(words, "treatment") == {"index FDP": "repaired", "small FDP": "left"}


def test_fingers_stay_fingers() -> None:
    words = "Right hand.\nD1 FPL: cut, Kessler 4-0\nD2 FDP: cut, cruciate 3-0\nF1 and F2 see photographs\n"
    assert each(words, "size") == {"thumb FPL": "4-0", "index FDP": "3-0"}


def test_pulleys_stay_pulleys() -> None:
    words = "Ring finger, FDP repaired.\nA1 vented\nA2 intact\nC1 vented\nC2 intact\n"
    assert told(words, "finding", group="pulleys")["ring A2"] == {"finding": "intact"}


def test_a_measure_is_no_code() -> None:
    words = NUMBERED + "The gap in the nerve was 8.3 mm.\nre 8.4: nothing else"
    assert each(words, "strands") == {"ring FDP": 2}


def test_a_range_is_no_finger() -> None:
    assert not told("FDP 2-3 % cut.").get("index FDP")
    assert each("FDP cut 20 - 30 %.", "extent_percent") == {"FDP": 30}
