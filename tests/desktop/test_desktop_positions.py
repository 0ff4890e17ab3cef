"""Code points and UTF-16 units, checked against Qt's own documents."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtGui import QTextCursor, QTextDocument

from notereader.desktop.positions import Positions, shown

TEXTS = (
    "FDP repaired",
    "FDP 😀 repaired with 4-0",
    "e\u0301tendue, A2 libe\u0301re\u0301e",  # combining accents
    "👩🏽‍⚕️ signed; 🇨🇭 note",  # joined emoji, flags
    "\ufeffBOM first",
    "line\r\nwith\rold ends\u2028and\u2029separators",
    "not a character \ufdd0 and half a pair \ud83d here",
    "tab\tform\x0cfeed nbsp\u00a0end",
    "",
)


def utf16_length(text: str) -> int:
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


@pytest.mark.parametrize("text", TEXTS)
def test_every_code_point_is_found_again(text):
    positions = Positions(text)
    for point in range(len(text) + 1):
        assert positions.to_utf16(point) == utf16_length(text[:point])
        assert positions.to_points(positions.to_utf16(point)) == point


@pytest.mark.parametrize("text", TEXTS)
def test_a_qt_document_selects_the_same_words(qapp, text):
    document = QTextDocument()
    document.setPlainText(shown(text))
    assert document.characterCount() - 1 == utf16_length(text)
    positions = Positions(text)
    for start in range(len(text)):
        for end in range(start + 1, min(start + 6, len(text)) + 1):
            cursor = QTextCursor(document)
            cursor.setPosition(positions.to_utf16(start))
            cursor.setPosition(positions.to_utf16(end), QTextCursor.MoveMode.KeepAnchor)
            selected = cursor.selectedText().replace("\u2029", "\n").replace("\u2028", "\n")
            assert selected == shown(text)[start:end]


def test_half_a_pair_is_rounded_outward():
    positions = Positions("a😀b")
    assert positions.to_points(2) == 1
    assert positions.span_to_points(2, 2) == (1, 2)
    assert positions.span_to_points(1, 2) == (1, 2)


def test_positions_beyond_the_end_are_the_end():
    for text in ("ab", "a😀"):
        positions = Positions(text)
        assert positions.to_utf16(99) == utf16_length(text)
        assert positions.to_points(99) == 2
        assert positions.to_points(-1) == 0


@given(st.text(max_size=60))
def test_shown_text_keeps_every_length(text):
    assert len(shown(text)) == len(text)
    assert utf16_length(shown(text)) == utf16_length(text)


@given(st.text(alphabet=st.characters(exclude_categories=[]), max_size=40))
def test_qt_keeps_the_shown_text_whole(text):
    document = QTextDocument()
    document.setPlainText(shown(text))
    assert document.characterCount() - 1 == utf16_length(text)
