"""Step 2, layout: headings and what stands under them, lines, sentences and list items."""

import re
from dataclasses import replace
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.layout.headings import Line, believed_headings, line_starts
from notereader.reader.layout.sentences import goes_on, make_sentences, sentence_end
from notereader.reader.layout.short_leaders import settle_short_leaders
from notereader.reader.page import Break, Mention, Page, Section, page_of, within
from notereader.vocabulary.wordlists import word_list

# Headings whose content ends with the line; the others go on until the next heading or, for some, an empty line.
ONE_LINE = word_list("layout", "one_line")
# Of these, those that one sentence answers: what follows it in a long paragraph goes on with the operation.
_ONE_SENTENCE = word_list("layout", "one_sentence")
_LONG = 15  # words
# How the telling of an operation begins within the story that led to it.
_AT_SURGERY = [tuple(words.split()) for words in word_list("layout", "at_surgery")]
_YEAR = re.compile(r"(?:19|20)[0-9]{2}\Z")
TO_THE_END = frozenset(["instructions", "narrative", "findings", "addendum"])
# What a heading in capitals that is not in the vocabulary puts an end to.
_STORY = frozenset(["indication", "previous", "consent", "teaching", "admin"])
# Heads of a treatment list where they stand before the story, of the orders where they stand after the operation.
_TREATMENT = frozenset(["therapy", "treatment"])
# What was done rather than ordered, where sizes of sutures stand under it.
_TREATED = frozenset([*_TREATMENT, "rx", "tx", "management"])
_SIZE = re.compile(r"[1-9]-0\Z")
_RESULT = re.compile(r"\b(?:no gap|gapped|gapping|glides|glided|no catching|catches|joins hold|repairs? held)\b")
_SEEN = frozenset(["o / e", "on exam", "on examination", "exam", "examination"])
_BODY = frozenset(["findings", "narrative", "closure"])


@Language.component("notereader_layout")
def layout(doc: Doc) -> Doc:
    """Fill the Page's sections and sentences from its headings and line ends. RETURNS the same Doc."""
    page = page_of(doc)
    page.breaks[:1] = [Break.BLANK] * len(page.breaks[:1])  # the first word begins a line even after a space
    settle_short_leaders(page)
    lines = _lines(page)
    _measure_blocks(lines)
    page.headings = believed_headings(page, lines)
    _make_sections(page, lines)
    make_sentences(page, lines)
    return doc


def _lines(page: Page) -> list[Line]:
    """Return the lines of the note as runs of words, with the width each takes on its line."""
    lines: list[Line] = []
    block = 0
    count = len(page.words)
    first = 0
    line_end = Break.LINE
    ends = [k for k, gap in enumerate(page.breaks) if k and gap >= line_end]
    for k in [*ends, count] if count else []:
        end = page.text.find("\n", page.starts[first])
        length = (end if end >= 0 else len(page.text)) - page.text.rfind("\n", 0, page.starts[first]) - 1
        lines.append(Line(first, k, block, length))
        if k < count and page.breaks[k] == Break.BLANK:
            block += 1
        first = k
    return lines


def _measure_blocks(lines: list[Line]) -> None:
    """Note for each line how much room it leaves and whether its paragraph is running text."""
    blocks: dict[int, list[Line]] = {}
    for line in lines:
        blocks.setdefault(line.block, []).append(line)
    for members in blocks.values():
        widest = max(line.length for line in members)
        full = sum(line.length for line in members[:-1]) / max(1, len(members) - 1)
        prose = len(members) > 1 and widest >= 40 and full >= 0.8 * widest
        for line in members:
            line.room = widest - line.length if widest <= 110 else 10_000
            line.prose = prose and widest <= 110


# --- sections


def _make_sections(page: Page, lines: list[Line]) -> None:
    """Cut the note into stretches under one heading each."""
    cuts = _cuts(page, lines)
    count = len(page.words)
    sections: list[Section] = []
    at, around, seen = 0, "narrative", set[str]()
    unknown = _unknown_headings(page, lines)
    wrapped = _wrapped(page, lines)
    apart = frozenset(b.i for a, b in pairwise(lines) if not goes_on(page, a, b))
    _settle_before_and_after(page, cuts)
    for n, cut in enumerate(cuts):
        limit = cuts[n + 1].h if n + 1 < len(cuts) else count
        if cut.h > at:
            sections.append(Section(around, at, at, cut.h))
        _settle_kind(page, cut, seen, around, limit)
        ahead = cut.kind == "addendum" and _stands_ahead(page, cut)
        within_addendum = around == "addendum" and (cut.kind in ONE_LINE or _named_by_a_tendon(page, cut))
        if cut.kind not in ONE_LINE and not within_addendum:
            around = cut.kind if cut.kind in ("instructions", "addendum") and not ahead else "narrative"
        cut.j = _section_end(page, cut, _block_end(page, cut.i, limit) if ahead else limit, unknown, wrapped, apart)
        if cut.kind in ("procedure", "consent", "indication") and _is_prose(page, cut):
            cut.kind = "narrative"
        page.late += [(cut.h, cut.j)] if within_addendum else []
        seen.add(cut.kind)
        sections.append(cut)
        at = cut.j
    if at < count:
        sections.append(Section(around, at, at, count))
    told = [part for section in sections for part in _until_surgery(page, section)]
    steps = sorted([*_hours(page, lines), *_questions(page, lines)])
    page.sections = [part for section in told for part in _until_the_next(section, steps)]


def _named_by_a_tendon(page: Page, cut: Section) -> bool:
    """'FDS: repaired.' in an addendum: a label that is a tendon's name, and no new part of the note."""
    return any(m.kind in ("tendon", "pulley", "digit") for m in within(page.mentions, cut.h, cut.i))


def _stands_ahead(page: Page, cut: Section) -> bool:
    """'Correction to be read before the rest: the core was four strands, not six': what follows it is the old note."""
    told = within(page.mentions, 0, cut.h)
    return not any(m.kind in _TELLING for m in told)


def _block_end(page: Page, k: int, limit: int) -> int:
    return next((n for n in range(k + 1, limit) if page.breaks[n] >= Break.BLANK), limit)


# What a note tells of an operation, and an addendum corrects.
_TELLING = frozenset(["extent", "strandword", "stitch", "material"])


def _until_surgery(page: Page, section: Section) -> list[Section]:
    """Part the story from the operation told in the same paragraph: '... came to me. At surgery there was ...'."""
    if section.kind == "consent":
        return _until_the_operation(page, section)
    if section.kind != "indication":
        return [section]
    words = page.words
    for k in range(section.i + 1, section.j - 5):
        if words[k - 1] in (".", ":", ";") and any(tuple(words[k : k + len(p)]) == p for p in _AT_SURGERY):
            if any(_YEAR.match(w) for w in words[k : k + 6]):
                continue  # 'At operation in 2031 ...'
            return [replace(section, j=k), Section("narrative", k, k, section.j)]
    return [section]


def _until_the_operation(page: Page, section: Section) -> list[Section]:
    """Part a consent told in a sentence from what follows it: 'Consent obtained. Upper arm tourniquet. FDP was ...'.

    'Consent. Infection, stiffness and a second operation.' goes on with what was agreed to.
    """
    words = page.words
    agreed = words[section.i - 1] in _AGREED and words[section.i] == "."
    for k in range(section.i + 1, section.j):
        if words[k - 1] != "." or page.breaks[k] < Break.SPACE or page.text[page.starts[k]].islower():
            continue
        end = sentence_end(page, k)
        said, told = set(words[k:end]), {m.kind for m in within(page.mentions, k, end)}
        found = bool(told & {"tendon", "pulley"} and told & {"extent", "opened"}) and _TALKED_OF.isdisjoint(said)
        if not _BEGINS.isdisjoint(said) or (agreed and found):
            if k == section.i + 1:  # 'Consented.': a sentence of the telling, and no heading
                return [Section("narrative", section.h, section.h, section.j)]
            return [replace(section, j=k), Section("narrative", k, k, section.j)]
    return [section]


_AGREED = frozenset(["obtained", "taken", "consented", "signed", "given"])
_BEGINS = word_list("layout", "operation_begins")
_TALKED_OF = word_list("layout", "talked_of")


def _hours(page: Page, lines: list[Line]) -> list[int]:
    """Return the first words of the lines of a log kept by the clock, '13:52  Findings ...'; [] of any other note."""
    hours = [line.i for line in lines if _CLOCK.match(page.text, page.starts[line.i])]
    return hours if len(hours) >= _LOG else []


_CLOCK = re.compile(r"(?:[01]?\d|2[0-3])(?:[:.][0-5]\d| ?h ?[0-5]\d)(?: ?h(?:rs)?\b)?[ \t]*[-:.)]?[ \t]+(?=[^\W\d])")
_LOG = 4  # lines


def _questions(page: Page, lines: list[Line]) -> list[int]:
    """Return the first words of the lines of a report told as questions and answers; [] of any other note.

    'Why operate?' on a line of its own, its answer below it, and then 'What was found in the ring finger?'.
    """
    asked = [line.i for line in lines if page.words[line.j - 1] == "?" and page.words[line.i] in _ASKING]
    return asked if len(asked) >= _LOG else []


_ASKING = frozenset(
    ["what", "which", "who", "why", "when", "where", "how", "was", "were", "did", "is", "are", "had", "any"]
)


def _until_the_next(section: Section, steps: list[int]) -> list[Section]:
    """End what stands under a heading where a log goes on with the next hour, or a report with its next question."""
    k = next((k for k in steps if section.i < k < section.j), None)
    if k is None or section.kind in ("narrative", "addendum"):
        return [section]
    return [replace(section, j=k), Section("narrative", k, k, section.j)]


def _cuts(page: Page, lines: list[Line]) -> list[Section]:
    """Return a section without an end for each heading."""
    starts = line_starts(page, lines)
    cuts: list[Section] = []
    reach = 0
    for heading in sorted(page.headings, key=lambda h: (h.i, -h.j)):
        if heading.i < reach or (cuts and _row_of(page, cuts[-1], heading.i, heading.j)):
            continue
        if heading.value == "indication" and _points_elsewhere(page, heading):
            continue
        reach = heading.j
        cuts.append(Section(heading.value, starts.get(heading.i, heading.i), heading.j))
    return cuts


def _points_elsewhere(page: Page, heading: Mention) -> bool:
    """'Patient: see label.  Left hand.  Op 29/08/2031.': no story stands behind it."""
    first = heading.j + (page.words[heading.j : heading.j + 1] in ([":"], ["-"]))
    answer = page.words[first : first + _ANSWER]
    answer = answer[: answer.index(".")] if "." in answer else answer
    return page.words[heading.i : heading.j][:1] == ["patient"] and not _LABELS.isdisjoint(answer[:_ANSWER])


_ANSWER = 5  # words
_LABELS = frozenset(["label", "sticker", "wristband", "barcode", "addressograph"])


def _row_of(page: Page, cut: Section, i: int, j: int) -> bool:
    """'Core    FDP: 3/0 ...' with 'FDS: 4/0 ...' below it: names of tendons under a label head nothing of their own."""
    if cut.kind not in ("core", "peripheral", "zone") or page.words[i:j] not in (["fdp"], ["fds"], ["fpl"]):
        return False
    same_line = max(page.breaks[cut.i : i + 1], default=Break.NONE) < Break.LINE and "." not in page.words[cut.i : i]
    return same_line or (page.breaks[i] == Break.LINE and _indent(page, i) > _indent(page, cut.h))


def _settle_before_and_after(page: Page, cuts: list[Section]) -> None:
    """'PREOP: ... POSTOP: ...' one after the other are the diagnoses, not the story and the orders."""
    for before, after in pairwise(cuts):
        early, late = (" ".join(w for w in page.words[c.h : c.i] if w.isalpha()) for c in (before, after))
        if early in ("preop", "pre op") and late in ("postop", "post op"):
            before.kind = after.kind = "diagnosis"


def _settle_kind(page: Page, cut: Section, seen: set[str], around: str, limit: int) -> None:
    """Decide what a heading that can head two things heads here, by what stood before it and what stands under it."""
    phrase = " ".join(_past_its_number(page.words[cut.h : cut.i]))
    if cut.kind == "procedure" and "findings" in seen:
        cut.kind = "narrative"
    elif cut.kind == "instructions" and phrase == "after" and _RESULT.search(" ".join(page.words[cut.i : limit])):
        cut.kind = "narrative"  # 'After: moved passively, no gap.'
    elif cut.kind == "indication" and phrase in _SEEN and _OPERATIVE.search(" ".join(page.words[cut.h - 15 : cut.h])):
        cut.kind = "findings"  # 'Wound lengthened. O/E: FDP severed.'
    elif cut.kind == "admin" and phrase == "name" and _names_a_stitch(page, cut.i):
        cut.kind = "core"  # 'Name  M-Tang   Strands [ ] 4 [x] 6'
    elif cut.kind == "admin" and _heads_operation(page, cut, limit):
        cut.kind = "narrative"  # 'Theatre:' above the findings and the repair
    elif cut.kind == "closure" and _opens_skin(page, cut, limit):
        cut.kind = "narrative"  # 'Skin: old wound opened and prolonged toward the palm.'
    elif cut.kind == "narrative" and around == "instructions" and phrase in word_list("layout", "stays"):
        cut.kind = "instructions"
    elif (
        cut.kind == "instructions"
        and phrase in _TREATED
        and (_tells_what_was_done(page, cut.i, limit) or _of_a_part(page, cut.h))
    ):
        cut.kind = "narrative"
    elif cut.kind == "instructions" and phrase in _TREATMENT and "diagnosis" in seen and not seen & _BODY:
        ordered = not _ORDERS.isdisjoint(page.words[cut.i : cut.i + _AT_ONCE])
        cut.kind = cut.kind if ordered else "procedure"  # 'Therapy: early active motion begins on day 3'


def _of_a_part(page: Page, k: int) -> bool:
    """'FDS: partial. Treatment: none.': a label in the line of a tendon, a nerve or a pulley, not of the aftercare."""
    first = k
    while first > 0 and page.breaks[first] < Break.LINE:
        first -= 1
    named = within(page.mentions, first, min(first + _LABEL, k))
    return any(m.kind in _PARTS for m in named)


_LABEL = 4  # words
_PARTS = frozenset(["tendon", "slip", "structure", "sided", "anynerve", "pulley"])


def _opens_skin(page: Page, cut: Section, limit: int) -> bool:
    """Tell whether what stands under 'Skin' is how it was opened, and not how it was closed."""
    first = page.words[cut.i : min(limit, cut.i + _LINE_OF_SKIN)]
    first = first[: first.index(".")] if "." in first else first
    return not _SKIN_OPENED.isdisjoint(first) and _SKIN_SHUT.isdisjoint(first)


_LINE_OF_SKIN = 14  # words
_SKIN_OPENED = frozenset(["opened", "incised", "incision", "prolonged", "extended", "enlarged", "lengthened", "bruner"])
_SKIN_SHUT = frozenset(["closed", "sutured", "stitched", "sewn", "closure", "nylon", "interrupted", "simple"])


def _past_its_number(words: list[str]) -> list[str]:
    """'7. Treatment', 'E) Procedure': the words of a heading without the number or letter it stands under."""
    numbered = len(words) > 2 and (words[0].isdecimal() or len(words[0]) == 1) and words[1] in (".", ")", ":")
    return words[2:] if numbered else words


def _names_a_stitch(page: Page, k: int) -> bool:
    return any(m.kind == "stitch" for m in within(page.mentions, k, k + 3))


def _tells_what_was_done(page: Page, i: int, limit: int) -> bool:
    """'Treatment: repaired', 'Rx: 4/0 Prolene, 4 strands': sutures, or at once the word for what was done."""
    if not _ORDERS.isdisjoint(page.words[i : i + _AT_ONCE]):
        return False  # 'Therapy: starts on day 4. 4-0 nylon out at 2 weeks.'
    line = next((k for k in range(i + 1, limit) if page.breaks[k] >= Break.LINE), limit)
    end = next((k for k in range(i + 1, len(page.words)) if page.breaks[k] >= Break.BLANK), len(page.words))
    sized = any(map(_SIZE.match, page.words[i : max(limit, end)]))  # 'Therapy: lavage. Nerve: 9-0. FDS: ...'
    return sized or not _DONE.isdisjoint(page.words[i : min(i + 4, line)])


_AT_ONCE = 10  # words
_ORDERS = frozenset(["day", "days", "week", "weeks", "starts", "start", "begin", "begins", "splint", "exercises"])
_DONE = frozenset(["repaired", "excised", "sutured", "sewn", "reinserted", "trimmed", "debrided", "resected"])


def _heads_operation(page: Page, cut: Section, limit: int) -> bool:
    """Tell whether a heading of the hospital's own stands alone on its line above lines that tell of cut tendons."""
    phrase = " ".join(page.words[cut.h : cut.i])
    if phrase not in ("theatre", "theater", "operating theatre", "or") or cut.i + 1 >= limit:
        return False
    first = cut.i + (page.words[cut.i] == ":")
    alone = first < limit and page.breaks[first] >= Break.LINE
    return alone and any(m.kind == "tendon" for m in within(page.mentions, first, min(limit, first + 30)))


def _section_end(
    page: Page,
    section: Section,
    limit: int,
    unknown: frozenset[int],
    wrapped: frozenset[int],
    apart: frozenset[int],
) -> int:
    """Return the word at which a section ends at the latest.

    `unknown`: first words of headings the vocabulary does not know; `wrapped`: of lines that go on with the line above;
    `apart`: of lines that stand for themselves.
    """
    if section.kind in TO_THE_END:
        return limit
    if section.h and page.breaks[section.h] < Break.LINE and page.words[section.i : section.i + 1] in ([","], ["."]):
        return min(limit, sentence_end(page, section.i + 1))
    if section.kind in ONE_LINE and _unfilled(page, section.i):
        return section.i
    story = section.kind in _STORY
    seen = 0
    told = sentence_end(page, section.i) if section.kind in _ONE_SENTENCE and section.i < len(page.words) else -1
    base = _indent(page, section.h)
    inline = section.kind == "indication" and section.h > 0 and page.breaks[section.h] < Break.LINE
    heads_items = section.i < limit and page.breaks[section.i] >= Break.LINE and _is_item(page, section.i)
    for k in range(section.i, limit):
        if seen and page.breaks[k] == Break.BLANK and not _story_goes_on(page, section, k, limit):
            return k
        if seen and story and k in unknown:
            return k
        new_line = page.breaks[k] == Break.LINE and k not in wrapped
        listed = heads_items and _is_item(page, k)  # 'Peripheral sutures' above '1. Index FDP: 6/0 nylon'
        if seen and new_line and section.kind in ONE_LINE and _indent(page, k) <= base and not listed:
            return k
        if seen and inline and k in apart and page.words[k - 1] == "." and page.text[page.starts[k]].isupper():
            return k  # 'Re-rupture of the ring FDP. History: on 19 Feb ...' above 'Through the old scar. FDP ...'
        if k == told and limit - k > _LONG and not _line_ends(page, k, _LONG):
            return k
        if page.words[k] not in (":", "|", "-", "=", "(", ")", "]") and page.words[k][0] != ".":
            seen += 1
    return limit


def _is_item(page: Page, k: int) -> bool:
    """Tell whether a line begins as an item of a list: '2. Index FDS', '- ring FDP'."""
    words = page.words[k : k + 2]
    return words[:1] in (["-"], ["*"]) or (words[0].isdecimal() and words[1:] in (["."], [")"]))


def _line_ends(page: Page, k: int, count: int) -> bool:
    """Tell whether the line of word k ends within some words."""
    return any(page.breaks[m] >= Break.LINE for m in range(k + 1, min(k + count, len(page.words))))


def _story_goes_on(page: Page, section: Section, k: int, limit: int) -> bool:
    """Tell whether the story under a heading on its own line goes on after an empty line, up to the next heading.

    It does where nothing of an operation is told before that heading, which stands at the start of a paragraph.
    """
    if section.kind not in ("indication", "previous") or limit >= len(page.words) or limit - k > 250:
        return False
    if page.breaks[section.i] < Break.LINE or page.breaks[limit] != Break.BLANK:
        return False
    told = " ".join(page.words[k:limit])
    return not _OPERATIVE.search(told)


def _unfilled(page: Page, k: int) -> bool:
    """Tell whether behind a heading that ends before word k its line holds only a choice that nobody filled in."""
    while 0 < k < len(page.words) and page.breaks[k] < Break.LINE and not page.words[k][0].isalnum():
        k += 1
    if not 0 < k < len(page.words) or page.breaks[k] < Break.LINE:
        return False
    return bool(page.text[page.ends[k - 1] : page.starts[k]].strip())


def _wrapped(page: Page, lines: list[Line]) -> frozenset[int]:
    """Return the first words of lines in small letters, or with a figure, that go on with the line above."""
    begins = [(a, b, page.text[page.starts[b.i]]) for a, b in pairwise(lines)]
    return frozenset(b.i for a, b, first in begins if (first.islower() or first.isdecimal()) and goes_on(page, a, b))


def _unknown_headings(page: Page, lines: list[Line]) -> frozenset[int]:
    """Return the first words of lines that head something whatever their words are.

    These are short lines in capitals, '3  READY', and those whose label leads by dots to what it heads.
    """
    found = set()
    dots = {word for word in set(page.words) if word.startswith("...")}
    for line in lines:
        if dots and not dots.isdisjoint(page.words[line.i + 1 : min(line.i + 8, line.j)]):
            found.add(line.i)
        raw = page.raw(line.i, line.j)
        if raw.isupper() and raw[-1:].isalnum():
            letters = [w for w in page.words[line.i : line.j] if w.isalpha()]
            if 0 < len(letters) <= 4 and max(map(len, letters)) >= 4:
                found.add(line.i)
    return frozenset(found)


def _indent(page: Page, k: int) -> int:
    return page.starts[k] - (page.text.rfind("\n", 0, page.starts[k]) + 1)


_PROSE = re.compile(
    r"\b(?:tourniquet|draped|prepped|exsanguinated|supine|brought to|taken to the operating|incision was|was extended|"
    r"was identified|were identified)\b"
)


# Words of an operation, which a story does not have.
_OPERATIVE = re.compile(
    r"\b(?:tourniquet|cuff|draped|prepped|exsanguinated|supine|incisions?|bruner|repaired|repair was|sutured|sewn|skin|"
    r"block|anaesthe\w+|anesthe\w+|general|walant|cefazolin|cephazolin|was opened|were opened|theatre|excised|"
    r"vented|preserved|closed|nylon|splint|lidocaine|lignocaine|lengthened|extended|laid open|opened up)\b"
)


_RESULTS = frozenset(
    ["glided", "glides", "gapped", "gapping", "caught", "catches", "catching", "ran", "runs", "freely"]
)


def _is_prose(page: Page, section: Section) -> bool:
    """Tell whether the words under 'procedure' are the narrative and not the list of titles."""
    words = page.words[section.i : section.j]
    if section.kind == "procedure" and not _RESULTS.isdisjoint(words):
        return True  # no title tells how a repair ran on the table
    if section.j - section.i < 30:
        return False
    found = len(set(_PROSE.findall(" ".join(words))))
    if section.kind == "procedure":
        told = sum(w in ("was", "were") for w in words)
        return (found >= 1 and len(words) > 45) or told >= 3
    return found >= 3
