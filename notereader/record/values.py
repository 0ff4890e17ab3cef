"""Values of facts: what is possible, refused with a reason, and shown in plain words."""

from collections.abc import Callable
from datetime import date

from pydantic import BaseModel, ConfigDict, model_validator

from notereader.vocabulary.fields import FieldSpec
from notereader.vocabulary.sutures import sizes


class ValueRefused(ValueError):
    """A value that the field cannot take; the message says why and what it can take."""


class Interval(BaseModel):
    """A range of figures; a single figure has low == high, an open end is None."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    low: float | None
    high: float | None

    @model_validator(mode="after")
    def _in_order(self) -> "Interval":
        if self.low is None and self.high is None:
            raise ValueError("a range needs a lower or an upper figure")
        if self.low is not None and self.high is not None and self.high < self.low:
            raise ValueError(f"the upper figure ({self.high:g}) is smaller than the lower one ({self.low:g})")
        return self


Value = bool | int | float | str | Interval

# The unit of joint positions in the resource of fields; figures below zero are extension.
_FLEXION = "degrees of flexion"


def check_value(spec: FieldSpec, value: Value) -> Value:
    """Return the value in its stored form. Raises ValueRefused with the reason where the field cannot take it."""
    return _CHECKS[spec.kind](spec, value)


def _refuse(spec: FieldSpec, value: object, wanted: str) -> ValueRefused:
    return ValueRefused(f"{spec.label}: {value!r} is not possible; {wanted}.")


def _choice(spec: FieldSpec, value: Value) -> Value:
    if value not in spec.values or isinstance(value, bool):
        raise _refuse(spec, value, f"choose one of {', '.join(spec.values)}")
    return value


def _in_limits(spec: FieldSpec, figure: float) -> bool:
    return (spec.low is None or figure >= spec.low) and (spec.high is None or figure <= spec.high)


def _limits(spec: FieldSpec) -> str:
    return f"give a figure from {spec.low:g} to {spec.high:g} {spec.unit}".rstrip()


def _whole(spec: FieldSpec, value: Value) -> Value:
    if isinstance(value, float) and value.is_integer():
        value = int(value)
    if isinstance(value, bool) or not isinstance(value, int) or not _in_limits(spec, value):
        raise _refuse(spec, value, _limits(spec).replace("figure", "whole number"))
    return value


def _number(spec: FieldSpec, value: Value) -> Value:
    if isinstance(value, bool) or not isinstance(value, int | float) or not _in_limits(spec, value):
        raise _refuse(spec, value, _limits(spec))
    return int(value) if float(value).is_integer() else value


def _size(spec: FieldSpec, value: Value) -> Value:
    if not isinstance(value, str) or value not in sizes():
        raise _refuse(spec, value, "give a USP size such as 4-0 (or 0, 1, 2)")
    return value


def _interval(spec: FieldSpec, value: Value) -> Value:
    if not isinstance(value, Interval):
        raise _refuse(spec, value, "give a range with a lower and an upper figure")
    if not all(_in_limits(spec, figure) for figure in (value.low, value.high) if figure is not None):
        raise _refuse(spec, show_value(value), _limits(spec))
    return value


def _date(spec: FieldSpec, value: Value) -> Value:
    try:
        if not isinstance(value, str):
            raise ValueError
        return date.fromisoformat(value).isoformat()
    except ValueError:
        raise _refuse(spec, value, "give a date as year-month-day, such as 2031-03-14") from None


def _yes_no(spec: FieldSpec, value: Value) -> Value:
    if not isinstance(value, bool):
        raise _refuse(spec, value, "answer yes or no")
    return value


def _named(spec: FieldSpec, value: Value) -> Value:
    if value is not True:
        raise _refuse(spec, value, "it is either in the note (yes) or the note is silent on it")
    return value


_CHECKS: dict[str, Callable[[FieldSpec, Value], Value]] = {
    "choice": _choice,
    "whole": _whole,
    "number": _number,
    "size": _size,
    "interval": _interval,
    "date": _date,
    "yes-no": _yes_no,
    "named": _named,
}


def show_value(value: Value | None, unit: str = "") -> str:
    """Say a value in plain words: '4', '7 to 10 mm', 'yes', 'not stated'; flexion below zero as extension."""
    if value is None:
        return "not stated"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Interval):
        return _flexion_words(value) if unit == _FLEXION else f"{_range_words(value)} {unit}".rstrip()
    if isinstance(value, float | int):
        return f"{value:g} {unit}".rstrip()
    return value


def _range_words(value: Interval) -> str:
    if value.high is None:
        return f"at least {value.low:g}"
    if value.low is None:
        return f"at most {value.high:g}"
    return f"{value.low:g}" if value.low == value.high else f"{value.low:g} to {value.high:g}"


def _flexion_words(value: Interval) -> str:
    """Say a range of flexion; what is below zero is extension, for a minus sign is easily overlooked."""
    low, high = value.low, value.high
    if low is None or high is None:
        figure = low if low is not None else high or 0
        return f"{'at least' if (low is not None) is (figure >= 0) else 'at most'} {_degrees(figure)}"
    if low == high:
        return _degrees(low)
    if high <= 0:
        return f"{abs(high):g} to {_degrees(low)}"
    return f"{low:g} to {_degrees(high)}" if low >= 0 else f"{_degrees(low)} to {_degrees(high)}"


def _degrees(figure: float) -> str:
    return f"{figure:g} {_FLEXION}" if figure >= 0 else f"{abs(figure):g} degrees of extension"
