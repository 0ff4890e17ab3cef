"""Random work on one casebook, step by step against a plain model: what is saved is what was done."""

import tempfile
from pathlib import Path
from typing import Any

from casebook_helpers import A2, A4, draft
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from notereader.casebook import Casebook, Edit
from notereader.record import Address, Fact, Interval, Record, Value
from notereader.vocabulary import FieldSpec, field_specs, sizes

ENTRIES = [
    Address("operation"),
    Address("aftercare"),
    Address("elements"),
    Address("repairs", "ring", "FDP"),
    Address("repairs", "small", "FDS", "radial"),
    Address("repairs", None, "FCR"),
    A2,
    A4,
    Address("pulleys", None, "flexor retinaculum"),
    Address("injuries", "ring", "digital nerve", "ulnar"),
]


def figures(spec: FieldSpec) -> st.SearchStrategy[float]:
    return st.integers(int(spec.low or 0), int(spec.high or 0)).map(float)


def values(spec: FieldSpec) -> st.SearchStrategy[Value]:
    match spec.kind:
        case "choice":
            return st.sampled_from(spec.values)
        case "whole":
            return st.integers(int(spec.low or 0), int(spec.high or 0))
        case "number":
            return figures(spec)
        case "size":
            return st.sampled_from(sorted(sizes()))
        case "interval":
            pair = st.tuples(figures(spec), figures(spec)).map(sorted)
            return pair.map(lambda two: Interval(low=two[0], high=two[1]))
        case "date":
            return st.dates().map(lambda day: day.isoformat())
        case "yes-no":
            return st.booleans()
    return st.just(True)


def facts(spec: FieldSpec) -> st.SearchStrategy[Fact]:
    status = st.sampled_from(["confirmed", "corrected", "added", "withdrawn"])
    said = st.builds(lambda value, status: Fact(value=value, status=status), values(spec), status)
    return said | st.just(Fact(value=None, basis="silent", status="confirmed"))


class Work(RuleBasedStateMachine):
    """Edits, undo through inverse(), refused edits, confirmation and reopening of one case."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.path = Path(self.folder.name) / "book.db"
        self.undo: list[tuple[Edit, Record]] = []

    @initialize()
    def begin(self) -> None:
        self.book = Casebook(self.path)
        self.case = self.book.open(self.book.add(draft()))
        self.model = draft()
        self.lines = 1

    def _apply(self, edit: Edit) -> None:
        self.undo.append((edit, self.model.model_copy(deep=True)))
        self.case.apply(edit, who="someone")
        self.lines += 1

    @rule(data=st.data())
    def edit_a_fact(self, data: st.DataObject) -> None:
        entry = data.draw(st.sampled_from([place for place in ENTRIES if self.model.facts_of(place) is not None]))
        spec = data.draw(st.sampled_from(sorted(field_specs()[entry.group].values(), key=lambda spec: spec.name)))
        place = entry.field_of(spec.name)
        after = data.draw(st.none() | facts(spec))
        before = self.model.fact(place)
        self._apply(Edit(place, before and before.model_copy(deep=True), after))
        if after is None:
            self.model.drop(place)
        else:
            self.model.put(place, after.model_copy(deep=True))

    @rule(data=st.data())
    def add_an_entry(self, data: st.DataObject) -> None:
        missing = [place for place in ENTRIES if self.model.facts_of(place) is None]
        if not missing:
            return
        place = data.draw(st.sampled_from(missing))
        spec = data.draw(st.sampled_from(sorted(field_specs()[place.group].values(), key=lambda spec: spec.name)))
        content = {spec.name: data.draw(facts(spec))}
        self._apply(Edit(place, None, content))
        self.model.ensure(place).update({name: fact.model_copy(deep=True) for name, fact in content.items()})

    @rule(data=st.data())
    def drop_an_entry(self, data: st.DataObject) -> None:
        entries = [place for place, _ in self.model.entries() if place.part]
        if entries:
            place = data.draw(st.sampled_from(entries))
            self._apply(Edit.dropping(self.case.record, place))
            self.model.drop_entry(place)

    @precondition(lambda self: self.undo)
    @rule()
    def undo_the_last(self) -> None:
        edit, before = self.undo.pop()
        self.case.apply(edit.inverse(), who="someone")
        self.lines += 1
        self.model = before

    @rule(places=st.sets(st.sampled_from([place.text() for place, _ in draft().walk()])))
    def look_at(self, places: set[str]) -> None:
        self.case.mark_read(places)
        assert places <= self.case.read

    @rule(closing=st.booleans())
    def reopen(self, closing: bool) -> None:
        number, read = self.case.id, self.case.read
        if closing:
            self.book.close()
        self.book = Casebook(self.path)
        self.case = self.book.open(number)
        assert self.case.read == read

    @invariant()
    def the_record_is_what_was_done(self) -> None:
        if hasattr(self, "case"):
            assert self.case.record == self.model
            assert self.book.open(self.case.id).record == self.model
            assert self.case.revision == self.lines - 1

    @invariant()
    def history_holds_every_step(self) -> None:
        if hasattr(self, "case"):
            assert len(self.case.history()) == self.lines

    def teardown(self) -> None:
        if hasattr(self, "book"):
            self.book.close()
        self.folder.cleanup()


_CHECKS = [HealthCheck.too_slow, HealthCheck.data_too_large]
Work.TestCase.settings = settings(max_examples=25, stateful_step_count=20, deadline=None, suppress_health_check=_CHECKS)
TestWork: Any = Work.TestCase
