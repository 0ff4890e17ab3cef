"""Fingers of a dated diagnosis, tendons of a title without fingers, and headings with a number before them."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize("when", ["the previous evening", "the night before"])
def test_fingers_of_a_dated_diagnosis(when: str) -> None:
    note = (
        f"Diagnosis: division of flexor tendons, left middle and ring fingers, from a bottle {when}.\n\n"
        "Operation: repair of both profundus tendons; repair of the radial digital nerve of the ring finger.\n\n"
        "Both profundi had been completely severed in zone two."
    )
    assert each(note, "extent") == {"middle FDP": "complete", "ring FDP": "complete"}


@pytest.mark.parametrize("title", ["Op: Repair FDS x 2, FDP x 1, median nerve.", "Op: Repair of FDS and FDP."])
def test_tendons_of_a_title_without_a_finger(title: str) -> None:
    note = (
        f"{title}\n\nFindings\nFDS middle: completely divided.\nFDS index: completely divided.\n"
        "FDP index: completely divided.\n\nRepair\nAll three tendons with 3/0 Prolene, Strickland type."
    )
    assert each(note, "stitch") == dict.fromkeys(("middle FDS", "index FDS", "index FDP"), "strickland")


@pytest.mark.parametrize("heading", ["7. Treatment.", "G) Treatment."])
def test_a_numbered_treatment(heading: str) -> None:
    note = (
        "6. Findings. The FPL was completely divided in zone 5.\n"
        f"{heading} The plantaris tendon was harvested and used to bridge the FPL. Each junction was a Pulvertaft "
        "weave, sewn with 3-0 Ethibond."
    )
    assert told(note, "treatment", "size")["thumb FPL"] == {"treatment": "grafted", "size": "3-0"}


def test_a_numbered_treatment_to_come() -> None:
    note = (
        "1. Findings. FPL completely divided, sewn with 3-0 Ethibond.\n"
        "2. Treatment. Splint for six weeks, FDS graft to be repaired in three months."
    )
    assert "thumb FDS" not in each(note, "treatment")
    assert each(note, "treatment") == {"thumb FPL": "repaired"}


@pytest.mark.parametrize("words", ["My plan was trim and leave.", "Our plan was to trim and leave it."])
def test_a_plan_that_was_dropped(words: str) -> None:
    note = f"Ring. FDP 80% through, zone 2.\nFDP: {words} Sewn as it lay: 4/0 Ticron, locking, 4 strands."
    assert each(note, "treatment") == {"ring FDP": "repaired"}
