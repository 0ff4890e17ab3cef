"""The window itself: its pages, and what its keys do wherever the focus is."""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMimeData, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import (
    QFileDialog,
    QInputDialog,
    QMainWindow,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from notereader.desktop.arrivals import Arrival, Arrivals, fault_in_words
from notereader.desktop.band import Band
from notereader.desktop.case_page import CasePage
from notereader.desktop.export_dialog import ExportDialog
from notereader.desktop.facts_page import FactsPage
from notereader.desktop.help_page import TextPage, cautions_page, keys_page
from notereader.desktop.history_dialog import HistoryDialog
from notereader.desktop.keys import Key, Where, key_named
from notereader.desktop.labels import agreed
from notereader.desktop.look import Choice, Look
from notereader.desktop.menus import Menus
from notereader.desktop.reading_page import ReadingPage
from notereader.desktop.session import Notice, Session
from notereader.desktop.settings import Settings
from notereader.desktop.shelf import Shelf
from notereader.desktop.start_page import StartPage, dropped
from notereader.desktop.waiting import WaitingNote, WaitingNotes
from notereader.desktop.worker import Worker

if TYPE_CHECKING:
    from notereader.casebook import HistoryLine
    from notereader.desktop.audit.page import AuditPage
    from notereader.desktop.practice.room import PracticeRoom
    from notereader.practice import OpenAttempt

_LEAST = (560, 360)
_USUAL = (1280, 800)
_FILES = "Notes and records (*.txt *.docx *.rtf *.pdf *.png *.jpg *.jpeg *.tif *.tiff *.json);;All files (*)"


class MainWindow(QMainWindow):
    """One window of the program."""

    case_shown = Signal()
    # Where exercise books lie; None is this person's own folder.
    practice_folder: Path | None = None

    def __init__(self, look: Look, settings: Settings, shelf: Shelf, waiting: WaitingNotes):
        super().__init__()
        self._look, self._settings, self._shelf = look, settings, shelf
        self.casebook_worker = Worker("casebook", self)
        self.reading_worker = Worker("reader", self)
        self.meaning_worker = Worker("meaning", self)
        self.arrivals = Arrivals(shelf, self.casebook_worker, self.reading_worker, waiting, self)
        self.page: FactsPage | None = None
        self.practice: PracticeRoom | None = None
        self.audit: AuditPage | None = None
        self.band = Band()
        self.start = StartPage(look)
        self.reading_page = ReadingPage(look)
        self.pages = QStackedWidget()
        self.pages.addWidget(self.start)
        self.pages.addWidget(self.reading_page)
        self.setCentralWidget(_column(self.band, self.pages))
        self.setAcceptDrops(True)
        self.setMinimumSize(*_LEAST)
        self.resize(*_USUAL)
        if settings.geometry is not None:
            self.restoreGeometry(settings.geometry)
        self._own = self._own_actions()
        self.menus = Menus(self, self.run)
        self._connect()
        self._refresh()

    def warm_up(self) -> None:
        """Load in the background what takes long: the casebook with its list, then the reader."""
        self._list_cases("", None)
        self.arrivals.warm_up()
        for note in self.arrivals.left_over():
            self._offer(note, f"The program ended while “{note.name}” was being read.")

    def run(self, name: str) -> None:
        """Do what the key of that name in keys.KEYS stands for."""
        if name in self._own:
            self._own[name]()
        elif (shown := self._shown) is not None and shown.knows(name):
            shown.run(name)
        self._refresh()

    def paste(self) -> None:
        """Read what is on the clipboard: a file, or text."""
        # Qt's hints promise data; an empty clipboard of some platforms has none.
        data = QGuiApplication.clipboard().mimeData() or QMimeData()
        files = [url.toLocalFile() for url in data.urls() if url.isLocalFile()]
        if files:
            self.arrivals.open_path(Path(files[0]))
        elif data.text().strip():
            self.arrivals.read_text(data.text())
        else:
            self._tell("There is no text on the clipboard. Copy the note first, then paste it here.")

    def open_case(self, case_id: int, title: str) -> None:
        """Open a case of the casebook."""
        self._open_from(self._shelf, case_id, title)

    def _open_from(self, shelf: Shelf, case_id: int, title: str, *notices: str) -> None:
        self.casebook_worker.run(
            lambda: shelf.open(case_id),
            lambda case: self._show_case(Arrival(case, title, notices)),
            lambda fault: self._tell(fault_in_words(fault)),
        )

    def finish(self) -> None:
        """Let everything ordered be written, then let go of the casebook."""
        self.casebook_worker.run(self._shelf.close, lambda _: None, lambda _: None)
        self.casebook_worker.finish()
        self.meaning_worker.finish(5)
        if self.practice is not None:
            self.practice.worker.finish(5)
        if self.audit is not None:
            self.audit.finish()
        # Not waited for: a note that is still being read waits in its file.
        self.reading_worker.finish(0)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802
        """Take files and text."""
        if dropped(event) is not None:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802
        """Read what was dropped."""
        what = dropped(event)
        event.acceptProposedAction()
        if isinstance(what, Path):
            self.arrivals.open_path(what)
        elif what:
            self.arrivals.read_text(what)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802
        """Enter what stands in an open editor; where that is impossible, ask before it is lost."""
        trouble = self.page.pane.settle() if self.page is not None else ""
        if trouble and not self._may_lose(trouble):
            event.ignore()
            return
        self._settings.geometry = self.saveGeometry()
        if self.page is not None and not self.page.session.idle:
            # Keys pressed faster than they are written: close when the last of them is.
            event.ignore()
            self.page.session.when_idle(self._close_soon)
            return
        if self.page is not None:
            self.page.session.close()
        super().closeEvent(event)

    def _close_soon(self) -> None:
        QTimer.singleShot(0, self, self.close)

    def _connect(self) -> None:
        self.start.wanted.connect(self.run)
        self.start.sample_wanted.connect(self.arrivals.open_path)
        self.start.cases.searched.connect(self._list_cases)
        self.start.cases.chosen.connect(self.open_case)
        self.reading_page.cancelled.connect(self.arrivals.stop)
        arrivals = self.arrivals
        arrivals.begun.connect(self._show_reading)
        arrivals.stage.connect(self.reading_page.say)
        arrivals.text_known.connect(self.reading_page.show_note)
        arrivals.arrived.connect(self._show_case)
        arrivals.refused.connect(self._show_refusal)

    def _own_actions(self) -> dict[str, Callable[[], object]]:
        return {
            "new": self._show_start,
            "practise": self._show_practice,
            "audit": self._show_audit,
            "open": self._ask_for_file,
            "paste": self.paste,
            "export": self._export,
            "summary": self._export,
            "share": self._share,
            "history": self._history,
            "reviewer": self._ask_reviewer,
            "quit": self.close,
            "zoom_in": lambda: self._zoom(1),
            "zoom_out": lambda: self._zoom(-1),
            "zoom_usual": lambda: self._zoom(0),
            "theme_system": lambda: self._colours("system"),
            "theme_light": lambda: self._colours("light"),
            "theme_dark": lambda: self._colours("dark"),
            "keys": lambda: TextPage("All keys", keys_page(), self).exec(),
            "cautions": lambda: TextPage("What this program does not do", cautions_page(), self).exec(),
        }

    # Pages

    def _show_start(self) -> None:
        self._leave_case()
        self.start.tell_trouble("")
        self.pages.setCurrentWidget(self.start)
        self.start.cases.ask()
        self.start.paste.setFocus()
        self._refresh()

    def _show_reading(self, stage: str) -> None:
        self._leave_case()
        self.reading_page.begin(stage)
        self.pages.setCurrentWidget(self.reading_page)
        self.reading_page.setFocus()
        self._refresh()

    def _show_refusal(self, words: str, waiting: WaitingNote | None) -> None:
        self._show_start()
        if waiting is not None:
            self._offer(waiting, words)
        else:
            self.start.tell_trouble(words)

    def _show_case(self, arrival: Arrival) -> None:
        self._leave_case()
        session = Session(arrival.case, self.casebook_worker, lambda: self._settings.reviewer, self)
        self._begin(CasePage(session, arrival.title, self._look, self.band, self.meaning_worker), arrival.notices)

    def _show_practice(self) -> None:
        # Imported here: most people who open the window read a note and practise nothing.
        from notereader.desktop.practice.room import PracticeRoom

        self._leave_case()
        if self.practice is None:
            self.practice = PracticeRoom(self._look, self._settings, self.practice_folder)
            self.practice.work_ready.connect(self._practise)
            self.practice.told.connect(self._tell)
            self.practice.left.connect(self._show_start)
            self.pages.addWidget(self.practice)
        self.pages.setCurrentWidget(self.practice)
        self.practice.open()
        self._refresh()

    def _show_audit(self) -> None:
        from notereader.desktop.audit.page import AuditPage

        self._leave_case()
        if self.audit is None:
            self.audit = AuditPage(self._look, self.band, self._shelf)
            self.audit.case_wanted.connect(self._open_of_audit)
            self.pages.addWidget(self.audit)
        self.pages.setCurrentWidget(self.audit)
        self.audit.take_focus()
        self._refresh()

    def _open_of_audit(self, shelf: Shelf, case_id: int, title: str) -> None:
        self._open_from(shelf, case_id, title, "This note was opened from the audit. F9 goes back to it.")

    def _practise(self, attempt: "OpenAttempt") -> None:
        from notereader.desktop.practice.work_page import WorkPage

        assert self.practice is not None
        self._leave_case()
        session = Session(attempt, self.practice.worker, lambda: self._settings.student, self)
        page = WorkPage(session, attempt, self._look, self.band)
        page.leaving.connect(self._show_practice)
        page.handed_in.connect(lambda: self._show_marking(attempt))
        self._begin(page, ())

    def _show_marking(self, attempt: "OpenAttempt") -> None:
        assert self.practice is not None
        self._leave_case()
        self.pages.setCurrentWidget(self.practice)
        self.practice.show_marking_of(attempt)
        self._refresh()

    def _begin(self, page: FactsPage, notices: Sequence[str]) -> None:
        session = page.session
        self.menus.attach({Where.FACTS: page.facts, Where.NOTE: page.note})
        session.undo_stack.undoTextChanged.connect(self._name_undo)
        session.undo_stack.redoTextChanged.connect(self._name_redo)
        page.title_changed.connect(self._refresh)
        for name, words in page.called.items():
            self.menus.name(name, words)
        self.page = page
        QTimer.singleShot(0, page, lambda: self._fill_page(page, notices))

    def _fill_page(self, page: FactsPage, notices: Sequence[str]) -> None:
        if page is not self.page:
            return  # Another case was opened in the meantime.
        self.pages.addWidget(page)
        page.fill()
        self.pages.setCurrentWidget(page)
        page.facts.setFocus()
        self._refresh()
        for words in notices:
            self._tell(words)
        self.case_shown.emit()

    def _leave_case(self) -> None:
        page, self.page = self.page, None
        if page is None:
            return
        page.pane.settle()
        for name in page.called:
            self.menus.name(name, key_named(name).words)
        self.band.clear()
        self.pages.removeWidget(page)
        page.hide()
        # What was ordered is still written, and tells the page when it is: the page goes last.
        page.session.when_idle(page.deleteLater)
        page.session.close()

    def _refresh(self) -> None:
        page = self.page
        self.setWindowTitle(f"{page.title} – notereader" if page else "notereader")
        self.menus.enable(self._can)
        choice = self._look.choice
        self.menus.check(
            thought_first=page is not None and page.model.thought_first,
            every_field=page is not None and page.model.every_field,
            theme_system=choice == "system",
            theme_light=choice == "light",
            theme_dark=choice == "dark",
        )

    def _can(self, key: Key) -> bool:
        if key.name in self._own:
            return not key.with_case or isinstance(self.page, CasePage)
        return (shown := self._shown) is not None and shown.knows(key.name)

    @property
    def _shown(self) -> "FactsPage | AuditPage | None":
        """The page on the screen, where it has keys of its own."""
        return self.audit if self.audit is not None and self.pages.currentWidget() is self.audit else self.page

    def _name_undo(self, words: str) -> None:
        self.menus.name("undo", f"Undo {words}")

    def _name_redo(self, words: str) -> None:
        self.menus.name("redo", f"Redo {words}")

    def _list_cases(self, search: str, state: str | None) -> None:
        def show(listed: tuple[list, list[str]]) -> None:  # type: ignore[type-arg]
            self.start.cases.show_lines(listed[0])
            for words in listed[1]:
                self._tell(words)

        self.casebook_worker.run(
            lambda: self._shelf.cases(search, state), show, lambda fault: self.start.tell_trouble(fault_in_words(fault))
        )

    # What the person is told and asked

    def _tell(self, words: str) -> None:
        self.band.tell(Notice(words))

    def _offer(self, note: WaitingNote, words: str) -> None:
        offers = (
            ("Read it again", lambda: self.arrivals.read_again(note)),
            ("Enter facts by hand", lambda: self.arrivals.enter_by_hand(note)),
            ("Discard the note", lambda: self.arrivals.discard(note)),
        )
        self.band.tell(Notice(words, offers))

    def _may_lose(self, trouble: str) -> bool:
        question = f"The value you were entering cannot be entered. {trouble}\n\nClose and lose it?"
        return agreed(self, question)

    def _ask_for_file(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, "Open a note or record", "", _FILES)
        if path:
            self.arrivals.open_path(Path(path))

    def _ask_reviewer(self) -> None:
        name, agreed = QInputDialog.getText(
            self, "Reviewer", "Name or initials, as they stand in the history:", text=self._settings.reviewer
        )
        if agreed and name.strip():
            self._settings.reviewer = name

    def _export(self) -> None:
        if self.page is not None:
            self.page.pane.settle()
            self.page.session.when_idle(self._show_export)

    def _show_export(self) -> None:
        if self.page is not None:
            ExportDialog(self.page.session.record, self.page.title, self.casebook_worker, self).exec()

    def _share(self) -> None:
        if self.page is not None:
            self.page.pane.settle()
            self.page.session.when_idle(self._show_sharing)

    def _show_sharing(self) -> None:
        if self.page is not None:
            from notereader.desktop.sharing_dialog import SharingDialog

            SharingDialog(self.page.session.record, self._look, self.casebook_worker, self).exec()

    def _history(self) -> None:
        if self.page is not None:
            self.page.session.history(self._show_history)

    def _show_history(self, lines: "list[HistoryLine]") -> None:
        HistoryDialog(lines, self).exec()

    def _zoom(self, steps: int) -> None:
        self._look.zoom(steps)
        self._settings.scale = self._look.scale

    def _colours(self, choice: Choice) -> None:
        self._look.choose(choice)
        self._settings.colours = choice


def _column(*parts: QWidget) -> QWidget:
    column = QWidget()
    layout = QVBoxLayout(column)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(0)
    for part in parts:
        layout.addWidget(part)
    return column
