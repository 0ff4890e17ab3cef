"""What the confirmed facts mean, as pages of rich text. Knows no Qt; every text of the record is escaped."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import escape
from itertools import groupby

from notereader.appraisal import Settled
from notereader.appraisal.models import (
    Appraisal,
    Cited,
    DigitGlide,
    ForceRange,
    Margin,
    Question,
    Strength,
    TendonAppraisal,
)
from notereader.appraisal.text import Sources, item_words, range_words

NOTHING_CONFIRMED = "Nothing of it is confirmed yet, so no figure is shown."
# The words for how the ranges lie, said with their sign so that neither colour nor place is needed.
_SIGNS = {"above": "▲ strength range above", "overlap": "◆ ranges overlap", "below": "▼ strength range below"}


@dataclass(frozen=True, slots=True)
class TendonLine:
    """One tendon of the record: what the confirmed facts say of it, or why there is no figure."""

    address: str
    where: str
    shown: TendonAppraisal | None
    reason: str

    @property
    def strength(self) -> Strength | None:
        """What it holds by the confirmed facts, None where nothing is shown."""
        return self.shown.strength if self.shown else None


def tendon_lines(settled: Settled) -> list[TendonLine]:
    """Return every tendon of the record, also those of which nothing is confirmed."""
    confirmed = {t.address: t for t in settled.confirmed.tendons}
    lines = []
    for tendon in settled.whole.tendons:
        shown = confirmed.get(tendon.address)
        reason = NOTHING_CONFIRMED if shown is None else shown.reason
        lines.append(TendonLine(tendon.address, _capital(tendon.where), shown, reason))
    return lines


def standing_words(settled: Settled) -> str:
    """Say how many facts count here and how many are left out because nobody confirmed them."""
    left, counted = len(settled.left_out), settled.confirmed.facts_confirmed
    counts = f"{counted} confirmed {_facts(counted)} {'counts' if counted == 1 else 'count'} here."
    return f"{counts} {left} proposed {_facts(left)} still unconfirmed and left out." if left else counts


def strength_page(settled: Settled, day_words: str) -> str:
    """Return strength against load and glide of the confirmed facts, with sources and cautions."""
    sources, appraisal = Sources(), settled.confirmed
    body = [
        f"<p><b>{escape(standing_words(settled))}</b></p><p>{escape(day_words)}</p>",
        *(part for line in tendon_lines(settled) for part in _tendon(line, settled, sources)),
        *_shared(appraisal, sources),
        *_glide(settled, sources),
        *_section("Cautions", appraisal.cautions),
        *_sources(sources),
    ]
    return "\n".join(body)


def weeks_page(settled: Settled, line: TendonLine) -> str:
    """Return the chart of one tendon in words: its ranges by day and how they lie against each activity."""
    cautions = _section("Cautions", settled.confirmed.cautions)
    if line.shown is None or line.strength is None:
        return "\n".join([f"<p><b>{escape(line.where)}: unknown.</b> {escape(line.reason)}</p>", *cautions])
    shown, sources = line.shown, Sources()
    body = [f"<p>{escape(standing_words(settled))}</p>", *_unknown(line.strength), *_worse(settled, line)]
    for row in shown.table:
        body.append(f"<h4>Day {row.day}</h4>")
        body.append(
            f"<p>Breaking {escape(range_words(row.breaking))}; 2 mm gap {escape(range_words(row.gap))}.<br>"
            f"{_verdicts('Breaking', row.margins, gap=False)}<br>{_verdicts('2 mm gap', row.margins, gap=True)}</p>"
        )
    if not shown.loads:
        body.append(f"<p>{escape(shown.load_note)}</p>")
    return "\n".join([*body, *_shared(settled.confirmed, sources), *cautions, *_sources(sources)])


def questions_page(settled: Settled) -> str:
    """Return what the note leaves open, what in it disagrees, and the questions for the surgeon."""
    whole, sources = settled.whole, Sources()
    left = len(settled.left_out)
    unconfirmed = (
        f"<p><b>{left} proposed {_facts(left)} still unconfirmed.</b> They are taken as read here only so that "
        "nobody is asked what the note says; a wrong reading can hide a gap.</p>"
    )
    body = [unconfirmed if left else "", "<h3>Questions, the most telling first</h3>"]
    body += [f"<ol>{''.join(_question(q) for q in whole.questions)}</ol>" if whole.questions else "<p>None.</p>"]
    body.append("<h3>Contradictions and unusual findings</h3>")
    if not whole.contradictions:
        body.append("<p>None of the named checks found anything. That does not make the note right.</p>")
    for hit in whole.contradictions:
        pieces = [
            f"{p.words}: {p.value}" + (f" – “{' '.join(p.quote.split())}”" if p.quote else "") + f" ({p.standing})"
            for p in hit.pieces
        ]
        mark = sources.number(hit.source, "derived")
        body.append(f"<p><b>{escape(hit.title)}</b> ({hit.kind}): {escape(hit.words)} {escape(mark)}</p>")
        body.append(_list(pieces))
    body.append("<h3>Missing or only implied</h3>")
    for group in whole.completeness.needs:
        for state, lead in (("contradictory", "disagrees"), ("implied", "only implied"), ("silent", "not stated")):
            items = [item_words(item) for item in group.items if item.state == state]
            if items:
                body.append(f"<p><b>{escape(_capital(group.label))}, {lead}:</b></p>{_list(items)}")
    return "\n".join([*body, *_section("Cautions", whole.cautions), *_sources(sources)])


def _question(question: Question) -> str:
    place = f" ({escape(question.where)})" if question.where else ""
    because = f"{escape(question.says)} Asked because {escape(question.reason)}."
    return f"<li><b>{escape(question.text)}</b>{place}<br>{because}</li>"


def _tendon(line: TendonLine, settled: Settled, sources: Sources) -> Iterator[str]:
    yield f"<h3>{escape(line.where)}</h3>"
    strength = line.strength
    if line.shown is None or strength is None:
        yield f"<p>No strength shown. {escape(line.reason)}</p>"
    else:
        yield (
            f"<p>Breaking force on day {strength.day}: <b>{escape(range_words(strength.breaking))}</b><br>"
            f"Force at a 2 mm gap: <b>{escape(range_words(strength.gap))}</b></p>"
        )
        yield from _worse(settled, line)
        yield from _unknown(strength)
        yield _list(strength.notes)
        yield from _margins(line.shown, strength.day, sources)
        yield from _factors(strength, sources)
    left = [f"{p.words}: {p.value}" for p in settled.left_out if p.address.startswith(f"{line.address}/")]
    yield from _small("Unconfirmed, not counted here", left)


def _worse(settled: Settled, line: TendonLine) -> Iterator[str]:
    """Say where the facts that nobody confirmed would make the picture worse."""
    worse = settled.worse.get(line.address)
    if worse is None:
        return
    if worse.strength is None:
        yield f"<p><b>! With the unconfirmed facts no figure would be shown.</b> {escape(worse.reason)}</p>"
        return
    words = (
        f"! The unconfirmed facts would make it less: breaking {range_words(worse.strength.breaking)}, "
        f"2 mm gap {range_words(worse.strength.gap)}. Confirm or correct them."
    )
    yield f"<p><b>{escape(words)}</b></p>"


def _unknown(strength: Strength) -> Iterator[str]:
    unknown = [f"{f.name} ({f.share:.0%} of the spread)" for f in strength.factors if f.value == "not stated"]
    if unknown:
        yield f"<p><b>Unknown</b>, taken over what is usual: {escape('; '.join(unknown))}.</p>"


def _margins(tendon: TendonAppraisal, day: int, sources: Sources) -> Iterator[str]:
    if not tendon.loads:
        yield f"<p>{escape(tendon.load_note)}</p>"
        return
    row = next(row for row in tendon.table if row.day == day)
    yield f"<p><b>Against published tendon forces, day {day}:</b></p><ul>"
    for load, margin in zip(tendon.loads, row.margins, strict=True):
        force = range_words(ForceRange(low=load.low, high=load.high))
        # Cut off, not rounded: rounding up would overstate.
        worst = int(margin.ratio_low * 10) / 10
        yield (
            f"<li><b>{escape(_capital(load.label))}</b>, {force} {escape(sources.number(load.source, load.status))}<br>"
            f"breaking: {_SIGNS[margin.breaking]}; at the worst ends strength is {worst:.1f} "
            f"times the force<br>2 mm gap: {_SIGNS[margin.gap]}</li>"
        )
    yield "</ul>"


def _factors(strength: Strength, sources: Sources) -> Iterator[str]:
    lines = []
    for factor in strength.factors:
        share = f", {factor.share:.0%} of the spread" if factor.share else ""
        standing = f" ({factor.standing})" if factor.standing and factor.value != "not stated" else ""
        value = "NOT STATED" if factor.value == "not stated" else factor.value
        mark = sources.number(factor.source, factor.status)
        lines.append(f"{factor.name}: {value}{standing}{share} {mark}")
    healing = strength.healing
    mark = sources.number(healing.source, healing.status)
    lines.append(f"time, day {strength.day}: × {strength.healing_low:.2f} to {strength.healing_high:.2f} {mark}")
    yield from _small("What the range stands on", lines)


def _shared(appraisal: Appraisal, sources: Sources) -> Iterator[str]:
    """Say once what holds for every tendon: method, both views of healing, what the loads are."""
    shown = [t for t in appraisal.tendons if t.strength is not None]
    if not shown or shown[0].strength is None:
        return
    first = shown[0].strength
    healing = f"{first.healing.words} {sources.number(first.healing.source, first.healing.status)}"
    notes = [first.method, healing, *dict.fromkeys(t.load_note for t in shown if t.loads)]
    yield from _section("How to read the ranges", notes)


def _glide(settled: Settled, sources: Sources) -> Iterator[str]:
    digits = settled.confirmed.glide
    if not digits:
        yield "<h3>Glide and pulleys</h3><p>Unknown: no cut tendon of a named digit is confirmed.</p>"
    for digit in digits:
        yield f"<h3>Glide and pulleys, {escape(digit.digit)}</h3>"
        yield _list(_cited(_glide_parts(digit), sources))
        left = [f"{p.words}: {p.value}" for p in settled.left_out if p.address.startswith(f"pulleys/{digit.digit}/")]
        yield from _small("Unconfirmed pulleys, not counted here", left)
    notes = dict.fromkeys((n.words, n.source, n.status) for digit in digits for n in digit.notes)
    if digits:
        yield "<h3>For every digit</h3>"
        lines = [f"{words} {sources.number(source, status)}" for words, source, status in notes]
        yield _list([*lines, f"{digits[0].friction_words} {sources.number(digits[0].friction_source, 'derived')}"])


def _glide_parts(digit: DigitGlide) -> list[Cited]:
    travel = [Cited(words=t.words, source=t.source, status=t.status) for t in digit.travel]
    return [*digit.found, *travel, *digit.pulleys]


def _cited(parts: Iterable[Cited], sources: Sources) -> list[str]:
    return [f"{part.words} {sources.number(part.source, part.status)}" for part in parts]


def _verdicts(lead: str, margins: list[Margin], *, gap: bool) -> str:
    ordered = sorted(margins, key=lambda m: list(_SIGNS).index(m.gap if gap else m.breaking))
    parts = [
        f"{_SIGNS[verdict]}: {', '.join(m.label for m in group)}"
        for verdict, group in groupby(ordered, key=lambda m: m.gap if gap else m.breaking)
    ]
    return escape(f"{lead}: {'; '.join(parts)}.") if parts else ""


def _sources(sources: Sources) -> list[str]:
    entries = [f"[{number}] {said}" for number, said in sources.entries()]
    return _section("Sources", entries)


def _section(title: str, items: Iterable[str]) -> list[str]:
    lines = _list(items)
    return [f"<h3>{escape(title)}</h3>{lines}"] if lines else []


def _small(title: str, items: list[str]) -> Iterator[str]:
    if items:
        yield f"<p><b>{escape(title)}:</b></p>{_list(items)}"


def _list(items: Iterable[str]) -> str:
    lines = "".join(f"<li>{escape(item)}</li>" for item in items)
    return f"<ul>{lines}</ul>" if lines else ""


def _facts(count: int) -> str:
    return "fact" if count == 1 else "facts"


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
