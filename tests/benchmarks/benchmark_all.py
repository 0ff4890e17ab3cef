"""One table of how fast and how large the program is, with the machine it was measured on: printed, never asserted.

Run: python tests/benchmarks/benchmark_all.py [number of cases in the casebook, 10000 unless told]

Each start is a process of its own. 'work' is processor time, which tells more than the clock where others use the
machine too.
"""

import os
import platform
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

import psutil

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(Path(__file__).resolve().parent)]

from benchmark_casebook import DailyBackup, measure, measure_file  # noqa: E402
from benchmark_window import note_of  # noqa: E402

STARTS = 5
SAMPLE = ROOT / "samples" / "01-plain-index.txt"

# What was measured, median, worst, unit.
Line = tuple[str, float, float, str]


def machine() -> str:
    """Describe the machine."""
    cpuinfo = Path("/proc/cpuinfo")
    named = [line for line in cpuinfo.read_text().splitlines() if "model name" in line] if cpuinfo.exists() else []
    processor = named[0].partition(":")[2].strip() if named else platform.processor()
    memory = psutil.virtual_memory().total / 1e9
    return (
        f"{platform.platform()}; {processor}, {os.cpu_count()} cores, {memory:.0f} GB; Python "
        f"{platform.python_version()}; load {', '.join(f'{load:.1f}' for load in psutil.getloadavg())}"
    )


def commands() -> Iterator[Line]:
    """Measure starts of the command line."""
    for name, arguments in (("version told", ["--version"]), ("a sample read", ["read", str(SAMPLE)])):
        runs = [_run([sys.executable, "-m", "notereader", *arguments]) for _ in range(STARTS)]
        yield from _lines(f"command line, {name}", runs)


def _lines(name: str, runs: list[tuple[float, float, float]]) -> Iterator[Line]:
    clock, work, memory = zip(*runs, strict=True)
    yield f"{name}: clock", statistics.median(clock), max(clock), "s"
    yield f"{name}: work", statistics.median(work), max(work), "s"
    yield f"{name}: memory at most", statistics.median(memory), max(memory), "MB"


def _run(command: list[str]) -> tuple[float, float, float]:
    """Run a command; return the seconds by the clock, the seconds of work and the most memory in MB."""
    begun = time.perf_counter()
    before = os.times()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    watched, most = psutil.Process(process.pid), 0.0
    while process.poll() is None:
        try:
            most = max(most, watched.memory_info().rss / 1e6)
        except psutil.Error:
            break
        time.sleep(0.005)
    process.wait()
    clock, after = time.perf_counter() - begun, os.times()
    work = after.children_user + after.children_system - before.children_user - before.children_system
    return clock, work, most


def window() -> Iterator[Line]:
    """Measure the window from its launch to the first facts of a note pasted at once."""
    from benchmark_window import _start

    started = [_start() for _ in range(STARTS)]
    for name in started[0]:
        times = [each[name] for each in started]
        yield f"window: {name}", statistics.median(times), max(times), "s"


def reading() -> Iterator[Line]:
    """Measure notes that are read one after another in one process."""
    from notereader.intake import read_text
    from notereader.reading import read_note

    texts = [path.read_text(encoding="utf-8") for path in sorted((ROOT / "tests" / "notes").rglob("*.txt"))]
    read_note(read_text(texts[0]))
    times = []
    begun = time.process_time()
    for text in texts:
        clock = time.perf_counter()
        read_note(read_text(text))
        times.append(1000 * (time.perf_counter() - clock))
    spent = time.process_time() - begun
    yield "reading: one note of the tests", statistics.median(times), max(times), "ms"
    yield "reading: notes a second of work", len(texts) / spent, len(texts) / spent, "/s"
    long = note_of(3000)
    clock = time.perf_counter()
    read_note(read_text(long))
    took = 1000 * (time.perf_counter() - clock)
    yield "reading: a note of 3,000 words", took, took, "ms"
    memory = psutil.Process().memory_info().rss / 1e6
    yield f"reading: memory after {len(texts)} notes", memory, memory, "MB"


def casebook(cases: int) -> Iterator[Line]:
    """Measure a casebook of many cases."""
    # The copy is measured by itself.
    DailyBackup.remind = lambda self: None  # type: ignore[method-assign]
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "casebook.db"
        for what, median, worst in (*measure(path, cases), *measure_file(path)):
            yield f"casebook of {cases:,}: {what}", median, worst, "ms"
        size = path.stat().st_size / 1e6
        yield f"casebook of {cases:,}: size of the file", size, size, "MB"


def main(cases: int) -> None:
    """Print the table as it is measured."""
    print(machine())
    print(f"{'':<66}{'median':>10}{'worst':>10}")
    for part in (commands(), window(), reading(), casebook(cases)):
        for what, median, worst, unit in part:
            print(f"{what:<66}{median:>10.2f}{worst:>10.2f} {unit}", flush=True)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10_000)
