"""What is told of a kind of tendon, or of both or all fingers, under no finger of its own."""

import pytest
from reader_sentences import each, told

THREE = (
    "Left middle, ring and little fingers, zone II. FDP of the middle, ring and little fingers completely divided. FDS "
    "of the middle and little fingers completely divided. FDP of all three: locked cruciate of 3-0 Ethibond. "
    "Middle FDS modified Kessler of 4-0 Ethibond. Little FDS modified Kessler of 4-0 Ethibond. "
)


def test_knots_of_each_kind() -> None:
    knots = each(THREE + "Knots: buried in FDP, outside in FDS.", "knot")
    assert {name: place for name, place in knots.items() if name.endswith("FDP")} == {
        "middle FDP": "buried",
        "ring FDP": "buried",
        "small FDP": "buried",
    }
    assert {name: place for name, place in knots.items() if name.endswith("FDS")} == {
        "middle FDS": "external",
        "small FDS": "external",
    }


@pytest.mark.parametrize("words", ["\n\nEDGE\n6-0 Prolene, running locking, on the three FDPs. FDS none."])
def test_an_edge_is_the_peripheral_suture(words: str) -> None:
    edges = told(THREE + words, "peripheral", "peripheral_size", "size")
    assert {name: facts["peripheral"] for name, facts in edges.items()} == {
        "middle FDP": "present",
        "ring FDP": "present",
        "small FDP": "present",
        "middle FDS": "absent",
        "small FDS": "absent",
    }
    assert edges["middle FDP"] == {"peripheral": "present", "peripheral_size": "6-0", "size": "3-0"}


@pytest.mark.parametrize(
    ("words", "pulleys"),
    [
        ("C2 and A3 of all three opened.", ["A3", "C2"]),
        ("A3 of all three vented.", ["A3"]),
    ],
)
def test_pulleys_of_all_three(words: str, pulleys: list[str]) -> None:
    found = each(THREE + words, "finding", group="pulleys")
    assert found == {f"{d} {p}": "vented" for d in ("middle", "ring", "small") for p in pulleys}


@pytest.mark.parametrize("words", ["Same core for both of them", "A core was put in for both of them"])
def test_both_of_them(words: str) -> None:
    note = (
        "Right palm and thumb, zone III. FPL completely transected. Index profundus completely transected. Index FDS a "
        "scratch, 10%, nothing done to it. The FPL proximal end had run off into the carpal tunnel. "
    )
    assert each(f"{note}{words}: 3-0 looped nylon, six strands.", "strands") == {"index FDP": 6, "thumb FPL": 6}
