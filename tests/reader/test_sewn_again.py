"""A repair that gave way and was sewn again, labels without a finger, and remarks on some tendons only."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "words",
    [
        "The FDP had ruptured through the previous suture line in zone II.",
        "The FDP had parted at the old suture line.",
        "The FDP had come apart along the earlier repair.",
    ],
)
def test_ruptured_where_it_was_sewn_before(words: str) -> None:
    note = f"Middle finger. {words} FDS was intact. A six-strand repair with 4-0 nylon was made."
    assert told(note, "strands", "size") == {"middle FDP": {"strands": 6, "size": "4-0"}}


def test_a_repair_of_long_ago_stays_history() -> None:
    note = (
        "In 2029 the FDP of the ring finger was repaired with six strands. Now the middle FDP is cut, 4-0 nylon used."
    )
    assert "ring FDP" not in told(note, "strands")


@pytest.mark.parametrize("label", ["Core FDP: 4-0 nylon, four strands.", "FDP core - four strands 4-0 nylon."])
def test_a_label_without_a_finger_is_of_the_tendon_cut_through(label: str) -> None:
    note = f"Ring FDP completely cut. Middle FDP cut 20 %. Little FDP and FDS intact.\n\n{label}\n"
    assert told(note, "strands") == {"ring FDP": {"strands": 4}}


def test_ends_of_finger_flexors_are_none_of_the_wrist() -> None:
    note = "Ring FDS and FCU completely cut. The ends of the divided finger flexors were clean."
    assert told(note, "ends") == {"ring FDS": {"ends": "clean"}}


@pytest.mark.parametrize("words", ["the three other repairs received none", "the other three repairs had none"])
def test_the_other_repairs_had_no_peripheral_suture(words: str) -> None:
    note = (
        "Index FDP, middle FDP, ring FDP and FCU completely cut and repaired with 4-0 nylon. "
        f"A running 6-0 epitendinous suture was added to the index FDP; {words}."
    )
    found = told(note, "peripheral")
    assert found.pop("index FDP") == {"peripheral": "present"}
    assert all(facts == {"peripheral": "absent"} for facts in found.values()) and len(found) == 3


def test_an_apposition_is_no_other_tendon() -> None:
    note = (
        "Small FDP and FDS completely cut. The FDP was repaired with 3-0 nylon; the FDS of the small finger, a slender "
        "tendon, accepted only a modified Kessler of 4-0 nylon."
    )
    assert told(note, "size") == {"small FDP": {"size": "3-0"}, "small FDS": {"size": "4-0"}}


@pytest.mark.parametrize(
    "line", ["FDP: cut through, 100 %. Ends clean.", "2. FDP: completely divided. Tidy ends, nothing pared off."]
)
def test_ends_told_on_a_line_are_of_the_tendon_that_heads_it(line: str) -> None:
    note = f"Ring finger\nFDS: radial slip cut through.\n{line}\n"
    assert told(note, "ends") == {"ring FDP": {"ends": "clean"}}
