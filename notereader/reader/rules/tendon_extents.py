"""How much of each tendon was cut, or that it was not."""

from notereader.reader.desk import HURT_KINDS, Desk, carried, tendon_owner
from notereader.reader.groups import DIGITS, Group, Target, has
from notereader.reader.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.parted import attributive
from notereader.reader.rules.suture_owners import respective
from notereader.reader.scene import Scene, Subject, group_targets, series
from notereader.vocabulary.wordlists import word_list

_IS_DEED_WORDS = word_list("tendons", "is_deed_words")
_BARE_IS_CUT_WORDS = word_list("tendons", "bare_is_cut_words") | {""}
_BARE_IS_CUT_WORDS_2 = word_list("tendons", "bare_is_cut_words_2") | {""}
_TELLS_INTACT_WORDS = word_list("tendons", "tells_intact_words")
_TELLS_INTACT_WORDS_2 = word_list("tendons", "tells_intact_words_2")
_TELLS_INTACT_WORDS_3 = word_list("tendons", "tells_intact_words_3") | {""}
_CUTS_TENDON_WORDS = word_list("tendons", "cuts_tendon_words")
_FRACTION_CUTS_CUT = word_list("tendons", "fraction_cuts_cut")
_BARE = frozenset(
    [
        "all the way",
        "through",
        "out",
        "off",
        "gone",
        "right across",
        "clean across",
        "right through",
        "clean through",
        "cleanly through",
        "straight through",
        "across",
    ]
)
_BARE_BETWEEN = word_list("tendons", "bare_between")
_NOT_A_CUT = word_list("tendons", "not_a_cut")
_DRUGS = word_list("tendons", "drugs")
_SHARE_LEADS = word_list("tendons", "share_leads")
_CUT = word_list("tendons", "cut")
_CUT_LABELS = word_list("tendons", "cut_labels")
_IN_FULL = (["in", "full"], ["in", "total"], ["in", "toto"], ["in", "continuity"], ["throughout", "its"])
_REMAINING = word_list("tendons", "remaining")
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
_FAR = {
    **dict.fromkeys(("whole", "full", "total", "through", "all"), "complete"),
    **dict.fromkeys(("none", "nil", "no", "uncut"), "intact"),
    "half": "half",
}
_HOW_FAR = frozenset(["cut", "cut?", "lesion", "injury", "damage", "how much", "how far", "extent", "divided"])
_WHERE = frozenset(["above", "at", "in", "over", "proximal", "just", "near", "on"])
_GAVE_WAY = frozenset(["way", "ruptured", "parted", "snapped", "dehisced", "failed", "apart"])
_OLD_REPAIR = frozenset(["repair", "repairs", "suture", "sutures", "join", "tenorrhaphy"])
_SAME = frozenset(["same", "ditto", "idem", "likewise"])
_NONE = frozenset(["none", "nil"])


@needs(
    kinds=["extent", "fraction", "neutral", "slip"],
    words={"flexors"} | _CUT | _SAME | _NONE | _GAVE_WAY | {"neither", "avulsion"} | _FAR.keys(),
    units=["%", ""],
)
def extents(desk: Desk, scene: Scene) -> None:
    """Find how much of each tendon was cut, or that it was not."""
    if scene.sentence.section in ("instructions", "closure", "admin"):
        return
    for mention in scene.of("extent"):
        if scene.told(mention.i) and mention.value != "contused":
            _extent(desk, scene, mention)
            if mention.value == "partial" and (scene.words(mention.i, mention.j) or [""])[0] in ("half", "halfway"):
                _part_cut(desk, scene, _cut_targets(desk, scene, mention), 50.0, mention.i, mention.j)
    _percents(desk, scene)
    _share_again(desk, scene)
    _listed_shares(desk, scene)
    _fractions(desk, scene)
    _in_continuity(desk, scene)
    _both_slips(desk, scene)
    _neither(desk, scene)
    _same_again(desk, scene)
    _none_of_slip(desk, scene)
    _none_cut(desk, scene)
    _other_flexors(desk, scene)
    _avulsion(desk, scene)
    _gave_way(desk, scene)
    _cell_of_cut(desk, scene)
    _cell_of_how_far(desk, scene)
    _answered_cut(desk, scene)


def _cell_of_how_far(desk: Desk, scene: Scene) -> None:
    """'FDS 3   whole   yes' under 'tendon   cut   repaired': how far, told by a word that means it only there."""
    first, prefix = scene.sentence.i, scene.sentence.prefix
    if not prefix or scene.next_word(first + 1) not in ("", ",", ";", ".") or not scene.told(first):
        return
    word, titles = scene.page.words[first], [" ".join(scene.words(*label)) for label in prefix]
    value = _FAR.get(word) if not _HOW_FAR.isdisjoint(titles) else "intact" if word == "whole" else None
    label = next((g for g in scene.setting.groups if g.i == g.j == first and g.tendons), None)
    if value is None or label is None:
        return
    for target in group_targets(scene, label):
        if value == "half":
            _part_cut(desk, scene, [target], 50.0, first, first + 1)
        else:
            desk.tendon(scene, target, "extent", value, [(first, first + 1)], f"cell of a grid: {word}")


def _answered_cut(desk: Desk, scene: Scene) -> None:
    """'Cut: complete', 'Zone: II   Condition: explored, intact' on a line under the tendon it is asked of."""
    words, focus = scene.page.words, scene.setting.focus
    if len(focus) != 1 or any(g.tendons or g.digits for g in scene.setting.groups):
        return
    asked = range(scene.sentence.i, scene.sentence.j - 1)
    k = next((k for k in asked if words[k] in _ASKS_CUT and words[k + 1] == ":"), None)
    told = [m for m in scene.of("extent") if k is not None and m.i > k + 1 and scene.told(m.i)]
    if k is None or len(told) != 1 or told[0].value == "contused" or told[0].i - k > _SOON_ANSWERED:
        return
    if not scene.negated(told[0].i, told[0].j):
        desk.tendon(scene, focus[0], "extent", told[0].value, [(k, told[0].j)], f"extent {told[0].value}")


_SOON_ANSWERED = 5  # words
_ASKS_CUT = frozenset(["cut", "extent", "division", "damage", "laceration", "injury", "state", "status", "condition"])


def _cell_of_cut(desk: Desk, scene: Scene) -> None:
    """'FDP   cut, stump 4 mm   cut' in a grid: a cell that a tendon heads says 'cut' where others say how far."""
    first = scene.sentence.i
    after = scene.next_word(first + 1)
    if not scene.sentence.prefix or scene.page.words[first] not in _CUT or after not in ("", ",", ";", "."):
        return
    shares = bool(scene.of("fraction", "extent")) or any(q.unit == "%" for q in scene.quantities)
    label = next((g for g in scene.setting.groups if g.i == g.j == first and g.tendons and g.digits), None)
    if label is not None and not shares and scene.told(first):
        for target in group_targets(scene, label):
            desk.tendon(scene, target, "extent", "complete", [(first, first + 1)], "cell of a grid: cut")


def _extent(desk: Desk, scene: Scene, mention: Mention) -> None:
    word = " ".join(scene.words(mention.i, mention.j))
    if word == "nick" and scene.word_before(mention.i) in ("cm", "mm") and scene.next_word(mention.j) in _WHERE:
        return  # 'through a 1 cm nick above the wrist'
    if word in ("nick", "nicks") and "through" in scene.words(max(scene.sentence.i, mention.i - 3), mention.i):
        return  # 'harvested through two nicks'
    if word == "in two" and scene.word_before(mention.i) in ("repair", "repairs", "suture", "sutures", "surgery"):
        return  # 'exploration of three fingers, tendon repair in two'
    if "respectively" in scene.said and _shares_dealt_out(scene, mention):
        return
    if attributive(scene, mention) or _of_the_known(desk, scene, mention):
        return
    _so_was(desk, scene, mention)
    targets = _cut_targets(desk, scene, mention)
    if not targets:
        return
    if word == "gone" and scene.page.words[mention.i - 1] in ("has", "had", "have", "was"):
        return  # 'the proximal end had gone to the palm'
    blade = any(m.j <= mention.i for m in scene.of("agent")) and _cut_through(
        scene, mention
    )  # 'the knife went through'
    if word in _BARE and not blade and not _bare_is_cut(scene, mention):
        return
    column = mention.j < scene.sentence.j and scene.page.breaks[mention.j] == Break.COLUMN  # 'complete   not repaired'
    if (
        word in ("complete", "completely")
        and not column
        and (
            scene.next_word(mention.j) in _NOT_A_CUT
            or any(m.i == mention.j and m.value == "intact" for m in scene.of("extent"))
            or any(d.j == mention.i and d.value in ("excised", "trimmed", "repaired") for d in scene.of("deed"))
        )
    ):
        return
    if mention.value == "intact":
        if not _tells_intact(scene, mention, word):
            return
        left_out = {t for g in scene.setting.groups if g.excepted and not g.digits for t in g.tendons}
        targets = [t for t in targets if t.tendon not in left_out]  # 'flexor tendons intact except the FDP'
    elif scene.negated(mention.i, mention.j):
        return
    if mention.value == "complete" and (
        _is_deed(scene, mention, word)
        or _is_likeness(scene, mention)
        or _share_behind(scene, mention)
        or _share_before(scene, mention)
    ):
        return
    targets = _in_its_slip(scene, mention, targets)
    if word.endswith("in half") and scene.words(mention.j, mention.j + 2) in _OF_WIDTH:
        _part_cut(desk, scene, targets, 50.0, mention.i, mention.j + 2)  # 'cut in half of its width'
        return
    if mention.value == "partial":
        targets = [t for t in targets if t.slip or not _slips_follow(scene, mention, t)]
    for target in targets:
        if target.tendon == "PL" and word in ("not touched", "untouched", "preserved"):
            continue
        desk.tendon(
            scene,
            target,
            "extent",
            mention.value,
            [with_name_of(scene, mention, target)],
            f"extent {mention.value}",
        )
    _too(desk, scene, mention)
    _as_there(desk, scene, mention, targets)


def _in_its_slip(scene: Scene, mention: Mention, targets: list[Target]) -> list[Target]:
    """'The superficialis was divided only in its ulnar slip': of that slip alone."""
    slip = next((m for m in scene.of("slip") if m.value in ("radial", "ulnar") and 0 < m.i - mention.j <= 4), None)
    lead = scene.words(mention.j, slip.i) if slip is not None else []
    if slip is None or mention.value == "intact" or not _IN_ITS.issuperset(lead) or _PLACED.isdisjoint(lead):
        return targets
    return [t._replace(slip=slip.value) if t.tendon == "FDS" else t for t in targets]


_PLACED = frozenset(["in", "on", "through", "at", "along"])
_IN_ITS = _PLACED | {"only", "just", "its", "the", "merely", "alone"}


def _slips_follow(scene: Scene, mention: Mention, target: Target) -> bool:
    """'FDS both slips nicked, radial 10%, ulnar 30%': each slip's own share follows."""
    later = [t for g in scene.setting.groups if g.i >= mention.j for t in group_targets(scene, g) if t.slip]
    return {t.slip for t in later if t[:2] == target[:2]} == {"radial", "ulnar"}


def _too(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'The profundus was severed and the superficialis too.'"""
    for group in scene.setting.groups:
        after = scene.words(group.j, min(group.j + 3, scene.sentence.j))
        end = min([g.i for g in scene.setting.groups if g.i > group.i] + [group.j + 8])
        own = [m for m in scene.of("extent") if group.j <= m.i < end]
        spared = mention.value == "complete" and after[:1] != after[1:2] and after[1:2] == ["not"]
        if spared and after[0] in ("was", "were", "is", "are") and after[2:] in ([], ["."], [";"], [","]):
            for target in group_targets(scene, group) if group.tendons and group.i > mention.j else []:
                desk.tendon(scene, target, "extent", "intact", [(group.i, group.j + 2)], "extent intact")
        also = after[:1] in (["too"], ["also"], ["likewise"]) or after[:2] in (["as", "well"], ["the", "same"])
        also = also and _last_before(scene, mention, group)
        if group.i > mention.j and also and not own and not group.reference:
            for target in group_targets(scene, group) if group.tendons else _same_tendon(scene, group):
                desk.tendon(scene, target, "extent", mention.value, [(group.i, group.j)], f"extent {mention.value}")


def _last_before(scene: Scene, mention: Mention, group: Group) -> bool:
    """'half cut, whereas that of the small finger was intact, as was the FCU': of the last word told."""
    return not any(mention.j <= m.i < group.i for m in scene.of("extent"))


def _none_of_slip(desk: Desk, scene: Scene) -> None:
    """'Laceration: radial slip 50-60%; ulnar slip none', 'FDP 50 %, FDS nil'."""
    if "hurt" not in scene.kinds and not any(q.unit == "%" for q in scene.quantities):
        return
    shares = any(q.unit == "%" for q in scene.quantities)
    for group in (g for g in scene.setting.groups if any(slip or shares for _, _, slip in g.pairs)):
        after = scene.words(group.j, min(group.j + 2, scene.sentence.j))
        if after and after[0] in _NONE and after[1:] in ([], ["."], [";"], [","]) and scene.told(group.i):
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "extent", "intact", [(group.i, group.j + 1)], "extent intact")


def _same_again(desk: Desk, scene: Scene) -> None:
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
    if not after or after[0] not in _SAME or after[1:2] not in ([], [","], ["."], [";"]):
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


def _both_slips(desk: Desk, scene: Scene) -> None:
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
    if _CUT.isdisjoint(scene.words(cut.i, cut.j)) or scene.negated(cut.i, cut.j):
        return False
    first, last = scene.part(cut.i)
    shares = [*(m.i for m in scene.of("fraction")), *(q.i for q in scene.quantities if q.unit == "%")]
    if any(first <= k < last for k in shares):
        return False
    if slips.value != "both" and cut.j <= slips.i:
        lead = scene.words(cut.j, slips.i)
        others = [m for m in scene.of("extent") if m.value == "intact" and m.i > slips.j]
        if not (_IN_ITS.issuperset(lead) and not _PLACED.isdisjoint(lead) and others):
            return False  # 'cut on its radial slip, the ulnar being whole'
    elif slips.value != "both" and (cut.i != slips.j or not _all_of_slip(scene, cut)):
        return False
    return scene.word_before(cut.i) not in ("partially", "partly", "half")


def _all_of_slip(scene: Scene, cut: Mention) -> bool:
    """'Radial slip gone'; 'radial slip cut, ulnar slip intact': a cut slip beside a whole one is cut through."""
    words = scene.words(cut.i, cut.j)
    beside = any(m.value == "intact" and 0 < m.i - cut.j <= 4 for m in scene.of("extent"))
    return words == ["gone"] or (words == ["cut"] and beside and scene.next_word(cut.j) in (",", ";", "and"))


@needs(words=["neither"])
def _neither(desk: Desk, scene: Scene) -> None:
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
        if "but" in words[k : cut.i] or any(m.i < cut.i for m in scene.of("extent", "deed") if m.i > k):
            continue
        for target in (t for g in named for t in group_targets(scene, g)):
            desk.tendon(scene, target, "extent", "intact", [(k, cut.j)], "extent intact")


_OF_ITS = frozenset(["of", "the", "its", "his", "her", "their", "these"])
_WHOLE_OF = _ITS | {"whole", "entire", "rest", "of"}  # 'as was the whole of the superficialis'
_TOUCHED = frozenset(["touched", "involved", "reached", "harmed", "affected"])
_SO_WAS = tuple([lead, verb] for lead in ("so", "as") for verb in ("was", "were", "had", "are", "is"))


def _so_was(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'The FDP was divided and so was the ulnar slip of FDS', 'as was its superficialis', '... but not the FDS'."""
    for group in (g for g in scene.setting.groups if g.i > mention.j and (g.tendons or g.generic == "all")):
        before = [w for w in scene.words(max(mention.j, group.i - 6), group.i) if w not in _WHOLE_OF]
        alike = before[-1:] == ["likewise"]
        spared = before[-2:] in (["and", "not"], ["but", "not"]) and mention.value == "complete"
        if not (spared or alike or before[-2:] in _SO_WAS) or scene.negated(mention.i, mention.j):
            continue
        if not _last_before(scene, mention, group):
            continue
        told = [Target(d, t) for d in group.digits for t in ("FDP", "FDS")]
        if group.tendons:
            told = group_targets(scene, group)
        value = "intact" if spared else mention.value
        for target in told:
            desk.tendon(scene, target, "extent", value, [(group.i, group.j)], f"extent {value}")


def _as_there(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> None:
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


def _in_continuity(desk: Desk, scene: Scene) -> None:
    """'the radial slip was in continuity' of a tendon nothing else was said of."""
    for mention in scene.of("neutral"):
        if scene.words(mention.i, mention.i + 2) != ["in", "continuity"] or not scene.told(mention.i):
            continue
        _so_was(desk, scene, Mention("extent", "intact", mention.i, mention.j))
        first, last = scene.part(mention.i)
        hurt = any(first <= m.i < last and m.value in HURT_KINDS for m in scene.of("extent"))
        hurt = hurt or any(q.unit == "%" and first <= q.i < last for q in scene.quantities)
        targets, _ = tendon_owner(desk, scene, mention.i, mention.j)
        if not hurt and not scene.negated(mention.i, mention.j):
            for target in targets:
                desk.tendon(scene, target, "extent", "intact", [with_name_of(scene, mention, target)], "extent intact")


def with_name_of(scene: Scene, mention: Mention, target: Target) -> tuple[int, int]:
    """Return the words from the tendon's name to the property where they stand close, else the property."""
    for group in scene.setting.groups:
        if group.tendons and target.tendon in group.tendons:
            i, j = min(group.i, mention.i), max(group.j, mention.j)
            if j - i <= 14:
                return i, j
    return mention.i, mention.j


def _is_deed(scene: Scene, mention: Mention, word: str) -> bool:
    """'divided' can be the surgeon's doing: 'the FDS slip was divided to make room'."""
    if word not in ("divided", "out", "off", "cut clean", "cut across"):
        return False
    after = scene.words(mention.j, mention.j + 4)
    return len(after) > 1 and after[0] == "to" and after[1] in _IS_DEED_WORDS


def _of_the_known(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'The divided profundus was repaired', of several fingers: the one told to be divided, not that all are."""
    group = next((g for g in scene.setting.groups if g.tendons and 0 <= g.i - mention.j <= 1), None)
    if group is None or group.digits or len(scene.setting.digits) < 2 or scene.word_before(mention.i) != "the":
        return False
    return any(t.tendon in group.tendons and desk.extents.get(t) == mention.value for t in desk.named)


def _shares_dealt_out(scene: Scene, mention: Mention) -> bool:
    """'FDS of both cut 60% and 100% respectively': the shares of its own part of the sentence tell how far."""
    first, last = scene.part(mention.i)
    several = sum(q.unit == "%" for q in scene.quantities) > 1
    return several and any(q.unit == "%" and first <= q.i < last for q in scene.quantities)


_OF_WIDTH = [["of", word] for word in ("its", "the", "their")]


def _share_behind(scene: Scene, mention: Mention) -> bool:
    """'Divided in its radial half', 'cut through a third of its width': not all of it."""
    behind = [m for m in scene.of("fraction") if 0 <= m.i - mention.j <= 4]
    between = scene.words(mention.j, behind[0].i) if behind else []
    return bool(behind) and _SHARE_LEADS.issuperset(between)


def _share_before(scene: Scene, mention: Mention) -> bool:
    """'Some 60 percent of the profundus had been severed', 'a third of the FDP was divided'."""
    first, _ = scene.part(mention.i)
    ends = [q.j for q in scene.quantities if q.unit == "%" and (q.high or 100) < 100]
    if mention.i in ends and not scene.page.words[mention.i].startswith("complete"):
        return True  # 'FDS 30% division'
    ends += [m.j for m in scene.of("fraction")]
    leads = [k for k in ends if first <= k < mention.i and scene.page.words[k] == "of"]
    return any(0 < g.i - k <= 4 and g.j <= mention.i for k in leads for g in scene.setting.groups if g.tendons)


def _is_likeness(scene: Scene, mention: Mention) -> bool:
    """'treated as a complete division' says what it was not."""
    before = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    return "as" in before[:-1] and set(before[before.index("as") + 1 :]) <= {"a", "an", "the", "if", "though"}


def _bare_is_cut(scene: Scene, mention: Mention) -> bool:
    """Tell whether a bare 'through' says that a tendon was cut: it must stand right after the tendon."""
    before = [s for s in scene.subjects if s.j <= mention.i and s.kind == "tendon"]
    if not before:
        return False
    between = scene.words(before[-1].j, mention.i)
    if len(between) > 3 or any(w not in _BARE_BETWEEN and not w.startswith("..") for w in between):
        return False
    after = scene.next_word(mention.j)
    if scene.words(mention.i, mention.j)[-1:] == ["through"]:
        return after in _BARE_IS_CUT_WORDS_2
    return after in _BARE_IS_CUT_WORDS


_SOMEWHERE = frozenset(["proximally", "distally"])


def _tells_intact(scene: Scene, mention: Mention, word: str) -> bool:
    """Weak words ('fine', 'normal', 'preserved') count only right beside the tendon; 'not intact' never."""
    if scene.negated(mention.i, mention.j) and not word.startswith(("not", "no ", "un", "was not", "were not")):
        return False
    if scene.next_word(mention.j) in _SOMEWHERE and "throughout" not in scene.said:
        return False  # 'FDS intact proximally, distally its slips were cut'
    if scene.word_before(mention.i) in ("branch", "branches"):
        return False  # 'Motor branch intact.'
    if any(m.j == mention.i for m in scene.of("fraction")) or any(
        q.j == mention.i and q.unit == "%" and (q.high or 100) < 100 for q in scene.quantities
    ):
        return False  # 'three quarters whole, the other quarter frayed'
    if word in ("no injury", "no laceration", "no cut", "no damage"):
        owned = scene.word_before(mention.i) in _TELLS_INTACT_WORDS_2
        return owned or scene.next_word(mention.j) in ("to", "of", "in")
    if word in _TELLS_INTACT_WORDS:
        subject = scene.owner(mention.i, mention.j)
        closes = scene.next_word(mention.j) in _TELLS_INTACT_WORDS_3
        closes = closes or scene.words(mention.j, mention.j + 2) in _IN_FULL
        closes = closes or any(g.i == mention.j and g.digits for g in scene.setting.groups)  # dictated without stops
        named = (
            subject is not None and subject.group is not None and bool(subject.group.tendons or subject.group.digits)
        )
        if not (closes and named and subject is not None and subject.j <= mention.i and mention.i - subject.j <= 6):
            return False
        between = [m.i for m in scene.of("endword", "ends", "restored")]  # 'FDP ends trimmed 2 mm, healthy'
        return not any(subject.j <= k < mention.i for k in between)
    return True


def _cut_targets(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the tendons an extent belongs to: named ones, all of a group, or those of a label or heading."""
    if scene.sentence.prefix and not scene.setting.groups and scene.mentions and _of_another_row(scene):
        return []
    headed = (
        _cut_through(scene, mention)
        or _of_the_exception(scene, mention)
        or _headed_list(scene, mention)
        or _listed_behind(scene, mention)
    )
    if headed:
        return headed
    targets, group = tendon_owner(desk, scene, mention.i, mention.j)
    subject = scene.owner(mention.i, mention.j)
    if subject is not None:
        targets = [*_in_series(desk, scene, subject, mention), *targets]
    if mention.value == "intact" and group is not None and not group.digits:
        targets = _the_rest(desk, scene, group) or targets
    if targets:
        whole = [t for t in targets if t.tendon != "FDS" or t.slip]
        return list(dict.fromkeys(whole if _of_one_slip(scene, group) else targets))
    if subject is None:
        return _from_label(desk, scene, mention)
    if subject.group is None:
        return []
    assert group is not None
    if group.generic == "others":
        return _rest_of_four(scene, group)
    if group.generic == "all" and mention.value == "intact" and (group.digits or _digits_before(scene, group)):
        digits = group.digits or _digits_before(scene, group)
        return [Target(d, t) for d in digits for t in (("FPL",) if d == "thumb" else ("FDP", "FDS"))]
    if group.generic == "all" and mention.j <= group.i and group.i - mention.j <= 1:
        return []  # 'the cut tendons' tells nothing new
    if group.generic == "all":
        flexors = _flexors_of_finger(desk, scene, group) if mention.value == "intact" else []
        return flexors or _all_tendons(desk, scene, group, mention.value)
    if group.generic == "one" and mention.value != "intact" and _of_thumb(scene, group):
        return [Target("thumb", "FPL")]
    if group.generic == "one" and mention.value != "intact":
        return carried(desk, scene, group.digits or None)[0] or list(scene.setting.focus)
    if group.every and not (group.digits or group.generic):
        return _in_every_finger(scene, group, mention)
    if group.digits and mention.value != "intact" and not group.generic:
        pulleys = [m for m in scene.of("pulley") if m.j <= mention.i]
        return [] if pulleys else _same_tendon(scene, group)
    return []


def _cut_through(scene: Scene, mention: Mention) -> list[Target]:
    """'the saw had gone through both the profundus and the superficialis': the objects of the verb."""
    if scene.page.words[mention.j - 1] != "through" or mention.value != "complete":
        return []
    first, _ = scene.part(mention.i)
    if any(first <= g.i < mention.i and g.tendons for g in scene.setting.groups):
        return []  # 'the FDP was cut through'
    group = next((g for g in scene.setting.groups if g.i >= mention.j and g.tendons and not g.reference), None)
    led = group is not None and set(scene.words(mention.j, group.i)) <= {"the", "both", "its", "all", "of"}
    return group_targets(scene, group) if group is not None and led else []


def _of_another_row(scene: Scene) -> bool:
    """Tell whether a cell stands in a row whose label names no tendon that the reader knows: it tells of none."""
    label = scene.sentence.prefix[0]
    words = scene.words(*label)
    return _CUT_LABELS.isdisjoint(words) and not {"how", "extent", "cut", "tendon", "state", "far"} & set(words)


def _digits_before(scene: Scene, group: Group) -> tuple[str, ...]:
    """'Middle finger: skin cut only, tendons seen and not cut': the digit named before, if no tendon of it is."""
    before = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
    return before[-1].digits if before and not before[-1].tendons and not before[-1].generic else ()


def _of_the_exception(scene: Scene, mention: Mention) -> list[Target]:
    """'The profundus was divided in all fingers but the index, where it was intact': said of the finger left out."""
    lead = scene.words(mention.i - 3, mention.i)
    if lead != ["where", "it", "was"] and lead[1:] != ["where", "it"]:
        return []
    left_out = [g for g in scene.setting.groups if g.excepted and not g.tendons and g.j <= mention.i]
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and not g.excepted]
    if not left_out or not named:
        return []
    return [Target(d, t) for d in left_out[-1].digits for t in named[-1].tendons if has(d, t)]


def _headed_list(scene: Scene, mention: Mention) -> list[Target]:
    """'Severed completely are: the FCR, the palmaris longus and ...', 'Not cut: FPL, FDP of the index.'"""
    if any(s.j <= mention.i for s in scene.subjects) or mention.i - scene.sentence.i > 1:
        return []
    after = scene.words(mention.j, mention.j + 3)
    colon = next((k for k, w in enumerate(after) if w == ":"), None)
    if colon is None or any(w not in ("are", "were", "is", "completely", "is", "tendons") for w in after[:colon]):
        return []
    listed = [s for s in scene.subjects if s.i >= mention.j]
    ended = next((m.i for m in scene.of("extent", "deed", "hurt") if m.i > mention.j + colon), scene.sentence.j)
    return [t for s in listed if s.j <= ended and s.group for t in group_targets(scene, s.group) if s.group.tendons]


def _listed_behind(scene: Scene, mention: Mention) -> list[Target]:
    """'Everything else, FPL included, is intact: FDP and FDS of the ring and FDP of the middle finger.'"""
    if mention.value != "intact" or scene.next_word(mention.j) != ":":
        return []
    others = [m for m in scene.of("extent", "hurt", "deed") if m.i >= mention.j]
    behind = [g for g in scene.setting.groups if g.i >= mention.j and g.tendons and not g.reference]
    before = [g for g in scene.setting.groups if g.j <= mention.i and g.tendons and scene.next_word(g.j) == "included"]
    return [] if others or not behind else [t for g in [*before, *behind] for t in group_targets(scene, g)]


def _of_thumb(scene: Scene, group: Group) -> bool:
    """'Next the thumb. The flexor tendon here was only notched': the digit spoken of has but one flexor."""
    if group.digits or scene.setting.digits != ("thumb",) or any(g.digits for g in scene.setting.groups):
        return False
    return not any(t.digit == "thumb" for t in scene.setting.focus)


def _the_rest(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'The remaining FDPs not cut', 'FDPs: all 4 intact': those of the four fingers of which no cut was told."""
    if not group.every and "all" not in scene.words(group.j, group.j + 3):
        return []
    before, after = scene.word_before(group.i), scene.words(group.j, group.j + 4)
    told = scene.words(group.i, group.j)
    others = _to_other_fingers(desk, group, told)
    if others:
        return others
    at_wrist = bool(desk.values_told("zone") & {"IV", "V"})
    wrist = not desk.values_told("tendon").isdisjoint(("FCR", "FCU", "PL")) and len(set(scene.every_digit)) > 1
    if after[:2] == ["all", "intact"] and wrist:
        return [t for t in _of_four(group) if desk.extents.get(t) not in HURT_KINDS]  # 'FDP all intact'
    four = any(after[k : k + 2] in (["all", "4"], ["all", "four"]) for k in range(3)) or (
        before == "every" and at_wrist
    )
    if not four and before not in ("remaining", "other"):
        return []
    fingers = _of_four(group)
    known = {t.digit for t in desk.named} | set(scene.every_digit)
    if not four and not at_wrist and len(known - {"thumb", None}) < 2 and not any(t.digit is None for t in desk.named):
        return []  # one finger was worked on: its neighbours were not looked at
    return [t for t in fingers if desk.extents.get(t) not in HURT_KINDS]


def _to_other_fingers(desk: Desk, group: Group, told: list[str]) -> list[Target]:
    """'Superficialis to the other fingers and every profundus tendon': those of which no cut was told."""
    at = next((k for k in range(len(told) - 2) if told[k] == "the" and told[k + 1] in ("other", "remaining")), None)
    if at is None or told[at + 2] != "fingers" or told[at - 1] not in ("to", "of", "in"):
        return []
    if "every" in told[at:] or len(group.tendons) == 1:
        return [t for t in _of_four(group) if desk.extents.get(t) not in HURT_KINDS]
    return []


@needs(words=["flexors"])
def _other_flexors(desk: Desk, scene: Scene) -> None:
    """'Remaining flexors of the fingers: intact' at the wrist: both flexors of each finger no cut was told of."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if words[k] != "flexors" or not scene.told(k) or not _of_the_fingers(scene, k):
            continue
        before = set(scene.words(max(scene.sentence.i, k - 4), k))
        whole = [m for m in scene.of("extent") if m.value == "intact" and m.i > k and not scene.negated(m.i, m.j)]
        at_wrist = bool(desk.values_told("zone") & {"IV", "V"}) or {"FCR", "FCU", "PL"} & desk.values_told("tendon")
        if not whole or not at_wrist or before.isdisjoint(("remaining", "other", "rest")):
            continue
        for target in (Target(d, t) for d in DIGITS[1:] for t in ("FDP", "FDS")):
            if desk.extents.get(target) not in HURT_KINDS and target not in desk.treatments:
                desk.tendon(scene, target, "extent", "intact", [(k - 1, whole[0].j)], "extent intact")


def _of_the_fingers(scene: Scene, k: int) -> bool:
    behind = scene.words(k + 1, k + 4)
    return scene.word_before(k) in ("finger", "digital") or behind in (
        ["of", "the", "fingers"],
        ["to", "the", "fingers"],
    )


def _in_every_finger(scene: Scene, group: Group, mention: Mention) -> list[Target]:
    """'FDP: completely divided in all three fingers': the tendon that heads the line, in each finger worked on."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and not g.digits]
    if len(named) != 1 or named[0].i > scene.sentence.i + 1 or scene.next_word(named[0].j) != ":":
        return []
    left_out = {d for g in scene.setting.groups if g.excepted for d in g.digits}
    fingers = [d for d in scene.every_digit if d != "thumb" and d not in left_out]
    return [Target(d, t) for d in fingers for t in named[0].tendons if has(d, t)]


def _rest_of_four(scene: Scene, group: Group) -> list[Target]:
    """'Only that of the index was whole. The other three were cut': the same tendon of the fingers not told of.

    'Of the profundi, those to the ring and small fingers were divided and the other two intact' tells of them before.
    """
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
    before = [g for g in named if g.digits] if len(named) > 1 and not named[0].digits else []
    told = group_targets(scene, before[-1]) if before else list(scene.setting.focus)
    told = [t for t in told if t.tendon in ("FDP", "FDS") and t.digit in DIGITS[1:] and t.slip is None]
    counted = next((count_of(w) for w in scene.words(group.i, group.j + 1) if count_of(w) > 1), 0)
    of_four = len({t.digit for t in told}) + counted == len(DIGITS[1:])
    if not of_four or len({t.tendon for t in told}) != 1 or (not before and len(scene.setting.focus) != 1):
        return []
    return [Target(d, told[0].tendon) for d in DIGITS[1:] if all(d != t.digit for t in told)]


def _of_four(group: Group) -> list[Target]:
    """Return a group's deep or superficial flexors of all four fingers."""
    return [Target(d, t) for t in group.tendons if t in ("FDP", "FDS") for d in DIGITS[1:]]


def _in_series(desk: Desk, scene: Scene, subject: Subject, mention: Mention) -> list[Target]:
    """'The FCR, both flexors of the index and the median nerve were intact': the tendons named before in the list."""
    before = [s.group for s in series(scene, subject, mention.i) if s is not subject and s.group is not None]
    apart = subject.group is not None and any(slip for _, _, slip in subject.group.pairs)
    listed = [g for g in before if g.tendons and not (apart and any(slip for _, _, slip in g.pairs))]
    # 'cut on its radial slip, the ulnar being whole'
    found = [t for group in listed for t in group_targets(scene, group)]
    if mention.value == "intact":
        found += [t for group in before if group.generic == "all" for t in _flexors_of_finger(desk, scene, group)]
    return found


def _flexors_of_finger(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'SMALL: flexor tendons and both nerves intact': all flexors of the finger spoken of, if none of it is cut."""
    digits = group.digits or _digits_before(scene, group)
    digits = digits or (scene.setting.digits if len(scene.setting.digits) == 1 else ())
    others = scene.word_before(group.i) in ("other", "remaining") or scene.next_word(group.j) in ("sheath", "sheaths")
    if others or _FLEXORS.isdisjoint(scene.words(group.i, group.j)) or _any_hurt(desk, scene, digits):
        return []
    return [Target(d, t) for d in digits for t in (("FPL",) if d == "thumb" else ("FDP", "FDS"))]


_FLEXORS = frozenset(["flexor", "flexors"])


def _any_hurt(desk: Desk, scene: Scene, digits: tuple[str, ...]) -> bool:
    """Tell whether a tendon of the digits is known to be cut, or was spoken of as hurt before a sentence."""
    before = ((s, g) for s in desk.having("hurt") if s.sentence.i < scene.sentence.i for g in s.setting.groups)
    told = [t for s, g in before if g.tendons and not g.reference for t in group_targets(s, g)]
    return any(t.digit in digits for t in told) or any(desk.is_cut(t) for t in desk.named if t.digit in digits)


def _of_one_slip(scene: Scene, group: Group | None) -> bool:
    """'One slip of the FDS was cut': which one is not said, and nothing of the whole tendon."""
    if group is None or "FDS" not in group.tendons:
        return False
    return any(m.value in ("one", "other") and group.i <= m.i < group.j for m in scene.of("slip"))


def _same_tendon(scene: Scene, group: Group) -> list[Target]:
    """'On the index the profundus was cut at 15 mm; on the middle, cut at 4 mm': the same tendon of the next digit."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i]
    tendons = named[-1].tendons if named else tuple(dict.fromkeys(t.tendon for t in scene.setting.focus))
    return [Target(d, t) for d in group.digits for t in tendons if has(d, t)] if len(tendons) == 1 else []


_EXTENT_OF = (["extent", "of"], ["degree", "of"], ["amount", "of"])


def _from_label(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """A sentence without any subject goes on about the tendon in focus: 'FDS? Intact, both slips.'"""
    focus = list(scene.setting.focus)
    digits = set(scene.setting.digits)
    focus = [t for t in focus if t.digit is None or not digits or t.digit in digits]
    if mention.value == "intact" and len(focus) != 1:
        return []
    first = scene.sentence.i
    lead = [m for m in scene.mentions if m.i < mention.i and m.kind not in ("side", "bone")]
    lead = [m for m in lead if not (m.i == first and m.j == mention.i and scene.page.breaks[m.j] >= Break.COLUMN)]
    starts = mention.i - first <= 3 and not lead  # 'Cut     completely divided' is a label and its answer
    starts = starts or (scene.words(first, first + 2) in _EXTENT_OF and scene.word_before(mention.i) == ":")
    known = [t for t in focus if desk.extents.get(t) in ("intact", "complete") and desk.extents[t] != mention.value]
    return [t for t in focus if t not in known] if starts else []


def _all_tendons(desk: Desk, scene: Scene, group: Group, value: str) -> list[Target]:
    """Return the tendons meant by 'both tendons' or 'all tendons': those named so far of the digits spoken of."""
    before = [g for g in scene.setting.groups if g.digits and g.j <= group.i]
    digits = group.digits or (before[-1].digits if before else scene.setting.digits)
    if not before and not group.digits and (listed := _listed_before(desk, scene, group)):
        return listed
    if {"listed", "above", "aforementioned"} & set(scene.words(group.i, min(group.j + 3, scene.sentence.j))):
        return (
            [t for t in desk.named if t.slip is None and desk.extents.get(t) != "intact"] if value != "intact" else []
        )
    named = [t for t in desk.named if t.digit in digits and t.slip is None and desk.extents.get(t) != "intact"]
    if scene.sentence.section in ("diagnosis", "procedure", "findings", "narrative") and len(named) < 2 and digits:
        lead = scene.words(max(scene.sentence.i, group.i - 3), group.i)
        of_both = "both" in lead and _OF_ITS.issuperset(lead[lead.index("both") + 1 :])  # 'both of its tendons'
        quantified = of_both or "both" in scene.words(group.i, group.j)
        if quantified and len(digits) == 1 and digits[0] != "thumb":
            return [Target(digits[0], "FDP"), Target(digits[0], "FDS")]
    return named if value != "intact" or len(named) > 1 else []


def _listed_before(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'FCR, PL and FCU were exposed. All three were completely divided.': so many tendons named right before."""
    counts = {"both": 2, "two": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5}
    words = scene.words(group.i, min(group.j + 2, scene.sentence.j))
    count = next((counts[w] for w in words if w in counts), 0)
    before = desk.scene_before(scene)
    if group.i != scene.sentence.i or not count or before is None or words[-1:] in (["tendons"], ["slips"]):
        return []
    told = [g for g in before.setting.groups if g.tendons and not (g.reference or g.excepted)]
    named = list(dict.fromkeys(t for g in told for t in group_targets(before, g)))
    return named if len(named) == count else []


def _percents(desk: Desk, scene: Scene) -> None:
    for quantity in scene.quantities:
        if scene.word_before(quantity.i) == "not":
            continue  # 'was 50 percent, not 30 percent'
        if scene.word_before(quantity.i) in (">", "over", "above") and not scene.arrow(quantity.i - 1):
            continue  # 'under 20 percent' is at most so much
        share = quantity.unit == "%" and _cuts_tendon(scene, quantity)
        if scene.told(quantity.i) and (share or _answers_percent(scene, quantity)):
            behind = _share_of_behind(scene, quantity)
            if behind:
                _part_cut(desk, scene, behind, quantity.high or 0.0, quantity.i, quantity.j)
                continue
            if scene.sentence.prefix and not scene.setting.groups and _of_another_row(scene):
                continue
            targets, _ = tendon_owner(desk, scene, quantity.i, quantity.j)
            targets = _hurt_of(scene, quantity) or targets
            subject = scene.owner(quantity.i, quantity.j)
            if not targets and subject is None:
                asked = scene.words(quantity.i - 2, quantity.i) == ["cut", ":"]
                targets = list(scene.setting.focus) if asked or quantity.i - scene.sentence.i <= 4 else []
            elif not targets and not share and subject and subject.group and subject.group.generic == "one":
                targets = carried(desk, scene)[0] or list(scene.setting.focus)  # '% of tendon cut: 60'
            peers = [q.i for q in scene.quantities if q.unit == "%"]
            targets = respective(scene, quantity.i, peers, targets)
            _part_cut(desk, scene, targets, quantity.high or 0.0, quantity.i, quantity.j)


def _share_of_behind(scene: Scene, quantity: Quantity) -> list[Target]:
    """'A nick of about 15 per cent in the FDP; its FDS was intact': the tendon right behind the share."""
    group = next((g for g in scene.setting.groups if g.tendons and 0 < g.i - quantity.j <= 3), None)
    if group is None or scene.next_word(quantity.j) not in ("in", "of"):
        return []
    return group_targets(scene, group) if _OF_ITS.issuperset(scene.words(quantity.j + 1, group.i)) else []


def _share_again(desk: Desk, scene: Scene) -> None:
    """'The radial slip about 80 percent cut, the ulnar one only about 20': the second share without its sign."""
    signed = [q for q in scene.quantities if q.unit == "%"]
    for q in scene.quantities if signed else ():
        bare = not q.unit and q.high is not None and 5 <= q.high < 100 and q.i > signed[0].j
        group = next((g for g in reversed(scene.setting.groups) if g.j <= q.i), None)
        if not bare or group is None or not any(slip for _, _, slip in group.pairs) or not scene.told(q.i):
            continue
        if scene.next_word(q.j) in ("", ".", ",", ";") and _ABOUT.issuperset(scene.words(group.j, q.i)):
            _part_cut(desk, scene, group_targets(scene, group), q.high or 0.0, q.i, q.j)


_ABOUT = frozenset(
    ["only", "about", "just", "some", "was", "perhaps", "maybe", "around", "roughly", ":", "at", "by", "one"]
)


def _listed_shares(desk: Desk, scene: Scene) -> None:
    """'FDP: IF 100, MF 100, RF 50, LF 0': shares without a sign, told finger by finger behind the tendon."""
    groups = [g for g in scene.setting.groups if not g.reference]
    if len(groups) < 3 or not groups[0].tendons or groups[0].digits:
        return
    if ":" not in scene.words(groups[0].j, groups[0].j + 1 + (scene.next_word(groups[0].j) in _CUTS_ASKED)):
        return
    told = [(g, scene.next_word(g.j)) for g in groups[1:]]
    shares = [(g, float(word)) for g, word in told if word.isdecimal() and len(word) <= 3 and int(word) <= 100]
    if len(shares) < 2 or len(shares) != len(told) or not scene.told(groups[0].i):
        return
    digits: tuple[str, ...] = ()
    for group, share in shares:
        digits = group.digits or digits
        pairs = (
            group_targets(scene, group) if group.tendons else [Target(d, t) for d in digits for t in groups[0].tendons]
        )
        for target in (t._replace(digit=t.digit or digits[0]) for t in pairs if digits):
            if share:
                _part_cut(desk, scene, [target], share, group.i, group.j + 1)
            else:
                desk.tendon(scene, target, "extent", "intact", [(group.i, group.j + 1)], "share of nothing")


_CUTS_ASKED = frozenset(["cut", "cuts", "division", "divided", "laceration", "lacerated", "%", "share", "extent"])


def _hurt_of(scene: Scene, quantity: Quantity) -> list[Target]:
    """'... and 40% laceration of the radial slip': the tendon behind, not the one before."""
    hurt = next((m for m in scene.of("hurt", "extent") if m.i == quantity.j), None)
    if hurt is None or scene.next_word(hurt.j) != "of":
        return []
    behind = next((g for g in scene.setting.groups if 0 < g.i - hurt.j <= 3 and g.tendons), None)
    return group_targets(scene, behind) if behind is not None else []


def _none_cut(desk: Desk, scene: Scene) -> None:
    """'FDS: 0 percent.'"""
    for q in scene.quantities:
        if q.unit == "%" and q.low == 0 == q.high and scene.told(q.i):
            for target in tendon_owner(desk, scene, q.i, q.j)[0]:
                desk.tendon(scene, target, "extent", "intact", [(q.i, q.j)], "extent intact")


@needs(words=["avulsion"])
def _avulsion(desk: Desk, scene: Scene) -> None:
    """'Closed avulsion of the profundus': torn off its bone."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k : k + 2] != ["avulsion", "of"] or not scene.told(k) or scene.negated(k, k + 1):
            continue
        groups = [g for g in scene.setting.groups if g.tendons and not g.reference]
        named = [g for g in groups if 0 < g.i - k <= 3]
        for target in (t for g in named[:1] for t in group_targets(scene, g) if t.tendon in ("FDP", "FPL", "FDS")):
            desk.tendon(scene, target, "extent", "complete", [(min(k, named[0].i), max(k + 1, named[0].j))], "avulsion")


def _gave_way(desk: Desk, scene: Scene) -> None:
    """'The repair had given way', 'the old suture line has parted': the deep flexor sewn before is in two again."""
    if _GAVE_WAY.isdisjoint(scene.said) or scene.header:
        return
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        before = scene.words(max(scene.sentence.i, k - 5), k)
        if words[k] not in _GAVE_WAY or not scene.told(k) or scene.negated(k, k + 1):
            continue
        for target in _fell_apart(desk, scene, k, before):
            desk.tendon(scene, target, "extent", "complete", [(k - len(before), k + 1)], "the repair gave way")


def _fell_apart(desk: Desk, scene: Scene, k: int, before: list[str]) -> list[Target]:
    """Return the tendons found in two at word k: the one named, or that whose repair is spoken of."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= k and k - g.j <= _FAR_APART and not g.reference]
    if named:
        found = (
            group_targets(scene, named[-1]) if scene.page.words[k - 1] in _CAME_APART and not scene.of("test") else []
        )
        return [t for t in found if t not in desk.extents and t not in desk.treatments]
    if _OLD_REPAIR.isdisjoint(before) or scene.of("tendon") or len(scene.setting.digits) != 1:
        return []
    return [t for t in desk.deep_named if t.digit == scene.setting.digits[0] and t not in desk.extents]


_FAR_APART = 7  # words
_CAME_APART = frozenset(["pulled", "come", "came", "lay", "drawn", "sprung", "given", "fallen"])


def _answers_percent(scene: Scene, quantity: Quantity) -> bool:
    """'% of tendon cut: 60', 'cut %' above a column of figures: the sign stands in the label."""
    if quantity.unit or not quantity.high or not 5 <= quantity.high <= 100 or quantity.j - quantity.i != 1:
        return False
    label = scene.sentence.prefix[-1] if scene.sentence.prefix else (scene.sentence.i, quantity.i)
    words = scene.words(*label)
    lone = quantity.i == scene.sentence.i and scene.sentence.j - quantity.j <= 1
    return "%" in words and not _CUT_LABELS.isdisjoint(words) and (lone or words[-1] == ":")


def _cuts_tendon(scene: Scene, quantity: Quantity) -> bool:
    """Leave out drug strengths, what was left standing, and shares of a pulley."""
    if quantity.low is None or quantity.low < 5 or quantity.high is None:
        return False
    if scene.next_word(quantity.j) == "of" and any(
        g.tendons and 0 < g.i - quantity.j <= 4 for g in scene.setting.groups
    ):
        return True
    if scene.next_word(quantity.j) in _DRUGS and scene.words(quantity.j, quantity.j + 2)[-1:] != ["its"]:
        named = not _CUTS_TENDON_WORDS.isdisjoint(scene.words(quantity.j, min(quantity.j + 4, scene.sentence.j)))
        return scene.next_word(quantity.j) == "of" and named
    first, last = scene.part(quantity.i)
    around = scene.words(max(first, quantity.i - 2), min(last, quantity.j + 3))
    if any(w in _REMAINING for w in around):
        return False
    after = [m for m in scene.mentions if m.kind == "pulley" and 0 <= m.i - quantity.j <= 3 and m.i < last]
    return not after


def _fractions(desk: Desk, scene: Scene) -> None:
    """Read fractions said of a tendon's width: 'FDP half cut', 'a nick through a fifth of its width'."""
    for mention in scene.of("fraction"):
        upper = mention.j + 1 + (scene.next_word(mention.j + 1) == "a")
        ranged = scene.next_word(mention.j) in ("to", "-", "or") and any(m.i == upper for m in scene.of("fraction"))
        if not scene.told(mention.i) or ranged:
            continue  # of 'half to two thirds' the larger share is the weaker tendon
        targets, _group = tendon_owner(desk, scene, mention.i, mention.j)
        behind = next((g for g in scene.setting.groups if 0 < g.i - mention.j <= 3), None)
        lead = scene.words(mention.i, behind.i)[1:] if behind is not None else []
        if behind is not None and "of" in lead and set(lead) <= {"of", "the", "its"} and behind.tendons:
            targets = group_targets(scene, behind)  # 'FDS: a third of the ulnar slip cut'
        if not targets and scene.words(scene.sentence.i, scene.sentence.i + 2) == ["it", "was"]:
            targets = carried(desk, scene)[0] if mention.i - scene.sentence.i <= 3 else []
        if not targets or not _fraction_cuts(scene, mention):
            continue
        _part_cut(desk, scene, targets, float(mention.value), mention.i, mention.j)


def _fraction_cuts(scene: Scene, mention: Mention) -> bool:
    part_i, part_j = scene.part(mention.i)
    near = scene.words(max(scene.sentence.i, mention.i - 7), min(scene.sentence.j, mention.j + 6))
    if any(m.kind == "pulley" and part_i <= m.i < part_j for m in scene.mentions):
        return False
    cut = _FRACTION_CUTS_CUT
    before = scene.word_before(mention.i)
    if (
        before in ("radial", "ulnar")
        and mention.value != "50"
        and scene.word_before(mention.i - 1) in (",", "cut", "(")
    ):
        return any(w in cut for w in near)  # 'FDP cut, radial third'
    if before in ("radial", "ulnar"):  # half of the FDS is a slip of it
        return scene.word_before(mention.i - 1) in ("its", "the") and not any(
            m.value == "FDS" for m in scene.of("tendon")
        )
    column = scene.page.breaks[mention.i] == Break.COLUMN and scene.next_word(mention.j) in ("", ".", ",", ";")
    if column and any(g.tendons and g.j == mention.i for g in scene.setting.groups):
        return True  # 'FDS RF    2/3'
    if before == ":" and any(g.tendons and g.j == mention.i - 1 for g in scene.setting.groups):
        return True  # 'FDS of II: one third, at its radial edge'
    beside = any(g.tendons and g.j == mention.i for g in scene.setting.groups) and not scene.header
    if beside and scene.next_word(mention.j) in ("", ".", ",", ";", ")"):
        return True  # 'MF - FDP complete, FDS 1/2'
    if before == "by" and scene.word_before(mention.i - 1) in ("hanging", "held", "attached", "connected", "on"):
        return False  # 'hanging by a third'
    return any(w in cut for w in near) and before not in ("distal", "proximal", "remaining", "other")


def _part_cut(desk: Desk, scene: Scene, targets: list[Target], percent: float, i: int, j: int) -> None:
    for target in targets:
        mention = Mention("extent", "partial", i, j)
        span = with_name_of(scene, mention, target)
        if percent >= 100:
            desk.tendon(scene, target, "extent", "complete", [span], "percent cut")
        elif percent > 0:
            desk.tendon(scene, target, "extent", "partial", [span], "percent cut")
            desk.tendon(scene, target, "extent_percent", percent, [span], "percent cut")
