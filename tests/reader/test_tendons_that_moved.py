"""A tendon of a finger that moved, and a finger that did."""

import pytest
from reader_sentences import each

SEWN = "Ring and small FDP repaired with 4-0. "


@pytest.mark.parametrize(
    ("told", "expected"),
    [
        ("The ring finger FDP moved freely without a gap, whereas the small finger FDP caught at C1.", "free"),
        ("On passive flexion the ring finger profundus moved smoothly beneath A2; the small finger caught.", "free"),
        ("The ring finger moved freely.", None),
    ],
)
def test_a_tendon_moves_and_not_its_finger(told: str, expected: str | None) -> None:
    assert each(SEWN + told, "glide").get("ring FDP") == expected
