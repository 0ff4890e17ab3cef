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


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("on the twenty second of may two thousand and thirty-three", "2033-05-22"),
        ("ninth august twenty thirty", "2030-08-09"),
        ("March the third, twenty thirty-one", "2031-03-03"),
        ("thirtieth of june two thousand thirty", "2030-06-30"),
        ("2030.12.05", "2030-12-05"),
        ("7/Feb/2031", "2031-02-07"),
        ("11 Jul 31,", "2031-07-11"),
    ],
)
def test_spoken_dates_and_other_orders(text: str, value: str) -> None:
    assert [d.value for d in dates_of(f"seen {text} in theatre")] == [value]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("Operated 2 January 2033. Cut on 28 December by glass", "2032-12-28"),
        ("Operated 14 Sept 2037. Injured yesterday (9/13)", "2037-09-13"),
        ("operated twenty second of may twenty thirty three cut on the twenty first of may", "2033-05-21"),
        ("Operated 22 May 2033. He fell on the 20th, and could not bend it", "2033-05-20"),
        ("Operated 10 February 2033. Therapist on 14 February", "2033-02-14"),
        ("Operated 10.02.2033. Hand therapy 14.02 for a splint", "2033-02-14"),
    ],
)
def test_a_date_without_its_year_lies_shortly_before_a_full_one(text: str, value: str) -> None:
    assert [d.value for d in dates_of(text) if d.yearless] == [value]


@pytest.mark.parametrize(
    "text",
    [
        "Cut on 28 December by glass",  # no full date to go by
        "Operated 2 January 2033. Clinic 14 May, stitches out 16/1",  # long after it
        "Operated 2 January 2033. Two of 4/6 strands; he may 5 times a day flex",
        "Operated 22 May 2033. Therapy starts on the fifth postoperative day",
    ],
)
def test_figures_that_are_no_date_without_year(text: str) -> None:
    assert not [d for d in dates_of(text) if d.yearless]


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("Injured 03/04/2031, operated 05/04/2031", ["2031-04-03", "2031-04-05"]),
        ("DOI 4/3/31. DOS 4/5/31", ["2031-04-03", "2031-04-05"]),
        ("letsel 4-6-2031, operatie 5-6-2031", ["2031-06-04", "2031-06-05"]),
    ],
)
def test_two_dates_that_lie_days_apart_tell_their_order(text: str, values: list[str]) -> None:
    found = dates_of(text)
    assert [d.value for d in found] == values
    assert all(d.inferred for d in found)


@pytest.mark.parametrize("text", ["DOI 4/3/31. DOS 4/3/31", "DOI 1/2/31. Seen 8/9/31"])
def test_two_dates_that_tell_no_order(text: str) -> None:
    assert dates_of(text) == []
