"""Step 8, drafting: findings become a draft record: one entry a tendon, rivals kept, the weaker of two proposed."""

from dataclasses import replace

from notereader.reader.desk import HURT_KINDS, Desk, Finding
from notereader.reader.drafting.choosing import choose
from notereader.reader.drafting.facts import FactMaker
from notereader.reader.drafting.held_counts import held_to_counts
from notereader.reader.drafting.naming import where_named
from notereader.reader.drafting.own_cores import with_own_cores
from notereader.reader.drafting.pared_slips import without_pared_slips
from notereader.reader.drafting.settling import BY_SUTURE, settle_repair
from notereader.reader.drafting.summing_up import behind_the_telling
from notereader.reader.drafting.weighing import weigh
from notereader.reader.groups import DIGITS, Target
from notereader.reader.reasons import Reason
from notereader.record import Address, Note, Record, Remark, Review
from notereader.record.values import Value, ValueRefused, check_value
from notereader.vocabulary.fields import FieldSpec, field_specs


def draft(desk: Desk, name: str | None, version: str) -> Record:
    """Return the draft record of the findings on the desk."""
    findings = _with_digits(desk, [f for f in map(_at_home, desk.findings) if f is not None])
    findings = held_to_counts(desk, findings)
    findings = _under_body_digit(findings)
    findings = _spread_zones(behind_the_telling(desk.page, findings))
    findings = with_own_cores(desk, _by_slips(_as_one(without_pared_slips(findings))))
    grouped = _grouped(findings)
    record = Record(note=Note.of(desk.page.text, name), review=Review(reader_version=version))
    maker, reasons = FactMaker(desk), dict[int, list[Reason]]()
    for entry, fields in grouped.items():
        if entry[0] == "repairs":
            settle_repair(fields)
            if not _worth_an_entry(fields):
                continue
        _fill(record, maker, reasons, entry, fields)
    _sort(record)
    weigh(record, desk.page, reasons)
    _remark_on_no_repair(record)
    _remark_on_failures(record, maker)
    return record


# --- entries


def _at_home(f: Finding) -> Finding | None:
    """Give a tendon that only one part of the hand has its digit; leave out those that the digit named has not."""
    digit, tendon, slip = f.entry
    if f.group != "repairs" or digit == "*" or tendon == "*":
        return f
    if tendon in ("FDP", "FDS"):
        return None if digit == "thumb" else f
    home = "thumb" if tendon == "FPL" else None
    return f if digit == home else replace(f, entry=(home, tendon, slip))


def _with_digits(desk: Desk, findings: list[Finding]) -> list[Finding]:
    """Give a digit to tendons and pulleys named without one, where the note works on one digit only.

    Where the note names no digit at all they keep none; where it names several, what belongs to none is left out.
    """
    digits = {f.entry[0] for f in findings if f.group == "repairs" and f.entry[0] in DIGITS}
    listed = desk.scenes[0].every_digit if desk.scenes else ()
    only = next(iter(digits)) if len(digits) == 1 else listed[0] if len(listed) == 1 and not digits else None
    if only is None and not (digits or listed or any(_names_digit(f) for f in findings)):
        return findings
    if only is None:
        return [f for f in findings if not _homeless(f)]
    return [
        replace(f, entry=(only, *f.entry[1:])) if _homeless(f) and _fits(only, f) else f
        for f in findings
        if not _homeless(f) or _fits(only, f)
    ]


def _names_digit(f: Finding) -> bool:
    return f.entry[0] in DIGITS


def _homeless(f: Finding) -> bool:
    if f.entry[0] is not None:
        return False
    if f.group == "repairs":
        return f.entry[1] in ("FDP", "FDS")
    if f.group == "pulleys":
        return f.entry[1] != "flexor retinaculum"
    return f.group == "injuries" and f.entry[1] in ("digital nerve", "digital artery")


def _fits(digit: str, f: Finding) -> bool:
    return not (digit == "thumb" and f.group == "repairs")


def _under_body_digit(findings: list[Finding]) -> list[Finding]:
    """A digit that the lists name and the body never works on is the body's digit under a wrong name."""
    tendons = [
        f
        for f in findings
        if f.group == "repairs"
        and f.entry[0] in DIGITS
        and f.field in ("extent", "treatment", "size", "strands", "stitch")
    ]
    titled = {f.entry[0] for f in tendons if f.header}
    worked = {f.entry[0] for f in tendons if not f.header and f.value != "intact"}
    wrong, right = titled - worked, worked - titled
    if len(wrong) != 1 or len(right) != 1 or len(titled) != 1:
        return findings
    old, new = next(iter(wrong)), next(iter(right))
    reason = Reason("title_against_body", (str(old), str(new)))
    moved = []
    for f in findings:
        if f.entry[0] == old and f.group in ("repairs", "pulleys", "injuries") and f.header:
            f = replace(f, entry=(new, *f.entry[1:]), reasons=[*f.reasons, reason])
        elif f.entry[0] == new and f.field in ("extent", "treatment"):
            f = replace(f, reasons=[*f.reasons, reason])
        moved.append(f)
    return moved


def _spread_zones(findings: list[Finding]) -> list[Finding]:
    """Give a zone said of a digit to each of its cut tendons that has none of its own.

    A zone told of one tendon is that of the digit's other cut tendons too, where nothing else is told of theirs; not
    of a superficialis cut in part, whose level may be another.
    """
    cut = _cut_entries(findings)
    zones = [f for f in findings if f.field == "zone"]
    named = {f.entry for f in zones if f.entry[1] != "*"}
    spread = [f for f in findings if f.entry[1] != "*"]
    for f in (f for f in zones if f.entry[1] == "*"):
        spread += [replace(f, entry=entry) for entry in cut if entry not in named and f.entry[0] in ("*", entry[0])]
    placed = {f.entry for f in spread if f.field == "zone"}
    hurt = {f.entry for f in findings if f.field == "extent" and f.value in HURT_KINDS}
    hurt -= {f.entry for f in findings if f.field == "extent" and f.value == "partial" and f.entry[1] == "FDS"}
    for entry in cut:
        if entry in hurt and entry not in placed and entry[0] is not None:
            spread += [replace(f, entry=entry) for f in zones if f.entry in named and f.entry[0] == entry[0]]
    return spread + _only_zone(zones, spread, findings)


def _only_zone(zones: list[Finding], spread: list[Finding], findings: list[Finding]) -> list[Finding]:
    """Give the one zone a note tells of to all cut through, where it is that of the carpal tunnel or the forearm.

    There all are cut by one wound; in a finger each may be cut at a level of its own.
    """
    through = dict.fromkeys(f.entry for f in findings if f.field == "extent" and f.value == "complete")
    if {str(f.value) for f in zones} not in ({"IV"}, {"V"}):
        return []
    placed = {f.entry for f in spread if f.field == "zone"}
    return [replace(zones[0], entry=e) for e in through if e not in placed]


def _cut_entries(findings: list[Finding]) -> list[tuple[str | None, str, str | None]]:
    """Return the entries of tendons known to be cut or treated."""
    state: dict[tuple[str | None, str, str | None], str] = {}
    for f in findings:
        if f.group == "repairs" and f.field in _SAYS_CUT and f.entry[1] != "*":
            if f.field == "extent" and f.value == "intact":
                state.setdefault(f.entry, "intact")
            else:
                state[f.entry] = "cut"
    return [entry for entry, value in state.items() if value == "cut"]


_SAYS_CUT = frozenset(["extent", "treatment", "strands", "stitch"])  # who has a core suture was cut


def _as_one(findings: list[Finding]) -> list[Finding]:
    """'Radial slip complete, ulnar slip complete': slips of which the same is told are one tendon."""
    told: dict[tuple[str | None, str, str | None], set[tuple[str, str]]] = {}
    for f in findings:
        if f.group == "repairs" and f.entry[2]:
            told.setdefault(f.entry, set()).add((f.field, str(f.value)))
    alike = {
        (digit, tendon)
        for (digit, tendon, slip), facts in told.items()
        if slip == "radial" and told.get((digit, tendon, "ulnar")) == facts
    }
    return [
        replace(f, entry=(*f.entry[:2], None)) if f.group == "repairs" and f.entry[2] and f.entry[:2] in alike else f
        for f in findings
    ]


def _by_slips(findings: list[Finding]) -> list[Finding]:
    """Where the slips of an FDS are treated apart, what is said of the whole tendon goes to each slip."""
    slips: dict[tuple[str | None, str], list[str]] = {}
    for f in findings:
        digit, tendon, slip = f.entry
        if f.group == "repairs" and slip:
            known = slips.setdefault((digit, tendon), [])
            if slip not in known:
                known.append(slip)
    _add_whole_slips(findings, slips)
    _add_sewn_slips(findings, slips)
    added = _add_cut_slips(findings, slips)
    own = {(f.entry, f.field) for f in findings if f.group == "repairs" and f.entry[2]}
    intact = {f.entry for f in findings if f.field == "extent" and f.value == "intact"}
    result: list[Finding] = []
    for f in findings:
        digit, tendon, slip = f.entry
        if f.group != "repairs" or slip or (digit, tendon) not in slips:
            result.append(f)
            continue
        for name in slips[(digit, tendon)]:
            entry = (digit, tendon, name)
            taken_out = f.field == "extent" and f.value == "intact" and (entry, "treatment") in own
            if (entry, f.field) in own or taken_out:
                continue
            if entry in added and f.field not in ("extent", "zone", "ends"):
                continue
            if entry not in intact:  # a slip that was whole was not sewn
                result.append(replace(f, entry=entry))
    return result


def _add_whole_slips(findings: list[Finding], slips: dict[tuple[str | None, str], list[str]]) -> None:
    """Where a whole tendon was told intact and one slip of it excised, the other slip is the one that is intact."""
    for (digit, tendon), known in slips.items():
        entry = (digit, tendon, known[0])
        excised = any(f.entry == entry and f.field == "treatment" and f.value == "excised" for f in findings)
        if len(known) == 1 and excised and _slip_intact(findings, (digit, tendon, None)):
            known.append("ulnar" if known[0] == "radial" else "radial")


def _add_sewn_slips(findings: list[Finding], slips: dict[tuple[str | None, str], list[str]]) -> None:
    """Where a whole tendon was sewn and one slip of it taken out, the other slip is the one that was sewn."""
    for (digit, tendon), known in slips.items():
        entry = (digit, tendon, known[0])
        out = [f.order for f in findings if f.entry == entry and f.field == "treatment" and f.value == "excised"]
        cores = [f.order for f in findings if f.entry == (digit, tendon, None) and f.field in _CORE and not f.header]
        if len(known) == 1 and out and cores and min(abs(out[0] - k) for k in cores) <= _TOLD_TOGETHER:
            known.append("ulnar" if known[0] == "radial" else "radial")


_TOLD_TOGETHER = 40  # words; further off the thread may be that of an earlier operation


def _add_cut_slips(
    findings: list[Finding], slips: dict[tuple[str | None, str], list[str]]
) -> set[tuple[str | None, str, str | None]]:
    """Where a whole tendon was told cut through and one slip's fate alone, the other slip is cut all the same."""
    added: set[tuple[str | None, str, str | None]] = set()
    for (digit, tendon), known in slips.items():
        told = {f.value for f in findings if f.entry == (digit, tendon, None) and f.field == "extent" and not f.header}
        if len(known) == 1 and told == {"complete"}:
            fates = {f.field for f in findings if f.entry == (digit, tendon, known[0])}
            if "treatment" in fates and "extent" not in fates:
                known.append("ulnar" if known[0] == "radial" else "radial")
                added.add((digit, tendon, known[-1]))
    return added


def _slip_intact(findings: list[Finding], entry: tuple[str | None, str, str | None]) -> bool:
    return any(f.entry == entry and f.field == "extent" and f.value == "intact" for f in findings)


def _grouped(findings: list[Finding]) -> dict[tuple[str, tuple[str | None, str, str | None]], dict[str, list[Finding]]]:
    grouped: dict[tuple[str, tuple[str | None, str, str | None]], dict[str, list[Finding]]] = {}
    for f in sorted(findings, key=lambda f: f.order):
        grouped.setdefault((f.group, f.entry), {}).setdefault(f.field, []).append(f)
    return grouped


def _worth_an_entry(fields: dict[str, list[Finding]]) -> bool:
    return "extent" in fields or "treatment" in fields


# --- facts


def _fill(
    record: Record,
    maker: FactMaker,
    reasons: dict[int, list[Reason]],
    entry: tuple[str, tuple[str | None, str, str | None]],
    fields: dict[str, list[Finding]],
) -> None:
    group, (digit, part, side) = entry
    place, specs = Address(group, digit or None, part or None, side), field_specs()[group]
    fields = _possible(fields, specs)
    if group == "pulleys":
        fields = _shares_of_chosen(fields)
    if not fields:
        return
    facts = record.ensure(place)
    for name, found in fields.items():
        chosen, rivals = choose(name, found)
        if name == "treatment" and group == "repairs" and chosen.rule == BY_SUTURE:
            chosen = replace(
                chosen, spans=[*chosen.spans, *where_named(maker.desk, Target(digit, part, side), chosen.order)]
            )
        if name == "treatment" and group == "repairs" and chosen.value in _SEWN:
            chosen = replace(chosen, spans=[*chosen.spans, *_core_told(fields, chosen)])
        facts[name] = maker.fact(chosen, rivals, found)
        reasons[id(facts[name])] = maker.reasons(chosen, rivals)


_SEWN = ("repaired", "reinserted", "grafted")


def _core_told(fields: dict[str, list[Finding]], treatment: Finding) -> list[tuple[int, int]]:
    """Return the words of the core suture, which show a repair best: its stitch and its strands, else its thread."""
    spans = [choose(name, fields[name])[0].spans[0] for name in _CORE if name in fields]
    apart = [(i, j) for i, j in spans if not any(i < b and a < j for a, b in treatment.spans)]
    return list(dict.fromkeys(apart))[:2]


_CORE = ("stitch", "strands", "size", "material")


def _possible(fields: dict[str, list[Finding]], specs: dict[str, FieldSpec]) -> dict[str, list[Finding]]:
    """Leave out values that the field cannot take, such as a share of 150 %: a slip of the pen is no fact."""
    kept = {name: [f for f in found if _can_be(specs[name], f.value)] for name, found in fields.items()}
    return {name: found for name, found in kept.items() if found}


def _can_be(spec: FieldSpec, value: Value) -> bool:
    try:
        check_value(spec, value)
    except ValueRefused:
        return False
    return True


def _shares_of_chosen(fields: dict[str, list[Finding]]) -> dict[str, list[Finding]]:
    """Keep only the shares and parts told together with the finding that is proposed."""
    if "finding" not in fields:
        return {}
    chosen = choose("finding", fields["finding"])[0]
    kept = {"finding": fields["finding"]}
    shares = {"injured": ("part",)} | dict.fromkeys(("vented", "trimmed"), ("extent_percent", "extent_mm", "part"))
    if chosen.value in shares:
        for name in shares[str(chosen.value)]:
            same = [f for f in fields.get(name, []) if f.order == chosen.order]
            if same:
                kept[name] = same
    return kept


def _sort(record: Record) -> None:
    order = {d: n for n, d in enumerate((*DIGITS, None))}
    record.repairs.sort(key=lambda r: (order[r.digit], r.tendon, r.slip or ""))
    record.pulleys.sort(key=lambda p: (order[p.digit], p.pulley))
    record.injuries.sort(key=lambda n: (order[n.digit], n.structure, n.side or ""))


def _remark_on_no_repair(record: Record) -> None:
    """Say so where the note tells of no flexor tendon repair, with the words that led there."""
    treated = [r for r in record.repairs if "treatment" in r.facts and r.facts["treatment"].value != "left"]
    if treated:
        return
    intact = [r.facts["extent"] for r in record.repairs if "extent" in r.facts and r.facts["extent"].value == "intact"]
    evidence = [e for fact in intact for e in fact.evidence]
    words = "No repair of a flexor tendon was found in this note."
    if not evidence and "procedure" in record.elements:
        evidence = list(record.elements["procedure"].evidence)
    record.remarks.append(Remark(text=words, evidence=evidence[:4]))


def _remark_on_failures(record: Record, maker: FactMaker) -> None:
    """Say which rules of the reader failed on which words: what these say may be missing from the draft."""
    for name, scene in maker.desk.failed:
        words = "these words" if scene is not None else "this note"
        text = f"A rule of the reader ({name}) failed on {words}: read them yourself, for facts may be missing."
        record.remarks.append(Remark(text=text, evidence=maker.words_of(scene) if scene is not None else []))
