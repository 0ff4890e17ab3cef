"""What is told of something that is no tendon: 'the dressing was not tight', 'no gap in the cast', 'the count is full'.

Such nouns are no subjects of their own; without them their adjectives would be given to the repair.
"""

from collections.abc import Sequence

from notereader.reader.page import Break
from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_STRANGERS = word_list("quality", "strangers")
_MOVING = word_list("quality", "strangers_moving")
_LABELS = word_list("quality", "strangers_labels")
_TAILS = word_list("quality", "strangers_tails")
_PLACES = _STRANGERS | {"nerve", "nerves", "fascia", "fracture", "osteotomy"}
_OF_NERVES = frozenset(
    [*("epineural", "epineurial", "perineural", "perineurial"), "fascicular", "fascicle", "fascicles", "epineurium"]
)
_VERBS = word_list("quality", "strangers_verbs")
_ARTICLES = frozenset(["the", "a", "his", "her", "their", "this", "our"])
_PLACING = frozenset(["in", "of", "on", "around", "under", "between", "within", "along", "at", "with"])
_OF_A_REPAIR = ("peripheral", "core")
_ASIDE = 2  # words that may stand before the noun: 'the DIP joint', 'a bulky dressing'
_ITS_OWN = 7  # words up to what is said of the noun: 'was well padded and not tight'
_AT_ONCE = 3  # 'was fully free'


def of_a_stranger(scene: Scene, i: int, j: int) -> bool:
    """Tell whether words i to j are said of a dressing, a joint, a count or another thing that is no tendon."""
    if not _OF_NERVES.isdisjoint(scene.said) and not any(g.tendons or g.generic for g in scene.setting.groups):
        return True  # 'epi-perineural suture 9-0, twelve stitches, no tension'
    if _only_nerve_thread(scene) or labelled_stranger(scene, i) or _of_a_stable_joint(scene, i):
        return True
    j -= scene.word_before(j) in _PLACING  # 'no gap at' is one phrase
    return has_strange_subject(scene, i) or _behind(scene.words(j, min(j + 3 + _ASIDE, scene.sentence.j)))


def labelled_stranger(scene: Scene, i: int) -> bool:
    """'Vincula: intact', 'Skin edges - no tension', 'Perfusion intact': a label, or a noun right before word i."""
    words = scene.page.words
    begin = next((k + 1 for k in range(i - 1, scene.sentence.i - 1, -1) if words[k] in (";", ".")), scene.sentence.i)
    end = next((k for k in range(i, scene.sentence.j) if words[k] in (";", ".")), scene.sentence.j)
    if scene.sentence.prefix or any(begin <= g.i < end and (g.tendons or g.generic) for g in scene.setting.groups):
        return False
    first = begin + (words[begin] in _ARTICLES)
    noun = next((k for k in range(first, min(first + _LONGEST_LABEL, i)) if words[k] in _LABELS), None)
    if noun is None or words[noun - 1] in _FROM:
        return False  # 'Tug from palm: no opening'
    k = noun + 1
    while k < i and (words[k] in _TAILS or words[k] in _LABELS):
        k += 1
    return k == i or words[k] in (":", "=") or (words[k] == "-" and scene.page.breaks[k] != Break.NONE)


def _of_a_stable_joint(scene: Scene, i: int) -> bool:
    """'The joint is stable, congruent and moves freely', 'Joint now stable with no gap on stress': all of the joint."""
    words = scene.page.words
    begin = next((k + 1 for k in range(i - 1, scene.sentence.i - 1, -1) if words[k] in (";", ".")), scene.sentence.i)
    if _JOINTS.isdisjoint(words[begin : min(begin + _LONGEST_LABEL + 1, i)]) or _STABLE.isdisjoint(words[begin:i]):
        return False
    return not any(begin <= g.i and (g.tendons or g.generic) for g in scene.setting.groups)


_JOINTS = frozenset(["joint", "joints", "pipj", "dipj", "mcpj", "mpj", "ipj"])
_STABLE = word_list("quality", "stable")
_FROM = _PLACING | {"from", "to", "through", "by"}
_LONGEST_LABEL = 3  # words: 'ulnar digital nerve'


def _only_nerve_thread(scene: Scene) -> bool:
    """'n. -> 3 x 9-0 Ethilon, no tension': a thread too thin for any tendon, where no tendon is named."""
    sizes = {size for size, _, _ in find_sizes(scene)}
    return bool(sizes) and sizes <= _FOR_NERVES and not any(g.tendons or g.generic for g in scene.setting.groups)


_FOR_NERVES = frozenset(["8-0", "9-0", "10-0", "11-0"])


def has_strange_subject(scene: Scene, i: int) -> bool:
    """'The splint was well padded and not tight': the noun opens the clause of word i, its verb follows."""
    return strange_subject(scene, i) >= 0


def strange_subject(scene: Scene, i: int) -> int:
    """Return the noun of another thing that is the subject of word i, or -1."""
    words, first = scene.page.words, scene.part(i)[0]
    begin = first + (words[first] in _ARTICLES)
    opening = range(begin, min(begin + 1 + _ASIDE, i))
    noun = next((k for k in opening if words[k] in _STRANGERS or words[k] in _MOVING), None)
    if (
        noun is None
        or words[noun + 1] not in _VERBS
        or i - noun > (_ITS_OWN if words[noun] in _STRANGERS else _AT_ONCE)
    ):
        return -1
    if any(m.value in _OF_A_REPAIR and m.i <= noun <= m.j for m in scene.of("role")):
        return -1  # 'the epitendinous layer was a running 6-0'
    before = any(g.tendons or g.generic for g in scene.setting.groups if begin <= g.i < i)
    return noun if not before and "it" not in words[noun:i] else -1


def of_sheath_or_pulley(scene: Scene, i: int) -> bool:
    """'The sheath over it was closed, snug and without bulk', 'A2 was repaired without tension': no repair is named.

    The statement opens on the sheath or the pulley, and speaks of no tendon, join or 'it' before word i.
    """
    words = scene.page.words
    begin = next((k + 1 for k in range(i - 1, scene.sentence.i - 1, -1) if words[k] in (";", ".")), scene.sentence.i)
    first = begin + (words[begin] in _ARTICLES)
    things = (m for m in scene.of("pulley", "pulleys", "role") if m.kind != "role" or m.value == "sheath")
    end = next((m.j for m in things if first <= m.i <= first + 1), first + (words[first] == "pulley"))
    if end == first or words[end] not in _TELLING:
        return False
    named = any(begin <= g.i < i and (g.tendons or g.generic) for g in scene.setting.groups)
    return not named and _PARTS.isdisjoint(words[begin:i]) and "it" not in words[end + 2 : i]


_TELLING = _VERBS | _PLACING | {"over", "lies", "sits"}


def _behind(words: Sequence[str]) -> bool:
    """'no gap in the dressing', 'without tension on the flap'."""
    if words[:1] == [] or words[0] not in _PLACING:
        return False
    rest = [w for w in words[1:] if w not in _ARTICLES]
    return any(w in _PLACES for w in rest[:1]) or (len(rest) > 1 and rest[1] in _PLACES and rest[0] not in _PARTS)


_PARTS = frozenset(
    ["repair", "repairs", "join", "junction", "tendon", "fdp", "fds", "fpl", "suture", "either", "each", "both", "any"]
)
