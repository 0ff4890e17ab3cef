"""The operation as a whole: dates, side, anaesthesia, mechanism.

A value said in several places is proposed once with the words of each, the title, the diagnosis and the text.
"""

import re
from dataclasses import replace
from datetime import date
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import FoundDate, Mention, Page
from notereader.reader.rules.whole import NOWHERE, Span, scene_at
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_DEPTH = ["local", "wide-awake local", "sedation", "regional", "general"]
_STORY_FIRST = {"indication": 0, "mechanism": 0, "injury_date": 0, "diagnosis": 1, "procedure": 2}
_SPANS = 6  # a value is shown in so many places at most

_MARKS = frozenset([",", ".", ";", "", "("])

Told = tuple[Scene, Mention]


def _list(name: str) -> frozenset[str]:
    return word_list("operation", name)


def operation(desk: Desk) -> None:
    """Find the facts of the operation from the whole note."""
    _dates(desk)
    _side(desk)
    _anaesthesia(desk)
    _mechanism(desk)


def _lay(desk: Desk, name: str, chosen: Mention, told: list[Told], rule: str, *reasons: str) -> None:
    """Lay down a value with the words of its mentions: the chosen one, then those of other sections, then the rest."""
    same = [f for f in told if f[1].value == chosen.value]
    scene = next(s for s, m in same if m is chosen)
    sections = {scene.sentence.section}
    first: list[Span] = [(chosen.i, chosen.j)]
    rest: list[Span] = []
    for other, m in same:
        if m is chosen:
            continue
        (rest if other.sentence.section in sections else first).append((m.i, m.j))
        sections.add(other.sentence.section)
    desk.add(scene, "operation", NOWHERE, name, chosen.value, [*first, *rest][:_SPANS], rule, *reasons)


# --- dates


def _dates(desk: Desk) -> None:
    dates = desk.page.dates
    if not dates:
        return
    chosen = _operation_date(desk, [d for d in dates if not d.yearless])
    if chosen is not None:
        _lay_date(desk, chosen, "date")
    injured = _injury_date(desk, dates, chosen)
    if injured is not None:
        scene = scene_at(desk, injured.i)
        headed = scene.sentence.section in ("injury_date", "mechanism", "indication")
        said = headed or _tells_injury(desk, scene, injured)
        doubts = [] if said else ["taken for the day of the injury because it lies shortly before the operation"]
        _lay_date(desk, injured, "injury_date", *doubts)


def _lay_date(desk: Desk, found: FoundDate, name: str, *doubts: str) -> None:
    scene = scene_at(desk, found.i)
    inferred = ["the order of day and month is inferred from the rest of the note"] if found.inferred else []
    year = ["the note tells no year here; it is taken from its other dates"] if found.yearless else []
    reasons = [*inferred, *year, *doubts]
    desk.add(scene, "operation", NOWHERE, name, found.value, [(found.i, found.j)], name.replace("_", " "), *reasons)


def _operation_date(desk: Desk, dates: list[FoundDate]) -> FoundDate | None:
    """Return the date of operation: under its heading, else beside words of an operation, else the first no other."""
    for test in (_headed_date, _said_to_be_operation, _told_of_operating, _no_other_date, _dictated_at_once):
        for found in dates:
            if test(desk, found):
                return found
    return None


def _headed_date(desk: Desk, found: FoundDate) -> bool:
    headed = scene_at(desk, found.i).sentence.section == "date"
    return headed and not set(_before(desk.page, found, 2)) & _list("accident")


def _said_to_be_operation(desk: Desk, found: FoundDate) -> bool:
    """'Operation of 30.06.2037', 'Done 2027-10-05', 'Date of surgery is June 21', 'Operation, 30 April 2035: ...'."""
    section = scene_at(desk, found.i).sentence.section
    if section in ("indication", "previous", "injury_date", "instructions"):
        return False
    near = [w for w in _before(desk.page, found, 5) if w.isalpha() and w not in _list("little")]
    last = near[-1:] if section != "procedure" else near
    return bool(set(last) & _list("surgery")) and not set(near) & _list("elsewhere")


def _told_of_operating(desk: Desk, found: FoundDate) -> bool:
    """'I operated on this man under a general on 19 June', 'On 28 August I repaired her FPL', 'theatre, 3 May'.

    The verb stands in the sentence with no other date and no accident between.
    """
    scene, page = scene_at(desk, found.i), desk.page
    if page.standing[found.i] == "history" or scene.sentence.section in ("previous", "instructions"):
        return False
    own = {k for d in page.dates for k in range(d.i, d.j)}
    words = page.words
    for k in range(found.i - 1, max(scene.sentence.i, found.i - 22) - 1, -1):
        if k in own or words[k] in _list("injury") or words[k] in (";", "."):
            break
        if words[k] in _list("operating") or (words[k] in _list("repairs") and _ends_title(scene, found)):
            return not set(scene.words(scene.sentence.i, scene.sentence.j)) & _list("elsewhere_first")
    if scene.word_before(found.i) not in ("", "on", ",", ":", "and"):
        return False
    after = [w for w in words[found.j : min(found.j + 7, scene.sentence.j)] if w.isalpha()]
    led = {"i", "we"} & set(after[:2]) or {"was", "were"} & set(after)
    return bool(led) and bool(set(after) & _list("operating"))


def _ends_title(scene: Scene, found: FoundDate) -> bool:
    """'re: repair of finger flexors, right hand, 6 June': a date that ends a line without a verb."""
    verbs = {"was", "were", "had", "has", "is", "will", "who"} & set(scene.words(scene.sentence.i, scene.sentence.j))
    return found.j >= scene.sentence.j - 1 and not verbs


def _no_other_date(desk: Desk, found: FoundDate) -> bool:
    scene = scene_at(desk, found.i)
    if scene.sentence.section in _list("not_operation_sections") or desk.page.standing[found.i] == "history":
        return False
    return not _is_other(desk.page, scene, found) and not _tells_injury(desk, scene, found)


def _dictated_at_once(desk: Desk, found: FoundDate) -> bool:
    """'Dictated straight after the case, 22 April 2028': a day of dictation counts where it is said to be the same.

    'Op note dictated 11 June 2030' with no other date is the note of that day, where a place or the operator follows.
    """
    scene = scene_at(desk, found.i)
    words = " ".join(scene.words(scene.sentence.i, scene.sentence.j))
    if re.search(r"\b(?:same day|(?:straight|immediately|right|directly) after)\b", words):
        return True
    opens = desk.page.words[: found.i]
    return len(opens) <= 12 and "note" in opens and bool({"op", "operation", "operative", "theatre"} & set(opens))


def _before(page: Page, found: FoundDate, reach: int) -> list[str]:
    """Return the words before a date on its line, nearest last."""
    start = page.text.rfind("\n", 0, page.starts[found.i]) + 1
    i = found.i
    while i > 0 and found.i - i < reach and page.starts[i - 1] >= start:
        i -= 1
    return page.words[i : found.i]


def _is_other(page: Page, scene: Scene, found: FoundDate) -> bool:
    """Tell whether the words before a date make it the day of a dictation, a fax, a clinic or a signature."""
    before = _before(page, found, 5)
    if found.i - len(before) < scene.sentence.i and len(page.words[scene.sentence.i : scene.sentence.j]) > 1:
        before = page.words[scene.sentence.i : found.i] or before[-2:]
    if set(before) & _list("other_dates"):
        return True
    return "clinic" in before and "," not in before


def _tells_injury(desk: Desk, scene: Scene, found: FoundDate) -> bool:
    """Tell whether the words beside a date speak of the accident; words right before another date are that one's."""
    if set(_before(desk.page, found, 4)) & _list("surgery"):
        return False
    low, high = max(scene.sentence.i, found.i - 14), min(scene.sentence.j, found.j + 14)
    near = {k for k in range(low, high) if desk.page.words[k] in _list("injury")}
    near |= {m.i for m in scene.mentions if m.kind == "mechanism"}
    for other in (d for d in desk.page.dates if d is not found and low <= d.i < high):
        near -= set(range(other.i - 4, other.j)) if other.i > found.i else set(range(low, other.j))
    return bool(near)


def _injury_date(desk: Desk, dates: list[FoundDate], chosen: FoundDate | None) -> FoundDate | None:
    """Return the date of injury: under its heading, beside words of the accident, else the one told shortly before."""
    open_dates = [d for d in dates if d is not chosen and (chosen is None or d.value <= chosen.value)]
    for found in open_dates:
        if scene_at(desk, found.i).sentence.section in ("injury_date", "mechanism") or _accident_of(desk.page, found):
            return found
    told = [d for d in open_dates if _may_be_injury(desk, d)]
    beside = [d for d in told if _tells_injury(desk, scene_at(desk, d.i), d)]
    if chosen is None:
        return beside[0] if beside else None
    near = [d for d in told if 0 <= _days_between(d, chosen) <= 42 and d.value != chosen.value and not d.yearless]
    return next(iter([d for d in beside if d.value != chosen.value] or near or beside), None)


def _accident_of(page: Page, found: FoundDate) -> bool:
    """'accident of 13.05.2034', 'injured 1 May 2040', 'inj. 29.07.2038', 'DOI 17/11/31'."""
    before = [w for w in _before(page, found, 4) if w.isalpha() and w not in _list("little")]
    return bool(set(before[-1:]) & _list("accident"))


def _may_be_injury(desk: Desk, found: FoundDate) -> bool:
    scene = scene_at(desk, found.i)
    if scene.sentence.section in ("signature", "instructions", "previous", "addendum"):
        return False
    if scene.sentence.section in ("date", "admin") and not scene.of("mechanism"):
        return False
    if desk.page.standing[found.i] == "history" or _is_other(desk.page, scene, found) or _comes_in(scene, found):
        return False
    first, last = scene.part(found.i)
    first = max([first, *(d.j for d in desk.page.dates if d.j <= found.i)])
    own = set(scene.words(first, last))
    if own & _list("injury") and not own & _list("elsewhere"):
        return True
    return not set(scene.words(scene.sentence.i, scene.sentence.j)) & _list("elsewhere")


def _comes_in(scene: Scene, found: FoundDate) -> bool:
    """'On 30 May 2030 we took up the patient', 'came to us on the night of 3 February': the day of coming in."""
    near = scene.words(max(scene.sentence.i, found.i - 10), min(scene.sentence.j, found.j + 5))
    said = " ".join(near)
    return any(f" {phrase} " in f" {said} " for phrase in _COMING)


_COMING = ("came to us", "brought in", "took up", "taken up", "was admitted", "were admitted", "came to the")


def _days_between(first: FoundDate, second: FoundDate) -> int:
    return (date.fromisoformat(second.value) - date.fromisoformat(first.value)).days


# --- side


def _side(desk: Desk) -> None:
    """Find the side in titles, diagnoses and text, else in the story; another side said of the hand is a rival."""
    told = [(s, m) for s in desk.scenes for m in s.of("side") if _is_side(s, m)]
    standing, elsewhere = desk.page.standing, _list("not_side_sections")
    sure = [(s, m) for s, m in told if not standing[m.i] and s.sentence.section not in elsewhere]
    story = [(s, m) for s, m in told if standing[m.i] in ("story", "plan", "question") and not _of_earlier(s)]
    for value in dict.fromkeys(m.value for _, m in sure or story):
        same = [f for f in sure + story if f[1].value == value]
        same.sort(key=lambda f: (f[0].header, not _names_digit(*f)))
        doubts = [] if sure else ["said only in the story of the injury"]
        _lay(desk, "side", same[0][1], same, "side named", *doubts)


def _of_earlier(scene: Scene) -> bool:
    """Tell whether a sentence of the story speaks of an earlier injury: 'Old FPL repair in the left thumb (2029)'."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return bool(set(words) & _list("earlier")) or any(p == ("history", "of") for p in pairwise(words))


def _names_digit(scene: Scene, m: Mention) -> bool:
    return any(g.digits and 0 <= g.i - m.j <= 1 for g in scene.setting.groups)


def _is_side(scene: Scene, m: Mention) -> bool:
    """'was left', 'right-handed', 'right through', '1 L' and 'H. L.' name no side."""
    words = scene.page.words
    after, before = scene.next_word(m.j), scene.word_before(m.i)
    ahead = words[m.j : min(m.j + 5, scene.sentence.j)]
    if set(ahead[:2]) & _list("dominance") or ("hand" in ahead[:2] and _list("dominance") & set(ahead)):
        return False
    if scene.page.text[scene.page.starts[m.i] - 1 : scene.page.starts[m.i]] in _QUOTES and _corrects(scene):
        return False  # '"Right" finger should read ring finger'
    if scene.words(m.j, m.j + 1) == ["one"] and {"hand", "side"} & set(scene.words(scene.sentence.i, m.i)):
        return True
    if scene.sentence.section == "side":
        return True
    if len(scene.page.raw(m.i, m.j).strip(".()")) == 1:
        return _is_short_side(scene, m, after, before)
    if m.j - m.i > 1 or _names_part(scene, m.j) or (scene.header and _follows_digit(scene, m.i)):
        return True
    if after in _list("not_after_side"):
        return False
    if words[m.i] == "left" and (before in _list("left_as_verb") or not _is_title(scene)):
        return before in ("the", "his", "her", "patient's") and after in _list("side_ends")
    return _follows_part(scene, m.i) or before in ("the", "his", "her", "on", ":", "|", "side", "laterality")


_QUOTES = ('"', "'", "\u201c", "\u2018")


def _corrects(scene: Scene) -> bool:
    return bool({"read", "reads", "meant", "heard"} & set(scene.words(scene.sentence.i, scene.sentence.j)))


def _is_short_side(scene: Scene, m: Mention, after: str, before: str) -> bool:
    """'R MF', 'L hand', '(L)'; a letter among initials or after a figure is no side."""
    bracketed = "(" in scene.page.raw(m.i, m.j)
    if before[:1].isdecimal() or before == "." or (len(before) == 1 and before.isalpha() and not bracketed):
        return False
    if after == "." and not _names_part(scene, m.j + 1):
        return False
    if bracketed or _names_part(scene, m.j + (after == ".")):
        return True
    return after in ("", ":", ",") and _follows_part(scene, m.i)


def _names_part(scene: Scene, k: int) -> bool:
    """Tell whether a part of the arm or a digit is named at word k or just after it."""
    words = scene.words(k, min(k + 3, scene.sentence.j))
    if any(g.i <= k + 1 and k < g.j for g in scene.setting.groups) and words[:1] != [","]:
        return True
    if words[:1] and words[0] in ("-", "distal", "volar", "proximal", "dorsal"):
        words = words[1:]
    return bool(set(words[:1]) & _list("side_parts"))


def _follows_part(scene: Scene, k: int) -> bool:
    """Tell whether a digit or a part of the arm is named just before word k: 'palm, right', 'zone II, left'."""
    if _follows_digit(scene, k):
        return True
    before = scene.words(max(scene.sentence.i, k - 3), k)
    return bool(set(before) & (_list("side_parts") | {"zone", "ray"}))


def _follows_digit(scene: Scene, k: int) -> bool:
    return any(0 <= k - g.j <= 1 for g in scene.setting.groups if g.digits)


def _is_title(scene: Scene) -> bool:
    """Tell whether a sentence is a title, a diagnosis or another line without a verb."""
    titles = ("digit", "injury_date", "mechanism", "date")
    return scene.header or scene.sentence.block == 0 or scene.sentence.section in titles


# --- anaesthesia and mechanism


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
        doubt = "taken from the adrenaline or from 'awake'; the name of the technique is not told"
        _lay(desk, "anaesthesia", m, [(chosen[0], m)], "local with adrenaline", doubt)
        return
    if chosen:
        _lay(desk, "anaesthesia", chosen[1], told, "deepest anaesthesia stated")


def _was_given(desk: Desk, scene: Scene, m: Mention) -> bool:
    """Offered, declined and postoperative anaesthesia was not given; ordinary words need a context."""
    awake = m.value.startswith("wide")
    standing = ("", "story", "considered") if awake else ("", "story")
    if desk.page.standing[m.i] not in standing or scene.sentence.section in ("instructions", "previous"):
        return False
    if not awake and (scene.negated(m.i, m.j, 3) or _refused(scene, m)):
        return False
    word = " ".join(scene.words(m.i, m.j))
    near = {*scene.words(m.j, min(m.j + 4, scene.sentence.j)), *scene.words(max(scene.sentence.i, m.i - 3), m.i)}
    if word == "narcosis" and scene.next_word(m.j) in (":", "by"):
        return False
    beside = [o for o in scene.of("anaesthesia") if o is not m and abs(o.i - m.i) <= 6]
    if word == "general" and beside and "/" not in near:
        return True  # 'General plus infraclavicular catheter'
    if word in ("general", "local", "regional", "plexus", "axillary", "mac"):
        told = near | (set(scene.words(scene.sentence.i, scene.sentence.j)) - {"block"})
        return scene.sentence.section in ("anaesthesia", "anaesthetist") or bool(told & _list("anaesthetic_words"))
    if m.value == "local" and scene.sentence.section not in _list("anaesthetic_sections"):
        return not _list("for_pain") & set(scene.words(scene.sentence.i, scene.sentence.j))
    return True


def _kept_awake(scene: Scene) -> bool:
    """'1% lidocaine with 1:100 000 adrenaline', 'infiltration with epinephrine, patient awake'."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if "without" in words or "no" in words[: words.index("awake") if "awake" in words else 0]:
        return False
    return bool(_list("adrenaline") & set(words))


def _refused(scene: Scene, m: Mention) -> bool:
    """Tell whether an anaesthetic was offered or declined, within its own part of the sentence."""
    first, last = scene.part(m.i)
    near = scene.words(max(first, m.i - 3), min(last, m.j + 4))
    return bool(_list("refused") & set(near))


def _deepest(found: list[Told]) -> Told | None:
    return max(found, key=lambda f: (_DEPTH.index(f[1].value), -f[1].i)) if found else None


def _mechanism(desk: Desk) -> None:
    """Find how the injury came about, in the story, the diagnosis or the title."""
    found: list[tuple[int, Scene, Mention]] = []
    for scene in desk.scenes:
        section = scene.sentence.section
        rank = _STORY_FIRST.get(section, 3)
        if section == "admin" and scene.of("digit", "side"):
            rank = 2  # 'Re: man of 45, left thumb, glass door'
        elif section in _list("not_mechanism_sections") or (rank == 3 and not _tells_story(scene)):
            continue
        found += [(rank, scene, m) for m in scene.of("mechanism") if _is_mechanism(desk, scene, m)]
    torn = [(_STORY_FIRST.get(s.sentence.section, 3), s, m) for s in desk.scenes for m in _torn_tendon(s)]
    torn = [f for f in torn if _is_mechanism(desk, f[1], f[2])]
    found += [f for f in torn if f[1].header and f[2].value == "rupture" and not _names_injury(found)]
    found = found or ([] if _cut_by_something(desk) else torn)
    if not found:
        return
    chosen = min(_firmest(found), key=lambda f: (f[0], f[2].i))[2]
    _lay(desk, "mechanism", chosen, [(s, m) for _, s, m in found], "mechanism named")


def _torn_tendon(scene: Scene) -> list[Mention]:
    """'Rupture of a zone II repair', 'the tendon had ruptured completely', 'I found the profundus avulsed'."""
    if scene.sentence.section in _list("not_mechanism_sections") or scene.kinds.isdisjoint(("tendon", "generic")):
        return []
    words = [k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] in _TORN]
    return [Mention("mechanism", _TORN[scene.page.words[k]], k, k + 1) for k in words if scene.told(k)]


_TORN = {"rupture": "rupture", "ruptured": "rupture", "avulsed": "avulsion", "avulsion": "avulsion"}


def _names_injury(found: list[tuple[int, Scene, Mention]]) -> bool:
    """Tell whether a title or diagnosis names how it came about: 'crush injury' beside 'FDP rupture'."""
    return any(s.header and {"injury", "laceration"} & set(s.words(m.i, m.j + 1)) for _, s, m in found)


def _cut_by_something(desk: Desk) -> bool:
    """'Slashed her palm on a ...': a thing the vocabulary lacks, but that cut, is sharp."""
    for scene in desk.scenes:
        i, j = scene.sentence.i, scene.sentence.j
        if scene.sentence.section not in ("indication", "mechanism", "injury_date") and not _tells_story(scene):
            continue
        for k in range(i, j - 3):
            if scene.page.words[k] not in _list("cutting") or desk.page.standing[k] not in ("", "story"):
                continue
            by = next((m for m in range(k + 1, min(k + 9, j - 1)) if scene.page.words[m] in _list("cut_by")), None)
            if by is not None and not any(m.kind == "tendon" for m in scene.mentions):
                span = (k, min(by + 4, j))
                reason = "taken from the verb; the thing itself is not known"
                desk.add(scene, "operation", NOWHERE, "mechanism", "sharp", [span], "cut by a thing", reason)
                return True
    return False


def _is_mechanism(desk: Desk, scene: Scene, m: Mention) -> bool:
    if desk.page.standing[m.i] not in ("", "story", "question") or scene.negated(m.i, m.j, 2):
        return False
    if _is_no_thing(scene, m):
        return False
    if scene.next_word(m.j) in _list("trades") or (m.value == "bite" and _bites_of_a_stitch(scene, m)):
        return False
    return m.value != "rupture" or not _list("risk") & set(scene.words(scene.sentence.i, scene.sentence.j))


def _is_no_thing(scene: Scene, m: Mention) -> bool:
    """'I saw him in clinic', 'both stumps were crushed', 'a wire was passed': seeing, a state of the ends, a tool."""
    word = " ".join(scene.words(m.i, m.j))
    if word == "saw":
        return scene.word_before(m.i) in ("i", "he", "she", "we", "they", "who", "and", "it", "you", "him")
    if word in _list("tools"):
        return bool(_list("tool_work") & set(scene.words(scene.sentence.i, scene.sentence.j)))
    return word == "crushed" and bool(scene.of("endword", "extent"))


def _bites_of_a_stitch(scene: Scene, m: Mention) -> bool:
    """'~1 cm bites each side', 'epineurial bites': what a needle takes."""
    if scene.page.words[m.j - 1] not in ("bite", "bites") or m.j - m.i > 1:
        return False
    return bool(scene.of("material", "stitch", "pattern", "tendon", "strandword")) or any(
        q.unit == "mm" for q in scene.quantities
    )


def _firmest(found: list[tuple[int, Scene, Mention]]) -> list[tuple[int, Scene, Mention]]:
    """A rupture goes before all; a saw, a crush or a bite says more than 'broken' told in one breath with it."""
    ruptured = [f for f in found if f[2].value == "rupture"]
    others = [f for f in found if f[2].value not in ("rupture", "sharp")]
    if ruptured and not _names_injury(others):
        return ruptured
    found = others if ruptured else found
    special = [f for f in found if f[2].value != "sharp"]
    special = [f for f in special if f[0] <= 2] or special
    if not special:
        return found
    firm = [f for f in special if " ".join(f[1].words(f[2].i, f[2].j)) not in _list("weak_mechanism")]
    told = {id(f[1]) for f in special}
    return firm or [f for f in found if f[2].value == "sharp" and (f[0] <= 1 or id(f[1]) in told)] or special


def _tells_story(scene: Scene) -> bool:
    """Outside the story a mechanism counts only in a sentence that tells one, or at the start of the note."""
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if scene.sentence.block <= 1 and any(m.kind in ("digit", "side", "hurt", "zone") for m in scene.mentions):
        return True
    i, j = scene.sentence.i, scene.sentence.j
    if scene.sentence.block <= 2 and any(d.i >= i and d.j <= j for d in scene.page.dates):
        return True
    if _told_early(scene, words) or _cut_by_the_thing(scene):
        return True
    return len(words & _list("story")) >= 2


def _told_early(scene: Scene, words: set[str]) -> bool:
    """'Bench saw, 3 days back.', 'She had fallen on to a bottle', 'Slate edge 15/10/2032', before the operation."""
    i, j = scene.sentence.i, scene.sentence.j
    if 2 * i >= len(scene.page.words) or scene.page.standing[i] not in ("", "story") or words & _list("surgical"):
        return False
    if any(m.i == i and scene.next_word(m.j) in _MARKS for m in scene.of("mechanism")):
        return True
    dated = any(d.i >= i and d.j <= j for d in scene.page.dates)
    return dated or bool(words & _list("hurting"))


def _cut_by_the_thing(scene: Scene) -> bool:
    """'The A2 was cut by the original glass', 'already slit by the knife': what cut is told in the body."""
    for m in scene.of("mechanism"):
        before = scene.words(max(scene.sentence.i, m.i - 4), m.i)
        if "by" in before and scene.told(m.i) and not {"with", "and", ","} & set(before[before.index("by") :]):
            return bool(scene.of("extent", "hurt", "opened"))
    return False
