"""Groups that only say how another is: 'like the index', 'the same as for the ring', 'opposite the middle finger'."""

from notereader.reader.bearing.left_out import ends_clause
from notereader.reader.groups import Group
from notereader.reader.page import Page, Sentence

LIKE = frozenset(["like", "as"])


def opens_likeness(lead: list[str]) -> bool:
    """Tell whether words lead up to what something is likened to: 'like the', 'tighter than the', not 'such as the'."""
    return lead[-1:] != [] and (lead[-1] in LIKE or lead[-1] == "than") and lead[-2:-1] != ["such"]


def likens_all(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """'Repaired like the index', 'done as the ring', 'the same core as the middle': the group is only compared with."""
    done_as = lead[-1] in ("like", "than") or lead[-2:-1] in _DONE_AS
    return done_as or "same" in page.words[max(sentence.i, group.i - 8) : group.i]


_DONE_AS = tuple(
    [word]
    for word in ("same", "repaired", "done", "sutured", ",", "manner", "way", "just", "fashion", "technique", "method")
)


def is_likened_to(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """Tell whether a group stands for how something else is: 'the same as for the FDP of the middle finger'."""
    if lead[-1:] == ["ditto"] and page.words[sentence.i] != "ditto" and group.digits:
        return True  # 'FDP ditto ring for core and peripheral'
    if lead[-1:] == ["as"] and group.tendons and _behind_a_tendon(page, group, sentence):
        return True
    if lead == ["as"] and not any(w[0].isalnum() for w in page.words[group.j : sentence.j]):
        return True  # a cell of a grid: 'as long'
    return (
        _told_again(page, group, sentence)
        or _same_as(page.words[max(sentence.i, group.i - 9) : group.i])
        or identical_to(page.words[max(sentence.i, group.i - 9) : group.i])
        or _than_that_of(page.words[max(sentence.i, group.i - 5) : group.i])
        or _as_those_of(page.words[max(sentence.i, group.i - 5) : group.i])
        or _closes_likeness(page, group, sentence, lead)
    )


def _told_again(page: Page, group: Group, sentence: Sentence) -> bool:
    """'Completed, then as index: Savage 3/0', 'done as for the ring: four strands', not 'As for the ring: ...'."""
    k = group.i - 1
    while k > sentence.i and page.words[k] in ("the", "for", "in", "on"):
        k -= 1
    told = page.words[group.j : group.j + 1] in ([":"], ["-"], ["("], ["="])
    behind = k > sentence.i and page.words[k] in LIKE and page.words[k - 1] not in (".", ";", "such")
    return told and behind and bool(group.digits) and not group.tendons


def _behind_a_tendon(page: Page, group: Group, sentence: Sentence) -> bool:
    """'RF FDP as MF FDP.', 'FDP - as FDP of index': right behind the tendon that is likened to it."""
    marked = page.words[group.i - 2] in _MARKS if group.i > sentence.i + 2 else False
    return group.i - 2 - marked in page.tendon_words


def _than_that_of(lead: list[str]) -> bool:
    """'A little tighter than that of the middle finger'."""
    return "of" in lead[-2:] and [w for w in lead if w not in ("the", "that", "those", "of")][-1:] == ["than"]


# 'An identical repair was done to the ring' tells what was done there.
_PARTS_LIKENESS = frozenset(
    [",", ";", ".", "was", "were", "is", "done", "made", "given", "applied", "performed", "put"]
)


def identical_to(lead: list[str]) -> bool:
    """'Identical stitch and thread to the long finger', 'identical to that of the ring'."""
    rest = [w for w in lead if w not in ("the", "that", "those", "of", "one", "ones")]
    if rest[-1:] != ["to"] or "identical" not in rest:
        return False
    return _PARTS_LIKENESS.isdisjoint(rest[rest.index("identical") :])


def _as_those_of(lead: list[str]) -> bool:
    """'Dealt with in the same way as those of the middle finger'."""
    those = lead[:-1] if lead[-1:] == ["the"] else lead
    return those[-3:] in (["as", "those", "of"], ["as", "that", "of"], ["like", "those", "of"], ["like", "that", "of"])


def _closes_likeness(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """'Epi as index.', 'repaired as for the index but with 4-0': a finger that ends its clause."""
    if group.tendons or not ends_clause(page, group.j, sentence.j):
        return False
    lead = lead[:-1] if lead[-1:] in (["in"], ["for"], ["on"], ["with"]) else lead
    if page.words[max(sentence.i, group.i - 3) : group.i - 1] == ["as", "for"]:
        lead = ["as"]
    return lead[-1:] == ["as"] and lead[-2:-1] != ["such"]


def is_told_apart(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """'Unlike the middle finger, the FDS here is whole', but not 'unlike the ring which gapped'."""
    if "unlike" not in lead or not group.digits or group.tendons:
        return False
    told_of = page.words[group.j + 1 : group.j + 2] in (["where"], ["which"], ["whose"])
    return ends_clause(page, group.j, sentence.j) and not told_of


def is_measured_by(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """Tell whether a finger is only what another thing is measured by, lies at or was checked against."""
    if group.tendons:
        return False
    if lead[-2:] in _MEASURING and not _goes_to(page, group, sentence):
        return True
    if lead[-1:] != [] and lead[-1] in _FACING and "incision" not in sentence.said:
        return True  # but 'Incision at the palmar crease opposite the middle finger. A1 divided.'
    if group.digits and group.j < sentence.j and page.words[group.j] == "check":
        return True  # 'FDP of the ring back to bone + middle check'
    return not opens_likeness(lead) and _touched_only(page, group, sentence)


_MEASURING = (["according", "to"], ["compared", "with"], ["compared", "to"], ["next", "to"])
_FACING = frozenset(["toward", "towards", "beside", "facing", "opposite", "nearest"])


def _goes_to(page: Page, group: Group, sentence: Sentence) -> bool:
    """'Next to the middle finger.' opens what is told of it; 'next to the middle finger lay glass' is a place."""
    opens = page.words[sentence.i : sentence.i + 2] == ["next", "to"] and group.i <= sentence.i + 3
    return opens and not any(word[0].isalnum() for word in page.words[group.j : group.j + 1] if group.j < sentence.j)


_MARKS = frozenset(["-", ":", "="])


def _same_as(lead: list[str]) -> bool:
    while lead[-1:] != [] and lead[-1] in _SMALL:
        lead = lead[:-1]
    if lead[-1:] == ["as"] and (lead[-3:-2] == ["as"] or "same" in lead):
        return True  # 'it ran as freely as the ring finger', 'the same edging as on the left index'
    if lead[-2:-1] == ["as"] and lead[-1] in _DESCRIBED:
        return True  # 'the same core as described for the index finger'
    likened = lead[-1:] == ["as"] and lead[-2:-1] != [] and lead[-2] in _LIKENED  # 'core exactly as in the index FDP'
    return likened or lead[-2:] in (["alike", "to"], ["similar", "to"])


_DESCRIBED = frozenset(["described", "done", "used", "performed", "recorded", "told", "dictated", "stated", "given"])
_LIKENED = frozenset(
    [
        *("same", "exactly", "precisely", "just", "everything", "all", "rest", ":"),
        *("core", "suture", "sutures", "ends", "edges", "stumps"),
    ]
)
_SMALL = frozenset(["the", "its", "in", "for", "on", "with", "of", "left", "right", "that", "at"])
_TOUCHED = frozenset(["touch", "touched", "touches", "touching", "reach", "reached", "reaches", "opposed"])
_MATCHED = frozenset(["matched", "matches", "matching", "compared"])


def _touched_only(page: Page, group: Group, sentence: Sentence) -> bool:
    """'She bent it to touch the base of the small finger', 'cascade matched to the MF': a digit to measure by."""
    if group.tendons or not group.digits:
        return False
    before = page.words[max(sentence.i, group.i - 5) : group.i]
    return not _TOUCHED.isdisjoint(before) or not _MATCHED.isdisjoint(before[-3:])
