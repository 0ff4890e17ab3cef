"""Bare counts behind tendons whose label asks for strands: 'Strands: FDS 4, FCR 6', where 'FDS 4' is no finger."""

import re

from notereader.reader.text.writing_out import Written

_TENDON = r"(?:[A-Za-z]+ ){0,2}(?:fd[ps]|fpl|fc[ru]|pl|profundus|superficialis|sublimis)"
_COUNTED = rf"({_TENDON})[ \t]*[:=]?[ \t]+([1-9]|1[0-2])(?: each)?"
_ITEM = re.compile(_COUNTED, re.IGNORECASE)
_NEXT = r"(?:[ \t]*[,;/][ \t]*|[ \t]{2,}|[ \t]+and[ \t]+)"
_LINE = re.compile(
    r"^[ \t]*(?P<label>(?:(?:core|number of|no\. of)[ \t]+)*strands?(?:[ \t]+(?:count|number|crossing))?)"
    rf"(?:[ \t]*[:=][ \t]*|[ \t]{{2,}}|[ \t]*\.{{2,}}[ \t]*)"
    rf"(?P<items>{_COUNTED}(?:{_NEXT}{_COUNTED})*)[ \t]*\.?[ \t]*$",
    re.IGNORECASE | re.MULTILINE,
)


def label_counts(text: str) -> list[Written]:
    """Return such lines as they are to be read: 'FDS: 4 strands, FCR: 6 strands.'."""
    made = []
    for line in _LINE.finditer(text):
        told = ", ".join(f"{m[1]}: {m[2]} strands" for m in _ITEM.finditer(line["items"]))
        made.append(Written(line.start("label"), line.end(), f"{told}."))
    return made
