"""How the finished repair was tested on the table."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.owners import others
from notereader.reader.rules.results.behaviour import (
    after_repair,
    behaving,
    collective,
    denied,
    everyone,
    foreign,
    lay_behaviour,
    names_repair,
    said_of_several,
)
from notereader.reader.rules.results.glide import SAYS_GLIDE
from notereader.reader.rules.results.of_one_make import others_untested
from notereader.reader.rules.results.wrist_test import by_wrist
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_WEAK_TESTS = word_list("quality", "weak_tests")
_TEST_CONTEXT = word_list("quality", "test_context")
_OTHER_PULLS = word_list("quality", "other_pulls")
_NOT_TESTED = word_list("quality", "not_tested")
_TEST_LABELS = word_list("quality", "test_labels")
_EXAM = word_list("quality", "exam")
_EXAM_PHRASES = ("in ed", "on arrival", "on examination", "on exam")
_BEFORE_THESE = word_list("quality", "before_these")
_MOVING = word_list("quality", "moving")
_MOVED_PARTS = word_list("quality", "moved_parts")
_MOVERS = word_list("quality", "movers")
_PATIENTS = word_list("quality", "patients")
_MOVED_BY = word_list("quality", "moved_by")
_PATIENT_MOVES = word_list("quality", "patient_moves")
_MOVEMENTS = word_list("quality", "asked_movements")
_PASSIVE_ORDERS = word_list("quality", "passive_orders")
_PATIENTS_SELF = frozenset(["patient", "he", "she", "pt", "him", "her"])
_CANNOT = frozenset(["cannot", "could", "unable", "will", "may", "can", "should", "must", "never"])
_NOT_OPERATIVE = frozenset(["indication", "diagnosis", "consent", "previous", "instructions", "anaesthesia"])
_ORDER = {"active": 0, "traction": 1, "passive": 2}
_ANSWERS = {"active": "active", "patient": "active", "passive": "passive", "surgeon": "passive", "traction": "traction"}
# Words between two that tell of one test: 'pulled on the FDP under traction'.
_NEAR = 12
_RESULTS = ("gap", "glide", "bulk", "tension")


@needs(
    kinds=["test", "gap", "glide"],
    words=SAYS_GLIDE | _PATIENT_MOVES | _MOVING | _ANSWERS.keys() | {"same", "wrist", "tenodesis"},
)
def table_test(desk: Desk, scene: Scene) -> None:
    """Find how the finished repair was tested on the table; examinations before it are none."""
    mentions = [m for m in scene.of("test") if scene.told(m.i) and _is_test(desk, scene, m)]
    mentions = mentions or _answered(desk, scene)
    mentions = mentions or by_wrist(scene, _told_of_repair(desk, scene)) or _by_structure(desk, scene)
    if not after_repair(desk, scene):
        return
    if not mentions:
        _the_same(desk, scene)
        _seen_in_the_test(desk, scene)
        return
    mention = min(mentions, key=lambda m: (_ORDER[_value(scene, m)], m.i))
    value = _value(scene, mention)
    targets = _tested(desk, scene, mention)
    targets = [*targets, *(t for t in _told_behind(desk, scene, mention) if t not in targets)]
    near = [m for m in mentions if _value(scene, m) == value and abs(m.i - mention.i) <= _NEAR]
    i, j = min(m.i for m in near), max(m.j for m in near)
    lay_behaviour(desk, scene, targets, "test", value, i, j, f"{value} test on the table")


def _value(scene: Scene, mention: Mention) -> str:
    """'pulled the finger out straight' moves the joints; 'pulled on the tendon' pulls."""
    after = scene.words(mention.j, min(mention.j + 6, scene.sentence.j))
    part = not {"finger", "thumb", "digit", "it"}.isdisjoint(after[:2]) or "fingers" in after[:5]
    moves = part and "straight" in after
    if mention.value == "active" and (
        _by_another(scene, mention) or "passively" in scene.words(*scene.part(mention.i)) or _by_wrist(scene, mention)
    ):
        return "passive"
    before = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    if mention.value == "passive" and scene.page.words[mention.i] in _BY_WHOM and before[-1:] in _PATIENT_DOES:
        return "active"  # 'She bent and stretched it for me'
    if mention.value == "traction" and ("passively" in scene.said or "passive" in after):
        return "passive"  # 'Pulled through full range passively', 'pulling the finger through its passive range'
    if mention.value == "traction" and part and "through" in after[:4]:
        return "passive"  # 'pulling the finger through its range'
    bent = after[:1] == ["through"] and not _MOVED_PARTS.isdisjoint(before)  # 'each finger pulled through by hand'
    return "passive" if mention.value == "traction" and (moves or bent) else mention.value


def _by_wrist(scene: Scene, mention: Mention) -> bool:
    """'On wrist tenodesis the tip bent and straightened', 'I let the wrist flex': no patient moved the finger."""
    if scene.page.words[mention.i] == "asked":
        return False  # 'Wrist: asked him to flex against my thumb'
    if "wrist" in scene.words(max(scene.sentence.i, mention.i - 3), mention.i):
        return True
    if not (_PATIENTS.isdisjoint(scene.said) and _PATIENTS_SELF.isdisjoint(scene.said)):
        return False
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    made = "wrist" in lead and not _MADE.isdisjoint(lead)  # 'passive wrist motion makes the tip flex and extend'
    return made or "tenodesis" in scene.said


_MADE = frozenset(["makes", "made", "lets", "let", "has", "had", "brings", "brought", "causes", "caused"])
_BY_WHOM = frozenset(["bent", "bends", "flexed", "curled", "straightened"])  # of the patient, where he or she does it
_PATIENT_DOES = (["he"], ["she"], ["patient"], ["pt"])


def _by_another(scene: Scene, mention: Mention) -> bool:
    """'I flexed the finger', 'the digit was bent and straightened by the surgeon': no patient moved it."""
    before = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    after = scene.words(mention.j, min(mention.j + 6, scene.sentence.j))
    behind = after[after.index("by") + 1 :][:2] if "by" in after else []
    near = scene.words(max(scene.sentence.i, mention.i - 8), mention.j + len(after))
    if not _PATIENTS.isdisjoint(near) or not _PATIENTS_SELF.isdisjoint(near):
        return False
    return before[-1:] in (["i"], ["we"]) or not _MOVED_BY.isdisjoint(behind)


def _in_brackets_behind(desk: Desk, scene: Scene) -> bool:
    """'No gap. Glides freely. (passive)': a bracket of its own right behind what was seen."""
    words, first = scene.page.words, scene.sentence.i
    alone = words[first] == "(" and words[first + 1 : first + 2] != [] and words[first + 1] in _ANSWERS
    if not alone or scene.next_word(first + 2) not in (")", ",", "test", "range") or not scene.told(first + 1):
        return False
    return bool(desk.laid(*_RESULTS, since=first - _JUST_BEFORE, before=first))


_JUST_BEFORE = 16  # words


def _answered(desk: Desk, scene: Scene) -> list[Mention]:
    """'Tested by: [x] patient', 'POST-REPAIR CHECK: passive': a bare word behind a form's label."""
    first, last = scene.sentence.i, scene.sentence.j
    prefix = scene.sentence.prefix
    if len(prefix) == 1 and not _TEST_LABELS.isdisjoint(scene.words(*prefix[0])):
        alone = last - first <= 2 and scene.page.words[first] in _ANSWERS and scene.told(first)
        return [Mention("test", _ANSWERS[scene.page.words[first]], first, first + 1)] if alone else []
    if _in_brackets_behind(desk, scene):
        return [Mention("test", _ANSWERS[scene.page.words[first + 1]], first + 1, first + 2)]
    if last - first > 16 or _TEST_LABELS.isdisjoint(scene.words(first, first + 4)):
        return []
    words = scene.page.words
    told = [k for k in range(first + 1, last) if words[k] in _ANSWERS and scene.told(k)]
    marks = ("]", ")") if "/" in scene.words(first, last) else (":", "]", ")", "by", "|", "?")
    only = [k for k in told if words[k - 1] == "," and scene.next_word(k + 1) == "only"]  # 'Tested, passive only: ...'
    kept = [k for k in told if (words[k - 1] in marks or k in only) and "/" not in scene.words(k, last)][:1]
    if kept and words[first] in ("not", "never"):
        return []  # 'Not tested by passive motion, too fragile'
    return [Mention("test", _ANSWERS[words[k]], k, k + 1) for k in kept]


def _told_of_repair(desk: Desk, scene: Scene) -> bool:
    """Tell whether a sentence, or the next one of its paragraph, says what was seen of a repair."""
    after = desk.scene_after(scene)
    goes_on = after is not None and after.sentence.block == scene.sentence.block
    return bool(scene.of("gap", "glide") or (goes_on and after is not None and after.of("gap", "glide")))


def _by_structure(desk: Desk, scene: Scene) -> list[Mention]:
    """'passive swing: runs clear', 'I moved the thumb through its range and saw no gap', 'the fingers were extended'.

    Joints moved by another hand than the patient's, in a sentence that tells what was seen of the repair.
    """
    if scene.header or scene.sentence.section in _NOT_OPERATIVE or not _told_of_repair(desk, scene):
        return []
    first, last = scene.sentence.i, scene.sentence.j
    words = scene.words(first, last)
    if not _EXAM.isdisjoint(words) or _before_repair(words):
        return []
    for k in range(first, last):
        word, told = scene.page.words[k], scene.told(k)
        if told and word == "passive" and scene.next_word(k + 1) not in _PASSIVE_ORDERS:
            return [Mention("test", "passive", k, k + 1)]
        if told and word in _PATIENT_MOVES and _patient_moves(scene, k):
            return [Mention("test", "active", k, k + 1)]
        if told and word in _MOVING and _moves_joint(scene, k):
            return [Mention("test", "passive", k, k + 1)]
    return []


def _patient_moves(scene: Scene, k: int) -> bool:
    """'I got her to bend it', 'the patient, roused, flexed fully': the one who moves, named before, is the patient."""
    before = scene.words(max(scene.sentence.i, k - 7), k)
    who = next((w for w in reversed(before) if w in _PATIENTS_SELF or w in _MOVERS or w in ("for", "not")), "")
    return who in _PATIENTS_SELF and not any(w.endswith("n't") or w in _CANNOT for w in before)


def _moves_joint(scene: Scene, k: int) -> bool:
    """Tell whether the verb at word k moves a finger or joint, and somebody else than the patient moves it."""
    near = scene.words(max(scene.sentence.i, k - 6), min(scene.sentence.j, k + 6))
    if scene.page.words[k] == "opened" and {"closed", "bent", "curled", "flexed"}.isdisjoint(near):
        return False  # 'The finger was opened in a zigzag', 'in that finger I opened A3'
    if _MOVED_PARTS.isdisjoint(near) or not _PATIENTS.isdisjoint(near):
        return False
    lead = scene.words(max(scene.sentence.i, k - 3), k)
    ongoing = scene.page.words[k].endswith("ing")
    passive_voice = not {"was", "were", "being"}.isdisjoint(lead) and not ongoing
    moved = not _MOVED_PARTS.isdisjoint(scene.words(k + 1, k + 5))
    gerund = ongoing and lead[-1:] in (["on"], ["by"], ["after"], ["while"]) and moved
    shortened = scene.page.words[k] in _PUT and len(lead) < _LEAD and not _MOVED_PARTS.isdisjoint(lead)
    if scene.page.words[k] in _BENT:
        return gerund  # 'on extending the finger', but not 'approached by extending the wound of the finger'
    return passive_voice or gerund or shortened or not _MOVERS.isdisjoint(near) or k == scene.sentence.i


_BENT = frozenset(["extending", "flexing", "bending"])
_PUT = frozenset(["brought", "taken", "led", "carried", "extended", "stretched"])  # 'Fingers brought fully straight'
_LEAD = 3  # words


# --- whose


def _tested(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the repairs a test was of: those named beside it, else those whose result is told there or after."""
    first, last = scene.part(mention.i)
    if collective(scene, mention.i, mention.j):
        everybody = dict.fromkeys([*everyone(desk, scene, mention.i), *_seen_after(desk, scene)])
        fingers = "fingers" in scene.words(mention.i, mention.j) and "wrist" not in scene.said
        return [t for t in everybody if t.digit or not fingers]  # 'No gaps on moving the fingers'

    own = [g for g in scene.setting.groups if first <= g.i < last and not g.reference]
    tendons = [g for g in own if (g.tendons or g.generic) and _is_object(scene, mention, g)]
    if tendons and not any(g.tendons for g in tendons) and (listed := _behind_the_colon(scene, mention)):
        tendons = listed
    if tendons:
        return list(dict.fromkeys(t for g in tendons for t in behaving(desk, scene, g.i, g.j)))
    told = _with_results(desk, scene)
    if not any(g.tendons for g in own):
        told = list(dict.fromkeys([*told, *_seen_after(desk, scene)])) if told else _seen_after(desk, scene)
    if told and ":" in scene.words(mention.j, min(mention.j + 6, scene.sentence.j)):
        told = list(dict.fromkeys([*told, *_results_after(desk, scene)]))  # 'Pulled on: index gaps 1 mm. Rest no gap.'
    if told:
        return told
    later = _results_after(desk, scene) if not own else []
    if not later and not names_repair(scene):
        later = _moved(desk, scene, mention)
    return later or behaving(desk, scene, mention.i, mention.j)


def _behind_the_colon(scene: Scene, mention: Mention) -> list[Group]:
    """'Table test (pulling on each tendon): ring FDP and small FDP, no gap': those named behind the label."""
    colon = next((k for k in range(mention.j, scene.sentence.j) if scene.page.words[k] == ":"), scene.sentence.j)
    named = [g for g in scene.setting.groups if g.tendons and g.i == colon + 1 and not g.reference]
    return [g for g in named if len(g.pairs) > 1]  # of one alone its result is told, and the others' behind it


def _seen_after(desk: Desk, scene: Scene) -> list[Target]:
    """'Both fingers were then extended passively. None of the three repairs gapped.': all that were seen moving."""
    after = desk.scene_after(scene)
    if after is None or after.sentence.block != scene.sentence.block or after.of("test"):
        return []
    seen = [m for m in after.of("gap", "glide") if said_of_several(after, m.i)]
    found = [t for m in seen[:1] for t in behaving(desk, after, m.i, m.j)]
    digits = {d for g in scene.setting.groups for d in g.digits}
    return [t for t in found if not digits or t.digit in digits] if len(found) > 1 else []


def _is_object(scene: Scene, mention: Mention, group: Group) -> bool:
    """'traction on the FPL', 'FCR and FPL tested by ...': what is tested stands before, or right behind."""
    if group.j <= mention.i:
        return True
    between = scene.words(mention.j, group.i)
    if mention.value == "active":
        return between[:1] in (["of"], ["for"], ["in"])
    return len(between) <= 4 and (not between or between[0] in ("on", "of", "to", "at", "the", "both", "each", "for"))


def _with_results(desk: Desk, scene: Scene) -> list[Target]:
    """Return the tendons whose gap, glide or the like was told in the sentence."""
    told = desk.laid(*_RESULTS, since=scene.sentence.i, before=scene.sentence.j)
    return list(dict.fromkeys(Target(*f.entry) for f in told))


def _told_behind(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'Passive motion of all fingers, no gap in any of the repairs': whose result is told behind the test was tested.

    Where the test names a tendon it is of that kind: 'Pull on FDP: index gap 0, middle gap 0'.
    """
    told = desk.laid(*_SHOWN, since=mention.j, before=scene.sentence.j)
    named = [g for g in scene.setting.groups if g.tendons and not g.reference and _is_object(scene, mention, g)]
    if any(g.digits or g.generic for g in named):
        return []
    kinds = {t for g in named for t in g.tendons}
    found = [t for t in dict.fromkeys(Target(*f.entry) for f in told) if not kinds or t.tendon in kinds]
    fingers = mention.value != "traction" and "wrist" not in scene.said  # 'no gaps on moving the fingers'
    return [t for t in found if t.digit or not fingers]


_SHOWN = ("gap", "glide")


def _results_after(desk: Desk, scene: Scene) -> list[Target]:
    """'Asked him to make a fist. Index: no gap. Middle: catches.': the tendons that the next sentences tell of."""
    found: list[Target] = []
    after = desk.scene_after(scene)
    for _ in range(4):
        if after is None or after.sentence.block != scene.sentence.block or not after.of(*_RESULTS):
            break
        groups = [
            g for g in after.setting.groups if (g.tendons or g.digits or g.generic == "others") and not g.reference
        ]
        if not groups or after.of("test"):
            break
        for group in groups:
            if group.generic == "others":
                found += others(desk, after, group, desk.sewn())
                continue
            found += [
                t for t in desk.repairable(group.digits or None) if not group.tendons or t.tendon in group.tendons
            ]
        after = desk.scene_after(after)
    focus = scene.setting.digits
    return [t for t in dict.fromkeys(found) if len(found) > 1 or t.digit in focus or t.digit is None]


def _moved(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'asked to make a fist', 'the fingers were moved passively': the repairs of the digits that moved."""
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    digits = tuple(d for g in scene.setting.groups for d in g.digits)
    if digits:
        inside = any(g.digits and mention.i <= g.i < mention.j for g in scene.setting.groups)
        sewn = desk.sewn(digits) if mention.value == "active" or len(digits) > 1 or inside else []
        return [t for t in sewn if t.digit in digits] if inside else sewn
    if "fingers" in words or (mention.value == "active" and words & {"fist", "fists", "them"}):
        sewn = desk.sewn()
        return [t for t in sewn if t.digit] if "moving" in words else sewn  # 'on moving fingers': not the wrist's
    return desk.sewn(scene.setting.digits) if mention.value == "active" and scene.setting.digits else []


def _the_same(desk: Desk, scene: Scene) -> None:
    """'Index FDP the same: no gap', 'same tug, no gap': tested as the repair before."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if "same" not in words or not scene.of("gap", "glide"):
        return
    k = scene.sentence.i + words.index("same")
    if scene.next_word(k + 1) not in (
        ":",
        ",",
        ".",
        "-",
        ">",
        "tug",
        "test",
        "pull",
        "manoeuvre",
        "maneuver",
        "check",
        "way",
    ):
        return
    told = desk.laid("test", before=scene.sentence.i)
    for target in _with_results(desk, scene) if told else []:
        desk.tendon(scene, target, "test", told[-1].value, [(k, k + 1)], "tested as the repair before")


def _seen_in_the_test(desk: Desk, scene: Scene) -> None:
    """'I pulled on each profundus. The ring showed no gap. The small did not catch.': seen in the test just told.

    A pull is on the tendons it names, whatever is then told of all: 'FPL was pulled on: no gap. All tendons run free.'
    """
    if scene.kinds.isdisjoint(("gap", "glide")) and SAYS_GLIDE.isdisjoint(scene.said):
        return
    told = [t for t in _with_results(desk, scene) if not _has_test(desk, t)]
    before = desk.scene_before(scene) if told else None
    for _ in range(_RESULTS_GO_ON):
        if before is None or before.sentence.block != scene.sentence.block:
            return
        tests = desk.laid("test", since=before.sentence.i, before=before.sentence.j)
        of_all = any(g.every for g in scene.setting.groups) or said_of_several(scene, scene.sentence.i)
        if tests and tests[-1].value == "traction" and of_all:
            return
        if tests:
            if (
                "finger" in before.said and tests[-1].value != "traction"
            ):  # 'when I extended the finger gently': one finger was moved
                told = [t for t in told if t.digit in {f.entry[0] for f in tests}]
            for target in told:
                desk.tendon(scene, target, "test", tests[-1].value, tests[-1].spans, "seen in the test just told")
            return
        if _as_said_before(desk, before, told) or before.kinds.isdisjoint(("gap", "glide")):
            return
        before = desk.scene_before(before)


def _as_said_before(desk: Desk, before: Scene, told: list[Target]) -> bool:
    """'Passive tenodesis gave a good cascade. No gaps.': a test that names no tendon, and what was seen in it."""
    tests = [m for m in before.of("test") if before.told(m.i) and _is_test(desk, before, m)]
    if not tests or any(g.tendons or g.digits or g.generic for g in before.setting.groups):
        return False
    spot, rule = tests[0], "seen in the test just told"
    told = told if spot.value == "traction" or "wrist" in before.said else [t for t in told if t.digit]
    lay_behaviour(desk, before, told, "test", _value(before, spot), spot.i, spot.j, rule)
    return True


_RESULTS_GO_ON = 4  # sentences


def _has_test(desk: Desk, target: Target) -> bool:
    return any(f.field == "test" for f in desk.told_of("repairs", target))


# --- whether


def _moves_behind(scene: Scene, j: int) -> bool:
    """'asked the patient to ... make a fist', 'asked to try and bend it': what somebody is asked for is a movement."""
    behind = scene.words(j, min(j + _ASKED_FOR, scene.sentence.j))
    return not behind or not (_PATIENT_MOVES | _MOVEMENTS).isdisjoint(behind)


_ASKED_FOR = 8  # words


_SEWN_BY = ("stitch", "strands", "size")  # told under 'Findings', they show that the text goes on to the repair


def _is_test(desk: Desk, scene: Scene, mention: Mention) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if _told_before_repair(desk, scene, mention, words) or _is_another_deed(scene, mention):
        return False
    if not _pulls_repair(desk, scene, mention, set(words)):
        return False
    before = scene.word_before(mention.i)
    if mention.value == "active":
        reach = 2 if scene.words(mention.i, mention.i + 1) == ["active"] else 0
        if _so_that_not(scene, mention) or denied(scene, mention.i, mention.j, reach):
            return False
    elif before in ("not", "never") or before.endswith("n't"):
        return False  # 'I did not pull on it'
    elif scene.negated(mention.i, mention.j, 4):
        return {"tested", "test", "performed", "done"}.isdisjoint(words)
    others = others_untested(scene)  # 'pulled on: no gap in any FDP; the others not tested'
    here = words[: others - scene.sentence.i] if others is not None and others > mention.j else words
    told = " ".join(here)
    return not any(p in told for p in _NOT_TESTED)


def _told_before_repair(desk: Desk, scene: Scene, mention: Mention, words: list[str]) -> bool:
    """Tell whether a sentence tells of an examination before the repair, or of the therapy to come."""
    section = scene.sentence.section
    if section in _BEFORE_OPERATING and not desk.topic:
        sewn = section == "findings" and bool(desk.laid(*_SEWN_BY, before=mention.i))
        if not sewn:
            return True
    if not _THERAPISTS.isdisjoint(words) and not _DAYS.isdisjoint(words):
        return True  # 'Physio from day 2 - passive flexion, active hold to be decided': what is to come
    if not _EXAM.isdisjoint(words) or _before_repair(words):
        return True
    text = " ".join(words)
    return any(p in text for p in _EXAM_PHRASES)


_BEFORE_OPERATING = frozenset(["indication", "diagnosis", "procedure", "consent", "previous", "findings"])


def _is_another_deed(scene: Scene, mention: Mention) -> bool:
    """Tell whether a word of pulling or moving tells of no test: 'the traction frame', 'under some pull'."""
    word, before = scene.words(mention.i, mention.j), scene.word_before(mention.i)
    if "asked" in word and word[-1] == "to" and not _moves_behind(scene, mention.j):
        return True  # 'I asked him to put in a Yoshizu'
    if word == ["tensioned"] and before == "be":
        return True  # 'fixed first, so that the tendons might be tensioned over a stable column'
    if word == ["pull"] and "under" in scene.words(max(scene.sentence.i, mention.i - 3), mention.i):
        return True  # 'with the wrist straight all repairs were under some pull'
    if word == ["traction"] and scene.next_word(mention.j) in ("frame", "bow", "table", "weights", "splint"):
        return True  # 'The traction frame was not used'
    if before in _BY_ITSELF and scene.words(mention.i, mention.j + 1)[:2] == ["pulled", "through"]:
        return True  # 'the wrist was moved and everything pulled through'
    if scene.page.words[mention.i] == "i" and before in ("when", "if", "as", "until"):
        return True
    return _labels_what_was_not_done(scene, mention)


def _labels_what_was_not_done(scene: Scene, mention: Mention) -> bool:
    """'Traction on the tendons in the forearm: not done'."""
    behind = scene.words(mention.j, scene.sentence.j)
    colon = mention.j + behind.index(":") if ":" in behind else 0
    return bool(colon) and scene.words(colon + 1, colon + 3) in (
        ["not", "done"],
        ["not", "performed"],
        ["not", "tested"],
    )


_THERAPISTS = frozenset(["physio", "physiotherapy", "physiotherapist", "therapy", "therapist", "ht", "ot"])
_DAYS = frozenset(["day", "days", "week", "weeks"])
_BY_ITSELF = frozenset(["everything", "it", "they", "tendons", "tendon", "all"])


def _before_repair(words: list[str]) -> bool:
    """'before the block he could flex': told before the repair; 'before closing' is on the table."""
    places = [n for n, w in enumerate(words) if w == "before"]
    return any(_BEFORE_THESE.isdisjoint(words[n + 1 : n + 4]) for n in places)


def _pulls_repair(desk: Desk, scene: Scene, mention: Mention, words: set[str]) -> bool:
    """Tell whether words that live elsewhere too tell of a test of the repair here."""
    word = " ".join(scene.words(mention.i, mention.j))
    pulls = {"traction", "pull", "pulled", "pulling"} & set(scene.words(mention.i, mention.j))
    if foreign(scene, mention.i, mention.j) and (pulls or word in ("himself", "herself", "ranged")):
        return False
    if word in _WEAK_TESTS and words.isdisjoint(_TEST_CONTEXT):
        return False
    tells = _told_of_repair(desk, scene) or not words.isdisjoint({"test", "tested", "checked"})
    return not pulls or words.isdisjoint(_OTHER_PULLS) or tells


def _so_that_not(scene: Scene, mention: Mention) -> bool:
    """'A1 was split so the repair doesn't jam on full fist': what is to be spared, no test."""
    before = scene.words(scene.sentence.i, mention.i)
    behind = before[before.index("so") :] if "so" in before else []
    return any(w == "not" or w.endswith("n't") for w in behind)
