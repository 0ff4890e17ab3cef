"""Tension and bulk of a repair."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.rules.at_last import settle_at_last
from notereader.reader.rules.behaviour import (
    about_repair,
    after_repair,
    behaving,
    foreign,
    lay_behaviour,
    names_repair,
    the_rest_here,
    told_of_several_before,
)
from notereader.reader.rules.but_for import but_for_some
from notereader.reader.rules.dealt_results import not_denied
from notereader.reader.rules.given_reasons import as_a_reason
from notereader.reader.rules.joins_before import of_another_join
from notereader.reader.rules.not_taken_away import not_taken_away
from notereader.reader.rules.sought import sought_in_vain
from notereader.reader.rules.spoken_of_repairs import never_made
from notereader.reader.rules.strangers import of_a_stranger, of_sheath_or_pulley
from notereader.reader.rules.threads import find_sizes
from notereader.reader.rules.told_apart import told_apart
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_TENSION_WORDS = word_list("quality", "tension_words")
_BULK_WORDS = word_list("quality", "bulk_words")
_NONE = frozenset(["neither", "no", "none", "nil", "n", "nothing", "absent", "0", "zero", "not"])
_OF_JOIN = word_list("quality", "of_join")
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
_NOBODY = frozenset(["none", "neither"])
_OTHERS = frozenset(["nerve", "nerves", "skin", "flap", "flaps", "artery", "vessels", "wound", "coaptation"])
_DRESSINGS = word_list("quality", "dressings")


@needs(kinds=["tension"])
def tension(desk: Desk, scene: Scene) -> None:
    """Find tension on the repair: 'no tension', 'under some tension'."""
    for mention in scene.of("tension"):
        other = foreign(scene, mention.i, mention.j) and not _beside_bone(scene, mention)
        if not scene.told(mention.i) or other or not _of_repair(desk, scene, mention):
            continue
        word = " ".join(scene.words(mention.i, mention.j))
        value = mention.value
        before = scene.word_before(mention.i)
        after = scene.words(mention.j, mention.j + 2)
        if "slack" in word.split() and _of_a_suture(scene, mention):
            continue
        if word == "under tension" and not _PUT.isdisjoint(
            scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
        ):
            continue  # 'I did not put the FCU under tension to test it'
        if word.endswith(("tense", "tight")) and not _OF_THE_BODY.isdisjoint(
            scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
        ):
            continue  # 'The wrist was not tense'
        if word == "no pull" and not _TESTED.isdisjoint(scene.words(mention.j, scene.sentence.j)):
            continue  # 'No pull on the tendon at the wrist was done'
        if before in _TAKING_OFF or (before == "take" and after[:1] == ["off"]):
            continue  # 'Avoid tension on the repair.', 'The wrist was flexed to relieve tension'
        if word == "tension" and after[:1] in (["was"], ["is"]) and not _ADJUSTED.isdisjoint(after):
            continue
        if word == "tension" and (after[:1] in (["set"], ["adjusted"], ["judged"]) or _is_set(scene, mention)):
            continue  # 'Tension set with the wrist flexed', 'I set the tension so that the tip met the index'
        if word == "tension" and after[:1] in (["by"], ["becomes"], ["became"]):
            continue  # 'Tension by traction on the muscle: no gap', 'before the tension becomes noticeable'
        behind = scene.words(mention.j, min(mention.j + 4, scene.part(mention.i)[1]))
        if not _OTHERS.isdisjoint(behind) and {"repair", "repairs", "tendon", "tendons"}.isdisjoint(behind):
            continue  # 'no tension on the nerve'
        if after[:2] == ["?", "no"] and value == "none":
            continue  # 'Tension free? No.'
        if "more" in scene.words(mention.i - 1, mention.j) and after[:1] == ["than"]:
            continue  # 'no more tension than was unavoidable'
        if not _COULD_NOT.isdisjoint(pairwise(behind)) or never_made(scene, mention.j):
            continue  # 'A tension-free repair was not possible', 'suture without tension was out of the question'
        if _did_not_meet(scene, mention):
            continue
        if after[:1] in (["once"], ["only"]):
            continue  # 'tension-free once the wrist was flexed'
        if scene.page.words[mention.j - 1].endswith("ght") and _of_the_sheath(scene, mention):  # or 'tlght' of a scan
            continue
        if after[:1] == ["enough"]:
            continue  # 'snags, not tight enough to redo'
        sought = sought_in_vain(desk, scene, mention)
        if word == "tension" and before in ("for", "about") and not sought:
            continue  # 'moved for tension: cascade restored', 'when in doubt about tension flex the wrist'
        if word == "tension" and before in _TENSION_WORDS:
            continue
        if word in ("tension", "any tension"):
            value = "none" if scene.negated(mention.i, mention.j) and not not_taken_away(scene, mention.i) else value
            if word == "any tension" and value == "none" and not scene.negated(mention.i, mention.j):
                continue
            free = after[:1] == ["free"] or after == ["-", "free"]  # not 'tension -> slight, accepted'
            if word == "tension" and value == "present" and free:
                value = "none"
        elif not_taken_away(scene, mention.i):
            pass  # 'Flexing the wrist did not abolish the tension on it'
        elif value == "present" and scene.negated(mention.i, mention.j, _SHORT if word.endswith("tight") else _FAR):
            value = "none"  # 'did not gap and was tight' is tight
        if value == "none" and mention.value == "present" and as_a_reason(scene, mention):
            continue  # 'A2 was not closed because of tension'
        if word.startswith("without") and before == "not":
            value = "present"  # 'not without tension'
        if _of_nobody(scene, mention):
            value = "none"  # 'none of the five tendon repairs was under tension'
        if word == "tension" and scene.words(mention.j, mention.j + 2) in (["on", "neither"], ["in", "neither"]):
            value = "none"
        asked = scene.next_word(mention.j) == "?"  # 'Tight? n'
        if (
            word in _PULLS
            and not asked
            and not names_repair(scene)
            and (_MEETING | _JOIN_NOUNS).isdisjoint(scene.words(*scene.part(mention.i)))
        ):
            continue
        answer = scene.answer(mention.j)
        if answer == "":
            continue
        if answer is not None and word in ("tension", "under tension"):
            value = "none" if answer in _NONE else "present"
        value = "none" if sought or _said_to_be_none(scene, mention) else value
        value = "present" if value == "none" and but_for_some(scene, mention) else value
        if word in ("under tension", "with tension") and _beside_gap(scene, mention):
            continue
        answers, label = told_apart(desk, scene, mention)
        for each in answers:
            said = "present" if each.yes else "none"
            lay_behaviour(desk, scene, each.targets, "tension", said, each.i, each.j, f"tension {said}")
        if label:
            continue
        if value == "none" and of_sheath_or_pulley(scene, mention.i):
            continue
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
    none = not _NONE.isdisjoint(scene.words(mention.j, min(mention.j + _TOLD_WITH, scene.sentence.j)))
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


def _of_a_thread(scene: Scene, mention: Mention) -> bool:
    """'Nothing thicker would go in', 'no thicker needle': what there was no room for, not the finished repair."""
    lead, after = scene.word_before(mention.i), scene.next_word(mention.j)
    return (lead in ("nothing", "anything", "something") and after != "than") or after in _THREAD_NOUNS


_THREAD_NOUNS = frozenset(["suture", "sutures", "thread", "threads", "stitch", "needle", "material", "gauge", "nylon"])


def _of_nobody(scene: Scene, mention: Mention) -> bool:
    """'None of the five repairs was under tension', but not 'neither repair gapped and both were bulky'."""
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    spots = [n for n, word in enumerate(lead) if word in _NOBODY]
    return bool(spots) and "and" not in lead[spots[-1] :]


def _said_to_be_none(scene: Scene, mention: Mention) -> bool:
    """'Bulk 0.', 'Tension on FCR join: 0', 'tension nil': a sign for none behind the word or its label."""
    words, last = scene.page.words, scene.sentence.j
    if _was_nil(scene, mention):
        return True
    for k in range(mention.j, min(mention.j + _LONG_LABEL, last)):
        if words[k] in _ZERO and (k == mention.j or words[k - 1] in (":", "=")):
            return scene.next_word(k + 1) in ("", ".", ",", ";")
    return False


def _was_nil(scene: Scene, mention: Mention) -> bool:
    """'Tension on the repair, with the wrist straight, was nil', 'tension at the join was none': the verb's answer.

    What stands between is where and when it was looked for, and tells no other finding.
    """
    words, last = scene.page.words, scene.sentence.j
    verb = next((k for k in range(mention.j, last - 1) if words[k] in ("was", "is") and words[k + 1] in _NIL), last)
    between = scene.words(mention.j, verb)
    closed = verb < last and scene.next_word(verb + 2) in ("", ".", ",", ";", "and")
    others = any(mention.j <= m.i < verb for m in scene.of("gap", "glide", "bulk"))
    closed = closed and ("," not in between or between[-1] == ",")  # not 'tension slight, blood loss was nil'
    return closed and not others and _VERBS.isdisjoint(between) and ";" not in between


_NIL = frozenset(["nil", "none", "zero", "absent"])
_VERBS = frozenset(["was", "were", "is", "and", "but"])
_ZERO = frozenset(["0", "nil", "zero"])
_LONG_LABEL = 7  # words


def _beside_gap(scene: Scene, mention: Mention) -> bool:
    """'no gap under tension' tells of a test; 'no gap, although it is under tension' tells of the repair."""
    first, last = scene.part(mention.i)
    said = scene.word_before(mention.i) in _LIES  # 'none was under tension and there was no gap'
    apart = next((k for k in range(mention.j, last) if said and scene.page.words[k] == "and"), last)
    return any(first <= m.i < apart for m in scene.of("gap"))


_LIES = frozenset(["was", "were", "is", "are", "lay", "lies"])


_TO_PASS = frozenset(["allow", "admit", "let", "accommodate", "pass"])


def _closes_a_dressing(scene: Scene, mention: Mention) -> bool:
    """'Jelonet, gauze, bulky', 'wet-to-dry, bulky': a list of dressings, and no repair named in it."""
    first = scene.part(mention.i)[0]
    lead = scene.words(max(scene.sentence.i, first - _LIST_BEFORE), mention.i)
    return not scene.setting.groups and not _DRESSINGS.isdisjoint(lead)


_LIST_BEFORE = 6  # words


def _only_feared(scene: Scene, mention: Mention) -> bool:
    lead = scene.words(max(scene.sentence.i, mention.i - _LIST_BEFORE), mention.i)
    return not {"would", "might", "could"}.isdisjoint(lead) and not {"add", "adding", "mean"}.isdisjoint(lead)


def _slim_denied(scene: Scene, mention: Mention) -> bool:
    """'I will not pretend that it is slim', 'nobody would say it is slim'."""
    return not _DENYING.isdisjoint(scene.words(scene.part(mention.i)[0], mention.i))


_DENYING = frozenset(["not", "never", "nobody", "hardly", "pretend", "cannot", "wouldn't", "can't"])


@needs(kinds=["bulk"])
def bulk(desk: Desk, scene: Scene) -> None:
    """Find the bulk of the repair: 'not bulky', 'slim repair', 'bulky'."""
    if not (desk.repairable() or scene.setting.focus):
        return
    found = [m for m in scene.of("bulk") if scene.told(m.i) and not foreign(scene, m.i, m.j)]
    for mention in found:
        word = " ".join(scene.words(mention.i, mention.j))
        value = mention.value
        if (
            word in _BULK_WORDS
            and not names_repair(scene)
            and not set(scene.words(scene.sentence.i, scene.sentence.j)) & {"join", "repair", "junction"}
            and not scene.of("gap", "test", "glide")
        ):
            continue
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        if word in _OF_JOIN and not words & _JOIN_NOUNS:
            continue
        if word in _OF_JOIN and scene.word_before(mention.i) in ("this", "such") and scene.of("tendon", "digit"):
            continue  # 'in this slender small finger FDP'
        if word.endswith("thick") and find_sizes(scene) and not names_repair(scene):
            continue  # 'a 3-0 was opened but was too thick'
        if word == "thicker" and _of_a_thread(scene, mention):
            continue
        if word == "lies flat" and scene.word_before(mention.i) == "tendon":
            continue  # 'the button held, the tendon lies flat': in its bed, of its repair nothing is told
        if word.endswith("flat") and scene.words(*scene.part(mention.i))[:2] == ["the", "button"]:
            continue  # 'The button sat flat'
        if (
            value == "present"
            and scene.word_before(mention.i) == "less"
            and "than" in scene.words(mention.j, mention.j + 3)
        ):
            continue  # 'less bulky than I feared' is not bulky, and not slim either
        if word == "bulk" and scene.word_before(mention.i) in ("additional", "extra", "more", "added", "further"):
            continue  # 'the additional bulk was not thought justified'
        if word == "bulk" and not _TO_PASS.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 3), mention.i)):
            continue  # 'to allow the bulk of the repairs through, A2 was vented'
        if value == "present" and not after_repair(desk, scene):
            continue  # 'the end thick and soft' of a tendon not yet sewn
        answer = scene.answer(mention.j)
        after = scene.next_word(mention.j)
        opens = mention.i == scene.sentence.i or scene.page.breaks[mention.i] >= Break.LINE
        if word == "bulk" and opens and after in ("", ".", ";"):
            continue  # 'Bulk ***.': a blank nobody filled in
        if word == "bulk" and after == ":" and any(m.i > mention.j for m in found):
            continue  # 'Bulk: acceptable, not bulky'
        if word == "bulk" and after == "of" and not words & _JOIN_NOUNS:
            continue  # 'the bulk of the muscle'
        covering = after in _DRESSINGS or _closes_a_dressing(scene, mention)  # 'Dressing bulky.', 'Jelonet, bulky'
        if word == "bulk" and _only_feared(scene, mention):
            continue  # 'none round the ring, where it would only add bulk'
        if answer == "" or covering or (after == "for" and scene.word_before(mention.i) == "too"):
            continue
        answers, label = told_apart(desk, scene, mention)
        for told in answers:
            said = "present" if told.yes else "none"
            lay_behaviour(desk, scene, told.targets, "bulk", said, told.i, told.j, f"bulk {said}")
        if label:
            continue
        denied = answer is None and scene.negated(mention.i, mention.j) and not not_denied(desk, scene, mention)
        denied = denied and not not_taken_away(scene, mention.i)
        if value == "present" and (answer in _NONE or denied):
            value = "none"
        if value == "none" and mention.value == "present" and as_a_reason(scene, mention):
            continue  # 'A peripheral suture was not placed because of bulk'
        if value == "none" and word.endswith("slim") and _slim_denied(scene, mention):
            value = "present"
        none = _of_nobody(scene, mention) or _said_to_be_none(scene, mention) or sought_in_vain(desk, scene, mention)
        if word == "neither bulky" or none:
            value = "none"  # 'neither of the two profundus sutures was bulky', 'none bulky'
        value = "present" if value == "none" and but_for_some(scene, mention) else value
        on_bone = (word.endswith("flat") and scene.words(mention.j, mention.j + 3)[-1:] == ["bone"]) or scene.words(
            mention.j, mention.j + 2
        ) == ["on", "bone"]
        if on_bone or (word.endswith("flat") and {"edges", "edge", "ends"} & set(scene.words(*scene.part(mention.i)))):
            continue
        if value == "none" and of_sheath_or_pulley(scene, mention.i):
            continue
        targets = behaving(desk, scene, mention.i, mention.j)
        if value == "none":
            settle_at_last(desk, scene, targets, "bulk", mention.i)
        lay_behaviour(desk, scene, targets, "bulk", value, mention.i, mention.j, f"bulk {value}")
