"""Pulleys opened for a purpose, pulleys that only place the others, and those of another day."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("text", "found"),
    [
        (
            "Ring finger FDP cut. A4 is incised over its distal third for placement of the suture.",
            {"ring A4": "vented"},
        ),
        ("Ring finger FDP cut. A2 was opened over 5 mm to place the core sutures.", {"ring A2": "vented"}),
        (
            "Ring finger. The sheath was opened between A2 and A4, through A3, which was divided in its whole length. "
            "A2 and A4 were kept.",
            {"ring A2": "intact", "ring A3": "released", "ring A4": "intact"},
        ),
        (
            "Small finger. A2 was intact, we left it alone. A4 had been vented at the first operation, so we rebuilt "
            "it with a slip of FDS.",
            {"small A2": "intact", "small A4": "reconstructed"},
        ),
        (
            "Index. A1 had a 2 mm nick from the slate and was left.\n\n"
            "Middle. FDP intact. Both digital nerves intact. A1 was opened over 5 mm.",
            {"index A1": "injured", "middle A1": "vented"},
        ),
    ],
)
def test_what_became_of_each_pulley(text: str, found: dict[str, str]) -> None:
    assert each(text, "finding", group="pulleys") == found


def test_a_diagnosis_on_a_request_slip_is_no_finding() -> None:
    text = "Diagnosis on the request slip: divided FDP, index.\nIndex finger. I explored the FDP. FDP intact."
    assert each(text, "extent") == {"index FDP": "intact"}


@pytest.mark.parametrize(
    ("text", "bulk"),
    [("bit bulky no its not bulky, no tension.", "none"), ("not bulky, no, it is a bit bulky.", "present")],
)
def test_bulk_taken_back_in_the_same_breath(text: str, bulk: str) -> None:
    assert each(f"Thumb FPL repaired: {text}", "bulk") == {"thumb FPL": bulk}
