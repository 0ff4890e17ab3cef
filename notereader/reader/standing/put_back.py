"""Sutures that were laid ready and not used: 'A 3-0 four-strand suture was opened; it went back into its box'.

A field that was never filled in says as little: 'The FPL was repaired with ***'.
"""

from notereader.reader.page import Break, Page, Sentence, within
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_BACK = word_list("put_back", "back")
_RETURNED = word_list("put_back", "returned")
_HOME = word_list("put_back", "home")
_LITTLE = word_list("put_back", "little")
_SUTURE = frozenset(["material", "stitch", "strandword", "looped"])
_ENDS = frozenset([";", ".", ":"])
_MEANS = frozenset(["with", "using", "by"])
_NEAR = 6  # words from the verb to where the suture went
_BLANK = ("***", "___", "....")


def mark_put_back(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says of a suture that it tells to have gone back unused, or elsewhere."""
    if not _READIED.isdisjoint(sentence.said):
        _mark_gone_elsewhere(page, sentence)
    if not _ANCHORS.isdisjoint(sentence.said):
        _mark_anchor_gone(page, sentence)
    k = _goes_back(page, sentence)
    if k < 0:
        return
    sutures = [m.i for m in within(page.mentions, sentence.i, k) if m.kind in _SUTURE]
    sutures += [n for n in range(sentence.i, k) if page.words[n].endswith("-0")]
    if sutures:
        begin = max(sutures)
        while begin > sentence.i and page.words[begin - 1] not in _ENDS:
            begin -= 1
        _mark_but_names(page, begin, k)
    elif page.words[sentence.i] in ("it", "this", "that", "both", "they"):
        before = next((s for s in reversed(page.sentences) if s.j <= sentence.i), None)
        if before is not None and before.block == sentence.block:
            page.mark(before.i, before.j, "considered")


def _mark_but_names(page: Page, i: int, j: int) -> None:
    """'A 3-0 was on the table for the FDP but was handed back unused; 5-0 used': the tendon stays the one spoken of."""
    names = {k for m in within(page.mentions, i, j) if m.kind in ("tendon", "digit") for k in range(m.i, m.j)}
    for k in range(i, j):
        if k not in names:
            page.mark(k, k + 1, "considered")


def _mark_anchor_gone(page: Page, sentence: Sentence) -> None:
    """'A bone anchor was opened, found too big and handed back', 'Anchor placed, pulled out of bone, discarded'."""
    words = page.words
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.kind != "anchor" or not _OF_AN_ANCHOR.isdisjoint(words[m.j : m.j + 1]):
            continue
        end = next((k for k in range(m.j, sentence.j) if words[k] in _ENDS), sentence.j)
        gone = next(
            (k for k in range(m.j, end) if any(words[k : k + len(p)] == p for p in _GONE.get(words[k], ()))), -1
        )
        if gone > 0 and not any(n.kind in _SUTURE for n in within(page.mentions, m.j, gone)):
            begin = next((k + 1 for k in range(m.i - 1, sentence.i - 1, -1) if words[k] in _ENDS), sentence.i)
            page.mark(begin, gone + 1, "considered")


_ANCHORS = frozenset(["anchor", "anchors"])
_GONE = phrases_by_first_word("put_back", "gone")
_OF_AN_ANCHOR = frozenset(
    ["packaging", "packet", "wrapper", "inserter", "handle", "driver", "drill", "needle", "needles"]
)


def _mark_gone_elsewhere(page: Page, sentence: Sentence) -> None:
    """'A running 6-0 had been opened for the epitendinous layer. It went into the nerve instead': not into the tendon.

    Either the rest of the sentence says so or the next one, which then begins with 'it'.
    """
    words = page.words
    opened = next((k for k in range(sentence.i, sentence.j) if words[k] in _READIED), sentence.j)
    sized = any(words[n].endswith("-0") for n in range(sentence.i, sentence.j))
    if not sized and not any(m.kind in _SUTURE for m in within(page.mentions, sentence.i, sentence.j)):
        return
    turn = next((k for k in range(opened, sentence.j) if words[k] in (",", ";", "but", "and")), sentence.j)
    if any(m.kind == "pulley" for m in within(page.mentions, max(sentence.i, opened - _AT_ITS_VERB), opened)):
        return  # 'A2 was opened and lifted as a flap; it was then closed with 5-0'
    if _elsewhere(words[turn : sentence.j]):
        page.mark(sentence.i, turn, "considered")
    elif turn == sentence.j and words[turn : turn + 1] and words[turn] in _TAKEN_UP:
        end = next((n for n in range(turn, min(turn + _FAR, len(words))) if words[n] == "."), turn)
        if _elsewhere(words[turn:end]):
            page.mark(sentence.i, sentence.j, "considered")


def _elsewhere(words: list[str]) -> bool:
    """'It went into the nerve', 'the skin got it', 'it was used for the drain': tell whether another tissue got it."""
    gone = next((k for k, word in enumerate(words) if word in _WENT), -1)
    return gone >= 0 and not _OTHER_TISSUES.isdisjoint(words) and _OF_TENDON.isdisjoint(words[: gone + _FAR_OFF])


_READIED = word_list("wishes", "readied")
_WENT = word_list("put_back", "went")
_OTHER_TISSUES = word_list("put_back", "other_tissues")
_OF_TENDON = frozenset(["tendon", "repair", "join", "core", "edge", "round", "around"])
_TAKEN_UP = frozenset(["it", "this", "that", "they", "instead", "the"])
_FAR = 25  # words
_AT_ITS_VERB = 4  # words: 'A2 pulley had been opened'
_FAR_OFF = 6


def _goes_back(page: Page, sentence: Sentence) -> int:
    """Return the word at which a suture is told to have been put back, or -1."""
    if _RETURNED.isdisjoint(sentence.said) and "unopened" not in sentence.said:
        return -1
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] == "unopened":
            return k + 1
        behind = words[k + 1 : min(k + _NEAR, sentence.j)]
        home = [n for n, word in enumerate(behind) if word in _HOME]
        if words[k] in _RETURNED and behind[:2] == ["back", "unused"]:
            return k + 3  # '... proved too thick and was handed back unused'
        if words[k] not in _RETURNED or not home or words[k - 1] == "what":
            continue
        between = behind[: home[0]]
        if not _BACK.isdisjoint(between) and all(w in _BACK or w in _LITTLE for w in between):
            return k + 2 + home[0]
    return -1


def mark_blank_means(page: Page, sentence: Sentence) -> None:
    """'The FPL was repaired with ***.': a line of a template that nobody filled in, which tells of no repair."""
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _MEANS or words[k + 1 : k + 2] not in ([], ["."], [","], [";"]):
            continue
        gap = page.text[page.starts[k] : page.starts[k + 1] if k + 1 < len(words) else len(page.text)]
        if not any(mark in gap for mark in _BLANK):
            continue
        begin = k
        while begin > sentence.i and words[begin - 1] not in _ENDS:
            begin -= 1
        page.mark(begin, k + 1, "unfilled")


def mark_blank_names(page: Page, sentence: Sentence) -> None:
    """'Modified Kessler, 4 strands, epitendinous ***': a name with a blank for all that is told of it tells nothing."""
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.kind not in _ASKED or (m.kind == "role" and m.value != "peripheral"):
            continue
        behind = page.text[page.ends[m.j - 1] : page.starts[m.j] if m.j < len(page.words) else len(page.text)]
        closes = m.j >= sentence.j or page.words[m.j] in (".", ",", ";") or page.breaks[m.j] >= Break.LINE
        if closes and behind.split("\n")[0].strip(" :") in _BLANK:
            page.mark(m.i, m.j, "unfilled")


_ASKED = frozenset(["role", "gap", "glide", "tension", "bulk"])
