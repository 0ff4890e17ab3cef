"""What a note says it does not tell: 'Bulk: not recorded', 'tension was not assessed', 'gap not measured'.

Said so, it is no finding: neither that there was bulk, nor that there was none.
"""

from itertools import pairwise

from notereader.reader.page import Break, Page, Sentence, within
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_RECORDED = word_list("unrecorded", "recorded")
_UNASKED = word_list("unrecorded", "unasked")
_UNTOLD = word_list("unrecorded", "untold")
_UNTOLD_OF = word_list("unrecorded", "untold_of")
_BETWEEN = word_list("unrecorded", "between")
_STOPS = word_list("unrecorded", "stops")
_FINDINGS = word_list("unrecorded", "findings")
_NO_ANSWER = word_list("unrecorded", "no_answer")
_OPENS_NONE = frozenset(["?", *(phrase.split()[0] for phrase in _NO_ANSWER | word_list("unrecorded", "doubtful"))])


def mark_unrecorded(page: Page, sentence: Sentence) -> None:
    """Set aside the words of a sentence that tell only that a finding was not recorded or tested.

    'The A2 is not mentioned. It was intact' and 'Not recorded above: the repair caught' lead up to a finding.
    """
    if sentence.prefix or not _OPENS_NONE.isdisjoint(sentence.said):
        _mark_unanswered_labels(page, sentence)
    if "nothing" in sentence.said or not (_UNTOLD | _UNKNOWN).isdisjoint(sentence.said):
        _mark_untold(page, sentence)
    if {"neither", "could", "be"} <= sentence.said:
        _mark_not_judged(page, sentence)
    if "not" in sentence.said and not _ALL.isdisjoint(sentence.said):
        _mark_not_all(page, sentence)
    if "which" in sentence.said and "or" in sentence.said:
        _mark_one_of_two(page, sentence)
    if not _EMPTY.isdisjoint(sentence.said):
        _mark_left_blank(page, sentence)
    if not _MEMORY.isdisjoint(sentence.said):
        _mark_forgotten(page, sentence)
    if _RECORDED.isdisjoint(sentence.said) and _UNASKED.isdisjoint(sentence.said):
        return
    for k in range(sentence.i + 1, sentence.j):
        denied = _denies(page, k) and _leads_to_recorded(page, k + 1, sentence.j)
        if denied or page.words[k] in _UNASKED:
            i, j = _start(page, sentence, k), _end(page, sentence, k)
            if any(m.kind in _FINDINGS for m in within(page.mentions, i, k)):
                page.mark(i, j, "unfilled")


def _mark_unanswered_labels(page: Page, sentence: Sentence) -> None:
    """'Gap: not recorded', 'Peripheral suture   n/a', and a cell of a grid that says no more."""
    if sentence.prefix and _is_no_answer(page, sentence.i, sentence.j):
        page.mark(sentence.i, sentence.j, "unfilled")
        return
    told = [m for m in within(page.mentions, sentence.i, sentence.j) if m.kind in _FINDINGS or m.kind == "role"]
    named = {m.j + (page.words[m.j : m.j + 1] == ["suture"]) for m in told}
    for k in range(sentence.i + 1, sentence.j):
        before = page.words[k - 1]
        asked = before in _ASKS or before.startswith("..") or page.breaks[k] == Break.COLUMN
        bare = k in named and page.words[k] != "?" and page.words[k : k + 2] not in _DENY
        if page.words[k] in _OPENS_NONE and (asked or bare):
            end = _answer_end(page, sentence, k)
            if _is_no_answer(page, k, end):
                page.mark(_start(page, sentence, k - 1), end, "unfilled")
        if before in _ASKS and page.words[k] in _DOUBTFUL and _answers_with_doubt(page, k):
            page.mark(_start(page, sentence, k - 1), _answer_end(page, sentence, k), "unfilled")


_DENY = (["not", "noted"], ["none", "noted"])  # 'Gap not noted' denies it where no form asks
_ASKS = frozenset([":", "?", "=", "-", "|"])


def _answers_with_doubt(page: Page, k: int) -> bool:
    return any(page.words[k : k + len(p)] == p for p in _DOUBTFUL.get(page.words[k], ()))


_DOUBTFUL = phrases_by_first_word("unrecorded", "doubtful")


def _is_no_answer(page: Page, i: int, j: int) -> bool:
    words = page.words[i : j - (page.words[j - 1] == ".")]
    return " ".join(words) in _NO_ANSWER or all(w in _LINES or w.startswith("..") for w in words)


_LINES = frozenset(["-", "--", "_", "/", "?"])


def _answer_end(page: Page, sentence: Sentence, k: int) -> int:
    stops = (n for n in range(k + 1, sentence.j) if page.words[n] in _ENDS or page.breaks[n] == Break.COLUMN)
    return next(stops, sentence.j)


_ENDS = frozenset([",", ";", "|"])


def _mark_untold(page: Page, sentence: Sentence) -> None:
    """'No comment on the gap', 'no mention is made of A2': up to the next stop."""
    for k in range(sentence.i, sentence.j - 2):
        if (page.words[k] == "no" and page.words[k + 1] in _UNTOLD and page.words[k + 2] in _UNTOLD_OF) or (
            page.words[k] == "nothing" and _leads_to_untold(page, k + 1, sentence.j)
        ):
            page.mark(k, _end(page, sentence, k), "unfilled")
    k = sentence.j - 2 - (page.words[sentence.j - 1] == ".")
    asked = k > sentence.i and page.words[k - 1] in _ASKS
    if asked and page.words[k] == "no" and page.words[k + 1] in _UNTOLD | _UNKNOWN:
        page.mark(_start(page, sentence, k), sentence.j, "unfilled")  # 'Gap: no data'
    _mark_no_test(page, sentence)


def _mark_no_test(page: Page, sentence: Sentence) -> None:
    """'Gap: no test possible', 'Gap - no further check made': a label's answer that nobody looked."""
    for k in range(sentence.i + 1, sentence.j - 2):
        if page.words[k] == "no" and page.words[k - 1] in _ASKS:
            noun = k + 1 + (page.words[k + 1] in _KINDS_OF_TEST)
            behind = page.words[noun + 1 : min(noun + 3, sentence.j)]
            if page.words[noun] in _UNTOLD | _UNKNOWN and not _POSSIBLE.isdisjoint(behind):
                page.mark(_start(page, sentence, k), _end(page, sentence, k), "unfilled")


_KINDS_OF_TEST = frozenset(["further", "formal", "second", "reliable", "proper", "such", "other", "specific"])
_POSSIBLE = frozenset(["possible", "made", "done", "performed", "taken", "to", "could", "was", "recorded", "available"])


def _leads_to_untold(page: Page, k: int, last: int) -> bool:
    """'Nothing is on record of a gap', 'nothing was written about A2': how it was, nobody wrote down."""
    words = page.words[k : min(k + _NEAR_BY, last)]
    verb = next((n for n, word in enumerate(words) if word in _WRITTEN), -1)
    of = verb >= 0 and not _UNTOLD_OF.isdisjoint(words[verb + 1 : verb + 3])
    return of and all(word in _LEADING_TO for word in words[:verb])


_NEAR_BY = 6  # words
_WRITTEN = word_list("unrecorded", "written")
_LEADING_TO = frozenset(["is", "was", "has", "been", "had", "on", "there", "further", "else", "more", "to"])
_TESTS = frozenset(["check", "testing", "assessment", "examination", "inspection", "opinion", "judgement", "way"])
_UNKNOWN = frozenset(["data", "idea", "answer", "record", "test", "note", "result", "info", *_TESTS])


def _mark_forgotten(page: Page, sentence: Sentence) -> None:
    """'As to an epitendinous stitch, I have no memory of it': the clause, with the one whose 'it' is meant."""
    for k in range(sentence.i, sentence.j - 1):
        phrase = next((p for p in _FORGOTTEN.get(page.words[k], ()) if page.words[k : k + len(p)] == p), None)
        if phrase is not None:
            page.mark(sentence.i, _end(page, sentence, k), "unfilled")
        elif any(page.words[k : k + len(p)] == p for p in _FORGOTTEN_HERE.get(page.words[k], ())):
            page.mark(_start(page, sentence, k), _end(page, sentence, k), "unfilled")


_FORGOTTEN_HERE = phrases_by_first_word("unrecorded", "forgotten_here")
_FORGOTTEN = phrases_by_first_word("unrecorded", "forgotten")
_MEMORY = frozenset(["memory", "recollection", "recall", "remember", "recalled", "remembered", "mind", "longer"])


def _mark_not_judged(page: Page, sentence: Sentence) -> None:
    """'Neither gap nor catching could be judged': not known, which is not to say that there was none."""
    for k in range(sentence.i + 1, sentence.j - 2):
        if page.words[k : k + 2] == ["could", "be"] and page.words[k + 2] in _JUDGED:
            first = next((n for n in range(k, sentence.i - 1, -1) if page.words[n] == "neither"), k)
            between = page.words[first:k]
            if "nor" in between and _STOPS.isdisjoint(between) and "," not in between:
                page.mark(first, k + 3, "unfilled")


_JUDGED = frozenset(["judged", "assessed", "tested", "seen", "told", "evaluated", "excluded", "checked", "made"])


def _mark_one_of_two(page: Page, sentence: Sentence) -> None:
    """'Either Ethibond or Prolene, I did not notice which', 'Ticron or Prolene, I forget which': neither is told."""
    for k in range(sentence.i + 2, sentence.j):
        ends = page.words[k + 1 : min(k + 2, sentence.j)] in ([], ["."], [","], [";"], ["and"], [")"])
        asked = page.words[max(sentence.i, k - _NEAR_BY) : k]
        if page.words[k] != "which" or not ends or _NOT_KNOWN.isdisjoint(asked) or _KNOWING.isdisjoint(asked):
            continue
        named = [m for m in within(page.mentions, sentence.i, k) if m.kind in ("material", "stitch")]
        for a, b in pairwise(named):
            if a.kind == b.kind and "or" in page.words[a.j : b.i]:
                page.mark(a.i, b.j, "unfilled")


_NOT_KNOWN = frozenset(["not", "cannot", "n't", "never", "forget", "forgot", "unsure", "unclear", "without"])
_KNOWING = word_list("unrecorded", "knowing")


def _mark_not_all(page: Page, sentence: Sentence) -> None:
    """'Not both A2 pulleys were intact', 'Not all repairs glided freely': which of them were is not told."""
    for k in range(sentence.i, sentence.j - 1):
        opens = k == sentence.i or page.words[k - 1] in _STOPS
        if opens and page.words[k] == "not" and page.words[k + 1] in _ALL:
            page.mark(k, _end(page, sentence, k), "unfilled")


_ALL = frozenset(["all", "both", "every", "each"])


def _mark_left_blank(page: Page, sentence: Sentence) -> None:
    """'Left blank on the sheet: gap, pulleys', 'Not ticked: free glide', 'the boxes for gap and bulk are empty'."""
    head = page.words[sentence.i : min(sentence.i + _LONGEST_HEAD, sentence.j)]
    colon = head.index(":") if ":" in head else 0
    if colon and any(head[k : k + len(words)] == words for k in range(colon) for words in _BLANK_HEADS):
        page.mark(sentence.i, sentence.j, "unfilled")
        return
    for k in range(sentence.i + 1, sentence.j):
        on_form = page.words[k] in _BLANK or (page.words[k] == "empty" and _names_a_field(page, sentence))
        if on_form and not _STANDS.isdisjoint(page.words[max(sentence.i, k - 2) : k]):
            first = next((n + 1 for n in range(k, sentence.i - 1, -1) if page.words[n] in _CLAUSES), sentence.i)
            page.mark(first, k + 1, "unfilled")


def _names_a_field(page: Page, sentence: Sentence) -> bool:
    """'The box for gap was empty', but not 'the box of 3-0 was empty', which is one of sutures."""
    fields = (k for k in range(sentence.i, sentence.j) if page.words[k] in _FIELDS)
    return any(page.words[k + 1 : k + 2] != ["of"] for k in fields)


_EMPTY = word_list("unrecorded", "empty")
_BLANK_HEADS = [words.split() for words in word_list("unrecorded", "blank_heads")]
_BLANK = _EMPTY - {"empty", "filled", "entry", "ticked"}
_FIELDS = frozenset(["box", "boxes", "field", "fields", "line", "lines", "cell", "cells", "column"])
_STANDS = frozenset(["is", "are", "was", "were", "left", "remain", "remains", "remained", "stayed", "stay", "still"])
_CLAUSES = frozenset([";", ".", "(", "but", "while", "whereas"])
_LONGEST_HEAD = 10  # words


def _denies(page: Page, k: int) -> bool:
    """'Not tested', 'never tested', 'no longer tested': tell whether word k denies the verb behind it."""
    return page.words[k] in ("not", "never") or page.words[k - 1 : k + 1] == ["no", "longer"]


def _leads_to_recorded(page: Page, k: int, end: int) -> bool:
    while k < end and page.words[k] in _BETWEEN:
        k += 1
    return k < end and page.words[k] in _RECORDED


def _start(page: Page, sentence: Sentence, k: int) -> int:
    while k > sentence.i and page.words[k - 1] not in _STOPS and page.breaks[k] < Break.COLUMN:
        k -= 1
    named = within(page.mentions, k - 2, k - 1) if k > sentence.i + 1 and page.words[k - 1] == "and" else []
    return k - 2 if any(m.kind in _FINDINGS for m in named) else k  # 'gap and glide went untested'


def _end(page: Page, sentence: Sentence, k: int) -> int:
    return next((n for n in range(k, sentence.j) if page.words[n] in _STOPS), sentence.j)
