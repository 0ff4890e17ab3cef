"""The work on one note, and carrying it out on many: here, in processes of our own, or by any standard executor.

Inputs are taken one after another and only a few are under way at a time, so the memory needed does not grow with their
number.
"""

import multiprocessing
import os
import signal
import stat
import threading
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import (
    FIRST_COMPLETED,
    BrokenExecutor,
    CancelledError,
    Executor,
    Future,
    ProcessPoolExecutor,
    wait,
)
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

from notereader.audit import engine
from notereader.audit.faults import AuditFault
from notereader.audit.journal import Outcome
from notereader.audit.sources import NoteInput
from notereader.audit.sources.spreadsheet import EXCEL_CELL
from notereader.audit.states import assess
from notereader.exchange.files import LARGEST_RECORD
from notereader.intake import IntakeRefused, read_bytes, read_file, read_text
from notereader.intake.limits import MAX_FILE_BYTES
from notereader.reading import read_note
from notereader.record import Record, RecordRefused, load_record

# Under way for each worker: one being read and one waiting, so that no worker stands idle.
_AHEAD = 2
# Under way at an executor that does not tell how many workers it has.
_UNKNOWN = 32
# How often a person's wish to stop is looked for while workers are busy, in seconds.
_LOOK = 0.2

_KILLED = "The program that reads notes was brought down by this note. Read it in the window, alone, or leave it out."

Placed = tuple[int, NoteInput]
Done = tuple[int, NoteInput, Outcome]
Stop = Callable[[], bool]


def work_on(item: NoteInput, with_words: bool) -> Outcome:
    """Read one note, or take one record as it is, and assess it. Never raises: what goes wrong is in the outcome."""
    stamp = engine.stamp()
    try:
        record, warning, as_record = record_of(item)
        return Outcome(assess(record, with_words), warning=warning, as_record=as_record, stamp=stamp)
    except (IntakeRefused, RecordRefused) as refused:
        reason = f"{refused.what} {refused.advice}" if isinstance(refused, IntakeRefused) else str(refused)
        return Outcome(None, refusal=reason, stamp=stamp)
    except Exception as fault:
        # One note must not end an audit of thousands. The text of the fault is left out: it may quote the note.
        return Outcome(None, refusal=f"The program failed on this note ({type(fault).__name__}).", stamp=stamp)


def record_of(item: NoteInput) -> tuple[Record, str, bool]:
    """Return the record of an input, a warning or '', and whether it was a record already.

    Raises IntakeRefused or RecordRefused.
    """
    content, name = item.content, Path(item.name).name
    if item.kind == "text" or isinstance(content, str):
        text = str(content)
        cut = "The cell is full: the spreadsheet has probably cut the note off." if len(text) == EXCEL_CELL else ""
        return read_note(replace(read_text(text, name), name=name)), cut, False
    if item.kind == "record" or name.lower().endswith(".json"):
        return load_record(_small_enough(content) if isinstance(content, Path) else content), "", True
    note = read_file(content) if isinstance(content, Path) else read_bytes(content, name)
    return read_note(replace(note, name=name)), " ".join(note.warnings), False


def _small_enough(path: Path) -> bytes:
    """Return the content of a file of a record. Raises RecordRefused for one larger than any record."""
    if path.stat().st_size > LARGEST_RECORD:
        raise RecordRefused(f"The file is larger than {LARGEST_RECORD // 2**20} MB and is no record of a note.")
    return path.read_bytes()


def carry_out(
    inputs: Iterable[Placed],
    with_words: bool,
    stop: Stop,
    workers: int | None = None,
    executor: Executor | None = None,
) -> Iterator[Done]:
    """Yield every input with its outcome, in the order in which they are done, until `stop` says so.

    `executor` is any executor of PEP 3148 with `workers` at work, or some unknown number; without one, `workers`
    processes of our own do the work, or, with None, this one alone. Raises AuditFault where an executor is lost.
    """
    if executor is not None:
        width = _AHEAD * workers if workers else _UNKNOWN
        try:
            yield from _through(executor, width, inputs, with_words, stop)
        except _Lost:
            raise AuditFault("The workers were lost. What they finished is kept: go on with the same work.") from None
    elif workers:
        yield from _own_processes(workers, iter(inputs), with_words, stop)
    else:
        for place, item in inputs:
            if stop():
                return
            yield place, item, work_on(item, with_words)


class _Lost(Exception):
    """The workers are gone; `under_way` are the inputs that they had not finished."""

    def __init__(self, under_way: list[Placed]) -> None:
        super().__init__()
        self.under_way = under_way


def _through(executor: Executor, width: int, inputs: Iterable[Placed], with_words: bool, stop: Stop) -> Iterator[Done]:
    under_way: dict[Future[Outcome], Placed] = {}
    left = iter(inputs)
    try:
        while not stop():
            for place, item in left:
                item = _carried(item)
                if isinstance(item.content, Path):
                    # What cannot be carried is refused here, where the file lies.
                    yield place, item, work_on(item, with_words)
                    continue
                under_way[_submitted(executor, item, with_words, under_way, place)] = (place, item)
                if len(under_way) >= width:
                    break
            if not under_way:
                return
            done, _ = wait(under_way, timeout=_LOOK, return_when=FIRST_COMPLETED)
            for future in done:
                outcome = _outcome(future, under_way)
                yield *under_way.pop(future), outcome
    finally:
        for future in under_way:
            future.cancel()


def _submitted(
    executor: Executor, item: NoteInput, with_words: bool, under_way: dict[Future[Outcome], Placed], place: int
) -> Future[Outcome]:
    try:
        return executor.submit(work_on, item, with_words)
    except (BrokenExecutor, RuntimeError):
        raise _Lost([*under_way.values(), (place, item)]) from None


def _outcome(future: Future[Outcome], under_way: dict[Future[Outcome], Placed]) -> Outcome:
    try:
        return future.result()
    except (BrokenExecutor, CancelledError):
        raise _Lost(list(under_way.values())) from None
    except Exception as fault:
        # work_on raises nothing: this comes from the executor. A cluster gives a task up that killed several workers.
        if type(fault).__name__ == "KilledWorker":
            return Outcome(None, refusal=_KILLED, stamp=engine.stamp())
        raise AuditFault(
            f"The workers cannot do this work ({type(fault).__name__}). Is the same version of notereader installed "
            "where they run?"
        ) from fault


def _carried(item: NoteInput) -> NoteInput:
    """Return an input with the file's content in it, so that a worker needs no access to the folder."""
    if not isinstance(item.content, Path):
        return item
    try:
        about = item.content.stat()
        if stat.S_ISREG(about.st_mode) and about.st_size <= MAX_FILE_BYTES:
            return replace(item, content=item.content.read_bytes())
    except OSError:
        pass
    return item


def _own_processes(workers: int, left: Iterator[Placed], with_words: bool, stop: Stop) -> Iterator[Done]:
    while True:
        with _pool(workers) as pool:
            try:
                yield from _through(pool, _AHEAD * workers, left, with_words, stop)
                return
            except _Lost as lost:
                suspects = lost.under_way
        # One of these brought a process down: each gets a process of its own.
        for place, item in suspects:
            with _pool(1) as pool:
                try:
                    yield from _through(pool, 1, [(place, item)], with_words, stop)
                except _Lost:
                    yield place, item, Outcome(None, refusal=_KILLED, stamp=engine.stamp())


@contextmanager
def _pool(workers: int) -> Iterator[ProcessPoolExecutor]:
    # Fresh processes on every system: a fork would copy the locks of a window's threads.
    fresh = multiprocessing.get_context("spawn")
    pool = ProcessPoolExecutor(workers, mp_context=fresh, initializer=_begin_worker)
    try:
        yield pool
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


def _begin_worker() -> None:
    """Make a worker end with its parent, and leave Ctrl+C to the parent."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    parent = multiprocessing.parent_process()

    def end_with_parent() -> None:
        # A parent that was killed closes nothing; its workers would wait for work for ever.
        if parent is not None:
            parent.join()
            os._exit(1)

    threading.Thread(target=end_with_parent, daemon=True).start()
