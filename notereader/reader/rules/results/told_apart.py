"""One word answered for several repairs: 'Tension: none in FPL, some in FCR', 'the middle is bulky, the ring not'."""

from dataclasses import dataclass

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.owners import others
from notereader.reader.rules.results.behaviour import the_rest
from notereader.reader.rules.sutures.suture_owners import targets_of
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
        if first <= mention.i < last:
            heads = group.i == mention.j and mention.i == scene.sentence.i and len(scene.setting.groups) > 1
            first = group.i if heads else _after_joint(scene, group, mention.j)  # 'Gap IF 0; MF 0; RF 1 mm'
        if group.reference or not named or (first <= mention.i < last):
            continue
        if group.i < mention.i:
            continue
        if scene.next_word(group.j) == ":" and group.j + 1 < scene.sentence.j:
            last = scene.part(group.j + 1)[1]  # 'Gap, repair 2: 1 mm'
        yes, width = _answer(scene, group, first, last)
        if yes is not None:
            yes = yes or _turned_round(scene, mention, first, last)
            found.append(Answer(repairs_of(desk, scene, group), yes, first, min(last, scene.sentence.j), width))
    label = bool(found) and scene.next_word(mention.j) in (":", "-", "=") and mention.i - scene.sentence.i <= 3
    label = label or (mention.i == scene.sentence.i and any(answer.i == mention.j for answer in found))
    return found, label


def _after_joint(scene: Scene, group: Group, first: int) -> int:
    """'The index lay under tension and the middle profundus did not': return the 'and' that leads to the next one."""
    k = group.i - 1
    while k > first and scene.page.words[k] in ("the", "left", "right"):
        k -= 1
    return k if k >= first and scene.page.words[k] in ("and", "but", "while", "whereas") else scene.sentence.i


def _turned_round(scene: Scene, mention: Mention, first: int, last: int) -> bool:
    """'The index repair was tension-free, the middle was not': a denial of what itself says that there was none."""
    denying = scene.words(mention.i, mention.i + 1)[0] in _DENIES
    return mention.value == "none" and not denying and not _NOT.isdisjoint(scene.words(first, last))


_DENIES = frozenset(["no", "not", "nil", "zero", "neither", "none", "nor", "any", "nothing", "never", "0"])
_NOT = frozenset(["not", "no", "n", "isn't", "wasn't", "aren't", "weren't", "didn't"])


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
        if not all(t.digit for t in desk.sewn()):
            return left  # at the wrist: 'the FCU join is bulky, the others are not'
        deep = [t for t in left if t.tendon in ("FDP", "FPL")]
        counts = [count_of(w) for w in scene.words(group.i, group.j + 1)]
        if len(deep) in counts or not any(counts):
            return deep  # 'the other two were not', 'the others did not'
        single = not deep or not any(t.slip for t in left)
        return left if single and len(left) in counts else []
    if group.tendons:
        return [t for t in group_targets(scene, group) if desk.may_be_repaired(t)]
    deep = [t for t in desk.repairable(group.digits) if t.tendon in ("FDP", "FPL")]
    return deep or targets_of(desk, scene, group)


@needs(words=_NO)
def answered_next(desk: Desk, scene: Scene) -> None:
    """'The middle is bulky. The ring is not.', 'Bulk: IF bulky. Rest not.': an answer in a sentence of its own."""
    first, last = scene.sentence.i, scene.sentence.j
    before = desk.scene_before(scene)
    if last - first > _LONGEST or before is None or before.sentence.block != scene.sentence.block:
        return
    if any(m.i == m.j and m.kind not in ("digit", "tendon") for m in scene.mentions):
        return  # 'Peripheral suture: ring no' below 'Gap: ring yes': a cell that answers a label of its own
    groups = [g for g in scene.setting.groups if (g.digits or g.tendons or g.generic == "others") and not g.reference]
    mentions = [m for m in before.of(*_ASKED) if before.told(m.i)]
    rest = the_rest(desk, scene) if not groups else []
    if not (len(groups) == 1 or rest) or not mentions or not scene.kinds.isdisjoint(_OF_ITS_OWN):
        return
    mention = mentions[-1]
    known = bool(desk.laid(mention.kind, since=before.sentence.i, before=first))
    yes, _ = _answer(scene, groups[0], first, last) if groups else (_all_deny(scene, first + 1, last), None)
    if yes is not False or not known or not all(scene.told(k) for k in range(first, last)):
        return
    if mention.value == "none" and before.page.words[mention.i] not in _DENIES:
        return  # 'The middle was slim. The ring was not.'
    for target in rest or repairs_of(desk, scene, groups[0]):
        desk.tendon(scene, target, mention.kind, "none", [(first, last)], f"{mention.kind} none")


def _all_deny(scene: Scene, first: int, last: int) -> bool | None:
    words = [w for w in scene.words(first, last) if w not in _FILLING]
    return False if words and all(w in _NO for w in words) else None


_LONGEST = 9  # words
_ASKED = ("gap", "tension", "bulk")
_OF_ITS_OWN = frozenset([*_ASKED, "glide", "test", "extent", "opened", "ends", "deed"])
