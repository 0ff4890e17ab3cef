"""What was talked over, told by a noun: 'a conversation about repair versus transfer', 'the choice of a graft'."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_TALKS = word_list("talks", "talks")
_CHOICES = word_list("talks", "choices")
_ABOUT = frozenset(["about", "over", "on", "of", "regarding", "concerning", "around", "as"])
_BETWEEN = frozenset(["of", "between", ",", ":"])
_AFTER = frozenset(["after", "following", "at"])
_ENDS = frozenset([";", ".", "but", "however"])
_DONE = frozenset(["was", "were", "i", "we", "then"])
_FAR = 6  # words of 'a discussion took place with the family about'


def mark_talks(page: Page, sentence: Sentence) -> None:
    """Set aside what a talk was about, or what a choice was between, up to where it turns to what was done."""
    if _TALKS.isdisjoint(sentence.said) and _CHOICES.isdisjoint(sentence.said):
        return
    words = page.words
    turns = {"and", ","} if words[sentence.i] in _AFTER else {"and"}
    for k in range(sentence.i, sentence.j):
        about = _topic(words, k, sentence.j)
        if about >= 0:
            page.mark(about, _turn(words, about, sentence.j, turns), "considered")


def _topic(words: list[str], k: int, j: int) -> int:
    """'A talk with him about', 'a choice between': the word behind which the topic stands, -1 where there is none."""
    if words[k] in _CHOICES and words[k - 1] != "of":  # 'the suture of choice'
        return k + 1 if k + 1 < j and words[k + 1] in _BETWEEN else -1
    if words[k] not in _TALKS:
        return -1
    return next((n for n in range(k + 1, min(k + 1 + _FAR, j)) if words[n] in _ABOUT), -1)


def _turn(words: list[str], about: int, j: int, turns: set[str]) -> int:
    """'... and a four-strand repair was done', 'After a talk about a graft, I sewed ...': where the topic ends."""
    end = next((n for n in range(about, j) if words[n] in _ENDS), j)
    done = (n for n in range(about, end) if words[n] in turns and not _DONE.isdisjoint(words[n + 1 : end]))
    return next(done, end)
