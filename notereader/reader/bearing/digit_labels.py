"""Short names of fingers that stand alone as a label: 'LONG:', 'Small L. FDP severed', 'in all but the small'."""

import re
from typing import NamedTuple

from notereader.reader.bearing.digit_numbers import SIDES
from notereader.reader.bearing.digits_among_others import RAN, SHORT_NAMES
from notereader.reader.bearing.pulley_digits import named_as_digit
from notereader.reader.page import Break, Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_LABELS_WORDS = word_list("bearing", "labels_words")
_LABELS_WORDS_2 = word_list("bearing", "labels_words_2")
_LABELS_WORDS_3 = word_list("bearing", "labels_words_3")
_LABELS_WORDS_4 = word_list("bearing", "labels_words_4")
NEXT = frozenset(["now", "next", "then", "first", "lastly", "finally", "second", "third", "last"])
SPOKEN_OF = frozenset(["of", "in", "for", "on", "to", "from", "let"])
_ENDS = (".", ",", ";", ")")
_VERBS = ("was", "were", "is", "had")
_OF_JOINTS = frozenset(["tenodesis", "arthrodesis", "fusion"])
_ZONE_SHORT = re.compile(r"z[1-5][a-d]?")
_LONG_OR_SHORT = frozenset(["vincula", "vinculum"])  # 'Vincula   long: kept   short: torn'
_TURNS_TO = frozenset(["this", "the", "its", "both", "only", "i", "we", "no", "a", "an", "it", "there", "one"])


class _ShortName(NamedTuple):
    """A short name as it stands: 'middle' or the like, with the words around it."""

    page: Page
    mention: Mention
    lead: list[str]  # the two words before it
    before: str
    after: str  # ':' where the note ends
    starts: bool  # opens a line, a cell or an item
    ends: bool  # ends a line or a cell

    @property
    def word(self) -> str:
        """Return the name itself."""
        return self.page.words[self.mention.i]

    @property
    def of_the(self) -> str:
        """Return the word in front of 'the middle', '' where no 'the' leads up to it."""
        return self.lead[0] if self.lead[-1:] == ["the"] else ""


def is_label(page: Page, mention: Mention) -> bool:
    """Tell whether the word stands alone as a label: 'LONG:', 'on the middle, ...'."""
    words, i, j = page.words, mention.i, mention.j
    after = words[j] if j < len(words) else ":"
    if after == "]" and words[i - 1] == "[" and page.breaks[i - 1] >= Break.LINE:
        return True  # '[small]   Profundus completely divided ...'
    if words[i] == "mid":
        return after == ":" and _starts(page, mention, after)
    if words[i] not in SHORT_NAMES or words[i - 1] in _LONG_OR_SHORT:
        return False
    ends = j >= len(words) or page.breaks[j] >= Break.COLUMN
    lead, starts = words[max(0, i - 2) : i], _starts(page, mention, after)
    name = _ShortName(page, mention, lead, words[i - 1], after, starts, ends)
    if _heads_what_follows(name) or _has_its_side(name) or _is_the_one(name):
        return True
    for says in (_says_left_out, _says_one_or_same, _says_likened, _says_opening, _says_worked_on, _says_told):
        said = says(name)
        if said is not None:
            return said
    return _is_no_place(name)


def _starts(page: Page, mention: Mention, after: str) -> bool:
    """Tell whether a name opens a line, a cell or an item, its mark or its side before it."""
    words, i = page.words, mention.i
    if page.breaks[i] >= Break.COLUMN:
        return True
    if i > 0 and words[i - 1] in (_OPENING_LABELS if after == ":" else _OPENING):
        return True
    if words[i - 1] == "#" and page.breaks[i - 2] >= Break.LINE:
        return True  # '## MIDDLE'
    if i > 0 and words[i - 1] in _SIDES_IN_SHORT and page.breaks[i - 1] >= Break.LINE:
        return True  # 'L little - FDP off P3'
    ticked = words[i - 1 : i] in (["]"], [")"]) and words[i - 2] in ("x", "v", "y")
    return ticked or _after_side(page, mention)


_OPENING = frozenset([".", "-", "*", "|", ">", ";", "("])
_OPENING_LABELS = _OPENING | {")", "]", ":", ","}
_SIDES_IN_SHORT = SIDES | {"lt", "rt"}


def _heads_what_follows(name: _ShortName) -> bool:
    """Tell whether a name heads a line, a title or a part: 'SMALL z2:', 'MIDDLE (H.R.)', '// L hand // MIDDLE'."""
    page, i, j, after = name.page, name.mention.i, name.mention.j, name.after
    capitals = page.raw(i, j).isupper()
    if page.breaks[i] >= Break.LINE:
        if capitals and (after == "zone" or _ZONE_SHORT.fullmatch(after)):
            return True  # 'SMALL z2:'
        if after == "(" and (capitals or page.words[j + 1 : j + 2] == ["zone"]):
            return True  # 'MIDDLE (H.R.)'
    if after in (".", ":") and _in_capital_label(page, name.mention):
        return True
    if after == ":" and name.before in ("pulleys", "pulley"):
        return True  # 'Pulleys small: A2 intact'
    if _heads_line(page, name.mention) or _listed_under(page, name.mention):
        return True
    if not name.ends:
        return False
    in_title = capitals and name.before in ("/", "|", ",", "-")
    if in_title and "hand" in page.words[max(0, i - 4) : i]:
        return True  # '// L hand // MIDDLE'
    return _closes_capital_line(page, name.mention)


def _has_its_side(name: _ShortName) -> bool:
    """'Zone II right small: ...', '(RIGHT SMALL)', 'Small L. FDP severed': a finger told with its hand."""
    if name.after in (":", ")") and name.before in SIDES:
        return True
    if name.starts and _side_behind(name.page, name.mention.j):
        return True
    if name.ends and _answers_with_its_hand(name.page, name.mention.i):
        return True
    return _of_a_side(name.page, name.mention, name.after)


def _is_the_one(name: _ShortName) -> bool:
    """'FDP repair ring + DIP tenodesis little (day unit)', 'in all fingers but the small one'."""
    if name.before in _OF_JOINTS and (name.ends or name.after in _ENDS or name.after == "("):
        return True
    return name.word == "small" and name.after == "one" and name.of_the in ("but", "except", "in", "of", "for")


def _says_left_out(name: _ShortName) -> bool | None:
    """'In all but the small', 'so middle first FDP cut across': a finger, where the note names it so elsewhere."""
    left_out = name.of_the in _LEAVING_OUT and (name.after in _ENDS or name.after in _VERBS or name.after in RAN)
    if name.of_the == "but" and _all_but_of_four(name):
        return True
    if left_out and any(_is_of_four(name.page, m) for m in name.page.mentions):
        return True  # 'All four finger FDPs were repaired with four strands, except the small, where ...'
    if left_out or _turns_to_tendon(name.page, name.mention.j):
        return named_as_digit(name.page, name.mention)
    return None


def _all_but_of_four(name: _ShortName) -> bool:
    """'All four FDP cut, and all but the small repaired': a finger where the four flexors are told as four."""
    page, k = name.page, name.mention.i
    told = name.after in _VERBS or name.after in _SEWN
    return told and page.words[k - 3] == "all" and any(_is_of_four(page, m) for m in page.mentions)


def _is_of_four(page: Page, mention: Mention) -> bool:
    lead = page.words[max(0, mention.i - 3) : mention.i]
    lead = lead[:-1] if lead[-1:] != [] and lead[-1] in _FINGERS else lead
    return mention.kind == "tendon" and lead[-1:] == ["four"]


_FINGERS = frozenset(["finger", "fingers"])
_SEWN = frozenset(["repaired", "sewn", "sutured", "got", "received", "given", "cut", "divided"])


def _says_one_or_same(name: _ShortName) -> bool | None:
    """'The long one', but not 'the middle one of three'; 'Ring: no gap. Small same.'."""
    if name.word != "small" and name.after == "one":
        return name.page.words[name.mention.j + 1 : name.mention.j + 2] not in (["of"], ["third"])
    if name.after in ("same", "ditto", "likewise", "idem"):
        return name.before in (".", ";", ",", "and") or name.starts
    return None


def _says_likened(name: _ShortName) -> bool | None:
    """'Middle and ring free; small slightly tight under A2', 'as small': where the note names it so elsewhere."""
    slightly = name.before in (";", ".", ",") and name.after in ("slightly", "somewhat", "rather", "still")
    compared = _likened(name.page, name.mention.i) and (name.ends or name.after in _BEHIND_LIKENED)
    return named_as_digit(name.page, name.mention) if slightly or compared else None


def _says_opening(name: _ShortName) -> bool | None:
    """'Small FDP ...' at the head of a line, 'Now the MIDDLE.': a name that opens what is told of it."""
    if name.starts and (name.after in _LABELS_WORDS_2 or name.ends):
        return True
    if name.word == "middle" and (name.starts or (name.mention.i and name.before in (".", ";"))):
        return name.after not in _LABELS_WORDS
    if name.before == "the" and name.page.words[name.mention.i - 2] in NEXT and name.after in (".", ":", ",", ";"):
        return True  # 'Now the MIDDLE.'
    return None


def _says_worked_on(name: _ShortName) -> bool | None:
    """'We did the small in the same fashion', 'the index held whereas the middle gapped', 'in the middle and small'."""
    page, mention = name.page, name.mention
    if name.of_the in _WORKED_ON and name.after in _HOW:
        return named_as_digit(page, mention)
    if name.of_the and _told_as_finger(page, name.of_the, name.after):
        return True
    goes_on = name.after in _OPENS_STATEMENT or name.after in _FINGERS_DO or name.after == "only"
    if goes_on and name.lead[-1:] in (["and"], [","]) and _joined_to_finger(page, mention.i - 1):
        return named_as_digit(page, mention)  # 'In the middle and small a four-strand core was placed'
    return True if _opens_on_finger(page, mention) else None


def _says_told(name: _ShortName) -> bool | None:
    """'The index got four strands and the middle six', 'No tension in the small.', 'A2 vented: small.'."""
    page, mention, after = name.page, name.mention, name.after
    if name.of_the and (_counted_out(page, mention) or in_parallel(page, mention)):
        return named_as_digit(page, mention)
    listed = name.ends or after in _LISTED_BY
    if name.word in ("small", "little") and name.of_the in SPOKEN_OF and listed:
        return True  # 'No tension in the small.'
    that_of = page.words[mention.i - 3 : mention.i - 1] in _THAT_OF
    told = bool(name.of_the) and (that_of or after in _FINGERS_ARE)
    told = told or (name.lead[-1:] == ["("] and after == ")") or (name.lead[-1:] == [":"] and listed)
    if told or (name.of_the == "only" and after not in _OF_A_MIDDLE):
        return named_as_digit(page, mention)
    return None


def _is_no_place(name: _ShortName) -> bool:
    """'In the little the FDP took four strands', but not 'a lump in the middle' where no middle finger is spoken of."""
    page, mention = name.page, name.mention
    spoken = name.before == "the" and bool(mention.i) and page.words[mention.i - 2] in SPOKEN_OF
    if not (name.word == "middle" or spoken) or not named_as_digit(page, mention):
        return False
    if spoken and name.after in _TURNS_TO and page.words[mention.i - 2] not in ("of", "from"):
        return True  # 'In the little the FDP took four strands'
    before = name.before if mention.i else ""
    return before in _LABELS_WORDS_3 and name.after in _LABELS_WORDS_4


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
    begun = lead <= 0 or page.words[lead - 1] in _BEGINS or page.breaks[lead] >= Break.LINE
    if not begun or page.words[lead : lead + 1] not in (["in"], ["at"], ["on"]):
        return False
    behind = page.words[j : j + 2]
    if behind[:1] in (["i"], ["we"], ["no"]):
        return named_as_digit(page, mention)  # 'In the middle I could not place a peripheral suture'
    if behind[:1] not in (["the"], ["both"]):
        return False
    if behind[1:] in (["ulnar"], ["radial"], ["digital"], ["nerves"]) or _is_pulley(page, j + 1):
        return named_as_digit(page, mention)  # 'FDS fine in index; in middle the ulnar digital nerve was divided'
    return j + 1 in page.tendon_words or page.words[j + 1 : j + 2] in (["flexors"], ["tendons"])


def _is_pulley(page: Page, k: int) -> bool:
    return any(m.kind == "pulley" and m.i == k for m in within(page.mentions, k, k + 1))


_BEGINS = frozenset([".", ";", "whereas", "while", "but", "and"])


def _joined_to_finger(page: Page, k: int) -> bool:
    """Tell whether a finger's name stands right before word k: 'middle and', 'ring,'."""
    return any(m.kind in ("digit", "digit?") and m.j == k for m in within(page.mentions, k - 2, k))


def _counted_out(page: Page, mention: Mention) -> bool:
    """'The index got four strands and the middle six': a count alone behind a name, as behind the finger before."""
    behind = page.words[mention.j : mention.j + 2]
    listed = page.words[mention.i - 2] in (",", ";", "and", "but")
    return listed and behind[:1] != [] and behind[0] in _COUNTS and behind[1:] in ([], ["."], [","], [";"])


def in_parallel(page: Page, mention: Mention) -> bool:
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


def _of_a_side(page: Page, mention: Mention, after: str) -> bool:
    """'FDP of the left middle, cut through', 'on the right small the FDP was cut': a finger by its hand alone."""
    lead = page.words[max(0, mention.i - 3) : mention.i]
    told = after in _BEHIND_HAND or mention.j in page.tendon_words
    return told and lead[1:2] == ["the"] and lead[0] in _PLACES and lead[2] in SIDES


_PLACES = frozenset(["of", "on", "in", "to", "for", "at"])
_BEHIND_HAND = frozenset(
    [",", ".", ";", ")", "the", "was", "were", "is", "had", "has", "got", "showed", "and", "where", "whose"]
)


def _after_side(page: Page, mention: Mention) -> bool:
    """'2. R little.', 'L little - FDP off the bone': a side at the start of a line or an item."""
    k = mention.i - 1
    if k < 0 or page.words[k] not in SIDES:
        return False
    return page.breaks[k] >= Break.COLUMN or page.words[k - 1] in (".", ")", ":", ";", "-", ",", "|")


def _side_behind(page: Page, k: int) -> bool:
    """'Small L. FDP severed', 'Little R: FDP cut through', 'Long left, FDP ...': a side behind the name and a stop."""
    return page.words[k : k + 1] != [] and page.words[k] in SIDES and page.words[k + 1 : k + 2] in _SIDE_STOPS


def _answers_with_its_hand(page: Page, i: int) -> bool:
    """'Side / digit   L / middle', 'Hand and finger: right, small': a cell that holds a hand and a finger of it."""
    side = page.words[i - 2] if i >= _HAND_AND_JOIN else ""
    if page.words[i - 1] not in _JOINS_A_HAND or side not in _SIDES_IN_SHORT:
        return False
    return page.breaks[i - 2] >= Break.COLUMN or page.words[i - 3] in (":", "|")


_HAND_AND_JOIN = 3  # words with the label's last
_JOINS_A_HAND = frozenset(["/", ",", "-"])
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
_BULLETS = SIDES | frozenset(["hand", "no", "nr", "finger", "digit", "re", "for", "the", "now"]) | _TITLES
_BRACKETS = (("(", ")"), ("{", "}"), ("<", ">"))
_IN_BRACKETS = SIDES | frozenset(["hand", "zone", "i", "ii", "iii", "iv", "v"])
_HEAD_ENDS = frozenset([":", "-", "|", "=", ">", ".", ";", ",", "/", "*"])
