"""Plainer words for a join that holds, a tendon that runs, ends, tension, pulleys kept and cuts in part."""

import pytest
from reader_sentences import each

_SEWN = "Left ring finger, zone II. FDP completely divided and repaired with a four-strand cruciate. "


@pytest.mark.parametrize(
    ("words", "field", "expected"),
    [
        ("On passive motion there was no separation at the join.", "gap", "none"),
        ("Passive motion: no separation of the repair.", "gap", "none"),
        ("I pulled it: nothing parts.", "gap", "none"),
        ("On passive motion no repair separated.", "gap", "none"),
        ("The tendon tracked smoothly.", "glide", "free"),
        ("It tracks freely through the arc.", "glide", "free"),
        ("The ends were bruised and pulpy.", "ends", "crushed"),
        ("The ends looked crushed.", "ends", "crushed"),
        ("The ends were cut as if by a scalpel.", "ends", "clean"),
        ("There was a touch of tension on the repair.", "tension", "present"),
    ],
)
def test_results_in_plainer_words(words: str, field: str, expected: str) -> None:
    assert each(_SEWN + words, field) == {"ring FDP": expected}


@pytest.mark.parametrize(
    ("words", "field"),
    [
        ("There was some separation at the join.", "gap"),
        ("It did not track smoothly.", "glide"),
    ],
)
def test_the_same_words_denied(words: str, field: str) -> None:
    assert each(_SEWN + words, field).get("ring FDP") not in ("none", "free")


@pytest.mark.parametrize("label", ["Partly: FDP ring", "In part: FDP ring, FDS ring"])
def test_a_label_for_what_was_cut_in_part(label: str) -> None:
    assert each(f"Left wrist, zone V.\n {label}", "extent")["ring FDP"] == "partial"


@pytest.mark.parametrize("stitch", ["double Kessler (modified)", "double Kessler, modified"])
def test_a_double_kessler_called_modified_behind(stitch: str) -> None:
    note = f"Left ring finger. FDP completely divided, repaired with a {stitch} of 3-0 Ethibond, four strands."
    assert each(note, "stitch") == {"ring FDP": "double modified kessler"}


@pytest.mark.parametrize("kept", ["A3 was cut out. A2 and A4 stayed.", "A2 and A4 both stayed."])
def test_pulleys_that_stayed(kept: str) -> None:
    found = each("Left ring finger. " + kept, "finding", group="pulleys")
    assert (found["ring A2"], found["ring A4"]) == ("intact", "intact")
