"""Statements of which the note does not say whose they are: 'one of them gapped', 'a 6-0 round one', 'on neither'.

What holds of one of several, unnamed, is shown of none of them.
"""

from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_SEVERAL = word_list("scene", "several_named")
_COUNTED = word_list("scene", "counted_named")
_PLACING = word_list("scene", "placing")
_NOUN = word_list("scene", "one_noun")
_DOES = word_list("scene", "one_does")
_ONE_TENDON = frozenset(["profundus", "superficialis", "tendon", "fdp", "fds"])
_COUNTS = frozenset(["two", "three", "four", "five"])
_ENDS = frozenset([".", ",", ";", ")", ":", "and", "but"])
# Where a note leaves open which of several is meant, or denies it of all, none of these may be said of any.
DENIED_OF_NEITHER = {"extent": "intact", "glide": "free", "treatment": "repaired"}


def one_of_several(page: Page, first: int, last: int) -> bool:
    """Tell whether words first to last speak of one of several tendons or fingers without saying which."""
    words = page.words
    if any(_fewer_of(words, k, last) for k in range(first, last - 3)):
        return True
    spots = [k for k in range(first, last) if words[k] == "one" and words[k - 1] not in ("not", "only")]
    return any(_of_them(words, k, last) or _in_one(words, k, first, last) or _does(words, k, first) for k in spots)


def _fewer_of(words: list[str], k: int, last: int) -> bool:
    """'Two of the three showed no gap', 'free glide in three of the four': not 'two of the four strands'."""
    if words[k + 1] != "of" or words[k + 2] not in ("the", "these", "those", "our", "my"):
        return False
    behind = words[k + 4] if k + 4 < last else "."
    fewer = 1 < count_of(words[k]) < count_of(words[k + 3])
    return fewer and (behind in _ENDS or behind in _DOES | _COUNTED or behind.endswith("ed"))


def on_neither(page: Page, first: int, last: int) -> bool:
    """Tell whether words first to last end in 'on neither', 'in neither finger'."""
    words = page.words
    return any(words[k] == "neither" and words[k - 1] in _PLACING for k in range(max(first + 1, last - 5), last))


def mark_answers_in_turn(page: Page, sentence: Sentence) -> None:
    """'Gap: none and 1 mm respectively', where the sentence names no finger: neither answer is shown of all."""
    if "respectively" not in sentence.said and not {"that", "order"} <= sentence.said:
        return
    inside = within(page.mentions, sentence.i, sentence.j)
    if any(m.kind == "digit" for m in inside):
        return
    asked = [m.i for m in inside if m.kind in _ASKED or (m.kind, m.value) == ("role", "peripheral")]
    turns = range(sentence.i + 1, sentence.j)
    if asked and any(page.words[k] == "and" and page.words[k - 1] in _ANSWERS and k > min(asked) for k in turns):
        page.mark(sentence.i, sentence.j, "unfilled")


_ASKED = frozenset(["gap", "glide", "tension", "bulk"])
_ANSWERS = frozenset(["none", "nil", "no", "yes", "free", "present", "absent", "some", "seen", "0"])


def _of_them(words: list[str], k: int, last: int) -> bool:
    """'one of them', 'one of the two repairs', 'one pair of ends'; not 'one of the two slips'."""
    if words[k + 1 : k + 3] in _ONE_PAIR and k + 3 < last:
        return words[k + 3] in _ENDS_OF_ONE
    if words[k + 1 : k + 2] != ["of"] or k + 2 >= last:
        return False
    after = [w for w in words[k + 2 : min(k + 6, last)] if w != "the"]
    if "pulleys" in after:
        return True  # 'one of the A2 pulleys'
    if not after or after[0] not in _SEVERAL:
        return False
    return after[0] not in _COUNTS or after[1:2] == [] or after[1] in _ENDS | _DOES | _COUNTED


_ONE_PAIR = (["pair", "of"], ["set", "of"])
_ENDS_OF_ONE = frozenset(["ends", "stumps", "edges", "tendons"])


def _in_one(words: list[str], k: int, first: int, last: int) -> bool:
    """'intact in one', 'round one finger only'; not 'in one piece'."""
    behind = words[k + 1] if k + 1 < last else "."
    if k >= first + 2 and words[k - 1] == "the" and words[k - 2] in _PLACING and behind in ("that", "which"):
        return True  # 'no gap in the one that was tested'
    return k > first and words[k - 1] in _PLACING and (behind in _NOUN or behind in _ENDS)


def _does(words: list[str], k: int, first: int) -> bool:
    """'One gapped by 1 mm.', 'One profundus was repaired with 3-0.'"""
    named = words[k + 1 : k + 2] != [] and words[k + 1] in _ONE_TENDON and words[k + 2 : k + 3] in (["was"], ["got"])
    if k == first and named:
        return True
    return k == first and words[k + 1 : k + 2] != [] and words[k + 1] in _DOES
