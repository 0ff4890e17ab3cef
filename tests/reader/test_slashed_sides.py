"""Sides told one after the other across a slash, each with its own state."""

import pytest
from reader_sentences import told

RADIAL, ULNAR = "small digital nerve radial", "small digital nerve ulnar"
SEWN = {"extent": "complete", "treatment": "repaired"}


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("nerves    : rad complete -> 9-0 / uln contused", {RADIAL: SEWN, ULNAR: {"extent": "contused"}}),
        ("Nerves: radial cut, sutured 9-0 / ulnar intact", {RADIAL: SEWN, ULNAR: {"extent": "intact"}}),
        ("nerves: uln cut -> 9-0 / rad intact", {RADIAL: {"extent": "intact"}, ULNAR: SEWN}),
        ("nerves: rad not found / uln complete -> 9-0", {ULNAR: SEWN}),
        ("RDN cut -> 9-0 / UDN contused", {RADIAL: SEWN, ULNAR: {"extent": "contused"}}),
    ],
)
def test_each_side_has_its_own(line: str, expected: dict[str, dict[str, object]]) -> None:
    found = told(f"SMALL finger, zone II. FDP cut.\n{line}\n", "extent", "treatment", group="injuries")
    assert found == expected


@pytest.mark.parametrize("line", ["RDN / UDN intact", "Nerves: radial / ulnar: both intact"])
def test_two_sides_of_one_statement(line: str) -> None:
    found = told(f"SMALL finger, zone II. FDP cut.\n{line}\n", "extent", group="injuries")
    assert found == {RADIAL: {"extent": "intact"}, ULNAR: {"extent": "intact"}}


def test_slips_across_a_slash() -> None:
    note = "Index finger. FDS: radial slip sewn with 4-0 PDS / ulnar slip excised."
    assert told(note, "treatment") == {
        "index FDS radial": {"treatment": "repaired"},
        "index FDS ulnar": {"treatment": "excised"},
    }
