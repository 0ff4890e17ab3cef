"""A note may break off anywhere: whatever its last words are, it is read."""

import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from notereader.reader import read

RESOURCES = Path(__file__).parents[2] / "resources"
OPENING = "Ring FDP and A2 cut, repaired with four strands of 4-0. "


def _phrases(entry: object) -> Iterator[str]:
    if isinstance(entry, dict):
        for value in entry.values():
            yield from _phrases(value)
    elif isinstance(entry, list):
        yield from (phrase for phrase in entry if isinstance(phrase, str))


CUES = tomllib.loads((RESOURCES / "cues.toml").read_text(encoding="utf-8"))["cue"]


@pytest.mark.parametrize("kind", sorted(CUES))
def test_every_cue_may_be_the_last_words_of_a_note(kind: str) -> None:
    for phrase in sorted(set(_phrases(CUES[kind]))):
        text = OPENING + phrase
        quotes = [evidence for _, fact in read(text).walk() for evidence in fact.evidence]
        assert all(quote.span and text[slice(*quote.span)] == quote.exact for quote in quotes), phrase
