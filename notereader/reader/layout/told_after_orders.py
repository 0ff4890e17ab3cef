"""Paragraphs below the orders that tell of the operation: 'PLAN: ...' and then 'FDS was not repaired.'."""

from dataclasses import replace

from notereader.reader.layout.sentences import sentence_end
from notereader.reader.page import Break, Page, Section, within

_NAMES = ("tendon", "structure", "sided", "anynerve", "anyartery", "pulley")
_ARTICLES = frozenset(["the", "both", "all"])
_OPENING = 3  # words: 'the radial digital nerve', 'FDS'
_TOLD = frozenset(["was", "were"])
_ORDERED = frozenset(
    ["day", "days", "week", "weeks", "splint", "therapy", "should", "will", "may", "must", "be", "until", "if", "so"]
)


def until_told(page: Page, section: Section) -> list[Section]:
    """Part orders from a paragraph below them that opens on a tendon, nerve or pulley and what was done to it."""
    if section.kind != "instructions":
        return [section]
    starts = (k for k in range(section.i + 1, section.j) if page.breaks[k] == Break.BLANK)
    k = next((k for k in starts if _tells(page, k)), None)
    return [section] if k is None else [replace(section, j=k), Section("narrative", k, k, section.j)]


def _tells(page: Page, k: int) -> bool:
    """'The radial digital nerve was repaired with 9-0.', but not 'The nerve was repaired, so splint for 3 weeks.'."""
    end = sentence_end(page, k)
    first = k + (page.words[k] in _ARTICLES)
    named = any(m.kind in _NAMES and m.i < k + _OPENING for m in within(page.mentions, first, end))
    done = any(m.kind == "deed" for m in within(page.mentions, first, end))
    said = set(page.words[k:end])
    return named and done and not _TOLD.isdisjoint(said) and _ORDERED.isdisjoint(said)
