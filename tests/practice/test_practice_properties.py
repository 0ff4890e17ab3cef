"""What must hold for every case and every answer: the key is perfect, any change is caught, marking is symmetric."""

from datetime import date

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from practice_making import made_case, perfect

from notereader.practice import Case, mark, ready_set
from notereader.practice.cases import completed
from notereader.practice.promise import leaning, same_value
from notereader.practice.words import spec_of, tables
from notereader.record import Fact, Interval, Record
from notereader.vocabulary import field_specs, sizes

CASES = [made_case(), *ready_set().cases]
SLOW = settings(
    max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much]
)


def values(spec):
    """Return a strategy for any value the field can take."""
    figures = st.integers(int(spec.low or 0), int(spec.high or 0)).map(float)
    forms = {
        "choice": lambda: st.sampled_from(spec.values),
        "whole": lambda: st.integers(int(spec.low), int(spec.high)),
        "number": lambda: figures,
        "size": lambda: st.sampled_from(list(sizes())),
        "interval": lambda: st.tuples(figures, figures).map(lambda ends: Interval(low=min(ends), high=max(ends))),
        "date": lambda: st.dates(date(2000, 1, 1), date(2060, 1, 1)).map(date.isoformat),
        "yes-no": st.booleans,
        "named": lambda: st.just(True),
    }
    return forms[spec.kind]()


KINDS = ("drop", "other value", "silent", "read in", "no words", "other finger")


def change(data, record: Record, kinds=KINDS):
    """Change a record in one place; return (what was done, the address, the changed record)."""
    draw = data.draw
    changed = record.model_copy(deep=True)
    live = [place for place, fact in record.walk() if fact.live]
    kind = draw(st.sampled_from(kinds))
    place = draw(st.sampled_from(live))
    if kind == "other finger":
        entries = [
            e for e in [*changed.repairs, *changed.pulleys, *changed.injuries] if any(f.live for f in e.facts.values())
        ]
        assume(entries)
        entry = draw(st.sampled_from(entries))
        entry.digit = draw(st.sampled_from([d for d in ("index", "middle", "ring", "small", None) if d != entry.digit]))
        taken = [place.text() for place, _ in changed.entries()]
        assume(len(taken) == len(set(taken)))
        return kind, place, changed
    if kind == "drop":
        changed.drop(place)
    elif kind == "other value":
        old = record.fact(place).value
        new = draw(values(spec_of(place)))
        assume(not same_value(spec_of(place), new, old))
        changed.fact(place).value = new
        changed.fact(place).rivals = [r for r in changed.fact(place).rivals if r.value != new]
    elif kind == "silent":
        changed.put(place, Fact(value=None, basis="silent", status="added"))
    elif kind == "no words":
        changed.fact(place).evidence = []
    else:
        empty = [
            entry.field_of(name)
            for entry, facts in record.entries()
            for name in field_specs()[entry.group]
            if name not in facts or not facts[name].live
        ]
        place = draw(st.sampled_from(empty))
        changed.put(place, Fact(value=draw(values(spec_of(place))), status="added"))
    return kind, place, changed


@SLOW
@given(st.data())
def test_any_key_against_itself_is_perfect(data):
    """Not only the ready keys: whatever a confirmed record says, who says the same is right."""
    ready = data.draw(st.sampled_from(CASES))
    key = ready.answers
    for _ in range(data.draw(st.integers(0, 6))):
        _, _, key = change(data, key)
    case = Case(id=ready.id, text=ready.text, key=completed(key))
    marking = mark(case, perfect(case))
    assert marking.perfect
    assert marking.share == 1 and marking.over == 0
    assert marking.kappa in (None, 1.0)


@SLOW
@given(st.data())
def test_any_change_of_the_key_is_caught(data):
    case = data.draw(st.sampled_from(CASES))
    kind, place, changed = change(data, case.answers)
    attempt = perfect(case)
    attempt.record = changed
    marking = mark(case, attempt)
    assert not marking.perfect
    assert marking.raw_share < 1
    if kind != "other finger":
        assert place.text() in [m.address for m in marking.differences]


@SLOW
@given(st.data())
def test_marking_is_symmetric_where_it_should_be(data):
    """Whoever holds the key: what agrees agrees, missed and read in change places, over and under change places."""
    case = data.draw(st.sampled_from(CASES))
    first = case.answers
    for _ in range(data.draw(st.integers(1, 6))):
        _, _, first = change(data, first)
    one, two = _stated(first), _stated(case.answers)
    forth, back = _marked(case, one, two), _marked(case, two, one)
    count = forth.counts
    assert count["right"] + count["wrong words"] == back.counts["right"] + back.counts["wrong words"]
    assert count["wrong"] == back.counts["wrong"]
    assert (count["missed"], count["read in"]) == (back.counts["read in"], back.counts["missed"])
    assert forth.kappa == pytest.approx(back.kappa, nan_ok=True)
    over = sum(m.outcome == "wrong" and m.leaning == "over" for m in forth.facts)
    under = sum(m.outcome == "wrong" and m.leaning == "under" for m in back.facts)
    assert over == under


@given(st.data())
def test_over_and_under_are_opposites(data):
    specs = [spec for fields in field_specs().values() for spec in fields.values()]
    spec = data.draw(st.sampled_from(specs))
    one, two = data.draw(values(spec)), data.draw(values(spec))
    opposite = {"over": "under", "under": "over", "other": "other"}
    assert leaning(spec, one, two) == opposite[leaning(spec, two, one)]
    assert leaning(spec, one, one) == "other"


@SLOW
@given(st.data())
def test_points_never_pass_the_worth_and_the_share_stays_within_bounds(data):
    case = data.draw(st.sampled_from(CASES))
    _, _, changed = change(data, case.answers)
    attempt = perfect(case)
    attempt.record = changed
    marking = mark(case, attempt)
    assert all(m.points <= m.worth for m in marking.facts)
    assert 0 <= marking.share <= 1
    assert sum(marking.counts.values()) == len(marking.facts)
    for kind in marking.kinds:
        assert 0 <= kind.right <= kind.trials


@SLOW
@given(st.data())
def test_an_over_statement_never_costs_less_than_the_same_fact_missed(data):
    case = data.draw(st.sampled_from(CASES))
    _, place, changed = change(data, case.answers, ("other value", "read in"))
    attempt = perfect(case)
    attempt.record = changed
    mine = next(m for m in mark(case, attempt).facts if m.address == place.text())
    assume(mine.over)
    assert mine.points == -spec_of(place).weight * -tables().points.overstated
    assert mine.points < 0


def _stated(record: Record) -> Record:
    """Return the record without silences and words, which only one side has."""
    bare = record.model_copy(deep=True)
    for place, fact in list(bare.walk()):
        if not fact.live:
            bare.drop(place)
        else:
            fact.evidence = []
    return bare


def _marked(case: Case, key: Record, said: Record):
    attempt = perfect(case)
    attempt.record = said
    attempt.contradictions, attempt.questions = [], []
    return mark(Case(id=case.id, text=case.text, key=key), attempt)
