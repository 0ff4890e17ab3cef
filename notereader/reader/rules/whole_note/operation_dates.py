"""The days of the operation and of the injury: each date of a note belongs to the event told beside it."""

import re
from collections.abc import Callable
from datetime import date, timedelta

from notereader.reader.desk import Desk
from notereader.reader.page import FoundDate, Page
from notereader.reader.reasons import Reason
from notereader.reader.rules.whole_note.letter_days import counted_day
from notereader.reader.rules.whole_note.whole import NOWHERE, case_list, scene_at
from notereader.reader.scene import Scene


def operation_dates(desk: Desk) -> None:
    """Find the dates of operation and injury."""
    dates = desk.page.dates
    if not dates:
        return
    told, written = _told_and_written(desk, dates)
    chosen = told or written
    counted = counted_day(desk, chosen) if chosen is not None and told is None else None
    if counted is not None:
        value, i, j = counted
        desk.add(scene_at(desk, i), "operation", NOWHERE, "date", value, [(i, j)], "date", Reason("counted_back"))
    elif chosen is not None:
        _lay_date(desk, chosen, "date")
    injured = _injury_date(desk, dates, chosen)
    if injured is not None:
        scene = scene_at(desk, injured.i)
        headed = scene.sentence.section in ("injury_date", "mechanism", "indication")
        said = headed or _tells_injury(desk, scene, injured)
        doubts = [] if said else [Reason("shortly_before")]
        _lay_date(desk, injured, "injury_date", *doubts)
    reckoned = _reckoned(desk, chosen) if injured is None and chosen is not None else None
    if reckoned is not None:
        value, i, j = reckoned
        doubt = Reason("counted_back")
        desk.add(scene_at(desk, i), "operation", NOWHERE, "injury_date", value, [(i, j)], "injury date", doubt)


def _lay_date(desk: Desk, found: FoundDate, name: str, *doubts: Reason) -> None:
    scene = scene_at(desk, found.i)
    inferred = [Reason("order_inferred")] if found.inferred else []
    year = [Reason("no_year")] if found.yearless else []
    reasons = [*inferred, *year, *doubts]
    desk.add(scene, "operation", NOWHERE, name, found.value, [(found.i, found.j)], name.replace("_", " "), *reasons)


def _told_and_written(desk: Desk, dates: list[FoundDate]) -> tuple[FoundDate | None, FoundDate | None]:
    """Return the date told to be of the operation, and else the one that no words make another's: that of a letter."""
    full = [d for d in dates if not d.yearless]
    told = _first_of(desk, full, (_headed_date, _said_to_be_operation, _told_of_operating))
    written = _first_of(desk, full, (_no_other_date, _dictated_at_once)) if told is None else None
    return told or _first_of(desk, _shortly_before(dates, written), (_told_of_operating,)), written


def _shortly_before(dates: list[FoundDate], written: FoundDate | None) -> list[FoundDate]:
    """Return the dates without a year that may be of the operation a letter tells of, written at most so much later."""
    return [d for d in dates if d.yearless and (written is None or 0 <= _days_between(d, written) <= _LATELY)]


def _first_of(
    desk: Desk, dates: list[FoundDate], tests: tuple[Callable[[Desk, FoundDate], bool], ...]
) -> FoundDate | None:
    for test in tests:
        for found in dates:
            if test(desk, found):
                return found
    return None


def _headed_date(desk: Desk, found: FoundDate) -> bool:
    headed = scene_at(desk, found.i).sentence.section == "date"
    return headed and not set(_before(desk.page, found, 2)) & case_list("accident")


def _said_to_be_operation(desk: Desk, found: FoundDate) -> bool:
    """'Operation of 30.06.2037', 'Done 2027-10-05', 'Date of surgery is June 21', 'Operation, 30 April 2035: ...'."""
    section = scene_at(desk, found.i).sentence.section
    if section in ("indication", "previous", "injury_date", "instructions"):
        return False
    if not _FIRST_ONES.isdisjoint(_before(desk.page, found, 3)):
        return False  # '1st op (9/5/2031): two strands'
    if _heads_the_note(desk, found):
        return True
    if _is_the_day_of(desk, found):
        return True
    near = [w for w in _before(desk.page, found, 5) if w.isalpha() and w not in case_list("little")]
    last = near[-1:] if section != "procedure" else near
    return bool(set(last) & case_list("surgery")) and not set(near) & case_list("elsewhere")


def _heads_the_note(desk: Desk, found: FoundDate) -> bool:
    """'30/5/2031 OT note, re-rupture left ring': a day that opens the note, before its title."""
    behind = desk.page.words[found.j : found.j + 3]
    return (
        found.i <= 1 and "note" in behind and not {"ot", "op", "operation", "theatre", "operative"}.isdisjoint(behind)
    )


def _is_the_day_of(desk: Desk, found: FoundDate) -> bool:
    """'12.03.2032 is the day of this operation', 'Day 19 January 2031' and 'Dt 5 Feb 2031' at the head of a note."""
    behind = desk.page.words[found.j : found.j + 8]
    stated = behind[:1] in (["is"], ["was"]) and not {"day", "date"}.isdisjoint(behind[1:4])
    if stated and not case_list("surgery").isdisjoint(behind):
        return True
    before = _before(desk.page, found, _HEAD)
    return found.i < _HEAD and before[-1:] in (["day"], ["dt"]) and "dd" not in before  # of a typist: 'DD ... DT ...'


_HEAD = 40  # words
_FIRST_ONES = frozenset(["1st", "first", "original", "earlier", "previous"])


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
        if k in own or words[k] in case_list("injury") or words[k] in (";", "."):
            break
        if (
            words[k] in case_list("operating")
            or words[k - 1 : k + 1] in (["i", "did"], ["we", "did"])
            or (words[k] in case_list("repairs") and _ends_title(scene, found))
        ):
            return not set(scene.words(scene.sentence.i, scene.sentence.j)) & case_list("elsewhere_first")
    if scene.word_before(found.i) not in ("", "on", ",", ":", "and"):
        return False
    after = [w for w in words[found.j : min(found.j + 7, scene.sentence.j)] if w.isalpha()]
    led = {"i", "we"} & set(after[:2]) or {"was", "were"} & set(after)
    if after[:1] == ["and"] and _tells_injury(desk, scene, found):
        return False  # 'cut by a chisel on 16 January and we operated because ...'
    return bool(led) and bool(set(after) & case_list("operating"))


def _ends_title(scene: Scene, found: FoundDate) -> bool:
    """'re: repair of finger flexors, right hand, 6 June': a date that ends a line without a verb."""
    verbs = {"was", "were", "had", "has", "is", "will", "who"} & set(scene.words(scene.sentence.i, scene.sentence.j))
    return found.j >= scene.sentence.j - 1 and not verbs


def _no_other_date(desk: Desk, found: FoundDate) -> bool:
    scene = scene_at(desk, found.i)
    if scene.sentence.section in case_list("not_operation_sections") or desk.page.standing[found.i] == "history":
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
    if set(before) & case_list("other_dates"):
        return True
    return "clinic" in before and "," not in before and "today" not in before


def _tells_injury(desk: Desk, scene: Scene, found: FoundDate) -> bool:
    """Tell whether the words beside a date speak of the accident; words right before another date are that one's."""
    if set(_before(desk.page, found, 4)) & case_list("surgery"):
        return False
    low, high = max(scene.sentence.i, found.i - 14), min(scene.sentence.j, found.j + 14)
    near = {k for k in range(low, high) if desk.page.words[k] in case_list("injury")}
    near |= {m.i for m in scene.mentions if m.kind == "mechanism"}
    for other in (d for d in desk.page.dates if d is not found and low <= d.i < high):
        behind = range(_clause_of(desk.page, found, other), scene.sentence.j)
        near -= set(behind if other.i > found.i else range(low, other.j))
    return bool(near)


def _clause_of(page: Page, found: FoundDate, other: FoundDate) -> int:
    """'Operated 5 May; the wound is one day old, from 4 May': where what is told of a later date begins."""
    breaks = [k for k in range(found.j, other.i) if page.words[k] in _BREAKS]
    return min(breaks[0] if breaks else other.i, other.i - _BESIDE)


_BREAKS = frozenset([";", "and", ".", "+", "while", "after", "but"])
_BESIDE = 4  # words


def _injury_date(desk: Desk, dates: list[FoundDate], chosen: FoundDate | None) -> FoundDate | None:
    """Return the date of injury: under its heading, beside words of the accident, else the one told shortly before."""
    open_dates = [d for d in dates if d is not chosen and (chosen is None or d.value <= chosen.value)]
    for found in open_dates:
        if scene_at(desk, found.i).sentence.section in ("injury_date", "mechanism") or _accident_of(desk.page, found):
            return found
    told = [d for d in open_dates if _may_be_injury(desk, d) or _lately_hurt(desk, d, chosen)]
    beside = [d for d in told if _tells_injury(desk, scene_at(desk, d.i), d)]
    if chosen is None:
        return beside[0] if beside else None
    near = [d for d in told if 0 <= _days_between(d, chosen) <= 42 and d.value != chosen.value and not d.yearless]
    return next(iter([d for d in beside if d.value != chosen.value] or near or beside), None)


def _lately_hurt(desk: Desk, found: FoundDate, chosen: FoundDate | None) -> bool:
    """'As you will remember a jar had shattered on 18 September': an accident of the days before the operation."""
    if chosen is None or desk.page.standing[found.i] != "history" or found.yearless:
        return False
    near = set(_before(desk.page, found, 12)) & case_list("elsewhere")
    scene = scene_at(desk, found.i)
    return not near and 0 < _days_between(found, chosen) <= _LATELY and _tells_injury(desk, scene, found)


_LATELY = 14  # days
_EARLIER = ("before surgery", "before the operation", "prior to surgery", "prior to the operation", "before operation")
_ACCIDENTS = ("hurt", "injured", "accident", "injury")
_PARTS_OF_DAY = ("morning", "afternoon", "evening", "night")
_RECKONED = {
    **dict.fromkeys(("yesterday", "the day before", "the evening before", "the night before", "last night"), 1),
    **dict.fromkeys((f"the {t} prior to" for t in ("day", "evening", "night", "afternoon")), 1),
    **dict.fromkeys((f"{n} {d} {w}" for n, d in (("one", "day"), ("1", "day")) for w in _EARLIER), 1),
    **dict.fromkeys((f"{n} days {w}" for n in ("two", "2") for w in _EARLIER), 2),
    **dict.fromkeys((f"{n} days {w}" for n in ("three", "3") for w in _EARLIER), 3),
    **dict.fromkeys(("today", "this morning", "this evening", "this afternoon", "same day", "earlier today"), 0),
    **dict.fromkeys((f"{a} {t}same {d}" for a in _ACCIDENTS for t in ("", "the ", "that ") for d in _PARTS_OF_DAY), 0),
}


def _reckoned(desk: Desk, chosen: FoundDate) -> tuple[str, int, int] | None:
    """'Yesterday she put her hand through a window': the day and its words, counted from the day of the operation."""
    early = max(8, len(desk.scenes) // 3)
    for n, scene in enumerate(desk.scenes):
        if scene.said.isdisjoint(_DAYS) or scene.sentence.section in case_list("not_injury_sections"):
            continue
        if n >= early and scene.sentence.section not in ("indication", "mechanism"):
            continue
        told = scene.of("mechanism") or scene.said & case_list("injury") or scene.said & case_list("accident")
        dated = any(scene.sentence.i <= d.i < scene.sentence.j and d is not chosen for d in desk.page.dates)
        away = any(_is_elsewhere(scene, k) for k in range(scene.sentence.i, scene.sentence.j))
        if not told or dated or away or scene.said & case_list("operating"):
            continue
        for k in range(scene.sentence.i, scene.sentence.j):
            if scene.word_before(k) in _OF_THE_CONSENT:
                continue
            for phrase, days in _RECKONED.items():
                parts = phrase.split()
                if scene.words(k, k + len(parts)) == parts and desk.page.standing[k] != "history":
                    day = date.fromisoformat(chosen.value) - timedelta(days=days)
                    return day.isoformat(), k, k + len(parts)
    return None


# 'Consent signed today, including nerve injury' tells no day of an accident.
_OF_THE_CONSENT = frozenset(
    ["signed", "consented", "consent", "discussed", "explained", "obtained", "confirmed", "again"]
)
_DAYS = frozenset(["yesterday", "before", "prior", "last", "today", "this", "same", "earlier"])


def _accident_of(page: Page, found: FoundDate) -> bool:
    """'accident of 13.05.2034', 'injured 1 May 2040', 'inj. 29.07.2038', 'DOI 17/11/31'."""
    before = [w for w in _before(page, found, 4) if w.isalpha() and w not in case_list("little")]
    return bool(set(before[-1:]) & case_list("accident"))


def _may_be_injury(desk: Desk, found: FoundDate) -> bool:
    scene = scene_at(desk, found.i)
    if scene.sentence.section in ("signature", "instructions", "previous", "addendum"):
        return False
    if scene.sentence.section in ("date", "admin") and not scene.of("mechanism"):
        return False
    if desk.page.standing[found.i] == "history" or _is_other(desk.page, scene, found) or _comes_in(scene, found):
        return False
    _, last = scene.part(found.i)
    first = max([scene.sentence.i, found.i - 8, *(d.j for d in desk.page.dates if d.j <= found.i)])
    own = set(scene.words(first, last))
    if own & case_list("injury") and not own & case_list("elsewhere"):
        return True
    low, high = max(scene.sentence.i, found.i - _SAID_BEFORE), min(scene.sentence.j, found.j + _SAID_BEHIND)
    return not any(_is_elsewhere(scene, k) for k in range(low, high))


_SAID_BEFORE, _SAID_BEHIND = 24, 16  # words of a long sentence that still speak of its date


def _is_elsewhere(scene: Scene, k: int) -> bool:
    """Tell whether a word makes an event one of another time or place; 'six days earlier', 'another player' do not."""
    word = scene.page.words[k]
    if word == "another":
        return bool(set(scene.words(k + 1, min(k + 3, scene.sentence.j))) & case_list("places"))
    if word == "earlier":
        behind = [w for w in scene.words(k + 1, min(k + 3, scene.sentence.j)) if w != "on"][:1]
        if behind in (["today"], ["this"], ["yesterday"]):
            return False  # 'his hand slipped into the blade earlier today'
        return scene.word_before(k) not in ("days", "day", "hours", "evenings", "weeks")
    return word in case_list("elsewhere")


def _comes_in(scene: Scene, found: FoundDate) -> bool:
    """'On 30 May 2030 we took up the patient', 'came to us on the night of 3 February': the day of coming in."""
    near = scene.words(max(scene.sentence.i, found.i - 10), min(scene.sentence.j, found.j + 5))
    said = " ".join(near)
    return any(f" {phrase} " in f" {said} " for phrase in _COMING)


_COMING = (
    "came to us",
    "came in to us",
    "came in on",
    "brought in",
    "took up",
    "taken up",
    "was admitted",
    "were admitted",
    "came to the",
)


def _days_between(first: FoundDate, second: FoundDate) -> int:
    return (date.fromisoformat(second.value) - date.fromisoformat(first.value)).days
