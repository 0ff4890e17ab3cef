"""The audit in the window, driven by keys: source, progress, stop and go on, figures, notes, sample, report."""

import csv
import json
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from desktop_names import check_names, check_targets
from desktop_samples import sample_record, sample_text
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QFileDialog, QWidget

from notereader.audit import audit as engine
from notereader.audit import work
from notereader.casebook import Casebook
from notereader.desktop.audit import page as page_module
from notereader.desktop.audit import report_pane
from notereader.desktop.audit.page import AuditPage
from notereader.desktop.audit.sheet_table import SheetTable
from notereader.record import Record, dump_record

SAMPLES = ("01-plain-index", "02-terse-ring", "07-partial-trimmed", "10-nerve-only", "14-nearly-silent")
LEAST = "14-nearly-silent"
Key = Qt.Key


def confirmed(record: Record) -> Record:
    """Return a record as a person would leave it who finds everything right."""
    copy = record.model_copy(deep=True)
    for _, fact in copy.walk():
        fact.status = "confirmed"
    return copy


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder of records that nobody confirmed; they are assessed in this process, so that no test waits for one."""
    folder = tmp_path / "records"
    folder.mkdir()
    for name in SAMPLES:
        (folder / f"{name}.json").write_text(dump_record(sample_record(name)), encoding="utf-8")
    monkeypatch.setattr(page_module, "home", lambda: tmp_path / "audits")
    monkeypatch.setattr(
        engine, "carry_out", lambda inputs, words, stop, workers, executor: work.carry_out(inputs, words, stop)
    )
    return folder


@pytest.fixture
def page(qtbot, window, here: Path) -> AuditPage:
    qtbot.waitUntil(window.isActiveWindow)
    window.start.paste.setFocus()
    press(qtbot, Key.Key_F9)
    assert window.pages.currentWidget() is window.audit
    return window.audit


@pytest.fixture
def counted(qtbot, page: AuditPage, here: Path) -> AuditPage:
    choose(qtbot, page, here)
    read(qtbot, page)
    return page


def press(qtbot, key: Qt.Key, words: str = "") -> None:
    """Press a key, or type, wherever the focus is."""
    focus = QApplication.focusWidget()
    assert focus is not None
    if words:
        qtbot.keyClicks(focus, words)
    else:
        qtbot.keyClick(focus, key)


def tab_to(qtbot, wanted: QWidget) -> None:
    """Press Tab until a control has the focus."""
    for _ in range(80):
        if QApplication.focusWidget() is wanted:
            return
        press(qtbot, Key.Key_Tab)
    raise AssertionError(f"{wanted.accessibleName()} cannot be reached by Tab")


def choose(qtbot, page: AuditPage, place: Path) -> None:
    """Type the place and press Return."""
    assert QApplication.focusWidget() is page.source.place
    page.source.place.selectAll()
    press(qtbot, Key.Key_unknown, str(place))
    press(qtbot, Key.Key_Return)
    qtbot.waitUntil(lambda: bool(page.source.found.text()))


def read(qtbot, page: AuditPage) -> None:
    """Read and count, by keys."""
    tab_to(qtbot, page.source.read)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: bool(page.overview and page.notes.table.sheet.lines and page.sample.words.text()))


def part(qtbot, page: AuditPage, name: str) -> None:
    """Go to a part of the page by its button."""
    names = list(page._buttons)
    here, there = names.index(page._shown()), names.index(name)
    tab_to(qtbot, page._buttons[names[here]])
    for _ in range(abs(there - here)):
        press(qtbot, Key.Key_Right if there > here else Key.Key_Left)
    assert page._shown() == name


def go_to_cell(qtbot, table: SheetTable, row: str, column: str) -> None:
    """Walk to a cell by its row and heading with the arrow keys."""
    tab_to(qtbot, table)
    down = next(at for at, line in enumerate(table.sheet.lines) if line.cells[0].startswith(row))
    press(qtbot, Key.Key_Home)
    for _ in range(abs(down - table.currentIndex().row())):
        press(qtbot, Key.Key_Down if table.currentIndex().row() < down else Key.Key_Up)
    for _ in range(table.sheet.head.index(column)):
        press(qtbot, Key.Key_Right)
    assert (table.currentIndex().row(), table.currentIndex().column()) == (down, table.sheet.head.index(column))


def test_from_a_folder_to_a_figure_to_its_notes_to_one_of_them_and_back(qtbot, window, counted: AuditPage) -> None:
    assert QApplication.focusWidget() is counted.facts.table
    assert "5 notes counted" in counted.standing.text()
    go_to_cell(qtbot, counted.facts.table, "Core suture size", "Silent")
    share = counted.facts.table.currentIndex().data()
    assert share.startswith(("50 %", "33 %", "25 %")), share
    press(qtbot, Key.Key_Return)
    qtbot.waitUntil(lambda: "silent on Core suture size" in counted.notes.words.text())
    listed = [line.cells[0] for line in counted.notes.table.sheet.lines]
    assert f"{LEAST}.json" in listed and "01-plain-index.json" not in listed
    go_to_cell(qtbot, counted.notes.table, LEAST, "Silent on")
    with qtbot.waitSignal(window.case_shown):
        press(qtbot, Key.Key_Return)
    assert window.page.session.record.note.text == sample_text(LEAST)
    assert "F9 goes back" in window.band.words
    press(qtbot, Key.Key_F9)
    assert window.pages.currentWidget() is counted and counted.isVisible()
    assert counted.stack.currentWidget() is counted.notes


def test_a_note_that_was_opened_twice_is_one_case_and_not_in_the_own_casebook(
    qtbot, window, counted: AuditPage, tmp_path: Path
) -> None:
    for _ in range(2):
        part(qtbot, counted, "Note by note")
        go_to_cell(qtbot, counted.notes.table, LEAST, "Note")
        with qtbot.waitSignal(window.case_shown):
            press(qtbot, Key.Key_Return)
        press(qtbot, Key.Key_F9)
    [opened] = (tmp_path / "audits").glob("*/opened.db")
    book = Casebook(opened)
    assert len(book.cases()) == 1
    book.close()
    own = Casebook(tmp_path / "casebook.db")
    assert own.cases() == []
    own.close()


def test_a_sample_is_drawn_confirmed_in_the_window_and_compared(qtbot, window, counted: AuditPage) -> None:
    part(qtbot, counted, "Sample to confirm")
    tab_to(qtbot, counted.sample.number)
    counted.sample.number.selectAll()
    press(qtbot, Key.Key_unknown, "5")
    tab_to(qtbot, counted.sample.draw)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: len(counted.sample.table.sheet.lines) == 5)
    assert counted.sample.standing.text() == "0 of 5 notes confirmed."
    go_to_cell(qtbot, counted.sample.table, LEAST, "Note")
    with qtbot.waitSignal(window.case_shown):
        press(qtbot, Key.Key_Return)
    facts = window.page.facts
    session = window.page.session
    for _ in range(200):
        if all(fact.status != "proposed" for _, fact in session.record.walk()):
            break
        qtbot.keyClick(facts, Key.Key_Return)
        qtbot.waitUntil(lambda: session.idle)
    press(qtbot, Key.Key_F9)
    qtbot.waitUntil(lambda: counted.sample.standing.text() == "1 of 5 notes confirmed.")
    standing = {line.cells[0]: line.cells[1] for line in counted.sample.table.sheet.lines}
    assert standing[f"{LEAST}.json"] == "✓ confirmed"
    assert "to settle" in standing["01-plain-index.json"]
    tab_to(qtbot, counted.sample.compare)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: bool(counted.sample.reader.sheet.lines))
    assert "1 note of those read was confirmed by a person." in counted.sample.words.text()
    assert "4 more are not confirmed yet." in counted.sample.words.text()
    assert {"Sensitivity", "Specificity", "Stated, corrected"} <= set(counted.sample.reader.sheet.head)
    qtbot.waitUntil(lambda: "Stated, corrected" in counted.facts.table.sheet.head)


def test_a_larger_sample_keeps_what_was_confirmed(qtbot, counted: AuditPage, tmp_path: Path) -> None:
    part(qtbot, counted, "Sample to confirm")
    counted.sample.number.setValue(2)
    counted.sample.draw.click()
    qtbot.waitUntil(lambda: len(counted.sample.table.sheet.lines) == 2)
    [path] = (tmp_path / "audits").glob("*/sample.db")
    book = Casebook(path)
    first = book.cases()[0].id
    case = book.open(first)
    from notereader.casebook import Edit

    for place, fact in list(case.record.walk()):
        case.apply(Edit(place, fact, fact.model_copy(update={"status": "confirmed"})), who="ward")
    book.close()
    counted.sample.number.setValue(4)
    counted.sample.draw.click()
    qtbot.waitUntil(lambda: len(counted.sample.table.sheet.lines) == 4)
    assert counted.sample.standing.text() == "1 of 4 notes confirmed."


@pytest.fixture
def gate(here: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[threading.Event]:
    """Reading stands still after two notes until it is stopped, or the gate is opened."""
    opened = threading.Event()

    def slow(inputs, words: bool, stop: Callable[[], bool], workers: object, executor: object) -> Iterator[work.Done]:
        for at, done in enumerate(work.carry_out(inputs, words, stop), 1):
            yield done
            while at == 2 and not stop() and not opened.wait(0.01):
                pass

    monkeypatch.setattr(engine, "carry_out", slow)
    yield opened
    opened.set()


def test_esc_stops_what_is_done_is_kept_and_going_on_reads_the_rest(
    qtbot, window, page: AuditPage, here: Path, gate: threading.Event
) -> None:
    choose(qtbot, page, here)
    tab_to(qtbot, page.source.read)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: page.source.told.text() == "2 of 5 notes.")
    assert QApplication.focusWidget() is page.source.stop
    assert not page._buttons["Facts"].isEnabled() and not page.source.place.isEnabled()
    assert (page.source.bar.value(), page.source.bar.maximum()) == (2, 5)
    press(qtbot, Key.Key_Escape)
    qtbot.waitUntil(lambda: not page.busy)
    assert "Stopped after 2 notes. What is done is kept." in page.source.told.text()
    qtbot.waitUntil(lambda: page.source.read.text() == "&Go on and count")
    assert "2 of its notes were read before" in page.source.found.text()
    gate.set()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is page.source.read)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: page.overview is not None)
    assert dict(page.overview.counts)["counted"] == 5


def test_reading_goes_on_while_a_note_is_read_beside_it(
    qtbot, window, page: AuditPage, here: Path, gate: threading.Event
) -> None:
    choose(qtbot, page, here)
    page.source.read.click()
    qtbot.waitUntil(lambda: page.source.told.text() == "2 of 5 notes.")
    QApplication.clipboard().setText(sample_text("02-terse-ring"))
    with qtbot.waitSignal(window.case_shown):
        window.run("paste")
    gate.set()
    qtbot.waitUntil(lambda: page.overview is not None)
    assert window.pages.currentWidget() is window.page, "it does not push itself before the case"
    press(qtbot, Key.Key_F9)
    assert "5 notes counted" in page.standing.text()


def test_closing_the_window_stops_the_reading_and_keeps_what_is_done(
    qtbot, make_window, here: Path, gate: threading.Event
) -> None:
    window = make_window()
    window.run("audit")
    window.audit.source.place.setText(str(here))
    window.audit.source.look()
    qtbot.waitUntil(lambda: window.audit.source.read.isEnabled())
    window.audit.source.read.click()
    qtbot.waitUntil(lambda: window.audit.source.told.text() == "2 of 5 notes.")
    window.close()
    window.audit.finish()
    again = make_window()
    again.run("audit")
    again.audit.source.place.setText(str(here))
    again.audit.source.look()
    qtbot.waitUntil(lambda: "2 of its notes were read before" in again.audit.source.found.text())


def table_in(place: Path) -> Path:
    """Write a table whose text column bears no usual name."""
    with place.open("w", encoding="utf-8", newline="") as stream:
        rows = csv.writer(stream)
        rows.writerow(["number", "what was dictated", "site", "day"])
        for at, name in enumerate(SAMPLES * 2):
            rows.writerow([at, sample_text(name), "north" if at % 2 else "south", f"2031-{1 + at // 5:02}-03"])
    return place


def test_a_table_asks_for_its_columns_and_is_counted_by_group_and_over_time(
    qtbot, page: AuditPage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(work, "read_note", lambda note: sample_record(_sample_of(note.text)))
    choose(qtbot, page, table_in(tmp_path / "notes.csv"))
    assert "Which of its columns holds the text" in page.source.found.text()
    assert not page.source.read.isEnabled()
    for box, name in ((page.source.text, "what was dictated"), (page.source.day, "day"), (page.source.name, "number")):
        tab_to(qtbot, box)
        press(qtbot, Key.Key_unknown, name[:4])
        assert box.currentText() == name
        press(qtbot, Key.Key_Return)
    qtbot.waitUntil(lambda: page.source.read.isEnabled())
    tab_to(qtbot, page.source.groups)
    press(qtbot, Key.Key_unknown, "si")
    assert page.source.groups.currentItem().text() == "site"
    press(qtbot, Key.Key_Space)
    assert page.source.counting().groups == ("site",)
    read(qtbot, page)
    part(qtbot, page, "Groups")
    qtbot.waitUntil(lambda: page.groups.table.sheet.head == ("Stated in", "north (5)", "south (5)"))
    go_to_cell(qtbot, page.groups.table, "Core suture size", "north (5)")
    press(qtbot, Key.Key_Return)
    qtbot.waitUntil(lambda: "of site north, they are silent on Core suture size" in page.notes.words.text())
    assert {line.cells[1] for line in page.notes.table.sheet.lines} == {"north"}
    part(qtbot, page, "Over time")
    qtbot.waitUntil(lambda: [line.key for line in page.periods.table.sheet.lines] == ["2031-01", "2031-02"])
    assert "With 2 periods the limits are provisional" in page.periods.signal_words.text()
    for name, pane in (("Facts", page.facts), ("Groups", page.groups), ("Over time", page.periods)):
        page.go_to(name)
        assert page.stack.currentWidget() is pane
        tab_to(qtbot, pane.as_chart)
        press(qtbot, Key.Key_Space)
        qtbot.waitUntil(lambda pane=pane: pane.chart.picture.pixmap().width() > 400)


def _sample_of(text: str) -> str:
    return next(name for name in SAMPLES if sample_text(name).split() == text.split())


def test_the_own_casebook_is_counted_and_its_cases_are_opened_where_they_are(
    qtbot, window, page: AuditPage, tmp_path: Path
) -> None:
    book = Casebook(tmp_path / "casebook.db")
    for name in SAMPLES[:2]:
        book.add(confirmed(sample_record(name)), title=name)
    book.close()
    tab_to(qtbot, page.source.own)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: "The casebook" in page.source.found.text())
    read(qtbot, page)
    assert dict(page.overview.counts)["confirmed by a person"] == 2
    part(qtbot, page, "Note by note")
    go_to_cell(qtbot, page.notes.table, "case 1", "Note")
    with qtbot.waitSignal(window.case_shown):
        press(qtbot, Key.Key_Return)
    assert window.page.session.record.note.text == sample_text(SAMPLES[0])
    assert not list((tmp_path / "audits").glob("*/opened.db"))


def test_a_second_reader_is_compared_and_a_difference_opens_the_note(
    qtbot, window, counted: AuditPage, tmp_path: Path
) -> None:
    other = tmp_path / "other"
    other.mkdir()
    for name in SAMPLES[:3]:
        record = confirmed(sample_record(name))
        if name == "01-plain-index":
            for repair in record.repairs:
                if "size" in repair.facts:
                    repair.facts["size"].value = "2-0"
        (other / f"{name}.json").write_text(dump_record(record), encoding="utf-8")
    part(qtbot, counted, "Second reader")
    tab_to(qtbot, counted.readers.place)
    press(qtbot, Key.Key_unknown, str(other))
    press(qtbot, Key.Key_Return)
    qtbot.waitUntil(lambda: bool(counted.readers.fields.sheet.lines))
    assert "3 notes read by both; 2 only by the first, 0 only by the second." in counted.readers.words.text()
    assert counted.readers.fields.sheet.head[1:] == ("Places", "Same", "Kappa", "Alpha", "Alpha of figures")
    lines = counted.readers.differences.sheet.lines
    assert lines and all("core suture size" in line.cells[1] and line.cells[3].startswith("2-0") for line in lines)
    assert "“" in lines[0].cells[2], "the words of the note stand beside it"
    go_to_cell(qtbot, counted.readers.differences, "01-plain-index", "Fact")
    with qtbot.waitSignal(window.case_shown):
        press(qtbot, Key.Key_Return)
    assert window.page.session.record.note.text == sample_text("01-plain-index")


def test_the_report_is_saved_as_asked(
    qtbot, counted: AuditPage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out = tmp_path / "report"
    out.mkdir()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(out))
    part(qtbot, counted, "Report")
    tab_to(qtbot, counted.report.parts["print"])
    press(qtbot, Key.Key_Space)
    tab_to(qtbot, counted.report.save)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: counted.report.told.text().startswith("Saved in"))
    names = {path.name for path in out.iterdir()}
    assert {"report.html", "audit.json", "rates.csv", "notes.csv"} <= names
    assert "report.pdf" not in names and "facts.csv" not in names
    page = (out / "report.html").read_text(encoding="utf-8")
    assert LEAST not in page and "note 1" in page, "no names unless asked"
    assert json.loads((out / "audit.json").read_bytes())["settings"]["Names of the notes"] == "left out"
    asked = []
    monkeypatch.setattr(report_pane, "agreed", lambda parent, question: bool(asked.append(question)))
    before = (out / "report.html").stat().st_mtime_ns
    press(qtbot, Key.Key_Space)
    assert "report.html" in asked[0]
    assert (out / "report.html").stat().st_mtime_ns == before


def test_words_of_the_notes_are_saved_only_where_they_were_asked_for(
    qtbot, page: AuditPage, here: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out = tmp_path / "report"
    out.mkdir()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(out))
    choose(qtbot, page, here)
    tab_to(qtbot, page.source.with_words)
    press(qtbot, Key.Key_Space)
    read(qtbot, page)
    part(qtbot, page, "Report")
    assert "hold the words of the notes" in page.report.words.text()
    page.report.with_names.setChecked(True)
    for name in ("page", "print", "data"):
        page.report.parts[name].setChecked(False)
    page.report.save.click()
    qtbot.waitUntil(lambda: page.report.told.text().startswith("Saved in"))
    assert any(row["words"] for row in csv.DictReader((out / "facts.csv").open(encoding="utf-8-sig", newline="")))


@pytest.mark.parametrize(
    ("place", "said"),
    [("nowhere", "There is no file or folder"), ("odd.txt", "is no source of many notes"), ("odd.xlsx", "no Excel")],
)
def test_what_is_no_source_is_said_in_words(qtbot, page: AuditPage, tmp_path: Path, place: str, said: str) -> None:
    for name in ("odd.txt", "odd.xlsx"):
        (tmp_path / name).write_text("nothing", encoding="utf-8")
    choose(qtbot, page, tmp_path / place)
    assert said in page.source.found.text()
    assert not page.source.read.isEnabled()


def test_a_fault_inside_names_no_word_of_a_note(
    qtbot, page: AuditPage, here: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def failing(*_: object) -> None:
        raise ValueError("Mrs Example, born 1970")

    choose(qtbot, page, here)
    monkeypatch.setattr(engine, "tally", failing)
    page.source.read.click()
    qtbot.waitUntil(lambda: not page.busy)
    assert page.source.told.text() == "Something went wrong inside the program (ValueError)."


def test_work_that_was_begun_with_other_knowledge_is_read_afresh(
    qtbot, counted: AuditPage, here: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from notereader.audit import engine as knowledge

    monkeypatch.setattr(knowledge, "stamp", lambda: "newer")
    counted.go_to("Source")
    counted.source.look()
    qtbot.waitUntil(lambda: "another version of the program" in counted.source.found.text())
    assert not counted.source.read.isEnabled()
    tab_to(qtbot, counted.source.afresh)
    press(qtbot, Key.Key_Space)
    qtbot.waitUntil(lambda: not counted.busy and counted.overview is not None)
    assert "5 notes counted" in counted.standing.text()


def test_processes_of_the_program_read_what_the_window_asks_for(
    qtbot, page: AuditPage, here: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(engine, "carry_out", work.carry_out)
    choose(qtbot, page, here)
    assert page.source.processes.value() >= 1
    read(qtbot, page)
    assert dict(page.overview.counts)["counted"] == 5


def test_every_part_has_names_and_targets(qtbot, counted: AuditPage) -> None:
    for name in counted._buttons:
        counted.go_to(name)
        qtbot.wait(10)
        check_names(counted)
        check_targets(counted)


def test_f6_walks_the_parts_and_tab_is_never_trapped(qtbot, window, counted: AuditPage) -> None:
    shown = []
    for _ in range(8):
        qtbot.keyClick(QApplication.focusWidget(), Key.Key_F6)
        shown.append(counted._shown())
    assert sorted(shown) == sorted(counted._buttons)
    qtbot.keyClick(QApplication.focusWidget(), Key.Key_F6, Qt.KeyboardModifier.ShiftModifier)
    assert counted._shown() == shown[-2]
    for name in counted._buttons:
        counted.go_to(name)
        counted._buttons[name].setFocus()
        seen: list[QWidget] = []
        for _ in range(60):
            focus = QApplication.focusWidget()
            if focus in seen:
                break
            seen.append(focus)
            press(qtbot, Key.Key_Tab)
        assert QApplication.focusWidget() is seen[0], f"{name}: comes round again"
        assert any(counted.stack.currentWidget().isAncestorOf(widget) for widget in seen)


def test_a_cell_is_read_out_with_its_row_and_heading(counted: AuditPage) -> None:
    table = counted.facts.table
    words = table.model().index(0, 4).data(Qt.ItemDataRole.AccessibleTextRole)
    line = table.sheet.lines[0]
    assert words == f"{line.cells[0]}, Silent: {line.cells[4]}"


@pytest.mark.parametrize("size", [(1366, 768), (683, 384)])
def test_at_twice_the_size_of_letters_every_button_is_whole_and_can_be_reached(
    qtbot, look, make_window, here: Path, size: tuple[int, int]
) -> None:
    window = make_window(*size)
    window.run("audit")
    page = window.audit
    page.source.place.setText(str(here))
    page.source.look()
    qtbot.waitUntil(lambda: page.source.read.isEnabled())
    page.source.read.click()
    qtbot.waitUntil(lambda: bool(page.overview and page.sample.words.text()))
    look.zoom(10)
    for name in page._buttons:
        page.go_to(name)
        qtbot.wait(20)
        assert page.horizontalScrollBar().maximum() == 0, name
        for button in page.findChildren(QAbstractButton):
            if button.isVisible() and button.text():
                assert button.width() >= button.sizeHint().width() - 1, button.text()
                assert button.mapTo(page.widget(), button.rect().bottomRight()).x() <= page.widget().width(), (
                    button.text()
                )
