"""The finger put right: 'Correction: it was the middle finger throughout, not the ring', 'for ring read middle finger'.

Such a sentence takes back the name of the finger everywhere before it, so the words of the wrong name are read as the
right one before any rule asks whose a finding is.
"""

from itertools import pairwise

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

CORRECTS = word_list("corrected_digits", "corrects")
_MISNAMING = word_list("corrected_digits", "misnaming")
_PLACES = word_list("corrected_digits", "places")
_SHORT = {"long": "middle", "middle": "middle", "little": "small", "small": "small", "ring": "ring", "index": "index"}
_NOT = frozenset(["not", "never"])
_WRONG = {("wrong", "finger"), ("wrong", "digit")}
_INSTEAD = (["instead", "of"], ["rather", "than"])
_DETERMINERS = frozenset(["the", "left", "right", "finger"])
# A correction that names one of these speaks of it, and not of the finger as a whole.
_ABOUT_ONE_THING = frozenset(["tendon", "pulley", "sided", "structure", "anynerve", "zone", "material", "stitch"])


def put_right(page: Page) -> None:
    """Give the words of a finger named by mistake the finger meant; what was changed is noted on the Page."""
    for n, sentence in enumerate(page.sentences):
        if "wrong" in sentence.said:
            named = _wrong_finger(page, sentence, page.sentences[n : n + 3])
            if named is not None:
                _rename(page, *named)
                continue
        itself = _finger_itself(page, sentence)
        if itself is None and sentence.section != "addendum" and CORRECTS.isdisjoint(sentence.said):
            continue
        found = itself or _pair(page, sentence) or _misnamed_above(page, sentence, page.sentences[max(0, n - 1) : n])
        found = found or _told_next(page, sentence, page.sentences[n + 1 : n + 2])
        if found is None:
            continue
        right, wrong, at = found
        if any(m.kind == "digit" and m.j <= at and m.value == right for m in page.mentions):
            continue  # where both fingers were spoken of, one fact only may be meant
        page.mentions = [m for m in page.mentions if not _is_wrong(m, sentence, wrong)]
        _rename(page, right, wrong, at)


def _finger_itself(page: Page, sentence: Sentence) -> tuple[str, str, int] | None:
    """'The finger is the little one, not the middle, and ...': whichever is told of the finger itself."""
    words, i = page.words, sentence.i
    opens = words[i : i + 1] == ["the"] and not _FINGER.isdisjoint(words[i + 1 : i + 3])
    if "not" not in sentence.said or not opens or _IS.isdisjoint(words[i + 2 : i + 4]):
        return None
    digits = [m for m in within(page.mentions, i, min(i + _OPENING, sentence.j)) if m.kind == "digit"]
    right, wrong = (digits[0], digits[1]) if len(digits) > 1 else (None, None)
    if right is None or wrong is None or not _ONLY.issuperset(words[right.j : wrong.i]):
        return None
    stated = _IS.isdisjoint(words[right.j : wrong.i]) and "not" in words[right.j : wrong.i]
    return (right.value, wrong.value, i) if stated and right.value != wrong.value else None


_FINGER = frozenset(["finger", "digit"])
_IS = frozenset(["is", "was"])
_ONLY = frozenset([",", "and", "not", "the", "one", "finger", "of", "left", "right", "hand", "("])
_OPENING = 16  # words
_NEAR = 6  # words: 'read small finger for ring finger'


def _rename(page: Page, right: str, wrong: str, at: int) -> None:
    for m in page.mentions:
        if m.kind == "digit" and m.value == wrong and m.j <= at:
            m.value = right
    page.renamed = (right, wrong, at)


def _wrong_finger(page: Page, sentence: Sentence, here: list[Sentence]) -> tuple[str, str, int] | None:
    """'Sorry, wrong finger in the header. It is the middle finger.': of a note that named one finger only."""
    words = page.words[sentence.i : sentence.j]
    if not any(pair in _WRONG for pair in pairwise(words)):
        return None
    before = {m.value for m in page.mentions if m.kind == "digit" and m.j <= sentence.i}
    later = [m for s in here for m in within(page.mentions, s.i, s.j) if m.kind == "digit"]
    right = later[0].value if later else None
    if len(before) != 1 or right is None or right in before:
        return None
    return right, before.pop(), sentence.i


def _pair(page: Page, sentence: Sentence) -> tuple[str, str, int] | None:
    """Return the finger meant, the one named by mistake and where this is said; else None."""
    mentions = within(page.mentions, sentence.i, sentence.j)
    if any(m.kind in _ABOUT_ONE_THING for m in mentions):
        return None
    digits = [m for m in mentions if m.kind == "digit"]
    denied = {m.value for m in digits if _is_denied(page, m, sentence)}
    meant = {m.value for m in digits} - denied
    return (meant.pop(), denied.pop(), sentence.i) if len(meant) == len(denied) == 1 else None


def _misnamed_above(page: Page, sentence: Sentence, before: list[Sentence]) -> tuple[str, str, int] | None:
    """'The finger was the ring finger; "middle" in the heading is a slip', '... The title says middle in error.'

    The finger meant is named in the same sentence or in the one before it, and no other is.
    """
    if _MISNAMING.isdisjoint(sentence.said) or _PLACES.isdisjoint(sentence.said):
        return None
    wrong, meant = _names_by_part(page, sentence)
    at = sentence.i
    if not meant and before and before[0].block == sentence.block:
        at = before[0].i
        meant = {m.value for m in within(page.mentions, at, before[0].j) if m.kind == "digit"}
    return (meant.pop(), wrong.pop(), at) if len(wrong) == len(meant) == 1 and wrong != meant else None


def _told_next(page: Page, sentence: Sentence, behind: list[Sentence]) -> tuple[str, str, int] | None:
    """'Every mention of "ring finger" above is an error. The operated digit was the small finger.'"""
    if _MISNAMING.isdisjoint(sentence.said) or _PLACES.isdisjoint(sentence.said) or not behind:
        return None
    told = behind[0].block == sentence.block and not _OF_OPERATION.isdisjoint(behind[0].said)
    mentions = within(page.mentions, behind[0].i, behind[0].j)
    wrong, others = _names_by_part(page, sentence)
    meant = {m.value for m in mentions if m.kind == "digit"}
    if not told or others or any(m.kind in _ABOUT_ONE_THING for m in mentions):
        return None
    if not len(wrong) == len(meant) == 1 or wrong == meant:
        return None
    return meant.pop(), wrong.pop(), sentence.i


_OF_OPERATION = frozenset(["operated", "correct", "injured", "true"])


def _names_by_part(page: Page, sentence: Sentence) -> tuple[set[str], set[str]]:
    """Return the fingers a sentence names in its parts that tell of a misnaming, and those of the other parts."""
    stops = [k for k in range(sentence.i, sentence.j) if page.words[k] in (";", ",", ".")]
    wrong: set[str] = set()
    meant: set[str] = set()
    for i, j in pairwise([sentence.i, *stops, sentence.j]):
        words = page.words[i:j]
        named = {m.value for m in within(page.mentions, i, j) if m.kind == "digit"}
        if _MISNAMING.isdisjoint(words) or _PLACES.isdisjoint(words):
            meant |= named
        else:
            wrong |= named | {_SHORT[w] for w in words if w in _SHORT}
    return wrong, meant


def _is_denied(page: Page, m: Mention, sentence: Sentence) -> bool:
    before = [w for w in page.words[max(sentence.i, m.i - 4) : m.i] if w not in _DETERMINERS]
    behind = [w for w in page.words[m.j : min(m.j + 5, sentence.j)] if w[0].isalpha() and w not in _DETERMINERS]
    named = [w for w in before if w[0].isalpha()]
    misread = (named[-1:] == ["for"] and behind[:1] == ["read"]) or behind[:2] == ["should", "read"]
    misread = misread or (named[-1:] == ["for"] and "read" in page.words[max(sentence.i, m.i - _NEAR) : m.i])
    return misread or not _NOT.isdisjoint(before[-1:]) or before[-2:] in _INSTEAD


def _is_wrong(m: Mention, sentence: Sentence, wrong: str) -> bool:
    return m.kind == "digit" and m.value == wrong and sentence.i <= m.i < sentence.j
