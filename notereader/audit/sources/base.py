"""What a source of notes gives: one input after another, never all at once."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Literal, Protocol

# Columns that every note has, whatever its source: what the record itself says.
MONTH, STITCH, STANDING = "month", "stitch", "confirmed"
FROM_RECORD = (MONTH, STITCH, STANDING)
FOLDER = "folder"


@dataclass(frozen=True, slots=True)
class NoteInput:
    """One note as its source gives it.

    `key` names it within the source and stays the same from run to run; `stamp` changes when its content does. `kind`
    says what `content` is: the path of a file (a note, or a record in JSON), the text of a note, or a record in JSON.
    `link` is the file to open, where there is one. `columns` holds what to group by, `day` the ISO date of the
    operation or '' where the source has none.
    """

    key: str
    name: str
    stamp: str
    kind: Literal["file", "text", "record"]
    content: Path | str | bytes
    link: Path | None = None
    columns: tuple[tuple[str, str], ...] = ()
    day: str = ""


class Source(Protocol):
    """Where notes come from. `words` says it in plain words, `identity` tells one source from another."""

    words: str
    identity: str
    columns: tuple[str, ...]

    def inputs(self) -> Iterator[NoteInput]:
        """Yield every note in an order that is the same every time. Raises AuditFault."""
        ...

    def count(self) -> int | None:
        """Return how many inputs there will be, or None where that is not known beforehand."""
        ...

    def close(self) -> None:
        """Let go of what is open."""
        ...
