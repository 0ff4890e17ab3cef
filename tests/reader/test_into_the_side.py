"""A stump sewn into the side of a whole tendon beside it: a tenodesis of the one, and nothing done to the other."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "words",
    [
        "The distal stump was sewn into the side of the ring FDP, end to side, with 3-0 Ethibond.",
        "Its muscle was gone, so the distal tendon was attached to the side of the FDP of the ring finger by a "
        "Pulvertaft weave of 3-0 Ethibond.",
    ],
)
def test_the_tendon_that_takes_it_in_is_not_sewn(words: str) -> None:
    shown = told("Middle finger. The FDP was avulsed from its muscle. " + words, "treatment", "size", "strands")
    assert shown == {"middle FDP": {"treatment": "tenodesed", "size": "3-0"}}


def test_a_tendon_that_lay_to_the_side_of_another() -> None:
    shown = told("Ring FDP and FDS cut through. FDP repaired. The FDS lay to the side of the FDP.", "treatment")
    assert shown == {"ring FDP": {"treatment": "repaired"}}
