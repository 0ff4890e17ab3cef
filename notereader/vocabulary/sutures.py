"""Core stitches, suture materials and suture sizes as the resource files define them."""

from collections.abc import Iterator
from functools import cache
from typing import Literal, TypeVar

from pydantic import BaseModel, ConfigDict, Field

from notereader.vocabulary.faults import listed, made


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
    """A suture material with the words notes use for it; trade names are words a note may contain, nothing more.

    `after_size` words mean the material only right behind a size: 'PP' is polypropylene in '5-0 PP', else a bone.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    name: str
    words: tuple[str, ...]
    after_size: tuple[str, ...] = ()
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


_Entry = TypeVar("_Entry", Stitch, Material, Size)


def _read(file: str, table: str, model: type[_Entry]) -> Iterator[_Entry]:
    for number, entry in enumerate(listed(file, table), 1):
        yield made(file, f"[[{table}]] number {number}", model, entry)


@cache
def stitches() -> dict[str, Stitch]:
    """Return name -> Stitch from stitches.toml. Raises ResourceFault."""
    return {s.name: s for s in _read("stitches.toml", "stitch", Stitch)}


@cache
def materials() -> dict[str, Material]:
    """Return name -> Material from materials.toml. Raises ResourceFault."""
    return {m.name: m for m in _read("materials.toml", "material", Material)}


@cache
def sizes() -> dict[str, Size]:
    """Return USP size -> Size from sizes.toml, finest first. Raises ResourceFault."""
    return {s.usp: s for s in _read("sizes.toml", "size", Size)}
