"""What one record states, implies, is silent on or contradicts."""

import pytest
from audit_making import record_with

from notereader.audit.criteria import criteria, field_key
from notereader.audit.states import assess, is_confirmed, note_state
from notereader.audit.tables import audit_tables, where_it_applies
from notereader.record import Fact, Interval, Record, Rival
from notereader.vocabulary import field_specs

RING = "repairs/ring/FDP/-/"
SMALL = "repairs/small/FDP/-/"
SUTURED = {RING + "treatment": "repaired"}


def states(facts: dict[str, object]) -> dict[str, str]:
    return assess(record_with(facts)).states


def test_every_field_of_the_record_has_its_place_to_apply_and_only_one() -> None:
    every = {(group, name) for group, specs in field_specs().items() for name in specs}
    assert set(where_it_applies()) == every
    listed = [(entry.group, name) for entry in audit_tables().applies for name in entry.fields]
    assert len(listed) == len(set(listed))


def test_criteria_have_keys_of_their_own_and_every_list_is_there() -> None:
    keys = [criterion.key for criterion in criteria()]
    assert len(keys) == len(set(keys))
    assert {c.kind for c in criteria()} == {"needs", "fields", "rcs", "accreditation", "ccda", "cfr"}


def test_no_state_falls_outside_the_criteria() -> None:
    facts = {
        **SUTURED,
        RING + "zone": "II",
        "pulleys/ring/A2/-/finding": "vented",
        "injuries/ring/phalanx/-/extent": "partial",
    }
    assert set(states(facts)) <= {criterion.key for criterion in criteria()}


def test_the_four_states() -> None:
    found = states(
        {
            **SUTURED,
            RING + "size": "4-0",
            RING + "strands": Fact(value=4, basis="implied"),
            RING + "gap": Fact(value="seen", rivals=[Rival(value="none")]),
        }
    )
    assert found[field_key("repairs", "size")] == "s"
    assert found[field_key("repairs", "strands")] == "i"
    assert found[field_key("repairs", "gap")] == "c"
    assert found[field_key("repairs", "material")] == "-"


def test_a_note_states_a_thing_only_where_it_does_for_every_tendon() -> None:
    facts = {**SUTURED, SMALL + "treatment": "repaired", RING + "strands": 4}
    assert sorted(states(facts)[field_key("repairs", "strands")]) == ["-", "s"]
    assert [note_state(letters) for letters in ("ss", "si", "s-", "sc-")] == ["s", "i", "-", "c"]


def test_a_peripheral_suture_counts_only_where_a_tendon_was_sutured() -> None:
    key = field_key("repairs", "peripheral")
    assert states(SUTURED)[key] == "-"
    assert key not in states({RING + "treatment": "left", RING + "extent": "partial"})
    assert key not in states({RING + "extent": "intact"})
    assert key not in states({"operation/-/-/-/side": "left"})


def test_details_count_only_where_there_is_something_to_detail() -> None:
    size, width = field_key("repairs", "peripheral_size"), field_key("repairs", "gap_mm")
    assert size not in states(SUTURED)
    assert size not in states({**SUTURED, RING + "peripheral": "absent"})
    assert states({**SUTURED, RING + "peripheral": "present"})[size] == "-"
    assert width not in states({**SUTURED, RING + "gap": "none"})
    assert states({**SUTURED, RING + "gap": "seen"})[width] == "-"


def test_a_pulley_opened_by_millimetres_owes_no_percentage() -> None:
    opened = {**SUTURED, RING + "zone": "II", "pulleys/ring/A2/-/finding": "vented"}
    percent, length = field_key("pulleys", "extent_percent"), field_key("pulleys", "extent_mm")
    assert (states(opened)[percent], states(opened)[length]) == ("-", "-")
    told = states({**opened, "pulleys/ring/A2/-/extent_mm": 5})
    assert percent not in told and told[length] == "s"


def test_pulleys_count_where_the_cut_lies_in_the_sheath() -> None:
    key = field_key("pulleys", "finding")
    assert states({**SUTURED, RING + "zone": "II"})[key] == "----"
    assert key not in states({**SUTURED, RING + "zone": "V"})


def test_what_a_person_decided_between_is_still_a_contradiction_of_the_note() -> None:
    settled = Fact(value=2, status="confirmed", rivals=[Rival(value=4)])
    found = states({**SUTURED, RING + "strands": settled})
    assert found[field_key("repairs", "strands")] == "c"
    assert found["needs/repairs.strands"] == "c"


def test_two_facts_that_cannot_both_hold_are_contradictory() -> None:
    facts = {"operation/-/-/-/anaesthesia": "general", **SUTURED, RING + "test": "active"}
    found = assess(record_with(facts))
    assert found.checks
    assert found.states[field_key("repairs", "test")] in "cs"


def test_what_the_surgeon_answered_later_is_not_in_the_note() -> None:
    answer = Fact(value=6, status="added", said_by="surgeon")
    found = assess(record_with({**SUTURED, RING + "strands": answer}))
    assert found.states[field_key("repairs", "strands")] == "-"
    assert found.states["needs/repairs.strands"] == "-"
    assert RING + "strands" not in found.values


def test_nerves_that_only_the_surgeon_told_of_are_silence() -> None:
    place = "injuries/ring/digital nerve/radial/extent"
    assert states({**SUTURED, place: "intact"})["needs/nerves"] == "s"
    answered = {**SUTURED, place: Fact(value="intact", status="added", said_by="surgeon")}
    assert states(answered)["needs/nerves"] == "-"


def test_withdrawn_facts_are_silence() -> None:
    assert (
        states({**SUTURED, RING + "size": Fact(value="4-0", status="withdrawn")})[field_key("repairs", "size")] == "-"
    )


def test_standards_count_the_parts_of_the_note() -> None:
    found = states({"elements/-/-/-/surgeon": True})
    assert found["rcs/surgeon"] == found["accreditation/surgeon"] == "s"
    assert found["rcs/signature"] == "-"


def test_values_are_kept_as_they_are_said() -> None:
    facts = {**SUTURED, RING + "purchase_mm": Interval(low=7, high=10), "elements/-/-/-/surgeon": True}
    values = assess(record_with(facts)).values
    assert values[RING + "purchase_mm"] == "7 to 10"
    assert values["elements/-/-/-/surgeon"] == "yes"


@pytest.mark.parametrize(
    ("facts", "confirmed"),
    [
        ({RING + "size": Fact(value="4-0", status="confirmed")}, True),
        ({RING + "size": Fact(value="4-0")}, False),
        ({RING + "size": Fact(value="4-0", status="corrected"), RING + "strands": Fact(value=4)}, False),
        ({}, False),
    ],
)
def test_confirmed_is_where_a_person_decided_on_every_fact(facts: dict[str, Fact], confirmed: bool) -> None:
    assert is_confirmed(record_with(facts)) is confirmed


def test_the_technique_is_the_stitch_of_the_tendons() -> None:
    assert assess(Record()).stitch == "not stated"
    assert assess(record_with({**SUTURED, RING + "stitch": "adelaide"})).stitch == "adelaide"
    two = {**SUTURED, RING + "stitch": "adelaide", SMALL + "treatment": "repaired", SMALL + "stitch": "kessler"}
    assert assess(record_with(two)).stitch == "several"
