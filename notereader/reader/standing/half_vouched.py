"""What a sentence leaves open or has from hearsay: 'it may or may not have gapped', 'six strands, or so I was told'.

Neither the state nor its opposite is a finding, nor is a suture that only the stickers or the needle count speak for.
"""

from notereader.reader.layout.clauses import clause_start
from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.good_states import GOOD_STATES, OF_SUTURES, is_good
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_OPEN = phrases_by_first_word("half_vouched", "left_open")
_OR_SO = phrases_by_first_word("half_vouched", "or_so")
_WHO = word_list("half_vouched", "who")
_JUDGING = phrases_by_first_word("half_vouched", "judging")
_PAPERS = word_list("half_vouched", "papers")
_TRUSTED = word_list("half_vouched", "trusted")
_ENDS = frozenset([";", ".", ":", "but", "though", "although", "however"])
_MARKS = frozenset([",", ";", "(", "-"])
_REACH = 6  # words: 'if the count of the needles on the sheet'


def mark_half_vouched(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence leaves open, and what it has only from hearsay or from the papers of the theatre."""
    said = sentence.said
    if not _OPEN.keys().isdisjoint(said):
        _mark_left_open(page, sentence)
    if "so" in said and "or" in said:
        _mark_or_so(page, sentence)
    if not _PAPERS.isdisjoint(said):
        _mark_by_the_papers(page, sentence)


def _mark_left_open(page: Page, sentence: Sentence) -> None:
    """'There may or may not have been a hair of gapping': its clause tells of no state, be it good or bad."""
    words = page.words
    for k in range(sentence.i, sentence.j):
        end = next((k + len(p) for p in _OPEN.get(words[k], ()) if words[k : k + len(p)] == p), 0)
        if not end:
            continue
        last = next((n for n in range(end, sentence.j) if words[n] in _ENDS), sentence.j)
        for m in within(page.mentions, clause_start(page, sentence, k), last):
            if m.kind in GOOD_STATES or is_good(m):
                page.mark(m.i, m.j, "considered")


def _mark_or_so(page: Page, sentence: Sentence) -> None:
    """'An edge stitch was run, or so the count of needles suggests', but not 'four strands of 4-0 or so'."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 2):
        end = next((k + len(p) for p in _OR_SO.get(words[k], ()) if words[k : k + len(p)] == p), 0)
        if end and words[k - 1] in _MARKS and words[end : end + 1] != [] and words[end] in _WHO:
            _set_aside(page, clause_start(page, sentence, k - 1), k)


def _mark_by_the_papers(page: Page, sentence: Sentence) -> None:
    """'An edge stitch went in, if the needle count is to be believed', 'judging by the stickers six strands'."""
    words = page.words
    for k in range(sentence.i, sentence.j - 2):
        end = next((k + len(p) for p in _JUDGING.get(words[k], ()) if words[k : k + len(p)] == p), 0)
        behind = words[end : min(end + _REACH, sentence.j)] if end else []
        paper = next((n for n, word in enumerate(behind) if word in _PAPERS), -1)
        if paper < 0 or (words[k] == "if" and _TRUSTED.isdisjoint(words[end + paper : end + paper + _REACH])):
            continue
        opens = k == sentence.i or words[k - 1] in _ENDS
        begin = k if opens else clause_start(page, sentence, k - (words[k - 1] in _MARKS))
        last = next((n for n in range(k, sentence.j) if words[n] in _ENDS), sentence.j)
        _set_aside(page, begin, last)


def _set_aside(page: Page, i: int, j: int) -> None:
    for m in within(page.mentions, i, j):
        if (m.kind in OF_SUTURES or m.kind in GOOD_STATES) and is_good(m) and m.i < m.j:
            page.mark(m.i, m.j, "considered")
    for k in (k for k in range(i, j) if page.words[k] in sizes()):
        page.mark(k, k + 1, "considered")  # 'judging by the stickers there was a 6-0 edge stitch'
