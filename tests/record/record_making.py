"""Records of every shape the format allows, for hypothesis."""

from datetime import UTC, date, datetime
from typing import Any

from contract_tables import DIGITS, PULLEYS, STRUCTURES, TENDONS
from hypothesis import strategies as st

from notereader.record import Evidence, Fact, Injury, Interval, Note, Pulley, Record, Remark, Repair, Review, Rival
from notereader.record import source_of as source
from notereader.vocabulary import FieldSpec, field_specs, sizes

# Every character that a cleaned note can hold, those outside the basic plane among them.
NOTE_TEXTS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\x00\r"), min_size=1, max_size=120)


def values(spec: FieldSpec) -> st.SearchStrategy[Any]:
    """Return every value that a field takes."""
    low, high = spec.low or 0, spec.high or 0
    figures = st.floats(low, high, allow_nan=False).map(lambda figure: round(figure, 2))
    kinds: dict[str, st.SearchStrategy[Any]] = {
        "choice": st.sampled_from(spec.values or ("-",)),
        "whole": st.integers(int(low), int(high)),
        "number": st.one_of(st.integers(int(low), int(high)), figures),
        "size": st.sampled_from(list(sizes())),
        "interval": st.one_of(
            st.tuples(figures, figures).map(lambda both: Interval(low=min(both), high=max(both))),
            figures.map(lambda figure: Interval(low=figure, high=None)),
            figures.map(lambda figure: Interval(low=None, high=figure)),
        ),
        "date": st.dates(date(1900, 1, 1)).map(date.isoformat),
        "yes-no": st.booleans(),
        "named": st.just(True),
    }
    return kinds[spec.kind]


def quotes(text: str) -> st.SearchStrategy[Evidence]:
    """Return evidence anywhere in a text."""
    spans = st.tuples(st.integers(0, len(text)), st.integers(0, len(text)))
    return spans.map(lambda span: Evidence.at(text, min(span), max(span), source(text)))


@st.composite
def facts(draw: st.DrawFn, spec: FieldSpec, text: str) -> Fact:
    """Return a fact of a field, or one on which a person found the note silent."""
    if draw(st.integers(0, 9)) == 0:
        return Fact(value=None, basis="silent", status="confirmed")
    return Fact(
        value=draw(values(spec)),
        basis=draw(st.sampled_from(["stated", "implied"])),
        status=draw(st.sampled_from(["proposed", "confirmed", "corrected", "added", "withdrawn"])),
        evidence=draw(st.lists(quotes(text), max_size=2)),
        rivals=draw(
            st.lists(st.builds(Rival, value=values(spec), evidence=st.lists(quotes(text), max_size=1)), max_size=1)
        ),
        look_twice=draw(st.lists(st.text(st.characters(exclude_categories=["Cs"]), max_size=20), max_size=2)),
        rule=draw(st.none() | st.just("a rule")),
        said_by=draw(st.none() | st.just("the surgeon")),
        said_on=draw(st.none() | st.dates(date(2000, 1, 1), date(2100, 1, 1))),
    )


@st.composite
def groups(draw: st.DrawFn, group: str, text: str) -> dict[str, Fact]:
    """Return some facts of a group or entry."""
    specs = field_specs()[group]
    names = draw(st.lists(st.sampled_from(list(specs)), unique=True, max_size=3))
    return {name: draw(facts(specs[name], text)) for name in names}


def entries(model: type, parts: list[str], part: str, side: str | None, group: str, text: str) -> Any:
    """Return entries of one kind, none of them twice."""
    places = st.tuples(
        st.none() | st.sampled_from(DIGITS),
        st.sampled_from(parts),
        st.sampled_from([None, "radial", "ulnar"]) if side else st.none(),
    )

    def made(draw: st.DrawFn) -> list[Any]:
        found = draw(st.lists(places, unique=True, max_size=3))
        return [
            model(digit=digit, facts=draw(groups(group, text)), **{part: name}, **({side: which} if side else {}))
            for digit, name, which in found
        ]

    return st.composite(made)()


@st.composite
def records(draw: st.DrawFn) -> Record:
    """Return a record of an invented text, with facts of every group."""
    text = draw(NOTE_TEXTS)
    confirmed = draw(st.booleans())
    return Record(
        note=Note.of(text, draw(st.none() | st.just("note.txt"))),
        operation=draw(groups("operation", text)),
        repairs=draw(entries(Repair, TENDONS, "tendon", "slip", "repairs", text)),
        pulleys=draw(entries(Pulley, PULLEYS, "pulley", None, "pulleys", text)),
        injuries=draw(entries(Injury, STRUCTURES, "structure", "side", "injuries", text)),
        aftercare=draw(groups("aftercare", text)),
        elements=draw(groups("elements", text)),
        review=Review(
            reviewer="T. Reviewer" if confirmed else None,
            confirmed_at=datetime(2031, 3, 14, 15, 9, tzinfo=UTC) if confirmed else None,
            reader_version="0.1.0",
        ),
        remarks=draw(
            st.lists(
                st.builds(Remark, text=st.just("a remark"), evidence=st.lists(quotes(text), max_size=1)), max_size=1
            )
        ),
    )
