"""Strands that did not hold: 'four strands were passed but two pulled out', 'one strand cut out'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.reasons import Reason
from notereader.reader.rules.sutures.suture_owners import suture_owners
from notereader.reader.scene import Scene
from notereader.vocabulary.sutures import stitches
from notereader.vocabulary.wordlists import word_list

Count = tuple[int, int, int]  # strands, words i to j

_OF_THEM = word_list("sutures", "of_strands")
_BROKE = word_list("sutures", "broke")
_PULLED = word_list("sutures", "pulled")
_AWAY = frozenset(["out", "through", "away", "off"])
_STRANDS = frozenset(["strand", "strands"])
LOOPS = frozenset(["loop", "loops"])  # each is two strands
_LESS = frozenset(["minus", "less"])
_MEASURED = frozenset(["mm", "cm", "%", "percent", "degrees", "day", "days", "week", "weeks", "month", "months", "-"])
_RENEWED = frozenset(["replaced", "redone", "renewed", "repassed"])
_NOT_ONE = frozenset(["not", "no"])
_MOST = 6
_RULE = "strands less those that did not hold"
_REASON = Reason("strands_lost")


def lost(scene: Scene) -> Count | None:
    """Return how many strands a sentence tells to have pulled out or broken, with its words; None for none.

    Those put in anew are none lost: their number is 0.
    """
    if (_STRANDS | LOOPS).isdisjoint(scene.said) or (_BROKE | _PULLED | _LESS).isdisjoint(scene.said):
        return None
    words = scene.page.words
    named = _fingers(scene)
    for k in range(scene.sentence.i, scene.sentence.j):
        if not 1 <= count_of(words[k]) <= _MOST or not scene.told(k) or scene.word_before(k) in _NOT_ONE:
            continue  # 'not one strand pulled through'
        if scene.word_before(k) in _LESS and scene.next_word(k + 1) not in _MEASURED:
            return count_of(words[k]), k - 1, k + 1  # 'six strands minus one that broke'
        j = k + 1
        while j < scene.sentence.j and (words[j] in _OF_THEM | _STRANDS | LOOPS or count_of(words[j]) or j in named):
            j += 1
        gone = scene.next_word(j) in _BROKE or (scene.next_word(j) in _PULLED and scene.next_word(j + 1) in _AWAY)
        behind = set(scene.words(j, scene.sentence.j))
        renewed = not behind.isdisjoint(_RENEWED) and "not" not in behind
        if gone:
            each = 1 if LOOPS.isdisjoint(words[k:j]) else 2
            return 0 if renewed else count_of(words[k]) * each, k, j + 1
    return None


def lost_of_them(desk: Desk, scene: Scene) -> Count | None:
    """'Four strands were passed. Two of them snapped at the knot': of the strands that the sentence before tells."""
    if _THEM.isdisjoint(scene.said) or (_BROKE | _PULLED).isdisjoint(scene.said):
        return None
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or not before.of("strandword"):
        return None
    words, named = scene.page.words, _fingers(scene)
    for k in range(scene.sentence.i, scene.sentence.j - 3):
        ends = range(k + 3, scene.sentence.j + 1)
        j = next(n for n in ends if n not in named and scene.next_word(n) != "in")  # "two of them in the ring snapped"
        them = 1 <= count_of(words[k]) <= _MOST and words[k + 1] == "of" and words[k + 2] in _THEM
        if not them or not scene.told(k) or scene.word_before(k) in _NOT_ONE:
            continue
        gone = scene.next_word(j) in _BROKE or (scene.next_word(j) in _PULLED and scene.next_word(j + 1) in _AWAY)
        if gone and _RENEWED.isdisjoint(scene.words(j, scene.sentence.j)):
            return count_of(words[k]), k, j + 1
    return None


_THEM = frozenset(["them", "these", "those"])


def _fingers(scene: Scene) -> set[int]:
    """Return the words of 'one of the strands in the index'; '2. Small: FDP cut through' counts no strands."""
    named = [g for g in scene.setting.groups if g.digits and not g.tendons and scene.word_before(g.i) in _IN]
    return {k for g in named for k in range(g.i - 1, g.j)}


_IN = frozenset(["in", "of", "for", "the"])


def less_the_lost(counts: list[Count], gone: Count) -> list[Count]:
    """Return the counts of a sentence without the lost strands; a count of those lost is no count of the repair."""
    number, first, _ = gone
    return [(count - number, i, j) for count, i, j in counts if i != first and count > number]


def lay_the_rest(desk: Desk, scene: Scene, gone: Count, *, of_them: bool = False) -> None:
    """Lay down for the repair spoken of what is left of the strands told, or of those its stitch has.

    `of_them`: they are those of the sentence before, whatever 'the other two' may name in this one.
    """
    number, i, j = gone
    fingers = {d for g in scene.setting.groups if i <= g.i < j for d in g.digits}
    targets = (_tellers_before(desk, scene) if of_them else []) or suture_owners(desk, scene, i, j)[0]
    for target in (t for t in targets if not fingers or t.digit in fingers):
        before = _strands_before(desk, target)
        if before > number > 0:
            laid = len(desk.findings)
            desk.tendon(scene, target, "strands", before - number, [(i, j)], _RULE, _REASON)
            for finding in desk.findings[laid:]:
                finding.addendum = True  # it replaces the count told before


def lay_what_is_left(desk: Desk, scene: Scene, left: Count) -> None:
    """'A suture broke, leaving four': lay down the fewer strands for those of which the sentence before told more."""
    number, i, j = left
    fingers = {d for g in scene.setting.groups for d in g.digits}
    for target in (t for t in _tellers_before(desk, scene) if not fingers or t.digit in fingers):
        if _strands_before(desk, target) > number:
            laid = len(desk.findings)
            desk.tendon(scene, target, "strands", number, [(i, j)], _RULE, _REASON)
            for finding in desk.findings[laid:]:
                finding.addendum = True


def _tellers_before(desk: Desk, scene: Scene) -> list[Target]:
    before = desk.scene_before(scene)
    if before is None:
        return []
    told = desk.laid("strands", since=before.sentence.i, before=scene.sentence.i)
    return list(dict.fromkeys(Target(*f.entry) for f in told))


def _strands_before(desk: Desk, target: Target) -> int:
    told = desk.told_of("repairs", target)
    counts = [f.value for f in told if f.field == "strands" and isinstance(f.value, int)]
    named = [stitches().get(str(f.value)) for f in told if f.field == "stitch"]
    return counts[-1] if counts else next((s.strands or 0 for s in named if s is not None), 0)
