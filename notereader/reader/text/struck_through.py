"""Words a note shows struck through, as a text file can: 'Glide: ~~free~~ / catching', '--left-- right'.

They hold no more. What stays is told, and where options were struck the slash beside them and the order to strike some
out ('delete as applicable') went with them.
"""

import re

_STROKE = "\u0336"  # drawn over the letter before it
_WORDS = r"[^~<>\n]{1,200}?"
_STRUCK = rf"~~{_WORDS}~~|<(?P<tag>s|del|strike)>{_WORDS}</(?P=tag)>|(?:[^\s{_STROKE}]{_STROKE}[ ]?)+"
# 'Hand  --left--  right': a pair of dashes close around a few words; around an aside of prose they stand apart.
_DASHED = r"(?<![^\s/(:,])(?P<dash>--|==)(?![-=\s])[^-=\n]{1,40}?(?:-[^-=\n]{1,40}?)?(?<!\s)(?P=dash)(?![^\s/),;.])"
_FEWEST = 3  # words between dashes, where the note gives no order to strike any out
_ORDER = re.compile(r"\((?:please )?(?:delete|strike)[^()\n]{0,40}\)", re.IGNORECASE)
_ORDERED = re.compile(r"\b(?:delete|strike|struck|cross)[^()\n]{0,40}(?:appl|appropriate|out\b)", re.IGNORECASE)
_MARKS = ("~~", "</", _STROKE)


def without_struck(text: str) -> str:
    """Return a text of the same length with blanks for what is struck through."""
    if any(mark in text for mark in _MARKS):
        text = _without(text, _STRUCK)
    return _without(text, _DASHED) if _strikes_with_dashes(text) else text


def _strikes_with_dashes(text: str) -> bool:
    """Tell whether dashes around words strike them out: as the note orders, or as often as no writer of asides does."""
    found = len(re.findall(_DASHED, text)) if "--" in text or "==" in text else 0
    return found >= _FEWEST or (found > 0 and _ORDERED.search(text) is not None)


def _without(text: str, struck: str) -> str:
    behind_slash, before_slash = re.compile(rf"/[ \t]*(?:{struck})"), re.compile(rf"(?:{struck})(?:[ \t]*/)?")
    return "\n".join(_line(line, behind_slash, before_slash) for line in text.split("\n"))


def _line(line: str, behind_slash: re.Pattern[str], before_slash: re.Pattern[str]) -> str:
    kept = before_slash.sub(_blank, behind_slash.sub(_blank, line))
    return kept if kept == line else _ORDER.sub(_blank, kept)


def _blank(found: re.Match[str]) -> str:
    return " " * len(found[0])
