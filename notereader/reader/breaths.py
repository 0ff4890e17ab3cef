"""Dictation without full stops: a long run of words is cut where a new subject begins after something was said.

Only sentences far longer than punctuation would leave them are cut, and only before a tendon, digit, pulley, nerve or
the skin, once the run before it holds a finding.
"""

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.digits import index_words
from notereader.reader.measures import count_of
from notereader.reader.page import Mention, Page, Sentence, page_of, within
from notereader.vocabulary.wordlists import word_list

_LONG = 30  # words; a sentence of the practice notes seldom has more without a comma or a full stop
_LONGEST = 24  # words; more than any phrase of the vocabulary has
_TIES = frozenset(["digit", "digit?", "tendon", "slip", "border", "side", "quantifier"])
_SUBJECTS = word_list("breaths", "subjects")
_SAYS = word_list("breaths", "says")
_OPENERS = word_list("breaths", "openers")
_STARTS = word_list("breaths", "starts")
_GLUE = word_list("breaths", "glue")
_ARTICLES = frozenset(["the", "a", "an"])  # 'the partially cut FDP of the ring finger'
_QUALIFIED = (["the", "intact"], ["an", "intact"], ["the", "cut"], ["the", "divided"], ["the", "repaired"])


@Language.component("notereader_breaths")
def breaths(doc: Doc) -> Doc:
    """Cut unpunctuated runs of words into sentences, which hold from here on. RETURNS the same Doc."""
    page = page_of(doc)
    index_words(page)
    cut: list[Sentence] = []
    for sentence in page.sentences:
        cut += _cut(page, sentence) if _is_run(page, sentence) else [sentence]
    page.sentences = cut
    for sentence in cut:
        sentence.said = frozenset(page.words[sentence.i : sentence.j])
    return doc


def _is_run(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence is long and has next to no punctuation."""
    length = sentence.j - sentence.i
    if length < _LONG or sentence.prefix:
        return False
    marks = sum(w in (",", ";", ":", "(", "-") for w in page.words[sentence.i : sentence.j])
    return marks * 18 < length


def _cut(page: Page, sentence: Sentence) -> list[Sentence]:
    by_word: dict[int, Mention] = {}
    for m in within(page.mentions, sentence.i, sentence.j):
        by_word.setdefault(m.i, m)
    parts: list[Sentence] = []
    first, said = sentence.i, False
    for k in range(sentence.i, sentence.j):
        begun = by_word.get(k)
        if said and k - first >= 3 and _begins(page, k, begun):
            start = _with_opener(page, k, first)
            if start - first >= 3:
                parts.append(Sentence(first, start, sentence.section, sentence.block, False))
                first, said = start, False
        if begun is not None:
            said = said or begun.kind in _SAYS
    parts.append(Sentence(first, sentence.j, sentence.section, sentence.block, False))
    parts[0].label = sentence.label
    return parts


def _begins(page: Page, k: int, m: Mention | None) -> bool:
    """Tell whether a new statement begins at word k: a subject that no little word ties to what stands before."""
    word = page.words[k]
    before = page.words[k - 1]
    if m is not None and m.kind in _SUBJECTS:
        at = k - 1
        while at > 0 and page.words[at] in ("the", "both", "all", "left", "right", "each"):
            at -= 1
        return (not _glued(page, at) or _cut_through(page, m, at)) and not _tied(page, k)
    return bool(word in _STARTS and before not in _GLUE and before not in ("no", "not", "to", "that", "which", "when"))


def _glued(page: Page, at: int) -> bool:
    """'A running suture around the profundus' goes on; 'a running 6-0 all around the sublimis I put back' does not."""
    word = page.words[at]
    return word in _GLUE or (word in ("around", "round") and page.words[at - 1] != "all")


def _cut_through(page: Page, m: Mention, at: int) -> bool:
    """'Profundus cut right through superficialis of the small finger has 40%': the second is a subject of its own."""
    told = (e for e in within(page.mentions, at - 3, at) if e.kind == "extent" and e.j == at + 1)
    owned = any(e.i - 1 in page.tendon_words for e in told)
    after = page.words[m.j : m.j + 5]
    verb = next((n for n, word in enumerate(after) if word in _HAS), None)
    return owned and verb is not None and _OF_THE_FINGER.issuperset(after[:verb])


_HAS = frozenset(["has", "is", "was", "had"])
_OF_THE_FINGER = frozenset(["of", "the", "in", "index", "middle", "long", "ring", "small", "little", "finger", "thumb"])


def _tied(page: Page, k: int) -> bool:
    """Tell whether the word before is part of the same name: 'index FDP', 'partial FDS'."""
    here = next(iter(within(page.mentions, k, k + 1)), None)
    if here is not None and here.kind == "digit" and here.j - here.i > 1 and k - 1 in page.tendon_words:
        return False
    before = [m for m in within(page.mentions, k - _LONGEST, k) if m.j >= k - 1]
    share = page.words[k - 1] in ("complete", "partial") or page.words[k - 2 : k] in _QUALIFIED
    told = share and any(m.j == k - 1 and m.kind in ("tendon", "slip") for m in before)  # 'profundus complete'
    ending = [m for m in before if m.j >= k]
    share = share or any(m.kind == "extent" and _is_determiner(page.words[m.i - 1]) for m in ending)
    return any(m.kind in _TIES or (m.kind == "extent" and share and not told) for m in ending)


def _is_determiner(word: str) -> bool:
    return word in _ARTICLES or count_of(word) > 1


def _with_opener(page: Page, k: int, first: int) -> int:
    start = k
    while start - 1 > first and page.words[start - 1] in _OPENERS:
        start -= 1
    return start
