"""A first core that was taken out or gave way, and the one put in instead: what was told of the first holds no more.

'A locked cruciate went in first but was cut out again. The tendon was repaired with a Bunnell': two strands, no lock.
"""

from collections.abc import Mapping

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.sutures.suture_owners import suture_owners
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_REMOVED = phrases_by_first_word("replaced_cores", "removed")
_FAILED = phrases_by_first_word("replaced_cores", "failed")
_RENEWED = word_list("replaced_cores", "renewed")
_REPAIRS = word_list("replaced_cores", "repairs")
_PARTS = word_list("replaced_cores", "parts")
_OTHERS = word_list("replaced_cores", "others")
_IT = word_list("replaced_cores", "it")
_OF_CORE = frozenset(["stitch", "strandword", "looped"])
_OF_OTHERS = frozenset(["pattern", "slip", "structure", "sided", "anynerve", "anyartery"])
_NEW = ("strands", "stitch", "size")
_FIELDS = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot")
_WITH_IT = (*_FIELDS, "peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")
_LOSSES = frozenset([*_REMOVED, *_FAILED])


@needs(words=_LOSSES)
def note_replaced(desk: Desk, scene: Scene) -> None:
    """Note the tendons whose core a sentence says was taken out, or gave way and was done again."""
    if scene.header:
        return
    words = scene.page.words
    for k in (k for k in range(scene.sentence.i + 1, scene.sentence.j) if words[k] in _LOSSES):
        end = _phrase_end(scene, _REMOVED, k)
        if not end:
            end = _phrase_end(scene, _FAILED, k)
            if not end or not _done_again(desk, scene, end):
                continue
        if not scene.told(k) or scene.negated(k, end):
            continue
        for target in _whose(desk, scene, k):
            desk.redone.add(target)
            if "same" not in scene.words(end, scene.sentence.j):  # '... and the same stitch run anew with 4-0'
                desk.taken_out[target] = (_first_told(scene, k), k)


def _phrase_end(scene: Scene, phrases: Mapping[str, list[list[str]]], k: int) -> int:
    found = phrases.get(scene.page.words[k], ())
    return max((k + len(p) for p in found if scene.words(k, k + len(p)) == p), default=0)


def _done_again(desk: Desk, scene: Scene, k: int) -> bool:
    """'It failed, so we began again', 'It pulled out. Repaired afresh with 4-0': said behind word k or right after."""
    after = desk.scene_after(scene)
    near = after is not None and after.sentence.block == scene.sentence.block
    behind = after.said if after is not None and near else frozenset[str]()
    return not (_RENEWED.isdisjoint(scene.words(k, scene.sentence.j)) and _RENEWED.isdisjoint(behind))


def _whose(desk: Desk, scene: Scene, k: int) -> list[Target]:
    """Return the tendons whose core the words before word k speak of; none where it is another suture, or a part."""
    cores = [m.j for m in scene.of(*_OF_CORE) if m.j <= k]
    nouns = (n for n in range(scene.sentence.i, k) if scene.page.words[n] in _REPAIRS)
    cores += [n + 1 for n in nouns if scene.word_before(n) not in _PARTS]  # 'the third suture was taken out again'
    others = [m.j for m in scene.mentions if m.j <= k and _is_other(scene, m)]
    others += [n + 1 for n in range(scene.sentence.i, k) if _is_part(scene, n)]
    if others and max(others) >= max(cores, default=-1):
        return []
    here = any(m.j <= k for m in scene.of("stitch", "material")) or _counted(scene, k)
    if not (here or cores) and _IT.isdisjoint(scene.words(scene.sentence.i, k)):
        return []
    since = 0 if cores else _told_since(desk, scene)
    told = suture_owners(desk, scene, k, k + 1)[0]
    return [t for t in told if here or any(_is_new(f, since) for f in desk.told_of("repairs", t))]


def _counted(scene: Scene, k: int) -> bool:
    """'The eight-strand repair was undone', not 'some strands of muscle were removed'."""
    spots = [m for m in scene.of("strandword") if m.j <= k]
    return any(count_of(w) for m in spots for w in scene.words(max(scene.sentence.i, m.i - 2), m.j))


def _first_told(scene: Scene, k: int) -> int:
    """'I passed a Kessler to begin with and took it out': told for the first time, and nothing before was meant."""
    stitches = (m.i for m in scene.of("stitch") if m.j <= k)
    new = any({"a", "an"}.intersection(scene.words(max(scene.sentence.i, i - _DESCRIBED), i)) for i in stitches)
    return scene.sentence.i if new else 0


_DESCRIBED = 4  # words: 'a four-strand'


def _is_other(scene: Scene, m: Mention) -> bool:
    """'A3 was in bits and was cut out', but not 'it would not enter A2 and was undone'."""
    if m.kind == "pulley":
        first = m.i - (scene.word_before(m.i) == "the")
        return first == scene.sentence.i or scene.page.words[first - 1] in _CLAUSES
    return m.kind in _OF_OTHERS or (m.kind == "role" and m.value not in ("core", "tendon"))


_CLAUSES = frozenset([",", ";", ":", "and", "but", "so", "as", "because"])


def _is_part(scene: Scene, k: int) -> bool:
    """'One loop was cut out', 'two of the four snapped': a part of a core, or a suture of something else."""
    word = scene.page.words[k]
    if scene.word_before(k - 1) in ("with", "after") and count_of(scene.page.words[k - 1]):
        return False  # 'with four passes in it was splitting and was taken out'
    return word in _OTHERS or word in _PARTS or (bool(count_of(word)) and scene.next_word(k + 1) == "of")


def _told_since(desk: Desk, scene: Scene) -> int:
    """'It gapped and was taken out': 'it' is the core of the sentence before."""
    before = desk.scene_before(scene)
    return before.sentence.i if before is not None else scene.sentence.i


def _is_new(finding: Finding, since: int) -> bool:
    return finding.field in _NEW and finding.order >= since and not finding.header


def drop_replaced(desk: Desk) -> None:
    """Take back what was told of a core that was taken out, once another is told; what is told anew has a rival."""
    for target, (since, k) in list(desk.taken_out.items()):
        told = desk.told_of("repairs", target)
        if any(_is_new(f, k) for f in told):
            anew = {f.field for f in told if f.order >= k}
            desk.withdraw(target, tuple(name for name in _WITH_IT if name not in anew), k, since)
            del desk.taken_out[target]
