"""What is to be drawn of one digit or the wrist, and the same in words. Knows no Qt.

A value a person settled is drawn in ink, a proposed one in pencil, and what nobody said as unknown: never as absent and
never as intact.
"""

from dataclasses import dataclass
from typing import Literal

from notereader.desktop.rows import DIGITS
from notereader.record import Fact, Record, Value, show_value
from notereader.vocabulary import field_specs

Kind = Literal["finger", "thumb", "wrist"]

PULLEYS: dict[Kind, tuple[str, ...]] = {
    "finger": ("A5", "C3", "A4", "C2", "A3", "C1", "A2", "A1"),
    "thumb": ("A2", "oblique", "variable", "A1"),
    "wrist": ("flexor retinaculum",),
}
_SETTLED = frozenset({"confirmed", "corrected", "added"})
NOT_MENTIONED = "not mentioned"


@dataclass(frozen=True)
class Told:
    """A value the note states, and whether a person settled it."""

    value: Value
    settled: bool
    unit: str = ""

    def words(self) -> str:
        """Say the value, and that it is only proposed where it is."""
        plain = show_value(self.value, self.unit)
        return plain if self.settled else f"{plain} (proposed)"


@dataclass(frozen=True)
class TendonDrawing:
    """What is known of one tendon, or of one slip; a field not in `told` is unknown."""

    tendon: str
    slip: str | None
    told: dict[str, Told]

    @property
    def name(self) -> str:
        """The tendon and its slip in words."""
        return f"{self.tendon}, {self.slip} slip" if self.slip else self.tendon

    def value(self, field: str) -> Value | None:
        """Return the value of a field, or None where it is unknown."""
        told = self.told.get(field)
        return told.value if told else None

    def settled(self, field: str) -> bool:
        """True where a person settled the field."""
        told = self.told.get(field)
        return told is not None and told.settled

    @property
    def is_cut(self) -> bool:
        """True where the note says that the tendon was cut, or tells of something done to a cut."""
        if self.value("extent") == "intact":
            return False
        return "extent" in self.told or "treatment" in self.told or "extent_percent" in self.told

    @property
    def is_sutured(self) -> bool:
        """True where a core suture holds it: repaired, reinserted or grafted."""
        return self.value("treatment") in ("repaired", "reinserted", "grafted")

    def short(self) -> str:
        """Say in a few words what became of it, for the label beside the drawing."""
        extent = self.value("extent")
        if extent == "intact":
            return "intact"
        done = self.told.get("treatment")
        if done is not None:
            return "left unrepaired" if done.value == "left" else str(done.value)
        return f"{extent} cut" if extent else "?"

    def words(self) -> str:
        """Say all that is drawn of it in one sentence."""
        if self.value("extent") == "intact" and "treatment" not in self.told:
            return f"{self.name}: {_how_cut(self)}."
        parts = [_how_cut(self), _where(self)]
        done = _or_unknown(self.told.get("treatment"))
        parts.append(f"treatment: {done.replace('left', 'left unrepaired', 1)}")
        if self.is_sutured:
            parts.append(f"core strands: {_or_unknown(self.told.get('strands'))}")
            parts.append(f"core suture size: {_or_unknown(self.told.get('size'))}")
            parts.append(f"peripheral suture: {_or_unknown(self.told.get('peripheral'))}")
            parts.append(f"gap after repair: {_or_unknown(self.told.get('gap'))}")
        return f"{self.name}: {'; '.join(parts)}."


@dataclass(frozen=True)
class PulleyDrawing:
    """What is known of one pulley; `finding` is None where nobody mentioned it."""

    name: str
    finding: Told | None = None
    percent: Told | None = None
    millimetres: Told | None = None
    part: Told | None = None

    @property
    def state(self) -> str:
        """The finding as a word, 'not mentioned' where there is none."""
        return NOT_MENTIONED if self.finding is None else str(self.finding.value)

    @property
    def settled(self) -> bool:
        """True where a person settled the finding."""
        return self.finding is not None and self.finding.settled

    def how_much(self) -> str:
        """Say which part of it and how much: 'proximal, 30 %'; empty where nothing is said."""
        told = [t for t in (self.part, self.percent, self.millimetres) if t is not None]
        return ", ".join(show_value(t.value, t.unit) for t in told)

    def label(self) -> str:
        """Say it in a few words for the label beside the drawing."""
        more = self.how_much()
        return f"{self.state}, {more}" if more else self.state

    def words(self) -> str:
        """Say it in one sentence."""
        name = self.name if self.name == "flexor retinaculum" else f"{self.name} pulley"
        if self.finding is None:
            return f"{name}: {NOT_MENTIONED}."
        proposed = "" if self.settled else " (proposed)"
        extent = self.how_much()
        if not extent and self.state in ("vented", "trimmed"):
            extent = "how much is not stated"
        return f"{name}: {self.state}{', ' + extent if extent else ''}{proposed}."


@dataclass(frozen=True)
class Drawing:
    """All that is drawn of one digit, or of the wrist where `digit` is None; `side` is None where it is not stated."""

    digit: str | None
    kind: Kind
    side: Told | None
    tendons: tuple[TendonDrawing, ...]
    pulleys: tuple[PulleyDrawing, ...]

    @property
    def title(self) -> str:
        """What is drawn: 'Right ring finger', 'Thumb', 'Wrist'."""
        place = {"thumb": "thumb", "wrist": "wrist"}.get(self.kind, f"{self.digit} finger")
        side = "" if self.side is None else f"{self.side.words()} "
        return f"{side}{place}".capitalize()

    def words(self) -> str:
        """Say everything that is drawn: the text equivalent of the picture."""
        lines = [f"{self.title}, seen from the palm."]
        lines += [tendon.words() for tendon in self.tendons] or ["No tendon entered."]
        mentioned = [pulley.words() for pulley in self.pulleys if pulley.finding is not None]
        unknown = [pulley.name for pulley in self.pulleys if pulley.finding is None]
        lines += mentioned
        if unknown:
            lines.append(f"Not mentioned, so unknown: {', '.join(unknown)}.")
        return "\n".join(lines)


def drawing_of(record: Record, digit: str | None) -> Drawing:
    """Return what is to be drawn of a digit; None means the wrist and whatever names no digit."""
    kind: Kind = "wrist" if digit is None else "thumb" if digit == "thumb" else "finger"
    side = _told("operation", record.operation).get("side")
    tendons = [
        TendonDrawing(repair.tendon, repair.slip, told)
        for repair in record.repairs
        if repair.digit == digit and (told := _told("repairs", repair.facts))
    ]
    named: dict[str, PulleyDrawing] = {
        pulley.pulley: _pulley(pulley.pulley, _told("pulleys", pulley.facts))
        for pulley in record.pulleys
        if pulley.digit == digit
    }
    usual = PULLEYS[kind]
    pulleys = [named.get(name) or PulleyDrawing(name) for name in usual]
    pulleys += [pulley for name, pulley in named.items() if name not in usual]
    return Drawing(digit, kind, None if side and side.value == "both" else side, tuple(tendons), tuple(pulleys))


def digits_to_draw(record: Record) -> list[str | None]:
    """Return the digits that have something to draw, thumb to small, then None for the wrist."""
    drawn = [(place, facts) for place, facts in record.entries() if place.group in ("repairs", "pulleys")]
    present = {place.digit for place, facts in drawn if any(fact.live for fact in facts.values())}
    return [*(digit for digit in DIGITS if digit in present), *([None] if None in present else [])]


def first_to_draw(record: Record) -> str | None:
    """Return the digit to draw before any is chosen: the first with a tendon that something was done to."""
    digits = digits_to_draw(record)
    treated = {
        place.digit
        for place, facts in record.entries()
        if place.group == "repairs" and (fact := facts.get("treatment")) is not None and fact.live
    }
    return next((digit for digit in digits if digit in treated), digits[0] if digits else None)


def _told(group: str, facts: dict[str, Fact]) -> dict[str, Told]:
    units = {name: spec.unit for name, spec in field_specs()[group].items()}
    return {
        name: Told(fact.value, fact.status in _SETTLED, units[name])
        for name, fact in facts.items()
        if fact.live and fact.value is not None
    }


def _pulley(name: str, told: dict[str, Told]) -> PulleyDrawing:
    return PulleyDrawing(name, told.get("finding"), told.get("extent_percent"), told.get("extent_mm"), told.get("part"))


def _or_unknown(told: Told | None) -> str:
    return "not stated" if told is None else told.words()


def _how_cut(tendon: TendonDrawing) -> str:
    extent = tendon.told.get("extent")
    if extent is None:
        return "how much was cut is not stated"
    if extent.value == "intact":
        return "intact" if extent.settled else "intact (proposed)"
    percent = tendon.told.get("extent_percent")
    share = f", {percent.words()}" if percent else ""
    proposed = "" if extent.settled else " (proposed)"
    return f"{extent.value} cut{proposed}{share}"


def _where(tendon: TendonDrawing) -> str:
    zone = tendon.told.get("zone")
    return "level not stated" if zone is None else f"zone {zone.words()}"
