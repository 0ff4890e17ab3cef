"""Options of a form with a mark at those that were circled: 'Ray: I  II  III  IV*  V   (*circled)', 'Hand: R  L*'.

What stands beside them was offered and not chosen.
"""

import re

_SAID = re.compile(
    r"\(?\*[ ]?(?:=|means|for|:)?[ ]?(?:circled|ringed|encircled|chosen|selected|marked)\b\)?", re.IGNORECASE
)
_FIELD = re.compile(
    r"(?P<label>[A-Za-z][\w /-]{0,30}:)(?P<options>[^:()\n]*?)(?=[ \t]{2,}[A-Za-z][\w /-]*:|[ \t]*\(|$)", re.M
)
_PARTED = re.compile(r"[^\s/|](?:(?![ \t]{2}|[ \t]?[/|])[^\n])*")
_WORD = re.compile(r"[^\s/|]+")


def without_uncircled(text: str) -> str:
    """Return a text of the same length without the options that were left beside a circled one."""
    if "*" not in text or _SAID.search(text) is None:
        return text
    said = _SAID.sub(lambda m: " " * len(m[0]), text)
    return _FIELD.sub(lambda m: m["label"] + _chosen(m["options"]), said)


def _chosen(options: str) -> str:
    """Return the options of a field with blanks for all that bear no mark; as they are where all or none do."""
    several = (list(pattern.finditer(options)) for pattern in (_PARTED, _WORD))
    found = next((parts for parts in several if len(parts) > 1), [])
    marked = [_is_marked(m[0]) for m in found]
    if all(marked) or not any(marked):
        return options
    signs = list(options)
    for m, kept in zip(found, marked, strict=True):
        if not kept:
            signs[m.start() : m.end()] = " " * len(m[0])
    return "".join(signs).replace("*", " ").replace("/", " ").replace("|", " ")


def _is_marked(option: str) -> bool:
    return option.endswith("*") or option.startswith("*")
