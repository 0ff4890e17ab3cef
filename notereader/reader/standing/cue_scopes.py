"""How far the cues of a sentence reach: a teaching remark, a condition, an alternative, a plan."""

from notereader.reader.layout.boxes import BOX_SIGNS
from notereader.reader.layout.clauses import AUXILIARIES, BOUNDS
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.bounded_states import bounded_state
from notereader.reader.standing.customs import aside_of_custom
from notereader.reader.standing.earlier_operations import MENDED, tells_extent
from notereader.vocabulary.wordlists import word_list

# How a general remark turns to what was done this time.
_TURNS = [tuple(words.split()) for words in word_list("standing", "this_case")]
_FORWARD_ONLY = word_list("standing", "forward_only")
_RIGHT_BOUNDS = BOUNDS | {"and", ".", "(", ")"}
_LEFT_BOUNDS = BOUNDS | {".", "(", ")", ">"}
_TELLS = frozenset(["was", "were", "had", "has", "is", "did", "i", "we", "then", "today", "which", "who"])


def mark_cues(page: Page, sentence: Sentence, cues: list[Mention]) -> None:
    """Mark the words that the cues of a sentence reach: remarks, conditions, alternatives, plans."""
    for cue in cues:
        custom = aside_of_custom(page, cue, sentence) if cue.value in ("teaching", "considered") else None
        if custom is not None:
            page.mark(*custom, "teaching")
        elif cue.value == "teaching":
            page.mark(*_brackets_or(page, cue, *_aside(page, cue, sentence)), "teaching")
        elif cue.value == "conditional":
            _mark_condition(page, cue, sentence)
        elif cue.value == "considered" and not _judged(page, cue):
            page.mark(*clause_of(page, cue, sentence), "considered")
        elif cue.value == "planned" and sentence.section != "diagnosis" and not _is_purpose(page, cue, sentence):
            page.mark(*_with_its_suture(page, cue, sentence), "plan")


def _mark_condition(page: Page, cue: Mention, sentence: Sentence) -> None:
    """'If room, six strands', '(6-strand if room)': the sentence from its condition on, or the brackets around it."""
    if page.words[cue.i - 1 : cue.i] == ["as"]:  # 'treated as if it were a full division: six strands'
        end = next((k for k in range(cue.j, sentence.j) if page.words[k] in _RIGHT_BOUNDS), sentence.j)
        page.mark(cue.i, end, "considered")
        return
    span = bounded_state(page, cue, sentence)
    if span is None:
        first = sentence.i if cue.i <= sentence.i + 2 else cue.i
        span = _square_or(page, cue, first, _quote_end(page, cue, sentence))
        bracketed = _brackets_or(page, cue, sentence.i, sentence.j)
        tells = page.words[bracketed[0]] == "(" and page.words[bracketed[1] + 1 : bracketed[1] + 2] != [":"]
        span = bracketed if tells else span  # '(complete only if the tendon was sutured)', '(6-strand if room)'
    page.mark(*span, "conditional")


def _quote_end(page: Page, cue: Mention, sentence: Sentence) -> int:
    """'The book says: "six strands if motion is intended." We placed four': where the quotation of a cue ends."""
    quoted = page.words[sentence.i : cue.i].count('"') % 2 == 1
    closed = next((k + 1 for k in range(cue.j, sentence.j) if page.words[k] == '"'), sentence.j)
    return closed if quoted else sentence.j


def _is_purpose(page: Page, cue: Mention, sentence: Sentence) -> bool:
    """'A2 was divided to allow the repair to be done': what something was done for, and done as well."""
    lead = page.words[max(sentence.i, cue.i - _FAR_FROM_PURPOSE) : cue.i]
    return page.words[cue.i : cue.i + 2] == ["to", "be"] and not _ALLOWING.isdisjoint(lead)


_ALLOWING = frozenset(["allow", "allowing", "allowed", "enable", "enabling", "enabled", "permit", "permitting", "let"])
_FAR_FROM_PURPOSE = 6  # words


def _with_its_suture(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int]:
    """'FDP tagged, to be repaired Thursday, 4 strands, 3-0': what a plan names behind a comma is planned too."""
    first, last = clause_of(page, cue, sentence)
    if page.words[cue.j - 1] not in MENDED or page.words[last : last + 1] != [","]:
        return first, last
    end = next((k for k in range(last, sentence.j) if page.words[k] in (";", ".")), sentence.j)
    told = not _TELLS.isdisjoint(page.words[last:end])
    named = any(m.kind in ("digit", "tendon") for m in within(page.mentions, last, end))
    return (first, last) if told or named else (first, end)


def _judged(page: Page, cue: Mention) -> bool:
    """'The repair was considered rather bulky' tells how it was judged, and not what was thought of.

    So do 'I would not call it bulky' and 'bulkier than I would have liked', and 'a single Kessler was considered
    sufficient'. Nor does 'he goes to hand therapy' tell of what lay to hand.
    """
    if page.words[cue.i : cue.j] == ["to", "hand"] and page.words[cue.j : cue.j + 1] != []:
        return page.words[cue.j] in _OF_THE_HAND
    if page.words[cue.j : cue.j + 1] in _ENOUGH:
        return True
    if page.words[cue.j - 1].startswith("expect") and "as" in page.words[max(0, cue.i - _LIKENED) : cue.i]:
        return True  # 'ragged as you would expect': as it was found
    wished = page.words[cue.i - 1] == "than"
    first = cue.i - _COMPARED if wished else cue.i
    return any(m.kind in ("bulk", "tension") for m in within(page.mentions, first, cue.j + 2))


_COMPARED = 4  # words
_LIKENED = 3  # words: 'as clean as one would expect'
_ENOUGH = (["sufficient"], ["adequate"], ["enough"], ["satisfactory"])
_OF_THE_HAND = frozenset(["therapy", "therapist", "therapists", "clinic", "unit", "surgery", "physio", "physiotherapy"])


def _aside(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int]:
    """Return what a teaching remark reaches: its sentence, from the semicolon it follows, up to words of this case.

    'FDS was intact, as it had been said to be, and was left': of an aside with 'as' no more than the aside.
    """
    comma = next((k for k in range(cue.i, max(sentence.i, cue.i - _FAR_BEHIND_AS), -1) if page.words[k] == ","), None)
    end = next((k for k in range(cue.j, sentence.j) if page.words[k] == ","), None)
    aside = comma is not None and end is not None and page.words[comma + 1] == "as"
    if comma is not None and end is not None and aside and tells_extent(page, sentence.i, comma):
        return comma, end + 1
    first = next((k + 1 for k in range(cue.i - 1, sentence.i, -1) if page.words[k] == ";"), sentence.i)
    reason = next((k for k in range(cue.i - 1, first, -1) if page.words[k] in _REASONS), None)
    if reason is not None and page.words[reason - 1] == ",":
        turn = next((k for k in range(cue.j, sentence.j) if page.words[k] in _TURNING), sentence.j)
        return reason, turn  # '..., since bulk was a concern in principle, though none was seen'
    return first, _this_case(page, cue.j, sentence.j)


_FAR_BEHIND_AS = 7  # words
_REASONS = frozenset(["since", "because"])
_TURNING = frozenset(["though", "although", "but", ";"])


def _this_case(page: Page, i: int, j: int) -> int:
    """Return where a remark turns to this operation: 'I usually do eight but here we did'."""
    for k in range(i, j - 2):
        if page.words[k] in (";", ",") and page.words[k + 1] == "today":
            return k  # 'Normally four strands; today six'
        if any(tuple(page.words[k : k + len(p)]) == p for p in _TURNS):
            return k
    return j


def _brackets_or(page: Page, cue: Mention, i: int, j: int) -> tuple[int, int]:
    """Return the brackets around a cue where it stands in some, else the span given."""
    opened = next((k for k in range(cue.i, i - 1, -1) if page.words[k] in ("(", ")")), None)
    if opened is None or page.words[opened] == ")":
        return i, j
    closed = next((k for k in range(cue.j, j) if page.words[k] == ")"), j)
    return opened, closed


def _square_or(page: Page, cue: Mention, i: int, j: int) -> tuple[int, int]:
    """Return the square brackets around a cue, '[If the stump has retracted: ...] The tendon ...', else the span."""
    opened = next((k for k in range(cue.i - 1, max(i, cue.i - 4) - 1, -1) if page.words[k] in ("[", "]")), None)
    if opened is None or page.words[opened] == "]":
        return i, j
    closed = next((k for k in range(cue.j, j) if page.words[k] == "]"), j)
    return opened, closed


def clause_of(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int]:
    """Return the clause a cue of an alternative reaches."""
    forward_only = " ".join(page.words[cue.i : cue.j]) in _FORWARD_ONLY
    i = cue.i + (forward_only and page.words[cue.i] == "left")  # 'divided and left for secondary grafting': left it was
    while not forward_only and i > sentence.i and page.words[i - 1] not in _LEFT_BOUNDS:
        i -= 1
    j = cue.j
    denied = "not" in page.words[i:j] and not _IS.isdisjoint(page.words[i:j])  # 'That was not needed: A2 is intact'
    j += page.words[j : j + 1] == [":"] and j + 1 < sentence.j and not denied  # 'first thought: just trim'
    while j < sentence.j and (page.words[j] not in _RIGHT_BOUNDS or _object_goes_on(page, cue, j)):
        j += 1
    rest = page.words[j : j + _WHY_NOT]
    rest = rest[: rest.index(")")] if ")" in rest else []
    if page.words[i - 1] == "(" and AUXILIARIES.isdisjoint(rest[1:]):
        j += len(rest)  # '(a second core was considered and not used: too much bulk)'
    return i, j


_WHY_NOT = 8  # words
_IS = frozenset(["was", "were", "is", "are"])
_WEIGHED = frozenset(["about", "of", "considered", "contemplated", "debated", "discussed"])


def _object_goes_on(page: Page, cue: Mention, k: int) -> bool:
    """'We talked about a button and a two-strand pull-out': a second object behind 'and', not a second clause."""
    after = page.words[k + 1 : k + 8]
    if page.words[k] != "and" or page.words[cue.j - 1] not in _WEIGHED or after[:1] not in (["a"], ["an"]):
        return False
    end = next((n for n, word in enumerate(after) if n and word in _RIGHT_BOUNDS), len(after))
    return AUXILIARIES.isdisjoint(after[:end])


_ANYBODY = frozenset(["one", "you", "we", "i"])
_OWNING_UP = word_list("weakened", "owning_up")


def no_condition(page: Page, cue: Mention) -> bool:
    """'IF' is the index finger; '10% if that' and 'if any' put no condition."""
    if page.raw(cue.i, cue.j) == "IF":
        return True
    if page.words[cue.i] == "if" and page.words[cue.i - 1 : cue.i] and page.words[cue.i - 1] in _POLITE:
        return True  # 'I should be grateful if you would begin ...'
    if page.words[cue.i - 1 : cue.j] == ["just", "in", "case"]:
        return True  # '... the wrist, which I had marked just in case, and the ends were ragged'
    asked = page.words[cue.j : cue.j + _LONGEST_ASKED]
    if ":" in asked[:-1] and asked[asked.index(":") + 1] in BOX_SIGNS:
        return True  # 'If no: [x] trimmed [ ] excised': a question of a form
    after = page.words[cue.j : cue.j + 2]
    if page.words[cue.i] == "if" and after[1:] != [] and after[0] in _ANYBODY and after[1] in _OWNING_UP:
        return True  # 'Free, if one overlooks a catch at A2'
    if page.words[cue.i : cue.j] == ["in", "the", "event"] and after[:1] not in (["of"], ["that"]):
        return True  # 'In the event two strands went in'
    return after[:1] in (["that"], ["any"], ["anything"]) and after[1:] in ([], [","], ["."], [";"], [")"])


_POLITE = word_list("standing", "polite")
_LONGEST_ASKED = 6  # words of 'not repaired, why: ['
