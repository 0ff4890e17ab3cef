"""Which nerve, artery, plate, ligament or extensor tendon is named, on which side, of which digit."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.rules.structures.part_digits import PAIRED, Part, hurt_ones, told_of
from notereader.reader.rules.structures.part_links import (
    all_the_rest,
    all_whole,
    beside,
    counted_ones,
    is_lead,
    leading_side,
    only_told_by,
    rest_of,
)
from notereader.reader.rules.structures.part_lists import label_of, listed_parts
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_OF_A_DIGIT = {"ulnar nerve": "digital nerve", "radial artery": "digital artery", "ulnar artery": "digital artery"}
_BETWEEN = word_list("structures", "between")
_SIDE_LEADS = word_list("structures", "side_leads")
_AFTER_SIDE = word_list("structures", "after_side")
_BEFORE_SIDE = word_list("structures", "before_side")
_WITH = word_list("structures", "with")
_FELLOWS = word_list("structures", "fellows")
_WRIST = frozenset(["FCR", "FCU", "PL", "IV", "V", "median nerve", "radial nerve branch", "flexor retinaculum"])
_A_FINGER = frozenset(["finger", "digit", "thumb", "index", "middle", "ring", "small", "little", "long"])


def parts_of(desk: Desk, scene: Scene) -> list[Part]:
    """Return the structures named in a sentence, in order."""
    listed = listed_parts(desk, scene)
    label = label_of(scene) if listed else None
    mentions = sorted((m for m in scene.mentions if label is None or m.i != label.i), key=lambda m: (m.i, m.i - m.j))
    mentions = [m for m in mentions if not _is_told_below(scene, m)]
    found = [*listed, *_parts(desk, scene, [m for m in mentions if not _needs_before(scene, m)], listed)]
    found += _bare_sides(desk, scene, found) + _both_of_a_finger(scene, found) + _that_of_a_finger(scene, found)
    found += _the_other(desk, scene, found)
    found += _parts(desk, scene, [m for m in mentions if _needs_before(scene, m)], found)
    return sorted(found, key=lambda p: p.i)


def _is_told_below(scene: Scene, m: Mention) -> bool:
    """'The nerve which was divided was the ulnar digital nerve': which nerve is said further on."""
    if m.kind not in ("anynerve", "anyartery") or scene.next_word(m.j) not in ("which", "that"):
        return False
    named = [n for n in scene.of("sided", "structure") if m.j < n.i <= m.j + 10]
    return bool(named) and scene.words(named[0].i - 2, named[0].i) in (["was", "the"], ["is", "the"], ["was", "its"])


def _needs_before(scene: Scene, m: Mention) -> bool:
    """Tell whether a mention says which structure only together with those before it: 'its nerve', 'the artery'."""
    if m.kind == "role":
        return True
    if m.kind not in ("anynerve", "anyartery") or scene.words(m.i, m.j) not in (["nerve"], ["artery"]):
        return False
    return not _unnamed_sides(scene, m)


def _parts(desk: Desk, scene: Scene, mentions: list[Mention], known: list[Part]) -> list[Part]:
    taken = {k for p in known for k in range(p.i, p.j)}
    made: list[Part] = []
    for m in mentions:
        if m.i in taken:
            continue
        before = sorted((p for p in [*known, *made] if p.i < m.i), key=lambda p: p.i)
        new = _part(desk, scene, m, before)
        if new:
            taken.update(range(m.i, m.j))
            made += new
    return made


def _side_words(scene: Scene, parts: list[Part]) -> set[int]:
    """Return the words of side that belong to a structure named: right before it or, where not told apart, after it."""
    used: set[int] = set()
    for part in parts:
        near = [b for b in scene.of("border") if part.i - 5 <= b.i < part.j and _clear(scene, b.j, part.i)]
        after = [] if _told_apart(scene, part.j) else _after(scene, part.j)
        used |= {k for b in [*near, *after] for k in range(b.i, b.j)}
    return used


def _after(scene: Scene, j: int) -> list[Mention]:
    """Return the words of side that follow a structure with only small words between."""
    digit_words = scene.page.digit_words
    found: list[Mention] = []
    for b in scene.of("border"):
        between = [scene.page.words[k] for k in range(j, b.i) if k not in digit_words]
        between = [w for w in between if not w.startswith("..")]
        if b.i >= j and len(between) <= 7 and all(w in _SIDE_LEADS for w in between):
            found.append(b)
    return found


def _part(desk: Desk, scene: Scene, m: Mention, before: list[Part]) -> list[Part]:
    if m.kind == "sided":
        return [] if is_lead(scene, m) else _sided(desk, scene, m)
    if m.kind == "bundle":
        rest = [p for s in sorted(PAIRED, reverse=True) for p in rest_of(desk, scene, m, s, before) or []]
        if rest:
            return [*rest, *all_the_rest(desk, scene, m, rest)]
        word = (scene.words(m.i, m.j) or [""])[-1]
        other = _other_side(desk, before) if _of_the_other_side(scene, m) else ()
        both = word.endswith("s") or _word_ahead(scene, m.i) in ("both", "each", "neither")
        sides = other or _sides(scene, m, both)
        digits = _of_both_fingers(scene, m, sides)
        return [Part(m.i, _end(scene, m), s, sides, digits=digits) for s in ("digital nerve", "digital artery")]
    if m.kind == "structure":
        return _structure(desk, scene, m, before)
    if m.kind in ("anynerve", "anyartery"):
        return [] if _of_a_graft(scene, m) else _unnamed(desk, scene, m, before)
    if m.kind == "role" and m.value == "nerve" and m.j > m.i and scene.page.words[m.i] == "nerve":
        return [] if _of_a_graft(scene, m) else _known(desk, scene, m, "nerve")
    return []


def _of_both_fingers(scene: Scene, m: Mention, sides: tuple[str | None, ...]) -> tuple[str, ...]:
    """'Both radial bundles were intact': one in each of the two fingers that the note works on."""
    lead = scene.words(max(scene.sentence.i, m.i - 2), m.i)
    several = lead in (["both", "radial"], ["both", "ulnar"]) and scene.page.words[m.j - 1].endswith("s")
    fingers = scene.every_digit if len(sides) == 1 and not any(g.digits for g in scene.setting.groups) else ()
    return fingers if several and len(fingers) == _PAIR else ()


_PAIR = 2


def _word_ahead(scene: Scene, i: int) -> str:
    """Return the word before word i that is no name of a finger: 'both thumb nerves'."""
    k = i - 1
    while k >= scene.sentence.i and (k in scene.page.digit_words or scene.page.words[k] in ("thumb", "its", "the")):
        k -= 1
    return scene.page.words[k] if k >= scene.sentence.i else ""


def _of_a_graft(scene: Scene, m: Mention) -> bool:
    """Tell whether a nerve is only what was grafted: 'a strand of nerve from the forearm'."""
    before = scene.words(max(scene.sentence.i, m.i - 3), m.i)
    if before[-1:] != [] and before[-1] in _DONORS:
        return True  # 'grafted with 15 mm of the lateral cutaneous nerve'
    return before[-1:] == ["of"] and bool({"strand", "piece", "length", "segment", "cable", "bit"} & set(before))


_DONORS = frozenset(["cutaneous", "antebrachial", "sural", "donor"])


def _sided(desk: Desk, scene: Scene, m: Mention) -> list[Part]:
    side, _, what = m.value.partition(" ")
    if m.value == "ulnar bundle" and desk.at_wrist and _beside_wrist_tendon(scene, m):
        return [Part(m.i, m.j, s, (None,)) for s in ("ulnar nerve", "ulnar artery")]
    structures = ("digital nerve", "digital artery") if what == "bundle" else (what,)
    sides: tuple[str | None, ...] = (side, *_second_side(scene, m, side))
    return [Part(m.i, m.j, s, tuple(dict.fromkeys(sides))) for s in structures]


def _beside_wrist_tendon(scene: Scene, m: Mention) -> bool:
    """'The flexor carpi ulnaris and the ulnar bundle were whole': those of the wrist, and not of a finger."""
    tendons = [t for t in scene.of("tendon") if t.j <= m.i]
    digits = [g for g in scene.setting.groups if g.digits and (g.i >= m.j or (tendons and g.i > tendons[-1].j))]
    return bool(tendons) and tendons[-1].value in _WRIST and not digits


def _structure(desk: Desk, scene: Scene, m: Mention, before: list[Part]) -> list[Part]:
    if m.value in PAIRED:
        rest = rest_of(desk, scene, m, m.value, before)
        near = rest or beside(desk, scene, m, m.value, before)
        if near or rest is not None:
            return near
        if scene.header and scene.word_before(m.i) not in ("both", "all") and not _sides(scene, m, both=False)[0]:
            return []  # 'repair of digital nerves', 'with digital nerve repair': not which
        counted = counted_ones(desk, scene, m, m.value) if _plural(scene, m) else None
        if counted is not None:
            return counted
        return [Part(m.i, _end(scene, m), m.value, _sides(scene, m, both=_plural(scene, m)))]
    if m.value in ("phalanx", "metacarpal"):
        return []
    if m.value in _OF_A_DIGIT and _of_digit(desk, scene, m):
        side = m.value.split()[0]
        sides = tuple(dict.fromkeys((side, *_second_side(scene, m, side))))
        return [Part(m.i, m.j, _OF_A_DIGIT[m.value], sides)]
    if _only_beside(scene, m):
        return []
    if m.value == "collateral ligament":
        return [Part(m.i, m.j, m.value, (_ligament_side(desk, scene, m),))]
    also = _PARTNER.get(m.value)
    j = _partner_end(scene, m) if also is not None else m.j
    if also is not None and j > m.j:  # 'Ulnar a. and n. intact'
        return [Part(m.i, j, m.value, (None,)), Part(m.i, j, also, (None,))]
    return [Part(m.i, m.j, m.value, (None,))]


_PARTNER = {"ulnar artery": "ulnar nerve", "ulnar nerve": "ulnar artery"}


def _partner_end(scene: Scene, m: Mention) -> int:
    """Return the word after 'and n.' or 'and artery' behind the ulnar artery or nerve, else the end of its name."""
    own = "nerve" if m.value.endswith("artery") else "artery"
    k = m.j + (scene.next_word(m.j) == ".")
    joined = scene.next_word(k) in ("and", "&", "+", "/") and scene.next_word(k + 1) in (own, own[0])
    return k + 2 + (scene.next_word(k + 2) == ".") if joined else m.j


_ONTO = frozenset(["onto", "into", "around", "round", "under", "over", "beneath", "through"])
_TO = frozenset(
    ["deep", "superficial", "sutured", "sewn", "fixed", "attached", "anchored", "tenodesed", "secured", "next"]
)


def _only_beside(scene: Scene, m: Mention) -> bool:
    """'Passed deep to the extensor mechanism', 'the stump was sutured to the volar plate': only the place."""
    before = [w for w in scene.words(max(scene.sentence.i, m.i - 4), m.i) if w not in ("the", "a", "its")]
    if before[-1:] == ["to"]:
        return bool(_TO & set(before[-2:-1]))
    return m.value == "extensor tendon" and bool(_ONTO & set(before[-1:]))


def _of_digit(desk: Desk, scene: Scene, m: Mention) -> bool:
    """Tell whether 'the radial artery' is one of a finger: '... of the finger', or beside digital nerves."""
    if _named_of_digit(scene, m):
        return True
    digital = any(n.kind == "bundle" or n.value in PAIRED for n in scene.of("bundle", "structure"))
    digital = digital or any(n.j <= m.i and _named_of_digit(scene, n) for n in scene.of("structure"))
    if scene.setting.digits and scene.every_digit and not desk.at_wrist:
        return True
    return digital or any(n.value.endswith(("digital nerve", "digital artery")) for n in scene.of("sided"))


def _named_of_digit(scene: Scene, m: Mention) -> bool:
    after = scene.words(m.j, min(m.j + 4, scene.sentence.j))
    return m.value in _OF_A_DIGIT and after[:1] in (["of"], ["to"]) and not _A_FINGER.isdisjoint(after)


def _ligament_side(desk: Desk, scene: Scene, m: Mention) -> str | None:
    near = [b.value for b in scene.of("border") if 0 <= m.i - b.j <= 2]
    if near:
        return near[0]
    short = {"rcl": "radial", "ucl": "ulnar"}.get((scene.words(m.i, m.j) or [""])[0])
    if short:
        return short
    known = {f.entry[2] for f in told_of(desk, m.value)}
    return next(iter(known)) if len(known) == 1 else None


# --- a nerve, the artery, the other one


def _unnamed(desk: Desk, scene: Scene, m: Mention, before: list[Part]) -> list[Part]:
    """'both arteries', 'the nerve', 'nerve and artery on the radial side': digital ones in a finger."""
    word = _PLURALS.get(last := (scene.words(m.i, m.j) or [""])[-1], last)
    structure = "digital nerve" if m.kind == "anynerve" else "digital artery"
    if word == "arteries" and _of_the_wrist(desk, scene, m):
        return [Part(m.i, m.j, name, (None,)) for name in ("radial artery", "ulnar artery")]
    if before and before[-1].structure in PAIRED and scene.words(m.j, m.j + 3) in _SAME_SIDE:
        return [Part(m.i, m.j, structure, before[-1].sides)]
    rest = rest_of(desk, scene, m, structure, before)
    near = rest or beside(desk, scene, m, structure, before)
    if near or rest is not None or (structure == "digital nerve" and only_told_by(scene, m)):
        return near
    counted = counted_ones(desk, scene, m, structure) if word in ("nerves", "arteries") else None
    if counted is not None:
        return counted
    sides = _unnamed_sides(scene, m)
    whole = word in ("nerves", "arteries") and all_whole(desk, scene, m, structure)
    if len(sides) == 2 or (len(sides) < 1 and (whole or _both(scene, m, word))):
        return [Part(m.i, m.j, structure, ("radial", "ulnar"))]
    if len(sides) == 1 and (scene.setting.digits or scene.every_digit):
        return [Part(m.i, m.j, structure, (sides[0],))]
    plural = word in ("nerves", "arteries") and before and before[-1].structure in PAIRED
    if plural and before[-1].sides == ("radial", "ulnar"):
        return [Part(m.i, m.j, structure, ("radial", "ulnar"))]  # 'both nerves were intact, the arteries likewise'
    if word not in ("nerve", "artery"):
        return []
    led = leading_side(scene, m)
    if led is not None and scene.setting.digits:
        return [Part(m.i, m.j, structure, (led,))]
    if scene.word_before(m.i) == "other" or _of_the_other_side(scene, m):
        other = _other_side(desk, before, structure)
        return [Part(m.i, m.j, structure, other)] if other else []
    if before and before[-1].structure in PAIRED and all(w in _WITH for w in scene.words(before[-1].j, m.i)):
        return [Part(m.i, m.j, structure, before[-1].sides)]
    if before and before[-1].structure == "ulnar nerve" and word == "artery" and scene.word_before(m.i) in _WITH:
        return [Part(m.i, m.j, "ulnar artery", (None,))]
    own = [p for p in before if p.structure == structure and p.j <= m.i]
    if own and len(own[-1].sides) == 1 and not _digits_behind(scene, m):
        return [Part(m.i, m.j, structure, own[-1].sides)]
    return _known(desk, scene, m, word)


def _of_the_wrist(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'FCU, ulnar nerve and both arteries uninjured': named with what only the wrist has, both are of the wrist."""
    if not desk.at_wrist or _word_ahead(scene, m.i) != "both" or _digits_behind(scene, m):
        return False
    named = [t.value for t in scene.of("tendon", "structure") if t.i < m.i]
    return bool(named) and named[-1] in _WRIST | {"median nerve", "ulnar nerve"}


_PLURALS = {"nn": "nerves", "nn.": "nerves", "aa": "arteries", "aa.": "arteries", "vessels": "arteries"}
_SAME_SIDE = (["of", "that", "side"], ["on", "that", "side"], ["of", "this", "side"], ["on", "this", "side"])


def _unnamed_sides(scene: Scene, m: Mention) -> list[str]:
    """Return the sides that stand beside 'nerve' or 'artery': before it, or after it as 'on the radial side'."""
    nouns = ("nerve", "nerves", "artery", "arteries")
    near = [b for b in scene.of("border") if 0 <= m.i - b.j <= 3 and _clear(scene, b.j, m.i, nouns)]
    ahead = [b.value for b in near if "both" not in scene.words(b.j, m.i)]  # not 'radial nerve and both arteries'
    if ahead:
        return list(dict.fromkeys(ahead))
    after = [b for b in scene.of("border") if 0 <= b.i - m.j <= 6]
    leads = _SIDE_LEADS.union(nouns)
    linked = [b.value for b in after if all(w in leads or w.startswith("..") for w in scene.words(m.j, b.i))]
    return list(dict.fromkeys(linked))


def _clear(scene: Scene, i: int, j: int, nouns: tuple[str, ...] = ()) -> bool:
    return all(w in _BETWEEN or w in nouns for w in scene.words(i, j))


def _both(scene: Scene, m: Mention, word: str) -> bool:
    """Tell whether both nerves or arteries of a digit are meant."""
    if scene.words(m.i, m.j) == ["vessels"] and _word_ahead(scene, m.i) not in ("both", "neither"):
        return False  # 'bipolar for two vessels': any of them
    if word not in ("nerves", "arteries"):
        on_both = " ".join(scene.words(m.j, min(m.j + 4, scene.sentence.j)))
        told = scene.next_word(m.j) in ("injury", "injuries", "damage", "lesion") and ":" in scene.words(m.j, m.j + 3)
        return scene.word_before(m.i) in ("each", "neither") or "both sides" in on_both or told
    after = scene.words(m.j, min(m.j + 9, scene.sentence.j))
    if {"sides", "bilaterally"} & set(after) or {"each", "side"} <= set(after):
        return True
    of_a_digit = m.i == scene.sentence.i and after[:1] == ["of"] and bool(_digits_behind(scene, m))
    return of_a_digit or _word_ahead(scene, m.i) in ("both", "two", "neither") or "both" in after[:3]


def _of_the_other_side(scene: Scene, m: Mention) -> bool:
    """'the other side's bundle', 'the nerve on the other side'."""
    ahead = [w for w in scene.words(max(scene.sentence.i, m.i - 4), m.i) if w not in ("'", "s", "'s")]
    behind = [w for w in scene.words(m.j, min(m.j + 4, scene.sentence.j)) if w not in ("on", "of", "the")]
    return ahead[-2:] == ["other", "side"] or behind[:2] == ["other", "side"]


def _other_side(desk: Desk, before: list[Part], structure: str = "") -> tuple[str, ...]:
    """'the other nerve', 'the other side's bundle': the side not yet told; none where it cannot be said."""
    wanted = {structure} if structure else PAIRED
    told = [s for p in before if p.structure in wanted for s in p.sides]
    told = told or [s for name, sides, _ in desk.last_parts if name in wanted for s in sides]
    if len(set(told)) != 1 or told[0] is None:
        return ()
    return ("ulnar" if told[0] == "radial" else "radial",)


def _digits_behind(scene: Scene, m: Mention) -> tuple[str, ...]:
    """Return the digits of 'the nerve of the middle finger'."""
    if scene.next_word(m.j) not in ("of", "to", "in"):
        return ()
    return next((g.digits for g in scene.setting.groups if g.digits and m.j <= g.i <= m.j + 2), ())


def _digits_right_before(scene: Scene, m: Mention) -> tuple[str, ...]:
    """Return the digits of 'the index nerve was bridged', 'in the small finger the nerve was sutured'."""
    named = [g for g in scene.setting.groups if g.digits and not g.tendons and g.j <= m.i]
    close = bool(named) and {"the", "its"}.issuperset(scene.words(named[-1].j, m.i))
    return named[-1].digits if close else ()


_BRUISED = frozenset(["bruised", "contused"])


def _known(desk: Desk, scene: Scene, m: Mention, word: str) -> list[Part]:
    """'the nerve': the one told hurt, in the digit in focus where several were, else the one named just before."""
    found = hurt_ones(desk, word)
    state = scene.word_before(m.i) if scene.word_before(m.i) in _BRUISED else ""
    entries = list(dict.fromkeys(f.entry for f in found if not state or f.value == "contused"))
    named = _digits_behind(scene, m) or _digits_right_before(scene, m)
    if named:
        entries = [e for e in entries if e[0] in named]
    if len(entries) > 1:
        cut = {f.entry for f in found if f.value in ("complete", "partial")}
        entries = [e for e in entries if e in cut] or entries
    if len(entries) > 1:
        entries = [e for e in entries if e[0] in (scene.setting.digits or (None,))]
    if len(entries) == 1:
        digit, structure, side = entries[0]
        return [Part(m.i, m.j, structure, (side,), digits=(digit,))]
    return [] if entries else _named_before(desk, scene, m, word)


def _named_before(desk: Desk, scene: Scene, m: Mention, word: str) -> list[Part]:
    if scene.sentence.i != desk.last_parts_end:
        return []
    last = [(n, s[0], d) for n, s, d in desk.last_parts if n.endswith(word) and len(s) == 1]
    if len(last) == 1:
        return [Part(m.i, m.j, last[0][0], (last[0][1],), digits=last[0][2])]
    if word == "artery" and _is_its(desk, scene, m):
        return [Part(m.i, m.j, "digital artery", desk.last_parts[0][1], digits=desk.last_parts[0][2])]
    return []


def _is_its(desk: Desk, scene: Scene, m: Mention) -> bool:
    """Tell whether the artery is that of the nerve spoken of last: 'its artery', 'Artery not repaired'."""
    if len(desk.last_parts) != 1:
        return False
    name, sides, _ = desk.last_parts[0]
    return scene.word_before(m.i) == "its" or (m.i == scene.sentence.i and name in PAIRED and len(sides) == 1)


def _bare_sides(desk: Desk, scene: Scene, found: list[Part]) -> list[Part]:
    """'Both nerves were seen: the radial was cut, the ulnar was bruised', 'The radial one was intact'."""
    used = _side_words(scene, found) | {p.i for p in found}
    made: list[Part] = []
    for b in scene.of("border"):
        if b.i not in used and _stands_for(scene, b):
            j = b.j + (scene.next_word(b.j) in _FELLOWS)
            digits = _digits_before(desk, scene, found, b)
            named = [n for n in _spoken_of(desk, scene, found, b) if n in PAIRED]
            made += [Part(b.i, j, n, (b.value,), True, digits) for n in named]
            made += _counterpart(found, b, j)
    return made


def _counterpart(found: list[Part], b: Mention, j: int) -> list[Part]:
    """'The median nerve was intact; the ulnar was divided': the other great nerve or artery of the wrist."""
    before = [p for p in found if p.j <= b.i]
    name = _COUNTERPARTS.get((before[-1].structure, b.value)) if before else None
    return [Part(b.i, j, name, (None,), True)] if name is not None else []


_COUNTERPARTS = {
    ("median nerve", "ulnar"): "ulnar nerve",
    ("ulnar artery", "radial"): "radial artery",
    ("radial artery", "ulnar"): "ulnar artery",
}


def _both_of_a_finger(scene: Scene, found: list[Part]) -> list[Part]:
    """'The radial digital nerve of the index was cut; both of the middle were whole': both of the kind named before."""
    made: list[Part] = []
    for group in (g for g in scene.setting.groups if g.digits and not g.tendons):
        lead = scene.words(max(scene.sentence.i, group.i - 3), group.i)
        lead = lead[:-1] if lead[-1:] == ["the"] else lead
        before = [p for p in found if p.j <= group.i and p.structure in PAIRED]
        if lead[-2:] == ["both", "of"] and before and scene.next_word(group.j) in ("was", "were", "are"):
            i = group.i - 1 - lead[::-1].index("both") - (scene.word_before(group.i) == "the")
            made.append(Part(i, group.j, before[-1].structure, ("radial", "ulnar"), True, group.digits))
    return made


def _that_of_a_finger(scene: Scene, found: list[Part]) -> list[Part]:
    """'The radial digital nerve of the index was cut, that of the middle was sewn': the same one of that finger."""
    if scene.said.isdisjoint(_POINTING):
        return []
    made: list[Part] = []
    for group in (g for g in scene.setting.groups if g.digits and not g.tendons):
        k = group.i - (scene.word_before(group.i) == "the")
        before = [p for p in found if p.j <= k - 2 and p.structure in PAIRED]
        pointed = scene.page.words[k - 2] in _POINTING and scene.page.words[k - 1] == "of"
        own = before[-1] if pointed and before else None
        since = [g for g in scene.setting.groups if own is not None and own.i - _CLOSE <= g.i < k]
        if own is not None and any(g.digits for g in since) and not any(g.tendons for g in since):
            made += [Part(k - 2, group.j, own.structure, own.sides, True, group.digits)]
    return made


_POINTING = frozenset(["that", "those"])


def _digits_before(desk: Desk, scene: Scene, found: list[Part], b: Mention) -> tuple[str | None, ...]:
    """'... of the small finger was cut. The radial one, and both of the ring, were intact.': that of the small."""
    if any(p.j <= b.i for p in found) or scene.sentence.i != desk.last_parts_end:
        return ()
    groups = [g for g in scene.setting.groups if g.digits]
    if not groups or groups[0].i < b.i or groups[0].i - b.j <= _CLOSE:
        return ()
    told = list(dict.fromkeys(digits for _, _, digits in desk.last_parts))
    return told[0] if len(told) == 1 else ()


_CLOSE = 4  # words: 'the radial one in the ring finger'


def _the_other(desk: Desk, scene: Scene, found: list[Part]) -> list[Part]:
    """'One was cut. The other was unharmed.': the same structure on the other side."""
    for k in range(scene.sentence.i, scene.sentence.j - 1):
        if scene.page.words[k] == "other" and scene.page.words[k + 1] in ("was", "is", "one", "had", "remained"):
            if _only_why(scene, k):
                continue
            before = [(p.structure, p.sides) for p in found if p.j <= k]
            last = [(n, sides) for n, sides, _ in desk.last_parts] if scene.sentence.i == desk.last_parts_end else []
            near = (before or last)[-1:]
            sided = [(n, s[0]) for n, s in near if n in PAIRED and len(s) == 1 and s[0]]
            return [Part(k, k + 1, n, ("ulnar" if s == "radial" else "radial",), True) for n, s in sided]
    return []


def _only_why(scene: Scene, k: int) -> bool:
    """'The artery was clipped as the other one filled the finger': why, and no word of how the other one was."""
    lead = [w for w in scene.words(k - 2, k) if w != "the"][-1:]
    return lead in (["as"], ["because"], ["since"]) and not any(m.i > k for m in scene.of("extent", "nervestate"))


def _spoken_of(desk: Desk, scene: Scene, found: list[Part], b: Mention) -> list[str]:
    """Return the structures a bare side stands for: those named last, all of them for 'on the ulnar side both'."""
    before = [p for p in found if p.j <= b.i]
    if not before and _under_nerves(scene, b):
        return ["digital nerve"]
    if not before:
        last = desk.last_parts if scene.sentence.i == desk.last_parts_end else []
        return list(dict.fromkeys(name for name, _, _ in last))
    at = max(p.i for p in before)
    if any(g.tendons and at < g.i < b.i for g in scene.setting.groups):
        return []
    all_of_them = scene.next_word(b.j) in ("both", "they", "all", "ones")
    return list(dict.fromkeys(p.structure for p in before if all_of_them or p.i == at))


def _under_nerves(scene: Scene, b: Mention) -> bool:
    """'Nerves in the ring finger: ulnar cut, radial fine': the nerves of a finger, set over its two sides."""
    head = next((m for m in scene.of("anynerve") if m.i == scene.sentence.i and m.j < b.i), None)
    if head is None or scene.words(head.i, head.j)[-1:] != ["nerves"] or "wrist" in scene.words(head.j, b.i):
        return False
    if not scene.setting.digits and not any(g.digits and g.i < b.i for g in scene.setting.groups):
        return False
    others = scene.of("structure", "sided", "anyartery", "bundle", "pulley")
    return not any(m.i < b.i for m in others) and not any(g.tendons and g.i < b.i for g in scene.setting.groups)


def _past_digital(scene: Scene, j: int) -> int:
    """'Nerves: the ulnar digital was cut, the radial fine': what is told behind a side and its 'digital'."""
    return j + (scene.next_word(j) == "digital" and scene.next_word(j + 1) not in (":", "nerve", "nerves", "artery"))


def _stands_for(scene: Scene, b: Mention) -> bool:
    """Tell whether a side stands for the structure on it."""
    before = scene.word_before(b.i)
    at = _past_digital(scene, b.j)
    after = scene.next_word(at)
    if _under_nerves(scene, b) and (after in _AFTER_SIDE or any(m.i == at for m in scene.of("hurt"))):
        return True
    if {"side", "aspect", "border"} & set(scene.words(b.i, b.j)):
        return before in ("one", "that") or before in _FELLOWS or after in ("both", "they")
    said = any(m.i == at for m in scene.of("extent", "hurt", "deed", "mending", "nervestate"))
    said = said or scene.words(at, at + 2) == ["in", "continuity"]
    if scene.next_word(b.j) in _ENDS and _in_its_finger(scene, b):
        return True
    labelled = scene.words(b.j, b.j + 2) == ["digital", ":"]
    if labelled or (after in _AFTER_SIDE or after in _FELLOWS or said):
        begins = b.i == scene.sentence.i or scene.page.breaks[b.i] >= Break.COLUMN
        return labelled or before in _BEFORE_SIDE or begins or before.startswith("..")
    return False


_ENDS = frozenset(["", ".", ";", ","])


def _in_its_finger(scene: Scene, b: Mention) -> bool:
    """'In the index the ulnar digital nerve was cut, in the ring the radial': the side right behind its finger."""
    finger = next((g for g in scene.setting.groups if g.digits and not g.tendons and 0 <= b.i - g.j <= 1), None)
    if finger is None or not {"the"}.issuperset(scene.words(finger.j, b.i)):
        return False
    earlier = any(m.j <= finger.i for m in scene.of("sided", "structure"))
    return earlier and "in" in scene.words(max(scene.sentence.i, finger.i - 2), finger.i)


# --- sides and digits


def _plural(scene: Scene, m: Mention) -> bool:
    word = (scene.words(m.i, m.j) or [""])[-1]
    return word in ("nerves", "arteries", "vessels", "nn") or scene.word_before(m.i) in ("both", "each", "neither")


def _second_side(scene: Scene, m: Mention, side: str) -> tuple[str, ...]:
    """'radial and ulnar digital nerves': the side before the named one counts too."""
    for b in scene.of("border"):
        if b.value != side and 0 <= m.i - b.j <= 3 and _clear(scene, b.j, m.i):
            return (b.value,)
    return ()


def _sides(scene: Scene, m: Mention, both: bool) -> tuple[str | None, ...]:
    near = [b.value for b in scene.of("border") if 0 <= m.i - b.j <= 5 and _clear(scene, b.j, m.i)]
    after = [] if _told_apart(scene, m.j) else [b.value for b in _after(scene, m.j)]
    sides = tuple(dict.fromkeys(near or after))
    if sides:
        return sides
    words = scene.words(m.j, min(m.j + 6, scene.sentence.j))
    both = both or words[:1] == ["x2"] or words[:2] == ["x", "2"] or words[:1] == ["bilat"]
    return ("radial", "ulnar") if both or "both" in words[:4] or "sides" in words else (None,)


def _end(scene: Scene, m: Mention) -> int:
    """Return the word after a structure and the sides that follow it: 'NVBs rad. + uln.'."""
    after = [] if _told_apart(scene, m.j) else _after(scene, m.j)
    return after[-1].j if after else m.j


def _told_apart(scene: Scene, j: int) -> bool:
    """Tell whether the sides after a structure are each told on its own: 'Nerves: radial intact, ulnar cut'."""
    first = _after(scene, j)[:1]
    if first and scene.words(first[0].j, first[0].j + 2) == ["digital", ":"]:
        return True
    several = scene.page.words[j - 1].endswith("s") or scene.next_word(j) in (":", "-", "?", "both")
    several = several or scene.next_word(j).startswith("..")
    if not first or not several:
        return False
    at = _past_digital(scene, first[0].j)
    said = any(m.i == at for m in scene.of("extent", "hurt", "deed", "nervestate", "mending"))
    return said or scene.next_word(at) in ("was", "is", "one", "had", "has", "being", ":")


def named_sides(desk: Desk, structure: str) -> list[str]:
    """Return the sides on which a structure is named anywhere in the note."""
    found: dict[str, None] = {}
    for scene in desk.having("sided"):
        for m in scene.of("sided"):
            side, _, what = m.value.partition(" ")
            if what == structure and scene.told(m.i):
                found[side] = None
    return list(found)
