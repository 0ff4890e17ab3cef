"""What was done to a pulley where the deed stands apart from its name, or of several fingers at once."""

import pytest
from reader_sentences import told

RING = "Left ring finger, FDP completely divided and repaired with a four-strand cruciate of 4-0. "
TWO = "Left middle and ring fingers, FDP of both completely divided and repaired with four strands of 4-0. "


def _pulleys(text: str) -> dict[str, dict[str, object]]:
    return told(text, "finding", "part", "extent_mm", "extent_percent", group="pulleys")


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A5 had been torn by the hook and I took it away.", "excised"),
        ("The A5 pulley was in tatters, so its remnants were excised.", "excised"),
        ("A5: cut by the tin -> repaired with 6-0 PDS.", "repaired"),
        ("A5 was shredded and we made a new one from retinaculum.", "reconstructed"),
    ],
)
def test_a_hurt_pulley_was_then_dealt_with(text: str, finding: str) -> None:
    assert _pulleys(RING + text) == {"ring A5": {"finding": finding}}


@pytest.mark.parametrize(
    "text",
    [
        "A5 had been torn and the superficialis slip was excised.",
        "A5 was torn, and the skin flap was repaired.",
    ],
)
def test_what_was_done_to_something_else_is_not_the_pulleys(text: str) -> None:
    assert _pulleys(RING + text) == {"ring A5": {"finding": "injured"}}


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        (
            "I took two millimetres off the proximal edge of A4.",
            {"finding": "trimmed", "extent_mm": 2, "part": "proximal"},
        ),
        ("We snipped the ragged bit off A4.", {"finding": "trimmed"}),
        ("Loose strips of A4 were cut off.", {"finding": "trimmed"}),
        ("A4: torn part cut off.", {"finding": "trimmed"}),
        ("What was left of A4 was in strips and was excised.", {"finding": "excised"}),
        ("The proximal half of A4 was divided, and the distal half was kept.", None),
    ],
)
def test_a_part_taken_off_is_a_trimming(text: str, facts: dict[str, object] | None) -> None:
    expected = facts or {"finding": "vented", "extent_percent": 50, "part": "proximal"}
    assert _pulleys(RING + text) == {"ring A4": expected}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A1 ended up wide open over its full length.", "released"),
        ("A1 was let out right through.", "released"),
        ("A1 was let out by 3 mm.", "vented"),
        ("A1 was enlarged by a V-Y advancement of its roof.", "widened"),
        ("A1 was left just as I found it.", "intact"),
        ("A1 had held up well.", "intact"),
        ("A1 was stripped off by the accident.", "injured"),
    ],
)
def test_further_words_for_what_became_of_a_pulley(text: str, finding: str) -> None:
    assert {name: f["finding"] for name, f in _pulleys(RING + text).items()} == {"ring A1": finding}


def test_it_was_rebuilt_from_a_tendon() -> None:
    text = RING + "A2 was torn away. It was rebuilt from a strip of palmaris longus."
    assert _pulleys(text) == {"ring A2": {"finding": "reconstructed"}}


def test_its_part_was_cut_away_in_the_next_sentence() -> None:
    text = RING + "A2 had been split by the blade. It would have been in the way, so its distal half was excised."
    assert _pulleys(text)["ring A2"] == {"finding": "trimmed", "extent_percent": 50, "part": "distal"}


@pytest.mark.parametrize(
    "text", ["A2 kept x 2.", "A2 is intact in each of them.", "I preserved A2 in both of these fingers."]
)
def test_a_pulley_kept_in_each_finger(text: str) -> None:
    found = _pulleys(TWO + "The middle A4 was vented. " + text)
    assert found["middle A2"] == found["ring A2"] == {"finding": "intact"}


def test_stitches_are_not_counted_as_fingers() -> None:
    assert list(_pulleys(TWO + "The middle A2 was repaired with 5-0 x 2.")) == ["middle A2"]


def test_all_pulleys_of_a_name_are_those_of_every_finger() -> None:
    found = _pulleys(TWO + "The A4 of the middle finger was opened. All A2 pulleys were retained.")
    assert found["middle A2"] == found["ring A2"] == {"finding": "intact"}


def test_an_oblique_cut_is_no_pulley() -> None:
    text = "Left thumb, FPL completely divided. The oblique cut, which ran to the palm, was extended."
    assert _pulleys(text) == {}
    assert _pulleys(text + " Thumb oblique repaired with 5-0.") == {"thumb oblique": {"finding": "repaired"}}
