"""What a note of a second stage tells of the first: '(stage one 6 June 2030: rod placed, A2 rebuilt)'."""

from itertools import pairwise

from notereader.reader.page import Page, Sentence, within

_FIRST = (["stage", "one"], ["stage", "1"], ["stage", "i"], ["first", "stage"])
_SECOND = (["stage", "two"], ["stage", "2"], ["stage", "ii"], ["second", "stage"], ["second", "time"])
_SECONDARY = frozenset(["secondary"])
_AT_FIRST = (["first", "stage"], ["first", "time"], ["stage", "one"], ["stage", "1"])
_AT = frozenset(["in", "at", "during", "from"])
_DEEDS = ("deed", "opened", "restored", "extent")
_RECAPS = frozenset(["summary", "recap", "details", "record"])
_PAST = (["was"], ["had"], ["dated"], ["done"], ["performed"], ["on"])
_SMALL = frozenset(["the", "at", "our", "in"])
_NEAR = 3  # words between the bracket and the name of the stage


def mark_earlier_stage(page: Page, sentence: Sentence) -> None:
    """Mark as history what stands in brackets under the name of the first stage, or is told of it, in a second one."""
    words = page.words
    if "first" in sentence.said or "stage" in sentence.said:
        _mark_done_then(page, sentence)
    if "stage" not in sentence.said:
        return
    if _recaps(words[sentence.i : sentence.j]) and tells_of_second(words):
        page.mark(sentence.i, sentence.j, "history")  # 'Summary of the first stage: scar excised, A2 rebuilt.'
        return
    opens = [w for w in words[sentence.i : sentence.i + 5] if w not in _SMALL]
    if opens[:2] in _FIRST and _is_past(words[sentence.i : sentence.j], opens) and tells_of_second(words):
        page.mark(sentence.i, sentence.j, "history")  # 'The first stage was carried out by us in May, with ...'
        return
    had = next((k for k in range(sentence.i, sentence.j - 3) if _had_it(words, k)), None)
    if had is not None and tells_of_second(words):
        page.mark(had, sentence.j, "history")  # 'She had her first stage with us in May, when the rod was placed'
        return
    opened = [k for k in range(sentence.i, sentence.j) if words[k] == "("]
    for k in opened:
        named = any(words[n : n + 2] in _FIRST for n in range(k + 1, k + 1 + _NEAR))
        if named and tells_of_second(words):
            end = next((n for n in range(k, sentence.j) if words[n] == ")"), sentence.j)
            page.mark(k, end, "history")


def _mark_done_then(page: Page, sentence: Sentence) -> None:
    """'The pulleys rebuilt in the first stage are solid': mark what was done then, and not what is found now."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 2):
        n = k + 1 + (words[k + 1] == "the")
        if words[k] in _AT and words[n : n + 2] in _AT_FIRST and tells_of_second(words):
            for m in within(page.mentions, sentence.i, k):
                if m.kind in _DEEDS and k - m.j < _SOON:
                    page.mark(m.i, n + 2, "history")


_SOON = 2  # words between what was done and when


def _had_it(words: list[str], k: int) -> bool:
    return words[k] in ("had", "underwent") and words[k + 1] in _WHOSE and words[k + 2 : k + 4] in _FIRST


_WHOSE = frozenset(["his", "her", "the", "their", "a"])


def _recaps(words: list[str]) -> bool:
    """'Summary of the first stage (for context only): ...'"""
    opens = [w for w in words[:6] if w not in _SMALL]
    return opens[:1] != [] and opens[0] in _RECAPS and opens[1:2] == ["of"] and opens[2:4] in _FIRST and ":" in words


def _is_past(words: list[str], opens: list[str]) -> bool:
    """'Stage 1 was ...', 'Stage 1 (rod placed, A2 rebuilt) was done in May'."""
    if opens[2:3] == ["("] and ")" in words:
        return words[words.index(")") + 1 :][:1] in _PAST
    return opens[2:3] in _PAST


def tells_of_second(words: list[str]) -> bool:
    """Tell whether a note names a second stage."""
    if not _SECONDARY.isdisjoint(words):
        return True
    spoken = [w for w in words if w != "-"]  # 'second-stage grafting'
    return any(pair in _SECOND for pair in map(list, pairwise(spoken)))
