"""What a note of a second stage tells of the first: '(stage one 6 June 2030: rod placed, A2 rebuilt)'."""

from notereader.reader.page import Page, Sentence

_FIRST = (["stage", "one"], ["stage", "1"], ["stage", "i"], ["first", "stage"])
_SECOND = (["stage", "two"], ["stage", "2"], ["stage", "ii"], ["second", "stage"])
_PAST = (["was"], ["had"])
_SMALL = frozenset(["the", "at", "our", "in"])
_NEAR = 3  # words between the bracket and the name of the stage


def mark_earlier_stage(page: Page, sentence: Sentence) -> None:
    """Mark as history what stands in brackets under the name of the first stage, or is told of it, in a second one."""
    if "stage" not in sentence.said:
        return
    words = page.words
    opens = [w for w in words[sentence.i : sentence.i + 5] if w not in _SMALL]
    if opens[:2] in _FIRST and opens[2:3] in _PAST and _tells_of_second(words):
        page.mark(sentence.i, sentence.j, "history")  # 'The first stage was carried out by us in May, with ...'
        return
    opened = [k for k in range(sentence.i, sentence.j) if words[k] == "("]
    for k in opened:
        named = any(words[n : n + 2] in _FIRST for n in range(k + 1, k + 1 + _NEAR))
        if named and _tells_of_second(words):
            end = next((n for n in range(k, sentence.j) if words[n] == ")"), sentence.j)
            page.mark(k, end, "history")


def _tells_of_second(words: list[str]) -> bool:
    return any(words[n : n + 2] in _SECOND for n in range(len(words) - 1))
