"""'Bulky? n.a.', 'Tension at repair: n.a.' answer nothing."""

import pytest
from reader_sentences import told

CUT = "Left ring finger. FDP completely divided, repaired with 4 strands of 3-0 Ethibond.\n"


@pytest.mark.parametrize(
    "words", ["Bulky? n.a.\n", "Bulky: N/A\n", "Tension at repair? n.a.\n", "Gap seen? n. a.\n", "Repair bulky? n/a\n"]
)
def test_not_applicable_is_no_answer(words: str) -> None:
    assert not told(CUT + words, "bulk", "tension", "gap")


@pytest.mark.parametrize(
    ("words", "expected"), [("Bulky? No.\n", {"bulk": "none"}), ("Tension at repair? N\n", {"tension": "none"})]
)
def test_no_is_one(words: str, expected: dict[str, str]) -> None:
    assert told(CUT + words, "bulk", "tension") == {"ring FDP": expected}
