"""Where sentences and list items begin and end.

A full stop is not always the end of a sentence and a line end often is. A line end breaks a sentence where the next
word would still have fitted on the line, where a list item or a heading follows, or in a block that is a list.
"""

from itertools import pairwise

from notereader.reader.layout.form_marks import TickedField
from notereader.reader.layout.headings import Line
from notereader.reader.layout.ticked_lines import ticked_lines
from notereader.reader.page import Break, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_ABBREVIATIONS = word_list("sentences", "abbreviations")
_MAY_END = word_list("sentences", "may_end")
_OF_PATTERNS = word_list("sentences", "of_patterns")
_UNITS = word_list("sentences", "units")
_CONNECTORS = word_list("sentences", "connectors")
_LEANING = word_list("sentences", "leaning")
_HANGING = frozenset(
    ["hanging", "holding", "hung", "held", "going", "goes", "went", "kept"]
)  # 'the rest of it hanging on'
_OPENERS = word_list("sentences", "openers")
_BEGIN_SMALL = word_list("sentences", "begin_small")
_WRITTEN_OUT = 3  # letters
_NARROW = 30  # characters; a paragraph with no line that long is a list, not broken for want of room
_ENDERS = frozenset([".", "!", "?"])
_QUOTE = '"'
_MARKS = frozenset(["-", "*"])
_FULL = 100  # characters; the lines of lists are seldom as long
_BROAD = 55  # characters; of running text, by what its lines tell
_MARKUP = frozenset(["<", "=", "[", "]", "(", ")", ">", "*", "-", "#", "+", "~", "x", "q", ".", "{", "|", "_", "o"])


def make_sentences(page: Page, lines: list[Line]) -> None:
    """Cut the note into sentences and list items, none crossing a section."""
    kinds: list[str] = ["narrative"] * len(page.words)
    edges: set[int] = set()
    for section in page.sections:
        kinds[section.h : section.j] = [section.kind] * (section.j - section.h)
        edges.update((section.h, section.j))
        if section.i < len(page.words) and page.breaks[section.i] >= Break.LINE:
            edges.add(section.i)
    page.ticked = ticked_lines(page.text, _names(page))
    for line in page.ticked:  # a field of a form is a line, or the column of one, of its own
        row = page.text.rfind("\n", 0, line.span[0]) + 1, line.span[1]
        edges.update(k for k in page.words_in(*row) if k < len(page.words) and page.breaks[k] >= Break.LINE)
        if line.begin >= 0:
            edges.add(_keep_together(page, line))
    small = in_small_letters(page)
    soft = _soft_lines(page, lines, edges, small)
    blocks = {line.i: line.block for line in lines}
    block, first = 0, 0
    count = len(page.words)
    line_end = Break.LINE
    stops = _ENDERS | {_QUOTE}
    after = (k for k, word in enumerate(page.words, 1) if word in stops or k == count or page.breaks[k] >= line_end)
    for k in sorted(edges.union(after)):
        if not 0 < k <= count or (k < count and k not in edges and not _ends_before(page, k, soft, small)):
            continue
        kind = "admin" if _empty_label(page, first, k) else kinds[first]
        marked = page.words[first] in _MARKS and first + 1 < k and page.breaks[first] >= Break.LINE
        begin = first + (marked and page.breaks[first + 1] == Break.SPACE)
        page.breaks[begin] = page.breaks[first]  # the mark of an item says nothing: its line begins behind it
        page.sentences.append(Sentence(begin, k, kind, block, page.breaks[first] >= Break.LINE))
        first = k
        block = blocks.get(k, block)


def _names(page: Page) -> list[tuple[int, int]]:
    named = (m for m in page.mentions if m.kind in ("tendon", "pulley", "digit", "digit?"))
    return [(page.starts[m.i], page.ends[m.j - 1]) for m in named]


def _keep_together(page: Page, line: TickedField) -> int:
    """Close the wide gaps between the options of a field, so that they are one cell. RETURNS its first word."""
    first, last = page.words_in(*line.span)
    for k in range(first + 1, last):
        page.breaks[k] = min(page.breaks[k], Break.SPACE)
    return page.words_in(line.begin, last)[0]


def sentence_end(page: Page, k: int) -> int:
    """Return the word after the sentence that word k stands in, as far as the line goes."""
    none: frozenset[int] = frozenset()
    return next((m for m in range(k + 1, len(page.words)) if _ends_before(page, m, none)), len(page.words))


_BOXES = frozenset(["[", "\u2611", "\u2612"])


def _empty_label(page: Page, i: int, j: int) -> bool:
    """Tell whether words i to j are a line of a form left empty, 'Gap after repair:', with another label after it."""
    own = page.words[i:j]
    leader = next((k for k, word in enumerate(own) if word[0] == "." and k and word.startswith("..")), None)
    told = own[:leader].count(":") > 1 or not _BOXES.isdisjoint(
        own[:leader]
    )  # 'core : 3-0    strands : 4    type : ......'
    if leader is not None and not told and not any(w[0].isalnum() for w in own[leader:]):
        below = j < len(page.words) and page.breaks[j] == Break.LINE and _indent(page, j) > _indent(page, i)
        return not below and (j >= len(page.words) or page.breaks[j] >= Break.COLUMN)  # 'removed ............'
    colon = i + own.index(":") if ":" in own else j
    if colon in (i, j) or colon - i > 6 or any(w[0].isalnum() for w in page.words[colon + 1 : j]):
        return False
    if j >= len(page.words) or page.breaks[j] != Break.LINE:
        return j >= len(page.words) or page.breaks[j] >= Break.COLUMN
    return _indent(page, j) <= _indent(page, i) and ":" in page.words[j : j + 6]


# --- lines


# Sentences that begin small: 'FDP and FDS' in capitals do not make a note typed in capitals and small letters.
_MANY = 6


def in_small_letters(page: Page) -> bool:
    """Tell whether a note is typed in small letters, so that these do not show a sentence going on.

    Names ('Xeroform', 'A2') may begin a few sentences of such a note with a capital.
    """
    begun = [page.text[s : s + 2] for s in _after_stops(page)]
    large = sum(pair[0].isupper() and pair[1:].islower() for pair in begun)  # not 'FDS', 'A1'
    little = sum(pair[0].islower() for pair in begun)
    if large and (little < 4 or little < 2 * large):
        return False
    begins_small = little >= _MANY and little > _MANY * large
    return begins_small or sum(map(str.isupper, page.text)) * 50 < len(page.text)


def _after_stops(page: Page) -> list[int]:
    """Return where the words after full stops begin."""
    after = (k for k in range(1, len(page.words)) if page.words[k - 1] == "." and page.breaks[k] >= Break.SPACE)
    return [page.starts[k] for k in after]


def _soft_lines(page: Page, lines: list[Line], edges: set[int], small: bool) -> frozenset[int]:
    """Return the first words of lines that go on with the sentence of the line before."""
    soft: set[int] = set()
    last_item = 0
    for before, line in pairwise(lines):
        number = _item_number(page, line)
        if line.i in edges or (_item(page, line, last_item) and not _measures(page, line)):
            last_item = number or last_item
            continue
        if goes_on(page, before, line, small):
            soft.add(line.i)
    return frozenset(soft)


def goes_on(page: Page, before: Line, line: Line, small: bool = False) -> bool:
    """Tell whether a line goes on with the sentence of the line before it; `small`: the note is in small letters."""
    lower = page.text[page.starts[line.i]].islower() or _measures(page, line)
    last = page.words[line.i - 1]
    narrow = before.length + before.room < _NARROW
    fits = narrow or before.room > _first_width(page, line) + 1
    if page.breaks[line.i] == Break.BLANK:
        return False
    if _in_columns(page, before) and _in_columns(page, line):
        return False  # rows of a grid
    if (column := _first_column(page, before)) and column == _first_column(page, line):
        return False  # 'middle   A2 vented.  A4 intact' above 'ring     nil touched'
    if last == "no" and _is_answer(page, line.i - 1) and (not lower or _opens_with_label(page, line)):
        return False  # 'Tension: no' above 'Gap: seen'
    if _heads_with_finger(page, line):
        return False  # 'small finger - FDP divided' below 'catches at A2'
    if page.words[max(0, line.i - len(_NOT_APPLICABLE)) : line.i] == _NOT_APPLICABLE:
        return False
    hanging = last == "on" and page.words[line.i - 2] in _HANGING
    if last in _CONNECTORS or (last in _LEANING and not fits and not hanging) or _thread_goes_on(page, line):
        return True
    if lower and line.i in page.run_on and last not in _ENDERS and last not in (":", "-"):
        return True  # 'Core sut ure  4-strand', 'with  3-O  Pr0lene' of a scan
    if last == "." and _opens_with_label(page, line) and _plain_word(page.words[line.i - 2]):
        return False  # '... 3-0 PDS.' above 'ring FDP: left, nothing to repair'
    if last == ")" and ":" in page.words[line.i + 1 : line.i + 4]:
        return False  # 'Repairs (4-0 Prolene for the middle, 5-0 for the ring)' above 'all three: Kirchmayr'
    if last in ("day", "pod") and page.words[line.i].isdecimal() and not fits:
        return True  # '... hand therapy on day', '4 for early passive'
    if last in _JOINTS and line.i - 1 > before.i and page.words[line.i].isdecimal():
        degrees = page.words[line.i + 1 : line.i + 2] in _DEGREES
        if degrees or not fits:
            return True  # '... dorsal blocking slab. Wrist', '20 deg flexed, MCPs'
    if _with_arrow(page, before) and (not lower or _opens_with_arrow(page, line)):
        return False  # 'Pulled on each repair -> no gap', then 'Wash 2 L + haemostasis', 'common dig n. -> 9/0'
    if not lower and not line.prose and ":" in page.words[line.i + 1 : line.i + 3]:
        return False  # 'Ring: FDP cut' under 'Middle: FDP cut' is a line of its own
    if not lower and all(":" in page.words[own.i + 1 : min(own.i + 7, own.j)] for own in (before, line)):
        return False  # 'Core, both FDPs: 3-0 Ethibond', then 'Epitendinous, both FDPs: 6-0 Prolene'
    if line.prose:
        return (lower and not small) or not fits
    if lower and not small:
        listed = any(Break.COLUMN in page.breaks[own.i + 1 : own.j] for own in (before, line))
        running = before.length >= (_BROAD if _tells_more_than_one(page, before) else _FULL)
        labelled = _opens_with_label(page, line) and before.length < _FULL  # 'passive ROM: no gap'
        full = running and last not in _ENDERS and not (listed or labelled)  # running text that ends in mid-sentence
        return full or not fits or _indent(page, line.i) > _indent(page, before.i)
    if last in _ENDERS or last == ":" or fits:
        return False
    return _indent(page, line.i) >= max(8, _indent(page, before.i))


def _thread_goes_on(page: Page, line: Line) -> bool:
    """'... a Lim-Tsai in 4-0 looped', 'Supramid and ...': what the thread is made of stands on the next line."""
    kind = page.words[line.i - 1] in _KINDS_OF_THREAD and page.words[line.i - 2] not in (":", "|", "]", ")")
    return kind and any(m.kind == "material" and m.i == line.i for m in within(page.mentions, line.i, line.i + 1))


_KINDS_OF_THREAD = frozenset(["looped", "braided", "monofilament", "double-armed", "coated"])
_JOINTS = frozenset(["wrist", "mcp", "mcps", "mcpj", "mcpjs", "mp", "mps", "mpj", "mpjs", "ip", "ips", "ipj", "ipjs"])
_DEGREES = (["deg"], ["degs"], ["degrees"], ["degree"], ["\u00b0"], ["flexed"], ["flexion"], ["flex"])


def _heads_with_finger(page: Page, line: Line) -> bool:
    """Tell whether a line opens with the name of a finger, a mark, and one of its tendons: 'index - FDP divided'."""
    named = next((m for m in within(page.mentions, line.i, line.i + 1) if m.kind in ("digit", "digit?")), None)
    if named is None:
        return False
    k = named.j + (page.words[named.j : named.j + 1] in (["finger"], ["thumb"]))
    marked = page.words[k : k + 1] in ([":"], ["-"], ["="])
    return marked and any(m.kind == "tendon" and m.i == k + 1 for m in within(page.mentions, k + 1, k + 2))


def _tells_more_than_one(page: Page, line: Line) -> bool:
    """'Long washout, 3 litres. Crushed tendon cut' above 'off, 3 mm in all': a line with a stop in it is no item."""
    stops = (k for k in range(line.i + 2, line.j - 2) if page.words[k] == "." and page.breaks[k + 1] == Break.SPACE)
    return any(_plain_word(page.words[k - 1]) and page.text[page.starts[k + 1]].isupper() for k in stops)


_NOT_APPLICABLE = ["n", "/", "a"]


def _is_answer(page: Page, k: int) -> bool:
    """Tell whether word k stands behind the mark or the wide space of a label: 'Tension? no', 'Tension: ring no'."""
    for n in range(k, max(0, k - _FEW_WORDS), -1):
        if page.breaks[n] >= Break.COLUMN or page.words[n - 1] in _ANSWERED or page.words[n - 1].startswith(".."):
            return page.breaks[n] < Break.LINE
    return False


_FEW_WORDS = 3


def _opens_with_label(page: Page, line: Line) -> bool:
    return not _ANSWERED.isdisjoint(page.words[line.i + 1 : line.i + 4])


_ANSWERED = frozenset([":", "?", "=", "-", "|", ">", "]", ")", "}", "_", "x", "o", "yes"])


def _measures(page: Page, line: Line) -> bool:
    """Tell whether a line begins with a length or a share, '2 mm at the back of the join', and not with a number."""
    after = page.words[line.i + 1 : line.i + 2]
    return page.words[line.i].isdecimal() and after != [] and after[0] in ("mm", "cm", "%", "per", "percent", "strands")


def _in_columns(page: Page, line: Line) -> bool:
    """Tell whether a line holds more than one column of space."""
    return sum(page.breaks[k] == Break.COLUMN for k in range(line.i + 1, line.j)) > 1


def _first_column(page: Page, line: Line) -> int:
    """Return how far from its margin the second column of a line begins, 0 where it has no label and column."""
    k = next((k for k in range(line.i + 1, min(line.i + 4, line.j)) if page.breaks[k] == Break.COLUMN), None)
    return page.starts[k] - page.starts[line.i] if k is not None else 0


def _with_arrow(page: Page, line: Line) -> bool:
    """Tell whether a line is in the short hand of arrows, 'ragged -> excised', whose lines are not wrapped."""
    return any(pair == ("-", ">") for pair in pairwise(page.words[line.i + 1 : line.j]))


def _opens_with_arrow(page: Page, line: Line) -> bool:
    """Tell whether a line says near its beginning what an arrow leads to: 'common dig n. -> 9/0 end to end'."""
    return ("-", ">") in pairwise(page.words[line.i + 1 : min(line.i + 7, line.j)])


def _first_width(page: Page, line: Line) -> int:
    """Return how many characters wide the first word of a line is: '1/3' is one word to whoever broke the line."""
    k = line.i + 1
    while k < line.j and page.breaks[k] == Break.NONE:
        k += 1
    return page.ends[k - 1] - page.starts[line.i]


def _indent(page: Page, k: int) -> int:
    return page.starts[k] - (page.text.rfind("\n", 0, page.starts[k]) + 1)


def _item_number(page: Page, line: Line) -> int:
    word = page.words[line.i]
    return int(word) if word.isdecimal() and len(word) <= 2 else 0


def _item(page: Page, line: Line, last_number: int) -> bool:
    """Tell whether a line starts like a list item; numbers of items count up."""
    word = page.words[line.i]
    if word in ("-", "*", ">", "+", "\u00b7", "o") and line.j > line.i + 1 and page.breaks[line.i + 1] >= Break.SPACE:
        return True
    after = page.words[line.i + 1] if line.i + 1 < line.j else ""
    if word.isdecimal() and len(word) <= 2 and after and page.breaks[line.i + 1] == Break.COLUMN:
        return True
    if word == "(" and line.i + 2 < line.j and page.words[line.i + 2] == ")":
        return True
    if after not in (".", ")", ":") or page.breaks[line.i + 1] != Break.NONE:
        return False
    return (len(word) == 1 and word.isalpha()) or (
        word.isdecimal() and (len(word) == 1 or int(word) == last_number + 1)
    )


# --- full stops


def _ends_before(page: Page, k: int, soft: frozenset[int], small: bool = False) -> bool:
    """Tell whether a sentence ends before word k; `small`: the note is in small letters."""
    gap = page.breaks[k]
    if gap >= Break.LINE and k not in soft:
        return True
    last = page.words[k - 1]
    if last == _QUOTE and gap >= Break.SPACE:
        return _quotation_ends(page, k, small)
    if last not in _ENDERS or gap == Break.NONE:
        return False
    if (
        last == "?"
        and gap < Break.LINE
        and (_short_question(page, k) or page.words[k - 2] == "|" or page.words[k] == ":")
    ):  # 'Bulky?  | yes'
        return False
    if last != ".":
        return True
    if gap < Break.LINE and page.words[k] in _BEGIN_SMALL and k >= 2 and _plain_word(page.words[k - 2]):
        return True  # 'cruciate, 3-0 Ethibond. epi 6-0 Prolene'
    return (small or not page.text[page.starts[k]].islower()) and _stop_ends(page, k, soft)


def _quotation_ends(page: Page, k: int, small: bool) -> bool:
    """'He said: "half cut." It was cut through.': a stop right before the closing mark ends the sentence."""
    stopped = page.words[k - 2 : k - 1] in ([stop] for stop in _ENDERS) and page.breaks[k - 1] == Break.NONE
    return stopped and not small and page.text[page.starts[k]].isupper()


def _plain_word(word: str) -> bool:
    """Tell whether a word before a stop is written out, and no short form."""
    return word.isalpha() and len(word) >= _WRITTEN_OUT and word not in _ABBREVIATIONS


def _stop_ends(page: Page, k: int, soft: frozenset[int]) -> bool:
    """Tell whether the full stop before word k, which a capital or a figure follows, ends a sentence."""
    before = page.words[k - 2] if k >= 2 else ""
    if page.breaks[k - 1] != Break.NONE:
        return True
    if before.isdecimal() and len(before) <= 2 and k - 2 not in soft and _numbers_an_item(page, k - 2):
        return False
    if before in _UNITS and k >= 3 and page.words[k - 3][:1].isdecimal():
        return True
    if len(before) == 1 and before.isalpha() and page.text[page.starts[k - 2]].isupper():
        return _letter_ends(page, k)
    if before in _ABBREVIATIONS:
        return _abbreviation_ends(page, k, before)
    return True


def _numbers_an_item(page: Page, k: int) -> bool:
    """Tell whether the figure at word k numbers an item: '2. Repair of A2', 'Procedure: 1. Exploration'."""
    if _starts_line(page, k):
        return True
    return page.words[k - 1] in (".", ":", ";", "?") and page.breaks[k] >= Break.SPACE


def _letter_ends(page: Page, k: int) -> bool:
    """Tell whether a capital and a stop end a sentence ('zone I. Crush', 'opened in an S. The') or are initials."""
    before = page.words[k - 3] if k >= 3 else ""
    if before in ("zone", "zn", "type", "grade", "in", "an") or before.isdecimal():
        return True
    return page.words[k] in _OPENERS and before not in (".", "")


def _abbreviation_ends(page: Page, k: int, before: str) -> bool:
    """Tell whether a short form and a stop end a sentence."""
    if len(before) == 1 or page.text[page.starts[k]].isdecimal():
        return False
    if before in _MAY_END:
        return True
    if before in _OF_PATTERNS:  # '+ 6/0 PDS cont. Tried to add a second', but 'cont. Prolene'
        return not any(m.kind in ("material", "role") for m in within(page.mentions, k, k + 1))
    joined = k >= 3 and page.words[k - 3] in ("+", "and", "&")
    return joined and before in ("prox", "dist", "rad", "uln")


def _short_question(page: Page, k: int) -> bool:
    """Tell whether the words before k are a short question whose answer follows on the same line: 'Gap? Nil.'"""
    first = k - 1
    while first > 0 and k - first < 12 and page.breaks[first] < Break.LINE and page.words[first - 1] not in _ENDERS:
        first -= 1
    return k - first < 11 and (page.text[page.starts[k]].isalnum() or page.words[k] == "[")


def _starts_line(page: Page, k: int) -> bool:
    return k == 0 or page.breaks[k] >= Break.LINE or (page.words[k - 1] in _MARKUP and _starts_line(page, k - 1))
