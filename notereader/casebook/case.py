"""One open case: its record, saving edits at once, its history, and what others changed meanwhile."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import ColumnElement, select
from sqlalchemy.orm import Session

from notereader.casebook.edits import Content, Edit, do_edit, fits, pack, unpack, verified
from notereader.casebook.faults import CasebookFault, ChangedElsewhere, NotAllConfirmed
from notereader.casebook.models import Case, CaseNote, CaseRecord, EditRow, ReadMark
from notereader.casebook.store import Store
from notereader.casebook.summary import storable, summary_of, without_text
from notereader.record import Address, Fact, Record, RecordRefused, Review, load_record, show_value
from notereader.vocabulary import field_specs


@dataclass(frozen=True, slots=True)
class HistoryLine:
    """Who did what to a case, when, and from what to what.

    `kind` is imported, edited, confirmed, reopened (by an edit after the confirmation) or mended (the casebook was
    damaged, and something before this line may be missing). `address` is None for what concerns the whole case.
    `before` and `after` are the fact, or the facts of a whole entry, on either side; `note` is the person's remark.
    """

    revision: int
    when: datetime
    who: str
    kind: str
    address: Address | None
    before: Content
    after: Content
    note: str

    @property
    def words(self) -> str:
        """Say the line in plain words: 'ring FDP: core strands: 4 (proposed) -> 6 (corrected)'."""
        if self.address is None:
            return self.kind
        place = self.address
        change = f"{place.words()}: {_said(place, self.before)} → {_said(place, self.after)}"
        return f"{change} ({self.note})" if self.note else change


class OpenCase:
    """One case as this window sees it.

    `record` is replaced, never changed, by apply(), refresh() and confirm(): keep no facts of an older one. `revision`
    rises by one with each edit; when apply() raises it by more, edits of others were merged in and the record should
    be shown anew. `state` is imported, in work or confirmed. `read` holds the addresses (Address.text()) of the facts
    that were shown to a person.
    """

    def __init__(self, store: Store, case_id: int) -> None:
        self._store = store
        self.id = case_id
        self.record = Record()
        self.revision = -1
        self.state = "imported"
        self.read: set[str] = set()
        self.refresh()

    def refresh(self) -> bool:
        """Take over what another window or process saved; True if something changed."""
        with self._store.reading() as session:
            case = self._case(session)
            read = set(session.scalars(select(ReadMark.address).where(ReadMark.case_id == self.id)))
            if case.revision == self.revision and read == self.read:
                return False
            if case.revision != self.revision:
                self.record = self._stored(session)
            self.revision, self.state, self.read = case.revision, case.state, read
            return True

    def apply(self, edit: Edit, who: str = "") -> None:
        """Save one edit; it is durable when this returns.

        Edits of other facts made elsewhere are merged in. Raises ChangedElsewhere where the same fact was changed,
        EditRefused where the edit is impossible, CasebookFault where it cannot be saved; nothing is changed then.
        """
        self.apply_all([edit], who)

    def apply_all(self, edits: Sequence[Edit], who: str = "") -> None:
        """Save several edits in one step, all or none; raises as apply() does."""
        if not edits:
            return
        with self._store.writing() as session:
            case = self._case(session, lock=True)
            record = self._stored(session)
            for edit in edits:
                if not fits(record, edit) or self._lost_entry(record, edit):
                    raise self._changed_elsewhere(session, case, edit)
                do_edit(record, edit)
            record = verified(record)
            for edit in edits:
                self._log(session, case, "edited", who, edit)
            if record.review.reviewer or record.review.confirmed_at:
                # What was confirmed, here or before it was imported, is no longer what stands here.
                record.review = Review(reader_version=record.review.reader_version)
                self._log(session, case, "reopened", who)
            self._save(session, case, record, "in work")
            revision = case.revision
        self.record, self.revision, self.state = record, revision, "in work"

    def mark_read(self, addresses: Iterable[str]) -> None:
        """Remember that these facts (Address.text()) were shown to the person."""
        wanted = set(addresses) - self.read
        if not wanted:
            return
        with self._store.writing() as session:
            self._case(session, lock=True)
            known = set(session.scalars(select(ReadMark.address).where(ReadMark.case_id == self.id)))
            session.add_all(ReadMark(case_id=self.id, address=address) for address in wanted - known)
        self.read |= wanted | known

    def history(self) -> list[HistoryLine]:
        """Return everything that was done to the case, oldest first."""
        with self._store.reading() as session:
            rows = session.scalars(select(EditRow).where(EditRow.case_id == self.id).order_by(EditRow.revision))
            return [_history_line(row) for row in rows]

    def confirm(self, who: str) -> None:
        """Set the case to confirmed by this person, now.

        Raises NotAllConfirmed while facts are only proposed, CasebookFault without a name, ChangedElsewhere where the
        case is no longer what this window shows.
        """
        if not who.strip():
            raise CasebookFault("A confirmation needs the name of the person who confirms. Enter it and try again.")
        with self._store.writing() as session:
            case = self._case(session, lock=True)
            record = self._stored(session)
            if case.revision != self.revision:
                raise self._changed_elsewhere(session, case, None)
            open_facts = [place for place, fact in record.walk() if fact.status == "proposed"]
            if open_facts:
                raise NotAllConfirmed(open_facts)
            self._log(session, case, "confirmed", who)
            record.review = Review(
                reviewer=storable(who.strip()),
                confirmed_at=case.changed_at,
                reader_version=record.review.reader_version,
            )
            self._save(session, case, record, "confirmed")
            revision = case.revision
        self.record, self.revision, self.state = record, revision, "confirmed"

    def _case(self, session: Session, *, lock: bool = False) -> Case:
        wanted = select(Case).where(Case.id == self.id)
        case = session.scalar(wanted.with_for_update() if lock else wanted)
        if case is None:
            raise CasebookFault(f"There is no case number {self.id} in this casebook. Look at the list of cases again.")
        return case

    def _stored(self, session: Session) -> Record:
        data = session.scalar(select(CaseRecord.data).where(CaseRecord.case_id == self.id))
        text = session.scalar(select(CaseNote.text).where(CaseNote.case_id == self.id))
        return _record_from(data, text, self.id)

    def _lost_entry(self, record: Record, edit: Edit) -> bool:
        """True where the entry that this window shows was dropped elsewhere."""
        place = edit.address
        return bool(place.field) and record.facts_of(place) is None and self.record.facts_of(place) is not None

    def _log(self, session: Session, case: Case, kind: str, who: str, edit: Edit | None = None) -> None:
        case.revision += 1
        case.changed_at = datetime.now(UTC)
        line = EditRow(case_id=self.id, revision=case.revision, at=case.changed_at, who=storable(who), kind=kind)
        line.address = edit.address.text() if edit else ""
        line.before, line.after = (pack(edit.before), pack(edit.after)) if edit else (None, None)
        line.note, line.position = (storable(edit.note), edit.position) if edit else ("", None)
        session.add(line)
        session.flush()
        case.last_edit = line.id

    def _save(self, session: Session, case: Case, record: Record, state: str) -> None:
        case.state = state
        for name, value in summary_of(record).items():
            setattr(case, name, value)
        stored = session.get_one(CaseRecord, self.id)
        stored.data = without_text(record)

    def _changed_elsewhere(self, session: Session, case: Case, edit: Edit | None) -> ChangedElsewhere:
        lines = select(EditRow).where(EditRow.case_id == self.id).order_by(EditRow.revision.desc())
        last = session.scalars(lines).first()
        if edit is not None:
            last = session.scalars(lines.where(_touching(edit.address))).first() or last
        assert last is not None
        record = self._stored(session)
        return ChangedElsewhere(edit=edit, record=record, revision=case.revision, who=last.who, when=last.at)


def _touching(address: Address) -> ColumnElement[bool]:
    """Select the lines of history that changed what an edit of this address would change."""
    entry = address.entry().text()
    if address.field:
        return EditRow.address.in_([address.text(), entry])
    return EditRow.address.startswith(entry.removesuffix("-"), autoescape=True)


def _record_from(data: Any, text: str | None, case_id: int) -> Record:
    """Build the record from its stored parts, migrating older formats. Raises CasebookFault where it is damaged."""
    if text is not None:
        data["note"]["text"] = text
    try:
        return load_record(data)
    except RecordRefused as fault:
        raise CasebookFault(f"Case number {case_id} cannot be opened. {fault}") from None


def _history_line(row: EditRow) -> HistoryLine:
    address = Address.parse(row.address) if row.address else None
    before = unpack(address, row.before) if address else None
    after = unpack(address, row.after) if address else None
    return HistoryLine(row.revision, row.at, row.who, row.kind, address, before, after, row.note)


def _said(place: Address, content: Content) -> str:
    if content is None:
        return "nothing"
    if isinstance(content, Fact):
        value = "note is silent" if content.basis == "silent" else show_value(content.value, _unit(place))
        return f"{value} ({content.status})"
    return f"entry with {len(content)} facts" if len(content) != 1 else "entry with 1 fact"


def _unit(place: Address) -> str:
    """Return the unit of the field an address names, '' where there is none."""
    spec = field_specs()[place.group].get(place.field)
    return spec.unit if spec else ""
