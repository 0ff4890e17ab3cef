"""'To the little finger I gave just the same': the suture told right before; and a stitch in its modified form."""

import pytest
from reader_sentences import each, told

TWO = (
    "FDP of the ring and small finger cut through. Ring FDP repaired with a four-strand cruciate of 3-0 Ethibond and"
    " running 6-0 nylon. "
)


@pytest.mark.parametrize(
    "words",
    [
        "To the little finger I gave just the same.",
        "The small finger got the same.",
        "The little finger was given exactly the same, with the knot turned in.",
        "I did the same to the small finger.",
    ],
)
def test_the_same_suture(words: str) -> None:
    found = told(TWO + words, "strands", "size", "peripheral_size")
    assert found["small FDP"] == {"strands": 4, "size": "3-0", "peripheral_size": "6-0"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 of the ring was vented. I did the same to the small finger.",
        "The digital nerve of the ring was sutured with 9-0. To the little finger I gave just the same.",
        "The small finger was not given the same.",
        "The small finger got the same dressing.",
        "The patient was told the same.",
    ],
)
def test_the_same_of_something_else(words: str) -> None:
    assert "small FDP" not in told(TWO + words, "strands", "size")


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("Sewn with Kessler's stitch in its modified form, 3-0.", "modified kessler"),
        ("Sewn with a Kessler, in modified form, of 3-0 Ethibond.", "modified kessler"),
        ("Sewn with a Kessler 3-0; the splint in its modified form.", "kessler"),
        ("Sewn with a Kessler of 3-0, modified splint.", "kessler"),
    ],
)
def test_in_its_modified_form(words: str, stitch: str) -> None:
    assert each("Ring. FDP cut through. " + words, "stitch") == {"ring FDP": stitch}


DEEP = "Index. FDP and FDS divided. FDP repaired with a four-strand cruciate of 3-0 Ethibond and running 6-0 Prolene. "


@pytest.mark.parametrize(
    ("words", "size"),
    [
        ("The superficialis had a modified Kessler of the same Ethibond.", "3-0"),
        ("FDS repaired with a Kessler using the same Ethibond, no epitendinous.", "3-0"),
        ("FDS repaired with a modified Kessler, 4-0 of the same Ethibond.", "4-0"),
        ("FDS repaired with a modified Kessler of the same nylon.", None),
    ],
)
def test_the_same_thread_by_its_name(words: str, size: str | None) -> None:
    assert each(DEEP + words, "size").get("index FDS") == size
