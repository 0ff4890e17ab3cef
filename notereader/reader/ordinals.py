"""'The former', 'the latter', 'the second': a tendon meant by its place in what was named last."""

from notereader.reader.page import Mention, Page, Sentence
from notereader.vocabulary.wordlists import word_list

_PLACES = {"former": 0, "first": 0, "second": 1, "third": 2, "latter": -1, "last": -1}
_OF_TWO = frozenset(["former", "latter"])
_FOLLOWS = word_list("ordinals", "follows")
_LEADS = frozenset(["in", "of", "for", "on"])
_MERELY = frozenset(["still", "merely", "only", "just", "simply", "then", "also", "not"])
_GOES_ON = frozenset(["it", "a", "an", "we", "i", "this", "there", "only", "one", "two", "four", "six"])
_OTHER_THINGS = frozenset(["pulley", "sided", "bundle", "anynerve", "anyartery", "structure", "bone", "date"])


def places_told(page: Page, sentence: Sentence, mentions: list[Mention]) -> list[tuple[int, str]]:
    """Return the words of a sentence that point to a tendon by its place, each with the word for the place."""
    words = page.words
    found: list[tuple[int, str]] = []
    if _PLACES.keys().isdisjoint(sentence.said):
        return found
    for k in range(sentence.i, sentence.j - 1):
        word = words[k + 1]
        if words[k] != "the" or word not in _PLACES:
            continue
        if not (_stands_alone(words, k + 2, sentence.j) or _led(words, k, sentence)):
            continue
        named = max((m.i for m in mentions if m.kind == "tendon" and m.i < k), default=-1) if word in _OF_TWO else -1
        if not any(m.kind in _OTHER_THINGS and named < m.i < k for m in mentions):
            found.append((k, word))
    return found


def fingers_told(page: Page, sentence: Sentence) -> list[tuple[int, int]]:
    """Return the words that point to one of two fingers: 'in the former A2 was vented', each with its place, 0 or 1."""
    if _OF_TWO.isdisjoint(sentence.said):
        return []
    words = page.words
    return [
        (k, 0 if words[k + 1] == "former" else 1)
        for k in range(sentence.i + 1, sentence.j - 1)
        if words[k] == "the" and words[k + 1] in _OF_TWO and words[k - 1] in _LEADS
    ]


def _stands_alone(words: list[str], k: int, end: int) -> bool:
    """Tell whether the place is said of no noun: 'the first was repaired', not 'the first stitch'."""
    after = words[k] if k < end else "."
    if after in _MERELY and k + 1 < end:
        after = words[k + 1]  # 'the latter merely smoothed'
    return after in _FOLLOWS or (after.endswith("ed") and after not in ("needed",))


def _led(words: list[str], k: int, sentence: Sentence) -> bool:
    """'In the former it was a Becker and in the latter a plain Kessler', but not 'for the former repair'."""
    last = k + 2 < sentence.j
    return k > sentence.i and words[k - 1] in _LEADS and words[k + 1] in _OF_TWO and last and words[k + 2] in _GOES_ON


def at_place(word: str, count: int) -> int | None:
    """Return which of so many tendons a word means, counted from nought; None where the word does not fit the count."""
    if count < 2 or (word in _OF_TWO and count != 2):
        return None
    place = _PLACES[word]
    return place if place < count else None
