"""The peripheral suture: placed or left out, and its pattern."""

from itertools import pairwise

from notereader.reader.desk import Desk, others
from notereader.reader.groups import Group, Target
from notereader.reader.measures import count_of
from notereader.reader.page import Mention, within
from notereader.reader.rules.roles import CORE, PERIPHERAL, TENDON, Anchor, role_of
from notereader.reader.rules.suture_owners import LEFT_OUT, lay_suture, left_out_of, suture_owners, targets_of
from notereader.reader.rules.thread_roles import has_core
from notereader.reader.rules.threads import Thread, find_sizes
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_ONLY_A_WORD_WORDS = word_list("sutures", "only_a_word_words")
# What tells of a peripheral suture in a sentence that does not name one.
_WITHOUT_NAME = frozenset(["none", "nothing", "only", "alone"])
_LOCKS = frozenset(["locked", "locking", "interlocked", "interlocking", "lock"])
_FIELDS = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")
_OF_SUTURES = frozenset([*_FIELDS, "strands", "stitch", "size", "material", "hold"])
_NOT_ONE = (
    ["not", "get", "one"],
    ["not", "receive", "one"],
    ["not", "have", "one"],
    ["not", "given", "one"],
    ["left", "without", "one"],
)
_NO_ROOM = (["no", "room"], ["no", "attempt"], ["no", "space"], ["no", "point"], ["not", "worth"])
_LEFT_OUT = (["left", "out"], ["not", "done"], ["not", "needed"], ["not", "placed"], ["left", "without"])
_OMITTING = frozenset(["omitting", "minus", "lacking", "less", "forgoing", "skipping"])
_ALIKE = frozenset(["same", "like", "likewise", "similarly", "as"])
_SUTURE_OF = frozenset(["suture", "sutures", "stitch", "stitches", "of", "with", "in"])
_AFTER_ALL = frozenset(["but", "so", "then", "however", "until"])
_TAKEN_OUT = word_list("sutures", "taken_out")
_OUT = frozenset(["out", "again", "undone", "unpicked", "removed", "abandoned"])
_OTHER_SUTURES = frozenset(["stay", "stays", "traction", "tag", "tagging", "holding", "tacking", "needle", "needles"])
_SOON = 60  # words after which 'it' is something else
_ELSEWHERE = frozenset(["see", "refer", "cf"])  # 'Peripheral suture: see diagram'
_NO = frozenset(["no", "none", "nil", "n", "not", "omitted"])
_LEFT_OUT_RULE = "peripheral suture said to be left out"
_BOX = word_list("sutures", "box")
_NO_ANSWER = word_list("sutures", "no_answer")


def peripheral(desk: Desk, scene: Scene, found: list[Anchor], threads: list[Thread]) -> None:
    """Find whether a peripheral suture was placed or left out, and its pattern."""
    _taken_out(desk, scene)
    _got_none(desk, scene)
    if scene.sentence.section == PERIPHERAL and _finger_without(desk, scene):
        return
    spots = [a for a in found if a.role == PERIPHERAL]
    if not spots and scene.sentence.section == PERIPHERAL and scene.sentence.j - scene.sentence.i > 2:
        heading = next(iter(within(scene.page.headings, scene.sentence.i, scene.sentence.j)), None)
        if heading is not None:
            spots = [Anchor(heading.i, heading.j, PERIPHERAL)]
    unnamed = not spots and scene.sentence.section != PERIPHERAL
    if unnamed and "pattern" not in scene.kinds and _WITHOUT_NAME.isdisjoint(scene.said):
        return
    _left_out_there(desk, scene, spots)
    _without_running(desk, scene, spots)
    _none_around(desk, scene, bool(spots) or _goes_on(desk, scene))
    _had_none(desk, scene, bool(spots) or any(t.role == PERIPHERAL for t in threads))
    _one_only(desk, scene, spots)
    if (
        scene.sentence.prefix
        and scene.sentence.section == PERIPHERAL
        and scene.words(scene.sentence.i, scene.sentence.i + 1)[0] in ("none", "no", "nil", "not")
    ):
        lay_suture(
            desk,
            scene,
            scene.sentence.i,
            scene.sentence.i + 1,
            "peripheral",
            "absent",
            _LEFT_OUT_RULE,
        )
        return
    for spot in _one_a_part(scene, spots):
        if not scene.told(spot.i) or _of_other_thing(scene, spot) or scene.answer(spot.j) in _ELSEWHERE:
            continue
        if _given_up(scene, spot):
            continue
        if scene.answer(spot.j) in _NO:
            lay_suture(desk, scene, spot.i, spot.j, "peripheral", "absent", _LEFT_OUT_RULE)
            continue
        if scene.sentence.section == PERIPHERAL and _heading_says_none(scene, spot):
            lay_suture(desk, scene, spot.i, spot.j, "peripheral", "absent", _LEFT_OUT_RULE)
            return
        if scene.sentence.section == PERIPHERAL and _heading_says_nothing(scene, spot):
            return
        if _peripheral_negated(scene, spot) and scene.words(scene.sentence.i, scene.sentence.i + 3)[-2:] == [
            "this",
            "is",
        ]:
            continue
        if _peripheral_negated(scene, spot):
            lay_suture(desk, scene, spot.i, spot.j, "peripheral", "absent", _LEFT_OUT_RULE)
            continue
        if _only_a_word(scene, spot) or (scene.page.words[spot.j - 1] == "by" and scene.next_word(spot.j) == ":"):
            continue
        lay_suture(desk, scene, spot.i, spot.j, "peripheral", "present", "peripheral suture named")
    if not all(_peripheral_negated(scene, spot) for spot in spots) or not spots:
        _lay_pattern(desk, scene, found, bool(spots), threads)


def _given_up(scene: Scene, spot: Anchor) -> bool:
    """'Peripheral suture attempted, tore out, abandoned', '... was opened but not used': none is told to be in."""
    behind = scene.words(spot.j, min(spot.j + 12, scene.sentence.j))
    return "abandoned" in behind or ("not", "used") in pairwise(behind)


def _without_running(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'Ring FDP in the same fashion but without the running suture': what outer sutures are called elsewhere."""
    if spots or "without" not in scene.said or _ALIKE.isdisjoint(scene.said):
        return
    for m in scene.of("pattern"):
        led = [w for w in scene.words(max(scene.sentence.i, m.i - 2), m.i) if w not in ("a", "the", "any")]
        if m.value.startswith("running") and led[-1:] == ["without"] and scene.told(m.i):
            lay_suture(desk, scene, m.i, m.j, "peripheral", "absent", _LEFT_OUT_RULE)


def _taken_out(desk: Desk, scene: Scene) -> None:
    """'I began a running 6-0. It bunched, so I took it all out again': no peripheral suture was left in."""
    if _OUT.isdisjoint(scene.said) or scene.header:
        return
    text = f" {' '.join(scene.words(scene.sentence.i, scene.sentence.j))} "
    if not any(f" {phrase} " in text for phrase in _TAKEN_OUT) or not scene.told(scene.sentence.i):
        return
    if not _OTHER_SUTURES.isdisjoint(scene.said):
        return  # 'The stay suture was taken out.'
    told = [f for f in desk.findings if f.group == "repairs" and f.order < scene.sentence.j and f.field in _OF_SUTURES]
    last = told[-1] if told else None
    near = last is not None and scene.sentence.i - last.order < _SOON
    if last is None or not near or not last.field.startswith("peripheral") or last.value == "absent":
        return
    target = Target(*last.entry)
    desk.withdraw(target, _FIELDS, scene.sentence.j)
    span = (scene.sentence.i, scene.sentence.j)
    desk.tendon(scene, target, "peripheral", "absent", [span], "peripheral suture taken out again")


def _finger_without(desk: Desk, scene: Scene) -> bool:
    """'Epi: ring, 6-0 PDS. Little: left out.': the answer for a finger or tendon under a heading of peripheral sutures.

    RETURNS: whether the sentence tells nothing else.
    """
    told = [g for g in scene.setting.groups if (g.digits or g.tendons) and g.i < g.j and not g.reference]
    without = [g for g in told if _without(scene, g)]
    for group in without:
        deep = [t for t in desk.repairable(group.digits or None) if t.tendon in ("FDP", "FPL")]
        named = [t for t in group_targets(scene, group) if desk.extents.get(t) != "intact"] if group.tendons else deep
        for target in named:
            span = [(group.i, group.j + 1)]
            desk.tendon(scene, target, "peripheral", "absent", span, _LEFT_OUT_RULE)
    return bool(without) and len(without) == len(told)


_BEGINS = frozenset([",", ";", ":", ".", "suture", "sutures", "stitch"])


def _without(scene: Scene, group: Group) -> bool:
    """Tell whether 'none' or 'left out' stands right behind a finger or tendon that begins a part of the sentence."""
    k = group.j + (scene.next_word(group.j) in (":", "-", "="))
    closes = scene.next_word(k + 1) in ("", ",", ".", ";") or group.i == scene.sentence.i
    left_out = (scene.next_word(k) in ("none", "nil", "omitted") and closes) or scene.words(k, k + 2) in _LEFT_OUT
    begins = group.i == scene.sentence.i or scene.word_before(group.i) in _BEGINS
    return left_out and begins and scene.told(k)


def _got_none(desk: Desk, scene: Scene) -> None:
    """'Each had a 5-0 epitendinous suture; the superficialis repairs did not get one.'"""
    if "one" not in scene.said:
        return
    ends = [k + 1 for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] == "one"]
    end = next((k for k in ends if any(scene.words(k - len(p), k) == p for p in _NOT_ONE)), None)
    before = desk.scene_before(scene)
    if end is None or before is None:
        return
    told = [f for f in desk.findings if f.field == "peripheral" and before.sentence.i <= f.order < scene.sentence.i]
    if not told and not any(m.value == PERIPHERAL for m in scene.of("role")):
        return
    first = scene.part(end - 1)[0]
    rest = next((g for g in scene.setting.groups if g.generic == "others" and first <= g.i < end), None)
    if rest is not None:  # '...; the other three repairs were left without one'
        for target in others(desk, scene, rest, desk.sewn()):
            desk.tendon(scene, target, "peripheral", "absent", [(rest.i, end)], _LEFT_OUT_RULE)
        return
    named_here = [g for g in scene.setting.groups if g.tendons and not g.reference and g.i < end]
    for group in [g for g in named_here if g.i >= first] or named_here:
        named = (
            [t for t in desk.sewn() if t.tendon in group.tendons]
            if not group.digits
            else targets_of(desk, scene, group)
        )
        for target in named:
            span = [(group.i, end)]
            desk.tendon(scene, target, "peripheral", "absent", span, _LEFT_OUT_RULE)


def _one_a_part(scene: Scene, spots: list[Anchor]) -> list[Anchor]:
    """Return the first mention of a peripheral suture in each part of the sentence."""
    kept: dict[tuple[int, int], Anchor] = {}
    for spot in spots:
        kept.setdefault(scene.part(spot.i), spot)
    return list(kept.values())


def _heading_says_none(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous: none', 'Peripheral: not done'."""
    told = [k for k in range(spot.j, scene.sentence.j) if scene.told(k) and scene.page.words[k] not in ("-", ">")]
    words = [w for w in (scene.page.words[k] for k in told) if w not in _NO_ANSWER and w not in _BOX]
    return words[:1] in (["none"], ["no"], ["not"], ["nil"], ["omitted"], ["absent"], ["never"])


def _heading_says_nothing(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous: ___ suture ___' was never filled in."""
    if scene.answer(spot.j) == "" or _no_box_ticked(scene):
        return True
    return not [w for w in scene.words(spot.j, scene.sentence.j) if w not in _NO_ANSWER] and not scene.sentence.prefix


def _no_box_ticked(scene: Scene) -> bool:
    """'Epitendinous: [ ] Y  [ ] N' was never answered."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    empty = sum(a == "[" and b == "]" for a, b in pairwise(words))
    return empty > 1 and words.count("[") == empty and not scene.of("material", "pattern")


def _left_out_there(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'The middle got an epitendinous suture; in the ring it was left out.'"""
    if not spots:
        return
    for cue in within(scene.page.cues, scene.sentence.i, scene.sentence.j):
        phrase = " ".join(scene.page.words[cue.i : cue.j])
        if phrase in LEFT_OUT:
            first, _last = scene.part(cue.i)
            digits = [g for g in scene.setting.groups if first <= g.i < cue.i and g.digits]
            behind = [g for g in scene.setting.groups if g.digits and not g.tendons and 1 <= g.i - cue.j <= 2]
            given = [g for g in scene.setting.groups if g.tendons and g.i >= cue.j and left_out_of(scene, g)]
            if behind and not digits and scene.next_word(cue.j) == "in" and spots[0].i < cue.i:
                # 'added to the two profundus repairs and was omitted in the thumb'
                for target in [t for t in desk.repairable(behind[0].digits) if t.tendon in ("FDP", "FPL")]:
                    desk.tendon(scene, target, "peripheral", "absent", [(cue.i, cue.j)], _LEFT_OUT_RULE)
            elif given and spots[0].i < cue.i:
                for target in _tendons_everywhere(desk, scene, given[0]):
                    desk.tendon(scene, target, "peripheral", "absent", [(cue.i, given[0].j)], _LEFT_OUT_RULE)
            elif digits and spots[0].i < first and "it" in scene.words(first, cue.i):
                for target in [t for t in desk.repairable(digits[-1].digits) if t.tendon in ("FDP", "FPL")]:
                    desk.tendon(scene, target, "peripheral", "absent", [(cue.i, cue.j)], _LEFT_OUT_RULE)


def _none_around(desk: Desk, scene: Scene, told: bool) -> None:
    """'6-0 nylon around the thumb repair and none around the index', 'epitendinous 6-0 on the FDP, none on the FDS'."""
    words = scene.page.words
    for group in scene.setting.groups:
        k = group.i - 1
        while k > scene.sentence.i and (
            words[k] in ("the", "left", "right", "either", "both") or count_of(words[k]) > 1
        ):
            k -= 1
        around = words[k] in ("around", "round") or (told and words[k] in ("on", "in", "for", "to"))
        if told and words[k - 2 : k - 1] in (["was"], ["were"]):
            k -= 2  # 'none was used on the superficialis'
        if around and words[k - 1] in ("none", "nothing") and k - 1 >= scene.sentence.i and scene.told(k):
            deep = [t for t in desk.repairable(group.digits or None) if t.tendon in ("FDP", "FPL")]
            named = _tendons_everywhere(desk, scene, group) if group.tendons else deep if group.digits else []
            for target in named:
                spot = [(k - 1, group.j)]
                desk.tendon(scene, target, "peripheral", "absent", spot, _LEFT_OUT_RULE)


def _goes_on(desk: Desk, scene: Scene) -> bool:
    """'A running 6-0 was added to both profundi. None was placed in the superficiales.': of the suture just told of."""
    before = desk.scene_before(scene)
    told = before is not None and any(m.value == PERIPHERAL for m in before.of("role"))
    return told and scene.page.words[scene.sentence.i] in ("none", "nothing")


def _had_none(desk: Desk, scene: Scene, told: bool) -> None:
    """'..., whereas the superficialis had none', 'around the two FDSs nothing': told of it behind its name."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if words[k] not in ("none", "nothing") or not scene.told(k):
            continue
        named = [g for g in scene.setting.groups if g.tendons and g.j <= k and not g.reference]
        had = told and bool(named) and words[k - 1] in _HAD and scene.next_word(k + 1) in _CLOSES
        around = bool(named) and named[-1].j == k and _AROUND & set(scene.words(named[-1].i - 3, named[-1].i))
        meant = _tendons_everywhere(desk, scene, named[-1]) if had or around else []
        for target in [t for t in meant if desk.has_suture(t)] or meant:
            spot = [(named[-1].i if k - named[-1].i <= 14 else k - 1, k + 1)]
            desk.tendon(scene, target, "peripheral", "absent", spot, _LEFT_OUT_RULE)


_HAD = frozenset(["had", "got", "received", "has", "needed", "was", "given"])
_CLOSES = frozenset(["", ".", ",", ";", "because", "as", "and"])
_AROUND = frozenset(["around", "round", "on"])


def _tendons_everywhere(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'...added to all three profundus repairs; none on the superficialis': of every finger spoken of."""
    several = "all" in scene.said or (group.every and group.j - group.i <= 3)
    if group.digits or len(scene.every_digit) < 2 or not several:
        return targets_of(desk, scene, group)
    return [t for t in desk.sewn() if t.tendon in group.tendons]


def _one_only(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'Epitendinous: 6-0, FDP only', 'the profundi alone were finished with 6-0': the other tendons got none."""
    for group in scene.setting.groups:
        k = group.j
        if not group.tendons or scene.next_word(k) not in ("only", "alone") or not scene.told(group.i):
            continue
        near = any(";" not in scene.words(min(s.i, group.i), max(s.j, group.j)) for s in spots)
        if not near and scene.sentence.section != PERIPHERAL:
            continue
        own = targets_of(desk, scene, group)
        digits = tuple(dict.fromkeys(t.digit for t in own if t.digit))
        others = [t for t in desk.sewn(digits) if t not in own and t.tendon not in group.tendons and t.digit in digits]
        told_apart = group.digits or not set(group.tendons) & {"FDP", "FDS"}
        if spots and spots[0].i == scene.sentence.i and told_apart:  # 'Epi: FPL only, ...' of all that were sewn
            others = [t for t in desk.sewn() if t not in own]
        for target in others:
            spot = [(group.i, k + 1)]
            desk.tendon(scene, target, "peripheral", "absent", spot, _LEFT_OUT_RULE)


def _of_other_thing(scene: Scene, spot: Anchor) -> bool:
    """'epineurium of the ulnar nerve closed with a circumferential 9-0', 'peripheral neuropathy'."""
    if scene.next_word(spot.j) in ("neuropathy", "nerve", "nerves", "vascular", "pulses", "oedema", "line", "cannula"):
        return True
    nerve = "epineurium" in scene.words(scene.sentence.i, scene.sentence.j) or bool(scene.of("sided", "anynerve"))
    tendon = any(g.tendons or g.generic for g in scene.setting.groups) or bool(scene.of("stitch", "strandword"))
    round_it = scene.words(spot.i, spot.j) in (["circumferential"], ["circumferentially"], ["around"], ["round"])
    return nerve and round_it and not tendon


def _peripheral_negated(scene: Scene, spot: Anchor) -> bool:
    if any(m.j <= spot.i and spot.i - m.j <= 5 for m in scene.of("gap", "glide")):
        return False  # 'no gap before or after the epitendinous suture'
    before = scene.words(scene.part(spot.i)[0], spot.i)
    led = scene.words(max(scene.sentence.i, spot.i - 12), spot.i)
    led = led[led.index(":") + 1 :] if ":" in led else led
    if _OMITTING.intersection(led[-4:]) or ("leaving", "out") in pairwise(led[-4:]):
        return True  # 'in the same way, leaving out the peripheral suture'
    unroomed = any(led[k : k + 2] in _NO_ROOM for k in range(len(led))) and scene.next_word(spot.j) != ":"
    if unroomed and _AFTER_ALL.isdisjoint(led):
        return True  # 'no room for, and no attempt at, a circumferential stitch'
    behind = scene.words(spot.j, scene.part(spot.i)[1])
    if "neither" in behind[:3]:
        return True  # 'an epitendinous suture was neither possible nor needed'
    nowhere = any(a in ("on", "in", "around", "round", "to") and b in ("neither", "none") for a, b in pairwise(behind))
    return nowhere or scene.negated(spot.i, spot.j, 5) or "neither" in before or before[:2] == ["none", "of"]


def _only_a_word(scene: Scene, spot: Anchor) -> bool:
    """'two extra peripheral bites', 'the epitenon was bruised', 'around it' alone name no peripheral suture."""
    phrase = " ".join(scene.words(spot.i, spot.j))
    near = scene.words(max(scene.sentence.i, spot.i - 4), min(scene.sentence.j, spot.j + 4))
    if "bites" in near and ("extra" in near or "additional" in near or "more" in near):
        return True
    if phrase in _ONLY_A_WORD_WORDS:
        suture = any(m.kind in ("pattern", "material", "stitch") for m in scene.mentions) or bool(find_sizes(scene))
        return not (suture or any(w in ("suture", "stitch", "sutured", "stitched", "run", "sewn") for w in near))
    return False


def _lay_pattern(desk: Desk, scene: Scene, found: list[Anchor], peripheral: bool, threads: list[Thread]) -> None:
    others = [a for a in found if a.role != "pattern"]
    for mention in scene.of("pattern"):
        if not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3):
            continue
        if not (
            _of_outer_thread(scene, mention, threads)
            or _is_peripheral_pattern(desk, scene, mention, others, peripheral)
        ):
            continue
        if not peripheral and any(_joined_with(scene, mention, t) for t in threads):
            continue
        value, end = _locked_as_it_goes(scene, mention)
        targets, doubts = suture_owners(desk, scene, mention.i, mention.j)
        for target in targets:
            desk.tendon(
                scene, target, "peripheral", "present", [(mention.i, mention.j)], "peripheral pattern named", *doubts
            )
            desk.tendon(
                scene,
                target,
                "peripheral_pattern",
                value,
                [(mention.i, end)],
                "peripheral pattern named",
                *doubts,
            )
    for mention in scene.of("stitch"):
        told = mention.value == "horizontal mattress" and peripheral and scene.told(mention.i)
        if told and role_of(scene, mention.i, mention.j, others) == PERIPHERAL:
            rule = "peripheral pattern named"
            lay_suture(desk, scene, mention.i, mention.j, "peripheral_pattern", mention.value, rule)


def _of_outer_thread(scene: Scene, mention: Mention, threads: list[Thread]) -> bool:
    """'a running 6/0 Prolene epitendinous suture', '... + 5-0 running': the pattern stands beside the outer thread."""
    if scene.words(mention.i, mention.j) in (["ran"], ["run"]):
        return False
    outer = [t for t in threads if t.role == PERIPHERAL and t.size]
    comma = {k for k in range(mention.i - 1, min(mention.j + 1, scene.sentence.j)) if scene.page.words[k] == ","}
    return any(mention.j == t.i or mention.i == t.j or (mention.i - t.j == 1 and t.j in comma) for t in outer)


def _joined_with(scene: Scene, mention: Mention, thread: Thread) -> bool:
    """'The FDS was repaired with a running suture of 5-0': the one thread that joins it is no peripheral suture too."""
    between = scene.words(mention.j, thread.i)
    return thread.role == CORE and thread.i >= mention.j and len(between) <= 2 and _SUTURE_OF.issuperset(between)


def _locked_as_it_goes(scene: Scene, mention: Mention) -> tuple[str, int]:
    """'a running suture, of the locking sort', 'running nylon, each throw locked': the pattern and its last word."""
    if mention.value != "running":
        return mention.value, mention.j
    for k in range(mention.j, min(mention.j + 9, scene.sentence.j)):
        word = scene.page.words[k]
        if word in (";", ".", "core", "not", "non", "without", "unlocked"):
            break
        if word in _LOCKS:
            stitch = any(m.kind in ("stitch", "strandword") and 0 <= m.i - k <= 2 for m in scene.mentions)
            core = stitch or scene.next_word(k + 1) in ("core", "loops", "grasp", "plate", "screws", "corners")
            between = any(m.kind in ("stitch", "strandword") and mention.j <= m.i < k for m in scene.mentions)
            return ("running", mention.j) if core or between else ("running locking", k + 1)
    return "running", mention.j


def _is_peripheral_pattern(desk: Desk, scene: Scene, mention: Mention, others: list[Anchor], peripheral: bool) -> bool:
    if scene.words(mention.i, mention.j) in (["ran"], ["run"]) and not peripheral:
        return False
    role = role_of(scene, mention.i, mention.j, others)
    if role == PERIPHERAL:
        return True
    if role in ("", TENDON):
        if scene.sentence.section == PERIPHERAL:
            return True
        if scene.sentence.section in ("closure", "dressing") or desk.topic not in (CORE, TENDON, PERIPHERAL):
            return False
        strong = mention.value in ("cross-stitch", "running locking", "running", "other", "horizontal mattress")
        return strong and bool(find_sizes(scene)) and (has_core(desk, scene) or role == TENDON)
    if role == CORE and mention.value in ("running", "running locking", "cross-stitch", "other"):
        first, last = scene.part(mention.i)
        return bool([s for s in find_sizes(scene) if first <= s[1] < last]) and not any(
            first <= a.i < last and a.role == CORE for a in others
        )
    return False
