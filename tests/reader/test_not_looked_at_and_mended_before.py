"""Fingers not looked at turn no sentence to them; a repair dated before a redo is history; 'cut bar a few fibres'."""

import pytest
from reader_sentences import each

RING = "Left ring finger. FDP and FDS whole. "
NERVE = " Ulnar digital nerve cut and repaired with 9-0."


@pytest.mark.parametrize(
    "words",
    [
        "Middle and little finger tendons not looked at.",
        "Middle and small finger tendons were not seen.",
        "Middle and little: not looked at.",
        "Nothing was looked at in the middle and little fingers.",
    ],
)
def test_what_follows_is_of_the_finger_before(words: str) -> None:
    found = each(RING + words + NERVE, "treatment", group="injuries")
    assert found == {"ring digital nerve ulnar": "repaired"}


def test_fingers_that_were_looked_at() -> None:
    found = each(RING + "Then the middle finger was explored." + NERVE, "treatment", group="injuries")
    assert found == {"middle digital nerve ulnar": "repaired"}


REDO = "26.02.2034. Redo thumb tendon. "
SOFT = " On the 17th of February the thumb went soft. So this is a rupture of a repair."


@pytest.mark.parametrize(
    "words",
    [
        "His left FPL was cut last month and mended on the 24th of January by one of us: cruciate, 3-0 Prolene.",
        "FPL repaired by us on 24 January: four-strand cruciate, 3-0 Prolene.",
    ],
)
def test_mended_before(words: str) -> None:
    assert each(REDO + words + SOFT, "stitch") == {}


def test_mended_today_with_a_day_to_come() -> None:
    note = "26.02.2034. Thumb. FPL repaired on 26 February with a four-strand cruciate. Next visit on 1 March."
    assert each(note, "stitch") == {"thumb FPL": "cruciate"}


@pytest.mark.parametrize(
    "words", ["divided, bar a few fibres", "cut through save for a few strands", "cut through, but for a thin strand"]
)
def test_cut_nearly_through(words: str) -> None:
    assert each(f"Ring FDP {words}.", "extent") == {"ring FDP": "partial"}


def test_cut_through_and_other_things_spared() -> None:
    assert each("Ring FDP divided, save for its sheath nothing else.", "extent") == {"ring FDP": "complete"}
