"""Bundles that are a tendon's own: 'I resected 4 mm until the bundles looked healthy' speaks of no nerve or artery."""

from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_TRIMS = word_list("fibre_bundles", "trims")
_UNTIL = frozenset(["until", "till", "to"])
_LEADS = word_list("fibre_bundles", "leads")
_NEAR = 14  # words
_STATE = 3  # words: 'were', 'looked quite'


def settle_fibre_bundles(page: Page) -> None:
    """Drop the bundles to which a tendon was cut back, and what is told of them: it makes no tendon whole."""
    if _BUNDLES.isdisjoint(page.words):
        return
    own = [m for m in page.mentions if m.kind == "bundle" and _cut_back_to(page, m)]
    spots = {m.i for m in own}
    told = {k for m in own for k in range(m.i, m.j + _STATE)}
    page.mentions = [
        m
        for m in page.mentions
        if not (m.kind == "bundle" and m.i in spots) and not (m.i in told and m.value == "intact")
    ]


_BUNDLES = frozenset(["bundles", "bundle"])


def _cut_back_to(page: Page, mention: Mention) -> bool:
    """Tell whether 'until', and before that a word of trimming, leads to bundles of no other name."""
    if mention.j - mention.i > 1:
        return False
    k = mention.i - 1
    while k > 0 and page.words[k] in _LEADS:
        k -= 1
    trimmed = page.words[k] in _UNTIL and not _TRIMS.isdisjoint(page.words[max(0, k - _NEAR) : k])
    return trimmed and not _nerve_spoken_of(page, mention)


def _nerve_spoken_of(page: Page, mention: Mention) -> bool:
    """'The nerve was divided, and once I had cut it back to good bundles ...': the last thing named is a nerve."""
    named = [m for m in within(page.mentions, mention.i - _BEFORE, mention.i) if m.kind in _TENDONS | _NERVES]
    return bool(named) and named[-1].kind in _NERVES


_BEFORE = 40  # words
_TENDONS = frozenset(["tendon", "slip", "endword"])
_NERVES = frozenset(["structure", "sided", "anynerve"])
