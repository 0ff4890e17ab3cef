"""Under 'Procedure' stands a title or the whole story; no title tells how a tendon ran on the table."""

import pytest
from reader_sentences import each, told

CUT = "Lt middle finger.\nExploration - wound over the finger, zone II. FDP cut, about 40% of its width. FDS fine.\n"


@pytest.mark.parametrize(
    "words",
    [
        "Procedure - flap trimmed away, no suture placed in tendon. He made a fist: catching gone, runs freely.",
        "Procedure - edges bevelled and no stitch put in the tendon. Asked to make a fist: it runs smoothly now.",
    ],
)
def test_a_story_under_procedure(words: str) -> None:
    found = told(CUT + words, "treatment", "glide", "test")
    assert found["middle FDP"] == {"treatment": "trimmed", "glide": "free", "test": "active"}


def test_a_title_under_procedure() -> None:
    note = "Procedure - repair of FDP left middle finger.\nFindings - FDP cut in zone II. It was sewn with 3-0 Prolene."
    assert each(note, "glide") == {}


@pytest.mark.parametrize("words", ["no suture placed in tendon", "no stitch was put into the tendon"])
def test_trimmed_of_two_that_were_nicked(words: str) -> None:
    note = "Middle finger. FDP cut 40%. FDS intact. "
    assert each(f"{note}Flap trimmed away, {words}.", "treatment") == {"middle FDP": "trimmed"}
    assert "middle FDS" not in each(f"{note}Both flaps trimmed away, {words}.", "treatment")


@pytest.mark.parametrize("head", ["INDEX (left)", "RING FINGER (left)"])
def test_a_side_in_brackets_behind_a_finger(head: str) -> None:
    note = f"OPERATION SHEET\nGirl of 4 years.\n\nGA. Consent signed.\n\n{head}\n  - FDP: cut right through, zone II\n"
    assert each(note, "side", group="operation") == {"": "left"}


def test_left_in_brackets_behind_a_tendon() -> None:
    note = "OPERATION SHEET\nGirl of 4 years.\n\nGA. Consent signed.\n\nFDP index cut, sewn. FDS index (left).\n"
    assert each(note, "side", group="operation") == {}


@pytest.mark.parametrize(
    "words", ["FDP back to P3 by mini anchor, 3-0 FiberWire.", "FDP onto the distal phalanx via a suture anchor, 3-0."]
)
def test_to_bone_by_an_anchor_without_a_verb(words: str) -> None:
    found = told(f"Small finger FDP completely divided in zone I. {words}", "treatment", "stitch")
    assert found == {"small FDP": {"treatment": "reinserted", "stitch": "anchor"}}


def test_to_bone_by_an_anchor_that_was_not_used() -> None:
    note = "Small finger FDP divided in zone I. FDP to bone with an anchor was thought of, but sutured with 3-0 PDS."
    assert each(note, "treatment") == {"small FDP": "repaired"}
