"""Things that lie at a tendon: 'scar around the FDP', 'adhesions between FDP and FDS', 'glass next to the FDS'.

The tendon is only their place: what is told of such a thing, 'excised' or 'divided', is not told of the tendon.
"""

from collections.abc import Sequence

from notereader.reader.groups import Group
from notereader.vocabulary.wordlists import word_list

_THINGS = word_list("scene", "things_at_a_tendon")
_LEADING = word_list("scene", "leading_to_a_tendon")
_ONLY_OF = word_list("scene", "parts_of_its_bed")
_SMALL = frozenset(["the", "its", "his", "her", "both", "each", "two", "slips", "slip", "a", "left", "right", "this"])


def thing_at(words: Sequence[str], first: int, group: Group) -> int:
    """Return the word that names a thing lying at a group of tendons, or -1 where the group stands for itself.

    `first`: the word at which the sentence begins.
    """
    k = group.i - 1
    while k > first and words[k] in _SMALL:
        k -= 1
    led = k
    while k > first and words[k] in _LEADING:
        k -= 1
    if k == led or k < first:
        return -1
    if words[k] in _ONLY_OF:
        return k
    links = words[k + 1 : led + 1]
    return k if words[k] in _THINGS and not (len(links) == 1 and links[0] in ("of", "to", "from")) else -1
