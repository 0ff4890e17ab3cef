"""Letters that a note defines itself: 'K = cut through, T = part' above 'FPL K', 'SET A = ...' above 'FPL .... A'.

What a letter stands for is told once more for each tendon or structure that has it, with the name as its label; the
later steps read it as if the words stood behind the name.
"""

from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Page, Sentence, page_of, within

Span = tuple[int, int]

_NOUNS = frozenset(
    [
        "set",
        "technique",
        "type",
        "method",
        "recipe",
        "code",
        "suture",
        "core",
        "repair",
        "stitch",
        "construct",
        "scheme",
    ]
)
_SIGNS = frozenset(["+", "0"])
_BEFORE = frozenset(["(", ",", ";", ":", "["])
_ENDS = frozenset([",", ";", ")", "]", "."])
_ADDING = frozenset(["and", "+", "&", "plus", "with"])
_NAMES = ("tendon", "structure", "sided", "anynerve", "anyartery", "pulley")
_OWN_NAMES = ("tendon", "digit", "pulley")
_OWN_KINDS = frozenset([*_NAMES, "digit", "digit?"])
_FEWEST = 2  # letters defined
_LONGEST_NAME = 6  # words
_OPENING = {"(": ")", "[": "]"}


@Language.component("notereader_legends")
def legends(doc: Doc) -> Doc:
    """Tell what the letters of a legend stand for with each name that has one. RETURNS the same Doc."""
    page = page_of(doc)
    meanings = _meanings(page) if "=" in page.words else {}
    meanings = meanings or _named_with_a_colon(page) or _notes_below(page)
    if len(meanings) < _FEWEST:
        _bare_notes(page)
        return doc
    defined = {k for (i, j) in meanings.values() for k in range(i - 2, j)}
    blocks = {s.block for s in page.sentences if not defined.isdisjoint(range(s.i, s.j))}
    coded = {s.block for s in page.sentences if s.i not in defined and _holds_letter(page, s, meanings)}
    sentences: list[Sentence] = []
    changed = False
    for sentence in page.sentences:
        grid = bool(sentence.prefix)
        known = meanings if sentence.block in blocks or _is_coded(page, sentence, coded) else _without_signs(meanings)
        cells = (_cell_of_grid if grid else _cells)(page, sentence, known, defined)
        sentences += cells or [sentence]
        changed = changed or bool(cells)
    if changed:
        told = [part for s in sentences for part in _outside(page, s, defined)]
        page.sentences = sorted(told, key=lambda s: s.i)
    return doc


def _without_signs(meanings: dict[str, Span]) -> dict[str, Span]:
    """'0 = whole' holds in its own paragraph: 'FCR gap 0' further down is another nought."""
    return {letter: span for letter, span in meanings.items() if letter not in _SIGNS}


def _holds_letter(page: Page, sentence: Sentence, meanings: dict[str, Span]) -> bool:
    """Tell whether a cell is one letter of the legend, or a line has one behind a colon: 'FCR: 0   PL: X'."""
    spots = [sentence.i] if sentence.prefix else range(sentence.i + 1, sentence.j)
    known = [k for k in spots if page.words[k] in meanings and page.words[k] not in _SIGNS and _letter(page, k)]
    if sentence.prefix:
        return bool(known) and sentence.j - sentence.i == 1
    return any(page.words[k - 1] == ":" and _closes(page, sentence, k) for k in known)


def _is_coded(page: Page, sentence: Sentence, coded: set[int]) -> bool:
    """Tell whether a nought beside such letters may mean what they do: not in a column that asks for a gap."""
    if sentence.block not in coded:
        return False
    asked = [m.kind for span in sentence.prefix for m in within(page.mentions, *span)]
    return sentence.j - sentence.i == 1 and _OWN_KINDS.issuperset(asked) if sentence.prefix else True


def _cell_of_grid(page: Page, sentence: Sentence, meanings: dict[str, Span], defined: set[int]) -> list[Sentence]:
    """'extent   C   P 3/4' above '(C = complete, P = partial)': the cell's letter, then the rest of the cell."""
    i, j = sentence.i, sentence.j
    if i in defined or page.words[i] not in meanings or not _letter(page, i):
        return _named_in_cell(page, sentence, meanings, defined)
    rest = [Sentence(i + 1, j, sentence.section, sentence.block, False, sentence.prefix)] if j > i + 1 else []
    return [*_told(page, meanings[page.words[i]], sentence.section, sentence.block, sentence.prefix), *rest]


def _named_in_cell(page: Page, sentence: Sentence, meanings: dict[str, Span], defined: set[int]) -> list[Sentence]:
    """'all cut, clean, REPAIR a' above 'REPAIR a = six strands, 4-0': the cell, and what the letter means."""
    for k in range(sentence.i + 1, sentence.j):
        if page.words[k] not in meanings or k in defined:
            continue
        bracketed = _in_brackets(page, k)
        if not bracketed and not (page.words[k - 1] in _NOUNS and _closes(page, sentence, k)):
            continue
        told = _told(page, meanings[page.words[k]], sentence.section, sentence.block, sentence.prefix)
        spans = [(sentence.i, k - 1), (k + 1 + bracketed, sentence.j)]
        rest = [Sentence(i, j, sentence.section, sentence.block, False, sentence.prefix) for i, j in spans if i < j]
        return [*rest, *told]
    return []


def _told(page: Page, meaning: Span, section: str, block: int, prefix: list[Span]) -> list[Sentence]:
    """Return the sentences of what a letter stands for: 'mattress 4-0. No running suture.' are two."""
    stops = [n + 1 for n in range(*meaning) if _full_stop(page, n) and n + 1 < meaning[1]]
    return [Sentence(i, j, section, block, True, prefix) for i, j in pairwise([meaning[0], *stops, meaning[1]])]


def _in_brackets(page: Page, k: int) -> bool:
    """Tell whether word k is one letter or figure in brackets: '(a)'."""
    return len(page.words[k]) == 1 and page.words[k - 1] == "(" and page.words[k + 1 : k + 2] == [")"]


def _notes_below(page: Page) -> dict[str, Span]:
    """'(a) six-strand, 4-0' below a grid with '(a)' in its cells: what each note says, by its letter."""
    if "(" not in page.words or not page.rows:
        return {}
    cells = [s for s in page.sentences if s.prefix]
    asked = {page.words[k] for s in cells for k in range(s.i + 1, s.j) if _in_brackets(page, k)}
    found: dict[str, Span] = {}
    for k in (k for k in range(1, len(page.words) - 2) if page.words[k] in asked and _in_brackets(page, k)):
        if page.breaks[k - 1] >= Break.LINE:
            ends = (n for n in range(k + 2, len(page.words)) if page.breaks[n] >= Break.LINE or _full_stop(page, n))
            found.setdefault(page.words[k], (k + 2, next(ends, len(page.words))))
    return found if len(found) == len(asked) else {}


def _bare_notes(page: Page) -> None:
    """'4-strand Becker a' in a cell, and 'a  3-0 Ethibond, ... Running 5-0.' below: what the note says of it."""
    marked = {s.j - 1: page.words[s.j - 1] for s in page.sentences if _ends_in_a_letter(page, s)}
    notes = {page.words[k]: k for k in range(len(page.words)) if _opens_a_note(page, k) and k not in marked}
    if not marked or len(notes) < _FEWEST or not set(marked.values()) <= notes.keys():
        return
    ends = {mark: _line_end(page, k) for mark, k in notes.items()}
    said = {m: [s for s in page.sentences if k <= s.i < ends[m] or s.i <= k < s.j] for m, k in notes.items()}
    own = {id(s) for told in said.values() for s in told}
    found: list[Sentence] = []
    for sentence in page.sentences:
        mark = marked.get(sentence.j - 1)
        if mark is None:
            found += [] if id(sentence) in own else [sentence]
            continue
        i, j, section, block = sentence.i, sentence.j, sentence.section, sentence.block
        found.append(Sentence(i, j - 1, section, block, sentence.label, sentence.prefix))
        spans = [(max(s.i, notes[mark] + 1), min(s.j, ends[mark])) for s in said[mark]]
        found += [Sentence(a, b, section, block, True, sentence.prefix) for a, b in spans if a < b]
    page.sentences = sorted(found, key=lambda s: s.i)


def _ends_in_a_letter(page: Page, sentence: Sentence) -> bool:
    """Tell whether a cell of a grid ends in one small letter of its own: 'as index a', not 'FDS V'."""
    k = sentence.j - 1
    return bool(sentence.prefix) and k > sentence.i and len(page.words[k]) == 1 and page.raw(k, k + 1).islower()


def _opens_a_note(page: Page, k: int) -> bool:
    """Tell whether a line begins with one small letter, set off by a column of space."""
    begins = page.breaks[k] >= Break.LINE and k + 1 < len(page.words) and page.breaks[k + 1] == Break.COLUMN
    return begins and len(page.words[k]) == 1 and page.raw(k, k + 1).islower()


def _line_end(page: Page, k: int) -> int:
    return next((n for n in range(k + 1, len(page.words)) if page.breaks[n] >= Break.LINE), len(page.words))


def _meanings(page: Page) -> dict[str, Span]:
    """Return by its letter the words each definition of the note gives."""
    found: dict[str, Span] = {}
    words = page.words
    for k in (k for k in range(1, len(words) - 1) if words[k] == "=" and _letter(page, k - 1)):
        first = k - 1 - (words[k - 2] in _NOUNS)
        opens = page.breaks[first] >= Break.LINE
        if not opens and words[first - 1] not in _BEFORE and page.breaks[first] < Break.COLUMN:
            continue
        stops = (
            n
            for n in range(k + 1, len(words))
            if page.breaks[n] >= Break.LINE
            or (words[n] in _ENDS if not opens else _full_stop(page, n))
            or _defines_another(page, n)
        )
        end = next(stops, len(words))
        name = any(m.kind in _OWN_NAMES for m in within(page.mentions, k + 1, end))
        if end > k + 1 and not name:  # 'S = SF zone I, FDP' names a wound
            found.setdefault(words[k - 1], (k + 1, end))
    return found


def _defines_another(page: Page, k: int) -> bool:
    """'X = cut through   P = part': the next letter, set off by a gap."""
    return page.words[k + 1 : k + 2] == ["="] and page.breaks[k] == Break.COLUMN and _letter(page, k)


def _named_with_a_colon(page: Page) -> dict[str, Span]:
    """'Repair A: four strands' below a grid with 'repair A' in its cells; only where each is spoken of elsewhere."""
    words = page.words
    found: dict[str, Span] = {}
    first: set[int] = set()
    for k in (k for k in range(1, len(words) - 2) if words[k] in _NOUNS and words[k + 2] == ":"):
        if page.breaks[k] >= Break.LINE and _letter(page, k + 1):
            ends = (n for n in range(k + 3, len(words)) if page.breaks[n] >= Break.LINE)
            found.setdefault(words[k + 1], (k + 3, next(ends, len(words))))
            first.add(k)
    used = {words[k + 1] for k in range(len(words) - 1) if words[k] in _NOUNS and k not in first}
    return found if used >= found.keys() else {}


def _full_stop(page: Page, k: int) -> bool:
    """'C = Pennington, 4-0. A second pair of strands was withdrawn': the remark behind the stop defines nothing."""
    return page.words[k] == "." and k + 1 < len(page.words) and page.breaks[k + 1] > Break.NONE


def _letter(page: Page, k: int) -> bool:
    """Tell whether word k is one capital letter or a sign, or any letter or figure behind a word such as 'repair'."""
    if page.words[k] in _SIGNS and page.words[k + 1 : k + 2] != ["-"]:
        return True  # '+ = cut, 0 = whole'
    named = page.words[k - 1 : k] != [] and page.words[k - 1] in _NOUNS
    return len(page.words[k]) == 1 and (page.raw(k, k + 1).isupper() or (named and page.words[k].isalnum()))


def _cells(page: Page, sentence: Sentence, meanings: dict[str, Span], defined: set[int]) -> list[Sentence]:
    """Return a sentence for every name of a line with its letter, and one for a remark in brackets behind it."""
    found: list[Sentence] = []
    start = sentence.i
    for k in range(sentence.i + 1, sentence.j):
        if k in defined or page.words[k] not in meanings or not _letter(page, k) or not _closes(page, sentence, k):
            continue
        name = _name(page, start, k)
        if name is None or (page.words[k] in _SIGNS and not _is_plain(page, name)):
            continue
        start = k + 1
        found += _told(page, meanings[page.words[k]], "narrative", sentence.block, [name])
        closing = _OPENING.get(page.words[start]) if start < sentence.j else None
        if closing is not None:
            end = next((n + 1 for n in range(start, sentence.j) if page.words[n] == closing), sentence.j)
            # A remark changes what the letter stands for: 'FDS index .... B [note: knots ended up outside]'.
            section = "addendum" if "note" in page.words[start : start + 2] else "narrative"
            found.append(Sentence(start, end, section, sentence.block, False, [name]))
            start = end
    if found and start < sentence.j:
        found.append(Sentence(start, sentence.j, sentence.section, sentence.block, False))
    return found


def _closes(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether a letter stands alone behind its name: at an end, before a space of a column or a bracket."""
    if k + 1 >= sentence.j or page.breaks[k + 1] >= Break.COLUMN:
        return True
    # 'FDP index had repair A and FDP ring ...', 'core A + running 6-0'
    named = page.words[k - 1] in _NOUNS and page.words[k + 1] in _ADDING
    return named or page.words[k + 1] in _ENDS or page.words[k + 1] in _OPENING


def _name(page: Page, start: int, k: int) -> Span | None:
    """Return the words of the name that a letter at word k is said of, without marks around it; None for no name."""
    end = k
    while end > start and not page.words[end - 1][0].isalnum():
        end -= 1
    end += page.words[end - 1] in ("n", "a") and page.words[end] == "."  # 'median n.: P'
    first = max(start, end - _LONGEST_NAME)
    named = [m for m in within(page.mentions, first, end) if m.kind in _NAMES]
    signed = page.words[k - 1] == ":"  # 'FDS x4: 0', 'PL: X'
    signs = ("=",) if page.words[k - 1] in _NOUNS else ("=", ":")  # 'FDP index: technique 1'
    if not named or any(page.words[n] in signs for n in range(named[0].i, k - signed)):
        return None
    lead = [n for n in range(first, named[0].i) if page.breaks[n] >= Break.COLUMN or not page.words[n][0].isalnum()]
    return (lead[-1] + (not page.words[lead[-1]][0].isalnum()) if lead else first), end


def _is_plain(page: Page, name: Span) -> bool:
    """Tell whether words are nothing but the name of a tendon or structure: 'FCU', 'FDS x 4', 'Ulnar n'."""
    named = {k for m in within(page.mentions, *name) if m.kind in _NAMES or m.kind == "digit" for k in range(m.i, m.j)}
    return all(k in named or page.words[k] in _TAILS for k in range(*name))


_TAILS = frozenset(["x", "4", "n", "a", ".", "all", "both", "four"])


def _outside(page: Page, sentence: Sentence, defined: set[int]) -> list[Sentence]:
    """Return a sentence without the definitions in it: what they say is said of no tendon there."""
    inside = [k for k in range(sentence.i, sentence.j) if k in defined]
    if not inside or sentence.prefix:
        return [sentence]
    parts = [(sentence.i, inside[0]), (inside[-1] + 1, sentence.j)]
    kept = [(i, j) for i, j in parts if any(w[0].isalnum() for w in page.words[i:j])]
    return [Sentence(i, j, sentence.section, sentence.block, sentence.label) for i, j in kept]
