"""A cut told by another tendon's: 'the FDS the same', 'so was the profundus', 'neither slip'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import DIGITS, Group, Target, has
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.cuts.cut_owners import same_tendon
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

CUT = word_list("tendons", "cut")
_ITS = frozenset(["its", "the", "their", "his", "her", "both"])
_SAME_OF = (
    ["same", "was", "found"],
    ["found", "the", "same"],
    ["saw", "the", "same"],
    ["same", "picture", "in"],
    ["same", "findings", "in"],
    ["same", "was", "true"],
    ["same", "applied", "to"],
    ["same", "held", "for"],
    ["same", "applies", "to"],
    ["same", "is", "true"],
)

SAME = frozenset(["same", "ditto", "idem", "likewise"])
NONE = frozenset(["none", "nil"])
PLACED = frozenset(["in", "on", "through", "at", "along"])
IN_ITS = PLACED | {"only", "just", "its", "the", "merely", "alone"}


def cut_too(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'The profundus was severed and the superficialis too.'"""
    for group in scene.setting.groups:
        after = scene.words(group.j, min(group.j + 3, scene.sentence.j))
        end = min([g.i for g in scene.setting.groups if g.i > group.i] + [group.j + 8])
        own = [m for m in scene.of("extent") if group.j <= m.i < end]
        spared = mention.value == "complete" and after[:1] != after[1:2] and after[1:2] == ["not"]
        if spared and after[0] in ("was", "were", "is", "are") and after[2:] in ([], ["."], [";"], [","]):
            for target in group_targets(scene, group) if group.tendons and group.i > mention.j else []:
                desk.tendon(scene, target, "extent", "intact", [(group.i, group.j + 2)], "extent intact")
        also = after[:1] in (["too"], ["also"], ["likewise"], ["equally"], ["ditto"], ["idem"]) or after[:2] in (
            ["as", "well"],
            ["the", "same"],
        )
        also = also and _last_before(scene, mention, group)
        if group.i > mention.j and also and not own and not group.reference:
            for target in group_targets(scene, group) if group.tendons else same_tendon(scene, group):
                desk.tendon(scene, target, "extent", mention.value, [(group.i, group.j)], f"extent {mention.value}")
            _and_the_next(desk, scene, mention, group)


def _and_the_next(desk: Desk, scene: Scene, mention: Mention, group: Group) -> None:
    """'The FPL was cut, the FCR likewise, and in the palm the profundi of ring and small': what ends such a list."""
    following = next((g for g in scene.setting.groups if g.i > group.j and g.tendons), None)
    if following is None or scene.next_word(following.j) not in (";", ".", ""):
        return
    between = scene.words(group.j, following.i)
    joined = "and" in between[1:_JOINS_SOON] and _DENIES.isdisjoint(between)
    said = any(group.j <= m.i < following.i for m in scene.of("extent", "hurt", "deed", "opened", "ends"))
    if joined and not said and scene.told(following.i):
        span = [(following.i, following.j)]
        for target in group_targets(scene, following):
            desk.tendon(scene, target, "extent", mention.value, span, f"extent {mention.value}")


_JOINS_SOON = 5  # words
_DENIES = frozenset(["i", "we", "he", "she", "not", "no", "nor", "but", "never", "except", "without", "only"])


def _last_before(scene: Scene, mention: Mention, group: Group) -> bool:
    """'half cut, whereas that of the small finger was intact, as was the FCU': of the last word told."""
    return not any(mention.j <= m.i < group.i for m in scene.of("extent"))


def none_of_slip(desk: Desk, scene: Scene) -> None:
    """'Laceration: radial slip 50-60%; ulnar slip none', 'FDP 50 %, FDS nil'."""
    if "hurt" not in scene.kinds and not any(q.unit == "%" for q in scene.quantities):
        return
    shares = any(q.unit == "%" for q in scene.quantities)
    for group in (g for g in scene.setting.groups if any(slip or shares for _, _, slip in g.pairs)):
        after = scene.words(group.j, min(group.j + 2, scene.sentence.j))
        if after and after[0] in NONE and after[1:] in ([], ["."], [";"], [","]) and scene.told(group.i):
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "extent", "intact", [(group.i, group.j + 1)], "extent intact")


def not_this_one(desk: Desk, scene: Scene) -> None:
    """'Profundus divided, superficialis not.'; 'FDP cut through, not so the FDS': what the cut before it spared."""
    if "not" not in scene.said:
        return
    words = scene.page.words
    for group in (g for g in scene.setting.groups if g.tendons and not g.reference and scene.told(g.i)):
        k = group.i - (words[group.i - 1] == "the")
        lead = k - 2 >= scene.sentence.i and words[k - 2 : k] == ["not", "so"]
        behind = words[group.j : group.j + 1] == ["not"] and scene.next_word(group.j + 1) in _CLOSED
        told = [m for m in scene.of("extent", "hurt", "deed") if m.j <= group.i and m.value != "intact"]
        if not (lead or behind) or not told or told[-1].kind == "deed" or scene.negated(told[-1].i, told[-1].j):
            continue
        if any(w not in _BESIDE for w in scene.words(told[-1].j, k - 2 * lead)):
            continue  # 'divided and retrieved, FDS not': what was not done to it is no cut
        span = (k - 2, group.j) if lead else (group.i, group.j + 1)
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", "intact", [span], "extent intact")


_CLOSED = frozenset(["", ".", ";", ",", ")"])
_BESIDE = frozenset([",", ";", "but", "and", "completely", "fully", "through"])


def same_again(desk: Desk, scene: Scene) -> None:
    """'Middle: FDP cut clean through. Ring: same.'"""
    group = scene.setting.groups[0] if scene.setting.groups else None
    if group is None or group.tendons or not group.digits or group.j == group.i:
        return
    if any(scene.words(k, k + 3) in _SAME_OF for k in range(scene.sentence.i, group.i)):
        _all_the_same(desk, scene, group)
        return
    if group.i != scene.sentence.i:
        return
    after = [
        w for w in scene.words(group.j, min(group.j + 4, scene.sentence.j)) if w not in (":", "-", "finger", "the")
    ]
    if not after or after[0] not in SAME or after[1:2] not in ([], [","], ["."], [";"]):
        return
    before = desk.scene_before(scene)
    if before is None or not before.of("extent", "hurt", "fraction", "slip"):
        return  # 'RF holds, no gap. LF same'
    for known in scene.setting.focus:
        for digit in group.digits:
            if known in desk.extents and known.slip is None and digit != "thumb" != known.digit:
                target = Target(digit, known.tendon)
                span = (group.i, min(group.j + 2, scene.sentence.j))
                desk.tendon(scene, target, "extent", desk.extents[known], [span], "same as the finger before")


@needs(words=["as", "like"])
def same_as_there(desk: Desk, scene: Scene) -> None:
    """'FDP - same as index', 'Profundus: as in the ring': a line that tells a cut, its ends and zone by another's."""
    groups = scene.setting.groups
    if scene.sentence.prefix or len(groups) != _TENDON_AND_ITS_LIKE:
        return  # 'as index FDP' in a column of a grid tells what that column asks
    if not (groups[0].tendons and groups[1].reference and groups[1].digits):
        return
    own, like = groups
    lead = scene.words(scene.sentence.i, own.i)
    between = [w for w in scene.words(own.j, like.i) if w not in _LIKE_LEADS]
    behind = scene.words(like.j, scene.sentence.j)
    if any(w[0].isalpha() for w in lead) or between or behind not in ([], ["."]) or not scene.told(own.i):
        return
    unknown = [t for t in group_targets(scene, own) if t not in desk.extents]  # else it is sewn as the other was
    for target in unknown:
        for digit in like.digits:
            told = desk.told_of("repairs", (digit, target.tendon, target.slip))
            for finding in [f for f in told if f.field in _OF_A_CUT and f.order < scene.sentence.i]:
                if target.digit != digit and desk.scene_at(finding.order).told(finding.order):
                    span = [(own.i, like.j)]
                    desk.tendon(scene, target, finding.field, finding.value, span, "same as the tendon named")


_TENDON_AND_ITS_LIKE = 2
_LIKE_LEADS = frozenset(["-", ":", "=", "the", "same", "as", "like", "in", "of", "that", "for", "is", "was", "again"])
_OF_A_CUT = ("extent", "extent_percent", "ends", "zone")


def so_was_the_next(desk: Desk, scene: Scene) -> None:
    """'The FDP was cut through. So was the FDS.', 'FDS likewise.': the extent told last in the sentence before."""
    group = next((g for g in scene.setting.groups if g.tendons), None)
    before = desk.scene_before(scene)
    if group is None or before is None or scene.of("extent", "deed", "gap", "glide") or not scene.told(group.i):
        return
    if before.of("deed"):
        return  # '... was cut through and sewn. So was the FDS.'
    lead = [
        w for w in scene.words(scene.sentence.i, group.i) if w not in _WHOLE_OF and w not in ("also", "then", "too")
    ]
    behind = [w for w in scene.words(group.j, scene.sentence.j) if w not in _ALL_OF_IT]
    if not (lead in _SO_WAS and not behind) and not (lead == [] and behind and SAME.union(_TOO).issuperset(behind)):
        return
    told = [f for f in desk.laid("extent") if f.group == "repairs"]
    if not told or not before.sentence.i <= told[-1].order < before.sentence.j:
        return
    for target in group_targets(scene, group):
        desk.tendon(scene, target, "extent", told[-1].value, [(scene.sentence.i, group.j)], "same as the one before")


_TOO = frozenset(["too", "also"])
_ALL_OF_IT = frozenset([".", ",", "was", "the", "as", "well", "both", "slips", "of", "it"])  # 'likewise, both slips'


def _all_the_same(desk: Desk, scene: Scene, group: Group) -> None:
    """'The same was true of the middle finger.': every extent that the sentence before told of its finger."""
    before = desk.scene_before(scene)
    if before is None or not scene.told(group.i):
        return
    told = dict.fromkeys(
        t for g in before.setting.groups if g.tendons and not g.reference for t in group_targets(before, g)
    )
    for known in told:
        for digit in group.digits:
            if known in desk.extents and known.slip is None and digit != "thumb" != known.digit:
                span = [(scene.sentence.i, group.j)]
                desk.tendon(scene, Target(digit, known.tendon), "extent", desk.extents[known], span, "same as before")


def both_slips(desk: Desk, scene: Scene) -> None:
    """'FDS: both slips cut', 'gone in both slips': all of the tendon, where no share is told."""
    for slips in (m for m in scene.of("slip") if m.value in ("both", "radial", "ulnar") and scene.told(m.i)):
        cut = next((m for m in scene.of("hurt") if _cuts_beside(scene, m, slips)), None)
        if cut is None:
            continue
        group = next((g for g in scene.setting.groups if g.i <= slips.i < g.j), None)
        targets = group_targets(scene, group) if group is not None else []
        if cut.i < slips.i:
            whole = [t for t in tendon_owner(desk, scene, cut.i, cut.j)[0] if t.tendon == "FDS"]
            own = [t for t in whole if t.slip or slips.value == "both"]
            targets = own or [t._replace(slip=slips.value) for t in whole] or targets
        for target in targets:
            span = (min(slips.i, cut.i), max(slips.j, cut.j))
            desk.tendon(scene, target, "extent", "complete", [span], "both slips cut")


def _cuts_beside(scene: Scene, cut: Mention, slips: Mention) -> bool:
    """Tell whether a word of a cut stands beside 'both slips' and is neither denied nor only of a part."""
    if not (-3 <= slips.i - cut.j <= 3 or 0 <= cut.i - slips.j <= 3) or not scene.told(cut.i):
        return False
    if CUT.isdisjoint(scene.words(cut.i, cut.j)) or scene.negated(cut.i, cut.j):
        return False
    if slips.value == "both" and cut.j <= slips.i and _whole_slips(scene, cut, slips):
        return False
    first, last = scene.part(cut.i)
    shares = [*(m.i for m in scene.of("fraction")), *(q.i for q in scene.quantities if q.unit == "%")]
    if any(first <= k < last or _share_follows(scene, slips, k) for k in shares):
        return False
    if slips.value != "both" and cut.j <= slips.i:
        lead = scene.words(cut.j, slips.i)
        others = any(m.value == "intact" and m.i > slips.j for m in scene.of("extent"))
        others = others or "only" in (*lead, scene.next_word(slips.j))
        if not (IN_ITS.issuperset(lead) and not PLACED.isdisjoint(lead) and others):
            return False  # 'cut on its radial slip, the ulnar being whole', 'cut only through the ulnar slip'
    elif slips.value != "both" and (cut.i != slips.j or not _all_of_slip(scene, cut)):
        return False
    return scene.word_before(cut.i) not in ("partially", "partly", "half")


def _whole_slips(scene: Scene, cut: Mention, slips: Mention) -> bool:
    """'The FDP was cut; both slips of the FDS were intact': the slips open a statement of their own."""
    told_whole = any(m.value == "intact" and 0 <= m.i - slips.j <= _FAR_BEHIND for m in scene.of("extent"))
    told_whole = told_whole and scene.next_word(slips.j) != ","  # 'cut: both slips, whole'
    return told_whole or not {";", "."}.isdisjoint(scene.words(cut.j, slips.i))


_FAR_BEHIND = 6  # words


def _share_follows(scene: Scene, slips: Mention, k: int) -> bool:
    """'Cut only in its radial slip, to about one third; the ulnar whole': a comma and how far behind the slip."""
    return scene.next_word(slips.j) == "," and all(w in _HOW_FAR for w in scene.words(slips.j + 1, k)) and k > slips.j


def _all_of_slip(scene: Scene, cut: Mention) -> bool:
    """'Radial slip gone'; 'radial slip cut, ulnar slip intact': a cut slip beside a whole one is cut through."""
    words = scene.words(cut.i, cut.j)
    beside = any(m.value == "intact" and 0 < m.i - cut.j <= 4 for m in scene.of("extent"))
    return words == ["gone"] or (words == ["cut"] and beside and scene.next_word(cut.j) in (",", ";", "and"))


_HOW_FAR = frozenset(
    ["to", "by", "about", "some", "roughly", "up", "for", "over", "perhaps", "only", "an", "estimated", "a"]
)


@needs(words=["neither"])
def neither_cut(desk: Desk, scene: Scene) -> None:
    """'Neither the FDP nor the FDS was cut.'"""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] != "neither" or not scene.told(k):
            continue
        cut = next((m for m in scene.of("hurt") if m.i > k and m.value in ("hurt", "complete")), None)
        touched = next((n for n in range(k, scene.sentence.j) if words[n] in _TOUCHED), None)
        if cut is None and touched is not None:
            cut = Mention(
                "hurt", "hurt", touched, touched + 1
            )  # 'in neither finger had the superficialis been touched'
        if cut is None or cut.i - k > 14:
            continue
        named = [g for g in scene.setting.groups if g.tendons and k < g.i and g.j <= cut.i]
        if not named and scene.page.words[k + 1] in _BOTH_OF:
            _lay_both(desk, scene, k, cut)
            continue
        if "but" in words[k : cut.i] or any(m.i < cut.i for m in scene.of("extent", "deed") if m.i > k):
            continue
        for target in (t for g in named for t in group_targets(scene, g)):
            desk.tendon(scene, target, "extent", "intact", [(k, cut.j)], "extent intact")


def _lay_both(desk: Desk, scene: Scene, k: int, cut: Mention) -> None:
    """'Neither tendon of the small finger had been touched', 'Ring: neither flexor was injured': both of the finger."""
    named = [g.digits for g in scene.setting.groups if g.digits and not (g.reference or g.excepted) and g.i <= cut.i]
    fingers = named[-1] if named else scene.setting.digits
    if len(fingers) != 1 or fingers[0] == "thumb":
        return
    for tendon in ("FDP", "FDS"):
        target = Target(fingers[0], tendon)
        if desk.extents.get(target) not in ("complete", "partial"):
            desk.tendon(scene, target, "extent", "intact", [(k, cut.j)], "extent intact")


_BOTH_OF = frozenset(["tendon", "flexor"])
# 'as was the whole of the superficialis', 'as were the four superficialis tendons'
_WHOLE_OF = _ITS | {"whole", "entire", "rest", "of", "two", "three", "four", "all"}
_TOUCHED = frozenset(["touched", "involved", "reached", "harmed", "affected"])
_SO_WAS = tuple([lead, verb] for lead in ("so", "as") for verb in ("was", "were", "had", "has", "have", "are", "is"))


def so_was(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'The FDP was divided and so was the ulnar slip of FDS', 'as was its superficialis', '... but not the FDS'."""
    for group in (g for g in scene.setting.groups if g.i > mention.j and (g.tendons or g.generic == "all")):
        before = [w for w in scene.words(max(mention.j, group.i - 6), group.i) if w not in _WHOLE_OF]
        alike = before[-1:] in (["likewise"], ["ditto"], ["idem"])
        spared = before[-2:] in (["and", "not"], ["but", "not"]) and mention.value == "complete"
        if not (spared or alike or before[-2:] in _SO_WAS) or scene.negated(mention.i, mention.j):
            continue
        if not _last_before(scene, mention, group):
            continue
        told = [Target(d, t) for d in group.digits for t in ("FDP", "FDS")]
        if group.tendons:
            told = group_targets(scene, group) if group.digits else _of_each_named(scene, group)
        value = "intact" if spared else mention.value
        for target in told:
            desk.tendon(scene, target, "extent", value, [(group.i, group.j)], f"extent {value}")


def _of_each_named(scene: Scene, group: Group) -> list[Target]:
    """'As were all four profundi and the FPL': those of the four fingers, each tendon of its own digits."""
    four = "four" in scene.words(max(scene.sentence.i, group.i - 3), group.i)
    fingers = [Target(d, t) for t in group.tendons if four and t in ("FDP", "FDS") for d in DIGITS[1:]]
    return [*fingers, *(t for t in group_targets(scene, group) if not (four and t.tendon in ("FDP", "FDS")))]


def as_there(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> None:
    """'The FDP and FDS were both divided, as they were in the small finger': the same tendons of that finger."""
    for group in scene.setting.groups:
        lead = scene.words(mention.j, group.i) if group.i > mention.j and group.digits and not group.tendons else []
        if lead[:1] in ([","], ["("]):
            lead = lead[1:]
        if lead[:1] != ["as"] or not {"in", "of", "on"} & set(lead) or not _AS_THERE.issuperset(lead):
            continue
        for target in dict.fromkeys(Target(d, t.tendon, t.slip) for d in group.digits for t in targets if t.digit):
            if target.digit and has(target.digit, target.tendon):
                desk.tendon(scene, target, "extent", mention.value, [(group.i, group.j)], f"extent {mention.value}")


_AS_THERE = frozenset(
    ["as", "they", "it", "was", "were", "had", "been", "both", "those", "in", "of", "on", "the", "also"]
)
