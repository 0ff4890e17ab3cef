"""What only looks like a finding: how the hand lay, a rule somebody follows, the finger another is strapped to."""

import pytest
from reader_sentences import each, told

_REPAIRED = "Thumb FPL cut through and repaired with four strands of 3-0 PDS. "


@pytest.mark.parametrize(
    "words",
    [
        "A defect of 3 cm was left with the thumb in a relaxed posture.",
        "The thumb lay in a relaxed position with the wrist straight.",
        "Splinted with the thumb relaxed.",
    ],
)
def test_a_relaxed_posture_is_no_word_on_the_repair(words: str) -> None:
    assert told(_REPAIRED + words, "tension") == {}


@pytest.mark.parametrize("words", ["The repair lay relaxed.", "The repair was quite relaxed."])
def test_a_relaxed_repair_is_without_tension(words: str) -> None:
    assert each(_REPAIRED + words, "tension") == {"thumb FPL": "none"}


@pytest.mark.parametrize(
    "words",
    [
        "(A colleague's rule: where a bitten tendon is more than half through, debride first and repair later.)",
        "My rule: where a tendon is cut more than 60 percent, I repair it with four strands.",
    ],
)
def test_a_rule_tells_nothing_of_this_tendon(words: str) -> None:
    assert each(f"Index FDP and FDS intact. {words}", "extent") == {"index FDP": "intact", "index FDS": "intact"}
    assert told(f"Index FDP and FDS intact. {words}", "treatment", "strands") == {}


def test_a_repair_beside_a_rule_is_read() -> None:
    assert each("Our rule: four strands. The index FDP was repaired with six strands.", "strands") == {"index FDP": 6}


@pytest.mark.parametrize("words", ["buddy to MF", "buddy-strapped to the middle finger", "then buddy tape to MF"])
def test_the_finger_it_is_strapped_to_is_not_the_one_worked_on(words: str) -> None:
    assert "middle A4" not in told(f"FDP cut, four-strand repair. A4 kept. Plan: {words}.", group="pulleys")
    assert each(f"Ring FDP cut. A4 kept. Plan: {words}.", "finding", group="pulleys") == {"ring A4": "intact"}


@pytest.mark.parametrize(
    "head",
    ["STAGE 1 RECONSTRUCTION, R RING               12 / 6 / 2034", "Flexor repair, L ring        3 . 11 . 2033"],
)
def test_a_date_with_room_around_its_strokes_is_no_choice(head: str) -> None:
    assert each(f"{head}\n\nFindings. FDP cut through.\nDone.\n - A1 released\n", "finding", group="pulleys") == {
        "ring A1": "released"
    }


def test_counts_to_choose_from_stay_a_choice() -> None:
    assert told("Ring FDP cut.\n\nStrands        4 / 6 / 8\n", "strands") == {}


@pytest.mark.parametrize(
    "words", ["FPL and both divided profundi", "FPL and the two cut profundi", "FPL and both severed profundi"]
)
def test_tendons_joined_to_those_named_as_cut_get_their_suture(words: str) -> None:
    note = f"FPL, index FDP and middle FDP were divided. {words}: 3-0 PDS, modified Kessler, four strands."
    assert each(note, "strands") == {"thumb FPL": 4, "index FDP": 4, "middle FDP": 4}
