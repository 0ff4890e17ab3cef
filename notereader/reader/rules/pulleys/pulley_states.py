"""What a word says of a pulley: kept, hurt by the accident, opened, cut away, mended, or nothing sure."""

from itertools import pairwise

from notereader.reader.page import Break, Mention, within
from notereader.reader.rules.pulleys.attach import is_denied
from notereader.reader.rules.pulleys.pulley_names import PART_NOUNS, PARTS, denies_the_whole, is_tendon_end
from notereader.reader.rules.pulleys.pulley_undone import undone
from notereader.reader.rules.pulleys.taken_with_lump import taken_with_lump
from notereader.reader.rules.pulleys.windows import windows
from notereader.reader.rules.sutures.pulley_threads import threaded
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

DEEDS = frozenset(["vented", "released", "trimmed", "excised", "widened", "repaired", "reconstructed"])
OPENINGS = frozenset(["vented", "released", "trimmed", "excised"])
_DIVIDING = word_list("pulleys", "dividing")
_UNSURE = word_list("pulleys", "unsure")
_DOUBTFUL = word_list("pulleys", "doubtful")
_IMAGING = word_list("pulleys", "imaging")
_CARERS = word_list("pulleys", "carers")
# How a word of the other lists reads where it is said of a pulley.
_READ_AS = {
    ("extent", "complete"): "injured",
    ("extent", "partial"): "injured",
    ("extent", "intact"): "intact",
    ("deed", "repaired"): "repaired",
    ("deed", "reinserted"): "repaired",
    ("deed", "excised"): "excised",
    ("deed", "trimmed"): "trimmed",
    ("restored", "trimmed"): "trimmed",
}
# Words of extent that say too little without a word for what was done.
_BARE = frozenset(
    [
        *("complete", "completely", "partial", "partially", "incomplete", "incompletely", "through", "part through"),
        *("out", "off", "across", "100%", "100 %", "end to end", "end-to-end", "full thickness", "full-thickness"),
    ]
)
_CHOICES = frozenset(["/", "or", "|"])
_DENYING = ("not", "never", "no ", "un", "was not", "were not")
_CLOSES = frozenset(["", ".", ",", ";", "alone", "intact", "in", "and", "closed"])
_AS_IT_WAS = [["as", w] for w in ("it", "is", "they", "such", "found", "before", "seen")]
_WISHED = word_list("pulleys", "wished")
_UNSEEN = word_list("pulleys", "unseen")
_ORDERS = frozenset(["keep", "preserve", "protect", "spare", "leave", "respect", "save"])


# --- which words


def pulley_words(scene: Scene) -> list[Mention]:
    """Return the words of a sentence that may say what was found of or done to a pulley, none overlapping."""
    if _IMAGING & set(scene.words(scene.sentence.i, scene.sentence.j)):
        return []
    piece = taken_with_lump(scene)
    if piece is not None:
        return [piece]  # what was removed is the lump, and what was left the rest of the pulley
    own = [_cut_by_so_much(scene, m) for m in scene.of("opened") if not _says_little(scene, m)]
    own = [m for m in own if not any(denies_the_whole(scene, m, f) for f in scene.of("fully"))]
    lent = [half for m in scene.of("extent") if (half := _half_of_it(scene, m)) is not None]
    lent += [
        Mention("opened", _on_purpose(scene, m) or _READ_AS[(m.kind, m.value)], m.i, m.j)
        for m in scene.mentions
        if (m.kind, m.value) in _READ_AS and not (_says_little(scene, m) or _half_of_it(scene, m))
    ]
    lent += _taken_off(scene) + _taken_away(scene) + _made_new(scene) + threaded(scene)
    taken: set[int] = set()
    kept: list[Mention] = []
    for m in [*windows(scene), *sorted(own, key=_longest_first), *sorted(lent, key=_longest_first)]:
        if scene.told(m.i) and not any(k in taken for k in range(m.i, m.j)):
            taken.update(range(m.i, m.j))
            kept.append(_behind_name(scene, m))
    kept.sort(key=lambda m: m.i)
    return [m for n, m in enumerate(kept) if not _one_of_several(scene, kept, n) and _answered(scene, m)]


def _cut_by_so_much(scene: Scene, m: Mention) -> Mention:
    """'A2 cut by 3 mm so that the knot passes': how far, and not by whom."""
    by = m.value == "injured" and scene.words(m.i, m.j) == ["cut", "by"]
    return Mention("opened", "vented", m.i, m.j - 1) if by and any(q.i == m.j for q in scene.quantities) else m


def _half_of_it(scene: Scene, m: Mention) -> Mention | None:
    """'Distal half cut to let the repair pass': not 'half cut', but a half that was cut."""
    k = m.i - (scene.word_before(m.i) == ".")
    halved = scene.page.words[m.i] == "half" and m.j - m.i > 1 and scene.word_before(k) in PARTS
    return Mention("opened", "vented", m.i + 1, m.j) if halved else None


def _on_purpose(scene: Scene, m: Mention) -> str:
    """'It hung up on A4, and this pulley was therefore cut through completely': the surgeon's doing; else ''."""
    if m.value == "complete" and scene.word_before(m.i) in _FOR_A_REASON:
        return "released"
    return "vented" if _nicked_on_purpose(scene, m) else ""


_FOR_A_REASON = frozenset(["therefore", "thus", "accordingly"])


def _nicked_on_purpose(scene: Scene, m: Mention) -> bool:
    """'Had to nick A4', 'preserved with a nick of 2 mm', 'distal 3 mm nicked, the rest stays': the surgeon's doing."""
    if _NICKS.isdisjoint(scene.words(m.i, m.j)) or scene.of("agent") or scene.sentence.section == "findings":
        return False
    before = _before(scene, m, 3)
    kept_but = "with" in before and any(o.value == "intact" and o.j <= m.i for o in scene.of("opened"))
    by_us = not {"i", "we", "to"}.isdisjoint(before)
    measured = any(q.unit == "mm" and 0 <= m.i - q.j <= 1 for q in scene.quantities)
    rest_kept = measured and any(w in ("rest", "remainder") for w in scene.words(m.j, scene.sentence.j))
    return by_us or kept_but or rest_kept


_NICKS = frozenset(["nick", "nicked", "nicking"])


def _taken_off(scene: Scene) -> list[Mention]:
    """'I took two millimetres off the proximal edge of A4': a part was cut away, though the verb stands apart."""
    words = scene.page.words
    found = []
    for m in scene.of("pulley"):
        first = max(scene.sentence.i, m.i - 7)
        off = next((k for k in range(m.i - 1, first, -1) if words[k] in _OFF), None)
        if off is None or not all(w in PART_NOUNS or w in PARTS or w in _OF_A_PART for w in scene.words(off + 1, m.i)):
            continue
        lead = range(off - 1, max(scene.sentence.i, off - 7) - 1, -1)
        verb = next((k for k in lead if words[k] in _TAKING_OFF or words[k] in (",", ";", ".")), None)
        if verb is not None and words[verb] in _TAKING_OFF:
            found.append(Mention("opened", "trimmed", off, off + 1))
    return found


def _taken_away(scene: Scene) -> list[Mention]:
    """'I took A3 down completely', 'took the variable pulley off': opened or cut away, the verb parted by the name."""
    found = []
    for m in scene.of("pulley"):
        k, j = m.i, m.j + (scene.next_word(m.j) == "pulley")
        while scene.word_before(k) in _THE_WHOLE:
            k -= 1
        state = _TAKEN.get(scene.next_word(j))
        if scene.next_word(j) == "out" and scene.told(j) and _alone_behind(scene, m.i, j + 1):
            found.append(Mention("opened", "excised", j, j + 1))  # 'A3 out   A4 ok'
        if state and scene.word_before(k) in _TAKING and scene.told(k - 1):
            found.append(Mention("opened", state, k - 1, k))
    return found


def _alone_behind(scene: Scene, i: int, k: int) -> bool:
    """Tell whether words i to k are all a sentence, or a cell of a line, says."""
    opens = (
        i == scene.sentence.i or scene.page.breaks[i] == Break.COLUMN or scene.word_before(i) in (",", ";", ".", "/")
    )
    return opens and (scene.next_word(k) in ("", ".", ",", ";") or scene.page.breaks[k] >= Break.COLUMN)


_THE_WHOLE = frozenset(["the", "whole", "entire", "torn", "damaged", "rest", "of", "all"])
_TAKING = frozenset(["took", "take", "taking", "taken"])
_TAKEN = {"down": "released", "off": "excised", "out": "excised", "away": "excised"}


def _made_new(scene: Scene) -> list[Mention]:
    """'New A2: strip of FDS passed round the phalanx', 'a new A4 pulley made of palmaris'."""
    words, found = scene.page.words, []
    for m in scene.of("pulley"):
        k = m.j + (scene.next_word(m.j) == "pulley")
        if words[k : k + 1] == ["made"] and words[k + 1] in _STUFF and scene.told(k) and not scene.negated(k, k + 1, 4):
            found.append(Mention("opened", "reconstructed", k, k + 1))  # 'A4 made from a slip of FDS'
        if scene.word_before(m.i) != "new" or not scene.told(m.i) or scene.negated(m.i - 1, m.j, 4):
            continue
        opens = not any(w[0].isalpha() for w in scene.words(scene.sentence.i, m.i - 1))
        as_new = scene.words(m.i - 3, m.i - 1) in _AS_NEW and words[k : k + 1] not in (["was"], ["were"])
        if (scene.next_word(k) == ":" and opens) or words[k : k + 1] in _MADE or as_new:
            found.append(Mention("opened", "reconstructed", m.i - 1, m.i))
    return found


# 'A slip of FDS was passed round the phalanx as a new A2.'
_AS_NEW = (["as", "a"], ["as", "the"], ["into", "a"])
_MADE = (["made"], ["fashioned"], ["constructed"], ["created"], ["formed"], ["looped"])
_STUFF = frozenset(["from", "of", "with", "using"])


_OFF = frozenset(["off", "out"])
_TAKING_OFF = word_list("pulleys", "taking_off")
_OF_A_PART = frozenset(["the", "of", "its", "a", "torn", "damaged", "loose", "ragged", "frayed", "hanging"])


_PLACES_OF_REPAIR = frozenset(["site", "sites", "zone", "line", "area", "point", "region"])


def _longest_first(m: Mention) -> tuple[int, int]:
    return m.i - m.j, m.i


_LETS_PASS = frozenset(["pass", "admit", "clear", "let", "allow", "accommodate", "receive", "free", "for"])


_WHY = frozenset(["because", "since", "as", "that", "until", "when", "where", "so", "while", "once", "after", "if"])


_ASKS_OF_SUTURE = frozenset(["size", "sizes", "material", "type", "calibre", "caliber", "pattern", "technique"])
_DILATORS = frozenset(["dilator", "dilators", "bougie", "sound", "sounds"])


def _what_it_was_opened_for(scene: Scene, k: int) -> bool:
    """'A4 was incised for placement of the suture', 'opened to place the core sutures': why, and no mending of it."""
    lead = [w for w in scene.words(max(scene.sentence.i, k - 5), k) if w not in ("the", "a", "core", "our", "my")]
    if lead[-1:] == ["for"] or (lead[-1:] != [] and lead[-1] in _PLACING):
        return True
    return lead[-1:] == ["of"] and lead[-2:-1] != [] and lead[-2] in _PLACING


_PLACING = frozenset(
    [
        "placement",
        "passage",
        "insertion",
        "placing",
        "passing",
        "setting",
        "place",
        "pass",
        "insert",
        "inserting",
        "set",
    ]
)


_CUT_THINGS = frozenset(["structures", "ends", "stumps", "tendons", "flexors", "nerves", "vessels"])


def _says_little(scene: Scene, m: Mention) -> bool:
    """Tell whether a word says too little alone: an adverb of extent, or 'the repair' as a thing."""
    word = " ".join(scene.words(m.i, m.j))
    if word == "in order" and scene.next_word(m.j) in ("to", "that"):
        return True
    if m.value == "repaired" and scene.word_before(m.i) == "the" and scene.word_before(m.i - 1) in _LETS_PASS:
        return True  # 'A4 was cut to pass the suture'
    if word == "eased" and not _DILATORS.isdisjoint(scene.words(m.j, min(m.j + 6, scene.sentence.j))):
        return True  # 'having first eased A4 with a dilator, not cut'
    if word in ("suture", "sutures") and scene.word_before(m.i - (scene.word_before(m.i) == "the")) in _WHY:
        return True  # 'A2 was opened over 8 mm because the suture caught', 'since suture rubbed on it'
    if word in ("suture", "sutures") and _what_it_was_opened_for(scene, m.i):
        return True
    if word in ("suture", "sutures", "repair") and scene.next_word(m.j) in _ASKS_OF_SUTURE:
        return True  # 'A4 vented, suture size: 3-0'
    if m.j - m.i == 1 and m.value not in ("intact", "repaired") and scene.next_word(m.j) in _CUT_THINGS:
        return True  # 'All the divided structures lay distal to the retinaculum'
    if scene.next_word(m.j) == "nothing":
        return True  # 'I sacrificed nothing of the oblique pulley'
    if word.startswith("advance"):
        return True  # 'enlarged by a V-Y advancement'
    if (
        word == "closed"
        and scene.word_before(m.i) == ","
        and any(o.j == m.i - 1 and o.value == "intact" for o in scene.of("opened"))
    ):
        return True  # 'A2 is intact, closed with 4-0 nylon': the skin
    if word == "opening" and scene.word_before(m.i) in ("on", "at", "upon", "an"):
        return True
    if word == "repair" and not scene.header and scene.next_word(m.j) not in ("of", ":"):
        return not any(p.j == m.i for p in scene.of("pulley"))
    if m.value == "repaired" and scene.next_word(m.j) in _PLACES_OF_REPAIR:
        return True  # 'the suture site glides without impingement in A1'
    if m.value == "repaired" and scene.word_before(m.i) in ("the", "this", "newly", "now"):
        named = next((g for g in scene.setting.groups if g.tendons and 0 <= g.i - m.j <= 1), None)
        if named is not None:
            return True  # 'A2 remained intact over the repaired FDP'
    if m.value == "reconstructed" and _made_before(scene, m):
        return True  # 'the reconstructed A2 was not disturbed': which pulley is meant
    led = scene.word_before(m.i) in ("the", "a", "its", "this", "that")
    if m.value in ("excised", "trimmed") and led and any(g.i == m.j and g.tendons for g in scene.setting.groups):
        return True  # 'A2 was rebuilt with the resected FDS slip'
    if word in _BARE or any((f.i, f.j) == (m.i, m.j) or _over_it_all(scene, f, m) for f in scene.of("fully")):
        return True
    return any(g.generic and g.i <= m.i < g.j for g in scene.setting.groups)


def _over_it_all(scene: Scene, f: Mention, m: Mention) -> bool:
    """'A3 along its whole length': 'whole' there is no state."""
    return f.i < m.i and m.j <= f.j and scene.page.words[f.i] in ("along", "over", "across", "through", "on", "in")


def _made_before(scene: Scene, m: Mention) -> bool:
    """'The reconstructed A2', 'previously rebuilt A2 and A4', 'A2 reconstructed in the first sitting': made earlier."""
    behind = scene.words(m.j, min(m.j + 4, scene.sentence.j))
    if (
        behind[:1] in (["at"], ["in"], ["during"])
        and not _SITTINGS.isdisjoint(behind)
        and not _EARLIER.isdisjoint(behind)
    ):
        return True
    if behind[:1] == ["then"] and behind[1:2] in ([")"], [";"], ["."], [","]):
        return True  # '(rod placed at stage 1, A2 and A4 reconstructed then)'
    named = scene.next_word(m.j) == "pulleys" or any(p.i == m.j for p in scene.of("pulley", "pulleys"))
    before = scene.word_before(m.i)
    return named and (m.i == scene.sentence.i or before in _EARLIER or before in ("the", "both", "these"))


_SITTINGS = frozenset(["sitting", "stage", "operation", "session", "procedure", "time", "surgery"])
_EARLIER = frozenset(["first", "earlier", "previous", "previously", "last", "before", "already", "index"])


def _behind_name(scene: Scene, m: Mention) -> Mention:
    """Cut off a word's part that belongs to the name: 'A4 pulley plasty'."""
    name = next((p for p in scene.of("pulley") if p.i < m.i < p.j < m.j), None)
    return Mention(m.kind, m.value, name.j, m.j) if name else m


_PAIR = 2


def _one_of_several(scene: Scene, words: list[Mention], n: int) -> bool:
    """Tell whether a word is one of the choices of an unfilled form: 'intact / vented / excised'."""
    for other in [*words[max(n - 1, 0) : n], *words[n + 1 : n + 2]]:
        first, second = sorted((other, words[n]), key=lambda m: m.i)
        between = scene.words(first.j, second.i)
        found_and_done = len(words) == _PAIR and "injured" in (first.value, second.value)  # 'A4 torn / mended'
        if len(between) == 1 and between[0] in _CHOICES and other.value != words[n].value and not found_and_done:
            return True
    return False


def _answered(scene: Scene, m: Mention) -> bool:
    """Tell whether a word that is itself a question was answered with yes: 'A2 intact? Yes'."""
    words = scene.page.words
    if m.value in DEEDS and _denied_by_answer(scene, m):
        return False
    return words[m.j : m.j + 1] != ["?"] or words[m.j + 1 : m.j + 2] in (["yes"], ["y"])


def _denied_by_answer(scene: Scene, m: Mention) -> bool:
    """'A2 vented Y / N: N', 'A4 vented: no', 'Venting of A4: no', 'A4 released    N'."""
    named = next((p.j for p in scene.of("pulley") if p.i == m.j + 1 and scene.next_word(m.j) == "of"), m.j)
    if scene.answer(named) in _NOES:
        return True
    column = named < scene.sentence.j and scene.page.breaks[named] >= Break.COLUMN
    return column and scene.next_word(named) in _NOES


_NOES = frozenset(["n", "no"])


# --- what they say


def strongest(scene: Scene, words: list[Mention]) -> Mention | None:
    """Return the word that decides: the last deed; what was found only where nothing was done."""
    stated = [(m, value) for m in words if (value := state_of(scene, m)) is not None]
    deeds = _in_time(scene, [(m, value) for m, value in stated if value in DEEDS])
    if deeds:
        return _last_deed(scene, deeds)
    hurt = [m for m, value in stated if value == "injured"]
    return next(iter([*hurt, *(m for m, _ in reversed(stated))]), None)


def _last_deed(scene: Scene, deeds: list[tuple[Mention, str]]) -> Mention:
    """Return the deed that stands; a whole release beats the venting told with it, a rebuilding its own stitches."""
    full = [m for m, value in deeds if value == "released"]
    if full and all(value in ("released", "vented") for _, value in deeds):
        return full[-1]
    rebuilt = [m for m, value in deeds if value == "reconstructed"]
    if rebuilt and deeds[-1][1] == "repaired":
        return rebuilt[-1]
    if [value for _, value in deeds[-2:]] == ["widened", "repaired"] and _joins_its_parts(scene, deeds):
        return deeds[-2][0]
    if [value for _, value in deeds[-2:]] == ["repaired", "widened"] and deeds[-1][0].i - deeds[-2][0].j < 3:
        return deeds[-2][0]  # 'sewn back lengthened'
    return deeds[-1][0]


def _joins_its_parts(scene: Scene, deeds: list[tuple[Mention, str]]) -> bool:
    """'Enlarged by a V-Y plasty, its two remnants being joined', 'widened and its flaps sewn': how it was widened."""
    between = scene.words(deeds[-2][0].j, deeds[-1][0].i)
    return not _ITS_PARTS.isdisjoint(between)


_ITS_PARTS = frozenset(["remnants", "edges", "flaps", "limbs", "halves", "leaves", "ends", "margins"])


def _in_time(scene: Scene, deeds: list[tuple[Mention, str]]) -> list[tuple[Mention, str]]:
    """Leave out the deeds told after an 'after': 'A2 was reconstructed after the torn one had been excised'."""
    first = deeds[0][0].j if deeds else scene.sentence.j
    words = scene.page.words
    at = next((k for k in range(first, scene.sentence.j) if words[k] in _AFTER and words[k - 1] not in _JOINED), None)
    return [d for d in deeds if at is None or d[0].i < at]


_AFTER = frozenset(["after", "once", "following"])
_JOINED = frozenset(["and", "but", ";"])  # 'opened at first, and after the tendon was done I sutured it back'
_FOUND = frozenset(["seen", "found", "proved", "appeared", "seemed", "confirmed", "noted", "observed"])
_WENT = frozenset(["back", "to", "into", "as", "up", "under", "proximally", "past", "through"])


def state_of(scene: Scene, m: Mention) -> str | None:
    """Return what a word says of a pulley; a negated opening is an intact pulley, other negations say nothing sure."""
    words = scene.words(m.i, m.j)
    word = " ".join(words)
    if m.value == "intact":
        return _kept(scene, m, word)
    if m.value != "injured" and _only_possible(scene, m):
        return None
    if word == "gone" and scene.next_word(m.j) in _WENT:
        return None  # 'the proximal end had gone back as far as the oblique pulley'
    if word == "closed" and _STAYED & set(_before(scene, m, 5)):
        return "intact"
    if m.value in OPENINGS | {"injured"} and _neither(scene, m):
        return "intact"
    if _negated(scene, m, 4) and not (m.value in OPENINGS and _denied_of_another(scene, m)):
        if _not_without(scene, m):
            return None
        further = {"further", "more", "again"} & set(scene.words(m.j, min(m.j + 4, scene.sentence.j)))
        return "intact" if m.value in OPENINGS and not further else None
    if m.value in ("vented", "released") and _by_accident(scene, m):
        return "injured"
    its_rest = scene.words(m.j, m.j + 1) == ["the"] and scene.next_word(m.j + 1) in _REST  # 'opened the rest'
    if m.value in ("vented", "released") and (its_rest or not _REST.isdisjoint(_before(scene, m, 4))):
        return "released"  # 'torn through half its length; the remainder was divided too'
    if m.value in ("repaired", "reconstructed") and undone(scene, m):
        return None
    if m.value == "vented" and _DIVIDING & set(words):
        return _cut_or_opened(scene, m, word)
    return m.value


_REST = frozenset(["rest", "remainder", "remaining"])
_WHATEVER = frozenset(["what", "whatever"])
_DILATING = frozenset(["dilated", "dilatation", "dilation", "stretched"])
_STAYED = frozenset(["kept", "left", "stayed", "remained", "remains", "stays"])


def _neither(scene: Scene, m: Mention) -> bool:
    """'In neither finger had the A4 pulley been hurt', 'neither of these was opened', 'A2 was opened in neither'."""
    if scene.words(m.j, m.j + 2) in (["in", "neither"], ["on", "neither"]):
        return True
    before = _before(scene, m, _IN_REACH)
    if "neither" not in before:
        return False
    first = m.i - len(before) + before.index("neither")
    if any(g.value == "intact" and first < g.i and g.j <= m.i for g in scene.of("opened")):
        return False  # 'Neither A2 nor A4 could be kept whole: each was vented'
    return {",", ";", ".", ":", "but", "so", "and", "then"}.isdisjoint(before[before.index("neither") :])


_IN_REACH = 12  # words


def _before(scene: Scene, m: Mention, reach: int) -> list[str]:
    return scene.words(max(scene.sentence.i, m.i - reach), m.i)


def _negated(scene: Scene, m: Mention, reach: int) -> bool:
    return not " ".join(scene.words(m.i, m.j)).startswith(_DENYING) and is_denied(scene, m, reach)


def _denied_of_another(scene: Scene, m: Mention) -> bool:
    """'Catching was not abolished by venting A4', 'no catching after A4 was vented': something else is denied."""
    before = [c for c in within(scene.page.cues, scene.sentence.i, m.i) if c.value == "negated"]
    cue = before[-1] if before else None
    return cue is not None and not _MEANWHILE.isdisjoint(scene.words(cue.j, m.i))


def _not_without(scene: Scene, m: Mention) -> bool:
    """'The repair would not pass without venting A2': what it took, and no word that A2 stayed whole."""
    words = scene.page.words
    k = next((k for k in range(m.i - 1, max(scene.sentence.i, m.i - 5) - 1, -1) if words[k] == "without"), -1)
    lead = scene.words(max(scene.part(m.i)[0], k - _LONG_CLAUSE), k)
    lead = lead[lead.index("and") + 1 :] if "and" in lead else lead
    told = any(scene.part(m.i)[0] <= r.i < k for r in scene.of("gap", "tension"))
    return k >= 0 and not told and not _UNABLE.isdisjoint(lead)


_LONG_CLAUSE = 10  # words
_MEANWHILE = frozenset(["after", "before", "once", "until", "till", "when", "despite", "by", "on", "even"])
_UNABLE = frozenset(["not", "cannot", "couldn't", "wouldn't", "never", "impossible", "unable", "nothing"])


def _only_possible(scene: Scene, m: Mention) -> bool:
    """Tell whether a deed was only possible ('may have to vent A2') or the word no deed ('A1 stays open')."""
    before = _before(scene, m, 4)
    full = any(0 <= f.i - m.j <= 1 for f in scene.of("fully"))
    measured = any(q.unit == "mm" and q.j == m.i for q in scene.quantities) and scene.next_word(m.j) in _ENDS_CELL
    if measured:
        return False  # 'A2: prox. 6 mm open', but not 'a 6 mm open wound'
    if scene.page.words[m.i] == "open" and scene.word_before(m.i) not in ("to", "i", "we") and not full:
        return True
    return bool(_UNSURE & set(before)) or before[-2:] == ["could", "have"]


_ENDS_CELL = frozenset(["", ".", ",", ";", "|", ")"])


def _kept(scene: Scene, m: Mention, word: str) -> str | None:
    """Return 'intact' for words that say so without doubt; 'left' needs 'alone' or the end of the clause."""
    before = _before(scene, m, 9)
    if _neither(scene, m) or ("neither" in before and {"nor", "of"} & set(before)):
        return None  # 'Neither A2 nor A4 was left whole', 'neither pulley is intact'
    if scene.words(m.j, m.j + 2) in (["in", "none"], ["in", "neither"]) or scene.next_word(m.j) == "neither":
        return None  # 'we could keep neither A2 nor A4'
    if "reached" in word.split():
        return None  # 'A2: not reached' tells of the wound, or of how far the surgeon went
    lately = before[-3:]
    if "only" in lately and not _DILATING.isdisjoint(
        before
    ):  # 'dilated only, kept', 'dilated with a probe only, and kept'
        lately = [w for w in lately if w != "only"]
    if _negated(scene, m, 3) or (_DOUBTFUL | _WISHED) & set(lately) or not _observed(scene):
        return None
    if ("done", "to") in pairwise(before) and not _WHATEVER.isdisjoint(scene.said):
        return None  # 'What our first operation had done to A2 was left as it was'
    lead = before[before.index(",") :] if "," in before else before
    if before[-2:] == ["all", "but"] or any(pair in _LITTLE_OF for pair in pairwise(lead)):
        return None  # 'A2 was all but intact', 'little of A2 remains intact'
    turned_out = scene.words(m.i - 4, m.i - 2) == ["turned", "out"]
    if before[-2:] == ["to", "be"] and not (turned_out or scene.word_before(m.i - 2) in _FOUND):
        return None  # 'A2, to be preserved at all costs, went'
    if before[-1:] == ["initially"] or _only_at_first(scene, m.j):
        return None  # 'A2 was intact at the start': what it came to is not told
    if not _LEAVING.isdisjoint(word.split()[-1:]) and scene.next_word(m.j) in _MOST_OF:
        return None  # 'leaving most of it', 'keeping the greater part': some of it was not left
    if word == "alone":
        return "intact" if {"left", "leave", "leaving"} & set(before) else None
    if word in ("left", "was left"):
        closed = scene.next_word(m.j) in _CLOSES or scene.words(m.j, m.j + 2) in _AS_IT_WAS or _left_it_so(scene, m)
        return "intact" if closed and not _hurt_before(scene, m) else None
    return "intact"


_LEAVING = frozenset(["leaving", "leave", "left", "keeping", "preserving", "sparing", "kept", "preserved", "spared"])
_MOST_OF = frozenset(["most", "much", "part"])


def _only_at_first(scene: Scene, k: int) -> bool:
    """'Intact at the start', 'intact on the way in', and not 'at the start and at the end'."""
    phrase = next((p for p in _AT_THE_START if scene.words(k, k + len(p)) == p), None)
    behind = scene.words(k + len(phrase), k + len(phrase) + _SOON_AFTER) if phrase else []
    return phrase is not None and not (behind[:1] in _AND and not _AT_THE_END.isdisjoint(behind))


_SOON_AFTER = 5  # words: 'and still so at the end'
_AND = (["and"], ["as"], ["&"])
_AT_THE_START = [words.split() for words in word_list("pulleys", "at_the_start")]
_AT_THE_END = word_list("pulleys", "at_the_end")


def _left_it_so(scene: Scene, m: Mention) -> bool:
    """'I left A1 as it was': the pulley stands between the verb and how it stayed."""
    named = next((p for p in scene.of("pulley") if p.i == m.j + (scene.next_word(m.j) == "the")), None)
    return named is not None and scene.words(named.j, named.j + 2) in _AS_IT_WAS


_LITTLE_OF = frozenset((a, "of") for a in ("little", "anything", "much", "nothing", "shreds", "scraps"))


def _observed(scene: Scene) -> bool:
    """Tell whether a sentence tells what was seen: no hearsay, hope, aim, order or general truth."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if _UNSEEN & set(words) or words[-1:] == ["!"]:
        return False
    starts = [k for k, w in enumerate(words) if w in _ORDERS and (k == 0 or words[k - 1] in (":", ",", ";", "-"))]
    return not starts


def _hurt_before(scene: Scene, m: Mention) -> bool:
    """Tell whether the pulley that was 'left' had been found hurt or been opened just before."""
    hurt = [h for h in scene.of("opened") if h.value in ("injured", "vented") and h.j <= m.i]
    return bool(hurt) and not any(hurt[-1].j <= p.i < m.i for p in scene.of("pulley"))


def _by_what_wounds(scene: Scene, m: Mention) -> bool:
    """'Divided by a tooth', 'proximal half slit by knife', 'a small slit from the glass': without 'the' as well."""
    agent = next((a for a in scene.of("agent") if a.i >= m.j), None)
    if agent is None or agent.i - m.j > _NEAR_AGENT:
        return False
    led = scene.words(m.j, agent.i)
    return led[:1] in (["by"], ["from"]) and all(w in _BEFORE_AGENT for w in led[1:])


_NEAR_AGENT = 4  # words
_BEFORE_AGENT = frozenset(["a", "an", "the", "his", "her", "this", "same", "of", "edge", "sharp", "broken"])
_WOUNDED = frozenset(["split", "cut", "divided", "slit", "torn", "laid", "incised", "lacerated"])


def _by_accident(scene: Scene, m: Mention) -> bool:
    """Tell whether the wound did it: 'split by the glass', 'already divided', 'the blade had slit A2'."""
    after = scene.words(m.j, min(m.j + 8, scene.sentence.j))
    if after[:3] in (["in", "the", "injury"], ["in", "the", "accident"], ["at", "the", "injury"]):
        return True
    if _by_what_wounds(scene, m):
        return True
    others = [p.i - m.j for p in scene.of("pulley") if p.i >= m.j]
    after = after[: min(others, default=len(after))]  # 'A1 fully divided, A2 torn by the saw'
    if "by" in after[:6]:
        noun = after[after.index("by") + 1 :][:3]
        if noun[:1] and noun[0] in ("the", "his", "her", "this") and not set(noun) & _CARERS:
            return True
    if _before(scene, m, 1) == ["had"] and scene.words(m.i, m.j) == ["split"] and _before(scene, m, 2)[:1] not in _WE:
        return True  # 'A4 had split'
    before = set(_before(scene, m, 4))
    if {"already", "found"} & set(_of_its_own(scene, m, 4)):
        return True
    if _before(scene, m, 2) == ["had", "been"] and scene.page.words[m.i] in _WOUNDED:
        # 'the A2 pulley had been split', but 'it jammed until the distal 8 mm of this pulley had been divided'
        freed = _opens_after(scene, m) or _ran_after(scene, m)
        return _UNTIL.isdisjoint(_before(scene, m, 12)) and not freed
    wounding = [a for a in scene.of("agent") if a.j <= m.i and m.i - a.j <= 3]
    return bool(wounding) and bool({"had", "has"} & before or wounding[-1].j == m.i)


def _of_its_own(scene: Scene, m: Mention, reach: int) -> list[str]:
    """Return the words before a word, from the last other state on: 'found intact, divided', 'found intact and'."""
    told = [o.j for o in scene.of("opened", "extent") if o.j <= m.i and not o.i <= m.i < o.j]
    return scene.words(max([scene.sentence.i, m.i - reach, *told]), m.i)


_UNTIL = frozenset(["until", "till"])
_WE = (["i"], ["we"], ["surgeon"])


def _opens_after(scene: Scene, m: Mention) -> bool:
    """'After the C1 pulley had been incised it ran freely': what was done first, so that it ran."""
    first = scene.part(m.i)[0]
    opens = first if scene.page.words[first] in ("after", "once") else first - 1
    return scene.page.words[opens] in ("after", "once") and opens >= scene.sentence.i and bool(scene.of("glide"))


def _ran_after(scene: Scene, m: Mention) -> bool:
    """'FDP ok after A3 cut through', 'it ran freely once A4 was cut': cut so that the tendon ran."""
    words = scene.page.words
    spots = range(max(scene.sentence.i + 1, m.i - _NEAR_AFTER), m.i)
    at = next((k for k in spots if words[k] in ("after", "once")), None)
    if at is None or not any(at < p.i < m.i for p in scene.of("pulley")):
        return False
    return words[at - 1] in _RAN_WELL or any(0 <= at - g.j <= 1 for g in scene.of("glide"))


_NEAR_AFTER = 7  # words
_RAN_WELL = frozenset(["ok", "okay", "fine", "free", "freely", "smooth", "smoothly", "passed", "glided", "through"])


def _cut_or_opened(scene: Scene, m: Mention, word: str) -> str:
    """'cut' with no one who cut is an injury; 'divided' and 'released' alone mean the whole length."""
    deliberate = {"i", "we", "to"} & set(_before(scene, m, 3)) or scene.sentence.section in ("procedure", "addendum")
    deliberate = deliberate or scene.words(m.j, m.j + 2) in (["was", "made"], ["is", "made"])
    deliberate = deliberate or scene.words(m.j, m.j + 2) in _BY_SURGEON
    deliberate = deliberate or _ran_after(scene, m)
    deliberate = deliberate or "until" in _before(scene, m, 12)  # 'it jammed until half of A4 had been cut'
    deliberate = deliberate or any(0 <= f.i - m.j <= 3 for f in scene.of("fully"))
    deliberate = deliberate or _for_room(scene, m) or _under_title_of_deeds(scene) or _measured_out(scene, m)
    in_full = scene.next_word(m.j) in _IN_FULL  # 'cut through its whole length', 'cut through completely'
    accident = word == "cut" or (word == "cut through" and not in_full)
    return "injured" if accident and not deliberate else _whole_or_part(scene, m)


_BY_SURGEON = (["by", "me"], ["by", "us"], ["by", "myself"])  # 'cut through by me'
_IN_FULL = frozenset(["its", "the", "their", "longitudinally", "over", "along", "completely", "fully", "entirely"])


def _measured_out(scene: Scene, m: Mention) -> bool:
    """'A2 was cut for its distal 6 mm', 'proximal 6 mm cut': who tells the length is the surgeon who cut it."""
    if scene.sentence.section in ("findings", "indication", "diagnosis") or scene.of("agent") or "left" in scene.said:
        return False
    return any(q.unit == "mm" and (0 <= m.i - q.j <= 1 or 0 < q.i - m.j <= _NEAR_LENGTH) for q in scene.quantities)


_NEAR_LENGTH = 3  # words: 'cut for its distal 6 mm'


def _for_room(scene: Scene, m: Mention) -> bool:
    """'Oblique pulley cut 4 mm, middle part, to pass the FPL': who cuts for a purpose is the surgeon."""
    behind = scene.words(m.j, min(m.j + _FAR_PURPOSE, scene.sentence.j))
    told = any((a in ("to", "for") and b in _ROOM) or (a, b) == ("so", "that") for a, b in pairwise(behind))
    return told or scene.word_before(m.i) in _FOR_A_REASON


def _under_title_of_deeds(scene: Scene) -> bool:
    """'Oblique   Intact   Cut 4 mm' under 'Structure   Status   Action': a cell of what was done."""
    return any(scene.words(*title) in _DEED_TITLES for title in scene.sentence.prefix[1:])


_FAR_PURPOSE = 10  # words
_ROOM = frozenset(
    [
        "pass",
        "stop",
        "prevent",
        "keep",
        "ease",
        "let",
        "reach",
        "find",
        "see",
        "get",
        "bring",
        "allow",
        "free",
        "deliver",
        "retrieve",
        "thread",
        "exposure",
        "access",
        "room",
        "light",
        "view",
    ]
)
_DEED_TITLES = (["action"], ["action", "taken"], ["done"], ["what", "was", "done"], ["treatment"], ["surgery"])


_IN_PART = frozenset(["partial", "partially", "partly", "incomplete", "limited", "half", "mm", "edge", "part"])


def _whole_or_part(scene: Scene, m: Mention) -> str:
    """Return 'released' for a whole division, 'vented' where a share, a length or a part is named."""
    first, last = scene.part(m.i)
    if scene.word_before(first) == "then":
        first = scene.part(first - 1)[0]  # 'The distal 5 mm of A2 was then divided'
    last = min([last, m.j + 8, *(k for k in range(m.j, last) if scene.page.words[k] in ("to", "so"))])
    last = min([last, *(k for k in range(m.j, last) if is_tendon_end(scene.words(k, k + 4)))])
    fingers = {k for g in scene.setting.groups if g.digits for k in range(g.i, g.j)}  # 'in the middle finger'
    words = [scene.page.words[k] for k in range(max(first, m.i - 10), last) if k not in fingers]
    if any(w in PARTS for w in words) or not _IN_PART.isdisjoint(words):
        return "vented"
    if any(q.unit in ("%", "mm") and first <= q.i < last for q in scene.quantities):
        return "vented"
    return "released"
