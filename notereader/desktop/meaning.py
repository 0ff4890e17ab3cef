"""Works out in the background what the confirmed facts mean, for the panes that show it."""

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from notereader.desktop.worker import Done, Failed, Job, Worker
from notereader.record import Record

if TYPE_CHECKING:
    from notereader.appraisal import Settled
    from notereader.desktop.meaning_page import TendonLine

_FAULT = "What the facts mean could not be worked out"


@dataclass(frozen=True)
class Meaning:
    """What the panes show: the appraisal, its pages, the letter, and every tendon with its page of weeks."""

    settled: "Settled"
    strength: str
    questions: str
    letter: str
    tendons: "tuple[tuple[TendonLine, str], ...]"


class MeaningFeed(QObject):
    """Turns records into meanings, the newest only, and only while one of its panes is on the screen."""

    changed = Signal(object)
    begun = Signal()
    failed = Signal(str)

    def __init__(self, worker: Worker, parent: QObject | None = None):
        super().__init__(parent)
        self._worker = worker
        self._record: Record | None = None
        self._panes: list[QWidget] = []
        self._stale = False
        self._busy = False
        self._day: int | None = None
        self._bend = 0

    def add(self, pane: QWidget) -> None:
        """Work for a pane whenever it is seen."""
        self._panes.append(pane)

    def show_record(self, record: Record) -> None:
        """Take a record, which nobody changes any more, as the one that counts."""
        self._record = record
        self._renew()

    def choose(self, day: int | None, bend: int) -> None:
        """Show this day after the operation (None: today, by the confirmed date) at this bend in degrees."""
        self._day, self._bend = day, bend
        self._renew()

    def wake(self) -> None:
        """Work out what is not worked out yet, if anybody looks."""
        if self._stale and not self._busy and self._record is not None and any(p.isVisible() for p in self._panes):
            self._stale, self._busy = False, True
            record, day, bend = self._record, self._day, self._bend
            self.begun.emit()
            self._worker.run(lambda: meaning_of(record, day, bend, date.today()), self._done, self._fail)

    def run(self, job: Job, done: Done, failed: Failed) -> None:
        """Do something else in the background."""
        self._worker.run(job, done, failed)

    def _renew(self) -> None:
        self._stale = True
        self.wake()

    def _done(self, meaning: Meaning) -> None:
        self._busy = False
        if self._stale:
            self.wake()
        else:
            self.changed.emit(meaning)

    def _fail(self, fault: Exception) -> None:
        self._busy = False
        self.failed.emit(f"{_FAULT}: {fault}")
        self.wake()


def meaning_of(record: Record, day: int | None, bend: int, today: date) -> Meaning:
    """Return what the panes show of a record. Takes a moment the first time: call it in the background."""
    # Imported where used: the tables of the appraisal take longer than the window may take to appear.
    from notereader.appraisal import appraise_settled, question_letter, settled_day
    from notereader.desktop.meaning_page import questions_page, strength_page, tendon_lines, weeks_page

    counted = settled_day(record, today)
    settled = appraise_settled(record, counted if day is None else day, float(bend))
    return Meaning(
        settled=settled,
        strength=strength_page(settled, _day_words(day, counted, bend)),
        questions=questions_page(settled),
        letter=question_letter(settled.whole.questions),
        tendons=tuple((line, weeks_page(settled, line)) for line in tendon_lines(settled)),
    )


def _day_words(day: int | None, counted: int | None, bend: int) -> str:
    if day is not None:
        words = f"Day {day} after the operation, as chosen"
    elif counted is not None:
        words = f"Day {counted} after the operation: today, by the confirmed date"
    else:
        words = "Day 0, the operation: no date within reach is confirmed, choose the day above"
    return f"{words}; the tendon bent by {bend} degrees at the repair."
