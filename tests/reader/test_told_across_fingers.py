"""What one sentence tells across several fingers: labels answered for each, 'in both', 'all', lists and signs."""

import pytest
from reader_sentences import each

TWO = "Index and ring FDP completely divided, both repaired with four strands. "
SHORT = "Middle and little FDP completely divided, both repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "field", "found"),
    [
        ("Epitendinous: middle 6-0 Prolene, little none.", "peripheral", ("present", "absent")),
        ("Gap: middle 1 mm, little none.", "gap", ("seen", "none")),
        ("A gap of 1 mm appeared in the middle but not in the little.", "gap", ("seen", "none")),
        ("Glide: middle catching, little free.", "glide", ("catching", "free")),
        ("The little repair ran freely, the middle repair caught at A2.", "glide", ("catching", "free")),
        ("The middle ends were ragged, those of the little clean.", "ends", ("ragged", "clean")),
    ],
)
def test_short_names_of_fingers_named_elsewhere(text: str, field: str, found: tuple[str, str]) -> None:
    assert each(SHORT + text, field) == {"middle FDP": found[0], "small FDP": found[1]}


@pytest.mark.parametrize(
    ("text", "field", "found"),
    [
        ("Epitendinous: index 6-0 Prolene, middle and ring none.", "peripheral", ("present", "absent")),
        ("Gap: index 1 mm, middle and ring none.", "gap", ("seen", "none")),
        ("Glide: index catching, middle + ring free.", "glide", ("catching", "free")),
    ],
)
def test_a_label_answered_for_a_pair(text: str, field: str, found: tuple[str, str]) -> None:
    head = "Index, middle and ring FDP completely divided, all repaired with four strands.\n"
    assert each(head + text, field) == {"index FDP": found[0], "middle FDP": found[1], "ring FDP": found[1]}


@pytest.mark.parametrize(
    "text",
    [
        "A 1 mm gap was seen in the index profundus, the ring did not gap.",
        "A 1 mm gap was seen in the index profundus; the ring did not gap.",
        "There was a 1 mm gap in the index finger, the ring did not gap.",
    ],
)
def test_a_gap_in_one_finger_and_none_in_the_other(text: str) -> None:
    assert each(TWO + text, "gap") == {"index FDP": "seen", "ring FDP": "none"}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("1 mm gap and it caught at A2.", ("seen", "catching")),
        ("Gapped 1 mm, caught at A2.", ("seen", "catching")),
        ("Gap (-), catching (-).", ("none", "free")),
        ("Gap: none, catching: none.", ("none", "free")),
        ("Gap (+), catching (-).", ("seen", "free")),
    ],
)
def test_gap_and_catching(text: str, found: tuple[str, str]) -> None:
    head = "Ring FDP completely divided, repaired with four strands. "
    assert each(head + text, "gap") == {"ring FDP": found[0]}
    assert each(head + text, "glide") == {"ring FDP": found[1]}


def test_all_fdps_are_those_of_the_fingers_worked_on() -> None:
    text = "Index, middle and ring fingers. Index: FDP divided. Middle: FDP divided. Ring: FDP divided. All FDPs "
    assert set(each(text + "received six strands of 4-0.", "strands")) == {"index FDP", "middle FDP", "ring FDP"}
    assert "small FDP" not in each(text + "were repaired with six strands.", "treatment")


def test_fingers_with_a_colon_in_one_paragraph() -> None:
    text = (
        "Long finger: both flexors were completely cut. Ring finger: the profundus was completely divided; FDS intact. "
        "The long FDP: two strands of 4-0 Prolene. The ring FDP: a six-strand repair using 3-0 FiberWire. "
    )
    assert each(text, "strands") == {"middle FDP": 2, "ring FDP": 6}
    assert each(text, "size") == {"middle FDP": "4-0", "ring FDP": "3-0"}
    assert each(text, "extent")["middle FDS"] == "complete"


def test_both_the_one_and_the_other_of_a_finger() -> None:
    text = (
        "Index finger: FDP completely divided but FDS 40% cut. Middle finger: FDP completely divided, FDS intact. "
        "Ring finger: both the profundus and the FDS were completely divided."
    )
    found = each(text, "extent")
    assert (found["index FDS"], found["ring FDP"], found["ring FDS"]) == ("partial", "complete", "complete")


@pytest.mark.parametrize("text", ["Epitendinous: none.", "No epitendinous suture was used.", "No peripheral suture."])
def test_no_peripheral_suture_where_no_tendon_is_named(text: str) -> None:
    head = "Index finger. FDP and FDS completely divided. FDP four strands of 4-0. FDS repaired with 4-0 mattress. "
    assert each(head + text, "peripheral") == {"index FDP": "absent"}
    later = head + text + " A second look: FDS sewn again with 4-0 PDS mattress sutures."
    assert "present" not in each(later, "peripheral").values()


def test_a_denied_peripheral_suture_stays_with_its_finger() -> None:
    text = (
        "In the index finger the FDP was completely divided. The FDP was repaired with four strands of 3-0. "
        "In the ring finger the FDP was completely divided. The FDP was repaired with two strands of 3-0. "
        "No epitendinous suture was placed."
    )
    assert each(text, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "text",
    ["The index was given a running 6-0 Prolene, the ring was not.", "The index got a running 6-0; the ring did not."],
)
def test_a_finger_that_was_given_none(text: str) -> None:
    assert each(TWO + text, "peripheral") == {"index FDP": "present", "ring FDP": "absent"}


@pytest.mark.parametrize("text", ["Bites of 10 mm were taken in both.", "Purchase was 10 mm in both."])
def test_a_purchase_in_both(text: str) -> None:
    head = "Index and ring FDP divided. Index FDP: 2 strands, 3-0 Ethibond. Ring FDP: 4 strands, 4-0 Prolene. "
    assert set(each(head + text, "purchase_mm")) == {"index FDP", "ring FDP"}


def test_the_thread_of_a_list_of_strands() -> None:
    text = (
        "Index and ring FDP divided. Core sutures of 3-0 were used: two strands in the index, four strands in the ring."
    )
    assert each(text, "size") == {"index FDP": "3-0", "ring FDP": "3-0"}


def test_a_slip_told_later_has_no_part_in_what_came_before() -> None:
    text = (
        "Index and little FDP completely divided. The ends were ragged in the index and clean in the little finger. "
        "Both got a four-strand core. Purchase: index 10 mm, little 8 mm. "
        "Little FDS: radial slip excised, ulnar slip repaired with 4-0 PDS."
    )
    assert each(text, "ends") == {"index FDP": "ragged", "small FDP": "clean"}
    assert set(each(text, "purchase_mm")) == {"index FDP", "small FDP"}


@pytest.mark.parametrize(
    "text",
    [
        "A2 was vented in the index finger, while in the ring finger A2 was preserved.",
        "The distal third of A2 was opened in the index finger, and in the ring finger it was preserved.",
    ],
)
def test_one_pulley_in_two_fingers(text: str) -> None:
    assert each(TWO + text, "finding", group="pulleys") == {"index A2": "vented", "ring A2": "intact"}


def test_pulleys_under_a_finger_of_its_own_line() -> None:
    text = (
        "Index finger:\nFDP: 100%\nPulleys: A2 intact\n\n"
        "Small finger:\nFDP: 100%\nPulleys: A2 vented distal third, A4 fully divided"
    )
    assert each(text, "finding", group="pulleys") == {
        "index A2": "intact",
        "small A2": "vented",
        "small A4": "released",
    }


@pytest.mark.parametrize(
    "head", ["Completely divided:", "The following structures were fully cut:", "Structures found completely divided:"]
)
def test_a_list_under_what_happened_to_it(head: str) -> None:
    text = f"Wrist, zone V. {head}\n- FCU, PL\n- FDS to all four fingers\n- FDP to ring and little\nFPL was intact."
    found = each(text, "extent")
    assert {found[name] for name in ("FCU", "PL", "index FDS", "small FDS", "ring FDP", "small FDP")} == {"complete"}
    assert found["thumb FPL"] == "intact"


def test_a_list_whose_lines_say_how_far() -> None:
    text = (
        "Wrist, zone V.\nWhat was cut:\n - FDP ring and little, fully\n - FDP index: not cut\n - FCU fully.\n"
        " - FDS middle"
    )
    found = each(text, "extent")
    assert (found["ring FDP"], found["FCU"], found["index FDP"]) == ("complete", "complete", "intact")
    assert "middle FDS" not in found


def test_a_thread_taken_from_either_end() -> None:
    text = "Index FDP divided, united by an M-Tang suture of looped 4-0 nylon taken 10 mm from either end."
    assert each(text, "trimmed_mm") == {}
    assert set(each(text, "purchase_mm")) == {"index FDP"}


def test_all_behind_a_dash() -> None:
    text = "FDP index - cut through completely. FDP middle, FPL - all uninjured."
    assert each(text, "extent") == {"index FDP": "complete", "middle FDP": "intact", "thumb FPL": "intact"}


@pytest.mark.parametrize("text", ["The FDS was cut 40% and was left alone.", "Little FDS: 40%, left."])
def test_cut_in_part_and_left(text: str) -> None:
    found = each("Little FDP completely divided. " + text, "treatment")
    assert found == {"small FDS": "left"}
    assert each("Little FDP completely divided. " + text, "extent")["small FDS"] == "partial"
