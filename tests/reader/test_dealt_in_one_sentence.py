"""What one sentence deals out among several fingers, tendons and pulleys, and what it says of one of them alone."""

import pytest
from reader_sentences import each, fact_of, told

BOTH = (
    "Right long and small fingers. FDP and FDS of both were completely divided. FDP of both repaired with 3-0 nylon, "
    "four strands. FDS of the long finger repaired with 4-0 Ethibond. FDS of the small finger excised. "
)
TWO = "Right long and small fingers. FDP of both divided and repaired with 4-0 nylon. "


@pytest.mark.parametrize(
    "words",
    [
        "In the long finger the FDP and the FDS were both completely divided, as they were in the small finger.",
        "FDP and FDS of the long finger were completely cut, as in the small finger.",
    ],
)
def test_as_they_were_in_another_finger(words: str) -> None:
    cut = ("middle FDP", "middle FDS", "small FDP", "small FDS")
    assert each(words, "extent") == dict.fromkeys(cut, "complete")


def test_as_they_were_tells_nothing_where_something_else_follows() -> None:
    found = each("In the ring finger the FDP was completely divided, as we had feared in the small one too.", "extent")
    assert "small FDP" not in found


@pytest.mark.parametrize(
    "words",
    [
        "On traction applied to the FDP tendons proximal to A1, each finger flexed fully without gapping.",
        "On pulling the profundus tendons in the palm both fingers closed, no gap.",
    ],
)
def test_only_the_tendons_pulled_on_are_told_of(words: str) -> None:
    assert each(BOTH + words, "gap") == {"middle FDP": "none", "small FDP": "none"}


@pytest.mark.parametrize(
    "words",
    [
        "A gap of 1 mm opened, a stitch was added and the gap was no longer visible.",
        "A 2 mm gap was seen; after two more throws the gap had disappeared.",
        "1 mm gap, reinforced, gap gone.",
    ],
)
def test_a_gap_that_is_gone(words: str) -> None:
    assert told("FDP of the ring finger repaired. " + words, "gap", "gap_mm") == {"ring FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "words",
    [
        "The gap was not closed by the last stitch.",
        "A gap of 1 mm opened, which could not be closed.",
        "Gap of 2 mm seen. The wound was washed and it was closed.",
    ],
)
def test_a_gap_that_is_not_gone(words: str) -> None:
    assert each("FDP of the ring finger repaired. " + words, "gap") == {"ring FDP": "seen"}


@pytest.mark.parametrize(
    "words",
    [
        "A running epitendinous suture of 6-0 nylon in the long and a cross-stitch in the small finger.",
        "6-0 nylon was placed around the circumference as a running epitendinous suture in the long finger and as a "
        "cross-stitch in the small finger.",
    ],
)
def test_patterns_dealt_out_among_fingers(words: str) -> None:
    assert each(TWO + words, "peripheral_pattern") == {"middle FDP": "running", "small FDP": "cross-stitch"}


@pytest.mark.parametrize(
    ("words", "name", "shares"),
    [
        (
            "A2 was vented for its distal 40% in the long and for its distal 25% in the small finger.",
            "percent",
            (40, 25),
        ),
        ("A2 was opened 5 mm in the long and 8 mm in the small finger.", "mm", (5, 8)),
        ("The long A2 was opened in its proximal third and the small A2 in its distal half.", "percent", (33, 50)),
    ],
)
def test_shares_of_pulleys_dealt_out(words: str, name: str, shares: tuple[int, int]) -> None:
    found = each(TWO + words, f"extent_{name}", group="pulleys")
    assert found == {"middle A2": shares[0], "small A2": shares[1]}


@pytest.mark.parametrize(
    "words",
    [
        "The A3 pulleys could be preserved in neither digit and were released.",
        "Neither A3 could be kept and both were released.",
    ],
)
def test_a_pulley_kept_in_neither_finger(words: str) -> None:
    assert each(TWO + words, "finding", group="pulleys") == {"middle A3": "released", "small A3": "released"}


@pytest.mark.parametrize("words", ["A2 pulley: not reached.", "A4 had not been reached."])
def test_a_pulley_not_reached_is_not_said_to_be_intact(words: str) -> None:
    assert not each("FDP of the ring finger repaired. " + words, "finding", group="pulleys")


def test_a_pulley_behind_a_full_stop_is_of_the_finger_before() -> None:
    words = "pulleys: long A2 whole, A4 whole. small A2 whole, A3 cut by glass (not repaired)"
    found = {"middle A2": "intact", "middle A4": "intact", "small A2": "intact", "small A3": "injured"}
    assert each(TWO + words, "finding", group="pulleys") == found


@pytest.mark.parametrize(
    "words", ["The small A2 was repaired, that of the long finger was not.", "The small A2 was sewn."]
)
def test_a_short_name_before_a_pulley_is_its_finger(words: str) -> None:
    found = each(TWO + "The A2 pulleys were opened. " + words, "finding", group="pulleys")
    assert found == {"middle A2": "vented", "small A2": "repaired"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 was then repaired with 6-0 nylon interrupted sutures.",
        "A4 was then closed again with interrupted 6-0 Prolene.",
    ],
)
def test_a_pulley_sewn_is_no_peripheral_suture(words: str) -> None:
    assert not each("Middle finger. FDS was sutured with a 5-0 nylon Tsuge suture. " + words, "peripheral")


@pytest.mark.parametrize("words", ["trimmed FPL by 5 mm to reach healthy tendon", "cut FPL back to sound tendon"])
def test_healthy_tendon_is_what_it_is_made_of(words: str) -> None:
    note = f"FPL and half of the index FDS were cut. I {words} and repaired it with four strands of 3-0 Ticron."
    assert each(note, "strands") == {"thumb FPL": 4}


@pytest.mark.parametrize("date", ["2031/5/22", "2031-5-22", "2031.05.22"])
def test_dates_with_the_year_first(date: str) -> None:
    assert told(f"Date: {date}. FDP of the ring finger repaired.", "date", group="operation")[""] == {
        "date": "2031-05-22"
    }


@pytest.mark.parametrize(
    "words", ["by the Yoshizu #1 technique with 4-0 nylon", "with a Yoshizu #1 method of 4-0 nylon"]
)
def test_the_number_of_a_technique_is_no_size(words: str) -> None:
    fact = fact_of(f"FDP of the ring finger repaired {words}.", "ring FDP", "size")
    assert (fact.value, fact.rivals) == ("4-0", [])


TSUGE = (
    "The FDP of index and middle and the FDS of the middle were cut through. "
    "Both profundi were then united by a double Tsuge with looped 4-0 nylon"
)


@pytest.mark.parametrize(
    "words",
    [
        "; in the index this was supplemented by a running 5-0 Prolene suture, in the middle by interrupted stitches "
        "of the same.",
        ". The index was finished with a running 5-0 Prolene, the middle with interrupted stitches of the same.",
        ". A running 5-0 Prolene was placed round the index, interrupted stitches of the same round the middle.",
    ],
)
def test_stitches_of_the_same_thread(words: str) -> None:
    names = ("peripheral_pattern", "peripheral_size", "peripheral_material")
    same = {"peripheral_size": "5-0", "peripheral_material": "polypropylene"}
    assert told(TSUGE + words, *names) == {
        "index FDP": {"peripheral_pattern": "running", **same},
        "middle FDP": {"peripheral_pattern": "interrupted", **same},
    }


def test_another_thread_of_the_same_make() -> None:
    words = ". The index got a running 6-0 Prolene, the middle a cross-stitch of 5-0 Prolene of the same make."
    assert each(TSUGE + words, "peripheral_size") == {"index FDP": "6-0", "middle FDP": "5-0"}


@pytest.mark.parametrize(
    "words",
    [
        "The ring profundus needed no core and received only a circumferential running 5-0 Prolene suture.",
        "It needed no core and got a running epitendinous 5-0 Prolene.",
    ],
)
def test_a_denial_ends_where_something_was_received(words: str) -> None:
    note = "The ring FDP was 50% cut. " + words
    assert told(note, "peripheral", "peripheral_size", "size") == {
        "ring FDP": {"peripheral": "present", "peripheral_size": "5-0"}
    }


def test_a_denial_behind_what_was_received_holds() -> None:
    note = "The ring FDP was cut through. It received a cruciate of 3-0 Ethibond and got no epitendinous suture."
    assert each(note, "peripheral") == {"ring FDP": "absent"}
