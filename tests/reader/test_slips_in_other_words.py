"""The slips of the superficialis under the names of other surgeons: bandelettes, bands, either slip."""

import pytest
from reader_sentences import each

CUT = "Index finger, zone 2. FDP cut through completely. "


@pytest.mark.parametrize(
    "remark",
    [
        "FDS: the radial bandelette was cut through completely, the ulnar bandelette intact.",
        "The radial band of the superficialis was cut through completely, the ulnar band of the superficialis intact.",
    ],
)
def test_one_slip_and_the_other(remark: str) -> None:
    found = each(CUT + remark, "extent")
    assert found == {"index FDP": "complete", "index FDS radial": "complete", "index FDS ulnar": "intact"}


@pytest.mark.parametrize("words", ["the two bandelettes of the superficialis", "the superficialis in its two bands"])
def test_both_slips(words: str) -> None:
    assert each(f"Index finger, zone 2. Complete section of {words}.", "extent") == {"index FDS": "complete"}


def test_a_band_of_another_kind() -> None:
    assert "index FDS" not in each(
        CUT + "A rubber band was fixed to the nail. The ulnar band of scar was cut.", "extent"
    )
