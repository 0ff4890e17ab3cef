"""Pulleys opened further, mended by a thread put into them, cut by the surgeon's own hand, or made of something."""

import pytest
from reader_sentences import each, told

HEAD = "Ring finger. FDP repaired. "


@pytest.mark.parametrize(
    "words",
    [
        "A4 vented 4 mm. It caught, so another 2 mm was cut, 6 mm in all. Then it ran freely.",
        "A4 vented 4 mm. It still jammed, so I vented a further 2 mm, 6 mm altogether.",
        "A4 vented 4 mm. It caught there, then I cut 2 mm more, which makes 6 mm.",
    ],
)
def test_opened_in_all(words: str) -> None:
    assert told(HEAD + words, group="pulleys")["ring A4"] == {"finding": "vented", "extent_mm": 6}


def test_ends_cut_back_in_all_are_no_pulley() -> None:
    note = HEAD + "A2 vented 4 mm. The ends were cut back 2 mm more, 5 mm in all."
    assert each(note, "extent_mm", group="pulleys") == {"ring A2": 4}


@pytest.mark.parametrize(
    ("words", "pulley"),
    [
        ("I also put a 6-0 in the C1 because it had come off its bony edge.", "C1"),
        ("I put two 5-0 sutures in A2, which had split.", "A2"),
        ("A stitch of 5-0 was placed in the torn A3.", "A3"),
        ("A4 - sliced by the blade, 2 x 5/0 Prolene put it together again.", "A4"),
        ("A4 opened along its whole length at first, and after the tendon was done I sutured it back.", "A4"),
    ],
)
def test_mended(words: str, pulley: str) -> None:
    assert each(HEAD + words, "finding", group="pulleys") == {f"ring {pulley}": "repaired"}


@pytest.mark.parametrize("words", ["A4 had split.", "I passed the suture under the A4, which had split."])
def test_split_and_not_mended(words: str) -> None:
    assert each(HEAD + words, "finding", group="pulleys") in ({"ring A4": "injured"}, {})


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("A2: had to take down its distal 40 percent.", {"finding": "vented", "extent_percent": 40, "part": "distal"}),
        ("A2 cut through by me for the light.", {"finding": "released"}),
        ("A2 was cut through by the glass.", {"finding": "injured"}),
        ("A2 gone already, nothing kept of it: cleared off.", {"finding": "excised"}),
        ("A2 torn, repaired with two loops of retinaculum round it (reconstruction).", {"finding": "reconstructed"}),
    ],
)
def test_what_became_of_it(words: str, found: dict[str, object]) -> None:
    assert told(HEAD + words, group="pulleys") == {"ring A2": found}


def test_the_retinaculum_itself() -> None:
    note = "Wrist. FCR cut. The flexor retinaculum was divided throughout its length and reconstructed."
    assert "flexor retinaculum" in told(note, group="pulleys")
