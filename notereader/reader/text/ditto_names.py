"""Lines of a list that repeat the name above them: 'FDS index  entire' over 'do.  middle  severed'."""

import re

from notereader.reader.text.writing_out import Written

_DITTO = r"do\.|ditto|id\.|\"|''|\u3003"
_NAMES = r"FD[SP]|F\.D\.[SP]\.|[Pp]rofundus|[Ss]uperficialis|[Ss]ublimis"
_FINGERS = r"(?:thumb|index|middle|long|ring|small|little|[IMRSL]F|[IVX]{1,3}|[1-5])\b"
_LINE = re.compile(
    rf"^[ \t]*(?:\d{{1,2}}[.)]?[ \t]+)?(?:(?P<name>{_NAMES})|(?P<ditto>{_DITTO}))[ \t]+(?={_FINGERS})[^\n]*\n?",
    re.MULTILINE | re.IGNORECASE,
)
_SIGN = re.compile(rf"(?:^|[ \t])(?:{_DITTO})[ \t]+{_FINGERS}", re.MULTILINE | re.IGNORECASE)


def ditto_names(text: str) -> list[Written]:
    """Return the names to be read in the place of such words, each as wide as the word, so that columns stay."""
    if _SIGN.search(text) is None:
        return []
    found: list[Written] = []
    above, end = "", -1
    for line in _LINE.finditer(text):
        if line["name"]:
            above = line["name"]
        elif above and line.start() == end:
            i, j = line.span("ditto")
            found.append(Written(i, j, above.ljust(j - i)))
        else:
            above = ""
        end = line.end()
    return found
