"""The cautions that stand wherever strength, load, pulleys or glide are shown, printed or exported."""

from functools import cache
from typing import Literal

from notereader.appraisal.figures import Table, load

About = Literal["general", "strength", "glide"]


class Caution(Table):
    """One caution and what it is about."""

    about: About
    text: str
    source: str


class CautionTables(Table):
    """Everything in cautions.toml."""

    brief: str
    caution: tuple[Caution, ...]


@cache
def caution_tables() -> CautionTables:
    """Return the cautions."""
    return load("cautions.toml", CautionTables)


def cautions_about(*about: About) -> list[str]:
    """Return the sentences of the cautions about any of the given matters, in the order of the file."""
    return [c.text for c in caution_tables().caution if c.about in about]


def all_cautions() -> list[str]:
    """Return every caution."""
    return [c.text for c in caution_tables().caution]


def brief_caution() -> str:
    """Return the one line that goes with every row of a table."""
    return caution_tables().brief
