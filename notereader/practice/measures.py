"""Rates with their uncertainty, agreement and rank agreement. Few and small, so they are written out here."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from math import log2, sqrt
from statistics import NormalDist


@dataclass(frozen=True, slots=True)
class Rate:
    """A share with the range it may lie in; without trials the range is 0 to 1."""

    right: float
    trials: float
    low: float
    high: float

    @property
    def middle(self) -> float | None:
        """The share itself, or None without trials."""
        return self.right / self.trials if self.trials else None


def wilson(right: float, trials: float, level: float) -> Rate:
    """Return a share with its score interval (Wilson 1927, J Am Stat Assoc 22:209) at a level such as 0.90.

    Both counts may be weighted and so need not be whole.
    """
    if trials <= 0:
        return Rate(0.0, 0.0, 0.0, 1.0)
    z = NormalDist().inv_cdf(0.5 + level / 2)
    p = right / trials
    middle = (p + z * z / (2 * trials)) / (1 + z * z / trials)
    half = z / (1 + z * z / trials) * sqrt(p * (1 - p) / trials + z * z / (4 * trials * trials))
    return Rate(right, trials, max(0.0, middle - half), min(1.0, middle + half))


def kappa(both: int, only_first: int, only_second: int, neither: int) -> float | None:
    """Return Cohen's kappa of two yes-no judgements (Cohen 1960); None where chance alone explains everything."""
    total = both + only_first + only_second + neither
    if not total:
        return None
    seen = (both + neither) / total
    first, second = (both + only_first) / total, (both + only_second) / total
    chance = first * second + (1 - first) * (1 - second)
    return None if chance >= 1 else (seen - chance) / (1 - chance)


def somers_d(given: Sequence[float], ranked: Sequence[float]) -> float | None:
    """Return how well one order follows another, Somers' D of `ranked` on `given` (Somers 1962); None without any.

    Pairs that `given` ties are left out, for either order of them is right. Without ties it is Kendall's tau.
    """
    pairs = list(combinations(zip(given, ranked, strict=True), 2))
    score = sum(_sign(a1 - a2) * _sign(b1 - b2) for (a1, b1), (a2, b2) in pairs)
    untied = sum(a1 != a2 for (a1, _), (a2, _) in pairs)
    return score / untied if untied else None


def discounted_share(gains: Sequence[float], best: Sequence[float], places: int) -> float | None:
    """Return the discounted gain of a ranking as a share of the best possible one, for the first places.

    The gain at place i counts 1 / log2(i + 1) (Järvelin and Kekäläinen 2002). None where nothing can be gained.
    """
    most = _discounted(sorted(best, reverse=True)[:places])
    return _discounted(gains[:places]) / most if most > 0 else None


def correlation(first: Sequence[float], second: Sequence[float]) -> float | None:
    """Return the product-moment correlation; point-biserial where one side is 0 or 1. None without any spread."""
    n = len(first)
    if n < 2:
        return None
    mean1, mean2 = sum(first) / n, sum(second) / n
    cross = sum((a - mean1) * (b - mean2) for a, b in zip(first, second, strict=True))
    spread = sqrt(sum((a - mean1) ** 2 for a in first) * sum((b - mean2) ** 2 for b in second))
    return max(-1.0, min(1.0, cross / spread)) if spread > 1e-12 else None


def _discounted(gains: Sequence[float]) -> float:
    return sum(gain / log2(place + 1) for place, gain in enumerate(gains, 1))


def _sign(difference: float) -> int:
    return (difference > 0) - (difference < 0)
