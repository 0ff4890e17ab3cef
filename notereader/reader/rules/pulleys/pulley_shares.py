"""How much of a pulley was opened or cut away, and which part of it."""

from notereader.reader.mentions.measures import NUMBER_WORDS, UNITS
from notereader.reader.page import Break, Mention
from notereader.reader.rules.pulleys.parts_spared import spared
from notereader.reader.rules.pulleys.pulley_names import PART_NOUNS, PARTS, PulleyGroup, denies_the_whole, is_tendon_end
from notereader.reader.scene import Scene
from notereader.record.values import Value
from notereader.vocabulary.wordlists import word_list

_PART_LEADS = word_list("pulleys", "part_leads")
_MEASURES = word_list("pulleys", "measures")
_EXCEPTING = word_list("pulleys", "excepting")
_NO_STOP = frozenset(["dist", "prox", "up", "approx", "max", "ca", "circ", "est"])
_JOINTS = frozenset(["and", ",", ";", "but", "while"])
_KEPT = frozenset(
    ["preserved", "kept", "intact", "spared", "left", "retained", "saved", "stays", "stayed", "remains", "still"]
)
_REST = frozenset(["rest", "remainder"])
_IN_ALL = (("in", "all"), ("in", "total"), ("all", "told"))
_GOES_ON = frozenset(["and", "was", "were", "then", "therefore"])  # 'its distal 5 mm was shredded and was removed'
# How much of a pulley, or which part: the value of a field and the words that tell it.
Share = dict[str, tuple[Value, tuple[int, int]]]

_LONGEST_MM = 30  # longer than any pulley: the length of a graft or a wound


def reach_of(scene: Scene, group: PulleyGroup, action: Mention, apart: bool = False) -> tuple[int, int]:
    """Return the words in which a share of the pulleys may be told; `apart`: only those of the action's clause."""
    j = max(group.j, action.j)
    high = reach_end(scene, group, j)
    earlier = [m.j for m in scene.of("opened") if group.j <= m.i and m.j <= action.i]
    while apart and len(earlier) > 1 and _GOES_ON.issuperset(scene.words(earlier[-1], action.i)):
        earlier.pop()
    if earlier and apart:
        joints = [k for k in range(earlier[-1], action.i) if _parts(scene, k)]
        return max([earlier[-1], *joints]), high
    if earlier and share_in(scene, earlier[-1], action.j):
        return earlier[-1], high
    if any(group.j <= p.i and p.j <= action.i for p in scene.of("pulley") if p not in group.mentions):
        return action.i, high
    ahead = [p.j for p in scene.of("pulley") if action.j <= p.i and p.j <= group.i and p not in group.mentions]
    if ahead:  # 'Venting: ring A2 distal third, small A4 complete'
        commas = [k for k in range(max(ahead), group.i) if scene.page.words[k] in (",", ";")]
        return max([*ahead, *commas]), high
    first = low = min(group.i, action.i)
    while low > scene.sentence.i and first - low < 8 and _measures(scene, low - 1) and not _cell_begins(scene, low):
        low -= 1
    return low, high


def _cell_begins(scene: Scene, k: int) -> bool:
    """'A4 _venting of prox part 5 mm_   A5 _torn_': behind a wide gap another cell begins."""
    return scene.page.breaks[k] == Break.COLUMN


def _parts(scene: Scene, k: int) -> bool:
    """Tell whether word k begins a new statement; not in 'its distal 5 mm was shredded and was removed'."""
    word = scene.page.words[k]
    return word in _JOINTS and not (word == "and" and scene.next_word(k + 1) in _GOES_ON)


def reach_end(scene: Scene, group: PulleyGroup, j: int) -> int:
    """Return the word after which, from word j on, no share of these pulleys is told any more."""
    words = scene.page.words
    high = min(scene.sentence.j, j + 9)
    stops = [
        k for k in range(j, high) if words[k] in (".", ";", "but", "to", "leaving") and words[k - 1] not in _NO_STOP
    ]
    stops += [
        k
        for k in range(j, high - 1)  # 'its distal part was debrided, and the proximal half preserved'
        if _other_part_kept(scene.words(k - 1, min(k + 9, scene.sentence.j)), 2 if words[k] == "," else 1)
    ]
    stops += [k for k in range(j, high) if is_tendon_end(words[k : k + 4])]
    later = [_name_begins(scene, m.i, j) for m in scene.of("pulley") if m.i >= j and m not in group.mentions]
    later += [m.i for m in scene.of("opened") if m.i >= j and _opens_another(scene, group, m)]
    return min([high, *stops, *later])


def _opens_another(scene: Scene, group: PulleyGroup, m: Mention) -> bool:
    """'I took A3 down and vented the distal third of A2': behind 'and' a deed whose object is another pulley."""
    after = next((p for p in scene.of("pulley") if p.i >= m.j and p not in group.mentions), None)
    if after is None or scene.word_before(m.i) not in _JOINTS:
        return False
    return all(_measures(scene, k) for k in range(m.j, after.i))


def _name_begins(scene: Scene, i: int, j: int) -> int:
    """'A3 was vented and the distal third of A2 was vented': the share before the name of a later pulley is its own."""
    k = i
    while k > j and scene.page.words[k - 1] != "and" and _measures(scene, k - 1):
        k -= 1
    while _names_a_finger(scene, i - 1):
        i -= 1  # 'the distal third of the ring A2'
    return k if scene.word_before(k) in _JOINTS and scene.word_before(i) in ("of", "the") else i


def _other_part_kept(words: list[str], k: int) -> bool:
    """Tell whether at word k, after a comma or at an 'and', another part is told to have been kept."""
    if words[k] != "and":
        if words[k - 1] != ",":
            return False
        rest = words[k] in _REST and _kept_ahead(words[k + 1 : k + 7])  # 'cut third trimmed, rest (2/3) stays'
        share = words[k + 1 : k + 2] == ["/"] and _kept_ahead(words[k + 3 : k + 5])
        return rest or share or (bool({*words[k : k + 2]} & PARTS.keys()) and _kept_ahead(words[k + 1 : k + 5]))
    return bool({*words[k + 1 : k + 3]} & PARTS.keys()) and _kept_ahead(words[k + 2 : k + 7])


def _kept_ahead(words: list[str]) -> bool:
    ends = [n for n, word in enumerate(words) if word in (".", ";")]
    return not _KEPT.isdisjoint(words[: ends[0]] if ends else words)


def _measures(scene: Scene, k: int) -> bool:
    """Tell whether a word before a pulley tells how much of it or which part."""
    word = scene.page.words[k]
    if _names_a_finger(scene, k):
        return True  # 'the distal 6 mm of the index A2'
    if word == "and":  # 'the proximal and distal edges of A2', but 'A2 torn in its distal part and A4 ...'
        return scene.page.words[k - 1] in PARTS
    if word in PARTS or word in PART_NOUNS or word in _PART_LEADS or word[:1].isdecimal():
        return True
    return word in _MEASURES or word in NUMBER_WORDS or word in UNITS


def _names_a_finger(scene: Scene, k: int) -> bool:
    return any(g.digits and not g.tendons and g.i <= k < g.j for g in scene.setting.groups)


def only_part(scene: Scene, group: PulleyGroup, action: Mention, low: int) -> bool:
    """Tell whether 'intact' is said of a part only: 'half of A2 was preserved', 'preserved except for 5 mm'."""
    between = scene.words(low, min(group.i, action.i))
    after = scene.words(action.j, min(action.j + 5, scene.sentence.j))
    finger = any(0 < g.i - action.j <= len(after) for g in scene.left_out)  # 'intact except that of the ring'
    limited = bool(after) and ((after[0] in _EXCEPTING and not finger) or after[0] in PARTS or _by_and_large(after))
    limited = limited or _in_part(scene, action.j)
    inside = scene.words(group.j, action.i) if group.j <= action.i else []
    limited = limited or ("only" in inside and not PART_NOUNS.isdisjoint(inside))  # 'A2: only a rim is whole'
    of_one = range(action.j, min(action.j + 5, scene.sentence.j))
    after = [scene.page.words[k] for k in of_one if scene.page.words[k] != "only" or not _names_a_finger(scene, k - 1)]
    if limited or _only_so_far([*between, *after]) or _remains(scene, group):
        return True
    words = scene.page.words
    again = [k for k in range(group.j, action.i) if words[k] in (";", ",") and words[k + 1] == "it"]
    if again:  # 'A2 shows a cut of 5 mm; it is preserved'
        return bool(share_in(scene, low, group.j) or share_in(scene, again[-1], action.j))
    return bool(share_in(scene, low, max(group.j, action.j)))


def _only_so_far(words: list[str]) -> bool:
    """'Only its distal half was kept'; not 'A2 whole, dilated only', which tells what little was done to it."""
    told = [n for n, word in enumerate(words) if word == "only"]
    return any(words[max(0, n - 1)] not in _DILATED and words[n + 1 : n + 2] not in _DILATED_ONLY for n in told)


_DILATED = frozenset(["dilated", "stretched", "dilatation", "dilation"])
_DILATED_ONLY = [[word] for word in sorted(_DILATED)]


def _in_part(scene: Scene, k: int) -> bool:
    """'A2: intact (partly)', 'preserved in its proximal half', 'not opened more than 5 mm', 'ok after repair'."""
    after = scene.words(k, min(k + 4, scene.sentence.j))
    after = after[after[:1] == ["("] :]
    share = any(q.unit == "%" and (q.high or 100) < _WHOLE and 0 <= q.i - k <= 1 for q in scene.quantities)
    figure = any(
        q.i == k + 1 and q.unit for q in scene.quantities
    )  # 'over 5 mm', but not 'intact over the repaired FDP'
    bounded = after[:2] == ["more", "than"] or (figure and after[:1] in (["over"], ["beyond"]))
    mended = after[:1] == ["after"] and not _MENDING.isdisjoint(after)
    place = after[:1] == ["in"] and not _PARTS.isdisjoint(after[1:3])
    return share or bounded or mended or place or after[:1] in (["partly"], ["partially"], ["until"])


_PARTS = frozenset(["proximal", "distal", "central", "radial", "ulnar"])
_WHOLE = 100.0  # percent
_MENDING = frozenset(["repair", "suture", "repairing", "reconstruction"])


def _by_and_large(after: list[str]) -> bool:
    """'preserved as far as possible', 'kept, so far as the cut had left them', 'intact for the most part'."""
    after = after[1:] if after[0] == "," else after
    return after[:2] in (["as", "far"], ["so", "far"], ["as", "much"], ["in", "part"]) or after[:3] in (
        ["for", "the", "most"],
        ["where", "it", "could"],
        ["in", "the", "main"],
    )


_LEFT_OF_IT = frozenset(["remnant", "remnants", "remainder", "stump", "stumps", "shreds", "tags"])


_REMAINING = frozenset(["remaining", "remnant", "remnants", "remains", "remained", "remainder", "rest", "residual"])
_SHARES = frozenset(
    [
        *("part", "parts", "portion", "portions", "most", "bulk", "majority", "segment", "much"),
        *("rim", "strip", "fringe", "shred", "sliver", "band", "edge", "bit", "bridge", "bridges", "cuff", "piece"),
        *("enough", "some", "length", "stretch"),
    ]
)


def _remains(scene: Scene, group: PulleyGroup) -> bool:
    """Tell whether only what was left of a pulley is spoken of: 'the remnant of A2', 'what was left of A4'."""
    before = scene.words(max(scene.sentence.i, group.i - 5), group.i)
    while before[-1:] in (["the"], ["of"], ["pulley"], ["its"]):
        before = before[:-1]
    if before and (before[-1] in _REMAINING or (before[-1] in _SHARES and scene.word_before(group.i) in ("of", "the"))):
        return True
    if before[-3:-1] in (["but", "the"], ["but", "its"]) or before[-2:-1] == ["but"]:
        return True  # 'All but the edge of A2 was intact'
    aside = scene.words(group.j, min(group.j + 6, scene.sentence.j))
    if aside[:2] == [",", "or"] and {"left", "remained", "remains"} & set(aside):
        return True  # 'A2, or what was left of it, was intact'
    after = [w for w in scene.words(group.j, min(group.j + 2, scene.sentence.j)) if w != "pulley"]
    if after and after[0] in _LEFT_OF_IT:
        return True  # 'oblique remainder kept'
    return before[-2:] in (["was", "left"], ["is", "left"], ["were", "left"])


def in_full(scene: Scene, low: int, high: int) -> bool:
    """Tell whether the words reach over the whole length: 'over its full length', 'from end to end'."""
    first = max(low - 3, scene.part(low)[0])
    found = [m for m in scene.of("fully") if first <= m.i < high]
    words = scene.page.words
    deeds = {m.j for m in scene.of("opened")}
    if any(
        words[k] == "all" and scene.next_word(k + 1) in _CLOSES and (k in deeds or words[k - 1] == ",")
        for k in range(low, high)
    ):
        return True  # 'A5 let out as well, all', 'A1 opened all, A2 not seen'
    cut = [
        m for m in scene.of("opened") if m.j <= low and m.value != "intact"
    ]  # 'A2 was fully released and A4 was vented'
    found = [m for m in found if not any(denies_the_whole(scene, o, m) for o in scene.of("opened"))]
    return any(
        scene.word_before(m.i) not in ("not", "hardly", "almost", "nearly") and not any(m.i < o.j for o in cut)
        for m in found
    )


_CLOSES = frozenset(["", ",", ".", ";", ")"])


def share_in(scene: Scene, low: int, high: int) -> Share:
    """Return how much of a pulley the words from low to high tell, and which part, by the names of the fields."""
    found: Share = {}
    for q in scene.quantities:
        if not low <= q.i < high or q.high is None:
            continue
        if q.unit == "%" and not spared(scene, q.i):
            found.setdefault("extent_percent", (q.high, (q.i, q.j)))
        elif q.unit == "mm" and q.high <= _LONGEST_MM and not _of_something_else(scene, q.i, q.j):
            found.setdefault("extent_mm", (q.high, (q.i, q.j)))
            if tuple(scene.words(q.j, q.j + 2)) in _IN_ALL or scene.words(q.j, q.j + 1) == ["altogether"]:
                found["extent_mm"] = (q.high, (q.i, q.j))  # 'by a further 3 mm, 7 mm in all'
    found = {**_fraction(scene, low, high), **found}
    return found | part_in(scene, low, high)


def shares_in_turn(scene: Scene, share: Share, count: int, low: int, high: int) -> list[Share]:
    """'The A4 pulleys of the index and middle fingers were vented over 5 and 6 mm, respectively': one for each."""
    name = next((name for name in ("extent_mm", "extent_percent") if name in share), "")
    if not name or count < 2 or "respectively" not in scene.said:
        return []
    unit = "mm" if name == "extent_mm" else "%"
    told = [q for q in scene.quantities if low <= q.i < high and q.unit == unit and q.high is not None]
    return [share | {name: (q.high, (q.i, q.j))} for q in told if q.high is not None] if len(told) == count else []


def _of_something_else(scene: Scene, i: int, j: int) -> bool:
    """Tell whether a length is that of a graft or of what was left of the pulley: 'to leave 2 mm of A4'."""
    left = {"leave", "leaving", "keeping", "preserving", "sparing"} & set(scene.words(max(0, i - 2), i))
    return bool(left or {"wide", "strip", "ribbon"} & set(scene.words(j, j + 2))) or spared(scene, i)


def _fraction(scene: Scene, low: int, high: int) -> Share:
    """Return a share told as a fraction in percent; 'half torn off' is how it was found, not how much was opened."""
    hurt = {k for m in scene.of("opened") if m.value == "injured" for k in range(m.i, m.j)}
    for m in scene.of("fraction"):
        if low <= m.i < high and m.i not in hurt and not _found_so(scene, m) and not spared(scene, m.i):
            return {"extent_percent": (float(m.value), (m.i, m.j))}
    words = scene.words(low, high)
    for k, word in enumerate(words):
        if spared(scene, low + k):
            continue
        if words[k : k + 3] == ["1", "/", "2"]:
            return {"extent_percent": (50.0, (low + k, low + k + 3))}
        if word == "third" and (any(w in PARTS for w in words[:k]) or _counted_end(scene, low + k - 1)):
            return {"extent_percent": (33.0, (low + k, low + k + 1))}
        leads = words[max(0, k - 1)] in PARTS or _counted_end(scene, low + k - 1)
        if word == "half" and leads and low + k not in hurt:
            return {"extent_percent": (50.0, (low + k, low + k + 1))}  # 'distal half divided'
    return {}


def _found_so(scene: Scene, m: Mention) -> bool:
    """'A4 excised, already half destroyed', 'removed as three quarters of it were gone': why, not how much of it."""
    if not any(o.value == "excised" and o.j <= m.i for o in scene.of("opened")):
        return False
    k = m.j
    while k < scene.sentence.j and scene.page.words[k] in _WERE:
        k += 1
    return any(o.value == "injured" and o.i == k for o in scene.of("opened"))


_WERE = frozenset(["of", "it", "the", "its", "length", "pulley", "was", "were", "is", "had", "been", "already"])


def part_in(scene: Scene, low: int, high: int) -> Share:
    """Return which part is named: 'its distal half', 'the proximal 4 mm of A4', 'opened distally'."""
    for k in range(low, high):
        word = scene.page.words[k]
        if word == "mid" and "line" in scene.words(k + 1, k + 3):
            continue
        if word == "middle" and any(m.kind == "digit" and m.i == k for m in scene.mentions):
            continue  # 'middle A2 intact'
        if word in PARTS and spared(scene, k):
            continue
        if word in PARTS and (word.endswith("ally") or word == "midportion" or _leads(scene, low, k, high)):
            return {"part": (PARTS[word], (k, k + 1))}
        if word in _COUNTED_ENDS and _counted_end(scene, k):
            return {"part": (_COUNTED_ENDS[word], (k, k + 1))}
    return {}


def _counted_end(scene: Scene, k: int) -> str:
    """'The first half of A4', 'its last third', 'the first 5 mm': counted from the palm; not 'first, 5 mm of A2'."""
    words = scene.page.words
    if words[k] not in _COUNTED_ENDS or not (
        words[k + 1] in _HALVES or any(q.i == k + 1 and q.unit for q in scene.quantities)
    ):
        return ""
    before = scene.word_before(k)
    led = before in _LEADS_TO_END or before.endswith("'s") or any(m.j == k for m in scene.of("pulley"))
    return _COUNTED_ENDS[words[k]] if led else ""


_COUNTED_ENDS = {"first": "proximal", "last": "distal"}
_HALVES = frozenset(["half", "third", "quarter", "fifth"])
_LEADS_TO_END = frozenset(["the", "its", "their", ":", "of"])


_ABOUT = frozenset([".", "~", "about", "approx", "ca", "roughly"])


def _leads(scene: Scene, low: int, k: int, high: int) -> bool:
    """Tell whether 'distal' at word k leads to a measure or a noun of a part, or closes one: '5 mm, distal'."""
    words = scene.page.words
    after = next((w for w in words[k + 1 : min(k + 4, high)] if w not in _ABOUT), "")
    if after in PART_NOUNS or after in _PART_LEADS or after[:1].isdecimal() or after in NUMBER_WORDS:
        return True
    if after in ("", ",", ";", ")", "(") and k > low and words[k - 1] in ("mm", "%", ",", "half", "(", ":"):
        return True
    sided = words[k] in ("distal", "distally", "proximal", "proximally")  # 'A4 middle intact' names a finger
    named = words[k - 1] in ("mm", "%") or (sided and any(p.j == k for p in scene.of("pulley")))
    if named and any(m.i == k + 1 for m in scene.of("opened")):
        return True  # 'on a length of 5 mm distal slit', '4 mm of A2 distal opened'
    if words[k - 2 : k] in (["in", "its"], ["over", "its"], ["at", "its"]) and words[k] in (
        "middle",
        "centre",
        "center",
    ):
        return True
    if words[k - 1] == "from" or (after in ("", ",", ";") and any(m.j == k for m in scene.of("opened"))):
        return True
    return any(m.i == k + 1 for m in scene.of("pulley", "fraction"))
