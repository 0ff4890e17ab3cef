"""The peripheral suture: placed or left out, and its pattern."""

import re
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention, within
from notereader.reader.rules.lost_peripheral import (
    lost_again,
    one_of_them_lost,
    pattern_lost_again,
    renewed_next,
)
from notereader.reader.rules.no_peripheral import (
    RULE,
    finger_without,
    got_none,
    just_told,
    lay_none,
    left_out,
    none_in_a_cell,
    struck_out,
    taken_out,
    told_before,
)
from notereader.reader.rules.none_besides import finger_went_without, none_besides
from notereader.reader.rules.not_taken_away import takes_away
from notereader.reader.rules.roles import CORE, PERIPHERAL, TENDON, Anchor, role_of
from notereader.reader.rules.suture_owners import lay_suture, suture_owners
from notereader.reader.rules.thread_roles import drawn_into_bone, has_core
from notereader.reader.rules.threads import Thread, find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_ONLY_A_WORD_WORDS = word_list("sutures", "only_a_word_words")
# What tells of a peripheral suture in a sentence that does not name one.
_WITHOUT_NAME = frozenset(["fine", "nil", "none", "nothing", "only", "alone", "not"])
_LOCKS = frozenset(["locked", "locking", "interlocked", "interlocking", "lock"])
_ENDS = frozenset(["", ".", ",", ";", ")"])
_NO_ROOM = (["no", "room"], ["no", "attempt"], ["no", "space"], ["no", "point"], ["not", "worth"])
_OMITTING = word_list("sutures", "omitting")
_SUTURE_OF = frozenset(["suture", "sutures", "stitch", "stitches", "of", "with", "in"])
_AFTER_ALL = frozenset(["but", "so", "then", "however", "until"])
_ELSEWHERE = frozenset(["see", "refer", "cf", "tbc", "per", "as"])  # 'Peripheral suture: see diagram'
_NO = frozenset(["no", "none", "nil", "nothing", "n", "not", "omitted", "0"])
_BOX = word_list("sutures", "box")
_NO_ANSWER = word_list("sutures", "no_answer")


def peripheral(desk: Desk, scene: Scene, found: list[Anchor], threads: list[Thread]) -> None:
    """Find whether a peripheral suture was placed or left out, and its pattern."""
    if struck_out(desk, scene):
        return
    taken_out(desk, scene)
    got_none(desk, scene)
    if (scene.sentence.section == PERIPHERAL or told_before(desk, scene)) and finger_without(desk, scene):
        return
    spots = [a for a in found if a.role == PERIPHERAL]
    if not spots and scene.sentence.section == PERIPHERAL and scene.sentence.j - scene.sentence.i > 2:
        heading = next(iter(within(scene.page.headings, scene.sentence.i, scene.sentence.j)), None)
        if heading is not None:
            spots = [Anchor(heading.i, heading.j, PERIPHERAL)]
    none_besides(desk, scene, spots or [Anchor(t.i, t.j, PERIPHERAL) for t in threads if t.role == PERIPHERAL])
    told = bool(spots) or any(t.role == PERIPHERAL for t in threads)
    finger_went_without(desk, scene, told or told_before(desk, scene))
    unnamed = not spots and scene.sentence.section != PERIPHERAL
    if unnamed and "pattern" not in scene.kinds and _WITHOUT_NAME.isdisjoint(scene.said):
        return
    left_out(desk, scene, spots, threads)
    if (
        scene.sentence.prefix
        and scene.sentence.section == PERIPHERAL
        and scene.words(scene.sentence.i, scene.sentence.i + 1)[0] in ("none", "no", "nil", "not", "nothing")
    ):
        if not scene.told(scene.sentence.i):
            return  # 'not recorded'
        if not none_in_a_cell(desk, scene):
            lay_suture(desk, scene, scene.sentence.i, scene.sentence.i + 1, "peripheral", "absent", RULE)
        return
    lost = pattern_lost_again(desk, scene) if not spots and just_told(desk, scene) else None
    if lost is not None:
        lay_none(desk, scene, lost.i, lost.j)
        return
    for spot in spots or [Anchor(t.i, t.j, PERIPHERAL) for t in threads if t.role == PERIPHERAL]:
        if _meant_and_not_placed(scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
    for spot in _one_a_part(scene, spots):
        if _heads_the_next(desk, scene, spot):
            continue
        if _weighed_and_left(scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
        if _to_come(scene, spot) or (scene.next_word(spot.j) == "same" and scene.next_word(spot.j + 1) in _ENDS):
            continue  # 'epi same': whether there is one, the tendon before says
        broke = _removed_again(scene, spot) and not renewed_next(desk, scene)
        if broke or lost_again(desk, scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
            continue
        if scene.words(spot.j, spot.j + 2) in _NOT_TOLD and not _peripheral_negated(scene, spot):
            continue  # 'An epitendinous suture would have been too bulky', 'The epitendinous layer was inspected'
        if _none_given(scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
            continue
        if not scene.told(spot.i) or _of_other_thing(scene, spot) or scene.answer(spot.j) in _ELSEWHERE:
            continue
        if _given_up(scene, spot):
            if _not_used(scene, spot) or _not_again(scene, spot):
                lay_none(desk, scene, spot.i, spot.j)
            continue
        if scene.answer(spot.j) in _NO:
            lay_none(desk, scene, spot.i, spot.j)
            continue
        if scene.sentence.section == PERIPHERAL and _heading_says_none(scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
            return
        if scene.sentence.section == PERIPHERAL and spot is spots[0] and _heading_says_nothing(scene, spot):
            return
        if _BLANK.match(scene.page.text, scene.page.ends[spot.j - 1]):
            continue  # 'core ________  epi ________'
        if _peripheral_negated(scene, spot) and scene.words(scene.sentence.i, scene.sentence.i + 3)[-2:] == [
            "this",
            "is",
        ]:
            continue
        if _peripheral_negated(scene, spot):
            if not _instead(scene, spot, threads):
                lay_none(desk, scene, spot.i, spot.j)
            continue
        if _only_a_word(scene, spot) or (scene.page.words[spot.j - 1] == "by" and scene.next_word(spot.j) == ":"):
            continue
        lay_suture(desk, scene, spot.i, spot.j, "peripheral", "present", "peripheral suture named")
    denied = [spot for spot in spots if _peripheral_negated(scene, spot) and not _instead(scene, spot, threads)]
    if not spots or len(denied) < len(spots) or _told_of_another(scene, denied, threads):
        _lay_pattern(desk, scene, found, bool(spots), threads)


def one_lost(desk: Desk, scene: Scene) -> None:
    """'That of the ring was caught on a hook, unravelled and could not be put back': that of one finger of several."""
    lost = one_of_them_lost(scene)
    if lost is None:
        return
    group, end = lost
    kinds = group.tendons or ("FDP", "FPL")
    for told in just_told(desk, scene):
        target = Target(*told.entry)
        if target.digit in group.digits and target.tendon in kinds:
            desk.tendon(scene, target, "peripheral", "absent", [(group.i, end)], RULE)


def _heads_the_next(desk: Desk, scene: Scene, spot: Anchor) -> bool:
    """'Peripheral FDS: not used': the noun before a tendon's label is cut off from it, and tells nothing by itself."""
    after = desk.scene_after(scene)
    alone = (spot.i, spot.j) == (scene.sentence.i, scene.sentence.j) and not scene.sentence.prefix
    groups = after.setting.groups if after is not None else []
    labelled = bool(groups) and after is not None and groups[0].i == after.sentence.i == scene.sentence.j
    return alone and labelled and scene.page.words[groups[0].j : groups[0].j + 1] == [":"]


def _told_of_another(scene: Scene, denied: list[Anchor], threads: list[Thread]) -> bool:
    """'A running 5-0 for the profundi only; the superficialis had no epitendinous stitch': told before it is denied."""
    outer = [t for t in threads if t.role == PERIPHERAL and (t.size or t.material)]
    parts = (";", ",", ".")
    return any(all(t.j <= s.i and any(w in parts for w in scene.words(t.j, s.i)) for s in denied) for t in outer)


_NOT_TOLD = (
    *(["would", word] for word in ("have", "be", "only")),
    *(["was", word] for word in ("forgotten", "inspected", "healthy", "torn", "thin", "missing", "unavailable")),
    *([verb, word] for verb in ("could", "can", "may", "might") for word in ("be", "have", "follow")),
    ["had", "to"],
    ["is", "half"],
    ["is", "for"],
    ["i", "owe"],
    *([verb, "but"] for verb in ("started", "begun", "attempted")),
)


def _to_come(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous to follow', 'epitendinous suture still pending', 'peripheral will follow': not yet put in."""
    behind = [w for w in scene.words(spot.j, spot.j + _SOON) if w not in _NOUNS]
    if behind[:1] == ["yet"] or behind[:2] in (["so", "far"], ["as", "yet"]):
        return True  # 'Four strands in, no epitendinous yet'
    return behind[:1] in (["pending"], ["outstanding"]) or behind[:2] in _COMING


_SOON = 5  # words
_NOUNS = frozenset(["suture", "stitch", "repair", "still", "is", "was", ":", "-", "layer"])
_COMING = (["to", "follow"], ["to", "come"], ["will", "follow"], ["to", "be"], ["will", "be"])


def _instead(scene: Scene, spot: Anchor, threads: list[Thread]) -> bool:
    """'No room for a full epitendinous, so just four interrupted 6-0 nylons': less than a whole one is still one."""
    later = [t for t in threads if t.role == PERIPHERAL and t.i >= spot.j and scene.told(t.i)]
    return any(not {"so", "but", "instead"}.isdisjoint(scene.words(spot.j, t.i)) for t in later)


def _removed_again(scene: Scene, spot: Anchor) -> bool:
    """'The epitendinous suture broke and was removed': none is left in, unless a new one is told of."""
    behind = scene.words(spot.j, scene.sentence.j)
    behind = behind[behind[:1] == ["thread"] :]
    broke = behind[:1] != [] and behind[0] in _BROKE and (behind[1:4] in _AND_REMOVED or behind[1:] in ([], ["."]))
    undone = behind[:1] == ["was"] and (tuple(behind[1:3]) in _TAKEN_OUT or behind[1:2] in (["undone"], ["unpicked"]))
    return (broke or undone) and _NEW_ONE.isdisjoint(w for k, w in enumerate(behind) if w != "again" or k > _UNDONE_IN)


_TAKEN_OUT = frozenset([("cut", "out"), ("taken", "out"), ("taken", "down"), ("removed", "again"), ("pulled", "out")])
_UNDONE_IN = 3  # words: 'was cut out again'


_BROKE = frozenset(["broke", "snapped", "tore", "bunched", "pulled"])
_AND_REMOVED = (["and", "was", "removed"], ["and", "was", "abandoned"], ["out", "and", "was"])
_NEW_ONE = frozenset(["new", "another", "second", "again", "fresh", "replaced"])


def _weighed_and_left(scene: Scene, spot: Anchor) -> bool:
    """'An epitendinous suture was considered but not placed'."""
    if scene.page.standing[spot.i] != "considered":
        return False
    behind = scene.words(spot.j, min(spot.j + 9, scene.sentence.j))
    against = scene.words(spot.i - 4, spot.i)[:2] in _AGAINST or scene.words(spot.i - 3, spot.i)[:2] in _AGAINST
    rest = list(pairwise(scene.words(spot.j, scene.sentence.j)))
    return against or any(pair in _AND_LEFT for pair in pairwise(behind)) or any(pair in _OMITTED for pair in rest)


def _meant_and_not_placed(scene: Scene, spot: Anchor) -> bool:
    """'A running 6-0 was to follow, but time was up and it was not placed', '... was to be added, but none went in'."""
    if scene.page.standing[spot.i] != "plan":
        return False
    behind = scene.words(spot.j, scene.sentence.j)
    return any(_not_placed(behind[k : k + _TOLD_OF_IT]) for k, word in enumerate(behind) if word in _IT)


def _not_placed(words: list[str]) -> bool:
    """Tell whether a clause that opens with 'it', 'one' or 'none' says that it was not put in, or was left off."""
    if words[0] == "none":
        return words[1:2] in (["was"], ["were"], ["went"], ["could"], ["followed"])
    denied = next((k for k, word in enumerate(words) if word in ("not", "never")), len(words))
    off = any(a == "left" and b in ("off", "out", "undone") for a, b in pairwise(words))
    return off or not (_GIVEN | {"run", "sewn", "made"}).isdisjoint(words[denied + 1 : denied + 3])


_IT = frozenset(["it", "this", "one", "none"])
_TOLD_OF_IT = 5  # words: 'it could not be placed'


def _none_given(scene: Scene, spot: Anchor) -> bool:
    """'An epitendinous suture has no place in a weave and none was added', but not 'and none was added to the FDS'."""
    words = scene.page.words
    if _there_is_none(scene, spot):
        return True
    k = next(
        (k for k in range(spot.j, scene.sentence.j - 2) if words[k] == "none" and words[k + 1] in ("was", "were")), -1
    )
    if k < 0 or words[k + 2] not in _GIVEN or scene.next_word(k + 3) not in ("", ".", ";", ","):
        return False
    given = any(spot.j <= m.i < k for m in scene.of("material", "pattern", "role"))
    named = any(g.i > spot.j and (g.tendons or g.digits) for g in scene.setting.groups)
    return scene.page.standing[spot.i] in ("", "considered", "teaching") and not (given or named)


def _there_is_none(scene: Scene, spot: Anchor) -> bool:
    """'The epitendinous suture was a touch too far, and there is none', 'a peripheral suture stands there as: none'.

    'No time for it' says so too. What stands between tells of nothing else, and of no tendon or finger.
    """
    words, last = scene.page.words, scene.sentence.j
    ends = (k for k in range(spot.j, last) if words[k : k + 2] in _NO_TIME or words[k] in ("none", "nil"))
    k = next(ends, last)
    if k == last or scene.page.standing[spot.i] not in ("", "considered", "teaching"):
        return False
    behind = scene.words(k + 2, k + 4)
    timed = words[k] == "no" and behind in (["for", "it"], ["for", "one"], ["left", "for"], ["for", "that"])
    there = scene.words(k - 2, k) in _THERE_IS or words[k - 1] in (":", "-")
    named = any(spot.j <= g.i < k and (g.tendons or g.digits) and not g.reference for g in scene.setting.groups)
    told = any(spot.j <= m.i < k for m in scene.of("material", "pattern")) or not scene.kinds.isdisjoint(_RESULTS)
    placed = not _GIVEN.isdisjoint(scene.words(spot.j, k))  # 'a further epitendinous suture was placed; there was none'
    return (timed or (there and scene.next_word(k + 1) in ("", ".", ";", ","))) and not (named or told or placed)


_RESULTS = ("gap", "tension", "bulk", "glide")
_NO_TIME = (["no", "time"], ["no", "need"], ["no", "room"], ["no", "call"], ["no", "place"])
_THERE_IS = tuple([there, verb] for there in ("there", "it", "i") for verb in ("is", "was", "got", "had", "has", "put"))


_GIVEN = frozenset(["added", "placed", "used", "put", "given", "needed", "done", "inserted", "taken", "attempted"])
_AGAINST = (["decided", "against"], ["opted", "against"])


_OMITTED = frozenset([("omitted", "it"), ("abandoned", "it"), ("left", "it"), ("skipped", "it"), ("forwent", "it")])
_AND_LEFT = frozenset((a, b) for a in ("but", "and") for b in ("not", "omitted", "rejected", "dismissed", "left"))


def _given_up(scene: Scene, spot: Anchor) -> bool:
    """'Peripheral suture attempted, tore out, abandoned', 'Epitendinous: thought about, not put in': none is told."""
    behind = scene.words(spot.j, min(spot.j + 12, scene.sentence.j))
    wished = behind[:1] == [":"] and behind[1:2] in _WISHED and "not" in behind
    return (
        wished
        or "abandoned" in behind
        or not _UNDONE.isdisjoint(behind)
        or ("not", "used") in pairwise(behind)
        or _not_again(scene, spot)
    )


def _not_again(scene: Scene, spot: Anchor) -> bool:
    """'The epitendinous suture cut out and I did not repeat it': nothing is left of it."""
    behind = scene.words(spot.j, min(spot.j + 12, scene.sentence.j))
    return not _LOST.isdisjoint(behind) and not _NOT_AGAIN.isdisjoint(pairwise(behind))


_UNDONE = frozenset(["undone", "unpicked"])
_LOST = frozenset(["cut", "tore", "pulled", "broke", "snapped", "came", "slipped", "removed", "out"])
_NOT_AGAIN = frozenset(
    [
        *((a, b) for a in ("not", "never") for b in ("repeat", "repeated", "redone", "replaced", "redo")),
        *(("no", b) for b in ("second", "other", "spare", "further")),
    ]
)


_WISHED = [["thought"], ["considered"], ["wanted"], ["wished"], ["planned"], ["hoped"]]


def _not_used(scene: Scene, spot: Anchor) -> bool:
    """'An epitendinous suture was not used': nothing but the noun and the verb stand before the denial."""
    named = {k for g in scene.setting.groups for k in range(g.i, g.j)}  # 'Peripheral FDS: not used'
    behind = [scene.page.words[k] for k in range(spot.j, min(spot.j + 5, scene.sentence.j)) if k not in named]
    behind = [w for w in behind if w not in ("suture", "stitch", "was", ":")]
    return behind[:2] == ["not", "used"]


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


_BLANK = re.compile(r"[ :]*_{2,}(?![^\s_])")  # not '__6-0 Prolene__'
_NO_SUTURE = word_list("sutures", "peripheral_of_others")
_SEALED = word_list("sutures", "sealed")


def _of_other_thing(scene: Scene, spot: Anchor) -> bool:
    """'epineurium of the ulnar nerve closed with a circumferential 9-0', 'peripheral neuropathy', 'peripheral seal'."""
    if scene.next_word(spot.j) in _NO_SUTURE or scene.words(spot.j, spot.j + 2) == ["was", "given"]:
        return True
    if scene.word_before(spot.i) in _SEALED:
        return True  # 'sealed peripherally with fibrin'
    nerve = "epineurium" in scene.words(scene.sentence.i, scene.sentence.j) or bool(scene.of("sided", "anynerve"))
    tendon = any(g.tendons or g.generic for g in scene.setting.groups) or bool(scene.of("stitch", "strandword"))
    round_it = scene.words(spot.i, spot.j) in (["circumferential"], ["circumferentially"], ["around"], ["round"])
    return nerve and round_it and not tendon


_ONLY_BEHIND = -1  # words that a denial before the suture may stand from it: none


def _peripheral_negated(scene: Scene, spot: Anchor) -> bool:
    first = scene.part(spot.i)[0]
    if any(first <= m.i and m.j <= spot.i and spot.i - m.j <= 5 for m in scene.of("gap", "glide")):
        return scene.negated(spot.i, spot.j, _ONLY_BEHIND)  # 'no gap before or after the epitendinous suture'
    before = scene.words(scene.part(spot.i)[0], spot.i)
    led = scene.words(max(scene.sentence.i, spot.i - 12), spot.i)
    led = led[led.index(":") + 1 :] if ":" in led else led
    if _OMITTING.intersection(led[-4:]) or not _LEAVING_OUT.isdisjoint(pairwise(led[-4:])) or _left_off(scene, spot):
        return True  # 'in the same way, leaving out the peripheral suture'
    unroomed = any(led[k : k + 2] in _NO_ROOM for k in range(len(led))) and scene.next_word(spot.j) != ":"
    if unroomed and _AFTER_ALL.isdisjoint(led):
        return True  # 'no room for, and no attempt at, a circumferential stitch'
    if "neither" in led and "nor" in led[led.index("neither") :]:
        return True  # 'neither the middle, the ring nor the FCR was given an epitendinous suture'
    behind = scene.words(spot.j, scene.part(spot.i)[1])
    if behind[:2] in _FELL_SHORT and any(takes_away(scene, k) for k in range(spot.j + 2, spot.j + 5)):
        return False  # 'the epitendinous did not flatten the bulk': it was there, and not enough
    if "neither" in behind[:3]:
        return True  # 'an epitendinous suture was neither possible nor needed'
    nowhere = any(a in ("on", "in", "around", "round", "to") and b in ("neither", "none") for a, b in pairwise(behind))
    return nowhere or scene.negated(spot.i, spot.j, 5) or "neither" in before or before[:2] == ["none", "of"]


def _left_off(scene: Scene, spot: Anchor) -> bool:
    """'We left the epitendinous off for want of a soft edge', 'leaving the peripheral suture out'."""
    led = [w for w in scene.words(max(scene.sentence.i, spot.i - 3), spot.i) if w not in ("the", "a", "any")]
    k = spot.j + (scene.next_word(spot.j) in ("suture", "stitch", "one", "layer"))
    return led[-1:] != [] and led[-1] in _LEAVES and scene.next_word(k) in ("off", "out", "undone")


_LEAVES = frozenset(["left", "leave", "leaving", "leaves"])
_LEAVING_OUT = frozenset((verb, away) for verb in _LEAVES for away in ("off", "out"))
_FELL_SHORT = (["did", "not"], ["could", "not"], ["does", "not"], ["would", "not"])


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
        if not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3) or _only_verb(scene, mention):
            continue
        same = _same_thread(scene, mention, threads)
        if not (
            same is not None
            or _of_outer_thread(scene, mention, threads)
            or _is_peripheral_pattern(desk, scene, mention, others, peripheral)
        ):
            continue
        if not peripheral and any(_joined_with(scene, mention, t) for t in threads):
            continue
        value, end = _locked_as_it_goes(scene, mention)
        targets, doubts = suture_owners(desk, scene, mention.i, mention.j)
        locked_only = _locked_only_in(scene, end) if value != mention.value else ()
        for target in targets:
            desk.tendon(
                scene, target, "peripheral", "present", [(mention.i, mention.j)], "peripheral pattern named", *doubts
            )
            own = value if not locked_only or target.digit in locked_only else mention.value
            at = [(mention.i, end if own == value else mention.j)]
            desk.tendon(scene, target, "peripheral_pattern", own, at, "peripheral pattern named", *doubts)
        if same is not None:
            for target in targets:
                _lay_thread(desk, scene, target, same[0], (mention.i, same[1]))
    for thread in threads:
        if thread.role == PERIPHERAL and scene.told(thread.i) and _one_by_one(scene, thread):
            rule = "peripheral pattern named"
            lay_suture(desk, scene, thread.i, thread.j, "peripheral_pattern", "interrupted", rule)
    for mention in scene.of("stitch"):
        told = mention.value == "horizontal mattress" and peripheral and scene.told(mention.i)
        if told and role_of(scene, mention.i, mention.j, others) == PERIPHERAL:
            rule = "peripheral pattern named"
            lay_suture(desk, scene, mention.i, mention.j, "peripheral_pattern", mention.value, rule)


def _same_thread(scene: Scene, mention: Mention, threads: list[Thread]) -> tuple[Thread, int] | None:
    """'The index got a running 5-0 Prolene, the middle interrupted stitches of the same': the thread told before.

    With it comes the end of the words that take it up.
    """
    behind = scene.words(mention.j, min(mention.j + _SHORTLY, scene.sentence.j))
    outer = [t for t in threads if t.role == PERIPHERAL and t.j <= mention.i]
    k = next((n for n, three in enumerate(zip(behind, behind[1:], behind[2:], strict=False)) if three == _SAME), -1)
    if k < 0 or not outer or {",", ";", "."}.intersection(behind[:k]):
        return None
    end = mention.j + k + len(_SAME)
    own = any(mention.i <= t.i < end for t in threads)  # 'a cross-stitch of 5-0 Prolene of the same make'
    return None if own else (outer[-1], end)


def _lay_thread(desk: Desk, scene: Scene, target: Target, thread: Thread, span: tuple[int, int]) -> None:
    for name, value in (("peripheral_size", thread.size), ("peripheral_material", thread.material)):
        if value:
            desk.tendon(scene, target, name, value, [span], "said by reference to another repair")


_SAME = ("of", "the", "same")
_SHORTLY = 6  # words of 'stitches, made of the same'


def _of_outer_thread(scene: Scene, mention: Mention, threads: list[Thread]) -> bool:
    """'a running 6/0 epitendinous suture', 'ran a 6-0 around it': the pattern stands beside the outer thread."""
    outer = [t for t in threads if t.role == PERIPHERAL and (t.size or t.material)]
    verb = scene.page.words[mention.i] in ("run", "ran")
    if threads and len(outer) == len(threads) and not verb and not scene.of("stitch", "strandword"):
        return True
    ends = ((mention.j, t.i) if t.i >= mention.i else (t.j, mention.i) for t in outer)
    named = {k for m in scene.of("pattern") for k in range(m.i, m.j)}  # 'an overcast (continuous) of PDS 6-0'
    aside = {k for k in named if scene.word_before(k) == "("}
    aside |= {k + n for k in aside for n in (-1, 1)}
    between = ([scene.page.words[k] for k in range(i, j) if k not in aside] for i, j in ends)
    return any(len(words) <= 4 and _NEXT_TO.issuperset(words) and words.count(",") < 2 for words in between)


# Words between a pattern and its thread: 'a 6-0 was run around in a continuous fashion'.
_NEXT_TO = word_list("sutures", "next_to")


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
        if word in (";", ".", "core", "not", "no", "non", "without", "unlocked") or not scene.told(k):
            break
        if any(g.digits and g.i == k for g in scene.setting.groups):
            break  # 'running in the ring finger and interlocking in the long'
        if word in _LOCKS:
            stitch = any(m.kind in ("stitch", "strandword") and 0 <= m.i - k <= 2 for m in scene.mentions)
            core = stitch or scene.next_word(k + 1) in ("core", "loops", "grasp", "plate", "screws", "corners")
            between = any(m.kind in ("stitch", "strandword") and mention.j <= m.i < k for m in scene.mentions)
            return ("running", mention.j) if core or between else ("running locking", k + 1)
    return "running", mention.j


def _one_by_one(scene: Scene, thread: Thread) -> bool:
    """'a few single 6-0 nylon stitches around the edge': stitches set one by one, told apart from their noun."""
    led = scene.words(max(scene.sentence.i, thread.i - 2), thread.i)
    return not _SINGLE.isdisjoint(led) and scene.next_word(thread.j) in ("stitches", "sutures")


_SINGLE = frozenset(["single", "separate", "individual", "simple", "interrupted"])


def _locked_only_in(scene: Scene, end: int) -> tuple[str, ...]:
    """'6-0 running epi, locked in the index only': the fingers for which alone the stitch was locked."""
    group = next((g for g in scene.setting.groups if g.digits and 1 <= g.i - end <= 2), None)
    placed = group is not None and scene.word_before(group.i - (scene.word_before(group.i) == "the")) in ("in", "for")
    return group.digits if group is not None and placed and scene.next_word(group.j) in ("only", "alone") else ()


def _only_verb(scene: Scene, mention: Mention) -> bool:
    """'A cross-stitch was then run round the edge', 'the FPL has run away': no pattern of its own."""
    if scene.page.words[mention.i] not in ("run", "ran") or mention.value != "running":
        return False
    if scene.next_word(mention.j) in ("as", "up", "along"):
        return True  # 'a looped suture, run as a Tsuge', 'its tails run up the tendon'
    first, last = scene.part(mention.i)
    other = any(first <= m.i < last and m.value not in ("running", "other") for m in scene.of("pattern"))
    return other or not (find_sizes(scene) or scene.of("material") or _STITCH.intersection(scene.said))


_STITCH = frozenset(["stitch", "suture", "stitched", "epitenon", "epitendinous", "peripheral"])


def _is_peripheral_pattern(desk: Desk, scene: Scene, mention: Mention, others: list[Anchor], peripheral: bool) -> bool:
    if scene.words(mention.i, mention.j) in (["ran"], ["run"]) and not peripheral:
        return False
    role = role_of(scene, mention.i, mention.j, others)
    if role == PERIPHERAL:
        return True
    if drawn_into_bone(scene, others):
        return False
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
