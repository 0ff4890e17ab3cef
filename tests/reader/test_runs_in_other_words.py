"""How a repair ran, told in words of other surgeons."""

import pytest
from reader_sentences import each

SEWN = "Ring finger, zone 2. FDP cut through and sewn with a four-strand cruciate. "


@pytest.mark.parametrize(
    "remark",
    [
        "Full passive range, nothing hooks.",
        "Passive range without hooking.",
        "The tendon moves well on passive range.",
        "On passive range it did not hang up.",
        "Passive range: excursion full, no snapping.",
        "Passive motion, no obstacle to gliding.",
    ],
)
def test_free(remark: str) -> None:
    assert each(SEWN + remark, "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    "remark", ["Passive range: a little resistance at A2.", "On passive range it goes, with some drag."]
)
def test_restricted(remark: str) -> None:
    assert each(SEWN + remark, "glide") == {"ring FDP": "restricted"}


@pytest.mark.parametrize("remark", ["The thumb moves well.", "Hand therapy once she moves well."])
def test_said_of_something_else(remark: str) -> None:
    assert each(SEWN + remark, "glide") == {}
