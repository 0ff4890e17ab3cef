"""Other structures that bear on therapy: nerves, arteries, plates, ligaments, extensor tendons, bones."""

from dataclasses import replace
from itertools import pairwise

from notereader.reader.desk import Desk, Finding
from notereader.reader.page import Mention
from notereader.reader.rules.dealt_out import by_turns
from notereader.reader.rules.pulleys.attach import WEAK, Attachment, Thing, others
from notereader.reader.rules.structures.bones import bones
from notereader.reader.rules.structures.dealt_injuries import told_by_finger
from notereader.reader.rules.structures.injury_words import (
    EXTENTS,
    TELLS_MOST,
    deed_said,
    extent_said,
    fine_suture_at,
    is_fine_suture,
    only_a_share,
    words_said,
)
from notereader.reader.rules.structures.part_digits import (
    EXCEPTING,
    PAIRED,
    Part,
    digits_of,
    hurt_digits,
    hurt_ones,
    told_of,
)
from notereader.reader.rules.structures.structures import named_sides, parts_of
from notereader.reader.rules.structures.whole_side import whole_side
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_SKIP = frozenset(
    ["instructions", "admin", "anaesthesia", "blood_loss", "specimens", "tourniquet", "antibiotics", "dressing"]
)
_NAMES = ("structure", "sided", "bundle", "anynerve", "anyartery", "border")  # kinds that name a structure or its side
_OTHERS = ("tendon", "pulley", "pulley?", "pulleys", "role", "bone")
_GLUE = word_list("injuries", "glue")
_PRONOUNS = word_list("injuries", "pronouns")
_PART_NOUNS = word_list("injuries", "part_nouns")
_BRANCHES = frozenset(["branch", "branches"])
_ALIKE = frozenset(["likewise", "too", "similarly", "ditto", "same", "also"])
_SAME_PLACES = frozenset(["finger", "digit", "side", "level", "thumb", "hand"])
_SIDED = frozenset(["digital nerve", "digital artery", "collateral ligament"])
_JOINTS = frozenset(["joint", "joints", "dip", "dipj", "pip", "pipj", "ip", "ipj", "mcp", "mcpj"])
_JOINS = frozenset(["joined", "repaired", "sutured", "sewed", "mended", "stitched", "united"])  # 'I joined the tendon'


def injuries(desk: Desk, scene: Scene) -> None:
    """Find every other structure of a sentence with its extent and treatment."""
    if scene.sentence.section not in _SKIP:
        _read(desk, scene)
        whole_side(desk, scene)
        bones(desk, scene)
    if scene is desk.scenes[-1]:
        _settle(desk)


def _read(desk: Desk, scene: Scene) -> None:
    goes_on = bool(desk.last_parts) and scene.sentence.i == desk.last_parts_end
    if scene.kinds.isdisjoint(_NAMES) and not goes_on and not _of_nerves(scene) and not desk.listed:
        return
    named = parts_of(desk, scene)
    groups = _joined(scene, [p for p in named if scene.told(p.i)])
    asked = [p for p in named if scene.page.standing[p.i] == "question"]
    if asked and not groups:
        whole = [m for m in words_said(scene) if m.value == "intact"]  # 'Radial digital nerve cut? No, intact.'
        if whole:
            _attach(desk, scene, _joined(scene, asked), whole)
        desk.last_parts = [(p.structure, p.sides, digits_of(desk, scene, p)) for p in asked]
        desk.last_parts_end = scene.sentence.j
    elif groups:
        _attach(desk, scene, groups, words_said(scene))
        desk.last_parts = [(p.structure, p.sides, digits_of(desk, scene, p)) for p in groups[-1]]
        desk.last_parts_end = scene.sentence.j
    elif goes_on and not _nerve_joined(desk, scene):
        _carried(desk, scene, words_said(scene))


def _of_nerves(scene: Scene) -> bool:
    return any(m.value == "nerve" for m in scene.of("role"))


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


def _attach(desk: Desk, scene: Scene, groups: list[list[Part]], words: list[Mention]) -> None:
    """Give each word to the structures it speaks of and lay down what they say."""
    things = [Thing(g[0].i, g[-1].j, n) for n, g in enumerate(groups)]
    branch = all(part.structure == "radial nerve branch" for group in groups for part in group)
    nouns = _PART_NOUNS | _BRANCHES if branch else _PART_NOUNS  # 'superficial radial nerve: a branch was cut'
    attachment = Attachment(scene, things, _rest(scene), [*words, *scene.of("hurt")], nouns)
    said: list[list[Mention]] = [[] for _ in groups]
    for word in words:
        weak = word.kind == "nervestate" or " ".join(scene.words(word.i, word.j)) in WEAK
        for n in attachment.owners(word, loosely=not weak):
            said[n].append(word)
    _tied_it(scene, groups, words, said)
    _bridged(scene, groups, words, said)
    if len(groups) == 1 and (
        _dealt_over_fingers(desk, scene, groups[0], said[0]) or _told_by_finger(desk, scene, groups[0], words)
    ):
        return
    for n, group in enumerate(groups):
        own = said[n] or _likewise(scene, group, said[n - 1] if n else [])
        own = own or (_left_unsaid(scene, group, said[n - 1]) if n else [])
        if not own and n == 0:
            _as_before(desk, scene, group)
        if not own and _but_not(desk, scene, group, [m for words in said[:n] for m in words]):
            _put(desk, scene, group, "extent", "intact", group[0].i, group[-1].j + _NOT_LONG)
        high = groups[n + 1][0].i if n + 1 < len(groups) else scene.sentence.j
        if not own and (share := _bare_share(scene, group)):
            _put(desk, scene, group, "extent", *share)
        extent = _lay_extent(desk, scene, group, own)
        _lay_treatment(desk, scene, group, own, extent, high)


def _bare_share(scene: Scene, group: list[Part]) -> tuple[str, int, int] | None:
    """'Median n. 50 % (ulnar half)', 'UDN: 30 %': how much of a nerve was cut, told by its share alone."""
    end = group[-1].j + (scene.next_word(group[-1].j) in (":", "-"))
    share = next((q for q in scene.quantities if q.i == end and q.unit == "%" and q.high), None)
    nerve = all(part.structure.endswith("nerve") for part in group)
    if share is None or not nerve or not scene.told(share.i) or scene.next_word(share.j) not in _ENDS_SHARE:
        return None
    return ("complete" if share.high == _ALL else "partial"), share.i, share.j


_ALL = 100  # per cent
_ENDS_SHARE = frozenset(["", ".", ",", ";", "(", "-"])


def _dealt_over_fingers(desk: Desk, scene: Scene, group: list[Part], words: list[Mention]) -> bool:
    """'The radial digital nerve was cut in the middle and intact in the ring': each of the finger behind."""
    told = {(m.i, m.j): v for m in words if (v := extent_said(scene, group[0].structure, m))}
    told |= {
        (m.i, m.j): v
        for m in scene.of("extent", "hurt")
        if scene.told(m.i) and (m.i, m.j) not in told and (v := extent_said(scene, group[0].structure, m))
    }
    dealt = by_turns(scene, sorted(told))
    for (i, j), digits in dealt.items():
        for part in group:
            for entry in ((d, part.structure, side) for d in digits for side in part.sides):
                desk.add(scene, "injuries", entry, "extent", told[i, j], [(i, j)], "extent of another structure")
    return bool(dealt)


def _told_by_finger(desk: Desk, scene: Scene, group: list[Part], words: list[Mention]) -> bool:
    """'Divided and repaired in the index and divided and left in the middle': each finger closes its own statement."""
    shares = told_by_finger(scene, group[0].structure, words) if _names_no_finger(group) else []
    for share in shares:
        for part in group:
            for entry in ((d, part.structure, side) for d in share.digits for side in part.sides):
                for name, value, m in share.facts():
                    desk.add(scene, "injuries", entry, name, value, [(m.i, m.j)], f"{name} of another structure")
    return bool(shares)


def _names_no_finger(group: list[Part]) -> bool:
    return all(part.structure in _SIDED and not part.digits for part in group)


def _left_unsaid(scene: Scene, group: list[Part], before: list[Mention]) -> list[Mention]:
    """'In the index the ulnar digital nerve was cut, in the ring the radial': how far is told only once."""
    if not group[0].bare or scene.next_word(group[-1].j) not in _ENDS_CLAUSE:
        return []
    finger = any(g.digits and 0 <= group[0].i - g.j <= 1 for g in scene.setting.groups)
    return [m for m in before if extent_said(scene, group[0].structure, m)] if finger else []


_ENDS_CLAUSE = frozenset(["", ".", ";", ","])


def _tied_it(scene: Scene, groups: list[list[Part]], words: list[Mention], said: list[list[Mention]]) -> None:
    """'The artery was cut; since the finger was pink I tied it off': 'it' is the vessel named last."""
    taken = {id(w) for own in said for w in own}
    for word in words:
        if word.value != "ligated" or id(word) in taken or "it" not in scene.words(word.i, word.j + 1):
            continue
        before = [n for n, g in enumerate(groups) if g[-1].j <= word.i and g[0].structure.endswith("artery")]
        if before:
            said[before[-1]].append(word)


def _bridged(scene: Scene, groups: list[list[Part]], words: list[Mention], said: list[list[Mention]]) -> None:
    """'The nerve was divided; it would not meet, and a conduit was sewn in': it bridges the nerve cut before."""
    taken = {id(w) for own in said for w in own}
    for word in (w for w in words if w.value in ("conduit", "grafted") and id(w) not in taken):
        before = [n for n, g in enumerate(groups) if g[-1].j <= word.i]
        since = [t for t in _rest(scene) if before and groups[before[-1]][-1].j <= t.i < word.i and not t.vague]
        if not before or since or not groups[before[-1]][0].structure.endswith("nerve"):
            continue
        cut = any(extent_said(scene, groups[before[-1]][0].structure, m) == "complete" for m in said[before[-1]])
        lost = not _LACKS.isdisjoint(scene.words(groups[before[-1]][-1].j, word.i))  # 'RDN: 4 mm defect -> conduit'
        if cut or lost:
            said[before[-1]].append(word)


_LACKS = frozenset(["defect", "deficit", "gap", "missing"])


def _rest(scene: Scene) -> list[Thing]:
    """Return the subjects that are none of ours; words of nerve and vessel repair are ours."""
    ours = {s.i for s in scene.subjects if s.mention is not None and s.mention.value in ("nerve", "vessel")}
    ours |= {s.i for s in scene.subjects if scene.words(s.i, s.j + 1) == ["cutaneous", "nerve"]}  # a graft's name
    pointed = [g for g in scene.setting.groups if g.digits and _BY_PLACE.intersection(scene.words(g.i, g.j))]
    fingers = {k for g in pointed for k in range(g.i, g.j)}  # 'the latter' is the finger, no pulley
    return [t for t in others(scene, _OTHERS) if t.i not in ours | fingers]


_BY_PLACE = frozenset(["former", "latter"])


def _likewise(scene: Scene, group: list[Part], before: list[Mention]) -> list[Mention]:
    """'the median nerve is divided, the radial artery likewise', 'and the artery with it', 'so were both bundles'."""
    after = scene.words(group[-1].j, min(group[-1].j + 3, scene.sentence.j))
    ahead = set(
        scene.words(max(scene.sentence.i, group[0].i - (9 if group[0].i - 9 > scene.sentence.i else 4)), group[0].i)
    )
    if "same" in after and scene.next_word(group[-1].j + after.index("same") + 1) in _SAME_PLACES:
        after.remove("same")  # 'the ulnar digital nerve of the same finger was normal'
    alike = bool((_ALIKE - {"also"}) & set(after)) or after[:2] in (["with", "it"], ["as", "well"])
    alike = alike or (after[:1] == ["also"] and (after[1:2] or [""])[0] in _NOTHING_MORE)
    if not (alike or ({"so", "as"} & ahead and _AUXILIARIES & ahead)):
        return []
    earlier = [m for m in scene.of("extent") if m.j <= group[0].i and scene.told(m.i)]
    return list(before) or earlier[-1:]


def _but_not(desk: Desk, scene: Scene, group: list[Part], before: list[Mention]) -> bool:
    """'The radial digital nerve was cut and the ulnar one was not': of the cut told just before."""
    after = scene.words(group[-1].j, min(group[-1].j + _NOT_LONG + 1, scene.sentence.j))
    after = after[1:] if after[:1] in (["one"], ["ones"], ["nerve"], ["artery"]) else after
    if after[:2] not in (["was", "not"], ["were", "not"], ["had", "not"]) or (after[2:3] or [""])[0] not in _ENDS:
        return False
    cuts = [m for m in before if extent_said(scene, group[0].structure, m) in ("complete", "partial")]
    last = next((f for f in reversed(desk.laid("extent")) if f.group == "injuries"), None)
    told = last is not None and scene.sentence.i == desk.last_parts_end and last.value in ("complete", "partial")
    return bool(cuts) or told


_NOT_LONG = 3  # words: 'one was not'
_ENDS = frozenset(["", ".", ",", ";", ")", "but", "and"])
_AUXILIARIES = frozenset(["were", "was", "are", "is", "did", "do", "does", "had", "has", "have"])
_NOTHING_MORE = frozenset(["", ".", ",", ";", "but", "and", ")"])


def _as_before(desk: Desk, scene: Scene, group: list[Part]) -> None:
    """'RDN intact. UDN likewise.': the extent told in the sentence before."""
    after = set(scene.words(group[-1].j, min(group[-1].j + 2, scene.sentence.j)))
    if scene.sentence.i != desk.last_parts_end or not _ALIKE & after:
        return
    last = next((f for f in reversed(desk.laid("extent")) if f.group == "injuries"), None)
    if last is not None:
        _put(desk, scene, group, "extent", str(last.value), group[0].i, group[-1].j + 1)


# --- laying down


def _put(desk: Desk, scene: Scene, group: list[Part], name: str, value: str, i: int, j: int) -> None:
    for part in group:
        span = (min(i, part.i), max(j, part.j))
        span = span if span[1] - span[0] <= 25 else (i, j)
        digits = digits_of(desk, scene, part)
        if name == "treatment" and not any(g.digits for g in scene.setting.groups):
            digits = hurt_digits(desk, part, digits) or digits
        for digit in digits:
            for side in part.sides:
                entry = (digit, part.structure, side)
                desk.add(scene, "injuries", entry, name, value, [span], f"{name} of another structure")


def _lay_extent(desk: Desk, scene: Scene, group: list[Part], words: list[Mention]) -> str:
    """Lay down how much of the structures was cut. RETURNS that extent, or ''."""
    found = [(value, m) for m in words if (value := extent_said(scene, group[0].structure, m))]
    if not found:
        return ""
    value, m = min(found, key=lambda f: EXTENTS.index(f[0]))
    if value == "complete" and only_a_share(scene, group[0].i):
        value = "partial"
    if value == "intact" and (group := _without_excepted(desk, scene, group, m)) == []:
        return ""
    _put(desk, scene, group, "extent", value, m.i, m.j)
    return value


def _without_excepted(desk: Desk, scene: Scene, group: list[Part], word: Mention) -> list[Part]:
    """'Both nerves were intact bar the radial one', 'all intact except the ulnar nerve of the ring': not of that."""
    behind = scene.words(word.j, min(word.j + _SOON, scene.sentence.j))
    at = next((k for k, w in enumerate(behind) if w in EXCEPTING), None)
    if at is None:
        return group
    if group[0].i >= word.j + at:
        return []
    named = any(g.digits and g.i > word.j + at for g in scene.setting.groups)
    if named and any(len(digits_of(desk, scene, part)) > 1 for part in group):
        return group  # 'of both fingers, except the ulnar of the ring': told of that nerve by itself
    side = next((w for w in behind[at:] if w in ("radial", "ulnar")), "")
    left = [replace(part, sides=tuple(s for s in part.sides if s != side)) for part in group]
    return [part for part in left if part.sides]


_SOON = 7  # words


def _lay_treatment(desk: Desk, scene: Scene, group: list[Part], words: list[Mention], extent: str, high: int) -> None:
    """Lay down what was done to the structures; what is intact is not 'left'."""
    structure = group[0].structure
    found = [(value, m) for m in words if (value := deed_said(scene, structure, m))]
    found = [(value, m) for value, m in found if not (value == "left" and extent == "intact")]
    if found:
        value, m = min(found, key=lambda f: TELLS_MOST.index(f[0]))
        _put(desk, scene, group, "treatment", value, m.i, m.j)
    elif extent != "intact":
        at = fine_suture_at(scene, structure, group[0].i, group[-1].j, high)
        if at is not None:
            _put(desk, scene, group, "treatment", "repaired", at, at + 1)


# --- without a name

_BRIDGES = ("conduit", "grafted")


def _carried(desk: Desk, scene: Scene, words: list[Mention]) -> None:
    """'It was left alone.' 'That left a gap, so a conduit was sewn in.' right after a sentence about a nerve."""
    blocked = [t for t in _rest(scene) if not t.vague or scene.word_before(t.i) in _JOINS]
    opening = set(scene.words(scene.sentence.i, min(scene.sentence.i + 6, scene.sentence.j)))
    answer = scene.page.words[scene.sentence.i - 1] == "?"
    if blocked or not (answer or _PRONOUNS & opening or _opens_with_deed(scene) or _tells_of_a_tube(desk, scene)):
        return
    structure = desk.last_parts[0][0]
    deeds = [(value, m) for m in words if (value := deed_said(scene, structure, m))]
    if not _JOINTS.isdisjoint(scene.said):
        deeds = [(value, m) for value, m in deeds if value != "fixed"]  # 'A K-wire across the DIP joint guards it'
    if any(g.tendons for g in scene.setting.groups) or {"tendon", "tendons"} & scene.said:
        deeds = [(value, m) for value, m in deeds if value not in _BRIDGES]  # 'I bridged the defect with palmaris'
    if _all_whole(desk):  # 'Both nerves fine. ... tube left in', '... It was sewn with 4-0'
        deeds = [(value, m) for value, m in deeds if value not in _BRIDGES and value != "repaired"]
    if not _TO_BONE.isdisjoint(scene.said):
        deeds = [(value, m) for value, m in deeds if value != "repaired"]  # 'I put it back to bone'
    if deeds and not _nothing_elsewhere(scene):
        value, m = min(deeds, key=lambda f: TELLS_MOST.index(f[0]))
        if value in _BRIDGES or m.i - scene.sentence.i <= 6:
            _carry(desk, scene, "treatment", value, m)
    early = [m for m in words if m.i - scene.sentence.i <= 5 and scene.words(m.i, m.j) != ["all", "the", "way"]]
    extents = [(value, m) for m in early if (value := extent_said(scene, structure, m))]
    if extents and "both" in opening and _both_of_next(desk, scene, extents):
        return
    if extents and {"it", "they", "both"} & opening:
        value, m = min(extents, key=lambda f: EXTENTS.index(f[0]))
        _carry(desk, scene, "extent", value, m)
    desk.last_parts_end = scene.sentence.j


def _all_whole(desk: Desk) -> bool:
    """Tell whether the nerves or vessels told of last were all found whole, so that nothing bridges them."""
    entries = [(d, structure, side) for structure, sides, digits in desk.last_parts for d in digits for side in sides]
    told = [f.value for entry in entries for f in desk.told_of("injuries", entry) if f.field == "extent"]
    return bool(told) and set(told) == {"intact"}


def _both_of_next(desk: Desk, scene: Scene, extents: list[tuple[str, Mention]]) -> bool:
    """'Index: ulnar digital nerve cut; radial intact. Ring: both intact.': both of the finger named now."""
    own = [g for g in scene.setting.groups if g.digits and not g.tendons]
    structure, _, before = desk.last_parts[0]
    if len(own) != 1 or own[0].i > scene.sentence.i + 1 or structure not in PAIRED or own[0].digits == before:
        return False
    if scene.of("generic", "tendon"):
        return False  # 'Ring finger tendons both all right.'
    if structure == "digital artery":
        return True  # 'LF radial artery clipped. RF both fine': nerves or arteries, nobody can tell
    value, m = min(extents, key=lambda f: EXTENTS.index(f[0]))
    for digit in own[0].digits:
        for side in ("radial", "ulnar"):
            desk.add(scene, "injuries", (digit, structure, side), "extent", value, [(m.i, m.j)], "extent told of both")
    desk.last_parts_end = scene.sentence.j
    return True


_TO_BONE = frozenset(["bone", "anchor", "button", "pull-out", "phalanx"])


def _nothing_elsewhere(scene: Scene) -> bool:
    """'Nothing was sutured in the canal roof': a place of its own, and not the nerve told of before."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return words[0] == "nothing" and any(a in ("in", "of", "at") and b == "the" for a, b in pairwise(words))


def _opens_with_deed(scene: Scene) -> bool:
    """'Ulnar digital nerve: cut through. Repaired with 9-0.': a fine suture behind a verb that opens its sentence."""
    opens = any(m.i == scene.sentence.i for m in scene.of("deed", "mending"))
    return opens and any(is_fine_suture(scene, k) for k in range(scene.sentence.i, scene.sentence.j))


def _tells_of_a_tube(desk: Desk, scene: Scene) -> bool:
    """'We went with a collagen conduit.': what but the cut nerve told of right before is put into one."""
    if not any(m.value == "conduit" and "conduit" in scene.words(m.i, m.j) for m in scene.of("deed", "mending")):
        return False
    entries = [(d, structure, side) for structure, sides, digits in desk.last_parts for d in digits for side in sides]
    told = [f for entry in entries for f in desk.told_of("injuries", entry) if f.field == "extent"]
    return any(f.value == "complete" for f in told)


def _carry(desk: Desk, scene: Scene, name: str, value: str, m: Mention) -> None:
    for structure, sides, digits in desk.last_parts:
        for digit in digits:
            for side in sides:
                entry = (digit, structure, side)
                desk.add(scene, "injuries", entry, name, value, [(m.i, m.j)], f"{name} told in the next sentence")


def _nerve_joined(desk: Desk, scene: Scene) -> bool:
    """'Nerve ends met easily. 9-0 nylon, 3 epineurial bites': a fine suture among words of nerve repair."""
    at = next((k for k in range(scene.sentence.i, scene.sentence.j) if is_fine_suture(scene, k)), None)
    if not _of_nerves(scene) or at is None or any(not t.vague for t in _rest(scene)):
        return False
    hurt = {f.entry for f in hurt_ones(desk, "nerve")}
    if len(hurt) == 1:
        rule = "nerve joined with a fine suture"
        desk.add(scene, "injuries", hurt.pop(), "treatment", "repaired", [(at, at + 1)], rule)
        return True
    return bool(hurt)


# --- at the end


def _settle(desk: Desk) -> None:
    """Give a nerve or an artery told without its side the one side told elsewhere; drop it where several are."""
    gone: set[int] = set()
    for f in desk.findings:
        if f.group != "injuries":
            continue
        sides = _sides_told(desk, f) if not f.entry[2] and f.entry[1] in _SIDED else []
        if _of_a_branch(desk, f) or len(sides) > 1:
            gone.add(id(f))
        elif len(sides) == 1:
            f.entry = (f.entry[0], f.entry[1], sides[0])
    desk.drop(gone)


def _of_a_branch(desk: Desk, f: Finding) -> bool:
    """'The motor branch of the median nerve was whole': no word of the nerve itself."""
    words, i = desk.page.words, f.spans[0][0]
    lead = [w for w in words[max(0, i - _SHORT_LEAD) : i] if w != "the"]
    return f.entry[1] in _TRUNKS and lead[-2:] in (["branch", "of"], ["branches", "of"])


_TRUNKS = frozenset(["median nerve", "ulnar nerve"])
_SHORT_LEAD = 3  # words: 'branch of the'


def _sides_told(desk: Desk, f: Finding) -> list[str]:
    """Return the sides of a structure told hurt, else told at all, for the digit of a finding."""
    own = [g for g in told_of(desk, f.entry[1]) if g.entry[0] == f.entry[0] and g.entry[2]]
    hurt = [g for g in own if g.value != "intact"]
    sides = list(dict.fromkeys(g.entry[2] for g in hurt or own if g.entry[2]))
    return sides or named_sides(desk, f.entry[1])
