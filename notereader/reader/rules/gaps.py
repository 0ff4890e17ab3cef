"""Gaps between the ends of a finished repair."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.behaviour import after_repair, behaving, foreign, lay_behaviour
from notereader.reader.rules.but_for import but_for_some
from notereader.reader.rules.dealt_results import not_denied
from notereader.reader.rules.gap_doubts import half_denied, not_told, then_seen
from notereader.reader.rules.joins_before import of_another_join
from notereader.reader.rules.not_taken_away import not_taken_away
from notereader.reader.rules.other_days import OLD
from notereader.reader.rules.sought import sought_in_vain
from notereader.reader.rules.told_apart import Answer, repairs_of, told_apart
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_IS_REPAIR_GAP_WORDS = word_list("quality", "is_repair_gap_words")
_JOIN_NOUNS = word_list("quality", "join_nouns")
_OF_SHEATH = word_list("quality", "openings_of_others")
_OPENINGS = frozenset(
    [
        "opens",
        "opens by",
        "opens up",
        "parts",
        "parts by",
        "opened",
        "opened up",
        "gaping",
        "gape",
        "gapes",
        "parted",
        "came apart",
        "gave",
        "pulled it apart",
        "pulled it apart by",
        "pulled them apart",
        "pulled the repair apart",
        "pulled the ends apart",
        "drew it apart",
        "drawn it apart",
        "drew the repair apart",
    ]
)
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
_WHERE = frozenset(["at", "the", "bone", "repair", "join", "site"])
_NOUGHT = frozenset(["0", "zero", "nil", "no", "none"])
_TESTING = frozenset(["test", "testing", "tests", "check", "checking", "assessment", "measurement"])
_ASKING = frozenset([":", "=", "-"])
_NONE = frozenset(["no", "none", "nil", "n", "nothing", "absent"])


_LOOKED_FOR = tuple(["and", verb, "none"] for verb in ("saw", "found", "had"))
_GONE = (
    ["there", "was", "none"],
    ["there", "was", "nothing"],
    ["was", "none", "left"],
    *(["again", mark, said] for mark in (",", ":", "-") for said in ("nothing", "none", "nil", "0", "shut", "closed")),
)
_RECHECKED = frozenset(["recheck", "rechecked", "retest", "retested", "repeated"])


@needs(words={"none", "nothing", "again", "longer"} | _RECHECKED)
def gap_gone(desk: Desk, scene: Scene) -> None:
    """'A gap of 1 mm opened. One more throw, and on repeating the test there was none.': the last test decides."""
    words = scene.page.words
    within_it = range(scene.sentence.i, scene.sentence.j)
    spot = next((k for k in within_it if words[k : k + 3] in _GONE and _closes(scene, k + 3)), None)
    spot = spot if spot is not None else _rechecked(scene)
    spot = spot if spot is not None else _seen_no_more(scene)
    if spot is None or not scene.told(spot):
        return
    first = scene
    if not any(m.value == "seen" and m.j <= spot for m in scene.of("gap")):
        before = _gap_before(desk, scene)
        if before is None or any(m.i != spot for m in scene.of("gap")):
            return
        first = before
    seen = [f for f in desk.findings if f.field == "gap" and f.value == "seen" and f.order >= first.sentence.i]
    fingers = next((g.digits for g in reversed(scene.setting.groups) if g.digits and g.j <= spot), ())
    if fingers and not any(f.entry[0] in fingers for f in seen):
        # 'The gap was in the ring and not in the small, where there was none': that of another finger is not gone
        for target in (t for t in desk.repairable(fingers) if t.tendon in ("FDP", "FPL") and t.digit in fingers):
            desk.tendon(scene, target, "gap", "none", [(spot, spot + 3)], "gap none")
        return
    for target in dict.fromkeys(Target(*f.entry) for f in seen if f.order <= spot):
        desk.tendon(scene, target, "gap", "none", [(spot, spot + 3)], "gap none")


def _rechecked(scene: Scene) -> int | None:
    """Return the word of 'recheck 0', 'retested: none'."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] not in _RECHECKED or scene.word_before(k) in ("not", "never", "no"):
            continue
        at = next((n for n in range(k + 1, min(k + 4, scene.sentence.j)) if words[n] not in _MARKS), k)
        if words[at] in _NOUGHT - {"no"} and scene.next_word(at + 1) in ("", ".", ",", ";", ")"):
            return k
    return None


def _seen_no_more(scene: Scene) -> int | None:
    """Return the word of 'after two more bites I could no longer see one', where only a repair is spoken of."""
    words = scene.page.words
    if not scene.kinds.isdisjoint(_OTHERS):
        return None
    places = (k for k in range(scene.sentence.i, scene.sentence.j) if words[k : k + 2] == ["no", "longer"])
    return next((k for k in places if not _SEEN.isdisjoint(scene.words(k + 2, min(k + 5, scene.sentence.j)))), None)


_SEEN = frozenset(["see", "seen", "visible"])
_OTHERS = ("structure", "sided", "bundle", "anynerve", "anyartery", "bone")
_MARKS = frozenset([":", ",", "-", ">", "="])


def _closes(scene: Scene, k: int) -> bool:
    """'Pulled again: none seen', but not 'The wound was washed again, nothing else', 'Bled again: closed by a clip'."""
    if scene.page.words[k - 1] in ("shut", "closed"):
        return scene.next_word(k) in ("", ".", ",", ";") and scene.kinds.isdisjoint(_OTHERS)
    return scene.next_word(k) not in ("else", "done", "more", "further", "added")


def _gap_before(desk: Desk, scene: Scene) -> Scene | None:
    """Return the sentence, at most three back in the paragraph, that told of a gap."""
    before = desk.scene_before(scene)
    for _ in range(3):
        if before is None or before.sentence.block != scene.sentence.block:
            return None
        if any(m.value == "seen" for m in before.of("gap")):
            return before
        before = desk.scene_before(before)
    return None


def _denied_at_the_end(scene: Scene, mention: Mention) -> bool:
    """'Gap on pull          N', 'gap test: passive ext -> 0': the answer stands apart, at the end of the line."""
    words, k = scene.page.words, scene.sentence.j - 1
    k -= words[k] == "."
    between = scene.words(mention.j, k)
    if not between or words[k] not in _NOUGHT | {"n"} or len(between) > _LONG_LABEL or "." in between:
        return False
    apart = scene.page.breaks[k] >= Break.COLUMN or scene.arrow(k - 1)
    return apart and mention.i == scene.sentence.i


_LONG_LABEL = 7  # words


@needs(kinds=["gap"])
def gap(desk: Desk, scene: Scene) -> None:
    """Find gaps of the finished repair and their width: 'no gapping', '1 mm gap on extension'."""
    mentions = [m for m in scene.of("gap") if scene.told(m.i) and _is_repair_gap(desk, scene, m)]
    for mention in mentions:
        answers, label = told_apart(desk, scene, mention)
        for told in answers:
            _lay_answer(desk, scene, told)
        if label:
            continue
        if not_told(scene, mention):
            continue
        value = mention.value
        word = " ".join(scene.words(mention.i, mention.j))
        asked = _answered_behind(scene, mention)
        closed = value == "seen" and _denied_at_the_end(scene, mention)
        if closed:
            value = "none"
        testing = scene.next_word(mention.j) in _TESTING and not closed
        if asked is None and (testing or scene.words(mention.j, mention.j + 2) == ["was", "tested"]):
            continue  # 'Gap testing was not performed'
        if word in ("any gap", "any gapping", "nor gap", "not gap"):
            if not scene.negated(mention.i, mention.j):
                continue
            value = "none"
        elif (value == "seen" and (asked or _answered(scene, mention)) in _NOUGHT) or (
            value == "seen"
            and (scene.negated(mention.i, mention.j) or _led_by_no(scene, mention))
            and not not_denied(desk, scene, mention)
            and not not_taken_away(scene, mention.i)
        ):
            value = "none"
        if value == "seen" and (_answered(scene, mention) == "" or scene.words(mention.j, scene.sentence.j) == ["/"]):
            continue  # 'Gap: -', 'Gap / test: not recorded'
        if word == "gap" and scene.next_word(mention.j) == "gone":
            value = "none"
        lead = [
            w for w in scene.words(max(scene.sentence.i, mention.i - 5), mention.i) if w not in ("a", "some", "any")
        ]
        if lead[-2:] in (["free", "of"], ["free", "from"]):
            value = "seen" if lead[-3:-2] == ["not"] else "none"  # 'was not free of a gap'
        if lead[-2:] == ["not", "without"] or (
            word.startswith(("without", "free of", "free from")) and lead[-1:] == ["not"]
        ):
            value = "seen"  # 'is not without a gap', 'was not free of a gap'
        if value == "seen" and sought_in_vain(desk, scene, mention):
            value = "none"
        if value == "seen" and (_none_did(scene, mention) or _no_more(scene, mention)):
            value = "none"  # 'None of the four tendon repairs showed a gap'
        if value == "seen" and scene.words(mention.j, mention.j + 3) in _LOOKED_FOR:
            value = "none"  # 'looked carefully for a gap and saw none'
        if _not_closed(scene, mention) or scene.words(mention.j + 1, mention.j + 3) in _NOT_WIDER:
            value = "seen"
        if scene.next_word(mention.j) in ("neither", "none") and scene.page.standing[mention.j] != "unticked":
            value = "none"  # 'traction opened neither repair'
        answer = scene.answer(mention.j)
        if answer == "":
            continue
        if answer in _NONE:
            value = "none"
        if value == "none" and but_for_some(scene, mention):
            value = "seen"
        if value == "none" and half_denied(scene, mention):
            continue
        targets = behaving(desk, scene, mention.i, mention.j)
        if "gave" in scene.words(mention.i, mention.j):  # 'Nothing gave' of a stump on bone tells of no gap
            targets = [t for t in targets if desk.treatments.get(t) != "tenodesed"]
        after_all = then_seen(scene, mention) if value == "none" else None
        if after_all is not None:
            _lay_answer(desk, scene, Answer(targets, True, after_all.i, after_all.j, after_all))
            continue
        if (
            value == "none"
            and {"looked", "assessed", "tested", "checked", "examined", "sought"}
            & set(scene.words(mention.j, mention.j + 5))
            and "not" in scene.words(mention.j, mention.j + 3)
        ):
            continue  # 'gapping was not looked for'
        widths = [
            q for q in scene.quantities if q.unit == "mm" and q.high is not None and _near_gap(scene, q.i, q.j, mention)
        ]
        behind = [q for q in widths if {";", "."}.isdisjoint(scene.words(q.j, mention.i))]  # 'A4 vented 3 mm; gap 1 mm'
        widths = behind or widths
        if value == "none" and any(q.i == mention.j and (q.low or 0) > 0 for q in widths):
            value = "seen"  # 'epi nil' above 'gap 1 mm'
        if value == "seen" and widths and widths[0].high == 0:
            value = "none"
        if value == "none" and any(q.low == 0 and q.high and q.i - mention.j <= 1 for q in widths):
            value = "seen"  # 'Gap 0-1 mm'
        denied = value == "none" and (
            word.startswith("gap") or scene.next_word(mention.j) in ("neither", "none") or _none_did(scene, mention)
        )
        if word in _OPENINGS and not widths and not denied and not _a_little(scene, mention):
            continue
        if word in _OPENINGS and _opens_a_pulley(scene, mention):
            continue
        lay_behaviour(desk, scene, targets, "gap", value, mention.i, mention.j, f"gap {value}")
        if value == "none":
            _the_excepted_did(desk, scene, mention)
        if value == "seen":
            if widths and not _AGAIN.isdisjoint(scene.words(max(scene.part(mention.i)[0], mention.i - 4), mention.i)):
                _no_longer_so_wide(desk, targets, mention.i)
            for q in widths[:1]:
                i, j = min(q.i, mention.i), max(q.j, mention.j)
                lay_behaviour(desk, scene, targets, "gap_mm", float(q.high or 0), i, j, "width of the gap")
        if value == "seen" and widths:
            _and_another(desk, scene, mention)


# 'The gap was not more than 2 mm': one was seen, and how wide it was at most.
_NOT_WIDER = [[a, b] for a in ("not", "never") for b in ("more", "quite", "over", "above", "exceeding", "wider")]


def _the_excepted_did(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'None gapped except the ring', 'no gap save in the small finger, where 1 mm opened': that one did."""
    group = next((g for g in scene.left_out if not g.tendons and (g.i >= mention.j or _gapped_first(scene, g))), None)
    lead = scene.words(max(scene.sentence.i, mention.i - 1), mention.j)
    if group is None or not (not _NOBODY.isdisjoint(lead) or ("no" in lead and _told_of_it(scene, mention, group))):
        return
    sewn = [t for t in desk.sewn(group.digits) if t.digit in group.digits]
    own = [t for t in sewn if t.tendon in ("FDP", "FPL")] or sewn
    for target in own:
        span = (min(mention.i, group.i), group.j)
        entry = (target.digit, target.tendon, target.slip)
        rule = "excepted from those without a gap"
        desk.add(scene, "repairs", entry, "gap", "seen", [span], rule, of_excepted=True)


def _told_of_it(scene: Scene, mention: Mention, group: Group) -> bool:
    """'..., save in the small finger where 1 mm opened', 'apart from 1 mm in the ring': how wide it was there."""
    if group.j <= mention.i:
        return True
    turns = not {"where", "which"}.isdisjoint(scene.words(group.j, min(group.j + 2, scene.sentence.j)))
    return turns or any(q.unit == "mm" and mention.j <= q.i < group.i for q in scene.quantities)


def _gapped_first(scene: Scene, group: Group) -> bool:
    """'Save for the ring, where a millimetre showed, there was no gap': how wide it was stands in an aside ahead."""
    end = scene.own_aside(group)
    wide = any(q.unit == "mm" and group.j <= q.i < end for q in scene.quantities)
    return wide or any(m.value == "seen" and group.j <= m.i < end for m in scene.of("gap"))


_NOBODY = frozenset(["none", "neither", "nobody"])


def _led_by_no(scene: Scene, mention: Mention) -> bool:
    """'No gap', but not 'Tension: no     Gap: yes'."""
    return scene.word_before(mention.i) in _NOUGHT - {"none"} and scene.page.breaks[mention.i] < Break.COLUMN


def _a_little(scene: Scene, mention: Mention) -> bool:
    """'With a firm pull the ends parted a little'."""
    behind = scene.words(mention.j, mention.j + 2)
    ends = not _JOINED.isdisjoint(scene.words(scene.part(mention.i)[0], mention.i))
    return ends and (behind[:1] in (["slightly"], ["visibly"]) or behind in (["a", "little"], ["a", "touch"]))


_JOINED = frozenset(["ends", "repair", "join", "junction", "repairs"])
_AGAIN = frozenset(["still", "remaining", "residual", "only"])


def _opens_a_pulley(scene: Scene, mention: Mention) -> bool:
    """'I hoped to keep A2, but it had to be opened by 4 mm': the pulley named last, and no tendon since."""
    last = max((m.j for m in scene.of("pulley") if m.j <= mention.i), default=-1)
    since = [g for g in scene.setting.groups if last <= g.i < mention.i and (g.tendons or g.generic)]
    return last >= 0 and not since and not _REPAIRS.intersection(scene.words(last, mention.i))


_REPAIRS = frozenset(["repair", "repairs", "tendon", "tendons", "suture", "junction", "join"])


def _no_longer_so_wide(desk: Desk, targets: list[Target], before: int) -> None:
    """'It gapped 2 mm. Two more bites, and there was still a gap of 1 mm.': the last test says how wide it is."""
    for t in targets:
        desk.take_back("repairs", (t.digit, t.tendon, t.slip), "gap_mm", before)


def _and_another(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'The middle finger gapped by 2 mm and the ring by 1 mm.', '..., the small finger not at all'."""
    for group in (g for g in scene.setting.groups if g.i >= mention.j and (g.digits or g.tendons) and not g.reference):
        led = [w for w in scene.words(mention.j, group.i) if w not in ("the", "left", "right")][-1:]
        if led not in (["and"], [","], [";"], ["while"], ["whereas"], ["but"]):
            continue
        targets = repairs_of(desk, scene, group)
        width = next((q for q in scene.quantities if q.unit == "mm" and q.i - group.j in (0, 1)), None)
        after = scene.words(group.j, group.j + 4)
        if width is not None and after[:1] in (["by"], scene.words(width.i, width.i + 1)):
            _lay_answer(desk, scene, Answer(targets, True, group.i, width.j, width))
        elif after[:3] == ["not", "at", "all"] or (after[:2] == ["did", "not"] and after[2:3] in (["."], [])):
            _lay_answer(desk, scene, Answer(targets, False, group.i, group.j + 2, None))


def _answered(scene: Scene, mention: Mention) -> str | None:
    """Return the word that answers 'Gap: 0', 'gap = nil'; '' where only a dash does, None where nothing is asked."""
    k = mention.j
    whose = scene.words(k, min(k + 6, scene.sentence.j))
    if whose[:1] == [","] and ":" in whose and not {"repair", "repairs"}.isdisjoint(whose):
        k += whose.index(":")  # 'Gap, repairs 1 and 2: none'
    named = scene.page.tendon_words
    ahead = range(k, min(k + 5, scene.sentence.j))
    place = next((n for n in ahead if scene.page.words[n] not in _WHERE and n not in named), k)
    if scene.words(k, k + 1) in (["at"], ["in"]) and scene.words(place, place + 1) in (["="], [":"], ["-"]):
        k = place  # 'gap at bone = zero', 'gap at FDP - none seen'
    while k < scene.sentence.j and (scene.page.words[k] in _ASKING or scene.page.standing[k] == "unticked"):
        k += 1
    if k == mention.j and _asked_again(scene, mention):
        return "none"
    if k < scene.sentence.j:
        return scene.page.words[k]
    return "" if k > mention.j and scene.page.words[k - 1] == "-" else None


def _answered_behind(scene: Scene, mention: Mention) -> str | None:
    """'Gap on passive stretch: nil', 'gap check by passive motion - none': the nought behind how it was looked for."""
    ticked = _ticked_behind(scene, mention)
    if ticked is not None:
        return ticked
    if scene.next_word(mention.j) not in _HOW_SOUGHT:
        return None
    marks = (k for k in range(mention.j + 1, min(mention.j + _LONG_LABEL + 2, scene.sentence.j)))
    mark = next((k for k in marks if scene.page.words[k] in _ANSWERS and k + 1 < scene.sentence.j), None)
    while mark is not None and scene.next_word(mark + 1) in _ANSWERS:
        mark += 1
    if mark is None or not _ends_answer(scene, mark + 2):
        return None
    return scene.next_word(mark + 1) if scene.next_word(mark + 1) in _NOUGHT else None


def _ends_answer(scene: Scene, k: int) -> bool:
    """'nil', 'none in any of the three repairs'."""
    of_all = scene.next_word(k) == "in" and scene.next_word(k + 1) in ("any", "either", "both", "all", "each")
    return of_all or scene.next_word(k) in ("", ".", ",", ";")


def _ticked_behind(scene: Scene, mention: Mention) -> str | None:
    """'Gap on passive stretch [ ] yes [x] no', 'Gap (mm) ..... 0': a nought that is ticked, or stands behind a unit."""
    words, last = scene.page.words, min(mention.j + _LONG_LINE, scene.sentence.j)
    last = next((k for k in range(mention.j, last) if words[k] in ("|", ".", ";")), last)
    if words[mention.j : mention.j + 3] == ["(", "mm", ")"]:
        k = next((k for k in range(mention.j + 3, last) if words[k] not in _ANSWERS and words[k][:2] != ".."), last)
        closes = scene.next_word(k + 1) == "" or scene.page.breaks[k + 1] >= Break.COLUMN
        return words[k] if k < last and closes and words[k] in _NOUGHT else None
    ticked = next((k for k in range(mention.j, last - 3) if words[k + 1] == "x" and words[k] in ("[", "(")), None)
    said = words[ticked + 3] if ticked is not None else ""
    marked = [k for k in range(ticked or 0, last - 1) if words[k] == "[" and words[k + 1] != "]"]
    return said if said in _NOUGHT and len(marked) <= 1 else None


_LONG_LINE = 14  # words
_HOW_SOUGHT = frozenset(["on", "at", "under", "in", "test", "check", "during", "after", "with", "when"])
_ANSWERS = frozenset([*_ASKING, ">"])


def _asked_again(scene: Scene, mention: Mention) -> bool:
    """'Gap was checked again after this on passive extension: none.': the answer closes the sentence."""
    last = scene.sentence.j - (scene.page.words[scene.sentence.j - 1] == ".")
    closes = last - 2 > mention.j and scene.words(last - 2, last)[:1] == [":"] and scene.page.words[last - 1] in _NOUGHT
    asked = scene.next_word(mention.j) in ("was", "is") and not _CHECKED.isdisjoint(scene.words(mention.j, last))
    return closes and asked and len(scene.of("gap")) == 1


_CHECKED = frozenset(["checked", "tested", "sought", "assessed", "measured", "rechecked", "retested"])


def _lay_answer(desk: Desk, scene: Scene, answer: Answer) -> None:
    said = "seen" if answer.yes else "none"
    lay_behaviour(desk, scene, answer.targets, "gap", said, answer.i, answer.j, f"gap {said}")
    if answer.yes and answer.width is not None:
        width = answer.width
        lay_behaviour(
            desk, scene, answer.targets, "gap_mm", float(width.high or 0), width.i, width.j, "width of the gap"
        )


def _wide(scene: Scene, q: Quantity, mention: Mention) -> bool:
    """'parted 1 mm', 'opened by half a millimetre': how far the ends of a repair came apart."""
    return q.unit == "mm" and q.high is not None and q.high <= _WIDEST and 0 <= q.i - mention.j <= 2


def _near_gap(scene: Scene, i: int, j: int, mention: Mention) -> bool:
    return -4 <= mention.i - j <= 3 or 0 <= i - mention.j <= 4


def _left_shut(scene: Scene, mention: Mention) -> bool:
    """'A2 was intact and I did not open it', 'we did not open A4': what was left closed, and no join that held."""
    if mention.value != "none" or scene.page.words[mention.j - 1] not in ("open", "opened"):
        return False
    if any(m.j == mention.i for m in scene.of("pulley", "pulleys")) or scene.word_before(mention.i) in _SHEATHS:
        return True  # 'A2 did not open widely enough and was vented'
    object_behind = scene.next_word(mention.j) in _OBJECTS or any(m.i - mention.j in (0, 1) for m in scene.of("pulley"))
    return object_behind or scene.word_before(mention.i) in ("i", "we", "to")


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


_SHEATHS = frozenset(["pulley", "pulleys", "sheath", "retinaculum", "canal", "tunnel", "wound", "skin"])
_OBJECTS = frozenset(["it", "them", "this", "that", "these", "those", "any", "either", "the", "its"])


def _bridging(scene: Scene, mention: Mention) -> bool:
    """'I spanned the gap with a length of palmaris': what a graft lies in."""
    lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i + 1)
    return not _BRIDGES.isdisjoint(lead)


_FILLED = frozenset(["bridged", "spanned", "grafted"])
_BRIDGES = frozenset(["bridged", "spanned", "filled", "bridge", "span", "fill", "bridging", "spanning", "filling"])


def _is_repair_gap(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """A gap of a nerve, a wound, or between ends before the repair is none of the repair's."""
    word = " ".join(scene.words(mention.i, mention.j))
    if foreign(scene, mention.i, mention.j) or scene.sentence.section in ("indication", "diagnosis"):
        return False
    if not _OLD_REPAIR.isdisjoint(pairwise(scene.words(scene.sentence.i, mention.j))):
        return False  # 'the old repair had pulled apart with a 2 cm gap'
    if any(
        q.unit == "mm" and (q.low or 0) > _LYING_APART and _near_gap(scene, q.i, q.j, mention) for q in scene.quantities
    ):
        return False  # 'a 15 mm gap lay between the stumps': how far they lay apart
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if not _FILLED.isdisjoint(scene.words(mention.j, scene.sentence.j)) or _bridging(scene, mention):
        return False  # 'a gap of 4 cm was bridged with the palmaris longus'
    if words & {"epineurium", "nerve", "skin", "flap"} and not words & {"repair", "tendon", "repairs"}:
        return False
    if _left_shut(scene, mention) or _of_a_joint(scene, mention):
        return False
    if word == "nothing opened" and {"vented", "released"} & set(scene.words(mention.j, mention.j + 4)):
        return False  # 'nothing opened, nothing vented' tells of pulleys
    if any(m.j <= mention.i and mention.i - m.j <= 6 for m in scene.of("knotword")) and word == "gap":
        return False  # 'knot sunk into the tendon gap'
    if _answers_a_form(scene, mention):
        return False
    after = scene.words(mention.j, mention.j + 3)
    if after[:1] == ["between"] and "before" in words and (mention.value == "seen" or "closed" in words):
        return False
    closed = mention.value == "none" and after_repair(desk, scene)  # 'no gap between the ends'
    if after[:1] == ["between"] and not words & _IS_REPAIR_GAP_WORDS and not closed:
        return False
    if word.startswith("ends ") and not closed:
        return False
    if _drawn_together(scene, mention) or _in_another_thing(scene, mention):
        return False
    if mention.value == "none" and of_another_join(desk, scene, mention):
        return False
    if word in _SHUT and not _HELD_WITH.isdisjoint(after[:1]):
        return False  # 'The ends were held together with a clip': before they were sewn
    if word in _SHUT:
        subject = scene.owner(mention.i, mention.j)
        return (subject is None or subject.kind not in ("pulley", "pulleys")) and after_repair(desk, scene)
    if word == "opening":
        return _opening_of_repair(desk, scene, mention)
    if word in _PARTED:
        if any(_wide(scene, q, mention) for q in scene.quantities):
            tendons = {
                k for g in scene.setting.groups if g.tendons for k in range(g.i, g.j)
            }  # 'the latter opened by 1 mm'
            here = scene.part(mention.i)
            # 'The repair parted by 1 mm and caught on A2': told of the repair, whatever pulley follows
            last = mention.i if _join_before(scene, here[0], mention.i) else here[1]
            pulleys = [m for m in scene.of("pulley", "pulleys") if m.i not in tendons and here[0] <= m.i < last]
            return after_repair(desk, scene) and not pulleys
        tested = (
            scene.of("test") or _none_did(scene, mention) or words & {"extension", "straighten", "bend", "pull", "fist"}
        )
        return (
            bool(tested or _a_little(scene, mention))
            and not any(m.kind in ("pulley",) for m in scene.mentions)
            and bool(desk.repairable())
        )
    return bool(desk.repairable() or scene.setting.focus)


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


def _no_more(scene: Scene, mention: Mention) -> bool:
    """'One stitch was added and the gap was no longer visible', 'gap gone', 'the gap had disappeared'."""
    after = [w for w in scene.words(mention.j, mention.j + 6) if w not in _BEING]
    return after[:2] == ["no", "longer"] or after[:1] in _VANISHED


def _not_closed(scene: Scene, mention: Mention) -> bool:
    """'The gap was not closed by it', 'a gap that could not be closed', 'the gap would not close'."""
    after = scene.words(mention.j, min(mention.j + 8, scene.sentence.j))
    denied = next((n for n, word in enumerate(after) if word in ("not", "never")), None)
    return denied is not None and next((w for w in after[denied + 1 :] if w not in _BEING), "") in ("closed", "close")


_BY_SEWING = frozenset(
    ["suture", "sutures", "stitch", "stitches", "throw", "throws", "running", "another", "one", "two", "extra", "more"]
)
_BEING = frozenset(["was", "is", "had", "has", "been", "then", "now", "could", "be", "completely", "again"])
_VANISHED = [["gone"], ["disappeared"], ["vanished"], ["closed"]]


def _drawn_together(scene: Scene, mention: Mention) -> bool:
    """'The gap was closed by flexing the wrist': the ends were brought together to be sewn."""
    after = [w for w in scene.words(mention.j, mention.j + 8) if w not in _BEING]
    return after[:1] == ["closed"] and after[1:2] in _BY_MOVING and not _BY_SEWING & set(after[2:])


_BY_MOVING = (["by"], ["with"], ["when"], ["on"], ["as"])


def _opening_of_repair(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'There was 1 mm opening at the palmar side of the FDP', 'an opening of 1 mm': its width stands beside it."""
    if not _OF_SHEATH.isdisjoint(scene.said) or not scene.kinds.isdisjoint(("pulley", "pulleys")):
        return False
    beside = (q for q in scene.quantities if q.unit == "mm" and q.high is not None and q.high <= _WIDEST)
    near = any(0 <= mention.i - q.j <= 1 or (0 < q.i - mention.j <= 2) for q in beside)
    return near and after_repair(desk, scene)


def _none_did(scene: Scene, mention: Mention) -> bool:
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
