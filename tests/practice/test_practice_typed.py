"""Equivalent answers: what people type for one and the same value."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from notereader.practice.promise import same_value
from notereader.practice.typed import value_of
from notereader.record import Interval, ValueRefused
from notereader.vocabulary import field_specs, materials, sizes, stitches

SPECS = field_specs()


def typed(field, words):
    group, name = field.split(".")
    return value_of(SPECS[group][name], words)


def span(low, high):
    return Interval(low=low, high=high)


@pytest.mark.parametrize(
    ("field", "value", "ways"),
    [
        (
            "repairs.size",
            "4-0",
            ["4-0", "4/0", "4–0", "4.0", "0000", "four-oh", "four ought", "USP 4-0", "EP 1.5"],
        ),
        ("repairs.size", "0", ["0", "1-0", "metric 3.5"]),
        ("repairs.size", "2", ["2", "#2", "no. 2"]),
        ("repairs.size", "2-0", ["2-0", "2/0", "00"]),
        ("repairs.strands", 4, ["4", "four", "four-strand", "4 strands"]),
        (
            "repairs.purchase_mm",
            span(10, 10),
            ["10", "10 mm", "1 cm", "1.0 cm", "ten millimetres", "about 10 mm"],
        ),
        ("repairs.purchase_mm", span(7, 10), ["7-10", "7 to 10 mm", "0.7 to 1 cm", "7–10mm"]),
        ("repairs.purchase_mm", span(8, None), ["at least 8", ">= 8 mm", "≥8 mm", "over 0.8 cm"]),
        ("repairs.purchase_mm", span(None, 8), ["at most 8", "up to 8 mm"]),
        ("repairs.trimmed_mm", 3, ["3", "3 mm", "0.3 cm", "three mm"]),
        ("repairs.extent_percent", 50, ["50", "50 %", "50%", "half", "50 percent"]),
        ("repairs.extent_percent", 67, ["67", "2/3", "two thirds"]),
        ("repairs.zone", "II", ["II", "2", "zone 2", "zone II"]),
        ("repairs.zone", "IIC", ["IIC", "2c", "zone 2C"]),
        ("repairs.material", "braided polyester", ["braided polyester", "Ethibond", "ti-cron", "Ticron"]),
        ("repairs.stitch", "strickland", ["Strickland", "Indiana"]),
        ("repairs.gap", "none", ["none", "no gap", "no"]),
        ("repairs.gap", "seen", ["seen", "yes"]),
        ("repairs.peripheral", "present", ["present", "yes"]),
        ("pulleys.finding", "released", ["released", "divided completely"]),
        ("pulleys.finding", "intact", ["intact", "preserved", "not opened"]),
        (
            "operation.date",
            "2033-03-04",
            ["2033-03-04", "4 March 2033", "March 4, 2033", "4th Mar 2033"],
        ),
        ("operation.date", "2031-08-26", ["26/08/2031", "26.8.2031", "08/26/2031"]),
        ("operation.side", "left", ["left", "L", "Left hand"]),
        ("aftercare.wrist_flexion_deg", span(-20, -20), ["20 extension", "20° ext", "-20", "20 degrees of extension"]),
        ("aftercare.wrist_flexion_deg", span(20, 20), ["20 flexion", "20 degrees of flexion", "flexed 20"]),
        ("aftercare.wrist_flexion_deg", span(0, 0), ["neutral", "0", "straight"]),
        ("aftercare.mcp_flexion_deg", span(60, 70), ["60-70", "60 to 70", "60 to 70 degrees of flexion"]),
        ("aftercare.start_day", span(7, 7), ["7", "day 7", "1 week", "one week", "7 days", "1/52"]),
        ("aftercare.start_day", span(3, 5), ["3-5", "day 3 to 5", "days 3-5"]),
        ("aftercare.splint_weeks", span(6, 6), ["6", "6 weeks", "6/52", "42 days", "42/7"]),
        ("aftercare.programme", "early active", ["early active", "active"]),
        ("repairs.looped", True, ["yes", "true"]),
        ("elements.surgeon", True, ["yes"]),
    ],
)
def test_every_way_of_writing_gives_the_same_value(field, value, ways):
    assert [typed(field, way) for way in ways] == [value] * len(ways)


@pytest.mark.parametrize(
    ("field", "words", "hint"),
    [
        ("operation.date", "03/04/2031", "either way round"),
        ("aftercare.wrist_flexion_deg", "20", "Say which way"),
        ("repairs.purchase_mm", "8 inches", "The unit is mm"),
        ("repairs.purchase_mm", "10-7", "smaller"),
        ("repairs.gap_mm", "1-2", "One figure"),
        ("repairs.material", "Ethibnd", "Did you mean 'ethibond'"),
        ("repairs.size", "13-0", "USP size"),
        ("repairs.strands", "40", "from 1 to 16"),
        ("repairs.strands", "quad", "whole number"),
        ("repairs.peripheral", "running", "present, absent"),
        ("elements.surgeon", "no", "silent"),
        ("repairs.gap", "", "nothing was entered"),
    ],
)
def test_what_is_not_understood_is_refused_with_the_mend(field, words, hint):
    with pytest.raises(ValueRefused, match=hint):
        typed(field, words)


def test_every_value_of_every_choice_is_taken_by_its_own_name():
    for specs in SPECS.values():
        for spec in specs.values():
            for value in spec.values:
                assert value_of(spec, value) == value
                assert value_of(spec, value.upper()) == value


def test_every_word_of_the_vocabulary_is_taken():
    for material in materials().values():
        assert {typed("repairs.material", word) for word in material.words} == {material.name}
    for stitch in stitches().values():
        assert {typed("repairs.stitch", word) for word in stitch.aliases} <= {stitch.name}
    for size in sizes():
        assert typed("repairs.size", size) == size


@given(st.text(max_size=60))
def test_any_text_gives_a_value_or_a_refusal(words):
    for specs in SPECS.values():
        for spec in specs.values():
            try:
                value_of(spec, words)
            except ValueRefused as refusal:
                assert spec.label in str(refusal)


@given(st.floats(0, 40), st.sampled_from(["mm", "cm"]))
def test_millimetres_and_centimetres_are_one(figure, unit):
    figure = round(figure, 2)
    spec = SPECS["repairs"]["purchase_mm"]
    shown = figure if unit == "mm" else round(figure / 10, 3)
    assert same_value(spec, value_of(spec, f"{shown:.3f} {unit}"), span(figure, figure))


@given(st.integers(0, 100), st.integers(-3, 3))
def test_percentages_are_the_same_within_the_rounding_of_thirds(percent, off):
    spec = SPECS["repairs"]["extent_percent"]
    assert same_value(spec, percent, percent + off) == (abs(off) <= 1)
