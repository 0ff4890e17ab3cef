"""The peripheral suture: told by a verb, in another word order, for one finger only, or left out."""

import pytest
from reader_sentences import each, told

HEAD = "Right ring finger, zone II. The FDP was completely divided. The FDS was intact.\n"
ONE = HEAD + "It was repaired with a four-strand cruciate of 3-0 Ethibond. {} The A2 pulley was vented 5 mm.\n"
TWO = (
    "Left hand, zone II. FDP and FDS of the index and ring fingers were completely divided.\n"
    "Both profundi were repaired with a four-strand cruciate of 3-0 Ethibond, both superficiales with a two-strand "
    "modified Kessler of 4-0 Ethibond. {}\n"
)
BOTH_DEEP = {"index FDP": "present", "ring FDP": "present"}
NO_SHALLOW = {"index FDS": "absent", "ring FDS": "absent"}


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("I ran a 6-0 Prolene around it.", "running"),
        ("We then ran a fine 6-0 nylon round the edge.", "running"),
        ("The repair was reinforced with a circumferential running 6-0 Prolene.", "running"),
        ("A continuing suture of 6-0 Prolene went over it.", "running"),
        ("A locking running suture of 6-0 Prolene was added.", "running locking"),
        ("Then 6-0 nylon around in a running locking manner.", "running locking"),
        ("Epi 6-0 nylon, continuous, no lock.", "running"),
        ("Epitendinous 6-0 Prolene: [x] running [ ] locking.", "running"),
        ("A cross-stitch of 6-0 PDS was then run round the edge.", "cross-stitch"),
        ("Crossing stitch of 6-0 Prolene all the way round.", "cross-stitch"),
        ("Epi: 6-0 Prolene x-stitch.", "cross-stitch"),
        ("A few single 6-0 nylon stitches around the edge.", "interrupted"),
        ("No room for a full epitendinous, so just four interrupted 6-0 nylons.", "interrupted"),
    ],
)
def test_pattern(sentence: str, value: str) -> None:
    facts = told(ONE.format(sentence), "peripheral", "peripheral_pattern")
    assert facts == {"ring FDP": {"peripheral": "present", "peripheral_pattern": value}}


@pytest.mark.parametrize("sentence", ["The tendon ran freely.", "I used 4-0 looped nylon, run as a Tsuge."])
def test_other_things_that_run(sentence: str) -> None:
    assert not told(ONE.format(sentence), "peripheral", "peripheral_pattern")


@pytest.mark.parametrize(
    "sentence",
    [
        "An epitendinous suture was not used.",
        "No running stitch was added.",
        "We decided against an epitendinous suture.",
        "An epitendinous suture was considered but not placed.",
        "There was nothing around it.",
        "It was left without surface sewing.",
    ],
)
def test_left_out(sentence: str) -> None:
    assert each(ONE.format(sentence), "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize("sentence", ["The peripheral nerves were not touched.", "No running water was at hand."])
def test_nothing_said_of_it(sentence: str) -> None:
    assert not told(ONE.format(sentence), "peripheral")


@pytest.mark.parametrize(
    "words",
    [
        "Both profundi received a running 6-0 Prolene epitendinous suture. None was used on the superficialis.",
        "Both FDPs: epi 6-0 Prolene running. FDS: no epi.",
        "A running 6-0 Prolene completed each profundus repair. The superficialis repairs received none.",
        "The profundi were completed with a running 6-0 Prolene; for the superficiales this was thought unnecessary "
        "and was omitted.",
        "Around the two profundi we ran a 6-0 Prolene. Not on the FDS, no room there.",
        "The two profundus repairs, not the superficialis, were finished with 6-0 Prolene running round the edge.",
    ],
)
def test_the_shallow_ones_have_none(words: str) -> None:
    assert each(TWO.format(words), "peripheral") == BOTH_DEEP | NO_SHALLOW


@pytest.mark.parametrize(
    "words",
    [
        "No epitendinous sutures.",
        "No epitendinous suture was placed in any of the four.",
        "No peripheral stitches.",
    ],
)
def test_none_of_all(words: str) -> None:
    assert each(TWO.format(words), "peripheral") == dict.fromkeys((*BOTH_DEEP, *NO_SHALLOW), "absent")


def test_locked_in_one_finger_only() -> None:
    words = "Both FDPs got a 6-0 Prolene running epi, locked in the index only."
    patterns = {"index FDP": "running locking", "ring FDP": "running"}
    assert each(TWO.format(words), "peripheral_pattern") == patterns


def test_the_finger_told_in_the_line_after() -> None:
    note = TWO.format("\nEpitendinous index FDP: 6-0 Prolene running.\nRing none, too slim to take it.")
    assert each(note, "peripheral") == {"index FDP": "present", "ring FDP": "absent"}


@pytest.mark.parametrize(
    "words", ["At this point the 3-0 thread was finished and", "The first packet was finished, so"]
)
def test_a_packet_that_is_finished_is_no_outer_suture(words: str) -> None:
    note = HEAD + f"{words} the ring FDP was repaired with 4-0 Ethibond, four strands."
    assert told(note, "size", "peripheral") == {"ring FDP": {"size": "4-0"}}
