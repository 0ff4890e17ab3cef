"""Progress: every kind of fact over time, with the uncertainty that few cases leave."""

from collections.abc import Iterable, Sequence
from datetime import datetime

from pydantic import BaseModel, ConfigDict

from notereader.practice.marks import KindTally, Marking
from notereader.practice.measures import Rate, wilson
from notereader.practice.words import tables


class _Model(BaseModel):
    model_config = ConfigDict(extra="forbid")


class Point(_Model):
    """One case on the line of a kind: what was right, and the estimate after it with its range.

    `number` is the place of the case among all that were taken, from 1.
    """

    number: int
    case: str
    when: datetime | None
    right: int
    trials: int
    over: int
    middle: float | None
    low: float
    high: float


class KindProgress(_Model):
    """One kind of fact over all cases. `middle` is the present estimate, None where it was never tried.

    `unsure` is True while there are too few trials to speak of a rate.
    """

    key: str
    label: str
    trials: int
    right: int
    over: int
    middle: float | None
    low: float
    high: float
    unsure: bool
    points: list[Point]


class Progress(_Model):
    """All kinds, the weakest first, and what was taken."""

    caution: str
    student: str
    cases: int
    interval: float
    kinds: list[KindProgress]
    overall: KindProgress


def ordered(markings: Iterable[Marking]) -> list[Marking]:
    """Return markings in the order in which they were handed in; repeats of single facts are left out."""
    whole = [marking for marking in markings if marking.scope != "again"]
    return sorted(whole, key=lambda m: (m.handed_in_at is None, m.handed_in_at.timestamp() if m.handed_in_at else 0.0))


def progress_of(markings: Iterable[Marking], student: str = "") -> Progress:
    """Return the progress over a student's markings. Later cases count more: see half_life_cases in practice.toml."""
    line = ordered(markings)
    kinds = [_kind(kind.key, kind.label, [_tally(m, kind.key) for m in line], line) for kind in tables().kind]
    tried = [kind for kind in kinds if kind.trials]
    everything = _kind("all", "all kinds together", [_all(m) for m in line], line)
    return Progress(
        caution=tables().caution,
        student=student,
        cases=len(line),
        interval=tables().progress.interval,
        kinds=sorted(tried, key=lambda kind: (kind.low, kind.middle or 0.0)) + [k for k in kinds if not k.trials],
        overall=everything,
    )


def estimate(tallies: Sequence[KindTally | None]) -> Rate:
    """Return the present rate from the tallies of successive cases; each case back counts less than the next."""
    figures = tables().progress
    right = trials = 0.0
    weight = 1.0
    for tally in reversed([t for t in tallies if t is not None]):
        right += weight * tally.right
        trials += weight * tally.trials
        weight *= 0.5 ** (1 / figures.half_life_cases)
    return wilson(right, trials, figures.interval)


def _tally(marking: Marking, key: str) -> KindTally | None:
    return next((tally for tally in marking.kinds if tally.key == key), None)


def _all(marking: Marking) -> KindTally:
    kinds = marking.kinds
    return KindTally(
        key="all",
        label="",
        trials=sum(k.trials for k in kinds),
        right=sum(k.right for k in kinds),
        over=sum(k.over for k in kinds),
    )


def _kind(key: str, label: str, tallies: Sequence[KindTally | None], line: Sequence[Marking]) -> KindProgress:
    points = []
    for i, tally in enumerate(tallies):
        if tally is not None:
            rate = estimate(tallies[: i + 1])
            points.append(
                Point(
                    number=i + 1,
                    case=line[i].case,
                    when=line[i].handed_in_at,
                    right=tally.right,
                    trials=tally.trials,
                    over=tally.over,
                    middle=rate.middle,
                    low=rate.low,
                    high=rate.high,
                )
            )
    now = estimate(tallies)
    trials = sum(point.trials for point in points)
    return KindProgress(
        key=key,
        label=label,
        trials=trials,
        right=sum(point.right for point in points),
        over=sum(point.over for point in points),
        middle=now.middle,
        low=now.low,
        high=now.high,
        unsure=trials < tables().progress.few,
        points=points,
    )
