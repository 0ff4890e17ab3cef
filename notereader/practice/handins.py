"""What students hand in: attempts, answer sheets and exported records, taken in for marking."""

import json
import tempfile
from pathlib import Path

from notereader.casebook import EditRefused
from notereader.practice.attempts import (
    ATTEMPT_FORMAT,
    Attempt,
    ExerciseBook,
    OpenAttempt,
    Scope,
    attempt_from,
    new_attempt,
)
from notereader.practice.cases import Case
from notereader.practice.faults import PracticeFault
from notereader.practice.sets import CaseSet
from notereader.practice.sheet import enter_line
from notereader.record import FORMAT, RecordRefused, ValueRefused, load_record

LARGEST_HANDIN = 16 * 1024 * 1024


def take_in(path: Path, cases: CaseSet, scope: Scope = "therapy") -> tuple[Attempt, Case]:
    """Read what a student handed in and return it with its case.

    It may be an attempt, a record exported by the window, or a text file of answer lines that begins with
    'case: NAME' and 'student: NAME'. Raises PracticeFault naming the file, and for an answer line its number.
    """
    text = _text(path)
    try:
        raw = json.loads(text)
    except (ValueError, RecursionError):
        return _from_sheet(text, path, cases, scope)
    form = raw.get("format") if isinstance(raw, dict) else None
    if form == ATTEMPT_FORMAT:
        attempt = attempt_from(raw, str(path))
        return attempt, _case_for(attempt.sha256, attempt.case, path, cases)
    if form == FORMAT:
        return _from_record(raw, path, cases, scope)
    raise PracticeFault(f"{path} is neither an attempt nor a record nor a sheet of answers.")


def _text(path: Path) -> str:
    try:
        with path.open("rb") as stream:
            data = stream.read(LARGEST_HANDIN + 1)
    except OSError as fault:
        raise PracticeFault(f"{path} could not be read: {fault.strerror or type(fault).__name__}.") from None
    if len(data) > LARGEST_HANDIN:
        raise PracticeFault(f"{path} is larger than {LARGEST_HANDIN // 2**20} MB and holds no answers.")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise PracticeFault(f"{path} is no text in UTF-8. Save it as UTF-8 and try again.") from None


def _case_for(sha256: str, name: str, path: Path, cases: CaseSet) -> Case:
    case = cases.of_note(sha256)
    if case is None:
        raise PracticeFault(f"{path}: the case '{name}' is not in this set, or its note was changed. Use its own set.")
    return case


def _from_record(raw: dict[str, object], path: Path, cases: CaseSet, scope: Scope) -> tuple[Attempt, Case]:
    try:
        record = load_record(raw)
    except RecordRefused as fault:
        raise PracticeFault(f"{path}: {fault}") from None
    case = _case_for(record.note.sha256, record.note.name, path, cases)
    attempt = new_attempt(case, path.stem, record.review.reviewer or path.stem, scope)
    attempt.record = record
    attempt.handed_in_at = record.review.confirmed_at or attempt.started_at
    return attempt, case


def _from_sheet(text: str, path: Path, cases: CaseSet, scope: Scope) -> tuple[Attempt, Case]:
    head: dict[str, str] = {}
    lines: list[tuple[int, str]] = []
    for number, line in enumerate(text.splitlines(), 1):
        name, colon, rest = line.strip().partition(":")
        if colon and name.casefold() in ("case", "student") and name.casefold() not in head:
            head[name.casefold()] = rest.strip()
        elif line.strip() and not line.lstrip().startswith("#"):
            lines.append((number, line))
    if "case" not in head:
        raise PracticeFault(f"{path} does not say which case it answers. Begin it with a line such as: case: 02-terse")
    case = cases.case(head["case"])
    with tempfile.TemporaryDirectory() as folder:
        attempt = ExerciseBook(Path(folder), head.get("student") or path.stem).start(case, scope)
        _enter_all(attempt, lines, path)
        attempt.hand_in()
        return attempt.attempt.model_copy(update={"id": path.stem}), case


def _enter_all(attempt: OpenAttempt, lines: list[tuple[int, str]], path: Path) -> None:
    for number, line in lines:
        try:
            enter_line(attempt, line)
        except (PracticeFault, ValueRefused, EditRefused) as fault:
            raise PracticeFault(f"{path}, line {number}: {fault}") from None
