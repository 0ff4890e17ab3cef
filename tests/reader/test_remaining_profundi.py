"""'The remaining profundi, the index FDS and ...' and 'the tendon repairs': whose fingers and how many are meant."""

import pytest
from reader_sentences import each

_HEAD = "Wrist. The FDS to the long and small and the FDP to the small finger completely divided. "
_OTHERS = {"index FDP": "intact", "middle FDP": "intact", "ring FDP": "intact"}
_CUT = {"middle FDS": "complete", "small FDS": "complete", "small FDP": "complete"}


@pytest.mark.parametrize(
    ("words", "more"),
    [
        (
            "The remaining profundus tendons, the index superficialis and the FPL were intact.",
            ["index FDS", "thumb FPL"],
        ),
        ("The other profundi, the ring FDS and the FCR were intact.", ["ring FDS", "FCR"]),
        ("The other FDP tendons and the index and ring FDS were intact.", ["index FDS", "ring FDS"]),
    ],
)
def test_others_of_a_kind(words: str, more: list[str]) -> None:
    assert each(_HEAD + words, "extent") == _CUT | _OTHERS | dict.fromkeys(more, "intact")


_REPAIRED = (
    "Middle and ring fingers. FDP and FDS of middle finger completely cut. FDS of ring finger completely cut. The "
    "completely cut tendons were sutured with 3-0 Prolene by modified Kessler. Ring FDP half cut, repaired with 4-0. "
)
_ALL = ["middle FDP", "middle FDS", "ring FDP", "ring FDS"]


def test_the_tendon_repairs() -> None:
    assert each(_REPAIRED + "No gap at the tendon repairs.", "gap") == dict.fromkeys(_ALL, "none")
    words = "No tension at the tendon repairs with wrist flexed."
    assert each(_REPAIRED + words, "tension") == dict.fromkeys(_ALL, "none")


def test_the_tendon_alone() -> None:
    assert each(_REPAIRED + "No gap at the tendon repair.", "gap") == {"ring FDP": "none"}
