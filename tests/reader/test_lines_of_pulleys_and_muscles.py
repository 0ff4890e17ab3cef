"""What is told of a pulley's line, a muscle or another finger's joint is not told of the tendon beside it."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "A2: distal half divided to make space for the repair.",
        "A2: 50 % divided so that the repair would pass.",
    ],
)
def test_a_pulley_half_opened_is_no_tendon_half_cut(words: str) -> None:
    found = told(f"Index finger FDP completely through in zone 2. {words}", "extent", "extent_percent")
    assert found == {"index FDP": {"extent": "complete"}}


@pytest.mark.parametrize(
    "words",
    [
        "The lumbrical of the ring finger came off with the distal FDP stump; not sutured.",
        "The lumbrical at the FDP was torn and left.",
    ],
)
def test_a_muscle_left_is_no_tendon_left(words: str) -> None:
    assert told(f"Ring: FDP completely cut. {words}", "treatment") == {}


@pytest.mark.parametrize("words", ["A4 remained closed.", "The A4 stays closed.", "A4 still standing."])
def test_a_pulley_that_stays(words: str) -> None:
    assert told(f"Middle FDP repaired 4 strands. {words}", group="pulleys") == {"middle A4": {"finding": "intact"}}


@pytest.mark.parametrize("title", ["FDP repair ring + DIP tenodesis little", "FDP repair ring, DIPJ tenodesis small."])
def test_a_tenodesis_of_the_next_finger(title: str) -> None:
    note = f"{title}\nRING:\nFDP was cut through.\n-> repair FDP, 4 strand cruciate"
    assert each(note, "treatment") == {"ring FDP": "repaired", "small FDP": "tenodesed"}


@pytest.mark.parametrize(
    "words",
    [
        "Moved passively, it slid under A4, although not perfectly.",
        "It ran freely, though not quite at the end of flexion.",
    ],
)
def test_not_wholly_free(words: str) -> None:
    assert told(f"Ring finger, FDP repaired with 4 strands. {words}", "glide") == {}


@pytest.mark.parametrize(
    "words", ["It slid under the mended A4; it still catches there.", "It catches at the repaired A4."]
)
def test_catching_at_a_mended_pulley(words: str) -> None:
    assert each(f"Ring finger, FDP repaired with 4 strands. {words}", "glide") == {"ring FDP": "catching"}


@pytest.mark.parametrize(
    "words", ["The young people prefer four strands or more.", "Younger colleagues put in four strands."]
)
def test_what_others_prefer(words: str) -> None:
    assert each(f"Ring FDP repaired by the Bunnell method with 4-0 steel. {words}", "strands") == {"ring FDP": 2}


@pytest.mark.parametrize(
    "words", ["six strands, no, four, of 4-0 Prolene.", "six strands - sorry, four - of 4-0 Prolene."]
)
def test_a_count_put_right_at_once(words: str) -> None:
    assert each(f"Index FDP: {words}", "strands") == {"index FDP": 4}


def test_two_slips_of_one_finger() -> None:
    note = (
        "Ring finger: FDP four strand 3-0. The two FDS slips were each brought together with a 4-0 mattress.\n\n"
        "In the small finger the FDS was intact. The FDP was divided, and was repaired exactly like the ring FDP."
    )
    assert each(note, "size") == {"ring FDP": "3-0", "ring FDS": "4-0", "small FDP": "3-0"}


def test_a_question_in_a_column() -> None:
    note = "Index FDP repaired 4 strands.\nStrands        | 4\nBulky?         | yes\nTension?       | no"
    assert told(note, "bulk", "tension") == {"index FDP": {"bulk": "present", "tension": "none"}}


@pytest.mark.parametrize(
    "words",
    [
        "Planned: repair of FDP ring. Done: wound washed only.",
        "Intended operation: repair FDP ring.\nOperation done: washout.",
    ],
)
def test_what_was_only_planned(words: str) -> None:
    assert told(words, "treatment") == {}


@pytest.mark.parametrize(
    "words",
    ["The index had an epitendinous 6-0. The middle did not.", "Epitendinous 6-0 for the index; the middle got none."],
)
def test_the_finger_that_got_none(words: str) -> None:
    found = each(f"Index and middle FDP repaired with 4 strands. {words}", "peripheral")
    assert found == {"index FDP": "present", "middle FDP": "absent"}


@pytest.mark.parametrize(
    "words", ["grasping bites of roughly 1 cm", "locking, purchase ~10", "locking. Purchase: 10 each side"]
)
def test_purchase_told_with_the_hold_or_bare(words: str) -> None:
    assert each(f"Ring FDP cut. Core cruciate, 3-0 Prolene, {words}.", "purchase_mm") == {"ring FDP": (10, 10)}


def test_a_pulley_hurt_between_two_others() -> None:
    note = (
        "Ring finger. Sheath opened by the pot, between A2 and A4, the A3 being lacerated. FDP repaired. A3 left as is."
    )
    assert told(note, group="pulleys") == {"ring A3": {"finding": "injured"}}


@pytest.mark.parametrize("words", ["not a mark on either of them", "FDP seen - N, FDS seen - N"])
def test_seen_whole(words: str) -> None:
    note = f"Ring finger: FDP and FDS inspected, {words}."
    assert each(note, "extent") == {"ring FDP": "intact", "ring FDS": "intact"}
