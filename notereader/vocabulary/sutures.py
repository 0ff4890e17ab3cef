"""Core stitches, suture materials and suture sizes as the resource files define them."""

from functools import cache
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field

from notereader.vocabulary.places import resource_file


class Stitch(BaseModel):
    """A core stitch: its names, the strands it has where nothing else is said, and how it holds."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    name: str
    aliases: tuple[str, ...] = ()
    strands: int | None = Field(default=None, ge=1, le=16)
    ambiguous: bool = False
    looped: bool = False
    hold: Literal["locking", "grasping"] | None = None
    source: str
    note: str = ""


class Material(BaseModel):
    """A suture material with the words notes use for it; trade names are words a note may contain, nothing more."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    name: str
    words: tuple[str, ...]
    source: str
    note: str = ""


class Size(BaseModel):
    """A USP size with its metric gauge and the limits of the mean diameter in millimetres."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    usp: str
    metric: float = Field(gt=0)
    low_mm: float = Field(gt=0)
    high_mm: float = Field(gt=0)
    note: str = ""


@cache
def stitches() -> dict[str, Stitch]:
    """Return name -> Stitch from stitches.toml."""
    return {s.name: s for s in (Stitch(**entry) for entry in resource_file("stitches.toml")["stitch"])}


@cache
def materials() -> dict[str, Material]:
    """Return name -> Material from materials.toml."""
    return {m.name: m for m in (Material(**entry) for entry in resource_file("materials.toml")["material"])}


@cache
def sizes() -> dict[str, Size]:
    """Return USP size -> Size from sizes.toml, finest first."""
    return {s.usp: s for s in (Size(**entry) for entry in resource_file("sizes.toml")["size"])}
