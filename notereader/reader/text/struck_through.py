"""Words a note shows struck through, as a text file can: 'Glide: ~~free~~ / catching', '<s>3-0</s> 4-0'.

They hold no more. What stays is told, and where options were struck the slash beside them and the order to strike some
out ('delete as applicable') went with them.
"""

import re

_STROKE = "\u0336"  # drawn over the letter before it
_WORDS = r"[^~<>\n]{1,200}?"
_STRUCK = rf"~~{_WORDS}~~|<(?P<tag>s|del|strike)>{_WORDS}</(?P=tag)>|(?:[^\s{_STROKE}]{_STROKE}[ ]?)+"
_BEHIND_SLASH = re.compile(rf"/[ \t]*(?:{_STRUCK})")
_BEFORE_SLASH = re.compile(rf"(?:{_STRUCK})(?:[ \t]*/)?")
_ORDER = re.compile(r"\((?:please )?(?:delete|strike)[^()\n]{0,40}\)", re.IGNORECASE)
_MARKS = ("~~", "</", _STROKE)


def without_struck(text: str) -> str:
    """Return a text of the same length with blanks for what is struck through."""
    if not any(mark in text for mark in _MARKS):
        return text
    return "\n".join(_line(line) for line in text.split("\n"))


def _line(line: str) -> str:
    kept = _BEFORE_SLASH.sub(_blank, _BEHIND_SLASH.sub(_blank, line))
    return kept if kept == line else _ORDER.sub(_blank, kept)


def _blank(found: re.Match[str]) -> str:
    return " " * len(found[0])
