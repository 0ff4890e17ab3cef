"""Whose a word is that touches no pulley: a landmark spoken of after all, one found hurt, one with a part excepted."""

from itertools import pairwise

from notereader.reader.page import Mention
from notereader.reader.rules.pulleys.pulley_names import PART_NOUNS, PARTS, PulleyGroup
from notereader.reader.rules.pulleys.pulley_states import DEEDS
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

# What may be said of a tendon or a wound as well; a pronoun is believed for these only where nothing else was named.
SHARED = frozenset(["intact", "injured", "repaired", "excised", "trimmed"])
DILATED = frozenset(["dilated", "stretched"])


def owned_after_all(scene: Scene, groups: list[PulleyGroup], places: list[PulleyGroup], word: Mention) -> None:
    """Give a word that touches no pulley to the one it is said of, if any is."""
    if _mends_hurt(scene, groups, word) or _but_for_a_part(scene, groups, word) or _kept_wide(scene, groups, word):
        return
    if _opened_after_all(scene, groups, word):
        return
    _landmark_after_all(scene, groups, places, word)


def _opened_after_all(scene: Scene, groups: list[PulleyGroup], word: Mention) -> bool:
    """'A2 was intact, but the repair caught on it and it was vented 4 mm': 'it' is the pulley told of before."""
    before = next((g for g in reversed(groups) if g.j <= word.i), None)
    if (
        before is None
        or not before.actions
        or (word.value in SHARED and not _cut_out_as_it_caught(scene, before, word))
    ):
        return False
    lead = scene.words(max(before.j, word.i - 5), word.i)
    at = max((n for n, w in enumerate(lead) if w in ("it", "they")), default=-1)
    verb = lead[at + 1 :]
    several = len(before.values) > 1
    if at < 0 or (lead[at] == "they") != several or not verb or not _WAS.issuperset(verb):
        return False
    if not _RELEASED_TOO.isdisjoint(scene.words(before.j, word.i)):
        return False  # 'A2 was intact and the cuff was up; it was released'
    before.actions.append(word)
    return True


def _cut_out_as_it_caught(scene: Scene, before: PulleyGroup, word: Mention) -> bool:
    """'A4 was first intact, but the repair caught and it was excised': no surgeon cuts out what was just sewn."""
    between = scene.words(before.j, word.i)
    named = any(before.j <= s.i < word.i and s.kind not in ("digit", "tendon") for s in scene.subjects)
    tendons = any(g.tendons and before.j <= g.i < word.i for g in scene.setting.groups)
    return word.value == "excised" and not (named or tendons) and not _REPAIR.isdisjoint(between)


_REPAIR = frozenset(["repair", "join", "juncture", "tenorrhaphy"])
_RELEASED_TOO = frozenset([";", ".", "cuff", "tourniquet", "clamp", "adhesion", "adhesions", "scar", "skin", "wound"])
_WAS = frozenset(
    ["was", "were", "had", "to", "be", "then", "therefore", "so", "thus", "partially", "partly", "finally"]
)


def _but_for_a_part(scene: Scene, groups: list[PulleyGroup], word: Mention) -> bool:
    """'A2 was left alone apart from a release of its distal third': what was done to a part of the pulley before."""
    lead = [w for w in scene.words(word.i - 4, word.i) if w not in ("a", "an", "the", "slight", "small", "short")]
    before = [g for g in groups if g.j <= word.i]
    excepting = (
        lead[-2:] == ["apart", "from"] or lead[-1:] in (["save"], ["except"], ["bar"]) or lead[-2:] == ["but", "for"]
    )
    if word.value not in _OPENED or not excepting or not before:
        return False
    before[-1].actions.append(word)
    return True


def _kept_wide(scene: Scene, groups: list[PulleyGroup], word: Mention) -> bool:
    """'A4 narrow. dilated with a tube, preserved': kept is the pulley that was stretched."""
    before = next((g for g in reversed(groups) if g.j <= word.i), None)
    if word.value != "intact" or before is None or before.actions:
        return False
    lead = scene.words(before.j, word.i)
    behind = lead[lead.index(".") + 1 :] if "." in lead else []
    named = any(before.j <= s.i < word.i and s.kind in ("tendon", "structure", "sided") for s in scene.subjects)
    if named or behind[:1] == [] or behind[0] not in DILATED:
        return False
    before.actions.append(word)
    return True


def _mends_hurt(scene: Scene, groups: list[PulleyGroup], word: Mention) -> bool:
    """'A5 was torn and I took it away', 'A2: cut by the glass -> repaired': what was done to a pulley found hurt.

    So of one opened: 'A3 was divided for access, and at the end it was sewn back.'
    """
    hurt = next((g for g in reversed(groups) if g.actions and g.actions[-1].j <= word.i), None)
    if word.value not in DEEDS or hurt is None:
        return False
    if _closed_again(scene, hurt, word):
        hurt.actions.append(word)
        return True
    if hurt.actions[-1].value != "injured":
        return False
    first = hurt.actions[-1].j
    if any(first <= s.i < word.i and s.kind != "digit" for s in scene.subjects):
        return False
    between = scene.words(first, word.i)
    joints = [n for n, w in enumerate(between) if w in _LEADS_ON]
    if not joints or not _TAKEN_UP.issuperset(between[joints[-1] + 1 :]):
        return False
    hurt.actions.append(word)
    return True


def _closed_again(scene: Scene, opened: PulleyGroup, word: Mention) -> bool:
    """Tell whether 'it' or 'this slit', with nothing named since the pulley was opened, is told to have been mended."""
    if word.value not in ("repaired", "widened") or opened.actions[-1].value not in _OPENED:
        return False
    start = max(opened.j, opened.actions[-1].j)
    lead = scene.words(start, word.i)
    by_us = lead[-1:] in (["i"], ["we"]) and "it" in scene.words(word.i, word.j + 1)
    slit = any(a in ("this", "the") and b in _SLITS for a, b in pairwise(scene.words(word.i - 4, word.i)))
    named = any(start <= s.i < word.i and s.kind != "digit" for s in scene.subjects)
    sewn_tendon = not scene.kinds.isdisjoint(("strandword", "stitch", "strands"))
    return not sewn_tendon and (slit or (not named and (by_us or not {"it", "this"}.isdisjoint(lead))))


_SLITS = frozenset(["slit", "opening", "split"])
_LEADS_ON = frozenset(["and", "so", ",", ">", ";"])
_TAKEN_UP = word_list("pulleys", "taken_up")


def _landmark_after_all(scene: Scene, groups: list[PulleyGroup], places: list[PulleyGroup], word: Mention) -> None:
    """'Caught under A4, so I vented it', 'until its edge was snipped': a landmark is spoken of after all."""
    again = [g for g in groups if g.actions and g.actions[-1].j <= word.i and g.mentions[0] in _of_places(scene)]
    if again and set(scene.words(again[-1].actions[-1].j, word.i)) <= {"and", "then", "was", "also", ",", "it"}:
        again[-1].actions.append(word)  # 'tight at A4; it was opened and enlarged'
        return
    before = [p for p in places if p.j <= word.i]
    if not before or any(before[-1].i < g.i < word.i for g in groups):
        return
    place = before[-1]
    between = [w for w in scene.words(place.j, word.i) if w not in (",", "(")]
    around = [*between[-3:], *scene.words(word.j, min(word.j + 2, scene.sentence.j))]
    inside = [*scene.words(word.i, word.j), *_part_of_it(scene, word)]  # 'let that go', 'opened 4 mm of that'
    owned = bool({"its", "their", "that"} & set(between[-6:])) and bool(PART_NOUNS & set(between[-5:]))
    if between[1:2] == ["of"] and between[0] in ("both", "all", "neither"):
        between = between[2:]
    others = any(place.j <= s.i < word.i and s.kind != "digit" for s in scene.subjects)  # 'both of these nerves'
    related = between[:1] in (["which"], ["these"], ["them"]) and len(between) <= 4 and not others  # 'A4, which I kept'
    taken_up = not _OBJECTS.isdisjoint(around) or not (_OBJECTS | {"that"}).isdisjoint(inside)
    pronoun = word.value not in SHARED and taken_up
    if owned or pronoun or related or _opens_a_part(scene, word) or _off_its_edge(scene, word):
        groups.append(PulleyGroup(place.mentions, place.values, [word]))
        places.remove(place)


def opened_at_an_end(scene: Scene, groups: list[PulleyGroup], places: list[PulleyGroup], word: Mention) -> bool:
    """'I opened 5 mm at the near end of A4', 'a snip I made at the mouth of A2': the place is what was opened."""
    ahead = next((g for g in sorted([*groups, *places], key=lambda g: g.i) if g.i >= word.j), None)
    if word.value not in _OPENED or ahead is None or ahead.actions or ahead.i - word.j > _LONG_LEAD:
        return False
    lead = scene.words(word.j, ahead.i)
    at = next((n for n, w in enumerate(lead) if w in ("at", "over")), None)
    if at is None or any(word.j <= s.i < ahead.i and s.kind != "digit" for s in scene.subjects):
        return False
    share = any(q.unit in ("mm", "%") and word.j <= q.i < word.j + at for q in scene.quantities)
    small = not _SNIPS.isdisjoint(scene.words(word.i, word.j))
    sheath = scene.word_before(word.i) in ("was", "were") and "sheath" in scene.words(*scene.part(word.i))
    if sheath or not (share or small) or not at_an_end(lead[at + 1 :]):
        return False
    if ahead in places:
        places.remove(ahead)
        groups.append(ahead)
        groups.sort(key=lambda g: g.i)
    ahead.actions.append(word)
    return True


def at_an_end(words: list[str]) -> bool:
    """Tell whether words are 'the near end of', 'the mouth of'."""
    ends = [w for w in words if w not in ("the", "of", "its")]
    return ends[-1:] != [] and ends[-1] in _ENDS and all(w in PARTS for w in ends[:-1])


_LONG_LEAD = 10  # words
_SNIPS = frozenset(["snip", "snipped", "vent", "vented"])
_ENDS = frozenset(["mouth", "edge", "end", "rim", "margin", "lip", "border", "entrance"])
_OBJECTS = frozenset(["it", "this", "them"])


def _part_of_it(scene: Scene, word: Mention) -> list[str]:
    """'It snagged at A4, so I opened about 4 mm of that': the pronoun behind a measure."""
    behind = scene.words(word.j, min(word.j + _LONG_PART + 1, scene.sentence.j))
    at = behind.index("of") if "of" in behind else len(behind)
    measured = any(word.j <= q.i < word.j + at for q in scene.quantities) or not PART_NOUNS.isdisjoint(behind[:at])
    return behind[at + 1 : at + 2] if measured else []


def _off_its_edge(scene: Scene, word: Mention) -> bool:
    """'It caught at the rim of A2, shaved 2 mm off its distal edge': 'its' is the pulley's that the tendon met."""
    behind = scene.words(word.j, min(word.j + _LONG_PART + 2, scene.sentence.j))
    at = behind.index("its") if "its" in behind else len(behind)
    measured = any(q.unit == "mm" and word.j <= q.i < word.j + at for q in scene.quantities)
    edge = [w for w in behind[at + 1 : at + 3] if w not in PARTS]
    return measured and edge[:1] != [] and edge[0] in _ENDS and word.value in (*_OPENED, "trimmed")


def _opens_a_part(scene: Scene, word: Mention) -> bool:
    """'It caught on A2, so I vented the distal 4 mm', '... and we opened its proximal third': of the pulley it met."""
    end = min(word.j + _LONG_PART, scene.sentence.j)
    behind = [w for w in scene.words(word.j, end) if w not in ("the", "its")]
    led = scene.word_before(word.i) in ("i", "we", "then")
    share = not (PART_NOUNS - {"end", "ends"}).isdisjoint(behind[1:2]) or behind[2:3] in (
        ["mm"],
        ["%"],
        ["percent"],
        ["millimetres"],
    )
    named = any(word.j <= m.i <= end + 1 for m in scene.of("pulley", "tendon", "structure"))
    return led and share and not named and word.value in _OPENED and behind[0] in PARTS


_OPENED = ("vented", "released")
_LONG_PART = 5  # words


def _of_places(scene: Scene) -> list[Mention]:
    return [m for m in scene.of("pulley") if scene.word_before(m.i) in ("at", "under", "beneath", "in", "on")]
