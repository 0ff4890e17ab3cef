"""What was wanted, advised, expected or tried in vain: none of it was done.

'7 to 10 mm is recommended; 4 mm was measured', 'two of the four strands planned', 'there should be no gap', 'locks of
3 mm were tried and tore out'. A noun with its wish is set aside alone, for the rest of the sentence tells what was got.
"""

from collections.abc import Sequence
from itertools import pairwise

from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.reader.standing.good_states import is_good
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_WANTED = word_list("wishes", "wanted")  # 'the six strands planned', 'the recommended 10 mm'
_AIMS = phrases_by_first_word("wishes", "aims")  # 'aiming for six strands'
_TARGETS = word_list("wishes", "targets")  # 'target: 10 mm'
_MODALS = phrases_by_first_word("wishes", "modals")  # 'there should be no gap'
_MEANT = word_list("wishes", "meant")  # 'should be placed': the one that should be stands before it
_REMARKS = word_list("wishes", "remarks")  # 'it should be noted that ...'
_TRIED = word_list("wishes", "tried")
_FAILED = frozenset(tuple(words.split()) for words in word_list("wishes", "failed"))
_AGAIN = word_list("wishes", "again")
_INTENDED = word_list("wishes", "intended")  # 'I meant to add a running 6-0 but the needle broke'
_STROVE = word_list("wishes", "strove")  # 'I tried to keep A2'
_READIED = word_list("wishes", "readied")  # 'was opened for the epitendinous but not used'
_ANYBODY = frozenset(["one", "surgeons", "people", "everybody", "everyone"])
_TRIES = frozenset(["tries", "try", "aims", "aim", "likes", "like", "wants", "want", "strives", "keeps", "hopes"])
_GOT = frozenset(["with", "by", "using", "as", "got", "took", "has", "had", "into", "exactly"])
_BOUNDS = frozenset(
    [
        ",",
        ";",
        ".",
        ":",
        "(",
        ")",
        "but",
        "though",
        "although",
        "and",
        "instead",
        "i",
        "we",
        "got",
        "took",
        "-",
        "however",
        "only",
    ]
)
_ENDS = frozenset([";", ".", "but", "however", "yet", "though", "although", "(", ")"])
_QUALITY = frozenset(
    ["gap", "glide", "tension", "bulk", "strandword", "stitch", "pulley", "ends", "role", "pattern", "hold", "bite"]
)
_NOUN = 8  # words of a noun with what describes it
_POSSIBLE = frozenset(["possible", "time", "feasible", "needed", "necessary", "required"])  # 'if possible'
_SEEMED = frozenset(["looked", "seemed", "appeared"])
_ASKED = (
    _POSSIBLE
    | _WANTED
    | _TARGETS
    | _TRIED
    | _STROVE
    | _READIED
    | _INTENDED
    | _SEEMED
    | _ANYBODY
    | _AIMS.keys()
    | _MODALS.keys()
)


def mark_wishes(page: Page, sentence: Sentence) -> None:
    """Mark what a sentence says was wished for, or tried and given up."""
    if _ASKED.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        word = words[k]
        if word in _WANTED or (word in _TARGETS and k <= sentence.i + 1):
            _mark_wanted(page, sentence, k)
        elif word in _AIMS and any(words[k : k + len(aim)] == aim for aim in _AIMS[word]):
            page.mark(k, _aim_end(page, k + 1, sentence.j), "considered")
        elif word in _MODALS and any(words[k : k + len(modal)] == modal for modal in _MODALS[word]):
            _mark_modal(page, sentence, k)
        elif word in _INTENDED and words[k + 1 : k + 2] == ["to"] and not carried_out(words[k + 2 : sentence.j]):
            verb = (
                m for m in range(k, sentence.j) if words[m] in ("was", "were")
            )  # 'the ends we meant to sew were torn'
            page.mark(k, min(_end(page, k, sentence.j), next(verb, sentence.j)), "plan")
    if sentence.section != "instructions" and not _POSSIBLE.isdisjoint(sentence.said):
        _mark_if_possible(page, sentence)
    if not _STROVE.isdisjoint(sentence.said):
        _mark_striven(page, sentence)
    if words[sentence.i] in _ANYBODY and not _TRIES.isdisjoint(words[sentence.i + 1 : sentence.i + 4]):
        page.mark(sentence.i, _end(page, sentence.i, sentence.j), "teaching")
    if not _TRIED.isdisjoint(sentence.said):
        _mark_tried(page, sentence)
    if not _READIED.isdisjoint(sentence.said):
        _mark_unused(page, sentence)
    if not _SEEMED.isdisjoint(sentence.said):
        _mark_seeming(page, sentence)


def carried_out(words: Sequence[str]) -> bool:
    """'I meant to lock every bite and did so': whether what was intended is said to have been done."""
    pairs = [*pairwise((*words, "."))]
    did = any(word == "did" and after not in ("not", "n't") for word, after in pairs)
    managed = any(word == "managed" and after not in _FEWER and not count_of(after) for word, after in pairs)
    return did or managed or "succeeded" in words  # but 'I wanted six strands and managed four'


_FEWER = frozenset(["only", "just", "barely", "but", "merely", "no", "neither", "half"])


def _mark_seeming(page: Page, sentence: Sentence) -> None:
    """'FDS looked intact from the window but on pulling its ulnar slip came away': what only seemed well."""
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _SEEMED:
            continue
        told = [m for m in within(page.mentions, k + 1, k + 4) if (m.kind, m.value) in _WELL]
        end = next((n for n in range(k, min(k + _SOON, sentence.j)) if words[n] in _YET), None)
        if told and end is not None and "," not in words[k:end]:
            page.mark(k, end, "considered")


_WELL = frozenset([("extent", "intact"), ("opened", "intact"), ("ends", "clean"), ("gap", "none"), ("glide", "free")])
_YET = frozenset(["but", "until", "yet", "however"])
_SOON = 12  # words


def _mark_unused(page: Page, sentence: Sentence) -> None:
    """'A running 6-0 was opened for the epitendinous but in the end not used': what was only got ready."""
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _READIED:
            continue
        unused = next((m for m in range(k + 1, sentence.j - 1) if (words[m], words[m + 1]) in _UNUSED), None)
        stop = _end(page, k, sentence.j)
        if unused is None or (stop < unused and words[stop] not in ("but", "however", "yet")):
            continue
        begin = next((m + 1 for m in range(k - 1, sentence.i - 1, -1) if words[m] in _APART), sentence.i)
        kinds = {m.kind for m in within(page.mentions, begin, unused)}
        sized = any(w.endswith("-0") for w in words[begin:k])  # 'I had a 5-0 ready, but no stitch was placed'
        if (sized or not kinds.isdisjoint(_SUTURE)) and "pulley" not in kinds:
            page.mark(begin, stop, "plan")


_APART = frozenset([";", ":", ",", "(", "but", "and"])
_UNUSED = frozenset((a, b) for a in ("not", "never") for b in ("used", "placed", "put", "inserted", "sewn"))
_UNUSED |= {("no", "stitch"), ("no", "stitches"), ("no", "suture"), ("no", "sutures")}
_SUTURE = frozenset(["role", "material", "stitch", "pattern", "strandword"])


def _up_to(page: Page, k: int, j: int) -> int:
    bounds = (m for m in range(k, j) if page.words[m] in _BOUNDS)
    spaced = (m for m in bounds if page.words[m] != "-" or page.breaks[m] != Break.NONE)  # not of 'two-strand'
    return next(spaced, j)


def _aim_end(page: Page, k: int, j: int) -> int:
    """'aiming for no gap and free glide': a second aim behind 'and', where no verb tells what was done instead."""
    end = _up_to(page, k, j)
    further = _up_to(page, end + 1, j) if page.words[end : end + 1] == ["and"] else end
    done = any(w.endswith("ed") or w in _VERBS for w in page.words[end:further])
    return end if done else further


_VERBS = frozenset(["was", "were", "is", "are", "had", "has", "did", "put", "found", "made", "gave", "ran", "went"])


def _end(page: Page, k: int, j: int) -> int:
    return next((m for m in range(k, j) if page.words[m] in _ENDS), j)


def _mark_wanted(page: Page, sentence: Sentence, k: int) -> None:
    """'the ten millimetres wanted', 'the recommended purchase of 10 mm', '7 to 10 mm is recommended'."""
    words = page.words
    begin = k
    while begin > max(sentence.i, k - _NOUN) and words[begin - 1] not in _BOUNDS:
        begin -= 1
    figures = page.figures_in(begin, k)
    if figures:
        first = figures[0]
        while first > begin and words[first - 1] in ("the", "a", "of", "purchase", "our", "my"):
            first -= 1
        done = words[first - 1 : first] and first > sentence.i and words[first - 1] in _GOT
        if not done or "of" in words[max(begin, first - 1) : figures[0]]:
            page.mark(first, k + 1, "considered")
        return
    behind = k + 1 + (words[k + 1 : k + 2] == [":"])
    end = _up_to(page, behind, min(sentence.j, k + _NOUN))
    done = k > sentence.i + 1 and words[k - 1] in ("the", "my", "our", "a") and words[k - 2] in _GOT
    done = done or carried_out(words[k + 1 : sentence.j])  # 'I wanted to keep A2 and did'
    if not done and (page.figures_in(k, end) or _within_kinds(page, k, end)):
        page.mark(k, end, "considered")


_TO_COME = frozenset(["was", "were"])


def _within_kinds(page: Page, i: int, j: int) -> list[Mention]:
    return [m for m in within(page.mentions, i, j) if m.kind in _QUALITY]


def _mark_modal(page: Page, sentence: Sentence, k: int) -> None:
    """'There should be no gap and it ought to glide freely', 'A2 should have been kept'."""
    words = page.words
    end = _end(page, k, sentence.j)
    if words[k - 1] == "as":
        return  # 'as was to be expected'
    if words[k - 1] in ("it", "i", "we") and not _REMARKS.isdisjoint(words[k : k + 4]):
        return
    if words[k] in _TO_COME and carried_out(words[k + 1 : sentence.j]):
        return  # 'an edge stitch was to follow and did follow'
    meant = not _MEANT.isdisjoint(words[k : k + 5])
    begin = k
    while meant and begin > sentence.i and words[begin - 1] not in _BOUNDS:
        begin -= 1
    if _within_kinds(page, begin, end) or any(count_of(word) for word in words[k + 2 : k + 5]):
        page.mark(begin, end, "plan")


def _mark_if_possible(page: Page, sentence: Sentence) -> None:
    """'Four-strand repair if possible', 'an epitendinous suture if time': up to the stop before it."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j):
        ends = words[k + 1 : k + 2] in ([], ["."], [","], [";"]) or k + 1 >= sentence.j
        if words[k - 1] not in ("if", "where") or words[k] not in _POSSIBLE or not ends:
            continue
        begin = k
        while begin > sentence.i and words[begin - 1] not in _BOUNDS and words[begin - 1] != ",":
            begin -= 1
        if _within_kinds(page, begin, k):
            page.mark(begin, k + 1, "plan")


def _tried_again(words: Sequence[str]) -> bool:
    """Tell whether it was done again after it failed; 'taken out again' is no second try."""
    return any(word in _AGAIN and before != "out" for before, word in pairwise(("", *words)))


def _mark_attempt(page: Page, sentence: Sentence, k: int) -> None:
    """Mark the noun, and what describes it, that word k says was tried and no more."""
    words = page.words
    begin = next((m + 1 for m in range(k - 1, sentence.i - 1, -1) if words[m] in _BEFORE_NOUN), sentence.i)
    page.mark(begin, k + 1, "considered")


_BEFORE_NOUN = _BOUNDS | {"then", "with"}


def _mark_striven(page: Page, sentence: Sentence) -> None:
    """'I tried to keep A2': what was striven for, of which nobody says that it came about."""
    words = page.words
    for k in range(sentence.i, sentence.j - 1):
        if words[k] not in _STROVE or words[k + 1] != "to" or carried_out(words[k + 2 : sentence.j]):
            continue
        end = next((m for m in range(k + 1, sentence.j) if words[m] in _BOUNDS), sentence.j)
        inside = within(page.mentions, k + 2, end)  # 'catch' of 'tried to catch a knife' is the verb itself
        if any(is_good(m) or (m.kind in _QUALITY and m.i > k + 2) for m in inside):
            page.mark(k, end, "considered")


def _mark_tried(page: Page, sentence: Sentence) -> None:
    """'Locks of 3 mm were tried in the thumb FPL and tore out': up to where it is said to have failed."""
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _TRIED:
            continue
        failed = next(
            (m for m in range(k + 1, sentence.j) if any(tuple(words[m : m + len(f)]) == f for f in _FAILED)), None
        )
        led = words[k + 1 + (words[k + 1 : k + 2] == [","]) :][:1]
        if failed is None and led in (["but"], ["however"]) and words[k] in ("tried", "attempted"):
            _mark_attempt(page, sentence, k)  # 'a peripheral suture was attempted but the tendon was too soft'
            continue
        if failed is None or _tried_again(words[failed : sentence.j]):
            continue
        alone = words[k - 1] == "," and words[k + 1] == "to"  # '2-strand Kessler, tried to add a second, abandoned'
        begin = next(
            (m + 1 for m in range(k - 1, sentence.i - 1, -1) if words[m] in (";", "but", "then", ":")), sentence.i
        )
        begin = k if alone else begin
        end = next((m for m in range(failed, sentence.j) if words[m] in (";", ".", ",", "so")), sentence.j)
        page.mark(begin, end, "considered")
        return
