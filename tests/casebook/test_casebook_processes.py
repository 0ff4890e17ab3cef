"""Several processes on one casebook, and processes that are killed."""

import contextlib
import itertools
import multiprocessing
import random
import sqlite3
import time
from collections.abc import Iterator
from multiprocessing.connection import Connection
from pathlib import Path

import casebook_workers
import pytest
from casebook_helpers import SIZE, STRANDS, confirming, correcting, draft

from notereader.casebook import Casebook, ChangedElsewhere, Edit, OpenCase
from notereader.casebook.edits import apply_edit
from notereader.record import Record

KILLS = 20

_METHODS = multiprocessing.get_all_start_methods()
CONTEXT = multiprocessing.get_context("forkserver" if "forkserver" in _METHODS else "spawn")
CONTEXT.set_forkserver_preload(["notereader.casebook"])


@contextlib.contextmanager
def process(work: str, *arguments: object) -> Iterator[tuple[multiprocessing.process.BaseProcess, Connection]]:
    """Run a worker; kill it at the end if it still runs."""
    ours, theirs = CONTEXT.Pipe(duplex=False)
    worker = CONTEXT.Process(target=getattr(casebook_workers, work), args=(*arguments, theirs))
    worker.start()
    theirs.close()
    try:
        yield worker, ours
    finally:
        worker.kill()
        worker.join()


def sent(channel: Connection) -> list[int]:
    """Return what a killed worker had sent."""
    received = []
    with contextlib.suppress(EOFError):
        while True:
            received.append(channel.recv())
    return received


def replayed(case: OpenCase) -> Record:
    """Return the record that the history alone leads to."""
    record = draft()
    history = case.history()
    assert [line.revision for line in history] == list(range(case.revision + 1))
    for line in history[1:]:
        position = 0 if line.address.field == "" else None
        record = apply_edit(record, Edit(line.address, line.before, line.after, position=position))
    return record


def test_a_process_killed_in_mid_edit_loses_nothing_that_returned(path: Path) -> None:
    book = Casebook(path)
    number = book.add(draft())
    book.close()
    chance = random.Random(20311)
    last = 0
    for _ in range(KILLS):
        with process("edit_until_killed", path, number) as (worker, channel):
            last = channel.recv()
            time.sleep(chance.random() * 0.05)
            worker.kill()
            last = max([last, *sent(channel)])
        book = Casebook(path)
        assert book.notices == []
        case = book.open(number)
        # An edit of two steps may have been saved just before its return was told.
        assert last <= case.revision <= last + 2
        assert case.record == replayed(case)
        book.close()
    assert last >= KILLS
    with contextlib.closing(sqlite3.connect(path)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)


def test_a_process_killed_while_adding_leaves_whole_cases_only(path: Path) -> None:
    Casebook(path).close()
    chance = random.Random(7)
    numbers: list[int] = []
    for _ in range(10):
        with process("add_until_killed", path) as (worker, channel):
            numbers.append(channel.recv())
            time.sleep(chance.random() * 0.03)
            worker.kill()
            numbers += sent(channel)
    book = Casebook(path)
    listed = [line.id for line in book.cases(limit=100_000)]
    assert set(numbers) <= set(listed)
    assert len(listed) <= len(numbers) + 10
    assert all(book.open(each).record == draft() for each in listed)
    book.close()


def test_an_edit_by_a_second_process_is_noticed(book: Casebook, path: Path) -> None:
    number = book.add(draft())
    case = book.open(number)
    with process("correct_once", path, number, 2) as (_, channel):
        assert channel.recv() == 1
    with pytest.raises(ChangedElsewhere) as caught:
        case.apply(correcting(case, STRANDS, 8), who="me")
    assert (caught.value.who, caught.value.record.fact(STRANDS).value) == ("second process", 2)
    case.apply(confirming(case, SIZE), who="me")
    assert (case.record.fact(STRANDS).value, case.record.fact(SIZE).status) == (2, "confirmed")
    assert case.revision == 2


def test_processes_that_edit_one_case_at_the_same_time_lose_no_edit(book: Casebook, path: Path) -> None:
    number = book.add(draft())
    with (
        process("correct_in_turn", path, number, "first", 40) as (_, one),
        process("correct_in_turn", path, number, "second", 40) as (_, two),
    ):
        conflicts = one.recv() + two.recv()
    case = book.open(number)
    edits = [line for line in case.history() if line.address == STRANDS]
    assert len(edits) == 80
    assert {line.who for line in edits} == {"first", "second"}
    for earlier, later in itertools.pairwise(edits):
        assert earlier.after == later.before
    assert case.record.fact(STRANDS).value == (4 + 80 - 1) % 16 + 1
    assert conflicts >= 0
