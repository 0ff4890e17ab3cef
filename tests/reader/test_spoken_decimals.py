"""Decimals as they are spoken, 'one point two centimetres', and a range that begins like a size, '1.0-1.2 cm'."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("told", "taken"),
    [
        ("locked about one point two centimetres of tendon on each side", (12, 12)),
        ("with bites of zero point eight centimetres", (8, 8)),
        ("with bites of nine point five millimetres", (9.5, 9.5)),
        ("purchase 1.0-1.2 cm", (10, 12)),
        ("bites 1.0 to 1.5 cm", (10, 15)),
    ],
)
def test_purchase(told: str, taken: tuple[float, float]) -> None:
    assert each(f"Ring FDP repaired, {told}.", "purchase_mm") == {"ring FDP": taken}


def test_a_size_before_a_length_stays_a_size() -> None:
    assert each("Ring FDP repaired with 4.0 Prolene, 1.2 cm bites.", "size") == {"ring FDP": "4-0"}
