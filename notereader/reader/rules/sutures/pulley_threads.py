"""Pulleys told sewn by the thread alone: 'A2 tear: 5-0 PDS x 2', 'was cut and I put two 6-0 PDS in it'.

So they are by one put into them: 'I also put a 6-0 in the C1 because it had come off its bony edge'.
"""

from notereader.reader.page import Mention
from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_LEADS = word_list("pulleys", "to_thread")
_TORN = word_list("pulleys", "torn")
_MARKS = frozenset(["=", ">", "repair"])
_OF_A_TENDON = ("strandword", "stitch", "pattern", "structure", "sided", "bundle", "knotword")
_SKIN = frozenset(["skin", "closure", "dressing"])
_FAR = 12  # words


def threaded(scene: Scene) -> list[Mention]:
    """Return the threads that tell of a pulley's mending: behind its name and its tear, with small words between."""
    names = scene.of("pulley")
    if not names or not scene.kinds.isdisjoint(_OF_A_TENDON) or not _SKIN.isdisjoint(scene.said):
        return []
    if any(g.tendons for g in scene.setting.groups):
        return []
    sizes = [(i, j) for _, i, j in find_sizes(scene)]
    found = []
    for m in names:
        put = next((size for size in sizes if _put_in(scene, size[1], m)), None)
        if put is not None:
            found.append(Mention("opened", "repaired", *put))
        if "role" in scene.kinds:
            continue
        i, j = next(((i, j) for i, j in sizes if m.j <= i <= m.j + _FAR), (0, 0))
        start = _behind_the_tear(scene, m.j, i) if j and scene.told(i) else None
        if start is not None:
            found.append(Mention("opened", "repaired", start, j))
    return found


def _put_in(scene: Scene, j: int, name: Mention) -> bool:
    """'I put two 5-0 sutures in A2, which had split', 'a stitch of 5-0 was placed in the torn A3': torn, it is told."""
    if not 0 < name.i - j <= _NEAR or not scene.told(name.i):
        return False
    lead, behind = scene.words(j, name.i), scene.words(name.j, scene.sentence.j)
    put = not _PUT.isdisjoint(scene.words(scene.sentence.i, name.i))
    into = not _INTO.isdisjoint(lead) and _PUT_IN.issuperset(lead)
    torn = not _HURT.isdisjoint(lead) or any(
        a in _TOLD_OF and not _HURT.isdisjoint(behind[n:]) for n, a in _opens(behind)
    )
    return put and into and torn


def _opens(behind: list[str]) -> list[tuple[int, str]]:
    """Return the first words behind a pulley's name with their places: 'because it had ...', ', which had ...'."""
    return list(enumerate(behind[:2]))


_NEAR = 7  # words
_PUT = word_list("pulleys", "putting")
_INTO = frozenset(["in", "into", "through", "to"])
_PUT_IN = word_list("pulleys", "put_in")
_HURT = word_list("pulleys", "came_off")
_TOLD_OF = frozenset(["because", "as", "which", "where", "since", "that"])


def _behind_the_tear(scene: Scene, i: int, j: int) -> int | None:
    """Return the first word behind a tear or a pulley's name, where it and else only small words lead to a thread."""
    words = scene.page.words
    fingers = {k for g in scene.setting.groups for k in range(g.i, g.j)}
    hurt = {
        k for o in scene.of("opened", "agent") if o.value == "injured" or o.kind == "agent" for k in range(o.i, o.j)
    }
    hurt |= {k for k in range(i, j) if words[k] in _TORN}
    between = [k for k in range(i, j) if k not in hurt | fingers]
    torn = [k for k in range(i, j) if k in hurt]
    if not all(words[k] in _LEADS for k in between):
        return None
    if torn:
        return torn[-1] + 1
    called = "repair" in scene.words(j + 1, min(j + 4, scene.sentence.j))  # 'A3: 6-0 PDS repair'
    return i if called or any(words[k] in _MARKS for k in between) else None
