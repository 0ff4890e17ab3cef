"""A label that is answered finger by finger: 'GLIDE: MF catches at A2. RF free.', 'Tension: ring none, middle some'."""

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Mention, Page, Sentence, page_of, within
from notereader.vocabulary.wordlists import word_list

_ASKED = word_list("labels", "asked")
_PARTS = frozenset([",", ";"])
_FINGERS = {d: d for d in ("index", "middle", "ring", "small")} | {"long": "middle", "little": "small"}
_LONGEST_LABEL, _LONGEST_ANSWER = 3, 5  # words


@Language.component("notereader_labels")
def labels(doc: Doc) -> Doc:
    """Turn what such a label asks into cells, each told with its finger and the label. RETURNS the same Doc."""
    page = page_of(doc)
    found: list[Sentence] = []
    label: tuple[int, int] | None = None
    in_rows = {page.words_in(field.begin, field.span[1])[0] for field in page.ticked if field.begin >= 0}
    asked: tuple[int, int] | None = None
    for sentence in page.sentences:
        asked = _asked_of(page, sentence, asked)
        if asked is not None and page.breaks[sentence.i] < Break.LINE and not sentence.prefix:
            sentence.prefix = [asked]
            found.append(sentence)
            continue
        if page.breaks[sentence.i] >= Break.LINE or sentence.prefix:
            label = None if sentence.prefix else _label(page, sentence)
            found += _cells(page, sentence, label) if label is not None else [sentence]
            continue
        finger = _finger_at(page, sentence.i)
        if label is None or finger is None or sentence.j - sentence.i > _LONGEST_ANSWER:
            label = None
        if finger is None and sentence.i in in_rows and (tendon := _tendon_of_row(page, found[-1])) is not None:
            sentence.prefix = [tendon]
        named = _name_of_line(page, found) if label is None and finger is not None else None
        if named is not None and finger is not None and finger[1] == finger[0] + 1:
            sentence.prefix = [named]  # 'FDS: index repaired with 4-0. Middle repaired with 5-0.'
            _settle(page, *finger)
        found.append(sentence if label is None or finger is None else _cell(page, sentence, finger, label, sentence.j))
    page.sentences = found
    return doc


def _asked_of(page: Page, sentence: Sentence, before: tuple[int, int] | None) -> tuple[int, int] | None:
    """'Radial digital nerve: seen? Yes. Divided? Yes. Repaired? Yes, 9-0.': what the questions of a line are about."""
    if page.breaks[sentence.i] >= Break.LINE:
        head = page.words[sentence.i : min(sentence.i + _LONGEST_NAME, sentence.j)]
        colon = sentence.i + head.index(":") if ":" in head else sentence.i
        named = any(m.kind in _ASKED_ABOUT for m in within(page.mentions, sentence.i, colon))
        return (sentence.i, colon) if named and "?" in page.words[colon : sentence.j] else None
    asks = "?" in page.words[sentence.i : min(sentence.i + _LONGEST_QUESTION, sentence.j)]
    names = any(m.kind in _ASKED_ABOUT or m.kind == "tendon" for m in within(page.mentions, sentence.i, sentence.j))
    return before if asks and not names else None


_ASKED_ABOUT = frozenset(["sided", "structure", "bundle", "pulley"])
_LONGEST_NAME, _LONGEST_QUESTION = 6, 5  # words


def _label(page: Page, sentence: Sentence) -> tuple[int, int] | None:
    """Return the label of a sentence that asks how something went, where its answer begins with a finger."""
    first = sentence.i
    if page.words[first] in ("[", "(") and page.words[first + 2 : first + 3] in (["]"], [")"]):
        first += 3  # '[x] gap: ...'
    head = page.words[first : first + _LONGEST_LABEL + 1]
    mark = next((w for w in head[1:] if w in (":", "-")), "")
    colon = first + head.index(mark) if mark else first
    if not mark or (mark == "-" and page.breaks[colon] < Break.SPACE):
        return None
    asks = not _ASKED.isdisjoint(page.words[first:colon]) or _is_pulley(page, first, colon)
    return (first, colon) if asks and _finger_at(page, colon + 1) is not None else None


def _tendon_of_row(page: Page, last: Sentence) -> tuple[int, int] | None:
    """'FDP  [x] through [ ] whole    ends [x] clean [ ] ragged': a field without a name is of the one before it."""
    if last.prefix:
        return last.prefix[0]
    return next(((m.i, m.j) for m in within(page.mentions, last.i, last.i + 1) if m.kind == "tendon"), None)


def _name_of_line(page: Page, before: list[Sentence]) -> tuple[int, int] | None:
    """Return the tendon or pulley that labels the sentence before on the same line, where a finger follows it."""
    last = before[-1] if before else None
    if last is None:
        return None
    if last.prefix:
        return last.prefix[0] if len(last.prefix) == 1 and _is_name(page, *last.prefix[0]) else None
    colon = last.i + 1
    behind = colon + (page.words[colon : colon + 1] == [":"])
    in_row = any(page.words_in(field.begin, field.begin + 1)[0] == last.i for field in page.ticked if field.begin >= 0)
    labels = page.breaks[last.i] >= Break.LINE and (behind > colon or in_row)  # 'A2  index [x] intact [ ] vented'
    return (last.i, colon) if labels and _is_name(page, last.i, colon) and _finger_at(page, behind) else None


def _is_name(page: Page, i: int, j: int) -> bool:
    return any(m.kind in ("tendon", "pulley") and (m.i, m.j) == (i, j) for m in within(page.mentions, i, j))


def _is_pulley(page: Page, i: int, j: int) -> bool:
    """Tell whether a label is the name of one pulley: 'A2 - small vented, ring intact'."""
    return any(m.kind == "pulley" and (m.i, m.j) == (i, j) for m in within(page.mentions, i, j))


def _cells(page: Page, sentence: Sentence, label: tuple[int, int]) -> list[Sentence]:
    """Return a cell for each of several fingers that a labelled sentence answers for, or the sentence as it is."""
    begun = [label[1] + 1]
    for k in range(label[1] + 2, sentence.j):
        if page.words[k - 1] in _PARTS or page.breaks[k] == Break.COLUMN:
            begun.append(k)
    fingers = [finger for k in begun if (finger := _finger_at(page, k)) is not None]
    if not fingers or (len(fingers) == 1 and not _answered_once(page, sentence, label, fingers[0][1])):
        return [sentence]
    ends = [*(finger[0] - (page.words[finger[0] - 1] in _PARTS) for finger in fingers[1:]), sentence.j]
    return [_cell(page, sentence, finger, label, end) for finger, end in zip(fingers, ends, strict=True)]


def _answered_once(page: Page, sentence: Sentence, label: tuple[int, int], k: int) -> bool:
    """'Gap: ring yes'; 'A2: ring vented 5 mm distally' is read as it stands, and 'Gap: small, 1 mm' names no finger."""
    short = k < sentence.j <= k + _LONGEST_ANSWER and page.words[k] not in _PARTS
    return short and not _is_pulley(page, *label)


def _cell(page: Page, sentence: Sentence, finger: tuple[int, int], label: tuple[int, int], j: int) -> Sentence:
    """Return what is told behind a finger, up to word j, as a cell; a finger with nothing behind it stays as it is."""
    _settle(page, *finger)
    i = finger[1] + (page.words[finger[1] : finger[1] + 1] == [":"])
    if i >= j:
        return Sentence(finger[0], j, sentence.section, sentence.block)
    return Sentence(i, j, sentence.section, sentence.block, prefix=[finger, label])


def _finger_at(page: Page, k: int) -> tuple[int, int] | None:
    """Return the words of the finger named at word k, with its tendon; behind such a label 'middle' is a finger too."""
    named = next((m for m in within(page.mentions, k, k + 1) if m.kind == "digit" and m.i == k), None)
    if named is None and (k >= len(page.words) or page.words[k] not in _FINGERS):
        return None
    j = named.j if named is not None else k + 1
    if page.words[j : j + 1] != [] and page.words[j] in _JOINS and (further := _finger_at(page, j + 1)) is not None:
        return k, further[1]  # 'index 6-0, middle and ring none'
    tendon = next((m for m in within(page.mentions, j, j + 1) if m.kind == "tendon"), None)
    return k, tendon.j if tendon is not None else j


_JOINS = frozenset(["and", "&", "+", "/"])


def _settle(page: Page, i: int, j: int) -> None:
    """Take the words for the fingers that they may name."""
    for k in (k for k in range(i, j) if page.words[k] in _FINGERS):
        _settle_one(page, k)


def _settle_one(page: Page, k: int) -> None:
    if not any(m.kind == "digit" for m in within(page.mentions, k, k + 1)):
        page.mentions = sorted([*page.mentions, Mention("digit", _FINGERS[page.words[k]], k, k + 1)], key=lambda m: m.i)
