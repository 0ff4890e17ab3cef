"""The appraisal as data: everything that is shown, printed and exported, each figure with its source."""

from datetime import date
from typing import Literal

from pydantic import BaseModel, ConfigDict

from notereader.appraisal.figures import Status


class Model(BaseModel):
    """Base of the parts of an appraisal."""

    model_config = ConfigDict(extra="forbid")


class Cited(Model):
    """A sentence with its source."""

    words: str
    source: str
    status: Status = "derived"


class Piece(Model):
    """One piece of evidence: a fact of the record, what it says, and the words of the note behind it."""

    address: str
    words: str
    value: str
    quote: str = ""
    standing: Literal["confirmed", "proposed"] = "proposed"


NeedState = Literal["stated", "implied", "silent", "contradictory"]


class NeedItem(Model):
    """One thing a therapist needs or a standard asks, and whether the note gives it."""

    address: str
    where: str
    label: str
    state: NeedState
    weight: int
    value: str = ""
    confirmed: bool = False
    elsewhere: str = ""


class Tally(Model):
    """Counts of a list; shares follow from them and are None where the list is empty."""

    label: str
    items: int
    stated: int
    implied: int
    silent: int
    contradictory: int

    @property
    def share_stated(self) -> float | None:
        """Share of the list that the note states without contradiction."""
        return self.stated / self.items if self.items else None


class NeedGroup(Model):
    """What changes the work to one degree, with its counts."""

    weight: int
    label: str
    items: list[NeedItem]
    tally: Tally


class StandardResult(Model):
    """What one published standard asks of the note, with its counts."""

    key: str
    name: str
    source: str
    status: Status
    note: str
    items: list[NeedItem]
    tally: Tally
    absent_from_record: list[str]


class Completeness(Model):
    """Both lists, and a tally for each tendon, pulley set and the operation. No single score."""

    needs: list[NeedGroup]
    parts: list[Tally]
    owed: list[StandardResult]
    source: str


class Contradiction(Model):
    """One hit of a named check with the facts behind it."""

    check: str
    kind: Literal["contradiction", "implausible"]
    title: str
    words: str
    pieces: list[Piece]
    source: str


class Question(Model):
    """One question for the surgeon; `places` are the addresses its answer fills."""

    key: str
    text: str
    where: str
    reason: str
    says: str
    effect: float
    effect_from: str
    places: list[str]


class ForceRange(Model):
    """A 90 % range in newton. There is no single figure on purpose."""

    low: float
    high: float


class LengthRange(Model):
    """A range in millimetres."""

    low: float
    high: float


class FactorShare(Model):
    """One factor of the strength model: what it stands on and how much of the spread it causes."""

    name: str
    field: str
    known: bool
    value: str
    standing: str
    middle: float
    low: float
    high: float
    share: float
    source: str
    status: Status


class Strength(Model):
    """What a repair holds on a day at a bend, by published bench figures.

    `spread_ratio` is upper over lower end of the breaking range before the ceiling: how much is left open.
    """

    day: int
    posture_deg: float
    breaking: ForceRange
    gap: ForceRange
    fresh_breaking: ForceRange
    spread_ratio: float
    healing_low: float
    healing_high: float
    factors: list[FactorShare]
    notes: list[str]
    method: str
    healing: Cited


class LoadRange(Model):
    """Tendon force of one activity with the allowance for swelling and drag, newton."""

    key: str
    label: str
    short: str
    low: float
    high: float
    measured_low: float
    measured_high: float
    source: str
    status: Status


Verdict = Literal["above", "overlap", "below"]


class Margin(Model):
    """Strength range against load range for one activity; ratios are strength divided by load."""

    key: str
    label: str
    breaking: Verdict
    gap: Verdict
    breaking_words: str
    gap_words: str
    ratio_low: float
    ratio_high: float


class MarginDay(Model):
    """Strength ranges on one day and how they lie against each activity."""

    day: int
    breaking: ForceRange
    gap: ForceRange
    margins: list[Margin]


class TendonAppraisal(Model):
    """What the facts say about one tendon; `reason` says why where the model does not cover it (`strength` None)."""

    address: str
    where: str
    facts: list[Piece]
    strength: Strength | None
    reason: str
    loads: list[LoadRange]
    load_note: str
    table: list[MarginDay]
    cautions: list[str]


class Travel(Model):
    """Tendon travel in millimetres between two postures."""

    tendon: str
    words: str
    low_mm: float
    high_mm: float
    source: str
    status: Status


class FrictionRow(Model):
    """Share of force lost to belt friction at one angle."""

    angle_deg: float
    low: float
    high: float


class DigitGlide(Model):
    """Glide and pulleys of one digit."""

    digit: str
    found: list[Cited]
    travel: list[Travel]
    notes: list[Cited]
    pulleys: list[Cited]
    openings_mm: LengthRange | None
    friction: list[FrictionRow]
    friction_words: str
    friction_source: str
    cautions: list[str]


class TimeMark(Model):
    """One point or window on the time line, in days after the operation."""

    label: str
    from_day: float
    to_day: float | None
    here: bool
    source: str
    status: Status


class TimeLine(Model):
    """The case's own days and the windows that publications name."""

    operation: date | None
    chosen: date | None
    day: int | None
    days_since_injury: int | None
    case: list[TimeMark]
    published: list[TimeMark]
    notes: list[str]


class Appraisal(Model):
    """What the facts of one record mean. It reports and recommends nothing; `cautions` always stands."""

    format: Literal["notereader-appraisal"] = "notereader-appraisal"
    format_version: Literal[1] = 1
    cautions: list[str]
    note: str
    day: int
    day_given: bool
    posture_deg: float
    facts_confirmed: int
    facts_proposed: int
    completeness: Completeness
    contradictions: list[Contradiction]
    questions: list[Question]
    tendons: list[TendonAppraisal]
    glide: list[DigitGlide]
    timeline: TimeLine
