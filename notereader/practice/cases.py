"""Cases: a note and its key, what the student is to find in it, and what the key says beyond the facts."""

import json
import re
from collections.abc import Iterator
from functools import cached_property
from typing import Any

from pydantic import BaseModel, ConfigDict, Field

from notereader.appraisal import Appraisal, Question, appraise, known
from notereader.appraisal.completeness import completeness_of
from notereader.appraisal.models import Contradiction
from notereader.practice.faults import PracticeFault
from notereader.practice.promise import leaning
from notereader.practice.words import spec_of, tables
from notereader.record import (
    FORMAT,
    FORMAT_VERSION,
    Address,
    Fact,
    Note,
    Record,
    RecordRefused,
    Rival,
    load_record,
    note_hash,
)

# Where a note says nothing of a digit's nerves, the silence is kept under this field.
NERVE_FIELD = "extent"


class Case(BaseModel):
    """A note to be read and, unless it was left out, the key it is marked against.

    `difficulty` runs from 1 (plain) to 5 (hard). `teaches` and `remark` give away what is in the note: they are for
    the teacher, and for the student after marking. The key holds every stated fact and, as silent facts, what the note
    should have said and does not.
    """

    model_config = ConfigDict(extra="forbid", ignored_types=(cached_property,))

    id: str = Field(min_length=1)
    text: str
    difficulty: int = Field(default=3, ge=1, le=5)
    teaches: str = ""
    remark: str = ""
    key: Record | None = None

    @property
    def sha256(self) -> str:
        """The checksum by which an attempt knows its note."""
        return note_hash(self.text)

    @property
    def answers(self) -> Record:
        """The key. Raises PracticeFault where the case was handed out without one."""
        if self.key is None:
            raise PracticeFault(
                f"The case '{self.id}' was handed out without its key, so it cannot be marked here. Send your attempt "
                "to whoever handed it out."
            )
        return self.key

    @cached_property
    def appraisal(self) -> Appraisal:
        """What follows from the key, with nothing settled: the note's rivals still contradict each other."""
        return appraise(_unsettled(self.answers))

    @property
    def contradictions(self) -> list[Contradiction]:
        """The contradictions a student should name; what is only unusual is not among them."""
        return [hit for hit in self.appraisal.contradictions if hit.kind == "contradiction"]

    @property
    def unusual(self) -> list[Contradiction]:
        """Findings that are possible but odd: naming one is right, leaving it is no fault."""
        return [hit for hit in self.appraisal.contradictions if hit.kind == "implausible"]

    @property
    def questions(self) -> list[Question]:
        """The questions worth asking the surgeon, the most telling first."""
        return self.appraisal.questions

    def without_key(self) -> "Case":
        """Return the case as it is handed to a student who shall not see the key."""
        return Case(id=self.id, text=self.text, difficulty=self.difficulty)


def case_of(record: Record, name: str = "", *, difficulty: int = 3, teaches: str = "", remark: str = "") -> Case:
    """Make a case of a confirmed record. Raises PracticeFault where it has no note or is not confirmed throughout.

    What the surgeon answered later is not in the note: the key then holds what the note itself said.
    """
    text = record.note.text
    name = name or record.note.name
    if text is None:
        raise PracticeFault(
            f"The record '{name}' was exported without its note, so there is nothing to read. Export it with the note."
        )
    if open_facts := [place for place, fact in record.walk() if fact.status == "proposed"]:
        raise PracticeFault(
            f"The record '{name}' is not confirmed: {open_facts[0].words()} and {len(open_facts) - 1} more are only "
            "proposed. Confirm them in the window first, for a key must be right."
        )
    key = Record(note=Note.of(text, record.note.name), remarks=record.remarks)
    for place, fact in record.walk():
        if (told := _told_by_note(place, fact)) is not None:
            key.put(place, told)
    case_id = identifier(name) or f"note-{note_hash(text)[:8]}"
    return Case(
        id=case_id,
        text=text,
        difficulty=difficulty,
        teaches=teaches,
        remark=remark,
        key=completed(key),
    )


def case_from_key(
    data: str | bytes, text: str, name: str, *, difficulty: int = 3, teaches: str = "", remark: str = ""
) -> Case:
    """Make a case of a note and its key in JSON: a full record, or the same shape with less in it.

    Every fact of a key counts as confirmed. Raises PracticeFault where the key does not fit the note.
    """
    try:
        raw: Any = json.loads(data)
        if not isinstance(raw, dict):
            raise ValueError("expected an object")
        remark = remark or str(raw.pop("remark", ""))
        raw.setdefault("format", FORMAT)
        raw.setdefault("format_version", FORMAT_VERSION)
        raw["note"] = Note.of(text, name).model_dump()
        record = load_record(raw)
    except (ValueError, RecursionError, RecordRefused) as fault:
        raise PracticeFault(f"The key of '{name}' cannot be used: {fault}") from None
    for _, fact in record.walk():
        fact.status = "confirmed" if fact.status == "proposed" else fact.status
    return case_of(record, name, difficulty=difficulty, teaches=teaches, remark=remark)


def identifier(name: str) -> str:
    """Return a name as it can stand in a file name and on a command line."""
    return re.sub(r"[^\w.-]+", "-", name.strip()).strip("-.")[:80]


def completed(key: Record) -> Record:
    """Return a key with a silent fact wherever the note leaves open what changes the work (resources/needs.toml)."""
    full = key.model_copy(deep=True)
    for place in needed_silences(key):
        if full.fact(place) is None:
            full.put(place, Fact(value=None, basis="silent", status="confirmed"))
    return full


def needed_silences(record: Record) -> Iterator[Address]:
    """Yield the addresses of what a therapist needs and the record does not give, by what it says itself."""
    least = tables().points.silence_least_weight
    for group in completeness_of(known.Case.of(record)).needs:
        for item in group.items:
            if item.state == "silent" and item.weight >= least:
                place = Address.parse(item.address)
                yield place if place.field else place.field_of(NERVE_FIELD)


def _unsettled(record: Record) -> Record:
    """Return the record with every fact proposed, so that rivals and doubts of the note count again."""
    copy = record.model_copy(deep=True)
    for _, fact in copy.walk():
        fact.status = "proposed"
    return copy


def _told_by_note(place: Address, fact: Fact) -> Fact | None:
    """Return a fact as the note alone gives it, or None where it gives nothing.

    Of several values the note states, the one that promises less stands and the others are its rivals.
    """
    if fact.status == "withdrawn":
        return None
    if not fact.said_by or fact.value is None:
        return fact.model_copy(deep=True)
    told = [Rival(value=fact.value, evidence=fact.evidence)] if fact.evidence else []
    told += fact.rivals
    if not told:
        return None
    spec = spec_of(place)
    weakest = next(t for t in told if not any(leaning(spec, t.value, other.value) == "over" for other in told))
    others = [t for t in told if t is not weakest]
    return Fact(value=weakest.value, status="confirmed", evidence=weakest.evidence, rivals=others)
