"""Signs that a proposed fact may be misread: what stands in its sentence, its paragraph and the rest of the draft.

A sign alone decides nothing. resources/doubts.toml holds what each weighs, and the module weighing adds up.
"""

import re
from bisect import bisect_left, bisect_right
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from operator import attrgetter

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.record import Address, Fact, Record
from notereader.vocabulary.wordlists import word_list

_CORE = frozenset(["stitch", "strands", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot"])
_SUTURE = _CORE | {"peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material"}
# The kind of mention that a field's value is taken from, where its values are words.
_KINDS = {
    "material": "material",
    "stitch": "stitch",
    "treatment": "deed",
    "extent": "extent",
    "gap": "gap",
    "bulk": "bulk",
    "glide": "glide",
    "tension": "tension",
    "test": "test",
    "ends": "ends",
    "finding": "opened",
    "zone": "zone",
    "mechanism": "mechanism",
    "anaesthesia": "anaesthesia",
    "side": "side",
    "splint": "splint",
    "programme": "programme",
    "hold": "hold",
    "knot": "knot",
    "peripheral_pattern": "pattern",
    "peripheral_material": "material",
}
_TELLING_KINDS = frozenset(_KINDS.values())
_HARDLY_ANY, _MUCH, _VERY_MUCH = 2, 7, 16  # telling words of a note that prove no fact
_OTHER_PARTS = frozenset(
    ["structure", "anynerve", "anyartery", "sided", "pulley", "bone", "fracture", "button", "anchor"]
)
_FORM = re.compile(r"_{2,}|\.{4,}|\[ ?x? ?\]|\|", re.IGNORECASE)
_FORM_MARKS = ("__", "....", "[", "|")
_TOGETHER = re.compile(r"\b(both|each|all|respectively|either|same|likewise|two|three|four|x ?2)\b", re.IGNORECASE)
_NEGATION = re.compile(r"\b(no|not|nor|neither|never|without|none|nil|cannot)\b|n't\b", re.IGNORECASE)
_WORD = re.compile(r"[a-z]+")
# What a sentence must hold for these patterns to be found in it: most hold none of it.
_TOGETHER_WORDS = frozenset(
    ["both", "each", "all", "respectively", "either", "same", "likewise", "two", "three", "four", "x"]
)
_NEGATION_WORDS = frozenset(
    ["no", "not", "nor", "neither", "never", "without", "none", "nil", "cannot", "t"]  # 't': of 'wasn't'
)
_LONG, _SHORT = 30, 4  # words of a sentence
_FAR = 40  # words between a tendon's name and what is said of it
_MANY_RIVALS, _MANY_STITCHES, _MANY_TENDONS = 4, 3, 4
_SOON = 8  # words in which another finger follows upon a fact's own words
_LONG_PROOF = 24  # characters of a fact's words, of all its places
_SHARED = {2: "of_two", 3: "of_three"}  # how many entries took the same words
_OF_MANY = "of_many"
# Whether none, some or all other tendons, pulleys or nerves have the same value, and those of the other fingers.
_LIKE_OTHERS = ("like_no_other", "like_some_others", "like_all_others")
_LIKE_ITS_KIND = ("like_none_of_its_kind", "like_some_of_its_kind", "like_all_of_its_kind")
_FEW_FACTS, _MANY_FACTS = 3, 10  # of an entry

_OF_FINGERS = ("repairs", "pulleys", "injuries")
_KNOWN_OF_REPAIR = ("extent", "treatment", "strands", "stitch", "size", "material", "zone", "peripheral")
# Fields of a tendon, a pulley or another structure whose value is a sign at its other facts.
_TELLING = {
    "repairs": ("extent", "treatment"),
    "pulleys": ("finding", "part"),
    "injuries": ("extent", "treatment"),
}
_TOLD = frozenset(name for names in _TELLING.values() for name in names)

_first_word = attrgetter("i")

Entry = tuple[str | None, ...]
Span = tuple[int, int]  # code points


@dataclass(slots=True)
class _Around:
    """What stands in the sentence of a fact, gathered once however many facts the sentence holds."""

    signs: list[tuple[str, str]]  # of its words
    named: dict[str, set[str]]  # kind -> values of its mentions
    other_part: bool  # it names something else that can be sewn or hurt
    untaken: int  # how many of its telling words prove no fact
    together: bool  # it says what holds for several


@dataclass(slots=True)
class Signs:
    """The signs of the facts of one draft; what all of them need is gathered once."""

    page: Page
    record: Record
    facts: list[tuple[Address, Fact]] = field(init=False)
    entries: dict[Entry, dict[str, Fact]] = field(init=False)
    of_note: list[str] = field(init=False)
    digits: frozenset[str] = field(init=False)
    unused: dict[str, list[Mention]] = field(init=False, default_factory=dict)  # kind -> mentions that prove no fact
    _untaken: list[int] = field(init=False)  # words of the kinds that tell values, where they prove no fact
    _several_repairs: bool = field(init=False)
    _sharers: Counter[tuple[str, Span]] = field(init=False)
    _likeness: dict[int, tuple[tuple[object, ...], ...]] = field(init=False)  # id of a fact -> what it is counted under
    _having: Counter[tuple[object, ...]] = field(init=False)  # facts of a field, of a part's field, and of each value
    _tendons: list[Mention] = field(init=False)
    _digits: list[Mention] = field(init=False)
    _sentence_starts: list[int] = field(init=False)
    _of_entry: dict[tuple[Entry, str], list[tuple[str, str]]] = field(init=False, default_factory=dict)
    _places: dict[int, list[Span]] = field(init=False)  # id of a fact -> where its words stand
    _around: dict[int, _Around] = field(init=False, default_factory=dict)  # first word of a sentence -> what is in it

    def __post_init__(self) -> None:
        """Gather the entries, the words that no fact holds, and the signs of the note as a whole."""
        self.facts = list(self.record.walk())
        self.entries = {}
        for place, fact in self.facts:
            self.entries.setdefault(_entry(place), {})[place.field] = fact
        self._places = {id(fact): _spans(fact) for _, fact in self.facts}
        self._several_repairs = sum(entry[0] == "repairs" for entry in self.entries) > 1
        placed = [(place.field, self._places[id(fact)]) for place, fact in self.facts]
        self._sharers = Counter([(name, spans[0]) for name, spans in placed if spans])
        self._likeness = {id(fact): _likeness(place, fact) for place, fact in self.facts if place.group in _OF_FINGERS}
        self._having = Counter([key for keys in self._likeness.values() for key in keys])
        self._digits = [m for m in self.page.mentions if m.kind == "digit"]
        self.digits = frozenset(m.value for m in self._digits)
        self._tendons = [m for m in self.page.mentions if m.kind == "tendon"]
        self._sentence_starts = [s.i for s in self.page.sentences]
        for m in self._find_unused([span for _, spans in placed for span in spans]):
            self.unused.setdefault(m.kind, []).append(m)
        self._untaken = sorted(m.i for kind in _TELLING_KINDS for m in self.unused.get(kind, ()))
        self.of_note = list(self._note_signs())

    def of(self, place: Address, fact: Fact) -> list[tuple[str, str]]:
        """Return the signs of a fact, each with the word of the note that shows it ('' where there is none)."""
        if fact.basis == "silent":
            return []
        spans = self._places[id(fact)]
        found = list(self._entry_signs(place))
        found += [(name, "") for name in (*self._proof_signs(place, spans), *self._others_signs(place, fact))]
        word = self._word_at(spans[0][0]) if spans else 0
        around = self._around_word(word) if spans else None
        if around is not None:
            found += around.signs
            if around.untaken:
                found.append(("one_untaken_beside" if around.untaken == 1 else "several_untaken_beside", ""))
            found += self._kind_signs(place, fact, around)
            found += [(name, "") for name in self._owner_signs(place, spans[0], word, around)]
        return found

    # --- the note

    def _find_unused(self, spans: list[Span]) -> list[Mention]:
        """Return the mentions that stand as findings of this operation and prove no fact."""
        page = self.page
        taken = bytearray(len(page.text) + 1)
        for start, end in spans:
            taken[start:end] = b"\1" * (end - start)
        return [
            m for m in page.mentions if not page.standing[m.i] and not any(taken[page.starts[m.i] : page.ends[m.j - 1]])
        ]

    def _note_signs(self) -> Iterator[str]:
        """Yield what tells of the whole note how hard it was to read."""
        repairs = {entry: facts for entry, facts in self.entries.items() if entry[0] == "repairs"}
        if any(_is(facts, "treatment", "repaired") and not _CORE & facts.keys() for facts in repairs.values()):
            yield "bare_repair"
        if sum(bool(f.rivals) for facts in self.entries.values() for f in facts.values()) >= _MANY_RIVALS:
            yield "many_rivals"
        if any(entry[3] for entry in repairs):
            yield "single_slips"
        if len(repairs) == 1:
            yield "one_tendon"
        if len(repairs) >= _MANY_TENDONS:
            yield "many_tendons"
        if len({m.value for m in self.page.mentions if m.kind == "stitch"}) >= _MANY_STITCHES:
            yield "many_stitches"
        untaken = len(self._untaken)
        if untaken <= _HARDLY_ANY:
            yield "nearly_all_taken"
        elif untaken >= _MUCH:
            yield "very_much_untaken" if untaken >= _VERY_MUCH else "much_untaken"

    # --- the entry

    def _entry_signs(self, place: Address) -> list[tuple[str, str]]:
        """Return the signs of an entry, looked for once for its sutures, for most others, and for each that is told."""
        key = (_entry(place), _told_at(place))
        if key not in self._of_entry:
            self._of_entry[key] = [(name, "") for name in self._look_at_entry(place)]
            self._of_entry[key] += self._told_beside(place)
        return self._of_entry[key]

    def _told_beside(self, place: Address) -> Iterator[tuple[str, str]]:
        """Yield what the other facts of an entry say of it: 'treatment=left' at the strands of a tendon."""
        facts = self.entries[_entry(place)]
        for name in _TELLING.get(place.group, ()):
            if name in facts and name != place.field:
                yield f"{name}={facts[name].value}", f"{name} {facts[name].value}"

    def _look_at_entry(self, place: Address) -> Iterator[str]:
        yield from (n for n in self.of_note if n != "many_stitches" or place.field in _SUTURE)
        if place.group not in _OF_FINGERS:
            return
        facts = self.entries[_entry(place)]
        if place.digit is None:
            yield "no_finger"
        if len(facts) == 1:
            yield "only_fact"
        elif len(facts) <= _FEW_FACTS:
            yield "few_facts"
        elif len(facts) >= _MANY_FACTS:
            yield "many_facts"
        if place.group != "repairs":
            return
        if place.part == "PL":
            yield "graft_tendon"
        if place.part == "FDS":
            yield "superficial"
        yield from [f"no_{name}" for name in _KNOWN_OF_REPAIR if name not in facts]
        if len(_CORE & facts.keys()) == 1:
            yield "one_core_fact"

    def _others_signs(self, place: Address, fact: Fact) -> Iterator[str]:
        """Yield whether other tendons, pulleys or nerves of the note have the same value, and those of its kind."""
        if place.group not in _OF_FINGERS:
            return
        others, alike, of_kind, alike_of_kind = [self._having[key] - 1 for key in self._likeness[id(fact)]]
        if others:
            yield _LIKE_OTHERS[_none_some_all(alike, others)]
        if of_kind:
            yield _LIKE_ITS_KIND[_none_some_all(alike_of_kind, of_kind)]

    # --- the words that prove it

    def _proof_signs(self, place: Address, spans: list[Span]) -> list[str]:
        signs = []
        if len(spans) > 1:
            signs.append("told_twice")
        if sum([end - start for start, end in spans]) > _LONG_PROOF:
            signs.append("long_proof")
        sharers = self._sharers[place.field, spans[0]] if spans else 0
        if sharers > 1:
            signs.append(_SHARED.get(sharers, _OF_MANY))
        return signs

    # --- the sentence

    def _word_at(self, position: int) -> int:
        """Return the word at a position in the text, or the last one before it."""
        return max(0, bisect_right(self.page.starts, position) - 1)

    def _around_word(self, word: int) -> _Around | None:
        """Return what stands in the sentence of a word, or None where no sentence holds it."""
        n = bisect_right(self._sentence_starts, word) - 1
        if n < 0 or word >= self.page.sentences[n].j:
            return None
        s = self.page.sentences[n]
        if s.i not in self._around:
            self._around[s.i] = self._look_around(s)
        return self._around[s.i]

    def _look_around(self, s: Sentence) -> _Around:
        text = self.page.raw(s.i, s.j)
        named: dict[str, set[str]] = {}
        for m in within(self.page.mentions, s.i, s.j):
            named.setdefault(m.kind, set()).add(m.value)
        said = _WORD.findall(text.lower())
        together = not _TOGETHER_WORDS.isdisjoint(said) and _TOGETHER.search(text) is not None
        untaken = bisect_left(self._untaken, s.j) - bisect_left(self._untaken, s.i)
        return _Around(_word_signs(text, said, s.j - s.i), named, not _OTHER_PARTS.isdisjoint(named), untaken, together)

    def _kind_signs(self, place: Address, fact: Fact, around: _Around) -> Iterator[tuple[str, str]]:
        """Yield what else of the kind of a fact's value its sentence or the note names."""
        kind = _KINDS.get(place.field)
        if kind is None:
            return
        if len(around.named.get(kind, ())) > 1:
            yield "two_of_a_kind", ""
        other = next((m for m in self.unused.get(kind, ()) if m.value != fact.value), None)
        if other is not None:
            yield "another_untaken", self.page.raw(other.i, other.j)

    def _owner_signs(self, place: Address, span: Span, word: int, around: _Around) -> Iterator[str]:
        """Yield what a simple look at the words around says against the tendon, pulley or finger of a fact."""
        if place.group not in _OF_FINGERS:
            return
        digits = around.named.get("digit", ())
        if digits and place.digit is not None and place.digit not in digits:
            yield "other_finger"
        elif not digits and len(self.digits) > 1:
            yield "finger_unnamed"
        if len(digits) > 1:
            yield "two_fingers"
        if self._sharers[place.field, span] > 1 and not around.together:
            yield "shared_words"
        yield from self._finger_signs(place, word)
        if place.group == "repairs":
            yield from self._tendon_signs(place, word, around)

    def _finger_signs(self, place: Address, word: int) -> Iterator[str]:
        """Yield whether the fingers named next to the fact's words, before and behind, are its own."""
        n = bisect_left(self._digits, word + 1, key=_first_word)
        behind = self._digits[n].value if n < len(self._digits) and self._digits[n].i - word < _SOON else None
        if n and self._digits[n - 1].value == place.digit:
            yield "own_finger_before"
        elif n and behind != place.digit:
            yield "other_finger_before"
        if behind is not None:
            yield "own_finger_behind" if behind == place.digit else "other_finger_behind"

    def _tendon_signs(self, place: Address, word: int, around: _Around) -> Iterator[str]:
        tendons = around.named.get("tendon", ())
        if tendons and place.part not in tendons:
            yield "other_tendon"
        elif not tendons and self._several_repairs:
            yield "tendon_unnamed"
        n = bisect_left(self._tendons, word + 1, key=_first_word) - 1
        if n >= 0 and self._tendons[n].value == place.part and word - self._tendons[n].i > _FAR:
            yield "far_from_name"
        if around.other_part and place.field in _SUTURE:
            yield "other_part"


def _word_signs(text: str, said: list[str], words: int) -> list[tuple[str, str]]:
    """Return the signs of a sentence's text, of what it says in small letters and of its length in words."""
    signs = []
    hedges = word_list("doubts", "hedges")
    if not hedges.isdisjoint(said):
        signs.append(("hedged", next(w for w in said if w in hedges)))
    if not _NEGATION_WORDS.isdisjoint(said) and _NEGATION.search(text):
        signs.append(("negated", ""))
    if any(mark in text for mark in _FORM_MARKS) and _FORM.search(text):
        signs.append(("form", ""))
    if words > _LONG:
        signs.append(("long_sentence", ""))
    elif words <= _SHORT:
        signs.append(("short_sentence", ""))
    return signs


def _spans(fact: Fact) -> list[Span]:
    """Return the places of a fact's words in the note, in code points."""
    return [evidence.span for evidence in fact.evidence if evidence.span is not None]


def _none_some_all(alike: int, others: int) -> int:
    return 0 if not alike else 2 if alike == others else 1


def _likeness(place: Address, fact: Fact) -> tuple[tuple[object, ...], ...]:
    """Return what a fact is counted under: its field, its value, and both for its kind of tendon or pulley."""
    of_field, value = (place.group, place.field), str(fact.value)
    return of_field, (*of_field, value), (*of_field, None, place.part), (*of_field, value, place.part)


def _told_at(place: Address) -> str:
    """Return under what the signs of a fact's entry are kept: those of its sutures, of a telling field, of the rest."""
    return "suture" if place.field in _SUTURE else place.field if place.field in _TOLD else ""


def _entry(place: Address) -> Entry:
    return place.group, place.digit, place.part, place.side


def _is(facts: dict[str, Fact], name: str, value: str) -> bool:
    return name in facts and facts[name].value == value
