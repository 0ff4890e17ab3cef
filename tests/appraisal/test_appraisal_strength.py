"""Properties of the strength model that must hold whatever the figures are."""

from dataclasses import replace
from math import prod
from typing import Any

import pytest
from appraisal_making import proposed, repair_record, rivals, span
from hypothesis import given, settings
from hypothesis import strategies as st

from notereader.appraisal.construct import FEATURES, Construct, construct_of
from notereader.appraisal.known import Case
from notereader.appraisal.strength import share_if_unknown, spread_shares, strength_of
from notereader.appraisal.strength_tables import strength_tables
from notereader.record import Record
from notereader.vocabulary import field_specs

SIZES = ("7-0", "6-0", "5-0", "4-0", "3-0", "2-0", "0", "1")
MATERIALS = field_specs()["repairs"]["material"].values
PATTERNS = field_specs()["repairs"]["peripheral_pattern"].values

KNOWN: dict[str, st.SearchStrategy[Any]] = {
    "strands": st.sampled_from((1, 2, 4, 6, 8, 10)),
    "size": st.sampled_from(SIZES),
    "material": st.sampled_from(MATERIALS),
    "hold": st.sampled_from(("locking", "grasping")),
    "purchase_mm": st.floats(0.5, 15),
    "lock_mm": st.floats(0.5, 4),
    "peripheral": st.sampled_from(("present", "absent")),
    "pattern": st.sampled_from(PATTERNS),
    "ends": st.sampled_from(("clean", "ragged", "crushed", "attenuated")),
}
ANY = st.fixed_dictionaries({}, optional=KNOWN)
FULL = st.fixed_dictionaries(KNOWN)
DAYS = st.integers(0, 120)
BENDS = st.floats(0, 120)


def of(known: dict[str, Any]) -> Construct:
    return Construct.bench(**{"ends": None, "cut_deg": None, **known})


def middle_of(construct: Construct) -> float:
    """The product of the factors' middles, without the last factor, which turns breaking force into gap force."""
    return prod(factor.middle for factor in strength_of(construct).factors[:-1])


def never_weaker(stronger: Construct, weaker: Construct, day: int, bend: float) -> None:
    more, less = strength_of(stronger, day, bend), strength_of(weaker, day, bend)
    for a, b in ((more.breaking, less.breaking), (more.gap, less.gap)):
        assert a.low >= b.low - 1e-9
        assert a.high >= b.high - 1e-9


@given(ANY, st.integers(1, 12), st.integers(0, 6), DAYS, BENDS)
def test_more_strands_are_never_weaker(known: dict[str, Any], count: int, more: int, day: int, bend: float) -> None:
    never_weaker(of({**known, "strands": count + more}), of({**known, "strands": count}), day, bend)


@given(ANY, st.sampled_from(SIZES), st.sampled_from(SIZES), DAYS, BENDS)
def test_a_thicker_core_is_never_weaker(known: dict[str, Any], one: str, other: str, day: int, bend: float) -> None:
    fine, thick = sorted((one, other), key=SIZES.index)
    never_weaker(of({**known, "size": thick}), of({**known, "size": fine}), day, bend)


@given(ANY, st.floats(0, 20), st.floats(0, 20), DAYS, BENDS)
def test_a_longer_purchase_is_never_weaker(
    known: dict[str, Any], one: float, other: float, day: int, bend: float
) -> None:
    short, long = sorted((one, other))
    never_weaker(of({**known, "purchase_mm": long}), of({**known, "purchase_mm": short}), day, bend)


@given(ANY, DAYS, BENDS)
def test_locking_is_never_weaker_than_grasping(known: dict[str, Any], day: int, bend: float) -> None:
    never_weaker(of({**known, "hold": "locking"}), of({**known, "hold": "grasping"}), day, bend)


@given(ANY, st.floats(0, 120), st.floats(0, 120))
def test_more_bend_is_never_stronger(known: dict[str, Any], one: float, other: float) -> None:
    straight, bent = sorted((one, other))
    more, less = strength_of(of(known), 0, straight), strength_of(of(known), 0, bent)
    assert more.breaking.low >= less.breaking.low - 1e-9
    assert more.breaking.high >= less.breaking.high - 1e-9


# Cores that dissolve quickly are out of use: to learn of one is worse news than not to know, so they are left out here.
USUAL = FULL.filter(lambda known: known["material"] not in ("polyglactin", "other"))


@given(USUAL, st.lists(st.sampled_from(FEATURES), unique=True), DAYS, BENDS)
@settings(max_examples=200)
def test_an_added_unknown_never_narrows_the_range(
    known: dict[str, Any], forgotten: list[str], day: int, bend: float
) -> None:
    """Width is the ratio of the upper to the lower end, the scale on which the factors add up, before the ceiling."""
    construct = of(known)
    for feature in forgotten:
        less = construct.without(feature)
        wide, wider = strength_of(construct, day, bend), strength_of(less, day, bend)
        assert wider.spread_ratio >= wide.spread_ratio * (1 - 1e-9)
        construct = less


@given(FULL, st.sampled_from(FEATURES), DAYS)
@settings(max_examples=200)
def test_not_knowing_is_never_favourable(known: dict[str, Any], feature: str, day: int) -> None:
    """Forgetting a fact that is at least as good as the weaker usual value never raises the lower end or the middle."""
    usual: dict[str, Any] = dict(
        strands=4, size="3-0", material="polyblend", hold="locking", purchase_mm=10.0, lock_mm=2.0
    )
    usual |= dict(peripheral="present", pattern="running", ends="clean")
    construct = of({**known, **{name: usual[name] for name in usual if name.startswith(feature) or name == "pattern"}})
    forgotten = construct.without(feature)
    assert middle_of(forgotten) <= middle_of(construct) + 1e-9
    less, more = strength_of(forgotten, day).breaking, strength_of(construct, day).breaking
    assert less.low <= more.low + 1e-9
    assert less.high / less.low >= more.high / more.low * (1 - 1e-9)


@given(ANY, DAYS, BENDS)
def test_ranges_are_ordered_and_below_the_ceiling(known: dict[str, Any], day: int, bend: float) -> None:
    shown = strength_of(of(known), day, bend)
    assert 0 < shown.gap.low <= shown.gap.high
    assert 0 < shown.breaking.low <= shown.breaking.high <= strength_tables().ceiling.newton
    assert shown.gap.low <= shown.breaking.low
    assert shown.gap.high <= shown.breaking.high


@given(ANY, DAYS, BENDS)
def test_shares_of_the_spread_add_up_to_one(known: dict[str, Any], day: int, bend: float) -> None:
    shown = strength_of(of(known), day, bend)
    assert sum(f.share for f in shown.factors) == pytest.approx(1)
    assert all(f.source for f in shown.factors)


@given(ANY, DAYS)
def test_the_same_construct_always_gives_the_same_range(known: dict[str, Any], day: int) -> None:
    assert strength_of(of(known), day) == strength_of(of(known), day)


def built(record: Record) -> Construct:
    return construct_of(Case.of(record).repairs[0], immobilised=False)


def low(record: Record) -> float:
    return strength_of(built(record)).breaking.low


def width(record: Record) -> float:
    return strength_of(built(record)).spread_ratio


def test_of_rival_counts_the_weaker_is_used_and_the_range_widened() -> None:
    sure, torn = repair_record(strands=4, stitch=None), repair_record(strands=rivals(6, 4), stitch=None)
    assert low(torn) < low(sure)
    assert width(torn) > width(sure)
    strands = next(f for f in strength_of(built(torn)).factors if f.name == "strands")
    assert strands.value == "4 (also 6)"


def test_a_person_settles_rivals() -> None:
    settled = rivals(6, 4)
    settled.status = "confirmed"
    strands = next(
        f for f in strength_of(built(repair_record(strands=settled, stitch=None))).factors if f.name == "strands"
    )
    assert strands.value == "6"


def test_confirming_a_fact_narrows_the_range() -> None:
    assert width(repair_record(size="3-0")) < width(repair_record(size=proposed("3-0")))


def test_an_implied_count_widens_the_range() -> None:
    stated, implied = repair_record(strands=proposed(4)), repair_record(strands=proposed(4, basis="implied"))
    assert width(implied) > width(stated)
    assert low(implied) < low(stated)


def test_a_reason_to_look_twice_widens_the_range() -> None:
    assert width(repair_record(size=proposed("3-0", look_twice=["far from its tendon"]))) > width(
        repair_record(size=proposed("3-0"))
    )


def test_silence_is_not_filled_from_the_stitch_name() -> None:
    from notereader.record import Fact

    silent = repair_record(strands=Fact(value=None, basis="silent", status="confirmed"), stitch="adelaide")
    assert not built(silent).strands.known
    assert built(repair_record(strands=None, stitch="adelaide")).strands.doubts == ("implied",)


def test_no_count_follows_from_an_ambiguous_name() -> None:
    assert not built(repair_record(strands=None, stitch="modified savage")).strands.known


def test_an_unsettled_count_above_the_name_takes_the_name() -> None:
    """Six strands proposed with a stitch that always has four: four is used until a person settles it."""
    assert built(repair_record(strands=proposed(6), stitch="cruciate")).strands.candidates == (6, 4)
    assert built(repair_record(strands=6, stitch="cruciate")).strands.candidates == (6,)


def test_withdrawn_facts_count_as_unknown() -> None:
    from notereader.record import Fact

    withdrawn = repair_record(size=Fact(value="2-0", status="withdrawn"))
    assert not built(withdrawn).size.known


def test_polyblend_gains_less_where_the_hold_is_not_known() -> None:
    locked = Construct.bench(strands=4, size="4-0", material="polyblend", hold="locking")
    held, nylon = (
        locked.without("hold"),
        replace(locked.without("hold"), material=Construct.bench(material="nylon").material),
    )
    assert middle_of(held) < 1.3 * middle_of(nylon)


def test_at_most_is_not_read_as_that_much() -> None:
    some = built(repair_record(purchase_mm=span(None, 12)))
    assert middle_of(some) <= middle_of(built(repair_record(purchase_mm=None)))


def test_a_seen_gap_counts_no_gain_with_time() -> None:
    seen = strength_of(built(repair_record(gap="seen")), 42)
    assert seen.healing_high == 1.0
    assert any("more than 3 mm" in note for note in seen.notes)
    assert strength_of(built(repair_record(gap="seen", gap_mm=1)), 42).healing_high > 1.0


def test_an_unstated_gap_is_named_as_an_assumption() -> None:
    assert any("does not say that there was no gap" in n for n in strength_of(built(repair_record(gap=None))).notes)


def test_a_dissolving_core_loses_its_lower_end() -> None:
    dissolving, lasting = built(repair_record(material="polyglactin")), built(repair_record(material="nylon"))
    assert strength_of(dissolving, 0).breaking.low == pytest.approx(strength_of(lasting, 0).breaking.low)
    assert strength_of(dissolving, 28).breaking.low < 0.5 * strength_of(lasting, 28).breaking.low
    assert strength_of(dissolving, 28).breaking.high <= strength_of(lasting, 28).breaking.high


def test_an_unstated_core_may_dissolve() -> None:
    unstated, lasting = built(repair_record(material=None)), built(repair_record(material="nylon"))
    fresh = strength_of(unstated, 0).breaking.low / strength_of(lasting, 0).breaking.low
    late = strength_of(unstated, 84).breaking.low / strength_of(lasting, 84).breaking.low
    assert late < 0.6 * fresh


def test_described_but_unnamed_peripheral_suture_is_an_inference() -> None:
    feature = built(repair_record(peripheral=None)).peripheral
    assert feature.candidates == ("present",)
    assert "implied" in feature.doubts


def test_shares_name_the_unknowns_only() -> None:
    shares = spread_shares(built(repair_record(strands=None, stitch=None, size=None)))
    assert set(shares) == {"strands", "size"}
    assert shares["strands"] > shares["size"]


def test_share_of_a_known_fact_if_it_were_not() -> None:
    construct = built(repair_record())
    assert share_if_unknown(construct, "strands") > 0.2
    assert share_if_unknown(construct, "knot") == 0


@pytest.mark.parametrize(("day", "bend"), [(-1, 0), (0, -5)])
def test_impossible_questions_are_refused(day: int, bend: float) -> None:
    with pytest.raises(ValueError, match=r"operation|possible"):
        strength_of(Construct.bench(), day, bend)
