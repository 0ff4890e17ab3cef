"""What was done to a tendon that the deed does not name, or names behind a place, a stop or an arrow."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "words",
    [
        "The flap was pared flush with fine scissors.",
        "Loose edge trimmed, no suture.",
        "I only rounded off the loose flap so that it would not catch.",
    ],
)
def test_a_flap_is_of_the_one_tendon_cut_in_part(words: str) -> None:
    note = f"Index finger. FDP 40% cut. FDS intact. {words}"
    assert each(note, "treatment") == {"index FDP": "trimmed"}


def test_a_flap_of_one_of_two_is_of_neither() -> None:
    note = "Index finger. FDP 40% cut. FDS 30% cut. The nerve was seen. The flap was pared flush."
    assert "index FDP" not in each(note, "treatment")


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("FDS ulnar slip 100% -> excised. radial slip intact", "excised"),
        ("FDS: ulnar slip cut through -> left. radial slip whole", "left"),
    ],
)
def test_what_stands_behind_a_stop_is_told_anew(words: str, expected: str) -> None:
    found = each(f"Middle finger. FDP cut through.\n{words}\n", "treatment")
    assert found == {"middle FDS ulnar": expected}


@pytest.mark.parametrize(
    "words",
    [
        "FDP excised, leaving 1 cm of stump on the phalanx.",
        "The FDP remnant was excised from the palm to the stump.",
        "The profundus was scarred down to the middle phalanx and was excised from the palm to its insertion.",
    ],
)
def test_all_but_a_stump_is_taken_out(words: str) -> None:
    note = f"Ring finger, first stage. FDP divided, retracted. {words} A silicone rod was placed."
    assert each(note, "treatment")["ring FDP"] == "excised"


@pytest.mark.parametrize("words", ["2 mm of the FDP stump was excised.", "Each FDP end was excised by 3 mm."])
def test_a_piece_of_a_stump_is_no_tendon_taken_out(words: str) -> None:
    assert each(f"Ring finger. FDP divided. {words}", "treatment").get("ring FDP") is None


@pytest.mark.parametrize("words", ["left as it is", "left unsewn", "left unstitched"])
def test_a_slip_left_as_it_is(words: str) -> None:
    note = f"Ring finger. FDP divided. Radial slip of FDS divided, ulnar slip whole. FDS radial slip {words}."
    assert each(note, "treatment") == {"ring FDS radial": "left"}


@pytest.mark.parametrize(
    "line",
    [
        "Diagnosis: flexor tendon injury zone [ ] I  [x] II  [ ] III  [ ] IV  [ ] V",
        "Wound: palmar, zone  [ ] 1  [x] 2  [ ] 3",
        "Flexor zone    [ ] I   [x] II   [ ] III",
    ],
)
def test_a_zone_ticked_on_a_line_about_something_else(line: str) -> None:
    note = f"Digit: middle\n{line}\n\nFDP: [x] complete  [ ] partial\nFDS: [ ] complete  [x] intact\n"
    assert each(note, "zone")["middle FDP"] == "II"
