"""A fault of a resource file in plain words, and the faults of pydantic's models turned into such words."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from notereader.vocabulary.places import ResourceFault, resource_file

# What pydantic says in words that only programmers know.
_PLAIN = {
    "tuple_type": "it should be a list in brackets",
    "list_type": "it should be a list in brackets",
    "frozen_set_type": "it should be a list in brackets",
    "dict_type": "it should be a table",
    "model_type": "it should be a table",
    "string_type": "it should be text in quotation marks",
    "bool_type": "it should be true or false",
}

_Model = TypeVar("_Model", bound=BaseModel)


@dataclass(frozen=True, slots=True, order=True)
class EntryFault:
    """What is wrong with one entry of a resource file and what to do; `wrong` and `mend` are parts of a sentence."""

    file: str
    entry: str
    wrong: str
    mend: str

    def __str__(self) -> str:
        return f"{self.file}: {self.entry}: {self.wrong}. To mend it: {self.mend}."


def model_faults(file: str, entry: str, model: type[BaseModel], values: object) -> list[EntryFault]:
    """Return what a model refuses in the values of an entry."""
    try:
        model.model_validate(values)
    except ValidationError as fault:
        return [_in_words(file, entry, each) for each in fault.errors(include_url=False)]
    return []


def made(file: str, entry: str, model: type[_Model], values: object) -> _Model:
    """Return the values of an entry as their model. Raises ResourceFault with the first thing that is wrong."""
    try:
        return model.model_validate(values)
    except ValidationError as fault:
        raise ResourceFault(str(_in_words(file, entry, fault.errors(include_url=False)[0]))) from None


def listed(file: str, table: str) -> list[Any]:
    """Return the entries [[table]] of a resource file. Raises ResourceFault where there are none."""
    entries = resource_file(file).get(table)
    if not isinstance(entries, list) or not entries:
        raise ResourceFault(f"{file}: there is no [[{table}]] in it. Put the entries back or install again.")
    return entries


def _in_words(file: str, entry: str, fault: Any) -> EntryFault:
    place, key = _place(entry, fault["loc"])
    kind = fault["type"]
    if kind == "extra_forbidden":
        return EntryFault(file, place, f"'{key}' is no key that is known here", "correct its spelling or take it out")
    if kind == "missing":
        return EntryFault(file, place, f"'{key}' is missing", f"add a line: {key} = ...")
    wrong = _PLAIN.get(kind) or str(fault["msg"]).removeprefix("Value error, ")
    wrong = wrong[:1].lower() + wrong[1:]
    if not fault["loc"]:
        return EntryFault(file, entry, wrong, "change one of the values it names")
    given = f" (it is {fault['input']!r:.60})" if not isinstance(fault["input"], dict) else ""
    return EntryFault(file, place, f"'{key}': {wrong}{given}", "change that value")


def _place(entry: str, loc: Sequence[str | int]) -> tuple[str, str]:
    """Return where a fault lies and which key it is about; numbers of entries count from 1, as people do."""
    named = [f"number {part + 1}" if isinstance(part, int) else str(part) for part in loc]
    if not named:
        return entry, ""
    *before, key = named
    if key.startswith("number ") and before:
        key = f"{before.pop()}, {key}"
    return ", ".join(part for part in (entry, *before) if part) or "the file", key
