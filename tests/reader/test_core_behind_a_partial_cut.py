"""A core told right behind a partly cut superficialis is of the deep flexor that was cut through."""

import pytest
from reader_sentences import told

HEAD = "Left little finger. FDP completely cut. "


@pytest.mark.parametrize("words", ["FDS partially cut.", "FDS nicked.", "The FDS was half cut.", "FDS cut 50%."])
@pytest.mark.parametrize("core", ["Core: 4 strands, 3-0 Prolene.", "4-strand core suture with 3-0 Prolene."])
def test_of_the_deep_flexor(words: str, core: str) -> None:
    facts = told(f"{HEAD}{words} {core}", "strands", "treatment")
    assert facts == {"small FDP": {"strands": 4, "treatment": "repaired"}}


def test_a_line_of_its_own() -> None:
    text = "Left little finger\nFDP: cut through. Core 4 strands, 3-0 Prolene.\nFDS: half cut. Core 2 strands, 4-0 PDS."
    assert told(text, "strands") == {"small FDP": {"strands": 4}, "small FDS": {"strands": 2}}


@pytest.mark.parametrize(
    "words",
    [
        "The common digital nerve to the ring-small web had a partial cut.",
        "The common digital nerve in the web between the ring and small fingers was cut.",
        "The common digital nerve of the fourth web (RF/SF) was cut.",
    ],
)
def test_fingers_that_name_a_web(words: str) -> None:
    head = "Right ring finger, zone III. Both flexors were transected. "
    facts = told(f"{head}{words} FDP was repaired with 3-0 Ethibond, two strands.", "strands", "treatment")
    assert facts == {"ring FDP": {"strands": 2, "treatment": "repaired"}}


def test_a_scanned_finger() -> None:
    facts = told("Knife injury, little fmger, zone II. FDP completely cut. 4-strand core, 3-0 Prolene.", "strands")
    assert facts == {"small FDP": {"strands": 4}}
