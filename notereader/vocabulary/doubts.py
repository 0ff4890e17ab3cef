"""What the signs of a doubtful reading weigh, and the reasons they give, as resources/doubts.toml holds them."""

from functools import cache, cached_property

from pydantic import BaseModel, ConfigDict

from notereader.vocabulary.faults import made
from notereader.vocabulary.places import resource_file

_FILE = "doubts.toml"


class Sign(BaseModel):
    """One sign: what it adds to the doubt, and the reason shown ('' for a sign that speaks for the reading)."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    weight: float
    reason: str = ""


class GivenReason(BaseModel):
    """A kind of reason that the rules give themselves: what it adds to the doubt, and its sentence.

    `always` is told whatever the sum: the note contradicts itself, or a date or a count was inferred.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    weight: float = 0.0
    always: bool = False
    told: str


class Kind(BaseModel):
    """Fields that are misread alike: what each sign adds for them beside what it adds for all."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    fields: tuple[str, ...]
    signs: dict[str, float]


class DoubtTable(BaseModel):
    """The weights that are added up for a fact.

    `fields`, `parts` (a field of one tendon, pulley or structure) and `values` say what is misread more or less than
    the rest.

    A field belongs to one of `kinds`, in which a sign may weigh more or less than elsewhere. Weights are logits:
    `start` is the doubt of a fact that bears no sign, and a fact is doubted from `enough` on.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    source: str
    start: float
    enough: float
    often_misread: str
    often: float
    unheaded: tuple[str, ...]  # elements that are doubted where no heading shows them
    reasons: dict[str, GivenReason]
    signs: dict[str, Sign]
    kinds: dict[str, Kind]
    fields: dict[str, float]
    parts: dict[str, float]
    values: dict[str, float]

    @cached_property
    def weights(self) -> dict[str, dict[str, float]]:
        """Return, for each field as group.field, what every sign adds to its doubt."""
        common = {name: sign.weight for name, sign in self.signs.items()}
        return {
            name: {sign: common[sign] + kind.signs.get(sign, 0.0) for sign in common}
            for kind in self.kinds.values()
            for name in kind.fields
        }


def filled(sentence: str, *words: str) -> str:
    """Return a reason with the note's own words in the place of each WORD, in their order."""
    for word in words:
        sentence = sentence.replace("WORD", word, 1)
    return sentence


@cache
def doubt_table() -> DoubtTable:
    """Return the weights. Raises ResourceFault where the file is missing or an entry is wrong."""
    return made(_FILE, "the file", DoubtTable, resource_file(_FILE))
