"""Tension on a repair: 'no tension', 'under some tension'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.rules.deeds.spoken_of_repairs import never_made
from notereader.reader.rules.results.at_last import settle_at_last
from notereader.reader.rules.results.behaviour import (
    about_repair,
    behaving,
    foreign,
    lay_behaviour,
    names_repair,
    the_rest_here,
    told_of_several_before,
)
from notereader.reader.rules.results.but_for import but_for_some
from notereader.reader.rules.results.joins_before import of_another_join
from notereader.reader.rules.results.not_taken_away import not_taken_away
from notereader.reader.rules.results.said_to_be_none import NONE, of_nobody, said_to_be_none
from notereader.reader.rules.results.sought import sought_in_vain
from notereader.reader.rules.results.told_apart import told_apart
from notereader.reader.rules.strangers import of_a_stranger, of_sheath_or_pulley
from notereader.reader.rules.sutures.given_reasons import as_a_reason
from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_TENSION_WORDS = word_list("quality", "tension_words")
_JOIN_NOUNS = word_list("quality", "join_nouns")
_MEETING = word_list("quality", "meeting")
_PULLS = word_list("quality", "weak_tension")
_ADJUSTED = word_list("quality", "adjusted")
_TAKING_OFF = frozenset(
    ["avoid", "avoiding", "prevent", "preventing", "against", "relieve", "relieving", "reduce", "reducing", "less"]
)
_PUT = frozenset(["put", "placed", "place", "set", "bring"])
_COULD_NOT = frozenset([("not", "possible"), ("was", "impossible"), ("not", "achieved"), ("not", "be")])
_WOULD_NOT = frozenset((verb, "not") for verb in ("could", "would", "did", "can", "do", "does", "will"))
_TOO_SHORT = frozenset(["too", "cannot", "couldn't", "wouldn't", "didn't", "impossible", "unable", "never"])
_OTHERS = frozenset(["nerve", "nerves", "skin", "flap", "flaps", "artery", "vessels", "wound", "coaptation"])


@needs(kinds=["tension"])
def tension(desk: Desk, scene: Scene) -> None:
    """Find tension on the repair: 'no tension', 'under some tension'."""
    for mention in scene.of("tension"):
        word = " ".join(scene.words(mention.i, mention.j))
        if not scene.told(mention.i) or _of_another_thing(desk, scene, mention, word):
            continue
        if _is_made_or_sought(desk, scene, mention, word) or _tells_no_result(scene, mention, word):
            continue
        value = _value(desk, scene, mention, word)
        if value is not None:
            _lay_tension(desk, scene, mention, value)


def _of_another_thing(desk: Desk, scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether what was tense or slack is no repair: a nerve, a thread, the wrist, the sheath."""
    if foreign(scene, mention.i, mention.j) and not _beside_bone(scene, mention):
        return True
    if not _of_repair(desk, scene, mention):
        return True
    if "slack" in word.split() and _of_a_suture(scene, mention):
        return True
    body = word.endswith(("tense", "tight"))
    if body and not _OF_THE_BODY.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 2), mention.i)):
        return True  # 'The wrist was not tense'
    if word.endswith("relaxed") and _is_posture(scene, mention):
        return True
    behind = _behind(scene, mention)
    if not _OTHERS.isdisjoint(behind) and {"repair", "repairs", "tendon", "tendons"}.isdisjoint(behind):
        return True  # 'no tension on the nerve'
    if scene.page.words[mention.j - 1].endswith("ght") and _of_the_sheath(scene, mention):  # or 'tlght' of a scan
        return True
    pulls = word in _PULLS and scene.next_word(mention.j) != "?" and not names_repair(scene)  # not 'Tight? n'
    return pulls and (_MEETING | _JOIN_NOUNS).isdisjoint(scene.words(*scene.part(mention.i)))


def _is_posture(scene: Scene, mention: Mention) -> bool:
    """'With the thumb in a relaxed posture', 'splint with the fingers relaxed': how the hand lay, and no repair."""
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    return scene.next_word(mention.j) in _POSTURES or not (_OF_THE_BODY | _LIMBS).isdisjoint(lead)


_POSTURES = frozenset(["posture", "position", "attitude", "pose", "state", "hand", "fist", "cascade", "wrist"])
_LIMBS = frozenset(["thumb", "finger", "fingers", "digit", "digits", "muscle", "muscles", "patient", "child"])


def _behind(scene: Scene, mention: Mention) -> list[str]:
    return scene.words(mention.j, min(mention.j + 4, scene.part(mention.i)[1]))


def _is_made_or_sought(desk: Desk, scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether tension is what somebody put on, set, took off or looked for, and no result."""
    lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    if word == "under tension" and not _PUT.isdisjoint(lead):
        return True  # 'I did not put the FCU under tension to test it'
    if word == "no pull" and not _TESTED.isdisjoint(scene.words(mention.j, scene.sentence.j)):
        return True  # 'No pull on the tendon at the wrist was done'
    before, after = scene.word_before(mention.i), scene.words(mention.j, mention.j + 2)
    if before in _TAKING_OFF or (before == "take" and after[:1] == ["off"]):
        return True  # 'Avoid tension on the repair.', 'The wrist was flexed to relieve tension'
    if word != "tension":
        return False
    if after[:1] in (["was"], ["is"]) and not _ADJUSTED.isdisjoint(after):
        return True
    if after[:1] in (["set"], ["adjusted"], ["judged"]) or _is_set(scene, mention):
        return True  # 'Tension set with the wrist flexed', 'I set the tension so that the tip met the index'
    if after[:1] in (["by"], ["becomes"], ["became"]):
        return True  # 'Tension by traction on the muscle: no gap', 'before the tension becomes noticeable'
    if before in ("for", "about") and not sought_in_vain(desk, scene, mention):
        return True  # 'moved for tension: cascade restored', 'when in doubt about tension flex the wrist'
    return before in _TENSION_WORDS


def _tells_no_result(scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether tension is only compared, wished for, bounded or that of a test."""
    after = scene.words(mention.j, mention.j + 2)
    if after == ["?", "no"] and mention.value == "none":
        return True  # 'Tension free? No.'
    if after[:1] == ["than"] and "more" in scene.words(mention.i - 1, mention.j):
        return True  # 'no more tension than was unavoidable'
    if not _COULD_NOT.isdisjoint(pairwise(_behind(scene, mention))) or never_made(scene, mention.j):
        return True  # 'A tension-free repair was not possible', 'suture without tension was out of the question'
    if after[:1] in (["once"], ["only"], ["enough"]):
        return True  # 'tension-free once the wrist was flexed', 'snags, not tight enough to redo'
    if word in ("under tension", "with tension") and _beside_gap(scene, mention):
        return True
    return _did_not_meet(scene, mention)


def _value(desk: Desk, scene: Scene, mention: Mention, word: str) -> str | None:
    """Return whether there was tension or none, as all the words around it say; None where they tell neither."""
    value = _told_or_denied(scene, mention, word)
    if value is None or (value == "none" and mention.value == "present" and as_a_reason(scene, mention)):
        return None  # 'A2 was not closed because of tension'
    if word.startswith("without") and scene.word_before(mention.i) == "not":
        value = "present"  # 'not without tension'
    if of_nobody(scene, mention):
        value = "none"  # 'none of the five tendon repairs was under tension'
    if word == "tension" and scene.words(mention.j, mention.j + 2) in (["on", "neither"], ["in", "neither"]):
        value = "none"
    answer = scene.answer(mention.j)
    if answer == "":
        return None
    if answer is not None and word in ("tension", "under tension"):
        value = "none" if answer in NONE else "present"
    if said_to_be_none(scene, mention) or sought_in_vain(desk, scene, mention):
        value = "none"
    return "present" if value == "none" and but_for_some(scene, mention) else value


def _told_or_denied(scene: Scene, mention: Mention, word: str) -> str | None:
    """'No tension', 'tension-free', 'was not tight'; None of 'any tension' that nothing denies."""
    value = mention.value
    if word not in ("tension", "any tension"):
        if value != "present" or not_taken_away(scene, mention.i):
            return value  # 'Flexing the wrist did not abolish the tension on it'
        reach = _SHORT if word.endswith("tight") else _FAR  # 'did not gap and was tight' is tight
        return "none" if scene.negated(mention.i, mention.j, reach) else value
    denied = scene.negated(mention.i, mention.j)
    if denied and not not_taken_away(scene, mention.i):
        value = "none"
    if word == "any tension":
        return None if value == "none" and not denied else value
    after = scene.words(mention.j, mention.j + 2)
    free = after[:1] == ["free"] or after == ["-", "free"]  # not 'tension -> slight, accepted'
    return "none" if value == "present" and free else value


def _lay_tension(desk: Desk, scene: Scene, mention: Mention, value: str) -> None:
    answers, label = told_apart(desk, scene, mention)
    for each in answers:
        said = "present" if each.yes else "none"
        lay_behaviour(desk, scene, each.targets, "tension", said, each.i, each.j, f"tension {said}")
    if label or (value == "none" and of_sheath_or_pulley(scene, mention.i)):
        return
    _lay_rest(desk, scene, mention, value)
    targets = _whose(desk, scene, mention)
    if value == "none":
        settle_at_last(desk, scene, targets, "tension", mention.i)
    lay_behaviour(desk, scene, targets, "tension", value, mention.i, mention.j, f"tension {value}")


def _did_not_meet(scene: Scene, mention: Mention) -> bool:
    """'The stump could not be brought up without tension', 'too short to be sutured free of tension': it was not so."""
    lead = scene.words(max(scene.part(mention.i)[0], mention.i - _FAR_BACK), mention.i)
    if mention.value == "present" and "without" not in lead[-_BESIDE:]:
        return False  # 'could not feel any tension'
    cut = next((n for n in range(len(lead) - 1, -1, -1) if lead[n] in ("and", "but", ",")), -1)
    lead = lead[cut + 1 :]
    return not _WOULD_NOT.isdisjoint(pairwise(lead)) or not _TOO_SHORT.isdisjoint(lead)


_FAR_BACK = 12  # words
_BESIDE = 3  # words


def _of_a_suture(scene: Scene, mention: Mention) -> bool:
    """'One core suture was slack', 'a slack loop': a thread that lies loose, and no tension of the repair."""
    lead = scene.words(max(scene.part(mention.i)[0], mention.i - _NEAR), mention.i)
    return not _SUTURES.isdisjoint([*lead, scene.next_word(mention.j)])


_SUTURES = frozenset(
    ["suture", "sutures", "stitch", "stitches", "loop", "loops", "thread", "strand", "strands", "knot"]
)
_OF_THE_BODY = frozenset(["wrist", "arm", "forearm", "hand", "skin", "wound", "cuff", "patient", "compartment"])
_TESTED = frozenset(["done", "tried", "made", "test", "tested", "performed", "applied", "exerted", "carried"])


def _whose(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the tendons a word of tension is said of."""
    first = scene.part(mention.i)[0]
    lead = range(max(first, mention.i - _NEAR), mention.i)
    rest = next((found for k in lead if (found := the_rest_here(desk, scene, k))), [])
    before = told_of_several_before(desk, scene) if _OF_ANY.isdisjoint(scene.said) else []
    return rest or before or behaving(desk, scene, mention.i, mention.j)


_OF_ANY = frozenset(["any", "all", "each", "both", "either"])


def _lay_rest(desk: Desk, scene: Scene, mention: Mention, value: str) -> None:
    """'Ring under tension; rest not.': what is denied of the others."""
    k = next((k for k in range(mention.j, scene.sentence.j - 1) if scene.page.words[k] in ("rest", "others")), None)
    if k is None or value != "present" or scene.next_word(k + 1) not in ("not", "no", "none"):
        return
    if scene.words(mention.j, k) not in ([";"], [","], [";", "the"], [",", "the"], ["."], ["and", "the"]):
        return
    rest = the_rest_here(desk, scene, k)
    lay_behaviour(desk, scene, rest, "tension", "none", k, k + 2, "tension none")


def _is_set(scene: Scene, mention: Mention) -> bool:
    """'Setting the tension', 'I set tension': how a graft was put in, and not how tight a repair came out."""
    k = mention.i - (scene.word_before(mention.i) in ("the", "its", "graft"))
    return scene.word_before(k) in ("set", "setting", "adjusted", "adjusting")


def _of_repair(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether tension is that of a tendon: what was worked on last, or a label or noun of its own says so.

    'Tension: moderate' of a form is the repair's whatever stands above it; a nerve or skin that was sewn last is not
    taken for the tendon where nothing says so.
    """
    if of_another_join(desk, scene, mention):
        return False
    if about_repair(desk, scene):
        return True
    if any(s.kind in _OF_OTHER_KINDS for s in scene.subjects) or not (desk.sewn() or scene.setting.focus):
        return False
    opens = mention.i == scene.sentence.i or scene.page.breaks[mention.i] >= Break.LINE
    opens = opens or scene.page.breaks[mention.i] == Break.COLUMN  # 'bulk: ____   tension: [x] none'
    label = opens and scene.next_word(mention.j) in (":", "?", "=", "|") and not _of_a_nerve_join(desk, scene, mention)
    met = not _ENDS.isdisjoint(scene.words(*scene.part(mention.i))) and _OTHERS.isdisjoint(scene.said)
    near = desk.topic in ("bone", "muscle", "sheath", "tag") or (desk.topic == "other" and mention.value == "present")
    beside = any(abs(m.i - mention.i) <= _TOLD_WITH for m in scene.of("gap", "glide", "bulk"))  # 'no gap, tension none'
    beside = beside and not (desk.topic == "nerve" and scene.next_word(mention.j) == "there")  # 'no tension there'
    return label or met or near or beside


_TOLD_WITH = 6  # words


def _of_a_nerve_join(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Ulnar nerve: four 9-0 stitches', and below it 'Tension: none': it may be the nerve that is meant."""
    before = desk.scene_before(scene)
    none = not NONE.isdisjoint(scene.words(mention.j, min(mention.j + _TOLD_WITH, scene.sentence.j)))
    sewn = before is not None and bool(before.of("material") or find_sizes(before))
    return none and sewn and desk.topic in ("nerve", "vessel", "skin")


def _beside_bone(scene: Scene, mention: Mention) -> bool:
    """'Reattached to the distal phalanx, tension a little high': the bone is where the tendon was fixed."""
    subject = scene.owner(mention.i, mention.j)
    bone = subject is not None and subject.mention is not None and "bone" in (subject.kind, subject.mention.value)
    tendon = names_repair(scene) or not _ENDS.isdisjoint(scene.said) or bool(scene.of("button", "anchor"))
    return bone and tendon and not of_a_stranger(scene, mention.i, mention.j)


_OF_OTHER_KINDS = frozenset(["structure", "sided", "anynerve", "anyartery", "bundle"])
_ENDS = frozenset(["repair", "repairs", "stumps", "tendon", "tendons", "reinsertion", "ends", "join", "joins"])


def _of_the_sheath(scene: Scene, mention: Mention) -> bool:
    """'The sheath was a bit tight', 'a little tight under A2', 'a bit tight to pass': how it ran, and no tension."""
    behind = scene.words(mention.j, min(mention.j + _NEAR, scene.part(mention.i)[1]))
    if behind[:1] in (["under"], ["beneath"], ["going"], ["through"], ["passing"], ["to"], ["fit"]):
        return True
    pulleys = {k for m in scene.of("pulley", "pulleys") for k in range(m.i, m.j)}
    place = behind[:1] in (["in"], ["at"]) and not _SHEATH.isdisjoint(behind)
    near = any(abs(k - mention.i) <= _NEAR or 0 <= k - mention.j <= _NEAR for k in pulleys)
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    return place or near or not _SHEATH.isdisjoint(lead) or "moving" in behind


_NEAR = 5  # words
_SHORT, _FAR = 1, 5  # words from a denial to what it denies
_SHEATH = frozenset(["sheath", "pulley", "canal", "tunnel", "space", "room", "fit", "splint", "skin", "joint", "fist"])


def _beside_gap(scene: Scene, mention: Mention) -> bool:
    """'no gap under tension' tells of a test; 'no gap, although it is under tension' tells of the repair."""
    first, last = scene.part(mention.i)
    said = scene.word_before(mention.i) in _LIES  # 'none was under tension and there was no gap'
    apart = next((k for k in range(mention.j, last) if said and scene.page.words[k] == "and"), last)
    return any(first <= m.i < apart for m in scene.of("gap"))


_LIES = frozenset(["was", "were", "is", "are", "lay", "lies"])
