"""What a template offers in brackets and nobody took up: '[OPTION: six-strand Savage]', '{Alternative: A2 vented}'."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_OFFERED = word_list("standing", "offered")
_CLOSING = {"[": "]", "{": "}", "(": ")", "<": ">"}
_LONGEST = 60  # words of a bracket


def mark_bracketed_options(page: Page, sentence: Sentence) -> None:
    """Set aside what a bracket offers that opens with a word for an option and a colon, all its sentences."""
    if _OFFERED.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(max(sentence.i, 1), sentence.j - 1):
        shut = _CLOSING.get(words[k - 1]) if words[k] in _OFFERED else None
        if shut is None or ":" not in words[k + 1 : k + _LABEL] or words[k + 1] in _TAKEN_UP:
            continue
        end = min(k + _LONGEST, len(words))
        page.mark(k, words.index(shut, k, end) if shut in words[k:end] else sentence.j, "unticked")


_LABEL = 3  # words: 'option 2 :', 'optional text :'
_TAKEN_UP = frozenset(["taken", "chosen", "used", "selected", "done"])
