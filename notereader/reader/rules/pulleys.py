"""What was found of and done to each pulley; the last thing done wins."""

from bisect import bisect_right
from dataclasses import dataclass, field

from notereader.reader.desk import Desk
from notereader.reader.measures import NUMBER_WORDS, UNITS
from notereader.reader.page import Break, Mention
from notereader.reader.rules.attach import WEAK, Attachment, Thing, is_denied, others
from notereader.reader.scene import Scene, digits_at
from notereader.record.values import Value

_THUMB_ONLY = frozenset(["oblique", "variable"])
_FINGER_ONLY = frozenset(["A3", "A4", "A5", "C1", "C2", "C3"])
_SKIP = frozenset(["instructions", "closure", "dressing", "admin", "anaesthesia", "blood_loss", "specimens"])
_GLUE = frozenset("and , & + / or nor the both a together with pulleys pulley as well to also - its my along through up".split())
_AFTER_PULLEY = frozenset(
    ["was", "kept", "preserved", "intact", "left", "and", "pulley", "released", "opened", "cut", "is", "divided", "both",
     "spared", "excised", ":", ",", ".", ""]
)  # fmt: skip
_RANGE = frozenset(["to", "through", "-"])
_PARTS = {
    **dict.fromkeys(("distal", "distally", "dist", "far", "leading"), "distal"),
    **dict.fromkeys(("proximal", "proximally", "prox", "near"), "proximal"),
    **dict.fromkeys(("middle", "central", "midportion", "mid", "centre", "center"), "middle"),
}
_PART_NOUNS = frozenset(
    "part bit half edge rim lip border third thirds quarter quarters portion end margin segment fibres fibers aspect "
    "side slit tear rent split portion - remnant remnants remains remainder rest remaining strands bands cm mm pulley fifth".split()
)
_NO_STOP = frozenset(["dist", "prox", "up", "approx", "max"])
_MEASURES = frozenset(["its", "about", "first", "last", "a", "some", "over", "by", "half", "cent", "per"])
_PART_LEADS = frozenset("most two one three four . of % the edge and".split())
_ANNULAR = ("A1", "A2", "A3", "A4", "A5")
_NUMBERS = frozenset("12345")
_ORDINALS = {"first": "A1", "second": "A2", "third": "A3", "fourth": "A4", "fifth": "A5"}
_DEEDS = frozenset(["vented", "released", "trimmed", "excised", "widened", "repaired", "reconstructed"])
_DIVIDING = frozenset("cut divided released release releasing dividing divide division".split())
_OPENINGS = frozenset(["vented", "released", "trimmed", "excised"])
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
# Words of extent that need a word for what was done.
_BARE = frozenset(
    ["complete", "completely", "partial", "partially", "through", "out", "off", "incomplete", "incompletely", "100%",
     "100 %", "end to end", "end-to-end", "full thickness", "full-thickness", "part through"]
)  # fmt: skip
_OTHERS = ("tendon", "structure", "sided", "bundle", "role", "anynerve", "anyartery", "bone", "fracture")
_UNSURE = frozenset("may might would should will shall can".split())
_PLACE_WORDS = frozenset(
    "at under beneath underneath over near beyond between past through from level above below into onto against behind "
    "alongside around opposite toward towards across by within along on until btw betw btwn".split()
)
_PLACE_FILLERS = frozenset(
    "the a an its his her base of mid edge lip margin rim mouth region area side this that just distal proximal "
    "remaining".split()
)
_DOUBTFUL = frozenset("probably possibly presumably likely perhaps partly partially mostly largely nearly almost only".split())
_EXCEPT = frozenset("except apart save other bar but".split())
_IMAGING = frozenset("mri ultrasound uss sonography scan scans imaging ct x-ray xr radiograph sonographically".split())
_EITHER = frozenset(["/", "or", "|"])
_AGENTS_OF_CARE = frozenset("surgeon operator consultant registrar fellow scissors scalpel venting plasty same use".split())
_ALSO = frozenset("also too likewise ditto same similarly idem so".split())
_TOGETHER = (["as", "was"], ["so", "was"], ["and", "so"], ["together", "with"], ["along", "with"], ["well", "as"])
_PRONOUNS = frozenset("it this that they both these neither them".split())
# What may be said of a tendon or a wound as well; a pronoun is believed for these only where nothing else was named.
_SHARED = frozenset(["intact", "injured", "repaired", "excised", "trimmed"])


@dataclass(slots=True)
class _Group:
    """Pulleys named together, with the words that speak of them."""

    mentions: list[Mention]
    values: list[str]
    actions: list[Mention] = field(default_factory=list)

    @property
    def i(self) -> int:
        return self.mentions[0].i

    @property
    def j(self) -> int:
        return self.mentions[-1].j


def pulleys(desk: Desk, scene: Scene) -> None:
    """Find the state of every pulley named in a sentence, or spoken of as 'it' or 'both' right after."""
    if scene.sentence.section in _SKIP:
        return
    _all_annular(desk, scene)
    groups, places = _named(scene)
    groups = sorted([*groups, *_meant(desk, scene, groups, places)], key=lambda g: g.i)
    words = [_as_pulley_word(m) for m in _pulley_words(scene)]
    _attach(scene, groups, places, words)
    _same_again(scene, groups)
    for group in groups:
        by_digit = _told_by_digit(scene, group)
        for digits, actions in by_digit.items():
            action = _strongest(scene, actions)
            if action is not None:
                _lay(desk, scene, group, action, digits)
    if not groups and not places:
        _pronoun(desk, scene, words)
    else:
        last = (groups or places)[-1]
        desk.last_pulley_end = scene.sentence.j
        desk.last_pulleys = [(value, _digits(desk, scene, last.mentions[0], value)) for value in last.values]


# --- which pulleys


def _named(scene: Scene) -> tuple[list[_Group], list[_Group]]:
    """Return the pulleys of a sentence, those named together as one group, and those that are only landmarks."""
    groups: list[_Group] = []
    places: list[_Group] = []
    for mention in _mentions(scene):
        latest = max([*groups[-1:], *places[-1:]], key=lambda g: g.i, default=None)
        if latest is not None and _glued(scene, latest, mention) and not _parted(scene, latest.j, mention.i):
            latest.values += _between(scene, latest, mention)
            latest.mentions.append(mention)
        elif _is_place(scene, mention) and not _goes_on(scene, mention):
            places.append(_Group([mention], [mention.value]))
        else:
            groups.append(_Group([mention], [mention.value]))
    return groups, places


def _mentions(scene: Scene) -> list[Mention]:
    """Return what names a pulley here; 'oblique' and 'variable' only beside other pulleys or in a thumb."""
    found = [m for m in scene.of("pulley", "pulley?") if scene.told(m.i)]
    thumb = "thumb" in scene.setting.digits or any(t.tendon == "FPL" for t in scene.setting.focus)
    thumb = thumb or any("thumb" in g.digits for g in scene.setting.groups)
    kept = [m for m in found if m.kind == "pulley" or len(found) > 1 or (thumb and _stands_alone(scene, m))]
    return [m for n, m in enumerate(kept) if n == 0 or m.i > kept[n - 1].i or m.j > kept[n - 1].j]


def _meant(desk: Desk, scene: Scene, groups: list[_Group], places: list[_Group]) -> list[_Group]:
    """Return 'both pulleys', 'the pulley', 'the latter' as the pulleys named just before."""
    found: list[_Group] = []
    for m in scene.of("pulleys"):
        before = [g for g in sorted([*groups, *places], key=lambda g: g.i) if g.j <= m.i]
        values = [v for g in before for v in g.values]
        if not values and scene.sentence.i == desk.last_pulley_end:
            values = [v for v, _ in desk.last_pulleys]
        several = scene.word_before(m.i) in ("both", "these", "two", "neither", "those")
        numbered = _numbered(scene, m)
        if numbered:
            found.append(numbered)
        elif m.value == "all" and several and len(values) >= 2:
            found.append(_Group([m], list(dict.fromkeys(values))))
        elif (m.value == "one" and len(values) == 1) or (m.value == "latter" and before):
            found.append(_Group([m], values[-1:]))
    return found


def _numbered(scene: Scene, m: Mention) -> _Group | None:
    """Return 'annular pulleys 2 and 4', 'the second and fourth annular pulleys' as pulleys."""
    if m.value != "annular":
        return None
    words = scene.page.words
    i, j = m.i, m.j
    while j < scene.sentence.j and (words[j] in _NUMBERS or words[j] in (",", "and", "&", "+")):
        j += 1
    while i > scene.sentence.i and (words[i - 1] in _ORDINALS or words[i - 1] in (",", "and")):
        i -= 1
    values = [f"A{w}" for w in words[m.j : j] if w in _NUMBERS] or [_ORDINALS[w] for w in words[i : m.i] if w in _ORDINALS]
    return _Group([Mention("pulley", values[0], i, j)], values) if values else None


def _stands_alone(scene: Scene, m: Mention) -> bool:
    after = scene.next_word(m.j)
    return after in _AFTER_PULLEY


def _glued(scene: Scene, group: _Group, mention: Mention) -> bool:
    between = scene.words(group.j, mention.i)
    return len(between) <= 4 and all(w in _GLUE for w in between) and ("+" not in between or "," not in between)


def _parted(scene: Scene, i: int, j: int) -> bool:
    """Tell whether a column of space parts two pulleys: 'A1     A2     A3' are titles."""
    return any(scene.page.breaks[k] == Break.COLUMN for k in range(i, j + 1)) and i == j


def _between(scene: Scene, group: _Group, mention: Mention) -> list[str]:
    """Return the pulley to add to a group, with those a range passes over: 'A1 through A4'."""
    words = scene.words(group.mentions[-1].j, mention.i)
    first, last = group.values[-1], mention.value
    ranged = bool(words) and words[-1] in _RANGE and first in _ANNULAR and last in _ANNULAR
    if ranged and _ANNULAR.index(first) < _ANNULAR.index(last):
        return list(_ANNULAR[_ANNULAR.index(first) + 1 : _ANNULAR.index(last) + 1])
    return [last]


def _is_place(scene: Scene, mention: Mention) -> bool:
    """Tell whether a pulley is only a landmark: 'under A2', 'on the distal edge of A2', 'the A2 entrance'."""
    after = scene.words(mention.j, min(mention.j + 2, scene.sentence.j))
    if any(w in ("entrance", "mouth", "level", "region", "area", "entry", "exit") for w in after):
        return True
    first, k = scene.sentence.i, mention.i - 1
    words = scene.page.words
    while k >= first and words[k] in _PLACE_FILLERS:
        k -= 1
    if k < first or any(m.i <= k < m.j for m in scene.of("opened")):
        return False
    if words[k] == "to":
        return words[max(first, k - 1)] in ("up", "next", "close", "distal", "proximal", "back", "down", "as", "adjacent")
    return words[k] in _PLACE_WORDS or words[k] in ("entrance", "level", "caught", "catching", "snagging", "entered")


def _goes_on(scene: Scene, mention: Mention) -> bool:
    """Tell whether a clause about a landmark follows: 'at A1, which I released', 'near A2, the distal half of which ...'."""
    after = [w for w in scene.words(mention.j, min(mention.j + 7, scene.sentence.j)) if w not in (",", "(")]
    k = after.index("which") if "which" in after else -1
    return k == 0 or (k > 0 and all(w in _PARTS or w in _PART_NOUNS or w in ("the", "a", "of") for w in after[:k]))


# --- which words speak of them


def _pulley_words(scene: Scene) -> list[Mention]:
    """Return the words of a sentence that may say what was found of or done to a pulley, none overlapping."""
    if _IMAGING & set(scene.words(scene.sentence.i, scene.sentence.j)):
        return []
    own = sorted((m for m in scene.of("opened") if not _bare(scene, m)), key=lambda m: (m.i - m.j, m.i))
    lent = [m for m in scene.mentions if (m.kind, m.value) in _READ_AS and not _bare(scene, m)]
    taken: set[int] = set()
    kept: list[Mention] = []
    for m in [*own, *sorted(lent, key=lambda m: (m.i - m.j, m.i))]:
        if scene.told(m.i) and not any(k in taken for k in range(m.i, m.j)):
            taken.update(range(m.i, m.j))
            kept.append(_behind_name(scene, m))
    kept.sort(key=lambda m: m.i)
    return [m for n, m in enumerate(kept) if not _one_of_several(scene, kept, n) and _answered(scene, m)]


def _behind_name(scene: Scene, m: Mention) -> Mention:
    """Cut off a word's part that belongs to the name: 'A4 pulley plasty'."""
    name = next((p for p in scene.of("pulley") if p.i < m.i < p.j < m.j), None)
    return Mention(m.kind, m.value, name.j, m.j) if name else m


def _one_of_several(scene: Scene, words: list[Mention], n: int) -> bool:
    """Tell whether a word is one of the choices of an unfilled form: 'intact / vented / excised'."""
    beside = [*words[max(n - 1, 0) : n], *words[n + 1 : n + 2]]
    for other in beside:
        first, second = sorted((other, words[n]), key=lambda m: m.i)
        between = scene.words(first.j, second.i)
        if len(between) == 1 and between[0] in _EITHER and other.value != words[n].value:
            return True
    return False


def _answered(scene: Scene, m: Mention) -> bool:
    """Tell whether a word that is itself a question was answered with yes: 'A2 intact? Yes'."""
    words = scene.page.words
    return words[m.j : m.j + 1] != ["?"] or words[m.j + 1 : m.j + 2] in (["yes"], ["y"])


def _bare(scene: Scene, m: Mention) -> bool:
    """Tell whether a word says too little alone: an adverb of extent, or 'the repair' as a thing."""
    word = " ".join(scene.words(m.i, m.j))
    if word == "repair" and scene.next_word(m.j) != "of":
        before = scene.words(max(scene.sentence.i, m.i - 3), m.i)
        named = any(m.i - 3 <= p.i < m.i for p in scene.of("pulley"))
        if {"the", "this", "a", "my", "second", "first"} & set(before) and not named:
            return True
    return word in _BARE or any(g.generic and g.i <= m.i < g.j for g in scene.setting.groups)


def _as_pulley_word(m: Mention) -> Mention:
    return m if m.kind == "opened" else Mention("opened", _READ_AS[(m.kind, m.value)], m.i, m.j)


def _attach(scene: Scene, groups: list[_Group], places: list[_Group], words: list[Mention]) -> None:
    """Give every word to the pulleys it speaks of."""
    things = [Thing(g.i, g.j, n) for n, g in enumerate(groups)]
    beside = [Thing(p.i, p.j) for p in places]
    attachment = Attachment(scene, things, [*others(scene, _OTHERS), *beside], words, _PART_NOUNS)
    for word in words:
        back = attachment.touches_back(word)
        if back is not None and back.n >= 0 and len(groups[back.n].mentions) > 1:
            _split(scene, groups, back.n, word, words)
    things = [Thing(g.i, g.j, n) for n, g in enumerate(groups)]
    attachment = Attachment(scene, things, [*others(scene, _OTHERS), *beside], words, _PART_NOUNS)
    for word in words:
        strong = word.value != "intact" or " ".join(scene.words(word.i, word.j)) not in WEAK
        owners = attachment.owners(word, loosely=strong)
        if word.value in ("vented", "released") and attachment.with_others(word):
            word = Mention("opened", "injured", word.i, word.j)
        for n in owners:
            groups[n].actions.append(word)
        if owners:
            continue
        _relative(scene, groups, places, word)


def _split(scene: Scene, groups: list[_Group], n: int, word: Mention, words: list[Mention]) -> None:
    """'I released A1 and A2 was preserved': the last pulley of a group is the subject of what follows."""
    group = groups[n]
    ahead = [w for w in words if w.j <= group.i and group.i - w.j <= 3 and w.value != word.value]
    leads = any(scene.word_before(w.i) not in ("was", "were", "is", "are") for w in ahead)
    if ahead and leads and scene.next_word(group.j) not in ("were", "are", "both") and len(group.values) == len(group.mentions):
        last = _Group(group.mentions[-1:], group.values[-1:])
        group.mentions, group.values = group.mentions[:-1], group.values[:-1]
        groups.insert(n + 1, last)


def _relative(scene: Scene, groups: list[_Group], places: list[_Group], word: Mention) -> None:
    """'Caught under A4, so I vented it', 'until its edge was snipped': a landmark is spoken of after all."""
    before = [p for p in places if p.j <= word.i]
    if not before or any(before[-1].i < g.i < word.i for g in groups):
        return
    place = before[-1]
    between = [w for w in scene.words(place.j, word.i) if w not in (",", "(")]
    around = [*between[-3:], *scene.words(word.j, min(word.j + 2, scene.sentence.j))]
    owned = bool({"its", "their"} & set(between[-6:])) and bool(_PART_NOUNS & set(between[-5:]))
    pronoun = word.value not in _SHARED and bool({"it", "this", "them"} & set(around))
    if owned or pronoun:
        groups.append(_Group(place.mentions, place.values, [word]))
        places.remove(place)


def _same_again(scene: Scene, groups: list[_Group]) -> None:
    """'A2 vented, A4 likewise', 'A2 was kept, as was A4': a pulley with no word of its own takes those of the one before."""
    for before, group in zip(groups, groups[1:], strict=False):
        after = scene.words(group.j, min(group.j + 3, scene.sentence.j))
        ahead = scene.words(max(before.j, group.i - 4), group.i)
        alike = any(w in _ALSO for w in after) or ahead[-2:] in _TOGETHER
        wholly = [m for m in scene.of("fully") if 0 <= m.i - group.j <= 6 and "," not in scene.words(group.j, m.i)]
        opened = [m for m in before.actions if m.value in ("vented", "released")]
        if group.actions or not before.actions:
            continue
        if alike:
            group.actions = list(before.actions)
        elif wholly and opened:
            group.actions = [Mention("opened", "released", wholly[0].i, wholly[0].j)]


# --- what they say


def _strongest(scene: Scene, words: list[Mention]) -> Mention | None:
    """Return the word that decides: the last deed; what was found only where nothing was done."""
    stated = [(m, value) for m in words if (value := _state(scene, m)) is not None]
    if not stated:
        return None
    deeds = _in_time(scene, [(m, value) for m, value in stated if value in _DEEDS])
    full = [m for m, value in deeds if value == "released"]
    if full and all(value in ("released", "vented") for _, value in deeds):
        return full[-1]
    rebuilt = [m for m, value in deeds if value == "reconstructed"]
    if rebuilt and deeds[-1][1] == "repaired":
        return rebuilt[-1]
    if len(deeds) > 1 and deeds[-1][1] == "widened" and deeds[-2][1] == "repaired" and deeds[-1][0].i - deeds[-2][0].j < 3:
        return deeds[-2][0]
    if deeds:
        return deeds[-1][0]
    hurt = [m for m, value in stated if value == "injured"]
    return hurt[0] if hurt else stated[0][0]


def _in_time(scene: Scene, deeds: list[tuple[Mention, str]]) -> list[tuple[Mention, str]]:
    """Leave out the deeds told after an 'after': 'A2 was reconstructed after the torn one had been excised'."""
    first = deeds[0][0].j if deeds else 0
    at = next((k for k in range(first, scene.sentence.j) if scene.page.words[k] in ("after", "once", "following")), None)
    return [d for d in deeds if at is None or d[0].i < at] if deeds else []


def _state(scene: Scene, m: Mention) -> str | None:
    """Return what a word says of a pulley; a negated opening is an intact pulley, other negations say nothing sure."""
    words = scene.words(m.i, m.j)
    word = " ".join(words)
    if _uncertain(scene, m):
        return None
    if m.value == "intact":
        return _kept(scene, m, word)
    if word == "closed" and {"kept", "left", "stayed"} & set(scene.words(max(scene.sentence.i, m.i - 5), m.i)):
        return "intact"
    if _negated(scene, m, 4):
        further = {"further", "more", "again"} & set(scene.words(m.j, min(m.j + 4, scene.sentence.j)))
        return "intact" if m.value in _OPENINGS and not further else None
    if m.value in ("vented", "released") and _by_accident(scene, m):
        return "injured"
    if m.value == "vented" and _DIVIDING & set(words):
        return _cut_or_opened(scene, m, word)
    return m.value


def _negated(scene: Scene, m: Mention, reach: int) -> bool:
    word = " ".join(scene.words(m.i, m.j))
    return not word.startswith(("not", "never", "no ", "un", "was not", "were not")) and is_denied(scene, m, reach)


def _uncertain(scene: Scene, m: Mention) -> bool:
    """Tell whether a deed was only possible: 'may have to vent A2', 'would have been excised'."""
    before = scene.words(max(scene.sentence.i, m.i - 4), m.i)
    if m.value == "intact" or m.value == "injured":
        return False
    if scene.page.words[m.i] in ("open",) and scene.word_before(m.i) not in ("to", "i", "we"):
        return True
    return bool(_UNSURE & set(before)) or before[-2:-1] == ["could"] and before[-1:] == ["have"]


def _kept(scene: Scene, m: Mention, word: str) -> str | None:
    """Return 'intact' for words that say so without doubt; 'left' needs a word like 'alone' or the end of the clause."""
    before = scene.words(max(scene.sentence.i, m.i - 9), m.i)
    if _negated(scene, m, 3) or _DOUBTFUL & set(before[-3:]):
        return None
    if word == "alone":
        return "intact" if {"left", "leave", "leaving"} & set(before) else None
    if word in ("left", "was left"):
        closing = ("", ".", ",", ";", "alone", "intact", "in", "and", "as", "closed")
        return "intact" if scene.next_word(m.j) in closing and not _hurt_before(scene, m) else None
    return "intact"


def _hurt_before(scene: Scene, m: Mention) -> bool:
    """Tell whether the pulley that was 'left' had been found hurt or been opened just before."""
    hurt = [h for h in scene.of("opened") if h.value in ("injured", "vented") and h.j <= m.i]
    return bool(hurt) and not any(hurt[-1].j <= p.i < m.i for p in scene.of("pulley"))


def _by_accident(scene: Scene, m: Mention) -> bool:
    """Tell whether the wound did it: 'split by the glass', 'already divided', 'the blade had slit A2'."""
    after = scene.words(m.j, min(m.j + 5, scene.sentence.j))
    if "by" in after:
        k = after.index("by")
        noun = after[k + 1 : k + 4]
        if noun[:1] and noun[0] in ("the", "his", "her", "this") and not set(noun) & _AGENTS_OF_CARE:
            return True
    before = scene.words(max(scene.sentence.i, m.i - 4), m.i)
    if {"already", "found"} & set(before):
        return True
    wounding = [a for a in scene.of("agent") if a.j <= m.i and m.i - a.j <= 3]
    return bool(wounding) and bool({"had", "has"} & set(before) or wounding[-1].j == m.i)


def _cut_or_opened(scene: Scene, m: Mention, word: str) -> str:
    """'cut' with no one who cut is an injury; 'divided' and 'released' alone mean the whole length."""
    before = scene.words(max(scene.sentence.i, m.i - 3), m.i)
    if word == "cut" and not {"i", "we", "to"} & set(before) and scene.sentence.section != "procedure":
        return "injured"
    return _whole_or_part(scene, m)


def _whole_or_part(scene: Scene, m: Mention) -> str:
    """Return 'released' for a whole division, 'vented' where a share, a length or a part is named."""
    first, last = scene.part(m.i)
    last = min([last, m.j + 8, *(k for k in range(m.j, last) if scene.page.words[k] in ("to", "so"))])
    words = scene.words(max(first, m.i - 10), last)
    if any(w in _PARTS for w in words) or {"partially", "partly", "half", "mm", "edge", "part"} & set(words):
        return "vented"
    if any(q.unit in ("%", "mm") and first <= q.i < last for q in scene.quantities):
        return "vented"
    return "released"


# --- how much


def _told_by_digit(scene: Scene, group: _Group) -> dict[tuple[str, ...], list[Mention]]:
    """Return the words for a group of pulleys by digit: 'A4 was vented in the ring finger and excised in the index'."""
    fingers = [g for g in scene.setting.groups if g.digits and not g.tendons and g.j > group.i]
    found: dict[tuple[str, ...], list[Mention]] = {}
    for m in group.actions:
        after = [g for g in fingers if 0 <= g.i - m.j <= 3]
        before = [g for g in fingers if 0 <= m.i - g.j <= 5]
        if after or before:
            found.setdefault((after[:1] or before[-1:])[0].digits, []).append(m)
    told = sum(len(actions) for actions in found.values())
    return found if len(found) > 1 and told == len(group.actions) else {(): group.actions}


def _lay(desk: Desk, scene: Scene, group: _Group, action: Mention, fingers: tuple[str, ...] = ()) -> None:
    """Lay down what became of a group of pulleys."""
    value = _state(scene, action)
    tunnel = scene.words(group.mentions[0].i, group.j) == ["carpal", "tunnel"]
    if value is None or (tunnel and value not in ("vented", "released")):
        return
    low, high = _reach(scene, group, action, bool(fingers))
    if value == "intact" and _only_part(scene, group, action, low):
        return
    if tunnel or value == "vented" and _in_full(scene, low, high):
        value = "released"
    share = _share(scene, low, high) if value in (*_OPENINGS, "injured", "repaired") else {}
    if value == "vented" and share.get("extent_percent") == 100:
        value, share = "released", {}
    if value == "released" and "extent_percent" in share:
        value = "vented"
    if value == "excised" and share and not _in_full(scene, low, high):
        value = "trimmed"
    if value in ("vented", "trimmed") and "part" not in share and "there" in scene.words(low, high):
        share |= _part_before(desk, scene, group)
    i, j = min(group.i, action.i), max(group.j, action.j)
    span = (i, j) if j - i <= 24 else (action.i, action.j)
    for name in group.values:
        for digit in fingers or _digits(desk, scene, group.mentions[0], name):
            _put(desk, scene, digit, name, value, share if value in ("vented", "trimmed") else {}, span)


def _put(
    desk: Desk, scene: Scene, digit: str | None, pulley: str, value: str, share: dict[str, Value], span: tuple[int, int]
) -> None:
    digit = "thumb" if pulley in _THUMB_ONLY else None if pulley == "flexor retinaculum" else digit
    entry = (digit, pulley, None)
    known = [f for f in desk.findings if f.group == "pulleys" and f.entry == entry]
    if value == "intact" and any(f.header and f.field == "finding" and f.value in _DEEDS for f in known):
        return  # the title promises less than the text: the weaker stands
    desk.add(scene, "pulleys", entry, "finding", value, [span], f"pulley {value}")
    rule = f"how much of the pulley was {value}"
    for name, figure in share.items():
        desk.add(scene, "pulleys", entry, name, figure, [span], rule)
    for f in known:
        if f.field != "finding" and f.field not in share and f.rule == rule and not scene.header:
            desk.add(scene, "pulleys", entry, f.field, f.value, [span, *f.spans], rule)


def _reach(scene: Scene, group: _Group, action: Mention, apart: bool = False) -> tuple[int, int]:
    """Return the words around pulleys and action in which a share of them may be told."""
    words = scene.page.words
    i, j = min(group.i, action.i), max(group.j, action.j)
    earlier = [m.j for m in scene.of("opened") if group.j <= m.i and m.j <= action.i]
    if earlier and apart:
        joints = [k for k in range(earlier[-1], action.i) if words[k] in ("and", ",", ";", "but", "while")]
        return max([earlier[-1], *joints]), _reach_end(scene, group, j)
    if earlier and _share(scene, earlier[-1], action.j):
        return earlier[-1], _reach_end(scene, group, j)
    if any(group.j <= p.i and p.j <= action.i for p in scene.of("pulley") if p not in group.mentions):
        return action.i, _reach_end(scene, group, j)
    low = i
    while low > scene.sentence.i and i - low < 8 and _measures(scene, low - 1):
        low -= 1
    return low, _reach_end(scene, group, j)


def _reach_end(scene: Scene, group: _Group, j: int) -> int:
    words = scene.page.words
    high = min(scene.sentence.j, j + 9)
    stops = [k for k in range(j, high) if words[k] in (".", ";", "but", "to") and words[k - 1] not in _NO_STOP]
    later = [m.i for m in scene.of("pulley") if m.i >= j and m not in group.mentions]
    return min([high, *stops, *later])


def _measures(scene: Scene, k: int) -> bool:
    """Tell whether a word before a pulley tells how much of it or which part."""
    word = scene.page.words[k]
    if word in _PARTS or word in _PART_NOUNS or word in _PART_LEADS or word[:1].isdigit():
        return True
    return word in _MEASURES or word in NUMBER_WORDS or word in UNITS


def _only_part(scene: Scene, group: _Group, action: Mention, low: int) -> bool:
    """Tell whether 'intact' is said of a part only: 'half of A2 was preserved', 'preserved except for 5 mm'."""
    share = _share(scene, low, max(group.j, action.j))
    between = scene.words(low, min(group.i, action.i))
    return bool(share) or scene.next_word(action.j) in _EXCEPT or "only" in between


def _in_full(scene: Scene, low: int, high: int) -> bool:
    """Tell whether the words reach over the whole length: 'over its full length', 'from end to end'."""
    return any(low - 3 <= m.i and m.i < high for m in scene.of("fully"))


def _share(scene: Scene, low: int, high: int) -> dict[str, Value]:
    """Return how much of the pulley was opened or cut away, and which part."""
    found: dict[str, Value] = {}
    for q in scene.quantities:
        if not low <= q.i < high or q.high is None:
            continue
        if q.unit == "%":
            found.setdefault("extent_percent", q.high)
        elif q.unit == "mm" and q.high <= 30 and not {"wide", "strip", "ribbon"} & set(scene.words(q.j, q.j + 2)):
            found.setdefault("extent_mm", q.high)
    hurt = {k for m in scene.of("opened") if m.value == "injured" for k in range(m.i, m.j)}
    for m in scene.of("fraction"):
        if low <= m.i < high and m.i not in hurt:
            found.setdefault("extent_percent", float(m.value))
    part = _part(scene, low, high)
    if part:
        found["part"] = part
    if "extent_percent" not in found and _third(scene, low, high):
        found["extent_percent"] = 33.0
    return found


def _part(scene: Scene, low: int, high: int) -> str:
    """Return which part is named: 'its distal half', 'the proximal 4 mm of A4', 'opened distally'."""
    words = scene.page.words
    for k in range(low, high):
        word = words[k]
        if word not in _PARTS:
            continue
        after = next((w for w in words[k + 1 : min(k + 4, high)] if w != "."), "")
        closing = after in ("", ",", ";", ")") and k > low and words[k - 1] in ("mm", "%", ",", "half")
        if closing or word == "midportion" or word.endswith("ally") or after in _PART_NOUNS or after in _PART_LEADS or after[:1].isdigit():
            return _PARTS[word]
        if any(m.kind == "pulley" and m.i == k + 1 for m in scene.mentions) or any(m.i == k + 1 for m in scene.of("fraction")):
            return _PARTS[word]
    return ""


def _third(scene: Scene, low: int, high: int) -> bool:
    words = scene.words(low, high)
    return "third" in words and any(w in _PARTS for w in words[: words.index("third")])


def _part_before(desk: Desk, scene: Scene, group: _Group) -> dict[str, Value]:
    """'It caught on the distal edge of A2. I vented A2 there': the part told just before."""
    last = _scene_before(desk, scene)
    for at in (scene, last):
        if at is None:
            continue
        for m in at.of("pulley"):
            if m.value in group.values and m not in group.mentions and m.i < group.i:
                part = _part(at, max(at.sentence.i, m.i - 4), m.j)
                if part:
                    return {"part": part}
    return {}


def _scene_before(desk: Desk, scene: Scene) -> Scene | None:
    n = bisect_right(desk.scenes, scene.sentence.i, key=lambda s: s.sentence.i) - 2
    return desk.scenes[n] if n >= 0 else None


# --- of which digit


def _digits(desk: Desk, scene: Scene, mention: Mention, pulley: str) -> tuple[str | None, ...]:
    """Return the digits a pulley is of; A3 and the like are never of a thumb."""
    found = _digits_told(desk, scene, mention)
    if pulley in _FINGER_ONLY and "thumb" in found:
        rest = tuple(d for d in found if d != "thumb") or tuple(d for d in scene.every_digit if d != "thumb")
        return rest if len(rest) == 1 or len(found) > 1 else (None,)
    return found or (None,)


def _digits_told(desk: Desk, scene: Scene, mention: Mention) -> tuple[str | None, ...]:
    groups = scene.setting.groups
    every = next((g for g in groups if g.every and not (g.tendons or g.digits or g.generic)), None)
    if every is not None:
        return _every(desk, scene, every.i)
    beside = [g for g in groups if g.digits and 0 <= g.i - mention.j <= 3]
    if beside:
        return beside[0].digits
    told = digits_at(scene, None, mention.i)
    if any(g.digits for g in groups):
        return told
    return _known_digits(desk, scene, mention) or told


def _every(desk: Desk, scene: Scene, at: int) -> tuple[str | None, ...]:
    """'in all three fingers': the digits of the lists, or, where their number differs, those with a tendon cut."""
    words = scene.words(max(scene.sentence.i, at - 4), at)
    counts = {"both": 2, "two": 2, "three": 3, "four": 4}
    wanted = next((counts[w] for w in words if w in counts), 0)
    if not wanted or len(scene.every_digit) == wanted:
        return scene.every_digit or (None,)
    cut = tuple(dict.fromkeys(t.digit for t in desk.cut() if t.digit and t.digit != "thumb"))
    return cut if len(cut) == wanted else scene.every_digit or (None,)


def _known_digits(desk: Desk, scene: Scene, mention: Mention) -> tuple[str | None, ...]:
    """Return the one digit for which this pulley was already told hurt, or told at all where an addendum comes back to it."""
    known = [f for f in desk.findings if f.group == "pulleys" and f.entry[1] == mention.value]
    astray = scene.sentence.section == "addendum"
    digits = tuple(dict.fromkeys(f.entry[0] for f in known if f.value == "injured" or astray))
    return digits if len(digits) == 1 else ()


# --- without a name


def _all_annular(desk: Desk, scene: Scene) -> None:
    """'all five annular pulleys were left alone'."""
    for mention in scene.of("pulleys"):
        phrase = scene.words(mention.i, mention.j)
        if mention.value != "annular" or not {"all", "five"} & set(phrase) or not scene.told(mention.i):
            continue
        after = [m for m in scene.of("opened") if m.i >= mention.j and scene.told(m.i)]
        if after and _state(scene, after[0]) == "intact":
            for digit in _digits(desk, scene, mention, ""):
                for pulley in _ANNULAR:
                    _put(desk, scene, digit, pulley, "intact", {}, (mention.i, after[0].j))


def _pronoun(desk: Desk, scene: Scene, words: list[Mention]) -> None:
    """'Released it over its full length', 'Both were kept' right after a sentence about pulleys."""
    if not desk.last_pulleys or scene.sentence.i != desk.last_pulley_end or not words:
        return
    before = _scene_before(desk, scene)
    first = words[0].i - scene.sentence.i
    opening = scene.words(scene.sentence.i, min(scene.sentence.i + 5, scene.sentence.j))
    several = bool({"they", "both", "these", "neither", "them"} & set(opening))
    a_part = words[0].value in ("vented", "released") and bool(set(_PARTS) & set(opening[:3]))
    if several != (len(desk.last_pulleys) > 1) or not (a_part or (first <= 5 and _PRONOUNS & set(opening))):
        return
    group = _Group([words[0]], [value for value, _ in desk.last_pulleys], words)
    action = _strongest(scene, words)
    clear = not scene.subjects and before is not None and not any(s.kind == "tendon" for s in before.subjects)
    if action is None or (scene.setting.groups and not several) or (_state(scene, action) in _SHARED and not clear):
        return
    _lay_again(desk, scene, group, action)


def _lay_again(desk: Desk, scene: Scene, group: _Group, action: Mention) -> None:
    """Lay down a state of the pulleys of the sentence before."""
    value = _state(scene, action)
    low, high = scene.sentence.i, _reach_end(scene, group, action.j)
    if value is None:
        return
    if value == "vented" and _in_full(scene, low, high):
        value = "released"
    share = _share(scene, low, high) if value in ("vented", "trimmed") else {}
    for name, digits in desk.last_pulleys:
        for digit in digits:
            _put(desk, scene, digit, name, value, share, (action.i, action.j))
