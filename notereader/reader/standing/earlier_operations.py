"""What a note tells of earlier operations: by its words, by its dates, from one sentence to the next."""

import re
from itertools import pairwise

from notereader.reader.layout.clauses import AUXILIARIES
from notereader.reader.mentions.dates import MONTHS
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.long_before import mended_long_before
from notereader.reader.standing.other_fingers_before import of_other_finger
from notereader.reader.standing.sewn_elsewhere import sewn_elsewhere
from notereader.reader.standing.then_today import then_today
from notereader.reader.standing.unlike_before import turns_to_today
from notereader.vocabulary.wordlists import word_list

_BACK_REFERENCE = word_list("standing", "back_reference")
_HAD_BEEN = frozenset(["had", "been"])
_YEAR = re.compile(r"(?:19|20)\d\d\Z")


class EarlierOperations:
    """What a note tells of earlier operations, followed from sentence to sentence."""

    def __init__(self, page: Page) -> None:
        self._page = page
        self._year = _operation_year(page)
        self._last_today = max((n for n, s in enumerate(page.sentences) if "today" in s.said), default=-1)
        self._goes_on_in = -1  # the paragraph whose last sentence told of one
        self._turned = -1  # the paragraph in which a past history has turned to this operation

    def is_under_its_heading(self, sentence: Sentence, cues: list[Mention]) -> bool:
        """Tell whether a sentence stands under a heading for a past history that has not turned to this operation."""
        if sentence.section != "previous":
            return False
        if _opens_on_today(self._page, sentence, cues):
            self._turned = sentence.block
        return self._turned != sentence.block

    def mark(self, n: int, sentence: Sentence, cues: list[Mention]) -> bool:
        """Mark what sentence n tells of an earlier operation. RETURNS: whether that is all of it."""
        page, told = self._page, self._tells(n, sentence, cues)
        self._goes_on_in = sentence.block if told else -1
        if not told:
            return False
        aside = _history_aside(page, sentence, cues, self._year)
        if aside is not None:
            page.mark(*aside, "history")
            self._goes_on_in = -1
            return False
        page.mark(sentence.i, sentence.j, "history")
        return True

    def _tells(self, n: int, sentence: Sentence, cues: list[Mention]) -> bool:
        page = self._page
        if _is_history(page, sentence, cues, self._year):
            return True
        if n < self._last_today and _opens_with_a_month(page, sentence):
            return True
        anew = page.words[sentence.i : sentence.i + 2] == ["this", "one"] and n > 0
        if anew and _named_a_finger(page, page.sentences[n - 1]):
            return False  # 'His ring finger, repaired two years ago, had six strands. This one got four.'
        goes_on = sentence.block == self._goes_on_in and page.words[sentence.i] in _BACK_REFERENCE
        return goes_on and not any(c.value == "resume" for c in cues)


def _named_a_finger(page: Page, sentence: Sentence) -> bool:
    return any(m.kind == "digit" for m in within(page.mentions, sentence.i, sentence.j))


def _opens_on_today(page: Page, sentence: Sentence, cues: list[Mention]) -> bool:
    """'Past operations: FDP repair, six strands. Now: FDP ruptured, repaired ...': back at this operation."""
    words = page.words[sentence.i : sentence.i + 2]
    this_one = words[:1] == ["this"] and words[1] in _OPERATIONS
    this_one = this_one or words[:1] == ["today's"]
    return this_one or any(c.value == "resume" and c.i == sentence.i for c in cues)


_OPERATIONS = frozenset(["operation", "procedure", "surgery", "time", "occasion"])
# What makes a quoted earlier wording hold no more, and names of such wordings before it.
_GAVE_WAY = frozenset(["ruptured", "parted", "failed", "dehisced", "way", "apart"])


def _operation_year(page: Page) -> int:
    """Return the year of the operation as far as the note tells: that of its first date under a date heading."""
    stretches = [(s.h, s.j) for s in page.sections if s.kind == "date"]
    dated = [d for d in page.dates if any(h <= d.i < j for h, j in stretches)] or page.dates
    return int(dated[0].value[:4]) if dated else 9999


def _is_history(page: Page, sentence: Sentence, cues: list[Mention], year: int) -> bool:
    """Tell whether a sentence speaks of an earlier operation."""
    cues = [c for c in cues if not (c.value == "history" and _is_a_place(page, c))]
    if any(c.value == "history" for c in cues):
        return not _only_new(page, sentence, cues)
    dated = any(c.value == "dated_history" for c in cues) and _tells_a_day(page, sentence)
    if dated or _mended_before(page, sentence) or _in_a_month_before(page, sentence) or sewn_elsewhere(page, sentence):
        return True
    if mended_long_before(page, sentence):
        return True
    years = _earlier_years(page, sentence, year)
    return bool(years) and not any(d.i <= years[0][0] < d.j for d in page.dates)


MENDED = frozenset(["repaired", "repair", "mended", "sewn", "sutured", "fixed"])


def _tells_a_day(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence names a day before this operation, or where it names no day a month."""
    here = [d.value for d in page.dates if sentence.i <= d.i < sentence.j]
    dated = [d.value for s in page.sections if s.kind == "date" for d in page.dates if s.h <= d.i < s.j]
    if here and dated:
        return min(here) < min(dated)
    return bool(here) or not sentence.said.isdisjoint(_MONTHS_ALONE)


_MONTHS_ALONE = MONTHS.keys() - {"may", "mar"}  # these two are words of their own, or slips of them


def _mended_before(page: Page, sentence: Sentence) -> bool:
    """'had his FDP mended here on 4 November 2031 with a two-strand Kessler': a repair dated before this operation.

    Without 'had' where the day stands right behind the verb: 'FDP sutured on 4 November 2031 (two-strand Kessler)'.
    """
    if MENDED.isdisjoint(sentence.said):
        return False
    here = [d for d in page.dates if sentence.i <= d.i < sentence.j]
    told = bool(here) and (_had_it_mended(page, sentence, here[0].i) or _mended_on(page, sentence, here[0].i))
    if told and any(d.value > here[0].value for d in page.dates):
        return any(_revises(s) or not _SECOND_TIME.isdisjoint(s.said) for s in page.sentences)
    here = [d for d in here if not d.yearless]
    if not here:
        return False
    words = page.words[sentence.i : sentence.j]
    dated = [d.value for s in page.sections if s.kind == "date" for d in page.dates if s.h <= d.i < s.j]
    if "had" in sentence.said:
        had = sentence.i + words.index("had")
        return bool(dated) and any(d.value < min(dated) and d.i > had for d in here)
    days = dated or _days_of_revision(page)
    mended = [d for d in here if not MENDED.isdisjoint(page.words[max(sentence.i, d.i - _SOON_DATED) : d.i])]
    return bool(days) and any(d.value < min(days) for d in mended)


_SECOND_TIME = frozenset(["secondary", "rupture", "ruptured", "tenolysis"])


def _had_it_mended(page: Page, sentence: Sentence, day: int) -> bool:
    """'This gentleman had his profundus repaired on 26th September with a two-strand core': before word `day`."""
    words = page.words
    had = next((k for k in range(sentence.i, day) if words[k] == "had" and words[k + 1] in ("his", "her", "their")), -1)
    return had >= 0 and not MENDED.isdisjoint(words[had:day]) and "been" not in words[had:day]


def _mended_on(page: Page, sentence: Sentence, day: int) -> bool:
    """'Cut last month and mended on the 24th of January by one of us', 'was repaired by us on 24 January'."""
    lead = page.words[max(sentence.i, day - _BY_WHOM) : day]
    if page.dates[0].i == day or sentence.section in ("instructions", "date"):
        return False  # the day that a note names first is its own
    verb = next((n for n, word in enumerate(lead) if word in _MENDED_THEN), len(lead))
    return verb < len(lead) and (lead[-1] == "on" or lead[-2:] == ["on", "the"])


_BY_WHOM = 7  # words: 'repaired by my colleague on the'
_MENDED_THEN = MENDED - {"repair"}


def _days_of_revision(page: Page) -> list[str]:
    """Return the days on which the note says that a repair was done again: 'Revision done 28 January 2033'."""
    told = [s for s in page.sentences if _revises(s) and _TO_COME.isdisjoint(s.said)]
    return [d.value for d in page.dates if not d.yearless and any(s.i <= d.i < s.j for s in told)]


def _revises(sentence: Sentence) -> bool:
    again = "re" in sentence.said and not _AGAIN.isdisjoint(sentence.said)  # 're-exploration' is three words
    return again or not _REVISES.isdisjoint(sentence.said)


_AGAIN = frozenset(["exploration", "repair", "operation", "suture", "explored", "repaired", "operated"])
_TO_COME = frozenset(["planned", "plan", "booked", "if", "may", "might", "will", "would"])
_SOON_DATED = 3  # words from a verb to its day
_REVISES = word_list("standing", "revises")


def _opens_with_a_month(page: Page, sentence: Sentence) -> bool:
    """'In March 2032 at Pellbridge a four-strand repair was done', in a note that comes to 'today' only later."""
    words = page.words[sentence.i : sentence.j]
    month = words[1:] if words[0] in ("in", "early", "late") else words
    dated = len(month) > 1 and month[0] in MONTHS and _YEAR.match(month[1]) is not None
    return dated and not MENDED.isdisjoint(words)


def _in_a_month_before(page: Page, sentence: Sentence) -> bool:
    """'FDS there had been cut out in June': a month alone, behind 'had been', is before this operation."""
    if not _HAD_BEEN.issubset(sentence.said):
        return False
    words = page.words
    if words[sentence.i] == "in" and words[sentence.i + 1] in MONTHS and words[sentence.i + 2] != "of":
        return True  # 'In August the middle FDP had been sewn with four strands'
    for k in range(sentence.i, sentence.j - 5):
        if words[k] == "had" and words[k + 1] == "been":
            month = next(
                (n for n in range(k + 3, min(k + 8, sentence.j)) if words[n - 1] == "in" and words[n] in MONTHS), 0
            )
            if month and words[month + 1 : month + 2] != ["of"]:
                return True
    return False


def _earlier_years(page: Page, sentence: Sentence, year: int) -> list[tuple[int, int]]:
    """Return the words that name a year before that of the operation: 'in 2029'."""
    words = page.words
    figures = [k for k in page.figures_in(sentence.i + 1, sentence.j) if _YEAR.match(words[k])]
    before = ("in", "since", "from", "of", "(", "here", "year")  # 'right thumb FPL, done here 2024 (2 strand)'
    # 'Earlier thumb FPL repair 2030, healed': no word leads to the year, but the first one says when.
    earlier = words[sentence.i] in ("earlier", "previous", "prior", "old", "former")
    return [(k, k + 1) for k in figures if int(words[k]) < year and (earlier or words[k - 1] in before)]


def _is_a_place(page: Page, cue: Mention) -> bool:
    """'The profundus had come apart at the old repair': only where; 'by a bottle the previous evening': only when."""
    if page.words[cue.j - 1] == "previous" and page.words[cue.j : cue.j + 1] in _TIMES_OF_DAY:
        return _SEWN_BEFORE.isdisjoint(page.words[max(0, cue.i - _LONG_CLAUSE) : cue.i])
    if page.words[cue.i] == "first" and page.words[cue.j - 1] == "repair" and _counts_repairs(page, cue):
        return True  # 'First repair, index FDP: ...', 'Second repair, ...'
    nouns = page.words[cue.j - 1 : cue.j + 1]
    if not {"repair", "sutures", "suture"}.isdisjoint(nouns) and not _GAVE_WAY.isdisjoint(
        page.words[cue.j : cue.j + 4]
    ):
        return True  # 'The previous repair had ruptured': found so today
    if page.words[cue.i - 2 : cue.i] in (["from", "the"], ["from", "his"], ["from", "her"], ["of", "the"]):
        return page.words[cue.j - 1] in ("operation", "repair", "surgery", "procedure") and cue.i >= 3
    first = cue.i + (page.words[cue.i] == "the")
    led = page.words[first - 2 : first] in (["at", "the"], ["through", "the"], ["along", "the"])
    gave_way = not _GAVE_WAY.isdisjoint(page.words[max(0, first - 6) : first])
    if led and gave_way and page.words[cue.j : cue.j + 1] in _WHERE_SEWN:
        return True  # 'the FDP had ruptured through the previous suture line'
    return led and page.words[cue.j - 1] == "repair"


_TIMES_OF_DAY = (["evening"], ["night"], ["day"], ["morning"], ["afternoon"])
_LONG_CLAUSE = 12  # words
_SEWN_BEFORE = frozenset(["repaired", "sutured", "sewn", "stitched", "operated", "repair", "operation", "surgery"])
_WHERE_SEWN = (["suture"], ["sutures"], ["repair"], ["join"], ["junction"], ["tenorrhaphy"])


def _counts_repairs(page: Page, cue: Mention) -> bool:
    words = page.words[cue.j :]
    return page.words[cue.j : cue.j + 1] in ([","], [":"], ["-"]) and any(
        a == "second" and b == "repair" for a, b in pairwise(words)
    )


def _history_aside(page: Page, sentence: Sentence, cues: list[Mention], year: int) -> tuple[int, int] | None:
    """Return the words of an aside that alone tells of an earlier operation, where the sentence goes on about this one.

    'A2, which had been opened at the first operation, was vented further'; 'the A2 reconstructed before was solid'.
    """
    found = [(c.i, c.j) for c in cues if c.value == "history"] or _earlier_years(page, sentence, year)
    if not found:
        return None
    words, first, last = page.words, found[0][0], found[-1][1]
    if (had := then_today(page, sentence, first, last)) is not None:
        return had, last  # 'A2 had been vented at the first operation and was today reconstructed'
    if (turn := turns_to_today(page, sentence, last)) is not None:
        return sentence.i, turn
    comma = next((k for k in range(first, sentence.i, -1) if words[k] == ","), None)
    end = next((k for k in range(last, sentence.j) if words[k] == ","), None)
    if comma is not None and end is not None and of_other_finger(page, sentence, comma, words[comma:end]):
        return None  # 'His ring finger, which I repaired last year, never gapped'
    if comma is not None and end is not None and words[comma + 1] in _ASIDE_LEADS:
        return (comma, end + 1) if sentence.j - end >= 4 else None
    if comma is not None and end is not None and _is_participle(words[comma + 1]) and words[end + 1] in _IS_TODAY:
        return comma, end + 1  # 'A4, vented at the first operation, was now contracted'
    if comma is not None and words[comma + 1] == "its" and tells_extent(page, sentence.i, comma):
        return comma, sentence.j  # 'FDS intact, its old repair left alone'
    if comma is not None and _opens_with_old(words, comma + 1, first) and _tells_intact(page, sentence.i, comma):
        return comma, sentence.j  # 'FDS intact, the old repair solid'
    joint = next((k for k in range(first, sentence.i, -1) if words[k] in (",", "and", ";")), None)
    if joint is not None and _pulley_had_been(page, joint, first) and _HAD_BEEN.isdisjoint(words[sentence.i : joint]):
        ends = (k for k in range(last, sentence.j) if words[k] in (",", ";"))
        return joint, next(ends, sentence.j)  # 'A2 was intact, A3 had been removed at the first operation, A4 ...'
    lead = next((k for k in range(first - 1, max(sentence.i, first - 4), -1) if _is_participle(words[k])), None)
    named = words[last : last + 1] == [","] and any(words[k] in _IS_NOW for k in range(last, min(last + 8, sentence.j)))
    if lead is not None and named and words[lead - 1] not in AUXILIARIES:
        return lead, last  # 'The pulleys made at the first stage, A2 and A4, are both intact'
    if lead is not None and words[last : last + 1] in (["was"], ["were"]) and words[lead - 1] not in AUXILIARIES:
        return lead, last
    return None


def _pulley_had_been(page: Page, comma: int, last: int) -> bool:
    """Tell whether a clause behind word `comma` begins with a pulley and what had become of it before word `last`."""
    k = comma + 1 + (page.words[comma + 1] in ("the", "and"))
    begins = any(m.kind == "pulley" and m.i == k for m in within(page.mentions, k, last))
    return begins and not {"had", "has"}.isdisjoint(page.words[k:last])


def _is_participle(word: str) -> bool:
    return word.endswith("ed") or word in ("made", "built", "rebuilt")


_ASIDE_LEADS = frozenset(["which", "already", "previously", "described", "as"])


def _opens_with_old(words: list[str], k: int, cue: int) -> bool:
    """Tell whether a clause opens with the words that tell of an earlier repair: ', the old repair firm'."""
    return cue - k <= 1 and words[k : cue + 1] in (["old"], ["the", "old"])


def _tells_intact(page: Page, i: int, j: int) -> bool:
    told = [m.value for m in within(page.mentions, i, j) if m.kind == "extent"]
    return set(told) == {"intact"} and _HAD_BEEN.isdisjoint(page.words[i:j])


def tells_extent(page: Page, i: int, j: int) -> bool:
    """Tell whether words i to j say how far something was cut, and not what it had been before."""
    return any(m.kind == "extent" for m in within(page.mentions, i, j)) and _HAD_BEEN.isdisjoint(page.words[i:j])


_IS_TODAY = frozenset(["was", "were", "is", "are"])
_IS_NOW = frozenset(["are", "is", "remain", "remains"])


def _only_new(page: Page, sentence: Sentence, cues: list[Mention]) -> bool:
    return any(c.value == "resume" for c in cues) and any(c.value == "operative" for c in cues)
