"""Choices of a form that nobody made: 'Ends: clean / ragged', 'Strands: 2 / 4 / 6', 'clean or ragged (delete one)'.

What a choice offers was not found, nor what its label names. Where an arrow leads to an answer, 'R / L -> L', only the
choice itself is set aside.
"""

from itertools import pairwise

from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Break, Page, Sentence, within
from notereader.reader.standing.answered_choices import mark_answered_choices
from notereader.reader.standing.options import mark_asked, mark_options
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import word_list

_YES_NO = word_list("standing", "yes_no")
_DEGREES = word_list("standing", "degrees")
# Two of these kinds beside each other are a choice, for no tendon is both; of the others it takes three:
# a core and an epitendinous suture stand beside each other too.
_CHOICES = word_list("standing", "choices") | {"choice"}
_LONGER_CHOICES = frozenset(["stitch", "material", "pattern", "deed", "size", "figure"])
_TO_CHOOSE = word_list("standing", "to_choose")
_NAMES = frozenset(["tendon", "digit", "pulley"])  # a label that names one of these says whose the next words are
_PARTS, _MARKS = frozenset(["/", "|"]), frozenset(["/", "|", ">", "or"])
_LIST = frozenset(["or", ","])
_BEHIND = frozenset(["(", "[", "*", "-"])
_ENDS, _STOPS = frozenset([".", ";"]), frozenset([".", ";", ","])
_YES, _NO = frozenset(["y", "yes"]), frozenset(["n", "no"])
_SIGNS = _MARKS | _YES | {"("}  # no choice without one of these
_LONGEST_OPTION, _LONGEST_LABEL = 3, 8  # words
_FEW, _MANY = 2, 3  # options that make a choice where their kind allows no two of them, and where it does

Span = tuple[int, int]


def mark_open_choices(page: Page, sentence: Sentence) -> None:
    """Set aside the choices of a sentence that were left open."""
    mark_asked(page, sentence)
    stretches = _fields(page, sentence)
    stretches = [(first, last) for first, last in stretches if not mark_answered_choices(page, first, last)]
    for first, last in stretches:
        mark_options(page, first, last)
        _mark_columns(page, first, last)
    if _SIGNS.isdisjoint(sentence.said):
        return
    for first, last in stretches:
        _mark_to_choose(page, first, last)
        if not _MARKS.isdisjoint(page.words[first:last]):
            _mark_field(page, first, last)
        _mark_yes_or_no(page, first, last)


def _fields(page: Page, sentence: Sentence) -> list[Span]:
    """Return the stretches of a sentence between its stops and its lines."""
    cuts = [sentence.i]
    for k in range(sentence.i + 1, sentence.j):
        ends = page.words[k - 1] in _ENDS and page.words[k - 2 : k + 1] != ["n", ".", "a"]  # 'Bulky? n.a.'
        if ends or page.breaks[k] >= Break.LINE:
            cuts.append(k)
    return [(a, b - (page.words[b - 1] in _ENDS)) for a, b in pairwise([*cuts, sentence.j])]


def _mark_field(page: Page, first: int, last: int) -> None:
    colon = _label_end(page, first, last)
    arrow = next((k for k in range(max(colon, first) + 1, last - 1) if _is_arrow(page, k)), None)
    if arrow is not None:
        _mark_before_arrow(page, first, colon, arrow)
        return
    if colon < first or _is_date(page.words[colon + 1 : last]) or _side_and_ray(page.words[colon + 1 : last]):
        return
    parts = _PARTS if "or" not in page.words[colon:last] else _LIST
    options = _options(page, colon + 1, _asked_before(page, colon + 1, last), parts)
    counts = any(m.kind == "strandword" for m in within(page.mentions, first, colon))
    if _is_choice(page, options, _FEW if counts else _MANY) or _grades(page, first, colon, options):
        page.mark(first if _is_free_label(page, first, colon) else colon, last, "unticked")


def _grades(page: Page, first: int, colon: int, options: list[Span]) -> bool:
    """'Gap: nil / small / large', 'Glide: full / limited': how far one thing went, from none to much."""
    label = page.words[first : colon + (page.words[colon] != ":")]
    short = all(0 < b - a <= _FEW and not page.words[a].isdecimal() for a, b in options)
    best = any(page.words[a] in _BEST for a, _ in options)
    return len(options) >= _FEW and label[-1:] != [] and label[-1] in _GRADED and short and best


_GRADED = frozenset(["gap", "gapping", "glide", "gliding", "excursion", "tension", "bulk", "ends", "catching"])
_BEST = frozenset(["none", "nil", "no", "absent", "free", "full", "good", "smooth", "clean"])


def _mark_columns(page: Page, first: int, last: int) -> None:
    """'Gap: none   seen', 'Ends: clean   ragged*': answers set off by columns, with a star that nothing explains."""
    colon = _label_end(page, first, last)
    if colon < first or page.words[colon] != ":" or colon + 1 >= last:
        return
    cuts = [colon + 1, *(k for k in range(colon + 2, last) if page.breaks[k] == Break.COLUMN), last]
    options = [(a + (page.words[a] == "*"), b - (page.words[b - 1] == "*")) for a, b in pairwise(cuts)]
    if len(options) >= _FEW and _is_choice(page, options, _MANY):
        page.mark(first if _is_free_label(page, first, colon) else colon, last, "unticked")


def _label_end(page: Page, first: int, last: int) -> int:
    """Return the colon or the last word before the wider gap that ends the label of a field; first - 1 without one."""
    words = page.words
    for k in range(first + 1, min(first + _LONGEST_LABEL, last)):
        if words[k] == ":":
            return k
        if words[k] in _PARTS:
            break
        if page.breaks[k] == Break.COLUMN:
            return k - 1
    return first - 1


def _is_date(words: list[str]) -> bool:
    """'FLEXOR REPAIR, R RING      12 / 6 / 2034': a date written with room around its strokes is no choice."""
    figures = words[:_DATE:2]
    strokes = words[1:_DATE:2]
    return strokes in (["/", "/"], [".", "."]) and all(map(str.isdecimal, figures)) and len(figures[-1]) == _YEAR


def _side_and_ray(words: list[str]) -> bool:
    """'SIDE / RAY: left / IV': two answers to two questions."""
    return words[:1] != [] and words[0] in _SIDES and words[1:2] == ["/"] and words[2:] in _RAYS


_SIDES = frozenset(["left", "right", "l", "r"])
_RAYS = [[word] for word in ("i", "ii", "iii", "iv", "v", "1", "2", "3", "4", "5")]
_DATE, _YEAR = 5, 4  # words of a date, figures of its year


def _is_free_label(page: Page, first: int, colon: int) -> bool:
    return not any(m.kind in _NAMES for m in within(page.mentions, first, colon + 1))


def _options(page: Page, i: int, j: int, parts: frozenset[str] = _PARTS) -> list[Span]:
    """Return the words between the bars of words i to j."""
    cuts = [i - 1, *(k for k in range(i, j) if page.words[k] in parts), j]
    return [(a + 1, b) for a, b in pairwise(cuts)]


def _is_choice(page: Page, options: list[Span], least: int) -> bool:
    """Tell whether all of some options are of one kind; `least`: how many it takes of what stands in twos as well."""
    told = [_kinds(page, a, b) for a, b in options if a == b or not set(page.words[a]) <= {"="}]  # '=': struck through
    if told and "choice" in told[0]:
        # 'Gap: none / 1 mm / 2 mm', 'Peripheral: none / running / cross-stitch'
        told = [kinds | {"choice"} if kinds & _BESIDE_NONE else kinds for kinds in told]
    shared = frozenset.intersection(*told) if told else frozenset()
    return bool(shared) and len(told) >= (_FEW if shared & _CHOICES else least) and not _alike(page, options)


def _alike(page: Page, options: list[Span]) -> bool:
    """'A4: untouched/intact', 'Gap: none   none': options that say the same of a thing are no choice."""
    if len({tuple(page.words[i:j]) for i, j in options}) == 1:
        return True
    meanings = [{(m.kind, m.value) for m in within(page.mentions, i, j) if m.kind in _CHOICES} for i, j in options]
    return len(meanings) > 1 and bool(set.intersection(*meanings))


def _kinds(page: Page, i: int, j: int) -> frozenset[str]:
    """Return of what kinds the option in words i to j may be; none where it is no bare word of a choice."""
    words = page.words
    kinds = {m.kind for m in within(page.mentions, i, j) if m.i == i and m.j == j}
    while i + 1 < j and words[i] in _GRADING:
        i += 1
    kinds |= {m.kind for m in within(page.mentions, max(i - 2, 0), j) if m.i <= i and j <= m.j}
    if j - i == 1 and words[i] == "other":
        return _CHOICES | _LONGER_CHOICES
    if j - i == 1 and (words[i] in _YES_NO or words[i] in _DEGREES):
        kinds.add("choice")
    if i < j <= i + 2 and all(w in ("i", "ii", "iii", "iv", "v", "zone") for w in words[i:j]):
        kinds.add("choice")
    if j - i == 1 and "-" in words[i] and words[i] in sizes():
        kinds.add("size")
    if i < j and count_of(words[i]) and all(w in _OF_FIGURES for w in words[i + 1 : j]):
        kinds.add("figure")
    if kinds & _CHOICES:
        kinds.add("choice")
    return frozenset(kinds) & (_CHOICES | _LONGER_CHOICES)


_BESIDE_NONE = frozenset(["figure", "pattern"])
_GRADING = frozenset(["not", "partly", "fully", "partially", "completely", "<", ">", "over", "under", "about"])
_OF_FIGURES = frozenset(["mm", "cm", "%", "-", "strand", "strands", "stranded"])


def _asked_before(page: Page, i: int, j: int) -> int:
    """Return where the words to choose from end: before a bracket or what else tells how to choose from them."""
    ends = (k for k in range(i + 1, j) if page.words[k] in _BEHIND or page.words[k] in _TO_CHOOSE)
    return next(ends, j)


def _is_arrow(page: Page, k: int) -> bool:
    """Tell whether word k is an arrow and no '> 2 mm'."""
    return page.words[k] == ">" and (page.words[k - 1] in ("-", "=") or not count_of(page.words[k + 1]))


def _mark_before_arrow(page: Page, first: int, colon: int, arrow: int) -> None:
    """'Mechanism: sharp / crush / bite -> sharp (scissors)', 'Laterality   R / L   -> L': what the arrow leads from."""
    words = page.words
    k = arrow - 1
    while k > first and words[k] in ("-", "="):
        k -= 1
    last = k + 1
    if _only_in_fractions(page, first, last):
        return  # 'A2: distal 1/3 opened -> passes'
    options = _options(page, colon + 1, last)
    if colon >= first and len(options) >= _FEW and all(0 < b - a <= _LONGEST_OPTION for a, b in options):
        page.mark(colon + 1, arrow, "unticked")
        return
    while k - 2 >= first and words[k - 1] == "/" and words[k].isalnum():
        k -= 2
    if last - k > _FEW:
        page.mark(k, last, "unticked")


def _only_in_fractions(page: Page, first: int, last: int) -> bool:
    """Tell whether every stroke among words first to last stands inside a fraction."""
    strokes = {k for k in range(first, last) if page.words[k] in _PARTS}
    shares = (m for m in within(page.mentions, first, last) if m.kind == "fraction")
    return bool(strokes) and strokes <= {k for m in shares for k in range(m.i, m.j)}


def _mark_to_choose(page: Page, first: int, last: int) -> None:
    """'Ends clean or ragged (delete one)', 'Strands 2 4 6 8 (ring one)': told to choose from."""
    words = page.words
    for opened in (k for k in range(first + 1, last) if words[k] == "(" and _tells_to_choose(words[k + 1 : last])):
        if ":" in words[opened:last]:
            continue  # 'Mechanism (delete): knife / glass': of what follows
        begin = opened
        while begin > first and (words[begin - 1] != "," or count_of(words[begin - 2])):
            begin -= 1
        named = [m.j for m in within(page.mentions, begin, opened) if m.kind in _NAMES]
        if words[opened + 1 : opened + 3] == ["ring", ")"] and not _several(words[max([begin, *named]) : opened]):
            continue  # 'FDP (ring) divided': the finger
        page.mark(max([begin, *named]), min(opened + _INSIDE, last), "unticked")


def _tells_to_choose(words: list[str]) -> bool:
    inside = words[: words.index(")")] if ")" in words else words
    return len(inside) <= _INSIDE and (not _TO_CHOOSE.isdisjoint(inside) or inside in (["ring"], ["ring", "one"]))


_INSIDE = 6  # words of a bracket


def _several(words: list[str]) -> bool:
    """Tell whether words hold more than one to choose from: '2 4 6 8', 'clean or ragged', 'yes / no'."""
    return "/" in words or "or" in words or sum(w.isdecimal() for w in words) > 1


def _mark_yes_or_no(page: Page, first: int, last: int) -> None:
    """'Locking: Y / N', 'Bulky Y N': a question of a form with both answers still there was not answered."""
    words = page.words
    for k in range(first + 1, last - 1):
        if words[k] not in _YES:
            continue
        end = k + 2 + (words[k + 1] == "/")
        if end > last or words[end - 1] not in _NO or (words[k + 1] != "/" and page.raw(k, end) != "Y N"):
            continue
        if words[end : end + 1] in ([":"], ["="]) and end + 1 < last and page.breaks[end + 1] < Break.LINE:
            page.mark(k, end, "unticked")  # 'Bulky Y / N: N'
            continue
        begins = (m for m in range(k, first, -1) if page.breaks[m] >= Break.COLUMN or words[m - 1] in _STOPS)
        goes_on = words[end : end + 1] in ([","], ["("])  # 'Epitendinous yes / no, 5-0 / 6-0'
        page.mark(next(begins, first), last if goes_on else end, "unfilled")
