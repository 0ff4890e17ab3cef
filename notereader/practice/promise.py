"""Whether a value promises more than the note does, and whether two values are the same."""

from functools import cache
from typing import Literal

from notereader.practice.words import Lean, tables
from notereader.record import Interval, Value
from notereader.vocabulary import FieldSpec, sizes, stitches

Leaning = Literal["over", "under", "other"]

_NO_LEAN = Lean()
_FLIPPED: dict[Leaning, Leaning] = {"over": "under", "under": "over", "other": "other"}


def same_value(spec: FieldSpec, first: Value, second: Value) -> bool:
    """True where two values of one field say the same; figures may differ by the rounding in practice.toml."""
    if isinstance(first, Interval) and isinstance(second, Interval):
        return _same_figure(spec, first.low, second.low) and _same_figure(spec, first.high, second.high)
    one, two = _number(first), _number(second)
    return first == second if one is None or two is None else _same_figure(spec, one, two)


def leaning(spec: FieldSpec, said: Value, true: Value | None) -> Leaning:
    """Return whether `said` promises more ('over') or less than what the note says (None: the note is silent)."""
    lean = tables().lean.get(f"{spec.group}.{spec.name}", _NO_LEAN)
    if true is None:
        return "over" if _promises(lean, said) else "other"
    if lean.ranks:
        return _compared(_rank(lean, said), _rank(lean, true))
    if lean.finer:
        return _finer(str(said), str(true))
    if lean.more is None:
        return "other"
    side = _compared(_figure(spec, said), _figure(spec, true))
    return side if lean.more == "over" else _FLIPPED[side]


def _promises(lean: Lean, said: Value) -> bool:
    """True where a value that the note does not give at all promises something."""
    rank = _rank(lean, said)
    return lean.silent_over or (rank is not None and rank > 0)


def _rank(lean: Lean, value: Value) -> int | None:
    return next((rank for rank, group in enumerate(lean.ranks) if value in group), None)


def _compared(said: float | None, true: float | None) -> Leaning:
    if said is None or true is None or said == true:
        return "other"
    return "over" if said > true else "under"


def _finer(said: str, true: str) -> Leaning:
    """Compare zones: IIB is more exact than II, and neither than IIC."""
    if said != true and said.rstrip("ABCD") == true:
        return "over"
    return "under" if said != true and true.rstrip("ABCD") == said else "other"


def _figure(spec: FieldSpec, value: Value) -> float | None:
    """Return the figure by which a value is compared: the lower end of a range, the grade of a suture."""
    if isinstance(value, Interval):
        return value.low if value.low is not None else value.high
    if spec.kind == "size":
        return _grades()[str(value)]
    if spec.kind == "date":
        return float(str(value).replace("-", ""))
    if spec.name == "stitch":
        return stitches()[str(value)].strands if str(value) in stitches() else None
    return _number(value)


@cache
def _grades() -> dict[str, float]:
    """Return size -> place from the finest to the thickest."""
    return {size: float(place) for place, size in enumerate(sizes())}


def _number(value: Value) -> float | None:
    return float(value) if isinstance(value, int | float) and not isinstance(value, bool) else None


def _same_figure(spec: FieldSpec, first: float | None, second: float | None) -> bool:
    if first is None or second is None:
        return first is second
    return abs(first - second) <= tables().same_within.get(spec.unit, 0.0) + 1e-9
