"""How a group of tendons stands in its sentence: spoken of, only compared with, left out, or named in passing."""

from itertools import pairwise

from notereader.reader.groups import WRIST, Group
from notereader.reader.none_but import is_the_only_one
from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

LIKE = frozenset(["like", "as"])
_CLAUSE_ENDS = frozenset([".", ";", ",", ")", "above", "before", "but", "except", "although", "only"])
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


def mark_manner(page: Page, group: Group, sentence: Sentence) -> None:
    """Note where a group is only compared with or left out."""
    before = page.words[max(sentence.i, group.i - 3) : group.i]
    if before[-1:] != [] and before[-1] in _NEIGHBOURING:
        before = page.words[max(sentence.i, group.i - 4) : group.i - 1]  # 'tighter than the neighbouring ring finger'
    if before[-1:] in (["the"], ["its"], ["in"], ["for"], ["on"], ["with"]):
        before = before[:-1]
    if (
        before[-2:] in (["according", "to"], ["compared", "with"], ["compared", "to"], ["next", "to"])
        and not group.tendons
        and not _goes_to(page, group, sentence)
    ):
        group.reference = True
    if (
        before[-1:]
        and before[-1] in ("toward", "towards", "beside", "facing", "opposite", "nearest")
        and not group.tendons
        and "incision" not in sentence.said  # 'Incision at the palmar crease opposite the middle finger. A1 divided.'
    ):
        group.reference = True
    if _touched_only(page, group, sentence):
        group.reference = True
    if (
        before[-1:]
        and (before[-1] in LIKE or before[-2:] == ["same", "as"] or before[-1] == "than")
        and before[-2:-1] != ["such"]
    ):
        group.reference = before[-1] in ("like", "than") or before[-2:-1] in (
            ["same"],
            ["repaired"],
            ["done"],
            ["sutured"],
            [","],
            ["manner"],
            ["way"],
            ["just"],
            ["fashion"],
            ["technique"],
            ["method"],
        )
        group.reference = group.reference or "same" in page.words[max(sentence.i, group.i - 8) : group.i]
    if before[-1:] == ["ditto"] and page.words[sentence.i] != "ditto" and group.digits:
        group.reference = True  # 'FDP ditto ring for core and peripheral'
    marked = page.words[group.i - 2] in _MARKS if group.i > sentence.i + 2 else False
    if before[-1:] == ["as"] and group.tendons and not group.reference and group.i - 2 - marked in page.tendon_words:
        group.reference = True  # 'RF FDP as MF FDP.', 'FDP - as FDP of index'
    if group.tendons and not group.digits and names_place(page, group.i, group.j):
        group.reference = True
    goes_on = "which" in page.words[group.j : group.j + 3]
    beside = before[-2:] == ["next", "to"] or (before[-1:] != [] and before[-1] in _BESIDE_IT)
    if group.tendons and not group.digits and beside and not goes_on:
        # 'the profundus rubbed against the superficialis knot', 'the slip did not pass under the FDP and was cut out'
        slips = any(m.kind == "slip" for m in within(page.mentions, sentence.i, group.i))
        group.reference = group.reference or slips or not page.tendon_words.isdisjoint(range(sentence.i, group.i))
    if group.tendons and _between_slips(page, group, sentence):
        group.reference = True
    if group.tendons and not group.digits and _at_its_part(page.words[max(sentence.i, group.i - 6) : group.i]):
        group.reference = True  # 'divided just short of the insertion of the superficialis'
    if _same_as(page.words[max(sentence.i, group.i - 9) : group.i]):
        group.reference = True  # 'core and epitendinous the same as for the FDP of the middle finger'
    if group.tendons and _to_its_side(page.words[max(sentence.i, group.i - 6) : group.i]):
        group.reference = True  # 'the distal stump was sewn into the side of the ring FDP'
    if group.tendons and (_sewn_alongside(page, group, sentence) or joined_into(page, group, sentence) >= 0):
        group.reference = True  # 'the distal stump was sewn to the ring FDP side-to-side'
    if group.digits and _stump_woven_in(page, group, sentence):
        group.reference = True  # 'the distal stump was passed through the ring FDP in a Pulvertaft weave'
    alone = not any(w[0].isalnum() for w in page.words[group.j : sentence.j])
    those = page.words[max(sentence.i, group.i - 5) : group.i]
    those = those[:-1] if those[-1:] == ["the"] else those
    if those[-3:] in (["as", "those", "of"], ["as", "that", "of"], ["like", "those", "of"], ["like", "that", "of"]):
        group.reference = True  # 'dealt with in the same way as those of the middle finger'
    if before == ["as"] and alone:
        group.reference = True  # a cell of a grid: 'as long'
    closes = group.j >= sentence.j or page.words[group.j] in _CLAUSE_ENDS
    told_of = page.words[group.j + 1 : group.j + 2] in (["where"], ["which"], ["whose"])
    if "unlike" in before and group.digits and not group.tendons and closes and not told_of:
        group.reference = True  # 'Unlike the middle finger, the FDS here is whole'
    lead = before[:-1] if before[-1:] in (["in"], ["for"], ["on"], ["with"]) else before
    if page.words[max(sentence.i, group.i - 3) : group.i - 1] == ["as", "for"]:
        lead = ["as"]  # 'repaired as for the index but with 4-0'
    if lead[-1:] == ["as"] and lead[-2:-1] != ["such"] and not group.tendons and closes:
        group.reference = True  # 'epi as index.'
    if group.digits and not group.tendons and group.j < sentence.j and page.words[group.j] == "check":
        group.reference = True  # 'FDP of the ring back to bone + middle check'
    if before[-1:] and (
        before[-1] in ("except", "excepting", "save", "excluding")
        or before[-2:] in (["apart", "from"], ["except", "for"], ["other", "than"], ["save", "for"], ["but", "for"])
    ):
        group.excepted = True
    if _left_out_by_that(page.words[max(sentence.i, group.i - 6) : group.i]):
        group.excepted = True
    if before[-1:] == ["not"] and group.tendons and "," in page.words[max(sentence.i, group.i - 4) : group.i]:
        group.reference = True  # 'the profundus repairs, not the superficialis, were dressed up with 6-0'
    if before[-1:] == ["not"] and group.digits and not group.tendons and _alone_behind(page, group, sentence):
        group.reference = True  # 'it was the middle finger, not the ring'
    behaves = before[-2:-1] in (["gapped"], ["gap"]) and not _SAYS_AFTER.isdisjoint(page.words[group.j : group.j + 2])
    named = group.digits or not WRIST.isdisjoint(group.tendons)
    if before[-1:] == ["but"] and before[-2:-1] != [] and before[-2] in _BUT_AFTER and named and not behaves:
        group.excepted = True  # 'in all fingers but the index', 'both but the small FDP'
    all_of_them = not _EVERY.isdisjoint(page.words[sentence.i : group.i])
    if before[-1:] == ["but"] and group.digits and all_of_them and _alone_behind(page, group, sentence):
        group.excepted = True  # 'Each got an epitendinous 6-0 nylon but the middle.'
    if before[-1:] == ["but"] and group.digits and all_of_them and _verb_behind(page, group, sentence):
        group.excepted = True  # 'All ends but the middle were clean', not 'All were clean but the middle was torn'
    if before[-1:] == ["but"] and all_of_them and page.words[group.j : group.j + 2] in _WHICH:
        group.excepted = True  # 'All ends were clean but the middle FDS, which was ragged.'
    if "except" in before or before[-2:] == ["exception", "of"]:
        group.excepted = True
    if _left_out_there(page.words[max(sentence.i, group.i - 8) : group.i]):
        group.excepted = True  # 'the ends were clean except those of the index'
    if _excepted_behind(page, group, sentence):
        group.excepted = group.reference = True
    own = group.j < sentence.j and page.words[group.j][0].isdecimal()  # 'all 10 mm from the edge bar small 7'
    if group.digits and not own and _save_in(page.words[max(sentence.i, group.i - 8) : group.i]):
        group.excepted = True
    if group.tendons or group.generic:
        group.reference = group.reference or _reached_only(page, group, sentence)
    if group.tendons == ("PL",):
        group.reference = group.reference or _is_donor(page, group) or _taken_and_woven(page, group, sentence)
    if group.tendons and not group.digits and into_pulley(page, sentence.i, group.i):
        group.reference = True
    left_out = group.tendons and (group.excepted or group.reference)
    if left_out and is_the_only_one(page, group.i, sentence.i, sentence.j):
        group.excepted = group.reference = False


def _between_slips(page: Page, group: Group, sentence: Sentence) -> bool:
    """'FDP: repaired, and gliding free between the slips', 'through the FDS slips': where another tendon runs."""
    lead = [w for w in page.words[max(sentence.i, group.i - 3) : group.i] if w not in ("the", "both", "two", "its")]
    behind = page.words[group.i : min(group.j + 2, sentence.j)]
    return lead[-1:] != [] and lead[-1] in _PASSAGES and not _SLIPS.isdisjoint(behind)


_PASSAGES = frozenset(["between", "through", "betwixt"])
_SLIPS = frozenset(["slips", "limbs", "tails", "decussation", "chiasm"])


def into_pulley(page: Page, first: int, i: int) -> bool:
    """'A2 was rebuilt with a strip of the FDS': tell whether the tendon of word i is what a pulley was made from."""
    lead = [w for w in page.words[max(first, i - _MADE_OF) : i] if w not in ("the", "of", "his", "her", "a", "this")]
    piece = lead[-1:] != [] and lead[-1] in _PIECES
    taken = piece and not _FROM.isdisjoint(lead)
    return taken and any(m.kind == "opened" and m.value == "reconstructed" for m in within(page.mentions, first, i))


_MADE_OF = 7  # words: 'from a 3 mm strip of the excised'
_FROM = frozenset(["from", "with", "by", "using", "out"])
_PIECES = word_list("bearing", "pieces")


_WHICH = ([",", "which"], [",", "whose"])


def _goes_to(page: Page, group: Group, sentence: Sentence) -> bool:
    """'Next to the middle finger.' opens what is told of it; 'next to the middle finger lay glass' is a place."""
    opens = page.words[sentence.i : sentence.i + 2] == ["next", "to"] and group.i <= sentence.i + 3
    return opens and not any(word[0].isalnum() for word in page.words[group.j : group.j + 1] if group.j < sentence.j)


def _verb_behind(page: Page, group: Group, sentence: Sentence) -> bool:
    """Tell whether the first verb of a sentence stands right behind a group."""
    ahead, behind = page.words[sentence.i : group.i], page.words[group.j : group.j + 1]
    return not _FIRST_VERBS.isdisjoint(behind) and _FIRST_VERBS.isdisjoint(ahead)


_FIRST_VERBS = frozenset(
    ["was", "were", "is", "are", "had", "got", "showed", "received", "glided", "ran", "took", "have"]
)


def _to_its_side(lead: list[str]) -> bool:
    """'... attached to the side of the', 'end to side to the': the tendon behind takes in the stump of another."""
    rest = lead[:-1] if lead[-1:] == ["the"] else lead
    joined = {"to", "into", "onto"}.intersection(rest[:-2])
    return rest[-2:] == ["side", "of"] and bool(joined)


def _reached_only(page: Page, group: Group, sentence: Sentence) -> bool:
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


def _left_out_there(lead: list[str]) -> bool:
    """Tell whether 'those of the', 'that of the', 'in the' before a name lead back to a word that leaves it out."""
    rest = list(lead)
    while rest[-1:] != [] and rest[-1] in _POINTING:
        rest.pop()
    pointed = not {"those", "that", "one", "ones"}.isdisjoint(lead[len(rest) :])
    return pointed and ((rest[-1:] != [] and rest[-1] in _LEAVING_OUT) or rest[-2:] == ["other", "than"])


def _excepted_behind(page: Page, group: Group, sentence: Sentence) -> bool:
    """'No gap in any repair, FCU excepted.', 'each tendon, the ring FDP excluded, ...', 'with the FCU left out'."""
    k = group.i - (page.words[group.i - 1] == "the")
    aside = k <= sentence.i or page.words[k - 1] in (",", "(", "-", "with")
    named_here = sentence.i <= group.i < group.j  # no label of a cell: 'LITTLE: left out'
    return named_here and aside and leaves_out(page, group.j, sentence.j)


def leaves_out(page: Page, j: int, last: int) -> bool:
    """Tell whether the words at j leave out the name before them: 'excepted,', 'left out.'."""
    n = next((n for n in (1, 2) if tuple(page.words[j : min(j + n, last)]) in _EXCEPTED), 0)
    return n > 0 and (j + n >= last or page.words[j + n] in _CLAUSE_ENDS)


_EXCEPTED = frozenset(tuple(words.split()) for words in word_list("bearing", "excepted_behind"))


def _save_in(lead: list[str]) -> bool:
    """'No gap, save in the small finger', 'apart from 1 mm in the ring', 'glide free, barring the ring'."""
    rest = list(lead)
    while rest[-1:] != [] and (rest[-1] in _PLACED or rest[-1][0].isdecimal()):
        rest.pop()
    return (rest[-1:] != [] and rest[-1] in _EXCEPT | {"barring", "excluding"}) or rest[-2:] in _OTHER_THAN


_PLACED = frozenset(["in", "on", "for", "the", "of", "mm", "a", "gap", "slight", "small", "minor", "one", "about"])
_OTHER_THAN = (["other", "than"], ["apart", "from"], ["except", "for"], ["save", "for"], ["exception", "of"])
_MARKS = frozenset(["-", ":", "="])
_POINTING = frozenset(["those", "that", "one", "ones", "of", "in", "the", "for", "from"])
_LEAVING_OUT = frozenset(["except", "excepting", "save", "bar", "exception", "apart"])


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


_NEIGHBOURING = frozenset(["neighbouring", "neighboring", "adjacent", "adjoining", "next"])
_SOUND = _NEIGHBOURING | {"intact", "sound", "uninjured", "whole"}
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


def _left_out_by_that(lead: list[str]) -> bool:
    """'All A2 pulleys were intact except that of the ring', '... apart from those of the small'."""
    words = [w for w in lead if w not in ("the", "for", "from", "left", "right")]
    return words[-2:] in (["that", "of"], ["those", "of"]) and words[-3:-2] != [] and words[-3] in _EXCEPT


_EXCEPT = frozenset(["except", "excepting", "save", "bar", "apart"])


def _at_its_part(lead: list[str]) -> bool:
    """Tell whether a name is led up to as a place: 'at the insertion of the', 'proximal to the bifurcation of the'."""
    words = [w for w in lead if w not in ("the", "its")]
    if words[-3:] == ["in", "way", "of"]:
        return True  # 'the slip sat in the way of the profundus'
    return words[-1:] == ["of"] and words[-2:-1] in _PARTS_OF and _leads_to_place(words[:-2])


def _same_as(lead: list[str]) -> bool:
    while lead[-1:] != [] and lead[-1] in _SMALL:
        lead = lead[:-1]
    if lead[-1:] == ["as"] and (lead[-3:-2] == ["as"] or "same" in lead):
        return True  # 'it ran as freely as the ring finger', 'the same edging as on the left index'
    if lead[-2:-1] == ["as"] and lead[-1] in _DESCRIBED:
        return True  # 'the same core as described for the index finger'
    likened = lead[-1:] == ["as"] and lead[-2:-1] != [] and lead[-2] in _LIKENED  # 'core exactly as in the index FDP'
    return likened or lead[-2:] in (["identical", "to"], ["alike", "to"], ["similar", "to"])


_DESCRIBED = frozenset(["described", "done", "used", "performed", "recorded", "told", "dictated", "stated", "given"])
_LIKENED = frozenset(
    [
        *("same", "exactly", "precisely", "just", "everything", "all", "rest", ":"),
        *("core", "suture", "sutures", "ends", "edges", "stumps"),
    ]
)

_SMALL = frozenset(["the", "its", "in", "for", "on", "with", "of", "left", "right", "that", "at"])


def _alone_behind(page: Page, group: Group, sentence: Sentence) -> bool:
    """Tell whether nothing but a noun follows a group in its sentence."""
    rest = [w for w in page.words[group.j : sentence.j] if w[0].isalnum()]
    return all(w in ("finger", "one", "as", "dictated", "typed", "stated", "written") for w in rest)


_EVERY = frozenset(["each", "every", "all", "both", "none"])
_SAYS_AFTER = word_list("bearing", "says_after")  # 'Neither gapped but the index caught'
_BUT_AFTER = word_list("bearing", "but_after")
_TOUCHED = frozenset(["touch", "touched", "touches", "touching", "reach", "reached", "reaches", "opposed"])
_MATCHED = frozenset(["matched", "matches", "matching", "compared"])


def _touched_only(page: Page, group: Group, sentence: Sentence) -> bool:
    """'She bent it to touch the base of the small finger', 'cascade matched to the MF': a digit to measure by."""
    if group.tendons or not group.digits:
        return False
    before = page.words[max(sentence.i, group.i - 5) : group.i]
    return not _TOUCHED.isdisjoint(before) or not _MATCHED.isdisjoint(before[-3:])


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
