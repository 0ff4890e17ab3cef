"""Dictations without stops: whose a finger's clause is, pulleys of a finger, guesses and shares; ringed answers."""

import pytest
from reader_sentences import each, told

OPENING = (
    "we opened both fingers with brunner incisions in the index finger the F D P was cut completely and the F D S was "
    "about thirty percent cut on the radial side and I left that one alone not repaired in the long finger both "
    "tendons were completely lacerated"
)


def test_a_finger_with_both_tendons_opens_a_statement() -> None:
    assert told(OPENING, "extent", "treatment") == {
        "index FDP": {"extent": "complete"},
        "index FDS": {"extent": "partial", "treatment": "left"},
        "middle FDP": {"extent": "complete"},
        "middle FDS": {"extent": "complete"},
    }


def test_a_finger_that_closes_a_statement_opens_none() -> None:
    note = (
        "The A4 pulley was intact in the long finger and was vented completely in the small finger to accommodate the "
        "repair."
    )
    assert each(note, "finding", group="pulleys") == {"middle A4": "intact", "small A4": "released"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("a two long finger vented distal four millimeters", {"middle A2": "vented"}),
        ("a four ring finger intact", {"ring A4": "intact"}),
        ("a two finger splint was put on", {}),
    ],
)
def test_a_pulley_spelt_out_before_its_finger(words: str, expected: dict[str, object]) -> None:
    assert each(f"long finger and ring finger FDP repaired. pulleys {words}", "finding", group="pulleys") == expected


@pytest.mark.parametrize("share", ["maybe half", "perhaps 50 percent"])
def test_about_so_much_doubts_no_repair(share: str) -> None:
    note = f"Index finger. The FDS was cut {share} and repaired with a horizontal mattress of 4-0 PDS."
    assert each(note, "stitch") == {"index FDS": "horizontal mattress"}


def test_a_number_of_strands_may_still_be_doubted() -> None:
    assert told("Index finger FDP cut. Perhaps four strands of 3-0 Ethibond.", "strands") == {}


@pytest.mark.parametrize(
    ("line", "side"),
    [
        ("Side: R / (L) circled", "left"),
        ("Side: (R) / L", "right"),
        ("Hand: (Right) / Left, circled", "right"),
        ("Side: right / (left)", "left"),
    ],
)
def test_the_ringed_answer_of_two_is_meant(line: str, side: str) -> None:
    assert each(f"{line}\nFinger: ring\nFDP: cut", "side", group="operation") == {"": side}


def test_a_ringed_no_denies_the_gap() -> None:
    assert each("Ring finger FDP repaired. Gap: Y / (N)", "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    ("line", "gap"),
    [
        ("Gap at end of passive range .. [x] no  [ ] yes ___ mm", "none"),
        ("Gap at end of passive range: none", "none"),
        ("Gap in passive extension - nil", "none"),
        ("Gap on passive stretch .. [ ] no [x] yes", "seen"),
        ("Gap under traction: seen", "seen"),
    ],
)
def test_where_a_gap_was_sought_stands_before_its_answer(line: str, gap: str) -> None:
    assert each(f"Middle finger FDP repaired.\n{line}", "gap") == {"middle FDP": gap}


@pytest.mark.parametrize("denied", ["no slip had to be excised", "no part of the FDS needed to be resected"])
def test_what_did_not_have_to_be_done_was_not_done(denied: str) -> None:
    assert told(f"Ring finger. FDS was lifted with a hook; {denied}.", "treatment") == {}


def test_no_room_is_a_reason_and_no_denial() -> None:
    note = "Ring finger. There was no room under A2 and the FDS had to be excised."
    assert each(note, "treatment") == {"ring FDS": "excised"}


@pytest.mark.parametrize("lines", ["Nerve R ... intact\nNerve U ... cut", "Dig nerve R: intact. Dig nerve U: cut"])
def test_nerves_lettered_by_their_side(lines: str) -> None:
    assert each(f"Middle finger.\n{lines}", "extent", group="injuries") == {
        "middle digital nerve radial": "intact",
        "middle digital nerve ulnar": "complete",
    }


def test_a_letter_before_a_finger_is_its_hand() -> None:
    assert told("Digital nerve R ring finger repaired.", group="injuries") == {}
