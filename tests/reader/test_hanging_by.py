"""'Hanging by a third': the share that was not cut."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("words", "percent"),
    [
        ("Small FDS hanging by a third.", 67),
        ("Small FDS held only by a quarter of its width.", 75),
        ("Small FDS hanging on by 20 %.", 80),
        ("Small FDS only held by 10 percent of its fibres.", 90),
        ("Small FDS cut by a third.", 33),
        ("Small FDS cut 80 %, held by a strand.", 80),
        ("Small FDS cut 40 %, held apart by a hook.", 40),
        ("Small FDS a third cut.", 33),
    ],
)
def test_what_still_holds(words: str, percent: int) -> None:
    found = told(words, "extent", "extent_percent")
    assert found == {"small FDS": {"extent": "partial", "extent_percent": percent}}
