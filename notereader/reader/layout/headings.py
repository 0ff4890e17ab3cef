"""Which words of a note head what follows them: 'PROCEDURE:', 'Found', '<OP DATE>', 'Tourniquet?', 'Diagnosis, ...'.

Heading words are ordinary words too, so one is believed only where the page shows that it heads something: it starts a
line and a mark, a column of space or the line's end follows, or it stands as a label between other labels.
"""

import re
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise

from notereader.reader.layout.inline_labels import labels_an_answer, names_a_tendon
from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.terms import terms
from notereader.vocabulary.wordlists import word_list

_ORDINARY = word_list("headings", "ordinary")
_SHORTENED = word_list("headings", "shortened")
_SPOKEN = word_list("headings", "spoken")
_SPOKEN_AFTER = word_list("headings", "spoken_after")
_ROLES = word_list("headings", "roles")
_TITLES = word_list("tables", "titles") | word_list("tables", "labels")
_MONTHS = word_list("headings", "months")
_ADDED = word_list("headings", "added")
_COUNTED = word_list("headings", "counted")
_NUMBERS = word_list("headings", "numbers")
_ENDERS = frozenset([".", ":", ";", "!", "?", ",", "-", ")"])
_MARKUP = frozenset(["<", "=", "[", "]", "(", ")", ">", "*", "-", "#", "+", "~", "x", "q", ".", "{", "|", "_", "o"])
_FRESH = frozenset([".", ";", "|", ")", "]", "?", "/", ",", "(", ">"])
_WORD = re.compile(r"[^\W_]+(?:'[^\W\d_]+)?|[^\w\s]|_")


@dataclass(slots=True)
class Line:
    """A line of the note, words i to j: its paragraph, its width, the room it leaves, whether it is running text."""

    i: int
    j: int
    block: int
    length: int
    room: int = 0
    prose: bool = False


def believed_headings(page: Page, lines: list[Line]) -> list[Mention]:
    """Return the headings of the page that really head something, in order."""
    starts = line_starts(page, lines)
    by_word = {k: line for line in lines for k in range(line.i, line.j)}
    found = [piece for heading in page.headings for piece in _on_one_line(page, _bare(page, heading))]
    found = [_with_its_number(page, heading, starts) for heading in found]
    kept: list[Mention] = []
    columns: set[int] = set()  # lines that begin with a heading in a column of its own
    labels = _lines_of_labels(page, found, by_word)
    for heading in found:
        if page.words[heading.j : heading.j + 2] == [":", '"'] and _names_a_source(page, heading):
            continue  # 'Patient: "it was only half cut."' quotes and heads nothing
        line = by_word[heading.i]
        if _name_of_a_stitch(page, heading, line):
            continue
        headed = bool(kept) and kept[-1].i >= line.i and not names_a_tendon(page, kept[-1])
        if labels_an_answer(page, heading, heading.i in starts, headed):
            continue
        in_columns = line.i in columns and not (kept and _is_value_of(page, kept[-1], heading))
        flat = line.i in labels and heading.j < line.j and page.words[heading.j] == ":"
        inside = heading.i > line.i and (page.words[heading.i - 1] in _FINGERS or _tied(page, heading, line))
        flat = flat and not inside  # 'Long finger: both cut'
        if flat or _believed(page, heading, line, starts, in_columns):
            kept.append(heading)
            if heading.i in starts and _in_column(page, heading.j, line):
                columns.add(line.i)
    return kept


def _name_of_a_stitch(page: Page, heading: Mention, line: Line) -> bool:
    """'Core suture:  name: ____   strands: 4' asks for the name of the stitch, and heads no patient's particulars."""
    named = page.words[heading.i : heading.j] in (["name"], ["type"])
    return named and not _SUTURES.isdisjoint(page.words[line.i : heading.i])


_SUTURES = frozenset(["core", "suture", "stitch", "technique", "repair", "epitendinous", "peripheral", "material"])


def _names_a_source(page: Page, heading: Mention) -> bool:
    return heading.value == "teaching" or page.words[heading.i : heading.j] == ["patient"]


def _lines_of_labels(page: Page, found: list[Mention], by_word: dict[int, Line]) -> set[int]:
    """Return the first words of lines that hold many labels, for a whole note may stand on one line."""
    counts: dict[int, int] = {}
    for heading in found:
        if heading.j < len(page.words) and page.words[heading.j] == ":":
            first = by_word[heading.i].i
            counts[first] = counts.get(first, 0) + 1
    return {first for first, count in counts.items() if count >= 4}


def _is_value_of(page: Page, label: Mention, heading: Mention) -> bool:
    """Tell whether a word stands where the value of the label before it belongs: 'Surgeon   consultant'."""
    between = page.words[label.j : heading.i]
    return page.breaks[heading.i] < Break.LINE and all(not w[0].isalnum() for w in between)


@cache
def _kinds() -> dict[tuple[str, ...], str]:
    """Return every heading phrase as words -> what it heads."""
    return {
        tuple(_WORD.findall(phrase.lower())): term.value
        for term in terms()
        if term.kind == "heading"
        for phrase in (*term.words, *term.exact)
    }


def _bare(page: Page, heading: Mention) -> Mention:
    """Return a heading without the colon or stop that its vocabulary entry ends with."""
    j = heading.j
    while j - 1 > heading.i and page.words[j - 1] in (":", ".", ","):
        j -= 1
    return heading if j == heading.j else Mention(heading.kind, heading.value, heading.i, j, heading.rescued)


def _on_one_line(page: Page, heading: Mention) -> list[Mention]:
    """Split words matched across a line end or a column of space into the headings that each side holds of them."""
    if heading.j - heading.i == 1:
        return [heading]
    cuts = [k for k in range(heading.i + 1, heading.j) if page.breaks[k] >= Break.COLUMN]
    only_columns = all(page.breaks[k] == Break.COLUMN for k in cuts)
    if not cuts or (only_columns and tuple(page.words[heading.i : cuts[0]]) not in _kinds()):
        return [heading]
    pieces = []
    for i, j in pairwise([heading.i, *cuts, heading.j]):
        kind = _kinds().get(tuple(page.words[i:j]))
        if kind:
            pieces.append(Mention(heading.kind, kind, i, j))
    return pieces


def _with_its_number(page: Page, heading: Mention, starts: dict[int, int]) -> Mention:
    """'First late entry, 23 June', 'Addendum no. 2.': an addendum's heading together with the number it bears."""
    i, j = heading.i, heading.j
    if heading.value != "addendum":
        return heading
    if i - 1 in starts and page.words[i - 1] in _COUNTED:
        i -= 1
    k = j
    while page.words[k : k + 1] in _BEFORE_NUMBERS and page.breaks[k] < Break.LINE:
        k += 1
    closed = (
        page.words[k + 1 : k + 2] in _BEHIND_NUMBERS or k + 1 >= len(page.words) or page.breaks[k + 1] >= Break.LINE
    )
    if closed and page.words[k : k + 1] and page.words[k] in _NUMBERS and page.breaks[k] < Break.LINE:
        j = k + 1
    return replace(heading, i=i, j=j)


_BEFORE_NUMBERS = (["no"], ["no."], ["nr"], ["number"], ["."])
_BEHIND_NUMBERS = ([":"], ["."], [","], ["("], ["-"])


def line_starts(page: Page, lines: list[Line]) -> dict[int, int]:
    """Return first real word of each line -> first word of the line, skipping bullets, numbers and markup."""
    starts: dict[int, int] = {}
    for line in lines:
        k = line.i
        while k < line.j and k < line.i + 8 and _skippable(page, k, line):
            k += 1
        starts[k] = line.i
        starts.setdefault(line.i, line.i)
    return starts


def _skippable(page: Page, k: int, line: Line) -> bool:
    word = page.words[k]
    if word in _MARKUP:
        return True
    if word.isdecimal() and len(word) <= 3:
        return True
    if page.words[line.i] in _NUMBERED_PARTS and (k == line.i or word in _NUMERALS):
        return True
    if word == "of" and page.words[line.i] == "step":
        return True  # 'Step 4 of 8  Operation name'
    after = page.words[k + 1] if k + 1 < line.j else ""
    lone = k == line.i and len(word) == 1 and after
    if lone and page.raw(k, k + 1) in _LETTERS and page.breaks[k + 1] in (Break.COLUMN, Break.SPACE):
        return page.breaks[k + 1] == Break.COLUMN or page.raw(k + 1, k + 2)[:1].isupper()  # 'a  Date   10 March'
    lettered = k == line.i or page.words[k - 1] in ("section", "(")
    return len(word) == 1 and word.isalpha() and lettered and after in (")", ".", "-")


_NUMBERED_PARTS = frozenset(["section", "step", "part"])  # 'Part 2 - addendum by the attending'
_NUMERALS = frozenset(["i", "ii", "iii", "iv", ":"])
_LETTERS = frozenset("abcdefghijklmnopqrstuvwxyz")

# --- belief


def _believed(page: Page, heading: Mention, line: Line, starts: dict[int, int], in_columns: bool) -> bool:
    """Tell whether a heading word really heads something here."""
    if _part_of_a_word(page, heading) or _names_a_column(page, heading, line):
        return False
    if heading.i in starts:
        return not _ends_a_name(page, heading) and _starts_a_line(page, heading, line)
    column = page.breaks[heading.i] >= Break.COLUMN or page.words[heading.i - 1] == "|"
    if not column and (heading.j >= line.j or page.words[heading.j] not in _LABEL_MARKS):
        return False  # an ordinary word within a line
    boxed = page.words[heading.i - 2 : heading.i] in (["x", ")"], ["x", "]"], ["(", ")"], ["[", "]"])
    if boxed and page.breaks[heading.i] < Break.COLUMN:
        return False  # 'Epitendinous:   ( ) none   (x) done: 6-0 nylon': an option
    if page.words[heading.i - 2 : heading.i] in (["none", "/"], ["absent", "/"], ["no", "/"]):
        return False  # 'Gap none/seen: none'
    if page.words[heading.i - 2 : heading.i] in (["nerves", "/"], ["nerve", "/"], ["arteries", "/"], ["artery", "/"]):
        return False
    return not _tied(page, heading, line) and _stands_as_label(page, heading, line, in_columns)


def _tied(page: Page, heading: Mention, line: Line) -> bool:
    """Tell whether a heading word is only the end of a longer label: 'Little FDP and FDS: ...'."""
    tied = heading.i > line.i and page.words[heading.i - 1] in _TYING  # 'Little FDP and FDS: ...' is one label
    tied = tied or page.words[heading.i - 2 : heading.i] in (["fds", "/"], ["fdp", "/"])
    tied = tied or (page.words[heading.i - 1] in _FINGERS and page.words[heading.i - 2] in _TYING | {","})
    last = page.words[heading.i - 2 : heading.i]  # 'FDP index, FPL: ...' is one label
    names = last[1:] == [","] and last[0] in _FINGERS | _TENDON_NAMES and page.words[heading.i] in _TENDON_NAMES
    tied = tied or (names and any(w in (".", ";") for w in page.words[heading.i - 5 : heading.i - 2]))
    tied = tied or (page.words[heading.i] in _OF_TENDONS and page.words[heading.i - 1] in _KINDS)  # 'All FDP tendons:'
    both = page.words[heading.i - 1] in ("both", "each", "all") and "for" in page.words[line.i : heading.i]
    tied = tied or both  # 'Core for both FDP: 4-0'
    counted = page.words[heading.i - 1] in _COUNTS and page.words[heading.i - 2] in _ALL_OF
    tied = tied or (counted and page.words[heading.i] in _TENDON_NAMES)  # 'All three FDS: four strands'
    lead = page.words[line.i : heading.i - 1]
    listed = page.words[heading.i - 1] in (",", "for") and 1 <= len(lead) <= 3 and ":" not in lead
    tied = tied or (listed and page.words[heading.i] in _TENDON_NAMES)  # 'Core, FDP: 3-0 Ethibond'
    tied = tied or page.words[heading.i - 1] in ("suture", "sutures", "stitch")  # 'Peripheral suture FDP: 6-0'
    around = page.words[heading.i - 1] in ("on", "around", "round")
    tied = tied or (around and page.words[heading.i - 2] in _SUTURE_NOUNS)  # 'Epitendinous stitch on FPL: 6-0'
    tied = tied or (page.words[heading.i] in _TENDONS and page.words[heading.i - 1] in _SLIPS)  # 'Radial slip FDS:'
    told = heading.i - 2 == line.i and page.words[line.i] in _TOLD and page.words[heading.i - 1] in _FINGERS
    return tied or (told and page.words[heading.i] in _TENDON_NAMES)  # 'Epitendinous index FDP: 6-0'


_LABEL_MARKS = frozenset([":", ".", "(", "[", "?", ","])  # one of these follows a label within a line
_SUTURE_NOUNS = frozenset(["suture", "sutures", "stitch", "stitches", "epitendinous", "epi", "core"])
_LEADING_ON = frozenset(["and", "or", ",", "was", "were", "is", "are", "the", "then", "be", "to", "been", "being"])
_TENDON_NAMES = frozenset(["fdp", "fds", "fpl", "profundus", "superficialis", "fcr", "fcu", "both"])
_COUNTS = frozenset(["two", "three", "four", "2", "3", "4"])
_ALL_OF = frozenset(["all", "the", "these", "other", "of"])
_OF_TENDONS = frozenset(["tendon", "tendons", "repair", "repairs"])
_KINDS = frozenset(["fdp", "fds", "fpl", "profundus", "superficialis", "sublimis", "flexor", "deep", "superficial"])
_TENDONS = frozenset(["fds", "superficialis", "sublimis"])
_SLIPS = frozenset(["slip", "slips", "half", "limb", "tail"])
_TOLD = frozenset(["epitendinous", "epi", "peripheral", "core", "knot", "knots", "gap", "ends", "glide", "purchase"])
_FINGERS = frozenset(["index", "middle", "ring", "small", "little", "long"])
_TYING = frozenset(["and", "or", "of", "the", "with", "to", "&", "+"])


def _ends_a_name(page: Page, heading: Mention) -> bool:
    """'Radial digital' at the end of a line, 'nerve: intact' on the next: the end of a name heads nothing."""
    k = heading.i
    return k > 0 and page.breaks[k] == Break.LINE and page.words[k - 1] in _NAMING and page.words[k] in _NAMED


_NAMING = frozenset(["digital", "radial", "ulnar", "median", "proper", "common", "collateral", "volar", "a1", "a2"])
_NAMED = frozenset(["nerve", "nerves", "vessel", "vessels", "artery", "bundle", "plate", "pulley", "pulleys"])


def _part_of_a_word(page: Page, heading: Mention) -> bool:
    """Tell whether the words are half of a compound: 'X-ray', 'hand-held'."""
    return _joins(page, heading.i - 1) or _joins(page, heading.j)


def _joins(page: Page, k: int) -> bool:
    """Tell whether word k is a hyphen between two words without space."""
    if not 0 < k < len(page.words) - 1 or page.words[k] != "-":
        return False
    return page.breaks[k] == page.breaks[k + 1] == Break.NONE


def _starts_a_line(page: Page, heading: Mention, line: Line) -> bool:
    after = heading.j
    if after >= line.j:
        return not _tail_of_prose(page, heading, line)
    if _closed_by_colon(page, after, line):
        return not _goes_on_from_above(page, heading, line)
    if (
        heading.value == "teaching"
        and page.words[after] in ("to", "for", "with")
        and ":" in page.words[after : after + 5]
    ):
        return True  # 'TEACHING to FY2: ...'
    mark, phrase, raw = page.words[after], _phrase(page, heading), page.raw(heading.i, heading.j)
    capitals = raw.isupper() and len(raw) > 1
    bracketed = mark == "]" and heading.i > line.i and page.words[heading.i - 1] == "["
    if bracketed or mark in ("|", ">", "?", "=") or mark.startswith("..") or page.breaks[after] == Break.COLUMN:
        return True
    if mark == "/":
        return _label_goes_on(page, after, line)
    if mark in ("-", "(", "[") and page.breaks[after] != Break.NONE:
        if mark == "-" and raw[:1].isupper() and _heads_by_dashes(page):
            return True
        return capitals or line.j - after <= 9 or phrase not in _ORDINARY or _rest_in_brackets(page, after, line)
    if mark == ".":
        return _closed_by_stop(page, heading, line, capitals)
    if mark == ",":
        return _begins_large(heading, raw) and (_spoken(page, heading) or _addendum_dated(page, heading, after + 1))
    return _value_without_mark(page, heading, line, capitals)


def _begins_large(heading: Mention, raw: str) -> bool:
    """Tell whether a heading begins with a capital, or an addendum's with its number: '2nd addendum, 4 May'."""
    return raw[:1].isupper() or (heading.value == "addendum" and raw[:1].isdecimal())


def _heads_by_dashes(page: Page) -> bool:
    """'Procedure - stage one ...' over 'Story - glass, yesterday ...': a note that sets a dash behind its headings."""
    if page.heads_by_dashes is not None:
        return page.heads_by_dashes
    marked = (m for m in page.headings if page.words[m.j : m.j + 1] == ["-"] and page.breaks[m.i] >= Break.LINE)
    spaced = (m for m in marked if Break.NONE not in page.breaks[m.j : m.j + 2])
    page.heads_by_dashes = len({m.value for m in spaced if page.raw(m.i, m.i + 1)[:1].isupper()}) > 1
    return page.heads_by_dashes


def _addendum_dated(page: Page, heading: Mention, k: int) -> bool:
    """'Late entry, 25 February', 'Addendum by the registrar': an addendum with who or when behind it, at word k."""
    if heading.value == "addendum" and page.words[heading.j - 1] in _NUMBERS:
        return True  # 'Addendum 1, same evening'
    word = page.words[k] if k < len(page.words) else ""
    dated = word[:1].isdecimal() or word in _ADDED or word[:3] in _MONTHS
    return heading.value == "addendum" and dated


def _closed_by_colon(page: Page, k: int, line: Line) -> bool:
    """Tell whether a colon follows at word k, directly, after a stop, or after a bracket."""
    words = page.words
    if words[k] == ":" or (words[k] == "." and k + 1 < line.j and words[k + 1] == ":"):
        return True
    if words[k] not in ("(", "["):
        return False
    for m in range(k + 1, min(k + 14, line.j - 1)):
        if words[m] in (")", "]"):
            return words[m + 1] == ":"
    return False


def _label_goes_on(page: Page, k: int, line: Line) -> bool:
    """Tell whether a slash at word k leads on to more of a label: 'Surgeon / assistant:'."""
    for m in range(k + 1, min(k + 6, line.j)):
        if page.words[m] in (":", "|", "?") or page.breaks[m] == Break.COLUMN:
            return True
    return False


def _rest_in_brackets(page: Page, k: int, line: Line) -> bool:
    return page.words[k] in ("(", "[") and page.words[line.j - 1] in (")", "]")


def _closed_by_stop(page: Page, heading: Mention, line: Line, capitals: bool) -> bool:
    """'Findings. Both ends ...' heads; 'Cons. anaesthetist' and a 'Time-out.' told in passing do not."""
    after, raw = heading.j + 1, page.raw(heading.i, heading.j)
    if not _begins_large(heading, raw) and not raw.startswith("ln"):  # 'lndications.' of a scan
        return False
    column = after < line.j and page.breaks[after] == Break.COLUMN
    if (heading.value == "admin" or _phrase(page, heading) in _SHORTENED) and not (capitals or column):
        return False
    return after >= line.j or page.breaks[after] >= Break.SPACE


def _value_without_mark(page: Page, heading: Mention, line: Line, capitals: bool) -> bool:
    """'COMPLICATIONS none', 'Date 26 July 2040': the label shows by its capitals or by what it is followed by."""
    first = page.words[heading.j]
    if heading.value == "date" and (first[0].isdecimal() or (len(first) >= 3 and first[:3] in _MONTHS)):
        return len(first) >= 6 or page.raw(heading.i, heading.j)[:1].isupper()
    numbered = page.words[line.i] in _NUMBERED_PARTS
    if heading.value == "addendum" and (numbered or _begins_large(heading, page.raw(heading.i, heading.j))):
        return first == "#" or _addendum_dated(page, heading, heading.j)
    if page.raw(heading.i, heading.j) in _SHORT_FORMS:
        return True  # 'Hx 17F - fell on rocks'
    if not capitals or page.raw(heading.j, line.j).isupper():
        return False
    told = heading.value in _TELLING and ":" not in page.words[heading.j : heading.j + 4] and _heads_by_capitals(page)
    if _phrase(page, heading) in _ORDINARY:
        return told
    short = heading.value != "splint" and line.j - heading.j <= 3
    return short or told or heading.value in ("diagnosis", "procedure", "indication")


_SHORT_FORMS = frozenset(["Hx", "Dx", "HX", "DX", "H/o", "H/O"])  # nothing else begins a line with these
_TELLING = frozenset(["instructions", "findings", "narrative", "closure", "dressing"])


def _heads_by_capitals(page: Page) -> bool:
    """'EBL 60 ml' over 'SPECIMENS tissue x 3' over 'PLAN Home, elevate': headings that show by their capitals alone."""
    if page.heads_by_capitals is not None:
        return page.heads_by_capitals
    lines = (m for m in page.headings if page.breaks[m.i] >= Break.LINE and page.raw(m.i, m.j).isupper())
    spaced = (m for m in lines if page.breaks[m.j : m.j + 1] == [Break.SPACE] and page.words[m.j][0].isalnum())
    page.heads_by_capitals = len({m.value for m in spaced if not page.raw(m.j, m.j + 1).isupper()}) >= _CAPITALS
    return page.heads_by_capitals


_CAPITALS = 3  # different headings


def _goes_on_from_above(page: Page, heading: Mention, line: Line) -> bool:
    """Tell whether an ordinary word goes on with the line above: '... was opened and / closed: it ran freely'."""
    lower = page.raw(heading.i, heading.j).islower() and (line.prose or _phrase(page, heading) in _ORDINARY)
    if lower and line.prose and heading.i == line.i > 0 and page.breaks[line.i] < Break.BLANK:
        return page.words[line.i - 1] not in _ENDERS  # 'Wrist taken through its arc by me / afterwards: nothing opened'
    if not lower or not line.i or heading.i != line.i or page.breaks[line.i] >= Break.BLANK:
        return False
    return page.words[line.i - 1] in _LEADING_ON


def _tail_of_prose(page: Page, heading: Mention, line: Line) -> bool:
    """Tell whether a line of one word only ends the sentence of a full line above it."""
    lower = page.text[page.starts[heading.i]].islower()
    if not lower or not line.i or heading.i != line.i or page.breaks[line.i] >= Break.BLANK:
        return False
    return page.words[line.i - 1] not in (".", ":", "!", "?") and line.room > 30 and line.prose


def _stands_as_label(page: Page, heading: Mention, line: Line, in_columns: bool) -> bool:
    """Tell whether words in the middle of a line are a label: '... Asst: SHO', '|  Anaes  |', 'Skin? 5-0 nylon'."""
    i, after = heading.i, heading.j
    before = page.words[i - 1]
    column = page.breaks[i] >= Break.COLUMN or before == "|"
    raw = page.raw(i, after)
    if after >= line.j:
        return column and in_columns
    if _closed_by_colon(page, after, line):
        if before == "," and raw.islower() and _phrase(page, heading) in _ORDINARY:
            return column  # '..., then: core 3-0 PDS'
        return column or before in _FRESH or _capital_after_small(page, heading)
    mark = page.words[after]
    if column and (in_columns or mark == "|") and (mark != ":" and _in_column(page, after, line)):
        return True
    if mark == "?" and raw[:1].isupper():
        return column or before in (".", "?", "_")
    if mark in (",", ".") and before in (".", "?") and raw[:1].isupper() and _spoken(page, heading):
        return page.breaks[i] >= Break.SPACE and (mark == "," or after + 1 < line.j)
    return False


def _capital_after_small(page: Page, heading: Mention) -> bool:
    """Tell whether a capital marks the label off from the words before it: '... of the ring Surgeon: Dr'."""
    before, own = page.text[page.starts[heading.i - 1]], page.text[page.starts[heading.i]]
    if not own.isupper():
        return False
    if not before.isupper():
        return True
    return _phrase(page, heading) not in _ORDINARY and not page.raw(heading.i - 1, heading.i).isupper()


def _in_column(page: Page, k: int, line: Line) -> bool:
    """Tell whether the words that end before word k are set off by a column of space, a bar or dots."""
    if k >= line.j:
        return False
    return page.breaks[k] == Break.COLUMN or page.words[k] in ("|", ":") or page.words[k].startswith("..")


def _names_a_column(page: Page, heading: Mention, line: Line) -> bool:
    """Tell whether the line is the top row of a grid: '| Digit | Tendon | Cut | Done |'."""
    if line.j - line.i < 4 or not (_in_column(page, heading.j, line) or heading.j >= line.j):
        return False
    cells = _cells(page, line)
    if len(cells) >= 4 and all(j - i <= 2 for i, j in cells) and sum(page.words[i] in _TITLES for i, _ in cells) >= 3:
        return True  # 'tendon   cut   repaired   how'
    heads = [tuple(page.words[i:j]) in _kinds() and page.words[i] not in _ROLES for i, j in cells]
    beside = any(a and b for a, b in pairwise(heads))
    return len(cells) >= 4 and beside and 2 * sum(heads) > len(cells)


def _cells(page: Page, line: Line) -> list[tuple[int, int]]:
    """Return the cells of a line, cut at bars and columns of space."""
    cells: list[tuple[int, int]] = []
    first = line.i
    for k in range(line.i, line.j + 1):
        ends = k == line.j or page.words[k] == "|" or (k > line.i and page.breaks[k] == Break.COLUMN)
        if ends and k > first:
            cells.append((first, k))
        if ends:
            first = k + 1 if k < line.j and page.words[k] == "|" else k
    return cells


def _phrase(page: Page, heading: Mention) -> str:
    return " ".join(page.words[heading.i : heading.j])


def _spoken(page: Page, heading: Mention) -> bool:
    """Tell whether a heading is one that dictations speak: 'Diagnosis, ...', 'Postoperative plan, ...'."""
    words = page.words[heading.i : heading.j]
    return words[-1] in _SPOKEN and all(w in _SPOKEN_AFTER or w == "-" for w in words[:-1])
