"""What was shown or tried on a tendon that is nobody's: 'an Adelaide was shown to the resident on a spare tendon'."""

from notereader.reader.layout.clauses import clause_start
from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_SHOWING = word_list("practised", "showing")
_SPARE = word_list("practised", "spare")
_ANIMALS = word_list("practised", "animals")
_STUFFS = word_list("practised", "stuffs")
_FOR_SHOW = word_list("practised", "for_show")
_DRAWING = word_list("practised", "drawing")
_THINGS = word_list("practised", "things")
_ENDS = frozenset([";", ".", "but", "however", "whereas", "while"])
_NEAR = 4  # words: 'spare length of flexor tendon'


def mark_practised(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says was shown or practised on something other than the patient's tendon."""
    if not (_DRAWING.isdisjoint(sentence.said) or _STUFFS.isdisjoint(sentence.said)):
        _mark_drawn(page, sentence)
    if _SHOWING.isdisjoint(sentence.said) or (_SPARE | _ANIMALS | _STUFFS).isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        on_stuff = words[k] in _STUFFS and _lies_on(words, k)
        if not (on_stuff or _is_spare(words, k, sentence.j)):
            continue
        begin = next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if words[n] in _ENDS), sentence.i)
        end = next((n for n in range(k, sentence.j) if words[n] in _ENDS), sentence.j)
        if not (_FOR_SHOW if on_stuff else _SHOWING).isdisjoint(words[begin:end]):
            page.mark(begin, end, "teaching")


def _mark_drawn(page: Page, sentence: Sentence) -> None:
    """'I drew a six-strand M-Tang on the board, then repaired it with a Kessler': what stands up to the board."""
    words = page.words
    for k in (k for k in range(sentence.i, sentence.j) if words[k] in _STUFFS and _lies_on(words, k)):
        verb = next((n for n in range(k - 1, sentence.i - 1, -1) if words[n] in _DRAWING), -1)
        if verb < 0 or not _ENDS.isdisjoint(words[verb:k]):
            continue
        passive = words[verb - 1] in ("was", "were") and verb - 1 > sentence.i  # 'a Savage was drawn on the board'
        page.mark(clause_start(page, sentence, verb) if passive else verb, k + 1, "teaching")


def _lies_on(words: list[str], k: int) -> bool:
    """'On the drape', 'upon a folded glove'."""
    return not {"on", "upon"}.isdisjoint(words[max(0, k - 3) : k])


def _is_spare(words: list[str], k: int, last: int) -> bool:
    """'On a spare length of tendon', "on a pig's foot", 'a model tendon': tell whether word k begins to name such."""
    return words[k] in _ANIMALS or (
        words[k] in _SPARE and not _THINGS.isdisjoint(words[k + 1 : min(k + 1 + _NEAR, last)])
    )
