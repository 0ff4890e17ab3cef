"""The peripheral suture that was begun and not left in: 'A running 6-0 cut through, so it was unpicked'."""

from collections.abc import Mapping
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.rules.sutures.roles import PERIPHERAL, Anchor
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

# What is only said of a suture; what is said of the noun or the 'it' before it; and that no other was put in.
_UNDONE = phrases_by_first_word("lost_peripheral", "undone")
_REMOVED = phrases_by_first_word("lost_peripheral", "removed")
_NOT_AGAIN = phrases_by_first_word("lost_peripheral", "not_again")
_ALL = (_UNDONE, _REMOVED, _NOT_AGAIN)
_ANY = frozenset(word for phrases in _ALL for word in phrases)
_RENEWED = word_list("lost_peripheral", "renewed")
_OTHERS = word_list("replaced_cores", "others") - {"epitendinous", "peripheral", "circumferential", "running"}
_PARTS = word_list("replaced_cores", "parts")
_DENIALS = frozenset(["not", "no", "never", "none", "without", "n't", "nor"])
_OF_CORE = frozenset(["stitch", "strandword"])
_NEAR = 3  # words
_BEGUN = frozenset(["begun", "started", "tried", "attempted", "broke", "tore", "snapped"])
_FINE = frozenset(["5-0", "6-0", "7-0"])


def lost_again(desk: Desk, scene: Scene, spot: Anchor) -> bool:
    """Tell whether a sentence says that the peripheral suture it names was taken out, or given up, and not renewed."""
    if _ANY.isdisjoint(scene.said) or scene.page.standing[spot.i] not in ("", "considered"):
        return False
    end = next((end for k in range(spot.j, scene.sentence.j) if (end := _lost_at(scene, spot, k))), 0)
    if not end or _of_another(scene, spot.j, end) or _renewed(scene, end + (scene.next_word(end) == "again")):
        return False
    return not renewed_next(desk, scene)


def pattern_lost_again(desk: Desk, scene: Scene) -> Anchor | None:
    """'It jammed, so the running suture was removed', 'a running 6-0 was begun, tore out and was removed'.

    It is named by how it ran, where no word says that it is the outer.
    """
    if _ANY.isdisjoint(scene.said) or not scene.kinds.isdisjoint(_OF_CORE):
        return None
    for m in scene.of("pattern"):
        noun = scene.page.words[m.j - 1] in _NOUNS or scene.next_word(m.j) in _NOUNS
        spot = Anchor(m.i, m.j, PERIPHERAL)
        begun = scene.word_before(m.i) == "a" and scene.next_word(m.j) in _FINE and not _BEGUN.isdisjoint(scene.said)
        led = begun or (noun and scene.word_before(m.i) in ("the", "this"))
        if led and lost_again(desk, scene, spot):
            return spot
    return None


_NOUNS = frozenset(["suture", "stitch"])


def one_of_them_lost(scene: Scene) -> tuple[Group, int] | None:
    """'Edge sutures in both, until a hook caught that of the ring and unravelled it', "the ring's came undone".

    RETURNS: whose it was, and the word behind what says so.
    """
    if _ANY.isdisjoint(scene.said):
        return None
    for group in (g for g in scene.setting.groups if g.digits and not (g.reference or g.excepted)):
        lead = [w for w in scene.words(max(scene.sentence.i, group.i - _NEAR), group.i) if w != "the"]
        owned = scene.page.raw(group.i, group.j).endswith(_POSSESSIVE)
        if lead[-2:] not in _THAT_OF and not owned:
            continue
        for k in range(group.j, min(group.j + _SOON_LOST, scene.sentence.j)):
            end = _phrase_end(scene, _UNDONE, k) or _phrase_end(scene, _REMOVED, k) or _phrase_end(scene, _NOT_AGAIN, k)
            if end and not _renewed(scene, end + (scene.next_word(end) == "again")):
                return group, end
    return None


_THAT_OF = (["that", "of"], ["that", "in"], ["one", "in"], ["one", "of"])
_POSSESSIVE = ("'s", "\u2019s")
_SOON_LOST = 10  # words


def renewed_next(desk: Desk, scene: Scene) -> bool:
    """'It tore out and was removed. A second one of 5-0 held.': told in the sentence behind."""
    after = desk.scene_after(scene)
    if after is None or after.sentence.block != scene.sentence.block:
        return False
    return _tells_of_one(after) and _renewed(after, after.sentence.i)


def _of_another(scene: Scene, i: int, k: int) -> bool:
    """'A running 6-0 for the profundi; none was placed in the FDS', '...; for the FDS left off': of another tendon."""
    named = [g for g in scene.setting.groups if g.tendons or g.digits or g.generic]
    behind = scene.next_word(k) in _IN and any(g.i >= k for g in named)
    return behind or any(i <= g.i < k and not _CLAUSES.isdisjoint(scene.words(i, g.i)) for g in named)


_CLAUSES = frozenset([",", ";", "but"])
_IN = frozenset(["in", "on", "upon", "around", "round", "for", "to", "at", "of", "from"])


def _lost_at(scene: Scene, spot: Anchor, k: int) -> int:
    """Return the word behind a phrase of loss that begins at word k and speaks of the suture named before; else 0."""
    if end := _phrase_end(scene, _NOT_AGAIN, k):
        return end
    end = _phrase_end(scene, _UNDONE, k) or _phrase_end(scene, _REMOVED, k)
    if not end or any(m.kind in _OF_CORE or m.value == "core" for m in scene.mentions if spot.j <= m.i < k):
        return 0
    only_of_sutures = _phrase_end(scene, _UNDONE, k) > 0
    return end if only_of_sutures or not _something_else(scene, spot.j, k) else 0


def _phrase_end(scene: Scene, phrases: Mapping[str, list[list[str]]], k: int) -> int:
    found = phrases.get(scene.page.words[k], ())
    return max((k + len(p) for p in found if scene.words(k, k + len(p)) == p), default=0)


def _something_else(scene: Scene, i: int, k: int) -> bool:
    """Tell whether words i to k name what else may be taken out: a stay suture, a throw, a pulley."""
    said = _without_its_place(scene.words(i, k))
    # 'it tore out half way round': how far it had come, and no half of it
    words = {word for word, after in pairwise([*said, ""]) if (word, after) != ("half", "way")}
    named = any(m.kind in ("pulley", "slip", "structure", "sided") for m in scene.mentions if i <= m.i < k)
    return named or not (_OTHERS.isdisjoint(words) and _PARTS.isdisjoint(words))


def _without_its_place(said: list[str]) -> list[str]:
    """'Tore out at the third bite', 'broke after three bites': where it was lost, and no part of it alone."""
    at = next((n for n, word in enumerate(said) if word in _AT), len(said))
    bite = next((n for n in range(at, min(at + 1 + _NEAR, len(said))) if said[n] in _BITES), -1)
    return [*said[:at], *said[bite + 1 :]] if bite > 0 else said


_AT = frozenset(["at", "after"])
_BITES = frozenset(["bite", "bites", "throw", "throws", "pass", "passes"])


def _renewed(scene: Scene, k: int) -> bool:
    """'... was run again with a new thread', but not 'and not run again', 'we did not run another'."""
    words = scene.page.words
    spots = [n for n in range(k, scene.sentence.j) if words[n] in _RENEWED]
    return any(_DENIALS.isdisjoint(words[max(k, n - _NEAR) : n]) for n in spots)


def _tells_of_one(scene: Scene) -> bool:
    """'A second one of 5-0 held', 'It was redone with a new 6-0': the next sentence speaks of it, and of no core."""
    named = any(m.kind == "pattern" or m.value == PERIPHERAL for m in scene.of("role", "pattern"))
    other = any(m.value != PERIPHERAL for m in scene.of("role"))  # 'The core was looked at again'
    return named or not (other or scene.of("stitch", "strandword") or scene.setting.groups)
