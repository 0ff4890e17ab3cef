"""A slip pared once both were sewn leaves its tendon as sewn as it was; one pared instead of sewn is told apart."""

import pytest
from reader_sentences import told

CUT = "Left small finger. Both slips of the FDS cut. "


@pytest.mark.parametrize(
    "note",
    [
        "FDS repaired with 4-0 Prolene, modified Kessler. The ulnar slip caught and was trimmed back.",
        "The FDS was sutured with a modified Kessler of 4-0 Prolene. On testing the radial slip was trimmed.",
    ],
)
def test_a_slip_pared_after_the_repair_is_part_of_the_repaired_tendon(note: str) -> None:
    assert told(CUT + note, "treatment", "size", "extent") == {
        "small FDS": {"extent": "complete", "treatment": "repaired", "size": "4-0"}
    }


def test_a_slip_pared_before_the_other_is_sewn_is_told_apart() -> None:
    found = told(
        "Left small finger. FDS: ulnar slip frayed, trimmed. Radial slip repaired with 4-0 Prolene.", "treatment"
    )
    assert found == {"small FDS radial": {"treatment": "repaired"}, "small FDS ulnar": {"treatment": "trimmed"}}
