"""Pulleys opened further or again, torn and mended, taken away because half was gone; the part that was kept."""

import pytest
from reader_sentences import each, told

SEWN = "Left ring finger, zone II. FDP cut through. Repaired with 3-0 Prolene. "


def _found(words: str) -> dict[str, object]:
    return each(SEWN + words, "finding", group="pulleys")


@pytest.mark.parametrize(
    ("words", "length"),
    [
        ("A2 vented 5 mm. Still caught. Vented another 3 mm, total 8.", 8),
        ("A2 opened 4 mm. It dragged there. Opened a further 2 mm, 6 mm in all.", 6),
        ("A2 was opened 4 mm. Then opened an additional 3 mm, total of 7 mm.", 7),
    ],
)
def test_the_whole_length_of_a_pulley_opened_further(words: str, length: int) -> None:
    assert each(SEWN + words, "extent_mm", group="pulleys") == {"ring A2": length}
    assert "ring FDP" not in each(SEWN + words, "gap")


def test_a_gap_that_opened_further_is_a_gap() -> None:
    assert each(SEWN + "A gap of 1 mm. Opened a further 2 mm on traction.", "gap") == {"ring FDP": "seen"}
    assert each(SEWN + "A2 vented 4 mm. The gap opened a further 2 mm.", "gap") == {"ring FDP": "seen"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 is intact and A4 has been vented at the first operation; it is now divided in its full length.",
        "A2 is preserved and A4 had been vented at the first operation, it is now opened over its full length.",
    ],
)
def test_a_pulley_of_the_first_operation_opened_again(words: str) -> None:
    assert _found(words) == {"ring A2": "intact", "ring A4": "released"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 was whole and A4 had been excised at the first operation.",
        "A2 was intact and A4 has been vented at the first operation; it is now stiff.",
    ],
)
def test_a_pulley_of_the_first_operation_not_touched_now(words: str) -> None:
    assert _found(words) == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "words",
    ["A4 excised - already half destroyed.", "A4 removed as three quarters of it were destroyed."],
)
def test_a_share_that_was_gone_is_why_a_pulley_was_excised(words: str) -> None:
    assert told(SEWN + words, group="pulleys") == {"ring A4": {"finding": "excised"}}


def test_a_share_that_was_taken_is_a_trimming() -> None:
    assert _found("Half of A4 excised.") == {"ring A4": "trimmed"}


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("A2 had a small tear at its ulnar attachment and this was repaired with two 5-0 stitches.", "repaired"),
        ("A2 had a tear and this was sutured with 5-0 PDS.", "repaired"),
        ("A2 had a partial tear, left as it was.", "injured"),
        ("A2 was preserved without a tear.", "intact"),
    ],
)
def test_a_tear_of_a_pulley(words: str, value: str) -> None:
    assert _found(words) == {"ring A2": value}


@pytest.mark.parametrize(
    "words",
    [
        "Damaged part of A2 trimmed away, proximal half still there.",
        "The torn edge of A2 was trimmed, distal half remains.",
    ],
)
def test_the_part_that_was_kept_is_not_the_part_trimmed(words: str) -> None:
    assert told(SEWN + words, group="pulleys") == {"ring A2": {"finding": "trimmed"}}


@pytest.mark.parametrize("words", ["4 mm of A2 distal opened.", "5 mm of A2 distally opened."])
def test_the_part_named_behind_the_pulley(words: str) -> None:
    assert each(SEWN + words, "part", group="pulleys") == {"ring A2": "distal"}
