"""A cut that is the wound tells of no nerve, pulley or tendon."""

import pytest
from reader_sentences import each

NERVES = {f"ring digital nerve {side}" for side in ("radial", "ulnar")}


@pytest.mark.parametrize(
    ("text", "state"),
    [
        ("Both digital nerves lay in the palmar cut, unhurt.", "intact"),
        ("Both neurovascular bundles seen at the proximal cut, both fine.", "intact"),
        ("Both digital nerves were seen through the same cut and were intact.", "intact"),
        ("Both digital nerves were cut.", "complete"),
        ("Both digital nerves were found cut in the wound.", "complete"),
    ],
)
def test_nerves_seen_in_a_wound(text: str, state: str) -> None:
    found = each("Ring finger. " + text, "extent", group="injuries")
    assert {name: found.get(name) for name in NERVES} == dict.fromkeys(NERVES, state)


@pytest.mark.parametrize(
    ("text", "pulleys"),
    [
        ("Oblique cut over the A1. Thumb FPL explored.", {}),
        ("A short transverse cut just over the A1. Thumb FPL explored.", {}),
        ("Thumb: the oblique pulley was cut.", {"thumb oblique": "injured"}),
        ("Ring finger. Short transverse cut across the A2.", {"ring A2": "injured"}),
    ],
)
def test_a_wound_over_a_pulley(text: str, pulleys: dict[str, str]) -> None:
    assert each(text, "finding", group="pulleys") == pulleys


def test_a_cut_into_a_tendon_stays_one() -> None:
    assert each("Ring. Oblique cut across the FDP, 40%.", "extent") == {"ring FDP": "partial"}


@pytest.mark.parametrize(
    ("text", "extent"),
    [
        ("Index FDP torn, not cut.", {}),
        ("Index FDP ends squashed by the door, not cut.", {}),
        ("Index FDP completely divided, its ends sawn and not cut.", {"index FDP": "complete"}),
        ("Index FDP: bruised, not cut.", {"index FDP": "intact"}),
        ("Index FDP torn, FDS not cut.", {"index FDS": "intact"}),
    ],
)
def test_hurt_in_another_manner(text: str, extent: dict[str, str]) -> None:
    """'Not cut' behind the manner of the hurt makes no tendon whole."""
    assert each(text, "extent") == extent


@pytest.mark.parametrize(
    ("text", "pulleys"),
    [
        ("The cut lay distal to the flexor retinaculum, which was left closed.", {"flexor retinaculum": "intact"}),
        (
            "The divided structures lay beyond the carpal ligament, which was not opened.",
            {"flexor retinaculum": "intact"},
        ),
        ("All the divided structures lay distal to the A2, which was not opened.", {"index A2": "intact"}),
        ("The cut ran through A2, which was repaired.", {"index A2": "repaired"}),
    ],
)
def test_a_landmark_left_closed(text: str, pulleys: dict[str, str]) -> None:
    """What was cut beside a pulley is not the pulley."""
    assert each("Index FDP repaired. " + text, "finding", group="pulleys") == pulleys


@pytest.mark.parametrize(
    ("text", "trimmed"),
    [
        ("Saw cut oblique over P1, 3 cm, edges debrided. Thumb FPL cut through and repaired.", {}),
        ("Thumb FPL cut through and repaired. A1 at its distal end had been trimmed by 2 mm.", {}),
        ("Thumb FPL cut through and repaired. FPL at its distal end was trimmed by 2 mm.", {"thumb FPL": 2}),
    ],
)
def test_lengths_of_a_wound_or_pulley(text: str, trimmed: dict[str, int]) -> None:
    assert each(text, "trimmed_mm") == trimmed


def test_a_tube_bridges_no_whole_nerve() -> None:
    text = (
        "Ring FDP intact. Both digital nerves fine. I put a nylon tag on the tube so it won't fall out, tube left in."
    )
    assert each(text, "treatment", group="injuries") == {}
    text = "Ring FDP intact. Ulnar digital nerve cut, 8 mm missing. It would not meet, so a conduit was sewn in."
    assert each(text, "treatment", group="injuries") == {"ring digital nerve ulnar": "conduit"}


@pytest.mark.parametrize(
    ("text", "extent"),
    [
        ("The motor branch of the median nerve is displayed and unharmed.", {}),
        ("The median nerve was cut, the recurrent branch of the median nerve was whole.", {"median nerve": "complete"}),
        ("The median nerve was intact.", {"median nerve": "intact"}),
        ("Superficial branch of radial nerve found cut.", {"radial nerve branch": "complete"}),
    ],
)
def test_branches_of_nerves(text: str, extent: dict[str, str]) -> None:
    assert each("Wrist. " + text, "extent", group="injuries") == extent


@pytest.mark.parametrize(
    ("text", "digit"),
    [
        ("Nerves fine both sides, the index was not opened.", "middle"),
        ("Both digital nerves intact, the ring finger was normal.", "middle"),
        ("Both digital nerves were intact in the ring finger.", "ring"),
    ],
)
def test_the_finger_named_next(text: str, digit: str) -> None:
    """A finger told its own behind a comma does not take the nerves told before it."""
    found = each("Long finger FDP reinserted on the right hand. " + text, "extent", group="injuries")
    assert found == {f"{digit} digital nerve {side}": "intact" for side in ("radial", "ulnar")}


@pytest.mark.parametrize(
    "text",
    [
        "The ends stood 31 mm apart, softened and rounded off.",
        "FDP had come off with a flake of bone about 4 mm, the flake is no good, I take it out.",
        "A 3 mm chip of bone was excised.",
    ],
)
def test_no_lengths_of_tendon(text: str) -> None:
    assert each("Ring FDP torn and reinserted. " + text, "trimmed_mm") == {}


@pytest.mark.parametrize(
    ("text", "test"),
    [
        ("Not tested by passive motion, too fragile.", {}),
        ("Wrist bent up to 40 to get it together.", {}),
        ("Tested by passive motion: no gap.", {"ring FDP": "passive"}),
    ],
)
def test_what_was_no_test(text: str, test: dict[str, str]) -> None:
    assert each("Ring FDP repaired with Adelaide. " + text, "test") == test
