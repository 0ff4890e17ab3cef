"""Lengths told of both ends of a tendon: what was trimmed, and what the core takes."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Stumps cut back, 1 mm (distal), 3 mm (proximal).",
            {"ring FDP": 3},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "We took 2 mm from each end.",
            {"ring FDP": 2},
        ),
    ],
)
def test_trimmed_at_both_ends(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["trimmed_mm"] for entry, facts in told(note, "trimmed_mm").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Trimmed 1 mm and 2 mm, 3 mm altogether.",
            {"ring FDP": 3},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "The ends were trimmed by 2 mm and 4 mm, 6 mm in all.",
            {"ring FDP": 6},
        ),
    ],
)
def test_trimmed_in_all(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["trimmed_mm"] for entry, facts in told(note, "trimmed_mm").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "FDP ends back 3 mm to healthy fibres.",
            {"ring FDP": 3},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Stumps back 2 mm until fresh.",
            {"ring FDP": 2},
        ),
    ],
)
def test_ends_back(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["trimmed_mm"] for entry, facts in told(note, "trimmed_mm").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Purchase 9 mm / 7 mm.",
            {"ring FDP": (7, 9)},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Core purchase proximal 10 mm, distal 8 mm.",
            {"ring FDP": (8, 10)},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Bites of 10 mm on one side, 7 on the other.",
            {"ring FDP": (7, 10)},
        ),
    ],
)
def test_what_the_core_takes_at_each_end(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["purchase_mm"] for entry, facts in told(note, "purchase_mm").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Core purchase 10.",
            {"ring FDP": (10, 10)},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Hold 9 mm.",
            {"ring FDP": (9, 9)},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "The core has a 10 mm hold.",
            {"ring FDP": (10, 10)},
        ),
    ],
)
def test_bare_figures_and_holds(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["purchase_mm"] for entry, facts in told(note, "purchase_mm").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "The saw left a kerf: about 4 mm of tendon was missing on each side.",
            {},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Some 3 mm of tendon lost to the blade.",
            {},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "A 6 mm length of tendon was destroyed.",
            {},
        ),
    ],
)
def test_tendon_missing_is_no_purchase(note: str, expected: Shown) -> None:
    assert told(note, "purchase_mm", "trimmed_mm") == expected


@pytest.mark.parametrize(
    "words",
    [
        "locked cruciate, 4 strands, 2.5 mm bites, 9 mm each side",
        "4 strand cruciate, 2.5 mm bites, 9 mm on either side",
    ],
)
def test_bites_before_the_purchase_are_locks(words: str) -> None:
    note = "Ring finger. FDP completely divided. FDP: 3-0 Ethibond, " + words + "."
    assert told(note, "purchase_mm", "lock_mm") == {"ring FDP": {"purchase_mm": (9, 9), "lock_mm": (2.5, 2.5)}}


@pytest.mark.parametrize(
    "words",
    [
        "10 mm purchase proximally; the distal stump allowed just 4 mm.",
        "10 mm of purchase proximally, the short distal stump took only 4 mm.",
    ],
)
def test_the_shorter_bite_of_the_other_stump_counts(words: str) -> None:
    note = "Index finger. FDP divided and repaired with a four-strand cruciate of 3-0 PDS, " + words
    assert told(note, "purchase_mm") == {"index FDP": {"purchase_mm": (4, 10)}}
