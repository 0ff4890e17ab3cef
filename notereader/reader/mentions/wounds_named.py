"""Cuts that are wounds: 'Both nerves seen at the proximal cut', 'Oblique cut over the A1' tell of the skin.

What is cut there is named elsewhere; the noun itself is a place, and an adjective before it is no pulley.
"""

from notereader.reader.page import Break, Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_WOUNDS = frozenset(["cut", "cuts"])
_SHAPES = word_list("wounds_named", "shapes")
_WHERE = word_list("wounds_named", "where")
_DETERMINERS = word_list("wounds_named", "determiners")
_LIES = word_list("wounds_named", "lies")
_GOES_ON = word_list("wounds_named", "goes_on")
_OF_A_CUT = frozenset(["hurt", "opened", "extent", "nervestate", "cut", "pulley?"])


def settle_wounds(page: Page) -> None:
    """Make neutral what a cut would tell where the word names a wound, and what its adjectives seem to name."""
    if _WOUNDS.isdisjoint(page.words):
        return
    taken: set[int] = set()
    named: list[Mention] = []
    for k in (k for k, word in enumerate(page.words) if word in _WOUNDS):
        first = _first_shape(page, k)
        if _is_place(page, first, k) or _lay_somewhere(page, first, k) or _opens_a_line(page, first, k):
            taken.update(range(first, k + 1))
            named.append(Mention("neutral", "wound", k, k + 1))
    if named:
        kept = (m for m in page.mentions if not _told_by(m, taken))
        page.mentions = sorted([*kept, *named], key=lambda m: (m.i, m.j))


def _told_by(m: Mention, taken: set[int]) -> bool:
    return m.kind in _OF_A_CUT and taken.issuperset(range(m.i, m.j))


def _first_shape(page: Page, k: int) -> int:
    """Return the first of the adjectives right before word k: of 'the proximal skin cut' the word 'proximal'."""
    while k > 0 and page.words[k - 1] in _SHAPES and page.breaks[k] <= Break.SPACE:
        k -= 1
    return k


def _is_place(page: Page, first: int, k: int) -> bool:
    """'at the proximal cut', 'through his cut'; not 'in the cut tendon', 'on the cut FDP'."""
    led = first > 1 and page.words[first - 1] in _DETERMINERS and page.words[first - 2] in _WHERE
    return led and (k + 1 >= len(page.words) or page.words[k + 1] in _GOES_ON or page.breaks[k + 1] >= Break.COLUMN)


def _lay_somewhere(page: Page, first: int, k: int) -> bool:
    """'The cut lay proximal to A2'; not 'the cut ran through A2'."""
    led = first > 0 and page.words[first - 1] in _DETERMINERS
    return led and page.words[k + 1 : k + 2] != [] and page.words[k + 1] in _LAY


_LAY = frozenset(["lay", "lies", "sat", "sits", "stretched"])


def _opens_a_line(page: Page, first: int, k: int) -> bool:
    """'Oblique cut over the A1', 'A short cut across the pulp': it lies somewhere, and no tendon is named before."""
    last = next((n for n in range(k + 1, len(page.words)) if page.words[n] not in _SHAPES), k)
    lies = last > k and page.words[last] in _LIES
    begins = first - (first > 0 and page.words[first - 1] in _DETERMINERS)
    opens = begins == 0 or page.words[begins - 1] in (".", ":") or page.breaks[begins] >= Break.LINE
    named = begins > 0 and page.words[begins - 1] == ":" and bool(within(page.mentions, begins - 2, begins))
    shaped = first < k or last > k + 1
    return lies and shaped and opens and not named and not _cuts_a_part(page, last - 1)


def _cuts_a_part(page: Page, k: int) -> bool:
    """'A transverse cut across the FDP', 'a short cut across A2': it went into what is named right behind."""
    behind = within(page.mentions, k + 2, k + 5)
    through = page.words[k + 1] == "across" and any(m.kind == "pulley" for m in behind)
    return through or any(m.kind in _PARTS for m in behind)


_PARTS = frozenset(["tendon", "slip", "structure", "sided", "bundle", "anynerve", "anyartery", "endword"])
