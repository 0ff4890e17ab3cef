"""Travel, friction and pulleys of each digit, from published averages and the angles the note orders."""

from collections.abc import Iterable

from notereader.appraisal.cautions import cautions_about
from notereader.appraisal.completeness import FIXED, SUTURED, needed_pulleys, scopes_of
from notereader.appraisal.figures import Status
from notereader.appraisal.geometry import friction_loss, travel
from notereader.appraisal.glide_tables import glide_tables
from notereader.appraisal.known import Case, Entry, Known
from notereader.appraisal.models import Cited, DigitGlide, FrictionRow, Travel
from notereader.appraisal.pulleys import openings_of, pulley_remarks, whole
from notereader.record import Interval

FINGER_TENDONS = ("FDP", "FDS", "FPL")
# What a note can say of the run of a tendon at the end of the operation.
AT_THE_END = ("glide", "tension", "bulk")


def glide_of(case: Case) -> list[DigitGlide]:
    """Return travel, pulleys and friction for every digit with a tendon cut or a pulley recorded."""
    return [_digit(case, digit) for digit in case.digits() if _concerned(case, digit)]


def travel_sum(arms: dict[str, float], angles: dict[str, float]) -> float:
    """Return the travel in mm over several joints: the sum of r x angle; arms in mm and angles in degrees by joint."""
    return sum(travel(arm, angles.get(joint, 0.0)) for joint, arm in arms.items())


def fist_angles(digit: str) -> dict[str, float]:
    """Return the joint angles of a full fist for a digit, degrees of flexion."""
    fist = glide_tables().fist
    if digit == "thumb":
        return {"MCP": fist.thumb_mcp, "IP": fist.IP}
    return {"MCP": fist.MCP, "PIP": fist.PIP, "DIP": fist.DIP}


def arm_sets(digit: str, tendon: str) -> list[tuple[dict[str, float], str, Status]]:
    """Return the published moment arms of a tendon in a digit with source and status; empty where there are none."""
    tables = glide_tables()
    sources = {s.set: s for s in tables.arm_source}
    return [
        (arms, sources[row.set].source, sources[row.set].status)
        for row in tables.arms
        if row.digit == digit and (arms := getattr(row, tendon))
    ]


def friction_rows() -> list[FrictionRow]:
    """Return the share of force lost to belt friction at each angle of the table."""
    table = glide_tables().friction
    return [
        FrictionRow(angle_deg=a, low=friction_loss(table.low, a), high=friction_loss(table.high, a))
        for a in table.angles
    ]


def _moves(repair: Entry) -> bool:
    """True for a finger or thumb flexor that was cut and can still pull: sewn, fixed, or cut in part."""
    joined = repair.text("treatment") in (*SUTURED, *FIXED) or repair.text("extent") == "partial"
    return repair.place.part in FINGER_TENDONS and bool(scopes_of(repair)) and joined


def _friction_words() -> str:
    return ", ".join(f"{row.low:.1%} to {row.high:.1%} at {row.angle_deg:g} degrees" for row in friction_rows())


def _measured() -> Iterable[Cited]:
    """Yield the travels that were measured, to stand beside the ones worked out."""
    for row in glide_tables().measured:
        mm = f"{row.mm:g}" if row.spread is None else f"{row.mm:g} +/- {row.spread:g}"
        words = glide_tables().sentences.measured.format(label=row.label, mm=mm)
        yield Cited(words=words, source=row.source, status=row.status)


def _suture_friction(case: Case, digit: str) -> Iterable[Cited]:
    tables = glide_tables()
    cores = {v for e in case.repairs if e.place.digit == digit and (k := e.known("material")) for v in k.candidates}
    for row in tables.friction_suture:
        if row.material in cores:
            words = tables.sentences.suture_friction.format(material=row.material, mu=row.mu)
            yield Cited(words=words, source=row.source, status=row.status)


def _concerned(case: Case, digit: str) -> bool:
    cut = any(scopes_of(e) for e in case.repairs if e.place.digit == digit)
    return cut or any(e.place.digit == digit for e in case.pulleys)


def _digit(case: Case, digit: str) -> DigitGlide:
    tables = glide_tables()
    tendons = list(dict.fromkeys(e.place.part for e in case.repairs if e.place.digit == digit and _moves(e)))
    travels: list[Travel] = []
    notes: list[Cited] = []
    for tendon in tendons:
        assert tendon is not None
        sets = arm_sets(digit, tendon)
        if not sets:
            notes.append(
                Cited(words=tables.sentences.no_arms.format(tendon=tendon), source="glide.toml", status="derived")
            )
            continue
        travels += _travels(case, digit, tendon, sets)
    if travels:
        notes.append(
            Cited(words=tables.delivered.words, source=tables.delivered.source, status=tables.delivered.status)
        )
        notes += _splint_notes(case, digit)
        notes += [*_measured(), *_suture_friction(case, digit)]
    return DigitGlide(
        digit=digit,
        found=[c for e in case.repairs if e.place.digit == digit and _moves(e) for c in _found(e)],
        travel=travels,
        notes=notes,
        pulleys=pulley_remarks(case, digit, needed_pulleys(case, digit)),
        openings_mm=openings_of(case, digit),
        friction=friction_rows(),
        friction_words=tables.friction.words.format(rows=_friction_words()),
        friction_source=tables.friction.source,
        cautions=cautions_about("general", "glide"),
    )


def _found(repair: Entry) -> Iterable[Cited]:
    """Yield what the note says of a tendon's run at the end of the operation; what it does not say is named as such."""
    words, where = glide_tables().sentences, repair.place.entry_words()
    findings = []
    for name in AT_THE_END:
        known = repair.known(name)
        said = "not stated" if known is None else f"{' or '.join(map(str, known.candidates))} ({known.standing})"
        findings.append(f"{name} {said}")
    yield Cited(
        words=words.at_the_end.format(where=where, findings=", ".join(findings)), source="the note", status="derived"
    )
    glide = repair.known("glide")
    stops = [str(v) for v in glide.candidates if v != "free"] if glide else []
    if stops:
        yield Cited(words=words.stops.format(where=where, glide=stops[0]), source="the note", status="derived")


def _travels(case: Case, digit: str, tendon: str, sets: list[tuple[dict[str, float], str, Status]]) -> Iterable[Travel]:
    words, fist = glide_tables().sentences, fist_angles(digit)
    source = "; ".join(dict.fromkeys(s for _, s, _ in sets))
    status: Status = "memory" if any(s == "memory" for _, _, s in sets) else "verified"
    fists = [travel_sum(arms, fist) for arms, _, _ in sets]
    low, high = min(fists), max(fists)
    yield Travel(
        tendon=tendon,
        words=words.fist.format(tendon=tendon, range=whole(low, high)),
        low_mm=low,
        high_mm=high,
        source=source,
        status=status,
    )
    bounds = _splint_angles(case, digit)
    if bounds is None:
        return
    most = [travel_sum(arms, _room(fist, bounds, "low")) for arms, _, _ in sets]
    least = [travel_sum(arms, _room(fist, bounds, "high")) for arms, _, _ in sets]
    low, high = min(least), max(most)
    delivered = low * glide_tables().delivered.low
    said = words.splint.format(tendon=tendon, range=whole(low, high), delivered=whole(delivered, high))
    yield Travel(tendon=tendon, words=said, low_mm=delivered, high_mm=high, source=source, status=status)


def _room(fist: dict[str, float], bounds: dict[str, Interval], end: str) -> dict[str, float]:
    """Return the motion left from splint to fist at each joint; `end` picks the straighter or the more bent angle."""
    room = {}
    for joint, most in fist.items():
        bound = bounds["MCP" if joint == "MCP" else "IP"]
        at = bound.low if end == "low" else bound.high
        room[joint] = max(0.0, most - (at or 0.0))
    return room


def _splint_angles(case: Case, digit: str) -> dict[str, Interval] | None:
    """Return the splint's MCP and IP angles, the usual range where one is not given; None without a splint."""
    ordered = [
        case.aftercare.known(name) for name in ("splint", "mcp_flexion_deg", "ip_flexion_deg", "wrist_flexion_deg")
    ]
    if not any(ordered) or digit == "thumb":
        return None
    usual = glide_tables().usual_splint
    return {
        "MCP": _angles(case.aftercare.known("mcp_flexion_deg"), usual.mcp.low, usual.mcp.high),
        "IP": _angles(case.aftercare.known("ip_flexion_deg"), usual.ip.low, usual.ip.high),
    }


def _angles(known: Known | None, low: float, high: float) -> Interval:
    """Return the angles in question, from the straightest to the most bent of all that the note says."""
    values = [v for v in known.candidates if isinstance(v, Interval)] if known else []
    if not values:
        return Interval(low=low, high=high)
    lows = [v.low if v.low is not None else min(low, v.high or low) for v in values]
    highs = [v.high if v.high is not None else max(high, v.low or high) for v in values]
    return Interval(low=min(lows), high=max(highs))


def _splint_notes(case: Case, digit: str) -> Iterable[Cited]:
    tables, care = glide_tables(), case.aftercare
    usual = tables.usual_splint
    if not any(care.known(n) for n in ("splint", "mcp_flexion_deg", "ip_flexion_deg", "wrist_flexion_deg")):
        yield Cited(words=tables.sentences.no_splint, source="the note", status="derived")
        return
    if digit == "thumb":
        yield Cited(words=tables.sentences.thumb_splint, source="the record", status="derived")
        return
    for name, joint, angles in (("mcp_flexion_deg", "MCP", usual.mcp), ("ip_flexion_deg", "IP", usual.ip)):
        if care.known(name) is None:
            said = tables.sentences.splint_unknown.format(joint=joint, range=whole(angles.low, angles.high))
            yield Cited(words=said, source=usual.source, status=usual.status)
    programme = care.known("programme")
    if programme and "immobilisation" in programme.candidates:
        yield Cited(words=tables.sentences.immobilised, source="the note", status="derived")
