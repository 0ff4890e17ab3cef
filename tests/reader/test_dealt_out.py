"""One kind of state dealt out over fingers in one sentence."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("text", "states"),
    [
        (
            "The FDP was whole in the index and cut through in the ring finger.",
            {"index": "intact", "ring": "complete"},
        ),
        (
            "In the index and ring fingers the FDP was intact; in the small finger it was completely divided.",
            {"index": "intact", "ring": "intact", "small": "complete"},
        ),
        (
            "The FDP of the ring finger was cut to 60 %, that of the small finger intact.",
            {"ring": "partial", "small": "intact"},
        ),
        (
            "The FDP of the index, middle and ring fingers was divided, cut to 40 % and untouched respectively.",
            {"index": "complete", "middle": "partial", "ring": "intact"},
        ),
        (
            "The FDP of the index, ring and small fingers was exposed. It was whole in all but the ring finger, "
            "where it was transected.",
            {"index": "intact", "ring": "complete", "small": "intact"},
        ),
        ("FDP (ring) partially divided. FDP (index) completely divided.", {"ring": "partial", "index": "complete"}),
        (
            "FDP intact: index, ring. FDP transected: small finger.",
            {"index": "intact", "ring": "intact", "small": "complete"},
        ),
    ],
)
def test_how_far_each_was_cut(text: str, states: dict[str, str]) -> None:
    assert each(text, "extent") == {f"{finger} FDP": extent for finger, extent in states.items()}


@pytest.mark.parametrize(
    ("text", "states"),
    [
        (
            "FDP and FDS of index and small finger cut through. The FDS was excised in the index, while in the small "
            "finger it was repaired.",
            {"index": "excised", "small": "repaired"},
        ),
        (
            "FDP and FDS of ring and middle finger cut through. The superficialis of the ring was left unrepaired but "
            "in the middle finger I sutured it.",
            {"ring": "left", "middle": "repaired"},
        ),
    ],
)
def test_what_became_of_each(text: str, states: dict[str, str]) -> None:
    assert each(text, "treatment") == {f"{finger} FDS": fate for finger, fate in states.items()}


@pytest.mark.parametrize(
    "text",
    [
        "The FDP was completely divided in zone I in the index and ring fingers and in zone II in the small finger.",
        "The FDP of the index and ring fingers was cut through in zone I, that of the small finger in zone II.",
    ],
)
def test_in_which_zone_each_was_cut(text: str) -> None:
    assert each(text, "zone") == {"index FDP": "I", "ring FDP": "I", "small FDP": "II"}
    assert each(text, "extent") == dict.fromkeys(("index FDP", "ring FDP", "small FDP"), "complete")


@pytest.mark.parametrize(
    "text",
    [
        "The FDS of the index, middle and small were divided.",
        "The FDS was cut through in the ring finger and in the index and small.",
        "FDS: ring whole, small 60 % cut.",
    ],
)
def test_a_short_name_in_a_row_of_fingers_is_a_finger(text: str) -> None:
    assert "small FDS" in told(text)


@pytest.mark.parametrize(
    "text",
    [
        "The FDS of the index had a small cut.",
        "FDP of the ring divided, small nerve branches spared, middle of A2 vented.",
    ],
)
def test_small_things_and_middles_are_no_fingers(text: str) -> None:
    found = [*told(text), *told(text, group="pulleys")]
    assert not any(name.startswith(("small", "middle")) for name in found)
