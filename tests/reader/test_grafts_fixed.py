"""A graft tied over a button is still a graft; a side of the body between commas; a last piece that was removed."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "The graft was tied over a button with a 3-0 Prolene pull-out. In the palm it was woven into the profundus by a"
        " Pulvertaft weave of 3-0 Ethibond.",
        "The FDP was grafted with palmaris. Distally a pull-out suture of 3-0 Prolene over a button.",
    ],
)
def test_a_graft_fixed_to_bone(words: str) -> None:
    assert each("Left index finger, FDP ruptured. " + words, "treatment") == {"index FDP": "grafted"}


def test_a_tendon_fixed_to_bone() -> None:
    note = "Left index finger, FDP avulsed. Reattached with a 3-0 Prolene pull-out over a button. No graft was needed."
    assert each(note, "treatment") == {"index FDP": "reinserted"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Reconstruction of ruptured flexor pollicis longus, left, with palmaris graft.", {"thumb FPL": "grafted"}),
        ("Repair of the ruptured FPL, left, with a splint.", {}),
        ("Thumb. FPL 40% cut, left, no suture.", {"thumb FPL": "left"}),
        ("Thumb. FPL nick, left, as found.", {"thumb FPL": "left"}),
    ],
)
def test_left_between_commas(words: str, expected: dict[str, object]) -> None:
    found = each(words, "treatment")
    assert {entry: value for entry, value in found.items() if value != "repaired"} == expected


@pytest.mark.parametrize(
    "words", ["The last 2 mm was frayed and I removed it.", "The distal 3 mm looked bruised, so we excised this."]
)
def test_a_last_piece(words: str) -> None:
    note = f"Ring. The FDP stump lay at A1. {words} A 3-0 Prolene pull-out over a button."
    assert each(note, "treatment") == {"ring FDP": "reinserted"}


def test_a_tendon_removed() -> None:
    note = "Ring. FDP and FDS cut through. The FDS was frayed and I removed it. FDP repaired with 3-0."
    assert told(note, "treatment")["ring FDS"] == {"treatment": "excised"}
