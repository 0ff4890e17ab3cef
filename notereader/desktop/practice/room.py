"""The pages of practice around the work itself: cases, marking, progress, the teacher's view."""

from collections.abc import Callable, Sequence
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFileDialog, QInputDialog, QStackedWidget, QWidget

from notereader.desktop.look import Look
from notereader.desktop.practice.cases_page import CasesPage
from notereader.desktop.practice.marking_page import MarkingPage
from notereader.desktop.practice.progress_page import ProgressPage
from notereader.desktop.practice.teacher_page import TeacherPage
from notereader.desktop.settings import Settings
from notereader.desktop.worker import Worker

if TYPE_CHECKING:
    from notereader.desktop.practice.desk import Desk, Overview
    from notereader.practice import Case, Marking, OpenAttempt

_NAMES = (
    "Name or initials. Each name has an exercise book of its own on this computer; without a name there is one too:"
)


class PracticeRoom(QStackedWidget):
    """Leads from page to page. An attempt to work on goes out by `work_ready`; its worker does what is slow.

    Only the first page is made at once: to make all of them would hold the window for longer than it may.
    """

    work_ready = Signal(object)
    told = Signal(str)
    left = Signal()

    def __init__(self, look: Look, settings: Settings, folder: Path | None = None):
        super().__init__()
        self._look, self._settings, self._folder = look, settings, folder
        self._desk: Desk | None = None
        self._desk_of: tuple[str, str] | None = None
        self.worker = Worker("practice", self)
        self.cases = CasesPage(look)
        self.addWidget(self.cases)
        self._connect()

    @cached_property
    def marking(self) -> MarkingPage:
        """The page of one marking."""
        page = MarkingPage(self._look)
        page.next_wanted.connect(self._take_next)
        page.again_wanted.connect(self._take)
        page.progress_wanted.connect(self._show_progress)
        page.left.connect(self.open)
        self.addWidget(page)
        return page

    @cached_property
    def progress(self) -> ProgressPage:
        """The page of one student's progress."""
        page = ProgressPage(self._look, self.worker)
        page.left.connect(self.open)
        self.addWidget(page)
        return page

    @cached_property
    def teacher(self) -> TeacherPage:
        """The page of a class."""
        page = TeacherPage(self._look, self.worker)
        page.left.connect(self.open)
        page.files_chosen.connect(self._read_files)
        self.addWidget(page)
        return page

    def open(self) -> None:
        """Show the cases, as they stand now."""
        self._show(self.cases)
        self.cases.wait()
        self._ask(lambda desk: desk.overview(), self._show_overview, self._set_refused)

    def show_marking_of(self, attempt: "OpenAttempt") -> None:
        """Mark what was handed in and show the marking; without a key, say where the work lies."""

        def done(marking: "Marking | None") -> None:
            if marking is not None:
                self._show_marking(marking, attempt.case)
                return
            self.open()
            self.told.emit(f"Handed in. Send this file to whoever gave you the cases: {attempt.path}")

        self._ask(lambda desk: desk.mark(attempt), done)

    def _connect(self) -> None:
        cases = self.cases
        cases.taken.connect(self._take)
        cases.due_taken.connect(lambda: self._ask(lambda desk: desk.take_due(), self.work_ready.emit))
        cases.marking_wanted.connect(self._read_marking)
        cases.progress_wanted.connect(self._show_progress)
        cases.teacher_wanted.connect(lambda: self._show(self.teacher))
        cases.student_wanted.connect(self._ask_student)
        cases.set_wanted.connect(self._choose_set)
        cases.left.connect(self.left)

    # What the worker does

    def _ask(
        self,
        job: "Callable[[Desk], Any]",
        done: Callable[[Any], None],
        failed: Callable[[Exception], None] | None = None,
    ) -> None:
        wanted = (self._settings.student, self._settings.case_set)
        self.worker.run(lambda: job(self._desk_for(wanted)), done, failed or self._tell_fault)

    def _desk_for(self, wanted: tuple[str, str]) -> "Desk":
        """Return the desk of a student and a set. Called by the worker alone: what it imports takes a second."""
        from notereader.desktop.practice.desk import Desk

        if self._desk is None or self._desk_of != wanted:
            self._desk, self._desk_of = Desk(*wanted, self._folder), wanted
        return self._desk

    def _tell_fault(self, fault: Exception) -> None:
        from notereader.practice import PracticeFault

        known = isinstance(fault, PracticeFault | ValueError)
        self.told.emit(str(fault) if known else f"Something went wrong ({type(fault).__name__}: {fault}).")

    def _set_refused(self, fault: Exception) -> None:
        """Go back to the cases that come with the program where the chosen ones cannot be read."""
        self._tell_fault(fault)
        if self._settings.case_set:
            self._settings.case_set = ""
            self.open()
        else:
            self.cases.next.setText("The cases cannot be shown now; the reason stands above.")

    # Pages

    def _show(self, page: QWidget) -> None:
        self.setCurrentWidget(page)
        page.setFocus()

    def _show_overview(self, overview: "Overview") -> None:
        self.cases.show_overview(overview, self._settings.student, self._settings.case_set)
        for words in overview.faults:
            self.told.emit(words)

    def _read_marking(self, marking: "Marking") -> None:
        self._ask(lambda desk: desk.case_of(marking), lambda case: self._show_marking(marking, case))

    def _show_marking(self, marking: "Marking", case: "Case | None") -> None:
        self.setCurrentWidget(self.marking)
        self.marking.show_marking(marking, case)

    def _show_progress(self) -> None:
        def done(standing: object) -> None:
            self.setCurrentWidget(self.progress)
            self.progress.show_standing(standing)  # type: ignore[arg-type]

        self._ask(lambda desk: desk.standing(), done)

    def _read_files(self, paths: Sequence[Path]) -> None:
        self._ask(lambda desk: desk.class_of(paths), self.teacher.show_class)

    # What is chosen

    def _take(self, case_id: str) -> None:
        self._ask(lambda desk: desk.take(case_id), self.work_ready.emit)

    def _take_next(self) -> None:
        def done(overview: "Overview") -> None:
            if overview.chosen is None:
                self.open()
            else:
                self._take(overview.chosen.case.id)

        self._ask(lambda desk: desk.overview(), done)

    def _ask_student(self) -> None:
        name, agreed = QInputDialog.getText(self, "Whose exercise book", _NAMES, text=self._settings.student)
        if agreed:
            self._settings.student = name
            self.open()

    def _choose_set(self, which: str) -> None:
        if which == "file":
            path, _ = QFileDialog.getOpenFileName(self, "A file of cases", "", "Cases (*.json);;All files (*)")
        elif which == "folder":
            path = QFileDialog.getExistingDirectory(self, "A folder of cases")
        else:
            path = ""
        if path or which == "own":
            self._settings.case_set = path
            self.open()
