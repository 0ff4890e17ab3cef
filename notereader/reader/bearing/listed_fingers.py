"""'FDS 2nd, 3rd - cut', 'the FDP of the fourth', 'FDP ring + small -': names in a list of fingers beside a tendon."""

from notereader.reader.page import Break, Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_FIGURED = frozenset(["2nd", "3rd", "4th", "5th"])
_SPELT = frozenset(["second", "third", "fourth", "fifth"])
_JOINERS = frozenset([",", "and", "&", "+", "/", "-", "the", "to"])
_LEADS = frozenset(["of", "to", "for", "in"])
_COUNTED = word_list("bearing", "counted")
_LONG = 14  # words of a list of fingers


def listed_beside_tendon(page: Page, mention: Mention) -> bool:
    """Tell whether a rank or a name stands in a list right behind a finger flexor, or heads a line about one.

    A rank in letters needs a word that leads to it: 'FDP second' may be a step, 'the FDP of the second' is a finger.
    A name such as 'small' needs a finger before it in the list.
    """
    if _counts(page, mention):
        return False
    return _behind_tendon(page, mention) or _heads_tendon(page, mention)


def _counts(page: Page, mention: Mention) -> bool:
    """'to the 2nd and 3rd metacarpals', 'of the fourth day': the list counts something else."""
    ranks = {m.i for m in within(page.mentions, mention.i, mention.i + _LONG) if m.kind == "digit?"}
    k = mention.j
    while k < len(page.words) and (k in ranks or (page.words[k] in _JOINERS and k + 1 in ranks)):
        k += 1
    return k < len(page.words) and page.breaks[k] < Break.LINE and page.words[k] in _COUNTED


def _behind_tendon(page: Page, mention: Mention) -> bool:
    words, k = page.words, mention.i - 1
    digits = (m for m in within(page.mentions, mention.i - _LONG, mention.i) if m.kind in ("digit", "digit?"))
    names = {n for m in digits for n in range(m.i, m.j)}
    while k > 0 and (k in names or words[k] in _JOINERS) and page.breaks[k + 1] < Break.LINE:
        k -= 1
    led = {"of", "to", "for", "("} & set(words[k : mention.i])
    k -= words[k] in _LEADS or words[k] == "("
    k -= words[k] in ("tendon", "tendons")
    enough = bool(led) or words[mention.i] in _FIGURED
    if words[mention.i] not in _SPELT and words[mention.i] not in _FIGURED:
        enough = words[mention.i - 1] in _JOINERS and not names.isdisjoint(range(k, mention.i - 1))
    return k in page.tendon_words and enough


def _heads_tendon(page: Page, mention: Mention) -> bool:
    """'5th: FDP cut', where no '1st:' shows that steps are counted."""
    k = mention.j
    heads = page.breaks[mention.i] >= Break.LINE and page.words[k : k + 1] == [":"] and k + 1 in page.tendon_words
    return heads and page.words[mention.i] in _FIGURED and "1st" not in page.words
