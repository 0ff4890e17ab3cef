"""Edges, edge sutures and threads that are of no tendon, answers in turn, and pulleys not left unharmed."""

import pytest
from reader_sentences import each

SEWN = "Ring FDP cut and repaired, 3-0 Prolene, 4 strands. "


@pytest.mark.parametrize(
    "text",
    [
        "Epi done on the nerve only, none on the tendon.",
        "The circumferential stitch was for the artery.",
        "Median nerve repaired with 8-0 Ethilon, a peripheral epineurial row right round.",
    ],
)
def test_edge_sutures_of_others(text: str) -> None:
    assert each(SEWN + text, "peripheral").get("ring FDP") != "present"


def test_edge_sutures_of_both() -> None:
    assert each(SEWN + "Epi 6-0 on the tendon, 9-0 on the nerve.", "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "The 6-0 for the circumferential stitch fell to the floor and the wound was closed without it.",
        "The peripheral suture dropped on the floor, no other was in the room, and we finished without it.",
    ],
)
def test_fallen_to_the_floor(text: str) -> None:
    assert each(SEWN + text, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "text",
    [
        "Sheath closed without tension over the repair, edges clean, no gap left in the sheath.",
        "The skin was sutured, its edges clean.",
    ],
)
def test_edges_of_a_cover(text: str) -> None:
    assert not each(SEWN + text, "ends")


def test_ends_beside_a_wound() -> None:
    assert each(SEWN + "The wound was closed. The ends had been clean.", "ends") == {"ring FDP": "clean"}


@pytest.mark.parametrize(
    "text",
    [
        "A4 was torn and had to be rebuilt with a slip of FDS, sewn by four strands of 4-0 Ethibond. FDP repaired.",
        "A2 was reconstructed from a strip of FDS, sewn down with four strands of 4-0 Ethibond. FDP repaired.",
    ],
)
def test_threads_of_a_pulley(text: str) -> None:
    assert not each("Ring finger. " + text, "strands")


def test_threads_of_a_tendon_beside_a_pulley() -> None:
    text = "Ring finger. A2 was rebuilt with a strip of FDS and FDP was sewn with four strands of 3-0 Prolene."
    assert each(text, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "text",
    [
        "FDP complete in both, repaired in both. Epitendinous yes, no respectively.",
        "FDP cut and repaired in both; peripheral suture: present and absent respectively.",
    ],
)
def test_answers_in_turn(text: str) -> None:
    assert "present" not in each("R ring, R small: " + text, "peripheral").values()


@pytest.mark.parametrize(
    "text",
    [
        "A2 was not left unharmed; the knife had gone through its distal third.",
        "A2 had not gone unharmed.",
        "Nor was A2 left uninjured.",
    ],
)
def test_not_left_unharmed(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys").get("ring A2") != "intact"


@pytest.mark.parametrize("text", ["A2 was not opened and left unharmed.", "A2 had remained unharmed."])
def test_left_unharmed(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "text", ["In full extension the edges part a little.", "On traction the edges came apart by a hair."]
)
def test_edges_that_part(text: str) -> None:
    assert each(SEWN + "Gap none at rest. " + text, "gap") == {"ring FDP": "seen"}
