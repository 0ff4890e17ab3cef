"""Whose a cut is: the tendons that words for how far a tendon was cut are told of."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import DIGITS, Group, Target, has
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Break, Mention
from notereader.reader.rules.carried import carried
from notereader.reader.rules.cuts.one_spared import all_but_the_spared
from notereader.reader.rules.cuts.rest_of_four import and_the_others, each_of, rest_of_four, the_rest
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.rules.strangers import has_strange_subject
from notereader.reader.scene import Scene, Subject, group_targets, series
from notereader.vocabulary.wordlists import word_list

CUT_LABELS = word_list("tendons", "cut_labels")
OF_ITS = frozenset(["of", "the", "its", "his", "her", "their", "these"])


_OTHER_PARTS = ("pulley", "structure", "sided", "bundle", "anynerve", "anyartery")


def cut_targets(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the tendons an extent belongs to: named ones, all of a group, or those of a label or heading."""
    if scene.sentence.prefix and not scene.setting.groups and scene.mentions and of_another_row(scene):
        return []
    if has_strange_subject(scene, mention.i):
        return []
    told = _by_its_place(scene, mention)
    if told:
        return told
    targets, group = tendon_owner(desk, scene, mention.i, mention.j)
    if group is not None and group.excepted:
        return []  # 'All tendons except the FPL were divided'
    subject = scene.owner(mention.i, mention.j)
    if mention.value == "intact" and group is not None and not group.digits:
        targets = the_rest(desk, scene, group) or targets
    if subject is not None:
        targets = [*_in_series(desk, scene, subject, mention), *targets]
    if mention.value == "intact" and group is not None:
        targets = and_the_others(desk, scene, group) or [*targets, *_fingers_with_flexors(desk, scene, group)]
    if targets:
        return list(dict.fromkeys(_but_for_one_slip(desk, scene, mention, targets, group)))
    if subject is None:
        return _from_label(desk, scene, mention)
    if group is None:
        return []
    return _without_a_name(desk, scene, mention, group)


def _by_its_place(scene: Scene, mention: Mention) -> list[Target]:
    """Return the tendons told by the way a list, a heading or a wound stands to a word for a cut, whoever owns it."""
    return (
        behind_brackets(scene, mention.j)
        or all_but_the_spared(scene, mention)
        or state_after_state(scene, mention)
        or cut_through(scene, mention)
        or _of_the_exception(scene, mention)
        or _headed_list(scene, mention)
        or _objects_of(scene, mention)
        or _listed_behind(scene, mention)
        or _cut_in(scene, mention)
        or all_of_them(scene, mention)
    )


def _but_for_one_slip(
    desk: Desk, scene: Scene, mention: Mention, targets: list[Target], group: Group | None
) -> list[Target]:
    """'One slip of the FDS was cut': nothing is said of the whole FDS, and of the other slip only that it is sound."""
    if not _of_one_slip(scene, group):
        return targets
    whole = [t for t in targets if t.tendon != "FDS" or t.slip]
    return whole or (_other_slip(desk, scene, targets) if mention.value == "intact" else [])


def _without_a_name(desk: Desk, scene: Scene, mention: Mention, group: Group) -> list[Target]:
    """Return the tendons meant by 'the others', 'all', 'it', or by fingers with no tendon named beside them."""
    intact = mention.value == "intact"
    if group.generic == "others":
        return rest_of_four(scene, group)
    if group.generic == "all":
        return _meant_by_all(desk, scene, mention, group)
    if group.generic:
        return [] if intact else _the_one_cut(desk, scene, group)
    if group.every and not group.digits:
        return _in_every_finger(scene, group, mention)
    if not group.digits:
        return []
    if intact:
        return _other_fingers(scene, group)
    others = [m for m in scene.of(*_OTHER_PARTS) if m.j <= mention.i]  # 'the nerves of the index, middle and ring'
    return [] if others else same_tendon(scene, group)


def _meant_by_all(desk: Desk, scene: Scene, mention: Mention, group: Group) -> list[Target]:
    """'All tendons of the index and middle were intact': both flexors of each; else those named so far."""
    intact = mention.value == "intact"
    if intact and (digits := group.digits or _digits_before(scene, group)):
        return [Target(d, t) for d in digits for t in (("FPL",) if d == "thumb" else ("FDP", "FDS"))]
    if mention.j <= group.i and group.i - mention.j <= 1:
        return []  # 'the cut tendons' tells nothing new
    flexors = _flexors_of_finger(desk, scene, group) if intact else []
    return flexors or _all_tendons(desk, scene, group, mention.value)


def _the_one_cut(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'It was cut through', 'this tendon was notched': the tendon spoken of, and of the thumb its only flexor."""
    if _of_thumb(scene, group):
        return [Target("thumb", "FPL")]
    return carried(desk, scene, group.digits or None)[0] or list(scene.setting.focus)


def behind_brackets(scene: Scene, j: int) -> list[Target]:
    """'Complete division of the FDP in the index and partial (40 %) in the ring': the finger behind the brackets."""
    if scene.next_word(j) != "(" or ")" not in scene.words(j, min(j + _LONG_BRACKETS, scene.sentence.j)):
        return []
    k = scene.page.words.index(")", j) + 1
    group = next((g for g in scene.setting.groups if g.digits and not g.tendons and 0 < g.i - k <= 2), None)
    led = group is not None and scene.words(k, group.i)[:1] in (["in"], ["of"])
    return same_tendon(scene, group) if group is not None and led else []


_LONG_BRACKETS = 8  # words


def state_after_state(scene: Scene, mention: Mention) -> list[Target]:
    """'FDP cut through FDS okay', without a comma: each tendon's state stands behind it."""
    named = [g for g in scene.setting.groups if g.tendons and g.i < g.j and not (g.reference or g.excepted)]
    states = scene.of("extent")
    before = next((g for g in reversed(named) if g.j <= mention.i), None)
    behind = next((g for g in named if g.i == mention.j), None)
    if before is None or behind is None or not any(m.i == behind.j for m in states):
        return []
    between = set(range(before.j, mention.i)) - {k for m in states for k in range(m.i, m.j)}
    beside = all(scene.page.words[k] in ("was", "is", "were", "are") for k in between)
    return group_targets(scene, before) if beside else []


def cut_through(scene: Scene, mention: Mention) -> list[Target]:
    """'the saw had gone through both the profundus and the superficialis': the objects of the verb."""
    if scene.page.words[mention.j - 1] != "through" or mention.value != "complete":
        return []
    first, _ = scene.part(mention.i)
    if any(first <= g.i < mention.i and g.tendons for g in scene.setting.groups):
        return []  # 'the FDP was cut through'
    group = next((g for g in scene.setting.groups if g.i >= mention.j and g.tendons and not g.reference), None)
    led = group is not None and set(scene.words(mention.j, group.i)) <= {"the", "both", "its", "all", "of"}
    return group_targets(scene, group) if group is not None and led else []


def all_of_them(scene: Scene, mention: Mention) -> list[Target]:
    """'FPL cut, FCR cut, the sublimis to the index cut, all of them clean through': every tendon listed before."""
    first = scene.part(mention.i)[0]
    lead = [w for w in scene.words(first, mention.i) if w not in _FILLS]
    if first == scene.sentence.i or lead[-1:] not in (["them"], ["these"]) or not _EVERY_ONE.issuperset(lead):
        return []
    listed = [g for g in scene.setting.groups if g.tendons and g.j <= first and not (g.reference or g.excepted)]
    found = list(dict.fromkeys(t for g in listed for t in group_targets(scene, g)))
    return found if len(found) > 1 else []


_EVERY_ONE = frozenset(["all", "both", "each", "every", "one", "of", "them", "these", "two", "three", "four", "five"])
_FILLS = frozenset(["were", "was", "being", "cut", "had", "been", "found", "divided"])


def _cut_in(scene: Scene, mention: Mention) -> list[Target]:
    """'In the index finger a nick in the FDP was beveled': the tendon that the cut is in, right behind it."""
    k = mention.j + (scene.next_word(mention.j) in ("is", "was"))  # '..., so the nick is of the ulnar slip'
    if mention.value != "partial" or scene.next_word(k) not in ("in", "of"):
        return []
    group = next((g for g in scene.setting.groups if g.tendons and 0 < g.i - k <= 3), None)
    if group is None or group.reference or not OF_ITS.issuperset(scene.words(k + 1, group.i)):
        return []
    return group_targets(scene, group)


def of_another_row(scene: Scene) -> bool:
    """Tell whether a cell stands in a row whose label names no tendon that the reader knows: it tells of none."""
    label = scene.sentence.prefix[0]
    words = scene.words(*label)
    return CUT_LABELS.isdisjoint(words) and not {"how", "extent", "cut", "tendon", "state", "far"} & set(words)


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
    lead = scene.words(scene.sentence.i, mention.i)
    if not _HEADS.issuperset(lead) and (len(lead) > 1 or any(s.j <= mention.i for s in scene.subjects)):
        return []
    after = scene.words(mention.j, mention.j + 3)
    colon = next((k for k, w in enumerate(after) if w in (":", "-")), None)
    if colon is None or any(w not in ("are", "were", "is", "completely", "is", "tendons") for w in after[:colon]):
        return []
    listed = [s for s in scene.subjects if s.i >= mention.j]
    ended = next((m.i for m in scene.of("extent", "deed", "hurt") if m.i > mention.j + colon), scene.sentence.j)
    named = [s.group for s in listed if s.j <= ended and s.group is not None and s.group.tendons]
    shared = {t for g in named for t in _with_a_share(scene, g)}
    return [t for g in named for t in group_targets(scene, g) if t not in shared]


_HEADS = frozenset(["structures", "tendons", "found", "the", "following", "were", "are", "all", "as"])


def _with_a_share(scene: Scene, group: Group) -> list[Target]:
    """'Divided: FCR, FDP of the index, FPL about 50 %': of a list the tendon that its own share stands behind."""
    shares = [q.i for q in scene.quantities if q.unit == "%" and (q.high or 100) < 100]
    if not any(group.j <= k and _TO_A_SHARE.issuperset(scene.words(group.j, k)) for k in shares):
        return []
    last = [m.value for m in scene.of("tendon") if group.i <= m.i < group.j][-1:]
    return [t for t in group_targets(scene, group) if [t.tendon] == last]


_TO_A_SHARE = frozenset(["about", "some", "approximately", "roughly", "only", "by", "to", "(", ":", "-", "="])


def _objects_of(scene: Scene, mention: Mention) -> list[Target]:
    """'Complete division of the FCR, the median nerve and the PL': all tendons of a list that nerves part."""
    words, first = scene.page.words, mention.j + (scene.next_word(mention.j) == "of")
    if mention.value != "complete" or first == mention.j:
        return []
    others = [m.i for m in scene.of("extent", "deed", "hurt") if m.i >= first]
    stops = [k for k in range(first, scene.sentence.j) if words[k] in _LIST_ENDS]
    end = min([*others, *stops, scene.sentence.j])
    listed = [g for g in scene.setting.groups if first <= g.i and g.j <= end and g.tendons and not g.reference]
    parted = any(s.group is None for s in scene.subjects if first <= s.i < end)
    if not parted or not listed or listed[-1].j < max(s.j for s in scene.subjects if first <= s.i < end) - 3:
        return []
    return [t for g in listed for t in group_targets(scene, g)]


_LIST_ENDS = frozenset(
    [";", ".", ":", "-", "with", "while", "whereas", "which", "but", "was", "were", "is", "are", "had", "leaving"]
)


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


def _in_every_finger(scene: Scene, group: Group, mention: Mention) -> list[Target]:
    """'FDP: completely divided in all three fingers': the tendon that heads the line, in each finger worked on."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and not g.digits]
    if len(named) != 1 or named[0].i > scene.sentence.i + 1 or scene.next_word(named[0].j) != ":":
        return []
    left_out = {d for g in scene.setting.groups if g.excepted for d in g.digits}
    fingers = [d for d in scene.every_digit if d != "thumb" and d not in left_out]
    return [Target(d, t) for d in fingers for t in named[0].tendons if has(d, t)]


def _in_series(desk: Desk, scene: Scene, subject: Subject, mention: Mention) -> list[Target]:
    """'The FCR, both flexors of the index and the median nerve were intact': the tendons named before in the list."""
    before = [s.group for s in series(scene, subject, mention.i) if s is not subject and s.group is not None]
    apart = subject.group is not None and any(slip for _, _, slip in subject.group.pairs)
    listed = [g for g in before if g.tendons and not (apart and any(slip for _, _, slip in g.pairs))]
    # 'cut on its radial slip, the ulnar being whole'
    found = [t for group in listed for t in each_of(desk, scene, group, mention)]
    if mention.value == "intact":
        found += [t for group in before if group.generic == "all" for t in _flexors_of_finger(desk, scene, group)]
    return found


def _flexors_of_finger(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'SMALL: flexor tendons and both nerves intact': all flexors of the finger spoken of, if none of it is cut."""
    digits = group.digits or _digits_before(scene, group)
    digits = digits or (scene.setting.digits if _heads_line(scene) else ())
    others = scene.word_before(group.i) in ("other", "remaining") or scene.next_word(group.j) in ("sheath", "sheaths")
    if others or _FLEXORS.isdisjoint(scene.words(group.i, group.j)) or any_hurt(desk, scene, digits):
        return []
    return [Target(d, t) for d in digits for t in (("FPL",) if d == "thumb" else ("FDP", "FDS"))]


def _fingers_with_flexors(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Middle FDP, ring and small finger tendons', 'the index flexors and the FPL': both flexors of such fingers."""
    if not group.tendons or not group.digits:
        return []
    words = scene.page.words
    named = sorted((m for m in scene.of("digit") if group.i <= m.i and m.j <= group.j), key=lambda m: m.i)
    found: list[str] = []
    for k in (k for k in range(group.i, group.j) if words[k] in _TENDONS):
        end = k
        for m in reversed([m for m in named if m.j <= k]):
            if not _BETWEEN_FINGERS.issuperset(words[m.j : end]):
                break
            found.append(m.value)
            end = m.i
    fingers = [d for d in dict.fromkeys(found) if d in DIGITS[1:] and not any_hurt(desk, scene, (d,))]
    return [Target(d, t) for d in fingers for t in ("FDP", "FDS")]


_BETWEEN_FINGERS = frozenset(["and", ",", "the", "finger", "fingers", "flexor", "&", "+", "'s"])


def _heads_line(scene: Scene) -> bool:
    """Tell whether one finger is spoken of, or 'Long / ring: skin only. Flexors OK.' goes on in the same line."""
    first = scene.sentence.i
    return len(scene.setting.digits) == 1 or (first > 0 and scene.page.breaks[first] < Break.LINE)


_FLEXORS = frozenset(["flexor", "flexors"])
_TENDONS = frozenset(["flexors", "tendons"])


def any_hurt(desk: Desk, scene: Scene, digits: tuple[str, ...]) -> bool:
    """Tell whether a tendon of the digits is known to be cut, or was spoken of as hurt before a sentence."""
    before = ((s, g) for s in desk.having("hurt") if s.sentence.i < scene.sentence.i for g in s.setting.groups)
    told = [t for s, g in before if g.tendons and not g.reference for t in group_targets(s, g)]
    return any(t.digit in digits for t in told) or any(desk.is_cut(t) for t in desk.named if t.digit in digits)


def _of_one_slip(scene: Scene, group: Group | None) -> bool:
    """'One slip of the FDS was cut': which one is not said, and nothing of the whole tendon."""
    if group is None or "FDS" not in group.tendons:
        return False
    return any(m.value in ("one", "other") and group.i <= m.i < group.j for m in scene.of("slip"))


def _other_slip(desk: Desk, scene: Scene, targets: list[Target]) -> list[Target]:
    """'The other slip was sound', behind words on the one slip that was cut: the slip of the other side."""
    if not any(m.value == "other" for m in scene.of("slip")) or len(targets) != 1:
        return []
    hurt = [t for t, value in desk.extents.items() if value in HURT_KINDS and t.slip]
    sides = [t.slip or "" for t in hurt if t._replace(slip=None) == targets[0]]
    other = {"radial": "ulnar", "ulnar": "radial"}
    return [targets[0]._replace(slip=other[sides[0]])] if len(sides) == 1 else []


def same_tendon(scene: Scene, group: Group) -> list[Target]:
    """'On the index the profundus was cut at 15 mm; on the middle, cut at 4 mm': the same tendon of the next digit."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i]
    tendons = named[-1].tendons if named else tuple(dict.fromkeys(t.tendon for t in scene.setting.focus))
    return [Target(d, t) for d in group.digits for t in tendons if has(d, t)] if len(tendons) == 1 else []


def _other_fingers(scene: Scene, group: Group) -> list[Target]:
    """'FDS ring and middle cut through; index and little intact': the same tendon of the fingers behind the stop."""
    named = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
    opens = scene.word_before(group.i) == ";" or scene.words(group.i - 2, group.i) == [";", "the"]
    listed = bool(named) and named[-1].tendons in (("FDP",), ("FDS",)) and bool(named[-1].digits)
    others = [m for m in scene.of(*_OTHER_PARTS) if m.i > named[-1].j] if listed else []
    return same_tendon(scene, group) if opens and listed and not others else []


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
    denied = mention.value == "partial" and scene.page.words[first] == "not"
    if denied:
        lead = [m for m in lead if m.i > first + 1]  # 'LITTLE FDP. Not divided: a partial cut'
    starts = (
        mention.i - first <= _AT_THE_START + denied and not lead
    )  # 'Cut     completely divided' is a label and its answer
    starts = starts or (scene.words(first, first + 2) in _EXTENT_OF and scene.word_before(mention.i) == ":")
    known = [t for t in focus if desk.extents.get(t) in ("intact", "complete") and desk.extents[t] != mention.value]
    return [t for t in focus if t not in known] if starts else []


_AT_THE_START = 3  # words


def _all_tendons(desk: Desk, scene: Scene, group: Group, value: str) -> list[Target]:
    """Return the tendons meant by 'both tendons' or 'all tendons': those named so far of the digits spoken of."""
    before = [g for g in scene.setting.groups if g.digits and g.j <= group.i]
    digits = group.digits or (before[-1].digits if before else scene.setting.digits)
    if not before and not group.digits and (listed := _listed_before(desk, scene, group)):
        return listed
    if not before and not group.digits and (two := _one_of_each_finger(desk, scene, group)):
        return two
    if {"listed", "above", "aforementioned"} & set(scene.words(group.i, min(group.j + 3, scene.sentence.j))):
        return (
            [t for t in desk.named if t.slip is None and desk.extents.get(t) != "intact"] if value != "intact" else []
        )
    named = [t for t in desk.named if t.digit in digits and t.slip is None and desk.extents.get(t) != "intact"]
    if scene.sentence.section in ("diagnosis", "procedure", "findings", "narrative") and len(named) < 2 and digits:
        lead = scene.words(max(scene.sentence.i, group.i - 3), group.i)
        of_both = "both" in lead and OF_ITS.issuperset(lead[lead.index("both") + 1 :])  # 'both of its tendons'
        noun = scene.words(group.i, group.j)
        all_flexors = {*lead[-1:], *noun[:1]} & {"all"} and not _FLEXORS.isdisjoint(noun)
        both = of_both or "both" in noun or "same" in noun  # 'the same two tendons'
        of_each = all_flexors or (both and not _TENDONS.isdisjoint(noun))  # 'both flexors of index and middle'
        of_each = of_each or any(count_of(w) == 2 * len(digits) > 2 for w in {*lead[-1:], *noun})  # 'all six tendons'
        if "thumb" not in digits and (of_each or (both and len(digits) == 1)):
            left_out = [g for g in scene.setting.groups if g.excepted]  # '... but the index FDS'
            spared = {t for g in left_out for t in group_targets(scene, g)}
            return [t for d in digits for t in (Target(d, "FDP"), Target(d, "FDS")) if t not in spared]
    return named if value != "intact" or len(named) > 1 else []


def _one_of_each_finger(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Middle FDP: ragged ends. Ring FDP: clean ends. Both tendons had been cut across': no second one of the ring."""
    if "both" not in scene.words(max(scene.sentence.i, group.i - 1), group.j):
        return []
    found: list[Target] = []
    before = desk.scene_before(scene)
    for _ in range(_NEAR_BY):
        if before is None:
            break
        named = [g for g in before.setting.groups if g.tendons and g.digits and not (g.reference or g.excepted)]
        found = list(dict.fromkeys([*(t for g in named for t in group_targets(before, g)), *found]))
        before = desk.scene_before(before)
    two = len(found) == _PAIR and len({t.digit for t in found}) == _PAIR and all(t.slip is None for t in found)
    return found if two else []


_NEAR_BY = 6  # sentences
_PAIR = 2


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
