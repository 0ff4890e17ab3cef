"""'No gap. Strike that.': what was said last is taken out, and nothing of what stands before it."""

import pytest
from reader_sentences import each, told

SEWN = "Ring FDP cut through and repaired with four strands. "


@pytest.mark.parametrize(
    "note",
    [
        "No gap. Strike that.",
        "No gap, forget that; the test was not done.",
        "No gap. Please delete that last remark.",
        "No gap - scrap that.",
        "No gap. Scratch that, typist.",
    ],
)
def test_what_was_said_last_is_struck(note: str) -> None:
    assert told(SEWN + note, "gap", "strands") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "note",
    [
        "No gap. The patient will not forget that.",
        "No gap. I cannot scrap that theory yet.",
        "No gap. Delete that word about the nail from my last letter.",
    ],
)
def test_no_order(note: str) -> None:
    assert each(SEWN + note, "gap") == {"ring FDP": "none"}


def test_pulleys_and_both_tendons() -> None:
    assert told(SEWN + "A2 intact, delete that.", group="pulleys") == {}
    note = "FDS and FDP of the ring finger both repaired - scrap that. FDP was repaired with an Adelaide of 4-0 Ticron."
    assert each(note, "treatment") == {"ring FDP": "repaired"}


@pytest.mark.parametrize(
    "note",
    [
        "No gap on first extension. After ten active bends the patient had pulled it apart by 2 mm.",
        "No gap at first. A hard bend pulled the repair apart by 1 mm.",
        "No gap at first. Extending the wrist drew it apart by a millimetre.",
    ],
)
def test_pulled_apart_in_the_end(note: str) -> None:
    assert each(SEWN + note, "gap") == {"ring FDP": "seen"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP divided, the muscle had pulled the ends apart by 30 mm. Repaired with four strands, no gap.",
        "Ring FDP divided. The glass had pulled it apart. Repaired with four strands and no gap.",
    ],
)
def test_pulled_apart_before(note: str) -> None:
    assert each(note, "gap") == {"ring FDP": "none"}
