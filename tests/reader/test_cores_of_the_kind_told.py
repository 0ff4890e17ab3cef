"""Whose core it is: fingers dealt out under one kind of tendon, the deep flexor first, threads that are no core."""

import pytest
from reader_sentences import each, told

THREE = "Left hand, zone II. FDP of the middle, ring and little fingers completely divided, FDS of the ring cut too. "
ONE = "Right small finger, zone II. FDP cut through completely, FDS cut through completely. "


@pytest.mark.parametrize(
    "words",
    [
        "The three profundi were each repaired with an Adelaide suture, using 3-0 Ethibond in the middle and ring "
        "fingers and 4-0 Ethibond in the little finger.",
        "All three profundus tendons received an Adelaide core, 3-0 Ticron in the middle and ring fingers, 4-0 Ticron "
        "in the little finger.",
    ],
)
def test_fingers_dealt_out_are_of_the_kind_told(words: str) -> None:
    sewn = THREE + "The superficialis of the ring was repaired first. " + words
    assert each(sewn, "size") == {"middle FDP": "3-0", "ring FDP": "3-0", "small FDP": "4-0"}


def test_a_list_under_both_cores() -> None:
    note = (
        "Right hand, zone II. Index FDP and middle FDP completely divided. The ring FDP was cut halfway and trimmed. "
        "Both cores are cruciate, grasping not locked, knots buried."
    )
    facts = {"stitch": "cruciate", "hold": "grasping", "knot": "buried"}
    assert told(note, *facts) == {"index FDP": facts, "middle FDP": facts}


def test_the_deep_flexor_is_sewn_first() -> None:
    words = "I put in an Adelaide, four strands, 3-0 Ethibond. FDS was sewn with a 4-0 Ethibond figure-of-eight."
    assert each(ONE + words, "size") == {"small FDP": "3-0", "small FDS": "4-0"}


def test_it_is_the_tendon_named_again() -> None:
    words = (
        "I repaired the FDP with an Adelaide of 3-0 Ethibond. The FDS was flat. I gave it a modified Kessler of 4-0 "
    )
    assert each(f"{ONE}{words}Ethibond.", "stitch") == {"small FDP": "adelaide", "small FDS": "modified kessler"}


@pytest.mark.parametrize(
    "words",
    [
        "A loop of steel wire was prepared, and given up as too stiff; the core is of 3-0 Prolene, four strands.",
        "We opened 4-0 looped nylon at first but changed to 3-0 Prolene, four strands.",
        "I had the 2-0 looped steel out for it, back on the shelf. The core is of 3-0 Prolene, four strands.",
    ],
)
def test_threads_not_used(words: str) -> None:
    note = "Right small finger, zone II. FDP cut through completely. It was repaired. " + words
    assert told(note, "size", "material", "looped") == {"small FDP": {"size": "3-0", "material": "polypropylene"}}


@pytest.mark.parametrize(
    "words",
    ["Two 5-0 PDS stitches from tendon to volar plate.", "5-0 PDS x3, tendon to stub as reinforcement."],
)
def test_thin_stitches_beside_a_pull_out(words: str) -> None:
    note = (
        "Left ring finger, zone I. FDP avulsed from the bone. It was reinserted with a pull-out suture of 3-0 Prolene "
        f"over a button. {words}"
    )
    assert each(note, "size") == {"ring FDP": "3-0"}


def test_a_thinner_core_that_replaces_the_first() -> None:
    note = (
        "Left ring finger, zone I. FDP avulsed from the bone. It was reinserted with a pull-out suture of 2-0 Prolene "
        "over a button. This tore out and was replaced by a pull-out suture of 3-0 Prolene."
    )
    assert each(note, "size") == {"ring FDP": "3-0"}
