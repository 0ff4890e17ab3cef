"""The marks of a form, ticked or empty, as they stand in the text, and the fields they belong to."""

import re
from dataclasses import dataclass

Span = tuple[int, int]  # characters

EMPTY = r"\[[\s_.]*\]|\([\s_]*\)|\{[\s_]*\}|[\u2610\u25a1\u25cb]"
TICKED = (
    r"\[\s*[xXvV\u2713\u2714\u221a\u00d7*+]\s*\]|\(\s*[xXoO+\u2713\u2714\u221a\u25cf]\s*\)|\{\s*[xX]\s*\}"
    r"|[\u2611\u2612\u2713\u2714\u221a\u25cf]"
)
MARK = re.compile(rf"(?P<empty>{EMPTY})|(?P<ticked>{TICKED})")
EDGES = " \t/|,;"  # what may part options
LONGEST_OPTION = 4  # words
FEWEST_OPTIONS = 2


@dataclass(frozen=True, slots=True)
class TickedField:
    """A field of a form: its characters, those set aside (empty options and all marks), and where its label begins."""

    span: Span
    set_aside: tuple[Span, ...]
    begin: int = -1  # -1: the field is all of its line that matters
