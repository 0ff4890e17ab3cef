"""What of a sutured tendon enters the strength model, taken from a record or given outright for a bench construct."""

from dataclasses import dataclass, replace
from typing import Any, Literal

from notereader.appraisal.known import Entry, Known
from notereader.record import Interval, Value, show_value
from notereader.vocabulary import stitches

DoubtKind = Literal["implied", "rivals", "second_look", "unconfirmed"]


@dataclass(frozen=True, slots=True)
class Feature:
    """One fact as the model takes it: the values still in question (none: unknown) and what weakens it."""

    field: str
    candidates: tuple[Value, ...] = ()
    doubts: tuple[DoubtKind, ...] = ()
    unit: str = ""

    @property
    def known(self) -> bool:
        """True where at least one value stands."""
        return bool(self.candidates)

    @property
    def standing(self) -> str:
        """How the fact is marked: 'not stated', 'confirmed' or 'proposed'."""
        if not self.known:
            return "not stated"
        return "proposed" if "unconfirmed" in self.doubts else "confirmed"

    def shown(self, value: Value | None) -> str:
        """Say the value that was used, and the others if the note gives several."""
        if value is None:
            return "not stated"
        others = [show_value(v, self.unit) for v in self.candidates if v != value]
        used = show_value(value, self.unit)
        return f"{used} (also {', '.join(others)})" if others else used


def feature_of(known: Known | None, field: str, unit: str = "") -> Feature:
    """Return the feature of one live fact; an absent one gives the unknown feature."""
    if known is None:
        return Feature(field, unit=unit)
    doubts: list[DoubtKind] = []
    if known.implied:
        doubts.append("implied")
    if known.rivals:
        doubts.append("rivals")
    if known.second_look:
        doubts.append("second_look")
    if not known.settled:
        doubts.append("unconfirmed")
    return Feature(field, known.candidates, tuple(doubts), unit)


def given(field: str, value: Value | None, unit: str = "") -> Feature:
    """Return a feature that is known for certain, or unknown where the value is None."""
    return Feature(field, () if value is None else (value,), (), unit)


# The facts of a construct that can be known or not.
FEATURES = ("strands", "size", "material", "hold", "purchase", "lock", "peripheral", "ends")


@dataclass(frozen=True, slots=True)
class Construct:
    """A sutured tendon as the strength model sees it; `cut_deg` is the angle of the cut to the axis (90: straight)."""

    strands: Feature
    size: Feature
    material: Feature
    hold: Feature
    purchase: Feature
    lock: Feature
    peripheral: Feature
    pattern: Feature
    ends: Feature
    stitch: str = ""
    gap: Literal["none", "small", "seen", "unknown"] = "unknown"
    immobilised: bool = False
    slip: bool = False
    cut_deg: float | None = None

    @classmethod
    def bench(
        cls,
        *,
        strands: int | None = None,
        size: str | None = None,
        material: str | None = None,
        hold: str | None = None,
        purchase_mm: float | None = None,
        lock_mm: float | None = None,
        peripheral: str | None = None,
        pattern: str | None = None,
        ends: str | None = "clean",
        cut_deg: float | None = 90.0,
        stitch: str = "",
    ) -> "Construct":
        """Build a construct of a laboratory study, cut clean and straight; None is what its text does not say."""
        return cls(
            strands=given("strands", strands),
            size=given("size", size),
            material=given("material", material),
            hold=given("hold", hold),
            purchase=given(
                "purchase_mm", None if purchase_mm is None else Interval(low=purchase_mm, high=purchase_mm), "mm"
            ),
            lock=given("lock_mm", None if lock_mm is None else Interval(low=lock_mm, high=lock_mm), "mm"),
            peripheral=given("peripheral", peripheral),
            pattern=given("peripheral_pattern", pattern),
            ends=given("ends", ends),
            stitch=stitch,
            gap="none",
            cut_deg=cut_deg,
        )

    def without(self, field: str) -> "Construct":
        """Return the construct with one fact forgotten."""
        feature: Feature = getattr(self, field)
        forgotten: dict[str, Any] = {field: Feature(feature.field, unit=feature.unit)}
        return replace(self, **forgotten)


def construct_of(repair: Entry, immobilised: bool) -> Construct:
    """Return the construct of one sutured tendon of a record; `immobilised` where the note may order immobilisation."""
    stitch = repair.text("stitch")
    return Construct(
        strands=_strands(repair, stitch),
        size=feature_of(repair.known("size"), "size"),
        material=feature_of(repair.known("material"), "material"),
        hold=_hold(repair, stitch),
        purchase=feature_of(repair.known("purchase_mm"), "purchase_mm", "mm"),
        lock=feature_of(repair.known("lock_mm"), "lock_mm", "mm"),
        peripheral=_peripheral(repair),
        pattern=feature_of(repair.known("peripheral_pattern"), "peripheral_pattern"),
        ends=feature_of(repair.known("ends"), "ends"),
        stitch=stitch,
        gap=_gap(repair),
        immobilised=immobilised,
        slip=repair.place.side is not None,
    )


def _strands(repair: Entry, stitch: str) -> Feature:
    """Strands as recorded; where the stitch name always has fewer, that count stands beside an unsettled one."""
    known = repair.known("strands")
    by_name = stitches().get(stitch)
    count = by_name.strands if by_name else None
    if known is None:
        if count is None or repair.silent("strands"):
            return Feature("strands")
        return _named(repair, "strands", count)
    feature = feature_of(known, "strands")
    if count is None or by_name is None or by_name.ambiguous or known.settled or known.implied or count == known.value:
        return feature
    return replace(feature, candidates=(*feature.candidates, count), doubts=_with(feature, "rivals"))


def _hold(repair: Entry, stitch: str) -> Feature:
    known = repair.known("hold")
    by_name = stitches().get(stitch)
    if known is not None or by_name is None or by_name.hold is None or repair.silent("hold"):
        return feature_of(known, "hold")
    return _named(repair, "hold", by_name.hold)


def _named(repair: Entry, field: str, value: Value) -> Feature:
    """Return what follows from the stitch name, as doubtful as the name itself and implied besides."""
    name = feature_of(repair.known("stitch"), field)
    doubts = tuple(dict.fromkeys(("implied", *name.doubts)))
    return Feature(field, (value,), doubts)


def _peripheral(repair: Entry) -> Feature:
    """Whether a peripheral suture is there; a described one counts as there, by inference."""
    known = repair.known("peripheral")
    details = [repair.known(f) for f in ("peripheral_pattern", "peripheral_size", "peripheral_material")]
    described = next((d for d in details if d is not None), None)
    if known is not None:
        return feature_of(known, "peripheral")
    if described is None or repair.silent("peripheral"):
        return Feature("peripheral")
    doubts = tuple(dict.fromkeys(("implied", *feature_of(described, "peripheral").doubts)))
    return Feature("peripheral", ("present",), doubts)


def _gap(repair: Entry) -> Literal["none", "small", "seen", "unknown"]:
    """Return the gap as the healing view takes it: any 'seen' counts, and it is small only below 3 mm by figure."""
    known, width = repair.known("gap"), repair.known("gap_mm")
    widths = [float(v) for v in width.candidates if isinstance(v, int | float)] if width else []
    if (known is not None and "seen" in known.candidates) or (widths and max(widths) > 0):
        return "small" if widths and max(widths) < 3 else "seen"
    return "none" if known is not None else "unknown"


def _with(feature: Feature, doubt: DoubtKind) -> tuple[DoubtKind, ...]:
    return tuple(dict.fromkeys((*feature.doubts, doubt)))
