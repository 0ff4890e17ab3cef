"""'Torn, not cut', 'ends squashed by the door, not cut': a denial of how it was hurt leaves no tendon whole."""

from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_MANNERS = word_list("otherwise_hurt", "manners")
_CUTS = word_list("otherwise_hurt", "cuts")
_STOPS = frozenset([".", ";"])
_NEAR = 6  # words: 'squashed by the car door, not cut'
_NAMES = frozenset(["tendon", "slip", "structure", "sided", "bundle", "anynerve", "anyartery", "pulley", "pulleys"])


def settle_otherwise_hurt(page: Page) -> None:
    """Drop the wholeness that 'not cut' would tell right behind a word for another manner of hurt."""
    if _MANNERS.isdisjoint(page.words):
        return
    denied = {m.i for m in page.mentions if m.value == "intact" and _only_how(page, m)}
    if denied:
        page.mentions = [m for m in page.mentions if m.value != "intact" or m.i not in denied]


def _only_how(page: Page, m: Mention) -> bool:
    if page.words[m.i] != "not" or page.words[m.j - 1] not in _CUTS:
        return False
    lead = page.words[max(0, m.i - _NEAR) : m.i]
    at = next((m.i - n for n, word in enumerate(reversed(lead), 1) if word in _MANNERS), None)
    if at is None or not _STOPS.isdisjoint(page.words[at : m.i]):
        return False
    return all(named.kind not in _NAMES for named in within(page.mentions, at + 1, m.i))
