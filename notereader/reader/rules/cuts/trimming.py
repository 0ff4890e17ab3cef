"""What was trimmed from the ends of a tendon: 'trimmed back 3 mm', '2 mm resected from each end'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import NUMBER_WORDS, UNITS
from notereader.reader.needs import needs
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.cuts.ends import deep_of_column, end_owners, mark_unsettled
from notereader.reader.rules.pulleys.edges_taken_off import edge_taken
from notereader.reader.rules.results.behaviour import behaving, foreign, lay_behaviour
from notereader.reader.rules.sutures.suture_owners import respective
from notereader.reader.scene import Scene, group_beside, group_targets
from notereader.vocabulary.wordlists import word_list

_TRIMMED_WORDS = word_list("quality", "trimmed_words")
_CUT_BACK = word_list("quality", "cut_back")
_OFF_VERBS = frozenset(["taken", "cut", "removed", "pared", "nibbled", "shaved", "lost"])
_WHOSE = frozenset(["each", "both", "either", "every", "end", "ends", "stump", "stumps", "them"])
_NOT_TENDON = frozenset(["skin", "nerve", "wound", "bone", "nail"])
_BONE_ENDS = frozenset([("bone", "end"), ("bone", "ends")])
_SURFACES = frozenset(["skin", "wound", "nail"])
_TENDON_NOUNS = frozenset(["end", "ends", "stump", "stumps", "tendon", "tendons", "fdp", "fds", "fpl", "profundus"])
_STUMP_NAMES = frozenset(
    ["prox", "proximal", "proximally", "dist", "distal", "distally", "off", "from", "end", "stump"]
)
_ENDS_TOLD = frozenset(["and", "the", "one", "of", "a", "about", "another", "on", "at", "side", "to"])
_OFF_EACH = [
    ["off", word] for word in ("each", "both", "either", "every", "one", "prox", "proximal", "dist", "distal", "it")
]
NO_END_PIECE = 20  # mm; so much is no trimming of an end: 'the superficialis was excised over 3 cm'
_REACH = 9  # words between a length and the verb it belongs to


@needs(units=["mm"])
def trimmed(desk: Desk, scene: Scene) -> None:
    """Find lengths of tendon trimmed away and give each to its tendon."""
    lengths = [q for q in scene.quantities if q.high is not None and scene.told(q.i) and _is_length(scene, q)]
    totals = [q for q in lengths if _sums_up(scene, q)]
    lengths = totals if len(totals) == 1 and len(lengths) > 1 else lengths  # '2 mm and 3 mm, 5 mm altogether'
    if not lengths:
        return
    lengths = _largest_of_each(scene, lengths)
    for q in lengths:
        verb = _verb(scene, q, lengths)
        if (
            "defect" in scene.words(max(scene.sentence.i, q.i - 3), q.i)
            or _of_what_stays(scene, q)
            or hurt_over(scene, q)
            or _of_wound(scene, q)
            or _of_flake(scene, q)
        ):
            continue  # 'defect of 10 mm after trimming'
        if verb is not None and verb.value == "excised" and (q.high or 0) >= NO_END_PIECE:
            continue
        other = foreign(scene, q.i, q.j) and not _before_bone(scene, q)
        if verb is None or other or _of_pulley(desk, scene, q) or not _of_tendon(desk, scene, verb):
            continue
        targets = _or_the_sewn(desk, scene, q, _owners(desk, scene, q))
        targets = respective(scene, q.i, [p.i for p in lengths], targets)
        targets = _of_bracket(scene, q, lengths, targets)
        i, j = min(verb.i, q.i), max(verb.j, q.j)
        for target in targets:
            known = len(desk.findings)
            lay_behaviour(desk, scene, [target], "trimmed_mm", float(q.high or 0), i, j, "tendon trimmed away")
            mark_unsettled(desk, target, targets, known)


def _of_bracket(scene: Scene, q: Quantity, lengths: list[Quantity], targets: list[Target]) -> list[Target]:
    """Give the n-th of as many lengths as fingers in brackets to the n-th of these."""
    fingers = _bracketed_fingers(scene, lengths)
    return [t for t in targets if t.digit == fingers[lengths.index(q)]] if fingers else targets


def _bracketed_fingers(scene: Scene, lengths: list[Quantity]) -> list[str]:
    """'Trimmed 5 + 3 mm (IF, MF)': the fingers in brackets right behind as many lengths, else nothing."""
    last = lengths[-1]
    if len(lengths) == 1 or scene.next_word(last.j) != "(" or any(p.j + 1 != n.i for p, n in pairwise(lengths)):
        return []
    behind = [g for g in scene.setting.groups if g.i > last.j and g.digits]
    fingers = [d for g in behind for d in g.digits]
    return fingers if len(fingers) == len(lengths) and behind[0].i == last.j + 1 else []


def _or_the_sewn(desk: Desk, scene: Scene, q: Quantity, targets: list[Target]) -> list[Target]:
    """'FDS left. ... The ends were trimmed by 2 mm': of the tendon that was sewn, where the sentence names none."""
    sewn = desk.sewn()
    fingers = {d for g in scene.setting.groups for d in g.digits}
    if targets and fingers.issuperset(t.digit for t in targets):
        return targets
    kinds = [g for g in scene.setting.groups if g.tendons and (g.j <= q.i or g.digits)]
    named = any("FDS" in g.tendons and g.j <= q.i for g in kinds) or (bool(targets) and bool(kinds))
    if named or any(t in sewn or t.slip for t in targets):
        return targets
    found = behaving(desk, scene, q.i, q.j)
    if len(scene.setting.digits) == 1:
        own = [t for t in sewn if t.digit in scene.setting.digits and t.tendon in ("FDP", "FPL")]
        found = [t for t in found if t.digit in scene.setting.digits] or own or found
    return found if len(found) == 1 or (targets and found) else targets


def _before_bone(scene: Scene, q: Quantity) -> bool:
    """'The end was trimmed by 1 mm, and seated in a trough in the phalanx': the bone is named for what came next."""
    subject = scene.owner(q.i, q.j)
    if (
        subject is None
        or subject.mention is None
        or "bone" not in (subject.kind, subject.mention.value)
        or subject.i < q.j
    ):
        return False
    between = scene.words(q.j, subject.i)
    return "," in between or not _BOTH_ENDS.isdisjoint(between)


def _is_length(scene: Scene, q: Quantity) -> bool:
    """'2 mm off one end and 3 off the other': a second length goes without its unit."""
    if q.unit:
        return q.unit == "mm"
    another = scene.words(q.j, q.j + 3) in (["off", "the", "other"], ["from", "the", "other"])
    before = any(p.unit == "mm" and p.j <= q.i for p in scene.quantities)
    behind = next((g for g in scene.setting.groups if g.i > q.j and g.tendons), None)
    of_it = behind is not None and scene.next_word(q.j) in ("from", "off") and behind.i - q.j <= _TO_ITS_TENDON
    return another or (before and (of_it or _sums_up(scene, q)))  # '8 mm from the ring FDP and 6 from the small FDP'


_TO_ITS_TENDON = 2  # words


def hurt_over(scene: Scene, q: Quantity) -> bool:
    """'Shredded over 3 cm, excised', 'frayed over a length of 2 cm': how far it was hurt, not how much was trimmed."""
    lead = scene.words(max(scene.sentence.i, q.i - 4), q.i)
    return lead[-1:] == ["over"] or lead in (["over", "a", "length", "of"], ["over", "a", "stretch", "of"])


def _of_what_stays(scene: Scene, q: Quantity) -> bool:
    """'Excised down to a 1 cm tag at the bone', 'cut off 5 mm from its insertion': where it was cut, what was kept."""
    behind = scene.words(q.j, min(q.j + 4, scene.sentence.j))
    lead = scene.words(max(scene.sentence.i, q.i - _FAR_BEFORE), q.i)
    if behind[:1] == ["apart"]:
        return True  # 'the two ends stand 31 mm apart, softened and rounded off'
    if behind[:1] == ["of"] and behind[1:2] in _HELD:
        return True  # 'after the ends had been cut back they came to 7 mm of purchase'
    if (
        lead[-1:] == ["leaving"]
        or not _RODS.isdisjoint(lead[-2:])
        or ("leaving" in lead and not _KEPT.isdisjoint(lead))
    ):
        return True  # '..., leaving a stump of profundus of 1 cm', 'leaving 1 cm of profundus', 'silicone rod 5 mm'
    near = [*lead[-_OF_A:], *behind]
    if not _KEPT.isdisjoint(near) and not _STAYS.isdisjoint([*lead[-_OF_A:], *scene.words(q.j, q.j + _OF_A + 1)]):
        return True  # 'excised, with a stump of 1 cm left on the bone', 'a cuff of 1 cm kept', 'leaving a 1 cm stump'
    if _is_a_stub(lead):
        return True
    if lead[-1:] == ["to"] and behind[:1] == ["of"] and not _FAR.isdisjoint(behind):
        return True  # 'excised from the palm to 1 cm of its insertion'
    if behind[1:2] in (["of"], ["to"]) and behind[0] in _PLACED:
        return True  # 'the ulnar slip was resected, 12 mm proximal to the chiasm'
    return (
        behind[:1] != []
        and (
            behind[0] in _KEPT
            or (behind[0] in ("from", "off") and not _FAR.isdisjoint(behind))
            or behind[:2] == ["from", "where"]  # 'completely cut 13 mm from where it inserts'
            or (
                behind[:1] == ["off"] and not _LUMPS.isdisjoint(behind[1:3])
            )  # 'took 2 mm off the bulge by another bite'
        )
    )


def _is_a_stub(lead: list[str]) -> bool:
    """'Excised (stub 6 mm)', 'resected, tag of 5 mm': a length right behind the name of what stays."""
    named = lead[:-1] if lead[-1:] == ["of"] else lead
    return named[-1:] != [] and named[-1] in _KEPT and named[-2:-1] in (["("], [","])


_LUMPS = frozenset(["bulge", "lump", "bulk"])
_HELD = (["purchase"], ["bite"], ["grip"], ["hold"])
_FAR_BEFORE = 8  # words
_OF_A = 4  # words
_STAYS = frozenset(["kept", "left", "leaving", "remained", "remains", "preserved"])
_PLACED = frozenset(["proximal", "distal", "short"])
_RODS = word_list("spacers", "rods")
_KEPT = frozenset(["tongue", "tag", "stump", "stub", "cuff", "tail", "remnant", "rim"])
_FAR = frozenset(["insertion", "bone", "joint", "crease"])


def _largest_of_each(scene: Scene, lengths: list[Quantity]) -> list[Quantity]:
    """'Ends cut back, 3 mm (prox), 5 mm (dist)': of the two ends of one tendon the one that lost more."""
    kept: list[Quantity] = []
    for q in lengths:
        before = kept[-1] if kept else None
        between = scene.words(before.j, q.i) if before is not None else []
        ends = {w for w in between if w[0].isalnum()}
        listed = "," in between and ends <= _STUMP_NAMES and len(between) <= 5
        told = "one" in between and "other" in scene.words(q.j, q.j + 4) and ends <= _STUMP_NAMES | _ENDS_TOLD
        told = told or ("and" in between and ends <= _STUMP_NAMES | _ENDS_TOLD and not ends.isdisjoint(_STUMP_NAMES))
        if before is not None and ends and (listed or told):
            kept[-1] = max(before, q, key=lambda x: x.high or 0)
        else:
            kept.append(q)
    return kept


def _sums_up(scene: Scene, q: Quantity) -> bool:
    after = tuple(scene.words(q.j, min(q.j + 2, scene.sentence.j)))
    return not _IN_ALL.isdisjoint(after[:1]) or after in _ALL_TOLD


_FROM_THE = (["from", "the"], ["off", "the"], ["from"], ["off"], ["on", "the"], ["on"], ["in", "the"])
_IN_ALL = frozenset(["altogether", "altog", "total", "overall"])
_ALL_TOLD = frozenset([("in", "all"), ("in", "total"), ("all", "told"), ("in", "sum")])


def _beside_its_own(scene: Scene, q: Quantity) -> bool:
    """'3 mm was resected from the ring FDP and 2 from the small FDP': a length with a tendon of its own."""
    named = [scene.words(q.j, g.i) for g in scene.setting.groups if g.tendons and g.i > q.j]
    off = any(between in _FROM_THE for between in named[:1])
    behind = (g for g in scene.setting.groups if g.digits and not g.tendons and g.i == q.j + 1)
    off = off or (scene.next_word(q.j) == "(" and any(True for _ in behind))  # 'pared 4 mm (MF), 2 mm (RF)'
    return off or (bool(named) and _debrided_from(named[0])) or group_beside(scene, q) is not None


def _verb(scene: Scene, q: Quantity, lengths: list[Quantity]) -> Mention | None:
    """Return the verb of trimming a length belongs to: the nearest, unless another length stands nearer to it."""
    if _taken_in_a_cell(scene, q):
        return Mention("restored", "trimmed", q.i, q.i)
    verbs = [m for m in scene.of("restored", "deed") if m.value in ("trimmed", "excised")] + _cut_back(scene)
    listed = len(lengths) > 1 and _beside_its_own(scene, q)
    far = listed or (_sums_up(scene, q) and any(p is not q and p.unit == "mm" for p in scene.quantities))
    near = [m for m in verbs if (far or _distance(m, q) <= _REACH) and _joined(scene, m, q)]
    if not near:
        return None
    verb = min(near, key=lambda m: _distance(m, q))
    if "respectively" in scene.words(scene.sentence.i, scene.sentence.j):
        return verb
    listed = len(lengths) > 1 and all(_beside_its_own(scene, p) for p in lengths)
    listed = listed or bool(_bracketed_fingers(scene, lengths))
    return verb if listed or all(_distance(verb, p) >= _distance(verb, q) for p in lengths) else None


def _cut_back(scene: Scene) -> list[Mention]:
    """'I cut them back', 'cut off', 'took off': verbs that mean trimming only beside a length."""
    words, found = scene.page.words, []
    for k in range(scene.sentence.i, scene.sentence.j - 1):
        if words[k] in _OFF_VERBS and scene.next_word(k + 1) == "from" and _ends_named(scene, k + 2):
            found.append(Mention("restored", "trimmed", k, k + 2))
        back = k + 1
        while back < scene.sentence.j and words[back] in ("-", ">", "→", ":"):
            back += 1
        if (
            words[k] in ("ends", "stumps")
            and words[back : back + 1] == ["back"]
            and any(q.i == back + 1 for q in scene.quantities)
        ):
            found.append(Mention("restored", "trimmed", k, back + 1))  # 'FDP ends back 4 mm to good tendon'
        if words[k] == "taken" and _of_the_thread(scene, k):
            continue
        if words[k] in ("took", "take", "taken") and _takes_from_end(scene, k):
            found.append(Mention("restored", "trimmed", k, k + 1))
        if words[k] in ("cut", "took", "taken", "nipped", "snipped", "nibbled", "came", "come"):
            end = next(
                (n for n in range(k + 1, min(k + 5, scene.sentence.j)) if words[n] in ("back", "off", "away")), None
            )
            plain = _CUT_BACK | UNITS.keys() | NUMBER_WORDS.keys()
            named = {n for g in scene.setting.groups if g.tendons for n in range(g.i, g.j)}  # 'cut the profundus back'
            told = [words[n] for n in range(k + 1, end) if n not in named] if end is not None else []
            if end is not None and all(w in plain or w.isdigit() for w in told):
                found.append(Mention("restored", "trimmed", k, end + 1))
    for q in scene.quantities:
        if q.unit == "mm" and _off_in_a_cell(scene, q):
            found.append(Mention("restored", "trimmed", q.j, q.j + 1))
        if q.unit == "mm":
            found += _taken_beside(scene, q)
        if scene.words(q.j, q.j + 2) in _OFF_EACH and q.unit == "mm" and not any(m.i < q.i < m.j for m in found):
            found.append(Mention("restored", "trimmed", q.j, q.j + 2))  # 'ends ragged -> 2 mm off each end'
    return found


def _taken_beside(scene: Scene, q: Quantity) -> list[Mention]:
    """'I cut 3 mm of bad tissue from it', '3 mm is removed in all', 'took 5 mm altogether', '2 mm scruffy tip off'."""
    words, last = scene.page.words, scene.sentence.j
    behind = scene.words(q.j, min(q.j + _BEHIND, last))
    ends = next((n for n, w in enumerate(behind) if w in _STOPS), len(behind))
    behind = behind[:ends]
    told = next((n for n, w in enumerate(behind) if w in _DONE and _BETWEEN.issuperset(behind[:n])), None)
    go = behind.index("go") if "go" in behind else 0
    if behind[max(0, go - 2) : go] == ["had", "to"] and _BETWEEN.issuperset(behind[: go - 2]):
        return [Mention("restored", "trimmed", q.j + go - 2, q.j + go + 1)]  # '4 mm had to go'
    if told is not None and (told == 0 or behind[0] != "of" or not _FLEXORS.isdisjoint(behind[:told])):
        return [Mention("restored", "trimmed", q.j + told, q.j + told + 1)]
    k = q.i - 1
    while k > scene.sentence.i and words[k] in _ABOUT:
        k -= 1
    said = k >= scene.sentence.i and (words[k] in _TRIMS_ALONE or (words[k] in _TAKES and _off(scene, q, behind)))
    if said or (k > scene.sentence.i and words[k - 1] in _TAKES and words[k] in ("off", "away", "back")):
        return [Mention("restored", "trimmed", k if said else k - 1, q.i)]
    if "off" in behind[1:4] and not _TIPS.isdisjoint(behind[: behind.index("off")]):
        return [Mention("restored", "trimmed", q.j, q.j + behind.index("off") + 1)]
    return []


def _off(scene: Scene, q: Quantity, behind: list[str]) -> bool:
    """'cut 3 mm of bad tissue from ...', 'took 2 mm off the tip', 'took 5 mm altogether'."""
    return not {"from", "off"}.isdisjoint(behind) or _sums_up(scene, q)


_BEHIND = 8  # words
_STOPS = frozenset([".", ";", ",", ":", ")", "and", "but", "then"])
_DONE = frozenset(["removed", "debrided", "resected", "excised", "trimmed", "sacrificed", "discarded", "refreshed"])
_BETWEEN = frozenset(
    ["is", "was", "were", "are", "been", "being", "had", "has", "to", "be", "sharply", "then", "each", "just", "only"]
) | frozenset(["of", "the", "its", "fdp", "fds", "fpl", "profundus", "tendon", "end", "stump", "bad", "poor", "frayed"])
_FLEXORS = frozenset(["fdp", "fds", "fpl", "profundus", "tendon", "end", "stump", "it"])
_ABOUT = frozenset(["about", "some", "roughly", "approximately", "only", "just", "nearly", "another", "of"])
_TAKES = frozenset(["cut", "took", "take", "taking", "remove", "cleaning", "lost", "cutting"])
_TRIMS_ALONE = frozenset(["trim", "resect", "recut", "nibbled", "clipped", "debride"])
_TIPS = frozenset(["tip", "end", "ends", "tips", "fringe", "tissue"])


def _off_in_a_cell(scene: Scene, q: Quantity) -> bool:
    """'all cut, ragged, 2 mm off, repaired' in the row of a tendon: a part of the cell that says nothing else."""
    labelled = bool(scene.sentence.prefix) and any(g.i == g.j and g.tendons for g in scene.setting.groups)
    alone = scene.word_before(q.i) in ("", ",", ";") and scene.next_word(q.j + 1) in ("", ",", ";", ".")
    bracketed = scene.word_before(q.i) == "(" and scene.next_word(q.j + 1) == ")"  # 'thumb ragged (2 mm off)'
    return ((labelled and alone) or bracketed) and scene.next_word(q.j) == "off"


def _taken_in_a_cell(scene: Scene, q: Quantity) -> bool:
    """'FDP, taken away   5 mm   2 mm', 'FDP shortened by   3 mm': a cell that holds the length alone."""
    asked = {w for i, j in scene.sentence.prefix for w in scene.words(i, j)}
    return scene.sentence.i == q.i and scene.next_word(q.j) == "" and not asked.isdisjoint(_TAKEN)


_TAKEN = frozenset(["away", "off", "taken", "removed", "back", "shortened", "debrided", "resected", "lost"])


def _of_the_thread(scene: Scene, k: int) -> bool:
    """'... of looped 4-0 nylon, each taken 10 mm from either end': how far from the ends a thread was led in.

    So are '3/0 Ethibond, Adelaide pattern, taken 10 mm from the cut end each side'.
    """
    end = k - (scene.word_before(k) in ("loop", "loops", "stitch"))
    end -= scene.word_before(end) in ("each", "all", "both")
    end -= scene.word_before(end) == ","
    end -= scene.word_before(end) in ("pattern", "fashion", "technique", "configuration", "style")
    return any(m.j == end for m in scene.of("material", "stitch", "strandword"))


def _takes_from_end(scene: Scene, k: int) -> bool:
    """'I took 2 mm from the proximal end and 3 mm from the distal one'."""
    q = next((q for q in scene.quantities if q.i == k + 1 and q.unit == "mm"), None)
    behind = scene.words(q.j, min(q.j + 5, scene.sentence.j)) if q is not None else []
    return behind[:1] == ["from"] and not _WHOSE.isdisjoint(behind)


def _ends_named(scene: Scene, k: int) -> bool:
    """Tell whether the ends of a tendon follow: 'taken from each', 'cut from both stumps'."""
    return not _WHOSE.isdisjoint(scene.words(k, min(k + 3, scene.sentence.j)))


def _distance(m: Mention, q: Quantity) -> int:
    return m.i - q.j if m.i >= q.j else q.i - m.j


def _joined(scene: Scene, m: Mention, q: Quantity) -> bool:
    """Tell whether verb and length stand in one clause; a comma may part them, a semicolon or a 'but' may not."""
    first, last = scene.part(q.i)
    bites = [b for b in scene.of("bite") if first <= b.i < last and scene.words(b.i, b.j) not in _SIDES]
    taken = any(scene.page.words[b.j - 1] not in _STUMP_NAMES for b in bites)
    if not first <= m.i < last and taken and "end" not in scene.words(first, last):
        return False  # '10 mm purchase on both sides, ends trimmed'
    i, j = (m.j, q.i) if m.i < q.i else (q.j, m.i)
    if m.i > q.i and any(i <= p.i < j for p in scene.of("pulley")):
        return False  # 'A2 was opened at its distal end for 6 mm, A3 was removed'
    # 'I cut out the core, took fresh bites of 10 mm from each end'
    return {";", "but", "then", "bite", "bites"}.isdisjoint(scene.words(i, j))


_SIDES = (["each", "side"], ["either", "side"], ["both", "sides"], ["each", "end"], ["either", "end"], ["both", "ends"])
_TAKERS = ("bite", "stitch", "strandword", "material", "role", "hold", "lockword")


def led_by_trimming(scene: Scene, q: Quantity) -> bool:
    """'Debrided back to healthy tendon, about 2 mm each side': how much was trimmed, not how much the core holds."""
    verbs = [m for m in scene.of("restored") if m.value == "trimmed" and m.j <= q.i and scene.told(m.i)]
    if not verbs:
        return False
    takers = [m for m in scene.of(*_TAKERS) if verbs[-1].j <= m.i < q.j + 3 and scene.words(m.i, m.j) not in _SIDES]
    return not takers and scene.words(q.j, q.j + 2) in _SIDES


def _of_pulley(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """'A4 frayed, distal 3 mm trimmed off': the length is a pulley's unless a tendon is named nearer to it."""
    pulleys = [m.i for m in scene.of("pulley") if m.i < q.i and not _only_passed(scene, m, q)]
    tendons = [g.i for g in scene.setting.groups if (g.tendons or g.generic) and g.i < q.i]
    nouns = [m.i for m in scene.of("endword") if m.i < q.i + 8]
    if "tendon" in scene.words(q.j, q.j + 3):
        return False
    if scene.next_word(q.j) == "of" and any(m.kind == "pulley" and 0 <= m.i - q.j <= 2 for m in scene.mentions):
        return True  # '2 mm of A2 was trimmed'
    if _of_rim(desk, scene, q) or edge_taken(desk, scene, q) is not None:
        return True
    nouns = [k for k in nouns if not (scene.page.words[k] in _RIMS and _closes_pulley(scene, k))]
    nouns = [k for k in nouns if not _at_its_end(scene, k)]
    return bool(pulleys) and max([-1, *tendons, *nouns]) < pulleys[-1]


def _at_its_end(scene: Scene, k: int) -> bool:
    """'A2 at its distal end had been trimmed by 2 mm': the end that word k names is the pulley's own."""
    before = [m for m in scene.of("pulley") if m.j <= k]
    lead = scene.words(before[-1].j, k) if before else []
    return lead[:2] == ["at", "its"] and _WHICH_EDGE.issuperset(lead[2:])


def _of_wound(scene: Scene, q: Quantity) -> bool:
    """'Saw cut oblique over P1, 3 cm, edges debrided': how long the wound was, where no tendon is named."""
    wound = any(m.value == "wound" and m.j <= q.i for m in scene.of("neutral"))
    return wound and not any(g.tendons for g in scene.setting.groups) and _BOTH_ENDS.isdisjoint(scene.said)


def _of_flake(scene: Scene, q: Quantity) -> bool:
    """'A flake of bone about 4 mm, which I took out', 'a 3 mm chip of bone was excised': how large the bone was."""
    beside = [*scene.words(max(scene.sentence.i, q.i - _NEAR_FLAKE), q.i), *scene.words(q.j, q.j + 2)]
    return not _FLAKES.isdisjoint(beside) and not {"bone", "bony"}.isdisjoint([*beside, *scene.words(q.j, q.j + 4)])


_FLAKES = frozenset(["flake", "flakes", "chip", "chips", "fragment", "fragments", "sliver", "shell"])
_NEAR_FLAKE = 6  # words


def _only_passed(scene: Scene, pulley: Mention, q: Quantity) -> bool:
    """'The stump lay past A1; the last 2 mm was frayed and I removed it': a place, and no rim of it was cut."""
    rim = not _RIMS.isdisjoint(scene.words(q.i, scene.sentence.j))
    return scene.word_before(pulley.i) in _PAST and ";" in scene.words(pulley.j, q.i) and not rim


_PAST = frozenset(["past", "beneath", "under", "at", "below", "behind", "beyond", "near", "opposite", "to", "through"])


def _closes_pulley(scene: Scene, k: int) -> bool:
    """'The oblique pulley edges were trimmed by 3 mm', 'snagged on A4 dist edge -> trimmed edge 2 mm': of a pulley."""
    ends = {m.j for m in scene.of("pulley")}
    ends |= {j + 1 for j in ends if scene.next_word(j) in _WHICH_EDGE}
    named = [n for n in ends if n <= k and scene.page.words[n] in _RIMS]
    return k in ends or any(n < k for n in named)


_WHICH_EDGE = frozenset(["prox", "proximal", "dist", "distal", "free", "leading"])


def _of_rim(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """'2 mm removed from the distal margin of A2', 'A4 was torn. I trimmed 3 mm of the rough edge'."""
    if any(g.tendons or g.generic for g in scene.setting.groups) or not _BOTH_ENDS.isdisjoint(scene.said):
        return False
    behind = [m for m in scene.of("pulley") if 0 < m.i - q.j <= 8 and scene.word_before(m.i) in ("of", "from")]
    before = desk.scene_before(scene) if not scene.subjects and not _RIMS.isdisjoint(scene.said) else None
    named = before.subjects if before is not None and before.sentence.block == scene.sentence.block else []
    return bool(behind) or (bool(named) and named[-1].kind == "pulley")


_BOTH_ENDS = frozenset(["ends", "stumps", "end", "stump"])
_RIMS = frozenset(["edge", "edges", "rim", "margin", "lip", "border"])


def _of_tendon(desk: Desk, scene: Scene, verb: Mention) -> bool:
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    words.update(w for i, j in scene.sentence.prefix for w in scene.words(i, j))
    of_bone = "bone" in words and not _BONE_ENDS.isdisjoint(pairwise(scene.words(scene.sentence.i, scene.sentence.j)))
    if of_bone or (words & _NOT_TENDON and not words & _TENDON_NOUNS):
        return False  # 'the nail was cut back 2 mm'
    lead = reversed(scene.words(max(scene.sentence.i, verb.i - 5), verb.i))
    named = any(g.tendons and 0 <= g.i - verb.j <= 2 for g in scene.setting.groups)  # 'I trimmed the profundus back'
    if not named and next((w for w in lead if w in _NOT_TENDON or w in _TENDON_NOUNS), "") in _SURFACES:
        return False  # 'tendon ends clean, skin edges ragged, excised 2 mm'
    if any(m.value == "nerve" for m in scene.of("role")) and not any(g.tendons for g in scene.setting.groups):
        return False  # 'the ends cut back 2 mm to good fascicles'
    plain = verb.value == "trimmed" or not words.isdisjoint(_SUMMED)
    return bool(words & _TRIMMED_WORDS) or (not words & _NOT_TENDON and plain and bool(desk.cut()))


_SUMMED = frozenset(["altogether", "overall", "total", "proximally", "distally", "sum"])  # of the ends, not of a slip
_LEADING = (["in"], ["on"], ["for"], ["from"], ["("])


def _of_digit_behind(desk: Desk, scene: Scene, q: Quantity) -> list[Target]:
    """'cut back by 2 mm in the long and 3 mm in the ring finger': the digit right behind a length is whose it is."""
    for group in scene.setting.groups:
        lead = [w for w in scene.words(q.j, group.i) if w not in ("the", "left", "right")]
        if group.tendons and q.j <= group.i and lead in (["on"], ["in"]):
            return [t for t in group_targets(scene, group) if desk.extents.get(t) != "intact"]
        pared = lead[-1:] in (["in"], ["on"], ["from"]) and _PARED.issuperset(lead[:-1])
        if group.digits and not group.tendons and q.j <= group.i and (lead in _LEADING or pared):
            named = {t for g in scene.setting.groups if g.tendons and g.j <= q.i for t in g.tendons}
            kinds = named or {t.tendon for t in scene.setting.focus}
            return [t for t in desk.cut(group.digits) if t.tendon in kinds]
    return []


# '3 mm had to be pared away in the middle finger'.
_PARED = word_list("trimming", "pared_away")


def _of_group_before(desk: Desk, scene: Scene, q: Quantity) -> list[Target]:
    """'Trimming: middle FDP 3 mm, ring FDP 5 mm', 'index 2 mm, middle 2 mm': whose name stands right before."""
    group = group_beside(scene, q)
    if group is None or group.j > q.i or not group.digits:
        return []
    if group.tendons:
        return [t for t in group_targets(scene, group) if desk.extents.get(t) != "intact"]
    cut = desk.cut(group.digits)
    return [t for t in cut if t.tendon in ("FDP", "FPL")] or cut


def _joined_behind(scene: Scene, group: Group) -> list[Target]:
    """'4 mm from FDP4 and FDP5': the tendon that a bare 'and' joins to the first one, with nothing of its own."""
    later = [g for g in scene.setting.groups if g.i == group.j + 1 and g.tendons == group.tendons and g.digits]
    joined = scene.next_word(group.j) in ("and", "&", "+") and bool(later) and scene.next_word(later[0].j) in _ENDED
    return group_targets(scene, later[0]) if joined else []


_ENDED = frozenset(["", ".", ",", ";"])


def _from_one_end(scene: Scene, q: Quantity) -> bool:
    """'I took 4 mm off the proximal one and the superficialis was half cut': the end of the tendon told of before."""
    after = scene.words(q.j, min(q.j + 4, scene.sentence.j))
    ended = after[:1] in (["off"], ["from"]) and not _STUMP_NAMES.isdisjoint(after[1:3]) and after[-1] in _ONE_END
    return ended and not any(g.tendons and g.i < q.i for g in scene.setting.groups)


_ONE_END = frozenset(["one", "end", "stump"])


def _debrided_from(between: list[str]) -> bool:
    """'Eight millimeters of nonviable tendon was debrided from the ring FDP': the tendon right behind its verb."""
    rest = between[:-1] if between[-1:] == ["the"] else between
    verbs = not _TRIMS.isdisjoint(rest[-4:-1])
    return rest[-1:] in (["from"], ["off"]) and verbs and len(between) <= _REACH and _BOUNDS.isdisjoint(between)


def _in_total_for(between: list[str]) -> bool:
    """'Refreshed 3 mm in total for each FDP': of the tendons right behind."""
    return 0 < len(between) <= _FEW and "for" in between and _TOTALS.issuperset(between)


_TRIMS = frozenset(["debrided", "trimmed", "resected", "excised", "removed", "taken", "cut", "pared", "shaved"])
_BOUNDS = frozenset([",", ";", ".", "and", "each", "both"])
_TOTALS = frozenset(["in", "total", "all", "altogether", "for", "each", "the", "of", "both"])
_FEW = 5  # words


def _owners(desk: Desk, scene: Scene, q: Quantity) -> list[Target]:
    """'3 mm, from the FDP only' says whose by the tendon right after; else whose ends they are."""
    for group in scene.setting.groups:
        between = scene.words(q.j, group.i)
        off = between[:1] == ["off"] and "of" in between and len(between) <= 5  # 'off each end of the profundus'
        # '2 mm trimmed off FDP', 'I cut 2 mm off the FDP'
        off = off or ("off" in between[:2] and between[-1:] in (["off"], ["the"]) and len(between) <= 2)
        off = off or _debrided_from(between) or _in_total_for(between)
        of_each = between[-1:] in (["each"], ["both"], ["either"]) and scene.next_word(group.j) in _BOTH_ENDS
        if of_each and not group.digits and len(scene.setting.digits) == 1 and "from" in between:
            return [Target(d, t) for d in scene.setting.digits for t in group.tendons]  # 'from each FDP end'
        if group.tendons and q.j <= group.i and (off or (len(between) <= 3 and "from" in between)):
            joined = [*group_targets(scene, group), *_joined_behind(scene, group)]
            return [t for t in joined if desk.extents.get(t) != "intact"]
    if _from_one_end(scene, q):
        return [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    own = _of_digit_behind(desk, scene, q) or _of_group_before(desk, scene, q)
    if own:
        return own
    ends = [m for m in scene.of("ends", "endword") if m.j <= q.i]
    each = {"each", "both", "them", "they"} & set(scene.words(q.i - 3, q.j + 4))
    before = desk.scene_before(scene)
    if each and not ends and before is not None and not any(g.tendons or g.digits for g in scene.setting.groups):
        stumps = [m for m in before.of("endword") if before.page.words[m.j - 1] in ("ends", "stumps")]
        if stumps and before.sentence.block == scene.sentence.block:
            return end_owners(desk, before, stumps[-1])  # 'The profundus stumps were frayed. I cut 2 mm off each.'
    spot = ends[-1] if ends and each else Mention("ends", "", q.i, q.j)  # 'ends ragged, so 3 mm of each was pared back'
    targets = end_owners(desk, scene, spot)
    return deep_of_column(scene, targets)
