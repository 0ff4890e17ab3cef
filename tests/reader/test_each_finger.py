"""Tendons told of finger by finger: 'both tendons in each finger', 'each profundus'."""

import pytest
from reader_sentences import each, told

TWO = "Right ring and small fingers."
ALL_FOUR = {f"{digit} {tendon}": "complete" for digit in ("ring", "small") for tendon in ("FDP", "FDS")}


@pytest.mark.parametrize(
    "words",
    [
        "Both tendons were divided in each finger.",
        "Both flexor tendons of each finger were divided.",
        "In both fingers both flexors were divided.",
        "FDP and FDS were divided in both fingers.",
        "Each finger had lost both tendons, cut through.",
    ],
)
def test_both_tendons_of_every_finger(words: str) -> None:
    assert each(f"{TWO} {words}", "extent") == ALL_FOUR


def test_the_fingers_may_have_been_left_for_one_of_them() -> None:
    note = f"{TWO} In the ring the bone was scored. FDP and FDS were divided in each finger."
    assert each(note, "extent") == ALL_FOUR


def test_as_many_fingers_as_are_counted() -> None:
    three = "Right index, middle and ring fingers. Both flexors had been divided in all three fingers."
    assert len(each(three, "extent")) == 6
    assert each("Right index, middle and ring fingers. Both flexors were divided in both fingers.", "extent") == {}


@pytest.mark.parametrize(
    "words", ["Each profundus was sewn with 3-0 Ticron.", "Both profundi were sewn with 3-0 Ticron."]
)
def test_each_profundus_is_of_every_finger(words: str) -> None:
    note = f"{TWO} In the ring the bone was scored. {words}"
    assert told(note, "size") == {"ring FDP": {"size": "3-0"}, "small FDP": {"size": "3-0"}}


def test_both_tendons_of_one_finger_reach_no_other() -> None:
    note = f"{TWO} Ring finger: both tendons were divided. Small finger: skin only."
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "complete"}


def test_a_glove_ring_is_no_finger() -> None:
    note = "Exploration left index finger. Finger tourniquet: glove ring, 31 min.\n\nFDP completely divided."
    assert each(note, "extent") == {"index FDP": "complete"}
