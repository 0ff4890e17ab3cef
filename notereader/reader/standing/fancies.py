"""What might have been and what was, in one sentence: 'Had it jammed I would have opened A4; it ran, and A4 is intact'.

The sentence is cut where it turns to what was, so that the condition reaches no further.
"""

from itertools import pairwise

from notereader.reader.page import Page, Sentence

_OPENS = frozenset(["had", "were", "if"])
_BEFORE_IF = frozenset(["even", "and", "but"])
_MODALS = frozenset(["would", "should", "might", "could"])


def cut_behind_fancy(page: Page, sentence: Sentence) -> list[Sentence]:
    """Cut a sentence behind the condition that was not met. RETURNS its parts in order."""
    turn = None if sentence.prefix else _turn(page.words, sentence.i, sentence.j)
    if turn is None:
        return [sentence]
    head = Sentence(sentence.i, turn, sentence.section, sentence.block, sentence.label)
    return [head, Sentence(turn, sentence.j, sentence.section, sentence.block, False)]


def _turn(words: list[str], i: int, j: int) -> int | None:
    """Return the word behind the semicolon, or behind ', but', that ends what might have been."""
    first = i + (words[i] in _BEFORE_IF)
    if words[first] not in _OPENS or _MODALS.isdisjoint(words[first:j]):
        return None
    modal = next(k for k in range(first, j) if words[k] in _MODALS)
    unreal = words[first] != "if" or "had" in words[first:modal]
    if not unreal or words[modal + 1 : modal + 2] == ["be"] or not {";", ":"}.isdisjoint(words[first:modal]):
        return None
    behind = pairwise(range(modal, j))
    return next((b + (words[a] == ",") for a, b in behind if words[a] == ";" or _but(words, a, b)), None)


def _but(words: list[str], a: int, b: int) -> bool:
    return words[a] == "," and words[b] == "but"
