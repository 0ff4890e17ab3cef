"""An inventory of what was cut, then what was done told of all of it, of one kind or of one tendon alone."""

import itertools

import pytest
from reader_sentences import Shown, told

_DEEP = ("middle FDP", "ring FDP")
_ALL = (*_DEEP, "middle FDS")
# What was cut is the same in each: both tendons of the middle finger and the deep one of the ring.
_CUT = {
    "lines by finger": "MIDDLE  zone 2. FDP 100%. FDS 100%.\nRING  zone 2. FDP 100%. FDS intact.",
    "prose by finger": "Middle: FDP completely cut, FDS completely cut. Ring: FDP completely cut, FDS intact.",
    "numbered": "1. FDP middle - complete\n2. FDS middle - complete\n3. FDP ring - complete\n4. FDS ring - intact",
    "list": "FDP middle, FDP ring and FDS middle all completely divided; FDS ring intact.",
    "both flexors": "In the middle finger both flexors were completely divided. In the ring the FDP was completely "
    "divided and the FDS was intact.",
    "grid": "          FDP        FDS\nMiddle    complete   complete\nRing      complete   intact",
    "by tendon": "FDP: MF complete, RF complete. FDS: MF complete, RF intact.",
}
_TWO, _FOUR = "2-strand Kirchmayr 4-0 Prolene", "4-strand cruciate 3-0 Prolene"
_A: dict[str, object] = {"stitch": "kirchmayr", "strands": 2, "size": "4-0", "material": "polypropylene"}
_B: dict[str, object] = {"stitch": "cruciate", "strands": 4, "size": "3-0", "material": "polypropylene"}
_SEWN: list[tuple[str, dict[str, object], dict[str, object]]] = [
    (f"All three: {_TWO}.", _A, _A),
    (f"All were repaired with a {_TWO}.", _A, _A),
    ("All tendons were repaired with a two-strand Kirchmayr of 4-0 Prolene.", _A, _A),
    (f"Each cut tendon took a {_TWO}.", _A, _A),
    (f"Three repairs done, all {_TWO}.", _A, _A),
    (f"Both FDP: {_FOUR}; FDS middle: {_TWO}.", _B, _A),
    (f"FDP x 2: {_FOUR}. FDS x 1: {_TWO}.", _B, _A),
    (f"The profundi were each repaired with a {_FOUR}, the superficialis with a {_TWO}.", _B, _A),
    (f"Core, both deep tendons: {_FOUR}. Core, superficial tendon: {_TWO}.", _B, _A),
]
_EDGES: list[tuple[str, str, str | None]] = [
    ("Middle FDP + ring FDP also: 6/0 PDS epitendinous, running. Middle FDS: core only.", "present", "absent"),
    ("Running 6-0 PDS epitendinous to both FDPs; none on the FDS.", "present", "absent"),
    ("All three then had a running epitendinous 6-0 PDS.", "present", "present"),
    ("Peripheral: 6-0 PDS running x 3.", "present", "present"),
    ("Peripheral: FDP x2 running 6-0 PDS, FDS nil.", "present", "absent"),
]


def _note(cut: str, *rest: str) -> str:
    return "\n".join(("Left hand, zone 2.", cut, *rest))


@pytest.mark.parametrize(("sewn", "deep", "superficial"), _SEWN)
@pytest.mark.parametrize("cut", _CUT.values(), ids=_CUT)
def test_sutures_of_all_and_of_a_kind(
    cut: str, sewn: str, deep: dict[str, object], superficial: dict[str, object]
) -> None:
    assert told(_note(cut, sewn), *_A) == {**dict.fromkeys(_DEEP, deep), "middle FDS": superficial}


@pytest.mark.parametrize(("edges", "deep", "superficial"), _EDGES)
def test_edge_sutures_of_all_and_of_a_kind(edges: str, deep: str, superficial: str) -> None:
    missed = []
    for cut, (sewn, *_) in itertools.product(_CUT.values(), _SEWN):
        found = told(_note(cut, sewn, edges), "peripheral")
        if found != {**{name: {"peripheral": deep} for name in _DEEP}, "middle FDS": {"peripheral": superficial}}:
            missed.append((cut, sewn, found))
    assert not missed


@pytest.mark.parametrize(
    ("results", "expected"),
    [
        ("Gap: nil x 3. Glide: free x 3.", {"gap": "none", "glide": "free"}),
        ("No gap in any of the repairs, free glide throughout.", {"gap": "none", "glide": "free"}),
        ("Gap 0 x 3. Tension nil x3. Bulk none x 3.", {"gap": "none", "tension": "none", "bulk": "none"}),
    ],
)
@pytest.mark.parametrize("edges", [_EDGES[0][0], _EDGES[1][0], _EDGES[3][0]])
@pytest.mark.parametrize("cut", _CUT.values(), ids=_CUT)
def test_results_counted(cut: str, edges: str, results: str, expected: dict[str, object]) -> None:
    found = told(_note(cut, _SEWN[1][0], edges, results), "gap", "glide", "tension", "bulk")
    assert found == dict.fromkeys(_ALL, expected)


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Middle FDP: four-strand cruciate, core only.", "absent"),
        ("Middle FDP: four-strand cruciate of 3-0 Prolene (core suture only).", "absent"),
        ("Middle FDP: four-strand cruciate. Tested with core only, no gap. Running 6-0 Prolene edge added.", "present"),
        ("Middle FDP: four-strand cruciate. The core only was locked. Running epitendinous 6-0.", "present"),
        ("Middle FDP: four-strand cruciate of 3-0 Prolene.", None),
    ],
)
def test_core_only(note: str, expected: str | None) -> None:
    found: Shown = told("Left hand. " + note, "peripheral")
    assert found.get("middle FDP", {}).get("peripheral") == expected


def test_three_stitches_are_no_three_tendons() -> None:
    note = _note(_CUT["list"], _SEWN[0][0], "The middle FDP was then trimmed. Epitendinous: 6-0 PDS interrupted x 3.")
    assert set(told(note, "peripheral")) != set(_ALL)
