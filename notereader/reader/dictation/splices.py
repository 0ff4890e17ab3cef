"""Dictation in which commas stand for full stops: 'the FDP was cut, the FDS was intact, I repaired the FDP, no gap'."""

from itertools import pairwise

from notereader.reader.dictation.openings import opens_statement, turns, turns_to_finger, verb_after
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_LONG = 30  # words; a sentence that is written seldom has more of them and so many statements
_MARKS = frozenset([";", ":", "(", ")"])
_FEWEST = 4  # statements
_FEWEST_STRONG = 3  # of them, with a verb, 'I', 'no' or the like: 'I found FPL cut, FCR cut, palmaris cut' is one list
_LEADS = word_list("breaths", "leads")  # ', and then the FDS was cut'
_SUBJECTS = word_list("breaths", "subjects")
_SPEAKERS = frozenset(["i", "we"])
_TOLD = frozenset(["extent", "opened", "deed", "gap"])
_NEAR = 4  # words


def is_spliced(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence is a long run of statements that only commas part."""
    if sentence.j - sentence.i < _LONG or sentence.prefix:
        return False
    words = page.words[sentence.i : sentence.j]
    if not _MARKS.isdisjoint(words):
        return False
    starts = _statements(page, sentence)
    return len(starts) >= _FEWEST and sum(not _is_bare(page, k, sentence.j) for k in starts) >= _FEWEST_STRONG


def cut_at_commas(page: Page, sentence: Sentence) -> list[Sentence]:
    """Cut a sentence before each of its statements. RETURNS its parts in order."""
    starts = [sentence.i, *_statements(page, sentence), sentence.j]
    parts = [Sentence(i, j, sentence.section, sentence.block, False) for i, j in pairwise(starts)]
    parts[0].label = sentence.label
    return parts


def _statements(page: Page, sentence: Sentence) -> list[int]:
    """Return the words at which statements begin behind commas."""
    found: list[int] = []
    first = sentence.i
    for k in range(sentence.i + 1, sentence.j):
        if page.words[k - 1] == "," and _states(page, sentence.i, first, k, sentence.j):
            found.append(k)
            first = k
    return found


def _states(page: Page, begin: int, first: int, k: int, end: int) -> bool:
    """Tell whether the words from k to the next comma make a statement of their own."""
    words = page.words
    stop = next((n for n in range(k, end) if words[n] == ","), end)
    if opens_statement(page, first, k) or turns_to_finger(page, begin, k):
        return True
    while k < stop and words[k] in _LEADS:
        k += 1
    if k >= stop:
        return False
    if words[k] in _SPEAKERS or turns(page, k) or opens_statement(page, first, k):
        return True
    if words[k] == "no":
        return any(m.kind in ("gap", "role", "pattern") for m in within(page.mentions, k, k + 2))
    here = next((m for m in within(page.mentions, k, k + 1)), None)
    if here is None:
        return False
    return here.kind in _SUBJECTS and _is_told(page, here, stop)


def _is_bare(page: Page, k: int, end: int) -> bool:
    """'FCR cut': a name and a finding without a verb."""
    while k < end and page.words[k] in _LEADS:
        k += 1
    here = next((m for m in within(page.mentions, k, k + 1)), None)
    return here is not None and here.kind in _SUBJECTS and verb_after(page, here.j) is None


def _is_told(page: Page, subject: Mention, stop: int) -> bool:
    """'the FDS was intact', 'A2 not opened', 'profundus and FDS both cut through'."""
    if verb_after(page, subject.j) is not None:
        return True
    return any(m.kind in _TOLD and m.i - subject.j <= _NEAR for m in within(page.mentions, subject.j, stop))
