"""A small 'l' among capitals that a scanner took for an 'I': 'COMPLICATlONS', 'FlNDINGS', 'lNDICATIONS'."""

import re

_MISREAD = re.compile(r"\b(?=[A-Z]*l)(?=l?[A-Z])[A-Zl]{5,}[A-Z]\b", re.ASCII)


def with_capitals_put_right(text: str) -> str:
    """Return the note with such words in capitals; same length, so positions hold."""
    return _MISREAD.sub(lambda word: word.group().replace("l", "I"), text) if "l" in text else text
