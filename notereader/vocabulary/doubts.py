"""What the signs of a doubtful reading weigh, and the reasons they give, as resources/doubts.toml holds them."""

from functools import cache

from pydantic import BaseModel, ConfigDict

from notereader.vocabulary.faults import made
from notereader.vocabulary.places import resource_file

_FILE = "doubts.toml"


class Sign(BaseModel):
    """One sign: what it adds to the doubt, and the reason shown ('' for a sign that speaks for the reading)."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    weight: float
    reason: str = ""


class DoubtTable(BaseModel):
    """The weights that are added up for a fact; `fields` and `values` say what is misread more or less than the rest.

    Weights are logits: `start` is the doubt of a fact that bears no sign, and a fact is doubted from `enough` on.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    source: str
    start: float
    enough: float
    often_misread: str
    often: float
    signs: dict[str, Sign]
    fields: dict[str, float]
    values: dict[str, float]


@cache
def doubt_table() -> DoubtTable:
    """Return the weights. Raises ResourceFault where the file is missing or an entry is wrong."""
    return made(_FILE, "the file", DoubtTable, resource_file(_FILE))
