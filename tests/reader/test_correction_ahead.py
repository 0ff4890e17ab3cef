"""A correction that stands ahead of the note it corrects: the old wording behind it gives way."""

import pytest
from reader_sentences import each, told

OLD = "\n\nFDP completely cut. FDP: six-strand Savage of 3-0 Ethibond.\nA2 intact.\n"


@pytest.mark.parametrize(
    "words",
    [
        'Correction: where I say "six-strand" for the profundus, that is wrong, it was a four-strand Savage.',
        "Correction, to be read first: where I dictated six strands, that is wrong, it was four.",
        "Correction by the surgeon: I wrote six strands, which is wrong, it should be four.",
    ],
)
def test_the_corrected_count_holds(words: str) -> None:
    assert each("Left ring finger, zone II.\n\n" + words + OLD, "strands") == {"ring FDP": 4}


def test_a_correction_behind_the_note_goes_on_to_the_end() -> None:
    note = "Left ring finger." + OLD + "\nCorrection: four strands.\n\nThe thread was 4-0.\n"
    assert told(note, "strands", "size") == {"ring FDP": {"strands": 4, "size": "4-0"}}
