"""Lengths of tendon taken that are told side by side in a form, or put right in the same breath."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("text", "taken"),
    [
        ("FDP ring: cut through. Core:\n  stitch     Adelaide\n  purchase     prox 10 mm   dist 8 mm\n", (8, 10)),
        ("Ring FDP cut through. Core Adelaide 3-0. Purchase: distal 7 mm; proximal 9 mm.", (7, 9)),
        (
            "Ring FDP cut through. Adelaide, eight millimetres of tendon each side with the knots between the ends, no "
            "hang on i make that seven millimetres distally and eight proximally.",
            (7, 8),
        ),
        ("Ring FDP cut through. Adelaide 3-0, bites of 12 mm, no, make that 9 mm, each side.", (9, 9)),
        ("Ring FDP cut through. Adelaide 3-0, bites of 7 mm, no, I mean 12 mm, each side.", (7, 12)),
    ],
)
def test_the_shorter_length_is_among_those_told(text: str, taken: tuple[float, float]) -> None:
    assert each(text, "purchase_mm") == {"ring FDP": taken}
