"""A tendon found whole today, with a clause on its old repair behind it; and cuts likened to the one before."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "words",
    ["FDS intact, old repair firm.", "The FDS was intact, the old repair solid.", "FDS whole, old repair not touched."],
)
def test_whole_today_with_an_old_repair(words: str) -> None:
    note = f"Ring finger, re-exploration. FDP had ruptured at the old suture. {words}"
    assert each(note, "extent")["ring FDS"] == "intact"


def test_what_was_cut_before_is_not_whole_today() -> None:
    assert "ring FDS" not in each("Ring finger. The FDS had been intact, the old repair firm.", "extent")


@pytest.mark.parametrize("words", ["FDS likewise, both slips.", "So was the superficialis, both slips of it."])
def test_both_slips_likewise(words: str) -> None:
    assert each(f"Ring finger. FDP cut through. {words}", "extent") == {"ring FDP": "complete", "ring FDS": "complete"}


def test_equally_whole() -> None:
    found = each("Zone V. FCR divided. The FDS of the middle was seen intact, the FDP of the index equally.", "extent")
    assert found == {"FCR": "complete", "middle FDS": "intact", "index FDP": "intact"}
