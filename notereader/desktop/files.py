"""Writing a file whole or not at all."""

from pathlib import Path

from PySide6.QtCore import QIODevice, QSaveFile


def write_whole(path: Path, content: bytes) -> None:
    """Write a file so that either all of it stands there or what stood there before. Raises OSError."""
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly) or file.write(content) < 0 or not file.commit():
        raise OSError(file.errorString())
