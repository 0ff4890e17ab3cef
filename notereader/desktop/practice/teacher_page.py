"""The teacher's view: several students side by side, fields as items, the hardest facts; and cases to hand out."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QFileDialog, QTabWidget, QWidget
from shiboken6 import isValid

from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.practice.naming import counted
from notereader.desktop.practice.parts import Title, button, filled, goes_back, in_a_row
from notereader.desktop.practice.tables import ChartView, PlainTable
from notereader.desktop.worker import Worker

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from notereader.desktop.practice.desk import ClassView
    from notereader.practice.charts import Inks
    from notereader.practice.teacher import FactLine, FieldLine, StudentLine

_HOW = (
    "Open what students exported or handed in: exports, attempts, sheets of answers, exported records. What is not "
    "marked yet is marked against the cases chosen. Of a case taken twice only the first time counts."
)
_STUDENTS = ("Student", "Cases", "Points", "Facts right", "Over-stated", "Read in", "Order of questions")
_FIELDS = ("Field", "Share right", "Range", "Discrimination", "Upper less lower", "Students", "Tried", "Over-stated")
_FACTS = ("Fact", "Case", "Right", "Over-stated", "Entered instead")
_GROUPS = {"repairs": "tendon", "pulleys": "pulley", "injuries": "other structure"}


class TeacherPage(QWidget):
    """Shows several students' work and writes what it shows."""

    left = Signal()
    files_chosen = Signal(object)

    def __init__(self, look: Look, worker: Worker):
        super().__init__()
        self._worker = worker
        self._view: ClassView | None = None
        self.told = plain_label()
        self.told.setAccessibleName("What was done")
        self.note = plain_label()
        self.caution = plain_label(part="muted")
        self.students = PlainTable("Students", _STUDENTS)
        self.fields = PlainTable("Fields as items, the hardest first", _FIELDS)
        self.facts = PlainTable("Facts, over-stated and hardest first", _FACTS)
        self.chart = ChartView("Chart of the fields as items; the table says the same", look, worker)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setAccessibleName("Tables of the class")
        self.tabs.tabBar().setAccessibleName("Tables of the class")
        for words, part in (
            ("Students", self.students),
            ("Fields", self.fields),
            ("Facts", self.facts),
            ("Chart of the fields", self.chart),
        ):
            self.tabs.addTab(part, words)
        self.open = button("&Open students' files …", self._ask)
        self.table = button("Table of &fields …", partial(self._save, "fields.csv", "CSV (*.csv)"))
        self.json = button("Ever&ything …", partial(self._save, "class.json", "JSON (*.json)"))
        self.picture = button(
            "&Chart …", partial(self._save, "fields.png", "Picture (*.png);;SVG (*.svg);;PDF (*.pdf)")
        )
        self.make = button("&Make cases to hand out …", self._make)
        self.with_keys = QCheckBox("with their &keys")
        self.with_keys.setChecked(True)
        self.back = button("All cases  Esc", self.left.emit)
        layout = filled(self, (24, 14, 24, 12), "Teacher's view")
        layout.addWidget(Title("Teacher's view", look))
        layout.addWidget(plain_label(_HOW))
        layout.addWidget(self.note)
        layout.addWidget(self.tabs, 1)
        layout.addLayout(in_a_row(self.open, self.table, self.json, self.picture))
        layout.addLayout(in_a_row(self.make, self.with_keys, self.back))
        layout.addWidget(self.told)
        layout.addWidget(self.caution)
        layout.addStretch()
        goes_back(self, self.left.emit)
        self._offer()

    def show_class(self, found: "ClassView") -> None:
        """Show what the files hold, and name those that could not be taken in."""
        self.told.setText("\n".join(f"Not taken in: {fault}" for fault in found.faults))
        if found.view is None:
            return
        self._view = found
        view = found.view
        self.note.setText(f"{counted(len(view.students), 'student')}. {view.note}".strip())
        self.caution.setText(view.caution)
        self.students.show_rows(_student_cells(line) for line in view.students)
        self.fields.show_rows(_field_cells(line) for line in view.fields)
        self.facts.show_rows(_fact_cells(line) for line in view.facts)
        self._offer()
        self.chart.show_figure(self._figure)
        self.tabs.tabBar().setFocus()

    def _offer(self) -> None:
        there = self._view is not None
        self.tabs.setVisible(there)
        for control in (self.table, self.json, self.picture):
            control.setEnabled(there)

    def _figure(self, inks: "Inks", width: float, letters: float) -> "Figure":
        from notereader.practice.charts import teacher_figure

        assert self._view is not None and self._view.view is not None
        return teacher_figure(self._view.view, inks, width, letters)

    def _ask(self) -> None:
        paths, _ = QFileDialog.getOpenFileNames(self, "Students' files", "", "Work (*.json *.txt);;All files (*)")
        if paths:
            self.told.setText("Reading …")
            self.files_chosen.emit([Path(path) for path in paths])

    def _save(self, name: str, kinds: str) -> None:
        if self._view is None:
            return
        path, _ = QFileDialog.getSaveFileName(self, "Save", name, kinds)
        if path:
            self._do(_writer(self._view, name, Path(path)), f"Saved as {Path(path).name}.")

    def _make(self) -> None:
        paths, _ = QFileDialog.getOpenFileNames(
            self, "Confirmed records with their notes, or sets of cases", "", "Records and sets (*.json)"
        )
        if not paths:
            return
        target, _ = QFileDialog.getSaveFileName(self, "The file to hand out", "cases.json", "JSON (*.json)")
        if target:
            self._do(_maker([Path(path) for path in paths], Path(target), keys=self.with_keys.isChecked()))

    def _do(self, job: Callable[[], str], done: str = "") -> None:
        self.told.setText("Saving …")
        self._worker.run(job, lambda words: self._tell(done or words), lambda fault: self._tell(str(fault)))

    def _tell(self, words: str) -> None:
        if isValid(self):
            self.told.setText(words)


def _writer(found: "ClassView", name: str, path: Path) -> Callable[[], str]:
    """Return what writes one of the tables or the chart in the background."""

    def write() -> str:
        from notereader.practice import teacher_csv, teacher_figure
        from notereader.practice.charts import save_figure
        from notereader.practice.exports import model_json, save_text

        assert found.view is not None
        if name.endswith(".csv"):
            save_text(path, teacher_csv(found.view))
        elif name.endswith(".json"):
            save_text(path, model_json(found.view))
        else:
            save_figure(teacher_figure(found.view), path)
        return ""

    return write


def _maker(paths: list[Path], target: Path, *, keys: bool) -> Callable[[], str]:
    """Return what writes a set of cases in the background."""

    def write() -> str:
        from notereader.desktop.practice.desk import make_set

        with_keys = "with their keys" if keys else "without their keys: students can read them and not mark them"
        return f"Written: {target.name}, {counted(make_set(paths, target, keys=keys), 'case')} {with_keys}."

    return write


def _student_cells(line: "StudentLine") -> tuple[str, ...]:
    return (
        line.student,
        str(line.cases),
        f"{line.share:.0%}",
        f"{line.right} of {line.trials}",
        str(line.over),
        str(line.read_in),
        "–" if line.rank_agreement is None else f"{line.rank_agreement:+.2f}",
    )


def _field_cells(line: "FieldLine") -> tuple[str, ...]:
    group = line.field.partition(".")[0]
    return (
        f"{line.label} ({_GROUPS.get(group, group)})",
        f"{line.difficulty:.0%}",
        f"{line.low:.0%} to {line.high:.0%}",
        "–" if line.discrimination is None else f"{line.discrimination:+.2f}",
        "–" if line.upper_lower is None else f"{line.upper_lower:+.2f}",
        str(line.students),
        str(line.trials),
        str(line.over) if line.over else "",
    )


def _fact_cells(line: "FactLine") -> tuple[str, ...]:
    return (
        line.words,
        line.case,
        f"{line.right} of {line.students}",
        str(line.over) if line.over else "",
        ", ".join(line.said_instead),
    )
