"""The copy of a record without identifiers: its text, its quotes and their places, its dates, and who reviewed it."""

import re
from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from notereader.record import Evidence, Fact, Note, Record, RecordRefused, Rival, dump_record, load_record, source_of
from notereader.sharing.copying import CleanCopy, replacement
from notereader.sharing.finding import find_identifiers
from notereader.sharing.finds import Find

# A note's file is often named after the patient.
NAME_OF_COPY = "shared note"
_PERSON = "[name]"
_NO_TEXT = (
    "This record came without the text of its note, so nobody can look for identifiers around its quotes. Export it "
    "again with the text, or share the note itself."
)


def find_in_record(record: Record) -> list[Find]:
    """Return what may tell who somebody is in the note of a record, its own dates included.

    Raises RecordRefused for a record without the text of its note.
    """
    if record.note.text is None:
        raise RecordRefused(_NO_TEXT)
    return find_identifiers(record.note.text, _known_days(record))


def share_record(record: Record, finds: Iterable[Find], days: int) -> Record:
    """Return a copy of a record in which the finds are blanked and dates moved by a number of days.

    The words that prove each fact stand where the copy says they stand, and no quote holds what was blanked. Names of
    the note, of reviewers and of who said something are blanked always. Raises RecordRefused for a record without the
    text of its note.
    """
    text = record.note.text
    if text is None:
        raise RecordRefused(_NO_TEXT)
    chosen = list(finds)
    return _Sharing(text, chosen, days).record(record)


class _Sharing:
    """One record on its way into a copy."""

    def __init__(self, text: str, finds: Sequence[Find], days: int) -> None:
        self._finds = finds
        self._days = days
        self._old = text
        self._copy = CleanCopy(text, finds, days)
        self._source = source_of(self._copy.text)

    def record(self, record: Record) -> Record:
        copy = record.model_copy(deep=True)
        copy.note = Note.of(self._copy.text, NAME_OF_COPY)
        for place, fact in copy.walk():
            self._fact(fact, is_date=place.field in ("date", "injury_date"))
        for remark in copy.remarks:
            remark.text = self._clean(remark.text)
            remark.evidence = [self._evidence(each) for each in remark.evidence]
        review = copy.review
        if review.reviewer is not None:
            review.reviewer = _PERSON
        if review.confirmed_at is not None:
            review.confirmed_at += timedelta(days=self._days)
        # Loaded as its receiver will load it: a copy whose quotes do not stand where they should is never given out.
        return load_record(dump_record(copy))

    def _fact(self, fact: Fact, *, is_date: bool) -> None:
        holders: list[Fact | Rival] = [fact, *fact.rivals]
        for holder in holders:
            if is_date and isinstance(holder.value, str) and self._is_moved(holder.evidence):
                holder.value = (date.fromisoformat(holder.value) + timedelta(days=self._days)).isoformat()
            holder.evidence = [self._evidence(each) for each in holder.evidence]
        fact.look_twice = [self._clean(reason) for reason in fact.look_twice]
        if fact.said_by:
            fact.said_by = _PERSON
        if fact.said_on:
            fact.said_on += timedelta(days=self._days)

    def _is_moved(self, evidence: Sequence[Evidence]) -> bool:
        """True unless the person kept the words that this date was read from."""
        spans = [each.span for each in evidence if each.span]
        return not spans or any(self._copy.touches(*span) for span in spans)

    def _evidence(self, evidence: Evidence) -> Evidence:
        """Return the evidence in the copy's text; one without a place has its words cleaned by themselves."""
        if evidence.span is not None:
            return Evidence.at(self._copy.text, *self._copy.span(*evidence.span), self._source)
        quote = {"type": "TextQuoteSelector", "exact": self._clean(evidence.exact)}
        return Evidence.model_validate({"source": self._source, "selector": [quote]})

    def _clean(self, words: str) -> str:
        """Return a sentence about the note without what was blanked in the note."""
        for find in sorted(self._finds, key=lambda each: -len(each.words)):
            parts = re.split(rf"(?<!\w){re.escape(find.words)}(?!\w)", words, flags=re.IGNORECASE)
            words = replacement(find, self._days).join(parts)
        return words


def _known_days(record: Record) -> list[date]:
    days = [record.operation.get(name) for name in ("date", "injury_date")]
    return [date.fromisoformat(str(fact.value)) for fact in days if fact is not None and fact.live]
