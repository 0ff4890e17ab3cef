"""'The former in four strands, the latter in two', 'Former repaired, latter left', "the latter's stump": of whom."""

import pytest
from reader_sentences import each, told

BOTH = "Left middle finger. FDP fully divided, FDS fully divided. "


@pytest.mark.parametrize(
    "text",
    [
        "Both repaired with 4-0 Prolene, the former in four strands, the latter in two.",
        "The former took four strands of 4-0 Prolene, the latter having two.",
        "Former repaired with four strands of 4-0 Prolene, latter repaired with two strands.",
    ],
)
def test_counts_of_each(text: str) -> None:
    assert each(BOTH + text, "strands") == {"middle FDP": 4, "middle FDS": 2}


@pytest.mark.parametrize(
    "text",
    [
        "Both repaired; the edge suture was kept for the former, the latter having none.",
        "Both repaired. A running epitendinous suture was put round the former, the latter with none.",
    ],
)
def test_no_peripheral_of_the_latter(text: str) -> None:
    assert each(BOTH + text, "peripheral") == {"middle FDP": "present", "middle FDS": "absent"}


@pytest.mark.parametrize(
    "text",
    [
        "The latter's stump had slipped behind the former and was joined with 4-0 Ethilon, two strands.",
        "The stump of the latter lay beneath the former and was sewn with two strands of 4-0 Ethilon.",
    ],
)
def test_where_the_former_lay(text: str) -> None:
    assert each("Right index. FDS was intact, FDP completely severed. " + text, "strands") == {"index FDP": 2}


@pytest.mark.parametrize(
    "text",
    [
        "Former repaired with a Kessler of 4-0 PDS, latter left.",
        "The former was repaired with a Kessler of 4-0 PDS, the latter was left.",
    ],
)
def test_of_two_slips(text: str) -> None:
    shown = told("Index FDS: radial slip fully divided, ulnar slip some 20 per cent. " + text, "treatment", "stitch")
    assert shown == {
        "index FDS radial": {"treatment": "repaired", "stitch": "kessler"},
        "index FDS ulnar": {"treatment": "left"},
    }


def test_a_former_noun_is_no_tendon() -> None:
    note = BOTH + "Both repaired with four strands of 4-0 Prolene, the former splint being replaced."
    assert each(note, "strands") == {"middle FDP": 4, "middle FDS": 4}


@pytest.mark.parametrize(
    "text",
    [
        "The deeper tendon was repaired, four strands, 3-0 Prolene. The more superficial was excised.",
        "The superficial was excised, the deeper got four strands of 3-0 Prolene.",
    ],
)
def test_by_depth(text: str) -> None:
    note = "Right middle: FDS and FDP both through. " + text
    assert each(note, "strands") == {"middle FDP": 4}
    assert each(note, "treatment") == {"middle FDP": "repaired", "middle FDS": "excised"}


def test_other_superficial_things() -> None:
    note = "Ring: FDS and FDP cut through. The superficial veins were tied. FDP got four strands."
    assert each(note, "treatment") == {"ring FDP": "repaired"}


@pytest.mark.parametrize(
    "text",
    [
        "The former took 3-0 Ethibond, four strands; it was the latter only that lay under some tension.",
        "The former was sewn with four strands, and the latter was repaired under tension with 8-0 nylon.",
    ],
)
def test_the_latter_is_a_nerve(text: str) -> None:
    note = "Left thumb. FPL and radial digital nerve both through. " + text
    assert each(note, "strands") == {"thumb FPL": 4}
    assert not each(note, "tension")


def test_the_latter_is_the_tendon() -> None:
    note = (
        "Left thumb. Radial digital nerve and FPL both cut. The latter was repaired with four strands, under tension."
    )
    assert each(note, "tension") == {"thumb FPL": "present"}
