"""All but one: the one left out is not repaired, does not share the result, and may have one of its own."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "FCR, FCU and PL all divided and, with the exception of PL, all repaired (3-0 Ethibond).",
        "FCR, FCU and PL all divided. All but PL were repaired with 3-0 Ethibond.",
        "FCR, FCU and PL divided. All were repaired except PL.",
    ],
)
def test_a_wrist_tendon_excepted_from_the_repairs(note: str) -> None:
    assert each("Wrist: " + note, "treatment") == {"FCR": "repaired", "FCU": "repaired", "PL": "left"}


@pytest.mark.parametrize(
    "note",
    [
        "Index, middle and ring FDP were completely divided. All but the ring were repaired with 3-0 Ethibond.",
        "Index, middle and ring FDP all divided and, except for the ring, all repaired with four strands.",
        "Operation: repair of index, middle and ring FDP\nFindings: all three were completely divided. All were "
        "repaired except the ring.",
    ],
)
def test_a_finger_excepted_from_the_repairs(note: str) -> None:
    assert each(note, "treatment") == {"index FDP": "repaired", "middle FDP": "repaired", "ring FDP": "left"}


@pytest.mark.parametrize(
    ("note", "ring"),
    [
        ("All were repaired except the ring. The ring FDP was tenodesed.", "tenodesed"),
        ("All were repaired except the ring. The ring FDP was grafted with plantaris.", "grafted"),
    ],
)
def test_the_excepted_was_treated_otherwise(note: str, ring: str) -> None:
    text = "Index, middle and ring FDP were completely divided. " + note
    assert each(text, "treatment")["ring FDP"] == ring


def test_excepted_from_an_edge_suture_only() -> None:
    text = "Index, middle and ring FDP were completely divided. "
    note = "All were repaired with 3-0 Ethibond and an epitendinous except the ring."
    assert each(text + note, "treatment").get("ring FDP") != "left"


@pytest.mark.parametrize(
    "note",
    [
        "Save for the ring, where a millimetre showed, there was no gap.",
        "Apart from the ring, which gapped by 2 mm, no gap was seen.",
        "There was no gap save in the ring, where 1 mm opened.",
    ],
)
def test_a_gap_in_the_excepted(note: str) -> None:
    text = "FDP repairs to index and ring fingers, four strands. "
    assert each(text + note, "gap") == {"index FDP": "none", "ring FDP": "seen"}


def test_glide_in_the_excepted() -> None:
    text = "FDP repairs to index and ring fingers, four strands. "
    assert each(text + "Except in the ring, where it caught, glide was free.", "glide") == {
        "index FDP": "free",
        "ring FDP": "catching",
    }


@pytest.mark.parametrize(
    "note",
    [
        "That of the ring was repaired with four strands; that of the small was left.",
        "The ring finger's was repaired with four strands; the small finger's was left.",
        "The ring's was repaired with four strands; the small's was left alone for a later graft.",
    ],
)
def test_the_fingers_own(note: str) -> None:
    text = "FDP cut through in ring and small fingers. "
    assert each(text + note, "treatment") == {"ring FDP": "repaired", "small FDP": "left"}


@pytest.mark.parametrize(
    "note",
    [
        "FDP was cut in the index and ring fingers and was repaired only in the index.",
        "FDP was cut in the index and ring fingers and was repaired solely in the index, with four strands.",
    ],
)
def test_repaired_only_in_one(note: str) -> None:
    assert each(note, "treatment") == {"index FDP": "repaired"}


def test_what_is_told_there_of_an_exception() -> None:
    note = "Wrist: FCR, FCU and FPL divided. Core thread: 3-0 Ticron in all save FCR, there 2-0 PDS."
    assert told(note, "size")["FCR"] == {"size": "2-0"}
