"""An addendum that says a tendon was wrongly told to be whole speaks of that tendon, and what was told falls."""

import pytest
from reader_sentences import each, told

BODY = (
    "Index FDP cut through, repaired. Index FDS intact.\n"
    "Middle FDP cut through. Six-strand repair with 4-0 looped Supramid. Middle FDS intact.\n\n"
    "Addendum: The profundus repair of the index is four-strand. "
)


@pytest.mark.parametrize(
    ("added", "share", "treatment"),
    [
        (
            "I was wrong to put down the middle FDS as intact: a quarter of its width had been cut. "
            "It was smoothed off, not sutured.",
            25,
            "trimmed",
        ),
        (
            "The middle FDS was mistakenly called whole. A third of its width had been cut. "
            "It was trimmed and not repaired.",
            33,
            "trimmed",
        ),
        (
            "It was an error to describe the middle FDS as intact. It had a 30 % cut and was left alone.",
            30,
            "left",
        ),
        (
            "I was mistaken about the FDS of the middle finger. It was half cut and was sutured with 5-0 Prolene.",
            50,
            "repaired",
        ),
    ],
)
def test_what_was_wrongly_whole_is_told_anew(added: str, share: int, treatment: str) -> None:
    facts = told(BODY + added)
    assert facts["middle FDS"]["extent"] == "partial"
    assert facts["middle FDS"]["extent_percent"] == share
    assert facts["middle FDS"]["treatment"] == treatment
    assert facts["middle FDP"]["size"] == "4-0"
    assert facts["index FDS"]["extent"] == "intact"


def test_a_tendon_wrongly_called_whole_is_whole_no_more() -> None:
    assert "index FDS" not in told("Index FDS intact.\n\nAddendum: the index FDS was wrongly entered as intact.")


def test_wrong_about_a_tendon_that_was_whole() -> None:
    note = "Index FDS cut.\n\nAddendum: I was wrong about the index FDS: it was whole."
    assert each(note, "extent") == {"index FDS": "intact"}


@pytest.mark.parametrize(
    ("behind", "share"),
    [
        ("A third of its width had been cut.", 33),
        ("About half of its thickness was divided.", 50),
        ("Two thirds of its fibres were torn.", 67),
    ],
)
def test_a_share_of_its_width_is_of_the_one_tendon_named_before(behind: str, share: int) -> None:
    assert each(f"Middle FDS was bruised. {behind}", "extent_percent") == {"middle FDS": share}


@pytest.mark.parametrize(
    "behind", ["Two thirds of its width remained uncut.", "A2 was seen. Half of its width was cut."]
)
def test_a_share_left_or_of_a_pulley_is_no_cut_of_the_tendon(behind: str) -> None:
    assert not each(f"Middle FDP inspected. {behind}", "extent_percent")
