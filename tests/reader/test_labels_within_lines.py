"""Labels within a line of a form: 'Name: FDS small  Level: V  Found: complete  Edge: clean', 'NERVE: Ulnar'."""

import pytest
from reader_sentences import each, told

FORM = (
    "Structure 1   Name: FCU   Level: V   Found: complete   Edge: clean\n"
    "   Treatment: repaired   Core strands: 4   Technique: Krackow   Suture: 2-0 FiberWire\n"
)


def test_each_structure_keeps_its_own() -> None:
    note = FORM + "Structure 2   Name: FDP small / FDP ring   Found: intact\n"
    assert each(note, "extent") == {"FCU": "complete", "small FDP": "intact", "ring FDP": "intact"}
    assert told(note, "strands", "ends") == {"FCU": {"strands": 4, "ends": "clean"}}


@pytest.mark.parametrize(
    "line",
    [
        "FDS middle   Found: partial 40 %   Edges: ragged",
        "Tendon: FDS middle   Found: partial 40 %   Edge: ragged",
    ],
)
def test_found_asks_for_the_state_of_what_its_line_names(line: str) -> None:
    assert told(line, "extent_percent", "ends") == {"middle FDS": {"extent_percent": 40, "ends": "ragged"}}


def test_at_the_start_of_a_line_it_still_heads_the_findings() -> None:
    note = "Found: FDP ring divided.\nDone: 4-strand core of 3-0 Prolene.\nEdge: 6-0 Prolene running."
    assert told(note, "extent", "peripheral_size") == {"ring FDP": {"extent": "complete", "peripheral_size": "6-0"}}


@pytest.mark.parametrize(
    "line",
    [
        "NERVE: Ulnar   Found: complete   Treatment: direct suture 8-0",
        "<<NERVE>>      Ulnar    Found: complete   Treatment: direct suture 8-0",
        "Nerve    ulnar    Found: complete",
    ],
)
def test_a_name_taken_apart(line: str) -> None:
    note = FORM + line + "\nArtery: ulnar   Found: intact\n"
    assert each(note, "extent", group="injuries") == {"ulnar nerve": "complete", "ulnar artery": "intact"}
    assert each(note, "extent") == {"FCU": "complete"}


def test_in_a_finger_it_is_no_nerve_of_the_wrist() -> None:
    assert "ulnar nerve" not in told("Ring FDP divided in zone II.\nNerve: ulnar   Found: intact", group="injuries")


@pytest.mark.parametrize("blank", ["IP [  ]", "IP [ ]", "IP: [   ]"])
def test_an_empty_bracket_behind_a_measure_is_a_blank(blank: str) -> None:
    note = f"FDP small divided, repaired.\nSplint: dorsal blocking; wrist 30 flex; MCP 50; {blank}"
    assert told(note, group="aftercare")[""] == {
        "splint": "dorsal blocking",
        "wrist_flexion_deg": (30, 30),
        "mcp_flexion_deg": (50, 50),
    }


def test_an_empty_box_before_its_option_stays_one() -> None:
    assert not told("FDP small divided, repaired.\nSplint: [ ] dorsal blocking [ ] other", group="aftercare")


@pytest.mark.parametrize(
    ("line", "tension"),
    [
        ("Tension (at wrist neutral): none", "none"),
        ("Tension on closing (both ends): nil", "none"),
        ("Tension (at wrist neutral): present", "present"),
    ],
)
def test_a_remark_in_brackets_belongs_to_the_label(line: str, tension: str) -> None:
    assert each(f"FDS small divided, repaired, 4-strand.\n{line}", "tension") == {"small FDS": tension}
