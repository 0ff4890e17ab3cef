"""Checks of the rest of the record: rival values, injury, zones, pulleys, dates, aftercare, other structures."""

from collections.abc import Iterator
from datetime import date

from notereader.appraisal.checks import Hit, check, check_tables
from notereader.appraisal.checks_suture import both, low_of
from notereader.appraisal.glide_tables import glide_tables
from notereader.appraisal.known import Case, Entry, Known, spec_of
from notereader.record import Interval, show_value

FINGER_ONLY_PULLEYS = ("A3", "A4", "A5", "C1", "C2", "C3")
THUMB_ONLY_PULLEYS = ("variable", "oblique")
WRIST_TENDONS = ("FCR", "FCU", "PL")
ZONE_ONE = ("I", "IA", "IB", "IC")
WRIST_ZONES = ("IV", "V")
EARLY_PROGRAMMES = ("early active", "early passive", "place and hold")


def _where(entry: Entry) -> str:
    return entry.place.entry_words()


@check("two_values")
def two_values(case: Case) -> Iterator[Hit]:
    """Any fact for which the note gives several values and nobody has decided."""
    for entry in case.entries():
        for known in entry.live():
            if known.rivals and not _named_elsewhere(known):
                fill = dict(where=_where(entry), field=spec_of(known.place).label.lower(), first=known.shown())
                yield Hit((known,), dict(fill, second=_others(known)))


def _named_elsewhere(known: Known) -> bool:
    """True where a check of its own reports the two values."""
    return (known.place.group == "operation" and known.place.field == "side") or _kept_and_opened(known)


def _kept_and_opened(known: Known) -> bool:
    return known.place.group == "pulleys" and known.place.field == "finding" and "intact" in known.candidates


def _others(known: Known) -> str:
    return " and ".join(show_value(v, spec_of(known.place).unit) for v in known.rivals)


@check("side_differs")
def side_differs(case: Case) -> Iterator[Hit]:
    """Two sides named for one operation."""
    known = case.operation.known("side")
    if known and known.rivals:
        yield Hit((known,), dict(first=known.shown(), second=_others(known)))


@check("pulley_two_states")
def pulley_two_states(case: Case) -> Iterator[Hit]:
    """A pulley said to be intact and said to be opened or lost."""
    for entry in case.pulleys:
        known = entry.known("finding")
        if known and known.rivals and _kept_and_opened(known):
            yield Hit((known,), dict(where=_where(entry), first=known.shown(), second=_others(known)))


@check("header_and_body")
def header_and_body(case: Case) -> Iterator[Hit]:
    """The reader's reason to look twice that names digit or side; the record has no rival for a digit."""
    seen: set[tuple[str, str]] = set()
    for entry in case.entries():
        for known in entry.live():
            for reason in known.fact.look_twice if known.second_look else ():
                words = reason.lower()
                named = any(word in words for word in check_tables().limits.digit_words)
                if named and (_where(entry), words) not in seen:
                    seen.add((_where(entry), words))
                    yield Hit((known,), dict(where=_where(entry), reason=reason.rstrip(".")))


@check("intact_yet_treated")
def intact_yet_treated(case: Case) -> Iterator[Hit]:
    """A tendon intact and yet treated."""
    for entry in case.repairs:
        pair = both(entry, "extent", "treatment")
        if pair and pair[0].value == "intact":
            yield Hit(pair, dict(where=_where(entry), treatment=pair[1].shown()))


@check("complete_with_percent")
def complete_with_percent(case: Case) -> Iterator[Hit]:
    """A complete cut with less than all of it."""
    for entry in case.repairs:
        pair = both(entry, "extent", "extent_percent")
        if pair and pair[0].value == "complete" and (low_of(pair[1]) or 0) < 100:
            yield Hit(pair, dict(where=_where(entry), percent=show_value(pair[1].value)))


@check("partial_all")
def partial_all(case: Case) -> Iterator[Hit]:
    """A partial cut of the whole tendon."""
    for entry in case.repairs:
        pair = both(entry, "extent", "extent_percent")
        if pair and pair[0].value == "partial" and low_of(pair[1]) == 100:
            yield Hit(pair, dict(where=_where(entry), percent="100"))


@check("small_partial_sutured")
def small_partial_sutured(case: Case) -> Iterator[Hit]:
    """A small partial cut with a core suture."""
    limit = check_tables().limits.partial_percent
    for entry in case.repairs:
        pair, core = both(entry, "extent_percent", "treatment"), entry.known("strands")
        if pair and core and pair[1].value == "repaired" and (low_of(pair[0]) or 0) < limit:
            yield Hit((pair[0], core), dict(where=_where(entry), percent=show_value(pair[0].value), limit=f"{limit:g}"))


@check("large_partial_left")
def large_partial_left(case: Case) -> Iterator[Hit]:
    """A large partial cut left or only smoothed."""
    limit = check_tables().limits.partial_percent
    for entry in case.repairs:
        pair = both(entry, "extent_percent", "treatment")
        if pair and pair[1].value in ("left", "trimmed") and (low_of(pair[0]) or 0) > limit:
            yield Hit(pair, dict(where=_where(entry), percent=show_value(pair[0].value), treatment=pair[1].shown()))


@check("ends_and_mechanism")
def ends_and_mechanism(case: Case) -> Iterator[Hit]:
    """Clean ends after a tearing injury, or crushed ends after a clean cut."""
    mechanism = case.operation.known("mechanism")
    for entry in case.repairs:
        ends = entry.known("ends")
        if mechanism is None or ends is None:
            continue
        torn = mechanism.value in ("saw", "crush", "avulsion", "rupture", "blast")
        if (torn and ends.value == "clean") or (mechanism.value == "sharp" and ends.value == "crushed"):
            yield Hit((ends, mechanism), dict(where=_where(entry), ends=ends.shown(), mechanism=mechanism.shown()))


@check("active_test_asleep")
def active_test_asleep(case: Case) -> Iterator[Hit]:
    """A repair tested by active motion in a patient who could not move it."""
    anaesthesia = case.operation.known("anaesthesia")
    for entry in case.repairs:
        test = entry.known("test")
        if anaesthesia and test and test.value == "active" and anaesthesia.value in ("general", "regional"):
            yield Hit((test, anaesthesia), dict(where=_where(entry), anaesthesia=anaesthesia.shown()))


@check("reinserted_outside_zone_one")
def reinserted_outside_zone_one(case: Case) -> Iterator[Hit]:
    """A reinsertion to bone away from the FDP or FPL insertion."""
    for entry in case.repairs:
        pair = both(entry, "treatment", "zone")
        at_tip = entry.place.part in ("FDP", "FPL")
        if pair and at_tip and pair[0].value == "reinserted" and pair[1].value not in ZONE_ONE:
            yield Hit(pair, dict(where=_where(entry), zone=pair[1].shown()))


@check("fds_in_zone_one")
def fds_in_zone_one(case: Case) -> Iterator[Hit]:
    """FDS beyond its own insertion."""
    for entry in case.repairs:
        zone = entry.known("zone")
        if zone and entry.place.part == "FDS" and zone.value in ZONE_ONE:
            yield Hit((zone,), dict(where=_where(entry), zone=zone.shown()))


@check("zone_one_with_two_slips")
def zone_one_with_two_slips(case: Case) -> Iterator[Hit]:
    """FDP cut in zone I and both FDS slips of the same digit cut as well."""
    for entry in case.repairs:
        zone = entry.known("zone")
        if zone is None or entry.place.part != "FDP" or zone.value not in ZONE_ONE:
            continue
        slips = [
            e for e in case.repairs if e.place.part == "FDS" and e.place.digit == entry.place.digit and e.place.side
        ]
        cut = [k for e in slips if (k := e.known("extent") or e.known("treatment")) and k.value != "intact"]
        if len(cut) == 2:
            yield Hit((zone, *cut), dict(digit=entry.place.digit or "unnamed", zone=zone.shown()))


@check("slip_and_whole")
def slip_and_whole(case: Case) -> Iterator[Hit]:
    """FDS entered both whole and by slips."""
    for entry in case.repairs:
        if entry.place.part != "FDS" or entry.place.side:
            continue
        slips = [
            e for e in case.repairs if e.place.part == "FDS" and e.place.digit == entry.place.digit and e.place.side
        ]
        first, other = next(entry.live(), None), next((k for e in slips for k in e.live()), None)
        if first and other:
            yield Hit((first, other), dict(digit=entry.place.digit or "unnamed"))


@check("thumb_with_finger_tendon")
def thumb_with_finger_tendon(case: Case) -> Iterator[Hit]:
    """A tendon that the digit does not have."""
    for entry in case.repairs:
        digit, tendon = entry.place.digit, entry.place.part
        wrong = (digit == "thumb" and tendon in ("FDP", "FDS")) or (digit not in ("thumb", None) and tendon == "FPL")
        wrong = wrong or (digit is not None and tendon in WRIST_TENDONS)
        first = next(entry.live(), None)
        if wrong and first:
            yield Hit((first,), dict(where=_where(entry), digit=str(digit), tendon=str(tendon)))


@check("thumb_with_finger_pulley")
def thumb_with_finger_pulley(case: Case) -> Iterator[Hit]:
    """A pulley that the digit does not have."""
    for entry in case.pulleys:
        digit, pulley = entry.place.digit, entry.place.part
        wrong = digit == "thumb" and pulley in FINGER_ONLY_PULLEYS
        wrong = wrong or (digit not in ("thumb", None) and pulley in THUMB_ONLY_PULLEYS)
        first = next(entry.live(), None)
        if wrong and first:
            yield Hit((first,), dict(where=_where(entry), digit=str(digit), pulley=str(pulley)))


@check("wrist_tendon_zone")
def wrist_tendon_zone(case: Case) -> Iterator[Hit]:
    """A wrist flexor in a zone beyond the wrist."""
    for entry in case.repairs:
        zone = entry.known("zone")
        if zone and entry.place.part in WRIST_TENDONS and zone.value not in WRIST_ZONES:
            yield Hit((zone,), dict(where=_where(entry), zone=zone.shown()))


@check("pulley_intact_with_opening")
def pulley_intact_with_opening(case: Case) -> Iterator[Hit]:
    """A pulley intact and yet opened."""
    for entry in case.pulleys:
        finding = entry.known("finding")
        opening = entry.known("extent_mm") or entry.known("extent_percent") or entry.known("part")
        if finding and opening and finding.value == "intact" and opening.value != 0:
            yield Hit((finding, opening), dict(where=_where(entry), value=opening.shown()))


@check("pulley_whole_with_part")
def pulley_whole_with_part(case: Case) -> Iterator[Hit]:
    """A pulley wholly opened or removed, yet only a part of it."""
    for entry in case.pulleys:
        pair = both(entry, "finding", "extent_percent")
        if pair and pair[0].value in ("released", "excised") and (low_of(pair[1]) or 0) < 100:
            yield Hit(pair, dict(where=_where(entry), finding=pair[0].shown(), percent=show_value(pair[1].value)))


@check("pulley_vented_all")
def pulley_vented_all(case: Case) -> Iterator[Hit]:
    """A pulley vented in part, yet over its whole length."""
    for entry in case.pulleys:
        pair = both(entry, "finding", "extent_percent")
        if pair and pair[0].value in ("vented", "trimmed") and low_of(pair[1]) == 100:
            yield Hit(pair, dict(where=_where(entry), finding=pair[0].shown(), percent=show_value(pair[1].value)))


@check("pulley_opening_long")
def pulley_opening_long(case: Case) -> Iterator[Hit]:
    """An opening longer than the pulley."""
    tables = glide_tables()
    for entry in case.pulleys:
        opening = entry.known("extent_mm")
        width = tables.widths.mm.get(entry.place.part or "")
        if (
            opening
            and width
            and entry.place.digit != "thumb"
            and (low_of(opening) or 0) > width * tables.widths.longest_factor
        ):
            yield Hit((opening,), dict(where=_where(entry), mm=show_value(opening.value), width=f"{width:g}"))


@check("dates_in_order")
def dates_in_order(case: Case) -> Iterator[Hit]:
    """The injury after the operation."""
    pair = both(case.operation, "injury_date", "date")
    if pair and str(pair[0].value) > str(pair[1].value):
        yield Hit(pair, dict(injury=pair[0].shown(), operation=pair[1].shown()))


@check("late_repair")
def late_repair(case: Case) -> Iterator[Hit]:
    """An end-to-end repair long after the injury."""
    pair = both(case.operation, "injury_date", "date")
    if pair is None:
        return
    days = (date.fromisoformat(str(pair[1].value)) - date.fromisoformat(str(pair[0].value))).days
    for entry in case.repairs:
        done = entry.known("treatment")
        if done and done.value == "repaired" and days > check_tables().limits.late_days:
            yield Hit((done, *pair), dict(where=_where(entry), days=str(days)))


def _programme(case: Case) -> Known | None:
    return case.aftercare.known("programme")


@check("programme_at_odds")
def programme_at_odds(case: Case) -> Iterator[Hit]:
    """Immobilisation ordered, yet motion starts within days."""
    programme, start = _programme(case), case.aftercare.known("start_day")
    day = low_of(start) if start else None
    if programme is None or start is None or day is None:
        return
    if "immobilisation" in programme.candidates and day <= check_tables().limits.immobilised_start_days:
        yield Hit((programme, start), dict(day=show_value(start.value)))


@check("early_programme_late")
def early_programme_late(case: Case) -> Iterator[Hit]:
    """An early programme that starts late."""
    programme, start = _programme(case), case.aftercare.known("start_day")
    day = low_of(start) if start else None
    if programme is None or start is None or day is None:
        return
    if programme.value in EARLY_PROGRAMMES and day > check_tables().limits.motion_late_days:
        yield Hit((programme, start), dict(programme=programme.shown(), day=show_value(start.value)))


@check("start_after_splint")
def start_after_splint(case: Case) -> Iterator[Hit]:
    """An early programme that starts after the splint has ended."""
    programme, pair = _programme(case), both(case.aftercare, "start_day", "splint_weeks")
    if programme is None or pair is None or programme.value == "immobilisation":
        return
    start, weeks = low_of(pair[0]), pair[1].value
    last = weeks.high if isinstance(weeks, Interval) else None
    if start is not None and last is not None and start > last * 7:
        fill = dict(programme=programme.shown(), day=show_value(pair[0].value), weeks=show_value(weeks))
        yield Hit((programme, *pair), fill)


@check("splint_long")
def splint_long(case: Case) -> Iterator[Hit]:
    """A splint worn unusually long."""
    weeks = case.aftercare.known("splint_weeks")
    if weeks and (low_of(weeks) or 0) > check_tables().limits.splint_longest_weeks:
        yield Hit((weeks,), dict(weeks=show_value(weeks.value)))


@check("splint_angle")
def splint_angle(case: Case) -> Iterator[Hit]:
    """A splint angle outside what is usual."""
    limits = check_tables().limits
    ranges = {
        "wrist_flexion_deg": (-limits.wrist_extended_most, limits.wrist_flexed_most),
        "mcp_flexion_deg": (0.0, 90.0),
        "ip_flexion_deg": (-10.0, limits.ip_flexed_most),
    }
    for name, (least, most) in ranges.items():
        known = case.aftercare.known(name)
        value = known.value if known else None
        if known is None or not isinstance(value, Interval):
            continue
        ends = [v for v in (value.low, value.high) if v is not None]
        if min(ends) < least or max(ends) > most:
            yield Hit((known,), dict(field=spec_of(known.place).label, value=known.shown()))


@check("structure_intact_yet_treated")
def structure_intact_yet_treated(case: Case) -> Iterator[Hit]:
    """Another structure intact and yet treated."""
    for entry in case.injuries:
        pair = both(entry, "extent", "treatment")
        if pair and pair[0].value == "intact":
            yield Hit(pair, dict(where=_where(entry), treatment=pair[1].shown()))
