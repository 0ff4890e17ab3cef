"""Notes below a grid that its cells point to by a star: 'FDS index   cut   see *' above '*  each: 2-strand, 4-0 ...'.

What the note says is read where the star stands.
Where a mark opens several lines it is a bullet and stands for nothing.
"""

import re

from notereader.reader.text.writing_out import Written

_MARKS = r"\*{1,3}|\u2020|\u2021|\u00a7"
_NOTE = re.compile(
    rf"^[ \t]*(?P<mark>{_MARKS})[ \t]*(?:(?:each|all|both|these)\b[ \t]*:)?[ \t]*"
    r"(?P<said>[^\s*=][^\n]*(?:\n[ \t]{2,}(?![*|+])\S[^\n]*)*)",
    re.MULTILINE | re.IGNORECASE,
)
_POINTER = re.compile(
    rf"(?:(?<=\|)[ \t]*|\b(?:see|as|per|note)[ \t]+)(?P<mark>{_MARKS})(?=[ \t]*(?:[|;,.)]|$)|[ \t]{{2}})", re.MULTILINE
)


def starred_notes(text: str) -> list[Written]:
    """Return what is to be read in the place of the marks of a note's cells, and nothing where it points to none."""
    pointers = list(_POINTER.finditer(text)) if any(mark in text for mark in "*\u2020\u2021\u00a7") else []
    if not pointers:
        return []
    notes: dict[str, list[re.Match[str]]] = {}
    for note in _NOTE.finditer(text):
        notes.setdefault(note["mark"], []).append(note)
    single = {mark: found[0] for mark, found in notes.items() if len(found) == 1}
    told = [p for p in pointers if p["mark"] in single and p.start() < single[p["mark"]].start()]
    used = {p["mark"]: single[p["mark"]] for p in told}
    in_cells = [Written(p.start(), p.end(), " " + " ".join(single[p["mark"]]["said"].split())) for p in told]
    return [*in_cells, *(Written(note.start("mark"), note.end(), "") for note in used.values())]
