"""The case's own days and the windows that publications name, side by side."""

from datetime import date, timedelta
from functools import cache

from notereader.appraisal.figures import Sourced, Table, load
from notereader.appraisal.known import Case, Entry
from notereader.appraisal.models import TimeLine, TimeMark
from notereader.record import Interval


class Window(Sourced):
    """One published window in days after the operation."""

    label: str
    from_day: float
    to_day: float


class TimeSentences(Table):
    """Sentences of the time line."""

    no_reviews: str
    no_date: str


class TimeTables(Table):
    """Everything in timeline.toml."""

    window: tuple[Window, ...]
    sentences: TimeSentences


@cache
def time_tables() -> TimeTables:
    """Return the published windows."""
    return load("timeline.toml", TimeTables)


def date_of(entry: Entry, field: str) -> date | None:
    """Return a live date that is not in dispute, or None."""
    known = entry.known(field)
    if known is None or known.rivals or not isinstance(known.value, str):
        return None
    return date.fromisoformat(known.value)


def day_of(case: Case, on: date) -> int | None:
    """Return the day after the operation on which a date falls, or None where the date of operation is not known."""
    operation = date_of(case.operation, "date")
    return None if operation is None else (on - operation).days


def time_line(case: Case, day: int | None) -> TimeLine:
    """Return the time line; `day` counts from the operation, None where none was chosen."""
    words = time_tables().sentences
    operation, injury = date_of(case.operation, "date"), date_of(case.operation, "injury_date")
    chosen = operation + timedelta(days=day) if operation is not None and day is not None else None
    notes = [words.no_reviews]
    if operation is None:
        notes.append(words.no_date)
    return TimeLine(
        operation=operation,
        chosen=chosen,
        day=day,
        days_since_injury=(chosen - injury).days if chosen is not None and injury is not None else None,
        case=_case_marks(case, day),
        published=[
            TimeMark(
                label=w.label,
                from_day=w.from_day,
                to_day=w.to_day,
                here=_within(day, w.from_day, w.to_day),
                source=w.source,
                status=w.status,
            )
            for w in time_tables().window
        ],
        notes=notes,
    )


def _case_marks(case: Case, day: int | None) -> list[TimeMark]:
    marks = []
    for field, label, unit in (("start_day", "motion or therapy starts", 1), ("splint_weeks", "splint ends", 7)):
        known = case.aftercare.known(field)
        if known is None or not isinstance(known.value, Interval):
            continue
        low = known.value.low if known.value.low is not None else known.value.high
        high = known.value.high
        assert low is not None
        marks.append(
            TimeMark(
                label=f"{label} ({known.standing})" + (" - the note says two things" if known.rivals else ""),
                from_day=low * unit,
                to_day=None if high is None else high * unit,
                here=_within(day, low * unit, high * unit if high is not None else low * unit),
                source="the note" if not known.fact.said_by else known.fact.said_by,
                status="verified" if known.settled else "derived",
            )
        )
    return marks


def _within(day: int | None, low: float, high: float) -> bool:
    return day is not None and low <= day <= high
