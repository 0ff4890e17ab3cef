"""The kinds of identifiers and the words by which they are looked for, from resources/identifiers.toml."""

from functools import cache
from typing import Annotated

from pydantic import BaseModel, BeforeValidator, ConfigDict

from notereader.vocabulary import resource_file
from notereader.vocabulary.faults import made

FILE = "identifiers.toml"


def _words(listed: object) -> object:
    """Take a list of words written as one string, or as an array where a word has spaces."""
    return tuple(listed.split()) if isinstance(listed, str) else listed


Words = Annotated[tuple[str, ...], BeforeValidator(_words)]


class _Table(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


class Kind(_Table):
    """One kind of the list: its letter in the regulation, our name for it, its words there, and what is put instead.

    After `labels` a number of this kind may follow at once, after `numbered` only with 'no', '#' and the like between.
    """

    letter: str
    name: str
    law: str
    blank: str
    labels: Words = ()
    numbered: Words = ()


class NameWords(_Table):
    """Words by which names of people and of employers are found."""

    source: str
    titles: Words
    credentials: Words
    labels: Words
    before: Words
    roles: Words
    particles: Words
    given: Words
    ordinary: Words
    businesses: Words


class PlaceWords(_Table):
    """Words by which places are found, and what is larger than they may be."""

    facilities: Words
    streets: Words
    units: Words
    labels: Words
    before: Words
    parts: Words
    larger: Words
    state_letters: Words


class DateWords(_Table):
    """Months, days of the week, feasts, and words after which an incomplete date is believed."""

    months: Words
    weekdays: Words
    ordinals: Words
    feasts: Words
    before: Words
    before_month: Words


class NeverWords(_Table):
    """Words with a capital that identify nobody."""

    source: str
    eponyms: Words
    towns: Words
    trade: Words
    capitals: Words
    ordinary: Words


class IdentifierTables(_Table):
    """Everything in identifiers.toml."""

    source: str
    kind: tuple[Kind, ...]
    names: NameWords
    places: PlaceWords
    dates: DateWords
    never: NeverWords


@cache
def tables() -> IdentifierTables:
    """Return the tables. Raises ResourceFault where the file cannot be used."""
    return made(FILE, "", IdentifierTables, resource_file(FILE))


@cache
def kinds() -> dict[str, Kind]:
    """Return the kinds by name, in the order of the regulation."""
    return {kind.name: kind for kind in tables().kind}
