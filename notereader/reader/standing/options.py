"""Options of a form that stand side by side with none marked: 'A2: intact  vented  repaired', 'Gap (none/seen):'."""

from itertools import pairwise

from notereader.reader.layout.boxes import BOX_ENDS
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_KINDS = ("opened", "gap", "glide", "ends", "stitch")
# Of these no two are true of one thing; of stitches it takes three.
_SOUND = {"opened": "intact", "gap": "none", "glide": "free", "ends": "clean"}
_BETWEEN = frozenset([",", "/", "|", "(", ")", "[", "]", "-", "*", "o", "<", "@", "or", "=", "\u2022"])
_OF_A_NAME = frozenset([*_KINDS, "bulk", "tension"])
_NAMING = frozenset([*_OF_A_NAME, "strandword", "role"])
_FEW, _MANY = 2, 3  # options
_NO_ANSWER = word_list("unrecorded", "no_answer") | {"?"}


def mark_options(page: Page, first: int, last: int) -> None:
    """Set aside the options of words first to last that stand side by side, and those that only name a field."""
    named = [m for m in within(page.mentions, first, last) if m.kind in _NAMING]
    if not named:
        return
    boxed = _boxed(page, first, last)
    for kind in _KINDS if not boxed and len(named) >= _FEW else ():
        told = [m for m in named if m.kind == kind]
        for run in _runs(page, told):
            labelled = run[0].i > first  # not 'Cut    intact'
            if labelled and _excludes(page, run) and _ends_there(page, run[-1].j, last):
                page.mark(run[0].i, run[-1].j, "unticked")
    _mark_pairs(page, first, last)
    _mark_counts(page, first, last)
    _mark_named(page, first, last)


def mark_asked(page: Page, sentence: Sentence) -> None:
    """Set aside a sentence that only asks for answers: 'Please circle: A2 intact, A2 vented', 'Gap: none (default)'."""
    if _TELLTALE.isdisjoint(sentence.said):
        return
    words = page.words[sentence.i : sentence.j]
    if any(tuple(words[k : k + len(asked)]) == asked for asked in _ASKED for k in range(len(words))):
        page.mark(sentence.i, sentence.j, "unfilled")


_ASKED = tuple(tuple(phrase.split()) for phrase in word_list("standing", "asks_to_fill"))
_TELLTALE = frozenset(max(phrase, key=len) for phrase in _ASKED)  # no such phrase without one of these


def _boxed(page: Page, first: int, last: int) -> bool:
    """Tell whether a stretch has boxes, ticked or empty, which say more."""
    words = page.words[first:last]
    return not _TICKS.isdisjoint(words) or any(pair in _EMPTY for pair in pairwise(words))


_TICKS = frozenset(["x", "xx", "v", *BOX_ENDS]) - {")", "]", "}"}
_EMPTY = frozenset([("[", "]"), ("(", ")"), ("{", "}")])


def _runs(page: Page, told: list[Mention]) -> list[list[Mention]]:
    """Return the options of one kind that nothing but marks and space parts."""
    runs: list[list[Mention]] = []
    for m in told:
        if runs and runs[-1][-1].j <= m.i and _BETWEEN.issuperset(page.words[runs[-1][-1].j : m.i]):
            runs[-1].append(m)
        elif not runs or runs[-1][-1].j <= m.i:
            runs.append([m])
    return runs


def _excludes(page: Page, run: list[Mention]) -> bool:
    """Tell whether no two options of a run can both be true of one thing."""
    kind, values = run[0].kind, {m.value for m in run}
    if len({tuple(page.words[m.i : m.j]) for m in run}) < len(run):
        return False  # 'ok / ok / divided': the cells of a row
    if kind == "stitch":
        return len(run) >= _MANY and all(page.breaks[b.i] == Break.COLUMN for a, b in pairwise(run) if a.j == b.i)
    if _SOUND[kind] not in values or len(values) < _FEW:
        return False
    return len(run) >= _MANY or (len(run) == _FEW and _set_apart(page, run))


def _set_apart(page: Page, run: list[Mention]) -> bool:
    """Tell whether two options are parted by a column of space or by brackets: 'A2 intact, vented' may both be true."""
    a, b = run
    return page.breaks[b.i] == Break.COLUMN or not {")", "]", "|"}.isdisjoint(page.words[a.j : b.i])


def _ends_there(page: Page, k: int, last: int) -> bool:
    """Tell whether nothing but marks follows up to the end of the stretch: no '-> vented', no word that tells more."""
    rest = page.words[k:last]
    return ">" not in rest and (_BETWEEN | {".", ":"}).issuperset(rest)


def _mark_pairs(page: Page, first: int, last: int) -> None:
    """'GAP NONE/SEEN', '4/6 STRANDS': two answers under a name without a colon."""
    words = page.words
    for k in (k for k in range(first + 1, last - 2) if words[k] == "(" and words[k + 1] in ("yes", "no", "y", "n")):
        if words[k + 2] in ("/", "or") and _ends_there(page, k + _YES_OR_NO, last):
            page.mark(first, k + _YES_OR_NO, "unticked")  # 'Epitendinous (yes or no)'
    for k in (k for k in range(first + 1, last - 1) if words[k] == "/"):
        if (words[k - 1], words[k + 1]) in _PAIRS and _ends_there(page, k + 2, last) and k - first <= _SHORT:
            page.mark(first, k + 2, "unticked")
        counted = any(m.kind == "strandword" and m.i - k in (2, 3) for m in within(page.mentions, k, k + 4))
        if counted and 0 < count_of(words[k - 1]) < count_of(words[k + 1]):
            page.mark(k - 1, k + 3, "unticked")


_PAIRS = frozenset(
    [
        *(("none", "seen"), ("seen", "none"), ("present", "absent"), ("absent", "present"), ("clean", "ragged")),
        *(("none", "present"), ("present", "none"), ("none", "some"), ("absent", "seen"), ("seen", "absent")),
    ]
)
_SHORT = 4  # words
_YES_OR_NO = 4  # words: '( yes or no'


def _mark_counts(page: Page, first: int, last: int) -> None:
    """'Strands: 2  4  6  8', 'Strands (2/4/6):': counts to choose from."""
    label = next((m for m in within(page.mentions, first, last) if m.kind == "strandword"), None)
    if label is None or label.i > first + 2:
        return
    if _in_brackets(page, label.j, last):
        return
    spots = [k for k in range(label.j, last) if count_of(page.words[k])]
    rest = [w for k, w in enumerate(page.words[label.j : last], label.j) if k not in spots]
    counts = [count_of(page.words[k]) for k in spots]
    if len(counts) >= _MANY and counts == sorted(set(counts)) and (_BETWEEN | {":", ".", ","}).issuperset(rest):
        page.mark(first, last, "unticked")


def _in_brackets(page: Page, k: int, last: int) -> bool:
    """'Strands (2/4/6): 4', 'Strands (2, 4 or 6)': set aside the counts, and the name with them where none answers."""
    words = page.words
    shut = next((n for n in range(k, last) if words[n] == ")"), -1)
    if words[k : k + 1] != ["("] or shut < 0:
        return False
    inside = [count_of(w) for w in words[k + 1 : shut] if w not in ("/", ",", "or")]
    if len(inside) < _FEW or 0 in inside:
        return False
    page.mark(k - 1 if _ends_there(page, shut, last) else k, shut + 1, "unticked")
    return True


def _mark_named(page: Page, first: int, last: int) -> None:
    """'A2 intact: n/a', 'Gap none: tbc', 'Bulky? n.a.': what stands before the mark is only asked."""
    words = page.words
    mark = next((k for k in range(first + 1, last) if words[k] in (":", "?")), -1)
    rest = [w for w in words[mark + 1 : last] if w != "."] if mark > 0 else []
    if " ".join(rest) in _NO_ANSWER and any(m.kind in _OF_A_NAME for m in within(page.mentions, first, mark)):
        page.mark(first, last, "unfilled")
