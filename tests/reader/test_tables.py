"""Grids: every filled cell is told with its column title and its row label; an empty cell says nothing."""

import pytest
from reader_sentences import quote_of, told

BARS = """Left hand.

| Finger | Tendon | Zone | Cut | Core | Epitendinous |
| index | FDP | II | complete | 4-0 Ethibond four-strand | 6-0 Prolene running |
| middle | FDP | III | complete | 3-0 nylon | none |
| ring | FDS | II | intact | - | - |
"""

SPACES = """Right hand, saw.

Finger    Tendon    Zone    Extent      Repair                 Peripheral
ring      FDP       II      complete    3-0 Prolene 6 strands  5-0 nylon
small     FDP       I       60 %        4-0 nylon              -
"""


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            BARS,
            {
                "index FDP": {
                    "zone": "II",
                    "extent": "complete",
                    "size": "4-0",
                    "material": "braided polyester",
                    "strands": 4,
                },
                "middle FDP": {"zone": "III", "extent": "complete", "size": "3-0", "material": "nylon"},
                "ring FDS": {"extent": "intact"},
            },
        ),
        (
            SPACES,
            {
                "ring FDP": {
                    "zone": "II",
                    "extent": "complete",
                    "size": "3-0",
                    "material": "polypropylene",
                    "strands": 6,
                },
                "small FDP": {
                    "zone": "I",
                    "extent": "partial",
                    "extent_percent": 60,
                    "size": "4-0",
                    "material": "nylon",
                },
            },
        ),
    ],
    ids=["bars", "columns"],
)
def test_rows_tell_of_their_tendon(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "zone", "extent", "extent_percent", "size", "material", "strands") == expected


def test_the_evidence_stays_in_the_cell() -> None:
    assert quote_of(BARS, "middle FDP", "size") == "3-0"
    assert quote_of(BARS, "index FDP", "strands") == "four-strand"
    assert quote_of(SPACES, "ring FDP", "strands") == "6 strands"


def test_peripheral_cells() -> None:
    shown = told(BARS, "peripheral", "peripheral_size", "peripheral_pattern")
    assert shown["index FDP"] == {"peripheral": "present", "peripheral_size": "6-0", "peripheral_pattern": "running"}
    assert shown["middle FDP"] == {"peripheral": "absent"}
    assert "ring FDS" not in shown
    assert told(SPACES, "peripheral", "peripheral_size") == {
        "ring FDP": {"peripheral": "present", "peripheral_size": "5-0"}
    }


@pytest.mark.parametrize("empty", ["-", "", "n/a", "nil", "--"])
def test_empty_cells_say_nothing(empty: str) -> None:
    note = "Left hand.\n\n| Finger | Tendon | Cut | Core | Epi |\n"
    note += f"| index | FDP | complete | {empty} | {empty} |\n| ring | FDP | complete | 4-0 nylon | 6-0 Prolene |\n"
    shown = told(note, "size", "material", "peripheral", "strands")
    assert set(shown.get("index FDP", {})) <= ({"peripheral"} if empty == "nil" else set())
    assert shown.get("index FDP", {}).get("peripheral") != "present"
    assert shown["ring FDP"]["size"] == "4-0"


@pytest.mark.parametrize("order", [("index", "small"), ("small", "index")])
def test_the_order_of_rows_changes_nothing(order: tuple[str, str]) -> None:
    rows = {"index": "| index | FDP | II | 4-0 nylon |", "small": "| small | FDP | I | 3-0 Prolene |"}
    note = "Right hand.\n\n| Digit | Tendon | Zone | Core |\n" + "\n".join(rows[digit] for digit in order) + "\n"
    assert told(note, "zone", "size") == {
        "index FDP": {"zone": "II", "size": "4-0"},
        "small FDP": {"zone": "I", "size": "3-0"},
    }


@pytest.mark.parametrize(
    ("note", "zones"),
    [
        ("Ring FDP divided, repaired with 4-0 nylon.\n\nZone | 2\n", "II"),
        ("Ring FDP divided, repaired with 4-0 nylon.\n\nZone: IIc\n", "IIC"),
        ("Zone:  1\nRing FDP divided, repaired with 4-0 nylon.\n", "I"),
    ],
)
def test_a_zone_on_a_line_of_its_own(note: str, zones: str) -> None:
    assert told(note, "zone") == {"ring FDP": {"zone": zones}}


@pytest.mark.parametrize(
    "note",
    [
        "Staff on duty:\n\n| Name | Room | Time | Phone |\n| index desk | 4-0 | 3 | 6-0 |\n| ring road | 2 | 4 | 5 |\n",
        "Trays    Count    Checked   By\nring     4        yes       nurse\nindex    6        yes       nurse\n",
    ],
)
def test_grids_of_other_things(note: str) -> None:
    assert told(note) == {}


@pytest.mark.parametrize(
    "head",
    [
        "Repair details        Ring FDP        |  Small FDP        |  Small FDS",
        "Tendons      Ring FDP  |  Small FDP  |  Small FDS",
    ],
)
def test_labels_set_off_by_space_in_a_grid_of_bars(head: str) -> None:
    note = (
        "Ring FDP cut through. Small FDP and FDS cut through.\n\n"
        f"{head}\n"
        "Suture                3-0 Ticron      |  3-0 Ticron        |  4-0 Ticron\n"
        "Strands               4               |  6                 |  2\n"
    )
    counts = {entry: facts.get("strands") for entry, facts in told(note, "strands").items()}
    assert counts == {"ring FDP": 4, "small FDP": 6, "small FDS": 2}


def test_dots_lead_from_a_label_to_its_cells() -> None:
    note = (
        "Ring finger. FDP and FDS cut through.\n\n"
        "TENDON MODULE                       FDP                  FDS\n"
        " Core type ........................ M-Tang               horizontal mattress\n"
        " Strands .......................... 6\n"
        " Suture ........................... 4-0 Prolene loop     4-0 Prolene\n"
        " Epitendinous ..................... 6-0 Prolene          no\n"
    )
    found = told(note, "strands", "stitch", "peripheral")
    assert found["ring FDP"] == {"strands": 6, "stitch": "m-tang", "peripheral": "present"}
    assert found["ring FDS"] == {"stitch": "horizontal mattress", "peripheral": "absent"}


@pytest.mark.parametrize(
    "note",
    [
        "                     RING                   LITTLE\n"
        "how cut              through                through\n"
        "FDP                  cut                    cut\n"
        "fixation FDP         bone anchor in P3,     4-strand Strickland,\n"
        "                     2-0 Orthocord          4-0 Supramid\n"
        "pulleys              A4 vented              A2 vented\n"
        "                     A5 excised\n"
        "tendon ends          clean                  ragged\n",
        "                     Ring                   Small\n"
        "FDP                  divided                divided\n"
        "core FDP             bone anchor,           Strickland,\n"
        "                     2-0 Orthocord          4-0 Supramid\n"
        "                     in P3\n"
        "pulleys              A4 vented              A2 vented\n"
        "                     A5 excised\n"
        "tendon ends          clean                  ragged\n",
    ],
)
def test_a_cell_that_takes_two_lines_stays_under_its_title(note: str) -> None:
    assert told(note, "material") == {"ring FDP": {"material": "polyblend"}, "small FDP": {"material": "nylon"}}
    assert told(note, "ends") == {"ring FDP": {"ends": "clean"}, "small FDP": {"ends": "ragged"}}
    pulleys = told(note, "finding", group="pulleys")
    assert pulleys["ring A5"] == {"finding": "excised"}
    assert "small A5" not in pulleys


@pytest.mark.parametrize(
    "note",
    [
        "5  Side                   L\n"
        "6  Procedure              Re-exploration, tenolysis FDP  ->  Re-repair of FDP\n"
        "7  Findings               FDP of the ring finger came apart. FDS found whole.\n"
        "8  Technique              Core six-strand, 4-0 Ethibond.\n",
        "11  Digit                  ring\n"
        "12  Operation              Repair of FDS slip   ->  Repair of FDP\n"
        "13  Findings               FDP divided. FDS intact.\n"
        "14  Technique              FDP core six-strand, 4-0 Ethibond.\n",
    ],
)
def test_numbered_lines_of_a_form_are_no_grid(note: str) -> None:
    facts = told(note, "strands", "material")
    assert facts == {"ring FDP": {"strands": 6, "material": "braided polyester"}}


def test_titles_told_again_start_another_grid() -> None:
    note = (
        "| Finger | Tendon | Zone | Divided | Core                |\n"
        "| Long   | FDP    | IIB  | 100%    | M-Tang, 4/0 nylon   |\n"
        "| Ring   | FDP    | IIC  | 100%    | Kessler, 3/0 nylon  |\n"
        "| Finger | Pulleys             | Nerves and arteries    |\n"
        "| Long   | A2 proximal half released | UDN cut, 9/0.    |\n"
        "| Ring   | A3 excised. A2 kept.      | RDN cut, 9/0.    |\n"
    )
    pulleys = told(note, "finding", group="pulleys")
    assert pulleys["ring A3"] == {"finding": "excised"}
    assert told(note, "peripheral") == {}


@pytest.mark.parametrize(
    "note",
    [
        "INDEX FDP   strands 4   method Cruciate   thread Prolene 4/0   peripheral Prolene 6/0   knot inside\n"
        "INDEX FDS   none - not repaired\nMIDDLE FDP   none - left\n",
        "RING FDP   strands 6   stitch Savage   core Ethibond 3/0   peripheral PDS 6/0 running   knot buried\n"
        "RING FDS   nil - left\nSMALL FDP   nil - left\n",
    ],
)
def test_a_row_under_no_titles_gives_the_next_rows_no_titles(note: str) -> None:
    assert len(told(note, "strands")) == 1
    assert {facts["treatment"] for facts in told(note, "treatment").values()} == {"repaired", "left"}


@pytest.mark.parametrize(
    "note",
    [
        "PULLEYS\n          A1         A2                      A3         A4\n"
        " index               intact                  released   excised\n"
        " middle   released   vented, distal 4 mm                intact\n",
        "           A1         A2         A3         A4\n"
        "index                 intact     released   excised\n"
        "middle     released   vented                intact\n",
    ],
)
def test_a_row_with_as_many_cells_as_titles_keeps_its_label(note: str) -> None:
    findings = {k: v["finding"] for k, v in told(note, "finding", group="pulleys").items()}
    assert findings == {
        "index A2": "intact",
        "index A3": "released",
        "index A4": "excised",
        "middle A1": "released",
        "middle A2": "vented",
        "middle A4": "intact",
    }


@pytest.mark.parametrize("second", ["both bundles intact", "both digital nerves intact"])
def test_a_long_row_is_no_title_of_the_row_below_it(second: str) -> None:
    note = f"Index and middle FDP cut.\n\n index   radial digital nerve cut through, repaired 9/0\n middle  {second}\n"
    nerves = told(note, "extent", group="injuries")
    assert nerves["middle digital nerve radial"] == nerves["middle digital nerve ulnar"] == {"extent": "intact"}
