"""Statements that a slash parts: 'No gap IF / 1 mm gap MF' tells of two fingers as two sentences would."""

from dataclasses import replace

from notereader.reader.page import Break, Page, Sentence, within

_MARKS = frozenset(["/", "-", "&", "+"])
_STATES = frozenset(["gap", "glide", "tension", "bulk"])


def part_at_slashes(page: Page) -> None:
    """Cut the sentences whose two sides of a mark each name a finger and tell of the same kind of state."""
    if _MARKS.isdisjoint(page.words):
        return
    cut: list[Sentence] = []
    for sentence in page.sentences:
        k = None if sentence.prefix or _MARKS.isdisjoint(sentence.said) else _parting(page, sentence)
        while k is not None:
            cut.append(replace(sentence, j=k, said=frozenset(page.words[sentence.i : k])))
            sentence = replace(sentence, i=k + 1, label=False, said=frozenset(page.words[k + 1 : sentence.j]))
            k = _parting(page, sentence)
        cut.append(sentence)
    page.sentences = cut


def _parting(page: Page, sentence: Sentence) -> int | None:
    """Return the first mark with a whole statement of its own on either side."""
    return next((k for k in range(sentence.i + 1, sentence.j - 1) if _parts(page, sentence, k)), None)


def _parts(page: Page, sentence: Sentence, k: int) -> bool:
    if page.words[k] not in _MARKS or Break.NONE in page.breaks[k : k + 2]:
        return False
    before, behind = within(page.mentions, sentence.i, k), within(page.mentions, k + 1, sentence.j)
    last = [m.value for m in before if m.kind == "digit"][-1:]
    fingers = [m.value for m in behind if m.kind == "digit"]
    told = [{m.kind for m in side} & _STATES for side in (before, behind)]
    return bool(last and fingers) and last[0] not in fingers and bool(told[0] & told[1])
