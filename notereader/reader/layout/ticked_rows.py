"""Several fields of a form on one line: 'FDP cut [x] part [ ] intact [ ]   FDS cut [ ] part [ ] intact [x]'.

What parts them is the label of each, the name of a tendon, a pulley or a finger or words with a colon; a bar or a wide
gap before such a label; or that an option comes again: 'cut [x] intact [ ]    cut [ ] intact [x]'.
"""

import re
from bisect import bisect_left
from dataclasses import dataclass, field
from itertools import pairwise

from notereader.reader.layout.form_marks import EDGES, FEWEST_OPTIONS, LONGEST_OPTION, MARK, Span, TickedField

_PARTING = re.compile(r"\s{3,}|\s*[|;\t]+\s*")
_LABELLED = re.compile(r".*:\s*", re.DOTALL)
_SAYS = re.compile(r"[^\W_]")


@dataclass(slots=True)
class _Field:
    begin: int  # of its label, or where it has none of its first option
    named: bool = False
    marks: list[re.Match[str]] = field(default_factory=list)
    options: list[Span] = field(default_factory=list)
    told: list[str] = field(default_factory=list)

    def add(self, text: str, mark: re.Match[str], option: Span) -> None:
        self.marks.append(mark)
        self.options.append(option)
        self.told.append(_words(text, option))


class TickedRows:
    """Reads the lines of a note; `names` are the tendons, pulleys and fingers named in it, in order."""

    def __init__(self, text: str, names: list[Span]) -> None:
        self._text = text
        self._names = names
        self._starts = [a for a, _ in names]

    def fields(self, begin: int, end: int) -> list[TickedField]:
        """Return the fields of a line, or none where no name opens one of them."""
        marks = list(MARK.finditer(self._text, begin, end))
        if len(marks) < FEWEST_OPTIONS:
            return []
        pieces = [
            (begin, marks[0].start()),
            *((a.end(), b.start()) for a, b in pairwise(marks)),
            (marks[-1].end(), end),
        ]
        found = (self._leading(marks, pieces) if self._is_label(pieces[0]) else None) or self._trailing(marks, pieces)
        if found is None or not all(map(_is_field, found)) or not any(each.named for each in found):
            return []
        return [_made(self._text, each) for each in found]

    def _leading(self, marks: list[re.Match[str]], pieces: list[Span]) -> list[_Field] | None:
        """'FDP [x] cut [ ] intact   FDS [ ] cut [x] intact'."""
        fields = [_Field(pieces[0][0], named=self._has_name(pieces[0]))]
        for mark, piece in zip(marks, pieces[1:], strict=True):
            option, label = self._option_and_label(piece)
            if not _words(self._text, option):
                return None
            if _words(self._text, option) in fields[-1].told:
                fields.append(_Field(mark.start()))
            fields[-1].add(self._text, mark, option)
            if _words(self._text, label):
                fields.append(_Field(label[0], named=self._has_name(label)))
        return fields if fields[-1].marks else fields[:-1]

    def _trailing(self, marks: list[re.Match[str]], pieces: list[Span]) -> list[_Field] | None:
        """'FDP cut [x] intact [ ]   FDS cut [ ] intact [x]'."""
        rest = pieces[-1]
        if _words(self._text, rest) and _PARTING.match(self._text, *rest) is None:
            return None
        fields: list[_Field] = []
        for mark, piece in zip(marks, pieces, strict=False):
            label, option = self._label_and_option(piece)
            if not _words(self._text, option):
                return None
            labelled = bool(_words(self._text, label))
            if not fields or labelled or _words(self._text, option) in fields[-1].told:
                fields.append(_Field(label[0], named=self._has_name(label)))
            fields[-1].add(self._text, mark, option)
        return fields

    def _option_and_label(self, piece: Span) -> tuple[Span, Span]:
        """Part 'cut   FDS' and 'cut FDS:' into the option of one field and the label of the next."""
        i, j = _trimmed(self._text, piece)
        parting = _PARTING.search(self._text, i, j)
        if parting is not None:
            return (i, parting.start()), (parting.end(), j)
        named = [a for a, b in self._named(i, j) if not self._says_beside((a, j))]
        cut = next((a for a in named if self._says_beside((i, a))), j)
        return (i, cut), (cut, j)

    def _label_and_option(self, piece: Span) -> tuple[Span, Span]:
        """Part 'FDS cut' and 'FDS: cut' into a label and the first option of its field."""
        i, j = _trimmed(self._text, piece)
        labelled = _LABELLED.match(self._text, i, j)
        cut = told = labelled.end() if labelled is not None else i
        for a, b in self._named(cut, j):
            if not _SAYS.search(self._text, cut, a):
                cut = b
        cut = cut if _SAYS.search(self._text, cut, j) else told  # 'FDP [x] FDS [ ]': a name may be an option
        return (i, cut), (cut, j)

    def _is_label(self, piece: Span) -> bool:
        """Tell whether what stands before the first mark of a line names what is ticked, and is no option."""
        told = self._text[piece[0] : piece[1]]
        closed = told.rstrip().endswith(("?", "..", "|")) or bool(_PARTING.search(told.lstrip()[-3:]))
        return closed or not self._says_beside((piece[0] + told.rfind(":") + 1, piece[1]))

    def _named(self, i: int, j: int) -> list[Span]:
        """Return the names in characters i to j."""
        return self._names[bisect_left(self._starts, i) : bisect_left(self._starts, j)]

    def _has_name(self, span: Span) -> bool:
        return bool(self._named(*span))

    def _says_beside(self, span: Span) -> bool:
        """Tell whether anything but names stands in characters."""
        edges = [span[0], *(at for name in self._named(*span) for at in name), span[1]]
        return any(a < b and _SAYS.search(self._text, a, b) for a, b in zip(edges[::2], edges[1::2], strict=True))


def _is_field(each: _Field) -> bool:
    ticked = sum(mark.group("ticked") is not None for mark in each.marks)
    plain = all(":" not in told and len(told.split()) <= LONGEST_OPTION for told in each.told)
    return ticked <= 1 and plain and len(set(each.told)) == len(each.told) >= FEWEST_OPTIONS


def _made(text: str, each: _Field) -> TickedField:
    aside: list[Span] = []
    for mark, option in zip(each.marks, each.options, strict=True):
        aside.append(mark.span())
        i, j = option if mark.group("ticked") is None else (option[0], option[0])
        aside.append((i, j))
    ends = [at for pair in (*each.options, *(mark.span() for mark in each.marks)) for at in pair]
    return TickedField((min(ends), max(ends)), tuple(a for a in aside if a[0] < a[1]), each.begin)


def _trimmed(text: str, span: Span) -> Span:
    """Return characters without the edges of options about them."""
    told = text[span[0] : span[1]]
    first = span[0] + len(told) - len(told.lstrip(EDGES))
    return first, max(first, span[0] + len(told.rstrip(EDGES)))


def _words(text: str, span: Span) -> str:
    return text[span[0] : span[1]].strip(EDGES + ".").lower()
