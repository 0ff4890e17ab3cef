"""What is told of a hand or finger left alone: 'in the other hand A2 is intact', 'the adjacent finger glides'."""

from itertools import pairwise

from notereader.reader.layout.clauses import CLAUSE_MARKS, clause_start
from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_OTHER = word_list("other_hands", "other")
_NEIGHBOURS = word_list("other_hands", "neighbours")
_HANDS = frozenset(["hand", "side", "arm", "limb"])
_FINGERS = frozenset(["finger", "digit"])
_SUBJECT = frozenset(["was", "were", "is", "are", "had", "has", "glides", "glided", "moves", "moved", "did", "shows"])
_TURNS = frozenset([";", ".", "but", "whereas", "while", "here"])
_LEADS = frozenset(["in", "of", "on"])


def mark_other_hands(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence tells of another hand, of a finger beside the one operated on, or of a joint."""
    if not _FREELY.isdisjoint(sentence.said):
        _mark_moved_elsewhere(page, sentence)
    if _OTHER.isdisjoint(sentence.said) and _NEIGHBOURS.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j - 1):
        if not _names_another(page, k):
            continue
        first = k - 1 if page.words[k - 1] in ("the", "his", "her", "their") and k > sentence.i else k
        led = first > sentence.i and page.words[first - 1] in _LEADS
        first -= led
        opens = first == sentence.i or page.words[first - 1] in CLAUSE_MARKS
        idiom = led and page.words[first] == "on" and page.words[k + 1] == "hand"  # 'A2, on the other hand, ...'
        tells = led or (k + 2 < sentence.j and page.words[k + 2] in _SUBJECT)
        if opens and tells and not idiom:
            end = next((n for n in range(k, sentence.j) if page.words[n] in _TURNS), sentence.j)
            if not any(m.kind == "digit" for m in within(page.mentions, k + 2, end)):
                page.mark(first, end, "other")


def _mark_moved_elsewhere(page: Page, sentence: Sentence) -> None:
    """'He moves the other fingers freely', 'the shoulder moves freely': what moves there is no repair."""
    for k in range(sentence.i, sentence.j):
        if page.words[k] not in _FREELY:
            continue
        first = clause_start(page, sentence, k)
        words = page.words[first:k]
        whole = any(a in _WHOLE and b in _FINGERS_MOVED for a, b in pairwise(words))
        others = any(a in _REST and b in _FINGERS_MOVED for a, b in pairwise(words)) and not _MOVES.isdisjoint(words)
        joint = not _JOINTS.isdisjoint(words[-_NEAR:])
        told = not _REPAIRS.isdisjoint(words) or any(m.kind == "tendon" for m in within(page.mentions, first, k))
        if (whole or others or joint) and not told:
            page.mark(first, k + 1, "other")


_FREELY = word_list("weakened", "freely")
_WHOLE = frozenset(
    ["uninjured", "unaffected", "healthy", "neighbouring", "neighboring", "adjacent", "untouched", "uninvolved"]
)
_REST = frozenset(["other", "remaining"])
_FINGERS_MOVED = frozenset(["fingers", "finger", "digits", "digit", "thumb"])
_MOVES = frozenset(["move", "moves", "moved", "moving", "bends", "bend", "bent", "flexes", "extends", "straightens"])
_JOINTS = frozenset(["shoulder", "shoulders", "elbow", "neck", "forearm"])
_REPAIRS = frozenset(["repair", "repairs", "tendon", "tendons", "suture", "graft", "join", "junction", "it"])
_NEAR = 6  # words


def _names_another(page: Page, k: int) -> bool:
    word, noun = page.words[k], page.words[k + 1]
    return (word in _OTHER and noun in _HANDS) or (word in _NEIGHBOURS and noun in _FINGERS)
