"""Tendons that got no peripheral suture, told by finger, by tendon or by the room there was."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "There was no room for a circumferential suture.",
            {"ring FDP": "absent"},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "No space in the sheath for an epitendinous stitch.",
            {"ring FDP": "absent"},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "There was no room for the needle at first, but then a running 6-0 epitendinous suture was placed.",
            {"ring FDP": "present"},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "No attempt at an epitendinous suture.",
            {"ring FDP": "absent"},
        ),
    ],
)
def test_no_room_for_one(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral"] for entry, facts in told(note, "peripheral").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small FDP completely divided, each repaired with a four-strand cruciate of 3-0 Ethibond. \n"
            "\n"
            "Epitendinous suture:\n"
            "Ring: 6-0 Prolene, running. Small: left out.\n",
            {"ring FDP": "present", "small FDP": "absent"},
        ),
        (
            "Ring and small FDP completely divided, each repaired with a four-strand cruciate of 3-0 Ethibond. \n"
            "\n"
            "PERIPHERAL SUTURE\n"
            "Ring finger: none. Small finger: running 6-0 nylon.\n",
            {"ring FDP": "absent", "small FDP": "present"},
        ),
    ],
)
def test_a_finger_without_one(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral"] for entry, facts in told(note, "peripheral").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP and FDS completely divided, FDP repaired with a four-strand cruciate of "
            "3-0 Ethibond, FDS repaired with a 4-0 Prolene Kessler. A running 6-0 Prolene epitendinous "
            "suture was added to the profundus; none was used on the superficialis.",
            {"ring FDP": "present", "ring FDS": "absent"},
        ),
        (
            "Left ring finger. FDP and FDS completely divided, FDP repaired with a four-strand cruciate of "
            "3-0 Ethibond, FDS repaired with a 4-0 Prolene Kessler. The profundus had a 5-0 epitendinous "
            "suture. The superficialis repair did not get one.",
            {"ring FDP": "present", "ring FDS": "absent"},
        ),
        (
            "Left ring finger. FDP and FDS completely divided, FDP repaired with a four-strand cruciate of "
            "3-0 Ethibond, FDS repaired with a 4-0 Prolene Kessler. A circumferential 6-0 nylon suture went "
            "around the profundus, none around the superficialis.",
            {"ring FDP": "present", "ring FDS": "absent"},
        ),
    ],
)
def test_a_tendon_without_one(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral"] for entry, facts in told(note, "peripheral").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small FDP completely divided, each repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Each of them also received a running 6-0 Prolene epitendinous suture.",
            {"ring FDP": "present", "small FDP": "present"},
        ),
        (
            "Ring and small FDP completely divided, each repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Both then got a circumferential 6-0 nylon.",
            {"ring FDP": "present", "small FDP": "present"},
        ),
        (
            "Ring and small FDP completely divided, each repaired with a four-strand cruciate of 3-0 "
            "Ethibond. Neither was given an epitendinous suture.",
            {"ring FDP": "absent", "small FDP": "absent"},
        ),
    ],
)
def test_everybody_got_one(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral"] for entry, facts in told(note, "peripheral").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring and small fingers. FDP and FDS of both completely divided. FDP ring and small: four-strand "
            "cruciate of 3-0 Ethibond, running 6-0 Prolene epitendinous suture. FDS ring and small: 4-0 "
            "Prolene Kessler. Neither was given an epitendinous suture.",
            {"ring FDP": "present", "small FDP": "present", "ring FDS": "absent", "small FDS": "absent"},
        ),
        (
            "Index and middle fingers. FDP and FDS of both completely divided. FDP index and middle: "
            "six-strand Savage of 4-0 Prolene with a running 6-0 epitendinous suture. FDS index and middle: "
            "4-0 nylon Kessler. Neither received a circumferential suture.",
            {"index FDP": "present", "middle FDP": "present", "index FDS": "absent", "middle FDS": "absent"},
        ),
    ],
)
def test_neither_of_the_pair_just_told(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral"] for entry, facts in told(note, "peripheral").items()}
    assert found == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "An outer circle of 6-0 Prolene was run around the join.",
            {"ring FDP": "6-0"},
        ),
        (
            "Left ring finger. FDP completely divided, repaired with a four-strand cruciate of 3-0 Ethibond. "
            "Finished with an outer ring of 5-0 nylon.",
            {"ring FDP": "5-0"},
        ),
    ],
)
def test_an_outer_circle(note: str, expected: dict[str, object]) -> None:
    found = {entry: facts["peripheral_size"] for entry, facts in told(note, "peripheral_size").items()}
    assert found == expected


@pytest.mark.parametrize(
    "words",
    [
        "None was placed in the two FDS repairs.",
        "None was added to the superficialis tendons.",
        "Nothing around the FDSs.",
    ],
)
def test_none_is_said_of_the_suture_just_told(words: str) -> None:
    note = (
        "Middle and ring fingers. FDP and FDS of both completely divided and repaired with 3-0 PDS. Each of the two "
        "FDP repairs was given a running 5-0 Prolene epitendinous suture. "
    ) + words
    found = each(note, "peripheral")
    assert found == {"middle FDP": "present", "ring FDP": "present", "middle FDS": "absent", "ring FDS": "absent"}


@pytest.mark.parametrize(
    "words",
    [
        "the other three repairs were deliberately left without one.",
        "the others were left without one.",
    ],
)
def test_the_others_were_left_without_one(words: str) -> None:
    note = (
        "Wrist. FCR, FPL and the superficialis of the index and middle fingers completely divided and repaired with a "
        "four-strand cruciate of 3-0 PDS. A running epitendinous suture of 5-0 Prolene was added to the FPL; "
    ) + words
    found = each(note, "peripheral")
    assert found == {"thumb FPL": "present", "index FDS": "absent", "middle FDS": "absent", "FCR": "absent"}


@pytest.mark.parametrize(
    "words",
    [
        "no gap; the peripheral suture was omitted.",
        "no gap and the peripheral suture was omitted.",
        "it ran freely, epitendinous lacking.",
        "no gap, epitendinous suture left out.",
    ],
)
def test_a_result_before_it_does_not_hide_that_it_was_left_out(words: str) -> None:
    assert each(f"Index FDP completely divided, sutured with 3-0 nylon; {words}", "peripheral") == {
        "index FDP": "absent"
    }


def test_no_gap_beside_the_suture_denies_the_gap_alone() -> None:
    note = "Index FDP sutured with 3-0 nylon; no gap before or after the epitendinous suture."
    assert each(note, "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    "words",
    [
        "plus running 5/0 Prolene for the profundus only; the superficialis had no epitendinous stitch.",
        "plus a running 5-0 Prolene for the FDP only, FDS no epitendinous stitch.",
    ],
)
def test_the_pattern_of_the_one_that_has_a_rim(words: str) -> None:
    note = "Index finger, FDP and FDS divided, both repaired with 3-0 PDS, " + words
    shown = told(note, "peripheral", "peripheral_pattern")
    assert shown["index FDP"] == {"peripheral": "present", "peripheral_pattern": "running"}
    assert shown["index FDS"] == {"peripheral": "absent"}


@pytest.mark.parametrize(
    "text",
    [
        "The epitendinous suture was a touch too far for this tendon, and there is none.",
        "A peripheral suture, on the other hand, stands on the sheet in clear ink: none.",
        "The circumferential suture: there was no time for it.",
    ],
)
def test_a_suture_named_and_then_said_not_to_be_there(text: str) -> None:
    assert each(f"Index FDP sutured with 3-0 nylon. {text}", "peripheral") == {"index FDP": "absent"}


@pytest.mark.parametrize(
    "text",
    [
        "A further epitendinous suture was placed, and on repeated motion there was none.",
        "A peripheral suture closed the gap; there was none left.",
    ],
)
def test_none_that_is_said_of_a_gap(text: str) -> None:
    assert each(f"Index FDP sutured with 3-0 nylon; it gapped 1 mm. {text}", "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "The circumferential suture is renounced upon.",
        "The epitendinous stitch was waived.",
        "We abstained from a peripheral suture.",
        "We renounced on an epitendinous suture for reasons of time.",
        "An epitendinous suture was desisted from.",
    ],
)
def test_one_that_was_renounced(text: str) -> None:
    note = f"Left ring finger. FDP completely divided, repaired with a cruciate of 3-0 Ethibond. {text}"
    assert each(note, "peripheral") == {"ring FDP": "absent"}
    other = note.replace(text, "A running 6-0 epitendinous suture was placed; a drain was renounced.")
    assert each(other, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "text", ["None on any superficialis.", "None for any FDS.", "None on either superficialis.", "None around the FDS."]
)
def test_none_on_any_of_the_other_kind(text: str) -> None:
    note = (
        "Left index and ring. FDP and FDS of both cut through, all repaired. "
        f"Peripheral suture on both profundi, 5-0 Prolene, running. {text}"
    )
    assert each(note, "peripheral") == {
        "index FDP": "present",
        "index FDS": "absent",
        "ring FDP": "present",
        "ring FDS": "absent",
    }
