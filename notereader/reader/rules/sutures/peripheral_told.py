"""What is said where a peripheral suture is named: that it was placed, left out, or neither."""

import re
from itertools import pairwise
from typing import NamedTuple

from notereader.reader.desk import Desk
from notereader.reader.rules.results.not_taken_away import takes_away
from notereader.reader.rules.sutures.edges_of_others import belongs_elsewhere
from notereader.reader.rules.sutures.lost_peripheral import lost_again, renewed_next
from notereader.reader.rules.sutures.peripheral_wished import (
    left_off_for_it,
    not_done_here,
    plainly_none,
    tried_and_left,
    wanting_room,
    would_be,
)
from notereader.reader.rules.sutures.roles import PERIPHERAL, Anchor
from notereader.reader.rules.sutures.threads import Thread, find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_ONLY_A_WORD_WORDS = word_list("sutures", "only_a_word_words")
_ENDS = frozenset(["", ".", ",", ";", ")"])
_NO_ROOM = (["no", "room"], ["no", "attempt"], ["no", "space"], ["no", "point"], ["not", "worth"])
_OMITTING = word_list("sutures", "omitting")
_AFTER_ALL = frozenset(["but", "so", "then", "however", "until"])
_ELSEWHERE = frozenset(["see", "refer", "cf", "tbc", "per", "as"])  # 'Peripheral suture: see diagram'
_NO = frozenset(["no", "none", "nil", "nothing", "n", "not", "omitted", "0"])
_BOX = word_list("sutures", "box")
_NO_ANSWER = word_list("sutures", "no_answer")
_NOT_TOLD = (
    *(["would", word] for word in ("have", "be", "only")),
    *(
        ["was", word]
        for word in ("forgotten", "inspected", "healthy", "torn", "thin", "missing", "unavailable", "reserved")
    ),
    *([verb, word] for verb in ("could", "can", "may", "might") for word in ("be", "have", "follow")),
    ["had", "to"],
    ["is", "half"],
    ["is", "for"],
    ["i", "owe"],
    *([verb, "but"] for verb in ("started", "begun", "attempted")),
)


class Told(NamedTuple):
    """What is said where a peripheral suture is named: 'present', 'absent' or neither, and whether that is all."""

    value: str = ""
    settles: bool = False


def told_at(desk: Desk, scene: Scene, spot: Anchor, threads: list[Thread], first: bool) -> Told:
    """Return what a sentence says of the peripheral suture where it names one; `first`: for the first time."""
    if _left_open(scene, spot):
        return Told()
    if _gone_again(desk, scene, spot):
        return Told("absent")
    if plainly_none(scene, spot.i, spot.j):
        return Told("absent")
    if would_be(scene, spot.j):
        return Told("absent" if left_off_for_it(scene, spot.j) else "")
    if _not_told(scene, spot):
        return Told("absent" if wanting_room(scene.words(spot.j, scene.sentence.j)) else "")
    if _none_given(scene, spot):
        return Told("absent")
    if not scene.told(spot.i) or _of_other_thing(scene, spot) or scene.answer(spot.j) in _ELSEWHERE:
        return Told()
    if _given_up(scene, spot):
        left = _not_used(scene, spot) or _not_again(scene, spot) or tried_and_left(scene, spot.j)
        return Told("absent" if left else "")
    if scene.answer(spot.j) in _NO or _answered_of_a_name(scene, spot):
        return Told("absent")
    if scene.sentence.section == PERIPHERAL and _heading_says_none(scene, spot):
        return Told("absent", settles=True)
    if scene.sentence.section == PERIPHERAL and first and _heading_says_nothing(scene, spot):
        return Told(settles=True)
    return _named(scene, spot, threads)


def _answered_of_a_name(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous ring: none', 'Peripheral suture, index: nil': the name of a finger or tendon before the answer."""
    k = spot.j + (scene.next_word(spot.j) in ("suture", "stitch"))
    k += scene.next_word(k) in (",", "-", "(")
    group = next((g for g in scene.setting.groups if g.i == k), None)
    if group is None:
        return False
    k = group.j + (scene.next_word(group.j) == ")")
    return scene.next_word(k) == ":" and scene.next_word(k + 1) in _NO and scene.next_word(k + 2) in _ENDS


def _left_open(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous to follow', and 'epi same': whether there is one, the tendon before says."""
    same = scene.next_word(spot.j) == "same" and scene.next_word(spot.j + 1) in _ENDS
    return same or _to_come(scene, spot)


def _not_told(scene: Scene, spot: Anchor) -> bool:
    """'An epitendinous suture would have been too bulky', 'The epitendinous layer was inspected': left open here."""
    return scene.words(spot.j, spot.j + 2) in _NOT_TOLD and not is_negated_there(scene, spot)


def _gone_again(desk: Desk, scene: Scene, spot: Anchor) -> bool:
    """Tell whether it broke or was removed, and no new one is told of right behind."""
    return (_removed_again(scene, spot) and not renewed_next(desk, scene)) or lost_again(desk, scene, spot)


def _named(scene: Scene, spot: Anchor, threads: list[Thread]) -> Told:
    """'No epitendinous suture', 'a 6-0 epitendinous suture': denied or placed, or no more than a word."""
    if _BLANK.match(scene.page.text, scene.page.ends[spot.j - 1]):
        return Told()  # 'core ________  epi ________'
    if is_negated_there(scene, spot):
        of_this = scene.words(scene.sentence.i, scene.sentence.i + 3)[-2:] == ["this", "is"]
        return Told("" if of_this or instead(scene, spot, threads) else "absent")
    if _only_a_word(scene, spot) or (scene.page.words[spot.j - 1] == "by" and scene.next_word(spot.j) == ":"):
        return Told()
    return Told("present")


def _to_come(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous to follow', 'epitendinous suture still pending', 'peripheral will follow': not yet put in."""
    behind = [w for w in scene.words(spot.j, spot.j + _SOON) if w not in _NOUNS]
    if behind[:1] == ["yet"] or behind[:2] in (["so", "far"], ["as", "yet"]):
        return True  # 'Four strands in, no epitendinous yet'
    return behind[:1] in (["pending"], ["outstanding"]) or behind[:2] in _COMING


_SOON = 5  # words
_NOUNS = frozenset(["suture", "stitch", "repair", "still", "is", "was", ":", "-", "layer"])
_COMING = (["to", "follow"], ["to", "come"], ["will", "follow"], ["to", "be"], ["will", "be"])


def instead(scene: Scene, spot: Anchor, threads: list[Thread]) -> bool:
    """'No room for a full epitendinous, so just four interrupted 6-0 nylons': less than a whole one is still one."""
    later = [t for t in threads if t.role == PERIPHERAL and t.i >= spot.j and scene.told(t.i)]
    return any(not {"so", "but", "instead"}.isdisjoint(scene.words(spot.j, t.i)) for t in later)


def _removed_again(scene: Scene, spot: Anchor) -> bool:
    """'The epitendinous suture broke and was removed', 'pulled out': none is left in, unless a new one is told of."""
    behind = scene.words(spot.j, scene.sentence.j)
    behind = behind[behind[:1] == ["thread"] :]
    broke = behind[:1] != [] and behind[0] in _BROKE and (behind[1:4] in _AND_REMOVED or behind[1:] in ([], ["."]))
    undone = behind[:1] == ["was"] and (tuple(behind[1:3]) in _TAKEN_OUT or behind[1:2] in (["undone"], ["unpicked"]))
    lost = behind[:1] == ["failed"] or _came_out(behind) or _taken_out_again(scene, spot)
    return (broke or undone or lost) and _NEW_ONE.isdisjoint(
        w for k, w in enumerate(behind) if w != "again" or k > _UNDONE_IN
    )


def _came_out(behind: list[str]) -> bool:
    """'... pulled out', '... was placed and cut out on testing': only its placing stands between."""
    at = next((k for k, pair in enumerate(pairwise(behind)) if pair in _CAME_OUT), -1)
    return at == 0 or (at > 0 and _PLACING.issuperset(behind[:at]))


_CAME_OUT = frozenset(
    [*((verb, "out") for verb in ("pulled", "cut", "tore", "came", "ripped", "slid")), ("gave", "way"), ("let", "go")]
)
_PLACING = frozenset(["was", "placed", "run", "put", "in", "and", "but", "then", "it", "added", "all", "once", "later"])


def _taken_out_again(scene: Scene, spot: Anchor) -> bool:
    """'I took the epitendinous suture out again'."""
    lead = scene.words(max(scene.sentence.i, spot.i - 3), spot.i)
    k = spot.j + (scene.next_word(spot.j) in _NOUNS)
    return not _TAKES.isdisjoint(lead) and scene.words(k, k + 2) in (["out", "again"], ["out"], ["out", "."])


_TAKES = frozenset(["took", "taken", "take", "taking"])
_TAKEN_OUT = frozenset([("cut", "out"), ("taken", "out"), ("taken", "down"), ("removed", "again"), ("pulled", "out")])
_UNDONE_IN = 3  # words: 'was cut out again'
_BROKE = frozenset(["broke", "snapped", "tore", "bunched", "pulled"])
_AND_REMOVED = (["and", "was", "removed"], ["and", "was", "abandoned"], ["out", "and", "was"])
_NEW_ONE = frozenset(["new", "another", "second", "again", "fresh", "replaced"])


def weighed_and_left(scene: Scene, spot: Anchor) -> bool:
    """'An epitendinous suture was considered but not placed'."""
    if scene.page.standing[spot.i] == "teaching":
        return _shown_and_not_placed(scene.words(spot.j, scene.sentence.j)) or not_done_here(scene, spot.i, spot.j)
    if scene.page.standing[spot.i] != "considered":
        return False
    behind = scene.words(spot.j, min(spot.j + 9, scene.sentence.j))
    against = scene.words(spot.i - 4, spot.i)[:2] in _AGAINST or scene.words(spot.i - 3, spot.i)[:2] in _AGAINST
    rest = list(pairwise(scene.words(spot.j, scene.sentence.j)))
    against = against or tried_and_left(scene, spot.j)
    return against or any(pair in _AND_LEFT for pair in pairwise(behind)) or any(pair in _OMITTED for pair in rest)


def _shown_and_not_placed(behind: list[str]) -> bool:
    """'... was demonstrated on the drape but not put in the tendon', '... was shown, and none was placed'."""
    turns = (behind[k + 1 : k + 1 + _TOLD_OF_IT] for k, word in enumerate(behind) if word in ("but", "and", ";"))
    denied = (words for words in turns if words[:1] in (["not"], ["never"], ["none"]))
    return any(not (_GIVEN | {"sewn", "run"}).isdisjoint(words[1:3]) for words in denied)


def meant_and_not_placed(scene: Scene, spot: Anchor) -> bool:
    """'A running 6-0 was to follow, but time was up and it was not placed', '... was to be added, but none went in'."""
    if scene.page.standing[spot.i] != "plan":
        return False
    behind = scene.words(spot.j, scene.sentence.j)
    denied = any(
        pair in _WAS_NOT and _not_placed(behind[k : k + _TOLD_OF_IT]) for k, pair in enumerate(pairwise(behind))
    )
    return denied or any(_not_placed(behind[k : k + _TOLD_OF_IT]) for k, word in enumerate(behind) if word in _IT)


def _not_placed(words: list[str]) -> bool:
    """Tell whether a clause that opens with 'it', 'one' or 'none' says that it was not put in, or was left off."""
    if words[0] == "none":
        return words[1:2] in (["was"], ["were"], ["went"], ["could"], ["followed"])
    denied = next((k for k, word in enumerate(words) if word in ("not", "never")), len(words))
    off = any(a == "left" and b in ("off", "out", "undone") for a, b in pairwise(words))
    return off or not (_GIVEN | {"run", "sewn", "made"}).isdisjoint(words[denied + 1 : denied + 3])


_WAS_NOT = frozenset((a, b) for a in ("but", "and") for b in ("was", "were", "could", "not", "never"))
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


_TOO_MUCH = 6  # words
_ARTICLES = frozenset(["a", "an", "the", "any"])
_BLANK = re.compile(r"(?: suture| stitch)?[ :]*(?:_{2,}(?![^\s_])|\.{3,}[ \t]*(?:\n|$))")  # not '__6-0 Prolene__'
_NO_SUTURE = word_list("sutures", "peripheral_of_others")
_SEALED = word_list("sutures", "sealed")


def _of_other_thing(scene: Scene, spot: Anchor) -> bool:
    """'epineurium of the ulnar nerve closed with a circumferential 9-0', 'peripheral neuropathy', 'peripheral seal'."""
    lead = [w for w in scene.words(max(scene.sentence.i, spot.i - _TOO_MUCH), spot.i) if w not in _ARTICLES]
    if "too" in lead and lead[-1:] == ["for"]:
        return True  # 'too swollen for an epitendinous suture'
    if scene.next_word(spot.j) in _NO_SUTURE or scene.words(spot.j, spot.j + 2) == ["was", "given"]:
        return True
    if scene.word_before(spot.i) in _SEALED:
        return True  # 'sealed peripherally with fibrin'
    if _round_another(scene, spot):
        return True
    nerve = "epineurium" in scene.words(scene.sentence.i, scene.sentence.j) or bool(scene.of("sided", "anynerve"))
    tendon = any(g.tendons or g.generic for g in scene.setting.groups) or bool(scene.of("stitch", "strandword"))
    round_it = scene.words(spot.i, spot.j) in (["circumferential"], ["circumferentially"], ["around"], ["round"])
    return nerve and round_it and not tendon


def _round_another(scene: Scene, spot: Anchor) -> bool:
    """'Epi done on the nerve only', 'the circumferential stitch was for the artery': told of that and of no tendon."""
    words = scene.page.words
    last = next((k for k in range(spot.j, scene.sentence.j) if words[k] in (",", ";", ".")), scene.sentence.j)
    lead = [w for w in scene.words(spot.j, last) if w not in _LEADING_ROUND]
    return lead[:2] in _ROUND_ANOTHER or belongs_elsewhere(scene, spot.j)


_LEADING_ROUND = frozenset(
    ["the", "a", "suture", "stitch", "was", "is", "done", "put", "only", "placed", "run", "just"]
)
_ROUND_ANOTHER = tuple(
    [placed, thing]
    for placed in ("on", "around", "round", "for", "in", "to")
    for thing in ("nerve", "nerves", "artery", "arteries", "vessel", "vessels", "epineurium")
)
_ONLY_BEHIND = -1  # words that a denial before the suture may stand from it: none


def is_negated_there(scene: Scene, spot: Anchor) -> bool:
    """Tell whether a peripheral suture is denied where it is named, before or behind its name."""
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
