"""What is usual and what was done: an aside on a custom does not silence the deed beside it, nor tell one by itself."""

import pytest
from reader_sentences import told

CUT = "Ring FDP cut through. "


@pytest.mark.parametrize(
    "note",
    [
        "A four-strand repair was done with 4-0 Ticron, as is usual here.",
        "A core of four strands was placed, as taught here.",
        "My usual four-strand repair was done.",
        "As is my habit, I used four strands.",
        "Four strands were used, as the literature recommends.",
        "Following our practice, four strands were put in.",
        "A four-strand repair, our standard technique, was performed.",
        "Normally two strands; today four strands of 4-0.",
    ],
)
def test_a_deed_is_told_beside_its_custom(note: str) -> None:
    assert told(CUT + note, "strands") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "note",
    [
        "Our standard is a four-strand repair.",
        "As a rule four strands are placed.",
        "My usual repair has four strands.",
        "As is my habit, I would have used four strands.",
        "Four strands, as is usual here, could not be placed.",
        "Others would have put in four strands.",
        "In earlier years, up to 2027, we used a four-strand repair.",
        "My registrar would have had four strands.",
    ],
)
def test_a_custom_or_a_might_have_been_tells_no_deed(note: str) -> None:
    assert told(CUT + note, "strands") == {}


def test_what_another_would_have_had_is_not_the_stitch() -> None:
    note = CUT + "My registrar would have had a Kessler; I put in a Tsuge with 4-0."
    assert told(note, "stitch") == {"ring FDP": {"stitch": "tsuge"}}


@pytest.mark.parametrize(
    "note",
    [
        "It is my custom to vent A4 in this zone; here it lay well distal and I did not.",
        "It is my habit to vent A4 in such cases, but this time it was not needed.",
    ],
)
def test_a_custom_not_followed(note: str) -> None:
    assert told(CUT + note, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "words",
    ["A2 had to be vented distally, contrary to our custom.", "Against my usual practice, the distal A2 was vented."],
)
def test_what_was_done_against_a_custom(words: str) -> None:
    found = told("Left ring finger. FDP repaired with 4-0 Prolene. " + words, "finding", group="pulleys")
    assert found == {"ring A2": {"finding": "vented"}}
