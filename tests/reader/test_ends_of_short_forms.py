"""A short form that ends a sentence, an attempt told behind a comma, labels answered 'nothing', single initials."""

import pytest
from reader_sentences import each

CORE = "RF FDP: 4/0 PDS mod Kessler (2 strand) + 6/0 PDS "


@pytest.mark.parametrize(
    "words",
    [
        "cont. Tried to add 2nd Kessler, tendon splitting -> abandoned.",
        "interr. Attempted a second core, gave up.",
        "cont. Second Kessler tried, abandoned.",
    ],
)
def test_an_attempt_behind_a_short_form(words: str) -> None:
    assert each(CORE + words, "strands") == {"ring FDP": 2}
    assert each(CORE + words, "stitch") == {"ring FDP": "modified kessler"}


def test_an_attempt_behind_a_comma() -> None:
    note = "RF FDP 3-0 Ticron modified Kessler, 2 strands, tried to add a second, abandoned."
    assert each(note, "strands") == {"ring FDP": 2}
    assert each("RF FDP: 6-strand Savage, 3-0, tried, abandoned.", "strands") == {}


def test_a_thread_behind_a_short_form() -> None:
    note = "RF FDP: 4/0 PDS mod Kessler + 6/0 cont. Prolene."
    assert each(note, "peripheral_material") == {"ring FDP": "polypropylene"}


@pytest.mark.parametrize(
    "words",
    ["Epi: nothing.", "Peripheral suture: nothing placed.", "Outside: nothing.", "Nothing outside."],
)
def test_labels_answered_nothing(words: str) -> None:
    assert each("Ring FDS: modified Kessler 4-0 Prolene. " + words, "peripheral") == {"ring FDS": "absent"}


@pytest.mark.parametrize("words", ["Nothing outside the sheath was touched.", "Nothing outside the finger was opened."])
def test_nothing_outside_of_something_else(words: str) -> None:
    assert each("Ring FDS: modified Kessler 4-0 Prolene. " + words, "peripheral") == {}


def test_initials_told_singly_behind_flexors() -> None:
    note = "FDS M = 40%. FDP M = 100%. FDP R = 100%. FDS R ok. FDS/FDP I + S ok.\nR: FDP -> 4-0 Ethibond cruciate."
    shown = each(note, "extent")
    assert (shown["middle FDS"], shown["ring FDP"], shown["index FDP"]) == ("partial", "complete", "intact")
    assert each(note, "size") == {"ring FDP": "4-0"}
    side = "R hand, M 36 y. FDP R = 100%."
    assert "ring FDP" not in each(side, "extent")
