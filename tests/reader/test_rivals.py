"""Where a note says two things: the weaker is proposed, the other kept beside it, and a reason given."""

import pytest
from reader_sentences import fact_of, given_to, told


@pytest.mark.parametrize(
    ("note", "entry", "field", "value", "rival"),
    [
        (
            "PROCEDURE: Six-strand repair of the ring FDP.\n\nNARRATIVE: Ring FDP completely divided. Repaired "
            "with a four-strand core of 4-0 nylon.",
            "ring FDP",
            "strands",
            4,
            6,
        ),
        (
            "PROCEDURE: FDP repair, small finger, two-strand.\n\nNARRATIVE: Small FDP divided; repaired with a "
            "six-strand core of 3-0 nylon.",
            "small FDP",
            "strands",
            2,
            6,
        ),
        (
            "Index FDP divided and repaired with a core of 3-0 nylon. SUMMARY: Index FDP repaired with a 4-0 "
            "core suture.",
            "index FDP",
            "size",
            "4-0",
            "3-0",
        ),
        (
            "Middle FDP divided and repaired with a 5-0 core of nylon. The middle FDP core suture of 3-0 nylon "
            "was cut.",
            "middle FDP",
            "size",
            "5-0",
            "3-0",
        ),
        (
            "Ring FDP divided and repaired, core 4-0 nylon with 10 mm purchase. The core suture has a purchase "
            "of 7 mm.",
            "ring FDP",
            "purchase_mm",
            (7, 7),
            (10, 10),
        ),
        (
            "Small FDP divided and repaired, core 4-0 nylon with 6 mm purchase. Core purchase 9 mm.",
            "small FDP",
            "purchase_mm",
            (6, 6),
            (9, 9),
        ),
    ],
)
def test_the_weaker_is_proposed(note: str, entry: str, field: str, value: object, rival: object) -> None:
    assert told(note, field)[entry][field] == value
    fact = fact_of(note, entry, field)
    rivals = [(r.value.low, r.value.high) if hasattr(r.value, "low") else r.value for r in fact.rivals]
    assert rivals == [rival]
    assert fact.look_twice


@pytest.mark.parametrize(
    ("note", "entry", "field", "value"),
    [
        (
            "PROCEDURE: Ring FDP repair with epitendinous suture.\n\nNARRATIVE: Ring FDP divided, repaired with a "
            "4-0 core. No epitendinous suture was used.",
            "ring FDP",
            "peripheral",
            "absent",
        ),
        (
            "Small FDP divided and repaired with a locking core of 4-0 nylon. The core of the small FDP is a "
            "grasping one.",
            "small FDP",
            "hold",
            "grasping",
        ),
        (
            "Index FDP divided. The ends were clean. Index FDP repaired, 4-0 nylon. On second look the tendon ends "
            "had been ragged.",
            "index FDP",
            "ends",
            "ragged",
        ),
        (
            "Middle FDP divided and repaired, 4-0 nylon. There was no tension on the repair. The repair was under "
            "tension in extension.",
            "middle FDP",
            "tension",
            "present",
        ),
    ],
)
def test_of_two_words_the_less_reassuring_is_proposed(note: str, entry: str, field: str, value: str) -> None:
    assert told(note, field)[entry][field] == value


@pytest.mark.parametrize(
    ("title", "body", "digit"),
    [
        (
            "Repair of FDP, right ring finger",
            "The FDP of the right small finger was divided and repaired with 4-0 nylon.",
            "small",
        ),
        (
            "FDP repair left index",
            "Middle finger opened. The middle FDP was cut through and repaired with 3-0 nylon.",
            "middle",
        ),
    ],
)
def test_a_digit_named_otherwise_in_the_title_is_entered_once(title: str, body: str, digit: str) -> None:
    note = f"PROCEDURE: {title}.\n\nNARRATIVE: {body}"
    shown = told(note, "treatment")
    assert shown == {f"{digit} FDP": {"treatment": "repaired"}}
    assert given_to(note, f"{digit} FDP", "treatment") & {"finger_untitled", "title_against_body"}


@pytest.mark.parametrize(
    ("words", "field", "value", "gone"),
    [
        ("ADDENDUM: the core was 4-0, not 3-0.", "size", "4-0", "3-0"),
        ("Correction: 3-0 should read 4-0.", "size", "4-0", "3-0"),
        ("ADDENDUM: on review of the count the core suture of the ring FDP was 4-0.", "size", "4-0", "3-0"),
    ],
)
def test_corrections(words: str, field: str, value: str, gone: str) -> None:
    note = f"Ring FDP divided and repaired with a {gone} nylon core.\n\n{words}"
    fact = fact_of(note, "ring FDP", field)
    assert fact.value == value
    assert [r.value for r in fact.rivals] == [gone]


@pytest.mark.parametrize("count", [2, 4, 6])
def test_the_same_said_twice_is_no_rival(count: int) -> None:
    body = f"Ring FDP divided and repaired with a {count}-strand core of 4-0 nylon."
    note = f"PROCEDURE: {count}-strand repair of ring FDP.\n\nNARRATIVE: {body}"
    fact = fact_of(note, "ring FDP", "strands")
    assert (fact.value, fact.rivals) == (count, [])
    assert not fact.look_twice
