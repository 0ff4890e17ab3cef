"""Step 3, mentions: terms of the vocabulary in the note, by PhraseMatcher on the cleaned words; misspelt ones rescued.

Where phrases overlap the longest one holds. Headings, cues and elements are kept in layers of their own, for the same
words can head a line, name a thing and carry a cue.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from operator import attrgetter
from typing import cast

from spacy.language import Language
from spacy.matcher import PhraseMatcher
from spacy.tokens import Doc

from notereader.reader.layout.wide_gaps import close_wide_gaps
from notereader.reader.mentions.adrenaline import settle_adrenaline
from notereader.reader.mentions.glosses import close_glosses
from notereader.reader.mentions.long_fingers import settle_long_fingers
from notereader.reader.mentions.measures import count_of
from notereader.reader.mentions.named_people import names_a_person
from notereader.reader.mentions.outer_labels import name_outer_labels
from notereader.reader.mentions.rescue import Rescue
from notereader.reader.page import Break, Mention, Page, page_of
from notereader.reader.text.tokens import NoteTokenizer
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.terms import AFTER_SIZE, Term, terms
from notereader.vocabulary.wordlists import word_list

_Key = tuple[str, str, str]  # layer, kind, value
_LAYERS = {"heading": "headings", "cue": "cues", "element": "elements"}


@dataclass(frozen=True, slots=True)
class _Meaning:
    layer: str
    kind: str
    value: str
    exact: frozenset[str]  # the only spellings that count, where not empty


@Language.factory("notereader_mentions")
class Mentions:
    """Fills the Page's mentions, headings and cues. RETURNS the same Doc."""

    def __init__(self, nlp: Language, name: str) -> None:
        self.name = name
        self.matcher = PhraseMatcher(nlp.vocab, attr="ORTH")
        self.meanings: dict[int, list[_Meaning]] = {}
        self.rescue = Rescue(terms())
        by_phrase: dict[tuple[str, ...], list[_Meaning]] = {}
        words_of = cast(NoteTokenizer, nlp.tokenizer).words_of
        for term in terms():
            for phrase, exact in _phrases(words_of, term):
                layer = _LAYERS.get(term.kind, "mentions")
                by_phrase.setdefault(phrase, []).append(_Meaning(layer, term.kind, term.value, exact))
        for n, (phrase, meanings) in enumerate(by_phrase.items()):
            key = f"t{n}"
            self.meanings[nlp.vocab.strings.add(key)] = _merged(meanings)
            self.matcher.add(key, [Doc(nlp.vocab, words=list(phrase))])

    def __call__(self, doc: Doc) -> Doc:
        """Find every term of the vocabulary in the Doc."""
        page = page_of(doc)
        close_wide_gaps(page)
        self.rescue.apply(page, doc)
        breaks, respelt, column, line = page.breaks, page.respelt, Break.COLUMN, Break.LINE
        found: dict[str, list[Mention]] = {"mentions": [], "headings": [], "cues": [], "elements": []}
        for key, i, j in self.matcher(page.rescued or doc):
            if j - i > 1 and (column in breaks[i + 1 : j] or (breaks[i] == column and line in breaks[i + 1 : j])):
                continue  # cells of a grid
            if j - i > 1 and (_answers_before(page, i, j) or _of_an_x_ray(page, i)):
                continue
            for meaning in self.meanings[key]:
                if meaning.exact and not _as_written(page, i, j, meaning.exact):
                    continue
                kind = meaning.kind
                if kind == AFTER_SIZE:
                    if i == 0 or page.words[i - 1] not in sizes():
                        continue
                    kind = "material"
                found[meaning.layer].append(Mention(kind, meaning.value, i, j, respelt.get(i, "")))
        page.mentions = _by_family([m for m in found["mentions"] if not names_a_person(page, m)])
        close_glosses(page)
        settle_adrenaline(page)
        name_outer_labels(page)
        settle_long_fingers(page)
        page.headings = longest(found["headings"])
        cues = sorted(found["cues"], key=_first_word)
        page.cues = [c for c in cues if not (_takes_back(page, c) or _in_a_size(page, c))]
        page.elements = longest(found["elements"])
        return doc


def _of_an_x_ray(page: Page, i: int) -> bool:
    """'X-ray 2 weeks' names no second ray."""
    return page.words[i] == "ray" and "x" in page.words[max(0, i - 2) : i]


def _answers_before(page: Page, i: int, j: int) -> bool:
    """'Bulky: no', then 'Tension: yes' on the next line: the answer of one label and the next are no phrase."""
    inside = page.breaks[i + 1 : j]
    if max(inside) < Break.LINE:
        return False
    if any(gap >= Break.LINE and _opens_a_label(page, k, j) for k, gap in enumerate(inside, i + 1)):
        return True  # 'Peripheral: 5-0 Prolene, running', then 'Locked core: no'
    if page.words[i] in ("nil", "none") and inside[0] >= Break.LINE:
        return True  # 'epi nil', then 'catches at A2'
    if page.words[i] in _CLOSE_A_LINE and inside[0] >= Break.LINE and page.text[page.starts[i + 1]].isupper():
        return True  # 'A2 intact', then 'Skin closed with 5-0'
    if page.words[i] in _ANSWERS and inside[0] >= Break.LINE and _in_capitals_anew(page, i):
        return True  # 'Epitendinous ..... no', then 'Tension ..... yes'
    return Break.BLANK in inside or (i > 0 and page.words[i] in _ANSWERS and page.words[i - 1] in _BEFORE_ANSWER)


def _in_capitals_anew(page: Page, i: int) -> bool:
    """Tell whether the word behind word i begins with a capital and word i does not: no line of prose goes on so."""
    return page.text[page.starts[i + 1]].isupper() and not page.text[page.starts[i]].isupper()


_CLOSE_A_LINE = frozenset(["intact", "free", "absent", "present", "left", "vented", "whole", "seen", "divided", "cut"])


def _opens_a_label(page: Page, k: int, j: int) -> bool:
    """Tell whether the line of word k begins with a capital and a label whose colon stands behind word j."""
    return page.text[page.starts[k]].isupper() and ":" in page.words[j : k + _LABEL]


_LABEL = 4  # words
_ANSWERS = frozenset(["no", "none", "nil", "not", "yes", "n", "y"])
_BEFORE_ANSWER = frozenset(
    [":", "?", "=", "-", "]", ")", "}", "|", ">", "_", "x", "o", "yes", "\u2611", "\u2612", "\u2610", "\u25a1"]
)


def _takes_back(page: Page, cue: Mention) -> bool:
    """'It ran freely, no no, correction, it was catching': a 'no' that denies what was said and not what follows."""
    if cue.value != "negated" or page.words[cue.i : cue.j] != ["no"]:
        return False
    if Break.COLUMN in page.breaks[cue.j : cue.j + 2]:
        return False  # cells of a grid
    after = [w for w in page.words[cue.j : cue.j + 3] if w != ","]
    return after[:1] != [] and (after[0] in _AFTER_NO or after[:2] in _AGAIN)


def _in_a_size(page: Page, cue: Mention) -> bool:
    """'Three zero prolene': a size as it is spoken, which denies nothing."""
    return page.words[cue.i : cue.j] == ["zero"] and cue.i > 0 and count_of(page.words[cue.i - 1]) > 0


_AFTER_NO = word_list("spoken", "after_no")
_AGAIN = (["no", "no"], ["no", "it"], ["no", "that"], ["no", "i"], ["no", "we"], ["no", "correction"], ["no", "wait"])


def _phrases(
    words_of: Callable[[str], tuple[str, ...]], term: Term
) -> Iterable[tuple[tuple[str, ...], frozenset[str]]]:
    for word in term.words:
        yield words_of(word), frozenset()
        if term.kind == "stitch" and word[-1:].isalpha() and not word.endswith("s"):
            yield words_of(word + "'s"), frozenset()  # 'Tsuge's technique'
    for word in term.exact:
        yield words_of(word), frozenset([word])


def _merged(meanings: list[_Meaning]) -> list[_Meaning]:
    """Join the exact spellings of one meaning; a meaning without them matches in any capitals."""
    merged: dict[_Key, set[str] | None] = {}
    for meaning in meanings:
        key = (meaning.layer, meaning.kind, meaning.value)
        if not meaning.exact or merged.get(key, set()) is None:
            merged[key] = None
        else:
            spellings = merged.setdefault(key, set())
            if spellings is not None:
                spellings |= meaning.exact
    return [_Meaning(*key, frozenset(exact or ())) for key, exact in merged.items()]


def _as_written(page: Page, i: int, j: int, exact: frozenset[str]) -> bool:
    raw = page.raw(i, j)
    return raw in exact or (raw[:-1] in exact and raw.endswith("s"))


# Kinds whose phrases do not hide those of other kinds: 'was excised' of a pulley is also 'excised' of a tendon.
_FAMILIES = ("opened", "restored")


def _by_family(mentions: list[Mention]) -> list[Mention]:
    """Keep the longest phrases of each family of kinds; neutral phrases hide words of every family."""
    neutral = [m for m in mentions if m.kind == "neutral"]
    kept = longest([m for m in mentions if m.kind not in _FAMILIES])
    for family in _FAMILIES:
        own = [m for m in mentions if m.kind == family]
        kept += [m for m in longest([*neutral, *own]) if m.kind == family] if own else []
    kept += _digits_moved(mentions, kept)
    kept.sort(key=_span)
    return kept


def _digits_moved(mentions: list[Mention], kept: list[Mention]) -> list[Mention]:
    """'I moved the thumb passively': the phrase of a test does not hide the digit that it names."""
    tests = [m for m in kept if m.kind == "test" and m.j - m.i > 1]
    ends = {k: t.j for t in tests for k in range(t.i, t.j)}
    return [m for m in mentions if m.kind == "digit" and m.j <= ends.get(m.i, 0)] if tests else []


def longest(mentions: list[Mention]) -> list[Mention]:
    """Keep the longest of overlapping phrases with all their meanings, in the order of the note.

    Most overlap no other: only those that do are weighed against each other.
    """
    kept: list[Mention] = []
    heap: list[Mention] = []  # phrases that overlap one another
    reach = 0
    for mention in sorted(mentions, key=_first_word):
        if heap and mention.i >= reach:
            kept += _longest_of(heap) if len(heap) > 1 else heap
            heap = []
        heap.append(mention)
        reach = max(reach, mention.j)
    return kept + (_longest_of(heap) if len(heap) > 1 else heap)


def _longest_of(mentions: list[Mention]) -> list[Mention]:
    mentions.sort(key=_longest_first)
    taken: dict[int, tuple[int, int]] = {}
    kept: list[Mention] = []
    for mention in mentions:
        span = i, j = mention.i, mention.j
        if taken.get(i) != span:
            if i in taken or (j - i > 1 and any(k in taken for k in range(i + 1, j))):
                continue
            for k in range(i, j):
                taken[k] = span
        kept.append(mention)
    kept.sort(key=_span)
    return kept


def _longest_first(mention: Mention) -> tuple[int, int]:
    return mention.i - mention.j, mention.i


_first_word, _span = attrgetter("i"), attrgetter("i", "j")
