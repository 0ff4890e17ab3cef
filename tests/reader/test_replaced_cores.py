"""A first core that was taken out or gave way: what was told of it is no finding once another is told."""

import pytest
from reader_sentences import told

CUT = "Ring FDP divided. "
CORE = ("strands", "stitch", "size", "hold")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "A 3-0 polyester locked cruciate went in first but its knot lay proud and it was cut out completely. "
            "The tendon was then repaired with a Bunnell stitch of 4-0 steel wire.",
            {"strands": 2, "stitch": "bunnell", "size": "4-0"},
        ),
        (
            "Core suture 3-0 FiberWire 4-strand placed, judged too thick, removed. Replaced by Kessler, 4-0 Ethilon.",
            {"strands": 2, "stitch": "kessler", "size": "4-0"},
        ),
        (
            "Four-strand Adelaide in 3-0 Ethibond. It gapped badly and I unpicked the lot. "
            "The final repair is a Bunnell in 3-0 Prolene.",
            {"strands": 2, "stitch": "bunnell", "size": "3-0"},
        ),
        (
            "The eight-strand repair was too bulky to enter A2 and was undone. "
            "A Tajima with 4-0 Prolene took its place.",
            {"strands": 2, "stitch": "tajima", "size": "4-0"},
        ),
        (
            "The 3-0 Ethibond core had nicked its own limb, was removed, and a fresh four-strand core of 4-0 PDS "
            "was inserted.",
            {"strands": 4, "size": "4-0"},
        ),
    ],
)
def test_a_core_taken_out_holds_no_more(note: str, expected: dict[str, object]) -> None:
    assert told(CUT + note, *CORE)["ring FDP"] == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "A 3-0 FiberWire repair with four strands unzipped when the finger was extended. "
            "The tendon was repaired again, this time with 4-0 Ethibond.",
            {"size": "4-0"},
        ),
        (
            "Six-strand M-Tang with looped 4-0 nylon; it failed on the first pull, so we began again with a Kessler "
            "of 3-0 Ethibond.",
            {"strands": 2, "stitch": "kessler", "size": "3-0"},
        ),
        (
            "My first repair (four strands, 3-0 Ticron, locked cruciate) pulled out of the distal stump. "
            "Repaired afresh with 4-0 Prolene as a modified Kessler.",
            {"strands": 2, "stitch": "modified kessler", "size": "4-0"},
        ),
    ],
)
def test_a_core_that_gave_way_and_was_done_again(note: str, expected: dict[str, object]) -> None:
    assert told(CUT + note, *CORE)["ring FDP"] == expected


@pytest.mark.parametrize(
    "note",
    [
        "The stay suture was removed. Running 6-0 Prolene.",
        "The drain was removed and the skin closed with 4-0 nylon.",
        "The epitendinous stitch pulled out and was redone with 6-0 Prolene.",
        "Some strands of lumbrical were removed.",
        "A3 was in bits and was cut out.",
        "The third suture was taken out again. Four strands of 3-0 Ethibond in all.",
    ],
)
def test_what_else_is_taken_out(note: str) -> None:
    facts = told(CUT + "Four-strand Adelaide in 3-0 Ethibond. " + note, *CORE)["ring FDP"]
    assert facts == {"strands": 4, "stitch": "adelaide", "size": "3-0", "hold": "locking"}


def test_the_same_stitch_with_another_thread() -> None:
    note = "Four-strand Adelaide in 3-0 Ethibond. The core was taken out and the same stitch run anew, with 4-0 PDS."
    assert told(CUT + note, *CORE)["ring FDP"] == {"strands": 4, "stitch": "adelaide", "size": "4-0", "hold": "locking"}


def test_of_two_fingers_only_the_one_whose_core_was_taken_out() -> None:
    note = (
        "Ring and middle FDP divided. Four-strand Adelaide in 3-0 Ethibond to both. In the ring the core cut out and "
        "was removed, and a Kessler of 4-0 Prolene was put in."
    )
    facts = told(note, "strands", "stitch")
    assert facts["ring FDP"] == {"strands": 2, "stitch": "kessler"}
    assert facts["middle FDP"] == {"strands": 4, "stitch": "adelaide"}


@pytest.mark.parametrize(
    ("note", "hold"),
    [
        ("The locking loops had straightened and were not made again.", None),
        ("Bites are simple: the locking loops of the first suture were lost with it.", None),
        ("Locking loops; one straightened and was passed again.", "locking"),
        ("Locking loops were set, and no purchase was lost.", "locking"),
    ],
)
def test_locks_that_are_there_no_more(note: str, hold: str | None) -> None:
    facts = told(CUT + "Four-strand repair in 3-0 Ethibond. " + note, "hold", "strands")["ring FDP"]
    assert facts.get("hold") == hold
