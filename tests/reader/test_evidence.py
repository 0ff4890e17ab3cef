"""The words that prove a fact: those of the value itself, every place that says the same, nothing twice."""

from itertools import pairwise

import pytest
from reader_sentences import fact_of, quote_of

CUT = "Right ring finger. FDP cut through. "


@pytest.mark.parametrize(
    ("sentence", "field", "words"),
    [
        ("The distal two thirds of A2 was incised.", "extent_percent", "two thirds"),
        ("The distal two thirds of A2 was incised.", "part", "distal"),
        ("A4 was opened over its proximal 4 mm.", "extent_mm", "4 mm"),
        ("To let the repair pass I vented 50 % of A2.", "extent_percent", "50 %"),
    ],
)
def test_a_share_of_a_pulley_is_proved_by_its_own_words(sentence: str, field: str, words: str) -> None:
    pulley = "A4" if "A4" in sentence else "A2"
    assert words in quote_of(CUT + sentence, f"ring {pulley}", field, group="pulleys")


@pytest.mark.parametrize(
    ("note", "words"),
    [
        (
            "PROCEDURE: Repair of FDP, right ring finger.\n\nFINDINGS: The FDP was repaired with 4-0 nylon.",
            "Repair of FDP",
        ),
        ("Operation: FDP tenorrhaphy, R ring finger\n\nFDP through. Sutured, four strands of 4-0.", "FDP tenorrhaphy"),
    ],
)
def test_title_and_body_prove_a_deed_together(note: str, words: str) -> None:
    quotes = [each.exact for each in fact_of(note, "ring FDP", "treatment").evidence]
    assert len(quotes) > 1
    assert any(words in quote for quote in quotes[1:])


@pytest.mark.parametrize(
    ("note", "words"),
    [
        ("op: FDP x 2, left hand\nIF: zone 2 FDP through, Savage 4-0\nMF: FDP through, Adelaide 4-0", "FDP x 2"),
        (
            "PROCEDURE: suture of FDP, left index finger\n\nFDP cut. A four-strand core of 3-0 was used.",
            "suture of FDP",
        ),
    ],
)
def test_a_repair_known_by_its_suture_shows_where_the_tendon_is_named(note: str, words: str) -> None:
    fact = fact_of(note, "index FDP", "treatment")
    assert any(words.split()[0] in each.exact or words.split()[-1] in each.exact for each in fact.evidence)


def test_words_that_overlap_are_shown_once() -> None:
    spans = sorted(
        each.span for each in fact_of(CUT + "Distal half of A2 vented.", "ring A2", "part", "pulleys").evidence
    )
    assert all(first[1] <= second[0] for first, second in pairwise(spans))
