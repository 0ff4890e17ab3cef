"""Checks of the suture of one tendon: strands, stitch, sizes, purchase, peripheral suture."""

from collections.abc import Iterator

from notereader.appraisal.checks import Hit, check, check_tables
from notereader.appraisal.known import Case, Entry, Known
from notereader.record import Interval, show_value
from notereader.vocabulary import sizes, stitches

# Facts that only a core suture has.
CORE_FIELDS = ("strands", "purchase_mm", "hold", "lock_mm", "looped")
NOT_SUTURED = ("left", "trimmed", "excised")


def _where(entry: Entry) -> str:
    return entry.place.entry_words()


def both(entry: Entry, first: str, second: str) -> tuple[Known, Known] | None:
    """Return two live facts of an entry, or None where one is missing."""
    a, b = entry.known(first), entry.known(second)
    return None if a is None or b is None else (a, b)


def low_of(known: Known) -> float | None:
    """Return the lower figure of a live range or number, the upper one where only that is given."""
    value = known.value
    if isinstance(value, Interval):
        return value.low if value.low is not None else value.high
    return float(value) if isinstance(value, int | float) else None


def grade(usp: str) -> int:
    """Return how thick a USP size is: a rising number from the finest."""
    return list(sizes()).index(usp)


@check("strands_and_stitch")
def strands_and_stitch(case: Case) -> Iterator[Hit]:
    """Stated count that the stitch name is not published with."""
    for entry in case.repairs:
        pair = both(entry, "strands", "stitch")
        usual = check_tables().strand_counts.get(str(pair[1].value)) if pair else None
        if pair and usual and not pair[0].implied and pair[0].value not in usual:
            counts = " or ".join(map(str, usual))
            yield Hit(pair, dict(where=_where(entry), strands=pair[0].shown(), stitch=pair[1].shown(), usual=counts))


@check("odd_strands")
def odd_strands(case: Case) -> Iterator[Hit]:
    """An odd number of core strands."""
    for entry in case.repairs:
        known = entry.known("strands")
        if known and isinstance(known.value, int) and known.value % 2:
            yield Hit((known,), dict(where=_where(entry), strands=known.shown()))


@check("looped_strands")
def looped_strands(case: Case) -> Iterator[Hit]:
    """A looped suture with a count that loops do not give."""
    for entry in case.repairs:
        pair = both(entry, "strands", "looped")
        if (
            pair
            and pair[1].value is True
            and isinstance(pair[0].value, int)
            and (pair[0].value < 4 or pair[0].value % 2)
        ):
            # A single looped stitch (tsuge) is two strands by name.
            if pair[0].value == 2 and entry.text("stitch") == "tsuge":
                continue
            yield Hit(pair, dict(where=_where(entry), strands=pair[0].shown()))


@check("hold_and_stitch")
def hold_and_stitch(case: Case) -> Iterator[Hit]:
    """Grasping recorded with a stitch that locks by name."""
    for entry in case.repairs:
        pair = both(entry, "hold", "stitch")
        if pair is None or pair[0].value != "grasping":
            continue
        named = stitches().get(str(pair[1].value))
        if named and named.hold == "locking":
            yield Hit(pair, dict(where=_where(entry), stitch=pair[1].shown()))


@check("core_finer")
def core_finer(case: Case) -> Iterator[Hit]:
    """A core finer than the peripheral suture."""
    for entry in case.repairs:
        pair = both(entry, "size", "peripheral_size")
        if pair and grade(str(pair[0].value)) < grade(str(pair[1].value)):
            yield Hit(pair, dict(where=_where(entry), core=pair[0].shown(), peripheral=pair[1].shown()))


@check("core_size_unusual")
def core_size_unusual(case: Case) -> Iterator[Hit]:
    """A core outside the sizes usual in an adult tendon; pull-out sutures may be thicker."""
    limits = check_tables().limits
    for entry in case.repairs:
        known = entry.known("size")
        if known is None or entry.text("treatment") == "reinserted":
            continue
        if not grade(limits.core_finest) <= grade(str(known.value)) <= grade(limits.core_thickest):
            fill = dict(
                where=_where(entry), size=known.shown(), finest=limits.core_finest, thickest=limits.core_thickest
            )
            yield Hit((known,), fill)


@check("peripheral_size_unusual")
def peripheral_size_unusual(case: Case) -> Iterator[Hit]:
    """A peripheral suture as thick as a core."""
    for entry in case.repairs:
        known = entry.known("peripheral_size")
        if known and grade(str(known.value)) >= grade(check_tables().limits.peripheral_thickest):
            yield Hit((known,), dict(where=_where(entry), size=known.shown()))


@check("peripheral_absent_with_details")
def peripheral_absent_with_details(case: Case) -> Iterator[Hit]:
    """No peripheral suture, yet its pattern, size or material."""
    for entry in case.repairs:
        known = entry.known("peripheral")
        if known is None or known.value != "absent":
            continue
        for name, word in (
            ("peripheral_pattern", "pattern"),
            ("peripheral_size", "size"),
            ("peripheral_material", "material"),
        ):
            detail = entry.known(name)
            if detail:
                yield Hit((known, detail), dict(where=_where(entry), field=word, value=detail.shown()))


@check("absorbable_core")
def absorbable_core(case: Case) -> Iterator[Hit]:
    """A core that loses its strength within weeks."""
    for entry in case.repairs:
        known = entry.known("material")
        if known and known.value == "polyglactin":
            yield Hit((known,), dict(where=_where(entry), material=known.shown()))


@check("purchase_long")
def purchase_long(case: Case) -> Iterator[Hit]:
    """A purchase longer than plausible."""
    for entry in case.repairs:
        known = entry.known("purchase_mm")
        if (
            known
            and isinstance(known.value, Interval)
            and (known.value.high or 0) > check_tables().limits.purchase_longest_mm
        ):
            yield Hit((known,), dict(where=_where(entry), value=show_value(known.value)))


@check("purchase_short")
def purchase_short(case: Case) -> Iterator[Hit]:
    """A purchase shorter than was tested."""
    for entry in case.repairs:
        known = entry.known("purchase_mm")
        length = low_of(known) if known else None
        if known and length is not None and length < check_tables().limits.purchase_shortest_mm:
            yield Hit((known,), dict(where=_where(entry), value=show_value(known.value)))


@check("lock_too_wide")
def lock_too_wide(case: Case) -> Iterator[Hit]:
    """Locks wider than plausible in a finger tendon."""
    for entry in case.repairs:
        known = entry.known("lock_mm")
        width = low_of(known) if known else None
        if known and width is not None and width > check_tables().limits.lock_widest_mm:
            yield Hit((known,), dict(where=_where(entry), value=show_value(known.value)))


@check("lock_longer_than_purchase")
def lock_longer_than_purchase(case: Case) -> Iterator[Hit]:
    """Locks that do not fit into the purchase."""
    for entry in case.repairs:
        pair = both(entry, "lock_mm", "purchase_mm")
        if pair is None:
            continue
        lock, purchase = low_of(pair[0]), pair[1].value
        most = purchase.high if isinstance(purchase, Interval) else None
        if lock is not None and most is not None and lock > most:
            fill = dict(where=_where(entry), lock=show_value(pair[0].value), purchase=show_value(purchase))
            yield Hit(pair, fill)


@check("trimmed_long")
def trimmed_long(case: Case) -> Iterator[Hit]:
    """Much tendon removed and still sutured end to end."""
    limit = check_tables().limits.trimmed_longest_mm
    for entry in case.repairs:
        known, done = entry.known("trimmed_mm"), entry.known("treatment")
        if known and done and done.value == "repaired" and (low_of(known) or 0) > limit:
            yield Hit((known, done), dict(where=_where(entry), value=show_value(known.value)))


@check("sutured_yet_not_repaired")
def sutured_yet_not_repaired(case: Case) -> Iterator[Hit]:
    """Recorded as not sutured, yet with facts only a core suture has."""
    for entry in case.repairs:
        done = entry.known("treatment")
        if done is None or done.value not in NOT_SUTURED:
            continue
        found = next((k for name in (*CORE_FIELDS, "stitch", "size") if (k := entry.known(name))), None)
        if found:
            fill = dict(
                where=_where(entry),
                treatment=done.shown(),
                field=found.place.words().split(": ")[-1],
                value=found.shown(),
            )
            yield Hit((done, found), fill)


@check("gap_none_with_figure")
def gap_none_with_figure(case: Case) -> Iterator[Hit]:
    """No gap, yet a gap figure."""
    for entry in case.repairs:
        pair = both(entry, "gap", "gap_mm")
        if pair and pair[0].value == "none" and (low_of(pair[1]) or 0) > 0:
            yield Hit(pair, dict(where=_where(entry), mm=show_value(pair[1].value)))


@check("gap_seen_zero")
def gap_seen_zero(case: Case) -> Iterator[Hit]:
    """A gap seen, yet of zero width."""
    for entry in case.repairs:
        pair = both(entry, "gap", "gap_mm")
        if pair and pair[0].value == "seen" and low_of(pair[1]) == 0:
            yield Hit(pair, dict(where=_where(entry)))


@check("free_yet_bulky")
def free_yet_bulky(case: Case) -> Iterator[Hit]:
    """Free glide with a bulky repair."""
    for entry in case.repairs:
        pair = both(entry, "glide", "bulk")
        if pair and pair[0].value == "free" and pair[1].value == "present":
            yield Hit(pair, dict(where=_where(entry), other="bulky"))


@check("reinserted_with_core")
def reinserted_with_core(case: Case) -> Iterator[Hit]:
    """Reinsertion without a fixation, or a fixation without reinsertion."""
    fixations = ("pull-out", "anchor", "other")
    for entry in case.repairs:
        pair = both(entry, "treatment", "stitch")
        if pair is None:
            continue
        reinserted, fixed = pair[0].value == "reinserted", pair[1].value in fixations
        if (reinserted and not fixed) or (pair[0].value == "repaired" and pair[1].value in fixations[:2]):
            yield Hit(pair, dict(where=_where(entry), treatment=pair[0].shown(), stitch=pair[1].shown()))


@check("pulvertaft_end_to_end")
def pulvertaft_end_to_end(case: Case) -> Iterator[Hit]:
    """A weave recorded as an end-to-end repair."""
    for entry in case.repairs:
        pair = both(entry, "stitch", "treatment")
        if pair and pair[0].value == "pulvertaft" and pair[1].value == "repaired":
            yield Hit(pair, dict(where=_where(entry), treatment=pair[1].shown()))
