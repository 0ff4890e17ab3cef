"""Tendons named only for a place, for what lies at them or because they were got at: 'distal to the FDS insertion'."""

from notereader.reader.groups import Group
from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_PARTS_OF = (["insertion"], ["decussation"], ["chiasm"], ["bifurcation"])
_PLACING = frozenset(
    [
        *("to", "of", "at", "past", "beyond", "near", "behind", "above", "below", "under", "over", "after", "before"),
        *("from", "on", "in", "into", "through", "around", "between"),
    ]
)
_BESIDE_IT = frozenset(["against", "under", "beneath", "underneath", "behind", "alongside", "beside"])


def _leads_to_place(before: list[str]) -> bool:
    return bool(before) and before[-1] in _PLACING


def names_place(page: Page, i: int, j: int) -> bool:
    """Tell whether the tendon of words i to j is only named for a place: 'zone I, distal to the FDS insertion'."""
    before = page.words[max(0, i - 2) : i]
    return page.words[j : j + 1] in _PARTS_OF and _leads_to_place(before[:-1] if before[-1:] == ["the"] else before)


def is_a_place(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """Tell whether a tendon without a finger is named for a place, or lies at what is told of."""
    if names_place(page, group.i, group.j):
        return True
    if _at_its_part(page.words[max(sentence.i, group.i - 6) : group.i]):
        return True  # 'divided just short of the insertion of the superficialis'
    beside = lead[-2:] == ["next", "to"] or (lead[-1:] != [] and lead[-1] in _BESIDE_IT)
    if not beside or "which" in page.words[group.j : group.j + 3]:
        return False
    # 'the profundus rubbed against the superficialis knot', 'the slip did not pass under the FDP and was cut out'
    slips = any(m.kind == "slip" for m in within(page.mentions, sentence.i, group.i))
    return slips or not page.tendon_words.isdisjoint(range(sentence.i, group.i))


def _at_its_part(lead: list[str]) -> bool:
    """Tell whether a name is led up to as a place: 'at the insertion of the', 'proximal to the bifurcation of the'."""
    words = [w for w in lead if w not in ("the", "its")]
    if words[-3:] == ["in", "way", "of"]:
        return True  # 'the slip sat in the way of the profundus'
    return words[-1:] == ["of"] and words[-2:-1] in _PARTS_OF and _leads_to_place(words[:-2])


def is_between_slips(page: Page, group: Group, sentence: Sentence) -> bool:
    """'FDP: repaired, and gliding free between the slips', 'through the FDS slips': where another tendon runs."""
    lead = [w for w in page.words[max(sentence.i, group.i - 3) : group.i] if w not in ("the", "both", "two", "its")]
    behind = page.words[group.i : min(group.j + 2, sentence.j)]
    return lead[-1:] != [] and lead[-1] in _PASSAGES and not _SLIPS.isdisjoint(behind)


_PASSAGES = frozenset(["between", "through", "betwixt"])
_SLIPS = frozenset(["slips", "limbs", "tails", "decussation", "chiasm"])


def is_only_reached(page: Page, group: Group, sentence: Sentence) -> bool:
    """'A2 was opened to get at the tendon and then sewn back': the pulley was sewn, the tendon only reached."""
    words = page.words
    over_it = any(m.kind == "pulley" for m in within(page.mentions, sentence.i, group.i))
    if not (over_it or "sheath" in words[sentence.i : group.i]):
        return False
    k = group.i - 1
    while k > sentence.i and words[k] in _OF_IT:
        k -= 1
    lead = [w for w in words[max(sentence.i, k - 3) : k] if w not in _OF_IT - {"to"}]
    if words[k] not in _REACH or lead[-1:] not in (["to"], ["for"]):
        return False
    k = behind = group.j + (words[group.j : group.j + 1] in (["stump"], ["ends"], ["end"], ["stumps"]))
    while k < sentence.j and words[k] in _THEN:
        k += 1
    return behind < k < sentence.j and (words[k].endswith("ed") or words[k] in _SEWN)


_OF_IT = frozenset(
    ["the", "at", "of", "to", "hold", "both", "its", "stump", "end", "ends", "proximal", "distal", "cut", "a", "better"]
)
_REACH = word_list("bearing", "reach")
_THEN = frozenset(["and", "then", "later", "afterwards", "subsequently", "again", ",", "finally", "was", "were"])
_SEWN = frozenset(["sewn", "put", "left", "brought", "stitched", "sutured", "mended"])
