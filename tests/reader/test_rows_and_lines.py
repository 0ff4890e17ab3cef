"""Rows in columns, cells between bars, rows of unknown label, and lines that go on."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "| Tendon | Index | Middle |\n| FDP | complete | |\n| FDS | | complete |\n",
            {"index FDP": "complete", "middle FDS": "complete"},
        ),
        (
            "| Tendon | Ring | Small |\n| FDP | | completely divided |\n| FDS | intact | intact |\n",
            {"small FDP": "complete", "ring FDS": "intact", "small FDS": "intact"},
        ),
    ],
)
def test_cells_between_bars(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "          Index       Ring\n"
            "FDP       complete    complete\n"
            "FDS       intact      complete\n"
            "Nail bed  intact      intact\n",
            {"index FDP": "complete", "ring FDP": "complete", "index FDS": "intact", "ring FDS": "complete"},
        ),
        (
            "          Ring        Small\n"
            "FDP       complete    complete\n"
            "FDS       complete    intact\n"
            "Vincula   torn        intact\n",
            {"ring FDP": "complete", "small FDP": "complete", "ring FDS": "complete", "small FDS": "intact"},
        ),
        (
            "          Index       Small\n"
            "FDP       complete    complete\n"
            "FDS       intact      complete\n"
            "Palmaris fascia   intact      intact\n",
            {"index FDP": "complete", "small FDP": "complete", "index FDS": "intact", "small FDS": "complete"},
        ),
    ],
)
def test_a_row_of_another_structure_tells_of_no_tendon(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger.\n"
            "Structure    Extent      Done\n"
            "FDP          complete    4-strand 3-0 Ethibond\n"
            "FDS          intact      -\n"
            "UDN          complete    9-0 nylon\n",
            {"ring FDP": "complete", "ring FDS": "intact"},
        ),
        (
            "Left index finger.\n"
            "Tendon       Found       Remark\n"
            "FDP          complete    sewn, 4-0 Prolene\n"
            "FDS          60%         smoothed\n"
            "RDN          intact      -\n",
            {"index FDP": "complete", "index FDS": "partial"},
        ),
    ],
)
def test_a_row_that_goes_without_a_title_for_its_findings(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["extent"] for entry, facts in told(note, "extent").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP completely divided and repaired with four strands of 3-0 Ethibond. On "
            "traction a gap of\n"
            "2 mm at the back of the join.\n",
            {"index FDP": {"gap": "seen", "gap_mm": 2}},
        ),
        (
            "Right small finger. FDP completely divided and repaired with a 3-0 Ethibond Kessler. Pulled on, "
            "it gapped by\n"
            "1 mm only.\n",
            {"small FDP": {"gap": "seen", "gap_mm": 1}},
        ),
    ],
)
def test_a_line_that_begins_with_a_length_goes_on(note: str, expected: Shown) -> None:
    assert told(note, "gap", "gap_mm") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger, FDP completely divided.\n\nCore : 3-0 Ethibond    strands : 4    type : ..........\n",
            {"ring FDP": {"strands": 4, "size": "3-0"}},
        ),
        (
            "Index finger, FDP completely divided.\n\nCore : 4-0 Prolene    strands : 6    knot : ..........\n",
            {"index FDP": {"strands": 6, "size": "4-0"}},
        ),
    ],
)
def test_a_form_with_one_blank(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "stitch") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Theatre:\nRing FDP completely divided. Repaired with a four-strand cruciate of 3-0 Ethibond.\n",
            {"ring FDP": {"extent": "complete", "strands": 4}},
        ),
        (
            "OPERATING THEATRE\nIndex FDP severed, sewn with a six-strand Savage of 4-0 Prolene.\n",
            {"index FDP": {"extent": "complete", "strands": 6}},
        ),
    ],
)
def test_under_the_theatre_heading(note: str, expected: Shown) -> None:
    assert told(note, "extent", "strands") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index FDP completely divided.\nRing FDP completely divided.\nSmall FDS intact.\nEnds sharp.\n",
            {"index FDP": "clean", "ring FDP": "clean"},
        ),
        (
            "Middle FDP cut through.\nSmall FDP cut through.\nAll of the ends were ragged.\n",
            {"middle FDP": "ragged", "small FDP": "ragged"},
        ),
    ],
)
def test_ends_under_a_list(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["ends"] for entry, facts in told(note, "ends").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP completely divided. The superficialis is intact. The ends looked ragged.",
            {"ring FDP": "ragged"},
        ),
        (
            "Ring finger. FDP completely divided with ragged ends; FDS intact.",
            {"ring FDP": "ragged"},
        ),
        (
            "Index finger. FDP cut through, FDS intact. The ends of the profundus were clean.",
            {"index FDP": "clean"},
        ),
    ],
)
def test_ends_are_not_of_a_whole_tendon(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["ends"] for entry, facts in told(note, "ends").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP and FDS completely divided. FDS was excised. The ends were clean.",
            {"ring FDP": "clean"},
        ),
        (
            "Small finger. FDP and FDS cut through. The FDS was resected. Ends ragged.",
            {"small FDP": "ragged"},
        ),
    ],
)
def test_ends_are_not_of_a_tendon_taken_out(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["ends"] for entry, facts in told(note, "ends").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "The sheath was closed with two 5-0 PDS sutures ahead of the tendon.",
            {"ring FDP": "3-0"},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Sheath: 6-0 nylon in front of the FDP.",
            {"ring FDP": "3-0"},
        ),
    ],
)
def test_a_sheath_closed_ahead_of_the_tendon(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["size"] for entry, facts in told(note, "size").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. \n"
            "\n"
            "Shut: 4-0 nylon.\n",
            {"ring FDP": "3-0"},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. \n"
            "\n"
            "SHUTTING\n"
            "5-0 Prolene to skin.\n",
            {"ring FDP": "3-0"},
        ),
    ],
)
def test_closure_is_no_core(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["size"] for entry, facts in told(note, "size").items()}
    assert found == expected
