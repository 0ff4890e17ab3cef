"""Dictation without full stops: each statement keeps to its own subject."""

import pytest
from reader_sentences import each, told

RUNS = [
    (
        "right hand under block tourniquet up bruner incisions ring finger opened the fdp was completely "
        "divided in zone two and the fds was intact the fdp was repaired "
        "with four oh ethibond four strand repair and a running six oh prolene epitendinous suture the radial "
        "digital nerve was repaired with nine oh nylon skin closed with "
        "five oh nylon tourniquet down fingers pink dressing and dorsal splint applied",
        {
            "ring FDP": {
                "extent": "complete",
                "treatment": "repaired",
                "size": "4-0",
                "strands": 4,
                "peripheral_size": "6-0",
            },
            "ring FDS": {"extent": "intact"},
        },
    ),
    (
        "left thumb explored through the old wound extended proximally the fpl was found cut clean through at "
        "the level of the oblique pulley the tendon was retrieved from the "
        "carpal tunnel and repaired with three oh prolene six strands no epitendinous suture was placed the "
        "ulnar digital nerve was intact skin closed with four oh vicryl splint applied",
        {"thumb FPL": {"extent": "complete", "treatment": "repaired", "size": "3-0", "strands": 6}},
    ),
    (
        "this is the index finger the profundus was divided the superficialis was half cut the profundus was "
        "repaired with a two strand kessler of three oh nylon the superficialis "
        "was trimmed and left the skin was closed with five oh nylon and a splint was put on and he went back "
        "to the ward in good order",
        {
            "index FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0", "strands": 2},
            "index FDS": {"extent": "partial", "extent_percent": 50, "treatment": "trimmed"},
        },
    ),
]


@pytest.mark.parametrize(("note", "expected"), RUNS)
def test_a_note_in_one_breath(note: str, expected: dict[str, dict[str, object]]) -> None:
    assert told(note, "extent", "extent_percent", "treatment", "size", "strands", "peripheral_size") == expected


@pytest.mark.parametrize("note", [note for note, _ in RUNS])
def test_no_thread_of_skin_or_nerve_becomes_the_core(note: str) -> None:
    assert all(facts.get("size") in (None, "4-0", "3-0") for facts in told(note, "size").values())
    assert not [entry for entry, facts in told(note, "size").items() if entry.endswith("FDS")]


@pytest.mark.parametrize(
    ("run", "stops"),
    [
        (
            "small finger fdp divided and repaired with three oh nylon four strand core then the ulnar nerve of "
            "the finger was repaired with nine oh nylon then the skin was closed "
            "with five oh prolene and the tourniquet was let down at fifty minutes and the finger was pink",
            "Small finger FDP divided and repaired with 3-0 nylon, four-strand core. Then the ulnar nerve of "
            "the finger was repaired with 9-0 nylon. Skin closed with 5-0 Prolene.",
        ),
        (
            "middle finger fdp cut and repaired with four oh prolene two strand core and the fds was found "
            "intact both slips and the a two pulley was intact and the a four was "
            "intact and the skin was closed with five oh nylon and a splint was made",
            "Middle finger FDP cut and repaired with 4-0 Prolene, two-strand core. The FDS was found intact, "
            "both slips. A2 intact. A4 intact. Skin closed with 5-0 nylon.",
        ),
    ],
)
def test_full_stops_make_no_difference(run: str, stops: str) -> None:
    fields = ("extent", "treatment", "size", "material", "strands")
    assert told(run, *fields) == told(stops, *fields) != {}


@pytest.mark.parametrize(
    "clause",
    [
        "whereas the partially cut FDP of the ring finger was repaired by modified Kessler with two strands of Prolene",
        "while the partially divided FDP of the ring finger was repaired with two strands of 4-0 Prolene",
    ],
)
def test_what_qualifies_a_tendon_stays_with_it(clause: str) -> None:
    note = (
        "The FDP of the index and the FDP of the middle finger were both repaired by double modified Kessler technique "
        "with Prolene 4-0 giving four strands across each repair " + clause + "."
    )
    assert each(note, "extent") == {"ring FDP": "partial"}


@pytest.mark.parametrize("joint", ["while", "whereas"])
def test_a_tendon_behind_while_is_of_the_finger_before(joint: str) -> None:
    note = (
        f"In the index finger the profundus was completely divided over the proximal phalanx {joint} the superficialis "
        "was nicked through about a quarter of its width; in the long finger both the profundus and the superficialis "
        "were completely divided."
    )
    assert each(note, "extent") == {
        "index FDP": "complete",
        "index FDS": "partial",
        "middle FDP": "complete",
        "middle FDS": "complete",
    }


def test_a_list_of_cuts_without_a_stop() -> None:
    run = (
        "panga to the right wrist last night zone four so what i found superficialis to index and middle both cut "
        "through superficialis to little intact profundus to index cut through profundus to middle cut through median "
        "nerve intact all tendon ends were clean cut the hand sits well"
    )
    assert each(run, "extent") == {
        "index FDS": "complete",
        "middle FDS": "complete",
        "small FDS": "intact",
        "index FDP": "complete",
        "middle FDP": "complete",
    }
    assert set(each(run, "ends")) == {"index FDS", "middle FDS", "index FDP", "middle FDP"}


@pytest.mark.parametrize(
    ("run", "ulnar"),
    [
        (
            "ring finger opened in zigzag the FDP was intact and the FDS had about a twenty percent cut on the ulnar "
            "slip I did not repair that radial slip was fine so closed that one and the skin was closed with nylon",
            "left",
        ),
        (
            "index finger explored through the wound the profundus was whole the superficialis was cut halfway "
            "through on its ulnar slip and I sutured it with four oh pds and the radial slip was intact skin closed",
            "repaired",
        ),
    ],
)
def test_a_slip_that_opens_its_own_statement(run: str, ulnar: str) -> None:
    treated = each(run, "treatment")
    assert [value for name, value in treated.items() if name.endswith("ulnar")] in ([ulnar], [])
    assert not [name for name in treated if name.endswith("radial")]


@pytest.mark.parametrize(
    ("run", "a2"),
    [
        (
            "ring finger fdp repaired four strands with four oh ticron a three was in bits so I took it out a two was "
            "preserved a four we had to open up about half of it distal half to let the repair go through",
            "intact",
        ),
        (
            "ring finger fdp repaired four strands with four oh ticron the a three was shredded so I took it out and "
            "the a two I snipped the last five millimetres of it a four we had to open up the distal half of it",
            "vented",
        ),
    ],
)
def test_pulleys_spelt_out_begin_their_own_statements(run: str, a2: str) -> None:
    assert each(run, "finding", "pulleys") == {"ring A3": "excised", "ring A2": a2, "ring A4": "vented"}


def test_what_is_told_of_stands_before_who_did_it() -> None:
    run = (
        "wrist laceration on glass zone five the FCR was cut all the way and palmaris all the way FCR two zero prolene "
        "figure of eight and palmaris I cut it out it was in the way of the nerve median nerve with eight zero nylon"
    )
    assert each(run, "treatment") == {"FCR": "repaired", "PL": "excised"}


@pytest.mark.parametrize(
    "words",
    [
        "the profundus is off with a clean cut and completely through the superficial is is still in one piece",
        "the profundus came into view at the crease and was cut right through the sub limus was quite untouched",
    ],
)
def test_a_cut_through_ends_before_the_next_tendon(words: str) -> None:
    rest = " I can see it pulling the A four police is fine we have kept it and went on to the nerve which was normal"
    assert each("small finger " + words + rest, "extent") == {"small FDP": "complete", "small FDS": "intact"}


def test_a_knife_through_both_is_one_statement() -> None:
    note = (
        "small finger the knife went completely through the profundus and the superficialis at this level and we "
        "could see both of the ends lying in the wound with a lot of clot around them"
    )
    assert each(note, "extent") == {"small FDP": "complete", "small FDS": "complete"}
