"""Tendon forces by activity, and how the strength range lies against them day by day."""

from functools import cache

from notereader.appraisal.construct import Construct
from notereader.appraisal.figures import Sourced, Table, load
from notereader.appraisal.models import ForceRange, LoadRange, Margin, MarginDay, Verdict
from notereader.appraisal.strength import strength_of
from notereader.appraisal.strength_tables import healing_tables


class Activity(Sourced):
    """One activity with the tendon force measured in it, newton."""

    key: str
    label: str
    short: str
    tendons: tuple[str, ...]
    low: float
    high: float


class Allowance(Sourced):
    """What swelling and drag after an operation add, as a factor on both ends."""

    low: float
    high: float
    words: str


class LoadSentences(Table):
    """Sentences of the load part."""

    no_load: str
    above: str
    overlap: str
    below: str
    method: str


class LoadTables(Table):
    """Everything in load.toml."""

    allowance: Allowance
    activity: tuple[Activity, ...]
    sentences: LoadSentences


@cache
def load_tables() -> LoadTables:
    """Return the published tendon forces."""
    return load("load.toml", LoadTables)


def loads_for(tendon: str) -> list[LoadRange]:
    """Return the load ranges of a tendon with the allowance for swelling, newton; empty where none is published."""
    tables = load_tables()
    return [
        LoadRange(
            key=a.key,
            label=a.label,
            short=a.short,
            low=a.low * tables.allowance.low,
            high=a.high * tables.allowance.high,
            measured_low=a.low,
            measured_high=a.high,
            source=a.source,
            status=a.status,
        )
        for a in tables.activity
        if tendon in a.tendons
    ]


def compare(strength: ForceRange, low: float, high: float) -> Verdict:
    """Say how a strength range lies against a load range: 'above' and 'below' only where the ranges do not touch."""
    if strength.low > high:
        return "above"
    return "below" if strength.high < low else "overlap"


def verdict_words(verdict: Verdict) -> str:
    """Return the sentence for a verdict; it reports how the ranges lie and directs nothing."""
    words: str = getattr(load_tables().sentences, verdict)
    return words


def margin_of(breaking: ForceRange, gap: ForceRange, load_range: LoadRange) -> Margin:
    """Return the strength ranges against one load range; ratios are the worst and best of breaking force over load."""
    at_breaking = compare(breaking, load_range.low, load_range.high)
    at_gap = compare(gap, load_range.low, load_range.high)
    return Margin(
        key=load_range.key,
        label=load_range.label,
        breaking=at_breaking,
        gap=at_gap,
        breaking_words=verdict_words(at_breaking),
        gap_words=verdict_words(at_gap),
        ratio_low=breaking.low / load_range.high,
        ratio_high=breaking.high / load_range.low,
    )


def margin_table(construct: Construct, loads: list[LoadRange], posture_deg: float, chosen_day: int) -> list[MarginDay]:
    """Return the strength ranges and margins for the days of the table and the chosen day, in order."""
    days = sorted({*healing_tables().table.days, chosen_day})
    return [_on_day(construct, loads, posture_deg, day) for day in days]


def _on_day(construct: Construct, loads: list[LoadRange], posture_deg: float, day: int) -> MarginDay:
    strength = strength_of(construct, day, posture_deg)
    margins = [margin_of(strength.breaking, strength.gap, load_range) for load_range in loads]
    return MarginDay(day=day, breaking=strength.breaking, gap=strength.gap, margins=margins)
