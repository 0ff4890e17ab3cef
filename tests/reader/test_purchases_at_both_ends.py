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
        ("About 8 mm of purchase in the proximal and 7 in the distal stump.", (7, 8)),
        ("Bites of 10 mm in the distal end and 8 in the proximal.", (8, 10)),
        ("Purchase 9 mm in each stump, 2 knots at the distal end.", (9, 9)),
    ],
)
def test_a_length_for_each_end(words: str, taken: tuple[int, int]) -> None:
    assert each(SEWN + words, "purchase_mm") == {"small FDP": taken}


@pytest.mark.parametrize(
    "words", ["9 mm proximal to A2, 7 mm distal to the wound.", "A2: 9 mm in prox / 7 mm in dist."]
)
def test_lengths_from_a_place_are_no_purchase(words: str) -> None:
    assert each(SEWN + words, "purchase_mm") == {}
