"""Attempts: a student's work on one case, saved at every step, and the exercise book that keeps them."""

import json
from collections.abc import Callable, Iterable, Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import Annotated, Any, Literal

import platformdirs
from pydantic import BaseModel, ConfigDict, Field, ValidationError, field_validator

from notereader.casebook import ChangedElsewhere, Edit, HistoryLine
from notereader.casebook.edits import apply_edit, content_at, fits
from notereader.exchange import ExportFault, write_file
from notereader.practice.cases import Case, identifier
from notereader.practice.faults import PracticeFault
from notereader.record import Address, Evidence, Fact, Note, Record, Rival, Value, check_value, source_of
from notereader.vocabulary import field_specs

ATTEMPT_FORMAT: Literal["notereader-attempt"] = "notereader-attempt"
ATTEMPT_VERSION = 1
ENDING = ".attempt.json"
# An attempt holds one record; a larger file is something else.
LARGEST_ATTEMPT = 16 * 1024 * 1024

# therapy: everything but the parts every note owes; whole: those too; again: only the facts in `asked`.
Scope = Literal["therapy", "whole", "again"]


class NamedContradiction(BaseModel):
    """A contradiction as the student named it: the facts that cannot both hold, and the student's own words."""

    model_config = ConfigDict(extra="forbid")

    places: list[str] = Field(min_length=1)
    words: str = ""

    @field_validator("places")
    @classmethod
    def _addresses(cls, places: list[str]) -> list[str]:
        return [Address.parse(place).text() for place in places]


class Attempt(BaseModel):
    """Everything a student entered on one case. `questions` are addresses, the most telling first."""

    model_config = ConfigDict(extra="forbid")

    format: Literal["notereader-attempt"] = ATTEMPT_FORMAT
    format_version: Annotated[int, Field(ge=1, le=ATTEMPT_VERSION)] = ATTEMPT_VERSION
    id: str = Field(min_length=1)
    case: str
    sha256: str
    student: str = ""
    scope: Scope = "therapy"
    asked: list[str] = []
    started_at: datetime
    changed_at: datetime
    handed_in_at: datetime | None = None
    revision: Annotated[int, Field(ge=0)] = 0
    record: Record = Record()
    contradictions: list[NamedContradiction] = []
    questions: list[str] = []
    read: list[str] = []

    @field_validator("asked", "questions")
    @classmethod
    def _addresses(cls, places: list[str]) -> list[str]:
        return [Address.parse(place).text() for place in places]

    def covers(self, place: Address) -> bool:
        """True where the exercise asks for the fact at an address."""
        if self.scope == "again":
            return place.text() in self.asked
        return self.scope == "whole" or place.group != "elements"


def new_attempt(case: Case, attempt_id: str, student: str = "", scope: Scope = "therapy") -> Attempt:
    """Return an empty attempt at a case."""
    now = datetime.now(UTC)
    record = Record(note=Note.of(case.text, case.id))
    return Attempt(
        id=attempt_id,
        case=case.id,
        sha256=case.sha256,
        student=student,
        scope=scope,
        started_at=now,
        changed_at=now,
        record=record,
    )


def dump_attempt(attempt: Attempt) -> str:
    """Return an attempt as JSON text. The note's text is left out; the words the student marked stay."""
    data = attempt.model_dump(mode="json")
    data["record"]["note"].pop("text", None)
    return json.dumps(data, ensure_ascii=False, indent=1) + "\n"


def load_attempt(path: Path) -> Attempt:
    """Read an attempt from its file. Raises PracticeFault naming the file and what is wrong."""
    try:
        with path.open("rb") as stream:
            data = stream.read(LARGEST_ATTEMPT + 1)
    except OSError as fault:
        raise PracticeFault(f"{path} could not be read: {fault.strerror or type(fault).__name__}.") from None
    if len(data) > LARGEST_ATTEMPT:
        raise PracticeFault(f"{path} is larger than {LARGEST_ATTEMPT // 2**20} MB and is no attempt.")
    try:
        raw: Any = json.loads(data)
    except (ValueError, RecursionError):
        raise PracticeFault(f"{path} is no attempt: it is not readable JSON.") from None
    return attempt_from(raw, str(path))


def attempt_from(raw: Any, name: str) -> Attempt:
    """Build an attempt from parsed JSON. Raises PracticeFault; `name` is the file named in it."""
    if not isinstance(raw, dict) or raw.get("format") != ATTEMPT_FORMAT:
        raise PracticeFault(f"{name} is no attempt of notereader.")
    version = raw.get("format_version")
    if isinstance(version, int) and version > ATTEMPT_VERSION:
        raise PracticeFault(f"{name} was written by a newer notereader (format {version}). Update this one to open it.")
    try:
        return Attempt.model_validate(raw)
    except ValidationError as fault:
        first = fault.errors(include_url=False, include_context=False)[0]
        where = ".".join(str(part) for part in first["loc"])
        raise PracticeFault(f"{name} is faulty at {where}: {first['msg']}.") from None


class OpenAttempt:
    """An attempt in work: every step is on the disk when the method returns.

    It has the face of a casebook's OpenCase (`record`, `state`, `revision`, `read`, apply(), apply_all(), refresh(),
    mark_read(), history(), confirm()), so that a window can show it with the same editors. `state` is 'in work', or
    'confirmed' once it is handed in. `record` is replaced, never changed.
    """

    def __init__(self, attempt: Attempt, case: Case, path: Path) -> None:
        if attempt.sha256 != case.sha256:
            raise PracticeFault(f"The attempt '{attempt.id}' was made on another note than the case '{case.id}' holds.")
        self.case = case
        self.path = path
        self._source = source_of(case.text)
        self._attempt = _with_text(attempt, case)

    @property
    def attempt(self) -> Attempt:
        """The attempt as it stands on the disk."""
        return self._attempt

    @property
    def record(self) -> Record:
        """What the student says of the note."""
        return self._attempt.record

    @property
    def revision(self) -> int:
        """How many steps were saved."""
        return self._attempt.revision

    @property
    def state(self) -> str:
        """'in work', or 'confirmed' once it is handed in."""
        return "confirmed" if self._attempt.handed_in_at else "in work"

    @property
    def read(self) -> set[str]:
        """The addresses of the facts that were shown to the student."""
        return set(self._attempt.read)

    def apply(self, edit: Edit, who: str = "") -> None:
        """Save one edit of the record; see apply_all()."""
        self.apply_all([edit], who)

    def apply_all(self, edits: Sequence[Edit], who: str = "") -> None:
        """Save several edits of the record in one step, all or none.

        Raises EditRefused for an impossible edit, ChangedElsewhere where another window changed the attempt,
        PracticeFault where it cannot be saved or is handed in already. Nothing is changed then.
        """
        record = self.record
        for edit in edits:
            if not fits(record, edit):
                raise self._changed_elsewhere(edit)
            record = apply_edit(record, edit)
        self._step(lambda attempt: setattr(attempt, "record", record), edits[0] if edits else None)

    def put(
        self,
        place: Address,
        value: Value,
        spans: Iterable[tuple[int, int]] = (),
        rivals: Sequence[Rival] = (),
    ) -> None:
        """Enter a value at a full address with the words that prove it, as (start, end) in code points of the note.

        Raises ValueRefused where the field cannot take the value, and as apply_all() does.
        """
        value = check_value(field_specs()[place.group][place.field], value)
        evidence = [self.words(start, end) for start, end in spans]
        self._enter(place, Fact(value=value, status="added", evidence=evidence, rivals=list(rivals)))

    def words(self, start: int, end: int) -> Evidence:
        """Return the note's text[start:end] as evidence. Raises PracticeFault outside the note."""
        if not 0 <= start < end <= len(self.case.text):
            raise PracticeFault(
                f"There are no words at {start} to {end}: the note has {len(self.case.text)} characters."
            )
        return Evidence.at(self.case.text, start, end, self._source)

    def say_silent(self, *places: Address) -> None:
        """Say that the note says nothing of these facts; they are saved in one step."""
        edits: list[Edit] = []
        record = self.record
        for place in places:
            for edit in _entering(record, place, Fact(value=None, basis="silent", status="added")):
                edits.append(edit)
                record = apply_edit(record, edit)
        self.apply_all(edits)

    def forget(self, place: Address) -> None:
        """Take out what was entered at an address; with an empty field the whole tendon, pulley or structure."""
        if content_at(self.record, place) is None:
            raise PracticeFault(f"Nothing was entered for {place.words()}.")
        if place.field:
            self.apply(Edit(place, content_at(self.record, place), None))
        else:
            self.apply(Edit.dropping(self.record, place))

    def name_contradiction(self, places: Sequence[Address], words: str = "") -> None:
        """Say that the note contradicts itself in these facts."""
        named = NamedContradiction(places=[place.text() for place in places], words=words)
        self._step(lambda attempt: attempt.contradictions.append(named))

    def drop_contradiction(self, number: int) -> None:
        """Take back the contradiction of that number, from 0."""
        if not 0 <= number < len(self._attempt.contradictions):
            raise PracticeFault(f"There is no contradiction number {number + 1}.")
        self._step(lambda attempt: attempt.contradictions.pop(number))

    def rank_questions(self, places: Sequence[Address]) -> None:
        """Say which facts to ask the surgeon about, the most telling first; replaces what was said before."""
        if len(set(places)) != len(places):
            raise PracticeFault("The same question was ranked twice. Give each once.")
        self._step(lambda attempt: setattr(attempt, "questions", [place.text() for place in places]))

    def mark_read(self, addresses: Iterable[str]) -> None:
        """Remember that these facts (Address.text()) were shown to the student."""
        wanted = set(addresses) - self.read
        if wanted and self.state == "in work":
            self._step(lambda attempt: attempt.read.extend(sorted(wanted)))

    def hand_in(self) -> None:
        """Close the attempt; nothing can be changed afterwards."""
        self._step(lambda attempt: setattr(attempt, "handed_in_at", datetime.now(UTC)))

    def confirm(self, who: str = "") -> None:
        """Hand in, as the window confirms a case."""
        self.hand_in()

    def refresh(self) -> bool:
        """Take over what another window saved; True if something changed."""
        stored = self._stored()
        if stored is None or stored.revision == self.revision:
            return False
        self._attempt = _with_text(stored, self.case)
        return True

    def history(self) -> list[HistoryLine]:
        """Return nothing: of an attempt only its last state is kept."""
        return []

    def _enter(self, place: Address, fact: Fact) -> None:
        self.apply_all(_entering(self.record, place, fact))

    def _step(self, change: Callable[[Attempt], object], edit: Edit | None = None) -> None:
        if self._attempt.handed_in_at:
            raise PracticeFault(
                "This attempt is handed in and cannot be changed. Take the case again to try once more."
            )
        stored = self._stored()
        if stored is not None and stored.revision != self.revision:
            raise self._changed_elsewhere(edit)
        changed = self._attempt.model_copy(deep=True)
        change(changed)
        changed.revision += 1
        changed.changed_at = max(datetime.now(UTC), changed.started_at)
        _write(changed, self.path)
        self._attempt = changed

    def _stored(self) -> Attempt | None:
        return load_attempt(self.path) if self.path.exists() else None

    def _changed_elsewhere(self, edit: Edit | None) -> ChangedElsewhere:
        stored = self._stored() or self._attempt
        return ChangedElsewhere(
            edit=edit,
            record=_with_text(stored, self.case).record,
            revision=stored.revision,
            who=stored.student,
            when=stored.changed_at,
        )


class ExerciseBook:
    """The attempts of one student in one folder, NAME.attempt.json each; the files can be handed to the teacher.

    `faults` are sentences about files that attempts() could not read; they stay where they are.
    """

    def __init__(self, folder: Path, student: str = "") -> None:
        self.folder = folder
        self.student = student
        self.faults: list[str] = []
        try:
            folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        except OSError as fault:
            raise PracticeFault(
                f"The folder {folder} cannot be made: {fault.strerror or type(fault).__name__}. Choose another one."
            ) from None

    def start(self, case: Case, scope: Scope = "therapy", asked: Iterable[Address] = ()) -> OpenAttempt:
        """Begin a new attempt at a case. `asked` names the facts of an attempt of scope 'again'."""
        number = 1
        while (path := self._path(f"{case.id}-{number}")).exists():
            number += 1
        attempt = new_attempt(case, f"{case.id}-{number}", self.student, scope)
        attempt.asked = [place.text() for place in asked]
        _write(attempt, path)
        return OpenAttempt(attempt, case, path)

    def open(self, attempt_id: str, case: Case) -> OpenAttempt:
        """Open an attempt again. Raises PracticeFault where there is none or it belongs to another note."""
        path = self._path(attempt_id)
        return OpenAttempt(load_attempt(path), case, path)

    def unfinished(self, case: Case, *, again: bool = False) -> OpenAttempt | None:
        """Return the attempt at this case that is not handed in yet, or None.

        With again=True the one that asks only for what was missed, else one that asks for everything.
        """
        for attempt in reversed(self.attempts()):
            open_yet = attempt.sha256 == case.sha256 and not attempt.handed_in_at
            if open_yet and (attempt.scope == "again") is again:
                return self.open(attempt.id, case)
        return None

    def attempts(self) -> list[Attempt]:
        """Return every attempt, the oldest first; what is damaged is left out and told in `faults`."""
        found, self.faults = [], []
        for path in sorted(self.folder.glob(f"*{ENDING}")):
            try:
                found.append(load_attempt(path))
            except PracticeFault as fault:
                self.faults.append(str(fault))
        return sorted(found, key=lambda attempt: (attempt.started_at, attempt.id))

    def _path(self, attempt_id: str) -> Path:
        return self.folder / f"{identifier(attempt_id)}{ENDING}"


def default_folder() -> Path:
    """Return where exercise books lie when nothing else is asked for: the platform's folder for a person's data."""
    return Path(platformdirs.user_data_dir("notereader", appauthor=False)) / "practice"


def exercise_book(student: str = "", folder: Path | None = None) -> ExerciseBook:
    """Return the exercise book of a student, made where it is missing."""
    return ExerciseBook((folder or default_folder()) / (identifier(student) or "me"), student)


def _entering(record: Record, place: Address, fact: Fact) -> list[Edit]:
    entry = place.entry()
    making = [] if record.facts_of(entry) is not None else [Edit(entry, None, {})]
    return [*making, Edit(place, record.fact(place), fact)]


def _with_text(attempt: Attempt, case: Case) -> Attempt:
    whole = attempt.model_copy(deep=True)
    whole.record.note = Note.of(case.text, case.id)
    return whole


def _write(attempt: Attempt, path: Path) -> None:
    try:
        write_file(path, dump_attempt(attempt))
    except ExportFault as fault:
        raise PracticeFault(str(fault)) from None
