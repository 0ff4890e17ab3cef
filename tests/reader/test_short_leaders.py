"""Labels led to their answers by dots, one heading over a whole note, and an answer above the next label."""

import pytest
from reader_sentences import each, told

HEAD = "Thumb, FPL repaired\n"


@pytest.mark.parametrize(
    "text",
    [
        "  Ends ........ clean\n  Core ........ 4 strands\n  Edge stitch . not done\n",
        "  Epitendinous .. no\n  Ends ..... clean\n",
    ],
)
def test_an_edge_stitch_not_done(text: str) -> None:
    assert each(HEAD + text, "peripheral") == {"thumb FPL": "absent"}
    assert each(HEAD + text, "ends") == {"thumb FPL": "clean"}


def test_an_edge_stitch_done() -> None:
    text = "  Edge suture . 6-0 running\n  Ends ........ clean\n"
    assert each(HEAD + text, "peripheral") == {"thumb FPL": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "  Epitendinous ..... no\n  Tension ..... yes\n",
        "  Epitendinous: no\n  Tension: yes\n",
        "  Epitendinous .. no\n  Tension ..... yes\n",
    ],
)
def test_an_answer_above_tension(text: str) -> None:
    assert each(HEAD + text, "tension") == {"thumb FPL": "present"}


def test_no_tension_over_two_lines() -> None:
    assert each("Thumb FPL repaired with no\ntension at all.", "tension") == {"thumb FPL": "none"}


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("Small finger. FDP sutured, core only, no epitendinous.", {"small FDP": "repaired"}),
        ("Left index FDP repaired with four strands.", {"index FDP": "repaired"}),
        ("Mid-lateral approach. Index FDP repaired, two strands.", {"index FDP": "repaired"}),
    ],
)
def test_one_sentence_of_indication(text: str, shown: dict[str, str]) -> None:
    assert each("Indication: loss of flexion. " + text, "treatment") == shown


def test_a_story_under_its_heading() -> None:
    text = "Indication: glass cut. FDP was repaired in 2030 with six strands.\nOperation\nIndex FDP sewn, two strands."
    assert each(text, "strands") == {"index FDP": 2}


def test_a_lesson_of_one_sentence() -> None:
    text = "Middle finger FDP, complete laceration. Teaching point: lock every corner. We placed four strands. No gap."
    assert told(text, "strands", "gap", "hold") == {"middle FDP": {"strands": 4, "gap": "none"}}


def test_a_lesson_that_goes_on() -> None:
    text = "Middle finger FDP cut. Teaching point: lock every corner. Six strands should be used, with no gap."
    assert not told(text, "strands", "gap")
