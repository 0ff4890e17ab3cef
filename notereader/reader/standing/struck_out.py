"""What a later line strikes from a note: 'strike the "A2 intact" above', 'please disregard 3-0 in the report above'.

What is quoted to be struck out holds no more, neither in the quotation nor where it was first written.
"""

from collections.abc import Iterator

from notereader.reader.page import Break, Page, Sentence
from notereader.vocabulary.wordlists import word_list

_WRONG = word_list("standing", "wrong")
_HOLDS = word_list("standing", "holds")
_ENTRIES = word_list("standing", "entries")
_STRIKES = word_list("standing", "strikes")
_REMARKS = word_list("standing", "remarks")
_WRONGLY = word_list("standing", "wrongly")
_TELLING = word_list("standing", "telling")
_TEMPLATES = word_list("standing", "templates")
_CAME = frozenset(["came", "come", "comes", "stems", "stem", "is", "was", "are", "were"])
_TO_DISREGARD = frozenset(["disregard", "ignore"])
_ABOUT = frozenset(["that", "about", "of", "on", "saying", "concerning", "regarding"])
_QUOTES = frozenset(['"', "'"])
_STOPS = frozenset([",", ";", "."])
_FEWEST = 2  # words of a quotation that is looked for where it was written
_LONGEST = 12

_Phrase = tuple[str, ...]


def mark_struck_out(page: Page) -> None:
    """Note that what the note itself strikes out is no finding."""
    struck: dict[_Phrase, int] = {}  # with the word behind which it may stand again
    for sentence in page.sentences:
        if not _QUOTES.isdisjoint(sentence.said):
            for first, last in _quotations(page, sentence):
                if _cannot_be_said(page, sentence, first, last):
                    page.mark(first, last + 1, "teaching")
                if _is_struck(page, sentence, first, last):
                    page.mark(first, last + 1, "teaching")
                    phrase = tuple(page.words[first + 1 : last])
                    if _FEWEST <= len(phrase) <= _LONGEST and page.words[last + 1 : last + 2] != ["for"]:
                        struck[phrase] = first
        _mark_last_said(page, sentence)
        _mark_disregarded(page, sentence)
        _mark_deleted(page, sentence)
        _mark_wrongly_told(page, sentence)
    if struck:
        _strike_where_written(page, struck)


def _quotations(page: Page, sentence: Sentence) -> Iterator[tuple[int, int]]:
    """Yield the first and last mark of each quotation; an apostrophe opens one only where a word begins with it."""
    opened, mark = -1, ""
    for k in range(sentence.i, sentence.j):
        word = page.words[k]
        if word not in _QUOTES:
            continue
        if opened >= 0 and word == mark:
            yield opened, k
            opened = -1
        elif opened < 0 and (word == '"' or page.breaks[k] > Break.NONE) and k + 1 < sentence.j:
            opened, mark = k, word


def _is_struck(page: Page, sentence: Sentence, first: int, last: int) -> bool:
    """'My entry "FDP intact" is to be read accordingly', '"Day 14" is a slip', 'strike the "A2 intact" above'."""
    before, after = page.words[max(sentence.i, first - 3) : first], page.words[last + 1 : last + 6]
    after = after[after[:1] in ([","], ["above"]) :]
    verb = after[:1] in (["is"], ["was"], ["should"], ["must"])
    wrong = verb and (not _WRONG.isdisjoint(after) or "read" in after[1:3])
    wrong = wrong or (after[:2] == ["does", "not"] and not _HOLDS.isdisjoint(after[2:3]))
    # 'the words "with epitendinous suture" came from my template'
    wrong = wrong or (after[:1] != [] and after[0] in _CAME and not _TEMPLATES.isdisjoint(after))
    wrong = wrong or (before[-1:] == ["for"] and after[:1] == ["read"])  # 'for "FDS intact" read "FDS cut 30%"'
    named = _ENTRIES | _STRIKES if page.words[first] == '"' else _STRIKES
    return wrong or before[-2:] == ["cross", "out"] or not named.isdisjoint(before)


def _cannot_be_said(page: Page, sentence: Sentence, first: int, last: int) -> bool:
    """'I will not write "no gap" here', 'the words "A2 intact" cannot honestly be put down'.

    What the writer would not say is told neither so nor otherwise.
    """
    words = page.words
    begin = next((k for k in range(first - 1, sentence.i - 1, -1) if words[k] in _STOPS), sentence.i)
    end = next((k for k in range(last + 1, sentence.j) if words[k] in _STOPS), sentence.j)
    return any(
        words[k] in _DENIALS and _refuses(words[k + 1 : min(k + 1 + _SOON_SAID, stop)])
        for start, stop in ((begin, first), (last + 1, end))
        for k in range(start, stop)
    )


def _refuses(words: list[str]) -> bool:
    """'Not honestly be written', but not 'not hesitate to write'."""
    return not _SAYING.isdisjoint(words) and _SAID_ALL_THE_SAME.isdisjoint(words)


_DENIALS = word_list("standing", "not_to_be_said")
_SAID_ALL_THE_SAME = word_list("standing", "said_all_the_same")
_SAYING = word_list("standing", "saying")
_SOON_SAID = 5  # words: 'cannot honestly be written', 'not something I can put down'


def _strike_where_written(page: Page, struck: dict[_Phrase, int]) -> None:
    begins: dict[str, list[_Phrase]] = {}
    for phrase in struck:
        begins.setdefault(phrase[0], []).append(phrase)
    for k, word in enumerate(page.words):
        for phrase in begins.get(word, ()):
            last = k + len(phrase)
            if k < struck[phrase] and tuple(page.words[k:last]) == phrase and _closes(page, last):
                page.mark(k, last, "teaching")


def _closes(page: Page, k: int) -> bool:
    """'A2 intact.' is struck; of 'both arteries cut and not repaired' the rest would be told of something else."""
    return page.words[k] in _STOPS or page.breaks[k] >= Break.LINE


def _mark_last_said(page: Page, sentence: Sentence) -> None:
    """'No gap. Strike that.', 'both repaired - scrap that.': an order to the typist; what stands before it goes."""
    if _ORDERS.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(max(sentence.i, 1), sentence.j - 1):
        if words[k] not in _ORDERS or not (words[k - 1] in _BEFORE_ORDER or k == sentence.i):
            continue
        within_it = range(k + 1, min(k + _LONGEST_ORDER, sentence.j))
        end = next((n for n in within_it if words[n] in _AFTER_ORDER or words[n : n + 2] == [",", "typist"]), -1)
        if end < 0 or not _IS_THAT.issuperset(words[k + 1 : end]) or words[k + 1] not in _THAT:
            continue
        last = k
        while last > 0 and (words[last - 1] in _BEFORE_ORDER):
            last -= 1
        begin = _begin_of_last(page, last, fully=words[last] == "." or page.breaks[last] >= Break.LINE)
        page.mark(begin, last, "teaching")


def _begin_of_last(page: Page, last: int, *, fully: bool) -> int:
    """Return where what ends before word `last` begins: the last clause, of a short sentence all of it."""
    words, first = page.words, max(0, last - _LONGEST)
    stops = _FULL_STOPS if fully else _STOPS | {":"}
    begin = next((n + 1 for n in range(last - 1, first - 1, -1) if words[n] in stops), -1)
    if begin < 0 and fully:
        return _begin_of_last(page, last, fully=False)
    line = next((n for n in range(last - 1, first, -1) if page.breaks[n] >= Break.LINE), 0)
    return max(begin, line, first if begin < 0 else 0)


_ORDERS = word_list("standing", "orders_to_strike")
_THAT = frozenset(["that", "the", "this", "it"])
_IS_THAT = frozenset(
    ["that", "the", "this", "it", "last", "bit", "remark", "sentence", "line", "statement", "please", "typist"]
)
_BEFORE_ORDER = frozenset([",", ";", ".", "-", "(", "please", "no", "sorry", "oh"])
_AFTER_ORDER = frozenset([".", ";", ")"])  # 'scratch that, the small was 4-0' puts right what it takes back
_LONGEST_ORDER = 7  # words: 'delete that last remark please'
_FULL_STOPS = frozenset([".", ";"])


def _mark_disregarded(page: Page, sentence: Sentence) -> None:
    """'Please disregard 3-0 in the report above', 'strike the statement that A2 was intact': it holds no more."""
    if _STRIKES.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j - 1):
        if words[k] not in _STRIKES or words[k] == "remove":
            continue  # 'I had to remove the line of sutures'
        plain = words[k] in _TO_DISREGARD and words[k + 1] not in ("the", "this", "that", "it", "above")
        remark = next((n for n in range(k + 2, min(k + 4, sentence.j - 1)) if words[n] in _REMARKS), -1)
        if plain or (words[k + 1] == "the" and remark > 0 and words[remark + 1] in _ABOUT):
            end = next((n for n in range(k, sentence.j) if words[n] in _STOPS), sentence.j)
            page.mark(k, end, "teaching")


def _mark_deleted(page: Page, sentence: Sentence) -> None:
    """'A locked Krackow up the tendon. Correction, delete locked Krackow, ...': it holds neither there nor before."""
    if _ALOUD.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j - _FEWEST):
        if words[k] not in _ALOUD or (k > sentence.i and words[k - 1] not in _BEFORE_ALOUD):
            continue
        end = next((n for n in range(k, sentence.j) if words[n] in _STOPS), sentence.j)
        phrase = words[k + 1 : end]
        if not _FEWEST <= len(phrase) <= _FEW or phrase[0] in _POINTS_BACK:
            continue  # 'Strike that, the A3 was opened'
        page.mark(k, end, "teaching")
        size = len(phrase)
        before = next((n for n in range(k - size, max(0, k - _SPOKEN) - 1, -1) if words[n : n + size] == phrase), None)
        if before is not None:
            page.mark(before, before + size, "teaching")


_ALOUD = frozenset(["delete", "strike", "scratch", "erase"])
_BEFORE_ALOUD = frozenset([",", ":", "-", "please", "no", "sorry", "correction"])
_FEW = 5  # words; so much is named again to be struck
_POINTS_BACK = frozenset(["that", "this", "the", "it", "these", "those", "last", "my"])
_SPOKEN = 80  # words; what is taken back aloud was said not long ago


def _mark_wrongly_told(page: Page, sentence: Sentence) -> None:
    """'The FDS was mistakenly called whole', 'A2 was entered wrongly as intact': what was told so holds no more."""
    if _WRONGLY.isdisjoint(sentence.said):
        return
    for k in range(sentence.i + 1, sentence.j - 1):
        if page.words[k] in _WRONGLY and not _TELLING.isdisjoint(page.words[k - 1 : k + 2]):
            end = next((n for n in range(k, sentence.j) if page.words[n] in (",", ";", ".", ":")), sentence.j)
            page.mark(k, end, "teaching")
