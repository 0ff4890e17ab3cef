"""What was thought of and not done, lengths from the cut ends, skin opened, and tendons of the four fingers."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "thought",
    ["We had a think about venting A4 but it was not required.", "I did think of venting A4 but did not do it."],
)
def test_venting_that_was_thought_of(thought: str) -> None:
    assert each(f"Ring FDP cut through and repaired. {thought}", "finding", group="pulleys") == {}


@pytest.mark.parametrize("wish", ["It was desired to use", "We would have liked to use"])
def test_a_thread_that_was_wished_for(wish: str) -> None:
    text = f"Ring FDP repaired with Prolene 3/0. {wish} Ethibond for all but none was available."
    assert each(text, "material") == {"ring FDP": "polypropylene"}


@pytest.mark.parametrize("found", ["Found: not so. FDP intact.", "Found: FDP intact after all."])
def test_what_was_only_expected(found: str) -> None:
    assert each(f"Ring finger. Expected: FDP of the ring gone. {found}", "extent") == {"ring FDP": "intact"}


@pytest.mark.parametrize(
    "held",
    [
        "3/0 Ethibond, Adelaide pattern, taken 10 mm from the cut end each side",
        "sewn with four strands of 4-0, 10 mm from the broken ends",
        "four strands of 4-0 nylon. The distance from stump to needle entry was 10 mm on both sides",
    ],
)
def test_how_far_from_the_ends_the_core_was_led_in(held: str) -> None:
    text = f"Ring FDP cut through. FDP: {held}."
    assert each(text, "purchase_mm") == {"ring FDP": (10, 10)}
    assert each(text, "trimmed_mm") == {}


@pytest.mark.parametrize(
    "trim", ["3 mm taken from the cut end each side, then sewn", "3 mm cut from the torn ends, sewn"]
)
def test_what_was_cut_off_the_ends_is_no_purchase(trim: str) -> None:
    assert each(f"Ring FDP cut through. {trim} with four strands of 4-0.", "purchase_mm") == {}


@pytest.mark.parametrize("skin", ["old wound opened and prolonged toward the palm", "incision after Bruner"])
def test_skin_that_was_opened_heads_no_closure(skin: str) -> None:
    text = f"1. Skin: {skin}.\n2. Ring FDP seen. Cut through 60 %. Edges of the cut are clean.\n3. A1 pulley: intact.\n"
    assert each(text, "extent_percent") == {"ring FDP": 60}
    assert each(text, "finding", group="pulleys") == {"ring A1": "intact"}


def test_skin_that_was_closed() -> None:
    text = "Ring FDP cut through, sewn with four strands of 3-0.\nSkin: closed with 5-0 nylon. Dressing: gauze.\n"
    assert each(text, "size") == {"ring FDP": "3-0"}


@pytest.mark.parametrize("fingers", ["of the four fingers", "to the four fingers"])
def test_the_profundus_of_the_four_fingers_in_a_list(fingers: str) -> None:
    text = f"The profundus {fingers}, the FPL and the superficialis of ring and small were explored and are intact."
    assert sorted(each(text, "extent")) == [
        *("index FDP", "middle FDP", "ring FDP", "ring FDS", "small FDP", "small FDS", "thumb FPL"),
    ]
