"""What a second stage tells of the first, pulleys made new, and places of a repair that are no deed."""

import pytest
from reader_sentences import each

SECOND = "Second stage tendon reconstruction, left index finger. "


@pytest.mark.parametrize(
    "words",
    [
        "Rod placed four months ago (stage one 6 June 2030: rod to the palm, A2 and A4 rebuilt with slips of FDS).",
        "The first stage was carried out in June, at which FDS was excised and A2 and A4 were reconstructed.",
    ],
)
def test_what_the_first_stage_did_is_history(words: str) -> None:
    note = SECOND + words
    assert each(note, "finding", group="pulleys") == {}
    assert each(note, "treatment") == {}


def test_a_stage_told_alone_is_this_operation() -> None:
    note = "Left index finger, stage 1: FDS excised, A2 reconstructed with a slip of it, rod placed."
    assert each(note, "finding", group="pulleys") == {"index A2": "reconstructed"}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("A2: gone except a thin rim.\n4. New A2: FDS strip passed twice round P1.", {"ring A2": "reconstructed"}),
        ("A new A4 pulley made from a strip of palmaris.", {"ring A4": "reconstructed"}),
        ("A new A2 was not needed.", {}),
    ],
)
def test_pulleys_made_new(words: str, finding: dict[str, str]) -> None:
    assert each("Ring finger. FDP divided.\n" + words, "finding", group="pulleys") == finding


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("The suture site glides without impingement in A1.", {}),
        ("Suture zone passes A4 well. A2 was torn and sutured.", {"index A2": "repaired"}),
    ],
)
def test_the_place_of_a_repair_mends_no_pulley(words: str, finding: dict[str, str]) -> None:
    assert each("Index FDP divided and repaired. " + words, "finding", group="pulleys") == finding
