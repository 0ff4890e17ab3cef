"""A label that holds for more than one sentence of its line: 'GLIDE: MF catches at A2. RF free.'"""

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Mention, Page, Sentence, page_of, within

_ASKED = frozenset(
    ["glide", "gliding", "run", "bulk", "bulky", "gap", "gaps", "tension", "knot", "knots", "test", "ends"]
)
_LONGEST_LABEL, _LONGEST_ANSWER = 3, 5  # words


@Language.component("notereader_labels")
def labels(doc: Doc) -> Doc:
    """Give the short sentences on a label's line that begin with a finger that label. RETURNS the same Doc."""
    page = page_of(doc)
    label: tuple[int, int] | None = None
    for sentence in page.sentences:
        if page.breaks[sentence.i] >= Break.LINE or sentence.prefix:
            label = None if sentence.prefix else _label(page, sentence)
        elif label is not None and sentence.j - sentence.i <= _LONGEST_ANSWER:
            finger = _finger_at(page, sentence.i)
            if finger is None or finger.j >= sentence.j:
                label = None
                continue
            sentence.prefix = [(finger.i, finger.j), label]
            sentence.i = finger.j
        else:
            label = None
    return doc


def _label(page: Page, sentence: Sentence) -> tuple[int, int] | None:
    """Return the label of a sentence that asks how something went, where its answer begins with a finger too."""
    head = page.words[sentence.i : sentence.i + _LONGEST_LABEL + 1]
    if ":" not in head[1:]:
        return None
    colon = sentence.i + head.index(":")
    asks = not _ASKED.isdisjoint(page.words[sentence.i : colon])
    return (sentence.i, colon) if asks and _finger_at(page, colon + 1) is not None else None


def _finger_at(page: Page, k: int) -> Mention | None:
    return next((m for m in within(page.mentions, k, k + 1) if m.kind == "digit" and m.i == k), None)
