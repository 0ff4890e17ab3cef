"""Questions of a note: left open, answered with no, or answered with a finding."""

import pytest
from reader_sentences import each, told

RING = "Ring FDP repaired with two strands of 5-0 Prolene. "
PLAIN = {"ring FDP": {"treatment": "repaired", "strands": 2, "size": "5-0", "material": "polypropylene"}}


@pytest.mark.parametrize(
    "question",
    [
        "Gap? Glide? Tension? Not recorded at the time.",
        "Bulk? Ends? Knot? Nobody wrote it down.",
        "Free glide? No gap? To be asked.",
        "Locking? Epitendinous? Cannot recall.",
        "Tension? Unknown. Gap? Unknown.",
        "Gap? Cannot say, finger not moved again.",
        "Was there a gap, tension, bulk? The note of the night does not say.",
        "Free glide? No.",
        "Smooth glide? Not really.",
        "Tension-free? Not quite.",
        "Grasping? Locking? Not documented.",
        "Four strands? No.",
    ],
)
def test_a_question_tells_nothing(question: str) -> None:
    assert told(RING + question) == PLAIN


def test_an_answered_question_tells() -> None:
    answered = RING + "Gap? None. Tension? No. Bulky? Yes. Glide? Free."
    assert told(answered, "gap", "tension", "bulk", "glide") == {
        "ring FDP": {"gap": "none", "tension": "none", "bulk": "present", "glide": "free"}
    }


@pytest.mark.parametrize(
    ("text", "treatment"),
    [
        ("Thumb FPL excised? No. Only its ragged ends were trimmed back 3 mm, then it was repaired.", "repaired"),
        ("Thumb FPL grafted? No, there was length enough, and it was repaired.", "repaired"),
    ],
)
def test_a_deed_denied_is_not_done(text: str, treatment: str) -> None:
    assert each(text, "treatment") == {"thumb FPL": treatment}


def test_a_question_behind_a_statement_leaves_it_standing() -> None:
    assert told("RF FDP repaired - 3/0 as per the book? - no, 4/0 Prolene.") == {
        "ring FDP": {"treatment": "repaired", "size": "4-0", "material": "polypropylene"}
    }
    assert told("Index FDP repaired; six strands? - two.", "treatment", "strands") == {
        "index FDP": {"treatment": "repaired"}
    }
