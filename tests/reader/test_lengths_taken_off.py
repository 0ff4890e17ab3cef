"""Lengths taken off or pared away in a finger are no purchase, and are of the kind of tendon the sentence names."""

import pytest
from reader_sentences import each

SEWN = "The index and middle FDP and the middle FDS were cut through and repaired with 3-0 nylon. "


@pytest.mark.parametrize(
    "words",
    [
        "2 mm was taken off in the index and 3 mm in the middle.",
        "2 mm were taken away in the index and 3 mm in the middle.",
    ],
)
def test_what_was_taken_off_is_no_purchase(words: str) -> None:
    assert each(SEWN + words, "purchase_mm") == {}


def test_what_a_core_took_behind_what_was_taken_off() -> None:
    assert each(f"{SEWN}2 mm was taken off and the core took 8 mm of each end.", "purchase_mm")["index FDP"] == (8, 8)


@pytest.mark.parametrize(
    "words",
    [
        "The profundus ends were ragged, and 3 mm had to be pared away in the middle finger before sewing.",
        "The ends of the profundi were ragged; 3 mm were resected in the middle finger.",
    ],
)
def test_a_length_pared_away_in_a_finger_is_of_the_tendon_named(words: str) -> None:
    assert each(SEWN + words, "trimmed_mm") == {"middle FDP": 3}


@pytest.mark.parametrize("thing", ["polypropylene button", "nylon mesh"])
def test_what_a_button_is_made_of_is_no_suture(thing: str) -> None:
    assert each(f"Index FDP cut through, repaired with four strands.\nImplants: {thing}.", "material") == {}


@pytest.mark.parametrize("words", ["of the same", "of the same material"])
def test_a_thread_of_the_same(words: str) -> None:
    note = f"Index FDP cut through. A modified Kessler of 4-0 Prolene and a running 6-0 {words} round it."
    assert each(note, "peripheral_material") == {"index FDP": "polypropylene"}


def test_a_thread_of_the_same_length() -> None:
    note = "Index FDP cut through. A modified Kessler of 4-0 Prolene and a running 6-0 of the same length."
    assert each(note, "peripheral_material") == {}


@pytest.mark.parametrize("words", ["median n. 50 % (ulnar half)", "Median nerve: 40 %."])
def test_a_nerve_told_by_its_share(words: str) -> None:
    assert each(f"Palm. FDP cut. {words}", "extent", group="injuries") == {"median nerve": "partial"}


def test_a_share_of_something_else() -> None:
    assert each("Palm. FDP cut. Median nerve 50 % recovery expected.", "extent", group="injuries") == {}


def test_a_grafting_knife_grafts_no_nerve() -> None:
    note = "Index. The radial digital nerve was cut by a grafting knife and joined with 9-0 nylon."
    assert each(note, "treatment", group="injuries") == {"index digital nerve radial": "repaired"}


@pytest.mark.parametrize("head", ["CORRECTION SLIP", "List of corrections:"])
def test_a_slip_of_corrections(head: str) -> None:
    note = "Right middle finger\nFDP cut through. A4 intact.\nSplint: wrist in 20 flexion.\n\n"
    note += f"{head}\n1. Wrong hand in the heading: it is the LEFT middle finger.\n2. Splint: the wrist is in neutral."
    assert each(note, "side", group="operation") == {"": "left"}
    assert each(note, "wrist_flexion_deg", group="aftercare") == {"": (0, 0)}


def test_a_thick_thread_of_the_same_material_is_as_the_last_thick_one() -> None:
    note = (
        "Middle and ring FDP cut through. The middle got a core of 3-0 Ethibond and a running 6-0 Prolene; "
        "that of the ring finger received a modified Kessler in 4-0 of the same material."
    )
    assert each(note, "material") == {"middle FDP": "braided polyester", "ring FDP": "braided polyester"}
