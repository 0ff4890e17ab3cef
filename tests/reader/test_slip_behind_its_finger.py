"""'FDS ring, radial slip': the slip whose tendon and finger stand before it."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        (
            "FDS index, ulnar slip cut completely, excised. FDS index, radial slip: intact.",
            {
                "index FDS ulnar": {"extent": "complete", "treatment": "excised"},
                "index FDS radial": {"extent": "intact"},
            },
        ),
        (
            "FDS ring (radial slip) divided, repaired with 4-0 nylon. FDS ring (ulnar slip) divided, resected.",
            {
                "ring FDS radial": {"extent": "complete", "treatment": "repaired"},
                "ring FDS ulnar": {"extent": "complete", "treatment": "excised"},
            },
        ),
        (
            "FDS ring, both slips divided, repaired with 4-0.",
            {"ring FDS": {"extent": "complete", "treatment": "repaired"}},
        ),
    ],
)
def test_each_slip_has_its_own_fate(words: str, expected: dict[str, dict[str, str]]) -> None:
    assert told("Left hand. " + words, "extent", "treatment") == expected


@pytest.mark.parametrize(
    "words", ["resected, 15 mm proximal to the chiasm", "excised about 12 mm proximal of the A2 edge"]
)
def test_where_a_slip_was_cut_is_no_length_trimmed(words: str) -> None:
    assert not told(f"Left ring finger. Ulnar slip of FDS cut completely, {words}.", "trimmed_mm")


@pytest.mark.parametrize(
    "words", ["The ends of both were ragged and I cut 2 mm off the FDP.", "Both were frayed, 2 mm cut off FDP."]
)
def test_cut_off_one_of_two(words: str) -> None:
    note = f"Left ring finger. FDP and FDS completely divided. {words} FDP and FDS repaired with 4-0 nylon."
    assert told(note, "trimmed_mm") == {"ring FDP": {"trimmed_mm": 2}}


@pytest.mark.parametrize(
    "words",
    ["a Tsuge of 4-0 nylon, each loop taken 9 mm from the end", "two loops of 4-0 nylon, each taken 9 mm from the end"],
)
def test_a_loop_taken_from_the_end_trims_nothing(words: str) -> None:
    assert not told(f"Left ring finger. FDP divided, repaired with {words}.", "trimmed_mm")
