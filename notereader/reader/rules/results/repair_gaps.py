"""Whether a gap is that of a finished repair, or of a nerve, a wound, the sheath, or ends not yet sewn."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.deeds.other_days import OLD
from notereader.reader.rules.results.behaviour import after_repair, foreign
from notereader.reader.rules.results.gaps_in_nerves import left_in_nerve
from notereader.reader.rules.results.joins_before import of_another_join
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_IS_REPAIR_GAP_WORDS = word_list("quality", "is_repair_gap_words")
_JOIN_NOUNS = word_list("quality", "join_nouns")
_OF_SHEATH = word_list("quality", "openings_of_others")
_PARTED = frozenset(
    ["opens", "opens by", "opens up", "parts", "parts by", "opened", "opened up", "parted", "came apart", "gave"]
)
_SHUT = frozenset(["stayed shut", "stayed closed", "remained closed", "stayed together", "held together"])
_HELD_WITH = frozenset(["with", "by", "using", "in", "until", "while", "for"])
_OLD_REPAIR = frozenset(
    (old, repair)
    for old in OLD
    for repair in ("repair", "repairs", "suture", "sutures", "tenorrhaphy", "join", "stitch", "stitches")
)
_WIDEST = 6.0  # mm; what opens by more is no gap of a repair
_LYING_APART = 10.0  # mm; no finished repair gaps by so much and is called one


def a_little(scene: Scene, mention: Mention) -> bool:
    """'With a firm pull the ends parted a little'."""
    behind = scene.words(mention.j, mention.j + 2)
    ends = not _JOINED.isdisjoint(scene.words(scene.part(mention.i)[0], mention.i))
    return ends and (behind[:1] in (["slightly"], ["visibly"]) or behind in (["a", "little"], ["a", "touch"]))


_JOINED = frozenset(["ends", "repair", "join", "junction", "repairs"])


def _wide(scene: Scene, q: Quantity, mention: Mention) -> bool:
    """'parted 1 mm', 'opened by half a millimetre': how far the ends of a repair came apart."""
    return q.unit == "mm" and q.high is not None and q.high <= _WIDEST and 0 <= q.i - mention.j <= 2


def near_gap(scene: Scene, i: int, j: int, mention: Mention) -> bool:
    """Tell whether words i to j stand so close to a gap that they may measure it."""
    far = _LONG_PLACE if scene.words(mention.i, mention.j) == ["opening"] else _NEAR_BEHIND
    return -4 <= mention.i - j <= 3 or 0 <= i - mention.j <= far


_NEAR_BEHIND = 4  # words
_LONG_PLACE = 8  # words


def _left_shut(scene: Scene, mention: Mention) -> bool:
    """'A2 was intact and I did not open it', 'we did not open A4': what was left closed, and no join that held."""
    if mention.value != "none" or scene.page.words[mention.j - 1] not in ("open", "opened"):
        return False
    if any(m.j == mention.i for m in scene.of("pulley", "pulleys")) or scene.word_before(mention.i) in _SHEATHS:
        return True  # 'A2 did not open widely enough and was vented'
    object_behind = scene.next_word(mention.j) in _OBJECTS or any(m.i - mention.j in (0, 1) for m in scene.of("pulley"))
    return object_behind or scene.word_before(mention.i) in ("i", "we", "to")


_SHEATHS = frozenset(["pulley", "pulleys", "sheath", "retinaculum", "canal", "tunnel", "wound", "skin"])
_OBJECTS = frozenset(["it", "them", "this", "that", "these", "those", "any", "either", "the", "its"])


def _of_a_joint(scene: Scene, mention: Mention) -> bool:
    """'With a pull on the pulp the joint did not open': how a joint holds, which a wire or an anchor may bridge."""
    k = mention.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _VERB_LEADS:
        k -= 1
    joint = scene.page.words[k - 1] in ("joint", "joints") or any(m.j == k for m in scene.of("joint"))
    leads = scene.words(max(scene.sentence.i, k - _TO_JOINT), k)
    return joint and k > scene.sentence.i and _MOVED.isdisjoint(leads)


_VERB_LEADS = frozenset(["did", "does", "has", "had", "would", "could", "not", "never", "itself"])
_TO_JOINT = 4  # words: 'on moving the DIP joint'
_MOVED = frozenset(["of", "on", "in", "to", "moving", "extending", "bending", "flexing", "straightening", "with", "at"])


def _bridging(scene: Scene, mention: Mention) -> bool:
    """'I spanned the gap with a length of palmaris': what a graft lies in."""
    lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i + 1)
    return not _BRIDGES.isdisjoint(lead)


_FILLED = frozenset(["bridged", "spanned", "grafted"])
_BRIDGES = frozenset(["bridged", "spanned", "filled", "bridge", "span", "fill", "bridging", "spanning", "filling"])


def is_repair_gap(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """A gap of a nerve, a wound, or between ends before the repair is none of the repair's."""
    if foreign(scene, mention.i, mention.j) or scene.sentence.section in ("indication", "diagnosis"):
        return False
    if _of_another_thing(desk, scene, mention) or _lay_between_ends(desk, scene, mention):
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    if word in _SHUT:
        return _stayed_shut(desk, scene, mention)
    if word == "opening":
        return _opening_of_repair(desk, scene, mention)
    if word in _PARTED:
        return _repair_parted(desk, scene, mention)
    return bool(desk.repairable() or scene.setting.focus)


def _of_another_thing(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether what gaped or did not is a nerve, the skin, a pulley, a sheath or a line of a form."""
    words, word = scene.said, " ".join(scene.words(mention.i, mention.j))
    if words & {"epineurium", "nerve", "skin", "flap"} and not words & {"repair", "tendon", "repairs"}:
        return True
    if word == "nothing opened" and {"vented", "released"} & set(scene.words(mention.j, mention.j + 4)):
        return True  # 'nothing opened, nothing vented' tells of pulleys
    if word == "gap" and any(m.j <= mention.i and mention.i - m.j <= 6 for m in scene.of("knotword")):
        return True  # 'knot sunk into the tendon gap'
    if _left_shut(scene, mention) or _answers_a_form(scene, mention) or _in_another_thing(scene, mention):
        return True
    if _of_a_joint(scene, mention) or left_in_nerve(desk, scene, mention):
        return True
    return mention.value == "none" and of_another_join(desk, scene, mention)


def _lay_between_ends(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether a gap lay between the ends before they were sewn, or in an earlier repair."""
    if not _OLD_REPAIR.isdisjoint(pairwise(scene.words(scene.sentence.i, mention.j))):
        return True  # 'the old repair had pulled apart with a 2 cm gap'
    if any(
        q.unit == "mm" and (q.low or 0) > _LYING_APART and near_gap(scene, q.i, q.j, mention) for q in scene.quantities
    ):
        return True  # 'a 15 mm gap lay between the stumps': how far they lay apart
    if not _FILLED.isdisjoint(scene.words(mention.j, scene.sentence.j)) or _bridging(scene, mention):
        return True  # 'a gap of 4 cm was bridged with the palmaris longus'
    if _drawn_together(scene, mention):
        return True
    between = scene.words(mention.j, mention.j + 1) == ["between"]
    if not between and scene.page.words[mention.i] != "ends":
        return False
    words = scene.said
    if between and "before" in words and (mention.value == "seen" or "closed" in words):
        return True
    closed = mention.value == "none" and after_repair(desk, scene)  # 'no gap between the ends'
    told_of_ends = " ".join(scene.words(mention.i, mention.j)).startswith("ends ")
    return not closed and (told_of_ends or (between and not words & _IS_REPAIR_GAP_WORDS))


def _stayed_shut(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'The join stayed shut', but not 'the ends were held together with a clip', 'A2 stayed closed'."""
    if not _HELD_WITH.isdisjoint(scene.words(mention.j, mention.j + 1)):
        return False  # 'The ends were held together with a clip': before they were sewn
    subject = scene.owner(mention.i, mention.j)
    return (subject is None or subject.kind not in ("pulley", "pulleys")) and after_repair(desk, scene)


def _repair_parted(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'The repair parted by 1 mm', 'it opened slightly on extension': told of a repair by its width or by the test."""
    if any(_wide(scene, q, mention) for q in scene.quantities):
        tendons = {k for g in scene.setting.groups if g.tendons for k in range(g.i, g.j)}  # 'the latter opened by 1 mm'
        here = scene.part(mention.i)
        # 'The repair parted by 1 mm and caught on A2': told of the repair, whatever pulley follows
        last = mention.i if _join_before(scene, here[0], mention.i) else here[1]
        pulleys = [m for m in scene.of("pulley", "pulleys") if m.i not in tendons and here[0] <= m.i < last]
        return after_repair(desk, scene) and not pulleys
    tested = scene.of("test") or none_did(scene, mention) or not _BY_TEST.isdisjoint(scene.said)
    if not (tested or a_little(scene, mention)) or scene.of("pulley"):
        return False
    return bool(desk.repairable())


_BY_TEST = frozenset(["extension", "straighten", "bend", "pull", "fist"])


def _in_another_thing(scene: Scene, mention: Mention) -> bool:
    """'The gap in the sheath was 8 mm', 'no gap left in the pulley', 'no gap remained in the volar plate'."""
    behind = scene.words(mention.j, min(mention.j + _SHORT_WAY, scene.part(mention.i)[1]))
    at = next((n for n, word in enumerate(behind) if word in ("in", "of")), None)
    if at is None or not _REMAINS.issuperset(behind[:at]):
        return False
    k = mention.j + at + 1
    pulley = any(0 <= m.i - k <= 1 for m in scene.of("pulley"))
    return pulley or not _GAPPING.isdisjoint(behind[at + 1 : at + 5])


_SHORT_WAY = 9  # words
_REMAINS = frozenset(["left", "remaining", "remained", "remains", "was", "is", "seen", "visible", "found", "at", "all"])
_GAPPING = _OF_SHEATH | word_list("quality", "gapping_things")


def _join_before(scene: Scene, first: int, i: int) -> bool:
    """Tell whether a repair or the ends of one stand right before word i: 'the junction had opened by 1 mm'."""
    k = i - 1
    while k > first and scene.page.words[k] in _JUST:
        k -= 1
    return k >= first and scene.page.words[k] in _JOINED


_JUST = frozenset(["had", "has", "just", "then", "also", "again", "now", "still", "line", "site"])
_BY_SEWING = frozenset(
    ["suture", "sutures", "stitch", "stitches", "throw", "throws", "running", "another", "one", "two", "extra", "more"]
)


def _drawn_together(scene: Scene, mention: Mention) -> bool:
    """'The gap was closed by flexing the wrist', 'the gap before it was drawn together': the ends were to be sewn."""
    after = [w for w in scene.words(mention.j, mention.j + 8) if w not in _BEING]
    if after[:1] == ["before"] and not _TO_BE_SEWN.isdisjoint(after[1:]):
        return True
    return after[:1] == ["closed"] and after[1:2] in _BY_MOVING and not _BY_SEWING & set(after[2:])


_BEING = frozenset(["was", "is", "had", "has", "been", "then", "now", "could", "be", "completely", "again"])
_TO_BE_SEWN = frozenset(["drawn", "brought", "pulled", "approximated"])
_BY_MOVING = (["by"], ["with"], ["when"], ["on"], ["as"])


def _opening_of_repair(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'There was 1 mm opening at the palmar side of the FDP', 'an opening of 1 mm': its width stands beside it."""
    if not _OF_SHEATH.isdisjoint(scene.said) or not scene.kinds.isdisjoint(("pulley", "pulleys")):
        return False
    beside = (q for q in scene.quantities if q.unit == "mm" and q.high is not None and q.high <= _WIDEST)
    small = not _SMALL.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 2), mention.i))
    far = _LONG_PLACE if small else _OF_WIDTH  # 'slight opening on the dorsal face, less than a millimetre'
    near = any(0 <= mention.i - q.j <= 1 or (0 < q.i - mention.j <= far) for q in beside)
    return near and after_repair(desk, scene)


_SMALL = frozenset(["slight", "small", "tiny", "minimal", "faint"])
_OF_WIDTH = 2  # words


def none_did(scene: Scene, mention: Mention) -> bool:
    """'None of the three repairs opened up', 'neither join parted'."""
    lead = scene.words(max(scene.sentence.i, mention.i - 9), mention.i)
    start = next((k for k, word in enumerate(lead) if word in ("none", "neither")), None)
    if ("not", "one", "of") in zip(lead, lead[1:], lead[2:], strict=False):
        return True  # 'Not one of the three gapped'
    bare = [w for w in lead if w not in _KIND_OF_JOIN]
    if bare[-2:-1] == ["no"] and bare[-1] in _JOIN_NOUNS:
        return True  # 'No tendon repair opened on passive motion'
    tendons = any(g.tendons and g.j <= mention.i and mention.i - g.j <= 2 for g in scene.setting.groups)
    if start is not None and lead[start] == "none" and lead[start + 1 : start + 2] in ([","], [";"], ["."]):
        return False  # 'FPL gap none, index FDP 1 mm gap'
    if start is not None and (";" in lead[start:] or lead[start + 1 : start + 2] == ["in"]):
        return False  # 'Gap: none in FPL; index FDP 1 mm gap'
    if start is not None and lead[start + 1 : start + 2] == ["of"]:
        return True  # 'None of the four sutured tendons showed a gap'
    return start is not None and (tendons or not _JOIN_NOUNS.isdisjoint(lead[start:]))


_KIND_OF_JOIN = frozenset(["tendon", "flexor", "of", "the"])


def _answers_a_form(scene: Scene, mention: Mention) -> bool:
    """'Epitendinous: yes / no -> no' with 'Gap: ___' on the next line is no 'no gap'."""
    broken = any(scene.page.breaks[k] >= Break.LINE for k in range(mention.i + 1, mention.j))
    return broken and scene.word_before(mention.i) in (">", ":", "]", ")")
