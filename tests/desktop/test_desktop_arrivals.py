"""A note on its way: read, refused, stopped, replaced, and never lost."""

import json
import threading
from pathlib import Path

import pytest
from desktop_samples import proposed, sample_record, sample_text
from PySide6.QtCore import QMimeData, QPoint, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtWidgets import QApplication, QLabel

from notereader.casebook import Casebook
from notereader.desktop import arrivals
from notereader.desktop.waiting import WaitingNotes

TEXT = "OPERATION: repair of FDP, right ring finger."


@pytest.fixture
def held(monkeypatch):
    """A reader that waits until it is let go."""
    gate = threading.Event()

    def read(note):
        gate.wait(10)
        return proposed(note)

    monkeypatch.setattr(arrivals, "_read", read)
    yield gate
    gate.set()


def kept(tmp_path):
    return [json.loads(path.read_bytes())["text"] for path in (tmp_path / "waiting").glob("*.json")]


def test_the_note_is_shown_and_put_by_while_it_is_read(qtbot, window, held, tmp_path):
    window.arrivals.read_text(TEXT)
    qtbot.waitUntil(lambda: window.reading_page._note.toPlainText() == TEXT)
    assert window.pages.currentWidget() is window.reading_page
    assert "Reading the note" in window.reading_page._stage.text()
    assert kept(tmp_path) == [TEXT]
    with qtbot.waitSignal(window.case_shown):
        held.set()
    assert kept(tmp_path) == []
    assert Casebook(str(tmp_path / "casebook.db")).open(1).record.note.text == TEXT


def test_reading_can_be_stopped_and_the_note_is_still_there(qtbot, window, held):
    window.arrivals.read_text(TEXT)
    qtbot.waitUntil(lambda: "Reading the note" in window.reading_page._stage.text())
    qtbot.mouseClick(window.reading_page._cancel, Qt.MouseButton.LeftButton)
    assert window.pages.currentWidget() is window.start
    assert "still there" in window.band.words
    held.set()
    with qtbot.waitSignal(window.case_shown):
        window.band.take(0)
    assert window.page.session.record.note.text == TEXT


def test_a_stopped_note_can_be_entered_by_hand(qtbot, window, held):
    window.arrivals.read_text(TEXT)
    qtbot.waitUntil(lambda: "Reading the note" in window.reading_page._stage.text())
    window.arrivals.stop()
    with qtbot.waitSignal(window.case_shown):
        window.band.take(1)
    assert list(window.page.session.record.walk()) == []
    assert window.page.note.toPlainText() == TEXT


def test_a_discarded_note_is_gone(qtbot, window, held, tmp_path):
    window.arrivals.read_text(TEXT)
    qtbot.waitUntil(lambda: "Reading the note" in window.reading_page._stage.text())
    window.arrivals.stop()
    window.band.take(2)
    assert kept(tmp_path) == []


def test_a_note_left_over_by_a_crash_is_offered_at_the_next_start(qtbot, make_window, tmp_path):
    folder = tmp_path / "waiting"
    folder.mkdir()
    (folder / "one.json").write_text(json.dumps({"name": "ring", "text": TEXT}), encoding="ascii")
    (folder / "cut.json").write_text('{"name": "half', encoding="ascii")
    window = make_window()
    assert "“ring”" in window.band.words
    with qtbot.waitSignal(window.case_shown):
        window.band.take(0)
    assert window.page.session.record.note.text == TEXT
    assert list(folder.glob("*.json")) == []


def test_a_note_another_process_is_reading_is_left_to_it(tmp_path):
    first, second = WaitingNotes(tmp_path), WaitingNotes(tmp_path)
    note = first.keep("ring", TEXT)
    assert second.left_over() == []
    first.done(note)
    assert list(tmp_path.iterdir()) == []


def test_a_fault_of_the_reader_loses_nothing_and_is_said(qtbot, window, monkeypatch):
    def broken(note):
        raise RuntimeError("no rule for this")

    monkeypatch.setattr(arrivals, "_read", broken)
    window.arrivals.read_text(TEXT)
    qtbot.waitUntil(lambda: bool(window.band.words))
    assert "no rule for this" in window.band.words
    with qtbot.waitSignal(window.case_shown):
        window.band.take(1)


@pytest.mark.parametrize("content", [b"", b"\x00\x01\x02\x03" * 400])
def test_what_is_no_note_is_refused_on_the_first_page(qtbot, window, tmp_path, content):
    path = tmp_path / "picture.txt"
    path.write_bytes(content)
    window.arrivals.open_path(path)
    qtbot.waitUntil(lambda: window.start.trouble.isVisible())
    assert "picture.txt" in window.start.trouble.text()
    assert window.pages.currentWidget() is window.start


@pytest.mark.parametrize("content", ["{}", "no json", '{"format": "notereader-record", "format_version": 99}'])
def test_what_is_no_record_is_refused_on_the_first_page(qtbot, window, tmp_path, content):
    path = tmp_path / "other.json"
    path.write_text(content, encoding="utf-8")
    window.arrivals.open_path(path)
    qtbot.waitUntil(lambda: window.start.trouble.isVisible())


def test_an_empty_clipboard_is_said(window):
    QApplication.clipboard().clear()
    window.run("paste")
    assert "no text on the clipboard" in window.band.words


def test_a_copied_file_is_opened(qtbot, window, tmp_path):
    path = tmp_path / "note.txt"
    path.write_text(TEXT, encoding="utf-8")
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    QApplication.clipboard().setMimeData(data)
    with qtbot.waitSignal(window.case_shown):
        window.run("paste")
    assert window.page.title == "note.txt"


def test_a_dropped_file_and_dropped_text_are_read(qtbot, window, tmp_path):
    path = tmp_path / "dropped.txt"
    path.write_text(TEXT, encoding="utf-8")
    for fill in (lambda data: data.setUrls([QUrl.fromLocalFile(str(path))]), lambda data: data.setText(TEXT)):
        data = QMimeData()
        fill(data)
        copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
        event = QDropEvent(QPoint(5, 5), copy, data, left, Qt.KeyboardModifier.NoModifier)
        with qtbot.waitSignal(window.case_shown):
            window.dropEvent(event)
        assert window.page.session.record.note.text == TEXT


def test_pasting_over_an_open_case_opens_another_and_keeps_the_first(qtbot, open_sample, tmp_path):
    window = open_sample("02-terse-ring")
    window.page.run("confirm")
    window = open_sample("13-saw-respectively")
    assert window.page.session.record.note.text == sample_text("13-saw-respectively")
    book = Casebook(str(tmp_path / "casebook.db"))
    assert len(book.cases()) == 2
    statuses = [fact.status for _, fact in book.open(1).record.walk()]
    assert statuses.count("confirmed") == 1


def test_a_record_without_its_note_still_opens(qtbot, window, tmp_path):
    from notereader.desktop.export import json_of

    path = tmp_path / "record.json"
    path.write_text(json_of(sample_record("02-terse-ring"), text=False), encoding="utf-8")
    with qtbot.waitSignal(window.case_shown):
        window.arrivals.open_path(path)
    assert window.page.note.toPlainText() == ""
    assert "without the text" in window.page.note.placeholderText()
    assert window.page.facts.row_in_hand().quote
    window.page.run("words")
    qtbot.waitUntil(lambda: window.page.session.idle)


def test_samples_are_offered_and_open(qtbot, window):
    menu = window.start.sample.menu()
    assert len(menu.actions()) >= 6
    with qtbot.waitSignal(window.case_shown):
        menu.actions()[0].trigger()
    assert Path(window.page.title).suffix == ".txt"


def test_cases_are_listed_searched_and_opened_again(qtbot, open_sample):
    window = open_sample("02-terse-ring")
    window.page.run("confirm")
    qtbot.waitUntil(lambda: window.page.session.idle)
    window.run("new")
    cases = window.start.cases
    qtbot.waitUntil(lambda: cases.table.model().rowCount() == 1)
    cells = [cases.table.model().index(0, column).data() for column in range(7)]
    assert cells[1:5] == ["in work", "2031-08-12", "ring", "FDP, FDS"]
    qtbot.keyClicks(cases._search, "washing-up bowl")
    qtbot.waitUntil(lambda: not cases._rest.isActive())
    qtbot.wait(50)
    assert cases.table.model().rowCount() == 1
    cases._search.setText("nowhere")
    qtbot.waitUntil(lambda: cases.table.model().rowCount() == 0)
    assert cases._empty.isVisible()
    cases._search.clear()
    qtbot.waitUntil(lambda: cases.table.model().rowCount() == 1)
    cases.table.setFocus()
    with qtbot.waitSignal(window.case_shown):
        qtbot.keyClick(cases.table, Qt.Key.Key_Return)
    statuses = [fact.status for _, fact in window.page.session.record.walk()]
    assert statuses.count("confirmed") == 1


def test_warnings_of_the_intake_are_said_with_the_case(qtbot, make_window, monkeypatch, tmp_path):
    monkeypatch.undo()  # the real reader
    window = make_window()
    wrong = tmp_path / "note.pdf"
    wrong.write_text("Repair of FDP, ring finger, zone II, four-strand core 4-0.", encoding="utf-8")
    with qtbot.waitSignal(window.case_shown):
        window.arrivals.open_path(wrong)
    assert "pdf" in window.band.words.lower()
    assert any("pdf" in remark.text.lower() for remark in window.page.session.record.remarks)


def test_words_of_notes_and_files_are_never_taken_for_markup(qtbot, window, tmp_path):
    path = tmp_path / "<b>bold<b>.txt"
    path.write_text("<h1>FDP</h1> repaired & <img src='x'>, right ring finger.", encoding="utf-8")
    with qtbot.waitSignal(window.case_shown):
        window.arrivals.open_path(path)
    page = window.page
    assert page.note.toPlainText().startswith("<h1>FDP</h1>")
    assert page.strip.textFormat() == Qt.TextFormat.PlainText
    assert all(label.textFormat() == Qt.TextFormat.PlainText for label in window.findChildren(QLabel))
    window.run("new")
    qtbot.waitUntil(lambda: window.start.cases.table.model().rowCount() == 1)
    tip = window.start.cases.table.model().index(0, 0).data(Qt.ItemDataRole.ToolTipRole)
    assert "&lt;b&gt;bold" in tip
