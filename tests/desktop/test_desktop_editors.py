"""Editors take what a therapist types and refuse what cannot be, with the reason."""

import pytest
from PySide6.QtWidgets import QComboBox, QLineEdit

from notereader.desktop.editors import ValueEditor, hint_of, value_from
from notereader.record import Interval, ValueRefused
from notereader.vocabulary import field_specs


def spec(name):
    group, field = name.split(".")
    return field_specs()[group][field]


@pytest.mark.parametrize(
    ("field", "typed", "value"),
    [
        ("repairs.strands", "4", 4),
        ("repairs.strands", " 6 ", 6),
        ("repairs.extent_percent", "62,5", 62.5),
        ("repairs.extent_percent", "60 %", 60),
        ("repairs.gap_mm", "2 mm", 2),
        ("repairs.size", "4-0", "4-0"),
        ("repairs.size", "4/0", "4-0"),
        ("repairs.size", "#4-0", "4-0"),
        ("repairs.size", "4.0", "4-0"),
        ("repairs.size", "4-O", "4-0"),
        ("repairs.size", "0000", "4-0"),
        ("repairs.size", "1-0", "0"),
        ("repairs.size", "2", "2"),
        ("repairs.purchase_mm", "10", Interval(low=10, high=10)),
        ("repairs.purchase_mm", "7-10", Interval(low=7, high=10)),
        ("repairs.purchase_mm", "7 to 10 mm", Interval(low=7, high=10)),
        ("repairs.purchase_mm", "at least 8", Interval(low=8, high=None)),
        ("repairs.purchase_mm", "at most 8", Interval(low=None, high=8)),
        ("aftercare.wrist_flexion_deg", "-20", Interval(low=-20, high=-20)),
        ("aftercare.wrist_flexion_deg", "-20 to -10", Interval(low=-20, high=-10)),
        ("aftercare.wrist_flexion_deg", "-20 degrees", Interval(low=-20, high=-20)),
        ("operation.date", "2031-03-14", "2031-03-14"),
        ("operation.side", "left", "left"),
        ("repairs.looped", "yes", True),
        ("repairs.looped", "No", False),
        ("elements.surgeon", "yes", True),
    ],
)
def test_taken(field, typed, value):
    assert value_from(spec(field), typed) == value


@pytest.mark.parametrize(
    ("field", "typed", "reason"),
    [
        ("repairs.strands", "", "nothing is entered"),
        ("repairs.strands", "four", "no figure"),
        ("repairs.strands", "40", "from 1 to 16"),
        ("repairs.strands", "4.5", "whole number"),
        ("repairs.extent_percent", "120", "from 0 to 100"),
        ("repairs.size", "14-0", "USP size"),
        ("repairs.size", "thick", "USP size"),
        ("repairs.purchase_mm", "10-7", "smaller than the lower"),
        ("repairs.purchase_mm", "plenty", "no figure and no range"),
        ("repairs.purchase_mm", "400", "from 0 to 40"),
        ("operation.date", "14.3.2031", "year-month-day"),
        ("operation.date", "2031-02-30", "year-month-day"),
        ("operation.side", "middle", "left, right, both"),
        ("repairs.looped", "perhaps", "yes or no"),
        ("elements.surgeon", "no", "silent"),
    ],
)
def test_refused_in_words(field, typed, reason):
    with pytest.raises(ValueRefused, match=reason):
        value_from(spec(field), typed)


ALL = [spec for group in field_specs().values() for spec in group.values()]


@pytest.mark.parametrize("spec", ALL, ids=lambda spec: f"{spec.group}.{spec.name}")
def test_every_field_has_a_fitting_editor_with_a_name_and_a_hint(qtbot, spec):
    editor = ValueEditor(spec, None)
    qtbot.addWidget(editor)
    box = editor.focusProxy()
    expected = QComboBox if spec.kind in ("choice", "size", "yes-no", "named") else QLineEdit
    assert isinstance(box, expected)
    assert box.accessibleName() == spec.label
    assert hint_of(spec)
    if spec.kind == "choice":
        assert [box.itemText(n) for n in range(box.count())] == list(spec.values)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("repairs.strands", 4),
        ("repairs.extent_percent", 62.5),
        ("repairs.size", "4-0"),
        ("repairs.purchase_mm", Interval(low=7, high=10)),
        ("repairs.purchase_mm", Interval(low=8, high=None)),
        ("repairs.purchase_mm", Interval(low=None, high=8)),
        ("aftercare.wrist_flexion_deg", Interval(low=-20, high=-10)),
        ("operation.date", "2031-03-14"),
        ("repairs.stitch", "locked cruciate"),
        ("repairs.looped", False),
        ("elements.surgeon", True),
    ],
)
def test_an_untouched_editor_gives_back_what_it_was_given(qtbot, field, value):
    editor = ValueEditor(spec(field), value)
    qtbot.addWidget(editor)
    assert editor.value() == value
