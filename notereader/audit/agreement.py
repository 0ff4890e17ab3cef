"""How well two readers of the same notes agree: percent agreement, Cohen's kappa, Krippendorff's alpha.

Cohen 1960, Educ Psychol Meas 20:37; the large-sample standard error of kappa is that of Fleiss, Cohen and Everitt
(1969, Psychol Bull 72:323). Krippendorff 2011, Computing Krippendorff's alpha-reliability. An interval over notes draws
whole notes with replacement, for places of the same note are not independent.
"""

import random
from collections import Counter
from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import sqrt
from typing import Any, Literal

import numpy as np

from notereader.audit.rates import Z95

Metric = Literal["nominal", "interval"]
Pair = tuple[Hashable, Hashable]

DRAWS = 1000


@dataclass(frozen=True, slots=True)
class Measure:
    """A measure of agreement with its 95 % interval; None where it is not defined, for instance with one value only."""

    value: float | None
    low: float | None = None
    high: float | None = None


def percent_agreement(pairs: Iterable[Pair]) -> float | None:
    """Return the share of pairs that agree, or None without pairs."""
    same = [first == second for first, second in pairs]
    return sum(same) / len(same) if same else None


def kappa(pairs: Sequence[Pair]) -> Measure:
    """Return Cohen's kappa of independent pairs with its large-sample interval."""
    value, expected = _kappa(Counter(pairs))
    if value is None:
        return Measure(None)
    of = len(pairs)
    rows, columns = Counter(a for a, _ in pairs), Counter(b for _, b in pairs)
    spread = 0.0
    for (a, b), n in Counter(pairs).items():
        lean = (columns[a] + rows[b]) / of * (1 - value)
        spread += n / of * ((1 - lean) if a == b else lean) ** 2
    variance = (spread - (value - expected * (1 - value)) ** 2) / (of * (1 - expected) ** 2)
    # Full agreement has no spread; an interval of no width would claim a certainty that few notes cannot give.
    if variance < 1e-12:
        return Measure(value)
    half = Z95 * sqrt(variance)
    return Measure(value, max(-1.0, value - half), min(1.0, value + half))


def alpha(units: Iterable[Sequence[Hashable | None]], metric: Metric = "nominal") -> float | None:
    """Return Krippendorff's alpha of any number of readers.

    Each unit holds the readers' values, None where one gave none; with metric `interval` the values are numbers.
    None where fewer than two values can be compared, or all are the same.
    """
    paired = [held for unit in units if len(held := [v for v in unit if v is not None]) > 1]
    totals = Counter(value for held in paired for value in held)
    of = sum(totals.values())
    distance = _DISTANCES[metric]
    expected = sum(n * m * distance(a, b) for a, n in totals.items() for b, m in totals.items())
    if not expected:
        return None
    seen = 0.0
    for held in paired:
        seen += sum(distance(a, b) for a in held for b in held) / (len(held) - 1)
    return 1 - (of - 1) * seen / expected


_DISTANCES: dict[Metric, Callable[[Any, Any], float]] = {
    "nominal": lambda a, b: float(a != b),
    "interval": lambda a, b: float((a - b) ** 2),
}


def over_notes(notes: Sequence[Sequence[Pair]], seed: int) -> tuple[Measure, Measure]:
    """Return kappa and nominal alpha of two readers with intervals that draw whole notes, as percentiles.

    Each note holds the pairs of its places. The same seed gives the same intervals.
    """
    tables = list(_drawn_tables(notes, seed))
    whole = Counter(pair for pairs in notes for pair in pairs)
    return (
        _measure(_kappa(whole)[0], [_kappa(table)[0] for table in tables]),
        _measure(_alpha_of_table(whole), [_alpha_of_table(table) for table in tables]),
    )


def figures_over_notes(notes: Sequence[Sequence[tuple[float, float]]], seed: int) -> Measure:
    """Return interval alpha of two readers who both gave a figure, with its interval as of over_notes()."""
    whole: Counter[Pair] = Counter(pair for pairs in notes for pair in pairs)
    drawn = [_alpha_of_table(table, "interval") for table in _drawn_tables(notes, seed)]
    return _measure(_alpha_of_table(whole, "interval"), drawn)


def _drawn_tables(notes: Sequence[Sequence[Pair]], seed: int) -> Iterator[Counter[Pair]]:
    """Yield the table of pairs of each draw."""
    if not notes:
        return
    kinds = sorted({pair for pairs in notes for pair in pairs}, key=repr)
    counts = np.array([[Counter(pairs)[kind] for kind in kinds] for pairs in notes], dtype=float)
    for row in _weights(len(notes), seed) @ counts:
        yield Counter({kind: n for kind, n in zip(kinds, row.tolist(), strict=True) if n})


@lru_cache(maxsize=4)
def _weights(notes: int, seed: int) -> Any:
    """Return how often each note is drawn in each of the draws."""
    chance = random.Random(seed)
    weights = np.zeros((DRAWS, notes))
    for row in weights:
        for at in chance.choices(range(notes), k=notes):
            row[at] += 1
    return weights


def _kappa(table: Counter[Pair]) -> tuple[float | None, float]:
    """Return kappa, None where it is not defined, and the agreement expected by chance."""
    of = sum(table.values())
    rows: Counter[Hashable] = Counter()
    columns: Counter[Hashable] = Counter()
    for (a, b), n in table.items():
        rows[a] += n
        columns[b] += n
    if not of or (expected := sum(n * columns[value] for value, n in rows.items()) / of**2) == 1:
        return None, 1.0
    observed = sum(n for (a, b), n in table.items() if a == b) / of
    return (observed - expected) / (1 - expected), expected


def _alpha_of_table(table: Counter[Pair], metric: Metric = "nominal") -> float | None:
    """Return alpha of two readers who gave every value."""
    totals: Counter[Any] = Counter()
    for (a, b), n in table.items():
        totals[a] += n
        totals[b] += n
    of, expected = sum(totals.values()), _expected(totals, metric)
    distance = _DISTANCES[metric]
    apart = 2 * sum(n * distance(a, b) for (a, b), n in table.items())
    return 1 - (of - 1) * apart / expected if expected else None


def _expected(totals: Counter[Any], metric: Metric) -> float:
    """Return the sum of distances over all pairs of values, without going through the pairs: dates have many."""
    of = sum(totals.values())
    if metric == "nominal":
        return float(of * of - sum(n * n for n in totals.values()))
    return float(2 * (of * sum(n * v * v for v, n in totals.items()) - sum(n * v for v, n in totals.items()) ** 2))


def _measure(value: float | None, drawn: Sequence[float | None]) -> Measure:
    held = sorted(d for d in drawn if d is not None)
    if value is None or not held or held[0] == held[-1]:
        return Measure(value)
    low, high = (float(np.quantile(held, share)) for share in (0.025, 0.975))
    return Measure(value, low, high)
