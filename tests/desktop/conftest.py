"""A window on a casebook of its own, with sample records as what the reader would propose."""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from desktop_samples import proposed, sample_text
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from notereader.desktop import arrivals
from notereader.desktop.look import Look
from notereader.desktop.main_window import MainWindow
from notereader.desktop.settings import Settings
from notereader.desktop.shelf import Shelf
from notereader.desktop.waiting import WaitingNotes

PATIENCE_MS = 60_000


class PatientBot(QtBot):
    """Waits long enough for a machine that is busy with other things; what takes its time does not fail."""

    def waitUntil(self, callback, *, timeout=PATIENCE_MS):  # noqa: N802
        super().waitUntil(callback, timeout=max(timeout, PATIENCE_MS))

    def waitSignal(self, signal=None, *, timeout=PATIENCE_MS, **how):  # noqa: N802
        # What is only watched for not coming (assertNotEmitted) is waited for no longer than asked.
        patience = max(timeout, PATIENCE_MS) if how.get("raising", True) else timeout
        return super().waitSignal(signal, timeout=patience, **how)


@pytest.fixture
def qtbot(qapp: QApplication, request: pytest.FixtureRequest) -> QtBot:
    return PatientBot(request)


@pytest.fixture
def look(qapp: QApplication) -> Iterator[Look]:
    made = Look(qapp, "light")
    yield made
    made.zoom(0)


@pytest.fixture
def make_window(
    qtbot, look: Look, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Callable[..., MainWindow]]:
    """Return what makes a window on the casebook of this test; every window is closed in the end."""
    monkeypatch.setattr(arrivals, "_load_reader", lambda: None)
    monkeypatch.setattr(arrivals, "_read", proposed)
    windows: list[MainWindow] = []

    def make(width: int = 1280, height: int = 800) -> MainWindow:
        settings = Settings(tmp_path / "window.ini")
        settings.reviewer = "T. Reviewer"
        shelf = Shelf(str(tmp_path / "casebook.db"))
        window = MainWindow(look, settings, shelf, WaitingNotes(tmp_path / "waiting"))
        window.resize(width, height)
        window.show()
        window.activateWindow()
        qtbot.waitExposed(window)
        window.warm_up()
        windows.append(window)
        return window

    yield make
    for window in windows:
        window.close()
        window.finish()
        window.deleteLater()


@pytest.fixture
def window(make_window: Callable[..., MainWindow]) -> MainWindow:
    return make_window()


@pytest.fixture
def open_sample(qtbot, window: MainWindow) -> Callable[[str], MainWindow]:
    """Return what pastes a sample and waits for its case."""

    def paste(sample: str) -> MainWindow:
        QApplication.clipboard().setText(sample_text(sample))
        with qtbot.waitSignal(window.case_shown, timeout=10_000):
            window.run("paste")
        return window

    return paste
