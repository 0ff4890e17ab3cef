r"""The text of a rich text document. Runs in the parsing process only.

striprtf turns RTF into text; before it, one pass over the source takes out what a reader of the printed page would not
take as said (deleted, hidden and struck words), lets headers and footers through, and sets cells apart by tabs.
Control words after the Rich Text Format specification, version 1.9.1.
"""

import re

from notereader.intake.note import IntakeRefused
from notereader.intake.parsed import Page, Parsed, left_out_warnings
from notereader.intake.plain import decode

_TOKEN = re.compile(
    r"\\(?P<word>[a-zA-Z]{1,32})(?P<number>-?\d{1,10})? ?"
    r"|(?P<hexed>\\'[0-9a-fA-F]{2})|(?P<symbol>\\[^a-zA-Z])|(?P<brace>[{}])|(?P<text>[^\\{}]+)|(?P<stray>\\)",
    re.DOTALL,
)
_LEFT_OUT = {"deleted": "deleted", "v": "hidden", "strike": "struck through", "striked": "struck through"}
_LET_THROUGH = {"header", "headerl", "headerr", "headerf", "footer", "footerl", "footerr", "footerf"}
_CELLS = {"cell", "nestcell"}
# Groups whose text is no part of the page: their marks hide nothing.
_TABLES = {"stylesheet", "listtable", "listoverridetable", "fonttbl", "colortbl", "info"}
_NOT_READ = (
    (re.compile(r"\\(?:shptxt|dptxbxtext)(?![a-z])"), "text boxes"),
    (re.compile(r"\\footnote(?![a-z])"), "footnotes"),
)


def parse_rtf(data: bytes) -> Parsed:
    """Return the text of an RTF document as one page; raises IntakeRefused where it cannot be followed."""
    from striprtf.striprtf import rtf_to_text

    source = decode(data).text
    prepared, left_out = _prepared(source[source.index("{\\rtf") :])
    warnings = left_out_warnings(left_out)
    for pattern, things in _NOT_READ:
        if pattern.search(source):
            warnings.append(f"The document has {things}; their text was not read. Check the original.")
    try:
        text = rtf_to_text(prepared, errors="replace")  # type: ignore[no-untyped-call]
    except (ValueError, TypeError, IndexError):
        raise IntakeRefused(
            "The rich text document is damaged: its codes do not make sense.",
            "Open it in a word processor, save it again, or copy its text and paste it here.",
        ) from None
    return Parsed([Page(re.sub(r"\t+\n", "\n", text))], warnings)


def _prepared(source: str) -> tuple[str, set[str]]:
    """Return the source without words that are not shown, and how those were marked."""
    out: list[str] = []
    left_out: set[str] = set()
    stack: list[tuple[frozenset[str], bool]] = []
    marks: frozenset[str] = frozenset()
    in_table = False
    for token in _TOKEN.finditer(source):
        word = token["word"]
        if token["brace"] == "{":
            stack.append((marks, in_table))
        elif token["brace"] == "}":
            marks, in_table = stack.pop() if stack else (frozenset(), False)
        elif word in _TABLES or token["symbol"] == "\\*":
            in_table = True
        elif word == "plain":
            marks = frozenset()
        elif word in _LEFT_OUT:
            marks = marks - {word} if token["number"] == "0" else marks | {word}
        elif marks and not in_table and _shows(token):
            left_out |= {_LEFT_OUT[mark] for mark in marks}
            continue
        out.append(_let_through(token))
    return "".join(out), left_out


def _shows(token: re.Match[str]) -> bool:
    """Tell whether a token puts a character on the page; spaces may stay, they promise nothing."""
    return bool(token["word"] == "u" or token["hexed"] or token["symbol"] or (token["text"] or "").strip())


def _let_through(token: re.Match[str]) -> str:
    if token["word"] in _LET_THROUGH:
        return "\\par "
    if token["word"] in _CELLS:
        return "\\tab "
    return token.group()
