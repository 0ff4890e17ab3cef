"""What the pages of practice owe to screen readers, large letters and small windows; and what their lines say."""

import pytest
from desktop_names import check_names, check_targets
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel
from shiboken6 import isValid

from notereader.desktop.editors import ValueEditor
from notereader.desktop.help_page import keys_page
from notereader.desktop.keys import PRACTICE_WORDS, key_named
from notereader.desktop.practice.answers import AnswerRow, answer_items, say_silent, second_value, take_back
from notereader.desktop.practice.contradiction_dialog import ContradictionDialog
from notereader.desktop.practice.marking_lines import lines_of
from notereader.desktop.practice.naming import case_title
from notereader.desktop.practice.typing import STUDENTS
from notereader.desktop.steps import StepRefused
from notereader.practice import mark, new_attempt, ready_set
from notereader.practice.marks import FactMark, Words
from notereader.record import Address, Fact, Record, ValueRefused, show_value
from notereader.vocabulary import field_specs

CASE = "11-title-against-text"
FDP = Address("repairs", "ring", "FDP")


@pytest.fixture
def room(qtbot, window, tmp_path):
    window.practice_folder = tmp_path / "practice"
    window._settings.student = "Ada"
    window.run("practise")
    qtbot.waitUntil(lambda: window.practice.cases.table.model().rowCount() > 0)
    return window.practice


def show_work(qtbot, window, room, case=CASE):
    with qtbot.waitSignal(window.case_shown):
        room._take(case)
    return window.page


def marked(qtbot, window, room):
    """Hand in an attempt with one answer and show its marking."""
    page = show_work(qtbot, window, room)
    page.session.change(lambda: page._attempt.put(Address("operation", field="side"), "left", [(0, 5)]))
    page.session.confirm_case(page.handed_in.emit)
    qtbot.waitUntil(lambda: room.currentWidget() is room.marking and room.marking.list.count() > 0)
    return room.marking


def show_teacher(qtbot, room):
    room._show(room.teacher)


def show_progress(qtbot, window, room):
    marked(qtbot, window, room).progress.click()
    qtbot.waitUntil(lambda: room.currentWidget() is room.progress)


def test_the_page_of_cases(window, room):
    check_names(window)
    check_targets(window)


def test_the_page_of_work(qtbot, window, room):
    page = show_work(qtbot, window, room)
    check_names(window)
    check_targets(window)
    dialog = ContradictionDialog(page.facts.row_in_hand(), page.session.record, "", page)
    qtbot.addWidget(dialog)
    dialog.show()
    check_names(dialog)
    check_targets(dialog)


def test_the_pages_of_marking_progress_and_teacher(qtbot, window, room):
    marked(qtbot, window, room)
    check_names(window)
    check_targets(window)
    room.marking.progress.click()
    qtbot.waitUntil(lambda: room.currentWidget() is room.progress)
    check_names(window)
    check_targets(window)
    show_teacher(qtbot, room)
    check_names(window)
    check_targets(window)


@pytest.mark.parametrize("which", ["cases", "marking", "progress", "teacher"])
@pytest.mark.parametrize("size", [(1366, 768), (683, 384)])
def test_no_button_is_cut_off_at_twice_the_size_of_letters(qtbot, look, make_window, tmp_path, which, size):
    window = make_window(*size)
    window.practice_folder = tmp_path / "practice"
    window.run("practise")
    room = window.practice
    qtbot.waitUntil(lambda: room.cases.table.model().rowCount() > 0)
    {
        "cases": lambda: None,
        "marking": lambda: marked(qtbot, window, room),
        "progress": lambda: show_progress(qtbot, window, room),
        "teacher": lambda: show_teacher(qtbot, room),
    }[which]()
    look.zoom(10)
    qtbot.wait(50)
    page = room.currentWidget()
    assert (window.width(), window.height()) == size, "the window does not grow beyond the screen"
    for button in page.findChildren(QAbstractButton):
        if button.isVisible() and not button.inherits("QToolButton"):
            assert button.height() >= button.sizeHint().height() - 1, button.text()
            assert button.width() >= button.sizeHint().width() - 1, button.text()
    for label in page.findChildren(QLabel):
        if label.isVisible() and label.wordWrap() and label.text():
            assert label.height() >= label.heightForWidth(label.width()) - 2, label.text()


def test_focus_goes_round_the_page_of_marking(qtbot, window, room):
    page = marked(qtbot, window, room)
    window.activateWindow()
    page.list.setFocus()
    walked = []
    for _ in range(4):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_F6)
        walked.append(QApplication.focusWidget())
    assert walked == [page.detail, page.next, page.note, page.list]


def test_closing_the_window_in_the_middle_of_work_keeps_it(qtbot, window, room, tmp_path):
    from notereader.practice import exercise_book

    page = show_work(qtbot, window, room)
    place = Address("operation", field="side")
    page.session.take_in_hand(place)
    page.run("correct")
    qtbot.waitUntil(lambda: page.pane.editing)
    qtbot.keyClick(QApplication.focusWidget(), "l")
    window.close()
    qtbot.waitUntil(lambda: not window.isVisible())
    kept = exercise_book("Ada", tmp_path / "practice").attempts()[0]
    assert kept.record.fact(place).value == "left"


def test_leaving_while_the_cases_are_looked_through_disturbs_nothing(qtbot, window, room):
    window.run("new")
    window.run("practise")
    window.run("new")
    qtbot.wait(50)
    assert window.pages.currentWidget() is window.start
    assert isValid(room)


def test_the_page_of_keys_tells_what_keys_mean_while_practising():
    page = keys_page()
    for name, words in PRACTICE_WORDS.items():
        assert key_named(name) and words in page


# What the lines say


def marking_of(case_id=CASE):
    case = ready_set().case(case_id)
    attempt = new_attempt(case, "a-1", "Ada")
    attempt.record = case.answers.model_copy(deep=True)
    return case, mark(case, attempt)


def test_every_mark_contradiction_and_question_has_its_line():
    _, marking = marking_of()
    lines = [line for line in lines_of(marking) if not line.heading]
    assert len(lines) == 1 + len(marking.facts) + len(marking.contradictions) + 1
    assert all(line.html for line in lines)


@pytest.mark.parametrize(
    ("outcome", "leaning", "heading"),
    [
        ("wrong", "over", "Over-stated: the worst fault (1)"),
        ("read in", "over", "Over-stated: the worst fault (1)"),
        ("wrong", "under", "Wrong (1)"),
        ("read in", None, "Read into the note (1)"),
        ("missed", None, "Missed (1)"),
        ("wrong words", None, "Right value, wrong words (1)"),
        ("silence unsaid", None, "The note is silent, and you did not say so (1)"),
        ("right", None, "Right (1)"),
    ],
)
def test_each_kind_of_difference_stands_under_its_heading(outcome, leaning, heading):
    _, marking = marking_of()
    one = FactMark(
        address=FDP.field_of("strands").text(), where="ring FDP", label="Core strands", kind="core",
        field="repairs.strands", outcome=outcome, leaning=leaning, said="6", true="4", sentence="<b>Two</b> & more.",
        why="Because.", bears="strength", source="Common practice",
        key_words=[Words(quote="four <i>strands</i>", start=5, end=9)],
    )  # fmt: skip
    lines = lines_of(marking.model_copy(update={"facts": [one], "contradictions": [], "questions": None}))
    assert lines[1].heading and lines[1].title == heading
    assert lines[2].key_words == ((5, 9),)
    assert "&lt;i&gt;" in lines[2].html and "<i>" not in lines[2].html, "words of a note are never markup"
    assert "Why it matters (strength)" in lines[2].html and "Source: Common practice" in lines[2].html


def test_the_cautions_stand_in_the_summary():
    _, marking = marking_of()
    assert all(caution[:40].replace("'", "&#x27;") in lines_of(marking)[0].html for caution in marking.cautions)


def test_a_case_has_no_telling_name_before_it_is_marked():
    assert case_title("17-two-sides") == "Case 17"
    assert case_title("17-two-sides", told=True) == "17-two-sides"
    assert case_title("ring") == "ring"


# What can be answered, and what each key does


def everything(record, **how):
    return [item for item in answer_items(record, lambda _: True, **how) if isinstance(item, AnswerRow)]


def test_rows_follow_from_the_students_own_answers_alone():
    empty = {row.address.group for row in everything(Record(), every_field=True)}
    assert empty == {"operation", "aftercare", "elements"}
    record = Record()
    record.put(FDP.field_of("treatment"), Fact(value="repaired", status="added"))
    rows = everything(record, every_field=True)
    assert {row.address.group for row in rows} >= {"repairs", "pulleys", "injuries"}
    needed = [row for row in rows if row.needed]
    assert FDP.field_of("gap") in [row.address for row in needed]
    assert all(row.word == "open" and row.unsettled for row in needed if row.fact is None)
    assert len(everything(record, every_field=False)) < len(rows)


def test_steps_that_make_no_sense_are_refused_in_words():
    with pytest.raises(StepRefused, match="nothing to take back"):
        take_back(Record(), FDP.field_of("gap"))
    with pytest.raises(StepRefused, match="Nothing that matters is open"):
        say_silent(Record(), [])
    with pytest.raises(StepRefused, match="first value"):
        second_value(Record(), FDP.field_of("strands"), 4, None)
    record = Record()
    record.put(FDP.field_of("strands"), Fact(value=4, status="added"))
    with pytest.raises(StepRefused, match="4 is entered already"):
        second_value(record, FDP.field_of("strands"), 4, None)


@pytest.mark.parametrize(
    ("place", "typed", "value"),
    [
        (FDP.field_of("strands"), "four", 4),
        (FDP.field_of("purchase_mm"), "1 cm", "10 mm"),
        (FDP.field_of("size"), "4/0", "4-0"),
        (FDP.field_of("material"), "Ethibond", "braided polyester"),
        (Address("aftercare", field="wrist_flexion_deg"), "20 extension", "20 degrees of extension"),
        (Address("aftercare", field="start_day"), "day 3", "3 days after operation"),
        (Address("operation", field="date"), "4 March 2033", "2033-03-04"),
    ],
)
def test_students_type_in_the_words_of_the_note(qtbot, place, typed, value):
    spec = field_specs()[place.group][place.field]
    editor = ValueEditor(spec, None, None, STUDENTS)
    qtbot.addWidget(editor)
    editor.show()
    box = editor.focusProxy()
    qtbot.keyClicks(box, typed)
    entered = editor.value()
    assert (entered if isinstance(entered, int | str) else show_value(entered, spec.unit)) == value
    again = ValueEditor(spec, entered, None, STUDENTS)
    qtbot.addWidget(again)
    assert again.value() == entered, "what is shown can be entered again as it stands"


def test_a_wrist_without_its_direction_is_refused(qtbot):
    spec = field_specs()["aftercare"]["wrist_flexion_deg"]
    editor = ValueEditor(spec, None, None, STUDENTS)
    qtbot.addWidget(editor)
    qtbot.keyClicks(editor.focusProxy(), "20")
    with pytest.raises(ValueRefused, match="20 flexion or 20 extension"):
        editor.value()
