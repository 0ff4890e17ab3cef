"""A share with 'over' or '>' that is told of a cut, 'FPL >90% through', and one that is the limit of a rule."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize("over", [">", "> ", "over ", "more than "])
@pytest.mark.parametrize("cut", ["through", "cut", "divided", "cut across"])
def test_cut_by_over_a_share(over: str, cut: str) -> None:
    found = told(f"Left ring finger. FDP {over}80 % {cut}, zone II.", "extent", "extent_percent")
    assert found == {"ring FDP": {"extent": "partial", "extent_percent": 80}}


@pytest.mark.parametrize("words", ["Cuts over 50 % are sutured.", "One sutures an FDP cut >50 %."])
def test_a_limit_for_sewing(words: str) -> None:
    assert told("Left ring finger. " + words, "extent_percent") == {}
