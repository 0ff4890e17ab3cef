"""How much tendon the core takes, in the short forms of lists and of dictation, and lengths that are none of it."""

import pytest
from reader_sentences import told

HEAD = "Right ring finger, zone II. The FDP was completely divided. The FDS was intact.\n"
LISTED = HEAD + "Core: 3-0 Ethibond, four-strand cruciate, {}, knots buried. A2 vented 5 mm. Skin 5-0 nylon.\n"
SAID = HEAD + "It was repaired with a four-strand cruciate of 3-0 Ethibond. {} The A2 pulley was vented 5 mm.\n"


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("10 mm a side", (10, 10)),
        ("9 mm ea. side", (9, 9)),
        ("8 mm each end", (8, 8)),
        ("12 mm either end", (12, 12)),
        ("grip 10 mm", (10, 10)),
        ("10 mm from cut ends", (10, 10)),
        ("lO mm bite", (10, 10)),
        ("7-lO mm each side", (7, 10)),
        ("10 mm one side, 8 the other", (8, 10)),
        ("8 mm of bite in the near end and all of 10 mm in the far one", (8, 10)),
    ],
)
def test_purchase_in_a_list(words: str, value: tuple[int, int]) -> None:
    assert told(LISTED.format(words), "purchase_mm") == {"ring FDP": {"purchase_mm": value}}


@pytest.mark.parametrize(
    ("sentence", "value"),
    [
        ("About 10 mm of each end was captured.", (10, 10)),
        ("We held 10 mm of the near stump and 8 mm of the far one.", (8, 10)),
        ("It had 8 mm of purchase on one side and 10 on the other.", (8, 10)),
        ("The thread was woven into the tendon for a distance of 9 mm.", (9, 9)),
        ("It was run up the stump in Krackow fashion over 15 mm.", (15, 15)),
    ],
)
def test_purchase_in_a_sentence(sentence: str, value: tuple[int, int]) -> None:
    assert told(SAID.format(sentence), "purchase_mm") == {"ring FDP": {"purchase_mm": value}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Excursion was 10 mm each way.",
        "10 mm of vincula was spared on each side.",
        "The tendon was mobilised for 10 mm on both sides.",
        "The scar was freed over 10 mm on each side.",
        "I took off 4 mm proximally and 3 mm distally.",
        "I took 5 mm from the proximal end and 6 mm from the distal one.",
        "The skin suture was run for 10 mm.",
    ],
)
def test_lengths_that_are_no_purchase(sentence: str) -> None:
    assert not told(SAID.format(sentence), "purchase_mm")


def test_two_lengths_dealt_out_with_one_unit() -> None:
    note = (
        "Left hand, zone II. FDP of the index and ring fingers completely divided. Both profundi were repaired with a "
        "four-strand cruciate of 3-0 Ethibond, with a purchase of 10 and 8 mm respectively."
    )
    assert told(note, "purchase_mm") == {
        "index FDP": {"purchase_mm": (10, 10)},
        "ring FDP": {"purchase_mm": (8, 8)},
    }


def test_a_length_with_an_unread_exception_is_nobodys() -> None:
    note = HEAD + "FDP core: 4 str cruciate, 4-0 Prolene. All 10 mm from cut edge bar L 7.\n"
    assert not told(note, "purchase_mm")


@pytest.mark.parametrize("words", ["locking grips 2 mm wide", "crosses of 2 mm", "cross-locks 2 mm"])
def test_grips_that_are_locks(words: str) -> None:
    assert told(LISTED.format(words), "lock_mm", "purchase_mm") == {"ring FDP": {"lock_mm": (2, 2)}}


@pytest.mark.parametrize(
    "words", ["mattress (horizontal)", "mattress, horizontal", "a mattress, placed flat", "mattress - horizontal"]
)
def test_a_mattress_named_the_other_way_round(words: str) -> None:
    note = HEAD.replace("The FDS was intact", "The FDS was cut") + f"FDS: 4-0 Ethibond, one {words}."
    assert told(note, "stitch") == {"ring FDS": {"stitch": "horizontal mattress"}}


@pytest.mark.parametrize("sentence", ["Skin: 5-0 nylon, vertical mattress.", "He lay on a gel mattress."])
def test_a_mattress_of_no_tendon(sentence: str) -> None:
    assert told(SAID.format(sentence), "stitch") == {"ring FDP": {"stitch": "cruciate"}}
