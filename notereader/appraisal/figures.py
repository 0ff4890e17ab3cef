"""Figures with their sources, and ranges that add up in closed form.

A factor is taken as log-normal with its own spread below and above the middle. Independent factors multiply: their
logarithms add, and the squares of their spreads add, below and above separately. Nothing is drawn at random, so the
same record always gives the same range.
"""

from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from math import exp, hypot, log
from typing import Any, Literal, Self, TypeVar

from pydantic import BaseModel, ConfigDict, Field, ValidationError, model_validator

from notereader.vocabulary import resource_file
from notereader.vocabulary.places import ResourceFault

# Half-width of a 90 % range in standard deviations of a normal distribution.
Z90 = 1.645

Status = Literal["verified", "memory", "derived"]


class Table(BaseModel):
    """Base of everything read from a resource file: unknown keys are refused, values cannot change."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class Sourced(Table):
    """A statement with its source: author, year, journal, or 'common practice, no source', or 'from memory'."""

    source: str = Field(min_length=3)
    status: Status = "derived"


class Bounds(Table):
    """A middle with a 90 % range."""

    middle: float = Field(gt=0)
    low: float = Field(gt=0)
    high: float = Field(gt=0)

    @model_validator(mode="after")
    def _in_order(self) -> Self:
        if not self.low <= self.middle <= self.high:
            raise ValueError(f"low {self.low:g}, middle {self.middle:g} and high {self.high:g} must rise")
        return self

    def spread(self) -> "Spread":
        """Return the range as a log-normal spread."""
        return Spread.of(self.middle, self.low, self.high)


class Figure(Bounds):
    """A middle with a 90 % range and its source."""

    source: str = Field(min_length=3)
    status: Status = "derived"
    unit: str = ""


@dataclass(frozen=True, slots=True)
class Spread:
    """A log-normal factor: logarithm of the middle, and standard deviations of the logarithm below and above it."""

    mu: float
    down: float = 0.0
    up: float = 0.0

    @classmethod
    def of(cls, middle: float, low: float, high: float) -> "Spread":
        """Build a spread from a middle and a 90 % range."""
        return cls(log(middle), log(middle / low) / Z90, log(high / middle) / Z90)

    @property
    def middle(self) -> float:
        """The middle of the factor."""
        return exp(self.mu)

    @property
    def low(self) -> float:
        """The lower end of the 90 % range."""
        return exp(self.mu - Z90 * self.down)

    @property
    def high(self) -> float:
        """The upper end of the 90 % range."""
        return exp(self.mu + Z90 * self.up)

    @property
    def variance(self) -> float:
        """What the factor adds to the spread of the product, both sides together."""
        return self.down**2 + self.up**2

    def times(self, other: "Spread") -> "Spread":
        """Return the product with an independent factor."""
        return Spread(self.mu + other.mu, hypot(self.down, other.down), hypot(self.up, other.up))

    def widened(self, factor: float, most: "Spread") -> "Spread":
        """Return the factor with its range widened both ways, never wider than not knowing it at all (`most`)."""
        extra = log(factor) / Z90
        down = max(self.down, min(hypot(self.down, extra), most.down))
        up = max(self.up, min(hypot(self.up, extra), most.up))
        return Spread(self.mu, down, up)

    def mixed(self, other: "Spread", share: float) -> "Spread":
        """Return the factor `share` of the way towards another, in proportion on the logarithmic scale."""
        return Spread(
            self.mu + share * (other.mu - self.mu),
            self.down + share * (other.down - self.down),
            self.up + share * (other.up - self.up),
        )


def product(factors: list[Spread]) -> Spread:
    """Return the product of independent factors, in closed form."""
    total = Spread(0.0)
    for factor in factors:
        total = total.times(factor)
    return total


def between(points: list[tuple[float, float]], at: float) -> float:
    """Return the value at `at` between rising points (x, value) in proportion, unchanged beyond the ends."""
    if at <= points[0][0]:
        return points[0][1]
    for (x0, v0), (x1, v1) in pairwise(points):
        if at <= x1:
            return v0 + (v1 - v0) * (at - x0) / (x1 - x0)
    return points[-1][1]


T = TypeVar("T", bound=Table)


@cache
def _raw(name: str) -> dict[str, Any]:
    return resource_file(name)


def load(name: str, model: type[T]) -> T:
    """Read a resource file into its model. Raises ResourceFault with the entry and what is wrong with it."""
    try:
        return model.model_validate(_raw(name))
    except ValidationError as fault:
        first = fault.errors(include_url=False, include_context=False)[0]
        where = ".".join(str(part) for part in first["loc"]) or "the file"
        raise ResourceFault(f"{name}: {where}: {first['msg']}. Mend that entry.") from None
