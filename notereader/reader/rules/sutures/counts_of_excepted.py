"""A count told of the finger left out: 'four strands in each except the ring, where only two would fit'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list


def bare_counts(scene: Scene) -> list[tuple[int, int, int]]:
    """'..., except the small, where only two would fit', '..., which took but two': counts without their noun."""
    found: list[tuple[int, int, int]] = []
    words = scene.page.words
    for group in (g for g in scene.left_out if g.digits and not g.tendons and not scene.header):
        for k in range(group.j, scene.own_aside(group)):
            count = count_of(words[k])
            if count in _COUNTS and words[k - 1] in _LEADS and _closes(scene, k + 1):
                found.append((int(count), k, k + 1))
    return found


def _closes(scene: Scene, k: int) -> bool:
    """Tell whether nothing but what makes a count fit stands from word k to the end of its clause."""
    ends = (n for n in range(k, scene.sentence.j) if scene.page.words[n] in _ENDS)
    return all(word in _FITTING for word in scene.words(k, next(ends, scene.sentence.j)))


_COUNTS = (2, 4, 6, 8)
_LEADS = word_list("sutures", "short_of_room")
_FITTING = word_list("sutures", "fitting")
_ENDS = frozenset([",", ";", ".", ")", "but", "and", "because", "as"])


def excepted_with(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """Return the cut tendons of the excepted finger whose own aside holds word i; none where no aside does."""
    groups = (g for g in scene.left_out if g.digits and not g.tendons and g.j <= i < scene.own_aside(g))
    group = next(groups, None)
    if group is None:
        return []
    kinds = {t.tendon for t in scene.setting.focus} | {t for g in scene.setting.groups for t in g.tendons}
    return [t for t in desk.cut(group.digits) if t.digit in group.digits and t.tendon in kinds]
