"""A dictation's 'zone to' and 'zone too' are zone two; statements that begin small behind a stop."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "Preop diagnosis flexor tendon laceration zone to right index finger. FDP completely cut.",
        "Index finger. This is a zone too injury. FDP completely cut.",
        "Index finger laceration zone to flexor tendon. FDP completely cut.",
    ],
)
def test_zone_two(note: str) -> None:
    assert each(note, "zone") == {"index FDP": "II"}


@pytest.mark.parametrize(
    "note",
    [
        "Index finger. FDP completely cut. The dressing left the whole zone to be inspected.",
        "Index finger. FDP completely cut. Contusion from zone to zone.",
    ],
)
def test_no_zone(note: str) -> None:
    assert each(note, "zone") == {}


@pytest.mark.parametrize(
    "line", ["Cruciate, 3-0 Ethibond. epi 6-0 prolene running.", "Cruciate with 3-0 Ethibond. peripheral 6-0 Prolene."]
)
def test_a_thread_before_the_stop_is_the_core(line: str) -> None:
    found = told("Ring: FDP cut through. " + line, "size", "material", "peripheral_size", "peripheral_material")
    assert found["ring FDP"] == {
        "size": "3-0",
        "material": "braided polyester",
        "peripheral_size": "6-0",
        "peripheral_material": "polypropylene",
    }


@pytest.mark.parametrize("last", ["ring FDP: left, nothing to repair.", "ring FDP: left."])
def test_a_label_on_the_next_line(last: str) -> None:
    note = f"small: FDP avulsed through its substance, complete. 4-strand cruciate 3-0 PDS.\n{last}"
    assert each(note, "strands") == {"small FDP": 4}
    assert each(note, "treatment") == {"small FDP": "repaired", "ring FDP": "left"}
