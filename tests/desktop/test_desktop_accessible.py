"""What a screen reader and a keyboard find: names, roles, focus, targets (WCAG 2.2 by analogy)."""

import pytest
from desktop_names import check_names, check_targets
from desktop_samples import sample_text
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
)

from notereader.desktop.add_dialog import AddDialog
from notereader.desktop.answer_dialog import AnswerDialog
from notereader.desktop.export_dialog import ExportDialog
from notereader.desktop.help_page import TextPage, cautions_page, keys_page
from notereader.desktop.history_dialog import HistoryDialog
from notereader.desktop.keys import KEYS, Where, keys_in_words
from notereader.desktop.letter_dialog import LetterDialog
from notereader.record import Address


def test_the_first_page(window):
    check_names(window)
    check_targets(window)


def test_the_page_of_a_case(open_sample):
    window = open_sample("13-saw-respectively")
    check_names(window)
    check_targets(window)
    window.page.run("correct")
    QTest.qWait(10)
    check_names(window)
    window.page.pane.leave_editor()


@pytest.mark.parametrize("which", ["add", "answer", "letter", "export", "history", "keys", "cautions"])
def test_dialogs(qtbot, open_sample, which):
    window = open_sample("02-terse-ring")
    page = window.page
    made = {
        "add": lambda: AddDialog(page.session.record, "ring", "pulleys", "", window),
        "answer": lambda: AnswerDialog(page.facts.row_in_hand(), window),
        "letter": lambda: LetterDialog("Is the A2 pulley whole?", "Is it?", print, window),
        "export": lambda: ExportDialog(page.session.record, "ring", window.casebook_worker, window),
        "history": lambda: HistoryDialog([], window),
        "keys": lambda: TextPage("All keys", keys_page(), window),
        "cautions": lambda: TextPage("Cautions", cautions_page(), window),
    }[which]()
    qtbot.addWidget(made)
    made.show()
    check_names(made)
    check_targets(made)


def test_every_row_reads_as_a_sentence(open_sample):
    page = open_sample("02-terse-ring").page
    model = page.model
    line = model.line_of(Address("repairs", "ring", "FDP", None, "strands"))
    words = model.index(line).data(Qt.ItemDataRole.AccessibleTextRole)
    assert words == "ring FDP: core strands: 4. proposed. unread. words of the note: 4 strands."


def test_focus_goes_round_the_page_and_is_never_trapped(qtbot, open_sample):
    window = open_sample("02-terse-ring")
    page = window.page
    seen = []
    for _ in range(60):
        widget = QApplication.focusWidget()
        if widget in seen:
            break
        seen.append(widget)
        qtbot.keyClick(widget, Qt.Key.Key_Tab)
    assert page.facts in seen and page.note in seen
    assert any(page.pane.isAncestorOf(widget) for widget in seen)
    assert any(page.side.isAncestorOf(widget) for widget in seen)
    assert QApplication.focusWidget() is seen[0], "and comes round again"


def test_f6_walks_the_parts_both_ways(qtbot, open_sample):
    page = open_sample("02-terse-ring").page

    def part():
        here = QApplication.focusWidget()
        parts = {"note": page.note, "facts": page.facts, "pane": page.pane, "side": page.side}
        return next(name for name, widget in parts.items() if here is widget or widget.isAncestorOf(here))

    walked = []
    for _ in range(4):
        walked.append(part())
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_F6)
    assert walked == ["facts", "pane", "side", "note"]
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_F6, Qt.KeyboardModifier.ShiftModifier)
    assert part() == "note"


def test_letters_act_only_in_the_list_of_facts(qtbot, open_sample):
    page = open_sample("02-terse-ring").page
    before = page.session.record
    for where in (page.note, page.pane._reading._buttons["confirm"], page.side._tabs.tabBar()):
        where.setFocus()
        for letter in "erswamnlt":
            qtbot.keyClick(where, letter)
        qtbot.keyClick(where, Qt.Key.Key_Delete)
    qtbot.wait(50)
    assert page.session.record is before
    assert not page.pane.editing
    assert QApplication.activeModalWidget() is None


def test_letters_typed_in_an_editor_are_only_letters(qtbot, open_sample):
    page = open_sample("02-terse-ring").page
    page.session.take_in_hand(Address("aftercare", field="splint_weeks"))
    page.run("correct")
    qtbot.waitUntil(lambda: page.pane.editing)
    before = page.session.record
    qtbot.keyClicks(QApplication.focusWidget(), "swan ")
    assert page.pane.editing
    assert page.session.record is before
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    assert not page.pane.editing
    assert QApplication.focusWidget() is page.facts


def test_no_key_is_bound_twice_in_one_place(qapp):
    for where in (Where.FACTS, Where.NOTE):
        bound = [keys.toString() for key in KEYS if key.where in (where, Where.EVERYWHERE) for keys in key.sequences()]
        assert len(bound) == len(set(bound))


def test_the_page_of_keys_names_every_key_that_is_bound(qapp):
    page = keys_page()
    for key in KEYS:
        if key.sequences():
            assert keys_in_words(key).split(" or ")[0].replace("+", "+") in page.replace("&amp;", "&")


def test_single_letters_are_bound_only_to_the_list(qapp):
    for key in KEYS:
        letters = [keys for keys in key.sequences() if len(keys.toString()) == 1]
        assert not letters or key.where is Where.FACTS


@pytest.mark.parametrize("size", [(1366, 768), (1024, 640), (683, 384)])
def test_nothing_is_cut_off_at_twice_the_size_of_letters(qtbot, look, make_window, size):
    """200 % of the usual letters (WCAG 2.2, 1.4.4), also in a window of half a small laptop's screen."""
    window = make_window(*size)
    QApplication.clipboard().setText(sample_text("02-terse-ring"))
    with qtbot.waitSignal(window.case_shown):
        window.run("paste")
    page = window.page
    usual = page.note.font().pointSizeF()
    look.zoom(10)
    qtbot.wait(50)
    for part in (page.note, page.facts, page.strip, page.pane, page.side, window.start):
        assert part.font().pointSizeF() == pytest.approx(2 * usual)
    assert page.facts.isVisible() and page.facts.viewport().height() >= 60
    for button in page.pane.findChildren(QAbstractButton):
        if button.isVisible():
            assert button.width() >= button.sizeHint().width() - 1
            assert button.height() >= button.sizeHint().height() - 1


def test_a_screen_reader_hears_the_rows_and_the_note(open_sample):
    page = open_sample("02-terse-ring").page
    listed = QAccessible.queryAccessibleInterface(page.facts)
    assert listed.text(QAccessible.Text.Name) == "Facts"
    line = page.model.line_of(Address("repairs", "ring", "FDP", None, "strands"))
    assert listed.child(line).text(QAccessible.Text.Name).startswith("ring FDP: core strands: 4. proposed")
    note = QAccessible.queryAccessibleInterface(page.note)
    assert note.role() == QAccessible.Role.EditableText
    assert note.textInterface().text(0, 10) == "12/08/2031"
