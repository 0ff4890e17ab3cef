"""How fast an audit reads on one core and on two, what memory it needs, and what a kill costs: printed, never asserted.

Run: python tests/benchmarks/benchmark_audit.py [notes for speed, 1000] [notes for memory, several, 1000 20000]
"""

import os
import platform
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import psutil

TESTS = Path(__file__).resolve().parent.parent / "audit"
sys.path.insert(0, str(TESTS))

from demo_notes import demo_note  # noqa: E402

from notereader.audit.audit import Audit, Progress, Settings  # noqa: E402
from notereader.audit.journal import FILE_NAME, Journal  # noqa: E402
from notereader.audit.sources import open_source  # noqa: E402

MB = 1_000_000


def notes_in(folder: Path, number: int) -> Path:
    """Write invented notes, a thousand to a folder."""
    for at in range(number):
        note = demo_note(at)
        path = folder / f"{at // 1000:03}" / note.name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(note.text, encoding="utf-8")
    return folder


def audit(folder: Path, out: Path, workers: int) -> None:
    """Audit a folder and print how long reading and reporting took."""
    begun = time.perf_counter()
    read, last = begun, Progress()

    def progress(now: Progress) -> None:
        nonlocal read, last
        read, last = time.perf_counter(), now

    work = Audit(open_source(folder), out, Settings(groups=("folder",)), resume=True)
    work.run(workers=None if workers == 1 else workers, on_progress=progress)
    work.close()
    fresh, seconds = last.done - last.kept, read - begun
    done = time.perf_counter() - read
    print(f"  {fresh} notes read in {seconds:.1f} s, {fresh / seconds:.0f} a second; report in {done:.1f} s")
    # Where others use the machine too, the time of the processors tells more than the clock.
    print(f"  processor time of all, start and report included: {sum(os.times()[:4]):.1f} s", flush=True)


def apart(folder: Path, out: Path, workers: int) -> subprocess.Popen[bytes]:
    """Begin an audit in a process of its own."""
    return subprocess.Popen([sys.executable, __file__, "audit", str(folder), str(out), str(workers)])


def peak_memory(running: subprocess.Popen[bytes]) -> tuple[float, float]:
    """Return the most memory in MB that a process, and that it and its workers together, held while it ran."""
    parent, most_parent, most_all = psutil.Process(running.pid), 0.0, 0.0
    while running.poll() is None:
        try:
            own = parent.memory_info().rss
            workers = sum(child.memory_info().rss for child in parent.children(recursive=True))
        except psutil.Error:
            continue
        most_parent, most_all = max(most_parent, own / MB), max(most_all, (own + workers) / MB)
        time.sleep(0.1)
    return most_parent, most_all


def speed(place: Path, number: int) -> None:
    """Measure notes a second with one process and with two."""
    folder = notes_in(place / "speed", number)
    size = sum(path.stat().st_size for path in folder.rglob("*.txt")) / number
    print(f"speed: {number} notes of {size:.0f} bytes on average")
    for workers in (1, 2):
        print(f" {workers} at work:", flush=True)
        apart(folder, place / f"speed-{workers}", workers).wait()


def memory(place: Path, number: int) -> None:
    """Measure the memory that an audit of so many notes needs."""
    folder = notes_in(place / f"memory-{number}", number)
    print(f"memory: {number} notes, two at work", flush=True)
    own, whole = peak_memory(apart(folder, place / f"memory-out-{number}", 2))
    journal = (place / f"memory-out-{number}" / FILE_NAME).stat().st_size / MB
    print(f"  peak {own:.0f} MB, with its workers {whole:.0f} MB; journal {journal:.1f} MB")


def killed(place: Path, number: int) -> None:
    """Measure how much is read again after an audit was killed half-way."""
    folder, out = place / "speed", place / "killed"
    print("killed half-way and gone on with, two at work")
    running = apart(folder, out, 2)
    log = out / f"{FILE_NAME}-wal"
    # About 1.6 kB of log for each note that is saved.
    while running.poll() is None and not (log.exists() and log.stat().st_size > number / 2 * 1600):
        time.sleep(0.05)
    running.kill()
    running.wait()
    journal = Journal(out)
    print(f"  kept {journal.count()} of {number}")
    journal.close()
    apart(folder, out, 2).wait()
    journal = Journal(out)
    rows = [row.key for row in journal.rows()]
    journal.close()
    print(f"  then {len(rows)} notes in the journal, {len(set(rows))} different")


def main() -> None:
    """Measure as the command line says."""
    if sys.argv[1:2] == ["audit"]:
        audit(Path(sys.argv[2]), Path(sys.argv[3]), int(sys.argv[4]))
        return
    sizes = [int(word) for word in sys.argv[1:]] or [1000, 1000, 20_000]
    print(f"{platform.platform()}, Python {platform.python_version()}, {os.cpu_count()} cores")
    print(f"load of the machine: {', '.join(f'{load:.1f}' for load in psutil.getloadavg())}")
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        speed(place, sizes[0])
        killed(place, sizes[0])
        for number in sizes[1:]:
            memory(place, number)


if __name__ == "__main__":
    main()
