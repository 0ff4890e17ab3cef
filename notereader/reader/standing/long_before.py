"""A repair told as months or years old: 'Two years earlier the small FDP had been repaired', 'the year before last'."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_SPANS = frozenset(["week", "weeks", "month", "months", "year", "years"])
_BACK = frozenset(["earlier", "before", "back", "previously"])
_PAST = frozenset(["had", "was", "were", "underwent"])
_MENDED = word_list("long_before", "mended")
_NOW = word_list("long_before", "now")
_LEAD, _NEAR = 5, 5  # words


def mended_long_before(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence opens with how long ago it was, and tells of a repair done then.

    'Three weeks earlier he had cut the FDP, which we repaired': that one is of this operation.
    """
    if _BACK.isdisjoint(sentence.said) or _SPANS.isdisjoint(sentence.said) or _MENDED.isdisjoint(sentence.said):
        return False
    words = page.words[sentence.i : sentence.j]
    span = next((k for k in range(min(_LEAD, len(words) - 1)) if words[k] in _SPANS and words[k + 1] in _BACK), None)
    if span is None:
        return False
    deed = next((k for k in range(span, len(words)) if words[k] in _MENDED), 0)
    lead, behind = words[span:deed], words[deed + 1 : deed + _NEAR]
    by_me = lead[-1:] in (["i"], ["we"])
    return not _PAST.isdisjoint(lead) and not by_me and _NOW.isdisjoint(lead) and _NOW.isdisjoint(behind)
