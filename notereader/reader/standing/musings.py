"""What a writer would do in another case: 'with a six-strand repair I would ...', 'I should of course have used four'.

The first names a repair only to compare with; the second tells of what was not done, and so does 'six
strands would have been too bulky'.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_MODALS = frozenset(["would", "should", "could", "might"])
_WRITERS = frozenset(["i", "we", "one", "you", "surgeons"])
_LEADS = frozenset(["with", "after", "for", "following", "in", "on", "given", "behind"])
_ANY = frozenset(["a", "an", "any", "every", "such", "two", "four", "six", "eight", "2", "4", "6", "8", "some"])
_QUALITY = frozenset(["strandword", "stitch", "hold", "material", "role", "looped", "bite", "pulley", "deed"])
_ADVERBS = frozenset(["of", "course", "certainly", "gladly", "then", "always", "also", "rather", "perhaps", "not"])
# 'I would have him in a splint' is an order; 'I would have used' tells of what was not done.
_SOMEBODY = frozenset(["him", "her", "them", "the", "it", "you", "your", "this", "his", "a", "an", "no", "to"])
_ENDS = frozenset([";", ".", "but", "however", "yet"])
_OPENS = _ENDS | {",", "as", "since", "because", "for", "which", "that", "and", "so", "where", "when", "if", "(", ":"}
_FAR = 14  # words of a lead


def mark_musings(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says of another case, or of what the writer would have done."""
    words = page.words
    if "which" in sentence.said and not _PROPOSED.isdisjoint(sentence.said):
        _mark_proposed(page, sentence)
    if not _SPOKE.isdisjoint(sentence.said):
        _mark_spoken_of(page, sentence)
    if "as" in sentence.said or "than" in sentence.said:
        _mark_likened(page, sentence)
    if _MODALS.isdisjoint(sentence.said):
        return
    for k in range(sentence.i + 1, sentence.j - 1):
        if words[k] in _MODALS and words[k - 1] in _WRITERS:
            _mark_lead(page, sentence, k - 1)
            _mark_undone(page, sentence, k)
            _mark_other_case(page, sentence, k)
        elif words[k] in _MODALS and _is_thought_of(words[_clause_start(page, sentence, k) : k]):
            for m in within(page.mentions, _clause_start(page, sentence, k), k):
                if m.kind in ("opened", "deed"):
                    page.mark(m.i, m.j, "considered")  # the pulley stays named, for '..., but I left it alone'
        elif words[k : k + 2] == ["would", "have"] and _is_any_suture(page, _clause_start(page, sentence, k), k):
            page.mark(_clause_start(page, sentence, k), _clause_end(page, sentence, k, _ENDS | {","}), "considered")
        elif words[k] in _MODALS and words[k + 1 : k + 3] == ["have", "been"]:
            end = _clause_end(page, sentence, k, _ENDS | {","})
            page.mark(_clause_start(page, sentence, k), end, "considered")


def _is_thought_of(subject: list[str]) -> bool:
    """'Cutting A2 would have made life easier', 'to open A4 would be simple': a deed only thought of."""
    named = subject[:1] != [] and subject[0].endswith("ing") and subject[0] not in _NO_DEEDS
    return len(subject) > 1 and (named or subject[0] == "to")


def _is_any_suture(page: Page, i: int, k: int) -> bool:
    """'A running peripheral suture would have cut out, so ...': one only thought of, and not 'the one I placed'."""
    named = any(m.kind in _QUALITY for m in within(page.mentions, i, k))
    return page.words[i] in _ANY and named


def _mark_spoken_of(page: Page, sentence: Sentence) -> None:
    """'I spoke with the patient of a graft, of a tenodesis, of doing nothing': what was talked over is not done."""
    words = page.words
    k = next(k for k in range(sentence.i, sentence.j) if words[k] in _SPOKE)
    behind = words[k + 1 : min(k + _NEAR, sentence.j)]
    listened = behind[:1] in (["of"], ["about"]) or not _LISTENERS.isdisjoint(behind)
    over = words[k] == "discussed" or not {"of", "about", "over"}.isdisjoint(words[k + 1 : sentence.j])
    told = over and words[k - 1] in ("i", "we")
    if listened and told:
        end = _clause_end(page, sentence, k, frozenset([";", ".", "but"]))
        done = (n for n in range(k, end) if words[n] == "and" and not _DONE.isdisjoint(words[n + 1 : end]))
        page.mark(k, next(done, end), "considered")


_DONE = frozenset(["was", "were", "i", "we", "had"])  # 'we talked about a graft and a core suture was placed'
_NO_DEEDS = frozenset(["nothing", "anything", "everything", "something", "ring", "bleeding", "swelling", "gliding"])
_LISTENERS = frozenset(["patient", "him", "her", "family", "parents", "mr", "mrs", "ms", "miss", "them"])
_SPOKE = frozenset(["spoke", "talked", "discussed"])
_NEAR = 5  # words


def _mark_proposed(page: Page, sentence: Sentence) -> None:
    """'A4, which the resident proposed to open, was left alone': what somebody wanted, in an aside of its own."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j):
        if words[k - 1 : k + 1] != [",", "which"]:
            continue
        end = next((n for n in range(k, sentence.j) if words[n] == ","), k)
        if any(words[n] in _PROPOSED and words[n + 1] == "to" for n in range(k, end)):
            page.mark(k, end, "considered")


_PROPOSED = frozenset(["proposed", "wanted", "wished", "offered", "asked", "meant", "intended", "hoped"])


def _mark_likened(page: Page, sentence: Sentence) -> None:
    """'Stronger than two strands', 'as good as a four-strand repair': what a repair is likened to it has not."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 1):
        as_much = words[k] == "as" and words[k - 2 : k - 1] == ["as"] and words[k - 1] in _STRENGTHS
        more = words[k] == "than" and words[k - 1] in _COMPARED
        if not (as_much or more):
            continue
        end = min(_clause_end(page, sentence, k, _ENDS | {",", "and"}), k + _NEAR)
        if any(m.kind in ("strandword", "stitch") for m in within(page.mentions, k, end)):
            page.mark(k, end, "considered")


_STRENGTHS = frozenset(["strong", "good", "sound", "firm", "weak", "secure"])
_COMPARED = frozenset(["stronger", "weaker", "better", "worse", "sounder", "firmer"])


def _mark_lead(page: Page, sentence: Sentence, subject: int) -> None:
    """'After a two-strand suture of a fresh tendon I would be more careful': the case that is thought of."""
    words = page.words
    begin = subject
    while begin > sentence.i and words[begin - 1] not in _ENDS:
        begin -= 1
    while begin < subject and words[begin] in ("and", "so", ",", "(", "-"):
        begin += 1
    lead = words[begin:subject]
    named = any(m.kind in ("digit", "tendon") for m in within(page.mentions, begin, subject))
    if not 1 < len(lead) <= _FAR or lead[0] not in _LEADS or lead[1] not in _ANY or named:
        return
    if any(m.kind in _QUALITY for m in within(page.mentions, begin, subject)):
        page.mark(begin, subject, "considered")


def _mark_undone(page: Page, sentence: Sentence, k: int) -> None:
    """'I should of course have used four strands': none were used."""
    words = page.words
    n = k + 1
    while n < sentence.j and words[n] in _ADVERBS:
        n += 1
    if words[n : n + 1] == ["have"] and n + 1 < sentence.j and words[n + 1] not in _SOMEBODY:
        ends = _ENDS | {","} if _opens_an_aside(page, sentence, k) else _ENDS
        page.mark(k - 1, _clause_end(page, sentence, n, ends), "considered")


def _opens_an_aside(page: Page, sentence: Sentence, k: int) -> bool:
    """'The FDS, of which one might have feared worse, was whole': a musing between commas reaches to the second."""
    comma = next((m for m in range(k, max(sentence.i, k - _ASIDE), -1) if page.words[m] == ","), None)
    return comma is not None and not _ASIDE_WORDS.isdisjoint(page.words[comma + 1 : comma + 3])


_ASIDE = 7  # words
_ASIDE_WORDS = frozenset(["which", "as", "whom", "contrary", "against", "where"])


def _mark_other_case(page: Page, sentence: Sentence, k: int) -> None:
    """'In an adult I would reach for four strands; here I chose a Lee': all of what another case would get."""
    begin = k - 1
    while begin > sentence.i and page.words[begin - 1] not in _ENDS:
        begin -= 1
    lead = page.words[begin : k - 1]
    if 1 < len(lead) <= _FAR and lead[0] in _LEADS and not _OTHER_CASE.isdisjoint(lead):
        page.mark(begin, _clause_end(page, sentence, k, _ENDS), "considered")


_OTHER_CASE = word_list("musings", "other_case")


def _clause_start(page: Page, sentence: Sentence, k: int) -> int:
    """'Two strands were placed, as six would have been too bulky': where the clause of word k begins."""
    return next((m + 1 for m in range(k - 1, sentence.i - 1, -1) if page.words[m] in _OPENS), sentence.i)


def _clause_end(page: Page, sentence: Sentence, k: int, ends: frozenset[str]) -> int:
    return next((m for m in range(k, sentence.j) if page.words[m] in ends), sentence.j)
