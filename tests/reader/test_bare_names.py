"""Short names of fingers without 'finger': 'sliced her right small on a slate', 'UDN small divided'."""

import pytest

from notereader.reader import read

_HANDS = ("right", "left", "R", "L", "Rt", "Lt")
_FRAMES = (
    "He sliced his {hand} {name} on a slate. FDP completely divided, zone II.",
    "FDP completely divided {hand} {name}, zone II.",
    "Exploration {hand} {name} under block. FDP completely divided.",
    "Tear of the {hand} {name} on 3 March. FDP completely divided.",
)
_NAMES = {"small": "small", "little": "small", "middle": "middle", "long": "middle"}


def _digits(text: str) -> set[str | None]:
    return {place.digit for place, _ in read(text).walk() if place.group == "repairs"}


@pytest.mark.parametrize("frame", _FRAMES)
@pytest.mark.parametrize("name", _NAMES)
@pytest.mark.parametrize("hand", _HANDS)
def test_a_name_behind_its_hand_is_the_finger(frame: str, name: str, hand: str) -> None:
    assert _digits(frame.format(hand=hand, name=name)) == {_NAMES[name]}


@pytest.mark.parametrize(
    "sentence",
    [
        "In his small I found the FDP completely divided.",
        "I repaired the FDP of her little.",
        "The small was explored and its FDP was completely divided.",
    ],
)
def test_a_name_behind_its_owner_is_the_finger(sentence: str) -> None:
    assert _digits(sentence) == {"small"}


@pytest.mark.parametrize(
    ("sentence", "whose"),
    [
        ("UDN small divided. RDN middle intact.", {("small", "ulnar"), ("middle", "radial")}),
        ("Radial digital nerve little bruised.", {("small", "radial")}),
        ("Ulnar digital nerve long repaired with 9-0 nylon.", {("middle", "ulnar")}),
    ],
)
def test_a_name_between_a_nerve_and_its_state_is_the_finger(sentence: str, whose: set[tuple[str, str]]) -> None:
    assert {(p.digit, p.side) for p, _ in read(sentence).walk() if p.group == "injuries"} == whose


@pytest.mark.parametrize(
    "sentence",
    [
        "The ends were left long. FDP repaired.",
        "There was a right small tag of skin. FDP repaired.",
        "The left middle phalanx was plated. FDP repaired.",
        "The little I saw of the sheath was torn. FDP repaired.",
        "The repair was thin in the middle. FDP repaired.",
        "The skin was closed on the left small vessels first. FDP repaired.",
    ],
)
def test_a_size_or_a_place_is_no_finger(sentence: str) -> None:
    assert _digits(sentence) == {None}


@pytest.mark.parametrize("joined", ["and", "&"])
def test_the_sign_for_and_is_read_as_the_word(joined: str) -> None:
    facts = {f"{p.digit}/{p.part}/{p.field}": f.value for p, f in read(f"Index {joined} ring FDP were divided.").walk()}
    assert facts["index/FDP/extent"] == facts["ring/FDP/extent"] == "complete"


@pytest.mark.parametrize("unit", ["mm", "mm.", " mm.,"])
def test_the_stop_of_a_unit_ends_no_sentence(unit: str) -> None:
    facts = {p.field: f.value for p, f in read(f"Ring: A2 vented distally by 4{unit} the rest kept.").walk()}
    assert facts["finding"] == "vented" and facts["part"] == "distal"
