"""The way of a note from clipboard or file to an open case, step by step in the background."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from notereader.desktop.export import taken_in
from notereader.desktop.shelf import Shelf
from notereader.desktop.waiting import WaitingNote, WaitingNotes
from notereader.desktop.worker import Ticket, Worker
from notereader.record import Note, Record, RecordRefused

if TYPE_CHECKING:
    from notereader.casebook import OpenCase
    from notereader.intake import NoteText

_READING = "Reading the note … The first one after the start takes a few seconds."


@dataclass(frozen=True)
class Arrival:
    """A note or record that has become a case, and what the person should be told of it."""

    case: "OpenCase"
    title: str
    notices: tuple[str, ...] = ()


@dataclass
class _Journey:
    title: str
    ticket: Ticket | None = None
    waiting: WaitingNote | None = None
    notices: list[str] = field(default_factory=list)


class Arrivals(QObject):
    """Takes in one note at a time; a new one replaces one that is still being read."""

    begun = Signal(str)
    stage = Signal(str)
    text_known = Signal(str)
    arrived = Signal(object)
    # Why it did not arrive, and the WaitingNote where its text is known.
    refused = Signal(str, object)

    def __init__(self, shelf: Shelf, casebook: Worker, reader: Worker, waiting: WaitingNotes, parent: QObject):
        super().__init__(parent)
        self._shelf, self._casebook, self._reader, self._waiting = shelf, casebook, reader, waiting
        self._journey: _Journey | None = None

    @property
    def under_way(self) -> bool:
        """True while a note is on its way."""
        return self._journey is not None

    def warm_up(self) -> None:
        """Load the reader before it is needed; a fault shows when a note is read."""
        self._reader.run(_load_reader, lambda _: None, lambda _: None)

    def read_text(self, text: str, title: str = "") -> None:
        """Read a note given as text."""
        self._begin(title or f"Pasted {datetime.now():%Y-%m-%d %H:%M}", "Looking at the text …")
        self._step(self._reader, lambda: _note_from_text(text), self._take_note)

    def open_path(self, path: Path) -> None:
        """Read a note from a file, or take in an exported record."""
        self._begin(path.name, f"Opening {path.name} …")
        if path.suffix.lower() == ".json":
            self._step(self._reader, lambda: taken_in(_record_from(path)), self._keep)
        else:
            self._step(self._reader, lambda: _note_from_file(path), self._take_note)

    def read_again(self, note: WaitingNote) -> None:
        """Read a waiting note once more."""
        from notereader.intake import NoteText

        self._begin(note.name, _READING)
        self._journey_now().waiting = note
        self._read(NoteText(note.text, note.name, "txt"))

    def enter_by_hand(self, note: WaitingNote) -> None:
        """Make a case of a waiting note without proposals."""
        self._begin(note.name, "")
        self._journey_now().waiting = note
        self._keep(Record(note=Note.of(note.text, note.name)))

    def discard(self, note: WaitingNote) -> None:
        """Let go of a waiting note."""
        self._waiting.done(note)

    def left_over(self) -> list[WaitingNote]:
        """Return the notes that were being read when the program last ended."""
        return self._waiting.left_over()

    def stop(self) -> None:
        """Stop what is under way; the text of the note is not lost."""
        journey, self._journey = self._journey, None
        if journey is None:
            return
        if journey.ticket is not None:
            journey.ticket.cancel()
        self.refused.emit("Reading was stopped. The note is still there." if journey.waiting else "", journey.waiting)

    def _journey_now(self) -> _Journey:
        assert self._journey is not None
        return self._journey

    def _begin(self, title: str, stage: str) -> None:
        if self._journey is not None:
            self.stop()
        self._journey = _Journey(title)
        self.begun.emit(stage)

    def _step(self, worker: Worker, job: Callable[[], Any], done: Callable[[Any], None]) -> None:
        self._journey_now().ticket = worker.run(job, done, self._failed)

    def _take_note(self, note: "NoteText") -> None:
        journey = self._journey_now()
        try:
            journey.waiting = self._waiting.keep(journey.title, note.text)
        except OSError as fault:
            journey.notices.append(f"The note was not put by while it was read ({fault.strerror or fault}).")
            journey.waiting = WaitingNote(None, journey.title, note.text)
        self._read(replace(note, name=journey.title))

    def _read(self, note: "NoteText") -> None:
        self.text_known.emit(note.text)
        self.stage.emit(_READING)
        self._step(self._reader, lambda: _read(note), self._keep)

    def _keep(self, record: Record) -> None:
        title = self._journey_now().title
        self.stage.emit("Entering it into the casebook …")
        self._step(self._casebook, lambda: self._shelf.add(record, title), self._arrive)

    def _arrive(self, case: "OpenCase") -> None:
        journey, self._journey = self._journey_now(), None
        if journey.waiting is not None:
            self._waiting.done(journey.waiting)
        remarks = [remark.text for remark in case.record.remarks]
        self.arrived.emit(Arrival(case, journey.title, (*journey.notices, *remarks)))

    def _failed(self, fault: Exception) -> None:
        journey, self._journey = self._journey_now(), None
        self.refused.emit(fault_in_words(fault), journey.waiting)


def fault_in_words(fault: Exception) -> str:
    """Return what a fault says where it was made for people, else what kind of fault it was."""
    from notereader.casebook import CasebookFault
    from notereader.intake import IntakeRefused

    if isinstance(fault, IntakeRefused | RecordRefused | CasebookFault):
        return str(fault)
    return f"The note could not be read: something went wrong inside ({type(fault).__name__}: {fault})."


# Imported inside the functions below: the reader and the intake load in the background thread, never in the window's.


def _load_reader() -> None:
    from notereader.reader import read

    read("Flexor tendon repair.", "warm-up")


def _note_from_text(text: str) -> "NoteText":
    from notereader.intake import read_text

    return read_text(text)


def _note_from_file(path: Path) -> "NoteText":
    from notereader.intake import read_file

    return read_file(path)


def _read(note: "NoteText") -> Record:
    from notereader.reading import read_note

    return read_note(note)


def _record_from(path: Path) -> Record:
    from notereader.exchange import read_record

    return read_record(path)
