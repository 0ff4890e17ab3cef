"""Completeness: what is needed of which tendon, what counts as stated, and counts that add up."""

from datetime import date

import pytest
from appraisal_making import GOOD_CARE, GOOD_REPAIR, fact, proposed, record_of, repair_record, rivals

from notereader.appraisal import appraise
from notereader.appraisal.models import Completeness, NeedItem
from notereader.record import Fact, Record

SILENT = Fact(value=None, basis="silent", status="confirmed")


def needs(record: Record) -> Completeness:
    return appraise(record).completeness


def item(record: Record, where: str, label: str) -> NeedItem:
    return next(i for g in needs(record).needs for i in g.items if (i.where, i.label) == (where, label))


def labels(record: Record, where: str) -> set[str]:
    return {i.label for g in needs(record).needs for i in g.items if i.where == where}


@pytest.mark.parametrize(
    ("strands", "state", "confirmed"),
    [
        (4, "stated", True),
        (proposed(4), "stated", False),
        (proposed(4, basis="implied"), "implied", False),
        (rivals(4, 6), "contradictory", False),
        (SILENT, "silent", True),
        (None, "silent", False),
        (Fact(value=4, status="withdrawn"), "silent", False),
    ],
)
def test_states(strands: object, state: str, confirmed: bool) -> None:
    found = item(repair_record(strands=strands), "ring FDP", "Core strands")
    assert (found.state, found.confirmed) == (state, confirmed)


def test_counts_add_up_and_no_single_score_is_given() -> None:
    found = needs(repair_record(strands=None, size=rivals("4-0", "3-0"), gap=None))
    for tally in [*[g.tally for g in found.needs], *found.parts, *[s.tally for s in found.owed]]:
        assert tally.items == tally.stated + tally.implied + tally.silent + tally.contradictory
    total = sum(g.tally.items for g in found.needs)
    assert total == sum(p.items for p in found.parts)
    assert not {"score", "total", "overall"} & set(Completeness.model_fields)


def test_groups_run_from_much_to_little() -> None:
    assert [g.weight for g in needs(repair_record()).needs] == [3, 2, 1]


@pytest.mark.parametrize("treatment", ["left", "excised", "trimmed"])
def test_a_tendon_that_was_not_sutured_needs_no_suture_facts(treatment: str) -> None:
    record = record_of({"repairs/ring/FDS/-": dict(treatment=treatment, extent="complete")})
    assert labels(record, "ring FDS") == {"What was done", "Zone", "How much was cut"}


def test_an_intact_tendon_needs_nothing() -> None:
    assert labels(record_of({"repairs/ring/FDS/-": dict(extent="intact")}), "ring FDS") == set()


def test_a_reinserted_tendon_needs_its_fixation() -> None:
    wanted = labels(record_of({"repairs/ring/FDP/-": dict(treatment="reinserted")}), "ring FDP")
    assert {"Core stitch", "Gap after repair"} <= wanted
    assert "Core strands" not in wanted


def test_a_partial_cut_needs_its_share() -> None:
    assert "Percent cut" in labels(record_of({"repairs/ring/FDP/-": dict(extent="partial")}), "ring FDP")


def test_pulleys_are_needed_only_near_the_sheath() -> None:
    assert labels(repair_record(zone="II"), "ring pulleys") == {f"State of {p}" for p in ("A1", "A2", "A3", "A4")}
    assert labels(repair_record(zone="V"), "ring pulleys") == set()
    assert labels(repair_record(zone=None), "ring pulleys") != set()


def test_the_thumb_needs_its_own_pulleys() -> None:
    record = record_of({"repairs/thumb/FPL/-": dict(treatment="repaired", zone="II")})
    assert labels(record, "thumb pulleys") == {f"State of {p}" for p in ("A1", "oblique", "variable", "A2")}


def test_the_carpal_tunnel_needs_its_roof() -> None:
    assert labels(repair_record(zone="IV"), "flexor retinaculum") == {"Flexor retinaculum"}


def test_a_part_opened_pulley_needs_how_much() -> None:
    vented = {"repairs/ring/FDP/-": GOOD_REPAIR, "pulleys/ring/A2/-": dict(finding="vented")}
    assert "How much of A2 was opened" in labels(record_of(vented), "ring pulleys")
    measured = vented | {"pulleys/ring/A2/-": dict(finding="vented", extent_mm=6)}
    assert "How much of A2 was opened" not in labels(record_of(measured), "ring pulleys")


def test_a_surgeons_answer_fills_the_need_but_not_the_note() -> None:
    answer = fact(True, status="added", said_by="surgeon's answer", said_on=date(2031, 3, 4))
    record = record_of({"elements/-/-/-": dict(findings=answer)})
    owed = [i for s in needs(record).owed for i in s.items if i.label == "findings"]
    assert owed and all(i.state == "silent" for i in owed)
    told = fact(4, status="added", said_by="surgeon's answer", said_on=date(2031, 3, 4))
    found = item(repair_record(strands=told), "ring FDP", "Core strands")
    assert (found.state, found.elsewhere) == ("stated", "surgeon's answer")


def test_every_standard_names_its_source_and_what_the_record_cannot_show() -> None:
    owed = needs(Record()).owed
    assert len(owed) >= 3
    assert all(s.source and s.name for s in owed)
    assert all(s.tally.silent == s.tally.items for s in owed)
    rcs = next(s for s in owed if s.key == "rcs")
    assert "incision" in rcs.absent_from_record


def test_a_full_note_owes_nothing() -> None:
    names = "surgeon assistant anaesthetist diagnosis procedure findings complications specimens implants closure"
    elements = dict.fromkeys([*names.split(), "blood_loss", "antibiotics", "instructions", "signature"], True)
    record = record_of({"elements/-/-/-": elements, "operation/-/-/-": dict(date="2031-03-01", anaesthesia="general")})
    assert all(s.tally.stated == s.tally.items for s in needs(record).owed)


def test_aftercare_is_counted_once() -> None:
    record = record_of(
        {"repairs/ring/FDP/-": GOOD_REPAIR, "repairs/ring/FDS/-": GOOD_REPAIR, "aftercare/-/-/-": GOOD_CARE}
    )
    parts = [p.label for p in needs(record).parts]
    assert parts.count("aftercare") == 1
