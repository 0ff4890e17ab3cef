"""A name with its gloss in brackets is one name, and its brackets end no clause."""

import pytest
from reader_sentences import each

SEWN = "It was repaired with a four-strand cruciate of 3-0 Ethibond. No gap."


@pytest.mark.parametrize(
    ("profundus", "superficialis"),
    [
        ("flexor digitorum profundus (FDP)", "flexor digitorum superficialis (FDS)"),
        ("FDP (flexor digitorum profundus)", "FDS (flexor digitorum superficialis)"),
        ("FDP (profundus)", "FDS (superficialis)"),
        ("flexor digitorum profundus (FDP)", "FDS"),
    ],
)
def test_a_gloss_behind_a_tendon(profundus: str, superficialis: str) -> None:
    note = f"Ring finger. The {profundus} was completely divided and the {superficialis} was intact. {SEWN}"
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}
    assert each(note, "strands") == {"ring FDP": 4}


def test_a_gloss_behind_a_pulley() -> None:
    note = "Ring FDP cut through. The A2 (A2 pulley) was intact and the A4 pulley (A4) was vented 2 mm."
    assert each(note, "finding", group="pulleys") == {"ring A2": "intact", "ring A4": "vented"}


def test_a_gloss_behind_a_nerve() -> None:
    note = "Ring. The ulnar digital nerve (UDN) was divided and the radial digital nerve (RDN) was intact."
    found = each(note, "extent", group="injuries")
    assert found == {"ring digital nerve ulnar": "complete", "ring digital nerve radial": "intact"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. The FDP (at A2) was completely divided.",
        "Ring finger. The FDP was completely divided (FDS intact).",
        "Ring finger. FDP (zone II) completely divided, FDS (both slips) intact.",
    ],
)
def test_an_aside_in_brackets_is_no_gloss(note: str) -> None:
    found = each(note, "extent")
    assert found.get("ring FDP") == "complete"
    assert found.get("ring FDS") in (None, "intact")
