"""Tendons that lend themselves to another: a neighbour that takes in a stump, a graft, a strip for a pulley."""

from itertools import pairwise

from notereader.reader.groups import Group
from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list


def lends_itself(page: Page, group: Group, sentence: Sentence) -> bool:
    """Tell whether a tendon takes in another's stump, or was taken to mend something else."""
    if group.digits and _stump_woven_in(page, group, sentence):
        return True  # 'the distal stump was passed through the ring FDP in a Pulvertaft weave'
    if not group.tendons:
        return False
    if _to_its_side(page.words[max(sentence.i, group.i - 6) : group.i]):
        return True  # 'the distal stump was sewn into the side of the ring FDP'
    if _sewn_alongside(page, group, sentence) or joined_into(page, group, sentence) >= 0:
        return True  # 'the distal stump was sewn to the ring FDP side-to-side'
    if group.tendons == ("PL",) and (_is_donor(page, group) or _taken_and_woven(page, group, sentence)):
        return True
    return not group.digits and into_pulley(page, sentence.i, group.i)


def into_pulley(page: Page, first: int, i: int) -> bool:
    """'A2 was rebuilt with a strip of the FDS': tell whether the tendon of word i is what a pulley was made from."""
    lead = [w for w in page.words[max(first, i - _MADE_OF) : i] if w not in ("the", "of", "his", "her", "a", "this")]
    piece = lead[-1:] != [] and lead[-1] in _PIECES
    taken = piece and not _FROM.isdisjoint(lead)
    return taken and any(m.kind == "opened" and m.value == "reconstructed" for m in within(page.mentions, first, i))


_MADE_OF = 7  # words: 'from a 3 mm strip of the excised'
_FROM = frozenset(["from", "with", "by", "using", "out"])
_PIECES = word_list("bearing", "pieces")


def _to_its_side(lead: list[str]) -> bool:
    """'... attached to the side of the', 'end to side to the': the tendon behind takes in the stump of another."""
    rest = lead[:-1] if lead[-1:] == ["the"] else lead
    joined = {"to", "into", "onto"}.intersection(rest[:-2])
    return rest[-2:] == ["side", "of"] and bool(joined)


def _sewn_alongside(page: Page, group: Group, sentence: Sentence) -> bool:
    lead = [w for w in page.words[max(sentence.i, group.i - 8) : group.i] if w not in ("the", "intact", "neighbouring")]
    beside = [*lead, *page.words[group.j : group.j + 5]]
    if lead[-2:] in (["tenodesis", "to"], ["tenodesed", "to"]) and group.digits:
        return True  # 'FDP of the small finger ruptured, tenodesed to the ring FDP'
    return lead[-1:] == ["to"] and not _SEWN_TO.isdisjoint(lead) and beside.count("side") >= _TWICE


_SEWN_TO = frozenset(["sewn", "sutured", "joined", "attached", "stitched", "tenodesed", "woven", "hitched", "passed"])
_TWICE = 2  # 'side-to-side'


def joined_into(page: Page, group: Group, sentence: Sentence) -> int:
    """'The index profundus was woven into the intact middle profundus': the verb, where a sound neighbour takes it in.

    -1 where a group is no such neighbour. A slip beside another is none.
    """
    words = page.words
    k = group.i
    while k > sentence.i and words[k - 1] in _SOUND | {"the"}:
        k -= 1
    if words[k - 1] not in _INTO or not group.digits or any(slip for _, _, slip in group.pairs):
        return -1
    verbs = range(k - 2, max(sentence.i, k - _FAR_VERB) - 1, -1)
    verb = next((n for n in verbs if words[n] in _SEWN_TO and words[n - 1] in _WAS), -1)
    sound = not _SOUND.isdisjoint(words[k : group.i]) or words[verb:k].count("side") >= _TWICE
    return verb if sound else -1


NEIGHBOURING = frozenset(["neighbouring", "neighboring", "adjacent", "adjoining", "next"])
_SOUND = NEIGHBOURING | {"intact", "sound", "uninjured", "whole"}
_INTO = frozenset(["to", "onto", "into", "through"])
_FAR_VERB = 6  # words of 'woven side to side into the'
_WAS = frozenset(["was", "were", "then", "been", "and", "is", "be"])


def _stump_woven_in(page: Page, group: Group, sentence: Sentence) -> bool:
    """'The distal stump was passed twice through the ring FDP': a stump of another finger, and no graft."""
    lead = page.words[sentence.i : group.i]
    if not (group.tendons or "that" in lead[-3:]):
        return False
    while lead and lead[-1] in _DETERMINING:
        lead.pop()
    stump = next((n for n, word in enumerate(lead) if word in _STUMPS), len(lead))
    woven = not _WOVEN.isdisjoint(lead[stump:]) and lead[max(0, stump - 1) : stump] != ["proximal"]
    return lead[-1:] in (["through"], ["into"], ["thru"]) and woven and _OF_A_GRAFT.isdisjoint(sentence.said)


_DETERMINING = frozenset(["the", "that", "of", "intact", "adjacent", "neighbouring", "neighboring"])
_STUMPS = frozenset(["stump", "end"])
_OF_A_GRAFT = frozenset(["graft", "grafted", "palmaris", "plantaris"])
_WOVEN = frozenset(
    ["passed", "woven", "wove", "weaved", "threaded", "interlaced", "interwoven", "led", "drawn", "pulled"]
)
_HARVESTED = frozenset(["harvested", "harvest", "harvesting", "interposed"])
_TAKEN_FROM = frozenset(
    [
        ("as", "graft"),
        ("taken", "from"),
        ("raised", "from"),
        ("obtained", "from"),
        ("taken", "for"),
        ("taken", "through"),
        ("taken", "by"),
    ]
)
_DENIED = frozenset(["not", "never"])
_UNUSED = frozenset(["touched", "used", "taken", "harvested", "needed", "disturbed"])
_TAKEN = ["strip", "graft", "length", "piece", "slip", "half", "segment", "harvested", "cm", "mm", "using"]
_DONOR = frozenset([*_TAKEN, "bridged", "interposed"])
_SMALL_OF_DONOR = frozenset(["the", "a", "of", "his", "her", "free", "with", "by"])


def _is_donor(page: Page, group: Group) -> bool:
    """'A strip of palmaris longus', 'palmaris longus graft': what was taken to mend something else."""
    after = page.words[group.j : group.j + 2]
    lead = [w for w in page.words[max(0, group.i - 4) : group.i] if w not in _SMALL_OF_DONOR]
    behind = page.words[group.j : group.j + 8]
    taken = not _HARVESTED.isdisjoint(behind) or any(pair in _TAKEN_FROM for pair in pairwise(behind))
    before = page.words[max(0, group.i - 5) : group.i]
    taken = taken or not (_DENIED.isdisjoint(before) or _UNUSED.isdisjoint(before))  # 'not touched the palmaris'
    taken = taken or ("as", "a", "graft") in zip(behind, behind[1:], behind[2:], strict=False)
    return bool(taken or {"graft", "grafts", "donor", "strip"} & set(after[:1]) or _bridges(page, group)) or (
        lead[-1:] != [] and lead[-1] in _DONOR
    )


def _taken_and_woven(page: Page, group: Group, sentence: Sentence) -> bool:
    """'I took the palmaris longus and wove it in at both ends': a tendon taken to be set in elsewhere."""
    lead = page.words[max(sentence.i, group.i - _SPAN) : group.i]
    behind = page.words[group.j : sentence.j]
    taken = not _TAKES.isdisjoint([*lead, *behind[:_SPAN]]) and _DENIED.isdisjoint(lead)
    return taken and any(a in _WOVEN and b in _SET_INTO for a, b in zip(behind, behind[2:], strict=False))


_TAKES = word_list("bearing", "takes_a_graft")
_SET_INTO = frozenset(["in", "into", "through", "both", "between", "to", "each"])


def _bridges(page: Page, group: Group) -> bool:
    """'The defect was bridged with the palmaris longus', 'the palmaris longus was used to span the gap'."""
    before = page.words[max(0, group.i - _SPAN) : group.i]
    behind = page.words[group.j : group.j + _SPAN]
    with_it = not _SPANNED.isdisjoint(before) and bool({"with", "by", "using"} & set(before[-3:]))
    spans = not {"to", "for", "as"}.isdisjoint(behind) and not _SPANNING.isdisjoint(behind)
    return not _HOLES.isdisjoint([*before, *behind]) and _DENIED.isdisjoint(before) and (with_it or spans)


_SPAN = 8  # words
_SPANNED = frozenset(["bridged", "spanned", "filled", "replaced", "made"])
_SPANNING = frozenset(["bridge", "bridging", "span", "spanning", "fill", "filling", "replace"])
_HOLES = frozenset(["defect", "gap", "space", "interval", "distance"])
