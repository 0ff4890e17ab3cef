"""Tendons that a form letters before it asks for each: 'Tendon A  FDP' above 'Zone A  IC', 'Division A ...'.

What is answered behind 'Zone A' is told of tendon A, and what is asked without a letter, of those that were hurt.
"""

from notereader.reader.page import Break, Page, Sentence, within

Span = tuple[int, int]
_NOUN = "tendon"
_LONGEST = 4  # words of a label: '11  Zone A', '13  Division of A'
_NOT_HURT = frozenset(["none", "nil", "not", "intact", "no", "uninjured"])
_ASKED_OF_ALL = ("role", "strandword", "endword", "stitch", "hold", "looped", "bite", "gap", "glide", "pattern")


def lend_lettered_names(page: Page) -> None:
    """Give the lines behind 'Tendon A  FDP' the name of the tendon whose letter their label ends with."""
    named: dict[str, Span] = {}
    hurt: dict[str, Span] = {}
    for sentence in page.sentences:
        k = _letter(page, sentence)
        if k is None:
            if len(named) > 1 and len(hurt) == 1 and _asks(page, sentence):
                sentence.prefix = list(hurt.values())
            continue
        letter, answer = page.words[k], within(page.mentions, k + 1, sentence.j)
        if page.words[k - 1] == _NOUN and [m.kind for m in answer] == ["tendon"]:
            named[letter] = hurt[letter] = (answer[0].i, answer[0].j)
        elif letter in named:
            sentence.prefix = [named[letter]]
            if not _NOT_HURT.isdisjoint(page.words[k + 1 : sentence.j]):
                hurt.pop(letter, None)
                _spare(page, sentence, k)


def _spare(page: Page, sentence: Sentence, k: int) -> None:
    """'Division B   none': what the label asks for did not happen, as the answer behind it says."""
    asked = [m for m in within(page.mentions, sentence.i, k) if m.kind == "extent"]
    answer = k + 1 + (page.words[k + 1] == ":")
    if asked and answer + 1 == sentence.j:
        asked[0].value, asked[0].i, asked[0].j = "intact", answer, answer + 1
        page.mentions.sort(key=lambda m: (m.i, m.j))


def _letter(page: Page, sentence: Sentence) -> int | None:
    """Return the place of the letter that closes the label of a line, None where none does."""
    last = min(sentence.i + _LONGEST, sentence.j)
    ends = (k for k in range(sentence.i + 1, last) if page.breaks[k] < Break.COLUMN and _is_closed(page, k))
    k = next(ends, None)
    return k if k is not None and page.breaks[sentence.i] >= Break.LINE and _is_letter(page.words[k]) else None


def _is_closed(page: Page, k: int) -> bool:
    """'Zone A    IC', 'Zone A: IC': a wide gap or a colon behind the label."""
    return page.words[k + 1 : k + 2] in ([], [":"]) or page.breaks[k + 1] >= Break.COLUMN


def _is_letter(word: str) -> bool:
    return word in ("a", "b", "c")


def _asks(page: Page, sentence: Sentence) -> bool:
    """Tell whether a line of its own asks for a suture or a result and names no tendon itself."""
    kinds = {m.kind for m in within(page.mentions, sentence.i, sentence.j)}
    free = not sentence.prefix and page.breaks[sentence.i] >= Break.LINE
    return free and _NOUN not in kinds and not kinds.isdisjoint(_ASKED_OF_ALL)
