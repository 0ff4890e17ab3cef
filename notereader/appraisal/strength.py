"""What a repair holds: a transparent product of factors, each with its middle, range and source."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import log, sqrt

from notereader.appraisal.construct import FEATURES, Construct, Feature
from notereader.appraisal.figures import Z90, Bounds, Figure, Sourced, Spread, between, product
from notereader.appraisal.models import Cited, FactorShare, ForceRange, Strength
from notereader.appraisal.strength_tables import BendRow, HealingPoint, PurchaseRow, healing_tables, strength_tables
from notereader.record import Interval, Value


@dataclass(frozen=True, slots=True)
class Factor:
    """One factor as used: its spread, what it stands on, and where the figure comes from."""

    name: str
    field: str
    spread: Spread
    known: bool
    value: str
    standing: str
    source: str
    status: str


def strength_of(construct: Construct, day: int = 0, posture_deg: float = 0.0) -> Strength:
    """Return what a repair holds on a day after the operation, with the tendon bent by `posture_deg` degrees.

    Forces are newton, as 90 % ranges. Raises ValueError for a day before the operation or a negative bend.
    """
    if day < 0:
        raise ValueError(f"day {day} lies before the operation; give a day from 0")
    if posture_deg < 0:
        raise ValueError(f"a bend of {posture_deg:g} degrees is not possible; give degrees of flexion from 0")
    breaking_factors = [*_repair_factors(construct), _bend(posture_deg, "breaking"), *_absorbed(construct, day)]
    gap_factors = [
        *_repair_factors(construct),
        _bend(posture_deg, "gap"),
        *_absorbed(construct, day),
        _gap_share(construct),
    ]
    low, high = healing(construct, day)
    breaking = _held(breaking_factors, low, high)
    opening = _held(gap_factors, low, high)
    gap = ForceRange(low=min(opening.low, breaking.low), high=min(opening.high, breaking.high))
    tables = healing_tables()
    return Strength(
        day=day,
        posture_deg=posture_deg,
        breaking=breaking,
        gap=gap,
        fresh_breaking=_held(breaking_factors, 1.0, 1.0),
        spread_ratio=_open(breaking_factors) * high / low,
        healing_low=low,
        healing_high=high,
        factors=_shares([*breaking_factors, gap_factors[-1]], breaking_factors),
        notes=_notes(construct, day, posture_deg, breaking_factors),
        method=strength_tables().sentences.closed_form,
        healing=Cited(words=tables.words, source=tables.source, status=tables.status),
    )


def healing(construct: Construct, day: float) -> tuple[float, float]:
    """Return both views of the strength on a day as shares of the first day: (early loss, no loss).

    Where a gap of 3 mm or more, or one without figure, was seen, the upper view counts no gain.
    """
    points = healing_tables().point

    def at(pick: Callable[[HealingPoint], float]) -> float:
        return between([(point.day, pick(point)) for point in points], day)

    low = at(lambda p: p.low)
    high = at(lambda p: p.high_immobilised if construct.immobilised else p.high)
    if construct.gap == "seen":
        low, high = min(low, 1.0), min(high, 1.0)
    return low, max(low, high)


def spread_shares(construct: Construct) -> dict[str, float]:
    """Return field -> share of the whole spread of the breaking force, for the facts that are not known."""
    factors = _repair_factors(construct)
    total = sum(f.spread.variance for f in factors)
    return {f.field: f.spread.variance / total for f in factors if not f.known and f.field}


def share_if_unknown(construct: Construct, field: str) -> float:
    """Return the share of the spread that a field would cause if unknown, 0 where the model does not use it."""
    part = next((name for name in FEATURES if getattr(construct, name).field == field), None)
    return 0.0 if part is None else spread_shares(construct.without(part)).get(field, 0.0)


def _held(factors: Sequence[Factor], healing_low: float, healing_high: float) -> ForceRange:
    """Return the range after healing; the upper end never passes the ceiling, and the lower end never the upper."""
    whole, ceiling = product([f.spread for f in factors]), strength_tables().ceiling.newton
    high = min(whole.high * healing_high, ceiling)
    return ForceRange(low=min(whole.low * healing_low, high), high=high)


def _open(factors: Sequence[Factor]) -> float:
    """Return the upper over the lower end before healing and ceiling."""
    whole = product([f.spread for f in factors])
    return whole.high / whole.low


def _repair_factors(construct: Construct) -> list[Factor]:
    """Return the factors that do not change with day and posture."""
    base = strength_tables().base
    factors = [
        Factor(
            "base: two strands of 4-0, locked, clean, straight",
            "",
            base.spread(),
            True,
            f"{base.middle:g} N",
            "",
            base.source,
            base.status,
        ),
        _strands(construct.strands),
        _size(construct.size),
        _material(construct.material, construct.hold),
        _purchase(construct.purchase),
        _hold(construct.hold),
        _bite(construct.lock),
        _peripheral(construct),
        _ends(construct.ends),
        _cut(construct.cut_deg),
    ]
    if construct.slip:
        slip = strength_tables().slip
        factors.append(Factor("one slip only", "", slip.spread(), True, "slip", "", slip.source, slip.status))
    return factors


def _doubted(spread: Spread, feature: Feature, unknown: Spread) -> Spread:
    """Widen a known factor by every doubt that hangs on its fact."""
    doubts = strength_tables().doubt
    for kind in feature.doubts:
        spread = spread.widened(getattr(doubts, kind).factor, unknown)
    return spread


def _weakest(feature: Feature, spread_of: Callable[[Value], Spread | None]) -> tuple[Value, Spread] | None:
    """Return the candidate that promises least, with its spread; None where no candidate has a figure."""
    found = [(value, spread) for value in feature.candidates if (spread := spread_of(value)) is not None]
    return min(found, key=lambda pair: pair[1].mu) if found else None


def _factor(
    name: str,
    feature: Feature,
    unknown: Figure,
    spread_of: Callable[[Value], Spread | None],
    source: Callable[[Value], Sourced | Figure],
) -> Factor:
    """Build one factor from its feature: the weakest candidate, widened by its doubts, or the unknown."""
    found = _weakest(feature, spread_of)
    if found is None:
        return Factor(
            name, feature.field, unknown.spread(), False, "not stated", "not stated", unknown.source, unknown.status
        )
    value, spread = found
    stands_on = source(value)
    widened = _doubted(spread, feature, unknown.spread())
    return Factor(
        name, feature.field, widened, True, feature.shown(value), _standing(feature), stands_on.source, stands_on.status
    )


def _standing(feature: Feature) -> str:
    doubts = strength_tables().doubt
    words = [getattr(doubts, kind).words for kind in feature.doubts if kind != "unconfirmed"]
    return "; ".join([feature.standing, *words])


def _strands(feature: Feature) -> Factor:
    table = strength_tables().strands

    def spread_of(value: Value) -> Spread | None:
        return strand_spread(int(value)) if isinstance(value, int | float) else None

    return _factor("strands", feature, table.unknown, spread_of, lambda _: table)


def strand_spread(count: int) -> Spread:
    """Return the factor for a number of core strands against two; no gain is counted beyond the most tested."""
    table = strength_tables().strands
    doublings = log(min(count, table.most) / table.reference)
    ends = sorted((table.exponent.low * doublings, table.exponent.high * doublings))
    middle = table.exponent.middle * doublings
    return Spread(middle, (middle - ends[0]) / Z90, (ends[1] - middle) / Z90)


def _size(feature: Feature) -> Factor:
    tables = strength_tables()
    rows = {usp: row for row in tables.size for usp in row.usp}

    def spread_of(value: Value) -> Spread | None:
        return rows[value].spread() if isinstance(value, str) and value in rows else None

    return _factor("core size against 4-0", feature, tables.size_unknown, spread_of, lambda v: rows[str(v)])


def _material(feature: Feature, hold: Feature) -> Factor:
    """Material against nylon; the stronger row of a material is used only where the hold is known and undisputed."""
    tables = strength_tables()
    sure_hold = hold.candidates[0] if len(hold.candidates) == 1 else None

    def row(value: Value) -> Figure | None:
        return next((r for r in tables.material if value in r.name and (r.hold is None or r.hold == sure_hold)), None)

    def spread_of(value: Value) -> Spread | None:
        found = row(value)
        return None if found is None else found.spread()

    return _factor(
        "core material", feature, tables.material_unknown, spread_of, lambda v: row(v) or tables.material_unknown
    )


def _purchase(feature: Feature) -> Factor:
    tables = strength_tables()

    def spread_of(value: Value) -> Spread | None:
        if not isinstance(value, Interval):
            return None
        if value.low is not None:
            return _purchase_spread(value.low)
        # 'at most 5 mm': not known, and no better than its upper end.
        most, unknown = _purchase_spread(value.high or 0.0), tables.purchase_unknown.spread()
        return Spread(min(most.mu, unknown.mu), unknown.down, unknown.up)

    def source(value: Value) -> Figure:
        length = value.low if isinstance(value, Interval) and value.low is not None else 0.0
        return next((row for row in reversed(tables.purchase) if row.mm <= length), tables.purchase[0])

    return _factor("purchase", feature, tables.purchase_unknown, spread_of, source)


def _purchase_spread(length_mm: float) -> Spread:
    rows: tuple[PurchaseRow, ...] = strength_tables().purchase
    if length_mm >= rows[-1].mm:
        return rows[-1].spread()
    for lower, upper in pairwise(rows):
        if length_mm <= upper.mm:
            return lower.spread().mixed(upper.spread(), (length_mm - lower.mm) / (upper.mm - lower.mm))
    return rows[-1].spread()


def _hold(feature: Feature) -> Factor:
    tables = strength_tables()
    rows = {row.name: row for row in tables.hold}

    def spread_of(value: Value) -> Spread | None:
        return rows[value].spread() if isinstance(value, str) and value in rows else None

    return _factor("hold of the core", feature, tables.hold_unknown, spread_of, lambda v: rows[str(v)])


def _bite(feature: Feature) -> Factor:
    bite = strength_tables().bite
    unknown = Figure(**bite.unknown.model_dump(), source=bite.source, status=bite.status)

    def spread_of(value: Value) -> Spread | None:
        if not isinstance(value, Interval) or value.low is None:
            return None
        row: Bounds = bite.enough if value.low >= bite.enough_mm else bite.small
        return row.spread()

    return _factor("width of locks or bites", feature, unknown, spread_of, lambda _: bite)


def _peripheral(construct: Construct) -> Factor:
    tables = strength_tables()

    def row(value: Value) -> Figure:
        if value == "absent":
            return tables.peripheral_absent
        patterns = [r for p in construct.pattern.candidates for r in tables.peripheral if p in r.pattern]
        return min(patterns, key=lambda r: r.middle) if patterns else tables.peripheral_present

    factor = _factor(
        "peripheral suture", construct.peripheral, tables.peripheral_unknown, lambda v: row(v).spread(), row
    )
    if factor.known and factor.value.startswith("present") and construct.pattern.known:
        spread = _doubted(factor.spread, construct.pattern, tables.peripheral_unknown.spread())
        words = f"{factor.value}, {construct.pattern.shown(construct.pattern.candidates[0])}"
        return Factor(factor.name, factor.field, spread, True, words, factor.standing, factor.source, factor.status)
    return factor


def _ends(feature: Feature) -> Factor:
    tables = strength_tables()
    rows = {row.name: row for row in tables.ends}

    def spread_of(value: Value) -> Spread | None:
        return rows[value].spread() if isinstance(value, str) and value in rows else None

    return _factor("tendon ends", feature, tables.ends_unknown, spread_of, lambda v: rows[str(v)])


def cut_factor(deg: float) -> float:
    """Return the factor for a cut at `deg` degrees to the tendon's axis (90: straight across)."""
    return between([(row.deg, row.middle) for row in strength_tables().cut], deg)


def _cut(deg: float | None) -> Factor:
    tables = strength_tables()
    unknown = tables.cut_unknown
    if deg is None:
        return Factor(
            "slant of the cut (no field in the record)",
            "",
            unknown.spread(),
            False,
            "not stated",
            "not stated",
            unknown.source,
            unknown.status,
        )
    middle = cut_factor(deg)
    row = tables.cut[-1]
    return Factor(
        "slant of the cut", "", Spread.of(middle, middle, middle), True, f"{deg:g} degrees", "", row.source, row.status
    )


def bend_bounds(deg: float, kind: str) -> Bounds:
    """Return the factor for a bend at the repair; kind is 'breaking' or 'gap'. Beyond 90 degrees unchanged."""
    rows: tuple[BendRow, ...] = strength_tables().bend

    def at(part: str) -> float:
        return between([(row.deg, getattr(getattr(row, kind), part)) for row in rows], deg)

    return Bounds(middle=at("middle"), low=at("low"), high=at("high"))


def _bend(deg: float, kind: str) -> Factor:
    source = strength_tables().bend_source
    return Factor(
        "bend of the tendon",
        "",
        bend_bounds(deg, kind).spread(),
        True,
        f"{deg:g} degrees",
        "",
        source.source,
        source.status,
    )


def _absorbed(construct: Construct, day: int) -> list[Factor]:
    """Return the loss of a core that dissolves or may dissolve: at the lower end all of it, at the upper end none."""
    tables, known = healing_tables(), construct.material.known
    names = construct.material.candidates if known else (tables.unstated_material.material,)
    rows = [row for row in tables.absorbed if row.material in names]
    if not rows or day == 0:
        return []
    left = {row.material: between(list(zip(row.days, row.left, strict=True)), day) for row in rows}
    worst = min(rows, key=lambda row: left[row.material])
    low = left[worst.material]
    spread = Spread.of(sqrt(low), low, 1.0)
    if not known:
        unstated = tables.unstated_material
        words = f"not stated; at worst {worst.material}, day {day}"
        return [Factor("suture dissolving", "", spread, False, words, "", unstated.source, unstated.status)]
    words = f"{worst.material}, day {day}"
    return [Factor("suture dissolving", "", spread, True, words, "", worst.source, worst.status)]


def _gap_share(construct: Construct) -> Factor:
    """Return the force at a 2 mm gap as a share of the breaking force."""
    tables = strength_tables()
    feature = Feature("peripheral", construct.peripheral.candidates, construct.peripheral.doubts)
    figures = {"present": tables.gap_present, "absent": tables.gap_absent}

    def spread_of(value: Value) -> Spread | None:
        return figures[str(value)].spread() if value in figures else None

    factor = _factor("2 mm gap as share of breaking", feature, tables.gap_unknown, spread_of, lambda v: figures[str(v)])
    words = f"peripheral suture {factor.value}" if factor.known else factor.value
    return Factor(factor.name, "", factor.spread, factor.known, words, factor.standing, factor.source, factor.status)


def _shares(factors: Sequence[Factor], of_total: Sequence[Factor]) -> list[FactorShare]:
    """Return the factors for display; the share of one that is not part of the breaking force is 0."""
    total = sum(f.spread.variance for f in of_total)
    return [
        FactorShare.model_validate(
            dict(
                name=f.name,
                field=f.field,
                known=f.known,
                value=f.value,
                standing=f.standing,
                middle=f.spread.middle,
                low=f.spread.low,
                high=f.spread.high,
                share=f.spread.variance / total if total and f in of_total else 0.0,
                source=f.source,
                status=f.status,
            )
        )
        for f in factors
    ]


def _notes(construct: Construct, day: int, posture_deg: float, factors: Sequence[Factor]) -> list[str]:
    words, notes = strength_tables().sentences, []
    if product([f.spread for f in factors]).high * healing(construct, day)[1] > strength_tables().ceiling.newton:
        notes.append(words.ceiling.format(newton=strength_tables().ceiling.newton))
    last = healing_tables().point[-1].day
    if day > last:
        notes.append(words.beyond_days.format(last=last))
    if posture_deg > strength_tables().bend[-1].deg:
        notes.append(words.bend_beyond)
    if construct.gap == "seen":
        notes.append(words.gap_seen)
    if construct.gap == "small":
        notes.append(words.gap_small)
    if construct.gap == "unknown":
        notes.append(words.gap_unstated)
    if construct.slip:
        notes.append(words.slip)
    return notes
