"""The casebook as the window uses it: opened at its first use, and only in the background thread."""

from typing import TYPE_CHECKING

from notereader.record import Record

if TYPE_CHECKING:
    from notereader.casebook import Casebook, CaseLine, OpenCase


class Shelf:
    """Everything here may take time and may raise CasebookFault: call it through the casebook's worker."""

    def __init__(self, url: str | None = None):
        # The file or URL of the casebook; None is this person's own.
        self.place = url
        self._book: Casebook | None = None

    def cases(self, search: str, state: str | None) -> "tuple[list[CaseLine], list[str]]":
        """Return the cases that match, and what is to be told after opening the casebook."""
        first = self._book is None
        book = self._open()
        return book.cases(search, state), list(book.notices) if first else []

    def open(self, case_id: int) -> "OpenCase":
        """Open a case."""
        return self._open().open(case_id)

    def add(self, record: Record, title: str) -> "OpenCase":
        """Take in a record as a new case and open it."""
        book = self._open()
        return book.open(book.add(record, title=title))

    def close(self) -> None:
        """Let go of the casebook."""
        if self._book is not None:
            self._book.close()

    def _open(self) -> "Casebook":
        if self._book is None:
            # Imported here: SQLAlchemy takes longer than the window may take to appear.
            from notereader.casebook import Casebook

            self._book = Casebook(self.place)
        return self._book
