"""Tendons that are only a graft, a place or a half told of: they get no repair that the note does not tell."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "text",
    [
        "Palmaris longus was harvested by two short incisions. It was sutured to the end of the rod.",
        "After harvesting the palmaris longus through a stripper it was sutured to the stump and glided freely.",
    ],
)
def test_a_harvested_palmaris_is_no_repair(text: str) -> None:
    assert "PL" not in told(f"Second stage, left index finger: tendon grafting with palmaris longus. {text}")


@pytest.mark.parametrize("where", ["caught on the FDS chiasm", "stuck in the FDS decussation"])
def test_a_part_named_for_a_place_is_not_turned_to(where: str) -> None:
    text = f"Left ring finger. FDP off the bone, its stump {where}. The end was ragged. Trimmed 1 mm."
    assert set(each(text, "ends")) <= {"ring FDP"}
    assert "ring FDS" not in told(text, "trimmed_mm", "ends")


@pytest.mark.parametrize("one", ["One slip only (the ulnar)", "One slip (ulnar)", "One slip, ulnar,"])
def test_the_one_slip_sewn_is_the_one_in_brackets(one: str) -> None:
    text = f"Left index finger. FDP and FDS completely divided. FDS: {one} was put back with 4-0 Prolene."
    assert "index FDS radial" not in told(text, "treatment", "size")


def test_wholly_in_a_cell_without_a_deed_behind_it_is_left_open() -> None:
    grid = "Finger   Tendon  Cut      Done\nindex    FDP     whole    sutured\nring     FDP     whole\n"
    assert each(f"Saw injury.\n\n{grid}", "extent") == {"index FDP": "complete"}


def test_an_incision_opposite_a_finger_turns_to_it() -> None:
    text = (
        "The A1 pulley of the thumb was divided entirely. Incision at the crease opposite the middle finger. A2 intact."
    )
    assert each(text, "finding", group="pulleys") == {"thumb A1": "released", "middle A2": "intact"}


def test_moving_the_fingers_says_nothing_of_a_wrist_flexor() -> None:
    text = "Left wrist. PL and FDS ring cut through, both repaired with two strands. No gaps on moving the fingers."
    assert each(text, "gap") == {"ring FDS": "none"}


def test_a_tenodesis_held_by_an_anchor_stays_one() -> None:
    text = "Right small FDP. Tenodesis of the distal FDP stump to the middle phalanx. "
    assert each(text + "Stump secured to the anchor.", "treatment") == {"small FDP": "tenodesed"}
    again = "Ring FDP avulsed. Reinserted with a suture anchor."
    assert each(again, "treatment") == {"ring FDP": "reinserted"}


@pytest.mark.parametrize(
    ("splint", "kind"),
    [
        ("A dorsal splint over the DIP joint only.", "other"),
        ("Dorsal splint across the DIPJ.", "other"),
        ("Dorsal splint with the wrist neutral, MP 50, DIP free.", "dorsal blocking"),
    ],
)
def test_a_splint_of_the_end_joint(splint: str, kind: str) -> None:
    text = f"Small FDP completely cut and sewn with 3-0 Ticron. {splint}"
    assert [f["splint"] for f in told(text, "splint", group="aftercare").values()] == [kind]
