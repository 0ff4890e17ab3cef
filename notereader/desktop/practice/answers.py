"""A student's answers as rows and steps: what was entered, what is open, and what each key does. Knows no Qt."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from notereader.casebook.edits import ENTRY_GROUPS
from notereader.desktop.rows import Heading, Item, Row, Standing, items_of
from notereader.desktop.steps import Change, Step, StepRefused, take_rival
from notereader.practice.cases import needed_silences
from notereader.practice.words import tip
from notereader.record import Address, Evidence, Fact, Record, Rival, Value, check_value, show_value
from notereader.vocabulary import field_specs

_WORDS = {Standing.ADDED: "entered", Standing.NOT_FOUND: "not entered"}


@dataclass(frozen=True)
class AnswerRow(Row):
    """One fact as the student entered it, or one that can be entered; `needed` where its absence must be said too."""

    needed: bool = False

    @property
    def word(self) -> str:
        """The word that says where the fact stands."""
        if self.fact is None and self.needed:
            return "open"
        return _WORDS.get(self.standing, str(self.standing))

    @property
    def unsettled(self) -> bool:
        """True while something that changes the work is neither entered nor called silent."""
        return self.needed and self.fact is None

    @property
    def proof(self) -> str:
        """The words the student marked, or what can be done."""
        if self.fact is not None:
            return super().proof
        if self.needed:
            return "Open, and it matters: enter what the note says, or say that the note is silent."
        return "Nothing is entered. Where the note says nothing of it, nothing need be entered."

    @property
    def tip(self) -> str:
        """What counts as what in this field."""
        return tip(f"{self.address.group}.{self.address.field}")


def answer_items(
    record: Record, asked: Callable[[Address], bool], again: Iterable[Address] = (), *, every_field: bool
) -> list[Item]:
    """Return headings and rows for what can be answered so far; it follows from the student's own answers alone.

    `asked` says which facts the exercise asks for. `again` are the facts of an exercise that asks only for those
    missed before. Without `every_field` only what was entered, and what changes the work, is listed.
    """
    wanted = set(again)
    needed = wanted or {place for place in needed_silences(record) if asked(place)}
    # Entries are added to lists of its own; the facts are only read.
    room = record.model_copy(update={group: list(getattr(record, group)) for group in ENTRY_GROUPS})
    for place in needed:
        room.ensure(place)
    every = {fact_address.text() for fact_address, _ in record.walk()}
    rows = [item for item in items_of(room, every, every_field=True) if isinstance(item, Row)]
    kept = [
        row for row in rows if asked(row.address) and (row.fact is not None or every_field or row.address in needed)
    ]
    items: list[Item] = []
    last: Heading | None = None
    for row in kept:
        if row.heading != last:
            items.append(row.heading)
            last = row.heading
        items.append(
            AnswerRow(row.address, row.spec, row.fact, row.heading, row.label, False, needed=row.address in needed)
        )
    return items


def take_back(record: Record, address: Address) -> Step:
    """Take out what was entered. Raises StepRefused where nothing was."""
    if record.fact(address) is None:
        raise StepRefused("Nothing is entered here, so there is nothing to take back.")
    return Step(f"take back {address.words()}", (Change(address, None),))


def take_back_entry(record: Record, place: Address) -> Step:
    """Take out a whole tendon, pulley or structure. Raises StepRefused where it holds nothing."""
    if not record.facts_of(place):
        raise StepRefused(f"Nothing is entered for {place.entry_words()}.")
    return Step(f"take back {place.entry_words()}", (Change(place.entry(), None),))


def say_silent(record: Record, places: Sequence[Address]) -> Step:
    """Say that the note is silent on all of these. Raises StepRefused where there is none."""
    if not places:
        raise StepRefused("Nothing that matters is open under this heading.")
    entries: dict[Address, dict[str, Fact]] = {}
    changes = []
    for place in places:
        fact = Fact(value=None, basis="silent", status="confirmed")
        if record.facts_of(place) is None:
            entries.setdefault(place.entry(), {})[place.field] = fact
        else:
            changes.append(Change(place, fact))
    whole = (Change(entry, facts) for entry, facts in entries.items())
    return Step(f"say that the note is silent on {len(places)} facts", (*whole, *changes))


def second_value(record: Record, address: Address, value: Value, evidence: Evidence | None) -> Step:
    """Enter a further value that the note gives for a fact. Raises StepRefused where there is no first one."""
    spec = field_specs()[address.group][address.field]
    value = check_value(spec, value)
    fact = record.fact(address)
    if fact is None or fact.value is None:
        raise StepRefused("Enter the first value before the second one: the one that promises less.")
    if value == fact.value or any(value == rival.value for rival in fact.rivals):
        raise StepRefused(f"{show_value(value, spec.unit)} is entered already.")
    rival = Rival(value=value, evidence=[evidence] if evidence else [])
    after = fact.model_copy(update={"rivals": [*fact.rivals, rival]}, deep=True)
    return Step(f"enter a second value for {address.words()}", (Change(address, after),))


def other_first(record: Record, address: Address, number: int) -> Step:
    """Put the further value of that number (from 0) first, the first one behind it. Raises StepRefused."""
    step = take_rival(record, address, number)
    changes = [
        Change(change.address, change.after.model_copy(update={"status": "added"}))
        for change in step.changes
        if isinstance(change.after, Fact)
    ]
    return Step(step.words, tuple(changes))


def one_value(record: Record, address: Address) -> Step:
    """Take back every further value of a fact."""
    fact = record.fact(address)
    if fact is None or not fact.rivals:
        return Step("", ())
    after = fact.model_copy(update={"rivals": []}, deep=True)
    return Step(f"take back the second value of {address.words()}", (Change(address, after),))


def two_values(record: Record) -> list[tuple[Address, str]]:
    """Return every fact for which more than one value was entered, and its values in words."""
    found = []
    for place, fact in record.walk():
        if fact.live and fact.rivals:
            unit = field_specs()[place.group][place.field].unit
            values = [fact.value, *(rival.value for rival in fact.rivals)]
            found.append((place, " and ".join(show_value(value, unit) for value in values)))
    return found


def with_value(record: Record) -> list[tuple[Address, str]]:
    """Return every fact that was entered with a value, and its value in words."""
    return [
        (place, show_value(fact.value, field_specs()[place.group][place.field].unit))
        for place, fact in record.walk()
        if fact.live
    ]


def moved(places: Sequence[str], number: int, way: int) -> list[str]:
    """Return a ranking with the entry of that number moved one place up (-1) or down (1), where there is room."""
    target = number + way
    ranked = list(places)
    if 0 <= number < len(ranked) and 0 <= target < len(ranked):
        ranked[number], ranked[target] = ranked[target], ranked[number]
    return ranked
