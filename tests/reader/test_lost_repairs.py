"""Repairs that gave way before the operation ended: given up, they are none; done again, they are one."""

import pytest
from reader_sentences import each, told

SEWN = "Ring finger and small finger: each FDP was cut and repaired with a four-strand cruciate of 3-0 Prolene. "


@pytest.mark.parametrize(
    "note",
    [
        "On testing the ring held; the small one ruptured on the table and was left.",
        "The small finger FDP came apart when tested and was not redone.",
        "Ring repair held. Small repair burst on the first pull, not redone.",
        "The profundus of the small finger pulled out during closure. It was left alone.",
    ],
)
def test_a_repair_given_up_is_none(note: str) -> None:
    facts = told(SEWN + note, "treatment", "strands")
    assert facts["small FDP"] == {"treatment": "left"}
    assert facts["ring FDP"] == {"treatment": "repaired", "strands": 4}


@pytest.mark.parametrize(
    "note",
    [
        "The small finger FDP gave way on traction and was resutured with four strands of 3-0 Prolene.",
        "The small repair opened by 1 mm on testing, which was left.",
        "One pass in the small finger tore out on testing and was abandoned.",
        "In the small finger the epitendinous suture broke on testing and was not redone.",
        "The small finger FDP did not rupture on the table.",
        "The edge of A4 in the small finger tore out on the table and was left.",
    ],
)
def test_a_repair_that_stands(note: str) -> None:
    assert each(SEWN + note, "treatment") == {"ring FDP": "repaired", "small FDP": "repaired"}


def test_which_of_several_gave_way_is_not_guessed() -> None:
    assert each(SEWN + "It ruptured on the table and was left.", "treatment")["ring FDP"] == "repaired"


@pytest.mark.parametrize(
    "note",
    [
        "The A2 pulley was repaired too, but the stitches cut out on the first pull; what was left was excised.",
        "A4 was mended with 5-0, but this tore out at the first flexion and was not redone.",
    ],
)
def test_a_pulley_whose_repair_gave_way_is_no_tendon(note: str) -> None:
    first = "Left ring finger. FDP repaired with a four-strand cruciate of 3-0 Prolene. "
    assert told(first + note, "treatment") == {"ring FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "note",
    [
        "After A4 was vented it ruptured on the table and was left.",
        "When A2 had been opened it came apart and was not redone.",
    ],
)
def test_a_tendon_that_gave_way_behind_a_pulley_is_given_up(note: str) -> None:
    first = "Left ring finger. FDP repaired with a four-strand cruciate of 3-0 Prolene. "
    assert told(first + note, "treatment") == {"ring FDP": {"treatment": "left"}}
