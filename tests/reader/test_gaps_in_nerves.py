"""The gap that trimming left in a nerve is none of the repair's; what tendons 'did without'."""

import pytest
from reader_sentences import each, told

_REPAIRED = "Left index. FDP repaired with four strands and tested. "


@pytest.mark.parametrize(
    "words",
    [
        "The ulnar digital nerve was cut back to good fascicles. That left a 9 mm gap with the finger straight.",
        "The nerve was trimmed to sound bundles. There remained a gap of 6 mm.",
        "UDN was resected by 2 mm each way. This left a gap of 5 mm.",
    ],
)
def test_a_gap_left_in_a_nerve(words: str) -> None:
    assert told(_REPAIRED + words, "gap", "gap_mm") == {}


@pytest.mark.parametrize(
    "words",
    [
        "The ulnar digital nerve was intact. There remained a gap of 1 mm on extension.",
        "The ends of the FDP were trimmed. This left a gap of 1 mm after the repair on extension.",
        "There remained a gap of 1 mm on extension.",
    ],
)
def test_a_gap_of_the_repair(words: str) -> None:
    assert each(_REPAIRED + words, "gap") == {"index FDP": "seen"}


@pytest.mark.parametrize("words", ["the FDS did without", "the superficialis did without one"])
def test_a_tendon_that_did_without(words: str) -> None:
    note = f"FDS and FDP small cut, 4-strand 3-0 Ethibond. A 5/0 Prolene running suture on the FDP; {words}."
    assert each(note, "peripheral") == {"small FDP": "present", "small FDS": "absent"}


def test_what_a_tendon_did_without_is_named() -> None:
    note = "FDS and FDP small cut, 4-strand 3-0 Ethibond. A running 5/0 on the FDP; the FDS did without traction."
    assert each(note, "peripheral") == {"small FDP": "present"}
