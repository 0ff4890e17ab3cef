"""Tendons told intact as the rest: 'those to the index', 'the other two', 'every profundus', 'to all four fingers'."""

import pytest
from reader_sentences import each

FDP = ["index FDP", "middle FDP", "ring FDP", "small FDP"]


@pytest.mark.parametrize(
    "note",
    [
        "The superficialis tendons to the middle and ring fingers were divided. Those to the index and small were "
        "unharmed.",
        "The FDS of the middle and ring fingers were cut through, those of the index and small fingers intact.",
    ],
)
def test_those_of_other_fingers(note: str) -> None:
    assert each(note, "extent") == {
        "index FDS": "intact",
        "middle FDS": "complete",
        "ring FDS": "complete",
        "small FDS": "intact",
    }


@pytest.mark.parametrize(
    ("note", "whole"),
    [
        ("Zone V. The FDS of the index was divided. Every profundus tendon was found whole. FCR was divided.", FDP),
        ("Zone V. The FCR was cut through. The profundus tendons to all four fingers, the superficialis to the index "
         "finger and the palmaris longus were intact.", [*FDP, "index FDS", "PL"]),
        ("Of the profundus tendons, those to the ring and small fingers were completely divided and the other two were "
         "intact.", FDP[:2]),
        ("FDS index 100%. FDP middle-small intact.", FDP[1:]),
        ("The FDP of the ring was divided. FDP to the other fingers was intact.", [FDP[0], FDP[1], FDP[3]]),
        ("The FDP to the index was divided; the FDP of the middle and ring fingers, together with the superficialis "
         "tendons of both of them, were intact.", ["middle FDP", "ring FDP"]),
    ],
)  # fmt: skip
def test_the_rest(note: str, whole: list[str]) -> None:
    told = each(note, "extent")
    assert {name for name, value in told.items() if value == "intact"} >= set(whole)
    assert {name for name in whole if name in FDP} == {n for n, v in told.items() if v == "intact" and n in FDP}


@pytest.mark.parametrize(
    "note",
    [
        "Ring and small fingers: FDP divided in both. The other two tendons were intact.",
        "Ring FDP divided. The other two nerves were intact.",
        "Ring FDP divided. The pulleys of the index were torn, those of the middle finger intact.",
    ],
)
def test_another_rest(note: str) -> None:
    assert "intact" not in {v for n, v in each(note, "extent").items() if n in ("index FDP", "middle FDP", "small FDP")}


@pytest.mark.parametrize(
    ("note", "ring"),
    [
        ("The stumps in the middle finger were crisp, those in the ring finger somewhat ragged.", "ragged"),
        ("The end of the middle finger profundus was clean; that of the ring finger was crushed.", "crushed"),
        ("The ends were clean in the middle finger; in the ring finger, where the saw had turned, they were ragged.",
         "ragged"),
    ],
)  # fmt: skip
def test_ends_of_the_other_finger(note: str, ring: str) -> None:
    note = "Middle FDP cut through. Ring FDP cut through. " + note
    assert each(note, "ends") == {"middle FDP": "clean", "ring FDP": ring}


@pytest.mark.parametrize("note", ["The edges of A2 were clean.", "The edges of the A4 were ragged, those of A2 clean."])
def test_rims_of_pulleys_are_no_ends(note: str) -> None:
    assert each("Ring FDP cut through. " + note, "ends") == {}


@pytest.mark.parametrize(
    "words",
    [
        "FDS of ring finger 30 % cut only. FDS of other fingers, all FDP and FPL not damaged.",
        "FDS of ring finger cut in part. The FDS of the other fingers and the FPL were intact.",
        "FDS to the ring finger 30 % cut. FDS to remaining digits, FCU and median nerve intact.",
    ],
)
def test_the_same_tendon_of_other_fingers(words: str) -> None:
    found = each("Zone 5. " + words, "extent")
    assert [found.get(f"{finger} FDS") for finger in ("index", "middle", "small")] == ["intact"] * 3
    assert found.get("ring FDS") != "intact"


def test_a_tendon_called_cut_is_none_of_the_others() -> None:
    found = each("FDP of ring finger cut. FDP of the other fingers and the FPL uninjured.", "extent")
    assert "ring FDP" not in found


def test_other_fingers_not_looked_at() -> None:
    found = each("FDP of ring finger completely cut. FDP of other fingers was not explored.", "extent")
    assert found == {"ring FDP": "complete"}
