"""Step 8, drafting: findings become a draft record: one entry a tendon, rivals kept, the weaker of two proposed."""

from collections.abc import Callable
from dataclasses import replace

from notereader.reader.bearing import DIGITS, Target
from notereader.reader.desk import HURT_KINDS, Desk, Finding
from notereader.reader.naming import where_named
from notereader.reader.page import Page
from notereader.record import Address, Evidence, Fact, Interval, Note, Record, Remark, Review, Rival, source_of
from notereader.record.values import Value, ValueRefused, check_value, show_value
from notereader.vocabulary.fields import FieldSpec, field_specs
from notereader.vocabulary.sutures import sizes, stitches
from notereader.vocabulary.wordlists import word_list

_CORE = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot")
_PERIPHERAL = ("peripheral_pattern", "peripheral_size", "peripheral_material")
_BEHAVIOUR = ("gap", "gap_mm", "test", "glide", "tension", "bulk")
_UNREPAIRED = ("trimmed", "excised", "left")
_STRENGTH = frozenset([*_CORE, "peripheral", "treatment", "gap", "tension", "bulk", "glide"])
_PULLEY_DEEDS = ("vented", "released", "trimmed", "excised", "widened", "repaired", "reconstructed")

# The rule that takes a tendon for repaired because a core suture of it is told.
_BY_SUTURE = "a core suture was placed"
# How many further places that say the same are shown beside the one that decided.
_ECHOES = 4

Choice = tuple[Finding, list[Finding]]


def draft(desk: Desk, name: str | None, version: str) -> Record:
    """Return the draft record of the findings on the desk."""
    findings = _with_digits(desk, desk.findings)
    findings = _under_body_digit(findings)
    findings = _spread_zones(findings)
    findings = _by_slips(findings)
    grouped = _grouped(findings)
    record = Record(note=Note.of(desk.page.text, name), review=Review(reader_version=version))
    source = source_of(desk.page.text)
    for entry, fields in grouped.items():
        if entry[0] == "repairs":
            _settle_repair(fields)
            if not _worth_an_entry(fields):
                continue
        _fill(record, desk, entry, fields, source)
    _sort(record)
    _remark_on_no_repair(record)
    return record


# --- entries


def _with_digits(desk: Desk, findings: list[Finding]) -> list[Finding]:
    """Give a digit to tendons and pulleys named without one, where the note works on one digit only."""
    digits = {f.entry[0] for f in findings if f.group == "repairs" and f.entry[0] in DIGITS}
    listed = desk.scenes[0].every_digit if desk.scenes else ()
    only = next(iter(digits)) if len(digits) == 1 else listed[0] if len(listed) == 1 and not digits else None
    if only is None:
        return [f for f in findings if not _homeless(f)]
    return [
        replace(f, entry=(only, *f.entry[1:])) if _homeless(f) and _fits(only, f) else f
        for f in findings
        if not _homeless(f) or _fits(only, f)
    ]


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
    reason = f"the title or diagnosis names the {old} finger, the body the {new} finger"
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

    A zone told of one tendon is that of the digit's other cut tendons too, where nothing else is told of theirs.
    """
    cut = _cut_entries(findings)
    zones = [f for f in findings if f.field == "zone"]
    named = {f.entry for f in zones if f.entry[1] != "*"}
    spread = [f for f in findings if f.entry[1] != "*"]
    for f in (f for f in zones if f.entry[1] == "*"):
        spread += [replace(f, entry=entry) for entry in cut if entry not in named and f.entry[0] in ("*", entry[0])]
    placed = {f.entry for f in spread if f.field == "zone"}
    hurt = {f.entry for f in findings if f.field == "extent" and f.value in HURT_KINDS}
    for entry in cut:
        if entry in hurt and entry not in placed and entry[0] is not None:
            spread += [replace(f, entry=entry) for f in zones if f.entry in named and f.entry[0] == entry[0]]
    return spread


def _cut_entries(findings: list[Finding]) -> list[tuple[str | None, str, str | None]]:
    """Return the entries of tendons known to be cut or treated."""
    state: dict[tuple[str | None, str, str | None], str] = {}
    for f in findings:
        if f.group == "repairs" and f.field in ("extent", "treatment") and f.entry[1] != "*":
            if f.field == "extent" and f.value == "intact":
                state.setdefault(f.entry, "intact")
            else:
                state[f.entry] = "cut"
    return [entry for entry, value in state.items() if value == "cut"]


def _by_slips(findings: list[Finding]) -> list[Finding]:
    """Where the slips of an FDS are treated apart, what is said of the whole tendon goes to each slip."""
    slips: dict[tuple[str | None, str], list[str]] = {}
    for f in findings:
        digit, tendon, slip = f.entry
        if f.group == "repairs" and slip:
            known = slips.setdefault((digit, tendon), [])
            if slip not in known:
                known.append(slip)
    own = {(f.entry, f.field) for f in findings if f.group == "repairs" and f.entry[2]}
    result: list[Finding] = []
    for f in findings:
        digit, tendon, slip = f.entry
        if f.group != "repairs" or slip or (digit, tendon) not in slips:
            result.append(f)
            continue
        for name in slips[(digit, tendon)]:
            entry = (digit, tendon, name)
            if (entry, f.field) not in own and not (f.field == "zone" and _slip_intact(findings, entry)):
                result.append(replace(f, entry=entry))
    return result


def _slip_intact(findings: list[Finding], entry: tuple[str | None, str, str | None]) -> bool:
    return any(f.entry == entry and f.field == "extent" and f.value == "intact" for f in findings)


def _grouped(findings: list[Finding]) -> dict[tuple[str, tuple[str | None, str, str | None]], dict[str, list[Finding]]]:
    grouped: dict[tuple[str, tuple[str | None, str, str | None]], dict[str, list[Finding]]] = {}
    for f in sorted(findings, key=lambda f: f.order):
        grouped.setdefault((f.group, f.entry), {}).setdefault(f.field, []).append(f)
    return grouped


def _worth_an_entry(fields: dict[str, list[Finding]]) -> bool:
    return "extent" in fields or "treatment" in fields


def _settle_repair(fields: dict[str, list[Finding]]) -> None:
    """Make the facts of one tendon agree: an intact or unrepaired tendon has no core suture."""
    extent = _choose("extent", fields["extent"])[0].value if "extent" in fields else None
    if extent != "intact":
        _treat_by_suture(fields)
    _drop_carried(fields)
    treatment = _choose("treatment", fields["treatment"])[0].value if "treatment" in fields else None
    if (
        extent == "intact"
        and treatment in ("repaired", "reinserted", "grafted")
        and any(n in fields for n in ("strands", "stitch", "size"))
    ):
        del fields["extent"]  # sewn and intact cannot both be: neither is shown
        extent = None
    if extent == "intact":
        for name in list(fields):
            if name != "extent":
                del fields[name]
        return
    if treatment in _UNREPAIRED or treatment is None:
        for name in (*_CORE, "peripheral", *_PERIPHERAL, *_BEHAVIOUR):
            fields.pop(name, None)
    if treatment == "reinserted" and "stitch" in fields:
        fixed = [f for f in fields["stitch"] if f.value in ("pull-out", "anchor")]
        fields["stitch"] = fixed or fields["stitch"]
    if "peripheral" in fields and _choose("peripheral", fields["peripheral"])[0].value == "absent":
        for name in _PERIPHERAL:
            fields.pop(name, None)
    if "gap_mm" in fields and ("gap" not in fields or _choose("gap", fields["gap"])[0].value != "seen"):
        del fields["gap_mm"]
    if extent == "complete":
        fields.pop("extent_percent", None)
    _imply(fields)


def _treat_by_suture(fields: dict[str, list[Finding]]) -> None:
    """Take a tendon for repaired whose core suture is told, where at most the title says what was done."""
    told = fields.get("treatment", [])
    core = next((fields[n][0] for n in ("stitch", "strands", "size") if n in fields), None)
    if core is not None and all(f.header and f.value == "repaired" for f in told):
        fields["treatment"] = [*told, replace(core, field="treatment", value="repaired", rule=_BY_SUTURE)]


def _drop_carried(fields: dict[str, list[Finding]]) -> None:
    """'Left it' without a name yields to a core suture told of the same tendon."""
    if "treatment" not in fields or not any(n in fields for n in ("strands", "stitch")):
        return
    kept = [f for f in fields["treatment"] if not (f.carried and f.value in _UNREPAIRED)]
    first = next(fields[n][0] for n in ("stitch", "strands") if n in fields)
    fields["treatment"] = kept or [replace(first, field="treatment", value="repaired", rule=_BY_SUTURE)]


def _imply(fields: dict[str, list[Finding]]) -> None:
    """Add what follows from the name of the stitch: strands and hold, marked as implied."""
    if "stitch" not in fields:
        return
    named = _choose("stitch", fields["stitch"])[0]
    stitch = stitches().get(str(named.value))
    if stitch is None:
        return
    if stitch.strands and "strands" not in fields:
        reason = f"the note gives no count; {stitch.name} usually has {stitch.strands}"
        if stitch.ambiguous:
            reason += ", but the name is used with other counts too"
        fields["strands"] = [
            replace(
                named,
                field="strands",
                value=stitch.strands,
                implied=True,
                rule="count of the named stitch",
                reasons=[reason],
            )
        ]
    elif stitch.strands and "strands" in fields:
        stated = _choose("strands", fields["strands"])[0]
        if stated.value != stitch.strands and not stitch.ambiguous:
            stated.reasons.append(f"{stitch.name} usually has {stitch.strands} strands")
    if stitch.hold and "hold" not in fields:
        fields["hold"] = [
            replace(
                named,
                field="hold",
                value=stitch.hold,
                implied=True,
                rule="hold of the named stitch",
                reasons=[f"follows from the name {stitch.name}"],
            )
        ]


# --- choosing between findings


def _choose(name: str, found: list[Finding]) -> Choice:
    """Return the finding to propose and its rivals."""
    corrected = [f for f in found if f.addendum]
    if corrected:
        chosen = corrected[-1]
        return chosen, _others(chosen, found)
    chooser = _CHOOSERS.get(f"{found[0].group}.{name}") or _CHOOSERS.get(name, _body_first)
    chosen = chooser(found)
    if name == "finding" and not (chosen.header and any(f.value == "intact" for f in found)):
        return chosen, []
    silent = name in _NO_RIVALS or chosen.group in _NO_RIVAL_GROUPS
    return chosen, [] if silent else _others(chosen, found)


def _others(chosen: Finding, found: list[Finding]) -> list[Finding]:
    rivals: list[Finding] = []
    for f in found:
        if f.value != chosen.value and all(f.value != r.value for r in rivals):
            rivals.append(f)
    return rivals


def _body(found: list[Finding]) -> list[Finding]:
    return [f for f in found if not f.header] or found


def _body_first(found: list[Finding]) -> Finding:
    return _body(found)[0]


def _body_last(found: list[Finding]) -> Finding:
    return _body(found)[-1]


def _lowest(key: Callable[[Finding], float]) -> Callable[[list[Finding]], Finding]:
    def choose(found: list[Finding]) -> Finding:
        return min(found, key=lambda f: (key(f), f.header))

    return choose


def _size_rank(f: Finding) -> float:
    return list(sizes()).index(str(f.value))


def _low_end(f: Finding) -> float:
    return f.value.low or 0.0 if isinstance(f.value, Interval) else 0.0


def _weakest(*order: str) -> Callable[[list[Finding]], Finding]:
    """Choose the value that promises least; `order` lists values from weak to strong."""

    def choose(found: list[Finding]) -> Finding:
        return min(found, key=lambda f: (order.index(str(f.value)) if f.value in order else len(order), f.header))

    return choose


def _treatment(found: list[Finding]) -> Finding:
    """The body tells what was done; a reinsertion says more than 'repaired'; a repair not done is the weaker."""
    body = _body(found)
    if any(f.value in ("repaired", "reinserted", "grafted") and not f.carried and not f.header for f in body):
        body = [f for f in body if not (f.carried and f.value in _UNREPAIRED)]
    order = ("excised", "trimmed", "left", "reinserted", "grafted", "tenodesed", "repaired")
    return min(body, key=lambda f: order.index(str(f.value)))


def _extent(found: list[Finding]) -> Finding:
    """Hurt beats intact; the body beats the lists; a figure of a partial cut beats 'complete'."""
    hurt = [f for f in found if f.value != "intact"]
    return _body_last(hurt) if hurt else found[0]


def _pulley(found: list[Finding]) -> Finding:
    """The last thing done wins; what was found of a pulley counts only where nothing was done."""
    body = _body(found)
    deeds = [f for f in body if f.value in _PULLEY_DEEDS]
    if deeds:
        return deeds[-1]
    titled = [f for f in found if f.header and f.value in _PULLEY_DEEDS]
    if titled:
        return titled[-1]
    injured = [f for f in body if f.value == "injured"]
    return injured[-1] if injured else body[-1]


_CHOOSERS: dict[str, Callable[[list[Finding]], Finding]] = {
    "strands": _lowest(lambda f: float(f.value) if isinstance(f.value, int | float) else 0.0),
    "size": _lowest(_size_rank),
    "peripheral_size": _lowest(_size_rank),
    "purchase_mm": _lowest(_low_end),
    "lock_mm": _lowest(_low_end),
    "peripheral": _weakest("absent", "present"),
    "hold": _weakest("grasping", "locking"),
    "ends": _weakest("attenuated", "crushed", "ragged", "clean"),
    "tension": _weakest("present", "none"),
    "bulk": _weakest("present", "none"),
    "gap": _body_last,
    "gap_mm": _lowest(lambda f: -float(f.value) if isinstance(f.value, int | float) else 0.0),
    "glide": _body_last,
    "repairs.treatment": _treatment,
    "repairs.extent": _extent,
    "injuries.treatment": _body_last,
    "injuries.extent": _weakest("complete", "partial", "contused", "intact"),
    "finding": _pulley,
    "zone": lambda found: max(_body(found), key=lambda f: len(str(f.value)) if str(f.value)[:-1] in ("I", "II") else 0),
}
_NO_RIVALS = word_list("drafting", "no_rivals")
_NO_RIVAL_GROUPS = frozenset(["injuries", "aftercare", "elements"])


# --- facts


def _fill(
    record: Record,
    desk: Desk,
    entry: tuple[str, tuple[str | None, str, str | None]],
    fields: dict[str, list[Finding]],
    source: str,
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
        chosen, rivals = _choose(name, found)
        if name == "treatment" and group == "repairs" and chosen.rule == _BY_SUTURE:
            chosen = replace(chosen, spans=[*chosen.spans, *where_named(desk, Target(digit, part, side), chosen.order)])
        fact = _fact(desk, name, chosen, rivals, found, source)
        if fact.value is not None:
            fact.value = check_value(specs[name], fact.value)
        facts[name] = fact


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
    chosen = _choose("finding", fields["finding"])[0]
    kept = {"finding": fields["finding"]}
    if chosen.value in ("vented", "trimmed"):
        for name in ("extent_percent", "extent_mm", "part"):
            same = [f for f in fields.get(name, []) if f.order == chosen.order]
            if same:
                kept[name] = same
    return kept


def _fact(desk: Desk, name: str, chosen: Finding, rivals: list[Finding], found: list[Finding], source: str) -> Fact:
    page = desk.page
    reasons = list(dict.fromkeys(chosen.reasons))
    unit = field_specs()[chosen.group][name].unit
    for rival in rivals:
        reasons.append(f"the note also says {show_value(rival.value, unit)}")
    if chosen.header and name in _STRENGTH and chosen.group == "repairs" and name != "treatment":
        reasons.append("said only in the title or the diagnosis")
    return Fact(
        value=chosen.value,
        basis="implied" if chosen.implied else "stated",
        evidence=_evidence(page, [chosen, *_echoes(chosen, found)], source),
        rivals=[Rival(value=r.value, evidence=_evidence(page, [r], source)) for r in rivals],
        look_twice=reasons,
        rule=chosen.rule,
    )


def _echoes(chosen: Finding, found: list[Finding]) -> list[Finding]:
    """Return the other places that say the same: a title and the body prove a fact together."""
    return [f for f in found if f is not chosen and f.value == chosen.value and f.implied == chosen.implied][:_ECHOES]


def _evidence(page: Page, findings: list[Finding], source: str) -> list[Evidence]:
    """Return the words of the findings, the first one's first; words that overlap are given as one."""
    spans: list[tuple[int, int]] = []
    for i, j in (span for f in findings for span in f.spans):
        n = next((n for n, (a, b) in enumerate(spans) if i < b and a < j), len(spans))
        a, b = spans[n] if n < len(spans) else (i, j)
        spans[n : n + 1] = [(min(a, i), max(b, j))]
    return [Evidence.at(page.text, page.starts[i], page.ends[j - 1], source) for i, j in spans]


def _sort(record: Record) -> None:
    order = {d: n for n, d in enumerate((*DIGITS, None))}
    record.repairs.sort(key=lambda r: (order[r.digit], r.tendon, r.slip or ""))
    record.pulleys.sort(key=lambda p: (order[p.digit], p.pulley))
    record.injuries.sort(key=lambda n: (order[n.digit], n.structure, n.side or ""))


def _remark_on_no_repair(record: Record) -> None:
    """Say so where the note tells of no flexor tendon repair, with the words that led there."""
    treated = [r for r in record.repairs if "treatment" in r.facts]
    if treated:
        return
    intact = [r.facts["extent"] for r in record.repairs if "extent" in r.facts and r.facts["extent"].value == "intact"]
    evidence = [e for fact in intact for e in fact.evidence]
    words = "No repair of a flexor tendon was found in this note."
    if not evidence and "procedure" in record.elements:
        evidence = list(record.elements["procedure"].evidence)
    record.remarks.append(Remark(text=words, evidence=evidence[:4]))
