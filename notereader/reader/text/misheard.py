"""Numbers that a dictation writes as other words: 'a for strand core', 'for oh prolene', 'a too strand Kessler'."""

from notereader.reader.mentions.measures import NUMBER_WORDS
from notereader.vocabulary.wordlists import word_list

_MEANT = {"for": "four", "fore": "four", "to": "two", "too": "two", "tree": "three", "sex": "six"}
_STRANDS = frozenset(["strand", "strands", "stranded"])
_BEFORE = word_list("spoken", "before_count")
_BEHIND_ZONE = word_list("spoken", "behind_zone")
_SEWN = frozenset(["core", "repair", "suture"])


def hear_numbers(words: list[str]) -> None:
    """Put the number in place of a word that sounds like one, beside strands, 'oh' or 'zone'. Changes `words`."""
    for k in range(1, len(words) - 1):
        if words[k] == "stand" and words[k + 1] in _SEWN and (words[k - 1] in NUMBER_WORDS or words[k - 1] in _MEANT):
            words[k] = "strand"  # 'a six stand core'
        elif words[k] in _MEANT and _is_number(words, k):
            words[k] = _MEANT[words[k]]


def _is_number(words: list[str], k: int) -> bool:
    """Tell whether word k is a number misheard; before 'oh' no other word is said."""
    if words[k - 1] == "zone":
        return words[k] in ("too", "tree") or (words[k + 1] in _BEHIND_ZONE and words[k - 2 : k - 1] != ["from"])
    behind = words[k + 1 : k + 3]
    counted = behind[0] in _STRANDS or (behind[0] == "stand" and behind[1:] != [] and behind[1] in _SEWN)
    return behind[0] == "oh" or (counted and words[k - 1] in _BEFORE)
