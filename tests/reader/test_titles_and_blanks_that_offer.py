"""Options in the title of a column, and names of a template with a blank behind them: neither tells of a tendon."""

import pytest
from reader_sentences import told

ROWS = "FDS     complete    3-0 Ethibond\nFDP     not seen    -\n"


@pytest.mark.parametrize(
    "titles",
    [
        "Tendon  Status (intact / partial / complete)  Repair",
        "Tendon  Status (intact / partial % / complete)  Repair (yes / no)",
        "Tendon  Found (intact, partial or complete)  Repair",
        "Tendon  Cut (none/partial/complete)  Repair",
    ],
)
def test_what_a_title_offers(titles: str) -> None:
    found = told(f"Small finger.\n\n{titles}\n{ROWS}", "extent", "treatment")
    assert found == {"small FDS": {"extent": "complete", "treatment": "repaired"}}


def test_brackets_of_a_row_are_its_answer() -> None:
    rows = "FDP   cut (complete / clean)   4-strand cruciate 3-0\nFDS   cut (partial / ragged)   left\n"
    assert told(f"Small finger, zone II.\n\n{rows}", "extent") == {
        "small FDP": {"extent": "complete"},
        "small FDS": {"extent": "partial"},
    }


SEWN = "Small finger. FDP completely cut. Repaired with 3-0 Ethibond, modified Kessler"


@pytest.mark.parametrize(
    "blank",
    [
        " x 2 = 4 strands, epitendinous ***.",
        ", *** strands. Epitendinous suture: ***\nGap: ***",
        ", gap ***, glide ***.",
        ", epitendinous ___; gap ___.",
    ],
)
def test_a_name_with_a_blank_behind(blank: str) -> None:
    found = told(SEWN + blank, "peripheral", "gap", "glide", "treatment")
    assert found == {"small FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "filled",
    [
        ". Epitendinous .... 6-0 Prolene.\nGap ......... none",
        ", epitendinous **6-0 Prolene**, gap **none**.",
        ", running epitendinous ***, no gap.",
    ],
)
def test_a_name_with_more_than_a_blank(filled: str) -> None:
    assert told(SEWN + filled, "peripheral", "gap") == {"small FDP": {"peripheral": "present", "gap": "none"}}
