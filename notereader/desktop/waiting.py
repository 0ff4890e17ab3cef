"""Notes on their way: kept in a file from the moment they are pasted until their case stands in the casebook."""

import json
import os
import uuid
from dataclasses import dataclass
from pathlib import Path

import platformdirs
from PySide6.QtCore import QLockFile


@dataclass(frozen=True)
class WaitingNote:
    """A note that is being read, or was when the program ended; `path` is None where it could not be kept."""

    path: Path | None
    name: str
    text: str


class WaitingNotes:
    """The folder of notes on their way. Each is locked by the process that reads it."""

    def __init__(self, folder: Path | None = None):
        self._folder = folder or Path(platformdirs.user_data_dir("notereader", appauthor=False)) / "waiting"
        self._locks: dict[Path, QLockFile] = {}

    def keep(self, name: str, text: str) -> WaitingNote:
        """Keep a note until `done`. Raises OSError where it cannot be written."""
        # One after the other: what mkdir makes on the way is open to all.
        for folder in (self._folder.parent, self._folder):
            folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        path = self._folder / f"{uuid.uuid4().hex}.json"
        self._lock(path)
        content = json.dumps({"name": name, "text": text}).encode("ascii")
        with os.fdopen(os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600), "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        return WaitingNote(path, name, text)

    def done(self, note: WaitingNote) -> None:
        """Let go of a note whose case stands in the casebook."""
        if note.path is None:
            return
        note.path.unlink(missing_ok=True)
        if lock := self._locks.pop(note.path, None):
            lock.unlock()

    def left_over(self) -> list[WaitingNote]:
        """Return the notes that no living process reads, and take them over."""
        found = []
        for path in sorted(self._folder.glob("*.json")) if self._folder.is_dir() else []:
            if path in self._locks or not self._lock(path):
                continue
            try:
                kept = json.loads(path.read_bytes())
                found.append(WaitingNote(path, str(kept["name"]), str(kept["text"])))
            except (OSError, ValueError, KeyError, TypeError):
                # Cut off while it was being written, before anybody was told that it is kept.
                path.unlink(missing_ok=True)
        return found

    def _lock(self, path: Path) -> bool:
        lock = QLockFile(f"{path}.lock")
        # Never taken for old by age alone: only a dead process gives up its note.
        lock.setStaleLockTime(0)
        if not lock.tryLock(0):
            return False
        self._locks[path] = lock
        return True
