"""What the window remembers between starts: reviewer, colours, letters, where it stood. No note, no fact."""

import getpass
import os
from contextlib import suppress
from pathlib import Path
from typing import cast, get_args

import platformdirs
from PySide6.QtCore import QByteArray, QSettings

from notereader.desktop.look import Choice


class Settings:
    """Kept as an INI file in the person's folder for settings."""

    def __init__(self, path: Path | None = None):
        folder = Path(platformdirs.user_config_dir("notereader", appauthor=False))
        kept = path or folder / "window.ini"
        _make_private(kept)
        self._kept = QSettings(str(kept), QSettings.Format.IniFormat)

    @property
    def reviewer(self) -> str:
        """The name under which edits are entered; at first the one this person logged in with."""
        return str(self._kept.value("reviewer", "")) or _login()

    @reviewer.setter
    def reviewer(self, name: str) -> None:
        self._kept.setValue("reviewer", " ".join(name.split()))

    @property
    def student(self) -> str:
        """Whose exercise book practice opens; empty where nobody gave a name."""
        return str(self._kept.value("student", ""))

    @student.setter
    def student(self, name: str) -> None:
        self._kept.setValue("student", " ".join(name.split()))

    @property
    def case_set(self) -> str:
        """The folder or file of the practice cases chosen last; empty for those that come with the program."""
        return str(self._kept.value("case_set", ""))

    @case_set.setter
    def case_set(self, path: str) -> None:
        self._kept.setValue("case_set", path)

    @property
    def colours(self) -> Choice:
        """Which colours were chosen; those of the system at first."""
        choice = str(self._kept.value("colours", "system"))
        return cast(Choice, choice) if choice in get_args(Choice) else "system"

    @colours.setter
    def colours(self, choice: Choice) -> None:
        self._kept.setValue("colours", choice)

    @property
    def scale(self) -> float:
        """How large letters are, 1.0 being usual."""
        try:
            return float(str(self._kept.value("scale", "1.0")))
        except ValueError:
            return 1.0

    @scale.setter
    def scale(self, scale: float) -> None:
        self._kept.setValue("scale", scale)

    @property
    def geometry(self) -> QByteArray | None:
        """Where the window last stood."""
        kept = self._kept.value("geometry")
        return kept if isinstance(kept, QByteArray) else None

    @geometry.setter
    def geometry(self, geometry: QByteArray) -> None:
        self._kept.setValue("geometry", geometry)


def _make_private(path: Path) -> None:
    """Make the file before Qt does, for Qt would let everybody read it; it keeps the rights of one that is there."""
    with suppress(OSError):  # Where nothing can be written, nothing is remembered, and the window works all the same.
        path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        os.close(os.open(path, os.O_CREAT | os.O_WRONLY, 0o600))
        path.chmod(0o600)


def _login() -> str:
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return ""
