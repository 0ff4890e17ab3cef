"""Options of a form with none marked say nothing, however they are set out."""

import pytest
from reader_sentences import told

HEAD = "Left index finger. FDP cut.\n"


@pytest.mark.parametrize(
    "rows",
    [
        "A2 pulley: intact ..... vented ..... repaired .....\nGap: none ..... seen .....",
        "A2 pulley (circle): intact vented repaired\nGap (circle one): none seen",
        "A2 pulley: ( intact )( vented )( repaired )\nGap: ( none )( seen )",
        "A2 pulley: [intact] [vented] [repaired]\nGap: [none] [seen]",
        "A2 pulley: intact, vented, repaired\nGap: none, seen",
        "A2 pulley: -intact -vented -repaired\nGap: -none -seen",
        "A2: intact  vented",
        "Strands: 2  4  6  8\nCore: Kessler  cruciate  Adelaide",
        "A2 intact: n/a\nGap none:\nEnds clean: not stated",
        "@A2 INTACT/VENTED@\n@GAP NONE/SEEN@\n@4/6 STRANDS@",
        "A2 pulley (intact/vented/repaired):\nGap (none/seen):\nStrands (2/4/6):",
    ],
)
def test_nothing_is_said(rows: str) -> None:
    assert told(HEAD + rows) == {}
    assert told(HEAD + rows, group="pulleys") == {}


@pytest.mark.parametrize(
    ("rows", "finding"),
    [
        ("A2 intact, vented distally.", "vented"),
        ("A2: vented, repaired. A4 intact.", "repaired"),
        ("Pulleys: A2 intact  A4 vented", "intact"),
        ("A2 pulley: intact / vented / repaired -> vented", "vented"),
        ("A2 pulley (intact/vented/repaired): vented", "vented"),
    ],
)
def test_what_was_found_stays(rows: str, finding: str) -> None:
    assert told(HEAD + rows, "finding", group="pulleys")["index A2"] == {"finding": finding}


def test_an_answer_behind_the_options() -> None:
    assert told(HEAD + "Strands (2/4/6): 4", "strands") == {"index FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "rows",
    [
        "Strands (2, 4 or 6)\nEpitendinous (yes or no)\nA2 (intact, vented or released)",
        "Please circle: A2 intact, A2 vented, A2 released.",
        "Remember to record: number of strands, peripheral suture, gap, A2 intact or vented.",
        "Quality targets: 4 strands or more, purchase 10 mm, epitendinous, no gap, free glide.",
        "Strands: 4 (default)\nGap: none (default)",
        "This form: please state whether A2 was intact and whether there was a gap.",
        "Legend: C complete, P partial, I intact",
    ],
)
def test_what_only_asks_says_nothing(rows: str) -> None:
    assert told(HEAD + rows) == {}
    assert told(HEAD + rows, group="pulleys") == {}


def test_states_beside_an_arrow_are_no_options() -> None:
    facts = told("Left ring finger. RDN crushed, in continuity -> left. UDN cut.", "extent", group="injuries")
    assert facts["ring digital nerve radial"] == {"extent": "contused"}
