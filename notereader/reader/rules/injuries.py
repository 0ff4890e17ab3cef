"""Other structures that bear on therapy: nerves, arteries, plates, ligaments, extensor tendons. Bones are in `bones`."""

from notereader.reader.desk import Desk, Finding
from notereader.reader.page import Mention
from notereader.reader.rules.attach import WEAK, Attachment, Thing, is_denied, others
from notereader.reader.rules.bones import bones
from notereader.reader.rules.structures import Part, digits_of, named_sides, parts_of
from notereader.reader.scene import Scene

_SKIP = frozenset(
    ["instructions", "admin", "anaesthesia", "blood_loss", "specimens", "tourniquet", "antibiotics", "dressing"]
)
_OTHERS = ("tendon", "pulley", "pulley?", "pulleys", "role", "bone")
_GLUE = frozenset(
    "and , & + / or the both a an with its of proper digital together also as well radial ulnar each two both".split()
)
_TREATMENTS = {
    "repaired": "repaired",
    "reinserted": "repaired",
    "grafted": "grafted",
    "conduit": "conduit",
    "ligated": "ligated",
    "fixed": "fixed",
    "left": "left",
}
# Of several deeds in one sentence the first of these tells most: a graft is sewn in, a tied vessel was cut.
_TELLS_MOST = ("grafted", "conduit", "ligated", "fixed", "repaired", "left")
_EXTENTS = ("contused", "partial", "complete", "intact")
_FINE = frozenset(["7-0", "8-0", "9-0", "10-0", "11-0"])
_SPOKEN = frozenset(["seven", "eight", "nine", "ten"])
_BARE_LEFT = frozenset(["", ".", ",", ";", ")", "alone", "as", "it", "to", "unrepaired", "and", "be", "for"])
# 'all divided', 'both repaired' are one phrase of quantity; what they tell is in their last word.
_ALL_TOLD = {"divided": ("extent", "complete"), "repaired": ("deed", "repaired"), "sutured": ("deed", "repaired")}
_NO_EXTENT = frozenset(["through", "out", "off"])
_CUT_WORDS = frozenset("through cut divided severed lacerated lac laceration transected width thickness across its".split())
_HARM = frozenset("injury damage laceration division lesion cut injuries".split())
_PRONOUNS = frozenset("it this both these they them that nothing i left gap defect ends".split())
_LIGATABLE = frozenset(["digital artery", "radial artery", "ulnar artery"])
_SIDED = frozenset(["digital nerve", "digital artery", "collateral ligament"])
_FIXABLE = frozenset(["joint", "volar plate", "collateral ligament"])


def injuries(desk: Desk, scene: Scene) -> None:
    """Find every other structure of a sentence with its extent and treatment."""
    if scene.sentence.section not in _SKIP:
        _read(desk, scene)
        bones(desk, scene)
    if scene is desk.scenes[-1]:
        _settle(desk)


def _read(desk: Desk, scene: Scene) -> None:
    parts = [p for p in parts_of(desk, scene) if scene.told(p.i)]
    groups = _joined(scene, parts)
    words = _said(scene)
    _attach(desk, scene, groups, words)
    if groups:
        desk.last_parts = [(p.structure, p.sides, digits_of(desk, scene, p)) for p in groups[-1]]
        desk.last_parts_end = scene.sentence.j
    elif desk.last_parts and scene.sentence.i == desk.last_parts_end and not _nerve_joined(desk, scene):
        _carried(desk, scene, words)


def _joined(scene: Scene, parts: list[Part]) -> list[list[Part]]:
    """Group structures named together: 'ulnar nerve and ulnar artery, each divided'."""
    groups: list[list[Part]] = []
    for part in parts:
        same = bool(groups) and groups[-1][-1].i == part.i
        if same or (groups and not part.bare and _glued(scene, groups[-1][-1].j, part.i)):
            groups[-1].append(part)
        else:
            groups.append([part])
    return groups


def _glued(scene: Scene, i: int, j: int) -> bool:
    between = [scene.page.words[k] for k in range(i, j) if k not in scene.page.digit_words]
    return len(between) <= 6 and all(w in _GLUE for w in between)


# --- which words speak of them


def _said(scene: Scene) -> list[Mention]:
    """Return the words of extent and treatment of a sentence; of overlapping ones of a kind the longest."""
    found = [*_kept(scene, ("extent", "nervestate")), *_kept(scene, ("mending", "deed"))]
    shares = [(m.i, m.j) for m in scene.of("fraction")]
    shares += [(q.i, q.j) for q in scene.quantities if q.unit == "%" and q.high is not None and q.high < 100]
    found += [Mention("extent", "partial", i, j) for i, j in shares if scene.told(i) and _of_a_cut(scene, i, j)]
    pairs = range(scene.sentence.i, scene.sentence.j - 1)
    found += [Mention("nervestate", "unbroken", k, k + 2) for k in pairs if scene.words(k, k + 2) == ["in", "continuity"]]
    found += [Mention("unhurt", "intact", i, j) for i, j in _no_injury(scene)]
    found += [
        Mention(*_ALL_TOLD[scene.page.words[m.j - 1]], m.j - 1, m.j)
        for m in scene.of("quantifier")
        if m.j - m.i > 1 and scene.page.words[m.j - 1] in _ALL_TOLD and scene.told(m.i)
    ]
    return sorted(found, key=lambda m: m.i)


def _kept(scene: Scene, kinds: tuple[str, ...]) -> list[Mention]:
    taken: set[int] = set()
    kept: list[Mention] = []
    for m in sorted(scene.of(*kinds), key=lambda m: (m.i - m.j, kinds.index(m.kind))):
        if scene.told(m.i) and not any(k in taken for k in range(m.i, m.j)):
            taken.update(range(m.i, m.j))
            kept.append(m)
    return kept


def _no_injury(scene: Scene) -> list[tuple[int, int]]:
    """Return 'no injury to', 'neither ... was injured'."""
    words = scene.page.words
    found = [(m.i, m.j) for m in scene.of("hurt") if "neither" in scene.words(scene.sentence.i, m.i) and is_denied(scene, m)]
    for k in range(scene.sentence.i, scene.sentence.j - 2):
        if words[k] in ("no", "without") and words[k + 1] in _HARM and words[k + 2] in ("to", "of", "in"):
            found.append((k, k + 3))
    return [(i, j) for i, j in found if scene.told(i)]


def _of_a_cut(scene: Scene, i: int, j: int) -> bool:
    """Tell whether a share is that of a cut: 'one third through', 'cut for 30 %'."""
    around = [*scene.words(max(scene.sentence.i, i - 2), i), *scene.words(j, min(j + 3, scene.sentence.j))]
    return bool(_CUT_WORDS & set(around))


def _attach(desk: Desk, scene: Scene, groups: list[list[Part]], words: list[Mention]) -> None:
    """Give each word to the structures it speaks of and lay down what they say."""
    things = [Thing(g[0].i, g[-1].j, n) for n, g in enumerate(groups)]
    attachment = Attachment(scene, things, _rest(scene), [*words, *scene.of("hurt")], frozenset())
    said: list[list[Mention]] = [[] for _ in groups]
    for word in words:
        weak = (word.kind == "nervestate" and word.value != "unbroken") or " ".join(scene.words(word.i, word.j)) in WEAK
        for n in attachment.owners(word, loosely=not weak):
            said[n].append(word)
    for n, group in enumerate(groups):
        own = said[n] or _likewise(scene, group, said[n - 1] if n else [])
        if not own and n == 0:
            _as_before(desk, scene, group)
        high = groups[n + 1][0].i if n + 1 < len(groups) else scene.sentence.j
        extent = _extent(desk, scene, group, own)
        _treatment(desk, scene, group, own, extent, high)


def _rest(scene: Scene) -> list[Thing]:
    """Return the subjects that are none of ours; words of nerve and vessel repair are ours."""
    ours = {s.i for s in scene.subjects if s.mention is not None and s.mention.value in ("nerve", "vessel")}
    return [t for t in others(scene, _OTHERS) if t.i not in ours]


def _likewise(scene: Scene, group: list[Part], before: list[Mention]) -> list[Mention]:
    """'the median nerve is divided, the radial artery likewise', 'and the artery with it', 'so were both bundles'."""
    after = scene.words(group[-1].j, min(group[-1].j + 3, scene.sentence.j))
    ahead = scene.words(max(scene.sentence.i, group[0].i - 4), group[0].i)
    alike = {"likewise", "too", "similarly", "ditto", "same"} & set(after) or after[:2] == ["with", "it"]
    if not (alike or ({"so", "as"} & set(ahead) and {"were", "was", "are", "is"} & set(ahead))):
        return []
    if before:
        return list(before)
    earlier = [m for m in scene.of("extent") if m.j <= group[0].i and scene.told(m.i)]
    return earlier[-1:] if {"so", "as"} & set(ahead) or alike else []


def _as_before(desk: Desk, scene: Scene, group: list[Part]) -> None:
    """'RDN intact. UDN likewise.': the extent told in the sentence before."""
    after = set(scene.words(group[-1].j, min(group[-1].j + 2, scene.sentence.j)))
    if scene.sentence.i != desk.last_parts_end or not {"likewise", "too", "ditto", "same", "also"} & after:
        return
    last = next((f for f in reversed(desk.findings) if f.group == "injuries" and f.field == "extent"), None)
    if last is not None:
        _put(desk, scene, group, "extent", str(last.value), group[0].i, group[-1].j + 1)


# --- what they say


def _put(desk: Desk, scene: Scene, group: list[Part], name: str, value: str, i: int, j: int) -> None:
    for part in group:
        span = (min(i, part.i), max(j, part.j))
        span = span if span[1] - span[0] <= 25 else (i, j)
        for digit in digits_of(desk, scene, part):
            for side in part.sides:
                entry = (digit, part.structure, side)
                desk.add(scene, "injuries", entry, name, value, [span], f"{name} of another structure")


def _extent(desk: Desk, scene: Scene, group: list[Part], words: list[Mention]) -> str:
    """Lay down how much of the structures was cut; a bruise or a cut beats 'intact'."""
    found: list[tuple[str, Mention]] = []
    for m in words:
        value = _extent_said(scene, m)
        if value:
            found.append((value, m))
    if not found:
        return ""
    value, m = min(found, key=lambda f: _EXTENTS.index(f[0]))
    _put(desk, scene, group, "extent", value, m.i, m.j)
    return value


def _extent_said(scene: Scene, m: Mention) -> str:
    if m.kind == "unhurt" or (m.value == "unbroken" and not is_denied(scene, m, 3)):
        return "intact"
    if m.kind not in ("extent", "nervestate") or m.value not in _EXTENTS:
        return ""
    word = " ".join(scene.words(m.i, m.j))
    if word in _NO_EXTENT and not (word == "through" and scene.next_word(m.j) in ("", ",", ".", ";", ")")):
        return ""
    if is_denied(scene, m, 3) and not word.startswith(("not", "no ", "un", "without")):
        neither = "neither" in scene.words(scene.sentence.i, m.i)
        return "intact" if neither and m.value in ("complete", "partial") else ""
    return m.value


def _treatment(desk: Desk, scene: Scene, group: list[Part], words: list[Mention], extent: str, high: int) -> None:
    """Lay down what was done to the structures."""
    found: list[tuple[str, Mention]] = []
    for m in words:
        value = _deed(scene, group[0].structure, m)
        if value and not (value == "left" and extent == "intact"):
            found.append((value, m))
    if found:
        value, m = min(found, key=lambda f: _TELLS_MOST.index(f[0]))
        _put(desk, scene, group, "treatment", value, m.i, m.j)
    elif extent != "intact":
        at = _fine_suture(scene, group, high)
        if at is not None:
            _put(desk, scene, group, "treatment", "repaired", at, at + 1)


def _deed(scene: Scene, structure: str, m: Mention) -> str:
    """Return what a word says was done to a structure, or ''."""
    if m.kind not in ("deed", "mending") or m.value not in _TREATMENTS:
        return ""
    word = " ".join(scene.words(m.i, m.j))
    value = _TREATMENTS[m.value]
    if value == "fixed" and structure not in _FIXABLE:
        return ""
    if value == "ligated" and structure not in _LIGATABLE:
        return ""
    if value == "left" and word in ("left", "was left", "were left") and scene.next_word(m.j) not in _BARE_LEFT:
        return ""
    if word in ("suture", "sutures") and not scene.header and scene.next_word(m.j) not in ("of", "to"):
        return ""
    if word.startswith(("not", "no ", "un", "nothing", "without")):
        return value
    after = scene.words(m.j, min(m.j + 2, scene.sentence.j))
    if is_denied(scene, m, 3) or after in (["was", "not"], ["were", "not"]) or after[:1] in (["omitted"], ["deferred"]):
        return "left" if value == "repaired" else ""
    return value


def _fine_suture(scene: Scene, group: list[Part], high: int) -> int | None:
    """Return the word of a fine suture right beside a nerve or an artery: 'RDN next, 9-0 nylon'."""
    if group[0].structure.split()[-1] not in ("nerve", "artery", "branch"):
        return None
    end = min(high, group[-1].j + 14)
    taken = [s.i for s in scene.subjects if s.kind in ("tendon", "pulley") and s.i >= group[-1].j]
    for k in range(group[-1].j, min([end, *taken])):
        if _is_fine(scene, k):
            return k
    before = range(max(scene.sentence.i, group[0].i - 5), group[0].i)
    joined = not {",", ";", ".", "and"} & set(scene.words(before.start, group[0].i))
    return next((k for k in before if joined and _is_fine(scene, k)), None)


def _is_fine(scene: Scene, k: int) -> bool:
    words = scene.page.words
    if words[k] in _FINE:
        return scene.told(k)
    if words[k] in ("7", "8", "9", "10", "11") and words[k + 1 : k + 3] in (["-", "0"], ["/", "0"]):
        return scene.told(k)
    spoken = words[k] in _SPOKEN and words[k + 1 : k + 2] in (["-"], ["zero"], ["oh"], ["o"])
    return spoken and words[k + 2 : k + 3] in (["zero"], ["oh"], ["o"], ["nylon"], ["prolene"], ["ethilon"])


# --- without a name


def _carried(desk: Desk, scene: Scene, words: list[Mention]) -> None:
    """'It was left alone.' 'That left a gap of 8 mm, so a conduit was sewn in.' right after a sentence about a nerve."""
    blocked = [t for t in _rest(scene) if not t.vague]
    opening = set(scene.words(scene.sentence.i, min(scene.sentence.i + 6, scene.sentence.j)))
    if blocked or not _PRONOUNS & opening:
        return
    structure = desk.last_parts[0][0]
    deeds = [(value, m) for m in words if (value := _deed(scene, structure, m))]
    if deeds:
        value, m = min(deeds, key=lambda f: _TELLS_MOST.index(f[0]))
        if value in ("conduit", "grafted") or m.i - scene.sentence.i <= 6:
            _carry(desk, scene, "treatment", value, m)
    extents = [(value, m) for m in words if (value := _extent_said(scene, m)) and m.i - scene.sentence.i <= 5]
    if extents and {"it", "they", "both"} & opening:
        value, m = min(extents, key=lambda f: _EXTENTS.index(f[0]))
        _carry(desk, scene, "extent", value, m)
    desk.last_parts_end = scene.sentence.j


def _carry(desk: Desk, scene: Scene, name: str, value: str, m: Mention) -> None:
    for structure, sides, digits in desk.last_parts:
        for digit in digits:
            for side in sides:
                entry = (digit, structure, side)
                desk.add(scene, "injuries", entry, name, value, [(m.i, m.j)], f"{name} told in the next sentence")


def _nerve_joined(desk: Desk, scene: Scene) -> bool:
    """'Nerve ends met easily. 9-0 nylon, 3 epineurial bites': a fine suture among words of nerve repair."""
    nerve = any(m.kind == "role" and m.value == "nerve" for m in scene.mentions)
    at = next((k for k in range(scene.sentence.i, scene.sentence.j) if _is_fine(scene, k)), None)
    if not nerve or at is None or any(not t.vague for t in _rest(scene)):
        return False
    hurt = [f.entry for f in desk.findings if f.group == "injuries" and f.entry[1].endswith("nerve") and f.value != "intact"]
    if len(set(hurt)) == 1:
        desk.add(scene, "injuries", hurt[0], "treatment", "repaired", [(at, at + 1)], "nerve joined with a fine suture")
    return bool(hurt)


# --- at the end


def _settle(desk: Desk) -> None:
    """Give a nerve or an artery told without its side the one side told elsewhere; drop it where several are."""
    kept: list[Finding] = []
    for f in desk.findings:
        if f.group != "injuries" or f.entry[2] or f.entry[1] not in _SIDED:
            kept.append(f)
            continue
        sides = _sides_told(desk, f)
        if len(sides) == 1:
            f.entry = (f.entry[0], f.entry[1], sides[0])
        if len(sides) < 2:
            kept.append(f)
    desk.findings[:] = kept


def _sides_told(desk: Desk, f: Finding) -> list[str]:
    """Return the sides of a structure told hurt, else told at all, for the digit of a finding."""
    own = [g for g in desk.findings if g.group == "injuries" and g.entry[:2] == f.entry[:2] and g.entry[2]]
    hurt = [g for g in own if g.value != "intact"]
    sides = list(dict.fromkeys(g.entry[2] for g in hurt or own if g.entry[2]))
    return sides or named_sides(desk, f.entry[1])
