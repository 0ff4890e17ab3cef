"""Grids with bars whose cells take two lines, headed by fingers of any name: every cell is of the finger of its row."""

import pytest
from reader_sentences import each, told

_NAMES = (
    ("2", "3", "4", "5"),
    ("II", "III", "IV", "V"),
    ("index", "middle", "ring", "small"),
    ("D2", "D3", "D4", "D5"),
    ("IF", "MF", "RF", "LF"),
)
_ROWS = (
    ("complete; Kessler\n4-0 Ethibond", "complete; Pennington 4-0\nEthibond", "both intact", "ulnar artery\ntied"),
    ("complete; resected", "80 %; Pennington 4-0 Ethibond", "radial: repaired\nulnar: intact", "not inspected"),
    ("70 % radial slip;\nKessler 4-0 PDS", "complete; Pennington 4-0\nEthibond", "radial cut, ulnar ok", "both intact"),
    ("intact", "complete; Pennington 4-0\nEthibond", "not seen", "radial tied"),
)


def _grid(head: str, names: tuple[str, ...]) -> str:
    lines = [[head, "FDS", "FDP", "nerves", "vessels"]]
    for name, row in zip(names, _ROWS, strict=True):
        cells = [name, *row]
        deepest = max(cell.count("\n") for cell in cells)
        lines += [[(*cell.split("\n"), "", "")[n] for cell in cells] for n in range(deepest + 1)]
    drawn = "\n".join("| " + " | ".join(cell.ljust(30) for cell in line) + " |" for line in lines)
    return f"Left hand, zone II throughout\n\n{drawn}\n"


@pytest.mark.parametrize("head", ["digit", "finger", "ray"])
@pytest.mark.parametrize("names", _NAMES)
def test_cells_over_two_lines(names: tuple[str, ...], head: str) -> None:
    note = _grid(head, names)
    assert each(note, "extent") == {
        "index FDS": "complete",
        "index FDP": "complete",
        "middle FDS": "complete",
        "middle FDP": "partial",
        "ring FDS radial": "partial",
        "ring FDP": "complete",
        "small FDS": "intact",
        "small FDP": "complete",
    }
    assert set(each(note, "material").values()) == {"braided polyester", "polydioxanone"}
    assert each(note, "stitch")["ring FDS radial"] == "kessler"
    assert told(note, group="injuries") == {
        "index digital nerve radial": {"extent": "intact"},
        "index digital nerve ulnar": {"extent": "intact"},
        "index digital artery ulnar": {"treatment": "ligated"},
        "middle digital nerve radial": {"treatment": "repaired"},
        "middle digital nerve ulnar": {"extent": "intact"},
        "ring digital nerve radial": {"extent": "complete"},
        "ring digital nerve ulnar": {"extent": "intact"},
        "ring digital artery radial": {"extent": "intact"},
        "ring digital artery ulnar": {"extent": "intact"},
        "small digital artery radial": {"treatment": "ligated"},
    }


def test_numbers_that_head_no_fingers() -> None:
    note = "| step | FDS | FDP |\n| 2 | complete | complete |\n|   | Kessler | |\n| 3 | intact | complete |\n"
    assert not any(name.startswith(("index", "middle")) for name in told("Ring finger.\n\n" + note))
