"""Pulleys that were whole or mended and gave way later: 'when the stump was delivered, it split'."""

from notereader.reader.desk import Desk
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_GAVE = word_list("pulleys", "gave")
_GAVE_IN_TWO = frozenset(tuple(words.split()) for words in word_list("pulleys", "gave_in_two"))
_REDONE = word_list("pulleys", "redone")
_SOUND = ("intact", "repaired", "reconstructed")
_LEFT = frozenset(["left", "remains", "remained", "remaining", "any", "more", "now", "standing"])
_AUXILIARY = frozenset(["has", "had", "then", "also", "later", "nearly", "suddenly", "unfortunately", "promptly"])


def lost_after_all(desk: Desk, scene: Scene) -> bool:
    """Take back that a pulley is whole where the next sentence tells that it gave way, or that none of it is left.

    RETURNS: whether the sentence tells this and nothing else of pulleys.
    """
    gone = _none_left(scene)
    if gone:
        away = any(m.value == "excised" and scene.told(m.i) for m in scene.of("opened"))
        return _lay_gone(desk, scene, *gone, "excised" if away else "injured")
    if scene.of("pulley"):
        return _named_and_gone(desk, scene)
    if desk.last_pulley_named and scene.sentence.i == desk.last_pulley_end and not scene.of("pulley", "pulleys"):
        k = _gave_way(scene)
        if k is not None:
            _give_way(desk, scene, k)
            return True
    return False


def _gave_way(scene: Scene) -> int | None:
    """Return the verb of 'while the tendon was drawn through, it split', 'on testing, it ripped across'."""
    words = scene.page.words
    for k in range(scene.sentence.i + 2, scene.sentence.j - 1):
        if words[k] != "it":
            continue
        verb = _verb_of_giving(scene, k + 1)
        if verb is not None:
            return verb
    return None


def _verb_of_giving(scene: Scene, k: int) -> int | None:
    """Return the verb that tells of giving way right at word k or behind 'had then' there; None for another."""
    words = scene.page.words
    while k < scene.sentence.j and words[k] in _AUXILIARY:
        k += 1
    gave = scene.next_word(k) in _GAVE or tuple(words[k : k + 2]) in _GAVE_IN_TWO
    rest = scene.words(k + 1, scene.sentence.j)
    again = not _REDONE.isdisjoint(rest[rest[:1] == ["again"] :])  # 'it tore again and was redone'
    return k if gave and not again and k < scene.sentence.j and scene.told(k) else None


def _named_and_gone(desk: Desk, scene: Scene) -> bool:
    """'The new A4 gave way', 'the oblique pulley unravelled and was removed', of one that was mended before."""
    for m in scene.of("pulley"):
        verb = _verb_of_giving(scene, m.j) if scene.told(m.i) else None
        if verb is None:
            continue
        away = any(o.value == "excised" and o.i > verb and scene.told(o.i) for o in scene.of("opened"))
        return _lay_gone(desk, scene, str(m.value), m.i, verb + 1, "excised" if away else "injured")
    return False


def _give_way(desk: Desk, scene: Scene, k: int) -> None:
    """Lay down that the pulleys of the sentence before gave way; where 'it' may be a tendon, they are not whole."""
    surely = not any(g.tendons or g.generic for g in scene.setting.groups)
    away = next((m for m in scene.of("opened") if m.value == "excised" and m.i > k), None)
    for name, digits in desk.last_pulleys:
        for digit in digits:
            entry = (digit, name, None)
            told = [f for f in desk.told_of("pulleys", entry) if f.field == "finding"]
            if not told or told[-1].value not in _SOUND:
                continue
            desk.take_back("pulleys", entry, "finding", scene.sentence.i)
            if surely or away is not None:
                value, i, j = ("injured", k, k + 1) if away is None else ("excised", away.i, away.j)
                desk.add(scene, "pulleys", entry, "finding", value, [(i, j)], f"pulley {value}")


def _none_left(scene: Scene) -> tuple[str, int, int] | None:
    """Return the pulley of 'there is now no A4', 'no A4 left', 'nothing of A2 remains', with the words that say so."""
    words = scene.page.words
    for m in scene.of("pulley"):
        k = m.i - 1
        there = "there" in scene.words(k - 3, k) and scene.next_word(m.j) in ("", ".", ",", ";")
        none = k >= scene.sentence.i and words[k] == "no" and (there or scene.next_word(m.j) in _LEFT)
        of_it = scene.words(k - 1, k + 1) in (["nothing", "of"], ["none", "of"])
        remains = of_it and not _LEFT.isdisjoint(scene.words(m.j, m.j + 3))
        behind = scene.words(k - 3, k + 1) in (["nothing", "is", "left", "of"], ["nothing", "was", "left", "of"])
        if (none or remains or behind) and scene.told(m.i):
            return str(m.value), k - remains - 3 * behind, m.j + (none or remains)
    return None


def _lay_gone(desk: Desk, scene: Scene, name: str, i: int, j: int, value: str) -> bool:
    """Lay down that a pulley which was told to be whole or mended is gone. RETURNS: whether one was told to be."""
    told = [f for f in desk.laid("finding") if f.entry[1] == name]
    fingers = {d for g in scene.setting.groups for d in g.digits} or set(scene.setting.digits)
    gone = False
    for entry in dict.fromkeys(f.entry for f in told if f.entry[0] in fingers or not fingers):
        known = [f for f in told if f.entry == entry]
        if known[-1].value in _SOUND and known[-1].order < scene.sentence.i:
            desk.take_back("pulleys", entry, "finding", scene.sentence.i)
            desk.add(scene, "pulleys", entry, "finding", value, [(i, j)], f"pulley {value}")
            gone = True
    return gone
