"""Groups that a sentence leaves out: 'all but the index', 'save in the small finger', 'the FCU excepted'."""

from notereader.reader.groups import WRIST, Group
from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list


def is_set_against(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """'The profundus repairs, not the superficialis, were dressed up', 'it was the middle finger, not the ring'."""
    if lead[-1:] != ["not"]:
        return False
    if group.tendons:
        return "," in page.words[max(sentence.i, group.i - 4) : group.i]
    return bool(group.digits) and _alone_behind(page, group, sentence)


def is_left_out(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """Tell whether what is said of all is not said of this group: 'except the FCR', 'all but the index'."""
    if lead[-1:] != [] and (lead[-1] in _EXCEPTING or lead[-2:] in _EXCEPTING_TWO or "except" in lead):
        return True
    if lead[-1:] == ["but"] and _but_for_it(page, group, sentence, lead):
        return True
    if _not_done_there(page, group, sentence) or _but_not_it(page, group, sentence):
        return True
    if _left_out_by_that(page.words[max(sentence.i, group.i - 6) : group.i]):
        return True
    if _left_out_there(page.words[max(sentence.i, group.i - 8) : group.i]):
        return True  # 'the ends were clean except those of the index', 'all ends but those of the ring were clean'
    own = group.j < sentence.j and page.words[group.j][0].isdecimal()  # 'all 10 mm from the edge bar small 7'
    return bool(group.digits) and not own and _save_in(page.words[max(sentence.i, group.i - 8) : group.i])


def _but_not_it(page: Page, group: Group, sentence: Sentence) -> bool:
    """'The middle, but not the index, ran freely', 'kept in the middle and not in the index': right behind a finger."""
    if not group.digits:
        return False
    words, k = page.words, group.i - 1
    while k > sentence.i and words[k] in _POINTING:
        k -= 1
    if words[k] != "not":
        return False
    turn = k - 1
    while turn > sentence.i and words[turn] in _TURNING:
        turn -= 1
    contrast = turn < k - 1 and any(
        m.kind in ("digit", "tendon") and m.j == turn + 1 for m in within(page.mentions, sentence.i, turn + 1)
    )
    beside = contrast and any(m.kind == "digit" for m in within(page.mentions, max(sentence.i, turn - 3), turn + 1))
    return beside and words[group.j : group.j + 1] != [":"]


_TURNING = frozenset([",", "but", "and", "though", "although", "finger"])


def _not_done_there(page: Page, group: Group, sentence: Sentence) -> bool:
    """'Epitendinous 6-0 Prolene, ring not done', '5-0 nylon, FCR none': the last part, which has none."""
    words, first = page.words, group.i - 1
    while first > sentence.i and words[first] in ("the", "in", "of", "for"):
        first -= 1
    behind = [w for w in words[group.j : sentence.j] if w not in (".", "was", "finger", "were")]
    sized = any("-0" in w or w.endswith("/0") for w in words[sentence.i : first])
    return sized and words[first] in (",", ";") and " ".join(behind) in _NOT_DONE


_NOT_DONE = word_list("bearing", "not_done_there")
_EXCEPTING = frozenset(["except", "excepting", "save", "excluding"])
_OTHER_THAN = (["other", "than"], ["apart", "from"], ["except", "for"], ["save", "for"], ["exception", "of"])
_EXCEPTING_TWO = (*_OTHER_THAN, ["but", "for"])


def _but_for_it(page: Page, group: Group, sentence: Sentence, lead: list[str]) -> bool:
    """'In all fingers but the index', 'both but the small FDP': what a 'but' leaves out, and begins no new clause."""
    named = group.digits or not WRIST.isdisjoint(group.tendons)
    if named and lead[-2:-1] != [] and lead[-2] in _BUT_AFTER and not _behaves(page, group, lead):
        return True
    if _EVERY.isdisjoint(page.words[sentence.i : group.i]):
        return False
    if group.digits and _alone_behind(page, group, sentence):
        return True  # 'Each got an epitendinous 6-0 nylon but the middle.'
    if group.digits and _verb_behind(page, group, sentence):
        return True  # 'All ends but the middle were clean', not 'All were clean but the middle was torn'
    return page.words[group.j : group.j + 2] in _WHICH  # 'All ends were clean but the middle FDS, which was ragged.'


def _behaves(page: Page, group: Group, lead: list[str]) -> bool:
    """'Neither gapped but the index caught': a clause of its own."""
    gapped = lead[-2:-1] in (["gapped"], ["gap"])
    return gapped and not _SAYS_AFTER.isdisjoint(page.words[group.j : group.j + 2])


_WHICH = ([",", "which"], [",", "whose"])


def _verb_behind(page: Page, group: Group, sentence: Sentence) -> bool:
    """Tell whether the first verb of a sentence stands right behind a group."""
    ahead, behind = page.words[sentence.i : group.i], page.words[group.j : group.j + 1]
    return not _FIRST_VERBS.isdisjoint(behind) and _FIRST_VERBS.isdisjoint(ahead)


_FIRST_VERBS = frozenset(
    ["was", "were", "is", "are", "had", "got", "showed", "received", "glided", "ran", "took", "have"]
)


def _left_out_there(lead: list[str]) -> bool:
    """Tell whether 'those of the', 'that of the', 'in the' before a name lead back to a word that leaves it out."""
    rest = list(lead)
    while rest[-1:] != [] and rest[-1] in _POINTING:
        rest.pop()
    pointed = not {"those", "that", "one", "ones"}.isdisjoint(lead[len(rest) :])
    but = rest[-1:] == ["but"] and not _EVERY.isdisjoint(rest)
    return pointed and (but or (rest[-1:] != [] and rest[-1] in _LEAVING_OUT) or rest[-2:] == ["other", "than"])


def excepted_behind(page: Page, group: Group, sentence: Sentence) -> bool:
    """'No gap in any repair, FCU excepted.', 'each tendon, the ring FDP excluded, ...', 'with the FCU left out'."""
    k = group.i - (page.words[group.i - 1] == "the")
    aside = k <= sentence.i or page.words[k - 1] in (",", "(", "-", "with")
    named_here = sentence.i <= group.i < group.j  # no label of a cell: 'LITTLE: left out'
    return named_here and aside and leaves_out(page, group.j, sentence.j)


def leaves_out(page: Page, j: int, last: int) -> bool:
    """Tell whether the words at j leave out the name before them: 'excepted,', 'left out.'."""
    n = next((n for n in (1, 2) if tuple(page.words[j : min(j + n, last)]) in _EXCEPTED), 0)
    return n > 0 and ends_clause(page, j + n, last)


def ends_clause(page: Page, k: int, last: int) -> bool:
    """Tell whether what is told ends before word k, in a sentence that ends before word `last`."""
    return k >= last or page.words[k] in _CLAUSE_ENDS


_CLAUSE_ENDS = frozenset([".", ";", ",", ")", "above", "before", "but", "except", "although", "only"])


_EXCEPTED = frozenset(tuple(words.split()) for words in word_list("bearing", "excepted_behind"))


def _save_in(lead: list[str]) -> bool:
    """'No gap, save in the small finger', 'apart from 1 mm in the ring', 'glide free, barring the ring'."""
    rest = list(lead)
    while rest[-1:] != [] and (rest[-1] in _PLACED or rest[-1][0].isdecimal()):
        rest.pop()
    return (rest[-1:] != [] and rest[-1] in _EXCEPT | {"barring", "excluding"}) or rest[-2:] in _OTHER_THAN


_PLACED = frozenset(
    [
        *("in", "at", "on", "for", "the", "of", "mm", "a", "one", "about"),
        *("gap", "catching", "snagging", "tension", "bulk", "slight", "small", "minor", "some", "mild"),
    ]
)
_POINTING = frozenset(["those", "that", "one", "ones", "of", "in", "the", "for", "from"])
_LEAVING_OUT = frozenset(["except", "excepting", "save", "bar", "exception", "apart"])


def _left_out_by_that(lead: list[str]) -> bool:
    """'All A2 pulleys were intact except that of the ring', '... apart from those of the small'."""
    words = [w for w in lead if w not in ("the", "for", "from", "left", "right")]
    return words[-2:] in (["that", "of"], ["those", "of"]) and words[-3:-2] != [] and words[-3] in _EXCEPT


_EXCEPT = frozenset(["except", "excepting", "save", "bar", "apart"])


def _alone_behind(page: Page, group: Group, sentence: Sentence) -> bool:
    """Tell whether nothing but a noun follows a group in its sentence."""
    rest = [w for w in page.words[group.j : sentence.j] if w[0].isalnum()]
    return all(w in ("finger", "one", "as", "dictated", "typed", "stated", "written") for w in rest)


_EVERY = frozenset(["each", "every", "all", "both", "none"])
_SAYS_AFTER = word_list("bearing", "says_after")  # 'Neither gapped but the index caught'
_BUT_AFTER = word_list("bearing", "but_after")
