"""Two forms side by side under the names of two fingers, and labels that begin the line after an answer."""

import pytest
from reader_sentences import each, told

FORMS = """Right hand.

INDEX                                   MIDDLE
FDP cut ............ no (intact)        FDP cut ............ {cut}
FDS cut ............ no                 FDS cut ............ {cut}
Zone ............... N.A.               Zone ............... III
RDN ................ intact             RDN ................ cut complete
UDN ................ cut complete       UDN ................ intact
"""


@pytest.mark.parametrize("cut", ["yes, complete", "complete"])
def test_each_answer_is_of_the_finger_above_it(cut: str) -> None:
    note = FORMS.format(cut=cut)
    assert each(note, "extent") == {
        "index FDP": "intact",
        "index FDS": "intact",
        "middle FDP": "complete",
        "middle FDS": "complete",
    }
    assert each(note, "zone") == {"middle FDP": "III", "middle FDS": "III"}
    assert each(note, "extent", group="injuries") == {
        "index digital nerve radial": "intact",
        "index digital nerve ulnar": "complete",
        "middle digital nerve radial": "complete",
        "middle digital nerve ulnar": "intact",
    }


@pytest.mark.parametrize("label", ["Locked core", "Locking core suture"])
def test_an_answer_and_the_next_label_are_no_phrase(label: str) -> None:
    note = f"Ring FDP repaired: 3-0 Prolene.\n   Peripheral: yes, 5-0 Prolene, running\n   {label}: no answer\n"
    assert each(note, "peripheral_pattern") == {"ring FDP": "running"}


def test_a_phrase_goes_on_in_the_next_line_of_running_text() -> None:
    note = "Ring FDP repaired with 3-0 Prolene and finished with a 5-0 Prolene running\nlocking epitendinous suture.\n"
    assert each(note, "peripheral_pattern") == {"ring FDP": "running locking"}


@pytest.mark.parametrize("weighed", ["and a graft from the palmaris, and did neither", "or a graft from the palmaris"])
def test_what_was_weighed_besides_takes_nothing_over(weighed: str) -> None:
    note = f"Right thumb. FPL cut through. I considered lengthening at the wrist {weighed}. Purchase 6 to 8 mm."
    assert told(note, "purchase_mm") == {"thumb FPL": {"purchase_mm": (6, 8)}}


@pytest.mark.parametrize("place", ["as far as the A2", "as far as A2 and its edge"])
def test_as_far_as_a_pulley(place: str) -> None:
    assert told(f"Middle finger. FDP crushed; it was excised {place}.", group="pulleys") == {}


@pytest.mark.parametrize(
    "of_both", ["neither for the middle nor for the ring", "neither of the middle nor of the ring"]
)
def test_neither_of_two_fingers(of_both: str) -> None:
    note = f"FDP of the middle and FDP of the ring sewn with 3-0 Ethibond. Passive flexion: no gap, {of_both}."
    assert each(note, "gap") == {"middle FDP": "none", "ring FDP": "none"}
