"""A standard text whose blanks were filled in between brackets: 'a [6]-strand [modified Savage] of [4-0 FiberWire]'."""

import re

_FEWEST = 4  # answers in running words, or brackets hold remarks
# An answer within a sentence: words of the text before and behind it, and nothing that is a mark or a choice.
_ANSWER = re.compile(
    r"(?<=[a-z,)] )\[(?P<answer>(?![xXvVyYnN]\])[A-Za-z0-9][A-Za-z0-9%. -]{0,40})\]"
    r"(?=-[a-z]|[ ]?%|[ ]?mm|[,.;]|[ ][a-z{]|[ \t]*$)",
    re.MULTILINE,
)


def without_answer_brackets(text: str) -> str:
    """Return a text of the same length whose answers stand in their sentences without the brackets."""
    if text.count("[") < _FEWEST:
        return text
    found = list(_ANSWER.finditer(text))
    if len(found) < _FEWEST:
        return text
    signs = list(text)
    for m in found:
        signs[m.start()] = signs[m.end() - 1] = " "
    return "".join(signs)
