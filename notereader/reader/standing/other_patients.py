"""Another patient's operation named in passing: "dictated after Mr Orrin's thumb (FPL, eight strands, no gap)"."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.published import POSSESSIVE
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_TITLES = word_list("other_patients", "titles")
_LEADS = phrases_by_first_word("other_patients", "leads")
_RELATIVES = word_list("other_patients", "relatives")
_PARTS = word_list("other_patients", "parts")
# What may stand behind the finger so named: with a verb ("after Mr Orrin's thumb was washed") it is this patient's.
_BEHIND = frozenset(["(", ",", ":", ";", ".", "-", "of", "on", "in", "earlier", "this", "that", "today"])
_VERBS = frozenset(["was", "were", "had", "is", "has"])
_LEAD = 4  # words from what leads to a patient to the title
_PART = 4  # words of a finger with its side


def mark_other_patients(page: Page, sentence: Sentence) -> None:
    """Set aside the statement in which a named patient's finger is only what this note comes after, or is not."""
    if any(word.endswith(POSSESSIVE) for word in sentence.said):
        _mark_relatives(page, sentence)
    if not _CASES.isdisjoint(sentence.said):
        _mark_other_case(page, sentence)
    if _TITLES.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 2):
        if words[k] not in _TITLES or not _led(page, sentence, k):
            continue
        owner = next((n for n in range(k + 1, min(k + 4, sentence.j)) if words[n].endswith(POSSESSIVE)), -1)
        digit = next((m for m in within(page.mentions, owner + 1, owner + 1 + _PART) if m.kind == "digit"), None)
        if owner > 0 and digit is not None and _only_named(words, digit.j, sentence.j):
            end = next((n for n in range(digit.j, sentence.j) if words[n] == ";"), sentence.j)
            page.mark(k, end, "teaching")


def _mark_other_case(page: Page, sentence: Sentence) -> None:
    """'This was the second of two hands on the list; the first had an eight-strand FPL': what the other had."""
    words = page.words
    for k in range(sentence.i + 3, sentence.j):
        counted = words[k] in _CASES and words[k - 2] == "of" and words[k - 3] in _RANKS and count_of(words[k - 1]) > 1
        if not counted:
            continue
        turn = next((n + 1 for n in range(k, sentence.j) if words[n] in (";", ",", ":", "(")), sentence.j)
        if words[turn : turn + 1] == ["the"] and not _RANKS.isdisjoint(words[turn + 1 : turn + 2]):
            page.mark(turn, next((n for n in range(turn, sentence.j) if words[n] == ";"), sentence.j), "teaching")


_CASES = frozenset(["hands", "cases", "patients", "operations"])
_RANKS = frozenset(["first", "second", "third", "last", "other", "others", "one", "previous", "earlier", "next"])


def _mark_relatives(page: Page, sentence: Sentence) -> None:
    """'I mention that a cousin's finger (ring, zone I) was repaired here with a button': another's."""
    for k in range(sentence.i, sentence.j - 1):
        owner = page.words[k].partition("'")[0].partition("\u2019")[0]
        if owner not in _RELATIVES or not page.words[k].endswith(POSSESSIVE):
            continue
        digit = any(m.kind == "digit" for m in within(page.mentions, k + 1, k + _PART))
        if digit or not _PARTS.isdisjoint(page.words[k + 1 : k + _PART]):
            end = next((n for n in range(k, sentence.j) if page.words[n] == ";"), sentence.j)
            page.mark(k, end, "teaching")


def _led(page: Page, sentence: Sentence, title: int) -> bool:
    """Tell whether the words before a title lead to another patient: 'dictated after', 'not to be confused with'."""
    begin = max(sentence.i, title - _LEAD)
    return any(
        page.words[k : k + len(lead)] == lead and k + len(lead) == title
        for k in range(begin, title)
        for lead in _LEADS.get(page.words[k], ())
    )


def _only_named(words: list[str], k: int, last: int) -> bool:
    behind = next((n for n in range(k, last) if words[n] in ("(", ",", ":", ";", ".")), last)
    return words[k] in _BEHIND and _VERBS.isdisjoint(words[k:behind])
