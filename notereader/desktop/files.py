"""Writing a file whole or not at all, readable by its owner only."""

from pathlib import Path

from PySide6.QtCore import QFileDevice, QIODevice, QSaveFile

_OWNER_ONLY = QFileDevice.Permission.ReadOwner | QFileDevice.Permission.WriteOwner


def write_whole(path: Path, content: bytes) -> None:
    """Write a file so that either all of it stands there or what stood there before. Raises OSError.

    Only its owner may read it, whoever could read what stood there before.
    """
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly):
        raise OSError(file.errorString())
    file.setPermissions(_OWNER_ONLY)
    if file.write(content) < 0 or not file.commit():
        raise OSError(file.errorString())
