"""Options of a form that bear numbers, answered by one of them: 'Ends   1 clean  2 ragged  3 crushed   -> 1'.

Only the option chosen stays; where nobody put a number behind the arrow, none does.
"""

import re
from itertools import count

_ARROW = re.compile(
    r"[ \t](?:(?:-+>|=+>|\u2192|>>)[ \t]*(?=$)|(?:-+>|=+>|\u2192|>>|={1,2}|:)[ \t]*"
    r"[\[(]?(?P<chosen>\d(?:[ \t]*[,&+][ \t]*\d)*|[A-Ha-h])[\])]?(?=[ \t]|$))"
)
_NUMBER = re.compile(r"(?<![^\s(\[;,])[(\[]?(?P<number>\d)(?:[.)\]=:]|[ \t]?[=-])?[ \t]*(?=[^\W\d]|[<>])")
_LETTER = re.compile(r"(?<![^\s(\[;,])[(\[]?(?P<number>[A-Ha-h])(?:[.)\]=]|[ \t]=)[ \t]*(?=[^\W\d]|[<>])")
_FEWEST = 2  # options


def without_options_left(text: str) -> str:
    """Return a text of the same length with blanks for the options of a line that its answer did not choose."""
    return "\n".join(_line(line) for line in text.split("\n"))


def _line(line: str) -> str:
    """'Gap  1 none  2 seen  -> 2  by: 1 mm' keeps 'Gap', 'seen' and what stands behind the answer."""
    for arrow in _ARROW.finditer(line):
        marks = _options(_NUMBER, line[: arrow.start()]) or _options(_LETTER, line[: arrow.start()])
        if marks:
            return _chosen(line, marks, arrow)
    return line


def _options(pattern: re.Pattern[str], asked: str) -> list[re.Match[str]]:
    """Return the marks of the options, '1', '2', '3', each the next after the one before; [] of no row."""
    found = list(pattern.finditer(asked))
    for first in reversed([n for n, mark in enumerate(found) if mark["number"] in "1aA"]):
        marks = _row(found[first:])
        if len(marks) >= _FEWEST:
            return marks
    return []


def _row(found: list[re.Match[str]]) -> list[re.Match[str]]:
    """Take each mark that counts on by one: of '1 none 2 up to 5 mm 3 more' the '5' is no option."""
    wanted = map(chr, count(ord(found[0]["number"])))
    marks: list[re.Match[str]] = []
    following = next(wanted)
    for mark in found:
        if mark["number"] == following:
            marks.append(mark)
            following = next(wanted)
    return marks


def _chosen(line: str, marks: list[re.Match[str]], arrow: re.Match[str]) -> str:
    """Blank the options but the chosen, their marks, and the arrow with its answer."""
    chosen = {answer.lower() for answer in re.findall(r"\w", arrow["chosen"] or "")}
    ends = [*(mark.start() for mark in marks[1:]), arrow.start()]
    kept = line[: marks[0].start()]
    for mark, end in zip(marks, ends, strict=True):
        option = line[mark.end() : end] if mark["number"].lower() in chosen else " " * (end - mark.end())
        kept += " " * (mark.end() - mark.start()) + option
    return kept + " " * (arrow.end() - arrow.start()) + line[arrow.end() :]
