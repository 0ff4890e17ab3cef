"""The cases of a casebook for a command that takes them all."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from notereader.exchange import CaseOut, ExportFault

_ALL = 1_000_000_000


@contextmanager
def casebook_cases(place: str, refused: Callable[[str], None]) -> Iterator[Iterator[CaseOut]]:
    """Open a casebook (the person's own where no place is given) and give its cases in the order of their numbers.

    A case that cannot be opened is told to `refused` and left out; it does not keep the others back. Raises
    ExportFault where there is no such casebook.
    """
    # Imported here: no other form of export needs the database.
    from notereader.casebook import Casebook, CasebookFault
    from notereader.casebook.store import resolve

    try:
        path: Path | None = resolve(place or None)[1]
        if path is not None and not path.is_file():
            raise ExportFault(f"There is no casebook at {path}. Check the place.")
        book = Casebook(place or None)
        lines = sorted(book.cases(limit=_ALL), key=lambda line: line.id)
    except CasebookFault as fault:
        raise ExportFault(str(fault)) from None

    def cases() -> Iterator[CaseOut]:
        for line in lines:
            try:
                record = book.open(line.id).record
            except CasebookFault as fault:
                refused(str(fault))
                continue
            yield CaseOut(line.id, record, line.title, line.state)

    try:
        yield cases()
    finally:
        book.close()
