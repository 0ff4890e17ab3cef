"""Statistics of practice against published worked examples and reference libraries.

Libraries: scipy and scikit-learn, for tests only.
"""

import random

import pytest
from scipy import stats
from sklearn.metrics import cohen_kappa_score, ndcg_score

from notereader.practice.items import difficulty, item_rest_correlation, upper_lower
from notereader.practice.measures import correlation, discounted_share, kappa, somers_d, wilson

# Item analysis worksheet with its printed answers, ten students by ten questions, upper and lower group of five each:
# public document studylib.net/doc/25270846 (seen). Rows are students, the upper group first.
WORKSHEET = [
    [1, 1, 1, 1, 1, 1, 1, 1, 1, 1],
    [1, 1, 1, 1, 1, 1, 1, 1, 0, 1],
    [1, 1, 0, 1, 1, 1, 1, 1, 0, 0],
    [0, 1, 1, 1, 1, 1, 0, 1, 0, 1],
    [1, 1, 1, 0, 1, 1, 1, 0, 0, 1],
    [1, 1, 1, 0, 1, 1, 0, 1, 0, 0],
    [0, 1, 1, 0, 1, 1, 0, 1, 0, 1],
    [0, 1, 1, 1, 0, 0, 1, 0, 1, 0],
    [1, 1, 1, 0, 1, 0, 0, 0, 0, 1],
    [0, 1, 0, 0, 0, 1, 0, 0, 1, 0],
]
WORKSHEET_P = [0.60, 1.00, 0.80, 0.50, 0.80, 0.80, 0.50, 0.60, 0.30, 0.60]
WORKSHEET_D = [0.4, 0.0, 0.0, 0.6, 0.4, 0.4, 0.6, 0.4, -0.2, 0.4]

# Law School Admission Test, section 6, 1,000 examinees by five items (Bock and Lieberman 1970, Psychometrika 35:179;
# pattern counts from memory, they add up to 1,000 and give the published shares right). The correlations are those that
# the R package ltm prints for these data (Rizopoulos 2006, J Stat Softw 17(5)), from memory.
LSAT6 = {
    "00000": 3, "00001": 6, "00010": 2, "00011": 11, "00100": 1, "00101": 1, "00110": 3, "00111": 4,
    "01000": 1, "01001": 8, "01010": 0, "01011": 16, "01100": 0, "01101": 3, "01110": 2, "01111": 15,
    "10000": 10, "10001": 29, "10010": 14, "10011": 81, "10100": 3, "10101": 28, "10110": 15, "10111": 80,
    "11000": 16, "11001": 56, "11010": 21, "11011": 173, "11100": 11, "11101": 61, "11110": 28, "11111": 298,
}  # fmt: skip
LSAT6_P = [0.924, 0.709, 0.553, 0.763, 0.870]
LSAT6_EXCLUDED = [0.1128, 0.1532, 0.1728, 0.1444, 0.1216]


def lsat_scores():
    return [[float(c) for c in pattern] for pattern, count in LSAT6.items() for _ in range(count)]


@pytest.mark.parametrize("item", range(10))
def test_difficulty_and_discrimination_index_of_the_worksheet(item):
    assert difficulty(WORKSHEET, item) == pytest.approx(WORKSHEET_P[item])
    assert upper_lower(WORKSHEET, item, 0.5) == pytest.approx(WORKSHEET_D[item])


def test_difficulty_and_corrected_point_biserial_of_lsat_section_6():
    scores = lsat_scores()
    assert len(scores) == 1000
    for item in range(5):
        assert difficulty(scores, item) == pytest.approx(LSAT6_P[item])
        assert item_rest_correlation(scores, item) == pytest.approx(LSAT6_EXCLUDED[item], abs=5e-5)


def test_point_biserial_equals_scipy():
    draw = random.Random(1)
    for _ in range(50):
        item = [float(draw.random() < 0.6) for _ in range(30)]
        total = [draw.gauss(0, 1) + x for x in item]
        if len(set(item)) == 2:
            assert correlation(item, total) == pytest.approx(stats.pointbiserialr(item, total).statistic)


def test_rank_agreement_equals_somers_d_of_scipy():
    draw = random.Random(2)
    for _ in range(200):
        given = [float(draw.randint(0, 4)) for _ in range(draw.randint(2, 8))]
        ranked = [float(x) for x in draw.sample(range(20), len(given))]
        ours = somers_d(given, ranked)
        if len(set(given)) == 1:
            assert ours is None
        else:
            assert ours == pytest.approx(stats.somersd(given, ranked).statistic)


def test_rank_agreement_without_ties_is_kendalls_tau():
    draw = random.Random(3)
    for _ in range(100):
        count = draw.randint(2, 9)
        given, ranked = draw.sample(range(30), count), draw.sample(range(30), count)
        assert somers_d(given, ranked) == pytest.approx(stats.kendalltau(given, ranked).statistic)


def test_discounted_share_equals_scikit_learn():
    draw = random.Random(4)
    for _ in range(100):
        worth = [draw.random() for _ in range(draw.randint(3, 9))]
        order = draw.sample(range(len(worth)), len(worth))
        scores = [-float(order.index(i)) for i in range(len(worth))]
        gains = [worth[i] for i in order]
        assert discounted_share(gains, worth, 3) == pytest.approx(ndcg_score([worth], [scores], k=3))


def test_kappa_equals_scikit_learn():
    draw = random.Random(5)
    for _ in range(100):
        first = [draw.random() < 0.7 for _ in range(40)]
        second = [a if draw.random() < 0.8 else not a for a in first]
        cells = [sum((a, b) == cell for a, b in zip(first, second, strict=True)) for cell in _CELLS]
        assert kappa(*cells) == pytest.approx(cohen_kappa_score(first, second))


_CELLS = [(True, True), (True, False), (False, True), (False, False)]


def test_kappa_of_the_textbook_table():
    # The 2 by 2 table 20, 5, 10, 15 with kappa 0.40, as textbooks print it (from memory).
    assert kappa(20, 5, 10, 15) == pytest.approx(0.40)
    assert kappa(10, 0, 0, 0) is None
    assert kappa(0, 0, 0, 0) is None


# Newcombe 1998, Stat Med 17:857, score method without continuity correction; rows from memory.
@pytest.mark.parametrize(
    ("right", "trials", "low", "high"),
    [(81, 263, 0.2553, 0.3662), (15, 148, 0.0624, 0.1605), (0, 20, 0.0, 0.1611), (1, 29, 0.0061, 0.1718)],
)
def test_wilson_as_newcombe_prints_it(right, trials, low, high):
    rate = wilson(right, trials, 0.95)
    assert (rate.low, rate.high) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize("level", [0.8, 0.9, 0.95])
def test_wilson_equals_scipy_for_every_count(level):
    for trials in (1, 2, 5, 17):
        for right in range(trials + 1):
            ours = wilson(right, trials, level)
            theirs = stats.binomtest(right, trials).proportion_ci(level, method="wilson")
            assert (ours.low, ours.high) == pytest.approx((theirs.low, theirs.high), abs=1e-12)


def test_ties_at_the_border_of_a_group_enter_in_equal_parts():
    # Our own example, no source: four students, two of them tied at the border between groups of one.
    scores = [[1.0, 1.0], [1.0, 1.0], [0.0, 1.0], [0.0, 0.0]]
    assert upper_lower(scores, 0, 0.25) == pytest.approx(1.0 - 0.0)
    assert upper_lower([[1.0, 0.0], [0.0, 1.0], [0.0, 0.0]], 0, 0.34) == pytest.approx(0.5)


def test_students_who_did_not_meet_an_item_are_left_out():
    scores = [[1.0, None], [0.0, 1.0], [None, 0.0], [1.0, 1.0]]
    assert difficulty(scores, 0) == pytest.approx(2 / 3)
    assert difficulty([[None]], 0) is None
    assert upper_lower([[None, 1.0]], 0, 0.27) is None
    assert item_rest_correlation([[1.0, None]], 0) is None
