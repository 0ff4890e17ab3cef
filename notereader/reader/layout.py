"""Step 2, layout: headings and what stands under them, lines, sentences and list items.

A full stop is not always the end of a sentence and a line end often is. A line end breaks a sentence where the next
word would still have fitted on the line, where a list item or a heading follows, or in a block that is a list.
"""

import re
from dataclasses import dataclass

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Mention, Page, Section, Sentence, page_of

# Headings whose content ends with the line; the others go on until the next heading or, for some, an empty line.
ONE_LINE = frozenset(
    "surgeon assistant anaesthetist anaesthesia date injury_date tourniquet antibiotics blood_loss complications "
    "specimens implants side digit zone mechanism signature admin dressing consent core peripheral splint".split()
)
TO_THE_END = frozenset(["instructions", "narrative", "findings", "teaching"])

# Heading words that are also ordinary words: believed only where they stand alone, in capitals or before a colon.
_ORDINARY = frozenset(
    "in out seen end what why then after next done op found case patient story close people block mode unit list "
    "from to re rep hand finger site level start staff skin bone nerve vessel tendon tendons sheath gas la ab comp tt "
    "spec compl date check loss core epi outside repair orders advice plan step findings exploration summary therapy "
    "history approach exposure operating team method resident fellow attending technique operation procedure drain "
    "position condition close closed finish closing location marked name count counts pulley pulleys sutures implant "
    "implants fdp fds fpl trainee reason problem problems diagnosis splint plaster dressing cuff consent surgeon".split()
)
_ABBREVIATIONS = frozenset(
    "dist prox mod modif inj approx rad uln horiz no fig st dr mr mrs ms vs ax cap ext flex prof sup supf superf lig dig "
    "art n a v nn dt asst asstt sr jr cons ca circa max min incl excl resp hor vert transv long lac lacs div p s e g i "
    "cont int anaes epi epitend tend interr cm mm ml mg hr hrs op pt pts fdp fds tab sec supt incl nos vol dors lat med "
    "rep abx reg regd hosp repr post pre resp therap physio bilat subcut subq".split()
)
_ENDERS = frozenset([".", "!", "?"])
_MARKUP = frozenset(["<", "=", "[", "]", "(", ")", ">", "*", "-", "#", "+", "~", "x", "q", ".", "{", "|", "_", "o"])
_CONNECTORS = frozenset("and or the a an of to in with by for was were from at on over into   , ( + & / no not".split())


@dataclass(slots=True)
class _Line:
    i: int
    j: int
    block: int
    length: int
    room: int = 0
    prose: bool = False


@Language.component("notereader_layout")
def layout(doc: Doc) -> Doc:
    """Fill the Page's sections and sentences from its headings and line ends. RETURNS the same Doc."""
    page = page_of(doc)
    lines = _lines(page)
    _measure_blocks(lines)
    starts = _line_starts(page, lines)
    page.headings = [h for h in page.headings if _believed(page, h, starts)]
    _make_sections(page, starts)
    _make_sentences(page, lines)
    return doc


def _lines(page: Page) -> list[_Line]:
    """Return the lines of the note as runs of words, with the width each takes on its line."""
    lines: list[_Line] = []
    block = 0
    count = len(page.words)
    first = 0
    for k in range(1, count + 1):
        if k < count and page.breaks[k] < Break.LINE:
            continue
        end = page.text.find("\n", page.starts[first])
        length = (end if end >= 0 else len(page.text)) - page.text.rfind("\n", 0, page.starts[first]) - 1
        lines.append(_Line(first, k, block, length))
        if k < count and page.breaks[k] == Break.BLANK:
            block += 1
        first = k
    return lines


def _measure_blocks(lines: list[_Line]) -> None:
    """Note for each line how much room it leaves and whether its paragraph is running text."""
    blocks: dict[int, list[_Line]] = {}
    for line in lines:
        blocks.setdefault(line.block, []).append(line)
    for members in blocks.values():
        widest = max(line.length for line in members)
        full = sum(line.length for line in members[:-1]) / max(1, len(members) - 1)
        prose = len(members) > 1 and widest >= 40 and full >= 0.8 * widest
        for line in members:
            line.room = widest - line.length if widest <= 110 else 10_000
            line.prose = prose and widest <= 110


def _line_starts(page: Page, lines: list[_Line]) -> dict[int, int]:
    """Return first real word of each line -> first word of the line, skipping bullets, numbers and markup."""
    starts: dict[int, int] = {}
    for line in lines:
        k = line.i
        while k < line.j and k < line.i + 8 and _skippable(page, k, line):
            k += 1
        starts[k] = line.i
        starts.setdefault(line.i, line.i)
    return starts


def _skippable(page: Page, k: int, line: _Line) -> bool:
    word = page.words[k]
    if word in _MARKUP:
        return True
    if word.isdigit() and len(word) <= 2:
        return True
    if word == "section" and k == line.i:
        return True
    after = page.words[k + 1] if k + 1 < line.j else ""
    return len(word) == 1 and word.isalpha() and (k == line.i or page.words[k - 1] in ("section", "(")) and after in (")", ".", "-")


def _believed(page: Page, heading: Mention, starts: dict[int, int]) -> bool:
    """Tell whether a heading word really heads something here."""
    after = heading.j
    at_start = heading.i in starts
    ends_line = after >= len(page.words) or page.breaks[after] >= Break.LINE
    mark = "" if ends_line else page.words[after]
    colon = mark == ":" or (mark == "." and _words_at(page, after + 1, ":")) or _closes_with_colon(page, after)
    if not at_start:
        fresh = page.breaks[heading.i] >= Break.COLUMN or page.words[heading.i - 1] in (".", ";", "|", ")", "]")
        return colon and (fresh or page.raw(heading.i, heading.j)[:1].isupper())
    if colon:
        return True
    phrase = " ".join(page.words[heading.i : heading.j])
    raw = page.raw(heading.i, heading.j)
    capitals = raw.isupper() and len(raw) > 1
    if ends_line:
        return True
    if mark in ("|", ">", "?", "=") or mark.startswith("..") or page.breaks[after] == Break.COLUMN:
        return True
    if mark in ("-", "(", "[", "/") and page.breaks[after] != Break.NONE:
        return capitals or _rest_is_short(page, after) or phrase not in _ORDINARY or _rest_in_brackets(page, after)
    if mark == "." and raw[:1].isupper():
        return after + 1 >= len(page.words) or page.breaks[after + 1] >= Break.SPACE
    return False


def _words_at(page: Page, k: int, word: str) -> bool:
    return k < len(page.words) and page.words[k] == word


def _closes_with_colon(page: Page, k: int) -> bool:
    """Tell whether a bracket that opens at word k is followed by a colon on the same line."""
    if k >= len(page.words) or page.words[k] not in ("(", "["):
        return False
    for m in range(k + 1, min(k + 14, len(page.words) - 1)):
        if page.breaks[m] >= Break.LINE:
            return False
        if page.words[m] in (")", "]"):
            return page.words[m + 1] == ":"
    return False


def _rest_is_short(page: Page, k: int) -> bool:
    """Tell whether no more than eight words follow on the line."""
    for m in range(k, min(k + 9, len(page.words))):
        if page.breaks[m] >= Break.LINE and m > k:
            return True
    return k + 9 > len(page.words)


def _rest_in_brackets(page: Page, k: int) -> bool:
    """Tell whether the rest of the line is one pair of brackets."""
    end = next((m for m in range(k + 1, len(page.words)) if page.breaks[m] >= Break.LINE), len(page.words))
    return page.words[k] in ("(", "[") and page.words[end - 1] in (")", "]")


def _make_sections(page: Page, starts: dict[int, int]) -> None:
    """Cut the note into stretches under one heading each."""
    headings = sorted(page.headings, key=lambda h: (h.i, -h.j))
    cuts: list[Section] = []
    reach = 0
    for heading in headings:
        if heading.i < reach:
            continue
        reach = heading.j
        cuts.append(Section(heading.value, starts.get(heading.i, heading.i), heading.j))
    count = len(page.words)
    sections: list[Section] = []
    at, around, seen_findings = 0, "narrative", False
    for n, cut in enumerate(cuts):
        limit = cuts[n + 1].h if n + 1 < len(cuts) else count
        if cut.h > at:
            sections.append(Section(around, at, at, cut.h))
        if cut.kind not in ONE_LINE:
            around = cut.kind if cut.kind == "instructions" else "narrative"
        cut.j = _section_end(page, cut, limit)
        if cut.kind == "procedure" and seen_findings:
            cut.kind = "narrative"
        elif cut.kind in ("procedure", "consent", "indication") and _is_prose(page, cut):
            cut.kind = "narrative"
        seen_findings = seen_findings or cut.kind == "findings"
        sections.append(cut)
        at = cut.j
    if at < count:
        sections.append(Section(around, at, at, count))
    page.sections = sections


def _section_end(page: Page, section: Section, limit: int) -> int:
    """Return the word at which a section ends at the latest."""
    if section.kind in TO_THE_END:
        return limit
    seen = 0
    base = _indent(page, section.h)
    for k in range(section.i, limit):
        if page.words[k] not in (":", "|", "-", "=", "(", ")", "]") and not page.words[k].startswith("."):
            if seen and page.breaks[k] == Break.BLANK:
                return k
            if seen and page.breaks[k] == Break.LINE and section.kind in ONE_LINE and _indent(page, k) <= base:
                return k
            seen += 1
    return limit


def _indent(page: Page, k: int) -> int:
    return page.starts[k] - (page.text.rfind("\n", 0, page.starts[k]) + 1)


_PROSE = re.compile(
    r"\b(?:tourniquet|draped|prepped|exsanguinated|supine|brought to|taken to the operating|incision was|was extended|"
    r"was identified|were identified)\b"
)


def _is_prose(page: Page, section: Section) -> bool:
    """Tell whether the words under 'procedure' are the narrative and not the list of titles."""
    if section.j - section.i < 30:
        return False
    text = " ".join(page.words[section.i : section.j])
    found = len(set(_PROSE.findall(text)))
    if section.kind == "procedure":
        return found >= 1 and section.j - section.i > 45
    return found >= 3


def _make_sentences(page: Page, lines: list[_Line]) -> None:
    """Cut the note into sentences and list items, none crossing a section."""
    kinds: list[str] = ["narrative"] * len(page.words)
    edges: set[int] = set()
    for section in page.sections:
        kinds[section.h : section.j] = [section.kind] * (section.j - section.h)
        edges.update((section.h, section.j))
        if section.i < len(page.words) and page.breaks[section.i] >= Break.LINE:
            edges.add(section.i)
    soft = _soft_lines(page, lines, edges)
    blocks = {line.i: line.block for line in lines}
    block, first = 0, 0
    count = len(page.words)
    for k in range(1, count + 1):
        if k < count and k not in edges and not _ends_before(page, k, soft):
            continue
        page.sentences.append(Sentence(first, k, kinds[first], block, page.breaks[first] >= Break.LINE))
        first = k
        block = blocks.get(k, block)


def _soft_lines(page: Page, lines: list[_Line], edges: set[int]) -> set[int]:
    """Return the first words of lines that go on with the sentence of the line before."""
    soft: set[int] = set()
    for before, line in zip(lines, lines[1:], strict=False):
        if line.i in edges or _item(page, line):
            continue
        lower = page.text[page.starts[line.i]].islower()
        last = page.words[line.i - 1]
        fits = before.room > page.ends[line.i] - page.starts[line.i] + 1
        if page.breaks[line.i] == Break.BLANK:
            goes_on = False
        elif last in _CONNECTORS:
            goes_on = True
        elif line.prose:
            goes_on = lower or not fits
        else:
            goes_on = lower and (not fits or _indent(page, line.i) > _indent(page, before.i))
        if goes_on:
            soft.add(line.i)
    return soft


def _item(page: Page, line: _Line) -> bool:
    """Tell whether a line starts like a list item."""
    word = page.words[line.i]
    if word in ("-", "*", ">", "+", "\u00b7", "o") and line.j > line.i + 1 and page.breaks[line.i + 1] >= Break.SPACE:
        return True
    after = page.words[line.i + 1] if line.i + 1 < line.j else ""
    if word.isdigit() and len(word) <= 2 and after and page.breaks[line.i + 1] == Break.COLUMN:
        return True
    if word == "(" and line.i + 2 < line.j and page.words[line.i + 2] == ")":
        return True
    return after in (".", ")", ":") and (word.isdigit() or len(word) == 1) and page.breaks[line.i + 1] == Break.NONE


def _ends_before(page: Page, k: int, soft: set[int]) -> bool:
    """Tell whether a sentence ends before word k."""
    gap = page.breaks[k]
    if gap >= Break.LINE and k not in soft:
        return True
    last = page.words[k - 1]
    if last not in _ENDERS or gap == Break.NONE:
        return False
    if last == "?" and gap < Break.LINE and _short_question(page, k):
        return False
    if last != ".":
        return True
    before = page.words[k - 2] if k >= 2 else ""
    first = page.text[page.starts[k]]
    if first.islower():
        return False
    if page.breaks[k - 1] == Break.NONE and before.isdigit() and len(before) <= 2 and _starts_line(page, k - 2):
        return False
    if len(before) == 1 and before.isalpha() and page.text[page.starts[k - 2]].isupper() and page.breaks[k - 1] == Break.NONE:
        return bool(page.words[k - 3].isdigit()) if k >= 3 else False
    if before in _ABBREVIATIONS and page.breaks[k - 1] == Break.NONE:
        return len(before) > 1 and not first.isdigit() and before in ("fdp", "fds", "epi", "mm", "cm", "ml", "min", "hr", "hrs", "flex", "ext", "lac", "long", "max")
    return True


def _short_question(page: Page, k: int) -> bool:
    """Tell whether the words before k are a short question whose answer follows on the same line: 'Gap? Nil.'"""
    first = k - 1
    while first > 0 and k - first < 12 and page.breaks[first] < Break.LINE and page.words[first - 1] not in _ENDERS:
        first -= 1
    return k - first < 11 and page.text[page.starts[k]].isalnum()


def _starts_line(page: Page, k: int) -> bool:
    return k == 0 or page.breaks[k] >= Break.LINE or (page.words[k - 1] in _MARKUP and _starts_line(page, k - 1))
