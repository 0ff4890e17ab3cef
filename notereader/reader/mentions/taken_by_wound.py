"""'The blade had taken both tendons of the ring finger', 'the saw took the profundus': cut through by what wounded."""

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_TOOK = frozenset(["took", "taken"])
_HAD = frozenset(["had", "has", "having"])
_WOUNDING = word_list("wounds_named", "wounding")
_DETERMINERS = word_list("wounds_named", "determiners") | {"both", "all", "only", "just"}
_HANDS = frozenset(["i", "we", "surgeon", "graft", "grafts"])
_PART = frozenset(["fraction", "extent"])
_PARTLY = frozenset(["%", "percent", "per", "part", "most", "some", "off", "out", "down", "up", "back", "away"])


def settle_taken(page: Page) -> None:
    """Add the cut of the tendons that a blade, a saw or the wound is told to have taken."""
    if _TOOK.isdisjoint(page.words):
        return
    made: list[Mention] = []
    for sentence in page.sentences:
        if _TOOK.isdisjoint(sentence.said):
            continue
        mentions = within(page.mentions, sentence.i, sentence.j)
        made += [
            Mention("extent", "complete", k, k + 1)
            for k in range(sentence.i + 1, sentence.j - 1)
            if page.words[k] in _TOOK and _by_wound(page, sentence, mentions, k) and _takes_tendon(page, mentions, k)
        ]
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _by_wound(page: Page, sentence: Sentence, mentions: list[Mention], k: int) -> bool:
    """Tell whether a weapon or a wound is the subject of the 'took' at word k, and no surgeon."""
    agents = [m.j for m in mentions if m.kind == "agent" and m.j <= k]
    agents += [n + 1 for n in range(sentence.i, k) if page.words[n] in _WOUNDING]
    if not agents:
        return False
    between = page.words[max(agents) : k]
    had = page.words[k] == "took" or page.words[k - 1] in _HAD
    return had and _HANDS.isdisjoint(between) and not {".", ";"} & set(between)


def _takes_tendon(page: Page, mentions: list[Mention], k: int) -> bool:
    """Tell whether a tendon is what is taken, and no share of it."""
    at = k + 1
    while page.words[at] in _DETERMINERS:
        at += 1
    names = [m for m in mentions if at <= m.i <= at + 1 and m.kind in ("tendon", "digit", "tendons", "generic")]
    named = bool(names) or page.words[at] in _FLEXORS
    end = next((n for n in range(at, len(page.words)) if page.words[n] in _STOPS), len(page.words))
    shared = any(m.kind in _PART for m in within(mentions, k, end))
    return named and not shared and _PARTLY.isdisjoint(page.words[at:end])


_STOPS = frozenset([",", ";", "."])
_FLEXORS = frozenset(["tendons", "flexors", "profundi", "superficiales"])
