"""What only a person's word supports: the record without the facts that the program proposed and nobody confirmed."""

from dataclasses import dataclass
from datetime import date

from notereader.appraisal.appraise import LATEST_DAY, appraise
from notereader.appraisal.checks import piece_of
from notereader.appraisal.known import Case, Entry
from notereader.appraisal.models import Appraisal, ForceRange, Piece, Strength, TendonAppraisal
from notereader.appraisal.timeline import day_of
from notereader.record import Record


@dataclass(frozen=True, slots=True)
class Settled:
    """Both sides of a record: `confirmed` counts only what a person settled, `whole` everything that was proposed.

    `left_out` are the facts that only the second one counts. `worse` are, by address, the tendons that `whole` shows
    weaker or without a figure: what is left out may be bad news.
    """

    confirmed: Appraisal
    whole: Appraisal
    left_out: tuple[Piece, ...]
    worse: dict[str, TendonAppraisal]


def settled_only(record: Record) -> Record:
    """Return a copy of the record without proposed values. Silence stays: it never makes anything look stronger."""
    copy = record.model_copy(deep=True)
    for place, fact in list(copy.walk()):
        if fact.status == "proposed" and fact.basis != "silent":
            copy.drop(place)
    return copy


def appraise_settled(record: Record, day: int | None = None, posture_deg: float = 0.0) -> Settled:
    """Return what the confirmed facts mean, with what is left out beside it. Raises ValueError as appraise() does."""
    confirmed = appraise(settled_only(record), day, posture_deg)
    whole = appraise(record, day, posture_deg)
    return Settled(confirmed, whole, tuple(_left_out(record)), _worse(confirmed, whole))


def settled_day(record: Record, on: date) -> int | None:
    """Return the day after the operation on a date; None where no date is confirmed or the day lies out of range."""
    day = day_of(Case.of(settled_only(record)), on)
    return day if day is not None and 0 <= day <= LATEST_DAY else None


def _left_out(record: Record) -> list[Piece]:
    entries = [Entry(place, facts) for place, facts in record.entries()]
    return [piece_of(known) for entry in entries for known in entry.live() if not known.settled]


def _worse(confirmed: Appraisal, whole: Appraisal) -> dict[str, TendonAppraisal]:
    shown = {t.address: t.strength for t in confirmed.tendons if t.strength is not None}
    return {t.address: t for t in whole.tendons if t.address in shown and _weaker(t.strength, shown[t.address])}


def _weaker(one: Strength | None, other: Strength) -> bool:
    return one is None or _lower(one.breaking, other.breaking) or _lower(one.gap, other.gap)


def _lower(one: ForceRange, other: ForceRange) -> bool:
    return one.low < other.low or one.high < other.high
