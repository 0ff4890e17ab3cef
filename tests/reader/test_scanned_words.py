"""What a scan makes of the trade's short words, and words that only look like it."""

import pytest

from notereader.reader import read
from notereader.record import Address


def finding(text: str, pulley: str) -> object:
    fact = read(text).fact(Address("pulleys", "ring", pulley, None, "finding"))
    return fact and fact.value


@pytest.mark.parametrize(
    "text",
    [
        "Ring finger. The Al pulley was released in full.",
        "Ring finger. Al released. A2 intact.",
        "RING FINGER\nAl: released\nA2: intact",
    ],
)
def test_a_small_l_for_the_figure_of_the_first_pulley(text: str) -> None:
    assert finding(text, "A1") == "released"


@pytest.mark.parametrize(
    "text",
    [
        "Ring finger. As told by others (Miller et al), released pulleys bowstring. A2 intact.",
        "Ring finger. All released tissue was excised. A2 intact.",
        "Ring finger. AL released the tourniquet. A2 intact.",
        "Ring finger. Al foam splint at night. A2 intact.",
    ],
)
def test_what_only_looks_like_it_is_no_pulley(text: str) -> None:
    assert finding(text, "A1") is None
