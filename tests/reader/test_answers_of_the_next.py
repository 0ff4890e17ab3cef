"""A word answered for one repair after another, in the same sentence or in one of its own."""

import pytest
from reader_sentences import each

TWO = "Left index and middle fingers, FDP of both completely divided and repaired with four strands of 4-0. "


@pytest.mark.parametrize(
    ("text", "field", "expected"),
    [
        ("The index repair was considered bulky, the middle finger one was not.", "bulk", ("present", "none")),
        ("The index is rather bulky, the middle isn't.", "bulk", ("present", "none")),
        ("Bulk: IF bulky. Rest not.", "bulk", ("present", "none")),
        ("Tension: index under tension. Middle finger none.", "tension", ("present", "none")),
        ("There was some tension on the index repair but none on that of the middle.", "tension", ("present", "none")),
        (
            "The index profundus lay under some tension and the middle profundus did not.",
            "tension",
            ("present", "none"),
        ),
        ("The index repair was not bulky, the middle was not either.", "bulk", ("none", "none")),
    ],
)
def test_the_next_repair_is_answered_too(text: str, field: str, expected: tuple[str, str]) -> None:
    assert each(TWO + text, field) == dict(zip(("index FDP", "middle FDP"), expected, strict=True))


@pytest.mark.parametrize(
    ("text", "field", "expected"),
    [
        ("The index profundus repair was tension free, the middle was not.", "tension", ("none", "present")),
        ("The index repair held without a gap, the middle did not.", "gap", ("none", "seen")),
        ("The index repair was slim, the middle was not.", "bulk", ("none", "present")),
    ],
)
def test_not_free_of_it_means_that_it_was_there(text: str, field: str, expected: tuple[str, str]) -> None:
    assert each(TWO + text, field) == dict(zip(("index FDP", "middle FDP"), expected, strict=True))


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("The index repair was tension free. The middle finger was not.", "tension"),
        ("The index repair was slim. The middle finger was not.", "bulk"),
    ],
)
def test_a_bare_not_behind_a_good_word_stays_silent(text: str, field: str) -> None:
    assert each(TWO + text, field) == {"index FDP": "none"}
