"""'The saw had cut the profundus and left the superficialis alone': whole, and never the tendon that was then sewn."""

import pytest
from reader_sentences import each, told

HEAD = "Right ring finger. "


@pytest.mark.parametrize(
    "found",
    [
        "The bite had left the superficialis alone.",
        "The tooth had torn the profundus and missed the superficialis.",
        "The saw had cut the profundus and left the superficialis intact.",
        "The knife had nicked the profundus and left the FDS untouched.",
    ],
)
def test_left_whole_by_the_wound(found: str) -> None:
    assert each(HEAD + found, "extent").get("ring FDS") == "intact"
    assert each(HEAD + found, "extent").get("ring FDP") != "intact"
    assert each(HEAD + found, "treatment") == {}
    assert told(HEAD + found, "side", group="operation") == {"": {"side": "right"}}


@pytest.mark.parametrize(
    "found", ["I left the superficialis alone.", "The FDP was cut by the glass and I left the superficialis alone."]
)
def test_left_alone_by_the_surgeon(found: str) -> None:
    assert each(HEAD + found, "extent").get("ring FDS") is None
    assert each(HEAD + found, "treatment") == {"ring FDS": "left"}


@pytest.mark.parametrize(
    "found",
    [
        "The bite had taken 60 percent of the profundus and left the superficialis alone; a two-strand Kessler of 4-0"
        " was used.",
        "The glass had taken half of the profundus and spared the superficialis; a two-strand Kessler of 4-0 was used.",
    ],
)
def test_the_core_is_of_the_one_that_was_cut(found: str) -> None:
    assert each(HEAD + found, "size") == {"ring FDP": "4-0"}
