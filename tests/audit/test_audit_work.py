"""Carrying the work out: here, in processes, by any executor, by a cluster; stopping, crashing and going on."""

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from concurrent.futures import Executor, Future, ProcessPoolExecutor, ThreadPoolExecutor
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import Any

import psutil
import pytest
from audit_making import PLAIN, bytes_of, folder_of, rows_of
from audit_making import audited as fully_audited
from audit_making import small_audit as small_full_audit
from demo_notes import demo_notes

from notereader.audit import engine
from notereader.audit.audit import Audit, Progress, Settings
from notereader.audit.faults import AuditFault, AuditStopped
from notereader.audit.journal import FILE_NAME, Journal, Outcome, discard
from notereader.audit.sources import NoteInput, open_source
from notereader.audit.work import carry_out

NUMBER = 24
# What the page and the print are drawn from; that the same results draw the same bytes is test_audit_report's to say.
TOLD = ("data", "tables")
audited = partial(fully_audited, parts=TOLD)
small_audit = partial(small_full_audit, parts=TOLD)


@pytest.fixture(scope="module")
def plain(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, dict[str, bytes]]:
    """A folder of notes and the report that one process writes of it."""
    place = tmp_path_factory.mktemp("plain")
    notes = folder_of(place / "notes", demo_notes(NUMBER))
    audited(open_source(notes), place / "out")
    return notes, bytes_of(place / "out")


def beside(notes: Path, name: str) -> Path:
    """Return a folder that lies to the notes as the plain report does, for links are relative."""
    return notes.parent / name


class AtOnce(Executor):
    """The smallest executor there is: it does the work when it is handed in."""

    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        future: Future[Any] = Future()
        future.set_result(fn(*args, **kwargs))
        return future


@pytest.mark.parametrize("make", [AtOnce, lambda: ThreadPoolExecutor(3), lambda: ProcessPoolExecutor(2)])
def test_any_standard_executor_gives_the_same_report(
    plain: tuple[Path, dict[str, bytes]], make: Callable[[], Executor], tmp_path: Path
) -> None:
    notes, report = plain
    out = beside(notes, tmp_path.name)
    with make() as executor:
        audited(open_source(notes), out, executor=executor)
    assert bytes_of(out) == report


def test_processes_of_our_own_give_the_same_report(plain: tuple[Path, dict[str, bytes]]) -> None:
    notes, report = plain
    audited(open_source(notes), beside(notes, "two"), workers=2)
    assert bytes_of(beside(notes, "two")) == report


def test_a_cluster_of_two_worker_processes_gives_the_same_report(plain: tuple[Path, dict[str, bytes]]) -> None:
    """A real Dask cluster over loopback: a scheduler and two worker processes."""
    distributed = pytest.importorskip("distributed")
    notes, report = plain
    at_home = {"n_workers": 2, "threads_per_worker": 1, "processes": True, "dashboard_address": None}
    with (
        distributed.LocalCluster(host="127.0.0.1", protocol="tcp://", **at_home) as cluster,
        distributed.Client(cluster.scheduler_address, set_as_default=False) as client,
    ):
        assert len({told["pid"] for told in client.run(_who_am_i).values()} - {os.getpid()}) == 2
        executor = client.get_executor()
        audited(open_source(notes), beside(notes, "cluster"), executor=executor, workers=2)
    assert bytes_of(beside(notes, "cluster")) == report


def _who_am_i() -> dict[str, int]:
    return {"pid": os.getpid()}


class Broken(AtOnce):
    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        raise RuntimeError("cannot schedule new futures after shutdown")


class Foreign(AtOnce):
    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        future: Future[Any] = Future()
        future.set_exception(ModuleNotFoundError("No module named 'notereader'"))
        return future


class Older(AtOnce):
    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        future: Future[Any] = Future()
        future.set_result(replace(fn(*args, **kwargs), stamp="another"))
        return future


@pytest.mark.parametrize(
    ("executor", "said"), [(Broken, "workers were lost"), (Foreign, "cannot do this work"), (Older, "another version")]
)
def test_workers_that_cannot_be_relied_on_end_the_work_in_words(
    tmp_path: Path, executor: Callable[[], Executor], said: str
) -> None:
    with pytest.raises(AuditFault, match=said):
        small_audit(tmp_path, executor=executor())


@dataclass(frozen=True)
class Deadly:
    """Kills the process that unpickles it, as a note could that brings a library down."""

    def __reduce__(self) -> tuple[Any, ...]:
        return os._exit, (3,)


def test_a_note_that_kills_its_worker_costs_only_itself() -> None:
    notes = demo_notes(5)
    inputs = [NoteInput(n.name, n.name, "1", "text", n.text) for n in notes]
    inputs.insert(2, NoteInput("deadly", "deadly", "1", "text", Deadly()))  # type: ignore[arg-type]
    done = list(carry_out(enumerate(inputs), False, lambda: False, workers=2))
    assert sorted(place for place, _, _ in done) == list(range(6))
    refused = [item.key for _, item, outcome in done if outcome.assessment is None]
    assert refused == ["deadly"]


def test_a_fault_of_the_program_costs_one_note_and_tells_no_words_of_it(monkeypatch: pytest.MonkeyPatch) -> None:
    def failing(record: object, with_words: bool) -> None:
        raise ValueError("Mrs Example, born 1970")

    monkeypatch.setattr("notereader.audit.work.assess", failing)
    [(_, _, outcome)] = carry_out([(0, NoteInput("a", "a", "1", "text", "FDP repaired."))], False, lambda: False)
    assert outcome.refusal == "The program failed on this note (ValueError)."


def test_only_a_few_inputs_are_taken_ahead_of_the_work() -> None:
    """Streaming: a source of any length is never taken in at once."""
    taken = 0

    def source() -> Any:
        nonlocal taken
        for place in range(500):
            taken += 1
            yield place, NoteInput(f"{place}", "a", "1", "text", "FDP repaired.")

    with ThreadPoolExecutor(2) as executor:
        work = carry_out(source(), False, lambda: False, workers=2, executor=executor)
        most = max(taken - done for done, _ in enumerate(work, 1))
    assert taken == 500
    assert most < 12


def test_stopping_keeps_what_is_done_and_going_on_gives_the_same_report(plain: tuple[Path, dict[str, bytes]]) -> None:
    notes, report = plain
    out = beside(notes, "stopped")
    seen: list[Progress] = []
    with pytest.raises(AuditStopped):
        audited(open_source(notes), out, on_progress=seen.append, stop=lambda: len(seen) >= 10)
    journal = Journal(out)
    assert journal.count() == 10
    journal.close()
    last: list[Progress] = []
    audited(open_source(notes), out, resume=True, on_progress=last.append)
    assert (last[-1].done, last[-1].kept, last[-1].total) == (NUMBER, 10, NUMBER)
    assert bytes_of(out) == report


def test_going_on_reads_only_what_changed(tmp_path: Path) -> None:
    notes = demo_notes(6)
    folder = folder_of(tmp_path / "notes", notes)
    out = tmp_path / "out"
    audited(open_source(folder), out)
    changed, gone = (folder / n.site / n.name for n in notes[:2])
    changed.write_text(demo_notes(9)[8].text)
    gone.unlink()
    (folder / "new.txt").write_text(demo_notes(10)[9].text)
    seen: list[Progress] = []
    again = audited(open_source(folder), out, resume=True, on_progress=seen.append)
    assert (seen[-1].done, seen[-1].kept) == (6, 4)
    afresh = audited(open_source(folder), tmp_path / "afresh")
    assert again.results.gist() == afresh.results.gist()
    assert bytes_of(out)["rates.csv"] == bytes_of(tmp_path / "afresh")["rates.csv"]


KILLED = """
import sys
from pathlib import Path
sys.path.insert(0, sys.argv[3])
from audit_making import audited
from notereader.audit.sources import open_source
if __name__ == "__main__":
    audited(open_source(sys.argv[1]), Path(sys.argv[2]), workers=2)
"""


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system kills otherwise")
def test_after_a_kill_nothing_is_counted_twice_and_no_worker_is_left(tmp_path: Path) -> None:
    number = 100
    folder = folder_of(tmp_path / "notes", demo_notes(number))
    out, script = tmp_path / "out", tmp_path / "killed.py"
    script.write_text(KILLED)
    here = str(Path(__file__).parent)
    running = subprocess.Popen([sys.executable, str(script), str(folder), str(out), here])
    children: list[psutil.Process] = []
    deadline = time.monotonic() + 120
    # The journal's log grows with each batch that is saved; a batch half written counts for nothing.
    log, size = out / f"{FILE_NAME}-wal", 0
    while time.monotonic() < deadline and running.poll() is None:
        children = psutil.Process(running.pid).children(recursive=True) or children
        before, size = size, log.stat().st_size if log.exists() else 0
        if before == size > 40_000:
            break
        time.sleep(0.02)
    assert running.poll() is None, "it was done before it could be killed"
    running.send_signal(signal.SIGKILL)
    running.wait()
    _, left = psutil.wait_procs(children, timeout=20)
    assert not left
    journal = Journal(out)
    kept = journal.count()
    journal.close()
    assert 0 < kept < number
    seen: list[Progress] = []
    found = audited(open_source(folder), out, resume=True, on_progress=seen.append)
    assert seen[-1].kept == kept
    assert found.results.tally.counted == number
    assert len({row["note"] for row in rows_of(out / "notes.csv")}) == number
    audited(open_source(folder), tmp_path / "at-once")
    assert bytes_of(out) == bytes_of(tmp_path / "at-once")


def test_work_that_lies_there_is_neither_overwritten_nor_mixed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    small_audit(tmp_path, 2)
    source, out = open_source(tmp_path / "notes"), tmp_path / "out"
    with pytest.raises(AuditFault, match="work of an audit already"):
        audited(source, out)
    other = folder_of(tmp_path / "other", demo_notes(1))
    with pytest.raises(AuditFault, match="another source"):
        audited(open_source(other), out, resume=True)
    with pytest.raises(AuditFault, match="another choice about the words"):
        audited(source, out, Settings(day=PLAIN.day, with_words=True), resume=True)
    monkeypatch.setattr(engine, "stamp", lambda: "newer")
    with pytest.raises(AuditFault, match="another version"):
        audited(source, out, resume=True)


def test_two_audits_in_one_folder_do_not_mix(tmp_path: Path) -> None:
    folder = folder_of(tmp_path / "notes", demo_notes(1))
    first = Audit(open_source(folder), tmp_path / "out", PLAIN)
    with pytest.raises(AuditFault, match="Another audit is at work"):
        Audit(open_source(folder), tmp_path / "out", PLAIN, resume=True)
    with pytest.raises(AuditFault, match="Another audit is at work"):
        discard(tmp_path / "out")
    first.close()
    discard(tmp_path / "out")
    audited(open_source(folder), tmp_path / "out")


def test_a_damaged_journal_is_refused_and_can_be_thrown_away(tmp_path: Path) -> None:
    folder = folder_of(tmp_path / "notes", demo_notes(1))
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / FILE_NAME).write_bytes(b"no database at all" * 100)
    with pytest.raises(AuditFault, match="damaged"):
        audited(open_source(folder), tmp_path / "out", resume=True)
    discard(tmp_path / "out")
    assert audited(open_source(folder), tmp_path / "out").results.tally.counted == 1


def test_only_the_owner_may_read_the_journal(tmp_path: Path) -> None:
    small_audit(tmp_path, 1)
    if os.name == "posix":
        assert (tmp_path / "out" / FILE_NAME).stat().st_mode & 0o077 == 0


def test_the_journal_keeps_no_words_of_the_notes_unless_asked(tmp_path: Path) -> None:
    settings = Settings(day=PLAIN.day, groups=("folder",))
    small_audit(tmp_path, 3, settings)
    journal = Journal(tmp_path / "out")
    rows = list(journal.rows())
    journal.close()
    assert all(row.assessment is not None and not row.assessment.words for row in rows)
    assert all(set(row.columns) == {"folder"} for row in rows)


def test_an_outcome_is_written_and_read_back_whole(tmp_path: Path) -> None:
    [(_, item, outcome)] = carry_out(
        [(0, NoteInput("a", "a", "1", "text", demo_notes(1)[0].text))], True, lambda: False
    )
    journal = Journal(tmp_path)
    run = journal.begin_run()
    journal.write(item, 0, run, outcome)
    journal.write(replace(item, key="b"), 1, run, Outcome(None, refusal="It is empty."))
    rows = list(journal.rows())
    journal.close()
    assert rows[0].assessment == outcome.assessment
    assert (rows[1].assessment, rows[1].refusal) == (None, "It is empty.")
