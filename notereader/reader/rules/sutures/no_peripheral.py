"""The peripheral suture said to be left out, and of which tendons.

That a repair has none promises nothing, so what is said of 'the superficialis' goes to that of every finger whose deep
tendon was just told to have one.
"""

from itertools import pairwise

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Break, within
from notereader.reader.rules.owners import others
from notereader.reader.rules.sutures.lost_peripheral import renewed_next
from notereader.reader.rules.sutures.named_without import named_without
from notereader.reader.rules.sutures.roles import PERIPHERAL, Anchor
from notereader.reader.rules.sutures.suture_owners import (
    LEFT_OUT,
    fingers_only,
    for_it_only,
    left_out_of,
    suture_owners,
    targets_of,
)
from notereader.reader.rules.sutures.threads import Thread
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_FIELDS = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")
_OF_SUTURES = frozenset([*_FIELDS, "strands", "stitch", "size", "material", "hold"])
_NOT_ONE = (
    ["not", "get", "one"],
    ["not", "receive", "one"],
    ["not", "have", "one"],
    ["not", "given", "one"],
    ["left", "without", "one"],
)
_LEFT_OUT = (["left", "out"], ["not", "done"], ["not", "needed"], ["not", "placed"], ["left", "without"])
_ALIKE = frozenset(["same", "like", "likewise", "similarly", "as"])
_TAKEN_OUT = word_list("sutures", "taken_out")
_OUT = frozenset(["out", "again", "undone", "unpicked", "removed", "abandoned", "hold"])
_OTHER_SUTURES = frozenset(["stay", "stays", "traction", "tag", "tagging", "holding", "tacking", "needle", "needles"])
_SOON = 60  # words after which 'it' is something else
RULE = "peripheral suture said to be left out"


def left_out(desk: Desk, scene: Scene, spots: list[Anchor], threads: list[Thread]) -> None:
    """Lay down the tendons that a sentence says have no peripheral suture; `spots`: where it names one."""
    told = bool(spots) or any(t.role == PERIPHERAL for t in threads)
    _left_out_there(desk, scene, spots)
    _without_running(desk, scene, spots)
    told = told or told_before(desk, scene)
    _none_around(desk, scene, told)
    _had_none(desk, scene, told)
    _not_the_other(desk, scene, spots)
    _one_only(desk, scene, spots)
    _was_not(desk, scene, told)
    _tendon_without(desk, scene, told)
    _this_did_not(desk, scene, told)
    _neither_given(desk, scene, spots)
    _and_nothing_more(desk, scene)
    named_without(desk, scene, spots, RULE)


def _and_nothing_more(desk: Desk, scene: Scene) -> None:
    """'... a modified Kessler of 4-0 Ethibond and nothing more', 'mattress, nil else', 'PDS 4-0, no fine suture'."""
    words = scene.page.words
    for k in range(scene.sentence.i + 2, scene.sentence.j):
        fine = words[k : k + 2] == ["no", "fine"] and scene.next_word(k + 2) in ("suture", "stitch")
        more = words[k] in ("nothing", "nil") and scene.next_word(k + 1) in _MORE
        only = words[k] == "only" and any(m.j == k for m in scene.of("material")) and bool(scene.of("stitch"))
        if not (more or fine or only) or not scene.told(k):
            continue
        closes = scene.next_word(k + 2 + fine - only) in ("", ".", ",", ";", ")")
        named = [m.j for m in scene.of("stitch", "material") if m.j <= k]
        between = scene.words(named[-1], k) if named else []
        if not named or not closes or len(between) > _FEW or not (only or _LEADS_ON.intersection(between)):
            continue
        for target in suture_owners(desk, scene, named[-1] - 1, named[-1])[0]:
            if desk.has_suture(target) and not _has_one(desk, target):
                desk.tendon(scene, target, "peripheral", "absent", [(k, k + 2)], RULE)


_MORE = frozenset(["more", "else", "further", "around", "round"])
_LEADS_ON = frozenset([",", "and", "-", ";", "("])
_FEW = 3  # words: 'apiece, and'


def _neither_given(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'Neither the middle, the ring nor the FCR was given an epitendinous suture': none of those between."""
    words = scene.page.words
    for spot in spots if {"neither", "nor"} <= scene.said else []:
        first = next((k for k in range(spot.i - 1, scene.sentence.i - 1, -1) if words[k] == "neither"), -1)
        if first < 0 or "nor" not in words[first : spot.i] or _GIVING.isdisjoint(words[first : spot.i]):
            continue
        before = [t for g in scene.setting.groups if g.j <= first and g.tendons for t in group_targets(scene, g)]
        for group in (g for g in scene.setting.groups if first <= g.i < spot.i and (g.tendons or g.digits)):
            own = [t for t in before if t.digit in group.digits] or desk.repairable(group.digits)
            kinds = own if any(t in before for t in own) else [t for t in own if t.tendon in ("FDP", "FPL")]
            for target in targets_of(desk, scene, group) if group.tendons else kinds:
                desk.tendon(scene, target, "peripheral", "absent", [(first, spot.j)], RULE)


def _this_did_not(desk: Desk, scene: Scene, told: bool) -> None:
    """'The index FDP got an epitendinous suture. The index FDS did not.': a sentence with nothing else in it."""
    before = _before(desk, scene)
    groups = [g for g in scene.setting.groups if (g.tendons or g.digits) and not g.reference]
    if not told or before is None or len(groups) != 1 or _GIVING.isdisjoint(before.said):
        return
    group = groups[0]
    lead = scene.words(scene.sentence.i, group.i)
    if lead not in ([], ["the"]) or scene.words(group.j, scene.sentence.j) not in _DID_NOT or not scene.told(group.i):
        return
    deep = [t for t in desk.repairable(group.digits or None) if t.tendon in ("FDP", "FPL")]
    for target in [t for t in (targets_of(desk, scene, group) if group.tendons else deep) if desk.has_suture(t)]:
        desk.tendon(scene, target, "peripheral", "absent", [(group.i, group.j + 2)], RULE)


_DID_NOT = tuple([*words, "."] for words in (["did", "not"], ["had", "not"], ["was", "not"], ["has", "not"]))


def _was_not(desk: Desk, scene: Scene, told: bool) -> None:
    """'The index was given a running 6-0, the ring was not.': a finger that got none, and was sewn before."""
    if not told or _GIVING.isdisjoint(scene.said):
        return
    for group in (g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference)):
        verb = scene.words(group.j, group.j + 2) in _IS_NOT and scene.next_word(group.j + 2) in ("", ".", ";")
        given = any(g.digits and g.j <= group.i for g in scene.setting.groups)
        if not verb or not given or not scene.told(group.i):
            continue
        deep = [t for t in desk.repairable(group.digits) if t.tendon in ("FDP", "FPL") and desk.has_suture(t)]
        for target in deep:
            desk.tendon(scene, target, "peripheral", "absent", [(group.i, group.j + 2)], RULE)


_GIVING = frozenset(["given", "got", "received", "had"])
_IS_NOT = (["was", "not"], ["were", "not"], ["did", "not"], ["had", "not"])


def _tendon_without(desk: Desk, scene: Scene, told: bool) -> None:
    """'The FDP had a running 6-0, the FDS none', '... the FDS was left without': a tendon that got none."""
    if not told:
        return
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        behind = next((w for w in _WITHOUT if scene.words(group.j, group.j + len(w)) == w), None)
        given = any(g.tendons and g.j <= group.i for g in scene.setting.groups)
        if behind is None or not given or not scene.told(group.i):
            continue
        end = group.j + len(behind)
        if scene.next_word(end) in ("", ".", ",", ";", "and"):
            for target in _tendons_everywhere(desk, scene, group):
                desk.tendon(scene, target, "peripheral", "absent", [(group.i, end)], RULE)


_WITHOUT = (
    *(["did", "without", "one"], ["did", "without"], ["do", "without"], ["does", "without"]),
    *(["none"], ["nothing"], ["went", "without"], ["was", "left", "without"], ["were", "left", "without"]),
    *(["was", "not"], ["were", "not"], ["did", "not"], ["had", "not"], ["left", "without"]),
    *(["having", "none"], ["with", "none"], ["has", "none"], ["had", "none"], ["got", "none"]),
)


def _without_running(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'Ring FDP in the same fashion but without the running suture', 'modified Kessler, no running stitch there'."""
    if spots or _DENIED.isdisjoint(scene.said):
        return
    for m in scene.of("pattern"):
        led = [w for w in scene.words(max(scene.sentence.i, m.i - 2), m.i) if w not in ("a", "the", "any")]
        named = scene.page.words[m.j - 1] in _STITCHES or scene.next_word(m.j) in _STITCHES
        denied = led[-1:] == ["no"] and named and not scene.of("role")
        alike = led[-1:] == ["without"] and not _ALIKE.isdisjoint(scene.said)
        if m.value.startswith("running") and (denied or alike) and scene.told(m.i):
            lay_none(desk, scene, m.i, m.j)


_DENIED = frozenset(["no", "without"])
_STITCHES = frozenset(["stitch", "suture"])


def taken_out(desk: Desk, scene: Scene) -> None:
    """'I began a running 6-0. It bunched, so I took it all out again': no peripheral suture was left in."""
    if _OUT.isdisjoint(scene.said) or scene.header:
        return
    text = f" {' '.join(scene.words(scene.sentence.i, scene.sentence.j))} "
    if not any(f" {phrase} " in text for phrase in _TAKEN_OUT) or not scene.told(scene.sentence.i):
        return
    if _put_in_anew(scene) or renewed_next(desk, scene):
        return  # 'It was taken out and replaced by a complete one in 6-0'
    if not _OTHER_SUTURES.isdisjoint(scene.said) or _opens_with_a_pulley(scene):
        return  # 'The stay suture was taken out.', 'A three was in bits, so I took it out'
    if (scene.of("slip") or "slip" in scene.said) and not scene.of("role", "pattern", "material"):
        return  # 'The cut slip of the superficialis I did not sew; I took it out'
    told = desk.laid(*_OF_SUTURES, before=scene.sentence.j)
    last = told[-1] if told else None
    near = last is not None and scene.sentence.i - last.order < _SOON
    if last is None or not near or not last.field.startswith("peripheral") or last.value == "absent":
        return
    target = Target(*last.entry)
    desk.withdraw(target, _FIELDS, scene.sentence.j)
    span = (scene.sentence.i, scene.sentence.j)
    desk.tendon(scene, target, "peripheral", "absent", [span], "peripheral suture taken out again")


def _put_in_anew(scene: Scene) -> bool:
    words = scene.page.words
    spots = [k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in _ANEW]
    spots += [k for k in range(scene.sentence.i + 1, scene.sentence.j) if words[k] == "again" and words[k - 1] in _RUN]
    return any(_DENYING.isdisjoint(words[max(scene.sentence.i, k - _NEAR) : k]) for k in spots)


_RUN = frozenset(["run", "placed", "sewn", "put", "passed", "inserted", "done"])  # '... and was run again with 5-0'
_ANEW = frozenset(["replaced", "new", "another", "second", "fresh", "redone", "renewed"])
_DENYING = frozenset(["not", "no", "never", "none", "without", "nor"])
_NEAR = 3  # words


def _opens_with_a_pulley(scene: Scene) -> bool:
    """'A3 hung loose', 'A three was in bits' as a dictation spells it out; not 'it jammed under A2'."""
    words = scene.words(scene.sentence.i, scene.sentence.i + 2)
    if any(m.i - scene.sentence.i <= 1 for m in scene.of("pulley")):
        return True
    return words[:1] == ["a"] and 0 < count_of(words[-1]) <= _PULLEYS


_PULLEYS = 5


def struck_out(desk: Desk, scene: Scene) -> bool:
    """'Erratum: delete the running suture, none was placed.', 'Disregard the peripheral': what was told is taken back.

    RETURNS: whether a sentence does so, and then tells of no peripheral suture itself.
    """
    if _STRIKE.isdisjoint(scene.said):
        return False
    at = next(k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] in _STRIKE)
    if scene.sentence.section != "addendum" and scene.word_before(at) not in _BEFORE_AN_ORDER:
        return False
    named = [m for m in scene.of("role", "pattern") if 0 < m.i - at <= 3]
    if not any(m.kind == "pattern" or m.value == PERIPHERAL for m in named):
        return False
    told = dict.fromkeys(Target(*f.entry) for f in desk.laid("peripheral") if f.value == "present")
    fingers = {d for g in scene.setting.groups for d in g.digits}
    for target in (t for t in told if not fingers or t.digit in fingers):
        desk.withdraw(target, _FIELDS, scene.sentence.i)
        if not _DENIES.isdisjoint(scene.said):
            desk.tendon(scene, target, "peripheral", "absent", [(at, named[-1].j)], RULE)
    return True


_STRIKE = frozenset(["delete", "strike", "deleted", "disregard", "ignore"])
_BEFORE_AN_ORDER = frozenset(["", "please", "kindly", ":", ";", "(", "["])
_DENIES = frozenset(["none", "not", "never"])


def finger_without(desk: Desk, scene: Scene) -> bool:
    """'Epi: ring, 6-0 PDS. Little: left out.': the answer for a finger or tendon under a heading of peripheral sutures.

    RETURNS: whether the sentence tells nothing else.
    """
    told = [g for g in scene.setting.groups if (g.digits or g.tendons) and g.i < g.j and not g.reference]
    without = [g for g in told if _without(scene, g)]
    for group in without:
        deep = [t for t in desk.repairable(group.digits or None) if t.tendon in ("FDP", "FPL")]
        kinds = [t for t in desk.sewn() if t.tendon in group.tendons] if not group.digits else []  # 'FDS none.'
        own = [t for t in group_targets(scene, group) if desk.extents.get(t) != "intact"] if group.tendons else deep
        for target in dict.fromkeys([*own, *(t for t in kinds if not _has_one(desk, t))]):
            span = [(group.i, group.j + 1)]
            desk.tendon(scene, target, "peripheral", "absent", span, RULE)
    return bool(without) and len(without) == len(told)


_BEGINS = frozenset([",", ";", ":", ".", "suture", "sutures", "stitch"])


def _without(scene: Scene, group: Group) -> bool:
    """Tell whether 'none' or 'left out' stands right behind a finger or tendon that begins a part of the sentence."""
    k = group.j + (scene.next_word(group.j) in (":", "-", "="))
    closes = scene.next_word(k + 1) in ("", ",", ".", ";") or group.i == scene.sentence.i
    none = scene.next_word(k) in ("none", "nil", "omitted", "lacking")
    left_out = (none and closes) or scene.words(k, k + 2) in _LEFT_OUT
    begins = group.i == scene.sentence.i or scene.word_before(group.i) in _BEGINS
    return left_out and begins and scene.told(k)


def got_none(desk: Desk, scene: Scene) -> None:
    """'Each had a 5-0 epitendinous suture; the superficialis repairs did not get one.'"""
    if "one" not in scene.said:
        return
    ends = [k + 1 for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] == "one"]
    end = next((k for k in ends if any(scene.words(k - len(p), k) == p for p in _NOT_ONE)), None)
    before = desk.scene_before(scene)
    if end is None or before is None:
        return
    told = desk.laid("peripheral", since=before.sentence.i, before=scene.sentence.i)
    first = scene.part(end - 1)[0]
    here = [m for m in scene.of("pattern") if m.j <= first]  # 'a running 6-0 around each profundus; the FDS ...'
    if not (told or here) and not any(m.value == PERIPHERAL for m in scene.of("role")):
        return
    rest = next((g for g in scene.setting.groups if g.generic == "others" and first <= g.i < end), None)
    if rest is not None:  # '...; the other three repairs were left without one'
        for target in others(desk, scene, rest, desk.sewn()):
            desk.tendon(scene, target, "peripheral", "absent", [(rest.i, end)], RULE)
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
            desk.tendon(scene, target, "peripheral", "absent", span, RULE)


def _this_of(scene: Scene, first: int, last: int) -> Group | None:
    """'...; for the superficiales this was judged unnecessary and was omitted': the tendons that open the part."""
    named = [g for g in scene.setting.groups if first <= g.i < last and g.tendons and not g.digits and not g.reference]
    this = len(named) == 1 and scene.words(named[0].j, last)[:1] in (["this"], ["it"])
    return named[0] if this and scene.word_before(named[0].i) in ("the", "for", "in") else None


def lay_none(desk: Desk, scene: Scene, i: int, j: int) -> None:
    """Lay down that the tendons spoken of at words i to j have no peripheral suture."""
    told, doubts = suture_owners(desk, scene, i, j)
    for target in dict.fromkeys([*told, *_meant(desk, scene, i, j), *_deep_too(desk, scene, told)]):
        desk.tendon(scene, target, "peripheral", "absent", [(i, j)], RULE, *doubts)


def _deep_too(desk: Desk, scene: Scene, told: list[Target]) -> list[Target]:
    """'FDP four strands. FDS mattress. Epitendinous: none.': what no tendon is named for is denied of both.

    So it is of every deep flexor sewn in the same paragraph.
    """
    if scene.setting.groups or scene.sentence.prefix or not _THOSE.isdisjoint(scene.said):
        return []
    beside = [Target(t.digit, "FDP") for t in told if t.tendon == "FDS"]
    deep = [*beside, *(t for t in desk.sewn() if t.tendon in ("FDP", "FPL") and _sewn_here(desk, scene, t))]
    return [t for t in deep if desk.may_be_repaired(t) and desk.has_suture(t) and not _has_one(desk, t)]


def _sewn_here(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether the core suture of a tendon was told before a sentence, in its paragraph or on its finger's line."""
    cores = [f.order for f in desk.told_of("repairs", target) if f.field in ("strands", "stitch", "size")]
    first, here = scene.sentence.i, scene
    while not _turns_to_finger(here) and (before := desk.scene_before(here)) is not None:
        if before.sentence.block != scene.sentence.block:
            break
        here, first = before, before.sentence.i
    return any(first <= k < scene.sentence.i for k in cores)


def _turns_to_finger(scene: Scene) -> bool:
    """Tell whether a sentence opens a line with a finger, or tells how a finger was found: 'Middle: ...'."""
    groups = scene.setting.groups
    if not groups or not groups[0].digits:
        return False
    heads = groups[0].i == scene.sentence.i and scene.page.breaks[scene.sentence.i] >= Break.LINE
    return heads or "extent" in scene.kinds or "hurt" in scene.kinds


_THOSE = frozenset(["those", "these", "them", "this", "that", "it", "here"])


def none_in_a_cell(desk: Desk, scene: Scene) -> bool:
    """'Epitendinous: ( ) Yes (x) No' in a form's block of one tendon: that tendon has none, whatever it got else."""
    focus = scene.setting.focus
    if len(focus) != 1 or any(g.tendons or g.digits for g in scene.setting.groups):
        return False
    desk.tendon(scene, focus[0], "peripheral", "absent", [(scene.sentence.i, scene.sentence.i + 1)], RULE)
    return True


def _meant(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the tendons of every finger that words i to j deny a peripheral suture; none where they are of one."""
    first, last = scene.part(i)
    inside = [g for g in scene.setting.groups if first <= g.i < last and not g.reference]
    kinds = [g for g in inside if g.tendons]
    fingers = any(g.digits for g in scene.setting.groups if g.i < i)
    if len(kinds) == 1 and not kinds[0].digits and (kinds[0].every or not fingers):
        return _tendons_everywhere(desk, scene, kinds[0])
    behind = scene.words(j, min(j + 8, last))
    any_of = any(a in _ANY and b == "of" for a, b in pairwise(behind))
    if _in_any(scene, behind):
        return [t for t in desk.sewn() if desk.has_suture(t) and not _has_one(desk, t)]
    used = {w for w in scene.words(j + 1, last) if w not in _PUT_IN}
    bare = scene.page.words[j - 1] in _PLURAL or (scene.next_word(j) in _PLURAL and not used)
    bare = bare or _at_a_site(behind)
    if kinds or not (any_of or (bare and not scene.setting.groups)):
        return []
    sewn = [t for t in desk.sewn() if desk.has_suture(t) and not _has_one(desk, t)]
    return fingers_only(scene, inside[-1], sewn) if inside else sewn


def _at_a_site(behind: list[str]) -> bool:
    """'No epitendinous used in palm', 'none at this level': of all that were sewn there."""
    places = [w for w in behind if w not in ("the", "this", "used", "placed", "put", "was", "suture", "stitch", "not")]
    return any(a in ("in", "at") and b in _SITES for a, b in pairwise(places[:_SITE_NEAR]))


_SITE_NEAR = 4  # words
_SITES = frozenset(["palm", "wrist", "forearm", "level", "zone"])
_PUT_IN = frozenset(
    ["used", "placed", "put", "in", "were", "was", "added", "done", "taken", "inserted", "employed", ".", ";", "here"]
)


def _in_any(scene: Scene, behind: list[str]) -> bool:
    """'No epitendinous was placed on any tendon', 'epi: none in any of the four': of all sewn, of whatever kind."""
    k = next((k for k, word in enumerate(behind) if word == "any"), -1)
    noun = [w for w in behind[k + 1 : k + 5] if w not in ("of", "the", "these", "them") and not count_of(w)]
    return k > 0 and behind[k - 1] in _PREPOSITIONS and (noun[:1] in ([], ["."], [","], ["tendon"], ["repair"]))


def _has_one(desk: Desk, target: Target) -> bool:
    """Tell whether a peripheral suture of a tendon was told of."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    return any(f.field == "peripheral" and f.value == "present" for f in told)


_ANY = frozenset(["any", "either", "none", "all"])
_PLURAL = frozenset(["sutures", "stitches"])


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
                    desk.tendon(scene, target, "peripheral", "absent", [(cue.i, cue.j)], RULE)
            elif given and spots[0].i < cue.i:
                for target in _tendons_everywhere(desk, scene, given[0]):
                    desk.tendon(scene, target, "peripheral", "absent", [(cue.i, given[0].j)], RULE)
            elif spots[0].i < first and (named := _this_of(scene, first, cue.i)) is not None:
                for target in _tendons_everywhere(desk, scene, named):
                    desk.tendon(scene, target, "peripheral", "absent", [(named.i, cue.j)], RULE)
            elif digits and spots[0].i < first and "it" in scene.words(first, cue.i):
                for target in [t for t in desk.repairable(digits[-1].digits) if t.tendon in ("FDP", "FPL")]:
                    desk.tendon(scene, target, "peripheral", "absent", [(cue.i, cue.j)], RULE)


def _none_around(desk: Desk, scene: Scene, told: bool) -> None:
    """'6-0 nylon around the thumb repair and none around the index', '6-0 on the FDP, none in the others'."""
    words = scene.page.words
    for group in scene.setting.groups:
        k = group.i - 1
        while k > scene.sentence.i and (
            words[k] in ("the", "left", "right", "either", "both", "any") or count_of(words[k]) > 1
        ):
            k -= 1
        around = words[k] in ("around", "round") or (told and words[k] in _PREPOSITIONS)
        while told and k - 2 >= scene.sentence.i and words[k - 1] in _PUT:
            k -= 1  # 'none was used on the superficialis', 'none used on the FCR'
        denied = words[k - 1] in _NONE or (told and words[k - 1] == "not" and _opens(scene, k - 1))
        if around and denied and k - 1 >= scene.sentence.i and scene.told(k):
            deep = [t for t in desk.repairable(group.digits or None) if t.tendon in ("FDP", "FPL")]
            named = _tendons_everywhere(desk, scene, group) if group.tendons else deep if group.digits else []
            rest = others(desk, scene, group, desk.sewn()) if group.generic == "others" else []
            for target in [*named, *rest]:
                spot = [(k - 1, group.j)]
                desk.tendon(scene, target, "peripheral", "absent", spot, RULE)


_PREPOSITIONS = frozenset(["on", "in", "for", "to", "by", "at", "upon", "over"])


def _opens(scene: Scene, k: int) -> bool:
    """Tell whether word k begins its sentence or stands behind a stop or a comma: '...; not on the FDS'."""
    return k == scene.sentence.i or scene.word_before(k) in (",", ";", ".", "but")


def told_before(desk: Desk, scene: Scene) -> bool:
    """'A running 6-0 was added to both profundi. None was placed in the superficiales.': of the suture just told of."""
    before = _before(desk, scene)
    if before is None or not (_OF_OTHERS.isdisjoint(scene.kinds) and "gap" not in scene.said):
        return False
    named = any(m.value == PERIPHERAL for m in before.of("role")) and scene.page.words[scene.sentence.i] in _NONE
    return named or bool(_just_told(desk, before.sentence.i, scene.sentence.i))


# Kinds of words with which a sentence speaks of something else: 'the FDS had no gap, the FDP none'.
_OF_OTHERS = frozenset(["material", "stitch", "strandword", "gap", "glide", "test", "tension", "knotword", "pulley"])


def _before(desk: Desk, scene: Scene) -> Scene | None:
    """Return the sentence before one, passing over the mark of a list."""
    before = desk.scene_before(scene)
    mark = before is not None and before.sentence.j - before.sentence.i == 1
    return desk.scene_before(before) if mark and before is not None else before


def just_told(desk: Desk, scene: Scene) -> list[Finding]:
    """Return the peripheral sutures told of in a sentence up to now and in the one before it."""
    before = _before(desk, scene)
    near = before is not None and before.sentence.block == scene.sentence.block
    return _just_told(desk, before.sentence.i if near and before is not None else scene.sentence.i, scene.sentence.j)


def _just_told(desk: Desk, first: int, last: int) -> list[Finding]:
    """Return the peripheral sutures told of in words first to last, the latest first."""
    found: list[Finding] = []
    for finding in reversed(desk.findings):
        if finding.group == "repairs" and finding.order < first and finding.field in _OF_SUTURES:
            break
        if finding.field == "peripheral" and finding.value == "present" and first <= finding.order < last:
            found.append(finding)
    return found


_NONE = frozenset(["none", "nothing"])


def _not_the_other(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'The two profundus repairs, not the superficialis, were finished with 6-0 round the edge.'"""
    words = scene.page.words
    for group in scene.setting.groups if spots else []:
        k = group.i - 1 - (words[group.i - 1] == "the")
        aside = words[k] == "not" and words[k - 1] in (",", "(") and words[group.j : group.j + 1] in ([","], [")"])
        if group.tendons and not group.digits and aside and group.i < spots[0].i:
            everywhere = [t for t in _tendons_everywhere(desk, scene, group) if t.tendon in group.tendons]
            for target in everywhere or group_targets(scene, group):
                desk.tendon(scene, target, "peripheral", "absent", [(k, group.j)], RULE)


def _had_none(desk: Desk, scene: Scene, told: bool) -> None:
    """'..., whereas the superficialis had none', 'around the two FDSs nothing': told of it behind its name."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if words[k] not in ("none", "nothing") or not scene.told(k):
            continue
        apart = next((g for g in scene.left_out if g.digits and g.j <= k < scene.own_aside(g)), None)
        if apart is not None:  # 'with running 6-0 epitendinous sutures save on the middle, which has none'
            for target in [t for t in desk.repairable(apart.digits) if t.tendon in ("FDP", "FPL")] if told else []:
                entry = (target.digit, target.tendon, target.slip)
                desk.add(scene, "repairs", entry, "peripheral", "absent", [(k, k + 1)], RULE, of_excepted=True)
            continue
        rest = [g for g in scene.setting.groups if k - _SHORT <= g.j <= k and _REST & set(scene.words(g.i, g.j))]
        if not rest and not _REST.isdisjoint(scene.words(max(scene.part(k)[0], k - _LONG_NAME), k)):
            near = (g for g in scene.setting.groups if k - _LONG_NAME <= g.i < k)
            rest = [g for g in near if g.generic == "all"]  # 'the three other repairs received none'
        if rest:  # 'added to the two profundi; the others had none'
            sewn = desk.sewn()  # those sewn first: 'unsewn' others are what a suture goes to, and not what has none
            known = others(desk, scene, rest[0], [t for t in sewn if desk.has_suture(t)])
            left = dict.fromkeys([*known, *others(desk, scene, rest[0], sewn)])
            for target in [t for t in left if not _has_one(desk, t)] if told else []:
                desk.tendon(scene, target, "peripheral", "absent", [(rest[0].i, k + 1)], RULE)
            continue
        named = [g for g in scene.setting.groups if g.tendons and g.j <= k and not g.reference]
        finger = next((g for g in scene.setting.groups if g.j == k - 1 and g.digits and not g.tendons), None)
        if told and finger is not None and words[k - 1] in _HAD and scene.next_word(k + 1) in _CLOSES:
            deep = [t for t in desk.repairable(finger.digits) if t.tendon in ("FDP", "FPL") and desk.has_suture(t)]
            for target in deep:  # '6-0 for the index; the middle got none'
                desk.tendon(scene, target, "peripheral", "absent", [(finger.i, k + 1)], RULE)
            continue
        had = told and bool(named) and words[k - 1] in _HAD and scene.next_word(k + 1) in _CLOSES
        around = bool(named) and named[-1].j == k and _AROUND & set(scene.words(named[-1].i - 3, named[-1].i))
        meant = _tendons_everywhere(desk, scene, named[-1]) if had or around else []
        for target in [t for t in meant if desk.has_suture(t)] or meant:
            spot = [(named[-1].i if k - named[-1].i <= 14 else k - 1, k + 1)]
            desk.tendon(scene, target, "peripheral", "absent", spot, RULE)


_SHORT = 3  # words
_LONG_NAME = 6  # words
_REST = frozenset(["other", "others"])
_HAD = frozenset(["had", "got", "received", "has", "needed", "was", "given"])
_CLOSES = frozenset(["", ".", ",", ";", "because", "as", "and"])
_AROUND = frozenset(["around", "round", "on"])
_PUT = frozenset(["was", "were", "used", "placed", "put", "added", "needed", "done"])


def _tendons_everywhere(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'...added to all three profundus repairs; none on the superficialis': of every finger spoken of."""
    several = "all" in scene.said or (group.every and group.j - group.i <= 3)
    if group.digits or len(scene.every_digit) < 2:
        return targets_of(desk, scene, group)
    if several:
        return [t for t in desk.sewn() if t.tendon in group.tendons]
    before = _before(desk, scene)
    told = _just_told(desk, before.sentence.i if before is not None else scene.sentence.i, scene.sentence.j)
    digits = {f.entry[0] for f in told if f.entry[1] not in group.tendons}
    wide = [t for t in desk.sewn() if t.tendon in group.tendons and t.digit in digits] if len(digits) > 1 else []
    own = targets_of(desk, scene, group)
    return [*wide, *(t for t in own if t.digit is None)] if wide else own


_WAS = frozenset(["was", "were", "got", "received", "had"])  # 'Only the profundus was given a circumferential suture'


def _one_only(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'Epitendinous: 6-0, FDP only', 'the profundi alone were finished with 6-0': the other tendons got none."""
    for group in scene.setting.groups:
        k = group.j
        lead = scene.word_before(group.i - (scene.word_before(group.i) == "the"))
        alone = scene.next_word(k) in ("only", "alone") or (lead == "only" and scene.next_word(k) in _WAS)
        if not group.tendons or not alone or not scene.told(group.i):
            continue
        near = any(";" not in scene.words(min(s.i, group.i), max(s.j, group.j)) for s in spots)
        near = near or any(for_it_only(scene, m.i, m.j, [group]) for m in scene.of("pattern"))
        if not near and scene.sentence.section != PERIPHERAL:
            continue
        own = targets_of(desk, scene, group)
        digits = tuple(dict.fromkeys(t.digit for t in own if t.digit))
        others = [t for t in desk.sewn(digits) if t not in own and t.tendon not in group.tendons and t.digit in digits]
        if all(t.digit is None for t in own):  # 'FCR and FCU: ..., and 5-0 Prolene running for the FCR only'
            here = {t for g in scene.setting.groups if g.j <= group.i and g.tendons for t in group_targets(scene, g)}
            others = [t for t in desk.sewn() if t in here and t not in own and t.digit is None]
        others += [t for t in _named_beside(desk, scene, group) if t not in own and t not in others]
        told_apart = group.digits or not set(group.tendons) & {"FDP", "FDS"}
        if spots and spots[0].i == scene.sentence.i and told_apart:  # 'Epi: FPL only, ...' of all that were sewn
            others = [t for t in desk.sewn() if t not in own]
        for target in others:
            spot = [(group.i, k + 1)]
            desk.tendon(scene, target, "peripheral", "absent", spot, RULE)


def _named_beside(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'All four FDS and the index FDP with 3-0, a running 5-0 to the index FDP only': those sewn in the sentence.

    Of a kind alone, 'for the FDPs only', those of other kinds whose core was told.
    """
    before = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
    named = dict.fromkeys(t for g in before for t in targets_of(desk, scene, g))
    kinds = {"FDP", "FDS"} - set(group.tendons) if not group.digits else set()
    kind = [t for t in desk.sewn() if t.tendon in kinds]
    return [t for t in dict.fromkeys([*named, *kind]) if desk.has_suture(t) and not _has_one(desk, t)]
