"""Marks in the note stand on the very words, whatever the characters before them."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QTextOption

from notereader.desktop.marks import marks_of, spans_of
from notereader.desktop.note_view import LINE_LETTERS, NoteView
from notereader.desktop.themes import UNDERLINES, MarkKind
from notereader.record import Address, Evidence, Fact, Note, Record, Rival, source_of

TEXT = "Ring finger 👩🏽‍⚕️ re\u0301paré. FDP 😀 repaired with four strands of 4-0; header says two strands.\r\nEnd."
STRANDS = Address("repairs", "ring", "FDP", None, "strands")
TREATMENT = Address("repairs", "ring", "FDP", None, "treatment")


def words(exact):
    start = TEXT.index(exact)
    return Evidence.at(TEXT, start, start + len(exact), source_of(TEXT))


@pytest.fixture
def record():
    made = Record(note=Note.of(TEXT, "emoji"))
    rival = Rival(value=2, evidence=[words("two strands")])
    made.put(STRANDS, Fact(value=4, evidence=[words("four strands")], rivals=[rival]))
    made.put(TREATMENT, Fact(value="repaired", status="confirmed", evidence=[words("FDP 😀 repaired")]))
    return made


@pytest.fixture
def note(qtbot, look, record):
    view = NoteView(look)
    qtbot.addWidget(view)
    view.resize(500, 300)
    view.show()
    view.show_note(TEXT)
    view.show_record(record)
    return view


def marked(view):
    return {s.cursor.selectedText(): s.format.underlineStyle() for s in view.extraSelections()}


def test_each_standing_has_its_underline_on_the_exact_words(note):
    assert marked(note) == {
        "four strands": UNDERLINES[MarkKind.LOOK_TWICE],
        "two strands": UNDERLINES[MarkKind.RIVAL],
        "FDP 😀 repaired": UNDERLINES[MarkKind.CONFIRMED],
    }


def test_the_fact_in_hand_is_marked_strongest(note, record):
    note.show_in_hand(spans_of(STRANDS, record.fact(STRANDS)))
    last = note.extraSelections()[-1]
    assert last.cursor.selectedText() == "four strands"
    assert last.format.background().color().name().upper() == note._look.theme.marks[MarkKind.IN_HAND].ground


def test_withdrawn_words_are_not_marked(note, record):
    record.fact(TREATMENT).status = "withdrawn"
    note.show_record(record)
    assert "FDP 😀 repaired" not in marked(note)


def test_words_of_a_settled_and_a_proposed_fact_look_proposed(record):
    record.fact(TREATMENT).evidence = [words("four strands")]
    kinds = [span.kind for span in marks_of(record) if TEXT[span.start : span.end] == "four strands"]
    assert set(kinds) == {MarkKind.CONFIRMED, MarkKind.LOOK_TWICE}


def test_selected_words_come_back_in_code_points(note):
    start = TEXT.index("four strands of")
    note.select_span(start - 1, start + len("four strands of") + 1)
    assert note.selected_span() == (start, start + len("four strands of")), "without the blanks at its ends"
    note.clear_selection()
    assert note.selected_span() is None


def test_caret_in_marked_words_brings_their_fact(qtbot, note):
    place = TEXT.index("four strands") + 2
    note.select_span(place, place)
    with qtbot.waitSignal(note.chosen) as chosen:
        assert note.choose_at_caret()
    assert chosen.args == [STRANDS]
    note.select_span(0, 0)
    assert not note.choose_at_caret()


def test_a_click_on_marked_words_brings_their_fact(qtbot, note):
    place = note.cursorRect(note._cursor(TEXT.index("FDP 😀 repaired") + 1)).center() + QPoint(2, 0)
    with qtbot.waitSignal(note.chosen) as chosen:
        qtbot.mouseClick(note.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert chosen.args == [TREATMENT]


def test_the_same_words_give_their_facts_one_after_the_other(qtbot, note, record):
    record.fact(TREATMENT).evidence = [words("four strands")]
    note.show_record(record)
    place = TEXT.index("four strands") + 2
    note.select_span(place, place)
    seen = []
    note.chosen.connect(seen.append)
    note.choose_at_caret()
    note.show_in_hand(spans_of(seen[0], record.fact(seen[0])))
    note.choose_at_caret()
    assert set(seen) == {STRANDS, TREATMENT}


def test_lines_are_no_longer_than_can_be_read(qtbot, look):
    view = NoteView(look)
    qtbot.addWidget(view)
    view.show_note("word " * 400)
    view.resize(2400, 600)
    view.show()
    line = view.document().firstBlock().layout().lineAt(0)
    assert 40 < line.textLength() <= LINE_LETTERS * 1.35
    view.resize(300, 600)
    assert view.document().firstBlock().layout().lineAt(0).textLength() < 60


def test_every_character_keeps_its_place(note):
    for text in ("\ufeffBOM", "a\r\nb\rc\u2028d\u2029e", "x\ufdd0\ufdd1\ud83d tab\tff\x0cnul\0end"):
        note.show_note(text)
        assert note.document().characterCount() - 1 == len(text)
        note.select_span(len(text) - 1, len(text))
        assert note.textCursor().selectedText() == text[-1]


def test_the_note_cannot_be_changed(qtbot, note):
    before = note.toPlainText()
    qtbot.keyClicks(note, "changed")
    qtbot.keyClick(note, Qt.Key.Key_Delete)
    qtbot.keyClick(note, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert note.toPlainText() == before


def test_find(note):
    assert note.find_words("4-0")
    assert TEXT[slice(*note.selected_span())] == "4-0"
    assert note.find_words("ring"), "from the top again"
    assert not note.find_words("nerve")


def test_an_endless_word_does_not_stop_the_window(note):
    """Broken at words, 60,000 letters take Qt over a second, four times as many sixteen; the mode is checked."""
    note.show_note("x" * 60_000)
    assert note.wordWrapMode() == QTextOption.WrapMode.WrapAnywhere
    note.show_note(TEXT)
    assert note.wordWrapMode() == QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere
