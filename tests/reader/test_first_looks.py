"""What a tendon seemed to be at first is not what was found, and a cut may be told again without a name."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("text", "extent"),
    [
        ("Ring FDP at first sight partially divided. Under the loupe the division is complete.", "complete"),
        ("Ring FDP seemed at first to be completely divided. It was rolled over, so a partial cut.", "partial"),
        ("Ring FDP, 'complete' in the casualty card. At operation partial, and it was repaired.", "partial"),
        ("Ring FDP was thought complete and a suture was opened for it. It is partial only.", "partial"),
        ("A division of the ring FDP was suspected. Sheath opened: FDP intact.", "intact"),
        ("Ring FDP was taken for whole at first sight but turned out to be half cut.", "partial"),
    ],
)
def test_what_the_closer_look_showed_is_told(text: str, extent: str) -> None:
    assert each(text, "extent") == {"ring FDP": extent}


@pytest.mark.parametrize(
    ("text", "extent"),
    [
        ("Ring FDP appeared completely divided. It was repaired with four strands.", "complete"),
        ("Ring FDP was looked at first and was intact.", "intact"),
        ("Both flexors of the ring were looked at and are intact.", "intact"),
        ("Ring FDP was completely divided in the midpalm.", "complete"),
    ],
)
def test_what_was_found_is_told(text: str, extent: str) -> None:
    assert set(each(text, "extent").values()) == {extent}


def test_ends_that_only_looked_crushed_are_not_told_so() -> None:
    text = "Ring FDP divided: its ends looked crushed under clot. Once washed the ends were clean."
    assert each(text, "ends") == {"ring FDP": "clean"}


@pytest.mark.parametrize(
    "text",
    [
        "The nerve was bruised. It was partial only.",
        "The A2 pulley was seen. The cut of it was complete.",
        "The operation was complete after 90 minutes.",
    ],
)
def test_a_cut_of_another_thing_is_not_the_tendons(text: str) -> None:
    assert "extent" not in each(f"Ring FDP explored. {text}", "extent")
