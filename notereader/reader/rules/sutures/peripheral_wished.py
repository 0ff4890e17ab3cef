"""A peripheral suture wished for or tried, and not there: 'would have been good but there was no room'."""

from itertools import pairwise

from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene

_NOUNS = frozenset(["suture", "sutures", "stitch", "repair", "one", "layer"])
_NONE = frozenset(["absent", "0", "unnecessary", "unneeded"])
_SPARED = frozenset(["spared", "waived", "forgone", "avoided", "unnecessary", "absent"])
_NOT_CALLED_FOR = frozenset(["needed", "necessary", "required", "indicated", "warranted"])
_REFUSED = frozenset([("refrained", "from"), ("abstained", "from"), ("desisted", "from"), ("up", "on")])
_OPEN = frozenset(["", "considered", "negated"])
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


def plainly_none(scene: Scene, i: int, j: int) -> bool:
    """'Peripheral suture absent', 'epitendinous (-)', 'was spared', 'was not needed', 'I refrained from one'."""
    if scene.page.standing[i] not in _OPEN:
        return False
    lead = [w for w in scene.words(max(scene.sentence.i, i - 4), i) if w not in ("a", "an", "any", "the")]
    if tuple(lead[-2:]) in _REFUSED and (lead[-2:] != ["up", "on"] or lead[-3:-2] in (["gave"], ["given"])):
        return True
    k = j + (scene.next_word(j) in _NOUNS)
    behind = scene.words(k, min(k + 4, scene.sentence.j))
    if behind[:3] == ["(", "-", ")"] or (behind[:1] and behind[0] in _NONE and [*behind[1:], ""][0] in _CLOSES):
        return True
    if behind[:1] == [] or behind[0] not in _WAS:
        return False
    rest = behind[1:]
    spared = rest[:1] != [] and rest[0] in _SPARED
    return spared or (rest[:1] == ["not"] and rest[1:2] != [] and rest[1] in _NOT_CALLED_FOR)


def would_be(scene: Scene, j: int) -> bool:
    """'An epitendinous suture would add only bulk': what one would do tells of none."""
    k = j + (scene.next_word(j) in _NOUNS)
    return scene.next_word(k) == "would" and scene.next_word(k + 1) in _EFFECTS


def left_off_for_it(scene: Scene, j: int) -> bool:
    """'... would add only bulk and left it out', '... would catch, so it was omitted'."""
    behind = scene.words(j, scene.sentence.j)
    pairs = set(pairwise(behind))
    left = {("left", "it"), ("omitted", "it"), ("was", "omitted"), ("left", "out"), ("avoided", "it"), ("left", "off")}
    return not pairs.isdisjoint(left) or wanting_room(behind)


_EFFECTS = frozenset(["add", "mean", "give", "cause", "catch", "increase", "make", "thicken", "strangle", "bunch"])
