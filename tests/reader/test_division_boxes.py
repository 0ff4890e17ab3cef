"""How far a tendon was cut, ticked on a form under its name, and weak words for whole tendons in a list."""

import pytest
from reader_sentences import told

FORM = "DIGIT    [ ] index  [x] ring\nTENDON   [x] FDP   [ ] FDS\n"


@pytest.mark.parametrize(
    ("row", "facts"),
    [
        ("DIVISION   [ ] complete  [x] partial, approx 80 %", {"extent": "partial", "extent_percent": 80}),
        ("Division:  [ ] complete  [x] partial (60 %)", {"extent": "partial", "extent_percent": 60}),
        ("CUT        [x] complete  [ ] partial ___ %", {"extent": "complete"}),
    ],
)
def test_the_ticked_answer(row: str, facts: dict[str, object]) -> None:
    assert told(FORM + row, "extent", "extent_percent") == {"ring FDP": facts}


@pytest.mark.parametrize("row", ["DIVISION   [ ] complete  [ ] partial", "CUT   [ ] complete   [ ] partial ___ %"])
def test_nothing_ticked(row: str) -> None:
    assert told(FORM + row, "extent") == {}


@pytest.mark.parametrize(
    "words",
    ["Of the superficialis tendons all four were cut across.", "The FDS tendons were all four completely divided."],
)
def test_all_four_behind_the_name(words: str) -> None:
    found = told(f"Left wrist, zone V. {words}", "extent")
    assert set(found) == {f"{digit} FDS" for digit in ("index", "middle", "ring", "small")}


def test_all_four_strands_are_no_fingers() -> None:
    assert set(told("Ring finger. FDP repaired. The FDP, all four strands in, ran freely.")) == {"ring FDP"}


@pytest.mark.parametrize("words", ["The FCR and the median nerve were sound.", "FCR and ulnar nerve healthy."])
def test_a_tendon_and_a_nerve_whole(words: str) -> None:
    assert told(words, "extent") == {"FCR": {"extent": "intact"}}


def test_ends_that_need_no_trimming_are_not_left() -> None:
    note = "Ring finger. FDP completely cut; the ends were clean and needed no trimming. Repaired with 4-0 nylon."
    assert told(note, "treatment") == {"ring FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "words", ["I removed the old sutures of 2-0 nylon.", "The emergency sutures of 2-0 silk came out."]
)
def test_sutures_taken_out_of_the_wound(words: str) -> None:
    note = f"Ring finger. {words} FDP completely divided and repaired with 4-0 Ethibond."
    assert told(note, "size", "material") == {"ring FDP": {"size": "4-0", "material": "braided polyester"}}


def test_a_purchase_is_of_the_tendon_named() -> None:
    note = (
        "Index and ring fingers. FDP and FDS of the index and FDP of the ring completely cut. The index and ring "
        "profundus tendons were repaired with 3-0 Ethibond, taking 10 mm in the index and 8 mm in the ring finger."
    )
    assert set(told(note, "purchase_mm")) == {"index FDP", "ring FDP"}


@pytest.mark.parametrize("head", ["REPAIR FDS", "FDS"])
def test_a_ticked_not_repaired(head: str) -> None:
    note = f"DIGIT: index\nFDS: partial 40 %\n\n{head}\n[ ] repaired   [ ] excised   [x] not repaired (stable)\n"
    assert told(note, "treatment") == {"index FDS": {"treatment": "left"}}
