"""A small 'l' among capitals that a scanner took for an 'I'."""

import pytest
from reader_sentences import told

from notereader.reader.text.capitals_misread import with_capitals_put_right


@pytest.mark.parametrize("head", ["COMPLICATlONS", "COMPLlCATlONS"])
def test_a_heading_with_such_a_letter(head: str) -> None:
    assert told(f"{head}: none.", group="elements") == {"": {"complications": True}}


@pytest.mark.parametrize("word", ["FDPl", "FPl", "mm", "small", "ETHILONl", "CMCl J", "Total", "PlP"])
def test_other_words_are_left(word: str) -> None:
    assert with_capitals_put_right(word) == word
