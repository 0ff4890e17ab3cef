"""What lies at a tendon is no part of it, and what is put around it need not be a suture."""

import pytest
from reader_sentences import each, told

HEAD = "Left ring finger FDP cut completely. "
CORE = " Core: four strands of 3-0 Ethibond."


@pytest.mark.parametrize(
    "text",
    [
        "Scar around the FDP was excised.",
        "Glass fragments next to the FDP were removed.",
        "A foreign body between FDS and FDP was removed.",
        "The tenosynovium of the FDP was trimmed.",
        "The lumbrical to the FDP was excised.",
    ],
)
def test_what_was_taken_away_at_a_tendon_leaves_it_repaired(text: str) -> None:
    assert told(HEAD + text + CORE, "treatment", "strands") == {"ring FDP": {"treatment": "repaired", "strands": 4}}


@pytest.mark.parametrize(
    "text",
    [
        "Adhesions between FDP and FDS were divided.",
        "The fascia over the FDS was completely divided.",
        "Vessels beside the FDS were coagulated and divided.",
        "The chiasm of the FDS was divided.",
    ],
)
def test_what_was_divided_at_a_tendon_cuts_no_tendon(text: str) -> None:
    assert told(HEAD + text + CORE, "extent", "strands") == {"ring FDP": {"extent": "complete", "strands": 4}}


def test_a_tendon_that_was_cut_is_still_read_as_cut() -> None:
    text = "The scar was opened and the FDS found divided completely. Bad tissue was cut from the FDP."
    assert each(HEAD + text, "extent") == {"ring FDP": "complete", "ring FDS": "complete"}


@pytest.mark.parametrize(
    "text",
    [
        "Scarring around the FDP was cleared.",
        "A loop was passed round the FDP to pull it through.",
        "The sheath was closed around the FDP with 6-0 Vicryl.",
        "A fat graft was laid around the FDP and held with 6-0 Vicryl.",
        "A tagging suture of 4-0 nylon was passed round the FDP.",
    ],
)
def test_something_around_a_tendon_is_no_peripheral_suture(text: str) -> None:
    assert each(HEAD + text + CORE, "peripheral") == {}


@pytest.mark.parametrize("text", ["Around the FDP: 6-0 running.", "A continuous 6/0 went round the FDP."])
def test_a_suture_around_a_tendon_is_one(text: str) -> None:
    assert each(HEAD + CORE + " " + text, "peripheral") == {"ring FDP": "present"}
