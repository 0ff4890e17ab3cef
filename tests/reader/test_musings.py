"""What a writer would do in another case is no finding of this operation."""

import pytest
from reader_sentences import each, told

SEWN = "Ring finger. FDP completely divided and repaired with 4-0 nylon."


@pytest.mark.parametrize(
    "remark",
    [
        "With a six-strand repair I would let her move earlier.",
        "After a two-strand suture of a fresh tendon I would be more careful still.",
        "In zone II I should of course have used eight strands.",
        "For a four-strand core one might have begun at once.",
        "I would certainly have chosen six strands in a younger man.",
    ],
)
def test_another_case_gives_no_strands(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "strands") == {}


@pytest.mark.parametrize(
    ("words", "strands"),
    [
        ("I used a four-strand core, and I would start at once.", 4),
        ("With six strands across I am content.", 6),
        ("I would have preferred six strands but four strands were placed.", 4),
    ],
)
def test_this_case_keeps_its_strands(words: str, strands: float) -> None:
    assert told(f"{SEWN} {words}", "strands") == {"ring FDP": {"strands": strands}}


@pytest.mark.parametrize(
    "words",
    [
        "I spoke with the patient, who was awake, of graft, of tenodesis of the DIP, of doing nothing.",
        "We talked about a tenodesis and about a graft.",
    ],
)
def test_what_was_talked_over_was_not_done(words: str) -> None:
    note = f"Index FDP completely divided. {words} Repair: locked cruciate, four strands."
    assert each(note, "treatment") == {"index FDP": "repaired"}


@pytest.mark.parametrize(
    "words",
    [
        "In an adult I would reach for four strands; in a tendon the size of hers I chose a Pennington.",
        "In a larger tendon I would pick an eight-strand repair, but in this one I placed a modified Kessler.",
        "With a bigger tendon one would aim at six strands; I chose a Kessler.",
    ],
)
def test_what_an_adult_or_a_larger_tendon_would_get_was_not_done(words: str) -> None:
    assert each(f"Thumb FPL completely divided. {words}", "strands") == {"thumb FPL": 2}


def test_what_i_would_call_a_repair_was_done() -> None:
    note = "Thumb FPL completely divided. In this man I would call it thin. I would call this a four-strand repair."
    assert each(note, "strands") == {"thumb FPL": 4}
