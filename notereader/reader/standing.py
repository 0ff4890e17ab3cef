"""Step 5, standing: is what is said a finding of this operation?

Cues with scope, after the published trigger-and-scope methods (Chapman 2001; Harkema 2009), with words of operative
notes. History, plans, alternatives, conditions and teaching remarks mark the words they reach; negation is looked up
where a finding needs it, for a negated finding is often one too ("not repaired").
"""

import re
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.awaited import mark_awaited
from notereader.reader.boxes import BOX_SIGNS
from notereader.reader.customs import aside_of_custom, mark_general_truth
from notereader.reader.dates import MONTHS, find_dates
from notereader.reader.denied_labels import mark_denied_labels
from notereader.reader.denied_sayings import mark_denied_sayings
from notereader.reader.double_denials import drop_double_denials, mark_double_denials
from notereader.reader.earlier_stages import mark_earlier_stage
from notereader.reader.first_efforts import mark_first_efforts
from notereader.reader.first_looks import mark_first_looks
from notereader.reader.hearsay import mark_hearsay
from notereader.reader.musings import mark_musings
from notereader.reader.not_for_long import mark_not_for_long
from notereader.reader.old_repairs import mark_old_repair
from notereader.reader.open_choices import mark_open_choices
from notereader.reader.open_labels import mark_open_labels
from notereader.reader.other_patients import mark_other_patients
from notereader.reader.page import Break, Mention, Page, Sentence, page_of, within
from notereader.reader.practised import mark_practised
from notereader.reader.published import mark_published
from notereader.reader.put_back import mark_blank_means, mark_put_back
from notereader.reader.questions import mark_unanswered, question_of
from notereader.reader.recollections import mark_recollections
from notereader.reader.self_corrected import mark_taken_back
from notereader.reader.spacers import mark_spacer
from notereader.reader.struck_out import mark_struck_out
from notereader.reader.unachieved import mark_unachieved
from notereader.reader.unchecked import mark_unchecked
from notereader.reader.unplaced import mark_answers_in_turn
from notereader.reader.unrecorded import mark_unrecorded
from notereader.reader.unticked import beside, drop_half_ticked, mark_fields, mark_left_open, mark_unticked
from notereader.reader.weakened import bounded_state, mark_weakened
from notereader.reader.wishes import mark_wishes
from notereader.vocabulary.wordlists import word_list

_SECTIONS = {
    "indication": "story",
    "previous": "history",
    "consent": "story",
    "teaching": "teaching",
    "instructions": "plan",
    "label": "unfilled",
}
_BACK_REFERENCE = word_list("standing", "back_reference")
_YEAR = re.compile(r"(?:19|20)\d\d\Z")
_BOUNDS = word_list("standing", "bounds")
# How a general remark turns to what was done this time.
_TURNS = [tuple(words.split()) for words in word_list("standing", "this_case")]
_FORWARD_ONLY = word_list("standing", "forward_only")
_RIGHT_BOUNDS = _BOUNDS | {"and", ".", "(", ")"}
_LEFT_BOUNDS = _BOUNDS | {".", "(", ")", ">"}


@Language.component("notereader_standing")
def standing(doc: Doc) -> Doc:
    """Fill the Page's standing, one word each. RETURNS the same Doc."""
    page = page_of(doc)
    page.standing = [""] * len(page.words)
    page.dates = find_dates(page)
    drop_double_denials(page)
    year = _operation_year(page)
    last_today = max((n for n, sentence in enumerate(page.sentences) if "today" in sentence.said), default=-1)
    by_sentence = _cues_by_sentence(page)
    ticked = mark_fields(page)
    was_history, history_block = False, -1
    turned = -1  # the paragraph in which a past history has turned to this operation
    for n, sentence in enumerate(page.sentences):
        cues = by_sentence.get(n, [])
        kind = _SECTIONS.get(sentence.section, "")
        if kind == "history" and _opens_on_today(page, sentence, cues):
            turned = sentence.block
        kind = "" if kind == "history" and turned == sentence.block else kind
        for part in beside(sentence, ticked):
            mark_unticked(page, part)
            mark_open_choices(page, part)
        mark_left_open(page, sentence)
        mark_unrecorded(page, sentence)
        mark_denied_labels(page, sentence)
        mark_open_labels(page, sentence)
        if "?" in sentence.said:
            mark_unanswered(page, sentence)
        if page.words[sentence.j - 1] == "?" and _asks(page, sentence):
            asked = question_of(page, sentence)
            page.mark(asked, sentence.j, "question")
            kind = kind or ("question" if asked == sentence.i else "")
        elif _mark_last_label(page, sentence):
            pass
        elif (
            page.words[sentence.j - 1] == ":"
            and sentence.j - sentence.i <= 7
            and not sentence.prefix
            and sentence.section != "diagnosis"
        ):
            kind = kind or ("" if _says_something(page, sentence) else "unfilled")
        opening = _opening(page, sentence)
        kind = opening if opening == "considered" else kind or opening
        if kind == "story" and any(c.value == "operative" for c in cues) and sentence.block:
            kind = "" if _is_operative(cues) else kind
        if kind:
            page.mark(sentence.i, sentence.j, kind)
            for cue in cues if kind == "plan" else ():
                if cue.value == "considered" and page.words[cue.i] in ("would", "should", "might", "could"):
                    page.mark(*_clause(page, cue, sentence), "considered")
            continue
        history = _is_history(page, sentence, cues, year) or (n < last_today and _opens_with_a_month(page, sentence))
        if not history and was_history and sentence.block == history_block:
            history = page.words[sentence.i] in _BACK_REFERENCE and not any(c.value == "resume" for c in cues)
        was_history, history_block = history, sentence.block
        aside = _history_aside(page, sentence, cues, year) if history else None
        if aside is not None:
            page.mark(*aside, "history")
            was_history = False
        elif history:
            page.mark(sentence.i, sentence.j, "history")
            continue
        _mark_cues(page, sentence, cues)
        mark_earlier_stage(page, sentence)
        mark_old_repair(page, sentence)
        mark_musings(page, sentence)
        mark_answers_in_turn(page, sentence)
        mark_general_truth(page, sentence)
        mark_unachieved(page, sentence)
        mark_weakened(page, sentence)
        mark_unchecked(page, sentence)
        mark_denied_sayings(page, sentence)
        mark_double_denials(page, sentence)
        mark_first_looks(page, sentence, page.sentences[n + 1] if n + 1 < len(page.sentences) else None)
        mark_put_back(page, sentence)
        mark_blank_means(page, sentence)
        mark_wishes(page, sentence)
        mark_awaited(page, sentence)
        mark_published(page, sentence)
        mark_practised(page, sentence)
        mark_recollections(page, sentence)
        mark_other_patients(page, sentence)
        mark_taken_back(page, sentence)
        _mark_stranger(page, sentence)
        _mark_muscles(page, sentence)
        mark_spacer(page, sentence)
        _mark_contrast(page, sentence)
        if sentence.section in ("procedure", "diagnosis"):
            _mark_asked(page, sentence)
    if "unticked" in page.standing:
        drop_half_ticked(page)
    _mark_disowned(page)
    mark_struck_out(page)
    mark_not_for_long(page)
    mark_first_efforts(page)
    _mark_asides(page)
    mark_hearsay(page)
    return doc


def _opens_on_today(page: Page, sentence: Sentence, cues: list[Mention]) -> bool:
    """'Past operations: FDP repair, six strands. Now: FDP ruptured, repaired ...': back at this operation."""
    words = page.words[sentence.i : sentence.i + 2]
    this_one = words[:1] == ["this"] and words[1] in _OPERATIONS
    this_one = this_one or words[:1] == ["today's"]
    return this_one or any(c.value == "resume" and c.i == sentence.i for c in cues)


_OPERATIONS = frozenset(["operation", "procedure", "surgery", "time", "occasion"])


def _mark_asides(page: Page) -> None:
    """'(SHO asks: why not? Two strands of anything is a worry.)': a remark in brackets goes on to where they close."""
    open_block = -1
    for sentence in page.sentences:
        if sentence.block == open_block:
            page.mark(sentence.i, sentence.j, "teaching")
            open_block = -1 if ")" in sentence.said else open_block
        elif (
            page.words[sentence.i] == "("
            and ")" not in sentence.said
            and _is_aside_of(page.words[sentence.i : min(sentence.i + 4, sentence.j)])
        ):
            open_block = sentence.block
        else:
            open_block = -1


def _mark_disowned(page: Page) -> None:
    """'The paragraph above does not fit this patient': what the block before it said is nobody's finding."""
    for n, sentence in enumerate(page.sentences):
        if "above" not in sentence.said or _DISOWNS.isdisjoint(sentence.said):
            continue
        words = page.words[sentence.i : sentence.j]
        named = not _TEXTS.isdisjoint(words) or words[:3] in (["the", "above", "is"], ["the", "above", "should"])
        if named:
            before = page.sentences[n - 1].block if n and page.sentences[n - 1].block != sentence.block else -1
            for other in page.sentences[:n]:
                if other.block == before or (before < 0 and other.block == sentence.block):
                    page.mark(other.i, other.j, "teaching")


def _mark_asked(page: Page, sentence: Sentence) -> None:
    """'Tenolysis FDP, repair FDS?': the part of a title that ends with a question mark was only a question."""
    for k in range(sentence.i + 1, sentence.j - 1):
        if page.words[k] == "?":
            first = next((m for m in range(k - 1, sentence.i, -1) if page.words[m] in (",", ";", ":", "+")), sentence.i)
            page.mark(first, k, "question")


_THE = frozenset(["the", "our", "my", "his", "her", "their"])
_USUAL = frozenset(["usual", "customary", "standard", "normal", "regular", "habitual"])


def _mark_contrast(page: Page, sentence: Sentence) -> None:
    """'A two-strand modified Kessler of 4-0, not a 4-strand cruciate of 3-0': all of what it was not."""
    if "not" not in sentence.said:
        return
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 2):
        if words[k] == "not" and words[k + 1] in _THE and words[k + 2] in _USUAL:
            end = next((n for n in range(k + 1, sentence.j) if words[n] in (",", ";", ".", ")", "but")), sentence.j)
            page.mark(k, end, "considered")  # 'hence PDS and not the usual 3-0 four strand'
        if words[k] == "not" and words[k - 1] in (",", "(") and words[k + 1] in ("a", "an"):
            end = next((n for n in range(k + 1, sentence.j) if words[n] in (",", ";", ".", ")", "but")), sentence.j)
            suture = ("stitch", "strandword")
            if any(m.kind in suture for m in within(page.mentions, k, end)) and any(
                m.kind in suture for m in within(page.mentions, sentence.i, k)
            ):
                page.mark(k, end, "considered")


def _mark_muscles(page: Page, sentence: Sentence) -> None:
    """'Lumbrical to ring FDP: ragged, excised': what is told behind the label is the muscle's fate."""
    muscle = page.words[sentence.i] in ("lumbrical", "lumbricals", "lumb")
    if muscle and ":" in page.words[sentence.i : min(sentence.i + 8, sentence.j)]:
        page.mark(sentence.i, sentence.j, "other")


def _mark_stranger(page: Page, sentence: Sentence) -> None:
    """'Addendum on a different patient (filed in error): "index FDP, eight strands"': nothing of this hand."""
    words = page.words[sentence.i : sentence.j]
    bed = next((k for k, pair in enumerate(pairwise(words), sentence.i) if pair in _BEDS), None)
    if bed is not None:
        end = next((k for k in range(sentence.i, sentence.j) if page.words[k] == ";"), sentence.j)
        # 'The man in the next bed took six strands; ours took two', but 'Done by: SpR, consultant in the next theatre'
        begin = next((k + 1 for k in range(bed, sentence.i, -1) if page.words[k] == ","), sentence.i)
        page.mark(begin, end, "teaching")
    if _PATIENTS.isdisjoint(sentence.said):
        return
    pairs = list(pairwise(words))
    another = any(
        second in _PATIENTS
        and (first in _OTHER or (first in _IN_TURN and _LIKENING.isdisjoint(words[max(0, k - 2) : k])))
        for k, (first, second) in enumerate(pairs)
    )
    before = any(a in _PATIENTS and (b in ("before", "after")) for a, b in pairs[-2:])
    before = before or any(tuple(words[k : k + 3])[1:] in _BEFORE_THIS for k, w in enumerate(words) if w in _PATIENTS)
    if another or before:
        page.mark(sentence.i, sentence.j, "teaching")


_BEDS = frozenset([("next", "bed"), ("next", "theatre"), ("next", "room"), ("other", "theatre")])
_OTHER = frozenset(["different", "another", "wrong", "other"])
_IN_TURN = frozenset(["previous", "next", "earlier"])
_PATIENTS = frozenset(["patient", "chart", "case"])
_BEFORE_THIS = frozenset((b, c) for b in ("before", "after") for c in ("him", "her", "this"))
_LIKENING = frozenset(["in", "as", "like", "than", "before", "after", "until", "between", "for"])
_RISKS = word_list("standing", "risks")


_ON_CONDITION = frozenset(["provided", "providing", "assuming", "supposing"])
_OPENERS = frozenset(
    [
        *_ON_CONDITION,
        "plans",
        *("consent", "risks", "risk", "signed", "agreed", "consented", "plan", "booked", "listed"),
        *("planned", "proposed", "intended", "not", "omitted", "deferred", "considered", "discussed", "declined"),
        *("(", "note", "nb", "were", "should", "had"),
    ]
)


def _opening(page: Page, sentence: Sentence) -> str:
    """Return what the first words of a sentence make of it: a consent, or a condition without 'if'."""
    first = page.words[sentence.i : sentence.i + 4]
    if first[0] not in _OPENERS:
        return ""
    if (
        first[:1] in (["consent"], ["risks"], ["risk"])
        and len(first) > 1
        and first[1] in _RISKS
        and sentence.section != "consent"
    ):
        return "story"
    signed = first[:2] in (["signed", "for"], ["agreed", "to"], ["signed", "up"])
    if (signed or first[:2] in (["consented", "for"], ["consented", "to"])) and page.words[sentence.j - 1] != "?":
        return "story"
    if first[:1] == ["plan"] and first[1:2] in (["a"], ["b"], ["c"]) and first[2:3] != ["."]:
        return "considered"  # 'Plan B = sew FDP, four strands of 3-0 Prolene'
    if first[0] in _MEANT and ":" in first:
        return "plan"  # 'Planned: repair FDP ring', 'Intended operation: ...'
    if _lists_undone(page, sentence):
        return "considered"
    if first[:1] in (["booked"], ["listed"]) and first[1:2] in (["as"], ["for"], [":"]):
        return "plan"
    if _is_aside_of(first):
        return "teaching"
    if first[:2] in (["were", "a"], ["were", "the"], ["were", "it"], ["were", "there"]):
        return "conditional"
    if first[0] in _ON_CONDITION and first[1:2] not in (["with"], ["by"], ["for"], [":"]):
        return "conditional"  # 'Provided the A2 is intact one may leave the ring off'
    if first[:2] in (["plan", "for"], ["plans", "for"]) and ":" in page.words[sentence.i : sentence.i + _LONGEST_HEAD]:
        return "plan"  # 'Plan for the left ring finger: six-strand M-Tang'
    if first[:1] == ["should"] and page.words[sentence.j - 1] != "?":
        return "conditional"
    if first[:1] == ["had"] and {"would", "should", "might", "i'd", "we'd"} & sentence.said:
        return "considered"
    return ""


def _lists_undone(page: Page, sentence: Sentence) -> bool:
    """'Not done: epitendinous suture, A2 repair', 'Omitted: ...', 'Not done, though planned: ...'."""
    words = page.words[sentence.i : min(sentence.i + _LONGEST_HEAD, sentence.j)]
    head = words[: words.index(":")] if ":" in words else []
    if head[:1] == ["omitted"] and _told_late(page, sentence, head):
        return False
    return head[:1] in _LEFT_OUT or (head[:2] in _NOT_DONE and (len(head) == _PAIR or "," in head))


def _told_late(page: Page, sentence: Sentence, head: list[str]) -> bool:
    """'Omitted: I took 5 mm off the edge' in an addendum, 'Omitted above: ...': what the note left out, and was done."""
    if not _PAPERS.isdisjoint(head):
        return True
    behind = page.words[sentence.i + len(head) + 1 : sentence.j]
    return sentence.section == "addendum" and not _TELLING.isdisjoint(behind)


_PAPERS = frozenset(["above", "note", "dictation", "report", "earlier", "typing", "text"])
_TELLING = frozenset(["i", "we", "was", "were"])
_LONGEST_HEAD = 14  # words
_PAIR = 2
_LEFT_OUT = (["omitted"], ["deferred"], ["declined"])
_NOT_DONE = tuple(["not", verb] for verb in ("done", "performed", "needed", "required", "attempted", "used"))
_MEANT = frozenset(["planned", "proposed", "intended"])


def _is_aside_of(first: list[str]) -> bool:
    """'(SpR: two strands was what my boss did)', 'note for reg: ...': somebody's remark to somebody."""
    if first[:1] == ["("] and first[1:2] != [] and first[1] in _SPEAKERS and ":" in first[2:4]:
        return True
    return first[:2] in (["note", "for"], ["note", "to"], ["nb", "for"]) and first[2:3] != [] and first[2] in _SPEAKERS


_SPEAKERS = word_list("standing", "speakers")


def _asks(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence with a question mark is one; '... are sutured after Zechner?' doubts a word."""
    words = page.words[sentence.i : sentence.j]
    if words[0] in _ASKS_A_FAVOUR and "you" in words[:3] and {"please", "kindly"} & set(words):
        return False  # 'Would you please see him on day 4 and begin early active motion?'
    told = _AUXILIARIES & set(words[3:]) & _FINITE
    return len(words) <= 12 or not told or words[0] in _ASKING or words[0] in ("(", '"') or "'" in words[0]


def _mark_last_label(page: Page, sentence: Sentence) -> bool:
    """'Core stitch:  Savage      strands:': the label in the last column was left open, and only that one."""
    last = sentence.j - 1
    while last > sentence.i and page.words[last].startswith("__"):
        last -= 1
    if page.words[last] != ":":
        return False
    column = next((k for k in range(last, sentence.i, -1) if page.breaks[k] == Break.COLUMN), None)
    if column is None or last - column > _LABEL_WIDE:
        return False
    if ":" not in page.words[sentence.i : column - 1]:
        return False
    page.mark(column, sentence.j, "unfilled")
    return True


_LABEL_WIDE = 4  # words
_ASKS_A_FAVOUR = frozenset(["would", "could", "can", "will", "may"])
_FINITE = frozenset(["was", "were", "is", "are", "had", "has", "have"])
_ASKING = word_list("standing", "asking")


def _says_something(page: Page, sentence: Sentence) -> bool:
    """Tell whether words before a closing colon already state something ('All at zone IV:')."""
    return any(m.kind in ("zone", "extent", "material") for m in within(page.mentions, sentence.i, sentence.j))


_POLITE = word_list("standing", "polite")
# What makes a quoted earlier wording hold no more, and names of such wordings before it.
_GAVE_WAY = frozenset(["ruptured", "parted", "failed", "dehisced", "way", "apart"])
_DISOWNS = word_list("standing", "disowns")
_TEXTS = word_list("standing", "texts")


def _is_operative(cues: list[Mention]) -> bool:
    return sum(c.value == "operative" for c in cues) >= 2


def _operation_year(page: Page) -> int:
    """Return the year of the operation as far as the note tells: that of its first date under a date heading."""
    stretches = [(s.h, s.j) for s in page.sections if s.kind == "date"]
    dated = [d for d in page.dates if any(h <= d.i < j for h, j in stretches)] or page.dates
    return int(dated[0].value[:4]) if dated else 9999


def _cues_by_sentence(page: Page) -> dict[int, list[Mention]]:
    found: dict[int, list[Mention]] = {}
    n = 0
    for cue in page.cues:
        while n + 1 < len(page.sentences) and page.sentences[n].j <= cue.i:
            n += 1
        guides = page.words[cue.i] == "ultrasound" and {"guided", "guidance"} & set(page.words[cue.j : cue.j + 2])
        if not guides and not (cue.value == "conditional" and no_condition(page, cue)):
            found.setdefault(n, []).append(cue)
    return found


_LONGEST_ASKED = 6  # words of 'not repaired, why: ['


def no_condition(page: Page, cue: Mention) -> bool:
    """'IF' is the index finger; '10% if that' and 'if any' put no condition."""
    if page.raw(cue.i, cue.j) == "IF":
        return True
    if page.words[cue.i] == "if" and page.words[cue.i - 1 : cue.i] and page.words[cue.i - 1] in _POLITE:
        return True  # 'I should be grateful if you would begin ...'
    if page.words[cue.i - 1 : cue.j] == ["just", "in", "case"]:
        return True  # '... the wrist, which I had marked just in case, and the ends were ragged'
    asked = page.words[cue.j : cue.j + _LONGEST_ASKED]
    if ":" in asked[:-1] and asked[asked.index(":") + 1] in BOX_SIGNS:
        return True  # 'If no: [x] trimmed [ ] excised': a question of a form
    after = page.words[cue.j : cue.j + 2]
    if page.words[cue.i : cue.j] == ["in", "the", "event"] and after[:1] not in (["of"], ["that"]):
        return True  # 'In the event two strands went in'
    return after[:1] in (["that"], ["any"], ["anything"]) and after[1:] in ([], [","], ["."], [";"], [")"])


def _is_history(page: Page, sentence: Sentence, cues: list[Mention], year: int) -> bool:
    """Tell whether a sentence speaks of an earlier operation."""
    cues = [c for c in cues if not (c.value == "history" and _is_a_place(page, c))]
    if any(c.value == "history" for c in cues):
        return not _only_new(page, sentence, cues)
    dated = any(c.value == "dated_history" for c in cues) and _tells_a_day(page, sentence)
    if dated or _mended_before(page, sentence) or _in_a_month_before(page, sentence):
        return True
    years = _earlier_years(page, sentence, year)
    return bool(years) and not any(d.i <= years[0][0] < d.j for d in page.dates)


_MENDED = frozenset(["repaired", "repair", "mended", "sewn", "sutured", "fixed"])


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
    if _MENDED.isdisjoint(sentence.said):
        return False
    here = [d for d in page.dates if sentence.i <= d.i < sentence.j]
    if here and _had_it_mended(page, sentence, here[0].i) and any(d.value > here[0].value for d in page.dates):
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
    mended = [d for d in here if not _MENDED.isdisjoint(page.words[max(sentence.i, d.i - _SOON_DATED) : d.i])]
    return bool(days) and any(d.value < min(days) for d in mended)


_SECOND_TIME = frozenset(["secondary", "rupture", "ruptured", "tenolysis"])


def _had_it_mended(page: Page, sentence: Sentence, day: int) -> bool:
    """'This gentleman had his profundus repaired on 26th September with a two-strand core': before word `day`."""
    words = page.words
    had = next((k for k in range(sentence.i, day) if words[k] == "had" and words[k + 1] in ("his", "her", "their")), -1)
    return had >= 0 and not _MENDED.isdisjoint(words[had:day]) and "been" not in words[had:day]


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
    return dated and not _MENDED.isdisjoint(words)


_HAD_BEEN = frozenset(["had", "been"])


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
    comma = next((k for k in range(first, sentence.i, -1) if words[k] == ","), None)
    end = next((k for k in range(last, sentence.j) if words[k] == ","), None)
    if comma is not None and end is not None and words[comma + 1] in _ASIDE_LEADS:
        return (comma, end + 1) if sentence.j - end >= 4 else None
    if comma is not None and end is not None and _is_participle(words[comma + 1]) and words[end + 1] in _IS_TODAY:
        return comma, end + 1  # 'A4, vented at the first operation, was now contracted'
    if comma is not None and words[comma + 1] == "its" and _tells_extent(page, sentence.i, comma):
        return comma, sentence.j  # 'FDS intact, its old repair left alone'
    if comma is not None and _opens_with_old(words, comma + 1, first) and _tells_intact(page, sentence.i, comma):
        return comma, sentence.j  # 'FDS intact, the old repair solid'
    if comma is not None and _pulley_had_been(page, comma, first) and _HAD_BEEN.isdisjoint(words[sentence.i : comma]):
        ends = (k for k in range(last, sentence.j) if words[k] in (",", ";"))
        return comma, next(ends, sentence.j)  # 'A2 was intact, A3 had been removed at the first operation, A4 ...'
    lead = next((k for k in range(first - 1, max(sentence.i, first - 4), -1) if _is_participle(words[k])), None)
    named = words[last : last + 1] == [","] and any(words[k] in _IS_NOW for k in range(last, min(last + 8, sentence.j)))
    if lead is not None and named and words[lead - 1] not in _AUXILIARIES:
        return lead, last  # 'The pulleys made at the first stage, A2 and A4, are both intact'
    if lead is not None and words[last : last + 1] in (["was"], ["were"]) and words[lead - 1] not in _AUXILIARIES:
        return lead, last
    return None


def _pulley_had_been(page: Page, comma: int, last: int) -> bool:
    """Tell whether a clause behind a comma begins with a pulley and what had become of it before word `last`."""
    k = comma + 1 + (page.words[comma + 1] in ("the", "and"))
    begins = any(m.kind == "pulley" and m.i == k for m in within(page.mentions, k, last))
    return begins and "had" in page.words[k:last]


def _is_participle(word: str) -> bool:
    return word.endswith("ed") or word in ("made", "built", "rebuilt")


_ASIDE_LEADS = frozenset(["which", "already", "previously", "described", "as"])


def _tells_extent(page: Page, i: int, j: int) -> bool:
    return any(m.kind == "extent" for m in within(page.mentions, i, j)) and _HAD_BEEN.isdisjoint(page.words[i:j])


def _opens_with_old(words: list[str], k: int, cue: int) -> bool:
    """Tell whether a clause opens with the words that tell of an earlier repair: ', the old repair firm'."""
    return cue - k <= 1 and words[k : cue + 1] in (["old"], ["the", "old"])


def _tells_intact(page: Page, i: int, j: int) -> bool:
    told = [m.value for m in within(page.mentions, i, j) if m.kind == "extent"]
    return set(told) == {"intact"} and _HAD_BEEN.isdisjoint(page.words[i:j])


_IS_TODAY = frozenset(["was", "were", "is", "are"])
_IS_NOW = frozenset(["are", "is", "remain", "remains"])
_TELLS = frozenset(["was", "were", "had", "has", "is", "did", "i", "we", "then", "today", "which", "who"])
_AUXILIARIES = frozenset(["was", "were", "had", "been", "has", "have", "is", "are", "we", "i", "then", "and", ","])


def _only_new(page: Page, sentence: Sentence, cues: list[Mention]) -> bool:
    return any(c.value == "resume" for c in cues) and any(c.value == "operative" for c in cues)


def _mark_cues(page: Page, sentence: Sentence, cues: list[Mention]) -> None:
    for cue in cues:
        custom = aside_of_custom(page, cue, sentence) if cue.value in ("teaching", "considered") else None
        if custom is not None:
            page.mark(*custom, "teaching")
        elif cue.value == "teaching":
            page.mark(*_brackets_or(page, cue, *_aside(page, cue, sentence)), "teaching")
        elif cue.value == "conditional":
            if page.words[cue.i - 1 : cue.i] == ["as"]:  # 'treated as if it were a full division: six strands'
                end = next((k for k in range(cue.j, sentence.j) if page.words[k] in _RIGHT_BOUNDS), sentence.j)
                page.mark(cue.i, end, "considered")
                continue
            bounded = bounded_state(page, cue, sentence)
            if bounded is not None:
                page.mark(*bounded, "conditional")
                continue
            first = sentence.i if cue.i <= sentence.i + 2 else cue.i
            span = _square_or(page, cue, first, _quote_end(page, cue, sentence))
            bracketed = _brackets_or(page, cue, sentence.i, sentence.j)
            tells = page.words[bracketed[0]] == "(" and page.words[bracketed[1] + 1 : bracketed[1] + 2] != [":"]
            if tells:  # '(complete only if the tendon was sutured)', '(6-strand if room)'
                span = bracketed
            page.mark(*span, "conditional")
        elif cue.value == "considered" and not _judged(page, cue):
            page.mark(*_clause(page, cue, sentence), "considered")
        elif cue.value == "planned" and sentence.section != "diagnosis" and not _is_purpose(page, cue, sentence):
            page.mark(*_with_its_suture(page, cue, sentence), "plan")


def _quote_end(page: Page, cue: Mention, sentence: Sentence) -> int:
    """'The book says: "six strands if motion is intended." We placed four': where the quotation of a cue ends."""
    quoted = page.words[sentence.i : cue.i].count('"') % 2 == 1
    closed = next((k + 1 for k in range(cue.j, sentence.j) if page.words[k] == '"'), sentence.j)
    return closed if quoted else sentence.j


def _is_purpose(page: Page, cue: Mention, sentence: Sentence) -> bool:
    """'A2 was divided to allow the repair to be done': what something was done for, and done as well."""
    lead = page.words[max(sentence.i, cue.i - _FAR_FROM_PURPOSE) : cue.i]
    return page.words[cue.i : cue.i + 2] == ["to", "be"] and not _ALLOWING.isdisjoint(lead)


_ALLOWING = frozenset(["allow", "allowing", "allowed", "enable", "enabling", "enabled", "permit", "permitting", "let"])
_FAR_FROM_PURPOSE = 6  # words


def _with_its_suture(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int]:
    """'FDP tagged, to be repaired Thursday, 4 strands, 3-0': what a plan names behind a comma is planned too."""
    first, last = _clause(page, cue, sentence)
    if page.words[cue.j - 1] not in _MENDED or page.words[last : last + 1] != [","]:
        return first, last
    end = next((k for k in range(last, sentence.j) if page.words[k] in (";", ".")), sentence.j)
    told = not _TELLS.isdisjoint(page.words[last:end])
    named = any(m.kind in ("digit", "tendon") for m in within(page.mentions, last, end))
    return (first, last) if told or named else (first, end)


def _judged(page: Page, cue: Mention) -> bool:
    """'The repair was considered rather bulky' tells how it was judged, and not what was thought of.

    So do 'I would not call it bulky' and 'bulkier than I would have liked', and 'a single Kessler was considered
    sufficient'. Nor does 'he goes to hand therapy' tell of what lay to hand.
    """
    if page.words[cue.i : cue.j] == ["to", "hand"] and page.words[cue.j : cue.j + 1] != []:
        return page.words[cue.j] in _OF_THE_HAND
    if page.words[cue.j : cue.j + 1] in _ENOUGH:
        return True
    if page.words[cue.j - 1].startswith("expect") and "as" in page.words[max(0, cue.i - _LIKENED) : cue.i]:
        return True  # 'ragged as you would expect': as it was found
    wished = page.words[cue.i - 1] == "than"
    first = cue.i - _COMPARED if wished else cue.i
    return any(m.kind in ("bulk", "tension") for m in within(page.mentions, first, cue.j + 2))


_COMPARED = 4  # words
_LIKENED = 3  # words: 'as clean as one would expect'
_ENOUGH = (["sufficient"], ["adequate"], ["enough"], ["satisfactory"])
_OF_THE_HAND = frozenset(["therapy", "therapist", "therapists", "clinic", "unit", "surgery", "physio", "physiotherapy"])


def _aside(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int]:
    """Return what a teaching remark reaches: its sentence, from the semicolon it follows, up to words of this case.

    'FDS was intact, as it had been said to be, and was left': of an aside with 'as' no more than the aside.
    """
    comma = next((k for k in range(cue.i, max(sentence.i, cue.i - _FAR_BEHIND_AS), -1) if page.words[k] == ","), None)
    end = next((k for k in range(cue.j, sentence.j) if page.words[k] == ","), None)
    aside = comma is not None and end is not None and page.words[comma + 1] == "as"
    if comma is not None and end is not None and aside and _tells_extent(page, sentence.i, comma):
        return comma, end + 1
    first = next((k + 1 for k in range(cue.i - 1, sentence.i, -1) if page.words[k] == ";"), sentence.i)
    reason = next((k for k in range(cue.i - 1, first, -1) if page.words[k] in _REASONS), None)
    if reason is not None and page.words[reason - 1] == ",":
        turn = next((k for k in range(cue.j, sentence.j) if page.words[k] in _TURNING), sentence.j)
        return reason, turn  # '..., since bulk was a concern in principle, though none was seen'
    return first, _this_case(page, cue.j, sentence.j)


_FAR_BEHIND_AS = 7  # words
_REASONS = frozenset(["since", "because"])
_TURNING = frozenset(["though", "although", "but", ";"])


def _this_case(page: Page, i: int, j: int) -> int:
    """Return where a remark turns to this operation: 'I usually do eight but here we did'."""
    for k in range(i, j - 2):
        if page.words[k] in (";", ",") and page.words[k + 1] == "today":
            return k  # 'Normally four strands; today six'
        if any(tuple(page.words[k : k + len(p)]) == p for p in _TURNS):
            return k
    return j


def _brackets_or(page: Page, cue: Mention, i: int, j: int) -> tuple[int, int]:
    """Return the brackets around a cue where it stands in some, else the span given."""
    opened = next((k for k in range(cue.i, i - 1, -1) if page.words[k] in ("(", ")")), None)
    if opened is None or page.words[opened] == ")":
        return i, j
    closed = next((k for k in range(cue.j, j) if page.words[k] == ")"), j)
    return opened, closed


def _square_or(page: Page, cue: Mention, i: int, j: int) -> tuple[int, int]:
    """Return the square brackets around a cue, '[If the stump has retracted: ...] The tendon ...', else the span."""
    opened = next((k for k in range(cue.i - 1, max(i, cue.i - 4) - 1, -1) if page.words[k] in ("[", "]")), None)
    if opened is None or page.words[opened] == "]":
        return i, j
    closed = next((k for k in range(cue.j, j) if page.words[k] == "]"), j)
    return opened, closed


def _clause(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int]:
    """Return the clause a cue of an alternative reaches."""
    forward_only = " ".join(page.words[cue.i : cue.j]) in _FORWARD_ONLY
    i = cue.i + (forward_only and page.words[cue.i] == "left")  # 'divided and left for secondary grafting': left it was
    while not forward_only and i > sentence.i and page.words[i - 1] not in _LEFT_BOUNDS:
        i -= 1
    j = cue.j
    j += page.words[j : j + 1] == [":"] and j + 1 < sentence.j  # 'first thought: just trim'
    while j < sentence.j and (page.words[j] not in _RIGHT_BOUNDS or _object_goes_on(page, cue, j)):
        j += 1
    rest = page.words[j : j + _WHY_NOT]
    rest = rest[: rest.index(")")] if ")" in rest else []
    if page.words[i - 1] == "(" and _AUXILIARIES.isdisjoint(rest[1:]):
        j += len(rest)  # '(a second core was considered and not used: too much bulk)'
    return i, j


_WHY_NOT = 8  # words


_WEIGHED = frozenset(["about", "of", "considered", "contemplated", "debated", "discussed"])


def _object_goes_on(page: Page, cue: Mention, k: int) -> bool:
    """'We talked about a button and a two-strand pull-out': a second object behind 'and', not a second clause."""
    after = page.words[k + 1 : k + 8]
    if page.words[k] != "and" or page.words[cue.j - 1] not in _WEIGHED or after[:1] not in (["a"], ["an"]):
        return False
    end = next((n for n, word in enumerate(after) if n and word in _RIGHT_BOUNDS), len(after))
    return _AUXILIARIES.isdisjoint(after[:end])


_VERBS = frozenset(["was", "were", "is", "are", "did", "had"])
# Negations that follow what they negate: 'an epitendinous suture was omitted on purpose'.
_AFTER = word_list("standing", "after")


_NOT_SEWN = (["not", "repaired"], ["not", "sutured"], ["not", "sewn"], ["not", "grafted"], ["not", "fixed"])


def is_negated(page: Page, i: int, j: int, sentence: Sentence, reach: int = 5) -> bool:
    """Tell whether words i to j stand under a negation in their clause."""
    if too_much_for(page, i, sentence) is not None:
        return True
    for cue in within(page.cues, sentence.i, sentence.j):
        if cue.value != "negated" or page.standing[cue.i] == "unticked":
            continue
        if cue.j <= i and i - cue.j <= reach and not _crossed(page, cue.j, i):
            return True
        other = "and" in page.words[j : cue.i] and page.words[cue.i] in _VERBS  # 'smoothed and the tendon was not sewn'
        if cue.i >= j and cue.i - j <= 5 and not _crossed(page, j, cue.i) and not other:
            phrase = " ".join(page.words[cue.i : cue.j])
            if phrase == "no" and (cue.j == sentence.j or _ends_field(page, cue)) and cue.i - j <= 2:
                return True
            if phrase in ("no", "none", "nil") and page.words[cue.i - 1] == "=" and cue.i - j <= _LONG_LABEL:
                return True  # 'Circumferential suture = none'
            beside = cue.i - j <= 1 and page.words[j : cue.i] != ["and"]  # 'FDP divided and not the FDS'
            if "not" in page.words[cue.i : cue.j] and Break.COLUMN in page.breaks[j : cue.i + 1]:
                continue  # 'FDS   complete   not repaired'
            if page.words[cue.i - 1] == "/" and page.words[cue.i : cue.i + 2] in _NOT_SEWN:
                continue  # 'FDS V .... cut / not repaired'
            if phrase in _AFTER or (phrase in ("not", "never", "none", "nil") and beside):
                return True
    return False


_LONG_LABEL = 3  # words


def too_much_for(page: Page, i: int, sentence: Sentence) -> int | None:
    """'Too thin to repair', 'too far out to be sutured', 'too distal for repair': return the 'too' that denies word i.

    'Not too thin to repair' denies nothing.
    """
    k = i - 1 - (page.words[i - 1] in _BEFORE_DEED)
    if k <= sentence.i or "too" not in sentence.said or page.words[k] not in ("to", "for"):
        return None
    first = max(sentence.i, k - _MEASURED)
    too = next((n for n in range(k - 1, first - 1, -1) if page.words[n] == "too"), None)
    denies = too is not None and page.words[too - 1] not in ("not", "n't") and _BOUNDS.isdisjoint(page.words[too:k])
    return too if denies else None


_BEFORE_DEED = frozenset(["be", "direct", "primary", "a", "any", "formal"])
_MEASURED = 5  # words: 'too short and ragged'


def _ends_field(page: Page, cue: Mention) -> bool:
    """'Circumferential suture no; A4 vented': an answer, with the next label behind it; not '4-0... no, 3-0'."""
    closed = page.words[cue.j] in (";", ",") or page.breaks[cue.j] == Break.COLUMN
    return closed and not page.words[cue.i - 1].startswith("..") and page.words[cue.i - 2] != "+"


def _crossed(page: Page, i: int, j: int) -> bool:
    ended = any(page.words[k] in _BOUNDS or page.words[k] in (".", "then", "with") for k in range(i, j))
    anew = any(a == "and" and b in _SUBJECTS_ANEW for a, b in pairwise(page.words[i:j]))
    anew = anew or ("-", "-") in pairwise(page.words[i:j])  # 'no room -- repaired with two strands'
    anew = anew or speaker_anew(page.words[i:j]) or next_field(page, i, j)
    anew = anew or _result_then_it(page, i, j) or stated_anew(page, i, j)
    # 'not worth saving, so excised', but 'not so clean'; 'neither repair gapped and both were bulky'
    return ended or anew or "so" in page.words[i + 1 : j]


def _result_then_it(page: Page, i: int, j: int) -> bool:
    """'There was no gap it was a little bulky', dictated without stops; not 'no fibre of it was divided'."""
    spots = {k for k in range(i, j - 1) if page.words[k : k + 2] == ["it", "was"]}
    return bool(spots) and any(m.kind in _RESULTS and m.j in spots for m in within(page.mentions, i - 1, j))


def stated_anew(page: Page, i: int, j: int) -> bool:
    """'No gap at all little bit bulky', 'no gap catches at A2', dictated without stops; not 'no gap or catching'.

    What a denied noun is followed by, with nothing that joins the two, is a statement of its own.
    """
    first = j + (page.words[j : j + 1] == ["a"])  # 'a bit tight'
    if first >= len(page.words) or page.words[first] not in _STATES:
        return False
    nouns = [m for m in within(page.mentions, i - 1, j) if m.kind in _RESULTS and m.j > i]
    return bool(nouns) and _JOINERS.isdisjoint(page.words[nouns[-1].j : j])


_STATES = word_list("standing", "states_of_repairs")
_JOINERS = frozenset([",", "or", "nor", "and", "/", "&", "+", "-", "not", "no", "any", "neither", "either"])
_RESULTS = frozenset(["gap", "tension", "bulk", "glide"])


def next_field(page: Page, i: int, j: int) -> bool:
    """'Tension: no     Gap: yes', 'Tension: no     Gap seen': the answer of one label, and the next column."""
    if Break.COLUMN not in page.breaks[i : j + 1]:
        return False
    capital = page.text[page.starts[i]].isupper() and page.text[page.starts[i - 1]].islower()
    labelled = capital and page.breaks[i] == Break.COLUMN  # 'Tension no     Gap seen'
    return labelled or j > i + 1 or (i > 1 and page.words[i - 2] in (":", "?", "="))


def speaker_anew(words: list[str]) -> bool:
    """Tell whether the speaker begins a statement: 'A2 was not cut I vented A4', not 'not that I could see'."""
    return any(a not in _LEADS_ON and b in ("i", "we") for a, b in pairwise(words))


_LEADS_ON = frozenset(["that", "which", "as", "what", "think", "believe", "because", "not", "no", "nothing"])
# '... and both were bulky', 'needed no core and received only a running 6-0'
_SUBJECTS_ANEW = frozenset(["both", "all", "they", "each", "it", "received", "got"])
