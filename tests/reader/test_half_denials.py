"""Gaps, tension and glide denied only by halves, or denied and then owned up to; what was got ready and not used."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("note", "width"),
    [
        ("Index FDP repaired with 4-0 Ethibond. There was no gap, no, I tell a lie, 1 mm.", 1),
        ("Ring FDP sutured with 3-0 Prolene, no gap on traction, or rather some 2 mm.", 2),
    ],
)
def test_a_gap_denied_and_owned_up_to(note: str, width: int) -> None:
    (facts,) = told(note, "gap", "gap_mm").values()
    assert facts == {"gap": "seen", "gap_mm": width}


def test_a_gap_owned_up_to_in_one_of_two_fingers() -> None:
    note = "Ring and small FDP repaired with 3-0 Prolene. No gap in either, or rather about 1 mm in the small."
    assert each(note, "gap") == {"small FDP": "seen"}


@pytest.mark.parametrize(
    "note",
    [
        "Index FDP repaired with almost no gap.",
        "Index FDP repaired: no gap, bar a hairline on the radial side.",
        "Index FDP repaired with 3-0. I would not swear that there was no gap.",
        "Index FDP repaired with 3-0. Provided no gap is seen at three weeks, start active flexion.",
        "Index FDP repaired with 3-0. Whether a gap formed I could not see.",
        "Index FDP repaired with 3-0. No gap on the palmar side; dorsally 1 mm.",
    ],
)
def test_a_gap_denied_by_halves_is_left_open(note: str) -> None:
    assert each(note, "gap") == {}


@pytest.mark.parametrize(
    "note",
    [
        "Index FDP repaired with 3-0. No gap on the palmar or on the dorsal side.",
        "Index FDP repaired with 3-0. On passive extension there was no gap at all.",
    ],
)
def test_a_plain_denial_stays_one(note: str) -> None:
    assert each(note, "gap") == {"index FDP": "none"}


@pytest.mark.parametrize(
    "note",
    [
        "Small FDP repaired 4 strands. No gap under light pull; with firm pull the ends parted a little.",
        "Small FDP repaired 4 strands. Under firm traction the repair opened slightly.",
    ],
)
def test_ends_that_part_a_little_gap(note: str) -> None:
    assert each(note, "gap") == {"small FDP": "seen"}


def test_no_gap_in_the_finger_named_in_short() -> None:
    note = "Middle FDP repaired and ring FDS repaired. No gap in the middle. The ring was not tested."
    assert each(note, "gap") == {"middle FDP": "none"}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring FDP repaired with 3-0; not without tension.", {"ring FDP": "present"}),
        ("Ring FDP repaired with 3-0, with no more tension than was unavoidable.", {}),
        ("Ring FDP repaired with 3-0; tension-free once the wrist was flexed.", {}),
        ("Ring FDP repaired with 3-0 without tension.", {"ring FDP": "none"}),
    ],
)
def test_tension_denied_by_halves(note: str, expected: dict[str, str]) -> None:
    assert each(note, "tension") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Index FDP repaired with 3-0. It glided freely except under A3.", {}),
        ("Index FDP repaired with 3-0, aiming for no gap and free glide.", {}),
        ("Index and ring FDP repaired. They glided freely except in the ring.", {"index FDP": "free"}),
    ],
)
def test_glide_free_but_for_a_place(note: str, expected: dict[str, str]) -> None:
    assert each(note, "glide") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Index FDP repaired, 4-strand. A running 6-0 was opened for the epitendinous but in the end not used.",
        "Index FDP repaired, 4-strand. 6-0 Prolene had been loaded for a running stitch but was never placed.",
    ],
)
def test_a_suture_got_ready_and_not_used(note: str) -> None:
    assert each(note, "peripheral_size") == {}
    assert "present" not in each(note, "peripheral").values()


def test_a_pulley_opened_beside_another_that_was_not_used() -> None:
    note = "Ring FDP repaired with 3-0. A2 was opened 4 mm; a 5-0 for its repair was not used."
    assert each(note, "finding", "pulleys") == {"ring A2": "vented"}


@pytest.mark.parametrize(
    "note",
    [
        "Middle FDP 4 strands 3-0. The epitendinous suture cut out and I did not repeat it.",
        "Middle FDP 4 strands 3-0. The epitendinous stitch broke and was not replaced.",
    ],
)
def test_a_peripheral_suture_that_was_lost(note: str) -> None:
    assert each(note, "peripheral") == {"middle FDP": "absent"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP tagged, to be repaired Thursday, 4 strands.",
        "Small FDP tagged and to be repaired next week, six strands, 3-0 Prolene.",
    ],
)
def test_the_suture_of_a_repair_to_come(note: str) -> None:
    assert told(note, "strands", "size", "treatment") == {}


@pytest.mark.parametrize(
    ("note", "field"),
    [
        ("Ring FDP core 4-0. Wanted: six strands. Got: fewer.", "strands"),
        ("Ring FDP, 4-0 Ethibond core, 4 strands. Wanted: 10 mm purchase. Got: less.", "purchase_mm"),
    ],
)
def test_what_was_wanted_is_not_what_was_got(note: str, field: str) -> None:
    assert 6 not in each(note, field).values()
    assert (10, 10) not in each(note, field).values()


def test_neither_digit_is_of_two_and_not_of_a_third() -> None:
    note = "Index and middle FDP repaired with 4-0. Ring FDP repaired with 3-0. In neither digit did A2 need venting."
    assert each(note, "finding", "pulleys") == {}
    note = "A2 vented in the ring finger. Index and middle FDP were repaired. In neither digit was A4 cut."
    assert each(note, "finding", "pulleys") == {"ring A2": "vented", "index A4": "intact", "middle A4": "intact"}


@pytest.mark.parametrize(
    ("note", "strands"),
    [
        ("Ring FDP six-strand; one of the three loops snapped and was not replaced.", 4),
        ("Ring FDP repaired with six strands. Two of the loops pulled out.", 2),
    ],
)
def test_a_lost_loop_is_two_strands(note: str, strands: int) -> None:
    assert each(note, "strands") == {"ring FDP": strands}


@pytest.mark.parametrize(
    ("note", "stitch"),
    [
        ("Small FDP: the M-Tang proved too bulky; came down to a double Tsuge of 4-0 Supramid.", "double tsuge"),
        ("Small FDP: a Savage proved too bulky and I fell back on a cruciate.", "cruciate"),
    ],
)
def test_a_stitch_given_up_for_another(note: str, stitch: str) -> None:
    assert each(note, "stitch") == {"small FDP": stitch}


def test_a_tear_noticed_later_counts() -> None:
    note = "Index FDP repaired. A2 was spared. On closing, a tear of the A2 was noticed."
    assert each(note, "finding", "pulleys") == {"index A2": "injured"}


@pytest.mark.parametrize(
    "note",
    [
        "In August the middle FDP had been sewn with four strands. Today the ring FDP: two strands of 4-0 nylon.",
        "Middle FDP of the man in the next bed took six strands. The ring FDP here took two strands of 4-0 nylon.",
    ],
)
def test_strands_of_another_time_or_hand(note: str) -> None:
    assert each(note, "strands") == {"ring FDP": 2}


@pytest.mark.parametrize(
    "state",
    [
        "A2 preserved as far as possible.",
        "A2 kept, so far as the cut had left it.",
        "A2 intact for the most part.",
        "A2, to be preserved at all costs, was in the way.",
    ],
)
def test_a_pulley_kept_by_halves_is_not_intact(state: str) -> None:
    assert each(f"Ring FDP repaired with 3-0. {state}", "finding", "pulleys") == {}
    assert each("Ring FDP repaired with 3-0. A2 was preserved.", "finding", "pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "told",
    [
        "Ring FDS looked intact from the window but on pulling its ulnar slip came away.",
        "Ring FDS seemed intact until it was pulled on.",
        "Ring FDS intact, I was told by the referring unit.",
    ],
)
def test_what_only_seemed_whole(told: str) -> None:
    assert "intact" not in each(f"{told} Ring FDP repaired with 3-0.", "extent").values()


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring FDP: strands: 6 attempted, 4 achieved.", 6),
        ("Index FDP six strands of 3-0. Ring FDP likewise less one pair.", 6),
        ("Ring FDP tagged for later repair with 3-0 Prolene, 4 strands to come.", 4),
        ("Ring FDP: nothing to sew, 4 strands of old suture removed.", 4),
    ],
)
def test_strands_that_are_not_there(note: str, expected: int) -> None:
    assert each(note, "strands").get("ring FDP") != expected


@pytest.mark.parametrize(
    "told",
    [
        "Neither gapped at first; the ring did so on the fifth cycle.",
        "There was no gap initially, yet the ring did so later.",
    ],
)
def test_a_gap_missing_only_at_first(told: str) -> None:
    assert each(f"Index and ring FDP repaired with 3-0. {told}", "gap") == {}


@pytest.mark.parametrize("told", ["Epitendinous by the junior, undone by me.", "Peripheral 6-0 begun and unpicked."])
def test_a_peripheral_suture_undone(told: str) -> None:
    assert "present" not in each(f"Ring FDP repaired with 3-0. {told}", "peripheral").values()
