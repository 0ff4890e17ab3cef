"""Shares told roughly or of fascicles, counts before 'gone', and a cut told with its tendon's name between."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    ("text", "extents"),
    [
        ("complete FDP division, partial FDS division", {"ring FDP": "complete", "ring FDS": "partial"}),
        ("incomplete FDP transection, complete FDS transection", {"ring FDP": "partial", "ring FDS": "complete"}),
        ("complete FDP division, complete FDS division", {"ring FDP": "complete", "ring FDS": "complete"}),
    ],
)
def test_a_partial_cut_with_the_name_between(text: str, extents: dict[str, object]) -> None:
    assert each(f"Right ring finger. {text}.", "extent") == extents


@pytest.mark.parametrize("text", ["FCR: about half", "FCR roughly half, clean.", "FCR: half"])
def test_a_share_told_roughly(text: str) -> None:
    assert told(f"Right wrist, zone V. {text}", "extent_percent") == {"FCR": {"extent_percent": 50}}


def test_half_of_another_thing_is_no_share() -> None:
    assert each("Right wrist. FCR about half way out of its sheath.", "extent") == {}


@pytest.mark.parametrize("gone", ["all 3 gone", "all three gone"])
def test_so_many_gone(gone: str) -> None:
    assert set(each(f"Wrist, zone V. FDS middle/ring/small: {gone}.", "extent").values()) == {"complete"}


def test_gone_elsewhere_is_not_cut() -> None:
    assert each("FDS index, middle and ring: the three gone to the palm.", "extent") == {}


@pytest.mark.parametrize(
    "text",
    [
        "Median nerve: half of the fascicles, rest intact.",
        "Two thirds of the fascicles of the median nerve were cut.",
        "Median nerve: two thirds of the fascicles cut.",
    ],
)
def test_a_share_of_the_fascicles(text: str) -> None:
    assert each(f"Right wrist. {text}", "extent", group="injuries") == {"median nerve": "partial"}


def test_all_fascicles_intact() -> None:
    assert each("Right wrist. Median nerve: all fascicles intact.", "extent", group="injuries") == {
        "median nerve": "intact"
    }


@pytest.mark.parametrize(
    "text",
    ["Both digital nerves were looked at and neither had been touched.", "RDN and UDN seen, neither had been touched."],
)
def test_neither_nerve_had_been_touched(text: str) -> None:
    assert set(each(f"Left index finger. {text}", "extent", group="injuries").values()) == {"intact"}


def test_nerves_the_surgeon_did_not_touch() -> None:
    assert each("Left index. Both digital nerves were seen and neither was touched.", "extent", group="injuries") == {}


@pytest.mark.parametrize(
    "text",
    [
        "FDP had been cut across apart from a few dorsal fibres.",
        "FDP was divided but for a few fibres.",
        "FDP was severed except for a strand of fibres.",
    ],
)
def test_cut_but_for_some_fibres_is_cut_in_part(text: str) -> None:
    assert each(f"Right ring finger. {text}", "extent") == {"ring FDP": "partial"}


def test_cut_but_for_its_sheath_is_cut() -> None:
    text = "Right ring finger. FDP was completely divided except for the paratenon."
    assert each(text, "extent") == {"ring FDP": "complete"}
