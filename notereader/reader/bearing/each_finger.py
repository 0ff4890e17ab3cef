"""Tendons told of finger by finger: 'both tendons were divided in each finger', 'FDP and FDS cut in both fingers'.

'Both tendons' of a finger are its deep and its superficial flexor; with 'each finger', 'both fingers' or several
fingers by name they are those of every one of them.
"""

from notereader.reader.groups import Group
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention, Page, Sentence

_NOUNS = frozenset(["tendons", "flexors"])
_OTHERS = frozenset(["of", "these", "those", "partial", "partially", "wrist", "extensor", "extensors"])


def spread_over_fingers(
    page: Page, sentence: Sentence, groups: list[Group], mentions: list[Mention], seen: tuple[str, ...]
) -> None:
    """Give 'both tendons', or tendons told to be cut, to each finger that the same sentence collects.

    `seen`: the digits named so far in the note, in order.
    """
    collected = [g for g in groups if _collects_fingers(g) and not (g.reference or g.excepted)]
    if len(collected) != 1:
        return
    fingers = collected[0].digits or _counted(page, sentence, collected[0], seen)
    if len(fingers) < 2 or "thumb" in fingers:
        return
    others = [g for g in groups if g is not collected[0]]
    if any(g.digits for g in others):
        return
    cut = any(m.kind == "extent" for m in mentions) and not collected[0].digits
    cut = cut and not any(
        m.kind == "extent" and m.j == collected[0].i for m in mentions
    )  # 'all severed finger flexors'
    spread = [g for g in others if _both_flexors(page, g) or (cut and _plain_flexors(g))]
    for group in spread:
        if group.generic:
            group.generic, group.every, group.tendons = "", False, ("FDP", "FDS")
        group.digits = fingers
        group.pairs = tuple((digit, tendon, None) for digit in fingers for tendon in group.tendons)
    if spread:
        groups.remove(collected[0])  # what is told belongs to the tendons, not to the fingers named beside them


def lend_listed_fingers(page: Page, sentence: Sentence, groups: list[Group]) -> None:
    """'FDS excised: index, ring.': the fingers that alone stand behind the colon are those of the tendon before it."""
    named = [g for g in groups if g.tendons or g.digits]
    if len(named) != _TENDON_AND_LIST or not _plain_flexors(named[0]) or named[0].digits or named[1].tendons:
        return
    tendon, fingers = named
    lead = page.words[tendon.j : fingers.i]
    behind = [w for w in page.words[fingers.j : sentence.j] if w[0].isalnum()]
    if tendon.i > sentence.i + 1 or not 1 < len(lead) <= _LONGEST_STATE or behind:
        return
    if lead[-1] != ":" or ":" in lead[:-1]:
        return
    tendon.digits = tuple(d for d in fingers.digits if d != "thumb")
    tendon.pairs = tuple((d, t, None) for d in tendon.digits for t in tendon.tendons)


_TENDON_AND_LIST = 2  # groups
_LONGEST_STATE = 5  # words: 'completely divided:'


def _collects_fingers(group: Group) -> bool:
    """Tell whether a group is 'each finger', 'both fingers' or several fingers by name, without a tendon."""
    if group.tendons or group.generic:
        return False
    return len(group.digits) > 1 or (group.every and not group.digits)


def _counted(page: Page, sentence: Sentence, group: Group, seen: tuple[str, ...]) -> tuple[str, ...]:
    """Return the fingers of 'both fingers' or 'all three': those of the note, where it names as many."""
    words = page.words[max(sentence.i, group.i - 2) : group.j]
    counts = [2 if word == "both" else count_of(word) for word in words]
    count = next((n for n in counts if n > 1), len(seen))
    return seen if count == len(seen) else ()


def _both_flexors(page: Page, group: Group) -> bool:
    words = page.words[group.i : group.j]
    lead = page.words[max(0, group.i - 2) : group.i]
    both = "both" in (*words[:1], *lead) or ["the", "two"] in (words[:2], lead)
    return group.generic == "all" and both and not _NOUNS.isdisjoint(words) and _OTHERS.isdisjoint(words)


def _plain_flexors(group: Group) -> bool:
    """Tell whether a group names FDP or FDS, whole and without a finger."""
    named = bool(group.tendons) and set(group.tendons) <= {"FDP", "FDS"} and not (group.reference or group.excepted)
    return named and not group.digits and not group.four and all(not slip for _, _, slip in group.pairs)
