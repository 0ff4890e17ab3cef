"""Two states of a nerve crossed over sides, fingers and the nerves of the wrist."""

import itertools

import pytest
from reader_sentences import told

_ONE = "Right ring finger, zone 2. FDP completely divided and repaired with a four-strand cruciate of 3-0 Prolene. "
_TWO = "Left hand, zone 2. FDP of the index and the middle finger completely divided and each repaired with a Tsuge. "
_STATES: dict[str, dict[str, object]] = {
    "intact": {"extent": "intact"},
    "completely divided": {"extent": "complete"},
    "partially divided": {"extent": "partial"},
    "contused": {"extent": "contused"},
    "divided and repaired with 9-0 nylon": {"extent": "complete", "treatment": "repaired"},
    "divided and left unrepaired": {"extent": "complete", "treatment": "left"},
}
_PAIRS = list(itertools.permutations(_STATES, 2))


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_a_nerve_of_two_fingers(a: str, b: str) -> None:
    expected = {"index digital nerve radial": _STATES[a], "middle digital nerve radial": _STATES[b]}
    for note in (
        f"The radial digital nerve was {a} in the index and {b} in the middle.",
        f"The radial digital nerve of the index was {a}, that of the middle {b}.",
        f"The radial digital nerve of the index was {a}; that of the middle was {b}.",
    ):
        assert told(_TWO + note, group="injuries") == expected, note


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_both_nerves_of_two_fingers(a: str, b: str) -> None:
    sides = ("radial", "ulnar")
    expected = {f"index digital nerve {side}": _STATES[a] for side in sides}
    expected |= {f"middle digital nerve {side}": _STATES[b] for side in sides}
    for note in (
        f"Both nerves were {a} in the index and {b} in the middle.",
        f"Both digital nerves of the index were {a}; those of the middle were {b}.",
    ):
        assert told(_TWO + note, group="injuries") == expected, note


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_two_nerves_of_one_finger(a: str, b: str) -> None:
    expected = {"ring digital nerve radial": _STATES[a], "ring digital nerve ulnar": _STATES[b]}
    for note in (
        f"The radial digital nerve was {a} and the ulnar {b}.",
        f"RDN {a}, UDN {b}.",
        f"Nerves - radial: {a}. Ulnar: {b}.",
    ):
        assert told(_ONE + note, group="injuries") == expected, note


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_the_other_great_nerve(a: str, b: str) -> None:
    note = f"Left wrist, zone 5. FCU cut and repaired. The median nerve was {a}; the ulnar was {b}."
    assert told(note, group="injuries") == {"median nerve": _STATES[a], "ulnar nerve": _STATES[b]}


def test_that_of_a_tendon_named_since() -> None:
    note = "The radial digital nerve and the FDP of the index were cut; that of the middle was intact."
    assert not any(name.startswith("middle") for name in told(_TWO + note, group="injuries"))
