"""Margins, glide, pulleys and the time line of small invented records."""

from datetime import date

import pytest
from appraisal_making import GOOD_CARE, GOOD_REPAIR, fact, proposed, record_of, repair_record, rivals, span

from notereader.appraisal import appraise
from notereader.appraisal.glide import glide_of
from notereader.appraisal.known import Case
from notereader.appraisal.margin import compare, loads_for, margin_of, verdict_words
from notereader.appraisal.models import DigitGlide, ForceRange, LoadRange
from notereader.record import Record

LOAD = LoadRange(
    key="k", label="l", short="s", low=10, high=20, measured_low=10, measured_high=20, source="x", status="memory"
)


@pytest.mark.parametrize(
    ("low", "high", "verdict"),
    [(21, 40, "above"), (20, 40, "overlap"), (5, 12, "overlap"), (1, 9, "below"), (1, 10, "overlap")],
)
def test_ranges_that_touch_overlap(low: float, high: float, verdict: str) -> None:
    assert compare(ForceRange(low=low, high=high), LOAD.low, LOAD.high) == verdict


def test_the_overlap_is_said_in_words() -> None:
    assert "cannot say which is larger" in verdict_words("overlap")


def test_ratios_are_the_worst_and_the_best() -> None:
    margin = margin_of(ForceRange(low=10, high=60), ForceRange(low=2, high=30), LOAD)
    assert (margin.ratio_low, margin.ratio_high) == (0.5, 6.0)


def test_loads_are_kept_apart_by_tendon() -> None:
    keys = {tendon: {load.key for load in loads_for(tendon)} for tendon in ("FDP", "FDS", "FPL", "FCR")}
    assert "isolated_fdp" in keys["FDP"] and "isolated_fds" not in keys["FDP"]
    assert "isolated_fds" in keys["FDS"]
    assert keys["FCR"] == set()


def test_the_table_holds_the_chosen_day() -> None:
    tendon = appraise(repair_record(), day=9).tendons[0]
    assert 9 in [row.day for row in tendon.table]
    assert [row.day for row in tendon.table] == sorted(row.day for row in tendon.table)


@pytest.mark.parametrize("treatment", ["left", "excised", "trimmed", "reinserted", "grafted", "tenodesed"])
def test_no_figure_for_what_the_model_does_not_cover(treatment: str) -> None:
    tendon = appraise(record_of({"repairs/ring/FDP/-": dict(treatment=treatment, strands=4)})).tendons[0]
    assert tendon.strength is None and tendon.table == [] and tendon.loads == []
    assert treatment in tendon.reason


@pytest.mark.parametrize("stitch", ["horizontal mattress", "simple", "pulvertaft", "krackow"])
def test_no_figure_for_stitches_without_one(stitch: str) -> None:
    tendon = appraise(repair_record(stitch=stitch)).tendons[0]
    assert tendon.strength is None and stitch in tendon.reason


def test_no_figure_where_repair_itself_is_not_stated_or_disputed() -> None:
    assert appraise(repair_record(treatment=None)).tendons[0].strength is None
    disputed = appraise(repair_record(treatment=rivals("left", "repaired"))).tendons[0]
    assert disputed.strength is None and "left and repaired" in disputed.reason


def test_a_partial_cut_is_not_credited_with_its_uncut_fibres() -> None:
    strength = appraise(repair_record(extent="partial", extent_percent=60)).tendons[0].strength
    whole = appraise(repair_record()).tendons[0].strength
    assert strength is not None and whole is not None
    assert strength.breaking == whole.breaking
    assert any("uncut fibres are not counted" in note for note in strength.notes)


def test_a_slip_promises_less_than_a_tendon() -> None:
    slip = appraise(record_of({"repairs/ring/FDS/ulnar": GOOD_REPAIR})).tendons[0].strength
    whole = appraise(record_of({"repairs/ring/FDS/-": GOOD_REPAIR})).tendons[0].strength
    assert slip is not None and whole is not None
    assert slip.breaking.low < whole.breaking.low


def glide(record: Record) -> DigitGlide:
    return glide_of(Case.of(record))[0]


def words(found: DigitGlide) -> str:
    return " ".join(c.words for c in (*found.notes, *found.pulleys))


def test_catching_is_reported_and_silence_named() -> None:
    found = " ".join(c.words for c in glide(repair_record(glide=proposed("catching"), bulk=None)).found)
    assert "glide catching (proposed), tension none (confirmed), bulk not stated" in found
    assert "do not include what it catches on" in found


def test_free_glide_says_nothing_of_catching() -> None:
    found = " ".join(c.words for c in glide(repair_record()).found)
    assert "glide free (confirmed)" in found
    assert "catches" not in found


def test_travel_within_the_splint_is_less_than_the_fist() -> None:
    found = glide(repair_record()).travel
    assert len(found) == 2
    assert found[1].high_mm < found[0].low_mm
    assert found[1].low_mm == pytest.approx(found[1].high_mm / 2)


def test_travel_within_the_splint_by_hand() -> None:
    """Ring FDP, Ketchum arms 10.4/10.4/6.8: MCP 60 to 90, PIP 0 to 100, DIP 0 to 70 degrees."""
    by_hand = 10.4 * 0.5236 + 10.4 * 1.7453 + 6.8 * 1.2217
    assert glide(repair_record()).travel[1].high_mm == pytest.approx(by_hand, abs=0.05)


def test_an_unstated_angle_takes_the_usual_range() -> None:
    care = {k: v for k, v in GOOD_CARE.items() if k != "mcp_flexion_deg"}
    found = glide(record_of({"repairs/ring/FDP/-": GOOD_REPAIR, "aftercare/-/-/-": care}))
    assert "no MCP angle" in words(found)
    assert found.travel[1].high_mm > glide(repair_record()).travel[1].high_mm


def test_no_splint_no_travel_within_it() -> None:
    found = glide(record_of({"repairs/ring/FDP/-": GOOD_REPAIR}))
    assert len(found.travel) == 1
    assert "orders no splint angles" in words(found)


def test_a_tendon_that_was_removed_does_not_travel() -> None:
    record = record_of({"repairs/ring/FDP/-": GOOD_REPAIR, "repairs/ring/FDS/-": dict(treatment="excised")})
    assert {t.tendon for t in glide(record).travel} == {"FDP"}


def with_pulleys(**states: object) -> DigitGlide:
    entries = {f"pulleys/ring/{name}/-": facts for name, facts in states.items()}
    return glide(record_of({"repairs/ring/FDP/-": GOOD_REPAIR, **entries}))  # type: ignore[dict-item]


def test_silent_pulleys_are_not_counted_as_intact() -> None:
    assert "nothing about A2, A4, A1, A3" in words(with_pulleys())
    assert "not counted as intact" in words(with_pulleys())


def test_openings_add_up_with_what_is_not_known() -> None:
    found = with_pulleys(A2=dict(finding="vented"), A4=dict(finding="released"))
    assert found.openings_mm is not None
    assert (found.openings_mm.low, found.openings_mm.high) == pytest.approx((6.7, 23.7))
    assert "may reach or pass it" in words(found)


def test_a_disputed_pulley_is_opened_in_the_range() -> None:
    found = with_pulleys(A4=dict(finding=rivals("released", "intact")))
    assert found.openings_mm is not None
    assert (found.openings_mm.low, found.openings_mm.high) == pytest.approx((0, 6.7))
    assert "released or intact" in words(found)


def test_percent_and_millimetres() -> None:
    by_share = with_pulleys(A2=dict(finding="vented", extent_percent=50)).openings_mm
    by_length = with_pulleys(A2=dict(finding="vented", extent_mm=8.5)).openings_mm
    assert by_share == by_length


@pytest.mark.parametrize("state", ["repaired", "reconstructed", "widened", "intact", "injured"])
def test_every_recorded_state_is_reported(state: str) -> None:
    assert f"Pulleys as recorded: A2 {state}." in words(with_pulleys(A2=dict(finding=state)))


def test_an_injured_pulley_may_be_lost() -> None:
    found = with_pulleys(A4=dict(finding="injured")).openings_mm
    assert found is not None and (found.low, found.high) == pytest.approx((0, 6.7))


def test_neighbours_are_named() -> None:
    assert "A3 and A4" in words(with_pulleys(A3=dict(finding="excised"), A4=dict(finding="released")))
    assert "next to each other" not in words(with_pulleys(A1=dict(finding="released"), A4=dict(finding="released")))


def test_intact_pulleys_have_no_opening() -> None:
    assert with_pulleys(A2=dict(finding="intact"), A4=dict(finding="repaired")).openings_mm is None


def test_proposed_findings_are_marked() -> None:
    assert "released, proposed" in words(with_pulleys(A4=dict(finding=proposed("released"))))
    assert "proposed" not in words(with_pulleys(A4=dict(finding="released")))


def test_the_thumb_has_its_own_sentences() -> None:
    record = record_of(
        {
            "repairs/thumb/FPL/-": dict(treatment="repaired"),
            "pulleys/thumb/A1/-": dict(finding="released"),
            "pulleys/thumb/variable/-": dict(finding="excised"),
            "aftercare/-/-/-": GOOD_CARE,
        }
    )
    found = glide(record)
    assert "oblique pulley alone" in words(found)
    assert found.openings_mm is None
    assert len(found.travel) == 1


def dated(**facts: object) -> Record:
    return record_of({"operation/-/-/-": facts, "aftercare/-/-/-": GOOD_CARE, "repairs/ring/FDP/-": GOOD_REPAIR})


def test_days_count_from_operation_and_injury() -> None:
    line = appraise(dated(date="2031-03-04", injury_date="2031-03-02"), on=date(2031, 3, 11)).timeline
    assert (line.day, line.days_since_injury, line.chosen) == (7, 9, date(2031, 3, 11))


def test_a_disputed_date_counts_nothing() -> None:
    appraisal = appraise(dated(date=rivals("2031-03-04", "2031-04-03")), on=date(2031, 4, 11))
    assert appraisal.timeline.operation is None and not appraisal.day_given
    assert any("no date of operation" in note for note in appraisal.timeline.notes)


def test_windows_and_case_marks() -> None:
    line = appraise(dated(date="2031-03-04"), day=10).timeline
    assert [(m.from_day, m.to_day) for m in line.case] == [(4, 4), (42, 42)]
    assert any(m.here and "ruptures" in m.label for m in line.published)
    assert all(m.source for m in line.published)


def test_start_at_least_has_an_open_end() -> None:
    record = dated(date="2031-03-04")
    record.aftercare["start_day"] = fact(span(5).model_copy(update={"high": None}))
    mark = appraise(record, day=6).timeline.case[0]
    assert (mark.from_day, mark.to_day) == (5, None)


@pytest.mark.parametrize(("day", "bend"), [(-1, 0), (100000, 0), (3, -1), (3, 400)])
def test_impossible_days_and_bends_are_refused_in_plain_words(day: int, bend: float) -> None:
    with pytest.raises(ValueError, match="Give"):
        appraise(repair_record(), day=day, posture_deg=bend)


def test_a_date_before_the_operation_is_refused() -> None:
    with pytest.raises(ValueError, match="before the operation"):
        appraise(dated(date="2031-03-04"), on=date(2031, 3, 1))
