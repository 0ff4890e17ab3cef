"""One pulley dealt out over fingers, statement by statement; and whose a state is where several pulleys are named."""

import pytest
from reader_sentences import each

SEWN = "The FDP of the index, middle and ring fingers was completely divided and repaired. "


def findings(text: str) -> dict[str, object]:
    return each(text, "finding", group="pulleys")


@pytest.mark.parametrize(
    "text",
    [
        "A2 was vented in the index and excised in the middle and ring.",
        "A2: index vented, middle excised, ring excised.",
        "In the index A2 was vented; in the middle and ring it was sacrificed.",
        "A2 index vented, middle/ring sacrificed.",
        "A2 was excised in the middle and ring only; in the index it was vented.",
        "The A2 pulleys of the index, middle and ring were vented, excised and sacrificed respectively.",
        "A2 was vented in the index. The same pulley was excised in the middle and ring.",
        "A2 was vented in the index, but in the middle and ring fingers it was excised.",
    ],
)
def test_each_finger_has_its_own_state(text: str) -> None:
    assert findings(SEWN + text) == {"index A2": "vented", "middle A2": "excised", "ring A2": "excised"}


def test_the_length_of_one_finger_is_not_of_the_next() -> None:
    text = SEWN + "A2 was partly opened in the ring and divided along its whole length in the index."
    assert findings(text) == {"ring A2": "vented", "index A2": "released"}


def test_the_tendon_that_a_pulley_was_made_from_is_not_told_of() -> None:
    text = (
        SEWN + "A2 was rebuilt with a slip of FDS in the ring; A4 was left intact in the ring and vented in the index."
    )
    assert findings(text) == {"ring A2": "reconstructed", "ring A4": "intact", "index A4": "vented"}


def test_numbers_that_do_not_agree_tell_nothing() -> None:
    text = SEWN + "The A2 pulleys of the index and ring were opened and repaired and excised respectively."
    assert findings(text) == {}


@pytest.mark.parametrize("text", ["Index: A2 reconstructed, A4 intact.", "Index: A2 rebuilt and A4 intact."])
def test_a_rebuilt_pulley_is_not_named_together_with_the_whole_one_behind_it(text: str) -> None:
    assert findings(SEWN + text) == {"index A2": "reconstructed", "index A4": "intact"}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("We spared A1 and A2, and A3 was vented.", {"A1": "intact", "A2": "intact", "A3": "vented"}),
        ("I preserved A1 and A2 was opened and repaired.", {"A1": "intact", "A2": "repaired"}),
        ("We spared A2, and A3 and A4 were vented.", {"A2": "intact", "A3": "vented", "A4": "vented"}),
        ("I opened C2 only, A2 and A4 whole.", {"C2": "vented", "A2": "intact", "A4": "intact"}),
        ("A2 was divided and then repaired and A4 was intact.", {"A2": "repaired", "A4": "intact"}),
    ],
)
def test_the_object_of_one_verb_is_not_the_subject_of_the_next(text: str, expected: dict[str, str]) -> None:
    assert findings(f"Ring FDP repaired. {text}") == {f"ring {name}": state for name, state in expected.items()}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("A4 found intact, A2 completely divided.", {"A4": "intact", "A2": "released"}),
        ("A2 was fully released, as was A4.", {"A2": "released", "A4": "released"}),
        ("A2 was found divided by the glass, A4 found whole.", {"A2": "injured", "A4": "intact"}),
    ],
)
def test_what_was_found_of_one_is_not_found_of_the_next(text: str, expected: dict[str, str]) -> None:
    assert findings(f"Ring FDP repaired. {text}") == {f"ring {name}": state for name, state in expected.items()}


@pytest.mark.parametrize(
    "text",
    [
        "A2 was intact, but the repair caught on it and it was vented 4 mm.",
        "A2 was preserved initially, but the tendon would not pass and it had to be opened over 4 mm.",
    ],
)
def test_a_pulley_whole_at_first_was_opened_after_all(text: str) -> None:
    assert findings(f"Ring FDP repaired. {text}") == {"ring A2": "vented"}


def test_a_cuff_that_was_released_is_no_pulley() -> None:
    assert findings("Ring FDP repaired. A2 was kept and the cuff had been up for an hour and it was released.") == {
        "ring A2": "intact"
    }


def test_middle_is_a_part_where_no_finger_is_told_beside_it() -> None:
    assert findings("Index FDP repaired. A2: middle third vented, A4 intact.") == {
        "index A2": "vented",
        "index A4": "intact",
    }
