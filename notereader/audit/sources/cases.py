"""The casebook: every case with its record as it stands."""

from collections.abc import Iterator
from pathlib import Path

from notereader.audit.faults import AuditFault
from notereader.audit.sources.base import FROM_RECORD, NoteInput
from notereader.casebook import Casebook, CasebookFault
from notereader.record import dump_record

_PAGE = 500


class CasebookSource:
    """Every case of a casebook, in the order of their numbers; None is the person's own casebook."""

    def __init__(self, place: str | Path | None) -> None:
        try:
            self._book = Casebook(place)
        except CasebookFault as fault:
            raise AuditFault(str(fault)) from None
        self.words = "the casebook"
        self.identity = f"casebook {place or ''}"
        self.columns: tuple[str, ...] = ("state", *FROM_RECORD)

    def inputs(self) -> Iterator[NoteInput]:
        """Yield every case. Raises AuditFault where one cannot be opened."""
        for number in self._numbers():
            try:
                case = self._book.open(number)
            except CasebookFault as fault:
                raise AuditFault(str(fault)) from None
            yield NoteInput(
                key=f"case {number}",
                name=f"case {number}",
                stamp=str(case.revision),
                kind="record",
                content=dump_record(case.record, indent=None).encode(),
                columns=(("state", case.state),),
            )

    def count(self) -> int | None:
        """Return the number of cases."""
        return len(self._numbers())

    def close(self) -> None:
        """Let go of the casebook."""
        self._book.close()

    def _numbers(self) -> list[int]:
        numbers: list[int] = []
        while True:
            page = self._book.cases(limit=_PAGE, offset=len(numbers))
            numbers += [line.id for line in page]
            if len(page) < _PAGE:
                return sorted(set(numbers))
