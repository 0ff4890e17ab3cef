"""A repair that could not be made, or that a form's lines say was none, is no repair."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "A primary repair not being possible, I took the palmaris longus and put it in as a graft.",
        "Delayed primary repair no longer being an option, I raised the palmaris longus and put it in as a graft.",
        "Since a direct repair was not feasible, the palmaris longus was taken and used as a graft.",
    ],
)
def test_a_repair_that_could_not_be_made(words: str) -> None:
    found = each(f"Left ring finger. FDP ruptured in zone II. {words}", "treatment")
    assert found == {"ring FDP": "grafted"}


def test_a_primary_repair_that_was_made() -> None:
    note = "Left ring finger. FDP completely cut in zone II. Primary repair of the FDP with 4-0 nylon, four strands."
    assert each(note, "treatment") == {"ring FDP": "repaired"}


@pytest.mark.parametrize(
    "lines",
    ["Repair of FDS\n  treatment   : [x] none, edges trimmed", "FDS repair:\n  method: none, left alone"],
)
def test_a_title_whose_line_says_none(lines: str) -> None:
    note = f"Left middle finger.\nFDS (middle): partial cut, 30 %, zone IIC\n{lines}\n"
    assert "repaired" not in each(note, "treatment").values()


def test_a_title_whose_line_says_how() -> None:
    note = "Left middle finger.\nFDS (middle): cut, zone IIC\nRepair of FDS\n  method: horizontal mattress, 4-0 nylon\n"
    assert each(note, "treatment") == {"middle FDS": "repaired"}


CUT = "Right ring finger. FDP cut, repaired with 4-0 Prolene.\n"


@pytest.mark.parametrize(
    "orders",
    [
        "Splint   : dorsal blocking    Wrist: 10      MCP: 60     IP: 0\nWeeks    : 6\n",
        "20 Splint ....... dorsal blocking\n21 Wrist ....... 10\n22 MCP ...... 40\n23 IP ..... 0\n24 Weeks ..... 6\n",
        "27 Splint .. dorsal blocking, wrist 10, MCP 45, IP 0       28 weeks .. 6\n",
        "A dorsal blocking slab was put on, wrist 10, IP joints at 0. It stays for six weeks.",
        "Dorsal splint applied, wrist neutral, IP joints at 0. This is kept for 6 weeks.",
    ],
)
def test_weeks_of_the_splint_told_before(orders: str) -> None:
    found = told(CUT + orders, "splint_weeks", "ip_flexion_deg", group="aftercare")
    assert found == {"": {"splint_weeks": (6, 6), "ip_flexion_deg": (0, 0)}}


def test_weeks_of_a_button() -> None:
    note = CUT + "Dorsal splint applied, wrist neutral. The button on the nail stays for six weeks."
    assert told(note, "splint_weeks", group="aftercare") == {}
