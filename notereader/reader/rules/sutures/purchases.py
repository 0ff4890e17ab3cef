"""Whether a length is tendon that the core takes, not a stump, a wound, a gap or what was trimmed away."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.cuts.trimming import led_by_trimming
from notereader.reader.rules.sutures.lengths_not_got import made_do
from notereader.reader.rules.sutures.purchase_wordings import plainly_taken
from notereader.reader.rules.sutures.roles import CORE, TENDON
from notereader.reader.scene import Scene, group_beside
from notereader.vocabulary.wordlists import word_list

NOT_TAKEN = word_list("sutures", "is_purchase_words")
_IS_PURCHASE_WORDS_2 = word_list("sutures", "is_purchase_words_2")
_IS_PURCHASE_WORDS_3 = word_list("sutures", "is_purchase_words_3")
_IS_PURCHASE_WORDS_4 = word_list("sutures", "is_purchase_words_4")
_BY_STUMP_WORDS = word_list("sutures", "by_stump_words")
_BY_STUMP_WORDS_2 = word_list("sutures", "by_stump_words_2")
_TRIMS = word_list("sutures", "trims")
_GONE = frozenset(["off", "away", "gone", "lost"])
ABOUT = frozenset(["about", "approximately", "around", "approx", "some", "roughly", "of", "was", "ca", "circa"])
_IN_SIGHT = frozenset(["visible", "seen", "exposed", "showing", "protruded", "protruding"])
_OTHERS = frozenset(["sided", "anynerve", "anyartery", "bundle", "structure", "pulley"])
STUMPS = word_list("sutures", "stumps")
_LOST = frozenset(["missing", "lost", "loss", "kerf", "defect", "destroyed", "shredded"])


def placed(scene: Scene, q: Quantity) -> Group | None:
    """'a purchase of 10 mm being taken on either side in the former and of 8 mm in the latter': whose a length is."""
    group = next((g for g in scene.setting.groups if g.place and g.tendons and g.i >= q.j), None)
    if group is None or scene.word_before(group.i) != "in":
        return None
    return None if any(q.j <= p.i < group.i for p in scene.quantities) else group


def stretch(scene: Scene, q: Quantity) -> tuple[int, int]:
    """Return the words a length is read with: its part, and where it begins one the part before too."""
    first, last = scene.part(q.i)
    lead = [w for w in scene.words(first, q.i) if w not in ABOUT]
    return (scene.part(first - 1)[0] if not lead and first > scene.sentence.i else first), last


def side_of(words: list[str]) -> str:
    """Return 'p' or 'd' for words that name the proximal or the distal end, '' for none."""
    return next((_ENDS[w] for w in words if w in _ENDS), "")


_ENDS = {
    **dict.fromkeys(("proximal", "proximally", "near", "prox"), "p"),
    **dict.fromkeys(("distal", "distally", "far", "dist"), "d"),
}


_BROUGHT = frozenset(["advanced", "advancing", "shortened", "lengthened", "moved", "shifted"])


def is_purchase(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """Tell whether a length is tendon taken by the core, not a stump, a wound, a gap or what was trimmed away."""
    if q.high is not None and not 2 <= q.high <= 25:
        return False
    if not _LOST.isdisjoint(scene.words(max(scene.sentence.i, q.i - 4), min(q.j + 6, scene.sentence.j))):
        return False  # 'a kerf of about 3 mm of tendon was missing'
    if scene.word_before(q.i) in _BROUGHT:
        return False  # 'too short to take a core stitch, so the end was advanced 6 mm'
    if made_do(scene, q):
        return True
    if _corrects_what_was_cut_away(scene, q):
        return False
    if plainly_taken(scene, q) or _behind_core_before(desk, scene, q):
        return not led_by_trimming(scene, q)
    if _is_cut_away(scene, q) or _tells_where(scene, q):
        return False
    if _from_the_end(scene, q):
        return True
    if _of_another_thing(desk, scene, q):
        return False
    if (_by_stump(scene, q) or _led_up(scene, q)) and _about_core(desk, scene, q):
        return True
    if _under_label(scene) and group_beside(scene, q) is not None:
        return True
    return not _among_other_things(scene, q) and _beside_a_bite(desk, scene, q)


def _is_cut_away(scene: Scene, q: Quantity) -> bool:
    """'3 mm taken off each side', 'two mm of tendon were visible in the window': trimmed, or only seen."""
    if not _IN_SIGHT.isdisjoint(scene.words(q.j, min(q.j + 6, scene.sentence.j))):
        return True  # 'two mm of tendon were visible in the window'
    after = scene.words(q.j, min(q.j + 4, scene.sentence.j))
    if not _GONE.isdisjoint(after) or ("taken" in after and "from" in after) or _taken_off(scene, q):
        return True  # '3 mm taken off each side'
    if scene.words(q.i - 2, q.i) == ["taken", "back"] and "needle" not in scene.said:
        return True  # 'the ends were mashed and were taken back 3 mm'
    return led_by_trimming(scene, q)


def _corrects_what_was_cut_away(scene: Scene, q: Quantity) -> bool:
    """'I took off 3 mm each side, no, sorry, two on the proximal side': a length put right is one of the same kind."""
    before = next((p for p in reversed(scene.quantities) if p.j <= q.i and p.unit == "mm"), None)
    if before is None or q.i - before.j > _NEAR_BY:
        return False
    lead = scene.words(max(scene.sentence.i, before.i - 3), before.i)
    between = [w for w in scene.words(before.j, q.i) if w != ","]
    corrected = any(tuple(between[k : k + len(c)]) == c for c in _CORRECTIONS for k in range(len(between)))
    return corrected and (not _GONE.isdisjoint(lead) or _is_cut_away(scene, before))


_CORRECTIONS = [tuple(cue.split()) for cue in word_list("spoken", "self_corrections")]


def _of_another_thing(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """'I trimmed 4 mm', 'I vented its proximal 4 mm', '12 mm of the radial digital nerve'."""
    if not _TRIMS.isdisjoint(scene.words(min(stretch(scene, q)[0], max(scene.sentence.i, q.i - 3)), q.i)):
        return True
    opened = [m for m in scene.of("opened") if m.j <= q.i and q.i - m.j <= 4]
    if any(m.value in ("vented", "released", "trimmed", "excised") for m in opened) and desk.topic == "pulley":
        return True  # 'A4 was kept. I vented its proximal 4 mm to reach the distal end before the core was placed'
    return scene.next_word(q.j) == "of" and any(0 < s.i - q.j <= 5 for s in scene.subjects if s.kind in _OTHERS)


def _among_other_things(scene: Scene, q: Quantity) -> bool:
    """Tell whether the words around a length tell of a wound, or of what no core takes."""
    bite_words = {k for m in scene.of("bite") for k in range(m.i, m.j)}
    own = scene.part(q.i)[0], _own_end(scene, q)
    near_by = range(max(own[0], q.i - _NEAR_BY), min(own[1], q.j + _NEAR_BY))  # dictated without stops, parts are long
    words = {scene.page.words[k] for k in near_by if k not in bite_words}
    if not {"wound", "incision", "zigzag", "zig", "skin"}.isdisjoint(words):
        return True
    return not NOT_TAKEN.isdisjoint(words) and not _takes(scene, *own)


def _beside_a_bite(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """'Hold 12 mm.', 'double Tsuge, loops locked, 8 mm each end': a length by a word for what the core takes."""
    if "hold" in (scene.word_before(q.i), scene.next_word(q.j)) and (q.low or 0) >= _LEAST_BITE:
        return _about_core(desk, scene, q)  # 'Hold 12 mm.', '20 mm hold'
    first, last = stretch(scene, q)
    near = [m for m in scene.of("bite") if first <= m.i < last and m.j - 1 - q.j >= -_reach(scene) and m.i - q.j <= 6]
    near += [m for m in scene.of("hold") if 0 <= q.i - m.j <= _BEHIND_BITE and _names_bites(scene, m)]
    strong = [m for m in near if " ".join(scene.words(m.i, m.j)) not in _IS_PURCHASE_WORDS_3]
    if near and not strong and (q.low or 0) >= _LEAST_BITE and _behind_core(scene, q):
        return True  # 'double Tsuge, loops locked, 8 mm each end'
    if strong or scene.words(scene.sentence.i, scene.sentence.i + 1) == ["catch"]:
        return _about_core(desk, scene, q)
    return _of_the_other_end(scene, q)


def _of_the_other_end(scene: Scene, q: Quantity) -> bool:
    """'A grip of 10 mm proximally, 8 mm distally': right behind the length taken at one end."""
    if not any(p.unit == "mm" and p.j <= q.i and q.i - p.j <= 8 and p is not q for p in scene.quantities):
        return False
    if _OTHER_END.isdisjoint(scene.words(q.j, min(q.j + 4, scene.sentence.j))):
        return False
    return any(" ".join(scene.words(m.i, m.j)) in _IS_PURCHASE_WORDS_4 for m in scene.of("bite"))


_OTHER_END = frozenset(["distal", "distally", "proximally", "other"])


def _reach(scene: Scene) -> int:
    """'Purchase was measured on the table as 8 mm': words that may stand between the noun and its length."""
    return 10 if "measured" in scene.said else 8


_LEAST_BITE = 5  # mm; a shorter length at each end is as likely one trimmed away
_BEHIND_BITE = 3  # words


def _names_bites(scene: Scene, m: Mention) -> bool:
    """'Grasping bites of roughly 1 cm': how it holds and how much it takes in one phrase."""
    return not {"bite", "bites"}.isdisjoint(scene.words(m.i, m.j + 1))


def _tells_where(scene: Scene, q: Quantity) -> bool:
    """'Severed some 15 mm distal to the edge of the carpal ligament', '8 mm proximal to A4': how far off a cut lay."""
    after = scene.words(q.j, min(q.j + _FAR_OFF, scene.sentence.j))
    off = (["distal", "to"], ["proximal", "to"], ["short", "of"], ["beyond", "the"], ["distally", "to"])
    if after[:2] not in (*off, ["from", "its"], ["from", "the"]):
        return False
    stop = q.j + next((n for n, w in enumerate(after) if w in (",", ";", ".")), len(after))
    pulley = any(q.j <= m.i < stop for m in scene.of("pulley", "pulley?"))
    return pulley or not _LANDMARKS.isdisjoint(scene.words(q.j, stop))


_FAR_OFF = 10  # words
# 'From the edge', 'from the end' is how the core's bites are told; from these only where the tendon was cut.
_LANDMARKS = frozenset(
    ["crease", "ligament", "retinaculum", "joint", "insertion", "arch", "wrist", "web", "pipj", "dipj"]
)


def _from_the_end(scene: Scene, q: Quantity) -> bool:
    """'Six strands of 4-0, 10 mm from the broken ends', '... Adelaide, taken 10 mm from the cut end each side'."""
    behind = [w for w in scene.words(q.j, min(q.j + 5, scene.sentence.j)) if w not in ("the", "each", "both")]
    from_end = behind[:1] == ["from"] and behind[1:2] != [] and behind[1] in _CUT and behind[2:3] in _END
    return from_end and any(m.j <= q.i and scene.told(m.i) for m in scene.of("stitch", "strandword", "material"))


_CUT = frozenset(["cut", "broken", "severed", "torn", "tendon", "divided", "ruptured"])
_END = (["end"], ["ends"], ["edge"], ["edges"], ["stump"], ["stumps"])


def _taken_off(scene: Scene, q: Quantity) -> bool:
    """'I took off 4 mm proximally', 'I took 2 mm from the proximal end': cut away, but not '9 mm from the cut'."""
    lead = [w for w in scene.words(max(scene.sentence.i, q.i - 4), q.i) if w not in ABOUT]
    if lead[-2:] in (["took", "off"], ["taking", "off"], ["taken", "off"], ["take", "off"]):
        return True
    behind = [w for w in scene.words(q.j, min(q.j + 3, scene.sentence.j)) if w not in ("was", "were", "being")]
    if behind[:2] in (["taken", "off"], ["taken", "away"]):
        return True  # '2 mm was taken off in the index and 3 mm in the middle'
    placed = any(m.i == q.j for m in scene.of("bite"))
    before = [p for p in scene.quantities if p.unit == "mm" and p.j <= q.i and q.i - p.j <= 8]
    if before and "and" in scene.words(before[-1].j, q.i) and _taken_off(scene, before[-1]):
        return True
    return lead[-1:] in (["took"], ["taking"]) and scene.next_word(q.j) == "from" and not placed


def _behind_core(scene: Scene, q: Quantity) -> bool:
    """Tell whether a core suture stands before a length in its sentence, and no pulley between them."""
    cores = [m.j for m in scene.of("stitch", "strandword", "material") if m.j <= q.i]
    return bool(cores) and not any(max(cores) <= m.i < q.i for m in scene.of("pulley", "pulleys", "opened"))


def _behind_core_before(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """'3-0 Ticron, Savage. 12 mm up, 10 mm down.': a sentence of its own right behind the core, begun by a length."""
    after = scene.words(q.j, q.j + 2)
    sided = after in _EACH_SIDE or after[:1] in (["up"], ["proximally"], ["prox"]) or at_both_ends(scene, q)
    before = desk.scene_before(scene) if sided and q.i == scene.sentence.i and (q.low or 0) >= _LEAST_BITE else None
    if before is None or before.sentence.block != scene.sentence.block or scene.setting.groups:
        return False
    core = before.of("stitch", "strandword", "material", "hold")
    return bool(core) and desk.topic in (CORE, TENDON) and not before.of("pulley", "pulleys", "restored")


def at_both_ends(scene: Scene, q: Quantity) -> bool:
    """'9 mm in prox / 7 mm in dist.', '10 mm proximal, 8 mm distal': a length for each end."""
    other = next((p for p in scene.quantities if p.i > q.j and p.unit == "mm"), None)
    if other is None:
        return False
    behind = [scene.words(p.j, min(p.j + END_NEAR, scene.sentence.j)) for p in (q, other)]
    if any(not _FROM_A_PLACE.isdisjoint(words) for words in behind):
        return False  # '9 mm proximal to A2, 7 mm distal to it'
    ends = [side_of(words) for words in behind]
    return sorted(ends) == ["d", "p"] and other.i - q.j <= END_NEAR + 1


END_NEAR = 3  # words: 'in the proximal'
_FROM_A_PLACE = frozenset(["to", "of", "from"])
_EACH_SIDE = [[a, b] for a in ("each", "either") for b in ("end", "side", "way", "stump")]


def _led_up(scene: Scene, q: Quantity) -> bool:
    """'woven into the tendon for a distance of 15 mm', 'locked up and down the stump over 1 cm': how far it runs."""
    lead = [w for w in scene.words(max(scene.sentence.i, q.i - 5), q.i) if w not in ABOUT]
    if lead[-1:] == ["distance"]:
        lead = [w for w in lead[:-1] if w != "a"]
    if lead[-1:] not in (["for"], ["over"]) or not 5 <= (q.low or 0) <= 25:
        return False
    before = scene.words(scene.sentence.i, q.i)
    woven = not _WEAVES.isdisjoint(before) and not _IN_TENDON.isdisjoint(before)
    return woven and not scene.of("pulley", "pulleys", "opened", "anynerve", "sided")


_NEAR_BY = 12  # words
_WEAVES = frozenset(
    ["woven", "wove", "weave", "weaved", "run", "ran", "locked", "locking", "passed", "krackow", "bunnell"]
)
_IN_TENDON = frozenset(["tendon", "stump", "end", "fdp", "fpl", "profundus", "krackow", "bunnell"])


def _own_end(scene: Scene, q: Quantity) -> int:
    """Return where the part of a length ends, at the latest where a second verb follows: '... and buried the knot'."""
    last = scene.part(q.i)[1]
    words = scene.page.words
    ands = (k for k in range(q.j, last - 1) if words[k] == "and")
    return next((k for k in ands if words[k + 1].endswith("ed") or words[k + 1] in ("left", "put", "the")), last)


def _under_label(scene: Scene) -> bool:
    """'Purchase: FPL 10 mm, index FDP 8 mm': the sentence answers a label for what is taken."""
    first = next((m for m in scene.of("bite") if m.i == scene.sentence.i), None)
    return first is not None and scene.next_word(first.j) == ":"


def _takes(scene: Scene, first: int, last: int) -> bool:
    """Tell whether a verb or noun of purchase stands in words first to last: 'taken', but not 'taken away'."""
    words = scene.page.words
    return any(
        words[k] in _IS_PURCHASE_WORDS_2 and scene.next_word(k + 1) not in ("away", "off", "out", "back")
        for k in range(first, last)
    )


def _by_stump(scene: Scene, q: Quantity) -> bool:
    """'7 mm proximal and 9 mm distal' beside a word of purchase, or both behind a core."""
    after = scene.words(q.j, min(q.j + 5, scene.sentence.j))
    if not STUMPS & set(after) or {"wound", "incision", "cut", "laceration", "extended", "crease"} & set(after):
        return False
    listed = scene.words(scene.sentence.i, scene.sentence.j)
    words = set(listed)
    if after[:1] == ["of"] and not words & _BY_STUMP_WORDS_2:
        return False  # '12 mm of distal stump was on hand'
    both = len(STUMPS & set(listed)) > 1 and sum(p.unit in ("mm", "") for p in scene.quantities) > 1
    behind_core = any(m.j <= q.i for m in scene.of("stitch", "strandword", "material")) and after[0] in STUMPS
    return bool(words & _BY_STUMP_WORDS) or (both and behind_core and not words & _TRIMS)


def _about_core(desk: Desk, scene: Scene, q: Quantity) -> bool:
    subject = scene.owner(q.i, q.j)
    if subject is not None and subject.mention is not None:
        core_before = any(m.j <= q.i for m in scene.of("stitch", "strandword"))
        if subject.i >= q.j and (core_before or (q.low or 0) >= 5):
            return True  # told behind a core suture; what follows is the next one
        role = subject.mention.value if subject.kind == "role" else subject.kind
        return role in (CORE, "pulley") and role == CORE
    return True
