"""Cores of all that was cut and of one more, cuts listed behind a colon, and turns of translated notes."""

import pytest
from reader_sentences import each, told

WRIST = (
    "Left wrist, zone V. FDP ring and little fully cut. FDS middle, ring and little, fully cut. FDS index half through."
    " FCU fully cut.\n"
)
DEEP = {"ring FDP", "small FDP"}
SUPERFICIAL = {"middle FDS", "ring FDS", "small FDS"}


@pytest.mark.parametrize(
    ("words", "sewn"),
    [
        ("All divided profundus and superficialis tendons, plus the half cut index FDS, with 3/0", "both and index"),
        ("All profundus and superficialis tendons were repaired with 3/0", "both and index"),
        ("All severed profundus tendons were repaired with 3/0", "deep"),
    ],
)
def test_all_that_was_cut(words: str, sewn: str) -> None:
    found = each(WRIST + words + " Ticron, four strand modified Kessler.\n", "strands")
    assert found == dict.fromkeys(DEEP if sewn == "deep" else DEEP | SUPERFICIAL | {"index FDS"}, 4)


def test_each_with_its_own_thread_behind_plus() -> None:
    note = "Ring. FDP and FDS cut through. FDP with 3-0 Ethibond, four strands, plus FDS with 4-0 Kessler."
    assert each(note, "size") == {"ring FDP": "3-0", "ring FDS": "4-0"}


@pytest.mark.parametrize(
    ("words", "extent"),
    [
        ("At zone V the following were lying cut in the wound: FCR, FCU, the FDS of the ring.", "complete"),
        ("The following lay divided: FCR, FCU and the ring FDS.", "complete"),
        ("The following were intact: FCR, FCU and the FDS of the ring.", "intact"),
    ],
)
def test_listed_behind_a_colon(words: str, extent: str) -> None:
    assert each(words, "extent") == dict.fromkeys(["FCR", "FCU", "ring FDS"], extent)


def test_lying_exposed() -> None:
    assert each("The following were lying exposed in the wound: FCR and the FDS of the ring.", "extent") == {}


CUT = "Index. FDP cut through. "


@pytest.mark.parametrize(
    ("words", "pattern"),
    [
        ("Kirchmayr of PDS 4/0, then overcast of PDS 6/0.", "running"),
        ("Kirchmayr of PDS 4/0, then a circular overlock of PDS 6/0.", "running"),
        ("Kirchmayr of PDS 4/0, then a surjet of PDS 6/0.", "running"),
        ("Kirchmayr of PDS 4/0, then a surjet overlock of PDS 6/0.", "running locking"),
    ],
)
def test_running_in_translation(words: str, pattern: str) -> None:
    found = told(CUT + words, "size", "peripheral_size", "peripheral_pattern")["index FDP"]
    assert found == {"size": "4-0", "peripheral_size": "6-0", "peripheral_pattern": pattern}


def test_skin_overcast() -> None:
    assert each(CUT + "Kirchmayr of PDS 4/0. Skin overcast with 5-0 nylon.", "peripheral") == {}


@pytest.mark.parametrize(
    ("words", "treatment"),
    [
        ("The FDS was not repaired with six strands: four strands of 4-0 were used.", "repaired"),
        ("The FDS was not sewn by a Kessler but with a horizontal mattress of 4-0.", "repaired"),
        ("The FDS was not repaired with sutures, but excised.", "excised"),
        ("The FDS was not repaired.", "left"),
    ],
)
def test_not_so_but_so(words: str, treatment: str) -> None:
    assert each("Ring. FDP and FDS cut through. " + words, "treatment")["ring FDS"] == treatment
