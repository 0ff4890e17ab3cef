"""Tendons listed line by line under a line that says how far they were cut."""

import pytest
from reader_sentences import each, quote_of

WRIST = {"FCR": "complete", "FCU": "complete", "PL": "complete"}
FLEXORS = {f"{digit} FDS": "complete" for digit in ("index", "middle", "ring", "small")}


@pytest.mark.parametrize("mark", ["-", ":"])
def test_a_list_under_its_head(mark: str) -> None:
    note = (
        f"Divided completely {mark}\n   FCR, PL, FCU\n   all four FDS\n   FDP to index and middle\n"
        f"Intact {mark}\n   FPL, FDP ring + small\n"
    )
    expected = {**WRIST, **FLEXORS, "index FDP": "complete", "middle FDP": "complete"}
    whole = {"thumb FPL": "intact", "ring FDP": "intact", "small FDP": "intact"}
    assert each(note, "extent") == {**expected, **whole}


def test_a_line_that_says_more_is_no_item() -> None:
    note = "Divided completely -\n   FCR\n   FPL looked at, not opened\n"
    assert each(note, "extent") == {"FCR": "complete"}


def test_a_blank_line_ends_the_list() -> None:
    assert each("Divided completely -\n   FCR\n\nFPL\n", "extent") == {"FCR": "complete"}


def test_four_reaches_only_its_own_tendon() -> None:
    note = "Divided completely:\n   FCR\n   all four FDS\n   FDP to index and middle\n"
    assert each(note, "extent") == {"FCR": "complete", **FLEXORS, "index FDP": "complete", "middle FDP": "complete"}


def test_an_item_is_proved_by_its_name_and_by_the_head_of_its_list() -> None:
    note = "Divided completely -\n   FCR, PL\n   FDP to index and middle\n"
    assert quote_of(note, "index FDP", "extent") == "FDP to index and middle ... Divided completely"
