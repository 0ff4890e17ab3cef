"""Short names of fingers that stand as a noun: 'sliced her right small on a slate', 'In his little I found ...'."""

from notereader.reader.bearing.digit_numbers import SIDES
from notereader.reader.bearing.pulley_digits import named_as_digit
from notereader.reader.page import Break, Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_SHORT = frozenset(["small", "little", "middle", "long"])
_OF_A_HAND = SIDES | {"lt", "rt"}
_OWNERS = frozenset(["his", "her", "my", "their"])
_PLACED = frozenset(["of", "in", "on", "to", "from", "for"])
_BEHIND_NOUN = word_list("bearing", "behind_noun")
_TELLS_OF_IT = word_list("bearing", "tells_of_it")
_STATES = frozenset(["extent", "deed", "hurt"])
_ITS_TENDONS = frozenset(["repairs", "tendons", "flexors", "profundus", "superficialis"])
_STOPS = frozenset([",", ".", ";", ":", ")", "-", "/"])


def stands_as_noun(page: Page, mention: Mention) -> bool:
    """Tell whether a short name behind a hand's or a person's is a noun, and so the finger.

    An adjective of size or place goes with a noun: 'the left small nerve', 'his middle third'. Where a preposition, a
    verb or the end of the statement follows, it is the finger itself.
    """
    words, i, j = page.words, mention.i, mention.j
    if words[i] not in _SHORT or i == 0 or page.breaks[i] >= Break.COLUMN:
        return False
    if _of_a_nerve(page, mention) or _of_its_repairs(page, mention):
        return True
    lead = words[i - 1]
    if lead in _OF_A_HAND:
        return _says_its_hand(page, i - 1) and _noun_ends(page, j)
    if j >= len(words):
        return lead in _OWNERS
    if lead in _OWNERS and words[i - 2] in _PLACED and words[j] in _STOPS:
        return True  # 'cut both flexors of her small.'
    spoken = lead == "the" and words[i] == "small"  # 'the little I saw', 'the middle was thin': not the finger
    if spoken and words[j] == "of" and words[j + 1 : j + 2] != [] and words[j + 1] in _OWNERS | _OF_A_HAND:
        return True  # 'he heard the small of his left hand go'
    return (spoken or lead in _OWNERS) and words[j] in _TELLS_OF_IT


def _of_a_nerve(page: Page, mention: Mention) -> bool:
    """'UDN small cut', 'radial digital nerve middle bruised': a name between a digital nerve's and its state."""
    j = mention.j
    if not any(m.kind == "sided" and m.j == mention.i for m in within(page.mentions, mention.i - 4, mention.i)):
        return False
    ends = j >= len(page.words) or page.breaks[j] >= Break.COLUMN or page.words[j] in _STOPS
    return ends or any(m.kind in _STATES for m in within(page.mentions, j, j + 1))


def _of_its_repairs(page: Page, mention: Mention) -> bool:
    """'Both middle repairs glided', 'the middle tendons were intact': where the note names that finger elsewhere."""
    behind = page.words[mention.j : mention.j + 1]
    return behind != [] and behind[0] in _ITS_TENDONS and named_as_digit(page, mention)


def _says_its_hand(page: Page, k: int) -> bool:
    """'The tendon was left long': there 'left' is a verb's, and no hand."""
    return page.words[k] != "left" or page.words[k - 1] not in _VERBS


_VERBS = frozenset(["was", "were", "is", "are", "be", "been", "and", "then", "i", "we", "ends", "tails", "end", "tail"])


def _noun_ends(page: Page, j: int) -> bool:
    """Tell whether the word behind a name goes on with the statement, or ends it."""
    if j >= len(page.words) or page.breaks[j] >= Break.COLUMN:
        return True
    word = page.words[j]
    return word in _STOPS or word in _BEHIND_NOUN or _dated(page, j)


def _dated(page: Page, j: int) -> bool:
    """'R middle 10/22/2030': a date behind it, and no measure of what is small."""
    return page.words[j][0].isdecimal() and page.words[j + 1 : j + 2] in (["/"], ["-"], ["."])
