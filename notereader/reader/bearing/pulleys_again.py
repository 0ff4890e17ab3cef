"""Pulleys taken up by 'that': 'the A2 of the ring finger was vented, as was that of the small one'."""

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_THAT = frozenset(["that", "those"])
_NAMED = ("pulley", "tendon", "structure", "sided", "bundle", "anynerve", "anyartery", "bone")
_MOVES = word_list("bearing", "rest_moves")  # 'that of the small finger caught': a repair
_PASSED = frozenset(["beneath", "under", "through", "past", "at", "on", "below"])
_LEADS = frozenset(["the", "left", "right", "his", "her"])
_REST = frozenset(["other", "others", "remaining"])
_LIKENING = frozenset(["as", "like", "than", "to", "with"])


def settle_pulleys_again(page: Page) -> None:
    """Add a pulley where 'that of' a finger, or 'those of the others', takes up the one named last."""
    if not any(m.kind == "pulley" for m in page.mentions):
        return
    made: list[Mention] = []
    for n, sentence in enumerate(page.sentences):
        if _THAT.isdisjoint(sentence.said):
            continue
        for k in range(sentence.i, sentence.j - 2):
            if page.words[k] in _THAT and page.words[k + 1] == "of" and _of_a_finger(page, k + 2, sentence.j):
                before = _named_before(page, page.sentences[max(0, n - 1)], sentence, k)
                likened = page.words[k - 1] in _LIKENING and page.words[k - 2 : k] != ["as", "was"]
                if before is not None and before.kind == "pulley" and not likened:
                    made.append(Mention("pulley", before.value, k, k + 1))
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _of_a_finger(page: Page, k: int, end: int) -> bool:
    while k < end and page.words[k] in _LEADS:
        k += 1
    finger = next((m for m in page.mentions if m.i == k and m.kind == "digit"), None)
    if finger is not None:
        return page.words[finger.j : finger.j + 1] == [] or page.words[finger.j] not in _MOVES
    return k < end and page.words[k] in _REST


def _named_before(page: Page, last: Sentence, sentence: Sentence, k: int) -> Mention | None:
    """Return what was named last before word k, in its sentence or the one before it in the paragraph."""
    first = last.i if last.block == sentence.block else sentence.i
    named = [m for m in within(page.mentions, min(first, sentence.i), k) if m.kind in _NAMED and m.j <= k]
    place = bool(named) and not _PASSED.isdisjoint(page.words[max(0, named[-1].i - 2) : named[-1].i])
    return named[-1] if named and not place else None
