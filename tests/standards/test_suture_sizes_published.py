"""Suture sizes against the published gauge table.

Source of the diameters: Therapeutic Goods Order No. 49 (Australia, 15 February 1995), Schedule 1, "range for the mean"
by metric gauge. Pairing of USP size and metric gauge: public size charts for 8-0 to 2-0, catalogues for 10-0, 9-0, 0, 1
and 2. That for 2-0 the USP gives 0.300 to 0.339 mm is from memory and not used here.
"""

import pytest

from notereader.vocabulary import sizes

# USP size, metric gauge, smallest and largest mean diameter in millimetres.
TGO_49 = [
    ("10-0", 0.2, 0.020, 0.029),
    ("9-0", 0.3, 0.030, 0.039),
    ("8-0", 0.4, 0.040, 0.049),
    ("7-0", 0.5, 0.050, 0.069),
    ("6-0", 0.7, 0.070, 0.099),
    ("5-0", 1.0, 0.100, 0.149),
    ("4-0", 1.5, 0.150, 0.199),
    ("3-0", 2.0, 0.200, 0.249),
    ("2-0", 3.0, 0.300, 0.349),
    ("0", 3.5, 0.350, 0.399),
    ("1", 4.0, 0.400, 0.499),
    ("2", 5.0, 0.500, 0.599),
]


@pytest.mark.parametrize(("usp", "metric", "low", "high"), TGO_49)
def test_diameter_and_gauge(usp: str, metric: float, low: float, high: float) -> None:
    size = sizes()[usp]
    assert (size.metric, size.low_mm, size.high_mm) == (metric, low, high)


@pytest.mark.parametrize(("usp", "metric", "low", "high"), TGO_49)
def test_the_metric_gauge_is_the_least_diameter_in_tenths_of_a_millimetre(
    usp: str, metric: float, low: float, high: float
) -> None:
    # European Pharmacopoeia: the gauge number is the lower limit in tenths of a millimetre.
    assert sizes()[usp].metric == pytest.approx(sizes()[usp].low_mm * 10)


def test_order_is_from_fine_to_thick() -> None:
    published = [usp for usp, *_ in TGO_49]
    ours = [usp for usp in sizes() if usp in published]
    assert ours == published
    # The more noughts, the finer: any size beyond the table lies at its fine end.
    assert list(sizes())[: len(sizes()) - len(ours)] == ["12-0", "11-0"]


def test_size_2_is_not_2_0() -> None:
    # A bare 2 is nearly twice as thick as 2-0; taking one for the other would promise too much.
    assert sizes()["2"].low_mm > 1.4 * sizes()["2-0"].high_mm
