"""What a talk was about was not done; a strip of tendon sewn round the bone is a pulley and no repair."""

import pytest
from reader_sentences import each, told

THUMB = "Right thumb, zone III. FPL completely divided. "


@pytest.mark.parametrize(
    "words",
    [
        "We had a careful conversation about repair versus a ring superficialis transfer; she agreed to either.",
        "There was a long conversation about repair of the ring FDS.",
        "I had a frank talk with him about suturing the ring FDS.",
        "A full discussion took place about repair of the ring FDS.",
        "We went through the choice of direct repair or ring FDS transfer with her.",
        "The choices, direct repair or ring FDS transfer, were laid before her.",
    ],
)
def test_talked_over_is_not_done(words: str) -> None:
    assert each(THUMB + words, "treatment") == {}


@pytest.mark.parametrize(
    "words",
    [
        "We had a talk about a graft and the FPL was repaired with four strands of 3-0 Ticron.",
        "After a talk about a tendon graft, the FPL was repaired with four strands of 3-0 Ticron.",
        "The suture of choice was 3-0 Ticron and the FPL was repaired with four strands.",
    ],
)
def test_done_behind_a_talk(words: str) -> None:
    assert told(THUMB + words, "strands", "size") == {"thumb FPL": {"strands": 4, "size": "3-0"}}


MIDDLE = "Right middle finger. FDP repaired with a four-strand 3-0 Ticron. "


_NEW = {"middle A2": "reconstructed"}


@pytest.mark.parametrize(
    ("words", "pulleys"),
    [
        ("The superficialis was taken as a strip, passed twice around the phalanx and sewn to itself with 4-0.", {}),
        ("The FDS stump was used as a band, encircling the bone, sewn back on itself with 4-0 nylon.", {}),
        ("A2 was rebuilt: one FDS slip was looped around the phalanx and tied on itself with 4-0 PDS.", _NEW),
    ],
)
def test_sewn_round_the_bone(words: str, pulleys: dict[str, object]) -> None:
    assert each(MIDDLE + words, "treatment") == {"middle FDP": "repaired"}
    assert each(MIDDLE + words, "size") == {"middle FDP": "3-0"}
    assert each(MIDDLE + words, "finding", group="pulleys") == pulleys


def test_sewn_end_to_end_is_a_repair() -> None:
    assert each(MIDDLE + "The FDS was sewn end to end with 4-0.", "treatment")["middle FDS"] == "repaired"
