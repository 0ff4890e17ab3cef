"""Dictation without full stops: a long run of words is cut where a new subject begins after something was said.

Only sentences far longer than punctuation would leave them are cut, and only before a tendon, digit, pulley, nerve or
the skin, once the run before it holds a finding.
"""

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.bearing.by_depth import name_by_depth
from notereader.reader.bearing.companions import name_companions
from notereader.reader.bearing.digits import index_words
from notereader.reader.dictation.openings import (
    all_name,
    leads_with_finger,
    opens_statement,
    so_was,
    turns,
    turns_to_finger,
    verb_after,
)
from notereader.reader.dictation.splices import cut_at_commas, is_spliced
from notereader.reader.mentions.edge_sutures import drop_loose_edges, name_edge_sutures
from notereader.reader.mentions.measures import count_of
from notereader.reader.mentions.spoken import hear_pulleys
from notereader.reader.page import Mention, Page, Sentence, page_of, within
from notereader.reader.standing.fancies import cut_behind_fancy
from notereader.vocabulary.wordlists import word_list

_SHORTEST = 3  # words
_LONG = 30  # words; a sentence of the practice notes seldom has more without a comma or a full stop
_WITHOUT_STOPS = 20  # words, where the whole note makes no stops
_LONGEST = 24  # words; more than any phrase of the vocabulary has
_TIES = frozenset(["digit", "digit?", "tendon", "slip", "border", "side", "quantifier"])
_SUBJECTS = word_list("breaths", "subjects")
_SAYS = word_list("breaths", "says")
_OPENERS = word_list("breaths", "openers")
_STARTS = word_list("breaths", "starts")
_GLUE = word_list("breaths", "glue")
_LEADS_ON = word_list("breaths", "leads_on")
_MOVES_IT = word_list("breaths", "moves_it")
_ARTICLES = frozenset(["the", "a", "an"])  # 'the partially cut FDP of the ring finger'
_QUALIFIED = (["the", "intact"], ["an", "intact"], ["the", "cut"], ["the", "divided"], ["the", "repaired"])


@Language.component("notereader_breaths")
def breaths(doc: Doc) -> Doc:
    """Cut unpunctuated runs of words into sentences, which hold from here on. RETURNS the same Doc."""
    page = page_of(doc)
    hear_pulleys(page)
    name_companions(page)
    name_by_depth(page)
    drop_loose_edges(page)
    name_edge_sutures(page)
    index_words(page)
    cut: list[Sentence] = []
    longest = _WITHOUT_STOPS if _has_no_stops(page) else _LONG
    for sentence in page.sentences:
        if _is_run(page, sentence, longest):
            cut += _cut(page, sentence)
        else:
            cut += cut_at_commas(page, sentence) if is_spliced(page, sentence) else cut_behind_fancy(page, sentence)
    page.sentences = cut
    for sentence in cut:
        sentence.said = frozenset(page.words[sentence.i : sentence.j])
    return doc


def _has_no_stops(page: Page) -> bool:
    """Tell whether a note was dictated as a whole without stops, so that its paragraphs too are runs of statements."""
    stops = sum(word in _MARKS for word in page.words)
    return len(page.words) > _WHOLE_NOTE and stops * _SELDOM < len(page.words)


_MARKS = frozenset([".", ",", ";", ":", "(", "|", "-"])
_WHOLE_NOTE = 120  # words
_SELDOM = 40  # words to a stop


def _is_run(page: Page, sentence: Sentence, longest: int) -> bool:
    """Tell whether a sentence is longer than `longest` and has next to no punctuation."""
    length = sentence.j - sentence.i
    if length < longest or sentence.prefix:
        return False
    marks = sum(w in (",", ";", ":", "(", "-") for w in page.words[sentence.i : sentence.j])
    return marks * 18 < length


def _cut(page: Page, sentence: Sentence) -> list[Sentence]:
    by_word: dict[int, Mention] = {}
    saying: set[int] = set()
    for m in within(page.mentions, sentence.i, sentence.j):
        by_word.setdefault(m.i, m)
        saying |= {m.i} if (m.kind, m.value) == ("opened", "intact") else set()  # 'both slips are good | nerves ...'
    parts: list[Sentence] = []
    first, said = sentence.i, False
    for k in range(sentence.i, sentence.j):
        begun = by_word.get(k)
        just_said = said or page.words[k - 1] in _SHARE
        told = just_said and (opens_statement(page, first, k) or turns_to_finger(page, sentence.i, k))
        if told or (k - first >= _SHORTEST and turns(page, k)):
            parts.append(Sentence(first, k, sentence.section, sentence.block, False))
            first, said = k, so_was(page, k)
        elif just_said and k - first >= _SHORTEST and _begins(page, k, begun):
            start = _with_opener(page, _with_object(page, k, first), first)
            if start - first >= _SHORTEST:
                parts.append(Sentence(first, start, sentence.section, sentence.block, False))
                first, said = start, False
        if begun is not None:
            said = said or begun.kind in _SAYS or k in saying or _denied_round(page, first, begun)
    parts.append(Sentence(first, sentence.j, sentence.section, sentence.block, False))
    parts[0].label = sentence.label
    return parts


def _denied_round(page: Page, first: int, m: Mention) -> bool:
    """'I did not do an epitendinous suture': said, without a word for what it is made of."""
    before = page.words[max(first, m.i - _NOT_FAR) : m.i]
    return (m.kind, m.value) == ("role", "peripheral") and not {"no", "not"}.isdisjoint(before)


_NOT_FAR = 4  # words
_SHARE = frozenset(["percent", "%"])


def _begins(page: Page, k: int, m: Mention | None) -> bool:
    """Tell whether a new statement begins at word k: a subject that no little word ties to what stands before."""
    word = page.words[k]
    before = page.words[k - 1]
    if m is not None and (m.kind in _SUBJECTS or _leads_a_tendon(page, m)):
        at = k - 1
        while at > 0 and (page.words[at] in _DETERMINERS or page.words[at - 1 : at + 1] in _THE_OTHER):
            at -= 1
        free = not _glued(page, at) or _cut_through(page, m, at) or _own_statement(page, m, at)
        return free and not _tied(page, k) and not _is_object(page, m, at)
    if m is not None and m.kind == "endword":
        return not _WERE.isdisjoint(page.words[m.j : m.j + 1]) and page.words[k - 1] not in _GLUE
    if word == "then" and before == "and":
        behind = within(page.mentions, k, k + 9)
        return page.words[k - 2] != "," and any((m.kind, m.value) in _AROUND for m in behind)
    return bool(word in _STARTS and before not in _GLUE and before not in _LEADS_ON)


def _leads_a_tendon(page: Page, m: Mention) -> bool:
    """'... with four oh ethibond long f d p same suture': a short name of a finger, right before its tendon."""
    return m.kind == "digit?" and any(e.kind == "tendon" and e.i == m.j for e in within(page.mentions, m.j, m.j + 1))


def _with_object(page: Page, k: int, first: int) -> int:
    """'And palmaris I cut it out', 'A2 I vented the edge of it': what is told of stands first; return where it begins.

    `k` is the word at which the statement seemed to begin.
    """
    words = page.words
    if words[k] not in ("i", "we"):
        return k
    near = [m for m in within(page.mentions, max(first, k - _LONGEST), k) if m.kind in _SUBJECTS]
    taken_up = next((n for n in range(k + 2, min(k + 8, len(words))) if words[n] in _IT), None)
    if near and near[-1].kind == "pulley":  # 'a two pulley I vented the proximal part'
        parts = (n for n in range(k + 2, min(k + _PART_NEAR, len(words))) if words[n] in _PARTS)
        taken_up = taken_up or next(parts, None)
    if tuple(words[k + 1 : k + 3]) in _DID_TO_IT:
        taken_up = k + 1  # 'and the small profundus I did the same', 'the superficialis I thought about repairing'
    if taken_up is None or not near or near[-1].j != k:
        return k
    if any(m.kind in _SUBJECTS for m in within(page.mentions, k, taken_up)):
        return k
    start = near[-1].i
    while any(m.j == start for m in near):  # 'profundus middle'
        start = next(m.i for m in near if m.j == start)
    lead = start - 1 - (words[start - 1] == "the")
    tied = _glued(page, lead) and words[lead] not in ("and", ",") and not _ends_on_both(page, lead)
    return k if tied and not _around_another(page, near, first, start) else start


_DID_TO_IT = frozenset(
    [("did", "the"), ("did", "with"), ("did", "likewise"), ("did", "as"), ("thought", "about"), ("thought", "of")]
)
_PART_NEAR = 6  # words
_PARTS = frozenset(["part", "half", "third", "edge", "end", "quarter", "portion", "lip", "bit", "margin"])


def _around_another(page: Page, near: list[Mention], first: int, start: int) -> bool:
    """'Profundus index, running stitch around profundus middle I left it': no stitch goes around another finger's."""
    opens = [m for m in within(page.mentions, first, first + 4) if m.kind in ("tendon", "digit")]
    return page.words[start - 1] in ("around", "round") and len({m.value for m in opens if m.kind == "tendon"}) == 1


def _own_statement(page: Page, m: Mention, at: int) -> bool:
    """'I left that radial slip was fine', 'I cut it out and the FDS was half cut': a verb of its own follows."""
    if page.words[at] not in ("that", "it", "and") or verb_after(page, m.j) is None:
        return False
    if page.words[at] == "and":
        named = _NAMES | {"plural", "generic"}  # '... of the index and middle fingers and the FPL were intact'
        return not any(e.j == at and e.kind in named for e in within(page.mentions, at - _LONGEST, at))
    return any(e.j == at and e.kind in _DONE for e in within(page.mentions, at - 4, at))


def _is_object(page: Page, m: Mention, at: int) -> bool:
    """'I released the A1 pulley completely': what is done to it stands before it, and no verb of its own follows."""
    if (
        m.kind == "slip"
        and page.words[at] in _MOVES_IT
        and page.words[at - 1] in _DOERS
        and verb_after(page, m.j) is None
    ):
        return True  # '... up the tendon end and brought the two tails out through the nail'
    if any(
        e.kind == "opened" and e.j == at + 1 and _leads_to_pulley(page, e) for e in within(page.mentions, at - 3, at)
    ):
        return verb_after(page, m.j) is None
    done = next((e for e in within(page.mentions, at - 2, at + 1) if e.kind in _DONE and e.j == at + 1), None)
    if done is None or page.words[done.i - 1] in _WAS or verb_after(page, m.j) is not None:
        return False
    again = m.kind == "pulley" and any(e.value == m.value for e in within(page.mentions, done.i - 4, done.i))
    return again or page.words[done.i - 1] in _DOERS  # 'a cut over the A1 pulley, released the A1 pulley'


def _leads_to_pulley(page: Page, done: Mention) -> bool:
    """'It sufficed to lay open C1 and A3', 'I then had to lay open the A3 pulley'."""
    return "to" in page.words[done.i : done.j - 1] and page.words[done.j - 1] == "open"


def _glued(page: Page, at: int) -> bool:
    """'A running suture around the profundus' goes on; 'a running 6-0 all around the sublimis I put back' does not."""
    word = page.words[at]
    return word in _GLUE or (word in ("around", "round") and page.words[at - 1] != "all")


def _cut_through(page: Page, m: Mention, at: int) -> bool:
    """'Profundus cut right through superficialis of the small finger has 40%': the second is a subject of its own.

    So it is where a verb leads to the cut: 'it is off and completely through the superficialis is in one piece'.
    """
    told = [e for e in within(page.mentions, at - 3, at) if e.kind == "extent" and e.j in (at, at + 1)]
    if page.words[at] != "through":
        return False
    verb = verb_after(page, m.j) is not None
    led = verb and any(page.words[e.i - 1] in _LEADS_TO_CUT for e in told)
    return led or (any(_owned(page, e.i) for e in told) and (verb or _told_after(page, m.j)))


def _owned(page: Page, i: int) -> bool:
    """Tell whether the words before word i name whose what follows is: 'profundus to index', 'index and ring all'."""
    before = [m for m in within(page.mentions, max(0, i - _LONGEST), i) if m.j == i]
    return any(m.kind in ("tendon", "digit", "quantifier") for m in before)


def _told_after(page: Page, k: int) -> bool:
    """Tell whether a finding follows a name that ends before word k: 'superficialis to little intact'."""
    told = (m for m in within(page.mentions, k, k + 6) if m.kind in ("extent", "hurt"))
    return any(all_name(page, k, m.i) for m in told)


_LEADS_TO_CUT = frozenset(["and", "was", "were", "is", "are"])
_DETERMINERS = frozenset(["the", "both", "all", "left", "right", "each"])
_THE_OTHER = [["the", "other"], ["all", "other"], ["the", "remaining"], ["all", "remaining"]]
_WAS = frozenset(["was", "were", "is", "are", "been", "be", "being", "got"])
_WERE = frozenset(["were", "are", "was", "looked"])
_IT = frozenset(["it", "that", "them"])
_DOERS = frozenset(["i", "we", "and", "then", "to", "he", "she", "also"])
_DONE = frozenset(["deed", "opened", "restored"])
_AROUND = frozenset([("pattern", "running"), ("pattern", "running locking"), ("role", "peripheral")])
_NAMES = _TIES | _SUBJECTS


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
    start = _with_place(page, k, first)
    while start - 1 > first and page.words[start - 1] in _OPENERS and not _ends_there(page, start):
        start -= 1
    return start


def _ends_there(page: Page, k: int) -> bool:
    """'I did not do an epitendinous suture there | no gap'."""
    if _ends_on_both(page, k - 1):
        return True
    return page.words[k - 1] == "there" and page.words[k] not in ("was", "were", "is")


def _ends_on_both(page: Page, at: int) -> bool:
    """'... a running epitenon on both | the ring superficialis I did with': both are those told of before."""
    return page.words[at] == "both" and page.words[at - 1] in _ON and page.words[at + 1] == "the"


_ON = frozenset(["on", "in", "for", "around", "round", "to", "of"])


def _with_place(page: Page, k: int, first: int) -> int:
    """'..., and in the ring finger the profundus was cut': the finger that leads goes with what follows it."""
    at = k - (page.words[k - 1] == "the")
    finger = next((m for m in within(page.mentions, at - 3, at) if m.kind == "digit" and m.j == at), None)
    if finger is None:
        return k
    lead = finger.i - 1 - (page.words[finger.i - 1] == "the")
    joined = lead - 1 > first and (
        page.words[lead - 1] in _JOINS or leads_with_finger(page, finger.i, first, finger.value)
    )
    return lead if page.words[lead] in ("in", "on", "for") and joined else k


_JOINS = frozenset([",", ";", "and", "while", "whereas", "but", "then"])
