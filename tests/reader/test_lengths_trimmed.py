"""Lengths of tendon trimmed away: wordings of the deed, of both ends, and lengths of something else."""

import pytest
from reader_sentences import each, told

CUT = "Ring FDP cut through. "


@pytest.mark.parametrize(
    ("note", "length"),
    [
        ("We regularised the tendon, resecting 2 mm per side, 4 mm in total.", 4),
        ("After removal of 4 mm of its ragged length the profundus was sewn.", 4),
        ("The ends were shredded, so I cut each of them back 4 to 5 mm.", 5),
        ("Ends frayed; I cut 2 mm away from each.", 2),
        ("Ends crushed, 3 mm off every end.", 3),
        ("I squared off the two ends, removing 2 mm from the one and 3 mm from the other.", 3),
        ("I cleaned up the FDP ends, which cost 3 mm off one and 2 off the other.", 3),
        ("After removing 3 mm on one side and 4 mm on the other I sewed it.", 4),
        ("With the ends crushed, I had to resect 4 mm in all.", 4),
        ("The stump was shaggy; about 3 mm of the FDP was sharply debrided.", 3),
        ("I had to take off 3 mm altogether.", 3),
        ("FDP ends -> back 3 mm.", 3),
        ("The tip was worn and I took a millimetre or two off it.", 2),
        ("I cut 2 mm of poor tissue from the tendon.", 2),
        ("Ends torn, nibbled 2 mm.", 2),
        ("Ends crushed, 2 mm off prox, 4 mm off distal -> 6 mm total.", 6),
        ("After resection of 3 mm in total the tissue looked sound.", 3),
        ("I took 1 mm from the proximal end and 3 mm from the distal one, for 4 mm altogether.", 4),
        ("Ends ragged (3 mm off).", 3),
        ("3 mm worn tip off.", 3),
        ("The FDP had been cut off 5 mm from its insertion and its end was shaggy; 3 mm of it was squared off.", 3),
    ],
)
def test_lengths_trimmed(note: str, length: float) -> None:
    assert each(CUT + note, "trimmed_mm") == {"ring FDP": length}


@pytest.mark.parametrize(
    "note",
    [
        "Excised the FDP down to a 1 cm tag at the bone.",
        "Pulley edges trimmed, about 2 mm removed from the distal margin of A2.",
        "The A4 was torn. I trimmed 3 mm of the rough edge.",
        "With its ends cut back 2 mm to good fascicles the nerve was sewn.",
        "The FDP was found divided 6 mm from its insertion.",
        "The swollen end would not go under A4 until 4 mm of its border had been snipped off.",
        "I took 3 mm bites.",
    ],
)
def test_lengths_of_something_else(note: str) -> None:
    assert each(CUT + note, "trimmed_mm") == {}


def test_whose_ends_were_trimmed() -> None:
    both = "Small FDP cut through. Ring: FDP cut through, FDS cut through. Tendon ends: ragged. "
    assert each(both + "2 mm was resected from each FDP end.", "trimmed_mm") == {"ring FDP": 2}
    assert each(both + "2 mm trimmed off FDP.", "trimmed_mm") == {"ring FDP": 2}


@pytest.mark.parametrize(
    "words",
    [
        "The scarred tendon was resected, leaving a stump of profundus of 1 cm at the bone.",
        "Removal of the remnants of the tendon, silicone rod 5 mm.",
    ],
)
def test_what_was_left_or_laid_in_was_not_trimmed(words: str) -> None:
    assert each(CUT + words, "trimmed_mm") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Eight millimeters of dead tendon was debrided from the ring FDP and 6 from the small FDP.",
        "8 mm was resected from the ring FDP and 6 mm from the small FDP.",
    ],
)
def test_a_length_for_each_of_two_tendons(words: str) -> None:
    note = "Ring FDP and FDS and small FDP were divided. " + words
    assert each(note, "trimmed_mm") == {"ring FDP": 8, "small FDP": 6}


@pytest.mark.parametrize(
    "words",
    ["The ends were refreshed 3 mm in total for each FDP.", "Ends trimmed by 3 mm altogether for both FDP."],
)
def test_a_total_for_the_tendons_behind_it(words: str) -> None:
    note = "Ring and small fingers, FDP and FDS of both cut through. " + words
    assert each(note, "trimmed_mm") == {"ring FDP": 3, "small FDP": 3}


@pytest.mark.parametrize("words", ["2 mm resected from each end, that is 4 in total.", "2 mm off each end, 4 in all."])
def test_a_total_without_its_unit(words: str) -> None:
    assert each(CUT + words, "trimmed_mm") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "pulleys",
    [
        "A2 was opened at its distal end for 6 mm, A3 was removed.",
        "A2 vented at its far end over 5 mm, and A3 was excised.",
    ],
)
def test_a_pulley_removed_behind_a_length_is_no_trimming(pulleys: str) -> None:
    assert each(f"The middle FDP was cut through. {pulleys}", "trimmed_mm") == {}


@pytest.mark.parametrize("ends", ["Both ends were debrided, 3 mm in total.", "The ends were shortened by 3 mm."])
def test_ends_are_those_of_the_tendon_that_was_sewn(ends: str) -> None:
    note = "Ring FDP and FDS cut through. FDS left unrepaired. " + ends + " FDP: four-strand Adelaide, 3-0 Ticron."
    assert each(note, "trimmed_mm") == {"ring FDP": 3}


@pytest.mark.parametrize("words", ["pared 4 mm (IF), 2 mm (MF).", "trimmed, 4 mm in the index, 2 mm in the middle."])
def test_lengths_beside_their_fingers(words: str) -> None:
    assert each("Index and middle FDP cut through. Ends of both crushed, " + words, "trimmed_mm") == {
        "index FDP": 4,
        "middle FDP": 2,
    }


@pytest.mark.parametrize(
    "words",
    [
        "The scarred FDP was excised, with a stump of 1 cm left on the bone.",
        "FDP taken out, cuff of 1 cm kept on the bone.",
        "FDP resected, 1 cm stump kept on P3.",
        "The FDP was excised from the palm to 1 cm of its insertion.",
    ],
)
def test_a_stump_that_was_kept(words: str) -> None:
    assert each(CUT + words, "trimmed_mm") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Bites of 10 mm had been inked. After the ends had been cut back they came to 7 mm of purchase each side.",
        "Once the ends were trimmed only 7 mm of purchase was left.",
    ],
)
def test_what_the_core_still_holds_of_trimmed_ends(words: str) -> None:
    facts = told(CUT + "Four-strand repair. " + words, "purchase_mm", "trimmed_mm")
    assert facts["ring FDP"] == {"purchase_mm": (7.0, 7.0)}


def test_a_length_cut_back_behind_the_word_is_still_trimmed() -> None:
    note = CUT + "The ends had been cut back 7 mm. Four-strand repair with 10 mm of purchase each side."
    assert told(note, "purchase_mm", "trimmed_mm")["ring FDP"] == {"purchase_mm": (10.0, 10.0), "trimmed_mm": 7}
