"""Kappa and alpha against published worked examples and reference libraries."""

import random
from collections.abc import Sequence
from typing import Any

import krippendorff
import numpy as np
import pytest
from sklearn.metrics import cohen_kappa_score
from statsmodels.stats.inter_rater import cohens_kappa

from notereader.audit.agreement import alpha, figures_over_notes, kappa, over_notes, percent_agreement

Pairs = list[tuple[Any, Any]]


def pairs_of(table: Sequence[Sequence[int]]) -> Pairs:
    """Return the pairs behind a table of counts."""
    return [(a, b) for a, row in enumerate(table) for b, n in enumerate(row) for _ in range(n)]


def units_of(*rows: str) -> list[list[int | str | None]]:
    """Return the units behind one string of values for each reader; '.' is missing."""
    return [[None if v == "." else int(v) if v.isdigit() else v for v in unit] for unit in zip(*rows, strict=True)]


# Cohen 1968, Psychol Bull 70:213, 200 units, as the manual of psych for R prints it ('cohen reports .492'). The table
# of two by two: textbook, from memory.
@pytest.mark.parametrize(
    ("table", "value", "within"),
    [([[88, 14, 18], [10, 40, 10], [2, 6, 12]], 0.492, 6e-4), ([[20, 5], [10, 15]], 0.40, 1e-12)],
)
def test_kappa_as_published(table: list[list[int]], value: float, within: float) -> None:
    assert kappa(pairs_of(table)).value == pytest.approx(value, abs=within)


def test_kappa_with_its_interval_as_published() -> None:
    # statpsych manual, ci.kappa(.05, 31, 12, 4, 58), after Fleiss and Paik 2003: 0.6756757, 0.5317210 to 0.8196303.
    found = kappa(pairs_of([[31, 12], [4, 58]]))
    assert (found.value, found.low, found.high) == pytest.approx((0.6756757, 0.5317210, 0.8196303), abs=5e-8)


def test_kappa_equals_the_libraries_on_random_tables() -> None:
    chance = random.Random(2)
    for _ in range(30):
        size = chance.randint(2, 5)
        table = [[chance.randint(0, 20) + 15 * (a == b) for b in range(size)] for a in range(size)]
        pairs = pairs_of(table)
        found, expected = kappa(pairs), cohens_kappa(table)
        assert found.value == pytest.approx(cohen_kappa_score(*zip(*pairs, strict=True)), abs=1e-12)
        assert found.value == pytest.approx(expected.kappa, abs=1e-12)
        limits = (max(-1.0, expected.kappa_low), min(1.0, expected.kappa_upp))
        assert (found.low, found.high) == pytest.approx(limits, abs=1e-9)


def test_kappa_of_one_value_is_not_defined_and_full_agreement_has_no_interval() -> None:
    assert kappa([("a", "a")] * 9).value is None
    full = kappa([("a", "a"), ("b", "b"), ("b", "b")])
    assert (full.value, full.low, full.high) == (1.0, None, None)


# Krippendorff 2011, Computing Krippendorff's alpha-reliability, examples A and B; from memory.
def test_alpha_of_two_readers_as_published() -> None:
    assert alpha(units_of("0100000010", "1110010000")) == pytest.approx(0.095, abs=5e-4)
    assert alpha(units_of("aabbdcccedda", "babbbccceddd")) == pytest.approx(0.692, abs=5e-4)


# Krippendorff 2011, examples C and D (also in the manual of irr for R): four readers with gaps.
FOUR = units_of("123321412...", "1233224125.3", ".3332342251.", "12332441251.")


def test_alpha_with_missing_values_as_published() -> None:
    assert alpha(FOUR) == pytest.approx(0.743, abs=5e-4)
    assert alpha(FOUR, "interval") == pytest.approx(0.849, abs=5e-4)


# How often each of four values was given to each unit by three readers: the example that ships with the krippendorff
# library, .691 by name and .811 by distance.
THREE = "1000 0000 0200 2000 0020 0021 0003 1010 0200 2000 2000 0020 0020 0000 0011"


def test_alpha_of_three_readers_as_published() -> None:
    units = [[value for value, n in enumerate(counts, 1) for _ in range(int(n))] for counts in THREE.split()]
    assert alpha(units) == pytest.approx(0.691, abs=5e-4)
    assert alpha(units, "interval") == pytest.approx(0.811, abs=5e-4)


def test_alpha_equals_the_library_on_random_data() -> None:
    chance = random.Random(3)
    for _ in range(30):
        truth = [chance.randint(1, 4) for _ in range(25)]
        readers = [
            [None if chance.random() < 0.15 else v if chance.random() < 0.7 else chance.randint(1, 4) for v in truth]
            for _ in range(chance.randint(2, 4))
        ]
        data = [[np.nan if v is None else v for v in reader] for reader in readers]
        for metric in ("nominal", "interval"):
            expected = krippendorff.alpha(reliability_data=data, level_of_measurement=metric)
            assert alpha(list(zip(*readers, strict=True)), metric) == pytest.approx(expected, abs=1e-12)


def test_alpha_of_one_value_is_not_defined() -> None:
    assert alpha([["a", "a"], ["a", "a"]]) is None
    assert alpha([["a", None]]) is None


def test_both_measures_over_notes_equal_the_plain_ones() -> None:
    chance = random.Random(4)
    notes = []
    for _ in range(60):
        pairs = [(v, v if chance.random() < 0.8 else chance.choice("abc")) for v in chance.choices("abc", k=3)]
        notes.append(pairs)
    flat = [pair for pairs in notes for pair in pairs]
    found_kappa, found_alpha = over_notes(notes, seed=1)
    assert found_kappa.value == pytest.approx(kappa(flat).value)
    assert found_alpha.value == pytest.approx(alpha(flat))
    # Three independent places per note: drawing notes must come near the large-sample interval.
    plain = kappa(flat)
    assert (found_kappa.low, found_kappa.high) == pytest.approx((plain.low, plain.high), abs=0.04)
    assert over_notes(notes, seed=1) == (found_kappa, found_alpha)


def test_places_of_a_note_that_err_together_widen_the_interval() -> None:
    chance = random.Random(6)
    notes = []
    for _ in range(60):
        first = chance.choice("ab")
        second = first if chance.random() < 0.8 else chance.choice("ab")
        notes.append([(first, second)] * 4)
    found, plain = over_notes(notes, seed=1)[0], kappa([pair for pairs in notes for pair in pairs])
    assert found.low is not None and found.high is not None and plain.low is not None and plain.high is not None
    assert found.high - found.low > 1.5 * (plain.high - plain.low)


def test_percent_agreement() -> None:
    assert percent_agreement([("a", "a"), ("a", "b"), ("c", "c"), ("d", "d")]) == 0.75
    assert percent_agreement([]) is None


def test_alpha_of_figures_over_notes_equals_the_library_and_has_an_interval_around_it() -> None:
    chance = random.Random(8)
    notes = [
        [(float(a), float(a + chance.choice((0, 0, 0, 2)))) for a in (chance.choice((2, 4, 6, 8)) for _ in range(2))]
        for _ in range(40)
    ]
    found = figures_over_notes(notes, seed=1)
    ratings = np.array([pair for pairs in notes for pair in pairs]).T
    assert found.value == pytest.approx(krippendorff.alpha(ratings, level_of_measurement="interval"), abs=1e-12)
    assert found.low is not None and found.high is not None and found.value is not None
    assert found.low < found.value < found.high
    assert figures_over_notes(notes, seed=1) == found
