"""Short names told beside another finger's: 'ring no gap, little gaps 2 mm', 'the ring held; the small one burst'."""

import re

from notereader.reader.bearing.pulley_digits import named_as_digit
from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list


def is_told_among_others(page: Page, mention: Mention) -> bool:
    """'ring no gap, little gaps 2 mm', 'none in ring, 1 mm in small': a short name beside another digit's."""
    words, i, j = page.words, mention.i, mention.j
    if words[i] not in SHORT_NAMES or j - i > 1 or i == 0:
        return False
    if _beside_another(page, mention):
        return True
    said = _opens_its_statement(page, mention)
    if said is not None:
        return said
    if result_in(page, mention):
        return True
    near = within(page.mentions, i - 14, i + 14)
    others = [m for m in near if not m.i <= i < m.j and (m.kind == "digit" or _both_known(page, mention, m))]
    if not any("." not in words[min(m.j, j) : max(m.i, i)] for m in others):
        return False
    after = words[j] if j < len(words) else "."
    if words[i - 1] == "(" and after == ")":
        return any(words[m.i - 1] == "(" for m in others)  # 'Zone: II (ring), I (small)'
    return (
        _placed_among(words, i, after)
        or _listed_among(words, i, j, others)
        or _tells_what_it_did(page, mention, after, others)
    )


def _opens_its_statement(page: Page, mention: Mention) -> bool | None:
    """Tell whether a short name opens what is told of a finger; None where it opens nothing."""
    words, i, j = page.words, mention.i, mention.j
    behind = words[j] if j < len(words) else ""
    if words[i - 2 : i] == [".", "the"] and behind in RAN:
        return _named_before(page, i)  # 'The ring glided. The small was free.'
    if words[i - 1] == "the" and behind == "repair" and words[j + 1 : j + 2] != [] and words[j + 1] in RAN:
        return named_as_digit(page, mention)  # 'The small repair caught'
    if words[i - 1] == "the" and behind == "one":
        before = [m for m in within(page.mentions, i - 30, i) if m.kind == "digit" and words[m.j : m.j + 1] == ["one"]]
        return bool(before) and "." not in words[before[-1].j : i]  # 'around the ring one ..., around the small one'
    told = words[i - 1] == ":" and any(m.kind == "extent" for m in within(page.mentions, j, j + 1))
    if told and named_as_digit(page, mention):
        return True  # 'FDP: small completely divided.'
    if words[i - 1] == "." and behind in _OPENS_WITH:
        return _named_before(page, i)  # 'Ring 1 mm gap. Little no gap.'
    return None


def _named_before(page: Page, i: int) -> bool:
    return any(m.kind == "digit" for m in within(page.mentions, i - 40, i))


def _placed_among(words: list[str], i: int, after: str) -> bool:
    """'No gap middle, no gap ring', 'a 6-0 was added in the long but not in the ring finger': where it was so."""
    before = words[i - 1]
    if before in (",", ".", ":", "and") and _ZONE.fullmatch(after):
        return True  # 'Zone: index IIB, middle IIC'
    if before == "the" and words[i - 2] in _PLACING and after in ("but", "while", "whereas", "nor"):
        return True  # 'a 6-0 was added in the long but not in the ring finger'
    if before in (":", ",", ";") and after in ("distal", "proximal"):
        return True  # 'A2: long distal third vented, ring intact'
    if before in ("in", "of", "on", "for") and after in (".", ",", ";", ")", "and", "-", "tightened"):
        return True
    return before in _RESULTS and after in (",", ";", ".")  # 'No gap middle, no gap ring'


def _listed_among(words: list[str], i: int, j: int, others: list[Mention]) -> bool:
    """'The long ends were ragged, those of the ring clean', 'MIDDLE and LITTLE no gap': in one list with another."""
    if words[i - 3 : i] == ["those", "of", "the"]:
        return True  # 'The ring ends were clean, those of the small ragged'
    after, the = words[j] if j < len(words) else ".", words[i - 1] == "the"
    if after in ("ends", "stumps") and words[i - 1] in ("the", ".", ",") and any(m.i > j for m in others):
        return True  # 'The long ends were ragged, those of the ring clean'
    led = words[i - 2] if the else words[i - 1]
    if led in (":", ",", ";", ".") and after in ("and", "&", "+") and any(m.i == j + 1 for m in others):
        return True  # 'MIDDLE and LITTLE no gap', '...; the long and little had no epitendinous suture'
    return the and _in_a_row(words, i, j, others)  # 'the index, the middle and the ring'


def _tells_what_it_did(page: Page, mention: Mention, after: str, others: list[Mention]) -> bool:
    """'The ring with six strands, the little with four', 'FDS: index 30, middle 100': told as of the other."""
    words, i, j = page.words, mention.i, mention.j
    if words[i - 1] == "the" and words[i - 2] in (",", ";", "and", "but", "while", "whereas"):
        aside = after == "," and words[j + 1 : j + 2] in (["whose"], ["where"], ["which"])  # '; the small, whose ends'
        return aside or after in _DONE_AFTER or after in RAN  # 'the ring with six strands, the little with four'
    if words[i - 1] not in (",", ";", ":", "and", "but", "while"):
        return False
    if after in _SAYS_AFTER or after.endswith("-0"):
        return True  # 'Epi: middle 6-0, little none'
    if any(m.kind in ("gap", "glide", "ends", "bulk", "extent") for m in within(page.mentions, j, j + 2)):
        return True
    if not after.isdecimal():
        return False
    figured = any(words[m.j : m.j + 1] and words[m.j].isdecimal() for m in others)  # 'FDS: index 30, middle 100'
    counted = words[j + 1 : j + 2] in (["strand"], ["strands"], ["-"])
    return figured or (counted and any(m.kind == "strandword" for m in within(page.mentions, j, j + 4)))


def _both_known(page: Page, first: Mention, second: Mention) -> bool:
    """'Gap: long 1 mm, little none': two short names side by side, of fingers the note names in full elsewhere."""
    if second.kind != "digit?" or second.value == first.value:
        return False
    return all(any(m.kind == "digit" and m.value == v for m in page.mentions) for v in (first.value, second.value))


def result_in(page: Page, mention: Mention) -> bool:
    """'No gap in the middle. The ring was not tested.': the finger of a result, where it was named before."""
    words, i, j = page.words, mention.i, mention.j
    placed = words[i - 2 : i] == ["in", "the"] and words[i - 4 : i - 3] == ["no"] and words[i - 3] in _RESULTS
    if not placed or (j < len(words) and words[j] not in _ENDS):
        return False
    return any(m.kind == "digit" and m.value == mention.value for m in within(page.mentions, i - 90, i))


def _beside_another(page: Page, mention: Mention) -> bool:
    """'The ring held; the small one burst', 'Ring repair held. Small repair burst.': told against another digit's."""
    words, i, j = page.words, mention.i, mention.j
    after = words[j] if j < len(words) else ""
    one = after == "one" and words[i - 1] == "the" and words[i - 2] in (";", ",", "and", "but", "while", "whereas")
    lead = words[i - 2] if words[i - 1] == "the" else words[i - 1]
    repair = after == "repair" and lead in (".", ";", ",", "and", "but", "while", "whereas")
    if not (one or repair) or not named_as_digit(page, mention):
        return False
    others = [m for m in within(page.mentions, i - 14, i) if m.kind == "digit"]
    return any("." not in words[m.j : i] if one else words[m.j : m.j + 1] == ["repair"] for m in others)


_PLACING = frozenset(["in", "of", "on", "for", "round", "around"])
_RESULTS = frozenset(["gap", "gapping", "catching", "triggering"])
_ZONE = re.compile(r"(?:i{1,3}|iv|v|[1-5])[a-d]?")


def _in_a_row(words: list[str], i: int, j: int, others: list[Mention]) -> bool:
    """Tell whether a short name stands between two others of a list, each with its article, or opens or ends one."""
    after = words[j : j + 2] == ["and", "the"] and any(m.i == j + 2 for m in others)
    before = words[i - 2] in (",", "and") and any(m.j == i - 2 for m in others)
    return after or (before and (words[j] if j < len(words) else ".") in (",", ".", ";", ")", "and", ":"))


_ENDS = (".", ",", ";", ")")
SHORT_NAMES = frozenset(["long", "middle", "little", "small"])
_OPENS_WITH = frozenset(
    [
        "no",
        "none",
        "not",
        "nil",
        "gapped",
        "caught",
        "catches",
        "ran",
        "runs",
        "glided",
        "glides",
        "slides",
        "slid",
        "free",
    ]
)
RAN = frozenset(
    [
        "was",
        "is",
        "had",
        "ran",
        "runs",
        "glided",
        "glides",
        "caught",
        "catches",
        "gapped",
        "did",
        "got",
        "one",
        "isn't",
        "wasn't",
        "didn't",
    ]
)
_DONE_AFTER = frozenset(["with", "was", "had", "got", "received", "took", "by", "has", "is"])
_SAYS_AFTER = word_list("bearing", "says_after")
