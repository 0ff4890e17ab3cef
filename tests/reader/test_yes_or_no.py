"""Labels that ask for yes or no, in every way a form asks."""

import pytest
from reader_sentences import told

RING = "Ring finger FDP repaired.\n"


@pytest.mark.parametrize(
    ("form", "expected"),
    [
        ("Gap? .. N   Thick? .. Y   Tight? .. N", {"gap": "none", "bulk": "present"}),
        ("21 Thick? .. Y        22 Gap? .. N", {"gap": "none", "bulk": "present"}),
        ("Gap (Y/N): N\nBulky (Y/N): Y", {"gap": "none", "bulk": "present"}),
        ("Gap after five active fists? .. N\nBulky? Y", {"gap": "none", "bulk": "present"}),
        ("Gapping on the table? [ ] Y [x] N\nBulky? [x] Y [ ] N", {"gap": "none", "bulk": "present"}),
    ],
)
def test_what_a_form_asks_is_told_by_its_answer(form: str, expected: dict[str, str]) -> None:
    assert told(RING + form, "gap", "bulk") == {"ring FDP": expected}


@pytest.mark.parametrize("mark", [": N", "? no", " (Y/N): N", "    N", " Y/N: N", "? .. N"])
def test_no_pulley_is_opened_by_a_no(mark: str) -> None:
    found = told(f"{RING}A2 vented: Y\nA4 vented{mark}\n", group="pulleys")
    assert {name: facts["finding"] for name, facts in found.items()} == {"ring A2": "vented"}


@pytest.mark.parametrize(
    ("form", "field"),
    [
        ("Knots buried: N", "knot"),
        ("Looped suture? no", "looped"),
        ("Locked: N", "hold"),
        ("Active test: N", "test"),
        ("Tested actively? no", "test"),
    ],
)
def test_a_no_tells_nothing_good(form: str, field: str) -> None:
    assert field not in told(RING + form)["ring FDP"]


@pytest.mark.parametrize("form", ["FDS excised: N", "FDS tenodesed? no", "FDS divided: N"])
def test_a_no_tells_no_deed(form: str) -> None:
    assert not {"treatment", "extent"} & told(RING + form).get("ring FDS", {}).keys()


@pytest.mark.parametrize("form", ["RDN cut: N\nUDN cut: Y", "RDN divided? no\nUDN divided? yes"])
def test_a_no_cuts_no_nerve(form: str) -> None:
    assert told(RING + form, "extent", group="injuries") == {"ring digital nerve ulnar": {"extent": "complete"}}


def test_a_no_that_goes_on_in_the_next_line_is_no_answer() -> None:
    note = f"{RING}The finger was put through its range under steady traction on the repair: no\ngap."
    assert told(note, "gap") == {"ring FDP": {"gap": "none"}}
