"""What the first words of a sentence make of it: a consent, a plan, a remark to somebody, a condition without 'if'."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_RISKS = word_list("standing", "risks")
_FORESEEN = word_list("standing", "foreseen")  # 'Expected outcome: good glide'
_ON_CONDITION = frozenset(["provided", "providing", "assuming", "supposing"])
_OPENERS = frozenset(
    [
        *_ON_CONDITION,
        *_FORESEEN,
        *("plans", "to"),
        *("consent", "risks", "risk", "signed", "agreed", "consented", "plan", "booked", "listed"),
        *("planned", "proposed", "intended", "not", "omitted", "deferred", "considered", "discussed", "declined"),
        *("(", "note", "nb", "were", "should", "had"),
    ]
)


def kind_by_opening(page: Page, sentence: Sentence) -> str:
    """Return what the first words of a sentence make of it: a consent, or a condition without 'if'."""
    first = page.words[sentence.i : sentence.i + 4]
    if first[0] not in _OPENERS:
        return ""
    if (
        first[:1] in (["consent"], ["risks"], ["risk"])
        and len(first) > 1
        and first[1] in _RISKS
        and sentence.section != "consent"
    ):
        return "story"
    signed = first[:2] in (["signed", "for"], ["agreed", "to"], ["signed", "up"])
    if (signed or first[:2] in (["consented", "for"], ["consented", "to"])) and page.words[sentence.j - 1] != "?":
        return "story"
    if first[:1] == ["plan"] and first[1:2] in (["a"], ["b"], ["c"]) and first[2:3] != ["."]:
        return "considered"  # 'Plan B = sew FDP, four strands of 3-0 Prolene'
    if first[:2] == ["to", "be"] and first[2:3] != [] and first[2].endswith("ed"):
        return "plan"  # 'To be tested for gap and glide once the block wears off'
    if first[0] in _MEANT and ":" in first:
        return "plan"  # 'Planned: repair FDP ring', 'Intended operation: ...'
    early = first[0] in ("plan", "plans") and first[1:2] in (["before"], ["prior"], ["on"], ["at"])
    if early and ":" in page.words[sentence.i : sentence.i + _LONGEST_HEAD]:
        return "plan"  # 'PLAN BEFORE INCISION: six-strand core, epitendinous 6-0'
    if _lists_undone(page, sentence):
        return "considered"
    if first[:1] in (["booked"], ["listed"]) and first[1:2] in (["as"], ["for"], [":"]):
        return "plan"
    if is_aside_of(first):
        return "teaching"
    if first[:2] in (["were", "a"], ["were", "the"], ["were", "it"], ["were", "there"]):
        return "conditional"
    if first[0] in _ON_CONDITION and first[1:2] not in (["with"], ["by"], ["for"], [":"]):
        return "conditional"  # 'Provided the A2 is intact one may leave the ring off'
    if first[:2] in (["plan", "for"], ["plans", "for"]) and ":" in page.words[sentence.i : sentence.i + _LONGEST_HEAD]:
        return "plan"  # 'Plan for the left ring finger: six-strand M-Tang'
    if first[:1] == ["should"] and page.words[sentence.j - 1] != "?":
        return "conditional"
    if first[:1] == ["had"] and {"would", "should", "might", "i'd", "we'd"} & sentence.said:
        return "considered"
    return ""


def _lists_undone(page: Page, sentence: Sentence) -> bool:
    """'Not done: epitendinous suture, A2 repair', 'Omitted: ...', 'Not done, though planned: ...'."""
    words = page.words[sentence.i : min(sentence.i + _LONGEST_HEAD, sentence.j)]
    head = words[: words.index(":")] if ":" in words else []
    if head[:1] == ["omitted"] and _told_late(page, sentence, head):
        return False
    return head[:1] in _LEFT_OUT or (head[:2] in _NOT_DONE and (len(head) == _PAIR or "," in head))


def _told_late(page: Page, sentence: Sentence, head: list[str]) -> bool:
    """'Omitted: I took 5 mm off the edge' in an addendum, 'Omitted above: ...': what the note left out."""
    if not _PAPERS.isdisjoint(head):
        return True
    behind = page.words[sentence.i + len(head) + 1 : sentence.j]
    return sentence.section == "addendum" and not _TELLING.isdisjoint(behind)


_PAPERS = frozenset(["above", "note", "dictation", "report", "earlier", "typing", "text"])
_TELLING = frozenset(["i", "we", "was", "were"])
_LONGEST_HEAD = 14  # words
_PAIR = 2
_LEFT_OUT = (["omitted"], ["deferred"], ["declined"])
_NOT_DONE = tuple(["not", verb] for verb in ("done", "performed", "needed", "required", "attempted", "used"))
_MEANT = frozenset(["planned", "proposed", "intended", *_FORESEEN])


def is_aside_of(first: list[str]) -> bool:
    """'(SpR: two strands was what my boss did)', 'note for reg: ...': somebody's remark to somebody."""
    if first[:1] == ["("] and first[1:2] != [] and first[1] in _SPEAKERS and ":" in first[2:4]:
        return True
    return first[:2] in (["note", "for"], ["note", "to"], ["nb", "for"]) and first[2:3] != [] and first[2] in _SPEAKERS


_SPEAKERS = word_list("standing", "speakers")
