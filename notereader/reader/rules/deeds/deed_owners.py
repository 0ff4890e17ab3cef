"""Which tendons a deed was done to."""

from notereader.reader.desk import Desk
from notereader.reader.groups import WRIST, Group, Target
from notereader.reader.page import Mention
from notereader.reader.rules.carried import carried
from notereader.reader.rules.deeds.deeds_in_focus import from_focus, the_one_nicked
from notereader.reader.rules.deeds.tenodeses import by_way_of, stump_fixed, to_a_side
from notereader.reader.rules.owners import near_digits, others, tendon_owner
from notereader.reader.scene import Scene, Subject, group_targets, named_together
from notereader.vocabulary.wordlists import word_list

_FOR_THEIR_SAKE = frozenset(["so", "lest", "over", "above", "around", "keep", "prevent", "protect", "cover", "hold"])
_CALLED_CUT = frozenset(["severed", "divided", "transected"])
_TREATED_WORDS = word_list("tendons", "treated_words")
_SUTURE_OF = (["suture", "of"], ["sutures", "of"])
_PAIR = 2
_FLAPS = frozenset(
    ["flap", "flaps", "edge", "edges", "tongue", "lap", "fibres", "fibers", "beak", "shoulder", "tag", "lip"]
)


def treated(desk: Desk, scene: Scene, deed: Mention) -> list[Target]:
    """Return the tendons a deed was done to, and with 'FDP of both and FDS of the middle' those of both groups."""
    targets = _treated(desk, scene, deed)
    group = next((g for g in scene.setting.groups if g.tendons and targets == group_targets(scene, g)), None)
    wide = named_together(scene, group) if group is not None and group.j <= deed.i else None
    return [*group_targets(scene, wide), *targets] if wide is not None else targets


def _treated(desk: Desk, scene: Scene, deed: Mention) -> list[Target]:
    told = _pointed_at(desk, scene, deed)
    if told is not None:
        return told
    targets, group = tendon_owner(desk, scene, deed.i, deed.j)
    subject = scene.owner(deed.i, deed.j)
    told = None if targets else _of_its_line(scene, deed, subject)
    if told is not None:
        return told
    if nicked := _of_its_flap(desk, scene, deed, subject):
        return nicked
    if _nothing_to_do(scene, deed):
        return []
    if targets:
        return _of_the_named(scene, deed, targets, group, subject)
    if subject is None or _its_suture(subject, deed) or _no_suture(scene, subject, deed):
        return from_focus(desk, scene, deed)
    if group is None:
        return []
    if deed.value == "trimmed" and group.digits and subject.kind == "digit" and not scene.header:
        return the_one_nicked(desk, group.digits)  # 'in the small finger I was content to trim the loose fibers'
    return _of_a_group(desk, scene, deed, group)


def _pointed_at(desk: Desk, scene: Scene, deed: Mention) -> list[Target] | None:
    """'I resected it', 'its frayed edge was trimmed': what the words around a deed point at, None where none does."""
    value, after = deed.value, scene.next_word(deed.j)
    if _said_before(scene, deed):
        return []
    if value == "trimmed":
        if its := _whose_edge(scene, deed):
            return group_targets(scene, its)
        if _ahead_of_its_stitches(scene, deed):
            return group_targets(scene, scene.setting.groups[0])
    if after in ("it", "them"):
        return _last_named(desk, scene, deed)
    if value == "left" and scene.words(deed.j, deed.j + 2) in _FOR_IT:
        return _last_named(desk, scene, deed)
    if value == "tenodesed":
        if after in ("to", "onto", "into") or scene.words(deed.j - 1, deed.j) == ["to"]:
            return _last_named(desk, scene, deed)
        if by_way_of(scene, deed) or to_a_side(scene, deed):
            return stump_fixed(desk, scene, deed)
    return None


_FOR_IT = (["to", "it"], ["about", "it"], ["for", "it"])


def _said_before(scene: Scene, deed: Mention) -> bool:
    """'... and I left that alone. No suture the ends of the profundus were clean': said again of what was just left."""
    short = deed.j == deed.i + 2  # not 'No attempt was made to repair the FDS'
    opens = short and deed.value == "left" and deed.i == scene.sentence.i and scene.page.words[deed.i] == "no"
    return opens and scene.next_word(deed.j) in ("the", "both")


def _whose_edge(scene: Scene, deed: Mention) -> Group | None:
    """'FDS partially cut: its frayed edge was trimmed'; not so with 'while its radial slip was trimmed'."""
    first, _ = scene.part(deed.i)
    before = [g for g in scene.setting.groups if g.tendons and g.j <= first and not g.reference]
    its_slip = any(first < m.i < deed.i for m in scene.of("slip"))
    return before[-1] if before and scene.page.words[first] == "its" and not its_slip else None


def _of_its_line(scene: Scene, deed: Mention, subject: Subject | None) -> list[Target] | None:
    """Return the tendon of the row of a grid, or the one that the sentence opens with; None where there is neither."""
    label = _label_of_cell(scene) if deed.value in ("left", "trimmed") else None
    if label is not None:
        return group_targets(scene, label)
    return (_of_its_subject(scene, deed, subject) if subject is not None else []) or None


def _of_its_flap(desk: Desk, scene: Scene, deed: Mention, subject: Subject | None) -> list[Target]:
    """'The flap was pared flush': of the one tendon that was cut in part."""
    if deed.value != "trimmed" or scene.header or _FLAPS.isdisjoint(scene.said):
        return []
    unsewn = subject is None or _no_suture(scene, subject, deed)
    return the_one_nicked(desk, scene.setting.digits) if unsewn else []


def _nothing_to_do(scene: Scene, deed: Mention) -> bool:
    """'Nothing needed to be cut back': what 'nothing' leads on to is no tendon that was left."""
    nothing = deed.value == "left" and scene.words(deed.i, deed.j)[:1] == ["nothing"]
    return nothing and scene.next_word(deed.j) in ("to", "about", "with")


def _of_the_named(
    scene: Scene, deed: Mention, targets: list[Target], group: Group | None, subject: Subject | None
) -> list[Target]:
    """Return the tendons that own the deed, where it is told of them and not of another thing between."""
    value = deed.value
    leads = deed.i - scene.sentence.i <= 1 and not any(s.j <= deed.i for s in scene.subjects)
    behind = subject is not None and subject.i >= deed.j and not leads
    if behind and scene.next_word(deed.j) in _TREATED_WORDS:
        before = [s.group for s in scene.subjects if s.j <= deed.i and s.group is not None and s.group.tendons]
        return group_targets(scene, before[-1]) if before and value == "grafted" else []
    if value == "repaired" and _of_several(scene, deed, targets, group):
        return []
    loose = value in ("trimmed", "left", "excised") or scene.header
    return _by_slip(scene, deed, targets) if loose or _close(scene, deed, subject) else []


def _of_a_group(desk: Desk, scene: Scene, deed: Mention, group: Group) -> list[Target]:
    """Return the tendons meant by 'both', 'all', 'the others', 'it', or by the finger in the title of a graft."""
    sewn = deed.value == "repaired"
    if group.generic == "all" and not sewn and scene.words(group.i, group.i + 1) in (["each"], ["both"]):
        return _of_both(desk, scene, deed, group)
    if group.digits and _titles_a_graft(scene, deed):
        return [Target(d, "FPL" if d == "thumb" else "FDP") for d in group.digits]
    if group.generic == "all" and sewn:
        return _of_all_sewn(desk, scene, deed, group)
    if group.generic == "others" and sewn:
        return others(desk, scene, group, _untreated(desk, None))
    return _of_the_one(desk, scene, deed, group) if group.generic == "one" else []


def _titles_a_graft(scene: Scene, deed: Mention) -> bool:
    """'Tendon graft, ring finger' as a title: of its deep flexor, where no nerve is named."""
    if deed.value != "grafted" or not scene.header or scene.of("structure", "anynerve"):
        return False
    return not {"tendon", "flexor"}.isdisjoint(scene.words(scene.sentence.i, scene.sentence.j))


def _of_both(desk: Desk, scene: Scene, deed: Mention, group: Group) -> list[Target]:
    """'FDP and FDS were one mass. Both were excised': the tendons named in the sentence, else the two spoken of."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
    if named:
        return group_targets(scene, named[-1])
    if len(scene.setting.focus) == _PAIR and group.i == scene.sentence.i:
        return list(scene.setting.focus)
    return _both_of_the_finger(desk, scene, group) if deed.value == "excised" else []


def _of_all_sewn(desk: Desk, scene: Scene, deed: Mention, group: Group) -> list[Target]:
    """'All were repaired': what is known to be cut; but not 'all repairs ...', 'each with a suture of 3-0 Prolene'."""
    said = scene.words(deed.i, deed.j)
    if said in _SUTURE_OF or (said[-1:] in (["repairs"], ["repair"]) and not scene.header):
        return []
    if not _FOR_THEIR_SAKE.isdisjoint(scene.words(deed.j, group.i)):
        return []  # 'The step-cut was sewn together so that the tendons would not bow'
    untreated = _untreated(desk, group.digits or None)
    if scene.word_before(group.i) in _CALLED_CUT:  # 'Both severed tendons were sewn': not the one that is nicked
        untreated = [t for t in untreated if desk.extents.get(t) != "partial"]
    return untreated or _named_before(desk, scene, group)


def _untreated(desk: Desk, digits: tuple[str, ...] | None) -> list[Target]:
    """Return the whole tendons known to be cut of which no treatment was told yet."""
    return [t for t in desk.cut(digits) if t not in desk.treatments and t.slip is None]


def _of_the_one(desk: Desk, scene: Scene, deed: Mention, group: Group) -> list[Target]:
    """'It was sewn', 'that tendon was left': the tendon spoken of, where it is not said to be whole."""
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    if deed.value not in ("left", "trimmed", "excised"):
        return carried(desk, scene, near_digits(scene, group) or None)[0] or focus
    nicked = the_one_nicked(desk, scene.setting.digits) if deed.value == "trimmed" else []
    return focus or nicked  # 'FDP 40% cut. FDS fine. Flap trimmed away, no suture put in the tendon.'


def _ahead_of_its_stitches(scene: Scene, deed: Mention) -> bool:
    """'Index FDP: edge smoothed with two epitendinous 6-0': of the tendon that heads the line, not of the suture."""
    subject = scene.owner(deed.i, deed.j)
    groups = [g for g in scene.setting.groups if g.tendons]
    heads = len(groups) == 1 and groups[0].i == scene.sentence.i and scene.next_word(groups[0].j) == ":"
    return heads and subject is not None and subject.kind == "role" and subject.i >= deed.j


def _last_named(desk: Desk, scene: Scene, deed: Mention) -> list[Target]:
    """'..., so I resected it', 'FDS 5: too thin and tenodesed to FDS 4': what was named last before the deed."""
    before = [s for s in scene.subjects if s.j <= deed.i]
    if not before:
        earlier = desk.scene_before(scene)
        if {"stump", "end", "tendon"} & set(scene.words(scene.sentence.i, deed.i)):  # 'The stump was tenodesed'
            focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
            return focus or [Target(d, "FPL" if d == "thumb" else "FDP") for d in scene.setting.digits]
        if earlier is None or not earlier.subjects or earlier.subjects[-1].group is None:
            return []
        return [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    group = before[-1].group
    if group is None or not (group.tendons or group.digits):
        return []
    return group_targets(scene, group) if group.tendons else list(scene.setting.focus)


def _label_of_cell(scene: Scene) -> Group | None:
    """'not repaired, left' under 'Core' in the row of a tendon: the row's tendon, where the cell names no other."""
    heads = [g for g in scene.setting.groups if g.i == g.j == scene.sentence.i and g.tendons]
    labels = [g for g in heads if all(digit or tendon in WRIST for digit, tendon, _ in g.pairs)]
    others = any(g.i < g.j for g in scene.setting.groups) or scene.of("sided", "structure", "pulley", "anynerve")
    return labels[0] if scene.sentence.prefix and len(labels) == 1 and not others else None


def _of_its_subject(scene: Scene, deed: Mention, subject: Subject) -> list[Target]:
    """'The profundus was scarred to the middle phalanx and was excised': the tendon that the sentence opens with."""
    led = scene.words(deed.i - 2, deed.i) in (["and", "was"], ["and", "were"])
    groups = [g for g in scene.setting.groups if g.j <= deed.i]
    opens = len(groups) == 1 and bool(groups[0].tendons) and groups[0].i - scene.sentence.i <= 1
    return group_targets(scene, groups[0]) if led and opens and subject.kind in ("bone", "role") else []


def _its_suture(subject: Subject, deed: Mention) -> bool:
    """'It was repaired with a core suture': the suture behind the deed is of the tendon spoken of."""
    if deed.value != "repaired":
        return False
    role = subject.mention.value if subject.kind == "role" and subject.mention is not None else ""
    return role in ("core", "peripheral") and subject.i >= deed.j


def _no_suture(scene: Scene, subject: Subject, deed: Mention) -> bool:
    """'Smoothed the edges, no core', 'Core: none, flap trimmed': what was trimmed is no suture that was not set."""
    if deed.value != "trimmed" or subject.kind != "role":
        return False
    denied = not _NOT_SET.isdisjoint(scene.words(subject.j, subject.j + _LABEL_AND_ANSWER))
    return scene.word_before(subject.i) in ("no", "without") or (subject.i == scene.sentence.i and denied)


_NOT_SET = frozenset(["none", "nil", "no", "not", "nothing", "n"])
_LABEL_AND_ANSWER = 3  # words


def _of_several(scene: Scene, deed: Mention, targets: list[Target], group: Group | None) -> bool:
    """'The superficialis repairs were left without one' behind words on one finger: not of that one alone."""
    plural = scene.words(deed.i, deed.j)[-1:] == ["repairs"] and not scene.header
    return plural and len(targets) == 1 and group is not None and bool(group.tendons) and not group.digits


def _close(scene: Scene, deed: Mention, owner: Subject | None) -> bool:
    """Tell whether no other structure stands between a deed and its tendon."""
    i, j = (owner.i, owner.j) if owner is not None else (0, 0)
    low, high = min(j, deed.j), max(i, deed.i)
    return not any(
        s
        for s in scene.subjects
        if low <= s.i < high and s.kind in ("structure", "sided", "role", "pulley", "anynerve")
    )


def _by_slip(scene: Scene, deed: Mention, targets: list[Target]) -> list[Target]:
    """'one slip of FDS was excised': no slip is named, so the whole tendon is not said to be."""
    later = [g for g in scene.setting.groups if g.i >= deed.j and g.tendons][:1]
    for near in (g for g in later if any(slip for _, _, slip in g.pairs)):
        if scene.next_word(near.j) == "only" and any(t.tendon == "FDS" for t in targets):
            return group_targets(scene, near)  # 'repaired, ulnar slip only'
    slips = [m for m in scene.of("slip") if m.value in ("one", "other") and abs(m.i - deed.i) <= 8]
    if slips and all(t.slip is None and t.tendon == "FDS" for t in targets):
        return []
    return targets


def _both_of_the_finger(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Both tendons were excised', of a finger whose two flexors were told cut or stuck."""
    one = scene.setting.digits if len(scene.setting.digits) == 1 else ()
    both = [Target(d, t) for d in one if d != "thumb" for t in ("FDP", "FDS")]
    opens = group.i == scene.sentence.i and not {"tendons", "flexors"}.isdisjoint(scene.words(group.i, group.j))
    return both if opens and not any(desk.extents.get(t) == "intact" for t in both) else []


def _named_before(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'FDP ring cut, FDP middle cut, both repaired': the tendons of the sentence, if several, that are not sound."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not (g.reference or g.excepted)]
    found = dict.fromkeys(t for g in named for t in group_targets(scene, g) if desk.extents.get(t) != "intact")
    return list(found) if len(found) > 1 else []
