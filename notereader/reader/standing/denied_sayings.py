"""What a writer denies that one could say: 'it could hardly be called gap-free', 'I cannot say that it was not bulky'.

The clause behind the denied verb is set aside: neither the good state in it nor its opposite is told. 'I would not call
it bulky' denies a bad state, which the rules read.
"""

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.good_states import GOOD_STATES
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_SAYING = word_list("denied_sayings", "saying")
_DENIED = word_list("denied_sayings", "denied")
_WRONG = word_list("denied_sayings", "wrong")
_ANEW = word_list("denied_sayings", "anew")
_OF_SUTURES = frozenset(["strandword", "stitch", "role", "pattern", "hold"])
_BAD = frozenset(["gap", "tension", "bulk", "glide", "role", "opened", "extent", "ends"])
_STOPS = frozenset([";", ".", ":", "(", ")", "but", "though", "although", "however", "-"])
_JOINS = frozenset(["nor", "or"])
_NOUNS = frozenset(["writing", "case", "true"])  # 'it is not the case that no peripheral suture was used'
_NEAR = 5  # words from a denial to its verb


def mark_denied_sayings(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says that nobody could say, or that it would be wrong to say."""
    if not _IRONIES.isdisjoint(sentence.said) or {"it", "not"} <= sentence.said:
        _mark_ironies(page, sentence)
    if _SAYING.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j - 1):
        if page.words[k] not in _SAYING or page.words[k + 1] == "for":
            continue  # 'was not called for'
        if page.words[k] in _NOUNS and page.words[k + 1] != "that":
            continue
        end = _clause_end(page, sentence, k + 1)
        first = _denial(page, sentence, k)
        if first < 0 and page.words[k - 1 : k] in (["to"], ["that"]):
            first, end = _wrong_behind(page, sentence, k, end)
        if first < 0 or not _promises(page, k + 1, end):
            continue
        inside = within(page.mentions, k + 1, end)
        if any(m.kind == "bulk" and page.words[m.j - 1] == "slim" for m in inside):
            for m in (m for m in inside if m.kind != "bulk" and _is_good(m)):
                page.mark(m.i, m.j, "considered")  # 'nobody would call it slim' tells of bulk
        else:
            page.mark(first, end, "considered")


def _mark_ironies(page: Page, sentence: Sentence) -> None:
    """'So much for an intact A2', 'free glide is something else', 'six strands, my foot': named and not so."""
    words = page.words
    for k in range(sentence.i, sentence.j - 1):
        for phrase in _LEADING.get(words[k], ()):
            if words[k : k + len(phrase)] == phrase:
                _mark_good(page, k, min(_clause_end(page, sentence, k + len(phrase)), k + _FAR))
        for phrase in _TRAILING.get(words[k], ()):
            if words[k : k + len(phrase)] == phrase and k > sentence.i:
                begin = max(sentence.i, k - _NEAR)
                stop = k - (words[k - 1] == ",")
                begin = next((n + 1 for n in range(stop - 1, begin - 1, -1) if words[n] in _PARTS), begin)
                _mark_good(page, begin, stop)


def _mark_good(page: Page, i: int, j: int) -> None:
    for m in within(page.mentions, i, j):
        if m.j <= j and _is_good(m):
            page.mark(m.i, m.j, "considered")


_LEADING = phrases_by_first_word("denied_sayings", "leading")
_TRAILING = phrases_by_first_word("denied_sayings", "trailing")
# The longest word of each phrase; 'it was not' has none of its own.
_PHRASES = [phrase for phrases in (*_LEADING.values(), *_TRAILING.values()) for phrase in phrases]
_IRONIES = frozenset([max(phrase, key=len) for phrase in _PHRASES if phrase[0] != "it" or phrase[-1] != "not"])
_PARTS = _STOPS - {"-"} | {",", "and"}
_FAR = 10  # words


def _denial(page: Page, sentence: Sentence, k: int) -> int:
    """Return the word that denies the verb of saying at word k, or -1; 'it is not wrong to say' denies nothing."""
    words = page.words
    for n in range(k - 1, max(sentence.i, k - _NEAR) - 1, -1):
        if words[n] in _STOPS or words[n] in (",", "and"):
            return -1
        if words[n] in ("i", "we") and n > sentence.i and words[n - 1] != "that" and not _is_denial(words[n - 1]):
            return -1  # 'no catching i would call it free', dictated without stops
        if words[n] in _WRONG:
            return -1 if "to" not in words[n:k] or _is_denial(words[n - 1]) or _is_denial(words[n - 2]) else n
        if _is_denial(words[n]):
            return n
    return -1


def _wrong_behind(page: Page, sentence: Sentence, k: int, end: int) -> tuple[int, int]:
    """'To call the repair gap-free would be untrue': the first and last word of it, or -1 where it is not wrong."""
    would = next((n for n in range(k + 1, end - 1) if page.words[n] in ("would", "is", "was")), end)
    wrong = would < end and not _WRONG.isdisjoint(page.words[would : min(would + _NEAR, sentence.j)])
    return (k, would) if wrong and not _is_denial(page.words[would + 1]) else (-1, end)


def _is_denial(word: str) -> bool:
    return word in _DENIED or word.endswith("n't")


def _clause_end(page: Page, sentence: Sentence, k: int) -> int:
    """'... was not bulky, nor that it did not snag; it did both': the clause, with what 'nor' adds to it."""
    for n in range(k, sentence.j):
        word, after = page.words[n], page.words[n + 1 : n + 2]
        joined = word == "," and after != [] and after[0] in _JOINS
        anew = word == "and" and after != [] and after[0] in _ANEW
        inside = word == "-" and page.ends[n - 1] == page.starts[n]  # 'gap-free'
        if (word in _STOPS and not inside) or (word == "," and not joined) or anew:
            return n
    return sentence.j


def _promises(page: Page, i: int, j: int) -> bool:
    """Tell whether a clause tells of a good state or a suture, or denies a bad one."""
    inside = within(page.mentions, i, j)
    if any(_is_good(m) for m in inside):
        return True
    denied = [c.j for c in within(page.cues, i, j) if c.value == "negated"]
    return any(m.kind in _BAD and any(0 <= m.i - k <= _NEAR for k in denied) for m in inside)


def _is_good(m: Mention) -> bool:
    return m.kind in _OF_SUTURES or m.value in GOOD_STATES.get(m.kind, ())
