"""p-charts: shares by period with limits, and the rules by which a point is a signal.

Limits are the average share plus and minus three standard deviations of a share of that period's number of notes
(Shewhart; Montgomery, Introduction to Statistical Quality Control, chapter 7, from memory), cut off at 0 and 1. The
rules and their sources stand in resources/audit.toml.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import sqrt
from typing import Literal

from notereader.appraisal.figures import Table


class Rule(Table):
    """One rule for a signal.

    kind `beyond`: at least `count` of `of` points in a row lie more than `sigmas` standard deviations from the centre,
    all on one side. kind `trend`: `count` points in a row, each higher than the one before, or each lower.
    """

    key: str
    words: str
    kind: Literal["beyond", "trend"]
    count: int
    of: int = 1
    sigmas: float = 0.0
    source: str


@dataclass(frozen=True, slots=True)
class Point:
    """One period: how many of the notes count, the limits, and the keys of the rules by which it is a signal.

    `distance` is how far the share lies from the centre, in standard deviations; None where the centre is 0 or 1.
    """

    period: str
    count: int
    of: int
    low: float
    high: float
    distance: float | None
    signals: tuple[str, ...] = ()

    @property
    def share(self) -> float:
        """The share from 0 to 1."""
        return self.count / self.of


@dataclass(frozen=True, slots=True)
class Chart:
    """A p-chart; `centre` is the average share over all periods."""

    centre: float
    points: tuple[Point, ...]


def limits(centre: float, of: int, sigmas: float = 3.0) -> tuple[float, float]:
    """Return the lower and upper limit of a share of `of` units around the centre, cut off at 0 and 1."""
    half = sigmas * sqrt(centre * (1 - centre) / of)
    return max(0.0, centre - half), min(1.0, centre + half)


def p_chart(counts: Sequence[tuple[str, int, int]], rules: Sequence[Rule]) -> Chart | None:
    """Return the chart of (period, count, of), in order of time; periods without units are left out.

    None where no period has a unit.
    """
    held = [(period, count, of) for period, count, of in counts if of]
    if not held:
        return None
    centre = sum(count for _, count, _ in held) / sum(of for _, _, of in held)
    shares = [count / of for _, count, of in held]
    distances = [_distance(share, centre, of) for share, (_, _, of) in zip(shares, held, strict=True)]
    points = []
    for at, (period, count, of) in enumerate(held):
        signals = tuple(rule.key for rule in rules if _holds(rule, shares, distances, at))
        points.append(Point(period, count, of, *limits(centre, of), distances[at], signals))
    return Chart(centre, tuple(points))


def _distance(share: float, centre: float, of: int) -> float | None:
    return (share - centre) / sqrt(centre * (1 - centre) / of) if 0 < centre < 1 else None


def _holds(rule: Rule, shares: Sequence[float], distances: Sequence[float | None], at: int) -> bool:
    """Return whether the points up to and including one make it a signal."""
    if rule.kind == "trend":
        last = shares[max(0, at - rule.count + 1) : at + 1]
        steps = [after - before for before, after in pairwise(last)]
        return len(last) == rule.count and (all(step > 0 for step in steps) or all(step < 0 for step in steps))
    last_distances = [d for d in distances[max(0, at - rule.of + 1) : at + 1] if d is not None]
    here = distances[at]
    if here is None or abs(here) <= rule.sigmas:
        return False
    side = 1 if here > 0 else -1
    return sum(d * side > rule.sigmas for d in last_distances) >= rule.count
