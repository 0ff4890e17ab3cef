"""Whether words say that a tendon was whole, and not a share of it, a pulley or something beside it."""

from itertools import pairwise

from notereader.reader.groups import Group
from notereader.reader.page import Mention
from notereader.reader.rules.cuts.fine_lists import heads_a_list
from notereader.reader.rules.cuts.not_touched import untouched_though_cut
from notereader.reader.scene import Scene, Subject, series
from notereader.vocabulary.wordlists import word_list

_PLURALS = word_list("bearing", "plural_tendons")
_WEAK = word_list("tendons", "tells_intact_words")
_BEFORE_NO_HURT = word_list("tendons", "tells_intact_words_2")
_CLOSES_WEAK = word_list("tendons", "tells_intact_words_3") | {""}
_NO_HURT = ("no injury", "no laceration", "no cut", "no damage", "without damage")
_IN_FULL = (["in", "full"], ["in", "total"], ["in", "toto"], ["in", "continuity"], ["throughout", "its"])
_ABSENT = frozenset(["absent", "missing", "lacking", "wanting"])
_VARIANT = frozenset(["variant", "variation", "anatomical", "anatomic"])
_SOMEWHERE = frozenset(["proximally", "distally"])
_AT_FIRST = (["at", "first"], ["to", "begin"], ["on", "first"])


def tells_whole(scene: Scene, mention: Mention) -> bool:
    """Tell whether words for a whole tendon are said of one, outright or, if they are weak, right beside it.

    Weak words ('fine', 'normal', 'preserved') count only right beside the tendon; 'not intact' never.
    """
    if untouched_though_cut(scene, mention) or _of_whole_finger(scene) or _of_the_rest(scene, mention):
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    if _taken_back(scene, mention, word) or _of_a_share(scene, mention, word) or _of_something_else(scene, mention):
        return False
    if word in _NO_HURT:
        return _answers_for_tendon(scene, mention, word)
    return word not in _WEAK or heads_a_list(scene, mention) or _beside_its_tendon(scene, mention, word)


def _taken_back(scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether a word for 'whole' is denied, holds only somewhere or at first, or of a tendon that is lacking."""
    if scene.negated(mention.i, mention.j) and not word.startswith(("not", "no ", "un", "was not", "were not")):
        return True
    if scene.words(mention.i - 2, mention.i) == ["all", "but"] or (
        word.startswith("not") and _but_in_part(scene, mention)
    ):
        return True
    if scene.words(mention.j, mention.j + 3)[:2] in _AT_FIRST:
        return True
    if scene.next_word(mention.j) in _SOMEWHERE and "throughout" not in scene.said:
        return True  # 'FDS intact proximally, distally its slips were cut'
    lead = scene.words(max(scene.sentence.i, scene.part(mention.i)[0] - 5), mention.i)
    # 'its FDS was absent congenitally, not cut', 'FDS absent (normal variant)'
    return scene.next_word(mention.j) in _VARIANT or not _ABSENT.isdisjoint(lead)


def _of_a_share(scene: Scene, mention: Mention, word: str) -> bool:
    """'Most of the FDS intact', 'three quarters whole, the other quarter frayed', 'cut, whole': all its width."""
    if _of_a_part(scene, mention) or any(m.j == mention.i for m in scene.of("fraction")):
        return True
    if any(q.j == mention.i and q.unit == "%" and (q.high or 100) < 100 for q in scene.quantities):
        return True
    ends = (mention.i, mention.i - (scene.word_before(mention.i) == ","))
    return word == "whole" and any(m.j in ends for m in scene.of("hurt", "nervestate"))


def _answers_for_tendon(scene: Scene, mention: Mention, word: str) -> bool:
    """'Ulnar slip no damage', 'no injury to the FDS', 'FDS of the index, no injury.': said of a tendon by name."""
    if word == "without damage" and scene.word_before(mention.i) in ("found", "was", "were"):
        return True  # 'were visited one after another and found without damage'
    if scene.word_before(mention.i) in _BEFORE_NO_HURT or _answers_alone(scene, mention):
        return True
    named = any(g.tendons and g.j == mention.i for g in scene.setting.groups)
    if named and scene.next_word(mention.j) in ("", ".", ",", ";", ")"):
        return True
    return word != "without damage" and scene.next_word(mention.j) in ("to", "of", "in")


def _beside_its_tendon(scene: Scene, mention: Mention, word: str) -> bool:
    """'FDS fine', 'the FPL was found preserved': a weak word that closes what is said right behind a tendon."""
    subject = scene.owner(mention.i, mention.j)
    if (
        subject is None
        or subject.j > mention.i
        or not _closes(scene, mention)
        or not _of_a_name(scene, mention, subject)
    ):
        return False
    if word == "continuous" and subject.j < mention.i and scene.word_before(mention.i) not in _STAYED:
        return False  # 'FDP: 3-0 cruciate, outer continuous'
    if _past_an_aside(scene, subject.j, mention.i) > _BESIDE_NAME and not _one_pronoun(scene, mention):
        return False
    between = [m.i for m in scene.of("endword", "ends", "restored")]  # 'FDP ends trimmed 2 mm, healthy'
    return not any(subject.j <= k < mention.i for k in between)


_BESIDE_NAME = 6  # words
_STAYED = frozenset(["was", "were", "is", "are", "be", "being", "both", "still", "remained", "found", "seen", "fully"])


def _closes(scene: Scene, mention: Mention) -> bool:
    """Tell whether a word ends its statement: a stop, 'in full', the next finger or the next thing follows."""
    if scene.next_word(mention.j) in _CLOSES_WEAK or scene.words(mention.j, mention.j + 2) in _IN_FULL:
        return True
    finger = any(g.i == mention.j and g.digits for g in scene.setting.groups)  # dictated without stops
    return finger or _next_begins(scene, mention)


def _of_a_name(scene: Scene, mention: Mention, subject: Subject) -> bool:
    """Tell whether a tendon or finger is named by the subject, or before it in its list."""
    listed = series(scene, subject, mention.i)
    named = any(s.group is not None and (s.group.tendons or s.group.digits) for s in listed)
    return named or _both_of_a_finger(scene, subject.group)


def _past_an_aside(scene: Scene, i: int, j: int) -> int:
    """'The FDS, of which one might have expected as much, was fine': how many words part them but for the aside."""
    between = scene.words(i, j)
    led = between[:2] in ([",", "which"], [",", "of"], [",", "as"], [",", "contrary"])
    commas = [n for n, word in enumerate(between) if n and word == ","]
    told = any(i <= m.i < j for m in scene.of("hurt", "extent", "deed", "fraction", "slip"))
    return len(between) - commas[-1] - 1 if led and commas and not told else len(between)


def _one_pronoun(scene: Scene, mention: Mention) -> bool:
    """'That tendon she never had strong, but it is whole', 'I was wrong: it was sound': of the one tendon named."""
    first = scene.page.words[mention.i]
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    it = lead in (["it", "is"], ["it", "was"]) or (first in ("was", "is") and lead[-1:] == ["it"])
    return (
        it
        and sum(bool(g.tendons) for g in scene.setting.groups) == 1
        and not any(g.generic for g in scene.setting.groups)
    )


def _both_of_a_finger(scene: Scene, group: Group | None) -> bool:
    """'Ring: both tendons fine.': of the finger named before them."""
    if group is None or group.generic != "all":
        return False
    before = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
    return bool(before) and bool(before[-1].digits) and not before[-1].tendons


def _next_begins(scene: Scene, mention: Mention) -> bool:
    """'The ulnar slip was fine the neurovascular bundles ...', 'FPL fine median nerve cut': dictated without stops."""
    led = scene.word_before(mention.i) in ("was", "were") or scene.page.words[mention.i] in ("was", "were")
    others = any(m.i == mention.j for m in scene.of("structure", "sided", "bundle", "anynerve", "anyartery"))
    behind = scene.next_word(mention.j)
    return others or (led and behind in ("the", "closed", "i", "we", "so", "when")) or scene.arrow(mention.j)


def _but_in_part(scene: Scene, mention: Mention) -> bool:
    """'Not divided: a partial cut, two thirds of the width': what is denied is only that it is cut through."""
    partial = any(m.value == "partial" and 0 < m.i - mention.j <= _NEXT for m in scene.of("extent"))
    return partial and scene.next_word(mention.j) in (":", ",", "but", "-")


_NEXT = 4  # words


def _of_a_part(scene: Scene, mention: Mention) -> bool:
    """'Most of the FDS intact', 'the sheath of the FDP was intact', 'FDS function intact', 'thought intact'."""
    if scene.word_before(mention.i) in _NOT_ITSELF:
        return True
    group = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    if group is None:
        return _of_any(scene, mention)
    if scene.next_word(group.j) in _PLACES_ON_IT and group.j < mention.i:
        return True  # 'the FDP sheath was intact', 'FDS power intact'
    if scene.words(mention.j, mention.j + 2) == ["in", "part"] or _on_one_side(scene, mention.j):
        return True
    before = scene.words(max(scene.sentence.i, group.i - 4), group.i)
    lead = [w for w in before if w not in ("the", "its", "this", "that")]
    if lead[-1:] != ["of"] or lead[-2:-1] == []:
        return False
    others = lead[-2] in _OTHERS and _several(scene, group)
    return lead[-2] in _PLACES_ON_IT or (lead[-2] in _PARTS and not others)


def _several(scene: Scene, group: Group) -> bool:
    """'The rest of the profundi', 'the rest of the FDP tendons': the others of a kind, and no part of one."""
    return not group.digits and not _PLURALS.isdisjoint(scene.words(group.j - 1, group.j + 1))


def _of_any(scene: Scene, mention: Mention) -> bool:
    """'An intact FDP would have bent the tip': of any tendon, and not of this one."""
    return scene.word_before(mention.i) == "an" and not _WOULD.isdisjoint(scene.said)


def _on_one_side(scene: Scene, k: int) -> bool:
    """'Intact on its ulnar side': the rest was not; 'intact on both sides' is said of all."""
    behind = scene.words(k, k + 4)
    return behind[:1] in (["on"], ["along"], ["over"], ["in"]) and any(
        a in _ASPECTS and b in _SIDES for a, b in pairwise(behind[1:])
    )


_WOULD = frozenset(["would", "could", "should", "might", "will"])
_ASPECTS = frozenset(["ulnar", "radial", "deep", "dorsal", "volar", "palmar", "superficial", "far", "near", "one"])
_SIDES = frozenset(["side", "half", "aspect", "edge", "border", "surface", "part", "third"])
_NOT_ITSELF = frozenset(["function", "thought", "believed", "reported", "supposedly", "allegedly", "sensation"])
_PARTS = word_list("tendons", "parts_of_it")
_PLACES_ON_IT = word_list("tendons", "places_on_it")
_OTHERS = frozenset(["rest", "remainder"])


def _of_whole_finger(scene: Scene) -> bool:
    """'THUMB, SMALL', then '- not injured': of a finger, and of none of its tendons by name."""
    setting = scene.setting
    return setting.relabelled and not any(g.tendons or g.generic or g.digits for g in setting.groups)


def _of_the_rest(scene: Scene, mention: Mention) -> bool:
    """'UDN cut. Rest intact.': of whatever was not told of, which is not the tendon cut before."""
    lead = [w for w in scene.words(scene.sentence.i, mention.i) if w not in _STATING]
    return lead in (["rest"], ["remainder"], ["everything", "else"], ["all", "else"])


_STATING = frozenset(["the", "was", "were", "is", "are", ":", "-", "and", "seen", "found", "looked"])


def _of_something_else(scene: Scene, mention: Mention) -> bool:
    """'A2 intact over the FDP', 'a slit in A2, its two ends being spared': the pulley is what was spared."""
    if scene.word_before(mention.i) in ("branch", "branches"):
        return True  # 'Motor branch intact.'
    before = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    if before[-1:] in (["being"], ["were"], ["are"]):
        before = before[:-1]
    if before[-1:] != [] and before[-1] in _ITS_ENDS and scene.of("pulley"):
        return True
    if before[-1:] == ["("] and any(p.j == mention.i - 1 for p in scene.of("pulley")):
        return True  # 'passed beneath the oblique pulley (spared)'
    subject = scene.owner(mention.i, mention.j)
    if subject is not None and subject.j <= mention.i and _share_of(scene, subject.i):
        return True
    behind = subject is not None and subject.group is not None and subject.i >= mention.j
    return behind and scene.next_word(mention.j) in _OVER


def _share_of(scene: Scene, k: int) -> bool:
    """'Two thirds of the FPL was intact', '40 % of its FDP was whole': the rest was not."""
    shares = [m.j for m in scene.of("fraction")] + [q.j for q in scene.quantities if q.unit == "%" and q.high != 100]
    leads = [scene.words(j, k) for j in shares if 0 < k - j <= 2]
    return any("of" in lead and {"of", "the", "its"}.issuperset(lead) for lead in leads)


_ITS_ENDS = frozenset(["ends", "edges", "rims"])
_OVER = frozenset(["over", "above", "around"])


def _answers_alone(scene: Scene, mention: Mention) -> bool:
    """'FDS of the index, no injury.': all that the sentence says of the tendon it names first."""
    groups = [g for g in scene.setting.groups if g.j <= mention.i]
    alone = len(groups) == 1 and bool(groups[0].tendons) and groups[0].j == mention.i - 1
    return alone and scene.word_before(mention.i) == "," and scene.next_word(mention.j) in ("", ".")
