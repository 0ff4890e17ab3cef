"""Where results are written: a file for each note or record, and nothing a person entered is ever written over."""

from pathlib import Path

from notereader.commands.inputs import STANDARD_INPUT
from notereader.exchange import ExportFault, read_record
from notereader.record import RecordRefused


class Places:
    """Gives out one file in a folder for each name; two notes of one name get two files."""

    def __init__(self, folder: Path, ending: str) -> None:
        self._folder = folder
        self._ending = ending
        self._given: set[Path] = set()

    def place_for(self, name: str) -> Path:
        """Return the file for what comes from this note or record."""
        stem = "standard-input" if name == STANDARD_INPUT else Path(name).stem
        path, number = self._folder / f"{stem}{self._ending}", 1
        while path in self._given:
            number += 1
            path = self._folder / f"{stem}-{number}{self._ending}"
        self._given.add(path)
        return path


def keep_work(path: Path, *, only_drafts: bool = False) -> None:
    """Raise ExportFault where a file must not be written over: facts that a person has settled, or a casebook.

    With `only_drafts` nothing but a record that nobody has worked on may be written over.
    """
    if not path.exists():
        return
    if _is_database(path):
        raise ExportFault(f"{path} is a database, perhaps a casebook, and was left as it is. Give another place.")
    try:
        record = read_record(path)
    except RecordRefused:
        if only_drafts:
            raise ExportFault(f"{path} holds something else and was left as it is. Give another place.") from None
        return
    if record.review.reviewer is not None or any(fact.status != "proposed" for _, fact in record.walk()):
        raise ExportFault(f"{path} holds facts that a person has settled and was left as it is. Give another place.")


def _is_database(path: Path) -> bool:
    try:
        with path.open("rb") as stream:
            return stream.read(16) == b"SQLite format 3\0"
    except OSError:
        return False
