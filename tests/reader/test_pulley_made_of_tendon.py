"""A pulley made from a piece of tendon and sewn in: its stitches are no repair of that tendon, nor of the other."""

import pytest
from reader_sentences import each

_HEAD = "Right small finger, zone II. FDP and FDS completely divided. "


@pytest.mark.parametrize(
    "words",
    [
        "FDS excised. Becker repair, 4-0 FiberWire. A2 reconstructed by a loop of the "
        "excised FDS, sutured to the rim with 4-0 Ethibond.",
        "FDS excised. Becker repair, 4-0 FiberWire. A2 rebuilt from the resected FDS, sewn to its remnants with 4-0.",
        "FDS excised. Becker repair, 4-0 FiberWire. A4 rebuilt from the excised FDS, which was put around the phalanx "
        "twice and sutured to itself.",
    ],
)
def test_sewn_into_the_rim(words: str) -> None:
    assert each(_HEAD + words, "treatment") == {"small FDP": "repaired", "small FDS": "excised"}
    assert each(_HEAD + words, "stitch") == {"small FDP": "becker"}
    assert each(_HEAD + words, "size") == {"small FDP": "4-0"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 reconstructed with a strip of FDS, and the FDP repaired with four strands of 4-0 Ethibond.",
        "A2 was rebuilt from a slip of the superficialis and the profundus was sewn with four strands of 4-0 Ethibond.",
        "A2 reconstructed with a strip of palmaris, and the FDP repaired with four strands of 4-0 Ethibond.",
    ],
)
def test_deep_one_sewn_beside_it(words: str) -> None:
    assert each(_HEAD + words, "treatment") == {"small FDP": "repaired"}
    assert each(_HEAD + words, "strands") == {"small FDP": 4}


def test_nothing_told_of_the_deep_one() -> None:
    assert each(_HEAD + "A2 reconstructed with a strip of FDS, sutured to the rim with 4-0.", "treatment") == {}


def test_sewn_beside_a_new_pulley() -> None:
    words = "FDP sewn with four strands of 3-0. A2 was reconstructed, and the FDS was sutured with 4-0 Ethibond."
    assert each(_HEAD + words, "treatment") == {"small FDP": "repaired", "small FDS": "repaired"}


@pytest.mark.parametrize(
    "words",
    ["The FDS repair had also given way completely and was stuck.", "The old FDS repair had given way. FDS excised."],
)
def test_repair_found_given_way(words: str) -> None:
    head = "Right small finger, zone II. FDP ruptured, repaired with four strands. "
    assert each(head + words, "extent") == {"small FDP": "complete", "small FDS": "complete"}
    assert each(head + words, "treatment").get("small FDS", "excised") == "excised"
