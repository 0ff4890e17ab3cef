"""Borders of a finger told by its neighbour: 'the wound lay on the ring finger side', 'the nerve on the RF side'."""

from notereader.reader.groups import DIGITS
from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_SIDES = word_list("bearing", "side_nouns")
_OF = (["of", "the"], ["of", "his"], ["of", "her"], ["of"])
_NAMES = ("digit", "digit?")


def settle_neighbour_sides(page: Page) -> None:
    """Take the neighbour's name for the border it tells of; it is no finger that anything is told of."""
    if _SIDES.isdisjoint(page.words):
        return
    kept: list[Mention] = []
    own = ""  # the finger spoken of last
    for mention in page.mentions:
        if mention.kind not in _NAMES:
            kept.append(mention)
        elif _names_a_side(page, mention):
            border = _border(_finger_it_is_of(page, mention) or own, mention.value)
            kept += [Mention("border", border, mention.i, mention.j + 1)] if border else []
        else:
            own = mention.value if mention.kind == "digit" else own
            kept.append(mention)
    page.mentions = kept


def _names_a_side(page: Page, mention: Mention) -> bool:
    """'On the ring finger side', 'RF side'; not 'ring finger: side to side', nor 'the side of the ring finger'."""
    k = mention.j
    sides = page.words[k : k + 1] != [] and page.words[k] in _SIDES and page.breaks[k] < Break.LINE
    return sides and page.words[k + 1 : k + 2] not in (["to"], ["-"], ["by"], [":"], ["="])


def _finger_it_is_of(page: Page, mention: Mention) -> str:
    """'The index finger side of the middle finger': the finger that a border is said to be of."""
    k = mention.j + 1
    starts = {k + len(of) for of in _OF if page.words[k : k + len(of)] == of}
    return next((m.value for m in page.mentions if m.kind == "digit" and m.i in starts), "")


def _border(own: str, neighbour: str) -> str:
    """Which border of a finger looks at another; none where the finger is not known."""
    if not own or own == neighbour:
        return ""
    return "ulnar" if DIGITS.index(neighbour) > DIGITS.index(own) else "radial"
