"""Dates as notes write them, and the order of day and month taken from the note itself (common practice, no source)."""

import pytest

from notereader.reader.page import FoundDate
from notereader.reader.pipeline import language


def dates_of(text: str) -> list[FoundDate]:
    found: list[FoundDate] = language()(text).user_data["page"].dates
    return found


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("on 7 June 2033", "2033-06-07"),
        ("June 7, 2033", "2033-06-07"),
        ("the 7th of June, 2033", "2033-06-07"),
        ("June the 7th, 2033", "2033-06-07"),
        ("07-JUN-2033", "2033-06-07"),
        ("07JUN2033", "2033-06-07"),
        ("7-Jun-33", "2033-06-07"),
        ("2033-06-07", "2033-06-07"),
        ("17.06.2033", "2033-06-17"),
        ("06/17/2033", "2033-06-17"),
        ("3O.l1.2033", "2033-11-30"),
    ],
)
def test_ways_of_writing_a_date(text: str, value: str) -> None:
    assert [d.value for d in dates_of(f"Seen {text}.")] == [value]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Operated 04/05/2033, seen again 18/05/2033", "2033-05-04"),
        ("Operated 04/05/2033, seen again 04/18/2033", "2033-04-05"),
        ("Operated 04/05/2033 after an injury on 2 May 2033", "2033-05-04"),
        ("Operated 04/05/2033 after an injury on April 4, 2033", "2033-04-05"),
        ("Anesthesia general. Operated 04/05/2033", "2033-04-05"),
        ("Anaesthetist absent. Operated 04/05/2033", "2033-05-04"),
        ("Operated 04.05.2033", "2033-05-04"),
    ],
)
def test_the_order_of_day_and_month_comes_from_the_note(text: str, value: str) -> None:
    found = dates_of(text)
    assert value in [d.value for d in found]
    assert next(d for d in found if d.value == value).inferred


@pytest.mark.parametrize(
    "text", ["Operated 04/05/2033", "31.02.2033", "2033-13-01", "Anaesthetic, anesthesia. 04/05/2033"]
)
def test_dates_that_cannot_be_told_are_left_out(text: str) -> None:
    assert dates_of(text) == []
