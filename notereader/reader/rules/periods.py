"""Days and weeks of the orders: when motion or therapy starts, and how long the splint is worn."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from notereader.reader.desk import Desk
from notereader.reader.measures import figure_at
from notereader.reader.rules.whole import NOWHERE, Span, is_order, is_other_section, order_list
from notereader.reader.scene import Scene
from notereader.record.values import Interval

_NTH = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_ENDINGS = {1: "st", 2: "nd", 3: "rd", 21: "st"}
_ORDINALS = {word: n for n, word in enumerate(_NTH, 1)} | {"next": 1}
_ORDINALS |= {f"{n}{_ENDINGS.get(n, 'th')}": n for n in range(1, 22)}
_SHORT_DAY = re.compile(r"(?:d|pod|day)(\d{1,2})\Z")
_DAY_WORDS = frozenset(["day", "days", "pod", "d"])
_WEEK_WORDS = frozenset(["week", "weeks", "wk", "wks"])
_CARE = frozenset(["instructions", "splint", "dressing", "closure"])
_LATEST = 120  # the last day of the scale the field takes


@dataclass(frozen=True, slots=True)
class Period:
    """A number of days or weeks, words i to j; `counted`: it is a length of time ('3 days'), not a day ('day 3')."""

    low: float
    high: float
    i: int
    j: int
    counted: bool = False


# --- start of motion or therapy


def start(desk: Desk) -> None:
    """'from day 4', 'D3-5', 'on the third postoperative day', 'at 48 hours', 'day 3-5, early active'."""
    for scene in desk.scenes:
        if is_other_section(scene) or scene.sentence.section in ("consent", "date", "anaesthesia", "tourniquet"):
            continue
        if scene.sentence.section not in _CARE and not scene.of("therapy", "programme"):
            continue
        for period in _days(scene):
            if is_order(desk, scene, period.i) and _starts_motion(scene, period):
                value = Interval(low=period.low, high=period.high)
                span = (period.i, period.j)
                doubts = [] if _says_day(scene, period) else ["the day is reckoned from hours, weeks or 'tomorrow'"]
                desk.add(scene, "aftercare", NOWHERE, "start_day", value, [span], "start of motion or therapy", *doubts)
                return


def _says_day(scene: Scene, period: Period) -> bool:
    return not period.counted or any(q.i == period.i and q.unit == "day" for q in scene.quantities)


def _days(scene: Scene) -> Iterator[Period]:
    """Yield the days a sentence names, in order."""
    k = scene.sentence.i
    counted = {q.i for q in scene.quantities}
    while k < scene.sentence.j:
        word = scene.page.words[k]
        if k not in counted and word[0] not in "dp" and word != "tomorrow" and word not in _ORDINALS:
            k += 1
            continue
        found = _short_day(scene, k) or _day_figure(scene, k) or _nth_day(scene, k) or _count_of_days(scene, k)
        if found is not None and 0 <= found.low <= found.high <= _LATEST:
            yield found
            k = max(found.j, k + 1)
        else:
            k += 1


def _short_day(scene: Scene, k: int) -> Period | None:
    """'D3', 'POD3', 'D3-5', 'tomorrow'."""
    words = scene.page.words
    match = _SHORT_DAY.match(words[k])
    if match is None:
        told = words[k] == "tomorrow" and scene.next_word(k + 2) not in _DAY_WORDS
        return Period(1, 1, k, k + 1, counted=True) if told else None
    low = float(match[1])
    return _with_upper(scene, low, k, k + 1) if low <= 30 else None


def _day_figure(scene: Scene, k: int) -> Period | None:
    """'day 4', 'POD 4', 'days 3 to 5', 'between day 3 and day 5', 'From which day? 5'."""
    words = scene.page.words
    if words[k] not in _DAY_WORDS:
        return None
    at = k + 1
    while at < scene.sentence.j and words[at] in ("?", ".", "#", ":", "no"):
        at += 1
    figure = figure_at(scene.page, at) if at < scene.sentence.j else None
    return _with_upper(scene, figure[0], k, figure[1]) if figure is not None else None


def _with_upper(scene: Scene, low: float, i: int, j: int) -> Period:
    """Add the upper end of a range that goes on at word j: '-5', 'to 5', 'or 4', 'and day five'."""
    words, end = scene.page.words, scene.sentence.j
    if j + 1 < end and words[j] in ("-", "to", "or", "/", "and", "until"):
        at = j + 2 if words[j + 1] in _DAY_WORDS and j + 2 < end else j + 1
        short = _SHORT_DAY.match(words[at])
        figure = (float(short[1]), at + 1) if short else figure_at(scene.page, at)
        joined = words[j] != "and" or words[j + 1] in _DAY_WORDS or "between" in words[max(i - 2, 0) : i]
        if figure is not None and figure[0] > low and joined:
            return Period(low, figure[0], i, figure[1])
    return Period(low, low, i, j)


def _nth_day(scene: Scene, k: int) -> Period | None:
    """'third postoperative day', '3rd POD', 'from the 2nd day on', 'third to fifth day'."""
    words = scene.page.words
    if words[k] not in _ORDINALS:
        return None
    ahead = words[k + 1 : min(k + 7, scene.sentence.j)]
    at = next((n for n, w in enumerate(ahead) if w in ("day", "pod")), None)
    if at is None or any(w not in order_list("before_day") and w not in _ORDINALS for w in ahead[:at]):
        return None
    uppers = [_ORDINALS[w] for w in ahead[:at] if w in _ORDINALS]
    low = float(_ORDINALS[words[k]])
    return Period(low, float(uppers[-1]) if uppers and uppers[-1] > low else low, k, k + at + 2)


def _count_of_days(scene: Scene, k: int) -> Period | None:
    """'3-5/7 post-op', 'after 4 days', 'at 48 hours', 'from 3 weeks'."""
    q = next((q for q in scene.quantities if q.i == k and q.low is not None and q.high is not None), None)
    if q is None or q.low is None or q.high is None:
        return None
    if q.unit == "day":
        return Period(q.low, q.high, q.i, q.j, counted=True)
    if q.unit == "week" and scene.next_word(q.j) != "/" and scene.word_before(q.i) in ("from", "at", "after"):
        return Period(7 * q.low, 7 * q.high, q.i, q.j, counted=True)
    hours = {scene.page.words[q.j - 1], scene.next_word(q.j)} & {"hours", "hour", "hrs", "h"}
    if hours and q.low % 24 == 0 and q.low > 0:
        return Period(q.low / 24, q.high / 24, q.i, q.j, counted=True)
    return None


def _starts_motion(scene: Scene, period: Period) -> bool:
    """Tell whether motion or therapy starts on that day, not the next clinic, the stitches or an X-ray."""
    first, last = scene.part(period.i)
    part = set(scene.words(first, last))
    visits = [k for k in range(first, period.i) if scene.page.words[k] in order_list("other_visits")]
    moves = [m for m in scene.of("therapy", "programme") if max(visits, default=first) <= m.i < last]
    if not moves and part & order_list("other_visits"):
        return False
    if period.counted and not _counts_from_operation(scene, period, bool(moves)):
        return False
    begins = part & order_list("begins") and scene.sentence.section in _CARE
    return bool(scene.of("therapy", "programme")) or bool(begins)


def _counts_from_operation(scene: Scene, period: Period, moves: bool) -> bool:
    """Tell whether a length of time is counted from the operation to the start, and is not how long something lasts."""
    around = set(scene.words(max(scene.sentence.i, period.i - 6), min(scene.sentence.j, period.j + 5)))
    if scene.word_before(period.i) in ("for", "over", "during", "every") or around & order_list("not_a_start"):
        return False
    if period.low >= 14:
        return moves and bool(around & order_list("begins"))
    return bool(around & (order_list("begins") | order_list("counted_from")))


# --- weeks of splint


def weeks(desk: Desk) -> None:
    """'splint 6/52', 'immobilised four weeks', 'in the slab 4 weeks', 'DBS for 6 weeks', 'Splint [6] weeks'."""
    for scene in desk.scenes:
        if is_other_section(scene) or scene.sentence.section == "consent":
            continue
        for period in _weeks(scene):
            splint = _splint_beside(scene, period) if is_order(desk, scene, period.i) else None
            if splint is not None:
                value = Interval(low=period.low, high=period.high)
                span = (min(splint[0], period.i), max(splint[1], period.j))
                desk.add(scene, "aftercare", NOWHERE, "splint_weeks", value, [span], "weeks of splint")
                return


def _weeks(scene: Scene) -> Iterator[Period]:
    """Yield the numbers of weeks a sentence names: '6 weeks', '6/52', '[6] weeks', 'Weeks? 5 to 6'."""
    for q in scene.quantities:
        if q.low is None or q.high is None:
            continue
        if q.unit == "week" and scene.next_word(q.j) != "/":
            yield Period(q.low, q.high, q.i, q.j, counted=True)
        elif q.unit == "" and scene.next_word(q.j) == "]" and scene.next_word(q.j + 1) in _WEEK_WORDS:
            yield Period(q.low, q.high, q.i, q.j + 2, counted=True)
        elif q.unit == "" and scene.words(q.i - 2, q.i)[-1:] == ["?"] and scene.word_before(q.i - 1) in _WEEK_WORDS:
            yield Period(q.low, q.high, q.i - 2, q.j, counted=True)


def _splint_beside(scene: Scene, period: Period) -> Span | None:
    """Return the words of the splint or the rest that lasts so long, or None where the weeks are of something else."""
    first, last = scene.part(period.i)
    words = set(scene.words(first, last))
    marks = [m for m in scene.of("splint", "programme") if m.kind == "splint" or m.value == "immobilisation"]
    inside = [m for m in marks if first <= m.i < last]
    before = scene.word_before(period.i)
    if inside:
        waits = before in ("at", "after", "in") and "for" not in words
        return None if waits else (inside[0].i, inside[0].j)
    near = scene.words(max(first, period.i - 4), min(last, period.j + 2))
    if words & order_list("not_splint") or set(near) & {"at", "review", "clinic", "after"}:
        return None
    worn = next((k for k in range(first, last) if scene.page.words[k] in order_list("worn")), None)
    if worn is not None:
        return worn, worn + 1
    if scene.sentence.section == "splint" and not marks:
        return period.i, period.j
    return _splint_before(scene, period, [(m.i, m.j) for m in marks], before)


def _splint_before(scene: Scene, period: Period, marks: list[Span], before: str) -> Span | None:
    """'DBS, wrist 20 flexed, MCPs 60, for 4 weeks': the weeks end a list that a splint began."""
    earlier = [m for m in marks if m[0] < period.i]
    if not earlier or before not in ("for", ",", "x", "full", "of", "during"):
        return None
    far = period.i - earlier[-1][1]
    between = set(scene.words(earlier[-1][1], period.i))
    if far > 12 and (before not in ("for", "during") or between & order_list("not_splint") or far > 40):
        return None
    return earlier[-1]
