"""What a closer look, a later line or another's proposal takes away from what was told."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "superficialis grazed at best, no, on closer view not grazed at all, it is intact.",
        "superficialis partly cut, no, on a closer look it was intact.",
    ],
)
def test_a_closer_look_takes_back(words: str) -> None:
    found = each(f"Left index. Profundus completely cut through; {words}", "extent")
    assert found == {"index FDP": "complete", "index FDS": "intact"}


def test_a_closer_look_at_something_else() -> None:
    note = "Left index. FDP completely cut. A2 intact. On closer inspection A4 was torn."
    assert each(note, "finding", group="pulleys") == {"index A2": "intact", "index A4": "injured"}


SEWN = "Right thumb. FPL repaired with 3-0 PDS. Oblique pulley repaired with 5-0 PDS. "


@pytest.mark.parametrize(
    "words",
    [
        "Radial digital nerve cut.\nCorrection: Oblique pulley: the stitches tore out and were taken out.",
        "\nThe sutures of the oblique pulley pulled out and were removed.",
        "A1 intact.\nThe oblique pulley sutures gave way and it was left open.",
    ],
)
def test_stitches_of_a_pulley_that_gave_way(words: str) -> None:
    assert "thumb oblique" not in each(SEWN + words, "finding", group="pulleys")


def test_stitches_that_gave_way_and_were_put_in_anew() -> None:
    note = SEWN + "\nThe sutures of the oblique pulley pulled out; it was repaired again."
    assert each(note, "finding", group="pulleys") == {"thumb oblique": "repaired"}


@pytest.mark.parametrize("words", ["leaving 1 cm of profundus at the bone", "leaving 10 mm on the distal phalanx"])
def test_what_was_left_is_no_length_trimmed(words: str) -> None:
    note = f"Right middle finger. The profundus was excised from the finger, {words}."
    assert each(note, "trimmed_mm") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Immobilisation for three weeks was proposed by the resident, but we settled on a place-and-hold programme.",
        "Immobilisation was suggested by the therapist; we chose place and hold.",
    ],
)
def test_a_programme_that_another_proposed(words: str) -> None:
    found = told(SEWN + "\n" + words, "programme", "splint_weeks", group="aftercare")
    assert found == {"": {"programme": "place and hold"}}


@pytest.mark.parametrize("words", ["I have not attempted to sew it.", "No attempt was made to suture it."])
def test_no_attempt_to_sew(words: str) -> None:
    assert each(f"Left small finger. FDS completely cut. {words}", "treatment") == {"small FDS": "left"}


def test_with_effect_from_a_day() -> None:
    note = SEWN + "\nEarly passive motion w.e.f. POD 5. Splint on both hands, wrists neutral."
    found = told(note, "start_day", "wrist_flexion_deg", group="aftercare")
    assert found == {"": {"start_day": (5, 5), "wrist_flexion_deg": (0, 0)}}


@pytest.mark.parametrize("words", ["A3 lost long ago.", "A3 was cut away long ago."])
def test_a_pulley_lost_long_ago(words: str) -> None:
    found = each(f"Right middle finger. FDP repaired. {words} A1 divided fully today.", "finding", group="pulleys")
    assert found == {"middle A1": "released"}


def test_six_strands_would_be_nicer() -> None:
    note = "Left index. FDP cut, zone III, two strands of 3-0 PDS. I know that six strands are nicer in zone II."
    assert told(note, "strands", "zone") == {"index FDP": {"strands": 2, "zone": "III"}}


@pytest.mark.parametrize(
    "words",
    ["lock the bites er no not locked just grasping.", "locking bites, no, not locking, simple grasping ones."],
)
def test_a_lock_taken_back(words: str) -> None:
    note = f"Right small finger. FDP cut, core was four strand Strickland in 3-0, {words}"
    assert each(note, "hold") in ({}, {"small FDP": "grasping"})


def test_a_lock_of_one_and_not_of_the_other() -> None:
    note = "Right small finger. FDP cut, four strand cruciate in 3-0, locking bites. No core in the FDS."
    assert each(note, "hold") == {"small FDP": "locking"}


@pytest.mark.parametrize(
    "words",
    [
        "A 4 mm silicone rod was laid in. Its distal end was fixed to the profundus stump with 4-0 wire.",
        "A silicone rod was passed. It was sewn to the FDP stump with 3-0 nylon.",
    ],
)
def test_a_rod_spoken_of_as_it(words: str) -> None:
    note = f"Right middle finger. FDP and FDS were excised. {words}"
    assert each(note, "treatment") == {"middle FDP": "excised", "middle FDS": "excised"}
    assert told(note, "size", "material") == {}


def test_it_behind_a_rod_that_was_not_used() -> None:
    note = "Right middle finger. The FDP was cut. No rod was needed. It was sewn with 3-0 nylon, four strands."
    assert each(note, "size") == {"middle FDP": "3-0"}


@pytest.mark.parametrize("words", ["A2 window: distal 3 mm divided.", "A2 windows: distal 3 mm opened, 1 mm apart."])
def test_a_window_in_a_pulley(words: str) -> None:
    found = each(f"Right small finger. FDP repaired. A2 ok. {words}", "finding", group="pulleys")
    assert found == {"small A2": "vented"}
