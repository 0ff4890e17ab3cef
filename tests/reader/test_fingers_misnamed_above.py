"""A finger misnamed above, put right by an addendum; and what a patient had done on a day before."""

import pytest
from reader_sentences import each

NOTE = """Operation: repair of FDP, right middle finger

FDP of the middle finger repaired with four strands.

Addendum 18 October 2032
"""


@pytest.mark.parametrize(
    "words",
    [
        'The finger was the right RING finger; "middle" in the heading above is a slip of mine on the tape.',
        "The finger was the ring finger. The heading says middle in error.",
        "The title wrongly says middle finger; it was the ring finger.",
        "The digit was the ring finger. Middle finger in the title is a typo.",
    ],
)
def test_the_finger_meant(words: str) -> None:
    assert each(NOTE + words, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "words",
    [
        "The A2 of the ring finger was intact; the middle finger is not in the list above.",
        "The heading is wrong about the date.",
        "The ring finger was not explored. The heading says left hand in error.",
    ],
)
def test_another_slip(words: str) -> None:
    assert each(NOTE + words, "strands") == {"middle FDP": 4}


SECOND = "Operation: secondary repair of ruptured profundus, right ring finger. 15th October 2032. "


@pytest.mark.parametrize(
    "before",
    [
        "This gentleman had his profundus repaired on 26th September with a two-strand core in 4/0 Prolene.",
        "She had her FDP sutured on 2 May 2032 with two strands of 4-0 Prolene.",
    ],
)
def test_repaired_on_a_day_before(before: str) -> None:
    assert each(f"{SECOND}{before} Repair: six strand Savage, 3/0 Ticron.", "strands") == {"ring FDP": 6}


def test_repaired_today() -> None:
    note = "3 May 2032. Your patient had his profundus repaired on 3 May 2032 with four strands. Right ring finger."
    assert list(each(note, "strands").values()) == [4]


@pytest.mark.parametrize(
    "words",
    [
        'Every mention of "middle finger" above is an error. The operated digit was the right RING finger.',
        "The middle finger is given above by mistake. The correct finger is the ring finger.",
        "Middle finger above is incorrect; the operated finger was the ring finger.",
        "The digit is wrongly given as middle finger; it was the ring finger.",
        "Please read ring finger for middle finger in the whole note.",
    ],
)
def test_a_finger_taken_back_for_the_whole_note(words: str) -> None:
    assert each(NOTE + words, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "words",
    [
        'Every mention of "middle finger" above is an error. I shall ask which finger it was.',
        "The level given above is an error. The ring finger was not touched.",
        "The time given above for the middle finger is an error. The ring finger was never opened.",
        "I read the ring finger's radiograph for the middle finger's sake.",
        "The middle finger is given above by mistake. The injured nerve of the ring finger was left.",
    ],
)
def test_a_finger_is_not_taken_back_for_another_named_beside_it(words: str) -> None:
    assert each(NOTE + words, "strands") == {"middle FDP": 4}
