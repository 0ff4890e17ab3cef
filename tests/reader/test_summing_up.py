"""'Summary: repair of FDP, no gap.' behind a gap seen: a summary takes back nothing that the note has told."""

import pytest
from reader_sentences import each

GAP = "The FDP of the ring finger was repaired with four strands. A gap of 2 mm was seen on passive motion."
CAUGHT = "The FDP of the ring finger was repaired with four strands. It caught at A4 and this was accepted."
CUT_OUT = "The FDP of the ring finger was repaired with four strands. A2 could not be rebuilt and was excised."
LABELS = ["Summary", "SUMMARY", "In summary", "Summary box", "To summarise"]


@pytest.mark.parametrize("label", LABELS)
def test_summary_behind_a_worse_finding(label: str) -> None:
    assert each(f"{GAP}\n\n{label}: Repair of FDP right ring finger, no gap.\n", "gap") == {"ring FDP": "seen"}
    assert each(f"{CAUGHT}\n\n{label}: Repair of FDP right ring finger, gliding freely.\n", "glide") == {
        "ring FDP": "catching"
    }
    rebuilt = f"{CUT_OUT}\n\n{label}: Reconstruction of A2 and repair of FDP right ring finger.\n"
    assert each(rebuilt, "finding", group="pulleys") == {"ring A2": "excised"}


@pytest.mark.parametrize("label", LABELS)
def test_summary_tells_what_the_telling_left_out(label: str) -> None:
    note = (
        f"The FDP of the ring finger was repaired with four strands.\n\n{label}: Repair of FDP ring finger, no gap.\n"
    )
    assert each(note, "gap") == {"ring FDP": "none"}


def test_note_that_is_all_summary() -> None:
    note = (
        "SUMMARY: FDP of the ring finger repaired with four strands. A gap of 1 mm was seen, sewn again, now no gap.\n"
    )
    assert each(note, "gap") == {"ring FDP": "none"}


def test_what_came_later_in_the_telling_still_counts() -> None:
    note = f"{GAP} Two more strands were placed. On the second test there was no gap.\n"
    assert each(note, "gap") == {"ring FDP": "none"}
