"""Labels of a row that nobody answered tell nothing; those beside them that are answered do."""

import pytest
from reader_sentences import each, told

HEAD = "Small finger, left. FDP divided right through and repaired.\n"


@pytest.mark.parametrize(
    "row",
    [
        "FDS intact: ___   A2 intact: ___   A4 intact: Y\nGap-free: ___   Bulky: Y",
        "A2 intact: -   A4 intact: Y   No gap: -",
        "A2 preserved: [ ]   A4 preserved: [x]   Free glide: [ ]",
    ],
)
def test_a_label_left_open_is_not_told(row: str) -> None:
    assert each(HEAD + row, "finding", group="pulleys") == {"small A4": "intact"}
    assert told(HEAD + row, "gap", "glide") == {}
    assert "small FDS" not in told(HEAD + row)


def test_a_label_with_its_answer_behind_a_wide_gap_is_told() -> None:
    assert each(f"{HEAD}A2:   intact    A4:   vented 4 mm", "finding", group="pulleys") == {
        "small A2": "intact",
        "small A4": "vented",
    }


@pytest.mark.parametrize(
    "text",
    [
        "Left blank on the sheet: peripheral suture, gap, pulleys.",
        "Not ticked: no gap, free glide, epitendinous suture.",
        "The boxes for gap and peripheral suture are empty.",
        "Peripheral suture and gap were left blank.",
    ],
)
def test_fields_told_to_be_blank_tell_nothing(text: str) -> None:
    assert told(HEAD + text, "gap", "peripheral", "glide") == {}


def test_fields_told_to_be_ticked_and_a_blank_line_beside_them() -> None:
    text = f"{HEAD}Ticked: no gap. The line below was left blank."
    assert each(text, "gap") == {"small FDP": "none"}
