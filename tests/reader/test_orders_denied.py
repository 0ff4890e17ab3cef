"""Programmes and splints that an order names only to forbid or to take away."""

import pytest
from reader_sentences import told

_ONE = (
    "Right ring finger, zone 2. FDP completely divided and repaired with a four-strand cruciate of 3-0 Prolene.\nPLAN\n"
)


@pytest.mark.parametrize(
    "note",
    [
        "Early active motion is not allowed.",
        "Early active motion was decided against.",
        "The previous splint was removed.",
        "The old plaster was taken off.",
    ],
)
def test_what_is_forbidden_or_taken_off_is_no_order(note: str) -> None:
    assert not told(_ONE + note, "programme", "splint", group="aftercare")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Early active motion from day 4.", {"programme": "early active"}),
        ("Early active motion. Driving is not allowed.", {"programme": "early active"}),
        ("The old plaster is replaced by a dorsal blocking splint.", {"splint": "dorsal blocking"}),
    ],
)
def test_what_is_ordered(note: str, expected: dict[str, object]) -> None:
    assert told(_ONE + note, "programme", "splint", group="aftercare") == {"": expected}
