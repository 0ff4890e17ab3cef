"""One sentence with all that was found in it, and the questions rules ask of it: whose is this, what is it part of?"""

from bisect import bisect_left
from dataclasses import dataclass, field
from itertools import pairwise

from notereader.reader.bearing.beside import thing_at
from notereader.reader.groups import DIGITS, WRIST, Group, Setting, Target, resolve_pairs
from notereader.reader.mentions.measures import times_told
from notereader.reader.page import Break, Mention, Page, Quantity, Sentence
from notereader.reader.standing.negation import is_negated
from notereader.reader.standing.unplaced import DENIED_OF_NEITHER, on_neither, one_of_several
from notereader.vocabulary.wordlists import word_list

_GOES_ON = word_list("scene", "goes_on")
_PART_WORDS = word_list("scene", "part_words")
_AUXILIARIES = frozenset(["was", "were", "is", "are", "been", "has", "have", "had"])
_SPACED = frozenset(["-", "/"])  # part a sentence only where space stands on both sides
_LANDMARK = word_list("scene", "landmark")
_ASIDE_LEADS = word_list("scene", "aside_leads")
_FILLER = word_list("scene", "filler")
_PRENOMINAL = word_list("scene", "prenominal")
_OF = word_list("scene", "of")

# What joins the subjects of one statement, and what of it only places one beside another.
_JOINS = word_list("scene", "joins")
_PLACES = word_list("scene", "places")

_NO_ANSWER = word_list("scene", "no_answer")
_FORM_MARKS = frozenset([":", "[", "?", "|"])
_LONGEST_QUESTION = 9  # words
_CLAUSE_MARKS = frozenset([":", ";", ".", ",", "|", "-", "(", ")"])
_LABEL_TAILS = word_list("scene", "label_tails")

_VERBS = frozenset(["was", "were", "is", "are", "had"])
_WITHIN = frozenset(["in", "of", "on", "to"])
_SIDES = frozenset(["r", "l", "rt", "lt", "right", "left"])

# What turns to the one that was left out: 'except the index, where it was vented'.
_OTHER_LABELS = frozenset(
    [
        "gap",
        "glide",
        "gliding",
        "triggering",
        "catching",
        "tension",
        "bulk",
        "test",
        "knot",
        "knots",
        "purchase",
        "lock",
    ]
)
_ITSELF = frozenset(["which", "where", "it", "that", "this", "whose"])
_TO_FINGER = frozenset(["the", "in", "for", "on"])
_EXCEPTING = word_list("scene", "excepting")
_ADDED_WITH = frozenset(["and", "with", "plus", ",", ";", "+"])  # what a further part of a repair is added with
_ACTS = frozenset(["held", "caught", "hid", "overlay", "bound", "hit", "met", "overrode", "kept"])
SUBJECT_KINDS = word_list("scene", "subject_kinds")


_SIGNS = {"( - )": "no", "( + )": "yes"}


@dataclass(slots=True)
class Subject:
    """Something a property may belong to: a group of tendons or another structure, words i to j."""

    i: int
    j: int
    kind: str  # tendon, digit, or the kind of the mention
    group: Group | None = None
    mention: Mention | None = None


@dataclass(slots=True, eq=False)
class Scene:
    """A sentence, its mentions and figures, its subjects and its parts; `mentions` never changes once it is built."""

    page: Page
    setting: Setting
    mentions: list[Mention]
    quantities: list[Quantity]
    subjects: list[Subject] = field(default_factory=list)
    cuts: list[int] = field(default_factory=list)
    asides: list[tuple[int, int]] = field(default_factory=list)  # commas around what is said in passing
    every_digit: tuple[str, ...] = ()  # every digit the note works on, for 'in both fingers'
    sentence: Sentence = field(init=False)
    header: bool = field(init=False)  # the sentence stands in the lists of titles and diagnoses
    kinds: frozenset[str] = field(init=False)  # of its mentions; rules ask far more often than they find
    said: frozenset[str] = field(init=False)  # its words
    units: frozenset[str] = field(init=False)  # of its figures
    left_out: list[Group] = field(init=False)  # what it excepts: 'in all but the small finger'
    _by_kind: dict[str, list[Mention]] = field(init=False)

    def __post_init__(self) -> None:
        """Keep at hand what every rule asks for."""
        self.sentence = self.setting.sentence
        self.header = self.sentence.section in ("procedure", "diagnosis")
        self._by_kind = {}
        for m in self.mentions:
            self._by_kind.setdefault(m.kind, []).append(m)
        self.kinds = frozenset(self._by_kind)
        self.said = self.sentence.said
        self.units = frozenset([q.unit for q in self.quantities])
        self.left_out = [
            g for g in self.setting.groups if g.excepted and (g.digits or g.reference or WRIST.intersection(g.tendons))
        ]

    def of(self, kind: str, *more: str) -> list[Mention]:
        """Return the mentions of the kinds given, in order; the list is the scene's own and not to be altered."""
        if not more:
            return self._by_kind.get(kind, [])
        kinds = (kind, *more)
        return [] if self.kinds.isdisjoint(kinds) else [m for m in self.mentions if m.kind in kinds]

    def told(self, i: int) -> bool:
        """Tell whether word i stands as a finding of this operation."""
        return not self.page.standing[i]

    def negated(self, i: int, j: int, reach: int = 5) -> bool:
        """Tell whether words i to j stand under a negation."""
        return is_negated(self.page, i, j, self.sentence, reach)

    def excepts(self, digit: str | None, tendon: str, i: int, j: int) -> bool:
        """Tell whether words i to j are said of all but this: 'glided freely in each but the ring'."""
        for group in self.left_out:
            nobody = digit is None and tendon in (
                "FDP",
                "FDS",
            )  # 'in all fingers but the index' of which none was named
            whose = digit in group.digits or nobody if group.digits else not digit
            concerns = whose and (not group.tendons or tendon in group.tendons)
            # Its own name, or the name of all, taken along with what is said of it: 'FDPs; all but the ring were sewn'.
            enclosed = group.j < j and any(i < m.i < m.j <= group.i for m in self.of("quantifier"))
            first = group.j if i == group.i or enclosed else i
            last = group.i if first < group.i and j == group.j else j
            itself = group.i <= i and j <= group.j
            if concerns and not itself and self.takes_out(group, first, last):
                return True
        return False

    def takes_out(self, group: Group, i: int, j: int) -> bool:
        """Tell whether words i to j are said of all but a group that is left out, before it or behind it."""
        named = [g for g in self.setting.groups if g.digits and not (g.excepted or g.reference)]
        if j <= group.i:
            if self.only_outer_left_out(group, i):
                return False
            every = [m.i for m in self.of("quantifier") if m.j <= group.i]
            first = self._every_begins(every[-1]) if every else self.sentence.i
            if self.word_before(first) == ":":
                first = self.part(first - 1)[0]  # 'Epitendinous: both but the small'
            return i >= first and not any(j <= g.i < group.i for g in named)
        again = any(set(g.digits) & set(group.digits) and group.j <= g.i <= i for g in named)
        begin = self.own_aside(group)
        begin = group.j if begin > i else begin
        if self.words(group.j, group.j + 2) == [",", "there"] and self.next_word(group.j + 2) not in _VERBS:
            return False  # 'in all save the FCR, there 2-0 PDS'
        return group.j <= i and not (again or self.save_that(group)) and _ITSELF.isdisjoint(self.words(begin, j))

    def _every_begins(self, every: int) -> int:
        """'All four FDPs were divided and all but the small repaired': where what is told of all but one begins."""
        anew = self.word_before(every) in ("and", "but") and any(
            m.j <= every for m in self.of("quantifier") if m.i >= self.part(every)[0]
        )
        return every if anew else self.part(every)[0]

    def own_aside(self, group: Group) -> int:
        """'Apart from the index, where it opened by 2 mm, no gap appeared': return the word behind its own aside."""
        turn = group.j + (self.next_word(group.j) == ",")
        if self.next_word(turn) not in ("where", "which", "whose"):
            return group.j
        return next((k for k in range(turn, self.sentence.j) if self.page.words[k] == ","), self.sentence.j)

    def save_that(self, group: Group) -> bool:
        """'..., save that the ring got two': not the finger is left out, but what a clause of its own says of it."""
        lead = [w for w in self.words(max(self.sentence.i, group.i - 4), group.i) if w not in _TO_FINGER]
        return lead[-1:] == ["that"] and lead[-2:-1] != [] and lead[-2] in _EXCEPTING

    def only_outer_left_out(self, group: Group, i: int) -> bool:
        """'With four strands and a running 6-0, except in the ring, where no peripheral suture was put in'.

        Only the peripheral suture is left out there: what word i tells before it, of the repair, is of all.
        """
        core, outer = self.of("stitch", "strandword"), self.of("role", "pattern")
        outer = [m for m in outer if m.kind == "pattern" or m.value == "peripheral"]
        own = self.words(group.j, min(group.j + 2, self.sentence.j))
        none = "none" in self.words(group.j, self.own_aside(group))  # 'save on the middle, which has none'
        if not outer or _ITSELF.isdisjoint(own) or any(m.i >= group.j for m in core):
            return False
        if max(m.i for m in outer) < group.j and not none:
            return False
        begin = outer[0].i
        while begin > self.sentence.i and self.page.words[begin - 1] not in _ADDED_WITH:
            begin -= 1
        return i < begin <= group.i

    def unplaced(self, name: str, value: object, k: int) -> bool:
        """Tell whether what is said at word k is said of one of several, without saying of which, or of neither."""
        if self.said.isdisjoint(_OF_SOME):
            return False
        first, last = self.part(k)
        named = any(g.digits and first <= g.i < last and not g.reference for g in self.setting.groups)
        if not named and (one_of_several(self.page, first, last) or self._of_the_other(first, last)):
            return True
        denied = DENIED_OF_NEITHER.get(name) == value or (name.startswith("peripheral") and value != "absent")
        return denied and on_neither(self.page, first, last)

    def _of_the_other(self, first: int, last: int) -> bool:
        """'No gap in one of them, a 1 mm gap in the other.'"""
        other = ("the", "other") in pairwise(self.words(first, last))
        return other and one_of_several(self.page, self.sentence.i, first)

    def part(self, k: int) -> tuple[int, int]:
        """Return the part of the sentence, between commas and the like, in which word k stands."""
        n = bisect_left(self.cuts, k + 1)
        first = self.cuts[n - 1] if n else self.sentence.i
        return first, self.cuts[n] if n < len(self.cuts) else self.sentence.j

    def words(self, i: int, j: int) -> list[str]:
        """Return the cleaned words from i to j, as far as the sentence goes; `i` may lie before it."""
        end = self.sentence.j  # asked for more often than anything else: 'min' and 'max' would double its cost
        return self.page.words[i if i > 0 else 0 : j if j < end else end]

    def next_word(self, j: int) -> str:
        """Return the word after j within the sentence, or ''."""
        return self.page.words[j] if j < self.sentence.j else ""

    def word_before(self, i: int) -> str:
        """Return the word before i within the sentence, or ''."""
        return self.page.words[i - 1] if i > self.sentence.i else ""

    def arrow(self, k: int) -> bool:
        """Tell whether word k is the head of an arrow ('->', '→') and no 'more than'."""
        page = self.page
        return page.text[page.starts[k]] == "\u2192" or (
            k > 0 and page.words[k - 1] in ("-", "=") and page.breaks[k] == 0
        )

    def answer(self, j: int) -> str | None:
        """Return the first word of the answer a form gives behind a label that ends at word j.

        '' where the answer was left open, None where the words are no label of a form.
        """
        k, last = j, self.sentence.j
        signed = _SIGNS.get(" ".join(self.words(j, min(j + 3, last))))
        if signed:
            return signed  # 'gap (-), catching (-)'
        if self.sentence.prefix and (j == self.sentence.i or any(j == label[1] for label in self.sentence.prefix)):
            return self._answer_of_cell()
        asked = self._question_mark(j)
        while k < last and (k < asked or (k - j < 8 and self.page.words[k] in _LABEL_TAILS)):
            k += 1
        if k >= last:
            return None
        marked = self.page.words[k] in _FORM_MARKS or self.page.words[k].startswith(("..", "__"))
        if not marked and self.page.standing[k] != "unticked":
            return None
        while k < last and (self.page.standing[k] == "unticked" or self._is_form_mark(k)):
            k += 1
        column = k < last and self.page.breaks[k] >= Break.COLUMN and ":" in self.page.words[k + 1 : k + 3]
        if column and (self.page.words[k] in _OTHER_LABELS or "unticked" in self.page.standing[j:k]):
            return ""  # 'Bulky: [ ] yes  [ ] no     Tension: ...': the next label
        return self.page.words[k] if k < last and self.page.words[k] not in _NO_ANSWER else ""

    def _question_mark(self, j: int) -> int:
        """Return the word of the '?' that closes the question of word j: 'Gap after five active fists? No'; -1."""
        near = range(j, min(j + _LONGEST_QUESTION, self.sentence.j))
        mark = next((k for k in near if self.page.words[k] == "?"), -1)
        clear = mark >= 0 and _CLAUSE_MARKS.isdisjoint(self.words(j, mark))
        return mark if clear and self.page.breaks[mark] < Break.COLUMN else -1

    def _answer_of_cell(self) -> str:
        """Return the first word of a cell behind its boxes: '[x] nil   [ ] ____ mm'; '' where no box is ticked."""
        first, last = self.sentence.i, self.sentence.j
        told = [k for k in range(first, last) if self.page.standing[k] != "unticked"]
        if not told or self.page.words[first] != "[":
            return self.page.words[first] if told else ""
        return next((self.page.words[k] for k in told if not self._is_form_mark(k)), "")

    def answered_no(self) -> bool:
        """Tell whether this is a cell that says no to a question asked by its label: 'A4 vented?   No'."""
        asked = any(self.page.words[j - 1] == "?" for _, j in self.sentence.prefix)
        return asked and self.page.words[self.sentence.i] in ("no", "n")

    def _is_form_mark(self, k: int) -> bool:
        word = self.page.words[k]
        if word == "(":
            return self.next_word(k + 1) in ("x", "v", ")")  # '(x) none   ( ) some'
        return word in _FORM_MARKS or word in ("]", ")", "x", "v") or word.startswith(("..", "__"))

    def owner(self, i: int, j: int) -> Subject | None:
        """Return the subject in this sentence to which words i to j belong, or None."""
        return find_owner(self, i, j)


_OF_SOME = frozenset(["one", "neither", "two", "three", "2", "3"])  # 'one of them', 'two of the three'


def make_scenes(page: Page) -> list[Scene]:
    """Build the scene of every sentence of the note."""
    scenes: list[Scene] = []
    every = _every_digit(page)
    q = 0
    finger = _only_finger(every)
    for setting in page.settings:
        sentence = setting.sentence
        if finger:
            setting.focus = tuple(_of_the_finger(target, finger) for target in setting.focus)
        while q and page.quantities[q - 1].i >= sentence.i:
            q -= 1  # a cell told once more, for the column beside it
        while q < len(page.quantities) and page.quantities[q].i < sentence.i:
            q += 1
        quantities: list[Quantity] = []
        while q < len(page.quantities) and page.quantities[q].i < sentence.j:
            quantities.append(page.quantities[q])
            q += 1
        scene = Scene(page, setting, setting.mentions, quantities, every_digit=every)
        scene.cuts, scene.asides = _cuts(page, sentence)
        scene.subjects = _subjects(scene)
        scenes.append(scene)
    return scenes


def _only_finger(every: tuple[str, ...]) -> str:
    """Return the one finger of a note that works on a thumb besides, or ''."""
    fingers = [d for d in every if d != "thumb"]
    return fingers[0] if len(fingers) == 1 and "thumb" in every else ""


def _of_the_finger(target: Target, finger: str) -> Target:
    """'FPL: Adelaide. FDP: same core. Epi: running 6-0': behind words on the thumb an FDP is the one finger's."""
    nobodys = target.digit is None and target.tendon in ("FDP", "FDS")
    return target._replace(digit=finger) if nobodys else target


def _every_digit(page: Page) -> tuple[str, ...]:
    """Return the digits named in the lists of titles and diagnoses, else in the whole note.

    So are those of a diagnosis that dates the injury: 'Middle and ring fingers, from a bottle the previous evening'.
    A single one that is named only beside what was planned or feared is the note's finger all the same: 'Should the
    small finger catch, we were ready to vent A4. It did not.'
    """
    listed: dict[str, None] = {}
    named: dict[str, None] = {}
    aside: dict[str, None] = {}
    for n, setting in enumerate(page.settings):
        for group in setting.groups:
            dated = page.standing[group.i] == "history" and setting.sentence.section == "diagnosis"
            blank = page.standing[group.i] == "unfilled" and _heads_a_block(page, n)
            if page.standing[group.i] and not (dated or blank):
                aside |= dict.fromkeys(group.digits)
                continue
            for digit in group.digits:
                named[digit] = None
                if setting.sentence.section in ("procedure", "diagnosis", "digit", "side"):
                    listed[digit] = None
    return tuple(listed or named or (aside if len(aside) == 1 else ()))


def _heads_a_block(page: Page, n: int) -> bool:
    """'Index finger:' on a line of its own, above lines on its tendons: no empty field of a form."""
    behind = page.settings[n + 1].groups if n + 1 < len(page.settings) else []
    return bool(behind) and bool(behind[0].tendons) and not any(g.digits for g in behind)


def _cuts(page: Page, sentence: Sentence) -> tuple[list[int], list[tuple[int, int]]]:
    """Return the words at which a new part of the sentence begins, and the commas around its asides."""
    i, j, breaks = sentence.i, sentence.j, page.breaks
    marks = [
        k
        for k, word in enumerate(page.words[i:j], i)
        if (word in _PART_WORDS and not (word == "then" and page.words[k - 1] in _AUXILIARIES))
        or (word in _SPACED and _stands_free(breaks, k, j))
    ]  # 'both profundi were then sutured' is one statement
    asides = _asides(page, marks, j)
    if asides:
        marks = [k for k in marks if not any(k in aside for aside in asides)]
    cuts = [k + 1 for k in marks]
    if Break.COLUMN in breaks[i + 1 : j]:
        cuts += [k for k in range(i + 1, j) if breaks[k] == Break.COLUMN and k not in marks]
        cuts.sort()
    return cuts, asides


def _asides(page: Page, marks: list[int], end: int) -> list[tuple[int, int]]:
    """'The superficialis, which was flat, received ...': pairs of commas around an aside; they part nothing."""
    found: list[tuple[int, int]] = []
    for first, last in pairwise(marks):
        commas = page.words[first] == page.words[last] == "," and last - first <= 14
        if not commas or last + 1 >= end or page.words[last + 1] not in _GOES_ON:
            continue
        lead = page.words[first + 1]
        if lead == "which" or (lead in _ASIDE_LEADS and page.words[last + 1] in _VERBS):
            found.append((first, last))
    return found


def _stands_free(breaks: list[int], k: int, end: int) -> bool:
    """Tell whether word k has space on both sides within the sentence that ends before word `end`."""
    return breaks[k] != Break.NONE and k + 1 < end and breaks[k + 1] != Break.NONE


def _subjects(scene: Scene) -> list[Subject]:
    subjects = []
    for group in scene.setting.groups:
        if group.reference or _lies_under(scene, group):
            continue
        thing = thing_at(scene.page.words, scene.sentence.i, group) if group.tendons and group.i < group.j else -1
        if thing >= 0:
            subjects.append(Subject(thing, thing + 1, "thing"))
            continue
        kind = "tendon" if group.tendons or group.generic else "digit"
        subjects.append(Subject(group.i, group.j, kind, group))
    seen = {g.i for g in scene.setting.groups if g.place}  # 'the latter excised' is a tendon's and no pulley's
    for mention in scene.mentions:
        if mention.kind in SUBJECT_KINDS and mention.i not in seen and not is_landmark(scene, mention):
            seen.add(mention.i)
            subjects.append(Subject(mention.i, mention.j, mention.kind, None, mention))
    subjects.sort(key=lambda s: s.i)
    return subjects


def _lies_under(scene: Scene, group: Group) -> bool:
    """'The skin over the FDS was intact': the tendon is only the place."""
    before = scene.words(max(scene.sentence.i, group.i - 3), group.i)
    if before[-1:] == ["the"]:
        before = before[:-1]
    if before[-1:] == ["over"] and group.generic == "one" and any(m.kind == "pulley" for m in scene.mentions):
        return True  # 'A4 was stitched shut again over the repair'
    if before[-1:] == ["with"] and _crowded(scene, group):
        return True
    if before[-2:] in (["ahead", "of"], ["front", "of"]):
        return True  # 'closed with two 5-0 PDS sutures ahead of the tendon'
    return (
        bool(before)
        and before[0] in ("skin", "fat", "sheath", "nerve")
        and before[-1] in ("over", "overlying", "beside", "covering")
    )


def _crowded(scene: Scene, group: Group) -> bool:
    """'FDS slip too fat under A2 with the FDP - excised': the second only tells why there was no room."""
    before = [g for g in scene.setting.groups if g.tendons and g.j <= group.i]
    return bool(before) and "too" in scene.words(before[-1].j, group.i)


_MOVES = frozenset(["flexes", "flexed", "bends", "bent", "moves", "moved", "follows", "followed", "curls", "curled"])


def is_landmark(scene: Scene, mention: Mention) -> bool:
    """Tell whether a structure is named only as the place of something else ('under A2', 'at the PIP joint')."""
    if mention.kind == "bone" and scene.next_word(mention.j) in _MOVES:
        return True  # 'P3 flexes, no gap': what a pull at the tendon moves
    if mention.kind == "role" and scene.word_before(mention.i) in ("before", "until"):
        return True  # 'Before closure extension produced a gap': when, not what
    if mention.kind == "role" and scene.page.words[mention.i] == "all" and scene.word_before(mention.i) in _WHOLE:
        return True  # 'FDP followed through the window, intact all round'
    if mention.kind == "role" and "skin" in scene.words(mention.i, mention.j):
        return False
    if mention.i > scene.sentence.i and scene.page.breaks[mention.i] == Break.COLUMN:
        return False  # 'FDP cut through   A2 sewn back': a cell of its own
    k = mention.i - 1
    first = scene.sentence.i
    while k >= first and scene.page.words[k] in _FILLER:
        k -= 1
    if k < first:
        return False
    word = scene.page.words[k]
    if word in ("and", "or", "to", "-", "/", ",") and mention.kind == "pulley":
        before = [m for m in scene.mentions if m.kind == "pulley" and m.j <= mention.i and mention.i - m.j <= 2]
        own = scene.next_word(mention.j) in _VERBS and word in ("and", ",")  # 'it caught on A4, and A4 was vented'
        if before and not own:
            return is_landmark(scene, before[-1])
    if mention.kind == "role" and word in _DIMENSIONS and scene.next_word(k + 1) == "of":
        return True  # 'traced through the whole depth of the wound'
    if mention.kind == "role" and (word in ("in", "for") or _of_sheath(scene, mention, k)):
        return True
    if mention.kind == "role" and any(m.j == mention.i for m in scene.of("pulley")):
        return True  # 'A2 window: distal 3 mm divided'
    if mention.kind == "role" and scene.page.words[mention.i] in _WEBS:
        lead = scene.words(max(first, mention.i - 3), mention.i)
        return not {"of", "to"}.isdisjoint(lead)  # 'the common digital nerve of the 2nd webspace was bruised'
    if word == "as" and scene.word_before(k) == "far":
        return True  # 'excised as far as the A2'
    return word in _LANDMARK and word != "to"


_WEBS = frozenset(["web", "webspace", "cleft", "interspace"])
_WHOLE = frozenset(["intact", "whole", "sound", "uncut", "unhurt"])
_DIMENSIONS = frozenset(["depth", "length", "width", "floor", "bottom", "bed", "limits", "reach"])


def _of_sheath(scene: Scene, mention: Mention, k: int) -> bool:
    """'within zone II of the flexor sheath and was repaired': where the tendon was cut."""
    first = scene.sentence.i
    while k > first and scene.page.words[k] in ("flexor", "tendon", "digital", "synovial", "fibrous", "the"):
        k -= 1
    return mention.value == "sheath" and scene.page.words[k] == "of"


def find_owner(scene: Scene, i: int, j: int) -> Subject | None:
    """Return the subject that words i to j belong to: in the part, before it in the sentence, then after it."""
    subjects = scene.subjects
    if not subjects:
        return None
    first, last = scene.part(i)
    inside = next((s for s in subjects if s.i <= i and j <= s.j), None)
    if inside is not None:
        return inside
    if scene.left_out:
        subjects = [s for s in subjects if s.group not in scene.left_out or not scene.takes_out(s.group, i, j)]
    if scene.asides:
        subjects = [s for s in subjects if not any(a < s.i < b < i for a, b in scene.asides)] or subjects
    before = [s for s in subjects if s.j <= i]
    after = [s for s in subjects if s.i >= j]
    near_before = [s for s in before if s.i >= first or s.j > first or _ends_in_its_aside(scene, s, first)]
    near_after = [s for s in after if s.i < last and not _behind_a_stop(scene, j, s)]
    if near_after and _closely_followed(scene, i, j, near_after[0]):
        return near_after[0]
    if near_before:
        near_before = _not_its_object(scene, near_before, i)
        return _with_tendon(scene, near_before)
    if near_after:
        return near_after[0]
    if before:
        before = _outside_asides(scene, before)
        return _with_tendon(scene, [s for s in before if s.i >= scene.part(before[-1].i)[0]])
    return after[0] if after else None


def _ends_in_its_aside(scene: Scene, s: Subject, first: int) -> bool:
    """'One slip of FDS, the ulnar, was excised', '(the ulnar one) was': the mark that closes what is part of a name."""
    of_slip = s.group is not None and any(slip for _, _, slip in s.group.pairs)
    return of_slip and s.j == first - 1 and any(s.i < cut < s.j for cut in scene.cuts)


def _behind_a_stop(scene: Scene, j: int, subject: Subject) -> bool:
    """'FDS ulnar slip -> excised. radial slip intact': what opens behind a stop, or the next line of a cell, is new."""
    stop = scene.next_word(j) == "." and subject.i == j + 1
    next_line = subject.i == j and scene.page.breaks[j] >= Break.LINE
    return stop or (next_line and Break.COLUMN in scene.page.breaks[scene.sentence.i + 1 : j])


def _outside_asides(scene: Scene, before: list[Subject]) -> list[Subject]:
    """'The common digital nerve to the third web (MF/RF) was divided': fingers in brackets only say where."""
    kept = before
    while len(kept) > 1 and kept[-1].kind == "digit" and _bracketed(scene, kept[-1]):
        kept = kept[:-1]
    return kept


def _bracketed(scene: Scene, subject: Subject) -> bool:
    """Tell whether a subject stands in brackets that hold no more than a few words."""
    lead = scene.words(max(scene.sentence.i, subject.i - 5), subject.i)[::-1]
    rest = scene.words(subject.j, min(subject.j + 5, scene.sentence.j))
    opened = next((word for word in lead if word in ("(", ")")), "")
    return opened == "(" and next((word for word in rest if word in ("(", ")")), "") == ")"


def _not_its_object(scene: Scene, before: list[Subject], i: int) -> list[Subject]:
    """'The ulnar slip tethered the profundus and was taken out': what went on is the slip, not what it tethered."""
    last = before[-1]
    follows = scene.words(last.j, i) in (["and", "was"], ["and", "were"], ["and", "was", "therefore"], ["and", "had"])
    if len(before) < 2 or not follows or last.kind != "tendon":
        return before
    lead = [w for w in scene.words(before[-2].j, last.i) if w not in ("the", "its", "a")]
    acts = len(lead) == 1 and (lead[0].endswith("ed") or lead[0] in _ACTS)
    return before[:-1] if acts else before


def series(scene: Scene, subject: Subject, at: int) -> list[Subject]:
    """Return the subjects that share what is said at word `at`: 'the FCR, both FDS and the nerve were intact'."""
    joined = [subject]
    for before in reversed([s for s in scene.subjects if s.j <= subject.i and subject.j <= at]):
        between = _outside_brackets(_without_side(scene, before.j, joined[-1]))
        if before.group is not None and (before.group.four == _ALL_FOUR or before.group.every):
            between = between[2:] if times_told(between, 0) else between  # 'FDS x4, FDP ring', 'FDP x2 and FDS x2'
        if any(before.j <= m.i < joined[-1].i or m.j == before.i for m in scene.of("extent")):
            break  # 'FDS ok both slips, UDN 100%'
        if not between and joined[-1].kind == "pulleys" and before.kind == "pulley":
            joined.append(before)  # 'A1 and A2 pulleys'
            continue
        if not between or not _JOINS.issuperset(between) or _PLACES.issuperset(between):
            break
        if between[:2] == [",", "with"]:
            break  # 'division of all four FDS, with the FPL intact'
        joined.append(before)
    return joined[::-1]


def _without_side(scene: Scene, i: int, taking_up: Subject) -> list[str]:
    """'Middle and ring FDP, left hand, both severed', 'FDP middle, FDP ring: both severed': nothing parts 'both'.

    Return the words from i to the subject that takes up what stands before, without the hand and a colon between.
    """
    words = scene.words(i, taking_up.i)
    group = taking_up.group
    if group is None or group.generic != "all" or group.digits or _JOINS.issuperset(words):
        return words
    sided = {k for m in scene.of("side") for k in range(m.i, m.j)}
    kept = [scene.page.words[k] for k in range(i, taking_up.i) if k not in sided]
    return [","] if kept == [":"] else kept


def named_together(scene: Scene, group: Group) -> Group | None:
    """'FDP of both and FDS of the middle repaired with 3-0 PDS': the wide group joined to a group, before it."""
    before = [g for g in scene.setting.groups if g.j <= group.i and not (g.reference or g.excepted)]
    if not before or not group.tendons or not before[-1].every or not before[-1].tendons:
        return None
    between = [w for w in scene.words(before[-1].j, group.i) if w not in _WIDE]
    return before[-1] if between == ["and"] else None


_WIDE = frozenset(["of", "both", "all", "three", "each", "fingers", "the"])


def _outside_brackets(words: list[str]) -> list[str]:
    """Return the words that stand in no brackets: 'the FDP (zone II) and the FDS'."""
    if "(" not in words or ")" not in words:
        return words
    return words[: words.index("(")] + words[words.index(")") + 1 :]


def _with_tendon(scene: Scene, subjects: list[Subject]) -> Subject:
    """Of the subjects before a property take the last; a digit just before a tendon is its place, not the subject."""
    last = subjects[-1]
    whole = [s for s in subjects if s.kind == "tendon" and s.group is not None and s.group.generic == "all"]
    if last.kind == "digit" and whole and scene.page.words[whole[-1].j] == ":" and whole[-1].j < last.i:
        return last  # 'Test, both: thumb no gap, glides freely'
    if (
        last.kind == "digit"
        and len(subjects) > 1
        and last.i - subjects[-2].j <= 3
        and subjects[-2].kind in SUBJECT_KINDS
        and subjects[-2].kind != "role"
    ):
        return subjects[-2]
    if last.kind == "digit":
        tendons = [s for s in subjects if s.kind == "tendon"]
        if tendons:
            return tendons[-1]
    return last


def _closely_followed(scene: Scene, i: int, j: int, subject: Subject) -> bool:
    """Tell whether a property stands before its noun: 'partial FDS division', 'repair of the FDP'."""
    between = scene.page.words[j : subject.i]
    if not between and scene.page.breaks[subject.i] >= Break.LINE:
        return False  # 'not sutured', and on the next line 'ulnar slip intact'
    if _is_object(scene, i, between):
        return True
    if len(between) > 4 or any(w not in _OF for w in between) or scene.page.words[j - 1] in ("off", "from"):
        return False  # 'FDP completely off P3' is said of the tendon
    return scene.page.words[i] in _PRENOMINAL or (bool(between) and between[0] == "of")


_ACTORS = frozenset(["i", "we", "and", "then", "also", "only"])
_OBJECTS = frozenset(["the", "its", "a", "this", "that", "both", "other"])
_OBJECT_WORDS = _OBJECTS | frozenset(
    ["cut", "edge", "edges", "of", "divided", "torn", "loose", "flap", "small", "nick"]
)


def _is_object(scene: Scene, i: int, between: list[str]) -> bool:
    """'I repaired the ulnar slip and excised the radial slip', 'I trimmed the cut edge of it': the noun behind."""
    deed = any(m.i == i for m in scene.of("deed"))
    led = scene.word_before(i) in _ACTORS and between[:1] != [] and between[0] in _OBJECTS
    return deed and led and len(between) <= 5 and _OBJECT_WORDS.issuperset(between)


def group_targets(scene: Scene, group: Group) -> list[Target]:
    """Return the targets of a named group; tendons without a digit take the digit named in the sentence or in focus.

    'All four FDS' and 'FDS x4' are those of the four fingers.
    """
    if group.four == _ALL_FOUR and not group.digits:
        return resolve_pairs(group, DIGITS[1:])
    return resolve_pairs(group, digits_at(scene, group))


_ALL_FOUR = 2


def digits_at(scene: Scene, group: Group | None = None, k: int | None = None) -> tuple[str, ...]:
    """Return the digits a group or word is about: named in it, before it, after it in the sentence, else in focus."""
    digits = _digits_at(scene, group, k)
    if digits != ("thumb",) or group is None or group.digits or _has_any(digits, group):
        return digits
    fingers = tuple(d for d in scene.every_digit if d != "thumb")
    if len(fingers) == 1 or _listed_at_the_wrist(scene, group):
        return fingers  # 'The superficialis' behind words on the thumb
    return digits


def _listed_at_the_wrist(scene: Scene, group: Group) -> bool:
    """'Core, FDS and FCR: 3-0' behind words on the thumb: the finger flexors of a wrist, all of them."""
    named = {t for g in scene.setting.groups for t in g.tendons}
    return bool(named & WRIST) and "FPL" not in named and "FPL" not in group.tendons


def _digits_at(scene: Scene, group: Group | None, k: int | None) -> tuple[str, ...]:
    if group is not None and group.digits:
        return group.digits
    at = group.i if group is not None else (k or scene.sentence.i)
    before = [g for g in scene.setting.groups if g.digits and g.j <= at and not g.reference]
    before = [g for g in before if g not in scene.left_out or not scene.takes_out(g, at, at + 1)]
    own = _named_at_its_end(scene, at, before[-1]) if before and scene.header else ()
    if before:
        return own or before[-1].digits
    if group is not None and any(g.every and not g.tendons and not g.generic for g in scene.setting.groups):
        left_out = {d for g in scene.setting.groups if g.excepted and not g.tendons for d in g.digits}
        return tuple(d for d in scene.every_digit or scene.setting.digits if d not in left_out)
    if group is not None and group.every and _of_as_many(scene, group):
        return scene.every_digit  # 'FDP of both and FDS of the index'
    if len(scene.setting.digits) > 1 and scene.words(scene.sentence.i, scene.sentence.i + 2) in _IN_BOTH:
        return scene.setting.digits  # 'In both the profundus was divided; the superficialis was intact in the ring'
    after = [g for g in scene.setting.groups if g.digits and g.i >= at and not g.reference]
    if group is not None and after and _bracketed_behind(scene, group, after[0]):
        return after[0].digits  # 'FDP and FDS x2 (long, ring)'
    two = scene.setting.digits if len(scene.setting.digits) > 1 else scene.every_digit
    if (
        group is not None
        and len(two) == 2
        and _in_both_behind(scene, group.j, after[0].i if after else scene.sentence.j)
    ):
        return two
    if group is not None and len(two) > 1 and _joined_to_its_own(scene, group, after):
        return two
    if group is not None:
        after = [g for g in after if not _of_a_pulley(scene, g)]
    if group is not None and after and not _has_any(after[0].digits, group):
        after = after[1:]  # 'the profundus was repaired ...; next was the thumb'
    if after and (scene.header or not scene.setting.digits or not scene.setting.focus):
        return after[0].digits
    if after and _belongs(scene, at, after[0]):
        bare = [g for g in after if not g.tendons and _belongs(scene, at, g) and scene.word_before(g.i) == "the"]
        several = len(bare) > 1 and all(scene.words(g.i - 2, g.i) == ["in", "the"] for g in bare)
        return tuple(dict.fromkeys(d for g in bare for d in g.digits)) if several else after[0].digits
    return scene.setting.digits


def _bracketed_behind(scene: Scene, group: Group, fingers: Group) -> bool:
    """'FDP x2 (long, ring) cut', 'both profundi (middle and ring)': the fingers in brackets behind their tendons."""
    between = scene.words(group.j, fingers.i)
    counted = all(w in ("x", "of", "both", "tendons") or w.isdecimal() for w in between[:-1])
    return not fingers.tendons and between[-1:] == ["("] and counted


def _joined_to_its_own(scene: Scene, group: Group, after: list[Group]) -> bool:
    """'Both profundi and the middle superficialis were cut': the finger named behind is that of the other tendon."""
    if not (group.every and after and after[0].tendons and after[0].i >= group.j) or group.digits:
        return False
    return [w for w in scene.words(group.j, after[0].i) if w not in (",", "the")] in (["and"], ["+"])


def _named_at_its_end(scene: Scene, at: int, before: Group) -> tuple[str, ...]:
    """'FDP and FDS cut, long finger; FDP cut with a nick of FDS, ring finger': a clause that ends with its finger."""
    behind = next((g for g in scene.setting.groups if g.digits and g.i >= at), None)
    if behind is None or behind.tendons or ";" not in scene.words(before.j, at) or ";" in scene.words(at, behind.i):
        return ()
    return behind.digits


def _of_as_many(scene: Scene, group: Group) -> bool:
    """'FDP of both', 'of all three': of as many fingers as the note works on."""
    words = scene.words(group.i, group.j + 3)
    return ("both" in words and len(scene.every_digit) == 2) or (
        ("all", "three") in pairwise(words) and len(scene.every_digit) == 3
    )


def _has_any(digits: tuple[str, ...], group: Group) -> bool:
    fingers = {"FDP", "FDS"} & set(group.tendons)
    return not (fingers and digits == ("thumb",) and "FPL" not in group.tendons)


def _of_a_pulley(scene: Scene, group: Group) -> bool:
    """'... had FDP sutures elsewhere, A2 of the ring cut through': the finger says whose the pulley is."""
    k = group.i - 1 - (scene.word_before(group.i) == "the")
    pulleys = scene.of("pulley") if not group.tendons and scene.page.words[k] == "of" else []
    return any(m.j == k for m in pulleys)


def _in_both_behind(scene: Scene, i: int, j: int) -> bool:
    """'FDP completely divided in both and sewn with four strands; small FDP intact': in both fingers worked on."""
    placed = _IN_BOTH if len(scene.setting.digits) > 1 else _IN_BOTH[:1]  # 'clean ends on both': on both tendons
    told = (k + 2 for k in range(i, j - 1) if scene.words(k, k + 2) in placed)
    return any(scene.page.words[k] in _OVER for k in told)


_OVER = frozenset([",", ";", ".", "and", "but", "while", "with", "then"])
_IN_BOTH = (["in", "both"], ["in", "each"], ["on", "both"], ["for", "both"])


def _belongs(scene: Scene, at: int, group: Group) -> bool:
    """Tell whether a digit named later in the sentence still says where: 'the profundus was cut in the index'."""
    if ";" in scene.words(at, group.i):
        return False  # 'the superficialis was nicked; in the long finger both were divided'
    before = scene.word_before(group.i)
    sided = before in _SIDES and scene.word_before(group.i - 1) in (",", "repair", "suture")
    return sided or scene.page.words[max(group.i - 2, at)] in _WITHIN or before in _WITHIN or before == "the"


def group_beside(scene: Scene, q: Quantity) -> Group | None:
    """Return the finger or tendon a length stands beside: '7 mm in the small finger', 'index FDP 10 mm'."""
    groups = [g for g in scene.setting.groups if g.digits or g.tendons]
    for group in groups:
        between = words_up_to(scene, q, group)
        if q.j == group.i < group.j and scene.next_word(group.j) in ("", ",", ".", ";", "and"):
            return group  # '3 mm FDP, 2 mm FDS'
        if q.j <= group.i and between and len(between) <= 3 and set(between) <= _IN_THE and "in" in between:
            return group
    before = [g for g in groups if g.j <= q.i and set(scene.words(g.j, q.i)) <= _LEADS_TO]
    return before[-1] if before else None


def words_up_to(scene: Scene, q: Quantity, group: Group) -> list[str]:
    """'12 mm of tendon in the ring finger': the words between a length and a finger behind it but 'of tendon'."""
    between = scene.words(q.j, group.i)
    return between[2:] if between[:2] == ["of", "tendon"] else between


_IN_THE = frozenset(["in", "the", "on", "for", "left", "right"])
_LEADS_TO = frozenset(["only", "just", "was", "were", "about", "=", ":", "to", "at", "purchase", "bite", "bites"])
