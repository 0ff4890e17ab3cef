"""How often the reader errs, and the share corrected for it.

The reader is treated as a test: it finds a thing stated in a note or not, and a person who confirmed the note says what
is true. Sensitivity and specificity carry Wilson intervals. The corrected share is that of Rogan and Gladen (1978, Am J
Epidemiol 107:71); its interval, which also carries the uncertainty of sensitivity and specificity, is that of Lang and
Reiczigel (2014, Prev Vet Med 113:13, equations 2, 4, 6, 7, 16 and 17).
"""

from dataclasses import dataclass
from math import sqrt

from notereader.audit.rates import Z95, Rate, rate


@dataclass(frozen=True, slots=True)
class Confusion:
    """Notes by what is true and what the reader found: stated or not."""

    true_stated: int = 0
    missed: int = 0
    invented: int = 0
    true_silent: int = 0

    @property
    def stated(self) -> int:
        """Notes in which the thing is truly stated."""
        return self.true_stated + self.missed

    @property
    def silent(self) -> int:
        """Notes in which it truly is not."""
        return self.invented + self.true_silent

    def sensitivity(self) -> Rate:
        """Share of the stated ones that the reader found."""
        return rate(self.true_stated, self.stated)

    def specificity(self) -> Rate:
        """Share of the others in which the reader rightly found nothing."""
        return rate(self.true_silent, self.silent)

    def plus(self, truth: bool, found: bool) -> "Confusion":
        """Return the counts with one more note."""
        return Confusion(
            self.true_stated + (truth and found),
            self.missed + (truth and not found),
            self.invented + (found and not truth),
            self.true_silent + (not truth and not found),
        )


@dataclass(frozen=True, slots=True)
class Corrected:
    """A corrected share with its 95 % interval, cut off at 0 and 1; `raw` is the share before cutting off."""

    share: float
    low: float
    high: float
    raw: float


def rogan_gladen(apparent: float, sensitivity: float, specificity: float) -> float:
    """Return the true share behind an apparent one; it can lie below 0 or above 1.

    Raises ValueError where sensitivity and specificity add up to 1 or less: such a test says nothing.
    """
    if sensitivity + specificity <= 1:
        raise ValueError("sensitivity and specificity must add up to more than 1")
    return (apparent + specificity - 1) / (sensitivity + specificity - 1)


def corrected(found: int, of: int, sample: Confusion) -> Corrected | None:
    """Return the corrected share of notes that state a thing.

    `found` of `of` notes state it by the reader; `sample` compares reader and person on notes drawn at random. None
    where the sample cannot tell: no note in which it is stated, none in which it is not, or a reader no better than
    chance.
    """
    if not of or not sample.stated or not sample.silent:
        return None
    sensitivity, specificity = sample.true_stated / sample.stated, sample.true_silent / sample.silent
    if sensitivity + specificity <= 1:
        return None
    raw = rogan_gladen(found / of, sensitivity, specificity)
    limits = _lang_reiczigel(found, of, sample)
    return None if limits is None else Corrected(_cut(raw), *limits, raw)


def _lang_reiczigel(found: int, of: int, sample: Confusion) -> tuple[float, float] | None:
    """Return the interval, or None where the adjusted sensitivity and specificity add up to 1 or less."""
    n, n_se, n_sp = of + Z95**2, sample.stated + 2, sample.silent + 2
    p, se, sp = (found + Z95**2 / 2) / n, (sample.true_stated + 1) / n_se, (sample.true_silent + 1) / n_sp
    if se + sp <= 1:
        return None
    true = rogan_gladen(p, se, sp)
    spread_se, spread_sp = se * (1 - se) / n_se, sp * (1 - sp) / n_sp
    variance = p * (1 - p) / n + true**2 * spread_se + (1 - true) ** 2 * spread_sp
    half = Z95 * sqrt(variance) / (se + sp - 1)
    middle = true + 2 * Z95**2 * (true * spread_se - (1 - true) * spread_sp)
    return _cut(middle - half), _cut(middle + half)


def _cut(share: float) -> float:
    return min(1.0, max(0.0, share))
