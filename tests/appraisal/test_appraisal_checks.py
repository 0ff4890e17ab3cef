"""Every named check: a record that it catches, and the well documented repair that none of them catches."""

from typing import Any

import pytest
from appraisal_making import GOOD_CARE, GOOD_REPAIR, proposed, quoted, record_of, repair_record, rivals, span

from notereader.appraisal import appraise
from notereader.appraisal.checks import check_tables, registered, run_checks
from notereader.appraisal.known import Case
from notereader.record import Fact, Record

FDP = "repairs/ring/FDP/-"
CARE = "aftercare/-/-/-"
OPERATION = "operation/-/-/-"


def repaired(**changes: Any) -> dict[str, dict[str, Any]]:
    return {
        FDP: {
            **{k: v for k, v in GOOD_REPAIR.items() if k not in changes},
            **{k: v for k, v in changes.items() if v is not None},
        }
    }


def pulley(name: str = "A2", digit: str = "ring", **facts: Any) -> dict[str, dict[str, Any]]:
    return {f"pulleys/{digit}/{name}/-": facts}


def care(**changes: Any) -> dict[str, dict[str, Any]]:
    return {CARE: {**GOOD_CARE, **changes}}


# Check -> an invented record that it must catch.
CAUGHT: dict[str, dict[str, dict[str, Any]]] = {
    "two_values": repaired(size=rivals("4-0", "3-0")),
    "side_differs": {OPERATION: dict(side=rivals("left", "right"))},
    "header_and_body": repaired(zone=proposed("II", look_twice=["the header names another digit"])),
    "strands_and_stitch": repaired(strands=6, stitch="adelaide"),
    "odd_strands": repaired(strands=5, stitch="other"),
    "looped_strands": repaired(strands=2, stitch="kessler", looped=True),
    "hold_and_stitch": repaired(hold="grasping", stitch="locked cruciate"),
    "core_finer": repaired(size="6-0", peripheral_size="5-0"),
    "core_size_unusual": repaired(size="7-0", peripheral_size=None),
    "peripheral_size_unusual": repaired(peripheral_size="4-0"),
    "peripheral_absent_with_details": repaired(peripheral="absent"),
    "absorbable_core": repaired(material="polyglactin"),
    "purchase_long": repaired(purchase_mm=span(25)),
    "purchase_short": repaired(purchase_mm=span(2)),
    "lock_too_wide": repaired(lock_mm=span(6)),
    "lock_longer_than_purchase": repaired(lock_mm=span(4), purchase_mm=span(3)),
    "trimmed_long": repaired(trimmed_mm=15),
    "sutured_yet_not_repaired": repaired(treatment="left"),
    "intact_yet_treated": repaired(extent="intact"),
    "complete_with_percent": repaired(extent_percent=60),
    "partial_all": repaired(extent="partial", extent_percent=100),
    "small_partial_sutured": repaired(extent="partial", extent_percent=30),
    "large_partial_left": {FDP: dict(extent="partial", extent_percent=80, treatment="left")},
    "gap_none_with_figure": repaired(gap_mm=2),
    "gap_seen_zero": repaired(gap="seen", gap_mm=0),
    "free_yet_bulky": repaired(bulk="present"),
    "ends_and_mechanism": repaired() | {OPERATION: dict(mechanism="saw")},
    "active_test_asleep": repaired(test="active") | {OPERATION: dict(anaesthesia="general")},
    "reinserted_outside_zone_one": {FDP: dict(treatment="reinserted", stitch="pull-out", zone="II")},
    "reinserted_with_core": {FDP: dict(treatment="reinserted", stitch="kessler", zone="I")},
    "pulvertaft_end_to_end": repaired(stitch="pulvertaft", hold=None, strands=None),
    "fds_in_zone_one": {"repairs/ring/FDS/-": dict(zone="IB", treatment="repaired")},
    "zone_one_with_two_slips": {
        FDP: dict(zone="I", treatment="repaired"),
        "repairs/ring/FDS/radial": dict(extent="complete"),
        "repairs/ring/FDS/ulnar": dict(extent="complete"),
    },
    "slip_and_whole": {
        "repairs/ring/FDS/-": dict(treatment="repaired"),
        "repairs/ring/FDS/radial": dict(treatment="excised"),
    },
    "thumb_with_finger_tendon": {"repairs/thumb/FDS/-": dict(treatment="repaired")},
    "thumb_with_finger_pulley": pulley("A4", "thumb", finding="vented"),
    "wrist_tendon_zone": {"repairs/-/FCR/-": dict(zone="II")},
    "pulley_intact_with_opening": pulley(finding="intact", extent_mm=5),
    "pulley_two_states": pulley(finding=rivals("vented", "intact")),
    "pulley_whole_with_part": pulley(finding="released", extent_percent=50),
    "pulley_vented_all": pulley(finding="vented", extent_percent=100),
    "pulley_opening_long": pulley("A4", finding="vented", extent_mm=20),
    "dates_in_order": {OPERATION: dict(date="2031-03-01", injury_date="2031-03-02")},
    "late_repair": repaired() | {OPERATION: dict(date="2031-05-01", injury_date="2031-01-02")},
    "programme_at_odds": care(programme="immobilisation", start_day=span(3)),
    "early_programme_late": care(start_day=span(30)),
    "start_after_splint": care(start_day=span(40), splint_weeks=span(5)),
    "splint_long": care(splint_weeks=span(16)),
    "splint_angle": care(wrist_flexion_deg=span(80)),
    "structure_intact_yet_treated": {"injuries/ring/digital nerve/radial": dict(extent="intact", treatment="repaired")},
}


def names(record: Record) -> set[str]:
    return {hit.check for hit in run_checks(Case.of(record))}


@pytest.mark.parametrize("name", CAUGHT)
def test_each_check_catches_its_case_with_the_evidence(name: str) -> None:
    hits = [hit for hit in run_checks(Case.of(record_of(CAUGHT[name]))) if hit.check == name]
    assert hits, f"{name} did not catch its case"
    for hit in hits:
        assert hit.words and "{" not in hit.words
        assert hit.pieces
        assert all(piece.address and piece.value for piece in hit.pieces)
        assert hit.source


def test_there_are_at_least_twenty_five_checks_and_each_is_tested() -> None:
    assert len(registered()) >= 25
    assert set(CAUGHT) == set(registered()) == set(check_tables().check)


# A single fact can be implausible by itself; everything else rests on two.
SINGLE = {
    "header_and_body",
    "odd_strands",
    "core_size_unusual",
    "peripheral_size_unusual",
    "absorbable_core",
    "purchase_long",
    "purchase_short",
    "lock_too_wide",
    "fds_in_zone_one",
    "thumb_with_finger_tendon",
    "thumb_with_finger_pulley",
    "wrist_tendon_zone",
    "pulley_opening_long",
    "splint_long",
    "splint_angle",
}


@pytest.mark.parametrize("name", sorted(set(CAUGHT) - SINGLE))
def test_checks_of_two_statements_show_both(name: str) -> None:
    hit = next(hit for hit in run_checks(Case.of(record_of(CAUGHT[name]))) if hit.check == name)
    assert len({(piece.address, piece.value) for piece in hit.pieces}) >= 2


def test_a_well_documented_repair_raises_nothing() -> None:
    assert names(repair_record()) == set()


def test_an_empty_record_raises_nothing() -> None:
    assert names(Record()) == set()


def test_withdrawn_facts_raise_nothing() -> None:
    assert "core_finer" not in names(repair_record(size=Fact(value="6-0", status="withdrawn"), peripheral_size="5-0"))


def test_settled_rivals_raise_nothing() -> None:
    settled = rivals("4-0", "3-0")
    settled.status = "corrected"
    assert names(repair_record(size=settled)) == set()


@pytest.mark.parametrize("strands", [2, 4, 8])
def test_names_with_several_published_counts_are_left_alone(strands: int) -> None:
    assert "strands_and_stitch" not in names(repair_record(stitch="modified kessler", strands=strands))


def test_an_implied_count_never_contradicts_its_name() -> None:
    assert "strands_and_stitch" not in names(repair_record(strands=proposed(6, basis="implied"), stitch="adelaide"))


def test_a_thick_pull_out_suture_is_not_unusual() -> None:
    record = record_of({FDP: dict(treatment="reinserted", stitch="pull-out", size="0", zone="I")})
    assert "core_size_unusual" not in names(record)


def test_the_pieces_carry_the_words_of_the_note() -> None:
    text = "Core 4-0 nylon. Header: 3-0."
    torn = rivals("4-0", "3-0")
    torn.evidence = quoted(text, "4-0 nylon")
    torn.rivals[0].evidence = quoted(text, "3-0")
    hit = run_checks(Case.of(repair_record(size=torn)))[0]
    assert [piece.quote for piece in hit.pieces] == ["4-0 nylon", "3-0"]


def test_contradictions_come_before_the_merely_unusual() -> None:
    record = record_of(repaired(material="polyglactin", gap_mm=2))
    kinds = [hit.kind for hit in run_checks(Case.of(record))]
    assert kinds == ["contradiction", "implausible"]


def test_a_contradiction_shows_in_the_completeness_list() -> None:
    appraisal = appraise(record_of(repaired(gap_mm=2)))
    items = [i for g in appraisal.completeness.needs for i in g.items if i.label == "Gap after repair"]
    assert [i.state for i in items] == ["contradictory"]
