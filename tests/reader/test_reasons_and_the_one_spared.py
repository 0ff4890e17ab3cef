"""Bulk and tension as reasons deny nothing; three of four flexors cut, the fourth alone spared."""

import pytest
from reader_sentences import each

CUT = "Ring finger. FDP cut and repaired. "


@pytest.mark.parametrize(
    "words",
    [
        "A second core was omitted on account of bulk.",
        "An epitendinous suture was not used for reasons of bulk.",
        "No second core for bulk.",
    ],
)
def test_bulk_as_a_reason(words: str) -> None:
    assert each(CUT + words, "bulk") == {}


@pytest.mark.parametrize(
    "words",
    ["A2 was not closed because of tension.", "A peripheral suture was not placed on account of tension."],
)
def test_tension_as_a_reason(words: str) -> None:
    assert each(CUT + words, "tension") == {}


@pytest.mark.parametrize("words", ["The repair was not bulky and not under tension.", "No bulk. No tension."])
def test_bulk_and_tension_denied(words: str) -> None:
    assert (each(CUT + words, "bulk"), each(CUT + words, "tension")) == ({"ring FDP": "none"}, {"ring FDP": "none"})


CUT_BUT_ONE = {"ring FDP": "complete", "ring FDS": "intact", "small FDP": "complete", "small FDS": "complete"}


@pytest.mark.parametrize(
    "found",
    [
        "Of the four flexor tendons, three were severed, the superficialis of the ring finger alone having escaped.",
        "Three of the four flexor tendons were divided; only the ring FDS was intact.",
        "Of the four flexor tendons serving the two ulnar digits three were divided, the ring FDS alone being intact.",
    ],
)
def test_all_but_the_one_spared(found: str) -> None:
    head = "Neither the small nor the ring finger could be flexed. Ring and small fingers explored. "
    assert each(head + found, "extent") == CUT_BUT_ONE


def test_none_is_spared_without_a_word_for_it() -> None:
    found = "Two of the four flexor tendons were divided, the ring FDS was intact."
    assert each("Ring and small fingers. " + found, "extent") != CUT_BUT_ONE


@pytest.mark.parametrize(
    ("words", "glide"),
    [
        ("Its repair travelling freely under A2.", "free"),
        ("The repair was found sliding freely.", "free"),
        ("The repair was not travelling freely under A2.", "restricted"),
    ],
)
def test_travelling(words: str, glide: str) -> None:
    assert each(CUT + words, "glide") == {"ring FDP": glide}


@pytest.mark.parametrize(
    "words",
    [
        "The ring came together without effort, the small under tension.",
        "The ring lay easy and the small under tension.",
    ],
)
def test_the_small_under_tension(words: str) -> None:
    head = "Ring, middle and small fingers cut. FDP of all repaired. "
    assert each(head + words, "tension").get("small FDP") == "present"
