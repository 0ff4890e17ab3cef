"""What is said of 'the three repairs' is kept for three tendons, or for none: a count the note gives is held to."""

from collections.abc import Callable, Sequence
from itertools import combinations, pairwise

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import WRIST, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import within
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_PAIRS = word_list("counts", "pairs")
_LEADS = word_list("counts", "leads")
_BETWEEN = word_list("counts", "between")
_NOUNS = word_list("counts", "nouns")
_ENDS = word_list("counts", "ends")
_WHOLLY = word_list("counts", "wholly")
_CUT = word_list("counts", "cut")
_DIVIDED = frozenset(["divided", "severed", "transected"])
_FINGERS = frozenset(["finger", "fingers", "digital"])
_TAKES_UP = word_list("counts", "takes_up")
_THOSE = frozenset(["all", "of", "them"])
_MOST = 12
_REACH = 5  # words between a count and what it counts
_LONG_REACH = 9  # words of ', the purchase amounting to 9 to 11 mm,'
_STATES = ("extent", "treatment")  # what became of a tendon: never dropped for all, for all else hangs on it

_OF_CORE = ("strands", "size", "stitch", "material")

_Choice = Callable[[Target], bool]


def held_to_counts(desk: Desk, findings: list[Finding]) -> list[Finding]:
    """Drop what was laid down for more tendons than the sentence counts: of the tendons that it cannot mean.

    'All three completely divided tendons ran freely', laid down for four of which one is nicked, is kept for three.
    Where nothing tells which of them are meant, it is dropped for all: silence rather than a repair too many.
    """
    told: dict[tuple[str, str, tuple[tuple[int, int], ...]], list[Finding]] = {}
    for f in findings:
        if f.group == "repairs" and not f.implied:
            told.setdefault((f.field, str(f.value), tuple(f.spans)), []).append(f)
    dropped: set[int] = set()
    for same in told.values():
        if len({f.entry[:2] for f in same}) > 1 or same[0].field == "ends":
            dropped |= {id(f) for f in _beyond_count(desk, same)}
    return [f for f in findings if id(f) not in dropped] if dropped else findings


def _beyond_count(desk: Desk, same: list[Finding]) -> list[Finding]:
    """Return, of one statement laid down for several tendons, what goes beyond the tendons it can mean."""
    scene, at = desk.scene_at(same[0].order), same[0].order
    targets = list(dict.fromkeys(Target(*f.entry) for f in same))
    meant = _of_those_cut_through(desk, scene, at, targets)
    if _of_fingers_alone(desk, scene, at):
        meant = [t for t in meant if t.digit is not None]
    if (same[0].field, same[0].value) == ("ends", "clean") and "edges" not in scene.said:
        meant = _that_have_ends(desk, meant)
    count = count_told(desk, scene, at)
    if 0 < count < _tendons(meant):
        meant = _as_many(desk, scene, at, meant, count)
        if not meant and same[0].field in _STATES:
            return []
        for f in same:
            f.reasons.append(Reason("of_a_count", (str(count),)))
    return [f for f in same if Target(*f.entry) not in meant]


def _of_fingers_alone(desk: Desk, scene: Scene, at: int) -> bool:
    """'The finger tendon repairs were tested, no gap seen': a flexor of the wrist that was sewn too is not meant."""
    said = _tendons_of(("finger", "digital"), scene.words(scene.sentence.i, _stretch(scene, at)[1]))
    before = desk.scene_before(scene)
    if not said and before is not None and before.sentence.block == scene.sentence.block and not scene.subjects:
        scene, said = before, _tendons_of(("finger", "digital"), before.words(before.sentence.i, before.sentence.j))
    wrist = _tendons_of(("wrist", "carpal"), scene.words(scene.sentence.i, scene.sentence.j))
    return said and not wrist and not any(m.kind == "tendon" and m.value in WRIST for m in scene.mentions)


def _tendons_of(place: tuple[str, ...], words: list[str]) -> bool:
    joined = zip(words, [*words[1:], ""], strict=True)
    return any(a in place and (b in _NOUNS or b == "flexor") for a, b in joined)


def _that_have_ends(desk: Desk, targets: list[Target]) -> list[Target]:
    """'The tendon ends were clean in all three': a tendon cut in part and only trimmed has edges, but no ends."""
    whole = [t for t in targets if desk.extents.get(t) != "partial" or desk.treatments.get(t) not in _UNSEWN]
    return whole or targets


_UNSEWN = ("trimmed", "left")


def _stretch(scene: Scene, at: int) -> tuple[int, int]:
    """Return the part of the sentence that holds a word, with the label it answers: 'Ends of the 3 cuts: clean'."""
    first, last = scene.part(at)
    while first > scene.sentence.i and ":" in scene.words(first - 1, first + 1):
        first = scene.part(first - 1)[0]
    return first, last


def _tendons(targets: Sequence[Target]) -> int:
    return len({(t.digit, t.tendon) for t in targets})


def count_told(desk: Desk, scene: Scene, at: int) -> int:
    """Return how many tendons are spoken of at a word; 0 where no count is given, or others are named beside it.

    'The repairs showed no gap, and all three of them glided', 'each of the three was moved. No gap in any of them':
    a part of a sentence that names no tendon itself has the count of the part before or behind it.
    """
    first, last = _stretch(scene, at)
    own = _count_in(scene, first, last)
    if own >= 0:
        return own
    if last < scene.sentence.j and _THOSE.issubset(scene.words(*scene.part(last))):
        return max(0, _count_in(scene, *scene.part(last)))  # 'and all three of them ran freely'
    takes_up = _takes_up(scene.words(first, last)) or _names_a_thread(scene, first, last)
    if not takes_up or "others" in scene.words(first, last):
        return 0  # '...; the others had none' is of those not counted
    while first > scene.sentence.i:
        first, last = scene.part(first - 1)
        own = _count_in(scene, first, last)
        if own >= 0:
            return own
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block:
        return 0
    parts = dict.fromkeys(before.part(k) for k in range(before.sentence.j - 1, before.sentence.i - 1, -1))
    return next((n for n in (_count_in(before, *part) for part in parts) if n >= 0), 0)


def _takes_up(words: list[str]) -> bool:
    """Tell whether words speak of what was counted before: 'in any of them', 'each ran freely', not 'all knots'."""
    ends = (b in _ENDS or b in ("of", "") for b in [*words[1:], ""])
    return any(a in _TAKES_UP and end for a, end in zip(words, ends, strict=True))


def _names_a_thread(scene: Scene, first: int, last: int) -> bool:
    """'The two profundi got an epitendinous, 6-0 nylon, running': a part that says no more than with what.

    'Both profundi were sutured with a cruciate, four strands crossing, the purchase amounting to 10 mm'.
    """
    words = scene.words(first + (scene.page.words[first] == "with"), last)
    if not _VERBS.isdisjoint(words):
        return False
    kinds = {m.kind for m in within(scene.page.mentions, first, last)}
    if "digit" in kinds:
        return False  # '..., in the middle finger six strands'
    short = len(words) == last - first <= _REACH and not kinds.isdisjoint(("material", "pattern"))
    return short or (last - first <= _LONG_REACH and not kinds.isdisjoint(("strandword", "bite")))


_VERBS = frozenset(["was", "were", "had", "has", "is", "are", "got", "received", "with"])


def _count_in(scene: Scene, first: int, last: int) -> int:
    """Return how many tendons words first to last count; -1 where they neither count nor name any."""
    counted: list[tuple[int, int]] = []
    for k in range(first, last):
        end = _end_of_count(scene, k, first, last)
        if end and not (counted and k < counted[-1][1]):  # 'neither of the two repairs' counts two once
            counted.append((k, end))
    tendons = [m for m in within(scene.page.mentions, first, last) if m.kind == "tendon"]
    if not counted and not tendons:
        return -1
    several = len({d for g in scene.setting.groups if first <= g.i < last for d in g.digits}) > 1
    if several and any(scene.page.words[k] in _PAIRS and end < last and not tendons for k, end in counted):
        return 0  # 'both tendons of the index and of the small finger'
    if any(not any(k < m.j and m.i <= end for k, end in counted) for m in tendons):
        return 0
    return sum(_number(scene.page.words[k]) for k, _ in counted)


def _number(word: str) -> int:
    return 2 if word in _PAIRS else count_of(word)


def _end_of_count(scene: Scene, k: int, first: int, last: int) -> int:
    """Return the word behind 'three [completely divided] tendons' or 'all three' that begins at word k; 0 for none."""
    words = scene.page.words
    if not 1 < _number(words[k]) <= _MOST:
        return 0
    j = k + 1
    while j < last and words[j] in _BETWEEN and j - k < _REACH:
        j += 1
    if j < last and words[j] in _NOUNS:
        return j + 1
    alone = j == k + 1 and (j >= last or words[j] in _ENDS)
    return j if alone and (words[k] in _PAIRS or (k > first and words[k - 1] in _LEADS)) else 0


def _of_those_cut_through(desk: Desk, scene: Scene, at: int, targets: list[Target]) -> list[Target]:
    """'The ends of all completely cut tendons were clean', '... of the three complete cuts': not those of a nick."""
    words = scene.words(*_stretch(scene, at))
    cut = {n for n, word in enumerate(words) if word in _CUT}
    said = any(word in _WHOLLY and not cut.isdisjoint((n + 1, n + 2)) for n, word in enumerate(words))
    through = any(word == "that" and words[n + 1 : n + 2] in (["are"], ["were"]) for n, word in enumerate(words))
    said = said or (through and "through" in words)  # 'clean on all three that are right through'
    divided = any(a in _DIVIDED and b in _NOUNS for a, b in pairwise(words))  # 'of all the divided tendons'
    said = said or (divided and not count_told(desk, scene, at))
    said = said or any(a == "100%" or (a == "%" and b == "100") for b, a in pairwise(words))
    tendons = any(m.kind == "tendon" for m in within(scene.page.mentions, *_stretch(scene, at)))
    if not said or tendons or (_NOUNS.isdisjoint(words) and not through):
        return targets
    return [t for t in targets if desk.extents.get(t) != "partial"]


def _as_many(desk: Desk, scene: Scene, at: int, targets: list[Target], count: int) -> list[Target]:
    """Return, of the tendons, as many as are counted, by what tells some of them apart; none where nothing does."""
    choices = _choices(desk, scene, at)
    for size in (1, 2):
        for chosen in combinations(choices, size):
            left = [t for t in targets if all(fits(t) for fits in chosen)]
            if _tendons(left) == count:
                return left
    return []


def _choices(desk: Desk, scene: Scene, at: int) -> list[_Choice]:
    """Return what may tell the tendons meant from others, the likeliest first."""
    first, last = scene.part(at)
    kinds = {m.value for m in within(scene.page.mentions, first, last) if m.kind == "tendon"}
    digits = {d for g in scene.setting.groups for d in g.digits if not g.reference}
    cut = not _CUT.isdisjoint(scene.words(first, last))
    by_cut: list[_Choice] = [lambda t: desk.extents.get(t) == "complete"] if cut else []
    called_cut = any(a in _CUT and b in _NOUNS for a, b in pairwise(scene.words(first, last)))  # 'both divided tendons'
    by_name: list[_Choice] = [lambda t: t.tendon in kinds] if kinds else []
    by_digit: list[_Choice] = [lambda t: t.digit in digits] if digits else []
    fingers = not _FINGERS.isdisjoint(scene.words(scene.sentence.i, last))
    by_place: list[_Choice] = [lambda t: t.digit is not None] if fingers else []
    wide = scene.setting.wide  # '6-0 round the two profundus repairs. ... Both repairs ran freely'
    by_kind: list[_Choice] = [lambda t: t.tendon in wide] if wide else []
    here = desk.laid("peripheral", since=scene.sentence.i, before=scene.sentence.j)
    without = {Target(*f.entry) for f in here if f.value == "absent"}
    return [
        *by_name,
        *by_kind,
        *(by_cut if called_cut else []),
        lambda t: any(f.field in _OF_CORE and f.order < scene.sentence.i for f in desk.told_of("repairs", t)),
        lambda t: t not in without,  # 'around each of these two tendons, whereas the superficialis had none'
        lambda t: t.digit in scene.setting.digits,
        *by_cut,
        desk.may_be_repaired,
        *by_place,
        lambda t: t.slip is None,
        desk.has_suture,
        *by_digit,
        lambda t: desk.extents.get(t) != "partial",
        lambda t: any(f.order < scene.sentence.i for f in desk.told_of("repairs", t)),
        lambda t: t.tendon in ("FDP", "FPL"),
    ]
