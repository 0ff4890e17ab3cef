"""What was wanted, advised, expected or tried in vain was not done; what it came to was."""

import pytest
from reader_sentences import each, told

RING = "Ring FDP repaired with two strands of 5-0 Prolene. "
PLAIN = {"ring FDP": {"treatment": "repaired", "strands": 2, "size": "5-0", "material": "polypropylene"}}


@pytest.mark.parametrize(
    "wish",
    [
        "With good therapy there should be no gap and it ought to glide freely by six weeks.",
        "A running epitendinous suture should have been added.",
        "Four strands are recommended.",
        "A purchase of 7 to 10 mm is advised.",
        "The recommended purchase of 10 mm was out of reach.",
        "The six strands planned were not possible.",
        "Aiming for six strands is the rule here.",
        "One tries to lock every core with four strands of 3-0.",
        "Locks of 3 mm were tried and tore out.",
        "A six-strand Savage was attempted but abandoned.",
        "Two strands of Penrose left in the wound as a drain.",
    ],
)
def test_a_wish_tells_nothing(wish: str) -> None:
    assert told(RING + wish) == PLAIN


@pytest.mark.parametrize(
    "text",
    [
        "Purchase: 7 to 10 mm is recommended; a purchase of 4 mm was measured in this small FDP repair.",
        "Of the ten millimetres of purchase wanted in the small FDP repair I got 4 mm purchase.",
    ],
)
def test_what_was_got_is_told(text: str) -> None:
    assert each(text, "purchase_mm") == {"small FDP": (4, 4)}


def test_what_was_done_as_wished_is_told() -> None:
    assert each("Ring FDP repaired with the six strands planned.", "strands") == {"ring FDP": 6}
    assert each("Ring FDP repaired with the recommended four strands.", "strands") == {"ring FDP": 4}
    assert each("It should be noted that the ring FDP repair had no gap.", "gap") == {"ring FDP": "none"}


def test_no_pulley_is_kept_by_a_rule_or_a_regret() -> None:
    rule = "One tries to keep A2 and A4. In this small finger A4 was vented over its full length."
    assert each(rule, "finding", group="pulleys") == {"small A4": "released"}
    assert told("Ring finger: A2 should have been preserved.", group="pulleys") == {}


def test_a_condition_in_brackets_ends_with_them() -> None:
    assert told("Ring FDP (6-strand if room) -- no room -- repaired with two strands, 4-0 PDS.") == {
        "ring FDP": {"treatment": "repaired", "strands": 2, "size": "4-0", "material": "polydioxanone"}
    }
