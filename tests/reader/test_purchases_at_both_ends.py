"""A length for each end behind the core: 'Lim-Tsai 4-0. 9 mm in prox / 7 mm in dist.'"""

import pytest
from reader_sentences import each

SEWN = "Small FDP cut through, Lim-Tsai 4-0 FiberLoop, running 6-0 PDS. "


@pytest.mark.parametrize(
    ("words", "taken"),
    [
        ("9 mm in prox / 7 mm in dist.", (7, 9)),
        ("10 mm in proximal, 8 mm in distal.", (8, 10)),
        ("1 cm into prox stump / 8 mm into dist.", (8, 10)),
        ("9 mm proximal, 7 mm distal.", (7, 9)),
    ],
)
def test_a_length_for_each_end(words: str, taken: tuple[int, int]) -> None:
    assert each(SEWN + words, "purchase_mm") == {"small FDP": taken}


@pytest.mark.parametrize(
    "words", ["9 mm proximal to A2, 7 mm distal to the wound.", "A2: 9 mm in prox / 7 mm in dist."]
)
def test_lengths_from_a_place_are_no_purchase(words: str) -> None:
    assert each(SEWN + words, "purchase_mm") == {}
