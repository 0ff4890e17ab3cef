"""A test of the fingers, or of the sites of the repairs, that names none of them is said of them all."""

import pytest
from reader_sentences import each

LINES = """Palm, zone III.
FDP index: four strands, 3-0 Ethibond.
FDS index: two strands, 3-0 Ethibond.
FDP middle: four strands, 3-0 Ethibond.
Common digital nerve: 8-0 nylon.
"""
FINGERS = ("index FDP", "index FDS", "middle FDP")
WRIST = """Wrist, zone V.
FDP small: four strands, 3-0 Ticron.
FDS ring: two strands, 3-0 Ticron.
FCU: four strands, 2-0 Ticron.
Ulnar nerve: 9-0 nylon.
"""


@pytest.mark.parametrize(
    "words",
    [
        "Passive stretch of the fingers showed no gap.",
        "No gaps on moving the digits.",
        "Passive straightening of the fingers: no gapping.",
    ],
)
def test_fingers_moved_without_a_name(words: str) -> None:
    assert each(LINES + words, "gap") == dict.fromkeys(FINGERS, "none")
    assert "FCU" not in each(WRIST + words, "gap")


@pytest.mark.parametrize("words", ["No gap at the repair sites.", "Passive fist full, no gapping at the suture lines."])
def test_sites_of_the_repairs(words: str) -> None:
    assert each(WRIST + words, "gap") == dict.fromkeys(("small FDP", "ring FDS", "FCU"), "none")


@pytest.mark.parametrize(
    "words",
    [
        "Passive extension of the fingers: a gap of 1 mm opened.",  # of which repair is not told
        "Passive extension of the middle finger showed no gap.",
    ],
)
def test_not_of_all(words: str) -> None:
    assert not {"index FDP", "index FDS"} & {n for n, v in each(LINES + words, "gap").items() if v == "none"}


def test_what_gapped_before_keeps_its_gap() -> None:
    words = "The index profundus gapped by 1 mm. Passive extension of the fingers produced no gap."
    assert each(LINES + words, "gap")["index FDP"] == "seen"


@pytest.mark.parametrize(
    "words", ["Wrist tenodesis gave full excursion.", "On wrist tenodesis there was full excursion."]
)
def test_tenodesis_tells_no_glide(words: str) -> None:
    assert not each(LINES + words, "glide")


def test_excursion_of_a_named_tendon_is_a_glide() -> None:
    words = "With wrist tenodesis the index FDP had full excursion."
    assert each(LINES + words, "glide") == {"index FDP": "free"}
