"""Threads too thin for a tendon, and lines of arrows that begin in small letters: what is told there is of a nerve."""

import pytest
from reader_sentences import each, told

RING = "Ring FDP cut through, cruciate 4-0 nylon.\n"


@pytest.mark.parametrize(
    "line",
    ["n. -> 3 x 9/0 Ethilon, no tension, no graft", "n. sutured 10-0 nylon, tension-free", "8-0 x 4, no tension"],
)
def test_no_tension_in_the_thread_of_a_nerve(line: str) -> None:
    assert "tension" not in told(RING + line)["ring FDP"]


@pytest.mark.parametrize("line", ["No tension.", "6-0 nylon round it, no tension"])
def test_no_tension_of_the_tendon(line: str) -> None:
    assert each(RING + line, "tension") == {"ring FDP": "none"}


@pytest.mark.parametrize("name", ["common digital n.", "common dig n.", "comm. dig. nerve"])
def test_a_common_nerve_in_short_on_a_line_of_its_own(name: str) -> None:
    note = (
        f"Middle FDP divided. {name} 3rd web cut.\n FDP MF -> Kessler 4/0 Prolene, + running 6/0 Prolene\n"
        f" {name} -> 9/0 end to end"
    )
    assert told(note, group="injuries") == {"common digital nerve": {"extent": "complete", "treatment": "repaired"}}
    assert each(note, "peripheral") == {"middle FDP": "present"}
