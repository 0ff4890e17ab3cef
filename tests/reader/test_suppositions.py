"""What would be so if something else were, what nobody would say or sign for, and what holds of every repair."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "
FIELDS = ("gap", "glide", "tension", "ends", "strands", "peripheral")


@pytest.mark.parametrize(
    "words",
    [
        "Glide would be free if the pulley were opened.",
        "There would be no gap if the wrist were flexed.",
        "It would be tension-free with the wrist flexed.",
        "The ends would be clean if trimmed.",
        "The repair would be without a gap were it not for one loose strand.",
        "It would be too much to claim that there was no gap on full extension.",
        "It would be rash to say that it glided freely.",
        "An epitendinous suture adds a good third to the strength of any such repair.",
        "A six-strand core gives more strength.",
    ],
)
def test_what_is_only_supposed_is_not_told(words: str) -> None:
    assert told(SEWN + words, *FIELDS) == {}


def test_a_pulley_that_nobody_would_sign_for_is_not_told() -> None:
    assert told(SEWN + "I would not put it in writing that A2 is whole.", group="pulleys") == {}
    assert told(SEWN + "I put it in writing that A2 was intact.", group="pulleys") == {"ring A2": {"finding": "intact"}}


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("It would run freely under A2 and A4.", "glide", "free"),
        ("Four strands were as much as it would take - cruciate, 4-0 Ethibond.", "stitch", "cruciate"),
        ("A six-strand core was placed for more strength.", "strands", 6),
        ("This six-strand core gives the FDP more strength.", "strands", 6),
    ],
)
def test_what_was_so_is_told(words: str, field: str, value: object) -> None:
    assert each(SEWN + words, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    ("words", "kept"),
    [
        ("Of A2, A3 and A4 only the last could be kept intact.", "ring A4"),
        ("Of A2 and A4 only the former was preserved.", "ring A2"),
    ],
)
def test_only_the_one_singled_out_is_whole(words: str, kept: str) -> None:
    assert each(SEWN + words, "finding", group="pulleys") == {kept: "intact"}


@pytest.mark.parametrize(
    "words", ["As to an epitendinous stitch, I have no memory of it.", "A peripheral suture: I do not remember one."]
)
def test_a_suture_nobody_remembers_is_not_told(words: str) -> None:
    assert told(SEWN + words, "peripheral") == {}
