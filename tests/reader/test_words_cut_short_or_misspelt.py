"""'A4 pres.', 'intct': words for whole, cut short or with letters turned round."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize("word", ["intct", "inatct", "itnact"])
def test_intact_misspelt(word: str) -> None:
    note = f"Left ring. FDS {word}. NVBs x2 seen {word}."
    assert each(note, "extent") == {"ring FDS": "intact"}
    assert len(each(note, "extent", group="injuries")) == 4


@pytest.mark.parametrize("words", ["A4 pres.", "A4 presvd.", "A3 divided, A4 pres'd."])
def test_preserved_cut_short(words: str) -> None:
    assert each(f"Left ring. {words}", "finding", group="pulleys")["ring A4"] == "intact"


@pytest.mark.parametrize("words", ["A4 not pres.", "FDP infact cut through.", "A4 pressed on the tendon."])
def test_no_word_for_whole(words: str) -> None:
    assert "intact" not in each(f"Left ring. {words}", "finding", group="pulleys").values()
    assert "intact" not in each(f"Left ring. {words}", "extent").values()
