"""What was not managed, not needed, given up or left open, and what rules ask for: none of it was found or done.

'We were unable to preserve A2', 'no need to add a peripheral suture', 'I cannot say whether A2 was preserved',
'textbooks recommend six strands', 'a neighbouring case in which no gap was seen', 'a locked cruciate was abandoned'.
"""

from bisect import insort

from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_IN_VAIN = phrases_by_first_word("unachieved", "in_vain")
_UNSURE = word_list("unachieved", "unsure")
_OPENERS = word_list("unachieved", "openers")
_RULES = word_list("unachieved", "rules")
_ASKS = word_list("unachieved", "asks")
_OTHERS = word_list("unachieved", "others")
_CASES = word_list("unachieved", "cases")
_IN_WHOM = word_list("unachieved", "in_whom")
_GIVEN_UP = phrases_by_first_word("unachieved", "given_up")
_BEEN = frozenset(["was", "were", "is", "are", "be", "been"])
_STOPS = frozenset([";", ".", "but", "so", "however", "yet", "because", "as", "since", "therefore", "instead", ")"])
_CLAUSES = _STOPS | {",", "and"}
# What a note tells by its denial: a pulley not opened is whole, a tendon not repaired was left, a suture not placed.
_TOLD_BY_DENIAL = frozenset(["vented", "released", "trimmed", "excised", "repaired", "reinserted", "grafted"])
_OF_REPAIR = frozenset(
    [
        *("strandword", "strands", "stitch", "material", "role", "pattern", "bite", "hold", "knot", "knotword"),
        *("gap", "glide", "opened", "deed"),
    ]
)
_BEFORE_WHETHER = frozenset([",", ";", ".", ":", "(", "and", "but"])  # 'Whether I used 3-0 or 4-0 I forget'
_NEAR = 5  # words
_ANY_WORD = frozenset([*_IN_VAIN, *_OPENERS, *_RULES, *_OTHERS, *_GIVEN_UP])


def mark_unachieved(page: Page, sentence: Sentence) -> None:
    """Set aside the words that tell what was not achieved, is not known, or is only a rule."""
    if _ANY_WORD.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j - 1):
        for phrase in _IN_VAIN.get(words[k], ()):
            if tuple(words[k : k + len(phrase)]) == tuple(phrase):
                _mark_in_vain(page, sentence, k, k + len(phrase))
        if words[k] == "whether":
            _mark_left_open(page, sentence, k)
        if words[k] in _OPENERS and not _UNSURE.isdisjoint(words[max(sentence.i, k - _NEAR) : k]):
            page.mark(k, _end(page, sentence, k, _STOPS), "unfilled")
        if words[k] in _RULES and not _ASKS.isdisjoint(words[k + 1 : k + 3]):
            _mark_rule(page, sentence, k)
        if words[k] in _OTHERS and not _CASES.isdisjoint(words[k + 1 : k + 3]):
            _mark_other(page, sentence, k)
    _mark_given_up(page, sentence)


def _mark_left_open(page: Page, sentence: Sentence, k: int) -> None:
    """'Whether A2 was intact I forget', 'nobody looked whether A2 was intact': of a repair it is never a finding."""
    end = _end(page, sentence, k, _STOPS | {","})
    opens = k == sentence.i or page.words[k - 1] in _BEFORE_WHETHER
    if opens or any(m.kind in _OF_REPAIR or m.kind == "extent" for m in within(page.mentions, k, end)):
        page.mark(k, end, "unfilled")


def _end(page: Page, sentence: Sentence, k: int, stops: frozenset[str]) -> int:
    return next((n for n in range(k + 1, sentence.j) if page.words[n] in stops), sentence.j)


def _mark_in_vain(page: Page, sentence: Sentence, i: int, k: int) -> None:
    """'Unable to place six strands': up to the next clause; not what is told by its denial, 'no need to open A2'."""
    end = _end(page, sentence, k, _STOPS | {","})
    end = next((n for n in range(k + 1, end) if page.words[n] == "and" and page.words[n + 1] in _GOES_ON), end)
    lines = (n for n in range(k + 1, end) if page.breaks[n] >= Break.LINE and page.words[n - 1] != "-")
    end = min(end, k + _LONGEST, next(lines, end))
    inside = within(page.mentions, k, end)
    told = any(m.kind in _OF_REPAIR for m in inside)
    if not told or page.words[k] in _SAYING | _PRONOUNS or ":" in page.words[k : k + 3]:
        return  # 'Forgot to say: ...', 'unable to flex the tip'
    if any(m.kind in ("opened", "deed") and m.value in _TOLD_BY_DENIAL and m.i - k <= _NEAR for m in inside):
        if not any(c.value == "negated" for c in within(page.cues, i, k)):
            insort(page.cues, Mention("cue", "negated", i, k), key=lambda cue: cue.i)
        return
    if page.words[k - 2] == "not" and any(m.value == "peripheral" or m.kind == "pattern" for m in inside):
        return  # 'I did not place an epitendinous suture'
    page.mark(k, end, "considered")


_LONGEST = 14  # words
_SAYING = frozenset(["say", "mention", "dictate", "note", "record", "tell", "write", "state"])
_PRONOUNS = frozenset(["that", "it", "this", "them", "these", "flex", "bend", "move", "extend", "straighten", "feel"])
_GOES_ON = frozenset(["i", "we", "it", "was", "were", "had", "used", "placed", "the", "put", "left", "only", "stayed"])


def _mark_rule(page: Page, sentence: Sentence, k: int) -> None:
    """'Our protocol asks for four strands', but not what it asks of the weeks to come."""
    end = _end(page, sentence, k, _STOPS)
    inside = within(page.mentions, k, end)
    aftercare = sentence.section == "instructions" or any(m.kind in ("programme", "splint", "joint") for m in inside)
    if not aftercare and any(m.kind in _OF_REPAIR for m in inside):
        page.mark(k, end, "teaching")


def _mark_other(page: Page, sentence: Sentence, k: int) -> None:
    """'A neighbouring theatre had just finished a case in which A2 was preserved'."""
    words = page.words
    at = (n for n in range(k + 1, sentence.j - 1) if words[n] in ("in", "with") and words[n + 1] in _IN_WHOM)
    first = next(at, None)
    if first is not None and not _CASES.isdisjoint(words[k:first]):
        turn = (n for n in range(first, sentence.j - 1) if words[n] == "," and words[n + 1] in _HERE)
        page.mark(first, next(turn, sentence.j), "history")


_HERE = frozenset(["here", "today", "now", "ours", "mine"])  # 'in which A4 was lost, here A4 is intact'


def _mark_given_up(page: Page, sentence: Sentence) -> None:
    """'A locked cruciate repair was abandoned', 'repair of A2 was omitted'; of a peripheral suture: there is none.

    Of a nerve it says that it was left.
    """
    for k in range(sentence.i + 1, sentence.j):
        if not gives_up(page, k, sentence.j):
            continue
        first = next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if page.words[n] in _CLAUSES), sentence.i)
        inside = within(page.mentions, first, k)
        if not any(m.value == "peripheral" or m.kind in _TOLD_ELSEWHERE for m in inside):
            page.mark(first, k, "considered")


def gives_up(page: Page, k: int, last: int) -> bool:
    """Tell whether word k begins what says that a deed was not done: 'was omitted', 'FDS repair not attempted,'."""
    behind = next((p for p in _GIVEN_UP.get(page.words[k], ()) if page.words[k : k + len(p)] == p), None)
    if behind is None:
        return False
    j = k + len(behind)
    closes = j >= last or page.words[j] in _CLAUSES or page.breaks[j] >= Break.LINE
    of_another = page.words[k - 2] in _OF_ANOTHER  # '..., but as there was no tension this was not done'
    return (page.words[k - 1] in _BEEN and not of_another) or (closes and page.words[k - 1] in _DEEDS)


_TOLD_ELSEWHERE = frozenset(["pattern", "structure", "sided", "anynerve", "anyartery"])
_OF_ANOTHER = frozenset(["this", "that", "it", "which", "these", "they", "so"])
_DEEDS = word_list("unachieved", "deeds")
