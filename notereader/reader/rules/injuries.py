"""Other structures that bear on therapy: nerves, arteries, bones, plates, ligaments, joints, extensor tendons."""

from dataclasses import dataclass

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, digits_at

_SKIP = frozenset(["instructions", "admin", "anaesthesia", "blood_loss", "specimens", "tourniquet", "antibiotics", "dressing"])
_NO_DIGIT = frozenset(["median nerve", "ulnar nerve", "radial nerve branch", "radial artery", "ulnar artery"])
_PAIRED = frozenset(["digital nerve", "digital artery"])
_GLUE = frozenset("and , & + / or the both a an with its of proper digital together also as well".split())
_EXTENTS = {"complete": "complete", "partial": "partial", "intact": "intact", "contused": "contused"}
_TREATMENTS = {"repaired": "repaired", "grafted": "grafted", "conduit": "conduit", "ligated": "ligated", "fixed": "fixed", "left": "left", "reinserted": "repaired"}
_BONES = frozenset(["phalanx", "metacarpal"])


@dataclass(slots=True)
class Part:
    """A structure named in words i to j: which, on which sides."""

    i: int
    j: int
    structure: str
    sides: tuple[str | None, ...]


def injuries(desk: Desk, scene: Scene) -> None:
    """Find every other structure of a sentence with its extent and treatment."""
    if scene.sentence.section in _SKIP:
        return
    parts = [p for p in _parts(desk, scene) if scene.told(p.i)]
    groups = _joined(scene, parts)
    for n, group in enumerate(groups):
        low = groups[n - 1][-1].j if n else scene.sentence.i
        high = groups[n + 1][0].i if n + 1 < len(groups) else scene.sentence.j
        _extent(desk, scene, group, low, high)
        _treatment(desk, scene, group, low, high)
    if parts:
        desk.last_parts = [(p.structure, p.sides, _digits(scene, p)) for p in groups[-1]]
        desk.last_parts_end = scene.sentence.j
    elif desk.last_parts and scene.sentence.i == desk.last_parts_end:
        _carried(desk, scene)
    _bones(desk, scene)


# --- which structures


def _parts(desk: Desk, scene: Scene) -> list[Part]:
    found: list[Part] = []
    taken: set[int] = set()
    for m in scene.mentions:
        if m.i in taken:
            continue
        made = _part(desk, scene, m)
        if made:
            taken.update(range(m.i, m.j))
            found += made
    return found


def _part(desk: Desk, scene: Scene, m: Mention) -> list[Part]:
    if m.kind == "sided":
        side, _, what = m.value.partition(" ")
        structures = ("digital nerve", "digital artery") if what == "bundle" else (what,)
        sides: tuple[str | None, ...] = (side, *_second_side(scene, m, side))
        return [Part(m.i, m.j, s, tuple(dict.fromkeys(sides))) for s in structures]
    if m.kind == "bundle":
        sides = _sides(scene, m, both="bundles" in scene.words(m.i, m.j) or (scene.words(m.i, m.j) or [""])[-1].endswith("s"))
        return [Part(m.i, m.j, s, sides) for s in ("digital nerve", "digital artery")]
    if m.kind == "structure":
        if m.value in _PAIRED:
            return [Part(m.i, m.j, m.value, _sides(scene, m, both=_plural(scene, m)))]
        if m.value in ("phalanx", "metacarpal"):
            return []
        side = _own_side(scene, m) if m.value in ("collateral ligament",) else None
        return [Part(m.i, m.j, m.value, (side,))]
    if m.kind in ("anynerve", "anyartery"):
        return _unnamed(desk, scene, m)
    return []


def _unnamed(desk: Desk, scene: Scene, m: Mention) -> list[Part]:
    """'both arteries', 'the nerve', 'Radial and ulnar nerves': digital ones in a finger."""
    word = (scene.words(m.i, m.j) or [""])[-1]
    structure = "digital nerve" if m.kind == "anynerve" else "digital artery"
    sides = [b.value for b in scene.of("border") if 0 <= m.i - b.j <= 3 or 0 <= b.i - m.j <= 2]
    if scene.word_before(m.i) == "both" or (word in ("nerves", "arteries") and len(set(sides)) != 1):
        if scene.word_before(m.i) in ("both", "and") or len(set(sides)) == 2 or scene.next_word(m.j) == ",":
            return [Part(m.i, m.j, structure, ("radial", "ulnar"))]
        return []
    if len(set(sides)) == 1 and scene.setting.digits:
        return [Part(m.i, m.j, structure, (sides[0],))]
    known = [f.entry for f in desk.findings if f.group == "injuries" and f.entry[1].endswith("nerve" if m.kind == "anynerve" else "artery") and f.value != "intact"]
    unique = list(dict.fromkeys(known))
    if len(unique) == 1 and word in ("nerve", "artery"):
        return [Part(m.i, m.j, unique[0][1], (unique[0][2],))]
    return []


def _plural(scene: Scene, m: Mention) -> bool:
    word = (scene.words(m.i, m.j) or [""])[-1]
    return word in ("nerves", "arteries", "vessels", "nn") or scene.word_before(m.i) == "both"


def _second_side(scene: Scene, m: Mention, side: str) -> tuple[str, ...]:
    """'radial and ulnar digital nerves': the side before the named one counts too."""
    for b in scene.of("border"):
        if b.value != side and 0 <= m.i - b.j <= 3 and all(w in _GLUE for w in scene.words(b.j, m.i)):
            return (b.value,)
    return ()


def _sides(scene: Scene, m: Mention, both: bool) -> tuple[str | None, ...]:
    near = [b.value for b in scene.of("border") if 0 <= m.i - b.j <= 5 and all(w in _GLUE or w in ("radial", "ulnar", "rad", "uln", ".") for w in scene.words(b.j, m.i))]
    after = [b.value for b in scene.of("border") if 0 <= b.i - m.j <= 6 and all(w in _GLUE or w in ("on", "side", "-", ",", "radial", "ulnar", "(", ":", "rad", ".", "uln", "finger", "digit") or w in scene.page.words[m.j : m.j + 5] and _is_digit(scene, w) for w in scene.words(m.j, b.i))]
    sides = list(dict.fromkeys(near or after))
    if sides:
        return tuple(sides)
    words = scene.words(m.j, min(m.j + 6, scene.sentence.j))
    if both or "both" in words[:4] or "sides" in words:
        return ("radial", "ulnar")
    return (None,)


def _is_digit(scene: Scene, word: str) -> bool:
    return word in ("index", "middle", "ring", "small", "little", "thumb", "long")


def _own_side(scene: Scene, m: Mention) -> str | None:
    near = [b.value for b in scene.of("border") if 0 <= m.i - b.j <= 2]
    return near[0] if near else {"rcl": "radial"}.get((scene.words(m.i, m.j) or [""])[0])


def _joined(scene: Scene, parts: list[Part]) -> list[list[Part]]:
    """Group structures named together: 'ulnar nerve and ulnar artery, each divided'."""
    groups: list[list[Part]] = []
    for part in parts:
        if groups and _glued(scene, groups[-1][-1].j, part.i):
            groups[-1].append(part)
        else:
            groups.append([part])
    return groups


def _glued(scene: Scene, i: int, j: int) -> bool:
    return j - i <= 6 and all(w in _GLUE or w in ("radial", "ulnar") for w in scene.words(i, j))


def _digits(scene: Scene, part: Part) -> tuple[str | None, ...]:
    if part.structure in _NO_DIGIT:
        return (None,)
    after = [g for g in scene.setting.groups if g.digits and 0 <= g.i - part.j <= 5]
    own = [g for g in scene.setting.groups if g.digits and 0 <= part.i - g.j <= 6]
    if after and all(w in ("of", "the", "to", "in", ",", "left", "right", "both", "l", "r") or _is_digit(scene, w) for w in scene.words(part.j, after[0].i)):
        return after[0].digits
    if own:
        return own[-1].digits
    return digits_at(scene, None, part.i) or (None,)


# --- what happened to them


def _put(desk: Desk, scene: Scene, group: list[Part], name: str, value: str, i: int, j: int) -> None:
    for part in group:
        for digit in _digits(scene, part):
            for side in part.sides:
                span = (min(i, part.i), max(j, part.j))
                span = span if span[1] - span[0] <= 25 else (i, j)
                desk.add(scene, "injuries", (digit, part.structure, side), name, value, [span], f"{name} of another structure")


def _extent(desk: Desk, scene: Scene, group: list[Part], low: int, high: int) -> None:
    mentions = [m for m in scene.of("extent") if low <= m.i < high and scene.told(m.i)]
    mentions = [m for m in mentions if _belongs(scene, m, group)]
    for m in mentions[:1] if len(mentions) == 1 else _best(scene, mentions, group):
        word = " ".join(scene.words(m.i, m.j))
        if word in ("through", "out", "off"):
            continue
        value = _EXTENTS[m.value]
        if word == "in continuity":
            continue
        if scene.negated(m.i, m.j, 3) and not word.startswith(("not", "no ", "un")):
            continue
        _put(desk, scene, group, "extent", value, m.i, m.j)
    if not mentions and "likewise" in scene.words(group[-1].j, high):
        k = scene.words(group[-1].j, high).index("likewise") + group[-1].j
        _put(desk, scene, group, "extent", "complete", k, k + 1)


def _best(scene: Scene, mentions: list[Mention], group: list[Part]) -> list[Mention]:
    """Of several extents the nearest one; bruised beats 'in continuity'."""
    if not mentions:
        return []
    contused = [m for m in mentions if m.value == "contused"]
    if contused:
        return contused[:1]
    near = min(mentions, key=lambda m: m.i - group[-1].j if m.i >= group[-1].j else group[0].i - m.j)
    return [near]


def _belongs(scene: Scene, m: Mention, group: list[Part]) -> bool:
    """Tell whether no tendon or pulley stands between a property and these structures."""
    i, j = group[0].i, group[-1].j
    if m.i >= j:
        between = [s for s in scene.subjects if j <= s.i and s.j <= m.i]
    else:
        between = [s for s in scene.subjects if m.j <= s.i and s.j <= i]
    blocked = [s for s in between if s.kind in ("tendon", "pulley", "structure", "sided", "bundle", "role") and not (s.kind == "role" and s.mention is not None and s.mention.value in ("nerve", "vessel"))]
    if blocked:
        return False
    if m.j <= i:
        first, last = scene.part(m.i)
        tendon_before = [s for s in scene.subjects if s.kind in ("tendon", "pulley") and s.j <= m.i]
        words = scene.words(m.j, i)
        linked = len(words) <= 5 and (not words or words[0] in ("of", "the", "to", "radial", "ulnar", "both", "are", "a", "common", ":") or "of" in words)
        return linked or (i < last and not tendon_before)
    return True


def _treatment(desk: Desk, scene: Scene, group: list[Part], low: int, high: int) -> None:
    for m in scene.of("deed"):
        if not low <= m.i < high or not scene.told(m.i) or m.value not in _TREATMENTS or not _belongs(scene, m, group):
            continue
        word = " ".join(scene.words(m.i, m.j))
        value = _TREATMENTS[m.value]
        if value == "fixed" and group[0].structure not in ("joint", "volar plate", "collateral ligament"):
            continue
        if value == "left" and (word == "left" and scene.next_word(m.j) not in ("", ".", ",", ";", "alone", "as", "it", "to", "unrepaired")):
            continue
        if word in ("suture", "sutures") and not scene.header and m.i > group[-1].j + 4:
            continue
        if scene.negated(m.i, m.j, 3):
            value = "left" if value == "repaired" else ""
        if value:
            _put(desk, scene, group, "treatment", value, m.i, m.j)
            return
    if _sutured(scene, group, low, high):
        _put(desk, scene, group, "treatment", "repaired", group[0].i, group[-1].j)


def _sutured(scene: Scene, group: list[Part], low: int, high: int) -> bool:
    """'RDN next, 9-0 nylon': a fine suture right beside a nerve or an artery repairs it."""
    if group[0].structure.split()[-1] not in ("nerve", "artery"):
        return False
    for k in range(max(low, group[0].i - 6), min(high, group[-1].j + 14)):
        word = scene.page.words[k]
        if word in ("7-0", "8-0", "9-0", "10-0", "11-0") and scene.told(k):
            return not any(s for s in scene.subjects if s.kind in ("tendon", "pulley") and group[-1].j <= s.i < k)
        if word in ("nine", "ten", "eight") and k + 2 < high and scene.page.words[k + 1] == "-" and scene.page.words[k + 2] in ("zero", "oh", "o"):
            return True
    return False


def _carried(desk: Desk, scene: Scene) -> None:
    """'It was left alone.' 'Nothing done for it.' right after a sentence about a nerve."""
    if scene.subjects and any(s.kind in ("tendon", "pulley", "structure") for s in scene.subjects):
        return
    words = scene.words(scene.sentence.i, min(scene.sentence.i + 4, scene.sentence.j))
    pronoun = any(w in ("it", "this", "both", "these", "they", "nothing", "i", "left") for w in words)
    for m in scene.of("deed"):
        if pronoun and scene.told(m.i) and m.i - scene.sentence.i <= 5 and m.value in ("left", "repaired", "ligated", "grafted", "conduit"):
            value = "left" if scene.negated(m.i, m.j, 3) else _TREATMENTS[m.value]
            for structure, sides, digits in desk.last_parts:
                for digit in digits:
                    for side in sides:
                        desk.add(scene, "injuries", (digit, structure, side), "treatment", value, [(m.i, m.j)], "treatment carried on")
            return


# --- bones


def _bones(desk: Desk, scene: Scene) -> None:
    """Find fixed fractures: a bone or a fracture with wires, pins, plates or screws in one sentence or the next."""
    bones = [m for m in scene.of("bone", "structure") if m.value in _BONES and scene.told(m.i)]
    fixed = [m for m in scene.of("deed") if m.value == "fixed" and scene.told(m.i) and not scene.negated(m.i, m.j, 3)]
    broken = scene.of("fracture") or any(m.kind == "structure" and m.value in _BONES for m in scene.mentions)
    if bones:
        desk.last_bone = (bones[0].value, _bone_digits(scene, bones[0]), bool(broken) or desk.last_bone[2])
    elif broken and not bones:
        desk.last_bone = (desk.last_bone[0], desk.last_bone[1], True)
    if not fixed or scene.sentence.section in ("implants",):
        return
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if any(" ".join(scene.words(m.i, m.j)) in ("fixed", "secured", "pins", "wires", "held with", "fixation", "stabilised", "stabilized", "screw", "wired") for m in fixed) and not broken and not words & {"k-wire", "k-wires", "wire", "wires", "plate", "screws", "k"}:
        return
    if any(m.kind == "tendon" for m in scene.mentions) and not bones and not broken:
        return
    name, digits, _ = desk.last_bone
    if not name:
        return
    for digit in digits or (None,):
        desk.add(scene, "injuries", (digit, name, None), "treatment", "fixed", [(fixed[0].i, fixed[0].j)], "bone fixed")


def _bone_digits(scene: Scene, m: Mention) -> tuple[str | None, ...]:
    return digits_at(scene, None, m.i)
