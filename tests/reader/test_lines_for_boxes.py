"""Lines drawn behind the options of a form are its boxes: empty ones say nothing."""

import pytest
from reader_sentences import told

HEAD = "Left index finger. FDP cut.\n"


@pytest.mark.parametrize(
    "row",
    [
        "A2 pulley: intact ___ vented ___ repaired ___",
        "Gap: none ___ seen ___",
        "Glide: free ___ catching ___",
        "Suture: Kessler ___ cruciate ___ Adelaide ___",
        "Strands: 2 ___ 4 ___ 6 ___",
        "Epitendinous: yes ___ no ___",
        "FDS: complete ___ partial ___ intact ___",
        "FDS   zone ___  % ___   repaired Y / N   core ________  epi _______",
    ],
)
def test_empty_lines_say_nothing(row: str) -> None:
    assert told(HEAD + row) == {}


@pytest.mark.parametrize(
    ("row", "field", "value"),
    [
        ("Suture: Kessler ___ cruciate _X_ Adelaide ___", "stitch", "cruciate"),
        ("Strands: 2 ___ 4 __x__ 6 ___", "strands", 4),
    ],
)
def test_a_crossed_line_answers(row: str, field: str, value: object) -> None:
    assert told(HEAD + row, field)["index FDP"] == {field: value}


def test_words_on_a_line_are_an_answer() -> None:
    facts = told(HEAD + "core __4-0 Prolene 4 strand__  epi __6-0 Prolene running__", "size", "peripheral_size")
    assert facts["index FDP"] == {"size": "4-0", "peripheral_size": "6-0"}
