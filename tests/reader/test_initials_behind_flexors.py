"""'FDS M+R   100%', 'FDP   all ok': initials of fingers, and all of them, behind the name of a flexor."""

import pytest
from reader_sentences import each

WRIST = """Zone V, left forearm.
 FCU       cut    -> 4 strands 3-0 Ethibond
 FDS M+R   cut    -> 2 strands 3-0 Ethibond each
 FDS I, S  intact
"""


def test_initials_joined_behind_a_flexor() -> None:
    assert each(WRIST, "strands") == {"middle FDS": 2, "ring FDS": 2, "FCU": 4}
    assert each(WRIST, "extent")["index FDS"] == each(WRIST, "extent")["small FDS"] == "intact"


def test_too_few_initials_name_nothing() -> None:
    words = "Zone V.\n FDS M+R   2 strands 3-0 Ethibond\n"
    assert not each(words, "strands").keys() & {"middle FDS", "ring FDS"}


@pytest.mark.parametrize("line", [" FDP       all ok\n", "FDP all intact\n", "FDPs all ok\n"])
def test_all_of_a_kind_on_a_line_of_its_own(line: str) -> None:
    extents = each(WRIST + line, "extent")
    assert [extents.get(f"{digit} FDP") for digit in ("index", "middle", "ring", "small")] == ["intact"] * 4


@pytest.mark.parametrize("line", ["FDP all cut\n", "FDP all but the index intact\n"])
def test_not_all_whole(line: str) -> None:
    assert each(WRIST + line, "extent").get("index FDP") != "intact"


def test_all_of_one_finger() -> None:
    words = "Ring finger, zone II. FDS cut.\nFDP all ok\n"
    assert not each(words, "extent").keys() & {"index FDP", "middle FDP", "small FDP"}


def test_tendons_that_run_on_tenodesis() -> None:
    words = WRIST + "Flexor tendons run OK on tenodesis, no gaps."
    for field, value in (("glide", "free"), ("test", "passive"), ("gap", "none")):
        assert each(words, field) == dict.fromkeys(("middle FDS", "ring FDS", "FCU"), value)
