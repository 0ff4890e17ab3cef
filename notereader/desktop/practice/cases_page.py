"""The first page of practice: which case to take."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.practice.naming import case_title, counted, level_words
from notereader.desktop.practice.parts import Title, button, filled, goes_back, in_a_row
from notereader.desktop.practice.tables import PlainTable

if TYPE_CHECKING:
    from notereader.desktop.practice.desk import Overview
    from notereader.practice import CaseStanding, Marking

SENTENCE = (
    "Read an operative note without proposals, enter what it says, say what it leaves unsaid, and learn from the "
    "difference to its key."
)
_HEADINGS = ("Case", "Level", "Where you stand", "Points", "Over-stated", "Handed in")


class CasesPage(QWidget):
    """Lists the cases. What is to be done goes out by signals."""

    taken = Signal(str)
    due_taken = Signal()
    marking_wanted = Signal(object)
    progress_wanted = Signal()
    teacher_wanted = Signal()
    student_wanted = Signal()
    set_wanted = Signal(str)
    left = Signal()

    def __init__(self, look: Look):
        super().__init__()
        self._lines: tuple[CaseStanding, ...] = ()
        self._chosen = ""
        self.whose = plain_label()
        self.next = plain_label()
        self.next.setAccessibleName("What to take next")
        self.table = PlainTable("Cases", _HEADINGS)
        self.take = button("&Take this case  Return", self._take)
        self.take_next = button("Take the ne&xt", lambda: self.taken.emit(self._chosen))
        self.take_due = button("A&gain what was missed", self.due_taken.emit)
        self.read = button("&Read its marking", self._read)
        self.progress = button("Pr&ogress …", self.progress_wanted.emit)
        self.teacher = button("Teacher's vie&w …", self.teacher_wanted.emit)
        self.student = button("&Student …", self.student_wanted.emit)
        self.set = QPushButton("Other &cases")
        self.set.setAccessibleName("Other cases")
        self.set.setMenu(self._sets())
        self.back = button("First page  Esc", self.left.emit)
        layout = filled(self, (36, 20, 36, 16), "Cases to practise")
        layout.setSpacing(8)
        layout.addWidget(Title("Practise reading notes", look))
        layout.addWidget(plain_label(SENTENCE))
        layout.addWidget(self.next)
        layout.addLayout(in_a_row(self.take, self.take_next, self.take_due, self.read))
        layout.addWidget(self.table, 1)
        layout.addWidget(self.whose)
        layout.addLayout(in_a_row(self.progress, self.teacher, self.student, self.set, self.back))
        self.caution = plain_label(part="muted")
        layout.addWidget(self.caution)
        for keys in ("Return", "Enter"):
            shortcut = QShortcut(QKeySequence(keys), self.table)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(self._take)
        self.table.doubleClicked.connect(self._take)
        self.table.selectionModel().currentRowChanged.connect(lambda *_: self._offer())
        goes_back(self, self.left.emit)

    def show_overview(self, overview: "Overview", student: str, case_set: str) -> None:
        """Show where each case stands; the one to take next is in hand."""
        self._lines = overview.lines
        chosen = overview.chosen
        self._chosen = chosen.case.id if chosen else ""
        self.table.show_rows(_cells(line) for line in overview.lines)
        ids = [line.case.id for line in overview.lines]
        if self._chosen in ids:
            self.table.selectRow(ids.index(self._chosen))
        self.next.setText(
            f"Next: {self._title(self._chosen)} ({level_words(chosen.case.difficulty)}): {chosen.reason}."
            if chosen
            else "The cases came without keys: hand in your work to whoever gave you the cases."
        )
        self.take_next.setEnabled(chosen is not None)
        self.take_due.setText(f"A&gain what was missed: {overview.due} due")
        self.take_due.setEnabled(overview.due > 0)
        book = f"Exercise book of {student}" if student else "Exercise book without a name"
        from_where = case_set or "that come with the program"
        self.whose.setText(f"{book}  ·  {counted(len(ids), 'case')} {from_where}")
        self.caution.setText(overview.caution)
        self._offer()

    def wait(self) -> None:
        """Say that the cases are being looked through, where none is listed yet."""
        if not self._lines:
            self.next.setText("Looking through the cases …")
        self.table.setFocus()

    def _sets(self) -> QMenu:
        menu = QMenu("Other cases", self)
        for which, words in (
            ("file", "A file of cases …"),
            ("folder", "A folder of cases …"),
            ("own", "The cases that come with the program"),
        ):
            menu.addAction(words).triggered.connect(lambda _=False, which=which: self.set_wanted.emit(which))
        return menu

    def _title(self, case_id: str) -> str:
        told = any(line.case.id == case_id and line.marking is not None for line in self._lines)
        return case_title(case_id, told=told)

    def _line(self) -> "CaseStanding | None":
        row = self.table.row_in_hand()
        return self._lines[row] if row is not None and row < len(self._lines) else None

    def _offer(self) -> None:
        line = self._line()
        self.take.setEnabled(line is not None)
        self.read.setEnabled(line is not None and line.marking is not None)

    def _take(self) -> None:
        if (line := self._line()) is not None:
            self.taken.emit(line.case.id)

    def _read(self) -> None:
        if (line := self._line()) is not None and line.marking is not None:
            self.marking_wanted.emit(line.marking)


def _cells(line: "CaseStanding") -> tuple[str, ...]:
    told = line.marking is not None
    marking: Marking | None = line.marking
    state = "begun, go on" if line.begun else "marked" if told else "new"
    return (
        case_title(line.case.id, told=told),
        level_words(line.case.difficulty),
        state,
        f"{marking.share:.0%}" if marking else "",
        (str(marking.over) if marking.over else "none") if marking else "",
        f"{marking.handed_in_at.astimezone():%Y-%m-%d %H:%M}" if marking and marking.handed_in_at else "",
    )
