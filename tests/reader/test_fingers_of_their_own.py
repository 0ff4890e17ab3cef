"""Fingers named behind tendons of several fingers, and so many tendons told by their number."""

import pytest
from reader_sentences import each, told

TWO = "Right hand, middle and ring fingers. "


@pytest.mark.parametrize(
    "text",
    [
        "Both profundi and the middle superficialis were completely divided.",
        "The two profundus tendons and the middle FDS were found completely cut.",
    ],
)
def test_a_finger_of_the_second_tendon_alone(text: str) -> None:
    found = each(TWO + text, "extent")
    assert found == {"middle FDP": "complete", "ring FDP": "complete", "middle FDS": "complete"}


@pytest.mark.parametrize(
    "text",
    [
        "Left thumb seen. FDP and FDS x2 (long, ring) 100%.",
        "Left thumb seen. Both FDP and FDS (long and ring) fully cut.",
    ],
)
def test_fingers_in_brackets_behind(text: str) -> None:
    found = each(text, "extent")
    assert found == {f"{d} {t}": "complete" for d in ("middle", "ring") for t in ("FDP", "FDS")}


@pytest.mark.parametrize(
    "words", ["All three tendons with 3-0 Prolene.", "The three tendons were sewn with 3-0 Prolene."]
)
def test_so_many_tendons_as_were_cut(words: str) -> None:
    text = (
        "Repair of FDS x 2 and FDP x 1. FDS ring cut right through. FDS index cut right through. FDP index three"
        " quarters cut. FDP ring and little uninjured. " + words
    )
    assert set(told(text, "size")) == {"ring FDS", "index FDS", "index FDP"}


def test_when_it_was_hurt_is_no_earlier_operation() -> None:
    text = (
        "Diagnosis: division of flexor tendons, left middle and ring fingers, by a bottle the previous evening.\n"
        "Operation: repair of both profundus tendons; repair of the radial digital nerve of the ring finger.\n\n"
        "Each profundus was joined with four strands of 3-0 Ticron."
    )
    assert each(text, "strands") == {"middle FDP": 4, "ring FDP": 4}


def test_what_was_sewn_the_day_before_is_not_todays() -> None:
    text = "Left ring finger. FDP repaired elsewhere the previous day with two strands. FDP sewn anew, four strands."
    assert each(text, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("FDS 20 % on the ulnar slip, the radial slip was normal.", ("intact", "partial")),
        ("The ulnar slip was cut by 30%, its fellow was whole.", ("intact", "partial")),
        ("FDS: about 1/3 of ulnar slip, radial slip fine.", ("intact", "partial")),
    ],
)
def test_a_slip_and_its_fellow(text: str, expected: tuple[str, str]) -> None:
    found = each("Left index finger, zone II. " + text, "extent")
    assert (found["index FDS radial"], found["index FDS ulnar"]) == expected


@pytest.mark.parametrize("words", ["was normal", "was in perfect shape", "checked, good", "never touched", "all there"])
def test_a_whole_superficialis(words: str) -> None:
    assert each(f"Left index finger. FDP fully cut. The FDS {words}.", "extent")["index FDS"] == "intact"


@pytest.mark.parametrize(
    "text", ["Ring finger. Both tendons gone in zone II.", "Ring finger. Both flexors were gone in this finger."]
)
def test_gone(text: str) -> None:
    assert each(text, "extent") == {"ring FDP": "complete", "ring FDS": "complete"}


def test_the_zone_of_a_wrist_is_that_of_all() -> None:
    text = "Diagnosis: zone V laceration of FCU.\nFCU, FDS ring and FDP small completely divided."
    assert each(text, "zone") == {"FCU": "V", "ring FDS": "V", "small FDP": "V"}


def test_the_zone_of_a_finger_is_its_own() -> None:
    text = "FDP of the ring finger completely cut in zone II. FDP of the small finger completely cut."
    assert each(text, "zone") == {"ring FDP": "II"}


@pytest.mark.parametrize(
    "text",
    [
        "The FDS was brought together with a modified Kessler of 4-0 Ethibond and nothing more.",
        "FDS: horizontal mattress, 4-0 Prolene, nothing around.",
        "FDS sewn with a Kessler of 4-0 PDS, no fine suture.",
    ],
)
def test_nothing_more_than_the_core(text: str) -> None:
    note = "Left ring finger. FDS completely cut. " + text
    assert each(note, "peripheral") == {"ring FDS": "absent"}


def test_nothing_more_than_a_smoothing() -> None:
    note = "Left ring finger. FDS cut by 20 %, smoothed, nothing more. FDP sewn with 3-0 Prolene and a running 6-0."
    assert each(note, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "The FDS was shredded, and we elected to excise it.",
        "Ends debrided, FDS excised to make room.",
        "The superficialis I threw out.",
    ],
)
def test_taken_out(text: str) -> None:
    note = "Left ring finger. FDP and FDS completely cut. " + text
    assert each(note, "treatment")["ring FDS"] == "excised"


def test_ends_cut_back_are_no_tendon_taken_out() -> None:
    note = "Left ring finger. FDP and FDS completely cut. FDS ends excised 2 mm."
    assert each(note, "treatment").get("ring FDS") != "excised"


def test_the_cut_slip_is_the_one_told_of() -> None:
    note = "Left index FDP fully cut. The radial slip of FDS was severed. The cut slip was sewn with a 4-0 mattress."
    assert each(note, "size") == {"index FDS radial": "4-0"}
