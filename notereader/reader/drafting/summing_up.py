"""A summary behind the telling takes nothing back of it: 'Summary: repair of FDP, no gap.' below a gap seen."""

from dataclasses import replace

from notereader.reader.desk import Finding
from notereader.reader.page import Page
from notereader.vocabulary.wordlists import word_list

_LABELS = [words.split() for words in word_list("summing_up", "labels")]


def behind_the_telling(page: Page, findings: list[Finding]) -> list[Finding]:
    """Return the findings, those of a summary that the note has told before weighed like those of its title."""
    blocks = {s.block for s in page.sentences if _opens_summary(page, s.i)}
    summed = [range(s.i, s.j) for s in page.sentences if s.block in blocks]
    if not summed:
        return findings
    first = summed[0].start
    told = {(f.group, f.entry, f.field) for f in findings if f.order < first and not f.header}
    return [
        replace(f, header=True)
        if (f.group, f.entry, f.field) in told and any(f.order in words for words in summed)
        else f
        for f in findings
    ]


def _opens_summary(page: Page, at: int) -> bool:
    return any(page.words[at : at + len(label) + 1] == [*label, ":"] for label in _LABELS)
