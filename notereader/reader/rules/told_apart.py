"""One word answered for several repairs: 'Tension: none in FPL, some in FCR', 'the middle is bulky, the ring not'."""

from dataclasses import dataclass

from notereader.reader.desk import Desk, others
from notereader.reader.groups import Group, Target
from notereader.reader.measures import count_of
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.suture_owners import targets_of
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_FILLING = word_list("quality", "answer_filling")
_YES = word_list("quality", "answer_yes")
_NO = word_list("quality", "answer_no")


@dataclass(slots=True)
class Answer:
    """What is answered for some tendons, words i to j: yes or no, with the length that goes with it."""

    targets: list[Target]
    yes: bool
    i: int
    j: int
    width: Quantity | None = None


def told_apart(desk: Desk, scene: Scene, mention: Mention) -> tuple[list[Answer], bool]:
    """Return the answers for single repairs, and whether the word itself was only the label they answer."""
    found: list[Answer] = []
    for group in scene.setting.groups:
        first, last = scene.part(group.i)
        named = (
            group.digits
            or group.tendons
            or group.generic == "others"
            or (group.generic == "all" and scene.next_word(group.j) == ":")
        )
        if group.reference or not named or (first <= mention.i < last):
            continue
        if group.i < mention.i:
            continue
        if scene.next_word(group.j) == ":" and group.j + 1 < scene.sentence.j:
            last = scene.part(group.j + 1)[1]  # 'Gap, repair 2: 1 mm'
        yes, width = _answer(scene, group, first, last)
        if yes is not None:
            found.append(Answer(repairs_of(desk, scene, group), yes, first, min(last, scene.sentence.j), width))
    label = bool(found) and scene.next_word(mention.j) in (":", "-", "=") and mention.i - scene.sentence.i <= 3
    return found, label


def _answer(scene: Scene, group: Group, first: int, last: int) -> tuple[bool | None, Quantity | None]:
    """Return yes or no as the words beside a group say it; None where they say anything else."""
    widths = [q for q in scene.quantities if q.unit == "mm" and first <= q.i < last]
    skipped = {k for q in widths for k in range(q.i, q.j)} | set(range(group.i, group.j))
    rest = [scene.page.words[k] for k in range(first, last) if k not in skipped]
    rest = [w for w in rest if w not in _FILLING]
    if rest and all(w in _NO for w in rest):
        return False, None
    if (rest or widths) and all(w in _YES for w in rest):
        return True, widths[0] if widths else None
    return None, None


def repairs_of(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """Return the repairs that a finger or tendon named in the sentence stands for."""
    if group.generic == "others":
        left = others(desk, scene, group, desk.sewn())
        deep = [t for t in left if t.tendon in ("FDP", "FPL")]
        counts = [count_of(w) for w in scene.words(group.i, group.j + 1)]
        if len(deep) in counts:
            return deep  # 'the other two were not'
        return left if not deep and len(left) in counts else []
    if group.tendons:
        return [t for t in group_targets(scene, group) if desk.may_be_repaired(t)]
    deep = [t for t in desk.repairable(group.digits) if t.tendon in ("FDP", "FPL")]
    return deep or targets_of(desk, scene, group)
