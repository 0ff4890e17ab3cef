"""What is said of several tendons together: 'in every instance', 'both profundi were then', and how it was sewn."""

import pytest
from reader_sentences import each, told

WRIST = (
    "The FCU, the FDS of ring and small and the FDP of ring and small were found completely severed. "
    "The profundi of ring and small were sutured first, then the superficialis tendons, {} a four-strand cruciate of "
    "3-0 Ethibond. "
)
FOUR = {"ring FDP": 4, "ring FDS": 4, "small FDP": 4, "small FDS": 4}


@pytest.mark.parametrize(
    "words",
    ["in every instance with", "in each case with", "in all cases with", "in all instances by", "in each instance by"],
)
def test_in_every_instance_means_those_named_in_the_sentence(words: str) -> None:
    note = WRIST.format(words) + "The flexor carpi ulnaris was closed with a figure-of-eight of 2-0 Ethibond."
    assert each(note, "strands") == FOUR
    assert each(note, "stitch")["FCU"] == "figure-of-eight"


def test_in_all_may_be_a_sum() -> None:
    note = "FDP of the ring completely divided. A cruciate of 3-0 Ethibond was used, four strands in all."
    assert each(note, "strands") == {"ring FDP": 4}


PARTLY = (
    "The FDP of index and middle and the FDS of the middle were completely divided, the profundus of the ring showing "
    "a laceration of 50 per cent at the same level. "
)


@pytest.mark.parametrize(
    "words",
    [
        "Both profundi were then united by a double Tsuge with looped 4-0 nylon, four strands crossing.",
        "Both profundi were then sutured with a cruciate of 4-0 nylon, the bites amounting to 9 mm.",
        "Both deep flexors had then been joined with a four-strand cruciate of 4-0 nylon, with bites of 10 mm.",
    ],
)
def test_both_holds_to_its_count(words: str) -> None:
    note = PARTLY + words
    fields = ("strands", "stitch", "size", "material", "purchase_mm")
    assert "ring FDP" not in told(note, *fields)
    assert {"index FDP", "middle FDP"} <= set(told(note, *fields))


def test_then_behind_a_comma_begins_anew() -> None:
    note = PARTLY + "Both were trimmed, then the ring profundus was sutured with a cruciate of 4-0 nylon."
    assert each(note, "stitch") == {"ring FDP": "cruciate"}


TWO = "In the ring finger profundus and superficialis had been transected, in the small finger the profundus. "


@pytest.mark.parametrize(
    "place", ["on either side of the junction", "on each side of the repair", "on both sides of the suture line"]
)
def test_a_side_of_the_junction_is_a_place(place: str) -> None:
    note = TWO + (
        f"The two profundi were joined with a six-strand M-Tang, 10 mm of tendon being taken {place} and the locks "
        "measuring 2 mm, and were finished with a running 6-0 polypropylene suture."
    )
    assert told(note, "lock_mm", "peripheral_size") == {
        name: {"lock_mm": (2.0, 2.0), "peripheral_size": "6-0"} for name in ("ring FDP", "small FDP")
    }


SEWN = (
    "Ring FDP and FDS and small FDP transected and repaired with 3-0 Ethibond. The small FDS was 40% cut and bevelled. "
)
THREE = {"ring FDP", "ring FDS", "small FDP"}


@pytest.mark.parametrize(
    "words",
    [
        "On passive extension neither profundus gapped, and all three sutured tendons passed freely.",
        "Passively moved, the profundi did not gap, while all three repairs glided.",
    ],
)
def test_all_three_behind_a_joining_word(words: str) -> None:
    assert set(each(SEWN + words, "glide")) == THREE
    assert set(each(SEWN + words, "gap")) == {"ring FDP", "small FDP"}


def test_none_of_the_three_lay_under_tension() -> None:
    note = SEWN + "On passive extension all three repairs ran freely. None of the three lay under tension."
    assert set(each(note, "tension")) == THREE
