"""A second process for the tests: another window's hands, or a window that is going to be killed.

confirm BOOK CASE COUNT   confirm the first facts that are only proposed
clash BOOK CASE WHO       enter 8 core strands for the ring FDP
work BOOK CASE WAITING    open the case in a window and edit without end, telling each edit once the screen shows it
"""

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from notereader.record import Address, Record


def status_word(step: int) -> str:
    """Return the value that edit number `step` enters: the plan that both sides know."""
    return ("clean", "ragged", "crushed", "attenuated")[step % 4]


def confirm(book: str, case_id: str, count: str) -> None:
    from notereader.casebook import Casebook, Edit

    case = Casebook(book).open(int(case_id))
    proposed = [(a, f) for a, f in case.record.walk() if f.status == "proposed"][: int(count)]
    for address, fact in proposed:
        case.apply(Edit(address, fact, fact.model_copy(update={"status": "confirmed"})), "other")


def clash(book: str, case_id: str, who: str) -> None:
    from notereader.casebook import Casebook, Edit

    case = Casebook(book).open(int(case_id))
    address = Address("repairs", "ring", "FDP", None, "strands")
    fact = case.record.fact(address)
    assert fact is not None
    case.apply(Edit(address, fact, fact.model_copy(update={"value": 8, "status": "corrected"})), who)


def work(book: str, case_id: str, folder: str) -> None:
    """Edit through the window until killed; every line printed is an edit that the screen shows."""
    from PySide6.QtWidgets import QApplication

    from notereader.desktop import arrivals, steps
    from notereader.desktop.look import Look
    from notereader.desktop.main_window import MainWindow
    from notereader.desktop.settings import Settings
    from notereader.desktop.shelf import Shelf
    from notereader.desktop.waiting import WaitingNotes

    arrivals._load_reader = lambda: None
    app = QApplication([])
    settings = Settings(Path(folder) / "window.ini")
    window = MainWindow(Look(app, "light"), settings, Shelf(book), WaitingNotes(Path(folder)))
    ends = Address("repairs", "ring", "FDP", None, "ends")
    step = 0

    def shown(record: Record) -> None:
        nonlocal step
        fact = record.fact(ends)
        row = window.page.model.item(window.page.model.line_of(ends))
        assert fact is not None and row.value == fact.value == status_word(step), "the screen shows it"
        print(f"shown {step}", flush=True)
        step += 1
        enter()

    def enter() -> None:
        window.page.session.act(lambda record: steps.correct(record, ends, status_word(step)))

    def begin() -> None:
        window.page.session.record_changed.connect(shown)
        print("ready", flush=True)
        nonlocal step
        fact = window.page.session.record.fact(ends)
        step = 1 if fact and fact.value == status_word(0) else 0
        enter()

    window.case_shown.connect(begin)
    window.show()
    window.open_case(int(case_id), "ring")
    app.exec()


if __name__ == "__main__":
    {"confirm": confirm, "clash": clash, "work": work}[sys.argv[1]](*sys.argv[2:])
