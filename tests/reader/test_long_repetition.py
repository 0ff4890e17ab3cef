"""Notes that say the same thing again and again are read in time that grows with their length."""

import pytest
from reader_sentences import record_of, told

HEAD = "Right ring finger. FDP cut and repaired. "


@pytest.mark.parametrize(
    ("first", "again"),
    [
        ("A2 was vented over 5 mm. ", "A2 was vented distally. A2 was vented. "),
        ("The distal half of A4 was trimmed. ", "A4 was trimmed. "),
    ],
)
def test_a_deed_told_many_times_adds_no_more_words_than_it_has(first: str, again: str) -> None:
    """Each repetition once doubled what was laid down for the pulley; forty of them would never have ended."""
    note = HEAD + first + again * 40
    facts = [fact for _, fact in record_of(note).walk()]
    assert max(len(fact.evidence) for fact in facts) <= 12
    assert told(note, "finding", group="pulleys")
