"""'The eight-strand repairs', 'the two Beckers', 'the Becker repairs': the tendons sewn so, told by how they were."""

from typing import NamedTuple

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_REPAIRS = word_list("repairs_of_a_make", "repairs")
_LEADS = word_list("repairs_of_a_make", "leads")
_EXCEPTING = word_list("repairs_of_a_make", "excepting")
_OTHERS = frozenset(["others", "rest", "remainder", "remaining", "other"])
_DENYING = frozenset(["none", "no", "not", "without", "omitted", "neither", "nil", "nothing", "never"])
_FAR = 4  # words before a make that lead to it: 'only in the two'


class Make(NamedTuple):
    """The repairs that words i to j name by their make: the tendons sewn so, and the other ones sewn."""

    i: int
    j: int
    targets: list[Target]
    others: list[Target]


def named_by_make(desk: Desk, scene: Scene) -> Make | None:
    """Return the repairs that a sentence names by how they were sewn, and by nothing else.

    Nobody where no tendon or every tendon was sewn so, or where they are not as many as the sentence counts.
    """
    if scene.kinds.isdisjoint(("stitch", "strandword")) or any(g.tendons or g.digits for g in scene.setting.groups):
        return None
    for m in scene.of("stitch", "strandword"):
        if not _names_repairs(scene, m) or not scene.told(m.i):
            continue
        first, count = _led_by(scene, m)
        found = _sewn_so(desk, scene, m) if first is not None else []
        others = [t for t in desk.sewn() if t not in found]
        if first is not None and found and others and count in (0, len(found)):
            return Make(first, m.j, found, others)
    return None


def of_a_make(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """Return whose suture words at i tell where the sentence names repairs by their make; nobody in any other."""
    make = named_by_make(desk, scene)
    if make is None:
        return []
    first, last = _clause(scene, make.i)
    if not first <= i < last and not _OTHERS.isdisjoint(scene.words(*_clause(scene, i))):
        return make.others
    if i < first:
        return []
    return make.others if i < make.i and leaves_out_of_all(scene, make) else make.targets


def leaves_out_of_all(scene: Scene, make: Make) -> bool:
    """'All but the two-strand repairs had a running 6-0': those are left out of what the others were given."""
    return is_excepted(scene, make) and _DENYING.isdisjoint(scene.words(_clause(scene, make.i)[0], make.i))


def is_excepted(scene: Scene, make: Make) -> bool:
    """'None had an edge suture except the Becker repairs', '... but in the six-strand ones'."""
    return not _EXCEPTING.isdisjoint(scene.words(max(scene.sentence.i, make.i - _FAR), make.i))


def is_alone(scene: Scene, make: Make) -> bool:
    """'Only the Becker repairs', 'the Becker repairs alone', and 'none in the others' beside them."""
    lead = scene.words(max(scene.sentence.i, make.i - _FAR), make.i)
    behind = scene.words(make.j, make.j + _FAR)
    return "only" in lead or not {"only", "alone"}.isdisjoint(behind) or _none_in_the_others(scene)


def _none_in_the_others(scene: Scene) -> bool:
    words, first, last = scene.page.words, scene.sentence.i, scene.sentence.j
    spots = (k for k in range(first, last) if words[k] in _OTHERS)
    return any(not _DENYING.isdisjoint(scene.words(max(first, k - _FAR), k + _FAR)) for k in spots)


def _names_repairs(scene: Scene, m: Mention) -> bool:
    """Tell whether a stitch or a count of strands stands for repairs: 'Becker repairs', 'four-strand ones'."""
    if m.kind == "stitch" and scene.page.words[m.j - 1] == f"{str(m.value).split()[-1]}s":
        return True
    behind = scene.words(m.j, m.j + 2)
    return not _REPAIRS.isdisjoint(behind[:1]) or (behind[:1] in (["core"], ["suture"]) and behind[-1] in _REPAIRS)


def _led_by(scene: Scene, m: Mention) -> tuple[int | None, int]:
    """Return where the words that lead to a make begin, and how many repairs they count; None where none lead."""
    k = m.i
    if m.kind == "strandword":
        k -= 1 + (scene.word_before(k) == "-")
    count = count_of(scene.word_before(k))
    first = k - (count > 0)
    return (first, count) if scene.word_before(first) in _LEADS else (None, count)


def _sewn_so(desk: Desk, scene: Scene, m: Mention) -> list[Target]:
    """Return the tendons that were told to be sewn with a stitch or a count of strands before a sentence."""
    name, value = ("stitch", m.value) if m.kind == "stitch" else ("strands", _strands_at(scene, m))
    told = {f.entry: f.value for f in desk.laid(name, before=scene.sentence.i) if f.group == "repairs"}
    return [Target(*entry) for entry, last in told.items() if last == value]


def _strands_at(scene: Scene, m: Mention) -> int:
    return count_of(scene.page.words[m.i - 1 - (scene.word_before(m.i) == "-")])


def _clause(scene: Scene, k: int) -> tuple[int, int]:
    words, first, last = scene.page.words, scene.sentence.i, scene.sentence.j
    begin = next((n + 1 for n in range(k, first, -1) if words[n] == ";"), first)
    return begin, next((n for n in range(k, last) if words[n] == ";"), last)
