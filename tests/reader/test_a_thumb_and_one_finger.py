"""Behind words on the thumb a profundus without a finger is that of the one finger a note works on besides."""

import pytest
from reader_sentences import each, told

CUT = """Thumb: FPL complete, zone II. Index, zone II: FDP complete.

FPL: Adelaide, 3-0 Ticron. Epi: cross-stitch, 6-0 PDS.
"""


@pytest.mark.parametrize(
    "sewn",
    ["FDP: same core. Epi: simple running, 5-0 Prolene.", "FDP: same core. Finished with a running 5-0 Prolene."],
)
def test_what_follows_goes_to_the_finger(sewn: str) -> None:
    assert told(CUT + sewn, "peripheral_pattern", "peripheral_size") == {
        "thumb FPL": {"peripheral_pattern": "cross-stitch", "peripheral_size": "6-0"},
        "index FDP": {"peripheral_pattern": "running", "peripheral_size": "5-0"},
    }


def test_with_two_fingers_it_goes_to_neither() -> None:
    note = CUT.replace("Index, zone II: FDP complete.", "Index and ring: FDP complete.")
    assert "5-0" not in each(note + "FDP of one: same core. Epi: running, 5-0 Prolene.", "peripheral_size").values()


@pytest.mark.parametrize("pulley", ["A4 was left uncut.", "A4: left uncut."])
def test_a_pulley_left_uncut(pulley: str) -> None:
    assert each(f"Index FDP sewn with 3-0. {pulley}", "finding", group="pulleys") == {"index A4": "intact"}
