"""'FDS 2nd, 3rd - cut' in a list that also tells shares: cut through, as behind a colon."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "lines",
    [
        "FDS 2nd, 3rd - cut\nPL - cut\nFPL - 60%",
        "1. FDS 2nd, 3rd  - cut. FDS 5th OK\n2. PL  - cut, clean\n3. FPL  - 60%",
        "FDS 2nd, 3rd: cut\nPL: cut\nFPL: 60%",
    ],
)
def test_cut_through_beside_a_share(lines: str) -> None:
    found = each("Right wrist, zone 5.\n" + lines, "extent")
    assert {k for k, value in found.items() if value == "complete"} == {"index FDS", "middle FDS", "PL"}


def test_without_a_share_how_far_is_not_told() -> None:
    assert each("Right wrist, zone 5.\nFCR - cut\nPL - cut", "extent") == {}
