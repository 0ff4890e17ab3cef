"""What a word for sewing says of a tendon: that it was repaired, that it was left, or nothing of this day's work."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.rules.deeds.cut_away import WAS
from notereader.reader.rules.deeds.denied_deeds import (
    answered_no,
    but_otherwise,
    denied_below,
    none_needed,
    noun_alone,
    only_required,
    weighed_and_left,
)
from notereader.reader.rules.deeds.other_days import of_another_day
from notereader.reader.rules.deeds.spoken_of_repairs import PUT_OFF, found_broken, never_made
from notereader.reader.scene import Scene
from notereader.reader.standing.negation import too_much_for

_INSTEAD = (["rather", "than"], ["instead", "of"])
_SEWN_ONES = frozenset(["sutured", "repaired", "sewn", "mended"])
_SUTURE = (["suture"], ["sutures"])
_MEETS = frozenset(["brought", "put", "came", "come"])
_HOLDING = frozenset(
    ["intact", "holding", "sound", "whole", "solid", "held", "good", "parted", "ruptured", "failed", "dehisced"]
)


def sewing_told(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """Return what a word for sewing says of a tendon: 'repaired', 'left' where it is denied, 'tenodesed' or nothing."""
    if scene.word_before(mention.i) == "nor" or answered_no(scene, mention):
        return "left"  # 'nothing is done there, nor trimming nor suture'
    if _sewn_down(desk, scene, mention):
        return "tenodesed"
    if _only_asked(desk, scene, mention) or sewn_otherwise(scene, mention):
        return None
    if _not_any(scene, mention):
        return "left"
    if _spoken_of(scene, mention) or excised_instead(scene, mention) or _no_repair(scene, mention):
        return None
    return _unless_denied(scene, mention)


def _only_asked(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether a suture is only a blank of a form, a title answered below, or weighed against another deed."""
    if scene.words(mention.i, mention.j) == ["repair"] and _left_blank(scene, mention):
        return True
    if weighed_and_left(scene, mention) or denied_below(desk, scene, mention):
        return True
    return scene.words(max(scene.sentence.i, mention.i - 2), mention.i) in _INSTEAD  # 'excised rather than sewn'


def _left_blank(scene: Scene, mention: Mention) -> bool:
    """'repair: ____ strands: ____ suture: ____': a form left blank."""
    return scene.next_word(mention.j) == ":" and scene.next_word(mention.j + 2) == ":"


def _not_any(scene: Scene, mention: Mention) -> bool:
    """'We do not place any suture in it'."""
    lead = scene.words(max(scene.sentence.i, mention.i - 5), mention.i)
    return scene.words(mention.i, mention.j) in _SUTURE and lead[-1:] == ["any"] and "not" in lead


def _spoken_of(scene: Scene, mention: Mention) -> bool:
    """Tell whether the sentence tells how sewn tendons fare, or that nothing was sewn."""
    word = " ".join(scene.words(mention.i, mention.j))
    if word in _SEWN_ONES and scene.next_word(mention.j) in ("tendon", "tendons") and _named_all(scene, mention):
        return True  # 'all the sutured tendons slid'
    if word in ("repair", "repairs") and _still_holds(scene, mention):
        return True  # 'the superficialis repair was intact'
    return "nothing" in scene.words(max(scene.sentence.i, mention.i - 2), mention.i)  # 'nothing was sewn there'


def _unless_denied(scene: Scene, mention: Mention) -> str | None:
    """Return 'repaired', or what a denial before the word makes of it."""
    if only_required(scene, mention):
        return "left" if scene.negated(mention.i, mention.j) else None  # 'the nick did not require suture'
    denied = scene.negated(mention.i, mention.j, 3)
    if denied and scene.next_word(mention.j) in ("to", "onto"):
        return None  # 'the little bit on the bone I could not sew to'
    if but_otherwise(scene, mention):
        return "repaired"
    if none_needed(scene, mention):
        return None
    if _not_given(scene, mention):
        return "left"
    if denied:
        return _denied(scene, mention)
    return None if noun_alone(scene, mention) else "repaired"


def _denied(scene: Scene, mention: Mention) -> str | None:
    """'Was not sewn', 'too frayed to repair': left. The noun behind a denial of other things stands as a repair."""
    word = " ".join(scene.words(mention.i, mention.j))
    verb = word.partition(" ")[0]
    if verb in _MEETS:
        return None  # 'the FDP could not be brought together', 'was not put back'
    if verb.endswith(("ed", "sewn")) or (word == "repair" and scene.word_before(mention.i) in ("to", "not")):
        return "left"
    return "left" if too_much_for(scene.page, mention.i, scene.sentence) is not None else "repaired"


def _sewn_down(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'DIP tenodesis. ... The FDP was sewn to the edge of A4 and the periosteum': what the note calls a tenodesis."""
    behind = scene.words(mention.j, min(mention.j + _SEWN_TO, scene.sentence.j))
    down = behind[:1] in (["to"], ["onto"], ["down"]) and not _BONY.isdisjoint(behind)
    return down and "tenodesed" in desk.values_told("deed")


_SEWN_TO = 10  # words
_BONY = frozenset(["periosteum", "phalanx", "bone", "a4", "a2", "a5", "pulley", "neck"])


def _not_given(scene: Scene, mention: Mention) -> bool:
    """'It was not given a suture', 'FDP cut 30 %, not given any repair', 'did not receive a repair'."""
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 4), mention.i) if w not in ("a", "any", "been")]
    return lead[-2:-1] == ["not"] and lead[-1] in _GIVEN


_GIVEN = frozenset(["given", "get", "receive", "undergo", "have"])


def _still_holds(scene: Scene, mention: Mention) -> bool:
    """Tell whether an earlier repair is only said to be whole, 'FDS repair intact', or to have failed."""
    after = [w for w in scene.words(mention.j, min(mention.j + 4, scene.sentence.j)) if w not in WAS]
    return bool(after) and after[0] in _HOLDING and any(0 <= mention.i - g.j <= 1 for g in scene.setting.groups)


def _named_all(scene: Scene, mention: Mention) -> bool:
    before = scene.word_before(mention.i)
    behind = scene.next_word(mention.j + 1) not in ("with", "using", "by")
    results = before in ("", ",", ";", ".", ":") and behind and _tells_results(scene)
    return results or before in ("a", "any", "the", "all", "both", "these", "each", "every", "of")


def _tells_results(scene: Scene) -> bool:
    """'Passive movement checked, repaired tendons gliding well': what became of tendons told of as sewn before."""
    return not scene.kinds.isdisjoint(("gap", "glide", "bulk", "tension"))


def _no_repair(scene: Scene, mention: Mention) -> bool:
    """'no tendon repair', 'no FDP repair was done', 'the earlier FDP repair': what was not done, or not today."""
    named = {k for m in scene.of("tendon", "digit") for k in range(m.i, m.j)}
    k = mention.i - 1
    while k >= scene.sentence.i and (k in named or scene.page.words[k] in _KIND_OF_REPAIR):
        k -= 1
    before = scene.words(max(scene.sentence.i, k), k + 1)
    broken = scene.words(max(scene.sentence.i, k - 2), k + 1)
    if ("rupture", "of") in pairwise(broken):
        return True  # 'rupture of the FDP repair'
    noun = scene.page.words[mention.j - 1] in ("repair", "repairs")
    if noun and found_broken(scene.words(mention.j, min(mention.j + 7, scene.sentence.j))):
        return True  # 'FDP repair found pulled apart'
    opens = mention.i <= scene.sentence.i + 1
    reach = scene.sentence.j if opens else min(mention.j + 9, scene.part(mention.i)[1])
    if noun and not PUT_OFF.isdisjoint(scene.words(mention.j, reach)):
        return True  # 'FDP repair of the ring finger was postponed', 'Repair of the FDS, both slips cut, was declined'
    if never_made(scene, mention.j):
        return True  # 'end to end suture of the FDP was out of the question'
    return before in (["no"], ["without"]) or (noun and of_another_day(scene, k + 1, mention.j))


_KIND_OF_REPAIR = frozenset(["tendon", "flexor", "direct", "primary"])


def sewn_otherwise(scene: Scene, mention: Mention) -> bool:
    """'The FDP was not repaired with the same core as the ring', 'with six strands': it was, in another way."""
    behind = scene.words(mention.j, mention.j + 5)
    likened = any(a in _MEANS and "same" in behind[n + 1 : n + 3] for n, a in enumerate(behind[:2]))
    means = scene.of("stitch", "strandword", "looped")
    likened = likened or (behind[:1] != [] and behind[0] in _MEANS and any(0 < m.i - mention.j <= 4 for m in means))
    return likened and (mention.value == "left" or scene.negated(mention.i, mention.j, 3))


_MEANS = frozenset(["with", "in", "by", "using"])


def excised_instead(scene: Scene, mention: Mention) -> bool:
    """'The FDS was excised, not repaired': what was done is told in the same breath, and is not 'left'."""
    k = mention.i - (scene.page.words[mention.i] != "not")
    denied = scene.page.words[k] == "not" and scene.word_before(k) in (",", "and", "but", "-", "(")
    return denied and any(m.j == k - 1 and m.value == "excised" for m in scene.of("deed"))
