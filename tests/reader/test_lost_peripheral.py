"""A peripheral suture that was begun and not left in is none; one that was done again is one."""

import pytest
from reader_sentences import each

SEWN = "Ring FDP divided, four-strand repair with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "note",
    [
        "I started an epitendinous stitch in 6-0 nylon, saw that it bunched the tendon, and cut it all out.",
        "A running 6-0 epitendinous was half done when it cut through, so it was unpicked and not renewed.",
        "Circumferential suture: needle bent, no spare in the box, so none placed.",
        "The circumferential 6-0 Prolene tore through the edge and had to be left off.",
        "Epitendinous suture tried for three times, cheese-wired each time; given up.",
        "The peripheral stitch had come loose all the way round and was pulled out. We did not run another.",
        "A 6-0 running peripheral was completed but jammed under A2, so I took it out again and did without.",
        "Epitendinous 6-0 begun, frayed the edge, discarded.",
        "Running 6-0 peripheral. At the last look the peripheral had unravelled and was removed.",
        "A running 6-0 epitendinous. It gathered the edge, so I cut it all out.",
    ],
)
def test_begun_and_lost(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "note",
    [
        "The epitendinous suture broke, was removed and was run again with a new thread.",
        "The epitendinous tore out and was removed. A second one of 5-0 held.",
        "The epitendinous suture was unpicked and done again with 6-0 Prolene.",
        "A running 6-0 epitendinous was added, and the stay sutures were removed.",
        "Running 6-0 epitendinous. A2 caught on it and was vented; a frayed strip was cut out.",
        "The epitendinous came first; its first throw broke and was removed.",
        "After the epitendinous suture the needle was removed from the finger.",
    ],
)
def test_still_there(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "note",
    ["none was placed in the superficialis.", "for the FDS it was left off.", "left off around the FDS."],
)
def test_left_off_of_another_tendon(note: str) -> None:
    sewn = "Ring FDP and FDS divided, both repaired with four strands. Running 6-0 epitendinous for the FDP; "
    assert each(sewn + note, "peripheral")["ring FDP"] == "present"


@pytest.mark.parametrize(
    ("order", "left"),
    [
        ("Disregard the peripheral; it was on my plan, it was not done.", {"ring FDP": "absent"}),
        ("Please ignore the epitendinous, it was not placed.", {"ring FDP": "absent"}),
        ("Delete the running suture, none was placed.", {"ring FDP": "absent"}),
        ("Strike the epitendinous suture from this note.", {}),
        ("Disregard the peripheral nerve comment in the last line.", {"ring FDP": "present"}),
        ("The surgeon may disregard the epitendinous in children.", {"ring FDP": "present"}),
    ],
)
def test_an_order_to_strike_it_out(order: str, left: dict[str, str]) -> None:
    assert each(SEWN + "Running 6-0 epitendinous. " + order, "peripheral") == left


@pytest.mark.parametrize(
    "note",
    [
        "A running epitendinous suture was started, tore out half way round, and was removed altogether.",
        "Epitendinous attempted, abandoned: tissue like wet paper.",
        "The peripheral stitch had to come out again because it strangled the repair.",
        "The epitendinous suture had to be taken out, it jammed.",
    ],
)
def test_a_peripheral_suture_that_did_not_stay(note: str) -> None:
    sewn = "Right index FDP cut through, four strands of 4-0 Ethibond. "
    assert each(sewn + note, "peripheral") == {"index FDP": "absent"}


def test_a_peripheral_suture_that_stayed() -> None:
    note = "Right index FDP cut through, four strands of 4-0 Ethibond. The epitendinous suture was run half way round."
    assert each(note, "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    "note",
    [
        "The epitendinous 6-0 Prolene did not hold.",
        "A running 6-0 epitendinous suture was placed but would not hold.",
        "An epitendinous suture of 6-0 nylon never held and was given up.",
        "A peripheral 6-0 Prolene was tried. It did not hold.",
        "An epitendinous 6-0 Prolene was run. It tore out.",
        "An epitendinous 6-0 Prolene was run. It came undone and nothing more was done.",
    ],
)
def test_a_peripheral_suture_that_did_not_hold(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "note",
    [
        "An epitendinous 6-0 Prolene was run. It did not hold and was run again with 5-0.",
        "An epitendinous 6-0 Prolene was run. It tore out. A second one of 5-0 held.",
        "The stay suture did not hold; a running epitendinous 6-0 Prolene was added.",
        "An epitendinous 6-0 Prolene was added. The splint did not hold the wrist.",
    ],
)
def test_a_peripheral_suture_that_was_run_again(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "present"}
