"""What a case, its level and an outcome are called. Knows no Qt and loads nothing of practice."""

import re

_LEVELS = {1: "plain", 2: "fairly plain", 3: "middling", 4: "demanding", 5: "hard"}
_NUMBERED = re.compile(r"(\d+)-\D")


def level_words(difficulty: int) -> str:
    """Return a difficulty of 1 to 5 as 'level 2 of 5, fairly plain'."""
    return f"level {difficulty} of 5, {_LEVELS[difficulty]}"


def case_title(case_id: str, *, told: bool = False) -> str:
    """Return what a case is called: 'Case 17' as long as its whole name would give away what is in its note."""
    numbered = _NUMBERED.match(case_id)
    return case_id if told or numbered is None else f"Case {numbered[1]}"


def counted(number: int, word: str) -> str:
    """Return '1 fact', '2 facts'."""
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
