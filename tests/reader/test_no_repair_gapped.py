"""'All digits were moved; no repair separated and none gapped': of every repair of an inventory, FPL and FDS too."""

from itertools import product

import pytest
from reader_sentences import each

INVENTORIES = {
    "FPL and FDS of the index and middle were severed. All were repaired with a modified Kessler 3-0. ": (
        "thumb FPL",
        "index FDS",
        "middle FDS",
    ),
    "The index profundus, FPL and FDS of the index and ring were divided. The index profundus and the FPL each "
    "received a Strickland repair in 3-0 Ethibond. The two superficialis tendons were repaired with a "
    "modified Kessler 3-0. ": (
        "thumb FPL",
        "index FDP",
        "index FDS",
        "ring FDS",
    ),
    "FDP of the middle and ring fingers and FDS of the middle divided. The profundi were repaired with a 4-strand "
    "Adelaide 3-0 and the superficialis with a mattress suture 4-0. ": ("middle FDP", "ring FDP", "middle FDS"),
}
LEADS = [
    "All digits were carried through a passive arc; ",
    "All fingers were moved passively; ",
    "On passive movement ",
    "Each digit was flexed and extended by hand and ",
]
SAYINGS = {
    "no repair separated.": ("gap", "none"),
    "no gap appeared at any repair.": ("gap", "none"),
    "every repair glided freely.": ("glide", "free"),
    "all repairs ran freely and none gapped.": ("glide", "free"),
}


@pytest.mark.parametrize(("head", "lead", "saying"), list(product(INVENTORIES, LEADS, SAYINGS)))
def test_of_every_repair(head: str, lead: str, saying: str) -> None:
    field, value = SAYINGS[saying]
    assert each(head + lead + saying, field) == dict.fromkeys(INVENTORIES[head], value)


@pytest.mark.parametrize(
    "words", ["Both fingers flexed fully without gapping.", "On passive movement no gap in the ring."]
)
def test_of_fingers_or_of_one(words: str) -> None:
    head = list(INVENTORIES)[2]
    assert "middle FDS" not in each(head + words, "gap")
