"""The middle of the model, which the program itself never shows: for ratios against published means only."""

from math import prod

from notereader.appraisal.construct import Construct
from notereader.appraisal.strength import strength_of


def middle_of(construct: Construct, posture_deg: float = 0.0) -> float:
    """Return the middle of the breaking force of a fresh repair, newton: the product of the factors' middles."""
    # The last factor turns breaking force into gap force.
    return prod(factor.middle for factor in strength_of(construct, 0, posture_deg).factors[:-1])
