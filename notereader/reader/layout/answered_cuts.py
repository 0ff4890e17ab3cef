"""Lists whose lines answer a name with a bare 'cut': 'FDS III .... cut / repaired' over 'FDP IV .... cut 60%'.

In running text 'cut' leaves open how far. In a list that says 'intact', or how far, of what was cut in part, it means
cut through.
"""

from bisect import insort

from notereader.reader.layout.answered_totals import only_named
from notereader.reader.page import Break, Mention, Page, Sentence, within

_CUT = frozenset(["cut", "severed", "divided"])
_CLOSES = frozenset(["/", ",", ";", ".", "(", "-", "|"])
_FEWEST = 2  # lines that answer so
_SHARES = ("extent", "fraction")


def settle_answered_cuts(page: Page) -> None:
    """Take a bare 'cut' for a complete cut in a list of tendons that also says 'intact' or a share."""
    blocks: dict[int, list[Sentence]] = {}
    for sentence in page.sentences:
        if not sentence.prefix and page.breaks[sentence.i] >= Break.LINE:
            blocks.setdefault(sentence.block, []).append(sentence)
    for lines in blocks.values():
        answers = [(s, _answered_at(page, s)) for s in lines]
        led = [(s, k) for s, k in answers if k is not None]
        cut = [k for s, k in led if _is_bare_cut(page, s, k)]
        if len(cut) >= _FEWEST and any(_says_how_far(page, s, k) for s, k in led if k not in cut):
            for k in cut:
                if not any(m.kind == "extent" for m in within(page.mentions, k, k + 1)):
                    insort(page.mentions, Mention("extent", "complete", k, k + 1), key=lambda m: (m.i, m.j))


def _answered_at(page: Page, sentence: Sentence) -> int | None:
    """Return the first word of what a line says of the tendon it names, behind dots, a colon or a column of space."""
    words, first = page.words, sentence.i
    for k in range(first + 1, sentence.j):
        dash = words[k - 1] == "-" and words[k] in _CUT
        if words[k - 1].startswith("..") or words[k - 1] == ":" or dash or page.breaks[k] == Break.COLUMN:
            if words[k].startswith("..") or words[k] in (":", "-"):
                continue
            return k if only_named(page, first, k, _RAYS) else None
    return next(
        (k for k in range(first + 1, sentence.j) if _says_a_state(page, k) and _named_before(page, first, k)), None
    )


def _says_a_state(page: Page, k: int) -> bool:
    """Tell whether word k begins what is told of a tendon right behind its name: 'PL cut', 'FCR 60 % cut'."""
    told = any(m.i == k and m.kind in _SHARES for m in within(page.mentions, k, k + 1))
    return page.words[k] in _CUT or told or page.words[k + 1 : k + 2] == ["%"]


def _named_before(page: Page, first: int, k: int) -> bool:
    return page.breaks[k] == Break.SPACE and only_named(page, first, k, _RAYS | {"all"})


_RAYS = frozenset(
    [
        "1st",
        "2nd",
        "3rd",
        "4th",
        "5th",
        ".",
        "i",
        "ii",
        "iii",
        "iv",
        "v",
        "1",
        "2",
        "3",
        "4",
        "5",
        "d1",
        "d2",
        "d3",
        "d4",
        "d5",
        "-",
    ]
)


def _is_bare_cut(page: Page, sentence: Sentence, k: int) -> bool:
    if page.words[k] not in _CUT or not any(m.kind == "tendon" for m in within(page.mentions, sentence.i, k)):
        return False
    bare = k + 1 >= sentence.j or page.words[k + 1] in _CLOSES
    behind = next((m.i for m in within(page.mentions, k + 1, sentence.j) if m.kind == "tendon"), sentence.j)
    end = behind if page.words[behind - 1] in (",", ";") else sentence.j  # 'FDS II cut, FDS III whole'
    share = any(m.kind in ("fraction", "extent") for m in within(page.mentions, k + 1, end))
    return bare and not share and "%" not in page.words[k:end]


def _says_how_far(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether a line says at once that its tendon was whole, or how much of it was cut."""
    told = within(page.mentions, k, min(k + 3, sentence.j))
    return any(m.kind in _SHARES for m in told) or "%" in page.words[k : k + 4]
