"""The words and figures of practice, loaded from resources/practice.toml."""

from functools import cache
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from notereader.appraisal.figures import Status, Table, load
from notereader.record import Address
from notereader.vocabulary import FieldSpec, field_specs

Bears = Literal["strength", "glide", "safety"]
Share = Annotated[float, Field(ge=0, le=1)]

# Kinds of skill that are no field of the record; each is a kind of practice.toml without fields.
WHOSE, SILENCE, WORDS, CONTRADICTIONS = "whose", "silence", "words", "contradictions"


class Points(Table):
    """What each difference counts, in shares of the field's weight."""

    right: float = Field(gt=0)
    wrong_words: float
    missed: float
    implied_share: Share
    wrong: float = Field(le=0)
    wrong_whose: float = Field(lt=0)
    read_in: float = Field(lt=0)
    overstated: float = Field(lt=0)
    silence_share: Share
    contradiction: float = Field(gt=0)
    whose_weight: int = Field(ge=1)
    silence_least_weight: int = Field(ge=1, le=3)

    @model_validator(mode="after")
    def _over_statement_weighs_most(self) -> Self:
        if self.overstated > min(self.wrong, self.read_in, self.missed):
            raise ValueError("overstated must cost at least as much as every other difference")
        return self


class Quotes(Table):
    """Which words prove a value."""

    widest_extra: int = Field(ge=0)
    small_words: frozenset[str]
    figure_words: frozenset[str]


class Asking(Table):
    """How many questions a student ranks."""

    ranked: int = Field(ge=1)


class ProgressFigures(Table):
    """How progress is reckoned."""

    half_life_cases: float = Field(gt=0)
    interval: float = Field(gt=0, lt=1)
    few: int = Field(ge=1)
    return_days: tuple[int, ...] = Field(min_length=1)
    difficulty_step: float = Field(ge=0)
    enough_facts: int = Field(ge=1)
    discrimination_least: int = Field(ge=3)
    group_share: float = Field(gt=0, le=0.5)


class Kind(Table):
    """One kind of fact, or of skill where it has no fields."""

    key: str
    label: str
    fields: tuple[str, ...]


class Lean(Table):
    """Which way a wrong value of a field leans."""

    more: Literal["over", "under"] | None = None
    ranks: tuple[tuple[str, ...], ...] = ()
    finer: Literal["over"] | None = None
    silent_over: bool = False


class Why(Table):
    """Why a kind of fact matters."""

    bears: Bears
    text: str = Field(min_length=20)
    source: str = Field(min_length=3)


class Sentences(Table):
    """One sentence for each kind of difference."""

    wrong_over: str
    wrong_under: str
    wrong_other: str
    rival: str
    finer: str
    coarser: str
    missed: str
    missed_silent: str
    missed_implied: str
    read_in_over: str
    read_in: str
    silence_unsaid: str
    silence_seen: str
    words_none: str
    words_elsewhere: str
    words_too_little: str
    words_too_much: str
    whose: str
    contradiction_named: str
    contradiction_missed: str
    contradiction_none: str
    question_late: str
    question_answered: str
    question_twice: str


class PracticeTables(Table):
    """Everything in practice.toml."""

    source: str
    status: Status
    caution: str
    points: Points
    quotes: Quotes
    same_within: dict[str, float]
    asking: Asking
    progress: ProgressFigures
    kind: tuple[Kind, ...]
    lean: dict[str, Lean]
    number_words: tuple[str, ...]
    typed: dict[str, tuple[str, ...]]
    also_typed: dict[str, dict[str, tuple[str, ...]]]
    called: dict[str, tuple[str, ...]]
    sentence: Sentences
    why: dict[str, Why]
    tip: dict[str, str]

    @model_validator(mode="after")
    def _every_field_once(self) -> Self:
        fields = [f"{spec.group}.{name}" for specs in field_specs().values() for name, spec in specs.items()]
        sorted_in = [field for kind in self.kind for field in kind.fields]
        wrong = {f for f in fields if sorted_in.count(f) != 1} | (set(sorted_in) - set(fields))
        if wrong:
            raise ValueError(f"these must stand in exactly one kind: {', '.join(sorted(wrong))}")
        if missing := {WHOSE, SILENCE, WORDS, CONTRADICTIONS} - {kind.key for kind in self.kind}:
            raise ValueError(f"these kinds are missing: {', '.join(sorted(missing))}")
        unsaid = [f for f in fields if f not in self.why and not f.startswith("elements.")]
        if unsaid:
            raise ValueError(f"these fields have no reason under [why]: {', '.join(unsaid)}")
        named = {*self.lean, *self.typed, *self.also_typed, *self.called, *self.tip}
        if unknown := named - set(fields):
            raise ValueError(f"there is no such field: {', '.join(sorted(unknown))}")
        return self


@cache
def tables() -> PracticeTables:
    """Return the words and figures of practice. Raises ResourceFault naming the entry that is wrong."""
    return load("practice.toml", PracticeTables)


def name_of(place: Address) -> str:
    """Return the name of a field as resource files write it, e.g. 'repairs.strands'."""
    return f"{place.group}.{place.field}"


def spec_of(place: Address) -> FieldSpec:
    """Return the definition of the field an address points at."""
    return field_specs()[place.group][place.field]


@cache
def kind_of(field: str) -> str:
    """Return the key of the kind of fact that a field ('repairs.strands') belongs to."""
    return next(kind.key for kind in tables().kind if field in kind.fields)


def why(key: str) -> Why:
    """Return why a field ('repairs.strands') or a skill ('whose', 'contradictions', 'questions') matters."""
    return tables().why.get(key) or tables().why[key.partition(".")[0]]


def tip(field: str) -> str:
    """Return what counts as what for a field, '' where its values explain themselves."""
    return tables().tip.get(field, "")
