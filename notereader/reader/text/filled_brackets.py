"""Forms whose blanks are drawn as brackets and filled in: 'strands [ 4 ]   suture [ 3/0 ] [ Prolene ]   A4 [     ]'.

A bracket that holds an answer is no box with an option behind it, and a wide empty one is a blank nobody filled in.
"""

import re

_BLANK = r"\[[ _]{3,}\]"
_ANSWER = r"\[ (?! *\]|[xXvVyY*\u2713\u2714\u221a\u00d7]? ?\])(?P<answer>[^\[\]\n:]{1,60}?) \](?! ?[%A-Za-z])"
# An answer with a unit or more words behind it, '[10] mm', or with labels of its own is read as it stands.
_BRACKET = re.compile(rf"{_BLANK}|{_ANSWER}")
_FEWEST = 4  # blanks, and as many answers, or brackets hold remarks or headings
_ASKED = re.compile(r"(?:\A|\n|[:\])?]|\b(?:for|of|in|to|at|from))[ \t]*\Z")
_SAYS_SO = re.compile(r"(?::|\b[AaCc][1-5])[ \t]*\Z")
_LOOK_BACK = 30  # characters
# 'MCP 50; IP [  ]', 'Purchase mm: [ ]': behind the name of a measure a bracket waits for a figure and ticks nothing.
_NO_FIGURE = re.compile(
    r"(?<=\b)(?P<asked>wrist|MC?PJ?s?|[PD]?IPJ?s?|mm|cm|deg|weeks?|days?)(?P<mark>[ :.]*)\[(?P<room> +)\]"
    r"(?=[ \t]*(?:$|[;,.)]|[ \t]{2}))",
    re.IGNORECASE | re.MULTILINE,
)


def without_brackets(text: str) -> str:
    """Return a text of the same length whose answers stand behind their labels without the brackets of the form."""
    text = _NO_FIGURE.sub(lambda m: f"{m['asked']}{m['mark']}{'_' * (len(m['room']) + 2)}", text)
    found = list(_BRACKET.finditer(text)) if text.count("[") >= 2 * _FEWEST else []
    blanks = sum(m["answer"] is None for m in found)
    if blanks < _FEWEST or len(found) - blanks < _FEWEST:
        return text
    signs = list(text)
    for m in found:
        i, j = m.span()
        if m["answer"] is None and _SAYS_SO.search(text, max(0, i - _LOOK_BACK), i) is not None:
            continue  # 'A1 [     ]', 'Surgeon: [     ]': the empty brackets tell that nothing was filled in
        asked = m["answer"] is None or _ASKED.search(text, max(0, i - _LOOK_BACK), i) is not None
        signs[i], signs[j - 1] = " " if asked else ":", " "
        if m["answer"] is None:
            signs[i + 1 : j - 1] = "_" * (j - i - 2)
    return "".join(signs)
