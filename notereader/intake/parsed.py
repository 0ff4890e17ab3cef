"""What a parser hands back from its own process: the text of each page and what a person should know of it."""

import json
from dataclasses import asdict, dataclass, field
from typing import Any


@dataclass(frozen=True)
class Page:
    """One page, or the whole of a document that knows no pages. `scanned`: a picture whose words are not characters."""

    text: str
    scanned: bool = False


@dataclass(frozen=True)
class Parsed:
    """The pages in order and warnings in plain sentences; or the picture of one page (PNG, base64), where asked for."""

    pages: list[Page] = field(default_factory=list)
    warnings: list[str] = field(default_factory=list)
    picture: str = ""

    def to_json(self) -> bytes:
        """Return this as JSON in ASCII, which also carries lone surrogates."""
        return json.dumps(asdict(self)).encode("ascii")

    @classmethod
    def from_json(cls, raw: dict[str, Any]) -> "Parsed":
        """Read what to_json wrote. Raises KeyError or TypeError where it is something else."""
        return cls([Page(**page) for page in raw["pages"]], raw["warnings"], raw["picture"])


def name_pages(numbers: list[int], one: str, several: str) -> str:
    """Return 'Page 2 is a picture' or 'Pages 2 and 3 are pictures', to begin a sentence."""
    if len(numbers) == 1:
        return f"Page {numbers[0]} is {one}"
    return f"Pages {', '.join(map(str, numbers[:-1]))} and {numbers[-1]} are {several}"


def left_out_warnings(how: set[str]) -> list[str]:
    """Return a sentence for each way in which words of a document are marked as not said, such as 'hidden'."""
    return [f"Words marked as {mark} were left out of the note; compare with the original." for mark in sorted(how)]
