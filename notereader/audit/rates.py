"""Shares with their intervals.

The interval is Wilson's score interval without continuity correction (Wilson 1927, J Am Stat Assoc 22:209; method 3 of
Newcombe 1998, Stat Med 17:857). Where one note counts several times, because it speaks of several tendons, the
interval rests on the effective sample size (Franco, Little, Louis, Slud 2019, J Surv Stat Methodol 7:334, who recommend
the Wilson form for it).
"""

from dataclasses import dataclass
from math import sqrt
from statistics import NormalDist

Z95 = NormalDist().inv_cdf(0.975)


@dataclass(frozen=True, slots=True)
class Rate:
    """A count of a whole with its 95 % interval; the share and the interval are None where there is nothing to count.

    `low` and `high` are shares from 0 to 1.
    """

    count: int
    of: int
    low: float | None
    high: float | None

    @property
    def share(self) -> float | None:
        """The share from 0 to 1."""
        return self.count / self.of if self.of else None


def wilson(count: float, of: float, z: float = Z95) -> tuple[float, float]:
    """Return Wilson's score interval of count/of, `of` greater than 0; effective counts need not be whole."""
    share = count / of
    middle = share + z * z / (2 * of)
    half = z * sqrt(share * (1 - share) / of + z * z / (4 * of * of))
    scale = 1 + z * z / of
    # At 0 and at all, the limit itself is exact; rounding would leave a trace beside it.
    low = 0.0 if count == 0 else (middle - half) / scale
    high = 1.0 if count == of else (middle + half) / scale
    return low, high


def rate(count: int, of: int) -> Rate:
    """Return a share of independent units with its interval."""
    return Rate(count, of, *(wilson(count, of) if of else (None, None)))


@dataclass(slots=True)
class ClusterSums:
    """Running sums over notes, each with some places of which some count; they take the same room for any number."""

    notes: int = 0
    places: int = 0
    hits: int = 0
    places_squared: int = 0
    hits_squared: int = 0
    product: int = 0

    def add(self, hits: int, places: int) -> None:
        """Add one note in which `hits` of `places` count."""
        self.notes += 1
        self.places += places
        self.hits += hits
        self.places_squared += places * places
        self.hits_squared += hits * hits
        self.product += hits * places

    def rate(self) -> Rate:
        """Return the share of all places, its interval widened where places of the same note are alike."""
        if not self.places:
            return Rate(0, 0, None, None)
        effective = self._effective()
        low, high = wilson(self.hits / self.places * effective, effective)
        return Rate(self.hits, self.places, low, high)

    def _effective(self) -> float:
        """Return the effective sample size; never more than the number of places.

        The variance is that of a ratio of two sums over notes (Cochran 1977, Sampling Techniques, section 2.11, from
        memory). Where all places agree it says nothing, and the notes are counted instead, which is the careful way.
        """
        share = self.hits / self.places
        if self.notes < 2 or not 0 < share < 1:
            return float(self.notes)
        left = self.hits_squared - 2 * share * self.product + share * share * self.places_squared
        variance = self.notes / (self.notes - 1) * left / self.places**2
        plain = share * (1 - share) / self.places
        return self.places / max(1.0, variance / plain)
