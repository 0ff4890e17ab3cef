"""The casebook: the list of cases, adding to it, and opening one."""

from dataclasses import dataclass
from datetime import UTC, date, datetime
from pathlib import Path

from sqlalchemy import select
from sqlalchemy.orm import Session

from notereader.casebook.backup import Backups, DailyBackup
from notereader.casebook.case import OpenCase
from notereader.casebook.faults import CasebookFault
from notereader.casebook.mending import mend_if_damaged
from notereader.casebook.models import Case, CaseNote, CaseRecord, EditRow
from notereader.casebook.schema import prepare
from notereader.casebook.store import Store, resolve
from notereader.casebook.summary import fold, storable, summary_of, without_text
from notereader.record import Record, load_record

# Longer searches are cut: databases refuse overlong patterns.
SEARCH_LENGTH = 400


@dataclass(frozen=True, slots=True)
class CaseLine:
    """One line of the list of cases. `state` is imported, in work or confirmed; `facts_open` counts proposed facts."""

    id: int
    title: str
    state: str
    operation_date: date | None
    digits: tuple[str, ...]
    tendons: tuple[str, ...]
    changed_at: datetime
    facts_open: int


class Casebook:
    """Where cases live between sessions.

    `url` is None for the person's own casebook, the path of a .db file, or the URL of a server database. Raises
    CasebookFault where it cannot be used. `notices` are sentences the person should be told after opening, such as
    that a damaged file was mended.
    """

    def __init__(self, url: str | Path | None = None, *, wait_seconds: float = 5.0) -> None:
        self.notices: list[str] = []
        address, path = resolve(url)
        backups = Backups(path) if path else None
        if path and backups:
            self.notices += filter(None, [mend_if_damaged(path, backups, wait_seconds)])
        self._store = Store(address, path, wait_seconds)
        try:
            prepare(self._store)
        except CasebookFault:
            self._store.close()
            raise
        self._daily = DailyBackup(backups, self.notices.append) if backups else None
        if self._daily:
            self._store.on_saved = self._daily.remind
            self._daily.remind()

    def add(self, record: Record, *, title: str = "", who: str = "") -> int:
        """Take in a record as a new case in state 'imported' and return the case's number. Durable on return.

        Without a title the case gets the note's name. Raises RecordRefused where the record contradicts itself, for it
        could not be opened again.
        """
        record = load_record(record.model_dump(mode="json"))
        title = storable(title.strip() or record.note.name)
        with self._store.writing() as session:
            now = datetime.now(UTC)
            case = Case(title=title, state="imported", revision=0, last_edit=0, changed_at=now, **summary_of(record))
            session.add(case)
            session.flush()
            _add_content(session, case, record, storable(who))
            return case.id

    def cases(self, search: str = "", state: str | None = None, limit: int = 500, offset: int = 0) -> list[CaseLine]:
        """List cases, the last changed first.

        `search` keeps those with every one of its words in title or note text, capitals or not; `state` keeps one
        state.
        """
        wanted = select(Case).order_by(Case.last_edit.desc(), Case.id.desc()).limit(limit).offset(offset)
        if state is not None:
            wanted = wanted.where(Case.state == state)
        words = fold(search[:SEARCH_LENGTH]).split()
        if words:
            wanted = wanted.join(CaseNote, CaseNote.case_id == Case.id)
        for word in words:
            wanted = wanted.where(CaseNote.search.contains(word, autoescape=True))
        with self._store.reading() as session:
            return [_line(case) for case in session.scalars(wanted)]

    def open(self, case_id: int) -> OpenCase:
        """Open one case with its record and history. Raises CasebookFault where there is no such case."""
        return OpenCase(self._store, case_id)

    def close(self) -> None:
        """Let go of the database; everything was saved already."""
        if self._daily:
            self._daily.finish()
        self._store.close()


def _add_content(session: Session, case: Case, record: Record, who: str) -> None:
    text = record.note.text
    line = EditRow(case_id=case.id, revision=0, at=case.changed_at, who=who, kind="imported", address="", note="")
    session.add_all(
        [
            CaseNote(case_id=case.id, text=text, search=fold(f"{case.title}\n{text or ''}")),
            CaseRecord(case_id=case.id, data=without_text(record)),
            line,
        ]
    )
    session.flush()
    case.last_edit = line.id


def _line(case: Case) -> CaseLine:
    day = case.operation_date
    return CaseLine(
        case.id,
        case.title,
        case.state,
        date.fromisoformat(day) if day else None,
        tuple(case.digits.split(",")) if case.digits else (),
        tuple(case.tendons.split(",")) if case.tendons else (),
        case.changed_at,
        case.facts_open,
    )
