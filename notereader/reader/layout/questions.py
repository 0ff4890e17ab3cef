"""Questions within a note: those that nobody answered, and where one begins that closes a statement.

'Gap? None.' tells something; 'Gap? Glide? Not recorded at the time.' and 'Thumb FPL excised? No.' do not.
"""

from notereader.reader.page import Break, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_UNKNOWN = word_list("questions", "unknown")
_ANSWERS = word_list("questions", "answers")
_STOPS = frozenset([".", ";", "!"])
_LONGEST = 10  # words of a question in a row of such
_LONG_ANSWER = 12  # words looked at
_NOES = frozenset(["no", "n", "not", "never", "wrong", "hardly", "nope", "far", "anything", "alas"])
# What makes of a question more than a label: words that tell what was done, or how well.
_LOADED = frozenset(
    [("glide", "free"), *(("deed", deed) for deed in ("excised", "grafted", "tenodesed", "reinserted", "trimmed"))]
)
_LOADED_KINDS = frozenset(
    ["ends", "hold", "strandword", "extent", "hurt", "stitch", "material", "side", "anchor", "button"]
)
_REASSURING = frozenset(["no", "free", "freely", "smooth", "smoothly", "without"])


def mark_unanswered(page: Page, sentence: Sentence) -> None:
    """Set aside the questions of a sentence that were left without an answer."""
    words = page.words
    marks = [k for k in range(sentence.i, sentence.j) if words[k] == "?"]
    first = sentence.i
    for n, k in enumerate(marks):
        begin = max(first, k - _LONGEST, _open_bracket(page, sentence.i, k) or 0)
        begin = _asked_last(page, begin, k) or begin
        behind = marks[n + 1] if n + 1 < len(marks) else sentence.j
        if _is_unanswered(page, k, behind) or _is_denied(page, begin, k) or _goes_on_elsewhere(page, begin, k):
            page.mark(begin, k + 1, "question")
        first = next((m + 1 for m in range(k + 1, behind) if words[m] in _STOPS), k + 1)


def _is_unanswered(page: Page, k: int, behind: int) -> bool:
    """Tell whether the question that ends at word k is followed by another one, or by words that leave it open."""
    answer = page.words[k + 1 : behind]
    if page.words[behind : behind + 1] == ["?"] and not _STOPS.intersection(answer):
        # 'Gap? Glide?', 'Free glide? No gap?', but 'Gap? none Glide? free', '21 Gap? .. N     22 Thick? .. N'
        at = next((n for n in range(k + 1, behind) if not _leads(page.words[n])), behind)
        anew = at + 1 < behind and (_is_title(page, at + 1) or page.breaks[at + 1] >= Break.COLUMN)
        return not (anew and page.words[at] in _ANSWERS)
    stop = next((n for n, word in enumerate(answer[:_LONG_ANSWER]) if word in _STOPS), _LONG_ANSWER)
    return not _UNKNOWN.isdisjoint(answer[:stop])


def _leads(word: str) -> bool:
    return word.startswith((".", "_")) or word in (":", "-", "=")


def _is_title(page: Page, k: int) -> bool:
    return page.text[page.starts[k]].isupper()


def _is_denied(page: Page, i: int, k: int) -> bool:
    """'Thumb FPL excised? No.', 'Free glide? Not quite.': a no to 'Gap?' tells; these it takes back."""
    if _NOES.isdisjoint(page.words[k + 1 : k + 2]):
        return False
    said = any((m.kind, m.value) in _LOADED or m.kind in _LOADED_KINDS for m in within(page.mentions, i, k))
    return said or not _REASSURING.isdisjoint(page.words[i:k])


def _goes_on_elsewhere(page: Page, i: int, k: int) -> bool:
    """'FDP intact? FDS cut.', 'Is A2 whole? We opened the sheath.': of something else than the state asked for."""
    asked = {m.kind for m in within(page.mentions, i, k) if (m.kind, m.value) in _WHOLE}
    behind = page.words[k + 1 : k + 2]
    if not asked or not behind or page.breaks[k + 1] >= Break.COLUMN:
        return False
    anew = _is_title(page, k + 1) and behind[0] not in _AGREEING
    return anew and not any(m.kind in asked for m in within(page.mentions, k + 1, k + 1 + _NEXT))


_WHOLE = frozenset([("extent", "intact"), ("opened", "intact")])
_AGREEING = word_list("questions", "agreeing")
_NEXT = 3  # words
_PARTS = frozenset(["+", ",", ";", ".", "|", "/"])
_LONGEST_LABEL = 4  # words: 'A3 = ?'


def question_of(page: Page, sentence: Sentence) -> int:
    """Return where the question begins that ends a sentence: in 'FDP repaired - 3-0? - no, 4-0' behind the dash."""
    if page.words[sentence.j - 2] in ("=", ":") and sentence.j - sentence.i > _LONGEST_LABEL:
        parts = (k for k in range(sentence.j - 3, sentence.i, -1) if page.words[k] in _PARTS)
        return next(parts, sentence.i - 1) + 1  # 'A2 = whole + A4 = excised + A3 = ?': only the last is asked
    bracket = _open_bracket(page, sentence.i, sentence.j - 1)
    if bracket is not None:
        return bracket  # '3-0 Ethibond, figure-of-eight (left bare? no, stitched)'
    wondered = _wondered_at(page, sentence)
    if wondered is not None:
        return wondered
    for k in range(sentence.j - 2, sentence.i + 1, -1):
        dash = page.words[k] in ("-", "\u2013") and page.breaks[k] == page.breaks[k + 1] == Break.SPACE
        if (dash or page.words[k] == ";") and any(m.kind == "deed" for m in within(page.mentions, sentence.i, k)):
            return k + 1
    return sentence.i


def _wondered_at(page: Page, sentence: Sentence) -> int | None:
    """'Ends chewed -> 3 mm off? no, 5': where the question begins that its writer answers with a no, or None."""
    last = sentence.j - 1
    answer = [w for w in page.words[sentence.j : sentence.j + 3] if w not in _ARROW]
    return _asked_last(page, max(sentence.i, last - _LONGEST), last) if answer[:1] in (["no"], ["nope"]) else None


def _asked_last(page: Page, first: int, end: int) -> int | None:
    """'Ends chewed -> 3 mm off?', 'epi 6-0 Prolene, mattress?': where what is asked begins, behind what is told."""
    words = page.words
    arrow = next((k + 2 for k in range(end - 2, first, -1) if words[k : k + 2] == ["-", ">"]), None)
    if arrow is not None:
        return arrow
    comma = next((k + 1 for k in range(end - 1, first, -1) if words[k] == ","), None)
    named = within(page.mentions, comma, end) if comma is not None else []
    return comma if named and all(m.kind in _MAKES for m in named) else None


_ARROW = frozenset(["-", ">"])
_MAKES = frozenset(["stitch", "pattern"])


def _open_bracket(page: Page, first: int, end: int) -> int | None:
    """Return the bracket before word `end` that is still open, if any: what stands before it is no question."""
    for k in range(end - 1, max(first, end - _LONGEST), -1):
        if page.words[k] == ")":
            return None
        if page.words[k] == "(":
            return k
    return None
