"""Turns of letters, registers and dictations: fingers passed by, words taken back, what others wrote, tenodeses."""

import pytest
from reader_sentences import each, told

_RING = "Left ring finger, zone II. FDP divided completely. FDS intact. "


@pytest.mark.parametrize(
    "passing",
    [
        "Index and small: wounds of the skin only, sheath closed, tendons seen to glide, nothing needed.",
        "Middle finger: superficial cut over the pulp, sheath not entered, nothing done.",
        "D3 and D5: skin only, sheaths found closed on both, nothing sutured.",
        "The middle and small fingers had skin wounds, which were closed.",
    ],
)
def test_a_finger_passed_by_takes_no_suture(passing: str) -> None:
    note = f"{_RING}{passing} Technique deep flexor: four-strand cruciate of 3-0 PDS."
    assert each(note, "strands") == {"ring FDP": 4}


def test_a_finger_whose_nerve_was_left_is_turned_to() -> None:
    note = (
        "Index FDP divided. Middle FDP intact. Index: radial digital nerve contused, in continuity, nothing done. "
        "FDP repaired with 4-0 Prolene, 4 strands."
    )
    assert each(note, "strands") == {"index FDP": 4}


@pytest.mark.parametrize(
    "nerve",
    [
        "Common digital nerve to third web (MF/RF) divided completely.",
        "The common digital nerve to the third web (middle / ring) was completely divided.",
    ],
)
def test_fingers_in_brackets_say_only_where_the_nerve_goes(nerve: str) -> None:
    note = f"MF: FDP 100%, FDS intact. RF: FDP 100%, FDS intact. {nerve}"
    expected = {"middle FDP": "complete", "middle FDS": "intact", "ring FDP": "complete", "ring FDS": "intact"}
    assert each(note, "extent") == expected


@pytest.mark.parametrize(
    "left", ["was left as such", "left as such", "left well alone", "was left exactly as it was", "left as is"]
)
def test_what_is_left_as_such_is_not_among_the_repaired_tendons(left: str) -> None:
    note = (
        "FDP of the ring finger completely divided, FDS of the ring finger cut 60%. "
        "FDP of the ring finger repaired with 3-0 Prolene, modified Kessler. "
        f"FDS of the ring finger {left}. Passive movement checked, repaired tendons gliding well."
    )
    assert each(note, "treatment") == {"ring FDP": "repaired", "ring FDS": "left"}
    assert each(note, "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    "wrote",
    [
        'They had written "FDP cut, needs four strand repair" on her card.',
        'The referral says "profundus gone, six-strand core suture wanted".',
        'The card stated "FDP and FDS repaired 4 strand".',
    ],
)
def test_what_others_wrote_is_no_finding(wrote: str) -> None:
    note = f"Right index finger, zone II. {wrote} The FDP was cut over 30% of its width and trimmed, not sutured."
    assert told(note, "strands", "treatment") == {"index FDP": {"treatment": "trimmed"}}


def test_a_sutured_tendon_in_general_was_not_sutured() -> None:
    note = "The index FDP was cut over a third and trimmed. Nothing is as strict as for a sutured tendon."
    assert each(note, "treatment") == {"index FDP": "trimmed"}


@pytest.mark.parametrize(
    "ran",
    [
        "it ran through fine no no correction it was catching a little on a two",
        "It glided freely, no wait, it caught at the edge of A4.",
        "It ran smoothly. No, sorry, it was catching under A2.",
    ],
)
def test_a_no_that_takes_back_denies_nothing_behind_it(ran: str) -> None:
    note = f"FDP of the middle finger repaired with a four-strand cruciate of 4-0 Ticron. With traction {ran}"
    assert each(note, "glide") == {"middle FDP": "catching"}


def test_a_no_that_denies_still_denies() -> None:
    note = "FDP of the middle finger repaired with a four-strand cruciate of 4-0 Ticron. No catching, no gap."
    assert told(note, "glide", "gap") == {"middle FDP": {"glide": "free", "gap": "none"}}


@pytest.mark.parametrize(
    "deed",
    [
        "The far stump was fixed to the distal radius as a tenodesis by one figure-of-eight of 2/0 Ethibond.",
        "I sewed the distal stump to the radius as a tenodesis with 2/0 Ethibond.",
        "The end was sutured to the proximal phalanx by way of tenodesis.",
        "It was treated by tenodesis with 2/0 Ethibond.",
    ],
)
def test_a_stump_fixed_as_a_tenodesis_is_no_repair(deed: str) -> None:
    assert each(f"The FPL had ruptured completely. {deed}", "treatment") == {"thumb FPL": "tenodesed"}


def test_the_simple_thing_is_no_stitch() -> None:
    note = "The FPL was divided completely. I did the simple thing: FPL repaired with 3-0 Ticron, modified Kessler."
    assert each(note, "stitch") == {"thumb FPL": "modified kessler"}


@pytest.mark.parametrize(
    "seen",
    [
        "I pulled the finger straight once more and there was 1 mm opening at the palmar side of the FDP.",
        "On extension an opening of 1 mm was seen at the repair.",
    ],
)
def test_an_opening_of_a_repair_is_a_gap(seen: str) -> None:
    note = f"FDP of the small finger repaired with 4-0 Fiberwire, 4 strands, no gap. {seen}"
    assert told(note, "gap", "gap_mm") == {"small FDP": {"gap": "seen", "gap_mm": 1}}


def test_an_opening_of_the_sheath_is_no_gap() -> None:
    note = "FDP of the small finger repaired with 4-0 Fiberwire, 4 strands. A 5 mm opening in the sheath was left."
    assert each(note, "gap") == {}


def test_an_addition_corrects_the_count() -> None:
    note = (
        "FDP of the small finger divided and repaired with 6-strand technique, 4-0 Fiberwire.\n\n"
        "ADDITION 2031-06-13\nCore suture was 4-strand, not 6."
    )
    assert each(note, "strands") == {"small FDP": 4}


def test_what_residents_are_reminded_of_was_not_done() -> None:
    note = (
        "Radial slip of the ring FDS repaired with one figure-of-eight of 5-0 Ethibond. "
        "It is recalled for the residents that a two-strand Kessler repair does not tolerate active motion."
    )
    assert each(note, "strands") == {}


@pytest.mark.parametrize("result", ["Repaired tendon moved well, no gap.", "Sutured tendons glided well, no gap."])
def test_what_the_repaired_tendon_did_repairs_no_other(result: str) -> None:
    note = (
        "FDP of the index divided completely. FDP of the index repaired with 4-0 Prolene, 4 strands. "
        f"FDP of the middle finger, cut 30%, was left to heal. {result}"
    )
    assert each(note, "treatment") == {"index FDP": "repaired", "middle FDP": "left"}
    assert "middle FDP" not in each(note, "gap")
