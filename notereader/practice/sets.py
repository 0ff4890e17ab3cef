"""Case sets: a folder or a single file with cases that a teacher can hand out, and the samples as the ready set."""

import json
import tomllib
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from notereader.exchange import ExportFault, write_file
from notereader.intake import IntakeRefused, read_file
from notereader.practice.cases import Case, case_from_key, case_of
from notereader.practice.faults import PracticeFault
from notereader.record import RecordRefused, load_record
from notereader.vocabulary import samples_folder

SET_FORMAT: Literal["notereader-cases"] = "notereader-cases"
SET_VERSION = 1
# The file in a folder that says how hard each case is and what it teaches.
ABOUT = "cases.toml"
# The folder of the samples with the notes that contradict themselves.
CONTRADICTORY = "contradictions"
# No set of notes comes near this; a larger file is something else.
LARGEST_SET = 64 * 1024 * 1024


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid")


class CaseSet(_Strict):
    """Cases under one title, in the order from plain to hard."""

    format: Literal["notereader-cases"] = SET_FORMAT
    format_version: Annotated[int, Field(ge=1)] = SET_VERSION
    title: str = ""
    cases: list[Case] = []

    def case(self, case_id: str) -> Case:
        """Return a case by its name, or by a part that only one has. Raises PracticeFault naming those there are."""
        exact = [case for case in self.cases if case.id == case_id]
        near = exact or [case for case in self.cases if case_id and case_id.casefold() in case.id.casefold()]
        if len(near) == 1:
            return near[0]
        named = ", ".join(case.id for case in near or self.cases) or "none"
        what = "is the name of several cases" if near else "is no case of this set"
        raise PracticeFault(f"'{case_id}' {what}. Choose one of: {named}.")

    def of_note(self, sha256: str) -> Case | None:
        """Return the case with this note, or None."""
        return next((case for case in self.cases if case.sha256 == sha256), None)


class _CaseAbout(_Strict):
    difficulty: Annotated[int, Field(ge=1, le=5)] = 3
    teaches: str = ""


class _About(_Strict):
    title: str = ""
    case: dict[str, _CaseAbout] = {}


def ready_set() -> CaseSet:
    """Return the samples that come with the program, those that contradict themselves among them."""
    samples = load_set(samples_folder())
    cases = [*samples.cases, *load_set(samples_folder() / CONTRADICTORY).cases]
    return CaseSet(title=samples.title, cases=sorted(cases, key=_plain_first))


def load_set(path: Path) -> CaseSet:
    """Read a set from a folder (NAME.txt with its key NAME.json, or whole records) or from a single file.

    Raises PracticeFault naming the file that cannot be used.
    """
    found = _from_folder(path) if path.is_dir() else _from_file(path)
    found.cases.sort(key=_plain_first)
    _refuse_twins(found.cases, path)
    if not found.cases:
        raise PracticeFault(f"{path} holds no case. A case is a note NAME.txt with its key NAME.json, or a record.")
    return found


def save_set(cases: Sequence[Case], path: Path, title: str = "", *, keys: bool = True) -> None:
    """Write cases as a single file to hand out; with keys=False students can read them and not mark them.

    Raises PracticeFault where two cases have one name or the file cannot be written.
    """
    _refuse_twins(cases, path)
    handed = [case if keys else case.without_key() for case in cases]
    whole = CaseSet(title=title, cases=handed)
    try:
        write_file(path, json.dumps(whole.model_dump(mode="json"), ensure_ascii=False, indent=1) + "\n")
    except ExportFault as fault:
        raise PracticeFault(str(fault)) from None


def _plain_first(case: Case) -> tuple[int, str]:
    return case.difficulty, case.id


def _refuse_twins(cases: Iterable[Case], path: Path) -> None:
    seen: set[str] = set()
    for case in cases:
        if case.id in seen:
            raise PracticeFault(f"{path}: two cases are called '{case.id}'. Give one of them another name.")
        seen.add(case.id)


def _content(path: Path) -> bytes:
    try:
        with path.open("rb") as stream:
            data = stream.read(LARGEST_SET + 1)
    except OSError as fault:
        raise PracticeFault(f"{path} could not be read: {fault.strerror or type(fault).__name__}.") from None
    if len(data) > LARGEST_SET:
        raise PracticeFault(f"{path} is larger than {LARGEST_SET // 2**20} MB and is no set of cases.")
    return data


def _from_file(path: Path) -> CaseSet:
    data = _content(path)
    try:
        raw = json.loads(data)
    except (ValueError, RecursionError):
        raise PracticeFault(f"{path} is no set of cases: it is not readable JSON. Ask for the file again.") from None
    if isinstance(raw, dict) and raw.get("format") == SET_FORMAT:
        return _checked_set(raw, path)
    try:
        return CaseSet(cases=[case_of(load_record(raw), path.stem)])
    except (RecordRefused, PracticeFault) as fault:
        raise PracticeFault(f"{path}: {fault}") from None


def _checked_set(raw: dict[str, object], path: Path) -> CaseSet:
    version = raw.get("format_version")
    if isinstance(version, int) and version > SET_VERSION:
        raise PracticeFault(f"{path} was written by a newer notereader (format {version}). Update this one to open it.")
    try:
        found = CaseSet.model_validate(raw)
        for case in found.cases:
            if case.key is not None:
                # The record's own door checks that every quote stands where it should.
                case.key = load_record(case.key.model_dump(mode="json"))
                if case.key.note.sha256 != case.sha256:
                    raise PracticeFault(f"{path}: the key of '{case.id}' belongs to another note.")
    except ValidationError as fault:
        first = fault.errors(include_url=False, include_context=False)[0]
        where = ".".join(str(part) for part in first["loc"])
        raise PracticeFault(f"{path} is faulty at {where}: {first['msg']}. Ask for the file again.") from None
    except RecordRefused as fault:
        raise PracticeFault(f"{path}: {fault}") from None
    return found


def _from_folder(folder: Path) -> CaseSet:
    about = _about(folder)
    cases = []
    for path in sorted(folder.glob("*.json")):
        told = about.case.get(path.stem, _CaseAbout())
        cases.append(_case_in(path, told))
    return CaseSet(title=about.title or folder.name, cases=cases)


def _case_in(path: Path, told: _CaseAbout) -> Case:
    note = path.with_suffix(".txt")
    data = _content(path)
    try:
        if note.exists():
            text = read_file(note).text
            return case_from_key(data, text, path.stem, difficulty=told.difficulty, teaches=told.teaches)
        return case_of(load_record(data), path.stem, difficulty=told.difficulty, teaches=told.teaches)
    except (RecordRefused, PracticeFault, IntakeRefused) as fault:
        raise PracticeFault(f"{path}: {fault}") from None


def _about(folder: Path) -> _About:
    path = folder / ABOUT
    if not path.exists():
        return _About()
    try:
        return _About.model_validate(tomllib.loads(_content(path).decode("utf-8")))
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as fault:
        raise PracticeFault(f"{path}: not valid TOML: {fault}. Mend that line.") from None
    except ValidationError as fault:
        first = fault.errors(include_url=False, include_context=False)[0]
        where = ".".join(str(part) for part in first["loc"])
        raise PracticeFault(f"{path}: {where}: {first['msg']}. Mend that entry.") from None
