"""Names of nerves and arteries that a form takes apart: 'NERVE: Ulnar   Found: complete', '<<ARTERY>>   Radial'."""

import re

_PARTED = re.compile(
    r"^(?P<lead>[^\w\n]*)(?P<noun>nerve|artery)"
    r"(?P<marks>[ \t]*[:>\]|.-]+[ \t:]*|[ \t]{2,})(?P<name>ulnar|radial|median)"
    r"(?=[ \t]{2,}|[ \t]*(?:$|[;|]))",
    re.IGNORECASE | re.MULTILINE,
)
_OF_THE_WRIST = re.compile(r"\b(?:FC[UR]|flexor carpi|zone (?:5|V)|level: V)\b", re.IGNORECASE)


def with_names_whole(text: str) -> str:
    """Return a text of the same length with 'Ulnar nerve' in place of 'Nerve: Ulnar' in a note of the wrist.

    In a finger 'Nerve: ulnar' is the digital nerve of that side, and is left to the rules for those.
    """
    if _PARTED.search(text) is None or _OF_THE_WRIST.search(text) is None:
        return text
    return _PARTED.sub(_put_together, text)


def _put_together(m: re.Match[str]) -> str:
    return f"{m['lead']}{m['name']} {m['noun']}".ljust(len(m.group()))
