"""Shares, p-chart limits and corrected shares against published worked examples and reference libraries."""

import random

import pytest
from statsmodels.stats.proportion import proportion_confint

from notereader.audit.correction import Confusion, corrected, rogan_gladen
from notereader.audit.pcharts import limits, p_chart
from notereader.audit.rates import ClusterSums, rate, wilson
from notereader.audit.tables import audit_tables

RULES = audit_tables().signal


# Newcombe 1998, Stat Med 17:857, method 3 (score without continuity correction); rows from memory.
@pytest.mark.parametrize(
    ("count", "of", "low", "high"),
    [(81, 263, 0.2553, 0.3662), (15, 148, 0.0624, 0.1605), (0, 20, 0.0, 0.1611), (1, 29, 0.0061, 0.1718)],
)
def test_wilson_as_newcombe_prints_it(count: int, of: int, low: float, high: float) -> None:
    assert wilson(count, of) == pytest.approx((low, high), abs=5e-5)


def test_wilson_of_an_imperfect_test_example() -> None:
    # RSurveillance manual, example tp(20, 120, ...), apparent prevalence, row 'wilson'.
    assert wilson(20, 120) == pytest.approx((0.1105600, 0.2434528), abs=5e-8)


def test_wilson_equals_statsmodels_for_every_count() -> None:
    for of in (1, 2, 7, 40, 1000):
        for count in range(0, of + 1, max(1, of // 40)):
            expected = proportion_confint(count, of, method="wilson")
            assert wilson(count, of) == pytest.approx(expected, abs=1e-12)


def test_a_share_of_nothing_has_no_interval() -> None:
    assert (rate(0, 0).share, rate(0, 0).low, rate(0, 0).high) == (None, None, None)


def test_places_that_are_all_alike_within_a_note_count_as_notes() -> None:
    # Two places per note, always alike: the design effect is the cluster size (Kish 1965, from memory).
    sums = ClusterSums()
    for at in range(400):
        sums.add(2 if at % 2 else 0, 2)
    found = sums.rate()
    assert (found.count, found.of) == (400, 800)
    assert (found.low, found.high) == pytest.approx(wilson(200, 400), abs=2e-4)


def test_one_place_per_note_gives_the_plain_interval() -> None:
    sums = ClusterSums()
    for at in range(100):
        sums.add(int(at < 37), 1)
    # The sample variance divides by n - 1.
    assert (sums.rate().low, sums.rate().high) == pytest.approx(wilson(37 * 0.99, 99), abs=1e-9)


def test_independent_places_are_hardly_widened() -> None:
    chance = random.Random(5)
    sums = ClusterSums()
    for _ in range(3000):
        sums.add(sum(chance.random() < 0.3 for _ in range(3)), 3)
    found, plain = sums.rate(), wilson(sums.hits, sums.places)
    assert found.high is not None and found.low is not None
    assert found.high - found.low == pytest.approx(plain[1] - plain[0], rel=0.05)


# n 400, p .15: justaaa.com 90864. n 200, p .0945: Devore, Probability and Statistics, 9th edition (as printed on
# vaia.com). n 200, p .16: An Introduction to Business Statistics, example 16.6 (as printed on fliphtml5.com).
@pytest.mark.parametrize(
    ("centre", "of", "low", "high"),
    [(0.15, 400, 0.0964, 0.2036), (0.0945, 200, 0.0325, 0.1565), (0.16, 200, 0.0822, 0.2378)],
)
def test_p_chart_limits_as_textbooks_print_them(centre: float, of: int, low: float, high: float) -> None:
    assert limits(centre, of) == pytest.approx((low, high), abs=6e-5)


# Montgomery, Introduction to Statistical Quality Control: 30 samples of 50 cans, from memory.
CANS = [12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6]


def test_p_chart_of_montgomery() -> None:
    chart = p_chart([(str(at + 1), count, 50) for at, count in enumerate(CANS)], RULES)
    assert chart is not None
    assert chart.centre == pytest.approx(0.2313, abs=5e-5)
    assert (chart.points[0].low, chart.points[0].high) == pytest.approx((0.0524, 0.4102), abs=5e-5)
    # The book finds samples 15 and 23 beyond the limits.
    assert [p.period for p in chart.points if "limit" in p.signals] == ["15", "23"]


def test_p_chart_of_montgomery_without_the_two_samples() -> None:
    kept = [(str(at + 1), count, 50) for at, count in enumerate(CANS) if at not in (14, 22)]
    chart = p_chart(kept, RULES)
    assert chart is not None
    assert chart.centre == pytest.approx(0.2150, abs=5e-5)
    assert (chart.points[0].low, chart.points[0].high) == pytest.approx((0.0407, 0.3893), abs=5e-5)


def test_p_chart_with_samples_of_two_sizes() -> None:
    # Pyzdek, The Handbook for Quality Management, table 9.6: 8000 peaches in 25 shipments, 1544 bruised.
    bruised = [47, 42, 55, 51, 46, 61, 39, 44, 41, 51, 88, 101, 101, 40, 48, 47, 50, 48, 57, 45, 43, 105, 98, 100, 96]
    sizes = [500 if count > 80 else 250 for count in bruised]
    rows = [(f"{at:02}", n, of) for at, (n, of) in enumerate(zip(bruised, sizes, strict=True), 1)]
    chart = p_chart(rows, RULES)
    assert chart is not None
    assert chart.centre == 1544 / 8000
    # The wider sample has the narrower limits; the book calls the process stable.
    assert chart.points[10].high < chart.points[0].high
    assert not any("limit" in point.signals for point in chart.points)


# quadernodiepidemiologia.it q1106r5; epiR manual, epi.prev: 23 of 150 cows; RSurveillance manual, tp(20, 120, .9, .99).
@pytest.mark.parametrize(
    ("apparent", "sensitivity", "specificity", "true", "within"),
    [(0.34, 0.9, 0.8, 0.20, 1e-12), (23 / 150, 0.96, 0.89, 0.051, 5e-4), (20 / 120, 0.9, 0.99, 0.17603, 5e-6)],
)
def test_rogan_gladen(apparent: float, sensitivity: float, specificity: float, true: float, within: float) -> None:
    assert rogan_gladen(apparent, sensitivity, specificity) == pytest.approx(true, abs=within)


def test_rogan_gladen_can_fall_below_nothing() -> None:
    # epiR manual: 6 of 151, Se .964, Sp .927, published as 0 (0 to 1.3) per 100.
    assert rogan_gladen(6 / 151, 0.964, 0.927) < 0
    found = corrected(6, 151, Confusion(964, 36, 73, 927))
    assert found is not None
    assert found.share == 0 and found.raw < 0
    assert found.low == 0


def test_the_corrected_interval_nears_the_one_of_a_known_test() -> None:
    # RSurveillance manual, tp(20, 120, .9, .99), row 'wilson': 0.1129887 to 0.2623065. With a large sample the
    # uncertainty of sensitivity and specificity vanishes; what is left is the form of the interval.
    found = corrected(20, 120, Confusion(900_000, 100_000, 10_000, 990_000))
    assert found is not None
    assert found.share == pytest.approx(0.17603, abs=5e-6)
    assert (found.low, found.high) == pytest.approx((0.1129887, 0.2623065), abs=5e-3)


def test_the_corrected_interval_by_its_equations() -> None:
    # Lang and Reiczigel 2014, equations 6, 7, 16, 17, worked by hand for 60 of 200, Se 50/60, Sp 48/60.
    z2 = 1.959963984540054**2
    n, p = 200 + z2, (60 + z2 / 2) / (200 + z2)
    se, sp = 51 / 62, 49 / 62
    true = (p + sp - 1) / (se + sp - 1)
    shift = 2 * z2 * (true * se * (1 - se) / 62 - (1 - true) * sp * (1 - sp) / 62)
    variance = (p * (1 - p) / n + true**2 * se * (1 - se) / 62 + (1 - true) ** 2 * sp * (1 - sp) / 62) / (
        se + sp - 1
    ) ** 2
    found = corrected(60, 200, Confusion(50, 10, 12, 48))
    assert found is not None
    half = (z2 * variance) ** 0.5
    assert (found.low, found.high) == pytest.approx((max(0, true + shift - half), true + shift + half), abs=1e-12)


def test_the_corrected_interval_holds_its_promise() -> None:
    """Lang and Reiczigel report coverage near the nominal level; drawn anew here for one setting."""
    chance = random.Random(11)
    held, draws, true, se, sp = 0, 1500, 0.6, 0.85, 0.9

    def binomial(n: int, p: float) -> int:
        return sum(chance.random() < p for _ in range(n))

    for _ in range(draws):
        found = binomial(200, true * se + (1 - true) * (1 - sp))
        a, b = binomial(36, se), binomial(24, sp)
        answer = corrected(found, 200, Confusion(a, 36 - a, 24 - b, b))
        held += answer is not None and answer.low <= true <= answer.high
    assert held / draws >= 0.94


def test_no_correction_where_the_sample_cannot_tell() -> None:
    assert corrected(5, 10, Confusion(8, 2, 0, 0)) is None
    assert corrected(5, 10, Confusion(0, 0, 2, 8)) is None
    assert corrected(5, 10, Confusion(2, 8, 8, 2)) is None
    assert corrected(0, 0, Confusion(8, 2, 2, 8)) is None
    with pytest.raises(ValueError, match="add up"):
        rogan_gladen(0.5, 0.5, 0.5)
