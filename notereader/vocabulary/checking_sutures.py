"""Faults of stitches.toml, materials.toml and sizes.toml."""

import re
from collections.abc import Iterable
from itertools import pairwise
from typing import Any

from pydantic import BaseModel

from notereader.vocabulary.checking_words import phrase_faults, shared_faults
from notereader.vocabulary.faults import EntryFault, model_faults
from notereader.vocabulary.sutures import Material, Size, Stitch

# Values of the record that are read from more than a name, so that they need no entry of their own.
_NO_ENTRY = frozenset(["other", "simple", "anchor"])
_USP = re.compile(r"(?:[1-9]|1[0-2])-0|[0-9]")


def stitch_faults(raw: dict[str, Any], values: frozenset[str]) -> list[EntryFault]:
    """Return the faults of the parsed stitches.toml; `values` are those of repairs.stitch in fields.toml."""
    file = "stitches.toml"
    entries, faults = _entries(file, raw, "stitch", "name", Stitch)
    faults += _against_values(file, "stitch", entries, values, "repairs.stitch")
    words = {name: [name, *entry.get("aliases", [])] for name, entry in entries.items()}
    faults += _worded(file, "stitch", words)
    for name, entry in entries.items():
        strands = entry.get("strands")
        if strands is not None and strands % 2:
            wrong = f"{strands} strands: core strands cross the cut in pairs"
            faults.append(EntryFault(file, f'stitch "{name}"', wrong, "give an even count, or none where none follows"))
    return faults


def material_faults(raw: dict[str, Any], values: frozenset[str]) -> list[EntryFault]:
    """Return the faults of the parsed materials.toml; `values` are those of repairs.material in fields.toml."""
    file = "materials.toml"
    entries, faults = _entries(file, raw, "material", "name", Material)
    faults += _against_values(file, "material", entries, values, "repairs.material")
    words = {name: list(entry.get("words", [])) for name, entry in entries.items()}
    shorts = {name: list(entry.get("after_size", [])) for name, entry in entries.items()}
    faults += _worded(file, "material", {name: [*found, *shorts[name]] for name, found in words.items()})
    for name, found in words.items():
        if not found:
            mend = "list the words by which notes name it"
            faults.append(EntryFault(file, f'material "{name}"', "the list of words is empty", mend))
    return faults


def size_faults(raw: dict[str, Any]) -> list[EntryFault]:
    """Return the faults of the parsed sizes.toml: every size finer than the next, in name, gauge and diameter."""
    file = "sizes.toml"
    entries, faults = _entries(file, raw, "size", "usp", Size)
    for usp, entry in entries.items():
        place = f'size "{usp}"'
        if not _USP.fullmatch(usp):
            faults.append(EntryFault(file, place, "this is no USP size", "write it as 4-0, or 0, 1, 2"))
        if entry["low_mm"] >= entry["high_mm"]:
            faults.append(EntryFault(file, place, "low_mm is not below high_mm", "correct the limits of the diameter"))
    for (finer, one), (thicker, two) in pairwise(entries.items()):
        place = f'sizes "{finer}" and "{thicker}"'
        if _USP.fullmatch(finer) and _USP.fullmatch(thicker) and _grade(finer) >= _grade(thicker):
            faults.append(EntryFault(file, place, "they are out of order", "list the sizes finest first"))
        if one["metric"] >= two["metric"]:
            faults.append(EntryFault(file, place, "the metric gauge does not rise", "correct one of the gauges"))
        if one["high_mm"] >= two["low_mm"]:
            faults.append(EntryFault(file, place, "their diameters overlap", "correct high_mm or low_mm"))
    return faults


def _grade(usp: str) -> int:
    """Return a number that rises with thickness: 12-0 is -12, 0 is 0, 2 is 2."""
    return -int(usp.removesuffix("-0")) if usp.endswith("-0") else int(usp)


def _entries(
    file: str, raw: dict[str, Any], table: str, key: str, model: type[BaseModel]
) -> tuple[dict[str, dict[str, Any]], list[EntryFault]]:
    """Return the sound entries of a list of tables by name, and the faults of the others."""
    found: dict[str, dict[str, Any]] = {}
    faults = [
        EntryFault(file, f"[{other}]", "nothing here is read under this name", f"begin each entry with [[{table}]]")
        for other in raw.keys() - {table, "source"}
    ]
    listed = raw.get(table, [])
    for number, entry in enumerate(listed if isinstance(listed, list) else [listed], 1):
        name = entry.get(key) if isinstance(entry, dict) else None
        place = f'{table} "{name}"' if isinstance(name, str) else f"[[{table}]] number {number}"
        refused = model_faults(file, place, model, entry)
        faults += refused
        if isinstance(name, str) and name in found:
            faults.append(EntryFault(file, place, "it is entered twice", "put both into one entry"))
        elif not refused and isinstance(name, str):
            found[name] = entry
    return found, faults


def _against_values(
    file: str, table: str, entries: Iterable[str], values: frozenset[str], field: str
) -> list[EntryFault]:
    """Return the entries that are no values of the field and the values without an entry."""
    faults = []
    for name in sorted(set(entries) - values):
        mend = f"correct the name, or add it to the values of {field} in fields.toml"
        faults.append(EntryFault(file, f'{table} "{name}"', f"it is no value of {field}", mend))
    for name in sorted(values - set(entries) - _NO_ENTRY):
        mend = "add an entry, or mend the one that is faulty"
        faults.append(EntryFault(file, f'{table} "{name}"', f"{field} has this value and no sound entry here", mend))
    return faults


def _worded(file: str, table: str, words: dict[str, list[str]]) -> list[EntryFault]:
    faults = [
        EntryFault(file, f'{table} "{name}"', wrong, mend)
        for name, found in words.items()
        for wrong, mend in phrase_faults(found)
    ]
    for word, names in shared_faults(words).items():
        both = " and ".join(f'"{name}"' for name in names)
        faults.append(EntryFault(file, f"{table} {both}", f"'{word}' stands under both", "leave it under one of them"))
    return faults
