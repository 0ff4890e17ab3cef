"""How figures are written in the report, the same in the page, the print and the charts."""

from notereader.audit.agreement import Measure
from notereader.audit.correction import Corrected
from notereader.audit.rates import Rate

# From this number on one decimal place of a percentage says something.
_MANY = 1000
NOTHING = "–"


def percent(share: float, of: int = 0) -> str:
    """Write a share as a percentage: '42 %', '42.3 %' where there are many."""
    return f"{100 * share:.1f} %" if of >= _MANY else f"{100 * share:.0f} %"


def rate_words(rate: Rate) -> str:
    """Write a share with its interval: '42 % (35 to 49)'."""
    if rate.share is None or rate.low is None or rate.high is None:
        return NOTHING
    return f"{percent(rate.share, rate.of)} ({_limits(rate.low, rate.high)})"


def rate_of_words(rate: Rate) -> str:
    """Write a share with its counts and its interval: '9 of 40, 22 % (12 to 38)'."""
    return f"{rate.count} of {rate.of}, {rate_words(rate)}" if rate.of else NOTHING


def corrected_words(found: Corrected | None, rests_on_little: bool = False) -> str:
    """Write a corrected share with its interval; a star marks one that rests on very few confirmed notes."""
    if found is None:
        return NOTHING
    return f"{percent(found.share)} ({_limits(found.low, found.high)}){' *' if rests_on_little else ''}"


def measure_words(measure: Measure) -> str:
    """Write a measure of agreement with its interval: '0.62 (0.41 to 0.83)'."""
    if measure.value is None:
        return "not defined"
    if measure.low is None or measure.high is None:
        return f"{measure.value:.2f}"
    return f"{measure.value:.2f} ({measure.low:.2f} to {measure.high:.2f})"


def _limits(low: float, high: float) -> str:
    return f"{100 * low:.0f} to {100 * high:.0f}"


def notes_words(count: int) -> str:
    """Write a number of notes: '1 note', '2,340 notes'."""
    return "1 note" if count == 1 else f"{count:,} notes"
