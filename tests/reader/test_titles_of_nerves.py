"""Rows of nerves and arteries named by a side alone, below a title that has their noun."""

import pytest
from reader_sentences import told

from notereader.reader.text.shared_titles import shared_titles

WRIST = "Zone V, right wrist. FCU cut 75%.\n\n"
FOUND = {
    "median nerve": "intact",
    "ulnar nerve": "complete",
    "radial artery": "intact",
    "ulnar artery": "complete",
}


@pytest.mark.parametrize(
    "rows",
    [
        "Nerve    Status     Repair\nMedian   intact     -\nUlnar    complete   9-0 nylon\n\n"
        "Artery   Status     Repair\nRadial   intact     -\nUlnar    complete   ligated\n",
        "NERVES   | FOUND    | DONE\nMedian   | intact   | -\nUlnar    | cut      | 9-0 nylon\n\n"
        "ARTERIES | FOUND    | DONE\nRadial   | ok       | -\nUlnar    | cut      | tied\n",
        "Nerves\n Median: intact\n Ulnar: cut, sutured with 9-0\nArteries\n Ulnar: cut, tied\n Radial: intact\n",
        "Nerves:\n- median: whole\n- ulnar: cut, 9-0\nVessels:\n- radial: whole\n- ulnar: cut, tied\n",
    ],
)
def test_rows_below_a_title(rows: str) -> None:
    found = told(WRIST + rows, "extent", "treatment", group="injuries")
    assert {name: facts["extent"] for name, facts in found.items()} == FOUND
    assert (found["ulnar nerve"]["treatment"], found["ulnar artery"]["treatment"]) == ("repaired", "ligated")
    assert told(WRIST + rows, "extent", "treatment") == {"FCU": {"extent": "partial"}}


def test_sides_of_a_finger() -> None:
    rows = "Nerve    found    done\nRadial   cut      9-0 nylon\nUlnar    intact   -\n"
    found = told("Ring finger, zone II. FDP cut 100%.\n\n" + rows, "extent", group="injuries")
    assert found == {
        "ring digital nerve radial": {"extent": "complete"},
        "ring digital nerve ulnar": {"extent": "intact"},
    }


@pytest.mark.parametrize("head", ["FDS slips", "Slips of superficialis", "\nSides of the wound"])
def test_what_follows_under_another_head_is_no_nerve(head: str) -> None:
    note = f"Ring finger, zone II. FDP cut 100%.\nNerves\n Radial: ok\n Ulnar: ok\n{head}\n radial: cut\n ulnar: ok\n"
    written = shared_titles(note)
    assert [part.words for part in written] == [" nerve", " nerve"]
    assert max(part.i for part in written) < note.index(head)
