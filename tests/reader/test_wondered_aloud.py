"""A question its writer answers with a no at the end of a line: what stands before it was told all the same."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "text",
    [
        "FDP ring: zone 1, 100%, ends chewed -> 3 mm off each side? no, 5 in all. Sewn with 4-0 Ticron.",
        "FDP ring zone 1, 100%, ends ragged -> trim? no, sutured with 4-0 Ticron as they were.",
    ],
)
def test_told_before_the_arrow(text: str) -> None:
    found = told(text, "zone", "extent", "ends", "size")["ring FDP"]
    assert found == {"zone": "I", "extent": "complete", "ends": "ragged", "size": "4-0"}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Core 4-0 Ethibond, Kessler? no, Adelaide.", {"size": "4-0", "stitch": "adelaide"}),
        (
            "Core 4-0 Ethibond + epi 6-0 Prolene, mattress? -> no, over-and-over",
            {"size": "4-0", "peripheral": "present"},
        ),
    ],
)
def test_the_make_alone_is_asked(text: str, found: dict[str, object]) -> None:
    entry = told("FDP ring finger cut. " + text, "size", "stitch", "peripheral")["ring FDP"]
    assert {field: entry[field] for field in found} == found


@pytest.mark.parametrize(
    "text", ["FDP ring repaired with 4-0 nylon, no gap, glides free? no.", "FDP ring repaired -> glides free? no"]
)
def test_what_was_asked_is_not_told(text: str) -> None:
    assert "glide" not in told(text).get("ring FDP", {})
