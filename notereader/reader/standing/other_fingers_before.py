"""A finger of an earlier operation held beside this one: 'his ring finger, repaired last year, never gapped'."""

from collections.abc import Sequence

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_WORKED_ON = word_list("other_fingers_before", "worked_on")
_AGAIN = word_list("other_fingers_before", "again")
_OWNERS = frozenset(["his", "her", "their", "the", "this", "patient's", "same"])


def of_other_finger(page: Page, sentence: Sentence, comma: int, aside: Sequence[str]) -> bool:
    """Tell whether the aside behind a comma says when another finger was operated on, so that all is of that one.

    'Small FDP complete. His middle finger, which I operated on last year, had six strands': named only here, behind
    the finger of this operation, and nothing is done to it now.
    """
    named = [m for m in within(page.mentions, sentence.i, comma) if m.kind == "digit"]
    if not named or named[-1].j != comma or _WORKED_ON.isdisjoint(aside) or not _AGAIN.isdisjoint(sentence.said):
        return False
    lead = set(page.words[sentence.i : named[0].i]) - _OWNERS
    others = {m.value for m in page.mentions if m.kind == "digit" and m.j <= sentence.i}
    elsewhere = {m.value for m in page.mentions if m.kind == "digit" and not sentence.i <= m.i < sentence.j}
    return len(named) == 1 and not lead and bool(others) and named[0].value not in elsewhere
