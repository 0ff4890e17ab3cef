"""Progress: a chart and a table for each kind of fact, the missed facts that come back, and the export."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QFileDialog, QInputDialog, QTabWidget, QWidget
from shiboken6 import isValid

from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.practice.naming import case_title, counted
from notereader.desktop.practice.parts import Title, button, filled, goes_back, in_a_row
from notereader.desktop.practice.tables import ChartView, PlainTable
from notereader.desktop.worker import Worker

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from notereader.desktop.practice.desk import Standing
    from notereader.practice.charts import Inks
    from notereader.practice.progress import KindProgress

_KINDS = ("Kind of fact", "Now, estimated", "It may lie between", "Right, of all tried", "Over-stated", "Remark")
_CASES = ("Case", "Handed in", "Points", "Right", "Over-stated", "Missed", "Read in")
_COMING = ("Comes back on", "Case", "Fact", "Missed")


class ProgressPage(QWidget):
    """Shows one student's progress and writes it for the teacher."""

    left = Signal()

    def __init__(self, look: Look, worker: Worker):
        super().__init__()
        self._worker = worker
        self._standing: Standing | None = None
        self.told = plain_label()
        self.told.setAccessibleName("What was done")
        self.how = plain_label(part="muted")
        self.caution = plain_label(part="muted")
        self.chart = ChartView("Chart of progress by kind of fact; the table says the same", look, worker)
        self.kinds = PlainTable("Progress by kind of fact, the weakest first", _KINDS)
        self.cases = PlainTable("Cases handed in", _CASES)
        self.coming = PlainTable("Missed facts and the day they come back", _COMING)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setAccessibleName("Tables and chart of progress")
        self.tabs.tabBar().setAccessibleName("Tables and chart of progress")
        for words, part in (
            ("By kind of fact", self.kinds),
            ("Chart", self.chart),
            ("Cases", self.cases),
            ("Coming back", self.coming),
        ):
            self.tabs.addTab(part, words)
        self.with_words = QCheckBox("With the &words of the notes")
        self.export = button("&Export for the teacher …", partial(self._save, "markings.json", "JSON (*.json)"))
        self.facts_csv = button("Table of &marks …", partial(self._save, "marks.csv", "CSV (*.csv)"))
        self.progress_csv = button("Table of pro&gress …", partial(self._save, "progress.csv", "CSV (*.csv)"))
        self.picture = button(
            "&Chart …", partial(self._save, "progress.png", "Picture (*.png);;SVG (*.svg);;PDF (*.pdf)")
        )
        self.back = button("All cases  Esc", self.left.emit)
        self.title = Title("Progress", look)
        layout = filled(self, (24, 14, 24, 12), "Progress")
        layout.addWidget(self.title)
        layout.addWidget(self.how)
        layout.addWidget(self.tabs, 1)
        buttons = (self.with_words, self.export, self.facts_csv, self.progress_csv, self.picture, self.back)
        layout.addLayout(in_a_row(*buttons))
        layout.addWidget(self.told)
        layout.addWidget(self.caution)
        goes_back(self, self.left.emit)

    def show_standing(self, standing: "Standing") -> None:
        """Show progress; without any marking it says what to do first."""
        self._standing = standing
        progress = standing.progress
        who = f" of {progress.student}" if progress.student else ""
        self.title.setText(f"Progress{who}: {counted(progress.cases, 'case')}")
        self.how.setText(
            "The weakest kind stands first. Later cases count more. With few facts tried nobody can say a rate: "
            f"look at the range it may lie in (with {progress.interval:.0%} confidence)."
            if progress.cases
            else "No case is handed in and marked yet. Go back and take one; progress is shown from the first on."
        )
        self.caution.setText(progress.caution)
        self.told.clear()
        self.kinds.show_rows(_kind_cells(kind) for kind in [*progress.kinds, progress.overall])
        self.cases.show_rows(
            (
                m.case,
                f"{m.handed_in_at.astimezone():%Y-%m-%d %H:%M}" if m.handed_in_at else "",
                f"{m.share:.0%}",
                str(m.counts["right"] + m.counts["wrong words"]),
                str(m.over),
                str(m.counts["missed"]),
                str(m.counts["read in"]),
            )
            for m in standing.markings
        )
        self.coming.show_rows(
            (item.due.isoformat(), case_title(item.case, told=True), item.words, counted(item.missed, "time"))
            for item in standing.coming
        )
        for control in (self.export, self.facts_csv, self.progress_csv, self.picture, self.with_words):
            control.setEnabled(bool(standing.markings))
        self.tabs.setTabEnabled(self.tabs.indexOf(self.chart), progress.cases > 0)
        if progress.cases:
            self.chart.show_figure(self._figure)
        self.tabs.tabBar().setFocus()

    def _figure(self, inks: "Inks", width: float, letters: float) -> "Figure":
        from notereader.practice.charts import progress_figure

        assert self._standing is not None
        return progress_figure(self._standing.progress, inks, width, letters)

    def _save(self, name: str, kinds: str) -> None:
        standing = self._standing
        if standing is None or not standing.markings:
            return
        student = standing.progress.student or self._ask_name()
        path, _ = QFileDialog.getSaveFileName(self, "Save", name, kinds)
        if path:
            self.told.setText("Saving …")
            job = _writer(standing, student, name, Path(path), words=self.with_words.isChecked())
            self._worker.run(job, lambda _: self._tell(f"Saved as {Path(path).name}."), lambda f: self._tell(str(f)))

    def _ask_name(self) -> str:
        name, agreed = QInputDialog.getText(
            self, "Whose work", "Name or initials, so that the teacher knows whose it is:"
        )
        return " ".join(name.split()) if agreed else ""

    def _tell(self, words: str) -> None:
        if isValid(self):
            self.told.setText(words)


def _writer(standing: "Standing", student: str, name: str, path: Path, *, words: bool) -> Callable[[], None]:
    """Return what writes one of the exports in the background."""

    def write() -> None:
        from notereader.practice import export_json, facts_csv, progress_csv
        from notereader.practice.charts import progress_figure, save_figure
        from notereader.practice.exports import save_text

        markings = [m if m.student else m.model_copy(update={"student": student}) for m in standing.markings]
        progress = standing.progress.model_copy(update={"student": student})
        if name.endswith(".json"):
            save_text(path, export_json(markings, progress, words=words))
        elif name == "marks.csv":
            save_text(path, facts_csv(markings, words=words))
        elif name == "progress.csv":
            save_text(path, progress_csv(progress))
        else:
            save_figure(progress_figure(progress), path)

    return write


def _kind_cells(kind: "KindProgress") -> tuple[str, ...]:
    label = kind.label[:1].upper() + kind.label[1:]
    if kind.middle is None:
        return (label, "not met yet", "", "", "", "")
    return (
        label,
        f"{kind.middle:.0%}",
        f"{kind.low:.0%} and {kind.high:.0%}",
        f"{kind.right} of {kind.trials}",
        str(kind.over) if kind.over else "",
        "few tried" if kind.unsure else "",
    )
