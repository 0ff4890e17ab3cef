"""Item statistics of classical test theory: how hard an item is, and whether it tells strong from weak students."""

from collections.abc import Sequence

from notereader.practice.measures import correlation

# One row for each student, one column for each item: the share right, or None where the student did not meet the item.
Scores = Sequence[Sequence[float | None]]


def difficulty(scores: Scores, item: int) -> float | None:
    """Return the mean share right of an item, 1 where everybody has it right; None where nobody met it."""
    given = [row[item] for row in scores]
    met = [score for score in given if score is not None]
    return sum(met) / len(met) if met else None


def item_rest_correlation(scores: Scores, item: int) -> float | None:
    """Return the correlation of an item with the rest of the test, the item itself left out.

    With items of 0 and 1 it is the corrected point-biserial correlation. None where there is no spread.
    """
    pairs = []
    for row in scores:
        score, rest = row[item], _mean([s for i, s in enumerate(row) if i != item])
        if score is not None and rest is not None:
            pairs.append((score, rest))
    return correlation([a for a, _ in pairs], [b for _, b in pairs])


def upper_lower(scores: Scores, item: int, share: float) -> float | None:
    """Return the discrimination index D: the item's mean in the upper group of students less that in the lower one.

    `share` is the size of each group, 0.27 by Kelley 1939, at most a half. Students who tie at the border of a group
    enter it in equal parts.
    """
    rows = [(total, row[item]) for row in scores if row[item] is not None and (total := _mean(row)) is not None]
    size = max(1, int(share * len(rows) + 0.5))
    if 2 * size > len(rows):
        size = len(rows) // 2
    if not size:
        return None
    upper = _group_mean([(total, score or 0.0) for total, score in rows], size)
    lower = _group_mean([(-total, score or 0.0) for total, score in rows], size)
    return upper - lower


def _group_mean(rows: list[tuple[float, float]], size: int) -> float:
    """Return the mean score of the `size` rows with the highest totals, ties at the border in equal parts."""
    border = sorted((total for total, _ in rows), reverse=True)[size - 1]
    above = [score for total, score in rows if total > border + 1e-12]
    tied = [score for total, score in rows if abs(total - border) <= 1e-12]
    return (sum(above) + (size - len(above)) * sum(tied) / len(tied)) / size


def _mean(scores: Sequence[float | None]) -> float | None:
    given = [score for score in scores if score is not None]
    return sum(given) / len(given) if given else None
