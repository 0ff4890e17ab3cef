"""The running program: one QApplication, one window, until it is closed."""

import sys
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from notereader.desktop.look import Look
from notereader.desktop.main_window import MainWindow
from notereader.desktop.settings import Settings
from notereader.desktop.shelf import Shelf
from notereader.desktop.waiting import WaitingNotes


def open_window(note: Path | None = None, casebook: str | None = None) -> int:
    """Show the window, open a note in it where one is given, and return Qt's exit code once it is closed."""
    app = QApplication.instance()
    if not isinstance(app, QApplication):
        app = QApplication(sys.argv[:1])
    app.setApplicationName("notereader")
    app.setApplicationDisplayName("notereader")
    settings = Settings()
    window = MainWindow(Look(app, settings.colours, settings.scale), settings, Shelf(casebook), WaitingNotes())
    window.show()
    window.start.paste.setFocus()
    # Only after the window is on screen: nobody waits for the database or the reader to see it.
    QTimer.singleShot(0, window, window.warm_up)
    if note is not None:
        QTimer.singleShot(0, window, lambda: window.arrivals.open_path(note))
    code = app.exec()
    window.finish()
    return int(code)
