"""What a short sentence behind it disowns: 'A2 was intact. Sorry, wrong patient.', '... This did not happen.'"""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_DISOWNING = phrases_by_first_word("disowned_after", "phrases")
_SMALL = word_list("disowned_after", "small")  # 'sorry, that was ...'


def mark_disowned_after(page: Page) -> None:
    """Set aside each sentence that the next one disowns and puts nothing in its place."""
    for before, sentence in zip(page.sentences, page.sentences[1:], strict=False):
        told_of = before.block == sentence.block and not _DISOWNING.keys().isdisjoint(sentence.said)
        if told_of and _only_disowns(page, sentence):
            page.mark(before.i, before.j, "teaching")


def _only_disowns(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence holds the words that disown and otherwise only small ones."""
    k, disowned = sentence.i, False
    while k < sentence.j:
        phrase = next((p for p in _DISOWNING.get(page.words[k], ()) if page.words[k : k + len(p)] == p), None)
        if phrase is None and page.words[k] not in _SMALL:
            return False
        disowned = disowned or phrase is not None
        k += len(phrase) if phrase else 1
    return disowned
