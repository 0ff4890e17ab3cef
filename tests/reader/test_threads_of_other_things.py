"""Edge sutures of arteries, strands that hold a pulley, and cores of an extensor are none of the flexor's."""

import pytest
from reader_sentences import each

SEWN = "Left index. FDP two-strand repair. "
KESSLER = "Middle finger FDP repaired: Kessler, 3-0 Ethibond. "
PROLENE = "Left middle finger: FDP completely divided, repaired with 4-0 Prolene, two strands. "


@pytest.mark.parametrize(
    "text",
    [
        "The circumferential suture mentioned on the count sheet (8-0) belongs to the artery.",
        "The peripheral suture listed was for the artery.",
        "The circumferential 9-0 was the artery's.",
        "The circumferential suture in the list of threads was the vein graft's.",
        "The circumferential suture recorded by the nurse was in the nerve.",
    ],
)
def test_an_edge_suture_of_an_artery(text: str) -> None:
    assert not each(SEWN + text, "peripheral")


def test_one_of_the_tendon_and_one_of_the_artery() -> None:
    text = "A circumferential suture of 6-0 went on the tendon; the 8-0 belongs to the artery."
    assert each(SEWN + text, "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "A2 had been opened for access and was sutured back with four strands of 5-0 Prolene.",
        "A4 was divided and then resewn with six strands of 5-0.",
        "The A2 pulley, opened for access, was closed again with a four-strand stitch of 5-0 Prolene.",
        "The A3 was reattached by four strands of 5-0 nylon.",
    ],
)
def test_strands_that_hold_a_pulley(text: str) -> None:
    assert each(KESSLER + text, "strands") == {"middle FDP": 2}
    assert each(KESSLER + text, "size") == {"middle FDP": "3-0"}


def test_a_tendon_and_a_pulley_sewn() -> None:
    text = "It has four strands and was passed under A2, which was sutured back with 5-0."
    assert each(KESSLER + text, "strands") == {"middle FDP": 4}


@pytest.mark.parametrize(
    "text",
    [
        "Extensor over the PIP joint: four-strand core, 3-0 Ethibond, with running 5-0 edge stitch.",
        "Extensor tendon over P1: four strands of 3-0 with a 6-0 epitendinous.",
        "EDC at the knuckle: Kessler 4-0, running 6-0 epitendinous.",
        "Central slip: 3-0 Ethibond, four strands, with 6-0 edge stitch.",
    ],
)
def test_a_label_of_an_extensor(text: str) -> None:
    assert not each(PROLENE + text, "peripheral")
    assert each(PROLENE + text, "strands") == {"middle FDP": 2}


@pytest.mark.parametrize(
    "text",
    [
        "Extensor intact. A running 5-0 edge stitch finished the flexor.",
        "Extensor: not hurt. Edge stitch of 6-0 run round the FDP.",
    ],
)
def test_an_extensor_that_was_whole(text: str) -> None:
    assert each(PROLENE + text, "peripheral") == {"middle FDP": "present"}
