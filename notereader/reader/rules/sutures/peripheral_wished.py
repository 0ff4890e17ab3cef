"""A peripheral suture wished for or tried, and not there: 'would have been good, but there was no room', 'here I did not'."""

from itertools import pairwise

from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene

_NEED = frozenset(["room", "space", "time"])
_CLOSES = frozenset(["", ".", ";", ",", "for", "left"])
_WAS = frozenset(["was", "were", "is"])
_TURNS = frozenset(["but", ",", ";", "and", "though"])
_TRIED = frozenset(["tried", "attempted", "begun", "started"])
_PLACES = (["here"], ["today"], ["in", "this"], ["this", "time"], ["on", "this"], ["in", "her"], ["in", "his"])
_ADDING = frozenset(["add", "use", "put", "place", "run", "do", "like", "prefer", "finish", "sew"])
_MINE = frozenset(["my", "our", "routine", "habit", "standard", "usual", "customary"])
_LATER = frozenset(["later", "then", "instead", "again", "until"])


def wanting_room(behind: list[str]) -> bool:
    """'... would have been desirable but there was no room', '..., but there was no time for it'."""
    triples = zip(behind, behind[1:], [*behind[2:], ""], strict=False)
    at = next((k for k, (a, b, c) in enumerate(triples) if a in _WAS and b == "no" and c in _NEED), -1)
    return at > 0 and not _TURNS.isdisjoint(behind[:at]) and (behind[at + 3 :] or [""])[0] in _CLOSES


def not_done_here(scene: Scene, i: int, j: int) -> bool:
    """'I usually add an epitendinous suture, here I did not', 'an edge stitch is my habit, but not in this finger'."""
    lead, behind = scene.words(scene.sentence.i, i), scene.words(j, scene.sentence.j)
    if _ADDING.isdisjoint(lead) and _MINE.isdisjoint(behind[:5]):
        return False  # 'I usually skip it, here I did not', 'such a stitch usually gaps, but not here'
    for k, (turn, word) in enumerate(pairwise(behind)):
        if turn not in _TURNS:
            continue
        clause = [w for w in behind[k + 1 : k + 9] if w != "but"]
        if clause[:1] == ["not"] and (clause[1:2] in _PLACES or clause[1:3] in _PLACES):
            return True
        rest = clause[1:] if word in ("here", "today") else clause
        denied = rest[1:3] == ["did", "not"] and rest[0] in ("i", "we")
        if denied and _CLOSES.union(["here", "today", "do", "add"]).issuperset(rest[3:4]):
            return True
    return False


def tried_and_left(scene: Scene, k: int) -> bool:
    """'An epitendinous suture was tried with 6-0 but abandoned': behind its name, and nothing put in for it."""
    words, last = scene.page.words, scene.sentence.j
    at = next((n for n in range(k, min(k + 12, last)) if words[n] == "abandoned"), -1)
    if at < 0 or _TRIED.isdisjoint(words[k:at]) or not _LATER.isdisjoint(words[at:last]):
        return False
    return not any(i > at for _, i, _ in find_sizes(scene)) and not any(m.i > at for m in scene.of("pattern", "role"))
