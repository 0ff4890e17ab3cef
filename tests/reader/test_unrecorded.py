"""What a note says it does not tell: not recorded, not assessed, left open beside a label."""

import pytest
from reader_sentences import each, told

SEWN = "FDP of the ring finger repaired with 4-0 nylon. "


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ("Bulk: not recorded", "bulk"),
        ("Bulk was not commented on.", "bulk"),
        ("Tension was not assessed.", "tension"),
        ("Tension: not documented", "tension"),
        ("Gapping was not formally tested.", "gap"),
        ("Gap / test: not recorded", "gap"),
        ("Glide not checked.", "glide"),
    ],
)
def test_what_was_not_recorded_is_no_finding(words: str, field: str) -> None:
    assert not each(SEWN + words, field)


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("Not recorded above: the repair caught at A2.", "glide", "catching"),
        ("Bulk not recorded, no gap.", "gap", "none"),
        ("Glide was not tested but there was no gap.", "gap", "none"),
    ],
)
def test_what_stands_beside_it_still_is(words: str, field: str, value: str) -> None:
    assert each(SEWN + words, field) == {"ring FDP": value}


def test_a_pulley_not_mentioned_is_told_of_next() -> None:
    words = "ADDENDUM. The A2 pulley is not mentioned. It was intact in the ring finger."
    assert each(SEWN + words, "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "words", ["tension -> slight, accepted", "Tension: minimal", "Minimal tension.", "Tension: moderate. Accept."]
)
def test_a_little_tension_is_tension(words: str) -> None:
    assert each(SEWN + words, "tension") == {"ring FDP": "present"}


@pytest.mark.parametrize("words", ["Tension on tendons: none with wrist 30 flexed", "Tension of both repairs: nil"])
def test_a_longer_label_of_tension(words: str) -> None:
    assert each(SEWN + words, "tension") == {"ring FDP": "none"}


@pytest.mark.parametrize("words", ["Locks   [ ] locking   [ ] grasping   bite ____ mm", "Locks [ ] yes [ ] no"])
def test_boxes_of_locks_left_open(words: str) -> None:
    assert not each(SEWN + words, "hold")


@pytest.mark.parametrize(
    "words",
    [
        "A 2-0 Prolene pull-out suture was brought out the nail plate and tied over a button.",
        "Pull-out suture of 3-0 Prolene through P3, tied over a button with felt.",
    ],
)
def test_a_pull_out_puts_the_tendon_back_to_bone(words: str) -> None:
    note = "Left ring finger. The profundus was pulled off the distal phalanx. " + words
    assert told(note, "treatment") == {"ring FDP": {"treatment": "reinserted"}}


@pytest.mark.parametrize(
    "words",
    [
        "Before closure tight extension produced a 2 mm gap in the ring FDP. One more stitch was put in.",
        "Before closure the repair showed a gap of 2 mm on extension.",
    ],
)
def test_before_closure_tells_only_when(words: str) -> None:
    assert told(SEWN + words, "gap", "gap_mm")["ring FDP"] == {"gap": "seen", "gap_mm": 2}


@pytest.mark.parametrize("source", ["the scrub nurse's list shows that", "the count sheet shows that"])
def test_what_an_addendum_cites_it_holds_for_true(source: str) -> None:
    note = f"{SEWN}\n\nADDENDUM\nCore suture: {source} 5-0 Prolene was used for the core, not nylon."
    assert each(note, "size") == {"ring FDP": "5-0"}


@pytest.mark.parametrize("finger", ["right small finger", "left thumb"])
def test_the_side_told_of_the_earlier_operation_alone(finger: str) -> None:
    tendon = "FPL" if "thumb" in finger else "FDP"
    note = (
        f"Previously his {finger} had the {tendon} sewn elsewhere. It ruptured. {tendon} repaired again with 4-0 nylon."
    )
    assert told(note, "side", group="operation") == {"": {"side": finger.split(" ")[0]}}


def test_two_sides_of_earlier_operations_tell_none() -> None:
    note = "Previously his right thumb and later his left ring finger were sewn elsewhere. FDP repaired with 4-0 nylon."
    assert not told(note, "side", group="operation")


@pytest.mark.parametrize(
    "words",
    [
        "Circumferential scar was freed first.",
        "The circumferential wound was extended.",
        "Epitendinous: thought about, not put in.",
        "Epitendinous suture: wanted, but with such ends not possible.",
    ],
)
def test_what_only_sounds_like_a_peripheral_suture(words: str) -> None:
    assert each(SEWN + words, "peripheral").get("ring FDP", "absent") == "absent"


@pytest.mark.parametrize("words", ["No loss of tension in the tension band.", "The tension band did not slip."])
def test_a_tension_band_is_of_the_bone(words: str) -> None:
    assert not each(SEWN + words, "tension")


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ("Nothing is on record of a gap.", "gap"),
        ("Nothing was written about tension.", "tension"),
        ("Nothing is known about gapping.", "gap"),
    ],
)
def test_nothing_written_of_a_finding_is_no_finding(words: str, field: str) -> None:
    assert not each(SEWN + words, field)


def test_nothing_that_gapped_is_one() -> None:
    assert each(SEWN + "Nothing gapped on pulling.", "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    ("words", "field", "good"),
    [
        ("Gap: none and 1 mm respectively.", "gap", "none"),
        ("Epitendinous: yes and no, respectively.", "peripheral", "present"),
        ("Tension: none and some, in that order.", "tension", "none"),
    ],
)
def test_answers_in_turn_are_not_given_to_all(words: str, field: str, good: str) -> None:
    both = "Index and ring FDP cut through and repaired with four strands. "
    assert good not in each(both + words, field).values()
    assert each(both + "Strands: 4 and 2 respectively. No gap.", "gap") == {"index FDP": "none", "ring FDP": "none"}


@pytest.mark.parametrize(
    "words",
    [
        "Gap: no longer assessed once the tourniquet pain set in.",
        "Gap no longer looked for once the patient was restless.",
        "Gapping was no longer assessed.",
        "Gap: no test possible.",
        "Gap - no further check made.",
    ],
)
def test_what_nobody_could_test_any_more(words: str) -> None:
    assert not each(SEWN + words, "gap")


@pytest.mark.parametrize("words", ["Gap: no longer present.", "Gap: no, tested twice.", "Gap: no"])
def test_a_gap_denied_is_none(words: str) -> None:
    assert each(SEWN + words, "gap") == {"ring FDP": "none"}
