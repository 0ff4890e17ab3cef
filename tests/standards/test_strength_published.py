"""The strength model against published bench constructs that did not set its figures.

Sources stand beside each construct in published_repairs.toml. Run with `-s` to see the tables.
"""

import re
import tomllib
from math import exp, log
from pathlib import Path
from statistics import fmean, stdev
from typing import Any

import pytest
from strength_middle import middle_of

from notereader.appraisal.construct import Construct
from notereader.appraisal.strength import strength_of
from notereader.appraisal.strength_tables import strength_tables

ROWS: list[dict[str, Any]] = tomllib.loads(
    (Path(__file__).parent / "published_repairs.toml").read_text(encoding="utf-8")
)["construct"]
BREAKING = [row for row in ROWS if "breaking" in row]
GAPS = [row for row in ROWS if "gap" in row]


def construct(row: dict[str, Any]) -> Construct:
    known = ("strands", "size", "material", "hold", "peripheral", "pattern")
    return Construct.bench(**{name: row[name] for name in known if name in row})


def inside(row: dict[str, Any], kind: str) -> bool:
    shown = strength_of(construct(row), 0, row.get("bend_deg", 0))
    force = shown.breaking if kind == "breaking" else shown.gap
    return bool(force.low <= row[kind] <= force.high)


def ratios() -> list[float]:
    return [middle_of(construct(row), row.get("bend_deg", 0)) / row["breaking"] for row in BREAKING]


def ratio_table() -> str:
    """Return model, range and ratio for every construct, with geometric mean and spread."""
    lines = [f"{'construct':<62}{'published':>10}{'model':>7}  {'90 % range':<12}{'ratio':>6}"]
    for row, ratio in zip(BREAKING, ratios(), strict=True):
        shown = strength_of(construct(row), 0, row.get("bend_deg", 0)).breaking
        where = "" if inside(row, "breaking") else "  outside"
        scope = f"{shown.low:.0f} to {shown.high:.0f}"
        name = f"{row['name']} ({row['tendon']})"
        lines.append(
            f"{name:<62.62}{row['breaking']:>10.1f}{ratio * row['breaking']:>7.1f}  {scope:<12}{ratio:>6.2f}{where}"
        )
    logs = [log(ratio) for ratio in ratios()]
    held = sum(inside(row, "breaking") for row in BREAKING)
    lines.append(
        f"geometric mean {exp(fmean(logs)):.2f}, geometric SD {exp(stdev(logs)):.2f}, {held} of {len(BREAKING)} inside"
    )
    return "\n".join(lines)


def test_at_least_ten_constructs_that_did_not_set_the_figures() -> None:
    assert len(BREAKING) >= 10
    set_on = " ".join(strength_tables().calibration.constructs)
    author_year = re.compile(r"[A-Z][a-z]+(?:-[A-Z][a-z]+)?(?: and [A-Z][a-z]+)? \d{4}")
    studies = {study for row in BREAKING for study in author_year.findall(row["source"])}
    assert len(studies) >= 6
    assert not [study for study in studies if study in set_on]


def test_published_breaking_force_lies_in_the_range_for_four_of_five() -> None:
    print("\n" + ratio_table())
    held = [inside(row, "breaking") for row in BREAKING]
    assert sum(held) / len(held) >= 0.80


def test_ratio_of_model_to_published_has_a_middle_near_one_and_a_bounded_spread() -> None:
    logs = [log(ratio) for ratio in ratios()]
    # Wide limits on purpose: they catch a slip of a figure, they do not praise the model.
    assert 0.67 < exp(fmean(logs)) < 1.5
    assert exp(stdev(logs)) < 2.0


def test_constructs_outside_the_range_are_the_ones_whose_knots_gave_way() -> None:
    """The known weakness, kept in view: Lee 2016 lies below the range, and the cautions say so."""
    outside = [row["name"] for row in BREAKING if not inside(row, "breaking")]
    assert outside == ["four-strand cruciate, 2-0 polypropylene", "four-strand cruciate, 3-0 polydioxanone"]


@pytest.mark.parametrize("row", GAPS, ids=lambda row: row["name"])
def test_published_gap_force_lies_in_the_range(row: dict[str, Any]) -> None:
    """Most of these were in view when the range of the gap share was set; only those without set_gap are a check."""
    assert inside(row, "gap")


def test_some_gap_forces_are_independent() -> None:
    assert sum(not row.get("set_gap", False) for row in GAPS) >= 3


def test_bend_of_ninety_degrees_against_a_second_study() -> None:
    """Song 2014: 57.0 of 61.9 N breaking and 35.9 of 46.2 N gap round 90 degrees, against Tang 2001 in the model."""
    straight, bent = Construct.bench(strands=6), Construct.bench(strands=6)
    model = middle_of(bent, 90) / middle_of(straight, 0)
    assert model <= 57.0 / 61.9
    assert model == pytest.approx(57.0 / 61.9, rel=0.25)
