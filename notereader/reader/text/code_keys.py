"""Codes that a key explains without a sign between: 'Codes: C cut, 0 no damage; then / R joined' above 'FCR C/R'.

Where a name of a line has such codes beside it, their meanings are read behind the name. What a name or a code stands
for is not guessed: a line that holds another code stays as it is.
"""

import re
from dataclasses import dataclass, field
from functools import cache

from notereader.reader.text.writing_out import Written
from notereader.vocabulary.wordlists import word_list

_KEY = re.compile(r"^[ \t]*(?P<label>[A-Za-z]+(?: [a-z]+)?) ?[:\-\u2013][ \t]*(?P<items>[^\n]+)", re.M)
_PARTS = re.compile(r"[,;.]|[ \t]/[ \t](?=[A-Z])")
_JOINS = frozenset(["then", "and", "or", "plus"])
_ITEM = re.compile(r"(?:(?:then|and|or|plus)[ \t]+)?/?[ \t]*(?P<code>[A-Z]{1,2}|[0*+-])[ \t]+(?P<meaning>[a-z][^,;]*)")
_FEWEST = 3  # codes
_WIDE = re.compile(r"[ \t]{2,}|[ \t]*\|[ \t]*|\t|[ \t]*;[ \t]*|,[ \t]+(?![^(]*\))")
_BETWEEN = re.compile(r"[ /+.-]+")
_TAIL = re.compile(r"[ \t]*(?P<tail>\([^()\n]*\))?$")
_BESIDE = re.compile(r"(?P<name>[^\W\d][\w. -]*?\w?)[ \t]*(?:[:=]|\.{2,})?[ \t]+(?P<codes>\S+(?: *[/+] *\S+)*)$")
_INITIALS = {"t": "thumb", "i": "index", "m": "middle", "r": "ring"}
_LAST = frozenset("sl")
_MANY = 2  # fingers of a row

Key = dict[str, str]


@dataclass(slots=True)
class _Row:
    """A line as far as it is read: the name that opens it, and its names with the meanings of their codes."""

    lead: str = ""
    told: list[tuple[str, str]] = field(default_factory=list)


def code_keys(text: str) -> list[Written]:
    """Return the lines of a note whose codes its key explains, as they are to be read."""
    found = next((m for m in _KEY.finditer(text) if _is_key(m)), None)
    if found is None:
        return []
    key = _codes(found["items"])
    made = [Written(found.start(), found.end(), "")]
    for line in re.compile(r"[^\n]+").finditer(text, found.end()):
        told = _line(line.group(), key)
        if told:
            made.append(Written(line.start(), line.end(), told))
    return made if len(made) > 1 else []


def _is_key(line: re.Match[str]) -> bool:
    opens = line["label"].split()[0].lower() in word_list("code_keys", "labels")
    return opens and "=" not in line["items"] and len(_codes(line["items"])) >= _FEWEST


def _codes(items: str) -> Key:
    """Return the codes of a key with their meanings; none where one of its items explains no code."""
    parts = (item.strip() for item in _PARTS.split(items))
    found = [_ITEM.fullmatch(item) for item in parts if item and item not in _JOINS]
    return {m["code"]: m["meaning"].strip() for m in found if m is not None} if all(found) else {}


def _line(line: str, key: Key) -> str:
    """Return a line with its codes written out behind their names; '' where it holds anything else."""
    row = _Row()
    cells = [cell.strip() for cell in _WIDE.split(line.strip()) if cell.strip()]
    for n, cell in enumerate(cells):
        own = _meaning(cell, key)
        if own and row.lead:
            row.told.append((row.lead, own))
            row.lead = ""
        elif not own and (beside := _beside(cell, key)) is not None:
            row.told.append(beside)
        elif not own and (not row.lead or n == 1) and cell[0].isalpha() and n + 1 < len(cells):
            row.lead = f"{row.lead} {cell}".strip()
        else:
            return ""
    names = _names(row)
    return "; ".join(f"{name}: {told}" for name, (_, told) in zip(names, row.told, strict=True)) + "." if names else ""


def _meaning(cell: str, key: Key) -> str:
    """Return what a cell that holds nothing but codes means, with a remark in brackets behind them."""
    tail = _TAIL.search(cell)
    bare = cell[: tail.start()] if tail else cell
    codes = _BETWEEN.split(bare) if bare not in key else [bare]
    if not codes or any(code not in key for code in codes):
        return ""
    return " ".join([", ".join(key[code] for code in codes), *([tail["tail"]] if tail and tail["tail"] else [])])


def _beside(cell: str, key: Key) -> tuple[str, str] | None:
    """'i C/R', 'FDP index: P/N (one quarter)': a name with its codes in the same cell."""
    tail = _TAIL.search(cell)
    bare = cell[: tail.start()] if tail else cell
    parted = _BESIDE.match(bare)
    told = _meaning(cell[parted.start("codes") :], key) if parted else ""
    return (parted["name"].strip(" .:="), told) if parted and told else None


def _names(row: _Row) -> list[str]:
    """Return the names of a row, with the tendon that opens it before those of its fingers."""
    names = [_short_names().get(name.lower(), name) if name.isupper() else name for name, _ in row.told]
    if not row.lead:
        return names
    if len(names) < _MANY:
        return []
    fingers = _fingers(names)
    return [f"{row.lead} {finger}" for finger in fingers or names]


@cache
def _short_names() -> dict[str, str]:
    """Return the short names that only such a line makes sure of: 'RA C/R' is an artery, 'RA' at the end a writer."""
    return dict(entry.split(" ", 1) for entry in word_list("code_keys", "short_names"))


def _fingers(names: list[str]) -> list[str]:
    """'i', 'm', 'r', 's': the fingers that the initials of a row stand for; 'l' is the little one only as the last."""
    if any(len(name) != 1 for name in names):
        return []
    letters = [name.lower() for name in names]
    last = ["small"] if letters[-1] in _LAST and len(letters) > 1 else []
    known = [_INITIALS.get(letter, "") for letter in (letters[:-1] if last else letters)]
    return [*known, *last] if all(known) else []
