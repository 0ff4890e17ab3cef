"""Words of the notes with what they mean: kind, value and every way of writing them."""

from collections.abc import Iterator
from functools import cache
from typing import Any

from pydantic import BaseModel, ConfigDict

from notereader.vocabulary.faults import made
from notereader.vocabulary.places import ResourceFault, resource_file
from notereader.vocabulary.sutures import materials, stitches

# Each of these files holds tables [kind."value"] with `words` and a `source`.
TERM_FILES = ("anatomy.toml", "headings.toml", "findings.toml", "cues.toml", "care.toml")

AFTER_SIZE = "material after a size"  # the kind of words that mean a material only there


class Term(BaseModel):
    """One meaning: `kind` says what sort of thing it is, `value` which one, `words` how notes write it.

    `exact` words are matched with their capitals as written ("IF" is a finger, "if" is not).
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    kind: str
    value: str
    words: tuple[str, ...] = ()
    exact: tuple[str, ...] = ()
    source: str = "common practice, no source"
    note: str = ""


def terms_of(file: str, raw: dict[str, Any]) -> Iterator[Term]:
    """Yield the terms of one parsed file: every table [kind.value]. Raises ResourceFault."""
    for kind, entries in raw.items():
        if not isinstance(entries, dict) or not all(isinstance(entry, dict) for entry in entries.values()):
            raise ResourceFault(f"{file}: {kind} is no table. Begin each entry with a line such as [kind.value].")
        for value, entry in entries.items():
            yield made(file, f"[{kind}.{value}]", Term, {**entry, "kind": kind, "value": value})


@cache
def terms() -> tuple[Term, ...]:
    """Return every term of the term files, the stitches and the materials. Raises ResourceFault."""
    found = [term for name in TERM_FILES for term in terms_of(name, resource_file(name))]
    for s in stitches().values():
        found.append(Term(kind="stitch", value=s.name, words=(s.name, *s.aliases), source=s.source))
    for m in materials().values():
        found.append(Term(kind="material", value=m.name, words=m.words, source=m.source))
        if m.after_size:
            found.append(Term(kind=AFTER_SIZE, value=m.name, words=m.after_size, source=m.source))
    return tuple(found)
