"""'The former', 'the latter', 'the second': a tendon meant by its place in what was named last."""

from collections.abc import Iterator

from notereader.reader.page import Mention, Page, Sentence
from notereader.vocabulary.wordlists import word_list

_PLACES = {"former": 0, "first": 0, "second": 1, "third": 2, "latter": -1, "last": -1}
_OF_TWO = frozenset(["former", "latter"])
_OWNING = {own: word for word in _OF_TWO for own in (word + "'s", word + "\u2019s")}
_FOLLOWS_TWO = word_list("ordinals", "follows_two")
_FATES = word_list("ordinals", "fates")
_BESIDE = word_list("ordinals", "beside")  # 'it had slipped behind the former': only where it lay
_OPENS = frozenset([",", ";", ":", "and", "but"])
_FOLLOWS = word_list("ordinals", "follows")
_LEADS = frozenset(["in", "of", "for", "on"])
_MERELY = frozenset(["still", "merely", "only", "just", "simply", "then", "also", "not"])
_GOES_ON = frozenset(["it", "a", "an", "we", "i", "this", "there", "only", "one", "two", "four", "six"])
_OTHER_THINGS = frozenset(["pulley", "sided", "bundle", "anynerve", "anyartery", "structure", "bone", "date"])


def places_told(page: Page, sentence: Sentence, mentions: list[Mention]) -> list[tuple[int, int, str]]:
    """Return where a sentence points to a tendon by its place: the words that do so, and the word for the place."""
    if _PLACES.keys().isdisjoint(sentence.said) and _OWNING.keys().isdisjoint(sentence.said):
        return []
    found: list[tuple[int, int, str]] = []
    for i, j, word in (*_places(page.words, sentence), *_owning(page.words, sentence)):
        named = max((m.i for m in mentions if m.kind == "tendon" and m.i < i), default=-1) if word in _OF_TWO else -1
        if not any(m.kind in _OTHER_THINGS and named < m.i < i for m in mentions):
            found.append((i, j, word))
    return found


def _places(words: list[str], sentence: Sentence) -> Iterator[tuple[int, int, str]]:
    """Yield 'the former was sewn', 'the second was left', 'Former repaired, latter left'."""
    for k in range(sentence.i, sentence.j):
        word = words[k]
        if word not in _PLACES:
            continue
        articled = k > sentence.i and words[k - 1] == "the"
        if articled and (_stands_alone(words, k + 1, sentence.j, word) or _led(words, k - 1, sentence)):
            if word not in _OF_TWO or k - 1 == sentence.i or words[k - 2] not in _BESIDE:
                yield k - 1, k + 1, word
        elif word in _OF_TWO and (k == sentence.i or words[k - 1] in _OPENS) and _told_of(words, k + 1, sentence.j):
            yield k, k + 1, word


def _owning(words: list[str], sentence: Sentence) -> Iterator[tuple[int, int, str]]:
    """Yield "the latter's stump had drawn back", 'the proximal end of the latter': what is of one of the two."""
    for k in range(sentence.i + 1, sentence.j):
        if words[k] in _OWNING and words[k - 1] == "the":
            yield k - 1, k + 1, _OWNING[words[k]]


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


def _told_of(words: list[str], k: int, end: int) -> bool:
    """'Former repaired with a Kessler, latter left', 'Former: 4-0': what became of it, and no noun of 'former'."""
    return k < end and (words[k] in _FATES or words[k] in (":", "was", "is", "had", "has", "got", "not"))


def _stands_alone(words: list[str], k: int, end: int, word: str) -> bool:
    """Tell whether the place is said of no noun: 'the first was repaired', not 'the first stitch'."""
    after = words[k] if k < end else "."
    if word in _OF_TWO and after in _FOLLOWS_TWO:
        return True  # 'the former in four strands, the latter having none'
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
