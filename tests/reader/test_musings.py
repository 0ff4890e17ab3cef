"""What a writer would do in another case is no finding of this operation."""

import pytest
from reader_sentences import told

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
