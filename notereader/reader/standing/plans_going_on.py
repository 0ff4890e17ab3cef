"""A plan that its label parts in two: 'Plan for the index FDP (cut): four-strand cruciate, running 6-0'."""

from notereader.reader.page import Break, Page, within

_STOPS = frozenset([".", ";", "!", "?"])
_PLANS = frozenset(["plan", "plans", "planned", "intended", "intention"])
_OF_PLAN = frozenset(
    ["strandword", "stitch", "material", "role", "pattern", "deed", "opened", "bite", "hold", "looped"]
)


def mark_plans_going_on(page: Page) -> None:
    """Mark what a label planned on the same line, up to the next full stop, where the plan itself ends in none."""
    for before, sentence in zip(page.sentences, page.sentences[1:], strict=False):
        if page.words[before.i] not in _PLANS or page.standing[before.i] != "plan":
            continue
        on = page.words[before.j - 1] not in _STOPS and before.j == sentence.i
        if on and page.breaks[sentence.i] < Break.LINE and ":" in sentence.said:
            colon = next(k for k in range(sentence.i, sentence.j) if page.words[k] == ":")
            for m in within(page.mentions, colon, sentence.j):
                if m.kind in _OF_PLAN and m.i < m.j:
                    page.mark(m.i, m.j, "plan")
