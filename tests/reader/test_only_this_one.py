"""'Only the FDP had the six strands and the locks' in a correction: what was told of both is of this tendon alone."""

import pytest
from reader_sentences import each, told

BOTH = (
    "Index FDS and FDP both completely divided. Purchase 10 mm. Both sutured with a 6-strand Savage, 3-0 Ethibond. "
    "Locks 2 mm. 6-0 Prolene running outside.\n\n"
)


@pytest.mark.parametrize(
    "words",
    [
        "Only the FDP had the 6 strand, with the 10 mm and the locks. The FDS: two-strand Kessler, 4-0 Ethibond.",
        "The FDP alone got the six-strand Savage with its locks; the FDS had a two-strand 4-0 Ethibond Kessler.",
    ],
)
def test_the_core_is_of_one_alone(words: str) -> None:
    shown = told(BOTH + "CORRECTION, 15 October 2034: " + words, "strands", "size", "hold", "lock_mm", "purchase_mm")
    assert shown["index FDS"] == {"strands": 2, "size": "4-0"}
    assert shown["index FDP"]["strands"] == 6
    assert shown["index FDP"]["lock_mm"] == (2, 2)


def test_only_what_is_named_is_taken_back() -> None:
    shown = told(BOTH + "ADDENDUM: only the profundus got the locks.", "strands", "hold")
    assert shown == {"index FDP": {"strands": 6, "hold": "locking"}, "index FDS": {"strands": 6}}


def test_no_correction_takes_nothing_back() -> None:
    assert each(BOTH + "Only the FDP had a clean end.", "strands") == {"index FDP": 6, "index FDS": 6}
