"""Step 5, standing: is what is said a finding of this operation?

Cues with scope, after the published trigger-and-scope methods (Chapman 2001; Harkema 2009), with words of operative
notes. History, plans, alternatives, conditions and teaching remarks mark the words they reach; negation is looked up
where a finding needs it, for a negated finding is often one too ("not repaired").
"""

from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.layout.clauses import AUXILIARIES
from notereader.reader.layout.questions import mark_unanswered, question_of
from notereader.reader.mentions.dates import find_dates
from notereader.reader.page import Break, Mention, Page, Sentence, page_of, within
from notereader.reader.standing.awaited import mark_awaited
from notereader.reader.standing.bracketed_options import mark_bracketed_options
from notereader.reader.standing.briefed import mark_briefed
from notereader.reader.standing.cue_scopes import clause_of, mark_cues, no_condition
from notereader.reader.standing.customs import mark_general_truth
from notereader.reader.standing.denied_labels import mark_denied_labels
from notereader.reader.standing.denied_sayings import mark_denied_sayings
from notereader.reader.standing.disowned_after import mark_disowned_after
from notereader.reader.standing.donor_threads import mark_donor_threads
from notereader.reader.standing.double_denials import drop_double_denials, mark_double_denials
from notereader.reader.standing.earlier_operations import EarlierOperations
from notereader.reader.standing.earlier_stages import mark_earlier_stage
from notereader.reader.standing.exemplary import mark_exemplary
from notereader.reader.standing.first_efforts import mark_first_efforts
from notereader.reader.standing.first_looks import mark_first_looks
from notereader.reader.standing.given_up import mark_given_up
from notereader.reader.standing.half_vouched import mark_half_vouched
from notereader.reader.standing.hearsay import mark_hearsay
from notereader.reader.standing.latter_things import mark_latter_things
from notereader.reader.standing.lessons import mark_lessons
from notereader.reader.standing.musings import mark_musings
from notereader.reader.standing.neglected import mark_neglected
from notereader.reader.standing.not_done_lists import mark_not_done_lists
from notereader.reader.standing.not_for_long import mark_not_for_long
from notereader.reader.standing.old_repairs import mark_old_repair
from notereader.reader.standing.only_meant import mark_only_meant
from notereader.reader.standing.open_choices import mark_open_choices
from notereader.reader.standing.open_denials import mark_open_denials
from notereader.reader.standing.open_labels import mark_open_labels
from notereader.reader.standing.opening_words import is_aside_of, kind_by_opening
from notereader.reader.standing.other_hands import mark_other_hands
from notereader.reader.standing.other_patients import mark_other_patients
from notereader.reader.standing.outlived import mark_outlived
from notereader.reader.standing.plans_going_on import mark_plans_going_on
from notereader.reader.standing.practised import mark_practised
from notereader.reader.standing.published import mark_published
from notereader.reader.standing.put_back import mark_blank_means, mark_blank_names, mark_put_back
from notereader.reader.standing.recollections import mark_recollections
from notereader.reader.standing.rejected_labels import mark_rejected_labels
from notereader.reader.standing.required import mark_required
from notereader.reader.standing.seen_before import mark_seen_before
from notereader.reader.standing.self_corrected import mark_taken_back
from notereader.reader.standing.slings import mark_slings
from notereader.reader.standing.spacers import mark_spacer
from notereader.reader.standing.struck_out import mark_struck_out
from notereader.reader.standing.talks import mark_talks
from notereader.reader.standing.told_to_family import mark_told_to_family
from notereader.reader.standing.unachieved import mark_unachieved
from notereader.reader.standing.unchecked import mark_unchecked
from notereader.reader.standing.unplaced import mark_answers_in_turn
from notereader.reader.standing.unrecorded import mark_unrecorded
from notereader.reader.standing.unticked import beside, drop_half_ticked, mark_fields, mark_left_open, mark_unticked
from notereader.reader.standing.wasted_sutures import mark_wasted
from notereader.reader.standing.weakened import mark_weakened
from notereader.reader.standing.wishes import mark_wishes
from notereader.reader.standing.yes_and_no import mark_yes_and_no
from notereader.vocabulary.wordlists import word_list

_SECTIONS = {
    "indication": "story",
    "consent": "story",
    "teaching": "teaching",
    "instructions": "plan",
    "label": "unfilled",
}


@Language.component("notereader_standing")
def standing(doc: Doc) -> Doc:
    """Fill the Page's standing, one word each. RETURNS the same Doc."""
    page = page_of(doc)
    page.standing = [""] * len(page.words)
    page.dates = find_dates(page)
    drop_double_denials(page)
    by_sentence = _cues_by_sentence(page)
    ticked = mark_fields(page)
    mark_open_denials(page)
    past = EarlierOperations(page)
    for n, sentence in enumerate(page.sentences):
        cues = by_sentence.get(n, [])
        in_past = past.is_under_its_heading(sentence, cues)
        _mark_form(page, sentence, ticked)
        kind = _kind_of_all(page, sentence, cues, "history" if in_past else _SECTIONS.get(sentence.section, ""))
        if kind:
            page.mark(sentence.i, sentence.j, kind)
            if kind == "plan":
                _mark_weighed_in_plan(page, sentence, cues)
        elif not past.mark(n, sentence, cues):
            mark_cues(page, sentence, cues)
            _mark_what_is_no_finding(page, sentence, page.sentences[n + 1] if n + 1 < len(page.sentences) else None)
    _mark_across_sentences(page)
    return doc


def _mark_form(page: Page, sentence: Sentence, ticked: frozenset[int]) -> None:
    """Mark what a form leaves unticked, open or unanswered in a sentence."""
    for part in beside(sentence, ticked):
        mark_unticked(page, part)
        mark_open_choices(page, part)
    mark_left_open(page, sentence)
    mark_bracketed_options(page, sentence)
    mark_unrecorded(page, sentence)
    mark_denied_labels(page, sentence)
    mark_open_labels(page, sentence)
    if "?" in sentence.said:
        mark_unanswered(page, sentence)


def _kind_of_all(page: Page, sentence: Sentence, cues: list[Mention], by_section: str) -> str:
    """Return why nothing in a sentence is a finding, '' where it may hold some.

    `by_section`: what its heading makes of it. The part of it that only asks, or is an open label, is marked here.
    """
    asked = _mark_question_or_label(page, sentence)
    kind = by_section or asked
    opening = kind_by_opening(page, sentence)
    kind = opening if opening == "considered" else kind or opening
    story = kind == "story" and sum(c.value == "operative" for c in cues) >= _TELLS_OF_WORK and sentence.block
    return "" if story else kind


_TELLS_OF_WORK = 2  # words of operating that show a sentence to tell of it, whatever its heading


def _mark_question_or_label(page: Page, sentence: Sentence) -> str:
    """'FDP intact?', 'Core stitch:': return what a sentence is that only asks or names; mark the part that does."""
    last = page.words[sentence.j - 1]
    if last == "?" and _asks(page, sentence):
        asked = question_of(page, sentence)
        page.mark(asked, sentence.j, "question")
        return "question" if asked == sentence.i else ""
    if _mark_last_label(page, sentence) or last != ":" or sentence.prefix or sentence.section == "diagnosis":
        return ""
    short = sentence.j - sentence.i <= _LONGEST_LABEL
    return "unfilled" if short and not _says_something(page, sentence) else ""


_LONGEST_LABEL = 7  # words


def _mark_weighed_in_plan(page: Page, sentence: Sentence, cues: list[Mention]) -> None:
    """'Would do a tenolysis' of a plan is not even planned."""
    for cue in cues:
        if cue.value == "considered" and page.words[cue.i] in ("would", "should", "might", "could"):
            page.mark(*clause_of(page, cue, sentence), "considered")


def _mark_what_is_no_finding(page: Page, sentence: Sentence, following: Sentence | None) -> None:
    """Mark, one way of saying so after the other, what a sentence tells of that was not found or done here."""
    mark_earlier_stage(page, sentence)
    mark_old_repair(page, sentence)
    mark_musings(page, sentence)
    mark_talks(page, sentence)
    mark_answers_in_turn(page, sentence)
    mark_general_truth(page, sentence)
    mark_exemplary(page, sentence)
    mark_unachieved(page, sentence)
    mark_weakened(page, sentence)
    mark_unchecked(page, sentence)
    mark_denied_sayings(page, sentence)
    mark_double_denials(page, sentence)
    mark_first_looks(page, sentence, following)
    mark_put_back(page, sentence)
    mark_wasted(page, sentence)
    mark_blank_means(page, sentence)
    mark_blank_names(page, sentence)
    mark_wishes(page, sentence)
    mark_only_meant(page, sentence)
    mark_required(page, sentence)
    mark_briefed(page, sentence)
    mark_awaited(page, sentence)
    mark_published(page, sentence)
    mark_practised(page, sentence)
    mark_lessons(page, sentence)
    mark_recollections(page, sentence)
    mark_half_vouched(page, sentence)
    mark_seen_before(page, sentence)
    mark_rejected_labels(page, sentence)
    mark_told_to_family(page, sentence)
    mark_other_patients(page, sentence)
    mark_other_hands(page, sentence)
    mark_taken_back(page, sentence)
    _mark_stranger(page, sentence)
    _mark_muscles(page, sentence)
    mark_spacer(page, sentence)
    mark_slings(page, sentence)
    mark_donor_threads(page, sentence)
    mark_yes_and_no(page, sentence)
    mark_given_up(page, sentence)
    mark_outlived(page, sentence)
    mark_neglected(page, sentence)
    _mark_contrast(page, sentence)
    if sentence.section in ("procedure", "diagnosis"):
        _mark_asked(page, sentence)


def _mark_across_sentences(page: Page) -> None:
    """Mark what another sentence than its own makes no finding."""
    if "unticked" in page.standing:
        drop_half_ticked(page)
    _mark_disowned(page)
    mark_struck_out(page)
    mark_not_for_long(page)
    mark_disowned_after(page)
    mark_plans_going_on(page)
    mark_first_efforts(page)
    _mark_asides(page)
    mark_hearsay(page)
    mark_latter_things(page)
    mark_not_done_lists(page)


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
            and is_aside_of(page.words[sentence.i : min(sentence.i + 4, sentence.j)])
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


def _asks(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence with a question mark is one; '... are sutured after Zechner?' doubts a word."""
    words = page.words[sentence.i : sentence.j]
    if words[0] in _ASKS_A_FAVOUR and "you" in words[:3] and {"please", "kindly"} & set(words):
        return False  # 'Would you please see him on day 4 and begin early active motion?'
    told = AUXILIARIES & set(words[3:]) & _FINITE
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


_DISOWNS = word_list("standing", "disowns")
_TEXTS = word_list("standing", "texts")


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
