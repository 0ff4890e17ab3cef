"""The appraisal as readable text for paper, terminal and screen readers."""

import textwrap
from collections.abc import Iterable, Iterator

from notereader.appraisal.figures import Status
from notereader.appraisal.models import (
    Appraisal,
    Completeness,
    DigitGlide,
    FactorShare,
    ForceRange,
    MarginDay,
    NeedItem,
    StandardResult,
    Strength,
    Tally,
    TendonAppraisal,
    TimeMark,
)

WIDTH = 100
_STATUS = {"verified": "seen", "memory": "from memory", "derived": "derived here"}
_STATES = (("contradictory", "contradictory"), ("implied", "only implied"), ("silent", "not stated"))


def appraisal_text(appraisal: Appraisal) -> str:
    """Return an appraisal as plain text. The cautions open and close it; every figure carries a source number."""
    sources = Sources()
    lines = [
        f"APPRAISAL{': ' + appraisal.note if appraisal.note else ''}",
        "",
        *_cautions(appraisal.cautions),
        "",
        *_fill(_standing_words(appraisal)),
        *_section("WHAT THE NOTE GIVES", _completeness(appraisal.completeness, sources)),
        *_section("CONTRADICTIONS AND UNUSUAL FINDINGS", _contradictions(appraisal, sources)),
        *_section("QUESTIONS FOR THE SURGEON, THE MOST TELLING FIRST", _questions(appraisal)),
        *_section("STRENGTH AGAINST LOAD", _tendons(appraisal, sources)),
        *_section("GLIDE AND PULLEYS", _glide(appraisal, sources)),
        *_section("TIME LINE", _timeline(appraisal, sources)),
        *_section("SOURCES", sources.lines()),
        "",
        *_cautions(appraisal.cautions),
    ]
    return "\n".join(lines) + "\n"


class Sources:
    """Numbers the sources in the order in which they are first named."""

    def __init__(self) -> None:
        self._known: dict[str, int] = {}

    def number(self, source: str, status: Status) -> str:
        """Return the mark of a source, e.g. '[3]'; how sure it is stands in the list."""
        said = source if _STATUS[status] in source else f"{source} ({_STATUS[status]})"
        return f"[{self._known.setdefault(said, len(self._known) + 1)}]"

    def entries(self) -> Iterator[tuple[int, str]]:
        """Yield every number with its source."""
        for said, number in self._known.items():
            yield number, said

    def lines(self) -> Iterator[str]:
        """Yield the list of sources as it is printed."""
        yield from _fill(
            "seen: read in the paper or its abstract; from memory: not looked up; derived here: worked out or judged."
        )
        for number, said in self.entries():
            yield from _fill(said, "      ", f"{f'[{number}]':>5} ")


def range_words(force: ForceRange, unit: str = "N") -> str:
    """Say a range in whole units, rounded outwards so that rounding never narrows it."""
    low, high = int(force.low), int(force.high) + (force.high > int(force.high))
    return f"{low} to {high} {unit}".rstrip()


def _fill(words: str, indent: str = "", first: str | None = None) -> list[str]:
    start = indent if first is None else first
    return textwrap.wrap(words, WIDTH, initial_indent=start, subsequent_indent=indent) or [start.rstrip()]


def _section(title: str, body: Iterable[str]) -> list[str]:
    return ["", title, "-" * len(title), *body]


def _cautions(cautions: list[str]) -> list[str]:
    return ["CAUTIONS", *(line for c in cautions for line in _fill(c, "    ", "  * "))]


def _standing_words(appraisal: Appraisal) -> str:
    confirmed, proposed = appraisal.facts_confirmed, appraisal.facts_proposed
    day = (
        f"day {appraisal.day} after the operation"
        if appraisal.day_given
        else "the day of the operation (no day was given)"
    )
    return (
        f"{confirmed} facts confirmed by a person, {proposed} proposed by the program and not yet confirmed. "
        f"Shown for {day}, the tendon bent by {appraisal.posture_deg:g} degrees at the repair."
    )


def _completeness(found: Completeness, sources: Sources) -> Iterator[str]:
    yield f"What a therapist needs {sources.number(found.source, 'derived')}:"
    for group in found.needs:
        yield f"  {_tally_words(group.tally)}"
        for state, lead in _STATES:
            items = [item_words(i) for i in group.items if i.state == state]
            if items:
                yield from _fill(f"{lead}: {'; '.join(items)}", "      ", "    ")
    yield ""
    yield "By part of the record:"
    for part in found.parts:
        yield f"  {_tally_words(part)}"
    yield ""
    yield "What a note of any operation owes by published standards:"
    for standard in found.owed:
        yield from _standard(standard, sources)


def item_words(item: NeedItem) -> str:
    """Say where something is needed and what it is."""
    return (
        f"{item.where}: {item.label[0].lower()}{item.label[1:]}"
        if item.label[1:2].islower()
        else f"{item.where}: {item.label}"
    )


def _standard(standard: StandardResult, sources: Sources) -> Iterator[str]:
    yield from _fill(f"{_tally_words(standard.tally)} {sources.number(standard.source, standard.status)}", "    ", "  ")
    missing = [i.label for i in standard.items if i.state == "silent"]
    if missing:
        yield from _fill(f"not found: {', '.join(missing)}", "      ", "    ")
    if standard.absent_from_record:
        yield from _fill(
            f"asked, but the record has no place for it: {', '.join(standard.absent_from_record)}", "      ", "    "
        )
    yield from _fill(standard.note, "      ", "    ")


def _tally_words(tally: Tally) -> str:
    share = "" if tally.share_stated is None else f" ({tally.share_stated:.0%})"
    parts = [f"{tally.stated} of {tally.items} stated{share}"]
    for count, word in (
        (tally.implied, "implied"),
        (tally.contradictory, "contradictory"),
        (tally.silent, "not stated"),
    ):
        if count:
            parts.append(f"{count} {word}")
    return f"{tally.label}: {', '.join(parts)}"


def _contradictions(appraisal: Appraisal, sources: Sources) -> Iterator[str]:
    if not appraisal.contradictions:
        yield "None of the named checks found anything. That does not make the note right."
    for hit in appraisal.contradictions:
        yield from _fill(
            f"{hit.title} ({hit.kind}): {hit.words} {sources.number(hit.source, 'derived')}", "    ", "  * "
        )
        for piece in hit.pieces:
            quote = f' - "{" ".join(piece.quote.split())}"' if piece.quote else ""
            yield from _fill(f"{piece.words}: {piece.value}{quote} ({piece.standing})", "        ", "      ")


def _questions(appraisal: Appraisal) -> Iterator[str]:
    if not appraisal.questions:
        yield "None."
    for number, q in enumerate(appraisal.questions, 1):
        where = f" ({q.where})" if q.where else ""
        yield from _fill(f"{q.text}{where}", "     ", f"{number:>3}. ")
        yield from _fill(
            f"{q.says} Asked because {q.reason}. Weight {q.effect:.0%}, {q.effect_from}.", "       ", "     "
        )


def _tendons(appraisal: Appraisal, sources: Sources) -> Iterator[str]:
    if not appraisal.tendons:
        yield "The record holds no tendon."
    yield from _strength_keys(appraisal.tendons, sources)
    for tendon in appraisal.tendons:
        yield ""
        yield tendon.where[0].upper() + tendon.where[1:]
        if tendon.strength is None:
            yield from _fill(tendon.reason, "  ", "  ")
            continue
        yield from _strength(tendon.strength, sources)
        yield from _margins(tendon)


def _strength_keys(tendons: list[TendonAppraisal], sources: Sources) -> Iterator[str]:
    """Say once what holds for every tendon: the method, both views of healing, the loads, and how the tables read."""
    shown = [tendon for tendon in tendons if tendon.strength is not None]
    if not shown or shown[0].strength is None:
        return
    first = shown[0].strength
    yield from _fill(first.method)
    yield from _fill(f"{first.healing.words} {sources.number(first.healing.source, first.healing.status)}")
    loads = {load.key: load for tendon in shown for load in tendon.loads}
    if not loads:
        return
    yield ""
    yield "Tendon force by activity, with the allowance:"
    for load in loads.values():
        force = range_words(ForceRange(low=load.low, high=load.high))
        measured = _figures(load.measured_low, load.measured_high)
        mark = sources.number(load.source, load.status)
        yield from _fill(f"{load.label}: {force} (measured {measured}) {mark}", "    ", "  ")
    yield from _fill(next(t.load_note for t in shown if t.loads), "  ", "  ")
    yield ""
    yield from _fill(_GRID_KEY)


def _strength(strength: Strength, sources: Sources) -> Iterator[str]:
    yield f"  Breaking force on day {strength.day}: {range_words(strength.breaking)}"
    yield f"  Force at a 2 mm gap: {range_words(strength.gap)}"
    yield f"  The upper end is {strength.spread_ratio:.1f} times the lower one before any ceiling: that much is open."
    for note in strength.notes:
        yield from _fill(note, "    ", "  ! ")
    yield ""
    yield "  What the range stands on: factor, middle, 90 % range, share of the spread"
    for factor in strength.factors:
        yield from _factor_lines(factor, sources)
    healing = f"time since repair, day {strength.day}: x {strength.healing_low:.2f} to {strength.healing_high:.2f}"
    yield from _fill(f"{healing} {sources.number(strength.healing.source, strength.healing.status)}", "      ", "    ")


def _factor_lines(factor: FactorShare, sources: Sources) -> Iterator[str]:
    share = f", {factor.share:.0%} of the spread" if factor.share else ""
    value = (
        f"{factor.value}{f' ({factor.standing})' if factor.standing else ''}"
        if factor.value != "not stated"
        else "NOT STATED"
    )
    numbers = (
        f"x {factor.middle:.2f} ({factor.low:.2f} to {factor.high:.2f})"
        if factor.name != _BASE
        else f"{factor.low:.0f} to {factor.high:.0f} N"
    )
    yield from _fill(
        f"{factor.name}: {value}: {numbers}{share} {sources.number(factor.source, factor.status)}", "      ", "    "
    )


# The first factor carries the unit; its range is shown in newton.
_GRID_KEY = (
    "Strength range against load range by day. above: the strength range lies above the load range; overlap: the "
    "ranges overlap and the figures cannot say which is larger; below: the strength range lies below."
)
_BASE = "base: two strands of 4-0, locked, clean, straight"


def _margins(tendon: TendonAppraisal) -> Iterator[str]:
    if not tendon.loads:
        yield ""
        yield from _fill(tendon.load_note, "  ", "  ")
        return
    labels = [load.short for load in tendon.loads]
    yield from _grid("breaking, N", tendon.table, labels, gap=False)
    yield from _grid("2 mm gap, N", tendon.table, labels, gap=True)


def _grid(title: str, rows: list[MarginDay], labels: list[str], *, gap: bool) -> Iterator[str]:
    yield ""
    yield f"  {'day':>4} {title:>12}" + "".join(f"{label:>12}" for label in labels)
    for row in rows:
        force = range_words(row.gap if gap else row.breaking, "")
        cells = "".join(f"{m.gap if gap else m.breaking:>12}" for m in row.margins)
        yield f"  {row.day:>4} {force:>12}{cells}"


def _figures(low: float, high: float) -> str:
    return f"{low:g}" if low == high else f"{low:g} to {high:g}"


def _glide(appraisal: Appraisal, sources: Sources) -> Iterator[str]:
    if not appraisal.glide:
        yield "The record holds no cut tendon of a named digit."
    for digit in appraisal.glide:
        yield ""
        yield digit.digit.capitalize()
        yield from _digit(digit, sources)
    if appraisal.glide:
        yield ""
        yield "For every digit"
        yield from _shared_notes(appraisal.glide, sources)


def _digit(digit: DigitGlide, sources: Sources) -> Iterator[str]:
    for cited in digit.found:
        yield from _fill(cited.words, "    ", "  * ")
    for travel in digit.travel:
        yield from _fill(f"{travel.words} {sources.number(travel.source, travel.status)}", "    ", "  * ")
    for cited in digit.pulleys:
        yield from _fill(f"{cited.words} {sources.number(cited.source, cited.status)}", "    ", "  * ")


def _shared_notes(digits: list[DigitGlide], sources: Sources) -> Iterator[str]:
    """Say once what holds for several digits."""
    notes = dict.fromkeys((n.words, n.source, n.status) for digit in digits for n in digit.notes)
    for words, source, status in notes:
        yield from _fill(f"{words} {sources.number(source, status)}", "    ", "  * ")
    first = digits[0]
    yield from _fill(f"{first.friction_words} {sources.number(first.friction_source, 'derived')}", "    ", "  * ")


def _timeline(appraisal: Appraisal, sources: Sources) -> Iterator[str]:
    line = appraisal.timeline
    if line.operation:
        yield f"  Operation: {line.operation.isoformat()}"
    if line.chosen:
        since = f", {line.days_since_injury} days after the injury" if line.days_since_injury is not None else ""
        yield f"  Chosen: {line.chosen.isoformat()}, day {line.day}{since}"
    for mark in line.case:
        yield f"  {_mark_words(mark)}"
    yield "  Windows named in publications (they direct nothing):"
    for mark in line.published:
        yield from _fill(f"{_mark_words(mark)} {sources.number(mark.source, mark.status)}", "      ", "    ")
    for note in line.notes:
        yield from _fill(note, "  ", "  ")


def _mark_words(mark: TimeMark) -> str:
    until = f" to {mark.to_day:g}" if mark.to_day is not None and mark.to_day != mark.from_day else ""
    here = " (the chosen day lies here)" if mark.here else ""
    return f"day {mark.from_day:g}{until}{here}: {mark.label}"
