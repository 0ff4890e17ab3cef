"""Options in brackets with the one chosen behind an arrow: 'Rehab: [active] [passive] [rest] -> passive chosen'.

What the brackets offer says nothing.
"""

import re

_OFFERED = re.compile(
    r"(?P<options>(?:\[[^\[\]\n]{3,30}\][ \t,/|]*){2,})(?=(?:-+>|=+>|\u2192)[ \t]*(?P<chosen>\w[^\n\[\]]*))"
)


def without_offers(text: str) -> str:
    """Return a text of the same length without the options of a line that names its choice behind an arrow."""
    return _OFFERED.sub(lambda m: " " * len(m["options"]) if _is_one_of_them(m) else m["options"], text)


def _is_one_of_them(offered: re.Match[str]) -> bool:
    options = re.findall(r"\[\s*([^\[\]]+?)\s*\]", offered["options"])
    return any(offered["chosen"].lower().startswith(option.lower()) for option in options)
