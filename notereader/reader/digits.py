"""Which words name a digit: 'little' beside a tendon, 'FDP 4', a ticked letter; and which only seem to."""

import re
from bisect import bisect_right
from operator import attrgetter

from notereader.reader.boxes import boxes_trail, find_boxes
from notereader.reader.digit_runs import in_a_run, told_in_turn
from notereader.reader.form_marks import TickedField
from notereader.reader.initials import initials
from notereader.reader.met_fingers import met_by_thumb
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.reader.pulley_digits import finger_of_pulley, named_as_digit, part_of_pulley
from notereader.vocabulary.wordlists import word_list

_heading = attrgetter("h")
_NUMBER_DIGITS_WORDS = word_list("bearing", "number_digits_words")
_ENDS_NUMBER_WORDS = word_list("bearing", "ends_number_words")
_NO_DIGIT_WORDS = word_list("bearing", "no_digit_words")
_NO_DIGIT_WORDS_2 = word_list("bearing", "no_digit_words_2")
_NO_DIGIT_WORDS_3 = word_list("bearing", "no_digit_words_3")
_NO_DIGIT_WORDS_4 = word_list("bearing", "no_digit_words_4")
_BESIDE_TENDON_WORDS = word_list("bearing", "beside_tendon_words")
_LABELS_WORDS = word_list("bearing", "labels_words")
_LABELS_WORDS_2 = word_list("bearing", "labels_words_2")
_LABELS_WORDS_3 = word_list("bearing", "labels_words_3")
_LABELS_WORDS_4 = word_list("bearing", "labels_words_4")
_CHAIN = word_list("bearing", "chain")
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
_ROMAN = frozenset(["ii", "iii", "iv", "v"])
_SPOKEN_OF = frozenset(["of", "in", "for", "on", "to", "from", "let"])
_ORDINALS = frozenset(["second", "2nd", "third", "3rd", "fourth", "4th", "fifth", "5th"])
_BY_RANK = frozenset(["ray", "rays", "2", "3", "4", "5", "ii", "iii", "iv", "v"])
# What an ordinal may count other than fingers.
_COUNTED = word_list("bearing", "counted")
_SIDES = frozenset(["l", "r", "left", "right"])
_CUTTING = word_list("injuries", "cutting")
_PARTED = frozenset([":", "-", "=", ")", "("])
_PLURALS = frozenset(["finger", "fingers", "digit", "digits", "ray", "rays"])


def settle_digits(page: Page) -> None:
    """Add the digits told by numbers and drop the words that name none; index the words of digits and tendons."""
    index_words(page)
    _name_parts(page)
    _number_digits(page)
    index_words(page)
    under_heading = {k for s in page.sections if s.kind == "digit" for k in range(s.i, s.j)}
    options = {k for field in page.ticked if field.begin >= 0 for k in _begins(page, field)}
    page.mentions = [
        m
        for m in page.mentions
        if m.kind not in ("digit", "digit?") or not _unconfirmed(page, m, m.i in under_heading or m.j in options)
    ]


def _begins(page: Page, field: TickedField) -> tuple[int, ...]:
    """'FDP: middle cut [x] intact [ ]': what stands right before the options of a field, or a colon, is its label."""
    first = page.words_in(*field.span)[0]
    return (first, first - 1) if page.words[first - 1 : first] == [":"] else (first,)


def _name_parts(page: Page) -> None:
    """'FINGER A: Ring', then 'Finger A, FDP: no gap': a letter or number that a form gives its finger stands for it."""
    words, names = page.words, {m.i: m for m in page.mentions if m.kind in ("digit", "digit?")}
    spots = [k for k in range(len(words) - 1) if words[k] in ("finger", "digit") and _is_mark(words[k + 1])]
    meant: dict[str, str] = {}
    for k in spots:
        n = k + 3
        defines = words[k + 2 : k + 3] != [] and words[k + 2] in _PARTED and n in names and page.breaks[n] < Break.LINE
        if defines:
            meant[words[k + 1]] = names[n].value
    told = [k for k in spots if words[k + 1] in meant and k + 3 not in names]
    if told:
        taken = {k for spot in told for k in (spot, spot + 1)}
        made = [Mention("digit", meant[words[k + 1]], k, k + 2) for k in told]
        kept = [m for m in page.mentions if m.kind not in ("digit", "digit?", "plural") or m.i not in taken]
        page.mentions = sorted([*kept, *made], key=lambda m: (m.i, m.j))


def _is_mark(word: str) -> bool:
    return len(word) == 1 and (word.isalpha() or word.isdecimal())


def _number_digits(page: Page) -> None:
    """Read 'FDP 4', 'FDS 2-5', 'dig. II and III', 'D2 and 3': a number beside a tendon or a digit names a digit."""
    words, count = page.words, len(page.words)
    made: list[Mention] = []
    taken = {k for m in page.mentions if m.kind in ("digit", "zone", "strandword") for k in range(m.i, m.j)}
    shares = [m for m in page.mentions if m.kind == "fraction" and words[m.j : m.j + 1] != []]
    taken |= {k for m in shares if words[m.j] in _CUTTING for k in range(m.i, m.j)}  # 'FDP 2/3 through, radial side'
    for m in page.mentions:
        if m.kind not in ("tendon", "digit") or (m.kind == "digit" and not _by_number(words[m.j - 1])):
            continue
        if m.kind == "tendon" and m.value not in ("FDP", "FDS"):
            continue  # 'FPL 4-str'
        k = m.j
        if m.kind == "tendon" and words[k : k + 1] == ["-"] and page.breaks[k] == Break.NONE and k + 1 < count:
            k += page.breaks[k + 1] == Break.NONE  # 'FDP-3'
        first = k
        while k < count and k - first < 8:
            joined = k > first or m.kind == "digit"
            if joined and words[k] in _NUMBER_DIGITS_WORDS and k + 1 < count and words[k + 1] in _NUMBERED:
                k += 1
                continue
            if page.breaks[k] >= Break.COLUMN:
                break
            if words[k] in _NUMBERED and k not in taken and (k > first or m.kind == "tendon") and _ends_number(page, k):
                made.append(Mention("digit", _NUMBERED[words[k]], k, k + 1))
                k += 1
                continue
            break
    made += _numeral_labels(page, taken) + _ray_of(page, taken) + _ticked_digits(page) + _lettered_numerals(page)
    made += _numbered_fingers(page, taken) + _rays_of_a_side(page, taken) + initials(page)
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _numeral_labels(page: Page, taken: set[int]) -> list[Mention]:
    """'Digits: II, III', then 'II | FDP | 100 %' and 'III: no gap': Roman numerals that head what is told of a finger.

    Only in a note that says so, by that label or by a column of its own with the title 'Finger'.
    """
    words, count = page.words, len(page.words)
    spots = [k for k in range(count) if words[k] in _ROMAN and k not in taken and page.raw(k, k + 1).isupper()]
    if len({words[k] for k in spots}) < _FEWEST_NUMERALS:
        return []
    titles = [k for k in range(count - 1) if words[k] in _PLURALS and page.breaks[k] >= Break.LINE]
    titled = any(words[k + 1] == "|" or page.breaks[k + 1] == Break.COLUMN for k in titles)
    listed: list[int] = []
    for k in range(count - 2):
        if words[k] in _PLURALS and words[k + 1] == ":" and page.breaks[k + 2] < Break.LINE:
            n = k + 2
            while n in spots:
                listed.append(n)
                n += 1 + (words[n + 1 : n + 2] in ([","], ["and"], ["+"], ["&"], ["/"]))
    if not titled and len(listed) < _FEWEST_NUMERALS:
        return []
    labels = [k for k in spots if k + 1 < count and _heads_its_own(page, k)]
    return [Mention("digit", _NUMBERED[words[k]], k, k + 1) for k in sorted({*listed, *labels})]


def _lettered_numerals(page: Page) -> list[Mention]:
    """'DIV: ...', 'DV | ...' beside 'DIII' or 'DII': by itself 'div' is 'divided' cut short."""
    spots = [k for k, word in enumerate(page.words) if word in _LETTERED and page.raw(k, k + 1).isupper()]
    others = {page.words[m.j - 1] for m in page.mentions if m.kind == "digit"} & {"dii", "diii"}
    several = len({page.words[k] for k in spots}) + len(others) >= _FEWEST_NUMERALS
    known = {m.i for m in page.mentions if m.kind == "digit"}
    return [Mention("digit", _LETTERED[page.words[k]], k, k + 1) for k in spots if several and k not in known]


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
    """'FDP of III', 'A1 IV': a Roman numeral behind a tendon or pulley, in a note that names rays or fingers so."""
    words, found = page.words, []
    by_numeral = any(m.kind == "digit" and words[m.j - 1] in _ROMAN for m in page.mentions)
    for m in page.mentions:
        k = m.j
        if m.kind == "tendon" and words[k : k + 1] == ["of"] and m.value in ("FDP", "FDS"):
            k += 1
        elif m.kind != "pulley" or not by_numeral:
            continue
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
            if words[k] in _SIDES and numeral and page.breaks[k + 1] < Break.COLUMN and _ends_number(page, k + 1):
                found.append(Mention("digit", _NUMBERED[words[k + 1]], k + 1, k + 2))
                break
    return found


_NEAR_TENDON = 4  # words
_STOPS = frozenset([".", ";", ":", "|"])


def _numbered_fingers(page: Page, taken: set[int]) -> list[Mention]:
    """'Finger 3: ...', 'fingers 3 and 4' in a note that names its fingers so more than once."""
    words = page.words
    found: list[Mention] = []
    named = {k for m in page.mentions if m.kind in ("digit", "digit?") for k in range(m.i, m.j)}
    if any(words[k] == "finger" and words[k + 2] == ":" and k + 3 in named for k in range(len(words) - 3)):
        return found  # 'Finger 1: MIDDLE' counts the fingers of the form
    for k in range(len(words) - 1):
        if words[k] not in ("finger", "fingers") or k in named or words[k + 1] not in _NUMBERED:
            continue
        n = k + 1
        while n < len(words) and words[n] in _NUMBERED and page.breaks[n] < Break.COLUMN and n not in taken:
            if not _ends_number(page, n):
                break
            found.append(Mention("digit", _NUMBERED[words[n]], n, n + 1))
            n += 2 if words[n + 1 : n + 2] in (["and"], [","]) else len(words)
    return found if len({m.i for m in found}) > 1 else []


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
        return False  # 'from the ends of the deep flexors 2 to 3 mm'
    if after == "-" and k + 2 < len(page.words) and page.words[k + 2] in _NOT_FINGERS:
        return False
    return after not in _ENDS_NUMBER_WORDS


def _unconfirmed(page: Page, mention: Mention, under_heading: bool) -> bool:
    """Tell whether a word that may name a digit does not do so here; one confirmed becomes a digit.

    `under_heading`: it stands under a heading for the digit, or right before the options of a form.
    """
    if mention.kind == "digit":
        return _no_digit(page, mention) or _counts_digits(page, mention)
    if under_heading:
        mention.kind = "digit"
        return False
    in_the_middle = page.words[mention.i - 2 : mention.j] == ["in", "the", "middle"]
    excepted = page.words[mention.i - 3 : mention.i - 2] == ["except"]
    if (
        in_the_middle
        and not excepted
        and mention.j not in page.tendon_words
        and page.words[mention.j : mention.j + 2] != ["but", "not"]
        and not (_result_in(page, mention) or _in_parallel(page, mention))
        and _KNOTS & set(page.words[mention.i - 7 : mention.i])
    ):
        return True  # 'knot in the middle'
    if part_of_pulley(page, mention) or _of_its_smallness(page, mention):
        return True
    if _ends_range(page, mention):
        mention.kind = "digit"
        return False
    known = _chained(page, mention) or _beside_tendon(page, mention) or _labels(page, mention)
    known = (
        known
        or _among_digits(page, mention)
        or _in_row_of_tendon(page, mention)
        or in_a_run(page, mention)
        or told_in_turn(page, mention)
    )
    known = known or finger_of_pulley(page, mention) or _likened_to(page, mention) or _singled_out(page, mention)
    before = page.words[max(0, mention.i - 3) : mention.i]
    known = known or (len(before) == 3 and before[0] in _PLURALS and before[1].isdecimal() and before[2] in _PARTED)
    if not known and not _ordinal_again(page, mention) and not _ordinal_title(page, mention):
        return True
    mention.kind = "digit"
    return False


def _of_its_smallness(page: Page, mention: Mention) -> bool:
    """'FDS to ring - little tag off the surface', 'ring: small nick': how big a thing is, and no finger."""
    thing = page.words[mention.j : mention.j + 1]
    return page.words[mention.i] in ("little", "small") and thing != [] and thing[0] in _SMALL_THINGS


_SMALL_THINGS = word_list("bearing", "small_things")


def _singled_out(page: Page, mention: Mention) -> bool:
    """'It is the little that is free and the middle that catches', 'It was the small whose A2 was vented'."""
    behind = page.words[mention.j : mention.j + 1] in (["that"], ["whose"])
    lead = page.words[max(0, mention.i - 3) : mention.i]
    return behind and lead[-1:] == ["the"] and (lead[:2] in _IT_IS or lead[-2:-1] in _LEAD_ON)


_IT_IS = (["it", "is"], ["it", "was"])
_LEAD_ON = (["and"], ["but"], ["not"])


def _likened_to(page: Page, mention: Mention) -> bool:
    """'as middle', 'like little b' at the end of a cell: a finger that the note names elsewhere too."""
    words, j = page.words, mention.j
    if mention.i == 0 or words[mention.i - 1] not in ("as", "like") or page.breaks[mention.i - 1] < Break.COLUMN:
        led = words[mention.i - 2 : mention.i - 1] if mention.i > 1 else []
        if led != ["|"] or words[mention.i - 1] not in ("as", "like"):
            return False
    marked = len("".join(words[j : j + 1])) == 1 and words[j].isalpha()  # a letter that points to a note
    end = j + marked
    closes = end >= len(words) or page.breaks[end] >= Break.COLUMN or words[end] == "|"
    return closes and any(m.value == mention.value and m is not mention for m in page.mentions if m.kind in _NAMED)


def _ends_range(page: Page, mention: Mention) -> bool:
    """'FDP middle-small intact': a short name joined by a dash to a digit before it."""
    i = mention.i
    joined = i > 1 and page.words[i - 1] == "-" and page.breaks[i - 1] == page.breaks[i] == Break.NONE
    return joined and any(m.kind == "digit" and m.j == i - 1 for m in within(page.mentions, max(0, i - 4), i))


def _in_row_of_tendon(page: Page, mention: Mention) -> bool:
    """'FDS to middle and small had been cut': a short name in a row of fingers that a tendon goes to."""
    k = mention.i - 1
    if page.words[k : k + 1] not in (["and"], ["&"], [","]):
        return False
    names = {n for m in within(page.mentions, mention.i - 10, mention.i) if m.kind in _NAMED for n in range(m.i, m.j)}
    while k > 0 and (k in names or page.words[k] in ("and", "&", ",", "the")):
        k -= 1
    return bool(names) and page.words[k] in ("to", "of", "for") and k - 1 in page.tendon_words


_NAMED = ("digit", "digit?")


def _among_digits(page: Page, mention: Mention) -> bool:
    """'ring no gap, little gaps 2 mm', 'none in ring, 1 mm in small': a short name beside another digit's."""
    words, i, j = page.words, mention.i, mention.j
    if words[i] not in ("middle", "long", "little", "small") or j - i > 1 or i == 0:
        return False
    if _beside_another(page, mention):
        return True
    if words[i - 2 : i] == [".", "the"] and words[j : j + 1] != [] and words[j] in _RAN:
        return any(
            m.kind == "digit" for m in within(page.mentions, i - 40, i)
        )  # 'The ring glided. The small was free.'
    if words[i - 1] == "the" and words[j : j + 1] == ["repair"] and words[j + 1 : j + 2] != [] and words[j + 1] in _RAN:
        return named_as_digit(page, mention)  # 'The small repair caught'
    if words[i - 1] == "the" and words[j : j + 1] == ["one"]:
        before = [m for m in within(page.mentions, i - 30, i) if m.kind == "digit" and words[m.j : m.j + 1] == ["one"]]
        return bool(before) and "." not in words[before[-1].j : i]  # 'around the ring one ..., around the small one'
    told = any(m.kind == "extent" for m in within(page.mentions, j, j + 1))
    if told and words[i - 1] == ":" and named_as_digit(page, mention):
        return True  # 'FDP: small completely divided.'
    if words[i - 1] == "." and words[j : j + 1] != [] and words[j] in _OPENS_WITH:
        return any(m.kind == "digit" for m in within(page.mentions, i - 40, i))  # 'Ring 1 mm gap. Little no gap.'
    if _result_in(page, mention):
        return True
    near = within(page.mentions, i - 14, i + 14)
    others = [m for m in near if not m.i <= i < m.j and (m.kind == "digit" or _both_known(page, mention, m))]
    if not any("." not in words[min(m.j, j) : max(m.i, i)] for m in others):
        return False
    after = words[j] if j < len(words) else "."
    if words[i - 1] == "(" and after == ")":
        return any(words[m.i - 1] == "(" for m in others)  # 'Zone: II (ring), I (small)'
    if words[i - 1] in (",", ".", ":", "and") and _ZONE.fullmatch(after):
        return True  # 'Zone: index IIB, middle IIC'
    if words[i - 3 : i] == ["those", "of", "the"]:
        return True  # 'The ring ends were clean, those of the small ragged'
    if after in ("ends", "stumps") and words[i - 1] in ("the", ".", ",") and any(m.i > j for m in others):
        return True  # 'The long ends were ragged, those of the ring clean'
    led = words[i - 2] if words[i - 1] == "the" else words[i - 1]
    if led in (":", ",", ";", ".") and after in ("and", "&", "+") and any(m.i == j + 1 for m in others):
        return True  # 'MIDDLE and LITTLE no gap', '...; the long and little had no epitendinous suture'
    if words[i - 1] == "the" and words[i - 2] in _PLACING and after in ("but", "while", "whereas", "nor"):
        return True  # 'a 6-0 was added in the long but not in the ring finger'
    if words[i - 1] in (":", ",", ";") and after in ("distal", "proximal"):
        return True  # 'A2: long distal third vented, ring intact'
    if words[i - 1] in ("in", "of", "on", "for") and after in (".", ",", ";", ")", "and", "-", "tightened"):
        return True
    if words[i - 1] in _RESULTS and after in (",", ";", "."):
        return True  # 'No gap middle, no gap ring'
    if words[i - 1] == "the" and _in_a_row(words, i, j, others):
        return True  # 'the index, the middle and the ring'
    if words[i - 1] == "the" and words[i - 2] in (",", ";", "and", "but", "while", "whereas"):
        aside = after == "," and words[j + 1 : j + 2] in (["whose"], ["where"], ["which"])  # '; the small, whose ends'
        return aside or after in _DONE_AFTER or after in _RAN  # 'the ring with six strands, the little with four'
    says = any(m.kind in ("gap", "glide", "ends", "bulk", "extent") for m in within(page.mentions, j, j + 2))
    counted = after.isdecimal() and words[j + 1 : j + 2] in (["strand"], ["strands"], ["-"])
    figured = after.isdecimal() and any(words[m.j : m.j + 1] and words[m.j].isdecimal() for m in others)
    says = says or figured or after.endswith("-0")  # 'FDS: index 30, middle 100'; 'Epi: middle 6-0, little none'
    says = says or (counted and any(m.kind == "strandword" for m in within(page.mentions, j, j + 4)))
    return words[i - 1] in (",", ";", ":", "and", "but", "while") and (says or after in _SAYS_AFTER)


def _both_known(page: Page, first: Mention, second: Mention) -> bool:
    """'Gap: long 1 mm, little none': two short names side by side, of fingers the note names in full elsewhere."""
    if second.kind != "digit?" or second.value == first.value:
        return False
    return all(any(m.kind == "digit" and m.value == v for m in page.mentions) for v in (first.value, second.value))


def _result_in(page: Page, mention: Mention) -> bool:
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
_VERBS = ("was", "were", "is", "had")
_DAYS = frozenset(["d1", "d2", "d3", "d4", "d5"])
_SINCE = frozenset(
    ["from", "by", "until", "till", "start", "starts", "starting", "begin", "begins", "beginning", "since"]
)
_OF_JOINTS = frozenset(["tenodesis", "arthrodesis", "fusion"])
_SHORT_NAMES = frozenset(["long", "middle", "little", "small"])
_ZONE_SHORT = re.compile(r"z[1-5][a-d]?")
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
_RAN = frozenset(
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
_KNOTS = frozenset(["knot", "knots", "knotted", "tied", "lump", "bulge", "gap", "bulky"])
_NEXT = frozenset(["now", "next", "then", "first", "lastly", "finally", "second", "third", "last"])
_TURNS_TO = frozenset(["this", "the", "its", "both", "only", "i", "we", "no", "a", "an", "it", "there", "one"])
_DONE_AFTER = frozenset(["with", "was", "had", "got", "received", "took", "by", "has", "is"])
_SAYS_AFTER = word_list("bearing", "says_after")


_RINGS_WORN = frozenset(["glove", "rubber", "silicone", "wedding", "signet", "tourniquet", "gold", "o", "elastic"])


def _among_joints(page: Page, k: int) -> bool:
    """Tell whether the finger joints at the knuckles stand right before word k, with their figure."""
    return any(m.kind == "joint" and m.value == "mcp" for m in within(page.mentions, max(0, k - 6), k))


def _no_digit(page: Page, mention: Mention) -> bool:
    word = page.words[mention.i]
    after = page.words[mention.j] if mention.j < len(page.words) else ""
    before = page.words[mention.i - 1] if mention.i else ""
    if word == "third" and before in ("distal", "proximal", "radial", "ulnar", "central", "one", "dist", "prox", "by"):
        return True  # 'vented distal third, ring intact'
    if mention.j - mention.i == 1 and word == "ring":
        if before in _RINGS_WORN:
            return True  # 'Finger tourniquet: glove ring, 31 min'
        if before in _NEXT and after == "the" and mention.j + 1 in page.tendon_words:
            return False  # 'then ring the FDP was cut'
        if after in _NO_DIGIT_WORDS_2 and page.raw(mention.i, mention.j)[0] == "r":
            return before not in _NO_DIGIT_WORDS_3
        return after in _NO_DIGIT_WORDS_4 and before not in ("index", "middle", "l", "r")
    if page.raw(mention.i, mention.j).lower() == "small fingers":
        return before not in _NO_DIGIT_WORDS
    if word == "if" and before in (",", "/", ";") and _among_joints(page, mention.i):
        return True  # 'wrist 20 of flexion, MCF 70, IF in extension 0'
    if word in ("thumb", "forefinger", "index") and _of_the_surgeon(page, mention.i):
        return True
    if word != "thumb" and met_by_thumb(page, mention.i, mention.j):
        return True  # 'so that tip meets index'
    if mention.j - mention.i == 1 and word in _DAYS and before in _SINCE:
        return True  # 'place and hold from d4'
    if mention.j - mention.i == 1 and word == "index":
        return after in ("procedure", "operation", "surgery", "case", "of", "repair") and after != "repair"
    return (
        mention.j - mention.i == 1
        and word == "fifth"
        and (before == "a" or after in ("of", "week", "day", "postoperative"))
    )


def _of_the_surgeon(page: Page, k: int) -> bool:
    """'I moulded it between finger and thumb', 'rolled between my thumb and forefinger': the surgeon's own."""
    lead = [w for w in page.words[max(0, k - _BETWEEN) : k] if w not in ("my", "the", "own", "index")]
    first = lead[-1:] == ["between"] and page.words[k + 1 : k + 2] == ["and"]
    second = lead[-3:-2] == ["between"] and lead[-2] in _OF_A_HAND and lead[-1:] == ["and"]
    return (first or second) and not _HELD.isdisjoint(page.words[max(0, k - _HELD_NEAR) : k])


_BETWEEN = 6  # words
_HELD_NEAR = 10  # words
_OF_A_HAND = frozenset(["finger", "fingers", "forefinger", "thumb"])
_HELD = word_list("bearing", "moulded")


def _chained(page: Page, mention: Mention) -> bool:
    """Tell whether a word such as 'second' or 'little' leads on to fingers or to another digit."""
    words, k = page.words, mention.j
    steps = 0
    while k < len(words) and steps < 8:
        if words[k] in _PLURALS or (k in page.tendon_words and steps):
            return True
        if k in page.digit_words and (steps or words[mention.i] == "middle"):
            return True
        if words[k] not in _CHAIN and k not in page.maybe_digit_words and words[k] != "(":
            break
        k += 1
        steps += 1
    before = mention.i - 1
    while before >= 0 and words[before] in _CHAIN and mention.i - before < 3:
        before -= 1
    return before >= 0 and mention.i - before > 1 and before in page.digit_words and words[mention.i] != "second"


def _beside_tendon(page: Page, mention: Mention) -> bool:
    if mention.j in page.tendon_words:
        return True
    back = mention.i - 1
    while back >= 0 and page.words[back] in _BESIDE_TENDON_WORDS:
        back -= 1
    ordinal = page.words[mention.i] in ("second", "2nd", "third", "3rd", "fourth", "4th")
    near = back >= 0 and back in page.tendon_words and not ordinal
    return near and (mention.i - back < 4)


def _ordinal_again(page: Page, mention: Mention) -> bool:
    """'The deep flexor of the fourth', 'Fourth: no gap' where the fourth ray or finger is named elsewhere."""
    words = page.words
    if words[mention.i] not in _ORDINALS or (words[mention.j : mention.j + 1] or [""])[0] in _COUNTED:
        return False
    called = (m for m in page.mentions if m.kind == "digit" and m.value == mention.value and m.i != mention.i)
    if not any(words[m.i] in _ORDINALS or words[m.j - 1] in _BY_RANK for m in called):
        return False
    led = words[max(0, mention.i - 2) : mention.i]
    heads = words[mention.j : mention.j + 1] == [":"] or _told_by_rank(page, mention)
    return heads or (led[-1:] == ["the"] and (led[0] in _SPOKEN_OF or words[mention.i] not in ("second", "third")))


def _told_by_rank(page: Page, mention: Mention) -> bool:
    """'5th A2 repaired', 'UDN 5th cut', 'FDS: 4th intact / 5th transected': a rank beside what is told of it."""
    if page.words[mention.i] in ("second", "third"):
        return False  # 'at the second A2 was seen'
    behind = {m.kind for m in within(page.mentions, mention.j, mention.j + 1) if m.i == mention.j}
    before = {m.kind for m in within(page.mentions, mention.i - 3, mention.i) if m.j == mention.i}
    parted = page.words[mention.i - 1] in (":", "/", ";")
    if _bracketed_ranks(page, mention):
        return True
    return "pulley" in behind or bool(before & {"sided", "anynerve"}) or (parted and "extent" in behind)


def _bracketed_ranks(page: Page, mention: Mention) -> bool:
    """'Zone: II (4th and 5th)': brackets that hold nothing but ranks."""
    i, j, words = mention.i, mention.j, page.words
    while i > 0 and words[i - 1] in _RANKS:
        i -= 1
    while j < len(words) and words[j] in _RANKS:
        j += 1
    return words[i - 1 : i] == ["("] and words[j : j + 1] == [")"]


_RANKS = _ORDINALS | {"and", ",", "&", "+", "/"}


def _ordinal_title(page: Page, mention: Mention) -> bool:
    """'Fourth (annular)     Fifth': ordinals that fill cells beside each other, the titles of a grid by finger."""
    return _fills_cell(page, mention) and any(
        m.i != mention.i and _fills_cell(page, m) and not any(b >= Break.LINE for b in page.breaks[low + 1 : high + 1])
        for m in within(page.mentions, mention.i - _ACROSS, mention.j + _ACROSS)
        for low, high in [sorted((m.i, mention.i))]
    )


_ACROSS = 12  # words


def _fills_cell(page: Page, m: Mention) -> bool:
    """Tell whether an ordinal is all of a cell, but for a remark in brackets."""
    if m.kind not in ("digit", "digit?") or page.words[m.i] not in _ORDINALS or page.breaks[m.i] < Break.COLUMN:
        return False
    k = m.j
    if page.words[k : k + 1] == ["("] and ")" in page.words[k : k + 4]:
        k = page.words.index(")", k) + 1
    return k >= len(page.words) or page.breaks[k] >= Break.COLUMN


def _counts_digits(page: Page, mention: Mention) -> bool:
    """'DIGIT 2: SMALL', 'Finger 1 - ring': the number is that of the form's part, the finger is named behind it."""
    words, j = page.words, mention.j
    if mention.j - mention.i < 2 or words[mention.i] not in _PLURALS or not words[j - 1].isdecimal():
        return False
    named = [m for m in within(page.mentions, j + 1, j + 3) if m.kind in ("digit", "digit?")]
    line = j + 1 < len(words) and page.breaks[j + 1] < Break.LINE
    return line and words[j] in _PARTED and bool(named)


def _of_a_side(page: Page, mention: Mention, after: str) -> bool:
    """'FDP of the left middle, cut through', 'on the right small the FDP was cut': a finger by its hand alone."""
    lead = page.words[max(0, mention.i - 3) : mention.i]
    told = after in _BEHIND_HAND or mention.j in page.tendon_words
    return told and lead[1:2] == ["the"] and lead[0] in _PLACES and lead[2] in _SIDES


_PLACES = frozenset(["of", "on", "in", "to", "for", "at"])
_BEHIND_HAND = frozenset(
    [",", ".", ";", ")", "the", "was", "were", "is", "had", "has", "got", "showed", "and", "where", "whose"]
)


def _labels(page: Page, mention: Mention) -> bool:
    """Tell whether the word stands alone as a label: 'LONG:', 'on the middle, ...'."""
    word = page.words[mention.i]
    after = page.words[mention.j] if mention.j < len(page.words) else ":"
    capitals = page.raw(mention.i, mention.j).isupper() and page.breaks[mention.i] >= Break.LINE
    if capitals and word in ("long", "middle", "little", "small") and (after == "zone" or _ZONE_SHORT.fullmatch(after)):
        return True  # 'SMALL z2:'
    zoned = page.words[mention.j + 1 : mention.j + 2] == ["zone"] and page.breaks[mention.i] >= Break.LINE
    if after == "(" and (capitals or zoned) and word in ("long", "middle", "little", "small"):
        return True  # 'MIDDLE (H.R.)'
    if after == ":" and page.words[mention.i - 1] in _SIDES and word in ("long", "middle", "little", "small"):
        return True  # 'Zone II right small: ...'
    if after in (".", ":") and word in ("long", "middle", "little", "small") and _in_capital_label(page, mention):
        return True
    if after == ":" and page.words[mention.i - 1] in ("pulleys", "pulley") and word in _SHORT_NAMES:
        return True  # 'Pulleys small: A2 intact'
    if after == "]" and page.words[mention.i - 1] == "[" and page.breaks[mention.i - 1] >= Break.LINE:
        return True  # '[small]   Profundus completely divided ...'
    if after == ")" and page.words[mention.i - 1] in _SIDES and word in ("long", "middle", "little", "small"):
        return True  # '(RIGHT SMALL)'
    opened = (
        (".", "-", "*", "|", ">", ";", "(", ")", "]", ":", ",") if after == ":" else (".", "-", "*", "|", ">", ";", "(")
    )
    at_start = page.breaks[mention.i] >= Break.COLUMN or (mention.i > 0 and page.words[mention.i - 1] in opened)
    sided = page.words[mention.i - 1 : mention.i] and page.words[mention.i - 1] in (
        "l",
        "r",
        "left",
        "right",
        "lt",
        "rt",
    )
    at_start = at_start or (
        page.words[mention.i - 1] == "#" and page.breaks[mention.i - 2] >= Break.LINE
    )  # '## MIDDLE'
    at_start = at_start or (bool(sided) and page.breaks[mention.i - 1] >= Break.LINE)  # 'L little - FDP off P3'
    ticked = page.words[mention.i - 1 : mention.i] in (["]"], [")"]) and page.words[mention.i - 2] in ("x", "v", "y")
    at_start = at_start or ticked or _after_side(page, mention)
    if word in ("long", "middle", "little", "small") and (_heads_line(page, mention) or _listed_under(page, mention)):
        return True
    if word in _SHORT_NAMES and at_start and _side_behind(page, mention.j):
        return True
    if word in _SHORT_NAMES and _of_a_side(page, mention, after):
        return True
    ends = mention.j >= len(page.words) or page.breaks[mention.j] >= Break.COLUMN
    if word == "mid":
        return at_start and after == ":"
    in_title = page.raw(mention.i, mention.j).isupper() and page.words[mention.i - 1] in ("/", "|", ",", "-")
    if word in _SHORT_NAMES and in_title and ends and "hand" in page.words[max(0, mention.i - 4) : mention.i]:
        return True  # '// L hand // MIDDLE'
    if word in _SHORT_NAMES and ends and _closes_capital_line(page, mention):
        return True
    if word in _SHORT_NAMES and page.words[mention.i - 1] in _OF_JOINTS and (ends or after in _ENDS or after == "("):
        return True  # 'FDP repair ring + DIP tenodesis little (day unit)'
    lead = page.words[max(0, mention.i - 2) : mention.i]
    if word == "small" and after == "one" and lead[-1:] == ["the"] and lead[0] in ("but", "except", "in", "of", "for"):
        return True  # 'in all fingers but the small one'
    left_out = lead[-1:] == ["the"] and lead[0] in _LEAVING_OUT
    if word in _SHORT_NAMES and left_out and after in (*_ENDS, *_VERBS, *_RAN):
        return named_as_digit(page, mention)  # 'in all but the small'
    if word in _SHORT_NAMES and _turns_to_tendon(page, mention.j):
        return named_as_digit(page, mention)
    if word in ("long", "middle", "little") and after == "one":
        return page.words[mention.j + 1 : mention.j + 2] not in (["of"], ["third"])
    if word in ("long", "middle", "little", "small") and after in ("same", "ditto", "likewise", "idem"):
        return page.words[mention.i - 1] in (".", ";", ",", "and") or at_start  # 'Ring: no gap. Small same.'
    if word in ("long", "middle", "little", "small"):
        if page.words[mention.i - 1] in (";", ".", ",") and after in ("slightly", "somewhat", "rather", "still"):
            return named_as_digit(page, mention)  # 'middle and ring free; small slightly tight under A2'
        compared = _likened(page, mention.i)
        if compared and (ends or after in _BEHIND_LIKENED):
            return named_as_digit(page, mention)
        if at_start and (after in _LABELS_WORDS_2 or ends):
            return True
        if word == "middle" and (at_start or (mention.i and page.words[mention.i - 1] in (".", ";"))):
            return after not in _LABELS_WORDS
        spoken = page.words[mention.i - 1 : mention.i] == ["the"] and page.words[mention.i - 2] in _SPOKEN_OF
        if page.words[mention.i - 1] == "the" and page.words[mention.i - 2] in _NEXT and after in (".", ":", ",", ";"):
            return True  # 'Now the MIDDLE.'
        if lead[-1:] == ["the"] and lead[0] in _WORKED_ON and after in _HOW:
            return named_as_digit(page, mention)
        if lead[-1:] == ["the"] and _told_as_finger(page, lead[0], after):
            return True
        if (
            lead[-1:] in (["and"], [","])
            and after in _OPENS_STATEMENT | _FINGERS_DO | {"only"}
            and _joined_to_finger(page, mention.i - 1)
        ):
            return named_as_digit(page, mention)  # 'In the middle and small a four-strand core was placed'
        if _opens_on_finger(page, mention):
            return True
        if lead[-1:] == ["the"] and (_counted_out(page, mention) or _in_parallel(page, mention)):
            return named_as_digit(page, mention)
        that_of = page.words[mention.i - 3 : mention.i - 1] in _THAT_OF
        said = lead[-1:] == ["the"] and (that_of or after in _FINGERS_ARE)
        if (
            word in ("small", "little")
            and lead[-1:] == ["the"]
            and lead[0] in _SPOKEN_OF
            and (ends or after in _LISTED_BY)
        ):
            return True  # 'No tension in the small.'
        said = said or (lead[-1:] == ["("] and after == ")") or (lead[-1:] == [":"] and (ends or after in _LISTED_BY))
        if said or (lead == ["only", "the"] and after not in _OF_A_MIDDLE):
            return named_as_digit(page, mention)
        if word == "middle" or spoken:
            if not named_as_digit(page, mention):
                return False  # 'a lump in the middle' where no middle finger is spoken of
            if spoken and after in _TURNS_TO and page.words[mention.i - 2] not in ("of", "from"):
                return True  # 'In the little the FDP took four strands'
            before = page.words[mention.i - 1] if mention.i else ""
            return before in _LABELS_WORDS_3 and after in _LABELS_WORDS_4
    return False


_LEAVING_OUT = frozenset(["but", "except", "bar", "barring", "save", "excepting", "excluding"])


def _closes_capital_line(page: Page, mention: Mention) -> bool:
    """'CARD 2, SMALL', 'PART B - MIDDLE' alone on a line of capitals: the finger that the part is about."""
    first = mention.i
    while first > 0 and page.breaks[first] < Break.LINE:
        first -= 1
    headed = 1 < mention.j - first <= _LONGEST_HEAD and page.words[mention.i - 1] in (",", "-", ":", "=", "/")
    return headed and page.raw(first, mention.j).isupper() and _named_with_others(page, mention)


_LONGEST_HEAD = 6  # words


def _named_with_others(page: Page, mention: Mention) -> bool:
    """Tell whether a note that names this finger by a short name names another beyond doubt."""
    return any(m.kind == "digit" and m.value != mention.value for m in page.mentions)


def _turns_to_tendon(page: Page, k: int) -> bool:
    """'So middle first FDP cut across', 'by hand middle no gap ring opened up': spoken without stops."""
    if page.words[k : k + 2] == ["no", "gap"]:
        return True
    return page.words[k : k + 1] == ["first"] and any(m.kind == "tendon" for m in within(page.mentions, k + 1, k + 2))


def _told_as_finger(page: Page, lead: str, after: str) -> bool:
    """'The index held whereas the middle gapped', 'for the middle it was grasping': beside another finger, a finger."""
    does = after in _FINGERS_DO or (lead in ("for", "at") and after in ("it", ":", ","))
    return does and any(m.kind == "digit" for m in page.mentions)


def _opens_on_finger(page: Page, mention: Mention) -> bool:
    """'In the middle the FDP was cut', 'In small both flexors were whole': a statement that opens on its finger."""
    i, j = mention.i, mention.j
    lead = i - (page.words[i - 1 : i] == ["the"]) - 1
    opens = page.words[lead : lead + 1] == ["in"] and (lead <= 0 or page.words[lead - 1] in (".", ";"))
    if not opens or page.words[j : j + 1] not in (["the"], ["both"]):
        return False
    if page.words[j + 1 : j + 2] in (["ulnar"], ["radial"], ["digital"], ["nerves"]):
        return named_as_digit(page, mention)  # 'FDS fine in index; in middle the ulnar digital nerve was divided'
    return j + 1 in page.tendon_words or page.words[j + 1 : j + 2] in (["flexors"], ["tendons"])


def _joined_to_finger(page: Page, k: int) -> bool:
    """Tell whether a finger's name stands right before word k: 'middle and', 'ring,'."""
    return any(m.kind in ("digit", "digit?") and m.j == k for m in within(page.mentions, k - 2, k))


def _counted_out(page: Page, mention: Mention) -> bool:
    """'The index got four strands and the middle six': a count alone behind a name, as behind the finger before."""
    behind = page.words[mention.j : mention.j + 2]
    listed = page.words[mention.i - 2] in (",", ";", "and", "but")
    return listed and behind[:1] != [] and behind[0] in _COUNTS and behind[1:] in ([], ["."], [","], [";"])


def _in_parallel(page: Page, mention: Mention) -> bool:
    """'Inside in the middle and outside in the small', 'the index showed no gap, the small a gap of 1 mm'.

    A short name that is led up to like the name of another finger across a comma or an 'and'.
    """
    lead, after = page.words[mention.i - 2 : mention.i], page.words[mention.j : mention.j + 1]
    beside = [m for m in within(page.mentions, mention.i - _AWAY, mention.j + _AWAY) if m.kind in ("digit", "digit?")]
    others = [m for m in beside if m.value != mention.value and m.i != mention.i]
    if lead[:1] != [] and lead[0] in _PLACED_IN and after not in _OF_ITS_PART:
        return any(page.words[m.i - 2 : m.i] == lead and _parted(page, m, mention) for m in others)
    if lead[:1] != [] and lead[0] in _PARTING and after != [] and after[0] in _TELLS:
        return any(page.words[m.i - 1] == "the" and m.i < mention.i and _parted(page, m, mention) for m in others)
    return False


def _parted(page: Page, one: Mention, other: Mention) -> bool:
    """Tell whether a comma or an 'and' parts two names within one sentence."""
    first, second = sorted((one, other), key=lambda m: m.i)
    between = page.words[first.j : second.i]
    return "." not in between and not _PARTING.isdisjoint(between)


_AWAY = 16  # words
_PLACED_IN = frozenset(["in", "on", "for"])
_PARTING = frozenset([",", ";", "and", "but", "while", "whereas"])
_OF_ITS_PART = (["of"], ["third"], ["part"], ["phalanx"], ["portion"], ["joint"], ["one"], ["finger"])
_TELLS = frozenset(["a", "an", "no", "none", "1", "2", "3", "one", "two", "under", "without"])
_COUNTS = frozenset(["two", "four", "six", "eight", "2", "4", "6", "8"])
_OPENS_STATEMENT = frozenset(["a", "an", "the", "this", "there", "two", "four", "six", "eight", "it", "i", "we"])
_FINGERS_DO = frozenset(
    [
        "held",
        "gapped",
        "had",
        "got",
        "received",
        "took",
        "ran",
        "caught",
        "glided",
        "needed",
        "went",
        "snagged",
        "moved",
        "slid",
        "showed",
    ]
)


# What a finger named elsewhere is or does: 'Only the small was under tension', 'the middle ran freely'.
_FINGERS_ARE = frozenset(
    ["was", "is", "showed", "shows", "ran", "runs", "glides", "catches", "did", "has", "only", "alone", "repair", "fdp"]
)
_LISTED_BY = frozenset([".", ",", ";", "and"])  # 'A2 vented: small. A2 intact: index.'
_THAT_OF = (["that", "of"], ["those", "of"])
_OF_A_MIDDLE = frozenset(["third", "part", "segment", "slip", "portion", "bit", "one", "amount", "wound", "of"])


def _in_capital_label(page: Page, mention: Mention) -> bool:
    """'REPAIR LITTLE.' in capitals heads what follows."""
    k = mention.i - 1
    if k < 0 or page.words[k] not in ("repair", "found", "findings", "finger", "exploration"):
        return False
    return page.raw(k, mention.j).isupper()


def _after_side(page: Page, mention: Mention) -> bool:
    """'2. R little.', 'L little - FDP off the bone': a side at the start of a line or an item."""
    k = mention.i - 1
    if k < 0 or page.words[k] not in _SIDES:
        return False
    return page.breaks[k] >= Break.COLUMN or page.words[k - 1] in (".", ")", ":", ";", "-", ",", "|")


def _side_behind(page: Page, k: int) -> bool:
    """'Small L. FDP severed', 'Little R: FDP cut through', 'Long left, FDP ...': a side behind the name and a stop."""
    return page.words[k : k + 1] != [] and page.words[k] in _SIDES and page.words[k + 1 : k + 2] in _SIDE_STOPS


_SIDE_STOPS: tuple[list[str], ...] = ([], ["."], [":"], [","], [";"], ["-"])


def _heads_line(page: Page, mention: Mention) -> bool:
    """'1) Middle. FDP ...', '[2] Small (left): ...', 'MIDDLE zone II - ...': a line's head, behind its bullet."""
    k = mention.i
    while k > 0 and page.breaks[k] < Break.LINE and _is_bullet(page.words[k - 1]):
        k -= 1
    if page.breaks[k] < Break.LINE:
        return False
    j = mention.j
    if (page.words[mention.i - 1], *page.words[j : j + 1]) in _BRACKETS:
        j += 1  # 'Findings (small): ...', '{Middle} ...'
        if j >= len(page.words) or page.words[j - 1] == "}":
            return True
    while page.words[j : j + 1] == ["("] and ")" in page.words[j : j + 6]:
        close = page.words.index(")", j)
        if not _IN_BRACKETS.issuperset(w for w in page.words[j + 1 : close] if not w.isdecimal()):
            break
        j = close + 1
    if page.words[j : j + 1] == ["zone"] and page.words[j + 1 : j + 2] != []:
        j += 2
    if j >= len(page.words) or page.breaks[j] >= Break.COLUMN or page.words[j].startswith(".."):
        return True
    return page.words[j] in _HEAD_ENDS


def _listed_under(page: Page, mention: Mention) -> bool:
    """'FDP: middle - cut through, small - divided': under the label of a tendon."""
    k = mention.i - 1
    if page.words[mention.j : mention.j + 1] not in (["-"], [":"]) or page.words[k] not in (":", ",", ";"):
        return False
    while k > 0 and page.breaks[k] < Break.LINE and page.words[k] != ".":
        k -= 1
    first = k + (page.words[k] == ".")
    return any(m.i == first and page.words[m.j : m.j + 1] == [":"] for m in page.mentions if m.kind == "tendon")


def _is_bullet(word: str) -> bool:
    sign = len(word) == 1 and not word.isalnum()
    return sign or word in _BULLETS or word.isdecimal() or _NUMERAL.fullmatch(word) is not None


# 'We did the small in the same fashion', of a finger named elsewhere.
_WORKED_ON = frozenset(["did", "repaired", "sutured", "sewed", "fixed", "treated", "handled", "dealt"])
_HOW = frozenset(
    ["in", "the", "likewise", "similarly", "identically", "just", "exactly", "same", "with", ".", ",", "too"]
)


def _likened(page: Page, i: int) -> bool:
    """'as small', 'like the middle', 'the same as for the ring': what a finger is likened to."""
    lead = [w for w in page.words[max(0, i - 4) : i] if w not in ("the", "for", "in", "on")]
    return lead[-1:] in (["as"], ["like"], ["see"])


_BEHIND_LIKENED = frozenset(["|", ".", ";", ",", "but", "except", "minus", "less", "using", "without", "(", "with"])
_TITLES = frozenset(["findings", "finding", "found", "repair", "procedure", "details", "exploration", "injury"])
_NUMERAL = re.compile(r"[ivx]+|[a-h]|\d+\.\d+")
_BULLETS = _SIDES | frozenset(["hand", "no", "nr", "finger", "digit", "re", "for", "the", "now"]) | _TITLES
_BRACKETS = (("(", ")"), ("{", "}"), ("<", ">"))
_IN_BRACKETS = _SIDES | frozenset(["hand", "zone", "i", "ii", "iii", "iv", "v"])
_HEAD_ENDS = frozenset([":", "-", "|", "=", ">", ".", ";", ",", "/", "*"])


def index_words(page: Page) -> None:
    """Note on the Page which words belong to digits, possible digits and tendons."""
    found: dict[str, set[int]] = {"digit": set(), "digit?": set(), "tendon": set()}
    for m in page.mentions:
        if m.kind in found:
            found[m.kind].update(range(m.i, m.j))
    page.digit_words, page.maybe_digit_words, page.tendon_words = found.values()
