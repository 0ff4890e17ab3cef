"""A window made in a pulley: 'a 5 mm window was cut in A2', 'C1 window opened', 'A4 caught: I made a window in it'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

WINDOWS = frozenset(["window", "windows"])
_MAKING = word_list("pulleys", "window_made")
_INTO = frozenset(["in", "into", "through", "across"])
_IN_IT = (["in", "it"], ["there", "."], ["there", ";"], ["there", ","], ["into", "it"])
_REACH = 8  # words between the verb and the window, or the window and its pulley


def windows(scene: Scene) -> list[Mention]:
    """Return the words for windows made in a pulley; one between two pulleys, or looked through, opens none."""
    if WINDOWS.isdisjoint(scene.said):
        return []
    spots = range(scene.sentence.i, scene.sentence.j)
    found = (_opening(scene, k) for k in spots if scene.page.words[k] in WINDOWS and scene.told(k))
    return [m for m in found if m is not None and not scene.negated(m.i, m.j)]


def _opening(scene: Scene, k: int) -> Mention | None:
    named = [m for m in scene.of("pulley") if m.j == k]
    if named:  # 'C1 window opened', but not 'seen through the C1 window'
        behind = k + 1 + (scene.next_word(k + 1) in ("was", "were"))
        return Mention("opened", "vented", k, behind + 1) if scene.next_word(behind) in _MAKING else None
    end = _into_pulley(scene, k)
    if end and (_made(scene, k, end) or scene.word_before(k) in (":", "mm")):
        return Mention("opened", "vented", k, end)
    return None


def _into_pulley(scene: Scene, k: int) -> int:
    """Return the word behind 'window ... in' or 'window ... in it' from word k on, where a pulley is meant; else 0."""
    words = scene.page.words
    for n in range(k + 1, min(k + _REACH, scene.sentence.j)):
        if scene.words(n, n + 2) in _IN_IT and any(m.j <= k for m in scene.of("pulley")):
            return n + 1
        behind = n + 1 + (scene.next_word(n + 1) in ("the", "its"))
        if words[n] in _INTO and any(m.i == behind for m in scene.of("pulley")):
            return n + 1
    return 0


def _made(scene: Scene, k: int, end: int) -> bool:
    before = scene.words(max(scene.part(k)[0], k - _REACH), k)
    return not _MAKING.isdisjoint(before) or not _MAKING.isdisjoint(scene.words(k, end))
