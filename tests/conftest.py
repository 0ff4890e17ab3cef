"""For all tests: no screen is needed, and where Qt cannot be loaded the window's tests are left out and named so."""

import importlib
import os
import shutil
import tempfile
from pathlib import Path

import pytest
from collections_of_notes import EVERY_NOTE, READINGS

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# A rule of the reader that fails is got over for a therapist, never for a test.
os.environ.setdefault("NOTEREADER_STRICT", "1")


def _qt_fault() -> str:
    """Return why Qt's widgets cannot be loaded, in the window's own words; '' where they can."""
    try:
        for part in ("QtCore", "QtGui", "QtWidgets", "QtTest"):
            importlib.import_module(f"PySide6.{part}")
    except ImportError as fault:
        from notereader.desktop.window import missing_in_words

        return missing_in_words(str(fault))
    return ""


_NO_QT = _qt_fault()


def pytest_configure(config: pytest.Config) -> None:
    """Name the folder of this run's readings before its other processes start; they take the name over."""
    if not hasattr(config, "workerinput"):
        os.environ[READINGS] = tempfile.mkdtemp(prefix="readings-")
        if config.getoption("--every-note"):
            os.environ[EVERY_NOTE] = "1"


def pytest_unconfigure(config: pytest.Config) -> None:
    """Leave nothing of it behind."""
    if not hasattr(config, "workerinput"):
        shutil.rmtree(os.environ.pop(READINGS), ignore_errors=True)


def pytest_addoption(parser: pytest.Parser, pluginmanager: pytest.PytestPluginManager) -> None:
    """Add what can be asked of a run; take out the plugin that tests Qt where there is none, or it would end it."""
    parser.addoption("--every-note", action="store_true", help="try on every note what a few of them are tried on")
    plugin = pluginmanager.get_plugin("pytest-qt")
    if _NO_QT and plugin is not None:
        pluginmanager.unregister(plugin)


def pytest_ignore_collect(collection_path: Path) -> bool | None:
    """Leave out the window's tests where Qt cannot be loaded."""
    return True if _NO_QT and collection_path.name == "desktop" and collection_path.is_dir() else None


def pytest_report_header() -> list[str]:
    """Say so at the top of the run."""
    return [f"The tests of the window are left out. {_NO_QT}"] if _NO_QT else []


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Say so at its end too: a run without the window's tests is not the whole."""
    if _NO_QT:
        terminalreporter.write_line(f"Left out: every test of the window. {_NO_QT}", yellow=True)
