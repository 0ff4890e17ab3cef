"""The fields of the record as resources/fields.toml defines them, and what values each can take."""

from functools import cache
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from notereader.vocabulary.places import resource_file

GROUPS = ("operation", "repairs", "pulleys", "injuries", "aftercare", "elements")

Kind = Literal["choice", "whole", "number", "size", "interval", "date", "yes-no", "named"]


class FieldSpec(BaseModel):
    """One field of the record: its name on screen, its kind of value and the values that are possible."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    group: str
    name: str
    label: str
    kind: Kind
    values: tuple[str, ...] = ()
    low: float | None = None
    high: float | None = None
    unit: str = ""
    meaning: str = ""
    weight: Annotated[int, Field(ge=1, le=3)] = 1


@cache
def field_specs() -> dict[str, dict[str, FieldSpec]]:
    """Return group -> field name -> FieldSpec, in the order of the file."""
    raw = resource_file("fields.toml")
    return {
        group: {name: FieldSpec(group=group, name=name, **entry) for name, entry in raw.get(group, {}).items()}
        for group in GROUPS
    }
