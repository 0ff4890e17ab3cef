"""How long the window takes to appear, to show the first facts, and to answer: printed, never asserted.

Run: python tests/benchmarks/benchmark_window.py [number of starts, 5 unless told]

Each start is a fresh process; times count from the moment it is launched, with the files already in the system's cache
except perhaps at the first. 'work' is processor time of the window's thread, 'wait' the clock around it.
"""

import json
import os
import platform
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))


def note_of(words: int) -> str:
    """Return a note of about that many words, made of sample notes one after the other."""
    names = ("13-saw-respectively", "16-wrist-many-tendons", "12-ruptured-redo", "03-thumb-fpl", "04-awake-small")
    text = "\n\n".join((ROOT / "samples" / f"{name}.txt").read_text(encoding="utf-8") for name in names)
    lines, count = [], 0
    while count < words:
        for line in text.splitlines():
            lines.append(line)
            count += len(line.split())
            if count >= words:
                break
    return "\n".join(lines)


def main() -> None:
    """Print the measurements."""
    starts = int(sys.argv[1]) if len(sys.argv) > 1 else 5
    print(f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}")
    measured = [_start() for _ in range(starts)]
    for name in measured[0]:
        times = [each[name] for each in measured]
        print(f"{name}: median {statistics.median(times):.2f} s, worst {max(times):.2f} s, first {times[0]:.2f} s")
    print(subprocess.run([sys.executable, __file__, "--answer"], capture_output=True, text=True, check=True).stdout)


def _start() -> dict[str, float]:
    with tempfile.TemporaryDirectory() as folder:
        child = subprocess.run(
            [sys.executable, __file__, "--start", str(time.time()), folder], capture_output=True, text=True, check=True
        )
    return {str(name): float(value) for name, value in json.loads(child.stdout.splitlines()[-1]).items()}


def start(launched: float, folder: str) -> None:
    """Open the window as the program does, paste a note of 600 words at once, and tell when what was seen."""
    os.environ["XDG_DATA_HOME"] = os.environ["XDG_CONFIG_HOME"] = folder
    from notereader.desktop import application

    times: dict[str, float] = {}
    note = note_of(600)

    class Watched(application.MainWindow):
        def paintEvent(self, event: object) -> None:  # noqa: N802
            super().paintEvent(event)  # type: ignore[arg-type]
            if "window visible" not in times:
                times["window visible"] = time.time() - launched
                times["window visible, processor time"] = time.process_time()
                application.QTimer.singleShot(0, self, lambda: self.arrivals.read_text(note))
                self.case_shown.connect(self._tell_first_facts)

        def _tell_first_facts(self) -> None:
            assert self.page is not None
            self.page.facts.viewport().repaint()
            times["first facts of a pasted note of 600 words"] = time.time() - launched
            times["first facts, processor time"] = time.process_time()
            print(json.dumps(times))
            self.close()

    application.MainWindow = Watched  # type: ignore[misc]
    application.open_window(casebook=str(Path(folder) / "casebook.db"))


def answer() -> None:
    """Measure every event of the window's thread while a case of 3,000 words is worked on."""
    from PySide6.QtCore import QEvent, QObject, QTimer
    from PySide6.QtWidgets import QApplication

    events: list[tuple[float, float, str]] = []

    class Clocked(QApplication):
        depth = 0

        def notify(self, receiver: QObject, event: QEvent) -> bool:
            self.depth += 1
            wall, work = time.perf_counter(), time.thread_time()
            name = f"{type(receiver).__name__} {event.type().name}"
            try:
                return super().notify(receiver, event)
            finally:
                self.depth -= 1
                if self.depth == 0:
                    events.append((time.thread_time() - work, time.perf_counter() - wall, name))

    app = Clocked([])
    from notereader.desktop.look import Look
    from notereader.desktop.main_window import MainWindow
    from notereader.desktop.settings import Settings
    from notereader.desktop.shelf import Shelf
    from notereader.desktop.waiting import WaitingNotes

    folder = Path(tempfile.mkdtemp())
    window = MainWindow(
        Look(app, "light"), Settings(folder / "w.ini"), Shelf(str(folder / "c.db")), WaitingNotes(folder / "waiting")
    )

    def through(seconds: float = 60.0) -> None:
        end = time.monotonic() + seconds
        while time.monotonic() < end and not (window.page and window.page.session.idle):
            app.processEvents()

    def tell(what: str) -> None:
        longest = sorted(events, reverse=True)[:3]
        words = "; ".join(f"{work * 1000:.0f} ms ({wall * 1000:.0f} wait) {name}" for work, wall, name in longest)
        over = sum(work > 0.05 for work, _, _ in events)
        print(f"{what}: {len(events)} events, {over} over 50 ms of work; longest {words}")
        events.clear()

    window.show()
    window.warm_up()
    for _ in range(200):
        app.processEvents()
        time.sleep(0.01)
    tell("start")
    window.arrivals.read_text(note_of(3000))
    through()
    app.processEvents()
    assert window.page is not None
    facts = sum(1 for _ in window.page.session.record.walk())
    tell(f"paste and read 3,000 words ({facts} facts)")
    for name, times in (
        ("confirm", 60),
        ("confirm_heading", 12),
        ("silent", 5),
        ("undo", 10),
        ("redo", 10),
        ("thought_first", 2),
        ("every_field", 2),
        ("zoom_in", 2),
        ("theme_dark", 1),
    ):
        for _ in range(times):
            QTimer.singleShot(0, window, lambda n=name: window.run(n))
            app.processEvents()
            through()
        tell(f"{name} x {times}")
    window.page.session.close()
    for name in ("practise", "audit", "new", "practise", "audit"):
        QTimer.singleShot(0, window, lambda n=name: window.run(n))
        for _ in range(200):
            app.processEvents()
            time.sleep(0.01)
        tell(name)
    assert window.audit is not None
    window.audit.finish()
    window.finish()


if __name__ == "__main__":
    if sys.argv[1:2] == ["--start"]:
        start(float(sys.argv[2]), sys.argv[3])
    elif sys.argv[1:2] == ["--answer"]:
        answer()
    else:
        main()
