"""Sutures laid ready and not used, and fields of a template: edited in place, or never filled in."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "text",
    [
        "We had a four-strand suture of 3-0 Ethibond ready for the ring FDP; it went back into its box. "
        "The ring FDP was intact.",
        "The ring FDP was intact. A looped 4-0 Supramid lay ready. It stayed in its packet.",
        "The ring FDP was intact. Asks for a 3-0 Prolene cruciate, hands it back unopened.",
    ],
)
def test_what_went_back_unused_sews_nothing(text: str) -> None:
    assert told(text) == {"ring FDP": {"extent": "intact"}}


def test_what_was_taken_instead_is_read() -> None:
    text = (
        "Ring FDP cut through. A looped 4-0 nylon lay ready. It stayed in its packet. Core: two strands of 3-0 Prolene."
    )
    assert each(text, "size") == {"ring FDP": "3-0"}
    assert each(text, "strands") == {"ring FDP": 2}


@pytest.mark.parametrize("text", ["FPL was repaired with ***.", "The flexor pollicis longus was sutured using ____."])
def test_a_blank_that_nobody_filled_in_tells_of_no_repair(text: str) -> None:
    assert told(text) == {}


def test_fields_edited_in_place_are_read() -> None:
    text = (
        "The FDP to the ring finger was found {completely} transected, that to the small finger transected {50%}.\n"
        "Ring finger FDP: core {3-0 Ethibond}, {4}-strand, {locked cruciate}. Epitendinous {6-0 Prolene}, {running}.\n"
    )
    assert each(text, "extent") == {"ring FDP": "complete", "small FDP": "partial"}
    assert each(text, "strands") == {"ring FDP": 4}
    assert each(text, "peripheral_size") == {"ring FDP": "6-0"}


@pytest.mark.parametrize(
    "text",
    [
        "Ring FDP {complete/partial}. Core {3-0 or 4-0}, {number} strands, {2 / 4 / 6}.",
        "Ring FDP {describe extent}. Core suture {size 4-0 or 3-0}, strands {count: 2, 4, 6?}.",
    ],
)
def test_choices_and_placeholders_stay_open(text: str) -> None:
    assert told(text, "extent", "strands", "size") == {}


OPENED = "Ring FDP cut through and repaired with four strands of 4-0 Ethibond. "


@pytest.mark.parametrize(
    "text",
    [
        "A running 6-0 nylon had been opened for the epitendinous layer. It went into the nerve instead.",
        "A 6-0 Prolene was opened for the peripheral suture. It was used for the drain in the end.",
        "The 6-0 for the epitendinous run was opened, and the skin got it.",
    ],
)
def test_a_suture_that_went_elsewhere_is_not_told(text: str) -> None:
    assert told(OPENED + text, "peripheral") == {}


@pytest.mark.parametrize(
    "text",
    [
        "A 6-0 was opened for the epitendinous layer. It was run around the join.",
        "A running 6-0 was opened for the epitendinous layer and was placed last. The skin got a 4-0.",
    ],
)
def test_a_suture_that_went_where_it_was_meant_to_is_told(text: str) -> None:
    assert each(OPENED + text, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 was opened and lifted as a flap; it was then closed with 5-0 PDS.",
        "The A2 pulley was opened, raised as a flap and later closed back with 6-0 nylon.",
    ],
)
def test_a_pulley_opened_as_a_flap_is_no_suture_opened(words: str) -> None:
    assert each("Left index. FDP cut. " + words, "finding", group="pulleys") == {"index A2": "repaired"}
