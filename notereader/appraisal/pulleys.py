"""Pulley findings beside what is published about opened pulleys. It reports and directs nothing."""

from collections.abc import Iterable
from itertools import pairwise

from notereader.appraisal.geometry import bowstring
from notereader.appraisal.glide_tables import glide_tables
from notereader.appraisal.known import Case, Entry, Known
from notereader.appraisal.models import Cited, LengthRange

# What was done to a pulley, sorted by what is left of it. 'injured' may be anything between, and is read as such.
PART = ("vented", "trimmed")
WHOLE = ("released", "excised")
UNSURE = ("injured",)
# Order along the finger; neighbours stand next to each other.
SHEATH = ("A1", "A2", "C1", "A3", "C2", "A4", "C3", "A5")


def worst_state(known: Known) -> str:
    """Return the state in question that leaves least of the pulley."""
    order = (*WHOLE, *UNSURE, *PART)
    found = [str(v) for v in known.candidates]
    return min(found, key=lambda v: order.index(v) if v in order else len(order))


def opened(entry: Entry) -> bool:
    """True where any state in question means that part or all of the pulley is open or lost."""
    known = entry.known("finding")
    return known is not None and worst_state(known) in (*PART, *WHOLE, *UNSURE)


def opening_mm(entry: Entry) -> tuple[float, float] | None:
    """Return the shortest and longest opening of a pulley in mm; None where it is not open or its width is not known.

    Without a figure a part-opened pulley may be open over anything up to its width.
    """
    known = entry.known("finding")
    if known is None or not opened(entry):
        return None
    width = glide_tables().widths.mm.get(entry.place.part or "")
    given, share = entry.number("extent_mm"), entry.number("extent_percent")
    if given is not None:
        return given, given
    if width is None or entry.place.digit == "thumb":
        return None
    if worst_state(known) in WHOLE:
        settled = len(known.candidates) == 1
        return (width if settled else 0.0), width
    if share is not None:
        return width * share / 100, width * share / 100
    return 0.0, width


def whole(low: float, high: float) -> str:
    """Say a range in whole units, once where both ends round to the same."""
    return f"{low:.0f}" if f"{low:.0f}" == f"{high:.0f}" else f"{low:.0f} to {high:.0f}"


def openings_of(case: Case, digit: str) -> LengthRange | None:
    """Return the sum of the openings of a digit in mm as a range, or None where none is recorded."""
    found = [o for e in case.pulleys if e.place.digit == digit and (o := opening_mm(e)) is not None]
    return LengthRange(low=sum(o[0] for o in found), high=sum(o[1] for o in found)) if found else None


def pulley_remarks(case: Case, digit: str, needed: dict[str, int]) -> list[Cited]:
    """Return what is published about the pulley findings of a digit, and which pulleys the record is silent about."""
    states = {e.place.part or "": e for e in case.pulleys if e.place.digit == digit and e.known("finding")}
    return [
        *_recorded(states),
        *(_thumb(states) if digit == "thumb" else _finger(states)),
        *_totals(case, digit, states),
        *_silent(states, needed),
        *_retinaculum(case, digit),
    ]


def _limit(when: str, **fill: object) -> Cited:
    row = next(r for r in glide_tables().limit if r.when == when)
    return Cited(words=row.words.format(**fill), source=row.source, status=row.status)


def _said(entry: Entry) -> str:
    """Say the recorded state with extent and standing."""
    known = entry.known("finding")
    assert known is not None
    extent = entry.known("extent_mm") or entry.known("extent_percent")
    words = [" or ".join(str(v) for v in known.candidates)]
    if extent:
        words.append(extent.shown())
    if known.standing == "proposed":
        words.append("proposed")
    return ", ".join(words)


def _recorded(states: dict[str, Entry]) -> Iterable[Cited]:
    if states:
        yield _limit("recorded", pulleys="; ".join(f"{name} {_said(entry)}" for name, entry in sorted(states.items())))


def _finger(states: dict[str, Entry]) -> Iterable[Cited]:
    a2, a3, a4 = states.get("A2"), states.get("A3"), states.get("A4")
    if a4 and opened(a4):
        yield _limit("a4_opened", state=_said(a4))
    if a2 and opened(a2):
        known = a2.known("finding")
        assert known is not None
        whole = worst_state(known) in (*WHOLE, *UNSURE) or a2.number("extent_percent") == 100
        yield _limit("a2_whole" if whole else "a2_part", state=_said(a2))
    if a3 and opened(a3):
        yield _limit("a3_lost", state=_said(a3))
    if a2 and a4 and opened(a2) and opened(a4):
        yield _limit("both_a2_a4")
    lost = [name for name in SHEATH if name in states and opened(states[name])]
    pairs = [f"{x} and {y}" for x, y in pairwise(lost) if _neighbours(x, y)]
    if pairs:
        yield _limit("adjacent", pulleys=", ".join(pairs))


def _neighbours(first: str, second: str) -> bool:
    """True for pulleys next to each other; an annular pulley also neighbours the next annular one."""
    gap = SHEATH.index(second) - SHEATH.index(first)
    return gap == 1 or (gap == 2 and first[0] == second[0] == "A")


def _thumb(states: dict[str, Entry]) -> Iterable[Cited]:
    oblique, a1, variable = states.get("oblique"), states.get("A1"), states.get("variable")
    if oblique:
        yield _limit("thumb_oblique", state=_said(oblique))
    if a1 and variable and opened(a1) and opened(variable):
        yield _limit("thumb_a1_variable")


def _totals(case: Case, digit: str, states: dict[str, Entry]) -> Iterable[Cited]:
    total = openings_of(case, digit)
    if total is None:
        return
    yield from _assumed(states)
    window = glide_tables().window
    when = "total_over" if total.high > window.low_mm else "total_within"
    yield _limit(when, range=whole(total.low, total.high))
    bowing, table = bowstring(total.high), glide_tables().bowstring
    said = table.words.format(
        extra=bowing.extra_mm, lost=bowing.lost_deg, arm=bowing.arm_mm, intact=bowing.intact_arm_mm
    )
    yield Cited(words=said, source=table.source, status=table.status)


def _assumed(states: dict[str, Entry]) -> Iterable[Cited]:
    """Say which openings are no figures of the record but the usual width of the pulley."""
    widths = glide_tables().widths.mm
    names = [n for n in sorted(states) if opening_mm(states[n]) and states[n].number("extent_mm") is None]
    if names:
        yield _limit("assumed", pulleys=", ".join(f"{name} {widths[name]:g} mm" for name in names))


def _silent(states: dict[str, Entry], needed: dict[str, int]) -> Iterable[Cited]:
    missing = [name for name in needed if name not in states]
    if missing:
        yield _limit("silent", pulleys=", ".join(missing))


def _retinaculum(case: Case, digit: str) -> Iterable[Cited]:
    entry = case.pulley(None, "flexor retinaculum")
    near = any(e.text("zone") in ("", "III", "IV", "V") for e in case.repairs if e.place.digit == digit)
    if near and entry and entry.known("finding"):
        yield _limit("retinaculum", state=_said(entry))
