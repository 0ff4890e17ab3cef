"""The fields of the record as resources/fields.toml defines them, and what values each can take."""

from functools import cache
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from notereader.vocabulary.faults import made
from notereader.vocabulary.places import ResourceFault, resource_file

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
    """Return group -> field name -> FieldSpec, in the order of the file. Raises ResourceFault."""
    raw = resource_file("fields.toml")
    specs: dict[str, dict[str, FieldSpec]] = {}
    for group in GROUPS:
        entries = raw.get(group)
        if not isinstance(entries, dict) or not all(isinstance(entry, dict) for entry in entries.values()):
            raise ResourceFault(
                f"fields.toml: there are no fields [{group}.NAME] in it. Put them back or install again."
            )
        specs[group] = {
            name: made("fields.toml", f"[{group}.{name}]", FieldSpec, {**entry, "group": group, "name": name})
            for name, entry in entries.items()
        }
    return specs
