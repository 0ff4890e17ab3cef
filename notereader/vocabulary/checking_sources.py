"""Figures without a source: whoever reads a figure must be able to ask where it comes from."""

from collections.abc import Iterator
from typing import Any

from notereader.vocabulary.faults import EntryFault

# Figures that are no statement about the world: limits of a field, what a word means, how the program behaves.
_NO_SOURCE = ("fields.toml", "reading.toml", "spelling.toml")
# Tables whose figures have their source elsewhere in the same file, as it says there.
_ELSEWHERE = {
    "checks.toml": ("limits", "strand_counts"),
    "glide.toml": ("arms", "bowstring", "window"),
    "strength.toml": ("bend",),
}


def source_faults(file: str, raw: dict[str, Any]) -> Iterator[EntryFault]:
    """Yield the entries that hold figures and neither have a source nor stand in something that has one."""
    if file in _NO_SOURCE or _sourced(raw):
        return
    for key, value in raw.items():
        if key in _ELSEWHERE.get(file, ()):
            continue
        entries = value if isinstance(value, list) else [value]
        for number, entry in enumerate(entries, 1):
            place = f"[[{key}]] number {number}" if isinstance(value, list) else f"[{key}]"
            for lacking in _without_source(entry, place):
                yield EntryFault(
                    file,
                    lacking,
                    "it holds figures and no source",
                    'add: source = "..." (or "common practice, no source")',
                )


def _sourced(entry: dict[str, Any]) -> bool:
    return isinstance(entry.get("source"), str) and len(entry["source"].strip()) > 2


def _without_source(entry: object, place: str) -> Iterator[str]:
    if not isinstance(entry, dict) or _sourced(entry):
        return
    if any(_is_figure(value) for value in entry.values()):
        yield place
        return
    for key, value in entry.items():
        for inner in value if isinstance(value, list) else [value]:
            yield from _without_source(inner, f"{place} {key}")


def _is_figure(value: object) -> bool:
    if isinstance(value, list):
        return any(_is_figure(each) for each in value)
    return isinstance(value, int | float) and not isinstance(value, bool)
