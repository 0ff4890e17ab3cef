"""A joint position never hangs on a minus sign, wherever a value is said in words."""

import pytest

from notereader.record import Interval, show_value

FLEXION = "degrees of flexion"


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [
        (-10, -10, "10 degrees of extension"),
        (0, 0, "0 degrees of flexion"),
        (20, 30, "20 to 30 degrees of flexion"),
        (-30, -20, "20 to 30 degrees of extension"),
        (-10, 20, "10 degrees of extension to 20 degrees of flexion"),
        (30, None, "at least 30 degrees of flexion"),
        (-30, None, "at most 30 degrees of extension"),
        (None, -30, "at least 30 degrees of extension"),
    ],
)
def test_flexion_below_zero_is_said_as_extension(low: float | None, high: float | None, words: str) -> None:
    assert show_value(Interval(low=low, high=high), FLEXION) == words


def test_a_figure_without_the_unit_keeps_its_sign_for_the_editor() -> None:
    assert show_value(Interval(low=-10, high=-10)) == "-10"
