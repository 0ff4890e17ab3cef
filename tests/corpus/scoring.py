"""Holds a record against a key: counts of right, wrong and missing facts, over-statements, and evidence that touches.

A fact is the triple of entry, field and value. A wrong value counts twice, as one wrong and one missing, as is usual
for precision and recall. An over-statement promises more strength or safety than the key: more strands, a thicker
suture, a deeper bite, or the reassuring one of two words.
"""

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

Entry = tuple[str | None, ...]
JsonFacts = dict[str, dict[str, Any]]
Value = Any

# From thin to thick; a size that is none of these is taken for the thickest.
GAUGES = ("10-0", "9-0", "8-0", "7-0", "6-0", "5-0", "4-0", "3-0", "2-0", "0", "1", "2")
REASSURING = {
    "peripheral": "present",
    "gap": "none",
    "ends": "clean",
    "hold": "locking",
    "tension": "none",
    "bulk": "none",
    "glide": "free",
    "finding": "intact",
    "treatment": "repaired",
    "extent": "intact",
}
STRENGTH_GROUPS = ("repairs", "pulleys")


@dataclass(frozen=True, slots=True)
class Fault:
    """A fact that differs from the key: `truth` None where the key is silent, `said` None where the record is."""

    note: str
    entry: Entry
    field: str
    truth: Value
    said: Value
    overstated: bool = False
    reasoned: bool = False

    def line(self) -> str:
        """Return note, entry and field as one line, as the allow-list writes them."""
        return " ".join((self.note, *(part for part in self.entry if part), self.field))


@dataclass(slots=True)
class Tally:
    """What was counted over one note or many."""

    right: Counter[str] = field(default_factory=Counter)
    wrong: Counter[str] = field(default_factory=Counter)
    missed: Counter[str] = field(default_factory=Counter)
    faults: list[Fault] = field(default_factory=list)
    promising: int = 0
    touching: int = 0
    touchable: int = 0
    broken_quotes: int = 0
    right_reasoned: int = 0

    @property
    def overstated(self) -> list[Fault]:
        """The faults that promise more than the key."""
        return [fault for fault in self.faults if fault.overstated]

    @property
    def wrong_facts(self) -> list[Fault]:
        """The proposed facts that the key does not hold."""
        return [fault for fault in self.faults if fault.said is not None]

    def f1(self, *groups: str) -> float:
        """Return the harmonic mean of precision and recall over the groups given, or over all."""

        def total(counted: Counter[str]) -> int:
            return sum(n for tag, n in counted.items() if not groups or tag.split(".")[0] in groups)

        right = total(self.right)
        if not right:
            return 0.0 if total(self.wrong) or total(self.missed) else 1.0
        return 2 * right / (2 * right + total(self.wrong) + total(self.missed))

    def add(self, other: "Tally") -> None:
        """Count another tally in with this one."""
        for name in ("right", "wrong", "missed"):
            getattr(self, name).update(getattr(other, name))
        self.faults += other.faults
        for name in ("promising", "touching", "touchable", "broken_quotes", "right_reasoned"):
            setattr(self, name, getattr(self, name) + getattr(other, name))


def entries(record: dict[str, Any]) -> dict[Entry, JsonFacts]:
    """Return the facts of every entry of a record or key, by group and name."""
    found: dict[Entry, JsonFacts] = {}
    for group in ("operation", "aftercare", "elements"):
        found[(group,)] = record.get(group) or {}
    names = {
        "repairs": ("digit", "tendon", "slip"),
        "pulleys": ("digit", "pulley"),
        "injuries": ("digit", "structure", "side"),
    }
    for group, parts in names.items():
        for entry in record.get(group) or []:
            found[(group, *(entry.get(part) for part in parts))] = entry.get("facts") or {}
    return found


def plain(value: Value) -> Value:
    """Return a value as two are compared: figures rounded, intervals as pairs, words in small letters."""
    if value is None or isinstance(value, bool):
        return value
    if isinstance(value, int | float):
        return round(float(value), 2)
    if isinstance(value, dict):
        return plain(value.get("low")), plain(value.get("high"))
    return str(value).strip().lower()


def promises_more(name: str, said: Value, truth: Value) -> bool:
    """Tell whether a value promises more strength or safety than the truth (None: the note is silent)."""
    if said == truth:
        return False
    if name == "strands":
        return truth is None or said > truth
    if name == "size":
        thick = {gauge: n for n, gauge in enumerate(GAUGES)}
        return truth is None or thick.get(str(said), 99) > thick.get(str(truth), 99)
    if name in ("purchase_mm", "lock_mm"):
        return truth is None or (said[0] or 0) > (truth[0] or 0)
    return REASSURING.get(name) == said


def score(note: str, text: str, key: dict[str, Any], record: dict[str, Any]) -> Tally:
    """Hold the record of a note against its key."""
    tally = Tally()
    want, got = entries(key), entries(record)
    for entry in sorted(want.keys() | got.keys(), key=str):
        truths, said = want.get(entry, {}), got.get(entry, {})
        for name in sorted(truths.keys() | said.keys()):
            _score_fact(tally, note, text, entry, name, truths.get(name), said.get(name))
    return tally


def _score_fact(
    tally: Tally, note: str, text: str, entry: Entry, name: str, key: JsonFacts | None, fact: JsonFacts | None
) -> None:
    tag = f"{entry[0]}.{name}"
    truth, said = _value(key), _value(fact)
    if fact is not None and said is not None:
        tally.broken_quotes += _broken_quotes(fact, text)
        tally.promising += entry[0] in STRENGTH_GROUPS
    if truth is not None and said == truth:
        tally.right[tag] += 1
        tally.right_reasoned += bool(fact and fact.get("look_twice"))
        _score_touch(tally, key, fact)
        return
    if truth is None and said is None:
        return
    tally.missed[tag] += truth is not None
    tally.wrong[tag] += said is not None
    over = said is not None and entry[0] in STRENGTH_GROUPS and promises_more(name, said, truth)
    tally.faults.append(Fault(note, entry, name, truth, said, over, bool(fact and fact.get("look_twice"))))


def _value(fact: JsonFacts | None) -> Value:
    if not isinstance(fact, dict) or fact.get("status") == "withdrawn":
        return None
    return plain(fact.get("value"))


def _score_touch(tally: Tally, key: JsonFacts | None, fact: JsonFacts | None) -> None:
    if not key or not fact or not key.get("evidence") or not fact.get("evidence"):
        return
    tally.touchable += 1
    proofs = list(_spans(fact))
    tally.touching += any(a < d and c < b for a, b in _spans(key) for c, d in proofs)


def _spans(fact: JsonFacts) -> Iterator[tuple[int, int]]:
    for evidence in fact.get("evidence") or []:
        for selector in evidence.get("selector") or []:
            if selector.get("type") == "TextPositionSelector":
                yield selector["start"], selector["end"]


def _broken_quotes(fact: JsonFacts, text: str) -> int:
    """Count the quotes of a stated fact that are not the note's words at their positions; a lack of evidence is one."""
    if fact.get("basis") != "stated":
        return 0
    if not fact.get("evidence"):
        return 1
    broken = 0
    for evidence in fact["evidence"]:
        places = list(_spans({"evidence": [evidence]}))
        for selector in evidence.get("selector") or []:
            if selector.get("type") == "TextQuoteSelector":
                broken += not places or text[places[0][0] : places[0][1]] != selector["exact"]
    return broken


def by_field(tally: Tally) -> dict[str, tuple[int, int, int]]:
    """Return right, wrong and missed of each field, the worst field first."""
    tags = tally.right.keys() | tally.wrong.keys() | tally.missed.keys()
    counted: dict[str, tuple[int, int, int]] = defaultdict(lambda: (0, 0, 0))
    for tag in sorted(tags, key=lambda tag: (-tally.wrong[tag] - tally.missed[tag], tag)):
        counted[tag] = (tally.right[tag], tally.wrong[tag], tally.missed[tag])
    return dict(counted)
