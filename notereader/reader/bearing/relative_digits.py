"""Fingers told by where they stand: 'the two ulnar digits', 'the border digits', 'the outer two', 'the last of these'.

'Digits' and 'fingers' are those of the hand, unless the note has just listed fingers that do not hold them; 'ones',
'two' and a place alone, 'the ulnar one', 'the first two', are of those listed last.
"""

from notereader.reader.groups import DIGITS
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_FINGERS = DIGITS[1:]
_NOUNS = word_list("relative_digits", "nouns")
_ONES = frozenset(["one", "ones"])
_SIDES = frozenset(["radial", "ulnar"])
_BORDER = frozenset(["border", "outer", "marginal", "peripheral"])
_CENTRAL = frozenset(["central", "inner"])
_FIRST = frozenset(["first", "last"])
_NAMED = frozenset(["named", "mentioned"])
_ARTICLES = frozenset(["a", "an"])
_OF_THEM = frozenset(["these", "those", "them", "three", "four"])
_CLOSES = word_list("relative_digits", "closes")
_PAIR = 2
_BACK = 3  # sentences; further back no list is meant

Spot = tuple[int, int, tuple[str, ...]]  # words i to j, and the fingers they mean


def settle_relative_digits(page: Page) -> None:
    """Add to the Page the digits meant by where they stand."""
    if _TELLING.isdisjoint(page.words):
        return
    made = [m for n in range(len(page.sentences)) for m in _in_sentence(page, n)]
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


_TELLING = _SIDES | _BORDER | _CENTRAL | _FIRST | {"middle"}


def _in_sentence(page: Page, n: int) -> list[Mention]:
    sentence = page.sentences[n]
    if _TELLING.isdisjoint(page.words[sentence.i : sentence.j]):
        return []
    made: list[Mention] = []
    for k in range(sentence.i, sentence.j - 1):
        if page.words[k] not in _TELLING and not count_of(page.words[k]):
            continue
        spot = _spot(page, k, sentence.j, _listed(page, n, k))
        if spot is not None and spot[2] and not _of_other_things(page, n, k, spot[1]):
            i, j, digits = spot
            # One word each, so that they stand side by side like digits that are named.
            made += [Mention("digit", d, min(i + m, j - 1), min(i + m, j - 1) + 1) for m, d in enumerate(digits)]
    return made


def _of_other_things(page: Page, n: int, k: int, j: int) -> bool:
    """'The ulnar nerve was cut, the radial one intact', 'the ulnar one of the two slips': no finger is meant."""
    if _SIDES.isdisjoint(page.words[k:j]) or _ONES.isdisjoint(page.words[k:j]):
        return False
    first = page.sentences[max(0, n - 1)].i
    return any(m.kind in _THINGS for m in within(page.mentions, first, page.sentences[n].j))


_THINGS = frozenset(["sided", "structure", "bundle", "anynerve", "anyartery", "slip", "bone", "pulley"])


def _listed(page: Page, n: int, k: int) -> tuple[str, ...]:
    """Return the fingers of the last sentence up to word k that names more than one, in the order of the note."""
    for m in range(n, max(-1, n - _BACK - 1), -1):
        sentence = page.sentences[m]
        end = min(k, sentence.j)
        named = dict.fromkeys(d.value for d in within(page.mentions, sentence.i, end) if d.kind == "digit")
        if len(named) > 1:
            return _filled(page, sentence.i, end) if len(named) == _PAIR else tuple(named)
    return ()


def _filled(page: Page, i: int, j: int) -> tuple[str, ...]:
    """Return two fingers, and those between them where they are the ends of a range: 'index to small'."""
    named = [m for m in within(page.mentions, i, j) if m.kind == "digit"]
    first, last = named[0], next(m for m in named if m.value != named[0].value)
    if page.words[first.j : last.i] in (["to"], ["-"], ["through"]):
        a, b = sorted((DIGITS.index(first.value), DIGITS.index(last.value)))
        return DIGITS[a : b + 1]
    return first.value, last.value


def _spot(page: Page, k: int, end: int, listed: tuple[str, ...]) -> Spot | None:
    words = [*page.words[k : min(end, k + 5)], "", "", "", ""]
    count, place = count_of(words[0]), 1
    if not count and words[0] in _TELLING:
        count, place = count_of(words[1]), 0
        count = 0 if words[1] in _ONES else count
    width = 2 if count else 1
    told = words[place]
    if told not in _TELLING or count > len(_FINGERS) or (count and words[1 - place] in _ONES):
        return None
    noun = words[width]
    if told in _BORDER | _CENTRAL:
        return _outer_or_inner(k, width, told, count, noun, listed)
    if told in _SIDES:
        return _at_side(k, width, told, count, noun, listed)
    return _in_turn(page, k, width, told, count, words, listed)


def _outer_or_inner(k: int, width: int, told: str, count: int, noun: str, listed: tuple[str, ...]) -> Spot | None:
    """'The border digits', 'the two central fingers', 'the outer two' of three that are listed."""
    outer = told in _BORDER
    if noun in _NOUNS and count in (0, 2) and len(listed) in (0, 4):
        return k, k + width + 1, ("index", "small") if outer else ("middle", "ring")
    in_order = _across(listed)
    if outer and count == 2 and len(in_order) > 2 and (noun in _NOUNS | _ONES or noun in _CLOSES):
        return k, k + width, (in_order[0], in_order[-1])
    return None


def _at_side(k: int, width: int, told: str, count: int, noun: str, listed: tuple[str, ...]) -> Spot | None:
    """'Two ulnar digits', 'the radial two', 'the ulnar one': of those listed, else of the hand."""
    in_order = _across(listed)
    if noun not in _NOUNS | _ONES and not (count and noun in _CLOSES and in_order):
        return None
    if noun in _ONES and width == 1:
        count = 1 if noun == "one" else 0
    if noun in _NOUNS and not count:
        return None  # 'the ulnar fingers': how many is not told
    hand = _FINGERS[-count:] if told == "ulnar" else _FINGERS[:count]
    if len(in_order) > 1 and in_order != hand:  # 'neither the small nor the ring ... the two ulnar digits'
        if not 0 < count < len(in_order):
            return None
        meant = in_order[-count:] if told == "ulnar" else in_order[:count]
    elif noun in _NOUNS and count > 1:
        meant = hand
    else:
        return None
    return k, k + width + (noun in _NOUNS | _ONES), meant


def _in_turn(
    page: Page, k: int, width: int, told: str, count: int, words: list[str], listed: tuple[str, ...]
) -> Spot | None:
    """'In the first two', 'the last of these', 'only the middle of the three': of those listed, as they were listed."""
    if page.words[k - 1 : k] != ["the"] or len(listed) < _PAIR or count >= len(listed):
        return None
    behind = words[width : width + 3]
    if page.words[k - 3 : k - 1] == ["all", "but"] and not count and behind[0] in _CLOSES:
        return k, k + 1, (listed[0 if told == "first" else -1],)
    if told == "first" and (behind[0] in _NAMED or (behind[0] == "-" and behind[1] in _NAMED)):
        return k, k + 1, listed[:1]
    of_them = behind[0] == "of" and not _OF_THEM.isdisjoint(behind[1:])
    if told == "middle":
        return (k, k + 1, (_across(listed)[1],)) if of_them and len(listed) == 3 and not count else None
    led = page.words[k - 2 : k - 1] in (["in"], ["for"], ["on"]) and behind[0] in _ARTICLES
    tells = count > 0 and (behind[0] in _CLOSES or behind[0] in _TELLS)
    if not of_them and not led and not tells:
        return None
    number = count or 1
    return k, k + width, listed[:number] if told == "first" else listed[-number:]


_TELLS = frozenset(
    [
        *("showed", "were", "ran", "got", "had", "glided", "did", "received", "caught", "gapped", "no", "have", "show"),
        *("run", "glide", "took", "held", "repairs", "fingers", "tendons", "digits"),
    ]
)


def _across(digits: tuple[str, ...]) -> tuple[str, ...]:
    """Return fingers from the radial side to the ulnar."""
    return tuple(d for d in DIGITS if d in digits)
