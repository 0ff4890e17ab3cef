"""Digits told by numbers: 'FDP 4', 'Digits: II, III', 'finger 3', a ticked letter of a form's line."""

from bisect import bisect_right
from operator import attrgetter

from notereader.reader.bearing.asked_rays import asked_rays
from notereader.reader.bearing.initials import initials
from notereader.reader.layout.boxes import boxes_trail, find_boxes
from notereader.reader.page import Break, Mention, Page, Sentence
from notereader.vocabulary.wordlists import word_list

_heading = attrgetter("h")
_NUMBER_DIGITS_WORDS = word_list("bearing", "number_digits_words")
_ENDS_NUMBER_WORDS = word_list("bearing", "ends_number_words")
_NOT_FINGERS = frozenset(["strand", "strands", "stranded", "str", "0", "core", "fold", "ply"])
_NUMBERED = {
    "2": "index",
    "3": "middle",
    "4": "ring",
    "5": "small",
    "ii": "index",
    "iii": "middle",
    "iv": "ring",
    "v": "small",
}
PLURALS = frozenset(["finger", "fingers", "digit", "digits", "ray", "rays"])
SIDES = frozenset(["l", "r", "left", "right"])
_ROMAN = frozenset(["ii", "iii", "iv", "v"])
_CUTTING = word_list("injuries", "cutting")


def number_digits(page: Page) -> None:
    """Read 'FDP 4', 'FDS 2-5', 'dig. II and III', 'D2 and 3': a number beside a tendon or a digit names a digit."""
    words = page.words
    taken = {k for m in page.mentions if m.kind in ("digit", "zone", "strandword") for k in range(m.i, m.j)}
    shares = [m for m in page.mentions if m.kind == "fraction" and words[m.j : m.j + 1] != []]
    taken |= {k for m in shares if words[m.j] in _CUTTING for k in range(m.i, m.j)}  # 'FDP 2/3 through, radial side'
    made = [digit for m in page.mentions for digit in _numbers_behind(page, m, taken)]
    made += _numeral_labels(page, taken) + _ray_of(page, taken) + _ticked_digits(page) + _lettered_numerals(page)
    made += asked_rays(page, taken | {m.i for m in made})
    made += _numerals_of_a_grid(page, taken) + _headed_tendons(page, taken | {m.i for m in made})
    made += _numbered_fingers(page, taken) + _rays_of_a_side(page, taken) + initials(page) + _lettered_figures(page)
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _numbers_behind(page: Page, m: Mention, taken: set[int]) -> list[Mention]:
    """'FDP 4', 'FDS 2-5', 'FDP-3', 'D2 and 3': the digits numbered right behind a tendon or a numbered digit.

    Or behind 'of': 'FDP of III', 'the profundus of 4'.
    """
    words, count = page.words, len(page.words)
    made: list[Mention] = []
    numbered = m.kind == "digit" and _by_number(words[m.j - 1])
    if not numbered and not (m.kind == "tendon" and m.value in ("FDP", "FDS")):
        return made  # 'FPL 4-str'
    first = m.j if numbered else _past_lead(page, m.j)
    k = first
    while k < count and k - first < 8:
        if (k > first or numbered) and words[k] in _NUMBER_DIGITS_WORDS and k + 1 < count and words[k + 1] in _NUMBERED:
            k += 1
            continue
        named_already = k in taken or (k == first and numbered)
        if page.breaks[k] >= Break.COLUMN or words[k] not in _NUMBERED or named_already or not _ends_number(page, k):
            break
        made.append(Mention("digit", _NUMBERED[words[k]], k, k + 1))
        k += 1
    counts = first > m.j and k < count and words[k] in PLURALS
    in_brackets = words[first - 1] == "(" and (
        words[k : k + 1] != [")"] or (len(made) == 1 and words[first].isdecimal())
    )
    return [] if counts or in_brackets else made  # 'FDP of 2 fingers', 'FDS (4)' count


def _past_lead(page: Page, k: int) -> int:
    """Return the word behind what leads from a tendon to its fingers' numbers: 'FDP-3', 'FDP of III', 'FDP (II)'."""
    words, last = page.words, len(page.words) - 1
    if k < last and words[k] == "-" and page.breaks[k] == page.breaks[k + 1] == Break.NONE:
        return k + 1
    if k < last and words[k] == "(":
        return k + 1
    if k < last and words[k] in ("of", "to", "for"):
        behind = k + 1 + (words[k + 1] == "the")
        numeral = behind <= last and words[behind] in _ROMAN and page.raw(behind, behind + 1).isupper()
        return behind if numeral or words[behind - 1] == "of" else k
    return k


def _headed_tendons(page: Page, taken: set[int]) -> list[Mention]:
    """'FDP II' and 'FDP IV', each alone on its line above what is told of it: one tendon twice is of two fingers."""
    words, count = page.words, len(page.words)
    found: dict[str, list[Mention]] = {}
    for m in (m for m in page.mentions if m.kind == "tendon" and m.j < count and words[m.j] in _ROMAN):
        label = words[max(0, m.i - 2) : m.i] == ["tendon", ":"]
        opens = label or m.i == 0 or page.breaks[m.i] >= Break.LINE
        closes = m.j + 1 >= count or page.breaks[m.j + 1] >= Break.LINE
        if opens and closes and m.j not in taken and page.raw(m.j, m.j + 1).isupper():
            found.setdefault(m.value, []).append(Mention("digit", _NUMBERED[words[m.j]], m.j, m.j + 1))
    return [m for own in found.values() if len({m.value for m in own}) > 1 for m in own]


def _numeral_labels(page: Page, taken: set[int]) -> list[Mention]:
    """'Digits: II, III', then 'II | FDP | 100 %' and 'III: no gap': Roman numerals that head what is told of a finger.

    Only in a note that says so, by that label or by a column of its own with the title 'Finger'.
    """
    words, count = page.words, len(page.words)
    spots = [k for k in range(count) if words[k] in _ROMAN and k not in taken and page.raw(k, k + 1).isupper()]
    if len({words[k] for k in spots}) < _FEWEST_NUMERALS:
        return []
    titles = [k for k in range(count - 1) if words[k] in PLURALS and page.breaks[k] >= Break.LINE]
    titled = any(words[k + 1] == "|" or page.breaks[k + 1] == Break.COLUMN for k in titles)
    listed: list[int] = []
    for k in range(count - 2):
        if words[k] in PLURALS and words[k + 1] == ":" and page.breaks[k + 2] < Break.LINE:
            n = k + 2
            while n in spots:
                listed.append(n)
                n += 1 + (words[n + 1 : n + 2] in ([","], ["and"], ["+"], ["&"], ["/"]))
    if not titled and len(listed) < _FEWEST_NUMERALS:
        return []
    labels = [k for k in spots if k + 1 < count and _heads_its_own(page, k)]
    return [Mention("digit", _NUMBERED[words[k]], k, k + 1) for k in sorted({*listed, *labels})]


def _numerals_of_a_grid(page: Page, taken: set[int]) -> list[Mention]:
    """'II | FDP | 100 %' above 'II: cruciate', 'knots of III outside': the fingers of a grid, in the text around it."""
    words = page.words
    heads = {m.i for m in page.mentions if m.kind == "digit" and words[m.i] in _ROMAN}
    if len({words[k] for k in heads}) < _FEWEST_NUMERALS:
        return []
    found = []
    for k in (k for k, word in enumerate(words) if word in _ROMAN and k not in taken | heads):
        opens = page.breaks[k] >= Break.LINE or words[k - 1] in _OPENING
        if page.raw(k, k + 1).isupper() and (opens or words[k - 1] in _NAMING) and words[k + 1 : k + 2] != ["|"]:
            found.append(Mention("digit", _NUMBERED[words[k]], k, k + 1))
    return found


_OPENING = frozenset([".", ";"])
_NAMING = frozenset(["of", "in", "and", "for", "to", ",", "technique", "finger", "fingers", "digit", "the"])


def _lettered_numerals(page: Page) -> list[Mention]:
    """'DIV: ...', 'DV | ...' beside 'DIII' or 'DII': by itself 'div' is 'divided' cut short."""
    spots = [k for k, word in enumerate(page.words) if word in _LETTERED and page.raw(k, k + 1).isupper()]
    others = {page.words[m.j - 1] for m in page.mentions if m.kind == "digit"} & {"dii", "diii"}
    several = len({page.words[k] for k in spots}) + len(others) >= _FEWEST_NUMERALS
    known = {m.i for m in page.mentions if m.kind == "digit"}
    return [Mention("digit", _LETTERED[page.words[k]], k, k + 1) for k in spots if several and k not in known]


def _lettered_figures(page: Page) -> list[Mention]:
    """'F3 FDP', 'FDP of F2 and F3': fingers, where a finger flexor stands beside one; elsewhere 'F2' is a doctor."""
    words = page.words
    spots = [k for k, word in enumerate(words) if word in _F_FIGURES]
    opens = {m.i for m in page.mentions if m.kind == "tendon" and m.value in ("FDP", "FDS")} if spots else set()
    ends = {m.j for m in page.mentions if m.kind == "tendon" and m.value in ("FDP", "FDS")} if spots else set()
    beside = (k + 1 in opens or (k + 2 in opens and words[k + 1] in (":", "-", "=")) for k in spots)
    behind = (not ends.isdisjoint(_behind_leads(words, k)) for k in spots)
    return [Mention("digit", _NUMBERED[words[k][1]], k, k + 1) for k in spots] if any((*beside, *behind)) else []


_F_FIGURES = frozenset(["f2", "f3", "f4", "f5"])
_LETTERED = {"di": "thumb", "div": "ring", "dv": "small"}
_FEWEST_NUMERALS = 2


def _heads_its_own(page: Page, k: int) -> bool:
    """Tell whether word k opens a line as a cell of its own, or a clause with a colon behind it."""
    opens = page.breaks[k] >= Break.LINE
    if opens and (page.words[k + 1] == "|" or page.breaks[k + 1] >= Break.COLUMN):
        return True
    clause = opens or page.words[k - 1] in (".", ";", ",", "-", ":")
    return (clause and page.words[k + 1] == ":") or (opens and page.words[k + 1] in _PULLEYS)


_PULLEYS = frozenset(["a1", "a2", "a3", "a4", "a5", "p1", "p2", "p3"])


def _ray_of(page: Page, taken: set[int]) -> list[Mention]:
    """'A1 IV': a Roman numeral behind a pulley, in a note that names rays or fingers so."""
    words = page.words
    found: list[Mention] = []
    if not any(m.kind == "digit" and words[m.j - 1] in _ROMAN for m in page.mentions):
        return found
    for k in (m.j for m in page.mentions if m.kind == "pulley"):
        while k < len(words) and words[k] in _ROMAN and k not in taken and page.raw(k, k + 1).isupper():
            found.append(Mention("digit", _NUMBERED[words[k]], k, k + 1))
            joined = words[k + 1 : k + 2] in (["and"], [","], ["+"], ["&"])
            k += 2 if joined else len(words)
    return found


def _rays_of_a_side(page: Page, taken: set[int]) -> list[Mention]:
    """'FDP avulsion R IV, zone I', 'FDS cut left III': a Roman numeral behind the side, close behind a tendon."""
    words, found = page.words, []
    for m in page.mentions:
        if m.kind != "tendon" or m.value not in ("FDP", "FDS"):
            continue
        for k in range(m.j, min(m.j + _NEAR_TENDON, len(words) - 1)):
            if page.breaks[k] >= Break.COLUMN or words[k] in _STOPS:
                break
            numeral = words[k + 1] in _ROMAN and page.raw(k + 1, k + 2).isupper() and k + 1 not in taken
            numeral = numeral and words[k + 2 : k + 3] != ["zone"]
            if words[k] in SIDES and numeral and page.breaks[k + 1] < Break.COLUMN and _ends_number(page, k + 1):
                found.append(Mention("digit", _NUMBERED[words[k + 1]], k + 1, k + 2))
                break
    return found


_NEAR_TENDON = 4  # words
_STOPS = frozenset([".", ";", ":", "|"])


def _numbered_fingers(page: Page, taken: set[int]) -> list[Mention]:
    """'Finger 3: ...', 'digits 3, 4 and 5' in a note that names its fingers so more than once, or behind a tendon."""
    words = page.words
    found: list[Mention] = []
    named = {k for m in page.mentions if m.kind in ("digit", "digit?") for k in range(m.i, m.j)}
    if any(words[k] == "finger" and words[k + 2] == ":" and k + 3 in named for k in range(len(words) - 3)):
        return found  # 'Finger 1: MIDDLE' counts the fingers of the form
    for k in range(len(words) - 1):
        if words[k] not in PLURALS or k in named or words[k + 1] not in _NUMBERED or _answers_which(page, k):
            continue
        n = k + 1
        while n < len(words) and words[n] in _NUMBERED and page.breaks[n] < Break.COLUMN and n not in taken:
            if not _ends_number(page, n):
                break
            found.append(Mention("digit", _NUMBERED[words[n]], n, n + 1))
            n += 1 + (words[n + 1 : n + 3] == [",", "and"])
            n += 1 if words[n : n + 1] != [] and words[n] in _NUMBER_JOINS else len(words)
    tendons = {m.j for m in page.mentions if m.kind == "tendon"}
    of_tendon = any(not tendons.isdisjoint(_behind_leads(words, m.i - 1)) for m in found)  # 'FDP of finger 3'
    return found if len({m.i for m in found}) > 1 or of_tendon else []


def _answers_which(page: Page, k: int) -> bool:
    """'Hand: digits 3, 4, 5.': an answer that only says what was looked at, and is no subject of what follows."""
    if page.words[k - 1 : k] != [":"] or page.words[k] in ("finger", "fingers"):
        return False
    n = k + 1
    while n < len(page.words) and (page.words[n] in _NUMBERED or page.words[n] in _NUMBER_JOINS):
        n += 1
    return n >= len(page.words) or page.words[n] == "." or page.breaks[n] >= Break.LINE


_NUMBER_JOINS = frozenset(["and", ",", "+", "&", "/"])


def _behind_leads(words: list[str], k: int) -> list[int]:
    """Return word k and the words that lead to it, 'of the', '(', one of which a tendon may end right before."""
    spots = [k]
    while k > 0 and words[k - 1] in ("of", "to", "the", "in", "(", ","):
        k -= 1
        spots.append(k)
    return spots


_ASK_FOR_DIGITS = frozenset(["digit", "digits", "finger", "fingers", "ray"])
_LETTERS = {"t": "thumb", "th": "thumb", "i": "index", "m": "middle", "r": "ring", "s": "small", "l": "small"}


def _ticked_digits(page: Page) -> list[Mention]:
    """Read a ticked letter of a form's line of digits: 'DIGIT [ ] T [x] I [ ] M'."""
    found: list[Mention] = []
    for line in page.sentences:
        i, j = _asks_for_digits(page, line)
        told = [box for box in find_boxes(page, line) if i <= box[0] < j]
        trail = bool(told) and boxes_trail(page, line, told)
        spots = [first - 1 if trail else behind for first, behind, ticked in told if ticked]
        names = [(k, _LETTERS[page.words[k]]) for k in spots if k < j and page.words[k] in _LETTERS]
        found += [Mention("digit", name, k, k + 1) for k, name in names]
    return found


def _asks_for_digits(page: Page, line: Sentence) -> tuple[int, int]:
    """Return the words of a line that answer which digit it was: 'Hand: R [ ] L [x]   Digit: I [ ] M [x]   Zone: 2'."""
    words, end = page.words, line.j
    begins = [k + 2 for k in range(line.i, end - 1) if words[k] in _ASK_FOR_DIGITS and words[k + 1] == ":"]
    around = page.sections[max(0, bisect_right(page.sections, line.i, key=_heading) - 1) :][:1]  # they stand in order
    begins += [max(s.i, line.i) for s in around if s.kind == "digit" and s.h <= line.i < s.j]
    if not begins:
        return end, end
    i = begins[0]
    colons = [k for k in range(i + 1, end) if words[k] == ":"]
    return i, next((k for k in range(colons[0], i, -1) if page.breaks[k] >= Break.COLUMN), i) if colons else end


def _by_number(word: str) -> bool:
    return word in _NUMBERED or (len(word) == 2 and word[0] == "d" and word[1].isdecimal())


def _ends_number(page: Page, k: int) -> bool:
    """Tell whether a figure stands for a digit: nothing after it makes it a count or a length."""
    after = page.words[k + 1] if k + 1 < len(page.words) else ""
    ranged = after in ("to", "-", "or") and page.words[k + 2 : k + 3] and page.words[k + 2].isdecimal()
    if ranged and page.words[k + 3 : k + 4] and page.words[k + 3] in _ENDS_NUMBER_WORDS:
        # 'FDS 3 - 20 %', but not 'from the ends of the deep flexors 2 to 3 mm'
        spaced = after == "-" and page.breaks[k + 1] == page.breaks[k + 2] == Break.SPACE
        return spaced and page.words[k + 3] == "%"
    if after == "-" and k + 2 < len(page.words) and page.words[k + 2] in _NOT_FINGERS:
        return False
    return after not in _ENDS_NUMBER_WORDS
