"""Any record that the format allows is appraised without a crash, without change and without an overstatement."""

import json
from math import isfinite
from typing import Any, get_args

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from notereader.appraisal import appraisal_text, appraise, question_letter
from notereader.record import Address, Fact, Interval, Record, Rival
from notereader.record.models import Border, Digit, PulleyName, Structure, Tendon
from notereader.vocabulary import FieldSpec, field_specs, sizes


def values(spec: FieldSpec) -> st.SearchStrategy[Any]:
    low, high = spec.low or 0, spec.high or 100
    numbers = st.floats(low, high, allow_nan=False)
    ordered = st.tuples(numbers, numbers).map(sorted)
    kinds: dict[str, st.SearchStrategy[Any]] = {
        "choice": st.sampled_from(spec.values or ("",)),
        "whole": st.integers(int(low), int(high)),
        "number": numbers,
        "size": st.sampled_from(list(sizes())),
        "interval": st.one_of(
            ordered.map(lambda ends: Interval(low=ends[0], high=ends[1])),
            numbers.map(lambda n: Interval(low=n, high=None)),
            numbers.map(lambda n: Interval(low=None, high=n)),
        ),
        "date": st.dates().map(lambda day: day.isoformat()),
        "yes-no": st.booleans(),
        "named": st.just(True),
    }
    return kinds[spec.kind]


def facts(spec: FieldSpec) -> st.SearchStrategy[Fact]:
    stated = st.builds(
        Fact,
        value=values(spec),
        basis=st.sampled_from(("stated", "implied")),
        status=st.sampled_from(("proposed", "confirmed", "corrected", "added", "withdrawn")),
        rivals=st.lists(st.builds(Rival, value=values(spec)), max_size=2),
        look_twice=st.lists(st.sampled_from(("misspelt", "the header names another digit")), max_size=1),
    )
    return st.one_of(stated, st.just(Fact(value=None, basis="silent", status="confirmed")))


def places() -> st.SearchStrategy[Address]:
    digits, sides = st.sampled_from((*get_args(Digit), None)), st.sampled_from((*get_args(Border), None))
    return st.one_of(
        st.sampled_from([Address("operation"), Address("aftercare"), Address("elements")]),
        st.builds(Address, st.just("repairs"), digits, st.sampled_from(get_args(Tendon)), sides),
        st.builds(Address, st.just("pulleys"), digits, st.sampled_from(get_args(PulleyName))),
        st.builds(Address, st.just("injuries"), digits, st.sampled_from(get_args(Structure)), sides),
    )


@st.composite
def records(draw: st.DrawFn) -> Record:
    record = Record()
    for place in draw(st.lists(places(), max_size=6)):
        specs = field_specs()[place.group]
        for name in draw(st.lists(st.sampled_from(list(specs)), max_size=12, unique=True)):
            record.put(place.field_of(name), draw(facts(specs[name])))
    return record


def _finite(part: Any) -> bool:
    if isinstance(part, dict):
        return all(_finite(inner) for inner in part.values())
    if isinstance(part, list):
        return all(_finite(inner) for inner in part)
    return not isinstance(part, float) or isfinite(part)


@given(records(), st.one_of(st.none(), st.integers(0, 200)), st.floats(0, 180))
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
def test_any_record(record: Record, day: int | None, bend: float) -> None:
    before = record.model_dump_json()
    appraisal = appraise(record, day=day, posture_deg=bend)
    text = appraisal_text(appraisal)
    question_letter(appraisal.questions)
    assert record.model_dump_json() == before
    assert _finite(json.loads(appraisal.model_dump_json()))
    assert "no promise for one patient" in text and "{" not in text
    for tendon in appraisal.tendons:
        # No strength without a live, undisputed statement that the tendon was repaired.
        fact = record.fact(Address.parse(tendon.address).field_of("treatment"))
        if tendon.strength is not None:
            assert fact is not None and fact.live and fact.value == "repaired"
