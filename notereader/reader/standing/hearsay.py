"""What a note only passes on: the referral letter, the whiteboard, a template, a colleague's draft.

'Referral: "ring A4 intact". Operation: ring A4 torn', 'Whiteboard: Adelaide, 3-0. Done: modified Kessler, 4-0', 'the
draft says six strands'. What others wrote is marked as story: it may tell how it happened, not what was found or done.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_SOURCES = word_list("hearsay", "sources")  # 'letter', 'whiteboard'
_WRITERS = word_list("hearsay", "writers")  # whose 'note' or 'sheet' is another's: 'ed note', "referrer's note"
_PAPERS = word_list("hearsay", "papers")  # 'note', 'sheet', 'list': only another's
_ELSEWHERE = word_list("hearsay", "elsewhere")
_PEOPLE = word_list("hearsay", "people")
_BELIEVED = word_list("hearsay", "believed")
_OWN = word_list("hearsay", "own")  # 'letter to the therapist', 'list of sutures': written by this note's writer
_SAYS = word_list("hearsay", "says")
_TURNS = word_list("hearsay", "turns")  # where the note goes over to what was found or done
_TURN_PAIRS = frozenset(tuple(words.split()) for words in word_list("hearsay", "turn_pairs"))
_DEFAULTS = frozenset(["default", "defaults", "preset", "preselected"])
_FILLED = frozenset(["filled", "populated", "generated", "completed", "prefilled", "autofilled", "prepopulated"])
_BEFOREHAND = frozenset(["auto", "pre", "automatically", "prefilled", "autofilled", "prepopulated"])
_SPEAKERS = word_list("hearsay", "speakers")  # 'Patient: "it was only half cut"'
_NAMED = _SOURCES | _PAPERS | _BEFOREHAND | _SPEAKERS
_QUOTES = frozenset(["'", '"', "\u2018", "\u2019", "\u201c", "\u201d"])
_PLAIN = frozenset(["the", "a", "an", "his", "her", "their", "this"])
_LONGEST_LABEL, _NEXT_LABEL = 6, 5  # words


def mark_hearsay(page: Page) -> None:
    """Mark what a note passes on from elsewhere."""
    # What an addendum cites ('the count sheet shows that 4-0 was used') it holds for true.
    added = min((s.h for s in page.sections if s.kind == "addendum"), default=len(page.words))
    open_block = -1
    for sentence in page.sentences:
        if sentence.block == open_block:
            open_block = (
                open_block if _goes_on(page, sentence) and _mark_up_to_turn(page, sentence.i, sentence.j) else -1
            )
            if open_block >= 0:
                continue
        if sentence.i >= added or sentence.section == "instructions":
            continue  # 'OT referral: early passive exercises' is an order
        if not (_PEOPLE.isdisjoint(sentence.said) or _BELIEVED.isdisjoint(sentence.said)):
            _mark_belief(page, sentence)
        if not _DEFAULTS.isdisjoint(sentence.said):
            _mark_defaults(page, sentence)
        if _NAMED.isdisjoint(sentence.said):
            continue
        words = page.words[sentence.i : sentence.j]
        colon = _source_label(words)
        if colon:
            quoted = words[colon + 1 : colon + 2] and words[colon + 1] in _QUOTES
            ended = not _mark_up_to_turn(page, sentence.i + colon + 1, sentence.j)
            open_block = -1 if ended or (quoted and not _QUOTES.isdisjoint(words[colon + 2 :])) else sentence.block
        else:
            _mark_said(page, sentence, words)


def _mark_defaults(page: Page, sentence: Sentence) -> None:
    """'Core [default: 4-strand 3-0] -> overwritten: two strands': what a form had filled in stands in brackets."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 1):
        if words[k] in _DEFAULTS and words[k - 1] in _CLOSED_BY:
            closed = (n for n in range(k, sentence.j) if words[n] == _CLOSED_BY[words[k - 1]])
            page.mark(k, next(closed, k), "story")


_CLOSED_BY = {"(": ")", "[": "]"}


def _source_label(words: list[str]) -> int:
    """Return the place of the colon behind a label that names what somebody else wrote; 0 where there is none."""
    longest = 2 * _LONGEST_LABEL if _filled_in(words) else _LONGEST_LABEL  # '(auto-filled by the system):'
    colon = next((n for n, word in enumerate(words[: longest + 1]) if n and word == ":"), 0)
    label = words[:colon]
    if label[-1:] != [] and label[-1] in _SPEAKERS and words[colon + 1 : colon + 2] == ['"']:
        return colon
    own = [w for k, w in enumerate(label) if not (w == "on" and _leads_to_source(label[k + 1 : k + 3]))]
    return colon if _filled_in(label) or (_is_source(label) and _OWN.isdisjoint(own)) else 0


def _leads_to_source(words: list[str]) -> bool:
    """'Diagnosis on the request slip:': tell whether 'on' leads to what another wrote."""
    return next((w in _ASKED_ON for w in words if w not in _PLAIN), False)


_ASKED_ON = frozenset(["request", "referral", "booking"])  # not 'on the board', where the surgeon's orders stand


def _is_source(words: list[str]) -> bool:
    """Tell whether words name something that others wrote."""
    if not _SOURCES.isdisjoint(words) or _filled_in(words):
        return True
    others = any(word in _WRITERS or word.endswith(("'s", "s'", "\u2019s")) for word in words)
    return others and not _PAPERS.isdisjoint(words)


def _filled_in(words: list[str]) -> bool:
    """'Summary (auto-filled):', 'Findings, pre-populated:': no hand of the operating team wrote this."""
    return not _BEFOREHAND.isdisjoint(words) and not _FILLED.isdisjoint(words)


def _goes_on(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence behind one that passes something on still does: no label of its own, nothing done."""
    labelled = ":" in page.words[sentence.i : min(sentence.i + _NEXT_LABEL, sentence.j)]
    return not labelled and not any(m.kind == "deed" for m in within(page.mentions, sentence.i, sentence.j))


def _mark_up_to_turn(page: Page, i: int, j: int) -> bool:
    """Mark words i to j, or up to where the note turns to its own findings; tell whether it does not turn."""
    words = page.words
    turn = next((k for k in range(i, j) if words[k] in _TURNS or tuple(words[k : k + 2]) in _TURN_PAIRS), j)
    if turn > i:
        page.mark(i, turn, "story")
    return turn == j


def _mark_belief(page: Page, sentence: Sentence) -> None:
    """'The emergency doctor thought that the FDS was intact': what others believed before the operation."""
    words = page.words
    for k in range(sentence.i, min(sentence.i + _LONGEST_LABEL, sentence.j - 1)):
        by_another = words[k] in _PEOPLE and (words[k] == "gp" or not _ELSEWHERE.isdisjoint(words[max(0, k - 2) : k]))
        said = next((n for n in range(k + 1, min(k + 4, sentence.j)) if words[n] in _BELIEVED), None)
        if by_another and said is not None:
            _mark_up_to_turn(page, said + 1, sentence.j)
            return


def _mark_said(page: Page, sentence: Sentence, words: list[str]) -> None:
    """'The registrar's draft says the ring A2 is intact', 'according to the referral the FDP was whole'."""
    for n, word in enumerate(words):
        if word not in _SOURCES and word not in _PAPERS:
            continue
        lead = words[max(0, n - 4) : n + 1]
        if not _is_source(lead):
            continue
        before = [w for w in words[max(0, n - 4) : n] if w not in _PLAIN]
        at = next((k for k, w in enumerate(lead) if w in ("in", "on")), None)
        if at is not None:
            _mark_written_there(page, sentence, sentence.i + n + 1 - len(lead) + at)
        if n < _LONGEST_LABEL and before[:2] in (["according", "to"], ["as", "per"]):
            _mark_up_to_turn(page, sentence.i, sentence.j)
            return
        if "as" in before:
            return  # 'repaired with four strands, as the whiteboard says'
        says = next((m for m in range(n + 1, min(n + 7, len(words))) if words[m] in _SAYS), None)
        lacks = says is not None and words[says] in ("has", "had") and words[says + 1 : says + 2] == ["no"]
        if says is not None and not lacks and "," not in words[n:says]:
            _mark_up_to_turn(page, sentence.i + says, sentence.j)
            return


def _mark_written_there(page: Page, sentence: Sentence, k: int) -> None:
    """'FDP, "complete" in the casualty card; at operation partial': the cut told right before word k, 'in'."""
    for m in within(page.mentions, sentence.i, k):
        if m.kind in ("extent", "ends") and 0 <= k - m.j <= 1:
            page.mark(m.i, m.j, "story")
