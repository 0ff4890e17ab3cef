"""Signs of hurried notes: nought, scissors, ticks, fractions in one character, 'x4', a dash for no answer."""

import pytest
from reader_sentences import told

SEWN = "Right ring finger. FDP cut and repaired. "


@pytest.mark.parametrize("words", ["Gap Ø.", "Ø gap.", "gap = 0", "Gap: nil", "gap: 0"])
def test_no_gap(words: str) -> None:
    assert told(SEWN + words, "gap") == {"ring FDP": {"gap": "none"}}


@pytest.mark.parametrize("words", ["gap: –", "Gap -", "Gap: -"])
def test_a_dash_answers_nothing(words: str) -> None:
    assert told(SEWN + words, "gap") == {}


@pytest.mark.parametrize(
    ("words", "percent"), [("FDS ✂ ½, left.", 50), ("FDS cut ¾, left alone.", 75), ("FDS ⅔ cut and left.", 67)]
)
def test_fractions_of_a_cut(words: str, percent: int) -> None:
    assert told(SEWN + words, "extent", "extent_percent")["ring FDS"] == {
        "extent": "partial",
        "extent_percent": percent,
    }


@pytest.mark.parametrize("words", ["A2 vented ½.", "Half of A2 was opened."])
def test_fractions_of_a_pulley(words: str) -> None:
    found = told(SEWN + words, group="pulleys")
    assert found == {"ring A2": {"finding": "vented", "extent_percent": 50}}


@pytest.mark.parametrize("words", ["Core ×4 strands 3-0 nylon.", "Core x4 strands of 3-0 nylon."])
def test_times_written_to_the_figure(words: str) -> None:
    assert told(SEWN + words, "strands") == {"ring FDP": {"strands": 4}}


def test_a_diameter_is_no_nought() -> None:
    assert "gap" not in told(SEWN + "K-wire Ø 1.2 mm across the fracture.", "gap")
