"""Every value that the format names is accepted, every other one refused, by the models and by the published schema."""

from functools import cache
from typing import Any, get_args

import pytest
from contract_tables import CHOICES, DIGITS, ELEMENTS, OTHERS, PULLEYS, STRUCTURES, TENDONS
from jsonschema import Draft202012Validator

from notereader.record import Fact, Injury, Interval, Pulley, Record, Repair, ValueRefused, check_value, record_schema
from notereader.record.models import Digit, PulleyName, Structure, Tendon
from notereader.vocabulary import field_specs, sizes
from notereader.vocabulary.checking_names import DIGITS as KNOWN_DIGITS
from notereader.vocabulary.checking_names import PULLEYS as KNOWN_PULLEYS
from notereader.vocabulary.checking_names import STRUCTURES as KNOWN_STRUCTURES
from notereader.vocabulary.checking_names import TENDONS as KNOWN_TENDONS

EVERY_CHOICE = [
    (group, name, value) for group, fields in CHOICES.items() for name, values in fields.items() for value in values
]
EVERY_FIELD = [(group, name) for group, fields in field_specs().items() for name in fields]


def accepted(group: str, name: str, value: Any) -> bool:
    """Tell whether the models take a value; fails where the schema says something else."""
    interval = isinstance(value, dict)
    try:
        check_value(field_specs()[group][name], Interval(**value) if interval else value)
        taken = True
    except ValueError:
        taken = False
    assert valid(group, name, value) == taken, f"the schema disagrees on {group}.{name} = {value!r}"
    return taken


def valid(group: str, name: str, value: Any) -> bool:
    """Tell whether the published schema takes a record with this value."""
    entry = {
        "repairs": {"digit": "ring", "tendon": "FDP"},
        "pulleys": {"digit": "ring", "pulley": "A2"},
        "injuries": {"digit": "ring", "structure": "digital nerve"},
    }
    facts = {name: {"value": value, "basis": "stated", "status": "proposed", "evidence": []}}
    data = {**_empty_record(), group: [{**entry[group], "facts": facts}] if group in entry else facts}
    return _schema().is_valid(data)


@cache
def _empty_record() -> dict[str, Any]:
    return Record().model_dump(mode="json")


@cache
def _schema() -> Draft202012Validator:
    return Draft202012Validator(record_schema())


@pytest.mark.parametrize(("group", "name", "value"), EVERY_CHOICE)
def test_every_value_of_the_format_is_taken(group: str, name: str, value: str) -> None:
    assert accepted(group, name, value)


@pytest.mark.parametrize(("group", "name"), EVERY_FIELD)
@pytest.mark.parametrize(
    "value", ["", "maybe", "INTACT", -1000, 1000, 0.5, {"low": 900, "high": 1000}, "99-0", "2031-02-30"]
)
def test_a_value_of_no_field_is_refused(group: str, name: str, value: Any) -> None:
    # Half a millimetre or half a percent is possible.
    if value == 0.5 and field_specs()[group][name].kind == "number":
        pytest.skip("this field takes fractions")
    # The schema knows the form of a date, not the calendar.
    if value == "2031-02-30" and field_specs()[group][name].kind == "date":
        with pytest.raises(ValueRefused, match="2031-03-14"):
            check_value(field_specs()[group][name], value)
        return
    assert not accepted(group, name, value)


def test_no_field_is_missing_and_none_is_added() -> None:
    contract = {(group, name) for group, fields in CHOICES.items() for name in fields}
    contract |= {place for places in OTHERS.values() for place in places}
    contract |= {("elements", name) for name in ELEMENTS}
    assert set(EVERY_FIELD) == contract


@pytest.mark.parametrize(("group", "name"), [(group, name) for group, fields in CHOICES.items() for name in fields])
def test_a_choice_has_exactly_the_values_of_the_format(group: str, name: str) -> None:
    assert list(field_specs()[group][name].values) == CHOICES[group][name]


@pytest.mark.parametrize(("group", "name"), OTHERS["date"])
def test_dates_are_iso_dates(group: str, name: str) -> None:
    assert accepted(group, name, "2031-03-14")
    assert not accepted(group, name, "14/03/2031")


@pytest.mark.parametrize(("group", "name"), OTHERS["percent"])
def test_percents_go_from_0_to_100(group: str, name: str) -> None:
    assert accepted(group, name, 0)
    assert accepted(group, name, 100)
    assert accepted(group, name, 66.5)
    assert not accepted(group, name, 101)
    assert not accepted(group, name, True)


@pytest.mark.parametrize(("group", "name"), OTHERS["number"])
def test_lengths_are_not_negative(group: str, name: str) -> None:
    assert accepted(group, name, 2)
    assert accepted(group, name, 2.5)
    assert not accepted(group, name, -1)
    assert not accepted(group, name, "2")


def test_strands_are_whole_numbers() -> None:
    assert accepted("repairs", "strands", 6)
    assert not accepted("repairs", "strands", 0)
    assert not accepted("repairs", "strands", 4.5)
    assert not accepted("repairs", "strands", True)
    assert check_value(field_specs()["repairs"]["strands"], 4.0) == 4


@pytest.mark.parametrize(("group", "name"), OTHERS["size"])
def test_sizes_are_usp_sizes(group: str, name: str) -> None:
    assert all(accepted(group, name, size) for size in sizes())
    assert {"10-0", "4-0", "2-0", "0", "1"} <= set(sizes())
    for wrong in ("4/0", "4", "4.0", "metric 1.5", "40"):
        assert not accepted(group, name, wrong)


def test_looped_is_true_or_false() -> None:
    assert accepted("repairs", "looped", True)
    assert accepted("repairs", "looped", False)
    assert not accepted("repairs", "looped", "yes")
    assert not accepted("repairs", "looped", 1)


@pytest.mark.parametrize(("group", "name"), OTHERS["interval"])
def test_intervals_may_be_open_at_one_end(group: str, name: str) -> None:
    assert accepted(group, name, {"low": 7, "high": 10})
    assert accepted(group, name, {"low": 8, "high": None})
    assert accepted(group, name, {"low": None, "high": 8})
    assert not accepted(group, name, 8)


@pytest.mark.parametrize("bounds", [{"low": None, "high": None}, {"low": 10, "high": 7}])
def test_an_interval_needs_an_end_and_rises(bounds: dict[str, float | None]) -> None:
    with pytest.raises(ValueError, match="figure"):
        Interval(**bounds)


def test_extension_is_negative_flexion() -> None:
    assert accepted("aftercare", "wrist_flexion_deg", {"low": -45, "high": -30})
    assert accepted("aftercare", "wrist_flexion_deg", {"low": 0, "high": 0})


@pytest.mark.parametrize("name", ELEMENTS)
def test_an_element_is_named_or_absent(name: str) -> None:
    assert accepted("elements", name, True)
    assert not accepted("elements", name, False)
    assert not accepted("elements", name, "yes")


def test_places_are_those_of_the_format() -> None:
    assert list(get_args(Digit)) == DIGITS
    assert list(get_args(Tendon)) == TENDONS
    assert list(get_args(PulleyName)) == PULLEYS
    assert list(get_args(Structure)) == STRUCTURES


def test_the_checker_of_resources_knows_the_same_places() -> None:
    known = (KNOWN_DIGITS, KNOWN_TENDONS, KNOWN_PULLEYS, KNOWN_STRUCTURES)
    assert [set(names) for names in (DIGITS, TENDONS, PULLEYS, STRUCTURES)] == [set(names) for names in known]


def test_other_places_are_refused() -> None:
    for model, values in (
        (Repair, {"digit": "fifth", "tendon": "FDP"}),
        (Repair, {"digit": "ring", "tendon": "EDC"}),
        (Repair, {"digit": "ring", "tendon": "FDS", "slip": "middle"}),
        (Pulley, {"digit": "ring", "pulley": "A6"}),
        (Injury, {"digit": "ring", "structure": "skin"}),
    ):
        with pytest.raises(ValueError, match="Input should be"):
            model(**values)  # type: ignore[operator]


def test_a_silent_fact_has_neither_value_nor_evidence() -> None:
    with pytest.raises(ValueError, match="silent"):
        Fact(value=4, basis="silent")
    with pytest.raises(ValueError, match="silent"):
        Fact(value=None, basis="stated")


def test_a_refusal_says_what_is_possible() -> None:
    with pytest.raises(
        ValueRefused, match=r"Hold of the core: 'tight' is not possible; choose one of locking, grasping"
    ):
        check_value(field_specs()["repairs"]["hold"], "tight")
