"""How much of a pulley was opened or cut away, told beside the part that was kept or beside another pulley."""

import pytest
from reader_sentences import each, told

RING = "Right ring finger. FDP completely cut. "


@pytest.mark.parametrize(
    "words",
    [
        "A2: torn distal half excised, proximal half retained.",
        "The distal half of A2 was trimmed off, proximal half stays.",
    ],
)
def test_the_part_retained_is_not_the_part_taken(words: str) -> None:
    found = told(RING + words, "extent_percent", "part", group="pulleys")
    assert found == {"ring A2": {"extent_percent": 50, "part": "distal"}}


@pytest.mark.parametrize(
    "words", ["A2: the distal 1/3 was vented, 2/3 left.", "A2 vented over its distal third, rest (2/3) kept."]
)
def test_the_rest_is_not_the_share(words: str) -> None:
    found = told(RING + words, "extent_percent", "part", group="pulleys")
    assert found == {"ring A2": {"extent_percent": 33, "part": "distal"}}


@pytest.mark.parametrize(
    "words",
    [
        "A3 was vented and the distal third of A2 was vented.",
        "A3 was vented and the distal 5 mm of A2 were opened.",
    ],
)
def test_the_share_of_the_next_pulley_is_its_own(words: str) -> None:
    assert each(RING + words, "part", group="pulleys") == {"ring A2": "distal"}
    assert each(RING + words, "finding", group="pulleys") == {"ring A2": "vented", "ring A3": "vented"}


def test_about_so_many_millimetres() -> None:
    note = RING + "A2 venting of proximal half (ca. 8 mm); A4 kept."
    assert each(note, "extent_mm", group="pulleys") == {"ring A2": 8}


@pytest.mark.parametrize(
    "words", ["A2 edges were trimmed back by 3 mm distally.", "The A2 rims were trimmed by 3 mm, not sutured."]
)
def test_edges_of_a_pulley(words: str) -> None:
    found = told(RING + words, "finding", "extent_mm", group="pulleys")
    assert found == {"ring A2": {"finding": "trimmed", "extent_mm": 3}}
    assert each(RING + words, "trimmed_mm") == {}


@pytest.mark.parametrize(
    "words", ["A4: tight; dilated, then opened along its distal 4 mm.", "A4 narrow; first dilated, then vented 4 mm."]
)
def test_dilated_before_it_was_opened(words: str) -> None:
    assert each(RING + words, "finding", group="pulleys") == {"ring A4": "vented"}
    assert each(RING + words, "extent_mm", group="pulleys") == {"ring A4": 4}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("A1 was split in the whole length because suture knocked on it.", "released"),
        ("A1 was vented, since sutures rubbed on it.", "vented"),
        ("A1 was torn and was sewn back with one suture.", "repaired"),
    ],
)
def test_a_suture_that_is_only_the_reason(words: str, finding: str) -> None:
    assert each(RING + words, "finding", group="pulleys") == {"ring A1": finding}


@pytest.mark.parametrize(
    "words",
    [
        "Passive movement: tendon glide smooth in both fingers, no gap.",
        "On passive testing the tendon ran freely in both fingers.",
    ],
)
def test_a_tendon_of_both_fingers(words: str) -> None:
    start = "Left ring and little finger, FDP of both cut and repaired with 4-0 Prolene. A2 of the ring was trimmed. "
    assert each(start + words, "glide") == {"ring FDP": "free", "small FDP": "free"}


def test_a_tendon_of_one_finger() -> None:
    start = "Left ring and little finger, FDP of both cut and repaired with 4-0 Prolene. "
    assert each(start + "The ring tendon ran freely. Skin closed in both fingers.", "glide") == {"ring FDP": "free"}
