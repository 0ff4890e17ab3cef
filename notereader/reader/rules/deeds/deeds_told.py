"""What a word for a deed says was done to a tendon, or that it says nothing of the kind here."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.rules.cuts.pieces import takes_piece_off
from notereader.reader.rules.deeds.cut_away import before_repair, of_a_stitch, sewn_next
from notereader.reader.rules.deeds.deeds_in_focus import OF_BONE
from notereader.reader.rules.deeds.denied_deeds import but_otherwise, none_needed, noun_alone, only_required
from notereader.reader.rules.deeds.grafts import into_another
from notereader.reader.rules.deeds.left_words import tells_left
from notereader.reader.rules.deeds.sewing_told import excised_instead, sewing_told, sewn_otherwise
from notereader.reader.rules.deeds.tenodeses import finger_behind, no_tenodesis, to_a_side, undone_again
from notereader.reader.scene import Scene
from notereader.reader.standing.lending import joined_into
from notereader.vocabulary.wordlists import word_list

_SHORT_OF = word_list("tendons", "short_of")
_REATTACHED = frozenset(["reattached", "re-attached"])


def deed_told(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """Return the treatment a deed word says here, or None where it says none."""
    value = mention.value
    if value == "repaired":
        return sewing_told(desk, scene, mention)
    if value == "left":
        otherwise = sewn_otherwise(scene, mention) or excised_instead(scene, mention)
        return "left" if not otherwise and tells_left(desk, scene, mention) else None
    if _names_no_deed(desk, scene, mention):
        return None
    if value == "excised" and takes_piece_off(scene, mention):
        return "trimmed"
    if only_required(scene, mention):
        return None
    if but_otherwise(scene, mention) or (value == "excised" and _gives_reason(scene, mention)):
        return value
    if none_needed(scene, mention) or scene.negated(mention.i, mention.j, 3):
        return None
    if value == "reinserted" and _with_stitches(scene, mention):
        return "repaired"
    return None if noun_alone(scene, mention) else value


def _names_no_deed(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether what reads as a deed is a test, a way of weaving, a place, a stitch or goes before a repair."""
    value = mention.value
    if value == "tenodesed":
        other = no_tenodesis(scene, mention) or undone_again(scene, mention)
        return other or bool(finger_behind(scene, mention))  # laid down by the name of the joint
    if value == "grafted":
        return _woven_into_another(scene)
    if value == "reinserted":
        return _place_of_a_result(scene, mention) or _of_the_loops(scene, mention)
    if value == "excised":
        return of_a_stitch(scene, mention) or before_repair(scene, mention)
    if value == "trimmed":
        denied = scene.word_before(mention.i) == "nor"  # 'nothing is done there, nor trimming nor suture'
        denied = denied or _shrank(scene, mention)
        return denied or before_repair(scene, mention) or sewn_next(desk, scene, mention)
    return False


def _shrank(scene: Scene, mention: Mention) -> bool:
    """'A flexor pollicis longus that had shortened by then', 'the stump has already shortened': nobody cut it."""
    k = mention.i - 1
    while k > scene.sentence.i and (scene.page.words[k] in _BY_THEN or scene.page.words[k].endswith("ly")):
        k -= 1
    of_itself = scene.page.words[k] in _HAS and scene.word_before(k) not in _SURGEONS
    return (
        scene.words(mention.i, mention.j) == ["shortened"] and of_itself and scene.next_word(mention.j) not in _OBJECTS
    )


_HAS = frozenset(["had", "has", "have"])
_BY_THEN = frozenset(["already", "since", "also", "much", "then", "retracted", "scarred", "and"])
_SURGEONS = frozenset(["i", "we", "he", "she"])
_OBJECTS = frozenset(["it", "them", "the", "both", "each", "this", "that", "its"])


def _woven_into_another(scene: Scene) -> bool:
    """'Attached to the side of the ring FDP by a Pulvertaft weave', 'woven into the middle profundus with one'."""
    if into_another(scene) or any(to_a_side(scene, m) for m in scene.of("deed")):
        return True
    return any(joined_into(scene.page, g, scene.sentence) >= 0 for g in scene.setting.groups)


def _place_of_a_result(scene: Scene, mention: Mention) -> bool:
    """'No gap was seen at the reinsertion or at the tendon repair of the middle finger': where it was looked for."""
    noun = scene.words(mention.i, mention.j) in (["reinsertion"], ["reattachment"])
    return noun and bool(scene.of("gap", "glide", "test")) and not scene.header


def _of_the_loops(scene: Scene, mention: Mention) -> bool:
    """'A six-strand Lim-Tsai, anchored 10 mm from the cut face': how far from its end a core takes hold of a tendon."""
    anchored = scene.words(mention.i, mention.j) == ["anchored"]
    lengths = (q for q in scene.quantities if q.unit == "mm" and 0 <= q.i - mention.j <= _SO_FAR)
    far = any(scene.next_word(q.j) in _FROM for q in lengths)
    return anchored and far and OF_BONE.isdisjoint(scene.said)


_SO_FAR = 2  # words: 'anchored at least 10 mm'
_FROM = frozenset(["from", "away", "behind", "back"])


def _gives_reason(scene: Scene, mention: Mention) -> bool:
    """'FDS excised - not enough room', 'resected (not repairable)': why it was done, where 'not needed' denies it."""
    behind = scene.words(mention.j, mention.j + 3)
    return behind[:1] in (["-"], ["("]) and behind[1:2] == ["not"] and behind[2:] != [] and behind[2] in _SHORT_OF


def _with_stitches(scene: Scene, mention: Mention) -> bool:
    """'The ulnar slip of FDS was reattached with a mattress suture of 4-0': to its other end, and to no bone."""
    if " ".join(scene.words(mention.i, mention.j)) not in _REATTACHED:
        return False
    group = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    sewn = any(m.i >= mention.j for m in scene.of("stitch", "material"))
    return group is not None and group.tendons == ("FDS",) and sewn and OF_BONE.isdisjoint(scene.said)
