"""A thread of its own for what takes time: the casebook, the reader, files."""

import queue
import threading
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Qt, Signal, Slot

Job = Callable[[], Any]
Done = Callable[[Any], None]
Failed = Callable[[Exception], None]


class Worker(QObject):
    """Runs jobs one after the other in one background thread; their ends are told in the thread of the window.

    A cancelled job cannot be stopped in the middle, but nothing of it arrives any more.
    """

    _ended = Signal(object, object)

    def __init__(self, name: str, parent: QObject | None = None):
        super().__init__(parent)
        self._jobs: queue.SimpleQueue[tuple[Ticket, Job] | None] = queue.SimpleQueue()
        self._ended.connect(self._tell, Qt.ConnectionType.QueuedConnection)
        # A daemon, so that a reader at work on a hopeless note cannot keep a closed window alive.
        self._thread = threading.Thread(target=self._work, name=name, daemon=True)
        self._thread.start()

    def run(self, job: Job, done: Done, failed: Failed) -> "Ticket":
        """Run `job` in the background; then `done` with its result or `failed` with its exception."""
        ticket = Ticket(done, failed)
        self._jobs.put((ticket, job))
        return ticket

    def finish(self, seconds: float | None = None) -> bool:
        """Take no more jobs, wait until all are done; False where that took longer than `seconds`."""
        self._jobs.put(None)
        self._thread.join(seconds)
        return not self._thread.is_alive()

    def _work(self) -> None:
        while (entry := self._jobs.get()) is not None:
            ticket, job = entry
            if ticket.cancelled:
                continue
            try:
                result: Any = job()
            except Exception as fault:
                # Whatever a job raises belongs to the one who ordered it; the thread goes on.
                result = fault
            try:
                self._ended.emit(ticket, result)
            except RuntimeError:
                return  # The window is gone, and with it everyone who could be told.

    @Slot(object, object)
    def _tell(self, ticket: "Ticket", result: Any) -> None:
        if ticket.cancelled:
            return
        if isinstance(result, Exception):
            ticket.failed(result)
        else:
            ticket.done(result)


class Ticket:
    """A job under way."""

    def __init__(self, done: Done, failed: Failed):
        self.done = done
        self.failed = failed
        self.cancelled = False

    def cancel(self) -> None:
        """Let nothing of this job arrive any more."""
        self.cancelled = True
