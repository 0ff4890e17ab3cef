"""Strand counts that a note puts right: 'for six strands read four', 'not six strands but four', and whose they are."""

from itertools import pairwise

from notereader.reader.desk import Desk, is_correction
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene
from notereader.record import Interval
from notereader.vocabulary.sutures import sizes

_QUOTES = frozenset(["'", '"', "\u2018", "\u2019", "\u201c", "\u201d"])
_WROTE = frozenset(
    [
        "wrote",
        "written",
        "write",
        "say",
        "dictate",
        "said",
        "typed",
        "dictated",
        "stated",
        "put",
        "recorded",
        "reads",
        "says",
    ]
)
_LEADS = frozenset(
    [
        *(";", ",", "-", ":", ".", "but", "and", "it", "there", "they", "was", "were", "is", "are", "in", "fact"),
        *("that", "which", "wrong", "should", "be", "read", "a"),
    ]
)
_CLOSES = frozenset(["", ".", ",", ";", ")", "strands", "strand", "-"]) | _QUOTES
_FAR = 9  # words
_NEAR = 4  # words

Count = tuple[int, int, int]  # how many, words i to j


def put_right(scene: Scene, count: Count) -> Count:
    """Return the count that takes the place of one, else the count itself."""
    _, i, j = count
    i -= scene.word_before(i) in _QUOTES
    j += scene.next_word(j) in _QUOTES
    if scene.word_before(i) == "for" and scene.next_word(j) == "read":
        k = j + 1 + (scene.next_word(j + 1) in _QUOTES)
    elif scene.word_before(i) == "not" and scene.next_word(j) == "but":
        k = j + 1  # 'not six strands but four'
    elif not _WROTE.isdisjoint(scene.words(max(scene.sentence.i, i - _NEAR), i)):
        k = j  # 'I wrote six strands; it was four'
        while k < min(j + _FAR, scene.sentence.j) and scene.page.words[k] in _LEADS:
            k += 1
        k = k if k > j else scene.sentence.j
    else:
        return count
    instead = count_of(scene.next_word(k))
    return (int(instead), k, k + 1) if instead and scene.next_word(k + 1) in _CLOSES else count


def holders_of_corrected(desk: Desk, scene: Scene) -> list[Target]:
    """'The core is four-strand, not six' in an addendum that names no tendon: those of which six was told before.

    What follows in the same paragraph without a name, 'Stitch is an Adelaide', is of the same tendons.
    """
    if scene.sentence.section != "addendum" and not is_correction(scene):
        return []
    if any(g.tendons or g.digits for g in scene.setting.groups):
        return []
    before = desk.scene_before(scene)
    if before is not None and before.sentence.block == scene.sentence.block and is_correction(before):
        tellers = _tellers_of_old(desk, scene)
        named = {t for g in before.setting.groups for t in g.tendons}
        if named and not named.isdisjoint({t.tendon for t in tellers} or named):
            return []  # 'The core of the FDP is four strands and not six. The thread was 4-0 and not 3-0.'
        if not named and any(g.digits for g in before.setting.groups):
            return []
        return tellers or _tellers_of_old(desk, before)
    return _tellers_of_old(desk, scene)


def _tellers_of_old(desk: Desk, scene: Scene) -> list[Target]:
    """Return the tendons of which the value that a sentence denies, 'not six', 'not 3-0', was told before it.

    Where it denies none, 'Purchase was in fact 10 mm', the one tendon of which anything of the kind was told.
    """
    words = scene.words(scene.sentence.i, scene.sentence.j)
    denied = [b for a, b in pairwise(words) if a == "not"]
    told: list[tuple[str, object]] = [("strands", float(count_of(w))) for w in denied if count_of(w)]
    told += [("size", w) for w in denied if w in sizes()]
    told += [("purchase_mm", float(w)) for w in denied if scene.of("bite") and w.replace(".", "", 1).isdecimal()]
    kinds = {_FIELD_OF[kind] for kind in _FIELD_OF if scene.of(kind)}
    fields = dict.fromkeys([*(name for name, _ in told), *sorted(kinds)])
    before = [f for f in desk.laid(*fields, before=scene.sentence.i) if not (f.addendum or f.header)]
    found = [Target(*f.entry) for f in before if (f.field, _figure(f.value)) in told]
    alike = list(dict.fromkeys(Target(*f.entry) for f in before if f.field in kinds))
    return list(dict.fromkeys(found)) or (alike if len(alike) == 1 else [])


_FIELD_OF = {"bite": "purchase_mm", "strandword": "strands"}


def _figure(value: object) -> object:
    return value.low if isinstance(value, Interval) else value
