"""What the tests of privacy run in a process of its own: the whole work, and a window that opens a note.

work FOLDER         read, explain, appraise, export, share, audit and take in the notes of FOLDER/notes
window FOLDER       open FOLDER/notes/plain.txt in the window, wait for its case, close it
broken FOLDER WORDS open the window, and let a slot and a thread of it fail with these words
"""

import json
import os
import sys
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"


def sockets_of_network() -> list[str]:
    """Return the lines of this process's own network sockets, as Linux counts them; empty where there are none."""
    tables = ["tcp", "tcp6", "udp", "udp6", "raw", "raw6"]
    open_ones = set()
    for link in Path("/proc/self/fd").iterdir():
        try:
            name = os.readlink(link)
        except OSError:
            continue
        if name.startswith("socket:["):
            open_ones.add(name[8:-1])
    lines = [
        line for t in tables if (p := Path(f"/proc/self/net/{t}")).exists() for line in p.read_text().splitlines()[1:]
    ]
    return [line for line in lines if line.split()[9] in open_ones]


def told(**facts: object) -> None:
    print("TOLD " + json.dumps(facts), file=sys.stderr, flush=True)


def work(folder: Path) -> None:
    from notereader.cli import main

    notes, out = folder / "notes", folder / "out"
    plain = str(notes / "plain.txt")
    record = str(out / "records" / "plain.json")
    calls = [
        ["read", *map(str, sorted(notes.iterdir())), "--out", str(out / "records")],
        ["explain", plain],
        ["appraise", record, "--day", "7"],
        *(["export", record, f"--{form}", "--out", str(out / f"export.{form}")] for form in FORMS),
        ["share", plain, "--looked", "--out", str(out / "shared.txt")],
        ["audit", str(notes), "--out", str(out / "audit"), "--workers", "2"],
        ["schema"],
        ["check-resources"],
    ]
    codes = {" ".join(call[:3:2]): main(call) for call in calls}
    told(codes=codes, sockets=sockets_of_network(), modules=network_modules())


FORMS = ("text", "html", "json", "fhir", "csv", "sqlite")


def network_modules() -> list[str]:
    """Return the loaded modules that are only there to reach others."""
    names = ("PySide6.QtNetwork", "distributed", "requests", "httpx", "aiohttp", "psycopg", "urllib3", "http.client")
    return [name for name in names if name in sys.modules]


def window(folder: Path) -> None:
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication

    from notereader.cli import main
    from notereader.desktop import application

    class Watched(application.MainWindow):
        def __init__(self, *args: object) -> None:
            super().__init__(*args)
            self.case_shown.connect(lambda: QTimer.singleShot(300, self.look_and_close))

        def look_and_close(self) -> None:
            titles = [top.windowTitle() for top in QApplication.topLevelWidgets() if top.windowTitle()]
            self.run("new")
            lines = self.start.cases.findChildren(object)
            told(titles=titles, parts=len(lines), sockets=sockets_of_network(), modules=network_modules())
            self.close()

    application.MainWindow = Watched
    code = main(
        ["open", str(folder / "notes" / "plain.txt"), "--casebook", str(folder / "out" / "book" / "casebook.db")]
    )
    told(code=code)


def broken(folder: Path, words: str) -> None:
    import threading

    from PySide6.QtCore import QTimer

    from notereader.cli import main
    from notereader.desktop import application

    def fail() -> None:
        raise ValueError(words)

    class Broken(application.MainWindow):
        def warm_up(self) -> None:
            thread = threading.Thread(target=fail)
            thread.start()
            thread.join()
            QTimer.singleShot(0, self, fail)
            QTimer.singleShot(300, self, self.close)

    application.MainWindow = Broken
    told(code=main(["open", "--casebook", str(folder / "broken.db")]))


if __name__ == "__main__":
    {"work": work, "window": window, "broken": broken}[sys.argv[1]](Path(sys.argv[2]), *sys.argv[3:])
