"""The page of the audit: its parts in the order of the work, and the thread that works."""

import threading
from collections.abc import Callable
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

import platformdirs
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QButtonGroup, QPushButton, QScrollArea, QStackedWidget, QVBoxLayout, QWidget

from notereader.desktop.audit.asking import Choice, Counting, Opening, Overview, Want
from notereader.desktop.audit.figures_panes import FactsPane, GroupsPane, PeriodsPane
from notereader.desktop.audit.notes_pane import NotesPane
from notereader.desktop.audit.readers_pane import ReadersPane
from notereader.desktop.audit.report_pane import ReportPane
from notereader.desktop.audit.sample_pane import SamplePane
from notereader.desktop.audit.source_pane import SourcePane
from notereader.desktop.band import Band
from notereader.desktop.flow_layout import FlowLayout
from notereader.desktop.labels import plain_label
from notereader.desktop.look import Look
from notereader.desktop.session import Notice
from notereader.desktop.shelf import Shelf
from notereader.desktop.themes import larger
from notereader.desktop.worker import Worker

if TYPE_CHECKING:
    from notereader.desktop.audit.desk import Desk

_TITLE = "Many notes: what they state and what they leave out"
_CAUTION = "About notes, not about operations, surgeons or results; never to rank people. The program reads and errs."
_BEGIN = "Nothing is counted yet."
_PARTS = {
    "Source": "source",
    "Facts": "facts",
    "Groups": "groups",
    "Over time": "periods",
    "Note by note": "notes",
    "Sample to confirm": "sample",
    "Second reader": "readers",
    "Report": "report",
}


_Part = TypeVar("_Part", FactsPane, GroupsPane, PeriodsPane, NotesPane, SamplePane, ReadersPane, ReportPane)


def home() -> Path:
    """Return where the work of every audit lies: beside this person's casebook."""
    return Path(platformdirs.user_data_dir("notereader", appauthor=False)) / "audits"


class AuditPage(QScrollArea):
    """Everything about many notes. Its work goes on while another page is shown.

    A part is made when it is first asked for: to make all at once would hold the window for longer than it may.
    """

    # A case to open: its shelf, its number and its name.
    case_wanted = Signal(object, int, str)
    progressed = Signal(object)

    def __init__(self, look: Look, band: Band, shelf: Shelf, parent: QWidget | None = None):
        super().__init__(parent)
        self._look, self._band, self._own = look, band, shelf
        self._worker = Worker("audit", self)
        self._stop = threading.Event()
        self._desk: Desk | None = None
        self._shelves: dict[str, Shelf] = {}
        self.busy = False
        self.overview: Overview | None = None
        self._lay_out()
        look.changed.connect(self._dress)
        self._dress()
        self.go_to("Source")
        self._enable()

    @cached_property
    def source(self) -> SourcePane:
        """Where the notes come from."""
        part = SourcePane()
        self.progressed.connect(part.show_progress, Qt.ConnectionType.QueuedConnection)
        part.looked_for.connect(self._look_at)
        part.wanted.connect(self._read)
        part.stopped.connect(self._stop_reading)
        self.stack.addWidget(part)
        return part

    @cached_property
    def facts(self) -> FactsPane:
        """Every list with its shares."""
        part = FactsPane(self._look, self.ask)
        part.notes_wanted.connect(self._show_notes)
        return self._counted(part)

    @cached_property
    def groups(self) -> GroupsPane:
        """The groups of a column side by side."""
        part = GroupsPane(self._look, self.ask)
        part.notes_wanted.connect(self._show_notes)
        return self._counted(part)

    @cached_property
    def periods(self) -> PeriodsPane:
        """One fact by period."""
        part = PeriodsPane(self._look, self.ask)
        part.notes_wanted.connect(self._show_notes)
        return self._counted(part)

    @cached_property
    def notes(self) -> NotesPane:
        """The notes themselves."""
        part = NotesPane(self._look, self.ask)
        part.opened.connect(self._open_note)
        return self._counted(part)

    @cached_property
    def sample(self) -> SamplePane:
        """What a person confirms."""
        part = SamplePane(self._look, self.ask)
        part.opened.connect(self._open_sampled)
        # Shares corrected for reader error stand beside those as read.
        part.compared.connect(self.facts.renew)
        return self._counted(part)

    @cached_property
    def readers(self) -> ReadersPane:
        """Agreement with a second reader."""
        part = ReadersPane(self._look, self.ask)
        part.opened.connect(self._open_note)
        return self._counted(part)

    @cached_property
    def report(self) -> ReportPane:
        """What is saved."""
        return self._counted(ReportPane(self.ask))

    def _counted(self, part: _Part) -> _Part:
        """Take in a part that shows what was counted."""
        self.stack.addWidget(part)
        if self.overview is not None:
            part.show_overview(self.overview)
        return part

    def ask(self, job: "Callable[[Desk], Any]", done: Callable[[Any], None]) -> None:
        """Have the desk do a job in its thread, then go on with its result in this one."""
        self._worker.run(lambda: job(self._desk_now()), done, self._fail)

    def go_to(self, name: str) -> None:
        """Show a part and put the focus into it."""
        part: QWidget = getattr(self, _PARTS[name])
        self._buttons[name].setChecked(True)
        for other, button in self._buttons.items():
            # Tab comes to the part that is shown, the arrow keys go from there to the others.
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus if other == name else Qt.FocusPolicy.ClickFocus)
        self.stack.setCurrentWidget(part)
        for other, where in _PARTS.items():
            # A part that is not seen must not make room for itself.
            if where in self.__dict__:
                getattr(self, where).setVisible(other == name)
        self.ensureVisible(0, 0)

    def knows(self, name: str) -> bool:
        """Return whether a key of the window does something here."""
        return name in ("next_part", "previous_part")

    def run(self, name: str) -> None:
        """Go on to the next or back to the previous part."""
        names = [part for part in _PARTS if self._buttons[part].isEnabled()]
        here = names.index(self._shown())
        there = names[(here + (1 if name == "next_part" else -1)) % len(names)]
        self.go_to(there)
        self._buttons[there].setFocus()

    def take_focus(self) -> None:
        """Put the focus where the work goes on."""
        if self._shown() == "Source":
            (self.source.stop if self.busy else self.source.place).setFocus()
        elif self._shown() == "Sample to confirm":
            self._put_focus(self.sample.table)
        else:
            self._buttons[self._shown()].setFocus()
        if "sample" in self.__dict__ and self.overview is not None and not self.busy:
            # Cases of the sample may have been confirmed meanwhile.
            self.sample.renew()

    def finish(self) -> None:
        """Stop what is under way, keep what is done, and let go of every casebook."""
        self._stop.set()
        for shelf in self._shelves.values():
            self._worker.run(shelf.close, lambda _: None, lambda _: None)
        self._worker.finish(30)

    # What is done

    def _look_at(self, choice: Choice) -> None:
        self.ask(lambda desk: desk.look(choice), self.source.show_found)

    def _read(self, choice: Choice, counting: Counting) -> None:
        self._stop.clear()
        self.busy = True
        self.overview = None
        self._enable()
        self.source.show_busy(True)
        self._say("Reading and counting …")
        tell, stop = self.progressed.emit, self._stop.is_set
        self.ask(lambda desk: desk.read(choice, counting, tell, stop), self._show_counted)

    def _show_counted(self, overview: Overview) -> None:
        self._end_reading()
        self.overview = overview
        self._say(overview.standing)
        counts = dict(overview.counts)
        left = f", {counts['refused']:,} refused: “Note by note” says why" if counts["refused"] else ""
        self.source.told.setText(f"{counts['found']:,} notes found, {counts['counted']:,} counted{left}.")
        self._show_overview(overview)
        self._enable()
        self.go_to("Facts")
        if self.isVisible():
            self._put_focus(self.facts.table)

    def _show_overview(self, overview: Overview) -> None:
        for name in _PARTS.values():
            if name != "source" and name in self.__dict__:
                getattr(self, name).show_overview(overview)

    def _stop_reading(self) -> None:
        self._stop.set()
        self.source.told.setText("Stopping; the notes in hand are finished first …")

    def _end_reading(self) -> None:
        self.busy = False
        self.source.show_busy(False)
        self._enable()

    def _show_notes(self, want: Want) -> None:
        self.notes.show_notes(want)
        self.go_to("Note by note")
        self._put_focus(self.notes.table)

    def _open_note(self, key: str) -> None:
        self.ask(lambda desk: desk.open_note(key), self._open)

    def _open_sampled(self, number: int, title: str) -> None:
        self.ask(lambda desk: desk.open_sampled(number, title), self._open)

    def _open(self, opening: Opening) -> None:
        shelf = self._own if not opening.place else self._shelves.setdefault(opening.place, Shelf(opening.place))
        self.case_wanted.emit(shelf, opening.number, opening.title)

    def _put_focus(self, part: QWidget) -> None:
        part.setFocus()
        self.ensureWidgetVisible(part)

    # What is told

    def _fail(self, fault: Exception) -> None:
        from notereader.audit.faults import AuditFault, AuditStopped

        told = isinstance(fault, AuditFault | AuditStopped)
        # The text of any other fault is left out: it may quote a note.
        words = str(fault) if told else f"Something went wrong inside the program ({type(fault).__name__})."
        if self.busy:
            self._end_reading()
            self._say("Nothing is counted: the reading did not come to its end.")
            self.source.told.setText(
                f"{words} Read on whenever you like." if isinstance(fault, AuditStopped) else words
            )
            self.source.look_again()
            self.source.read.setFocus()
        elif self._shown() == "Source":
            self.source.show_trouble(words)
        else:
            self._band.tell(Notice(words))

    def _say(self, words: str) -> None:
        self.standing.setText(words)

    # How it is built

    def _desk_now(self) -> "Desk":
        if self._desk is None:
            # In the audit's own thread: its libraries take longer than the window may take to answer.
            from notereader.desktop.audit.desk import Desk

            self._desk = Desk(home(), self._own.place)
        return self._desk

    def _shown(self) -> str:
        return next(name for name, button in self._buttons.items() if button.isChecked())

    def _enable(self) -> None:
        for name, button in self._buttons.items():
            button.setEnabled(name == "Source" or self.overview is not None)

    def _lay_out(self) -> None:
        self._title = plain_label(_TITLE)
        self.standing = plain_label(_BEGIN)
        self.standing.setAccessibleName("What was counted")
        row, self._buttons = FlowLayout(), {}
        group = QButtonGroup(self)
        for name in _PARTS:
            button = QPushButton(name)
            button.setCheckable(True)
            button.setAccessibleName(name)
            button.clicked.connect(lambda _=False, name=name: self.go_to(name))
            group.addButton(button)
            row.addWidget(button)
            self._buttons[name] = button
        self.stack = QStackedWidget()
        inner = QWidget()
        column = QVBoxLayout(inner)
        column.setContentsMargins(24, 16, 24, 16)
        for part in (self._title, self.standing, plain_label(_CAUTION, "muted")):
            column.addWidget(part)
        column.addLayout(row)
        column.addWidget(self.stack, 1)
        self.setWidget(inner)
        self.setWidgetResizable(True)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName("Audit of many notes")

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802
        """Dress anew: being put into the window takes the title's letters away."""
        super().showEvent(event)
        self._dress()

    def _dress(self) -> None:
        self._title.setFont(larger(self.font(), 1.3, bold=True))
