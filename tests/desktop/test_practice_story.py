"""Practice by keyboard, from choosing a case to reading the marking, and what the pages do on the way."""

import json

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QMessageBox

from notereader.desktop.add_dialog import AddDialog
from notereader.desktop.practice.contradiction_dialog import ContradictionDialog
from notereader.practice import exercise_book, ready_set
from notereader.record import Address

CASE = "02-terse-ring"
SIDE = Address("operation", field="side")
FDP = Address("repairs", "ring", "FDP")
STRANDS, TENSION, BULK = (FDP.field_of(name) for name in ("strands", "tension", "bulk"))

Key, Ctrl, Shift = Qt.Key, Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


class Keys:
    """Presses keys on whatever has the focus and waits until everything they ordered is written."""

    def __init__(self, qtbot, window):
        self.qtbot, self.window = qtbot, window

    def press(self, key, modifier=Qt.KeyboardModifier.NoModifier):
        if QApplication.focusWidget() is None:
            # Without a window manager nobody gives the focus back when a dialog closes.
            self.window.activateWindow()
            self.qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)
        self.qtbot.keyClick(QApplication.focusWidget(), key, modifier)
        self.settle()

    def type(self, words):
        for letter in words:
            self.qtbot.keyClick(QApplication.focusWidget(), letter)
        self.settle()

    def settle(self):
        self.qtbot.waitUntil(lambda: self.window.page is None or self.window.page.session.idle)

    def go_to(self, address):
        page = self.window.page
        target = page.model.line_of(address)
        assert target is not None, f"{address.words()} is not listed"
        for _ in range(page.model.rowCount()):
            here = page.facts.currentIndex().row()
            if here == target:
                return
            self.press(Key.Key_Down if here < target else Key.Key_Up)
        raise AssertionError(f"{address.words()} is not reached")

    def select(self, words):
        """Find words in the note, which selects them, and go back to the list of facts."""
        page = self.window.page
        self.press(Key.Key_F, Ctrl)
        self.press(Key.Key_A, Ctrl)
        self.type(words)
        self.press(Key.Key_Return)
        self.press(Key.Key_Escape)
        assert QApplication.focusWidget() is page.note
        self.press(Key.Key_F6)
        assert QApplication.focusWidget() is page.facts
        assert page.note.textCursor().selectedText() == words


@pytest.fixture
def keys(qtbot, window, tmp_path):
    window.practice_folder = tmp_path / "practice"
    window._settings.student = "Ada"
    return Keys(qtbot, window)


def show_cases(qtbot, window, keys):
    keys.press(Key.Key_F8)
    qtbot.waitUntil(lambda: window.practice.cases.table.model().rowCount() > 0)


def take(qtbot, window, keys, case=CASE):
    """Walk to a case in the list and take it."""
    show_cases(qtbot, window, keys)
    table = window.practice.cases.table
    assert QApplication.focusWidget() is table
    wanted = f"Case {case[:2]}"
    for _ in range(table.model().rowCount()):
        if table.model().index(table.currentIndex().row(), 0).data() in (wanted, case):
            break
        keys.press(Key.Key_Down)
    with qtbot.waitSignal(window.case_shown):
        keys.press(Key.Key_Return)
    return window.page


def in_dialog(what):
    """Do something in the dialog that is going to open."""
    trouble = []

    def do():
        dialog = QApplication.activeModalWidget()
        try:
            what(dialog)
            assert not dialog.isVisible(), "the dialog is still open"
        except Exception as fault:  # Told by the test, not lost in the event loop.
            trouble.append(fault)
            dialog.reject()

    QTimer.singleShot(250, do)
    return trouble


def typed_into(dialog, filled):
    """Type into the boxes of a dialog by their names."""
    for name, words in filled:
        boxes = {box.accessibleName(): box for box in dialog.findChildren(QComboBox)}
        boxes[name].setFocus()
        for letter in words:
            QTest.keyClick(boxes[name], letter)


def hand_in(qtbot, window, keys):
    def agree(box):
        assert isinstance(box, QMessageBox)
        assert "nothing can be changed" in box.text()
        QTest.keyClick(box, Key.Key_Return)

    trouble = in_dialog(agree)
    page = window.practice.marking
    keys.press(Key.Key_Return, Ctrl)
    qtbot.waitUntil(lambda: window.page is None and window.practice.currentWidget() is page and page.list.count() > 0)
    assert trouble == []
    # Without a window manager nobody gives the focus back when a dialog closes.
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)
    return page


def add_tendon(keys, sort="Te", first="repa"):
    def fill(dialog):
        assert isinstance(dialog, AddDialog)
        typed_into(
            dialog, [("What the note tells of", sort), ("Digit", "ri"), ("Which", "FDP"), ("What was done", first)]
        )
        QTest.keyClick(QApplication.focusWidget(), Key.Key_Return)

    trouble = in_dialog(fill)
    keys.press(Key.Key_A)
    keys.settle()
    assert trouble == []


def lines(page):
    return [page.list.item(row).text() for row in range(page.list.count())]


def test_from_choosing_a_case_to_reading_the_marking(qtbot, window, keys, tmp_path):
    page = take(qtbot, window, keys)
    assert QApplication.focusWidget() is page.facts
    assert window.windowTitle() == "Case 02 – notereader", "the name of the case would give away what is in it"

    # Nothing is proposed: no fact, no mark in the note.
    assert list(page.session.record.walk()) == []
    assert page.note.extraSelections() == []

    # Words are marked, then the field is filled; an impossible value is refused in words.
    keys.select("R RF")
    keys.go_to(SIDE)
    keys.press(Key.Key_Return)
    assert page.pane.editing
    keys.type("ri")
    keys.press(Key.Key_Return)
    fact = page.session.record.fact(SIDE)
    assert fact.value == "right" and fact.evidence[0].exact == "R RF"

    keys.select("FDP repair")
    add_tendon(keys)
    assert page.session.record.fact(FDP.field_of("treatment")).value == "repaired"
    assert page.session.record.fact(FDP.field_of("treatment")).evidence[0].exact == "FDP repair"

    keys.select("4 strands")
    keys.go_to(STRANDS)
    keys.press(Key.Key_Return)
    keys.type("40")
    keys.press(Key.Key_Return)
    assert page.pane.editing and "from 1 to 16" in page.pane._editing._trouble.text()
    keys.press(Key.Key_A, Ctrl)
    keys.type("6")
    keys.press(Key.Key_Return)
    assert page.session.record.fact(STRANDS).value == 6

    # Taken back, and back again.
    keys.press(Key.Key_Z, Ctrl)
    assert page.session.record.fact(STRANDS) is None
    keys.press(Key.Key_Z, Ctrl | Shift)
    assert page.session.record.fact(STRANDS).value == 6

    # Silence, a contradiction that is none, three questions.
    keys.go_to(TENSION)
    keys.press(Key.Key_S)
    assert page.session.record.fact(TENSION).basis == "silent"

    def clash(dialog):
        assert isinstance(dialog, ContradictionDialog)
        typed_into(dialog, [("How the note contradicts itself", "It")])
        QTest.keyClick(QApplication.focusWidget(), Key.Key_Return)

    keys.go_to(STRANDS)
    trouble = in_dialog(clash)
    keys.press(Key.Key_C)
    keys.settle()
    assert trouble == []
    assert page.answer.contradictions.item(0).text() == "Ring FDP: core strands against Operation: side"
    for place in (BULK, TENSION, Address("pulleys", "ring", "A2", None, "finding")):
        keys.go_to(place)
        keys.press(Key.Key_Q)
    assert [page.answer.questions.item(n).text() for n in range(3)] == [
        "1. Ring FDP: bulk",
        "2. Ring FDP: tension at the repair",
        "3. Ring A2 pulley: state of the pulley",
    ]
    assert "1 contradiction  ·  3 of 3 questions" in page.strip.text()

    # Every step lies on the disk already.
    kept = exercise_book("Ada", tmp_path / "practice").attempts()[0]
    assert kept.record.fact(STRANDS).value == 6 and len(kept.questions) == 3 and not kept.handed_in_at

    marking = hand_in(qtbot, window, keys)
    assert QApplication.focusWidget() is marking.list
    told = lines(marking)
    assert told[0] == "Summary"
    assert told[1] == "Over-stated: the worst fault (1)"
    assert told[2] == "! Ring FDP: core strands – you: 6; the note: 4"
    assert "An exercise" in marking.caution.text()

    keys.press(Key.Key_Down)
    detail = marking.detail.toPlainText()
    assert "over-stated" in detail and "Why it matters (strength)" in detail and "Source:" in detail
    assert "Words of the note: “4 strands”" in detail
    marked = [selection.cursor.selectedText() for selection in marking.note.extraSelections()]
    assert "4 strands" in marked, "the words of the note stand marked beside it"

    # Everything there is to read is reached with the arrow keys.
    for _ in told:
        keys.press(Key.Key_Down)
        assert marking.detail.toPlainText()
    assert marking.list.currentRow() == len(told) - 1
    for words in ("Missed", "Contradictions", "Questions for the surgeon", "Right ("):
        assert any(line.startswith(words) for line in told), words

    # Back among the cases it is told as marked, with its whole name.
    keys.press(Key.Key_Escape)
    model = window.practice.cases.table.model()
    qtbot.waitUntil(lambda: any(model.index(row, 0).data() == CASE for row in range(model.rowCount())))
    row = next(row for row in range(model.rowCount()) if model.index(row, 0).data() == CASE)
    assert model.index(row, 2).data() == "marked" and model.index(row, 4).data() == "1"


def test_work_goes_on_where_it_was_left(qtbot, window, keys):
    take(qtbot, window, keys)
    add_tendon(keys)
    keys.press(Key.Key_F8)
    qtbot.waitUntil(lambda: window.page is None)
    page = take(qtbot, window, keys)
    assert page.session.record.fact(FDP.field_of("treatment")).value == "repaired"
    assert "go on" in window.practice.cases.table.model().index(1, 2).data()


def test_two_values_name_a_contradiction_and_are_taken_back(qtbot, window, keys):
    page = take(qtbot, window, keys)
    add_tendon(keys)
    keys.go_to(STRANDS)
    keys.press(Key.Key_E)
    keys.type("4")
    keys.press(Key.Key_Return)

    def other(dialog):
        box = dialog.value_box
        box.setFocus()
        QTest.keyClick(QApplication.focusWidget(), "6")
        QTest.keyClick(QApplication.focusWidget(), Key.Key_Return)

    trouble = in_dialog(other)
    keys.press(Key.Key_C)
    keys.settle()
    assert trouble == []
    assert [rival.value for rival in page.session.record.fact(STRANDS).rivals] == [6]
    assert page.answer.contradictions.item(0).text() == "Ring FDP: core strands: the note says 4 and 6"
    page.facts.setFocus()
    keys.press(Key.Key_R)
    assert page.session.record.fact(STRANDS).value == 6, "the other one first, and back"
    assert page.session.record.fact(STRANDS).status == "added"
    keys.press(Key.Key_R)
    assert page.session.record.fact(STRANDS).value == 4
    page.answer.contradictions.setFocus()
    keys.press(Key.Key_Delete)
    assert page.session.record.fact(STRANDS).rivals == []
    assert page.answer.contradictions.item(0).text() == "None named."


def test_questions_are_moved_and_a_fourth_is_refused(qtbot, window, keys):
    page = take(qtbot, window, keys)
    rows = [row.address for row in page.model.rows()]
    for place in rows[:4]:
        keys.go_to(place)
        keys.press(Key.Key_Q)
    assert len(page._ranked()) == 3
    assert "3 questions are ranked already" in page.pane._reading._trouble.text()
    page.answer.questions.setCurrentRow(2)
    page.answer.up.click()
    keys.settle()
    assert page._ranked() == [rows[0].text(), rows[2].text(), rows[1].text()]
    page.answer.questions.setCurrentRow(0)
    page.answer.drop_question.click()
    keys.settle()
    assert page._ranked() == [rows[2].text(), rows[1].text()]


def test_silence_for_all_that_is_open_under_a_heading(qtbot, window, keys):
    page = take(qtbot, window, keys)
    keys.go_to(Address("aftercare", field="splint"))
    keys.press(Key.Key_S, Shift)
    open_yet = [row for row in page.model.rows() if row.unsettled]
    assert open_yet and all(row.address.group == "operation" for row in open_yet)
    assert page.session.record.fact(Address("aftercare", field="programme")).basis == "silent"
    assert page.session.record.fact(Address("aftercare", field="ip_flexion_deg")) is None, "only what changes the work"


def test_keys_of_practice_do_nothing_while_a_note_is_read_and_the_other_way_round(qtbot, open_sample):
    window = open_sample(CASE)
    for name in ("contradiction", "ask", "silent_rest"):
        assert not window.menus.actions[name].isEnabled()
    before = window.page.session.record
    for key in (Key.Key_C, Key.Key_Q):
        qtbot.keyClick(window.page.facts, key)
    assert window.page.session.record is before
    assert window.menus.actions["confirm_case"].text() == "Confirm the whole record"


def test_the_menu_says_what_keys_mean_while_practising(qtbot, window, keys):
    take(qtbot, window, keys)
    actions = window.menus.actions
    assert actions["confirm_case"].text() == "Hand in"
    assert actions["contradiction"].isEnabled() and not actions["thought_first"].isEnabled()
    assert not actions["export"].isEnabled(), "an attempt is handed in, not exported"
    keys.press(Key.Key_F8)
    qtbot.waitUntil(lambda: window.page is None)
    assert actions["confirm_case"].text() == "Confirm the whole record"


def test_progress_is_shown_and_exported_and_the_teacher_reads_it(qtbot, window, keys, tmp_path, monkeypatch):
    take(qtbot, window, keys)
    add_tendon(keys)
    marking = hand_in(qtbot, window, keys)
    marking.progress.click()
    page = window.practice.progress
    qtbot.waitUntil(lambda: window.practice.currentWidget() is page)
    assert page.title.text() == "Progress of Ada: 1 case"
    cells = [page.kinds.model().index(0, column).data() for column in range(6)]
    assert cells[2].startswith("0% and ") and cells[5] == "few tried"
    page.tabs.setCurrentWidget(page.chart)
    qtbot.waitUntil(lambda: page.chart.drawn)

    targets = {name: tmp_path / name for name in ("all.json", "marks.csv", "progress.csv", "chart.svg")}
    buttons = (page.export, page.facts_csv, page.progress_csv, page.picture)
    for (name, target), press in zip(targets.items(), buttons, strict=True):
        monkeypatch.setattr("PySide6.QtWidgets.QFileDialog.getSaveFileName", lambda *_, to=target: (str(to), ""))
        press.click()
        qtbot.waitUntil(lambda name=name: page.told.text() == f"Saved as {name}.")
    exported = json.loads(targets["all.json"].read_text("utf-8"))
    assert exported["cautions"] and exported["progress"]["student"] == "Ada"
    words = {w["quote"] for m in exported["markings"] for f in m["facts"] for w in f["key_words"]}
    assert words == set(), "the words of the note leave only when asked"

    window.practice.open()
    qtbot.waitUntil(
        lambda: window.practice.cases.read.isEnabled() or window.practice.cases.table.model().rowCount() > 0
    )
    window.practice.cases.teacher.click()
    teacher = window.practice.teacher
    bad = tmp_path / "bad.json"
    bad.write_text("{", "utf-8")
    monkeypatch.setattr(
        "PySide6.QtWidgets.QFileDialog.getOpenFileNames", lambda *_: ([str(targets["all.json"]), str(bad)], "")
    )
    teacher.open.click()
    qtbot.waitUntil(lambda: teacher.students.model().rowCount() == 1)
    assert teacher.students.model().index(0, 0).data() == "Ada"
    assert teacher.fields.model().rowCount() > 3
    assert "bad.json" in teacher.told.text()
    monkeypatch.setattr("PySide6.QtWidgets.QFileDialog.getSaveFileName", lambda *_: (str(tmp_path / "fields.csv"), ""))
    teacher.table.click()
    qtbot.waitUntil(lambda: (tmp_path / "fields.csv").exists())


def test_missed_facts_come_back(qtbot, window, keys, monkeypatch):
    from datetime import date, timedelta

    from notereader.desktop.practice import desk

    class InTwoDays(date):
        @classmethod
        def today(cls):
            return date.today() + timedelta(days=2)

    take(qtbot, window, keys)
    hand_in(qtbot, window, keys)
    monkeypatch.setattr(desk, "date", InTwoDays)
    keys.press(Key.Key_Escape)
    cases = window.practice.cases
    qtbot.waitUntil(lambda: cases.take_due.isEnabled())
    with qtbot.waitSignal(window.case_shown):
        cases.take_due.click()
    page = window.page
    asked = set(page._attempt.attempt.asked)
    assert asked and {row.address.text() for row in page.model.rows()} == asked
    assert not page.answer.questions.isVisible()
    hand_in(qtbot, window, keys)


def test_a_case_without_its_key_is_handed_in_and_the_file_named(qtbot, window, keys, tmp_path):
    from notereader.practice import save_set

    path = tmp_path / "class.json"
    save_set(ready_set().cases[:2], path, "Class", keys=False)
    window._settings.case_set = str(path)
    show_cases(qtbot, window, keys)
    assert "without keys" in window.practice.cases.next.text()
    with qtbot.waitSignal(window.case_shown):
        keys.press(Key.Key_Return)
    in_dialog(lambda box: QTest.keyClick(box, Key.Key_Return))
    keys.press(Key.Key_Return, Ctrl)
    qtbot.waitUntil(lambda: "Send this file" in window.band.words)
    assert ".attempt.json" in window.band.words


def test_an_exercise_book_that_cannot_be_written_is_told(qtbot, window, keys, tmp_path):
    (tmp_path / "practice").write_text("a file where the folder should be", "utf-8")
    keys.press(Key.Key_F8)
    qtbot.waitUntil(lambda: window.band.words != "")
    assert "practice" in window.band.words and "Something went wrong" not in window.band.words
    assert "cannot be shown" in window.practice.cases.next.text()


def test_a_step_that_cannot_be_saved_is_told_and_not_shown(qtbot, window, keys, tmp_path, monkeypatch):
    from notereader.exchange import ExportFault
    from notereader.practice import attempts

    page = take(qtbot, window, keys)

    def full(*_):
        raise ExportFault("The disk is full. Make room and try again.")

    monkeypatch.setattr(attempts, "write_file", full)
    keys.go_to(SIDE)
    keys.press(Key.Key_S)
    assert page.session.record.fact(SIDE) is None, "the screen never shows what could still be lost"
    assert "disk is full" in window.band.words
    monkeypatch.undo()
    window.band.take(0)
    keys.settle()
    assert page.session.record.fact(SIDE).basis == "silent", "it is offered again"


@pytest.mark.parametrize("keyed", [True, False])
def test_a_teacher_makes_cases_of_a_confirmed_record_and_a_student_finds_them(
    qtbot, window, keys, tmp_path, monkeypatch, keyed
):
    from notereader.record import dump_record

    record = ready_set().case(CASE).key
    (tmp_path / "ring.json").write_text(dump_record(record, text=True), "utf-8")
    target = tmp_path / "class.json"
    show_cases(qtbot, window, keys)
    teacher = window.practice.teacher
    monkeypatch.setattr(
        "PySide6.QtWidgets.QFileDialog.getOpenFileNames", lambda *_: ([str(tmp_path / "ring.json")], "")
    )
    monkeypatch.setattr("PySide6.QtWidgets.QFileDialog.getSaveFileName", lambda *_: (str(target), ""))
    teacher.with_keys.setChecked(keyed)
    teacher.make.click()
    qtbot.waitUntil(lambda: teacher.told.text().startswith("Written: class.json, 1 case"))
    monkeypatch.setattr("PySide6.QtWidgets.QFileDialog.getOpenFileName", lambda *_: (str(target), ""))
    window.practice._choose_set("file")
    cases = window.practice.cases
    qtbot.waitUntil(lambda: cases.table.model().rowCount() == 1)
    assert cases.table.model().index(0, 0).data() == "ring"
    assert cases.take_next.isEnabled() is keyed
    window.practice._choose_set("own")
    qtbot.waitUntil(lambda: cases.table.model().rowCount() >= 15)


def test_cases_that_cannot_be_read_are_told_and_the_ready_ones_come_back(qtbot, window, keys, tmp_path):
    window._settings.case_set = str(tmp_path / "gone.json")
    show_cases(qtbot, window, keys)
    assert "gone.json" in window.band.words
    assert window._settings.case_set == ""
    assert window.practice.cases.table.model().rowCount() >= 15
