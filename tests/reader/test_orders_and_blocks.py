"""Orders among referrals and visits, a block with sedation, and blades of many lands."""

import pytest

from notereader.reader import read


def told(text: str) -> dict[str, object]:
    return {place.field: fact.value for place, fact in read(text).walk() if place.group in ("operation", "aftercare")}


@pytest.mark.parametrize(
    "order",
    [
        "POST-OP\n- OT referral: early passive exercises from day 5\n",
        "He goes to hand therapy on the fifth day to start early passive work.\n",
    ],
)
def test_a_referral_of_the_orders_is_an_order(order: str) -> None:
    facts = told(f"Ring FDP repaired with four strands.\n\n{order}")
    assert facts["programme"] == "early passive"


def test_a_suture_that_lay_to_hand_was_not_used() -> None:
    facts = read("Ring FDP repaired with 3-0 PDS; a 4-0 looped nylon was to hand.").walk()
    assert [fact.value for place, fact in facts if place.field == "size"] == ["3-0"]


@pytest.mark.parametrize(
    "words", ["a wrist and palm block with sedation", "axilary block + sedation", "Sedation and block"]
)
def test_a_block_with_sedation_is_regional(words: str) -> None:
    assert told(f"Anaesthesia: {words}. Ring FDP repaired.")["anaesthesia"] == "regional"


def test_sedation_beside_a_dorsal_blocking_splint_is_sedation() -> None:
    assert told("Sedation. Ring FDP repaired. Dorsal blocking splint.")["anaesthesia"] == "sedation"


@pytest.mark.parametrize("blade", ["parang", "bolo", "matchet", "sheet of iron"])
def test_a_blade_is_sharp(blade: str) -> None:
    assert told(f"Diagnosis: ring finger cut by a {blade}. FDP repaired.")["mechanism"] == "sharp"
