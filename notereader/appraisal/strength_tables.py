"""The figures of the strength model, read from strength.toml and healing.toml and checked for sense."""

from functools import cache
from typing import Self

from pydantic import Field, model_validator

from notereader.appraisal.figures import Bounds, Figure, Sourced, Status, Table, load


class SizeRow(Figure):
    """Core sizes that share one factor."""

    usp: tuple[str, ...]


class MaterialRow(Figure):
    """Core materials that share one factor; `hold` limits the row to one way of holding."""

    name: tuple[str, ...]
    hold: str | None = None


class PurchaseRow(Figure):
    """The factor at one purchase length."""

    mm: float = Field(ge=0)


class NamedRow(Figure):
    """The factor for one named value."""

    name: str


class PatternRow(Figure):
    """The factor for peripheral patterns."""

    pattern: tuple[str, ...]


class CutRow(Sourced):
    """The factor of a slanting cut."""

    deg: float
    middle: float = Field(gt=0, le=1)


class BendRow(Table):
    """The factors at one bend of the tendon."""

    deg: float
    breaking: Bounds
    gap: Bounds


class Bite(Sourced):
    """Width of each lock or bite."""

    enough_mm: float
    enough: Bounds
    small: Bounds
    unknown: Bounds


class Strands(Sourced):
    """How force rises with the number of strands."""

    reference: int
    most: int
    exponent: Bounds
    unknown: Figure


class Ceiling(Sourced):
    """The largest force shown for a fresh repair."""

    newton: float


class Doubt(Sourced):
    """How much a weak fact widens its range."""

    factor: float = Field(ge=1)
    words: str


class Doubts(Table):
    """The kinds of weak facts."""

    implied: Doubt
    rivals: Doubt
    second_look: Doubt
    unconfirmed: Doubt


class NoFigure(Sourced):
    """Stitches the model has no figure for."""

    stitches: tuple[str, ...]
    words: str


class Sentences(Table):
    """Sentences of the strength part."""

    intact: str
    not_repaired: str
    treatment_unknown: str
    treatment_disputed: str
    partial: str
    part_unsettled: str
    slip: str
    wrist_tendon: str
    ceiling: str
    beyond_days: str
    bend_beyond: str
    gap_seen: str
    gap_small: str
    gap_unstated: str
    closed_form: str


class Calibration(Sourced):
    """What the base was set on."""

    constructs: tuple[str, ...]


class StrengthTables(Table):
    """Everything in strength.toml."""

    base: Figure
    ceiling: Ceiling
    strands: Strands
    size: tuple[SizeRow, ...]
    size_unknown: Figure
    material: tuple[MaterialRow, ...]
    material_unknown: Figure
    purchase: tuple[PurchaseRow, ...]
    purchase_unknown: Figure
    hold: tuple[NamedRow, ...]
    hold_unknown: Figure
    bite: Bite
    peripheral: tuple[PatternRow, ...]
    peripheral_present: Figure
    peripheral_absent: Figure
    peripheral_unknown: Figure
    ends: tuple[NamedRow, ...]
    ends_unknown: Figure
    cut: tuple[CutRow, ...]
    cut_unknown: Figure
    bend: tuple[BendRow, ...]
    bend_source: Sourced
    gap_present: Figure
    gap_absent: Figure
    gap_unknown: Figure
    doubt: Doubts
    slip: Figure
    no_figure: NoFigure
    sentences: Sentences
    calibration: Calibration

    @model_validator(mode="after")
    def _unknown_is_widest(self) -> Self:
        """Not knowing may never look surer than knowing."""
        for name, unknown, rows in (
            ("size", self.size_unknown, self.size),
            ("material", self.material_unknown, self.material),
            ("purchase", self.purchase_unknown, self.purchase),
            ("hold", self.hold_unknown, self.hold),
            ("bite", self.bite.unknown, (self.bite.enough, self.bite.small)),
            (
                "peripheral",
                self.peripheral_unknown,
                (*self.peripheral, self.peripheral_present, self.peripheral_absent),
            ),
            ("ends", self.ends_unknown, self.ends),
            ("gap", self.gap_unknown, (self.gap_present, self.gap_absent)),
        ):
            widest = unknown.spread()
            for row in rows:
                spread = row.spread()
                if spread.down > widest.down + 1e-9 or spread.up > widest.up + 1e-9:
                    known = f"{row.low:g}, {row.middle:g}, {row.high:g}"
                    raise ValueError(f"{name}: a known value ({known}) ranges wider than the unknown one")
        return self


class HealingPoint(Table):
    """Both views of the strength on one day, as shares of the first day."""

    day: int = Field(ge=0)
    low: float = Field(gt=0)
    high: float = Field(gt=0)
    high_immobilised: float = Field(gt=0)


class Absorbed(Sourced):
    """What is left of a dissolving suture by day."""

    material: str
    days: tuple[float, ...]
    left: tuple[float, ...]


class Unstated(Sourced):
    """Which dissolving material an unstated one is taken for at the lower end."""

    material: str


class DayTable(Sourced):
    """The days of the margin table."""

    days: tuple[int, ...]


class Healing(Table):
    """Everything in healing.toml."""

    source: str
    status: Status
    words: str
    point: tuple[HealingPoint, ...]
    absorbed: tuple[Absorbed, ...]
    unstated_material: Unstated
    table: DayTable


@cache
def strength_tables() -> StrengthTables:
    """Return the figures of the strength model."""
    return load("strength.toml", StrengthTables)


@cache
def healing_tables() -> Healing:
    """Return the figures for strength over time."""
    return load("healing.toml", Healing)
