"""Which pulleys a sentence names: one by one, in lists and ranges, as 'both pulleys', or only as landmarks."""

from dataclasses import dataclass, field

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.page import Break, Mention, within
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

ANNULAR = ("A1", "A2", "A3", "A4", "A5")
PARTS = {
    **dict.fromkeys(("distal", "distally", "dist", "far", "leading"), "distal"),
    **dict.fromkeys(("proximal", "proximally", "prox", "near"), "proximal"),
    **dict.fromkeys(("middle", "central", "midportion", "mid", "centre", "center"), "middle"),
}
PART_NOUNS = word_list("pulleys", "part_nouns")
_GLUE = word_list("pulleys", "glue")
_AFTER_NAME = word_list("pulleys", "after_name") | {"", "="}
_PLACES = word_list("pulleys", "places")
_PLACE_FILLERS = word_list("pulleys", "place_fillers")
_PLACE_NOUNS = frozenset(["entrance", "mouth", "level", "region", "area", "entry", "exit"])
_HELD = frozenset(["entrance", "level", "caught", "catching", "snagging", "entered"])
_TO_PLACES = frozenset(["up", "next", "close", "distal", "proximal", "back", "down", "as", "adjacent"])
_RANGE = frozenset(["to", "through", "-"])
_SEVERAL = frozenset(["both", "these", "two", "neither", "those"])
_NUMBERS = frozenset("12345")
_ORDINALS = {"first": "A1", "second": "A2", "third": "A3", "fourth": "A4", "fifth": "A5"}


@dataclass(slots=True)
class PulleyGroup:
    """Pulleys named together, with the words that speak of them."""

    mentions: list[Mention]
    values: list[str]
    actions: list[Mention] = field(default_factory=list)

    @property
    def i(self) -> int:
        """The first word of the group."""
        return self.mentions[0].i

    @property
    def j(self) -> int:
        """The word after the group."""
        return self.mentions[-1].j


def named(desk: Desk, scene: Scene) -> tuple[list[PulleyGroup], list[PulleyGroup]]:
    """Return the pulleys of a sentence, those named together as one group, and those that are only landmarks."""
    groups: list[PulleyGroup] = []
    places: list[PulleyGroup] = []
    for mention in _mentions(scene):
        latest = max([*groups[-1:], *places[-1:]], key=lambda g: g.i, default=None)
        if latest is not None and _glued(scene, latest, mention):
            latest.values += _with_range(scene, latest, mention)
            latest.mentions.append(mention)
        elif _is_place(scene, mention) and not _goes_on(scene, mention):
            places.append(PulleyGroup([mention], [mention.value]))
        else:
            groups.append(PulleyGroup([mention], [mention.value]))
    meant = _meant(desk, scene, groups, places) + _former(scene, groups)
    return sorted([*groups, *meant], key=lambda g: g.i), places


def _mentions(scene: Scene) -> list[Mention]:
    """Return what names a pulley here; 'oblique' and 'variable' only beside other pulleys or in a thumb."""
    found = [
        m for m in scene.of("pulley", "pulley?") if scene.told(m.i) or _taken_up(scene, m) or _opened_again(scene, m)
    ]
    found = [m for m in found if not (_left_out(scene, m) or _piece_of_retinaculum(scene, m))]
    thumb = "thumb" in scene.setting.digits or any(t.tendon == "FPL" for t in scene.setting.focus)
    thumb = thumb or any("thumb" in g.digits for g in scene.setting.groups)
    kept = [
        m
        for m in found
        if m.kind == "pulley"
        or len(found) > 1
        or (thumb and (scene.next_word(m.j) in _AFTER_NAME or _opens_with_state(scene, m)))
    ]
    return [m for n, m in enumerate(kept) if n == 0 or m.i > kept[n - 1].i or m.j > kept[n - 1].j]


def _piece_of_retinaculum(scene: Scene, m: Mention) -> bool:
    """'Two loops of retinaculum round it', 'a strip of the extensor retinaculum': what another pulley is made of."""
    lead = [w for w in scene.words(m.i - 4, m.i) if w not in ("the", "extensor", "dorsal", "wrist", "a")]
    return m.value == "flexor retinaculum" and lead[-1:] == ["of"] and lead[-2:-1] != [] and lead[-2] in _PIECES


_PIECES = word_list("pulleys", "pieces")


def _taken_up(scene: Scene, m: Mention) -> bool:
    """'I thought of excising A4 but vented half of it': what was only thought of, and what was done to it instead."""
    words, end = scene.page.words, scene.sentence.j
    if scene.page.standing[m.i] != "considered" or any(p.i > m.i for p in scene.of("pulley")):
        return False
    done = next((o.j for o in scene.of("opened") if o.i > m.j and scene.told(o.i)), end)
    return any(words[k] in ("it", "its") and scene.told(k) for k in range(done, min(done + _SOON_TAKEN_UP, end)))


_SOON_TAKEN_UP = 5  # words


def _opened_again(scene: Scene, m: Mention) -> bool:
    """'A4 has been vented at the first operation; it is now divided in its full length': what is done to it now."""
    if scene.page.standing[m.i] != "history" or any(p.i > m.i for p in scene.of("pulley")):
        return False
    words, end = scene.page.words, scene.sentence.j
    again = next((k for k in range(m.j, end) if words[k] == "it" and scene.told(k) and not scene.told(k - 2)), None)
    return again is not None and not _NOW.isdisjoint(scene.words(again - 1, min(again + _SOON_TAKEN_UP, end)))


_NOW = frozenset(["now", "today"])


def _opens_with_state(scene: Scene, m: Mention) -> bool:
    """'Oblique [x] intact', 'Oblique looked at: all there': the sentence is about it and tells of its state."""
    if m.i != scene.sentence.i or scene.next_word(m.j) in _NO_PULLEY:
        return False
    return any(other.i >= m.j for other in scene.of("opened"))


_NO_PULLEY = frozenset(
    [
        "incision",
        "fracture",
        "wound",
        "cut",
        "laceration",
        "line",
        "scar",
        "osteotomy",
        "view",
        "tear",
        "damage",
        "loss",
        "absent",
    ]
)


def _left_out(scene: Scene, m: Mention) -> bool:
    """Tell whether a pulley is taken out of what is said: 'all but A4', 'A2 and not A4', 'except A3'."""
    before = scene.words(max(scene.sentence.i, m.i - 5), m.i)
    while before[-1:] in (["the"], ["for"], ["from"], ["of"]):
        before = before[:-1]
    if _goes_on(scene, m):
        return False
    if before[-1:] == ["but"]:
        return bool({"all", "every", "each"} & set(before))
    if before[-2:] == ["other", "than"] or before[-1:] == ["besides"]:
        said = scene.of("opened")  # 'I did not vent any pulley other than A4', but 'no pulley besides A4 was opened'
        return any(o.j <= m.i for o in said) and not any(o.i >= m.j for o in said)
    return bool(before) and before[-1] in ("except", "excepting", "save", "bar", "not", "apart", "exception")


def excepted_pulleys(scene: Scene) -> set[tuple[str | None, str]]:
    """'A2 and A4 were intact in all fingers except for the A2 of the index': the digits and pulleys left out."""
    left_out = [m for m in scene.of("pulley") if _left_out(scene, m)]
    behind = [(m, g) for m in left_out for g in scene.setting.groups if g.digits and 0 < g.i - m.j <= 3]
    before = [(m, g) for m in left_out for g in scene.setting.groups if g.digits and g.j == m.i]
    return {(digit, m.value) for m, g in [*behind, *before] for digit in g.digits}


def _glued(scene: Scene, group: PulleyGroup, mention: Mention) -> bool:
    """Tell whether a pulley belongs to a group before it; columns of space part titles from one another."""
    between = scene.words(group.j, mention.i)
    if mention.value in group.values and ("and" in between or between in ([","], ["the"], [",", "the"])):
        return False  # 'it caught on A4, and A4 was vented', 'as it caught under A1, A1 was released'
    if not between and scene.page.breaks[mention.i] == Break.COLUMN:
        return False
    if between == [",", "the"] and scene.next_word(mention.j) in ("being", "is", "was"):
        return False  # 'between A2 and A4, the A3 being lacerated'
    if between[:2] == [",", "through"]:
        return False  # 'the sheath was opened between A2 and A4, through A3'
    if between[:1] in (["reconstructed"], ["rebuilt"]):
        return False  # 'A2 reconstructed, A4 intact', but 'the rebuilt A2 and rebuilt A4'
    if between == ["as"]:
        return False  # 'not to vent A2 as A4 already open'
    return len(between) <= 4 and all(w in _GLUE for w in between) and ("+" not in between or "," not in between)


def _with_range(scene: Scene, group: PulleyGroup, mention: Mention) -> list[str]:
    """Return the pulley to add to a group, with those a range passes over: 'A1 through A4'."""
    words = scene.words(group.j, mention.i)
    first, last = group.values[-1], mention.value
    ranged = bool(words) and words[-1] in _RANGE and first in ANNULAR and last in ANNULAR
    if ranged and ANNULAR.index(first) < ANNULAR.index(last):
        return list(ANNULAR[ANNULAR.index(first) + 1 : ANNULAR.index(last) + 1])
    return [last]


def made_from(scene: Scene, group: Group) -> bool:
    """'A2 was rebuilt with a slip of FDS in the ring': the tendon is only what a pulley was made from."""
    lead = scene.words(max(scene.sentence.i, group.i - 3), group.j)
    stuff = not {"of", "with", "from", "using"}.isdisjoint(lead)
    return (
        bool(group.tendons) and stuff and any(m.value == "reconstructed" for m in scene.of("opened") if m.j <= group.i)
    )


def of_its_stuff(scene: Scene, word: Mention) -> bool:
    """'A2 was rebuilt with a strip of the superficialis I had just removed': the tendon was, and not the pulley."""
    if word.value not in ("excised", "trimmed"):
        return False
    made = [g for g in scene.setting.groups if g.j <= word.i and made_from(scene, g)]
    return bool(made) and _WHICH_WAS.issuperset(scene.words(made[-1].j, word.i))


_WHICH_WAS = frozenset(["which", "that", "i", "we", "had", "have", "has", "was", "were", "been", "just", "already"])


def is_tendon_end(words: list[str]) -> bool:
    """Tell whether words go on to an end of the tendon: 'A1 was released and the proximal end retrieved'.

    'A1 was split, and its tip, which was frayed, was cut back 2 mm.'
    """
    if words[:1] not in (["and"], [","]) or words[1:2] not in (["the"], ["its"]):
        return False
    if words[2:3] != [] and words[2] in _STUMPS and words[3:4] != [] and words[3] in _OF_A_STUMP:
        return True
    return words[:2] == ["and", "the"] and words[2:3] != [] and words[2] in PARTS and words[3:4] in (["end"], ["stump"])


_STUMPS = frozenset(["end", "ends", "tip", "tips", "stump", "stumps"])
_OF_A_STUMP = frozenset(["was", "were", ",", "which"])


# --- landmarks


def _is_place(scene: Scene, mention: Mention) -> bool:
    """Tell whether a pulley is only a landmark: 'under A2', 'on the distal edge of A2', 'the A2 entrance'."""
    if _PLACE_NOUNS & set(scene.words(mention.j, min(mention.j + 2, scene.sentence.j))):
        return True
    first, k = scene.sentence.i, mention.i - 1
    words = scene.page.words
    while k >= first and words[k] in _PLACE_FILLERS and scene.page.breaks[k + 1] != Break.COLUMN:
        k -= 1
    if scene.page.breaks[k + 1] == Break.COLUMN:
        return False  # 'A4 incised 4 mm from distal edge   A5 removed'
    if k < first or any(m.i <= k < m.j for m in scene.of("opened")):
        return False
    ranged = words[k] == "from" and scene.next_word(mention.j) in _RANGE
    if ranged and (words[k - 1] in ("pulleys", "all") or "pulleys" in scene.words(first, k)):
        return False  # 'all pulleys from A1 through A4', 'its pulleys were intact from A1 to A4'
    if words[k] in ("through", "into") and "window" in scene.words(max(first, k - 7), k):
        return False  # 'a window was opened through C1'
    if words[k] == "to":
        return words[max(first, k - 1)] in _TO_PLACES
    if words[k] == "as" and words[k - 1] == "far":
        return True  # 'excised as far as the A2'
    return words[k] in _PLACES or words[k] in _HELD


def _goes_on(scene: Scene, mention: Mention) -> bool:
    """Tell whether a clause about a landmark follows: 'at A1, which I released', 'A2, the distal half of which ...'."""
    if _told_of_both(scene, mention):
        return True
    fingers = {k for g in scene.setting.groups if g.digits for k in range(g.i, g.j)}  # 'A2 of the index, which was'
    behind = range(mention.j, min(mention.j + 7, scene.sentence.j))
    after = [scene.page.words[k] for k in behind if k not in fingers and scene.page.words[k] not in (",", "(")]
    if "which" not in after:
        return False
    return all(w in PARTS or w in PART_NOUNS or w in ("the", "a", "of") for w in after[: after.index("which")])


def _told_of_both(scene: Scene, mention: Mention) -> bool:
    """'Under A2 and A4, both of which I kept', '(both intact)', 'drawn under A1 and A2 without opening either'."""
    pulleys = {k for m in scene.of("pulley", "pulleys") for k in range(m.i, m.j)}
    behind = range(mention.j, min(mention.j + _LONG_LIST, scene.sentence.j))
    after = [scene.page.words[k] for k in behind if k not in pulleys and scene.page.words[k] not in (",", "(")]
    while after[:1] and after[0] in ("and", "+", "&", "/"):
        after = after[1:]
    if after[1:3] == ["of", "which"]:
        return after[0] in ("both", "neither", "all", "none")
    states = after[:1] == ["both"] and after[1:2] != [] and after[1] in _KEPT
    return states or (
        after[:1] == ["without"] and after[2:3] in (["either"], ["them"], ["any"]) and after[1] in _CUTTING
    )


_LONG_LIST = 10  # words
_KEPT = frozenset(["intact", "undisturbed", "whole", "untouched", "preserved", "kept", "sound", "spared", "respected"])
_CUTTING = frozenset(["opening", "cutting", "dividing", "venting", "touching", "releasing", "incising"])


# --- without a name of their own


def _meant(desk: Desk, scene: Scene, groups: list[PulleyGroup], places: list[PulleyGroup]) -> list[PulleyGroup]:
    """Return 'both pulleys', 'the pulley', 'the latter' as the pulleys named just before."""
    found: list[PulleyGroup] = []
    fingers = {k for g in scene.setting.groups if g.digits and not g.tendons for k in range(g.i, g.j)}
    for m in (m for m in scene.of("pulleys") if m.i not in fingers):  # 'the A2 of the latter'
        before = [g for g in sorted([*groups, *places], key=lambda g: g.i) if g.j <= m.i]
        values = [v for g in before for v in g.values]
        if not values and scene.sentence.i == desk.last_pulley_end:
            values = [v for v, _ in desk.last_pulleys]
        if not values and scene.word_before(m.i) == "both":
            values = _two_before(desk, scene)
        numbered = _numbered(scene, m)
        if numbered:
            found.append(numbered)
        elif m.value == "all" and scene.word_before(m.i) in _SEVERAL and len(values) >= 2:
            found.append(PulleyGroup([m], list(dict.fromkeys(values))))
        elif (m.value == "one" and len(values) == 1) or (m.value == "latter" and before):
            found.append(PulleyGroup([m], values[-1:]))
    return found


def _two_before(desk: Desk, scene: Scene) -> list[str]:
    """'Sheath opened between A2 and A4. FDP intact. Both pulleys intact.': the only two its paragraph names before."""
    first, here = scene.sentence.i, scene
    while (before := desk.scene_before(here)) is not None and before.sentence.block == scene.sentence.block:
        first, here = before.sentence.i, before
    values = dict.fromkeys(m.value for m in within(scene.page.mentions, first, scene.sentence.i) if m.kind == "pulley")
    return list(values) if len(values) == _PAIR else []


_PAIR = 2


def _former(scene: Scene, groups: list[PulleyGroup]) -> list[PulleyGroup]:
    """'Of A2 and A4, the former was vented': the first of two pulleys named together before."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j - 1) if "former" in scene.said else ():
        before = [p for p in groups if p.j <= k]
        finger = any(g.digits and g.i <= k < g.j for g in scene.setting.groups)
        if words[k : k + 2] == ["the", "former"] and before and len(before[-1].values) == 2 and not finger:
            return [PulleyGroup([Mention("pulleys", "former", k, k + 2)], before[-1].values[:1])]
    return []


def _numbered(scene: Scene, m: Mention) -> PulleyGroup | None:
    """Return 'annular pulleys 2 and 4', 'the second and fourth annular pulleys' as pulleys."""
    if m.value != "annular":
        return None
    words = scene.page.words
    i, j = m.i, m.j
    while j < scene.sentence.j and (words[j] in _NUMBERS or words[j] in (",", "and", "&", "+")):
        j += 1
    while i > scene.sentence.i and (words[i - 1] in _ORDINALS or words[i - 1] in (",", "and")):
        i -= 1
    values = [f"A{w}" for w in words[m.j : j] if w in _NUMBERS]
    values = values or [_ORDINALS[w] for w in words[i : m.i] if w in _ORDINALS]
    return PulleyGroup([Mention("pulley", values[0], i, j)], values) if values else None


def denies_the_whole(scene: Scene, opened: Mention, whole: Mention) -> bool:
    """'A4 was not released over the whole of its length': a denied opening that was one in part."""
    denied = opened.value == "intact" and "not" in scene.words(opened.i, opened.j)
    return denied and 0 <= whole.i - opened.j <= _LEADS_TO_WHOLE


_LEADS_TO_WHOLE = 2  # words: 'not released over the whole'
