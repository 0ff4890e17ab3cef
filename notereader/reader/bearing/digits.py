"""Which words name a digit: 'little' beside a tendon, 'FDP 4', a ticked letter; and which only seem to."""

from notereader.reader.bearing.bare_names import stands_as_noun
from notereader.reader.bearing.digit_labels import NEXT, SPOKEN_OF, in_parallel, is_label
from notereader.reader.bearing.digit_numbers import PLURALS, number_digits
from notereader.reader.bearing.digit_runs import in_a_run, told_in_turn
from notereader.reader.bearing.digits_among_others import is_told_among_others, result_in
from notereader.reader.bearing.listed_fingers import listed_beside_tendon
from notereader.reader.bearing.met_fingers import met_by_thumb
from notereader.reader.bearing.neighbour_sides import settle_neighbour_sides
from notereader.reader.bearing.pulley_digits import finger_of_pulley, part_of_pulley
from notereader.reader.layout.form_marks import TickedField
from notereader.reader.page import Break, Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_NO_DIGIT_WORDS = word_list("bearing", "no_digit_words")
_NO_DIGIT_WORDS_2 = word_list("bearing", "no_digit_words_2")
_NO_DIGIT_WORDS_3 = word_list("bearing", "no_digit_words_3")
_NO_DIGIT_WORDS_4 = word_list("bearing", "no_digit_words_4")
_BESIDE_TENDON_WORDS = word_list("bearing", "beside_tendon_words")
_CHAIN = word_list("bearing", "chain")
_ORDINALS = frozenset(["second", "2nd", "third", "3rd", "fourth", "4th", "fifth", "5th"])
_BY_RANK = frozenset(["ray", "rays", "2", "3", "4", "5", "ii", "iii", "iv", "v"])
# What an ordinal may count other than fingers.
_COUNTED = word_list("bearing", "counted")
_PARTED = frozenset([":", "-", "=", ")", "("])


def settle_digits(page: Page) -> None:
    """Add the digits told by numbers and drop the words that name none; index the words of digits and tendons."""
    settle_neighbour_sides(page)
    index_words(page)
    _name_parts(page)
    number_digits(page)
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


def _unconfirmed(page: Page, mention: Mention, under_heading: bool) -> bool:
    """Tell whether a word that may name a digit does not do so here; one confirmed becomes a digit.

    `under_heading`: it stands under a heading for the digit, or right before the options of a form.
    """
    if mention.kind == "digit":
        return _no_digit(page, mention) or _counts_digits(page, mention)
    if not under_heading and not _names_digit(page, mention):
        return True
    mention.kind = "digit"
    return False


def _names_digit(page: Page, mention: Mention) -> bool:
    """Tell whether a word such as 'middle' or 'fourth' names a finger, by what stands around it."""
    if _knot_in_the_middle(page, mention) or part_of_pulley(page, mention) or _of_its_smallness(page, mention):
        return False
    if _ends_range(page, mention) or _chained(page, mention) or _beside_tendon(page, mention):
        return True
    if is_label(page, mention) or is_told_among_others(page, mention) or _in_row_of_tendon(page, mention):
        return True
    if in_a_run(page, mention) or told_in_turn(page, mention) or finger_of_pulley(page, mention):
        return True
    if _likened_to(page, mention) or _singled_out(page, mention) or _behind_number_of_part(page, mention):
        return True
    return (
        listed_beside_tendon(page, mention)
        or _ordinal_again(page, mention)
        or _ordinal_title(page, mention)
        or stands_as_noun(page, mention)
    )


def _knot_in_the_middle(page: Page, mention: Mention) -> bool:
    """'The knot lay in the middle': a place, but 'a knot was felt in the middle but not in the ring' is a finger."""
    i, j = mention.i, mention.j
    if page.words[i - 2 : j] != ["in", "the", "middle"] or page.words[i - 3 : i - 2] == ["except"]:
        return False
    if j in page.tendon_words or page.words[j : j + 2] == ["but", "not"]:
        return False
    if result_in(page, mention) or in_parallel(page, mention):
        return False
    return not _KNOTS.isdisjoint(page.words[i - 7 : i])


def _behind_number_of_part(page: Page, mention: Mention) -> bool:
    """'FINGER 2: middle': behind the number that a form gives its part."""
    before = page.words[max(0, mention.i - 3) : mention.i]
    return len(before) == 3 and before[0] in PLURALS and before[1].isdecimal() and before[2] in _PARTED


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


_DAYS = frozenset(["d1", "d2", "d3", "d4", "d5"])
_SINCE = frozenset(
    ["from", "by", "until", "till", "start", "starts", "starting", "begin", "begins", "beginning", "since"]
)
_KNOTS = frozenset(["knot", "knots", "knotted", "tied", "lump", "bulge", "gap", "bulky"])


_RINGS_WORN = frozenset(["glove", "rubber", "silicone", "wedding", "signet", "tourniquet", "gold", "o", "elastic"])


def _among_joints(page: Page, k: int) -> bool:
    """Tell whether the finger joints at the knuckles stand right before word k, with their figure."""
    return any(m.kind == "joint" and m.value == "mcp" for m in within(page.mentions, max(0, k - 6), k))


def _no_digit(page: Page, mention: Mention) -> bool:
    word = page.words[mention.i]
    ends = mention.j >= len(page.words) or _a_line_begins(page, mention.j)
    after = "" if ends else page.words[mention.j]
    before = page.words[mention.i - 1] if mention.i else ""
    if word == "third" and before in ("distal", "proximal", "radial", "ulnar", "central", "one", "dist", "prox", "by"):
        return True  # 'vented distal third, ring intact'
    if mention.j - mention.i == 1 and word == "ring":
        if before in _RINGS_WORN or before == "a":
            return True  # 'Finger tourniquet: glove ring, 31 min', 'A2 still holds as a ring'
        if before in NEXT and after == "the" and mention.j + 1 in page.tendon_words:
            return False  # 'then ring the FDP was cut'
        if after in _NO_DIGIT_WORDS_2 and page.raw(mention.i, mention.j)[0] == "r":
            return before not in _NO_DIGIT_WORDS_3
        if after == "-" and mention.j + 1 < len(page.words):
            after = page.words[mention.j + 1]  # 'ring-band A2 was preserved'
        return after in _NO_DIGIT_WORDS_4 and before not in ("index", "middle", "l", "r")
    if page.raw(mention.i, mention.j).lower() == "small fingers":
        return before not in _NO_DIGIT_WORDS
    if word == "if" and before in (",", "/", ";") and _among_joints(page, mention.i):
        return True  # 'wrist 20 of flexion, MCF 70, IF in extension 0'
    if "to" in page.words[max(0, mention.i - 2) : mention.i] and _is_buddy(page, mention.i):
        return True
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


def _a_line_begins(page: Page, k: int) -> bool:
    """'Finger 2: ring', then 'The profundus was cut' on a line of its own."""
    return page.breaks[k] >= Break.LINE and page.text[page.starts[k]].isupper()


def _is_buddy(page: Page, k: int) -> bool:
    """'Buddy to MF', 'buddy-strapped to the middle': the sound finger that the repaired one is strapped to."""
    lead = page.words[max(0, k - _BETWEEN) : k]
    return "buddy" in lead and "." not in lead[lead.index("buddy") :]


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
        if words[k] in PLURALS or (k in page.tendon_words and steps):
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
    lone = (
        back > 0 and page.words[back] in _LONE and page.words[back + 1] == "of"
    )  # 'the profundus alone of the middle'
    back -= lone
    ordinal = page.words[mention.i] in ("second", "2nd", "third", "3rd", "fourth", "4th")
    near = back >= 0 and back in page.tendon_words and not ordinal
    return near and (mention.i - back < 4 + lone)


_LONE = frozenset(["alone", "only", "itself"])


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
    return heads or (led[-1:] == ["the"] and (led[0] in SPOKEN_OF or words[mention.i] not in ("second", "third")))


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
    if mention.j - mention.i < 2 or words[mention.i] not in PLURALS or not words[j - 1].isdecimal():
        return False
    named = [m for m in within(page.mentions, j + 1, j + 3) if m.kind in ("digit", "digit?")]
    line = j + 1 < len(words) and page.breaks[j + 1] < Break.LINE
    return line and words[j] in _PARTED and bool(named)


def index_words(page: Page) -> None:
    """Note on the Page which words belong to digits, possible digits and tendons."""
    found: dict[str, set[int]] = {"digit": set(), "digit?": set(), "tendon": set()}
    for m in page.mentions:
        if m.kind in found:
            found[m.kind].update(range(m.i, m.j))
    page.digit_words, page.maybe_digit_words, page.tendon_words = found.values()
