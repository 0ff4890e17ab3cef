"""Rows named by a side alone below a title that has their noun: 'Nerve   Status' above 'Median   intact'.

The noun is read behind each of them.
"""

import re

from notereader.reader.text.writing_out import Written

_NOUNS = {"nerve": "nerve", "nerves": "nerve", **dict.fromkeys(("artery", "arteries", "vessel", "vessels"), "artery")}
# 'Nerves', 'NERVES:', '| Nerve | Status |', 'Nerve      Status      Repair'
_TITLE = re.compile(rf"[ \t|]*(?P<noun>{'|'.join(_NOUNS)})(?:[ \t]*:?[ \t]*$|[ \t]*\||[ \t]{{2,}}\S)", re.IGNORECASE)
_ROW = re.compile(r"[ \t|*\u2022-]*(?:median|ulnar|radial)(?: digital)?(?=[ \t]*[:|]|[ \t]{2,}\S| - )", re.IGNORECASE)
# Lines that go on to something else which has sides: 'FDS slips', 'Pulleys'.
_OTHERS = re.compile(r"\b(?:FD[PS]|FPL|FC[RU]|slips?|tendons?|superficialis|sublimis|pulleys?|A[1-5])\b", re.IGNORECASE)


def shared_titles(text: str) -> list[Written]:
    """Return the nouns to be read behind rows that are named by a side alone; often nothing."""
    found: list[Written] = []
    noun, begin = "", 0
    for line in text.split("\n"):
        title, row = _TITLE.match(line), _ROW.match(line)
        if title is not None:
            noun = _NOUNS[title["noun"].lower()]
        elif not line.strip() or _OTHERS.search(line):
            noun = ""
        elif row is not None and noun:
            end = begin + row.end()
            found.append(Written(end, end, f" {noun}"))
        begin += len(line) + 1
    return found
