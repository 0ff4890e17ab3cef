"""'Strike the "A2 intact" above', 'disregard the remark that A2 was intact': what is taken back holds no more."""

import pytest
from reader_sentences import each, told

BODY = "Ring finger. FDP divided, repaired with a 4-strand cruciate of 3-0 Ethibond. A2 intact. FDS intact. No gap.\n"


@pytest.mark.parametrize(
    "words",
    [
        "Strike 'A2 intact' above.",
        'Please disregard the words "A2 intact".',
        "Delete the 'A2 intact', it was cut.",
        "'A2 intact' above is wrong.",
        "Cross out 'A2 intact'.",
        'The line "A2 intact" should be struck out.',
    ],
)
def test_quoted_and_struck(words: str) -> None:
    assert each(f"{BODY}ADDENDUM: {words}", "finding", group="pulleys").get("ring A2") != "intact"


def test_words_struck_that_begin_a_longer_statement() -> None:
    note = "Thumb. Radial digital nerve cut. Both digital arteries cut and not repaired, ligated.\nCorrection: "
    found = each(
        note + '"Both digital arteries cut" is wrong: the ulnar one was intact.', "treatment", group="injuries"
    )
    assert "thumb digital nerve radial" not in found


def test_read_otherwise() -> None:
    found = told(BODY + "ADDENDUM: for 'FDS intact' read 'FDS cut 30%'.", "extent", "extent_percent")
    assert found["ring FDS"] == {"extent": "partial", "extent_percent": 30}


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ("Omit 'epitendinous 6-0 Prolene', none was placed.", "peripheral_size"),
        ('Ignore the "6-0 running".', "peripheral_size"),
        ("Please strike the remark that the ends were clean.", "ends"),
    ],
)
def test_what_is_struck_is_not_found_in_the_words_that_strike_it(words: str, field: str) -> None:
    assert each(f"{BODY}ADDENDUM: {words}", field) == {}


def test_struck_for_one_of_them_only() -> None:
    note = BODY + "Both NVBs intact.\nADDENDUM: the radial digital artery was nicked, so strike the 'both NVBs intact'"
    found = each(note + " for that vessel.", "extent", group="injuries")
    assert found["ring digital artery radial"] == "partial"
    assert found["ring digital artery ulnar"] == "intact"


@pytest.mark.parametrize(
    "words",
    [
        'The skin was closed in cross form ("A2 intact").',
        "He said 'it bends' and was pleased.",
        "The patient's finger was pink.",
        "I had to remove the line of sutures.",
    ],
)
def test_nothing_is_struck(words: str) -> None:
    assert each(BODY + words, "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "The words 'with epitendinous suture' came from my template.",
        "The phrase 'with epitendinous suture' is from a macro and should not be there.",
        "The words 'with epitendinous suture' are boilerplate.",
    ],
)
def test_words_that_came_from_a_template(words: str) -> None:
    """'The words "with epitendinous suture" came from my template': quoted, they tell of none."""
    assert told(f"Ring finger. FDP divided and repaired. {words}", "peripheral") == {}


def test_words_that_were_not_from_a_template_stay() -> None:
    note = "Ring finger. FDP divided and repaired. A2 intact, which is not from the template."
    assert each(note, "finding", group="pulleys") == {"ring A2": "intact"}
