"""What a blade, a saw or the wound took is cut through; what a surgeon took, or took a part of, is not told by that."""

import pytest
from reader_sentences import told

CUT = {"extent": "complete"}


@pytest.mark.parametrize(
    ("note", "shown"),
    [
        ("The blade had taken both tendons of the index finger entirely.", {"index FDP": CUT, "index FDS": CUT}),
        ("The saw took the profundus of the ring finger.", {"ring FDP": CUT}),
        ("The kerf crossed the palm, where it had taken the small finger profundus.", {"small FDP": CUT}),
    ],
)
def test_a_tendon_taken_by_what_wounded_is_cut_through(note: str, shown: dict[str, dict[str, str]]) -> None:
    assert told(note, "extent") == shown


@pytest.mark.parametrize(
    "note",
    [
        "The saw cut was irrigated and then I took the FDP of the ring finger out of the wound.",
        "The glass had taken some of the FDS of the ring finger.",
        "The wound was extended and we had taken the FDS of the ring finger aside.",
    ],
)
def test_a_tendon_taken_by_a_surgeon_or_in_part_is_not(note: str) -> None:
    assert told(note, "extent") == {}


def test_a_finger_is_known_behind_a_lone_tendon() -> None:
    assert told("The saw severed the profundus alone of the middle.", "extent") == {"middle FDP": CUT}
    note = "The blade cut through the FDS only of the middle, the middle profundus being whole."
    assert told(note, "extent") == {"middle FDP": {"extent": "intact"}, "middle FDS": CUT}


@pytest.mark.parametrize(
    "note",
    [
        "The ring and small finger flexors had been passed over by the blade.",
        "The FDP and FDS of the ring and small fingers were passed over by the saw.",
    ],
)
def test_tendons_passed_over_by_the_blade_are_whole(note: str) -> None:
    assert told(note, "extent") == {
        f"{digit} {tendon}": {"extent": "intact"} for digit in ("ring", "small") for tendon in ("FDP", "FDS")
    }
