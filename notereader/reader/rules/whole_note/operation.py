"""The operation as a whole: dates, side, anaesthesia, mechanism.

A value said in several places is proposed once with the words of each, the title, the diagnosis and the text.
"""

from dataclasses import replace
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.reasons import Reason
from notereader.reader.rules.whole_note.mechanism import mechanism
from notereader.reader.rules.whole_note.operation_dates import operation_dates
from notereader.reader.rules.whole_note.whole import Told, case_list, lay
from notereader.reader.scene import Scene

_DEPTH = ["local", "wide-awake local", "sedation", "regional", "general"]


def operation(desk: Desk) -> None:
    """Find the facts of the operation from the whole note."""
    operation_dates(desk)
    _side(desk)
    _anaesthesia(desk)
    mechanism(desk)


# --- side


def _side(desk: Desk) -> None:
    """Find the side in titles, diagnoses and text, else in the story; another side said of the hand is a rival."""
    told = [(s, m) for s in desk.scenes for m in s.of("side") if _is_side(s, m)]
    standing, elsewhere = desk.page.standing, case_list("not_side_sections")
    placed = [(s, m) for s, m in told if s.sentence.section not in elsewhere or _behind_the_block(s, m)]
    sure = [(s, m) for s, m in placed if not standing[m.i]]
    story = [(s, m) for s, m in told if standing[m.i] in ("story", "plan", "question") and not _of_earlier(s)]
    past = [(s, m) for s, m in told if standing[m.i] == "history" and _beside_digit(s, m)]
    if sure or story or len({m.value for _, m in past}) > 1:
        past = []
    for value in dict.fromkeys(m.value for _, m in sure or story or past):
        same = [f for f in sure + story + past if f[1].value == value]
        same.sort(key=lambda f: (f[0].header, not _names_digit(*f)))
        doubts = [] if sure else [Reason("of_earlier_operation" if past else "in_story_of_injury")]
        lay(desk, "side", same[0][1], same, "side named", *doubts)


def _behind_the_block(scene: Scene, m: Mention) -> bool:
    """'Anaesthesia: axillary block. Right hand, index, cut on glass.': a sentence of its own on the same line."""
    opens = m.i == scene.sentence.i and scene.page.words[m.i - 1 : m.i] == ["."]
    part = not _PARTS.isdisjoint(scene.words(m.i, m.j + 1))
    return opens and part and scene.sentence.section == "anaesthesia"


_PARTS = frozenset(["hand", "wrist", "forearm"])


def _beside_digit(scene: Scene, m: Mention) -> bool:
    """'His right little finger had been cut', 'the little finger of his left hand'."""
    leads = [scene.words(d.j, m.i) for d in scene.of("digit") if d.j < m.i]
    return any(d.i == m.j for d in scene.of("digit")) or any(lead and _OF_HAND.issuperset(lead) for lead in leads)


_OF_HAND = frozenset(["of", "finger", "his", "her", "the", "their"])
_HOURS = frozenset(["hour", "hours", "h", "hrs", "minutes"])
_AGED = frozenset(["-", "year", "years", "yr", "yrs", "yo", "months", "month"])


def _of_earlier(scene: Scene) -> bool:
    """Tell whether a sentence of the story speaks of an earlier injury: 'Old FPL repair in the left thumb (2029)'."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    aged = {k for k, word in enumerate(words) if word == "old" and k and words[k - 1] in _AGED}  # '52-year-old'
    hours = {k for k, word in enumerate(words) if k and words[k - 1] in _HOURS}  # 'the right hand, two hours earlier'
    early = any(word in case_list("earlier") for k, word in enumerate(words) if k not in aged | hours)
    return early or any(p == ("history", "of") for p in pairwise(words))


def _names_digit(scene: Scene, m: Mention) -> bool:
    return any(g.digits and 0 <= g.i - m.j <= 1 for g in scene.setting.groups)


def _is_side(scene: Scene, m: Mention) -> bool:
    """'was left', 'right-handed', 'right through', '1 L' and 'H. L.' name no side."""
    words = scene.page.words
    after, before = scene.next_word(m.j), scene.word_before(m.i)
    ahead = words[m.j : min(m.j + 5, scene.sentence.j)]
    told = scene.sentence.section == "side" and words[m.j : m.j + 1] == ["("]  # 'Hand: right (dominant)'
    if (set(ahead[:2]) & case_list("dominance") and not told) or (
        "hand" in ahead[:2] and case_list("dominance") & set(ahead)
    ):
        return False
    if scene.page.text[scene.page.starts[m.i] - 1 : scene.page.starts[m.i]] in _QUOTES and _corrects(scene):
        return False  # '"Right" finger should read ring finger'
    if words[m.i] == "left" and before in ("had", "has", "and") and after in ("the", "its", "his", "her"):
        return False  # 'the bite had left the superficialis alone'
    if scene.words(m.j, m.j + 1) == ["one"] and {"hand", "side"} & set(scene.words(scene.sentence.i, m.i)):
        return True
    if scene.sentence.section == "side" or _ticked_beside_other(scene, m):
        return True
    short = words[m.i] in ("lt", "lt.", "l", "lft") and m.j - m.i == 1
    if (short and after in case_list("ranks")) or after == "angles":
        return False  # 'Lt Cdr surgeon', 'a second pair at right angles'
    if len(scene.page.raw(m.i, m.j).strip(".()")) == 1:
        return _is_short_side(scene, m, after, before)
    if m.j - m.i > 1 or _names_part(scene, m.j) or (scene.header and _follows_digit(scene, m.i)):
        return True
    if after in case_list("not_after_side"):
        return False
    if _between_commas(scene, m, before, after):
        return True
    if before == "(" and after == ")" and _behind_a_finger(scene, m.i - 1):
        return True
    if words[m.i] == "left" and (before in case_list("left_as_verb") or not _is_title(scene)):
        return before in ("the", "his", "her", "patient's") and after in case_list("side_ends")
    return _follows_part(scene, m.i) or before in ("the", "his", "her", "on", ":", "|", "side", "laterality")


def _ticked_beside_other(scene: Scene, m: Mention) -> bool:
    """'( ) L   (X) R': the one of both sides that has the tick."""
    others = [o for o in scene.of("side") if {o.value, m.value} == {"left", "right"}]
    empty = any(scene.page.standing[o.i] == "unticked" for o in others)
    boxed = scene.word_before(m.i) in (")", "]") or scene.next_word(m.j) in ("(", "[")
    return empty and boxed and scene.told(m.i)


def _between_commas(scene: Scene, m: Mention, before: str, after: str) -> bool:
    """'Laceration of the wrist, volar, LEFT, zone 5': a part of a diagnosis by itself.

    Of a title it may be what became of a tendon: 'FDP repaired, FDS a nick, left'.
    """
    surely = scene.sentence.section == "diagnosis" or (scene.header and scene.page.words[m.i] != "left")
    return surely and before == "," and after in case_list("side_ends") | {""}


_QUOTES = ('"', "'", "\u201c", "\u2018")


def _corrects(scene: Scene) -> bool:
    return bool({"read", "reads", "meant", "heard"} & set(scene.words(scene.sentence.i, scene.sentence.j)))


def _is_short_side(scene: Scene, m: Mention, after: str, before: str) -> bool:
    """'R MF', 'L hand', '(L)'; a letter among initials or after a figure is no side."""
    bracketed = "(" in scene.page.raw(m.i, m.j)
    apart = scene.page.breaks[m.i] >= Break.COLUMN
    if before == "." and scene.page.words[m.i - 2].isdecimal() and _names_part(scene, m.j):
        return True  # '2. R little.'
    if (
        (before[:1].isdecimal() and not apart)
        or before == "."
        or (len(before) == 1 and before.isalpha() and not bracketed)
    ):
        return False
    if after == "." and not _names_part(scene, m.j + 1):
        return False
    if bracketed or _names_part(scene, m.j + (after == ".")):
        return True
    return after in ("", ":", ",", "-") and _follows_part(scene, m.i)


def _names_part(scene: Scene, k: int) -> bool:
    """Tell whether a part of the arm or a digit is named at word k or just after it."""
    words = scene.words(k, min(k + 3, scene.sentence.j))
    if any(g.i <= k + 1 and k < g.j for g in scene.setting.groups) and words[:1] != [","]:
        return True
    if words[:1] and words[0] in ("-", "distal", "volar", "proximal", "dorsal"):
        words = words[1:]
    return bool(set(words[:1]) & case_list("side_parts"))


def _follows_part(scene: Scene, k: int) -> bool:
    """Tell whether a digit or a part of the arm is named just before word k: 'palm, right', 'zone II, left'."""
    if _follows_digit(scene, k):
        return True
    before = scene.words(max(scene.sentence.i, k - 3), k)
    return bool(set(before) & (case_list("side_parts") | {"zone", "ray"}))


def _follows_digit(scene: Scene, k: int) -> bool:
    return any(0 <= k - g.j <= 1 for g in scene.setting.groups if g.digits)


def _behind_a_finger(scene: Scene, k: int) -> bool:
    """'INDEX (left)' on a line of its own; 'FDS ring (left)' was left alone."""
    return any(g.j == k and not g.tendons for g in scene.setting.groups if g.digits)


def _is_title(scene: Scene) -> bool:
    """Tell whether a sentence is a title, a diagnosis or another line without a verb."""
    titles = ("digit", "injury_date", "mechanism", "date")
    return scene.header or scene.sentence.block == 0 or scene.sentence.section in titles


# --- anaesthesia


def _anaesthesia(desk: Desk) -> None:
    """Find the deepest anaesthesia stated; a block with sedation is regional, wide awake beats plain local."""
    told = [(s, m) for s in desk.scenes for m in s.of("anaesthesia") if _was_given(desk, s, m)]
    corrected = [f for f in told if f[0].sentence.section == "addendum"]
    told = corrected or told
    headed = [f for f in told if f[0].sentence.section in ("anaesthesia", "anaesthetist")]
    chosen = _deepest(headed) or _deepest(told)
    wide = [f for f in told if f[1].value == "wide-awake local"]
    if chosen and chosen[1].value == "local" and wide:
        chosen = wide[0]
    elif chosen and chosen[1].value == "local" and _kept_awake(chosen[0]):
        m = replace(chosen[1], value="wide-awake local")
        doubt = Reason("technique_unnamed")
        lay(desk, "anaesthesia", m, [(chosen[0], m)], "local with adrenaline", doubt)
        return
    block = next((m for m in chosen[0].of("anaesthesia") if _is_block(chosen[0], m)), None) if chosen else None
    if chosen and chosen[1].value == "sedation" and block is not None:  # 'MAC with digital block'
        m = replace(block, value="regional")
        lay(desk, "anaesthesia", m, [(chosen[0], m)], "block with sedation")
        return
    if chosen and chosen[1].value == "sedation" and _beside_a_block(*chosen):
        m = replace(chosen[1], value="regional")
        lay(desk, "anaesthesia", m, [(chosen[0], m)], "block with sedation")
        return
    if chosen:
        lay(desk, "anaesthesia", chosen[1], told, "deepest anaesthesia stated")


def _beside_a_block(scene: Scene, sedation: Mention) -> bool:
    """'A wrist and palm block with sedation', 'axilary block + sedation', 'sedation and a block'."""
    lead = [w for w in scene.words(max(scene.sentence.i, sedation.i - _NEAR), sedation.i) if w != "light"]
    behind = [w for w in scene.words(sedation.j, sedation.j + _NEAR) if w not in ("a", "an", "the")]
    return (lead[-1:] in _AND and lead[-2:-1] == ["block"]) or (behind[:1] in _AND and "block" in behind)


_AND = (["and"], ["with"], ["plus"], ["+"], ["under"], ["&"])


def _was_given(desk: Desk, scene: Scene, m: Mention) -> bool:
    """Offered, declined and postoperative anaesthesia was not given; ordinary words need a context."""
    awake = m.value.startswith("wide")
    standing = ("", "story", "considered") if awake else ("", "story")
    if desk.page.standing[m.i] not in standing and not _names_gas(scene):
        return False
    if not _OF_OTHERS.isdisjoint(pairwise(scene.words(max(scene.sentence.i, m.i - _NEAR), m.i))):
        return False  # 'dictating while the next patient is put to sleep'
    if scene.sentence.section == "previous" or (scene.sentence.section == "instructions" and not _names_gas(scene)):
        return False
    if not awake and (scene.negated(m.i, m.j, 3) or _refused(scene, m)):
        return False
    word = " ".join(scene.words(m.i, m.j))
    if _asks_which(scene, m) or _of_a_relative(scene, m):
        return False
    near = {*scene.words(m.j, min(m.j + 4, scene.sentence.j)), *scene.words(max(scene.sentence.i, m.i - 3), m.i)}
    if word == "asleep" and not _LIMBS.isdisjoint((scene.word_before(m.i), scene.next_word(m.j))):
        return False  # 'asleep arm, so passive only': a block
    if word == "narcosis" and scene.next_word(m.j) in (":", "by"):
        return False
    beside = [o for o in scene.of("anaesthesia") if o is not m and abs(o.i - m.i) <= 6]
    if word == "general" and beside and "/" not in near:
        return True  # 'General plus infraclavicular catheter'
    if word in ("general", "local", "regional", "plexus", "axillary", "mac"):
        told = near | (set(scene.words(scene.sentence.i, scene.sentence.j)) - {"block"})
        return scene.sentence.section in ("anaesthesia", "anaesthetist") or bool(told & case_list("anaesthetic_words"))
    if m.value == "local" and scene.sentence.section not in case_list("anaesthetic_sections"):
        return not case_list("for_pain") & set(scene.words(scene.sentence.i, scene.sentence.j))
    return True


def _asks_which(scene: Scene, m: Mention) -> bool:
    """'Asleep / awake: digital block', 'Awake or asleep:': a label that asks, whatever the answer."""
    word = " ".join(scene.words(m.i, m.j))
    before, behind = scene.words(max(scene.sentence.i, m.i - 2), m.i), scene.words(m.j, m.j + 2)
    either = behind in _OR_AWAKE or before in _AWAKE_OR
    return word in ("asleep", "awake") and either and ":" in scene.words(m.j, m.j + 3)


_OR_AWAKE = [[mark, word] for mark in ("/", "or") for word in ("awake", "asleep")]
_AWAKE_OR = [[word, mark] for mark in ("/", "or") for word in ("awake", "asleep")]


def _of_a_relative(scene: Scene, m: Mention) -> bool:
    """'He chose awake because his dad had trouble after a general': what another of the family had."""
    lead = scene.words(max(scene.sentence.i, m.i - _FAMILY_NEAR), m.i)
    return not case_list("relatives").isdisjoint(lead) and not case_list("ill_after").isdisjoint(lead)


_FAMILY_NEAR = 10  # words


def _is_block(scene: Scene, m: Mention) -> bool:
    return scene.page.words[m.j - 1] in ("block", "blocks") and scene.told(m.i)


def _names_gas(scene: Scene) -> bool:
    """'Anaesthetic was general.' told at the end of a letter: what was given, wherever it stands."""
    words = scene.words(scene.sentence.i, min(scene.sentence.i + 3, scene.sentence.j))
    return (
        scene.page.standing[scene.sentence.i] in ("", "plan", "story") and bool(_GIVEN & set(words)) and "was" in words
    )


_LIMBS = frozenset(["arm", "hand", "limb", "forearm", "finger", "fingers", "thumb"])
_OF_OTHERS = frozenset(("next", who) for who in ("one", "patient", "case", "man", "lady", "child"))
_NEAR = 6  # words
_GIVEN = frozenset(["anaesthetic", "anesthetic", "anaesthesia", "anesthesia"])


def _kept_awake(scene: Scene) -> bool:
    """'1% lidocaine with 1:100 000 adrenaline', 'infiltration with epinephrine, patient awake'."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if "without" in words or "no" in words[: words.index("awake") if "awake" in words else 0]:
        return False
    return bool(case_list("adrenaline") & set(words))


def _refused(scene: Scene, m: Mention) -> bool:
    """Tell whether an anaesthetic was offered or declined, within its own part of the sentence."""
    first, last = scene.part(m.i)
    near = scene.words(max(first, m.i - 3), min(last, m.j + 4))
    return bool(case_list("refused") & set(near))


def _deepest(found: list[Told]) -> Told | None:
    return max(found, key=lambda f: (_DEPTH.index(f[1].value), -f[1].i)) if found else None
