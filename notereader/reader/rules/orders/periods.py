"""Days and weeks of the orders: when motion or therapy starts, and how long the splint is worn."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.mentions.measures import figure_at
from notereader.reader.page import Break
from notereader.reader.reasons import Reason
from notereader.reader.rules.orders.rest import ordered_rest
from notereader.reader.rules.orders.rest_then_motion import rests_before_motion
from notereader.reader.rules.whole_note.whole import NOWHERE, Span, is_order, is_other_section, order_list
from notereader.reader.scene import Scene
from notereader.record.values import Interval

_NTH = (
    *("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"),
    *("eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth"),
)
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
    """'from day 4', 'D3-5', 'on the third postoperative day', 'at 48 hours', 'day 3-5, early active'; and a correction.

    'Tomorrow' counts where no day is told.
    """
    told = [f for f in _starts(desk) if not _withdrawn(*f)]
    told = told or [(r.scene, Period(7 * r.low, 7 * r.high, *r.span, counted=True)) for r in rests_before_motion(desk)]
    sure = [f for f in told if not _is_soon(*f)]
    firm = [f for f in sure if not _is_dated(*f)] or sure or told
    firm = [*(f for f in firm if f[0] is firm[0][0] and _begins_then(*f)), *firm]
    corrected = [f for f in firm if desk.page.in_addendum(f[0].sentence)]
    for scene, period in dict.fromkeys([*firm[:1], *corrected[:1]]):
        value = Interval(low=period.low, high=period.high)
        doubts = [] if _says_day(scene, period) else [Reason("day_reckoned")]
        span = (period.i, period.j)
        desk.add(scene, "aftercare", NOWHERE, "start_day", value, [span], "start of motion or therapy", *doubts)


def _begins_then(scene: Scene, period: Period) -> bool:
    """'Button off at 6 weeks passive flexing starting at one week': of two times the one that a start leads to."""
    return not _BEGINNING.isdisjoint(scene.words(max(scene.sentence.i, period.i - _LED), period.i))


_BEGINNING = frozenset(
    ["starting", "beginning", "start", "starts", "begin", "begins", "commencing", "commences", "commence"]
)
_LED = 3  # words


def _withdrawn(scene: Scene, period: Period) -> bool:
    """'Motion from day 4 withdrawn: begin on day 6'."""
    behind = [w for w in scene.words(period.j, min(period.j + 3, scene.sentence.j)) if w not in ("is", "was", "now")]
    return behind[:1] != [] and behind[0] in order_list("withdrawn")


def _starts(desk: Desk) -> Iterator[tuple[Scene, Period]]:
    """Yield the days on which motion or therapy is told to start."""
    for scene in desk.scenes:
        if is_other_section(scene) or scene.sentence.section in ("consent", "date", "anaesthesia", "tourniquet"):
            continue
        labelled = _labels_a_start(scene)
        if scene.sentence.section not in _CARE and not scene.of("therapy", "programme") and not labelled:
            continue
        for period in _days(scene):
            asked = scene.word_before(period.i) == "?" and scene.sentence.section in _CARE and period.counted is False
            if not asked and is_order(desk, scene, period.i) and (labelled or _starts_motion(scene, period)):
                yield scene, period
        yield from ((scene, period) for period in _by_date(desk, scene))


def _by_date(desk: Desk, scene: Scene) -> Iterator[Period]:
    """'Hand therapy 22.04', 'the therapists see him on 14 February': counted from the day of the operation."""
    told = [f for f in desk.told_of("operation", NOWHERE) if f.field == "date"]
    if not told or not scene.of("therapy", "programme") or scene.sentence.section not in (*_CARE, "narrative"):
        return
    operated = date.fromisoformat(str(told[0].value))
    for found in desk.page.dates:
        if not scene.sentence.i <= found.i < scene.sentence.j or not is_order(desk, scene, found.i):
            continue
        days = (date.fromisoformat(found.value) - operated).days
        part = set(scene.words(*scene.part(found.i)))
        led = scene.word_before(found.i) in ("on", "from", ",") or any(m.j == found.i for m in scene.of("therapy"))
        near = any(abs(m.i - found.i) <= 9 for m in scene.of("therapy", "programme"))
        if 0 < days <= 42 and led and near and not part & order_list("other_visits"):
            yield Period(days, days, found.i, found.j, counted=True)


def _labels_a_start(scene: Scene) -> bool:
    """'START  day 5', 'Start ....... day 4' on a form."""
    words = scene.words(scene.sentence.i, min(scene.sentence.i + 2, scene.sentence.j))
    late = 2 * scene.sentence.i > len(scene.page.words)
    return late and words[:1] in (["start"], ["begin"]) and all(not w.isalpha() or w in _LABEL for w in words)


_LABEL = frozenset(["start", "begin", "day", "on", "at", "therapy", "days"])


def _is_dated(scene: Scene, period: Period) -> bool:
    return any(d.i == period.i for d in scene.page.dates)


def _is_soon(scene: Scene, period: Period) -> bool:
    return scene.page.words[period.i] in ("tomorrow", "next")


def _says_day(scene: Scene, period: Period) -> bool:
    return not period.counted or any(q.i == period.i and q.unit == "day" for q in scene.quantities)


def _days(scene: Scene) -> Iterator[Period]:
    """Yield the days a sentence names, in order."""
    k = scene.sentence.i
    counted = {q.i for q in scene.quantities}
    while k < scene.sentence.j:
        word = scene.page.words[k]
        if k not in counted and word[0] not in "dp" and word not in _DAY_BEGINS and word not in _ORDINALS:
            k += 1
            continue
        found = _short_day(scene, k) or _day_figure(scene, k) or _nth_day(scene, k) or _count_of_days(scene, k)
        if found is not None and 0 <= found.low <= found.high <= _LATEST:
            yield found
            k = max(found.j, k + 1)
        else:
            k += 1


def _short_day(scene: Scene, k: int) -> Period | None:
    """'D3', 'POD3', 'D3-5', 'tomorrow', 'from the evening of surgery'."""
    words = scene.page.words
    match = _SHORT_DAY.match(words[k])
    if match is None and words[k : k + 1] == ["from"]:
        n = next((n for n, phrase in enumerate(_AT_ONCE) if words[k : k + len(phrase)] == phrase), None)
        later = words[k - 1] in _DAY_WORDS | _WEEK_WORDS  # 'two weeks from today'
        return Period(0, 0, k, k + len(_AT_ONCE[n])) if n is not None and not later else None
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
    if scene.next_word(at) == "l" and scene.next_word(at + 1) in ("", ",", ".", ";"):
        return Period(1, 1, k, at + 1)  # 'day l' of a scan
    figure = figure_at(scene.page, at) if at < scene.sentence.j else None
    return _with_upper(scene, figure[0], k, figure[1]) if figure is not None else None


_DAY_BEGINS = frozenset(["tomorrow", "from"])
_AT_ONCE = [
    phrase.split()
    for phrase in (
        *("from the evening of surgery", "from the evening of the operation", "from the day of surgery"),
        *("from the day of operation", "from the day of the operation", "from the same evening", "from this evening"),
        *("from today", "from tonight", "from the same day"),
    )
]


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
    tens = 1 + (words[k - 1] == "-") if "twenty" in (words[k - 1], "".join(words[k - 2 : k]).rstrip("-")) else 0
    if tens:  # 'from the twenty-second day'
        return Period(_TWENTY + low, _TWENTY + low, k - tens, k + at + 2)
    return Period(low, float(uppers[-1]) if uppers and uppers[-1] > low else low, k, k + at + 2)


_TWENTY = 20


def _count_of_days(scene: Scene, k: int) -> Period | None:
    """'3-5/7 post-op', 'after 4 days', 'at 48 hours', 'from 3 weeks'."""
    q = next((q for q in scene.quantities if q.i == k and q.low is not None and q.high is not None), None)
    if q is None or q.low is None or q.high is None:
        return None
    if q.unit == "day":
        return Period(q.low, q.high, q.i, q.j, counted=True)
    therapy = q.low <= 1 and any(m.j == _past_in(scene, q.i) for m in scene.of("therapy"))
    next_week = therapy and scene.next_word(q.j) != "for"  # 'Hand therapy 1/52', but '... 1/52 for a new splint'
    led = next_week or scene.word_before(q.i) in ("from", "at", "after") or _after_operation(scene, q.j)
    if q.unit == "week" and scene.next_word(q.j) != "/" and led:
        return Period(7 * q.low, 7 * q.high, q.i, q.j, counted=True)
    hours = {scene.page.words[q.j - 1], scene.next_word(q.j)} & {"hours", "hour", "hrs", "h"}
    if hours and q.low % 24 == 0 and q.low > 0:
        return Period(q.low / 24, q.high / 24, q.i, q.j, counted=True)
    return None


def _after_operation(scene: Scene, j: int) -> bool:
    """'Therapy to commence two weeks after operation', '2 weeks from surgery', 'two weeks from today'."""
    behind = [w for w in scene.words(j, j + 3) if w not in ("the", "this")]
    return len(behind) > 1 and behind[0] in ("after", "from", "following") and behind[1] in _THAT_DAY


_THAT_DAY = frozenset(["operation", "surgery", "today", "repair"])


def _starts_motion(scene: Scene, period: Period) -> bool:
    """Tell whether motion or therapy starts on that day, not the next clinic, the stitches or an X-ray."""
    first, last = scene.part(period.i)
    part = set(scene.words(first, last))
    visits = [k for k in range(first, period.i) if scene.page.words[k] in order_list("other_visits")]
    visits = [k for k in visits if not any(m.j == k for m in scene.of("therapy"))]  # 'HT appointment day 4'
    moves = [m for m in scene.of("therapy", "programme") if max(visits, default=first) <= m.i < last]
    if not moves and part & order_list("other_visits"):
        return False
    if _heads_therapy(scene, period):
        return True
    if period.counted and not _counts_from_operation(scene, period, bool(moves)):
        return False
    begins = part & (order_list("begins") - {"on"}) and scene.sentence.section in _CARE
    return bool(scene.of("therapy", "programme")) or bool(begins)


def _heads_therapy(scene: Scene, period: Period) -> bool:
    """'HT: 3-5 days', 'Hand therapy: 3 to 5 days'."""
    led = scene.words(scene.sentence.i, period.i)
    therapy = [m for m in scene.of("therapy") if m.j <= period.i]
    if period.low >= 14 or not therapy:
        return False
    short = (
        period.counted and therapy[-1].j == _past_in(scene, period.i) and scene.next_word(period.j) not in _OFTEN
    )  # 'HT 4/7'
    return short or (led[-1:] in ([":"], ["?"]) and len(led) <= 4)


def _past_in(scene: Scene, k: int) -> int:
    """'OT in one week', 'hand therapy after 4 days': return the word before which the time is counted."""
    return k - (scene.word_before(k) in ("in", "after"))


_OFTEN = frozenset(["a", "per", "each", "weekly"])


def _counts_from_operation(scene: Scene, period: Period, moves: bool) -> bool:
    """Tell whether a length of time is counted from the operation to the start, and is not how long something lasts."""
    around = set(scene.words(max(scene.sentence.i, period.i - 6), min(scene.sentence.j, period.j + 5)))
    if scene.next_word(period.j) in _OFTEN:
        return False  # 'HT 3 days a week'
    if scene.word_before(period.i) in ("for", "over", "during", "every") or around & order_list("not_a_start"):
        return False
    if period.low >= 14:
        return moves and bool(around & order_list("begins"))
    return bool(around & (order_list("begins") | order_list("counted_from")))


# --- weeks of splint


def weeks(desk: Desk) -> None:
    """'splint 6/52', 'immobilised four weeks', 'Splint [6] weeks', 'splint off at 5 weeks'; and a correction."""
    found: list[tuple[Scene, Period, Span]] = []
    for scene in desk.scenes:
        if is_other_section(scene) or scene.sentence.section == "consent":
            continue
        for period in _weeks(scene):
            splint = _splint_beside(desk, scene, period) if is_order(desk, scene, period.i) else None
            if splint is not None:
                found.append((scene, period, (min(splint[0], period.i), max(splint[1], period.j))))
    corrected = [f for f in found if desk.page.in_addendum(f[0].sentence)]
    first = [f for f in found if _in_total(f[0], f[1])] or found
    for scene, period, span in dict.fromkeys([*first[:1], *corrected[:1]]):
        high = (
            None
            if {"least", "minimum"} & set(scene.words(max(scene.sentence.i, period.i - 2), period.i))
            else period.high
        )
        value = Interval(low=period.low, high=high)
        desk.add(scene, "aftercare", NOWHERE, "splint_weeks", value, [span], "weeks of splint")


def _in_total(scene: Scene, period: Period) -> bool:
    """'Immobilised 3 weeks, ... Splint total 7 weeks', '6 weeks altogether': the sum, whatever part of it was told."""
    around = [*scene.words(period.i - 2, period.i), *scene.words(period.j, min(period.j + 2, scene.sentence.j))]
    return not _TOTALS.isdisjoint(around) or not _SUMMED.isdisjoint(pairwise(around))


_TOTALS = frozenset(["total", "altogether", "totally"])
_SUMMED = frozenset([("in", "all"), ("all", "told")])


def _weeks(scene: Scene) -> Iterator[Period]:
    """Yield the weeks a sentence names: '6 weeks', '6/52', '[6] weeks', 'Weeks? 5 to 6', 'week 6'."""
    words = scene.page.words
    for q in scene.quantities:
        if q.low is None or q.high is None:
            continue
        after = words[q.j : min(q.j + 4, scene.sentence.j)]
        before = scene.words(max(scene.sentence.i, q.i - 4), q.i)
        if q.unit == "week" and after[:1] != ["/"]:
            yield Period(q.low, q.high, q.i, q.j, counted=True)
        elif q.unit:
            continue
        elif after[:1] in (["]"], ["_"]) and after[1:2] and after[1] in _WEEK_WORDS:
            yield Period(q.low, q.high, q.i, q.j + 2, counted=True)
        elif after[:3] == ["and", "a", "half"] and after[3:] and after[3] in _WEEK_WORDS:
            yield Period(q.low + 0.5, q.high + 0.5, q.i, q.j + 4, counted=True)
        elif (label := _weeks_label(scene, q.i)) is not None:
            yield Period(q.low, q.high, label, q.j, counted=True)
        elif before[-3:-1] in (["weeks", "in"], ["weeks", "of"]) and _is_splint(scene, q.i - 1):
            yield Period(q.low, q.high, q.i - 3, q.j, counted=True)
        elif before[-1:] and before[-1] in _WEEK_WORDS:
            yield Period(q.low, q.high, q.i - 1, q.j)


def _weeks_label(scene: Scene, k: int) -> int | None:
    """Return the word 'weeks' of a label that ends before word k: 'Weeks?', 'Weeks in splint ....:', or None."""
    words, first = scene.page.words, scene.sentence.i
    if k - 1 == first and words[first] in _WEEK_WORDS and scene.page.breaks[k] >= Break.COLUMN:
        return first  # 'Weeks    6'
    m = k - 1
    while m >= first and (words[m] in ("?", ":", "=") or words[m].startswith("..")):
        m -= 1
    if m == k - 1:
        return None
    return next((n for n in range(m, max(first, m - 3) - 1, -1) if words[n] in _WEEK_WORDS), None)


def _is_splint(scene: Scene, k: int) -> bool:
    return any(m.i <= k < m.j for m in scene.of("splint"))


def _splint_beside(desk: Desk, scene: Scene, period: Period) -> Span | None:
    """Return the words of the splint or the rest that lasts so long, or None where the weeks are of something else."""
    marks = [(m.i, m.j) for m in scene.of("splint", "programme") if m.kind == "splint" or m.value == "immobilisation"]
    rest = ordered_rest(desk, scene)
    marks = sorted([*marks, *([rest] if rest is not None else [])])
    if _TALKED & set(scene.words(scene.sentence.i, period.i)) and "if" in scene.words(period.j, period.j + 5):
        return None  # 'a splint for six weeks if we found one cut'
    ended = _ended(scene, period) or _goes_too(scene, period, marks)
    if ended is not None or not period.counted:
        return ended
    first, last = _part(scene, period)
    inside = [m for m in marks if first <= m[0] < last]
    if inside:
        return None if _of_something_else(scene, period, inside[0], first) else inside[0]
    before = scene.word_before(period.i)
    words = set(scene.words(first, last))
    near = scene.words(max(first, period.i - 4), min(last, period.j + 2))
    if words & order_list("not_splint") or set(near) & {"at", "review", "clinic", "after"} - (
        {"at"} if "least" in near else set()
    ):
        return None
    label = scene.part(first - 1)[0] if scene.word_before(first) == ":" else first  # 'Length of splintage: 6 weeks'
    worn = next((k for k in range(label, last) if scene.page.words[k] in order_list("worn")), None)
    if worn is not None:
        return worn, worn + 1
    kept_on = "on" in words or scene.page.words[scene.sentence.i] in ("it", "this", "stays", "remains")
    kept_on = kept_on or _keeps_it(scene, first, last)
    if not _KEPT.isdisjoint(words) and ("in", "it") in pairwise(scene.words(first, period.i)):
        return _told_before(desk, scene, period)  # 'We expect to keep her in it at least five weeks'
    if not _KEPT.isdisjoint(words) and kept_on and _KEPT_ON.issuperset(_besides(scene, period, first, last)):
        # 'Dorsal splint: wrist 10. Kept on for 5 weeks.', 'It stays for 5', 'Dorsal splint, wrist 10, keep on 5/52'
        return next((m for m in reversed(marks) if m[1] <= first), None) or _told_before(desk, scene, period)
    if marks and marks[-1][1] <= period.i and _labelled(scene, period):
        return marks[-1]  # '27 Splint .. dorsal blocking, wrist 0, MCP 45       28 weeks .. 6'
    if scene.sentence.section == "splint" and (not marks or marks[-1][1] <= scene.sentence.i + 4):
        return marks[-1] if marks else (period.i, period.j)
    alone = all(w in order_list("beside_weeks") or w in _MARKS for w in _besides(scene, period, first, last))
    if alone and not marks and len(scene.of("joint")) > 1:
        return period.i, period.j  # 'wrist 20 flexed, MCPJs 60, IPJs straight, 6/52'
    if alone and not marks:
        return _told_before(desk, scene, period) if _besides_all(scene, period) else None
    return _splint_before(scene, period, marks, "," if alone else before)


def _goes_too(scene: Scene, period: Period, marks: list[Span]) -> Span | None:
    """'Button off at six weeks and the splint then too', '... at 6 weeks, the splint as well': it ends with that."""
    mark = next((m for m in marks if m[0] >= period.j), None)
    if mark is None or not _AND_THE.issuperset(scene.words(period.j, mark[0])):
        return None
    behind = [w for w in scene.words(mark[1], min(mark[1] + _SHORT_END, scene.sentence.j)) if w not in _GOES]
    return mark if tuple(behind[:2]) in _TOO or behind[:1] in (["too"], ["also"], ["likewise"]) else None


_AND_THE = frozenset([",", "and", "the", "when", "with", "his", "her"])
_GOES = frozenset(["goes", "ends", "comes", "off", "is"])
_TOO = frozenset([("then", "too"), ("then", "also"), ("as", "well"), ("the", "same"), ("at", "the"), ("with", "it")])
_SHORT_END = 4  # words
_KEPT = frozenset(["keep", "kept", "stays", "stay", "remains", "remain"])
_KEPT_ON = _KEPT | {
    *("please", "it", "this", "that", "is", "be", "to", "on", "for", "until", "all", "the", "time", "."),
    *("must", "he", "she", "will", "should"),
}


def _keeps_it(scene: Scene, first: int, last: int) -> bool:
    """'He will keep this for four weeks': what was ordered in the sentence before."""
    words = scene.words(first, last)
    return any(a == "keep" and b in ("it", "this") for a, b in pairwise(words))


_TALKED = frozenset(["talk", "talked", "discussed", "consent", "consented", "warned", "told", "explained"])
_MARKS = frozenset([",", ".", ";", ":", "-", ">", "=", "(", ")", "_"])


def _part(scene: Scene, period: Period) -> tuple[int, int]:
    """Return the part of the sentence around weeks, which ends with its line."""
    first, last = scene.part(period.i)
    return first, next(
        (k for k in range(period.j, last) if scene.page.breaks[k] >= Break.LINE or scene.page.words[k] == "+"), last
    )


def _besides(scene: Scene, period: Period, first: int, last: int) -> list[str]:
    """Return the words beside the weeks; neither the number of a form's row nor the dots behind its label."""
    first += _labelled(scene, period) and first == period.i - 1 and scene.page.words[first].isdecimal()
    return [w for w in (*scene.words(first, period.i), *scene.words(period.j, last)) if not w.startswith("..")]


def _labelled(scene: Scene, period: Period) -> bool:
    """'24 Weeks .......... 4', 'Weeks   : 6'."""
    mark = scene.page.words[period.i + 1] if period.i + 2 < period.j else ""
    return scene.page.words[period.i] in _WEEK_WORDS and (mark == ":" or mark.startswith(".."))


def _besides_all(scene: Scene, period: Period) -> bool:
    """Tell whether a sentence tells weeks and nothing else: '5/52.', 'Total 6 weeks.'."""
    rest = _besides(scene, period, scene.sentence.i, scene.sentence.j)
    return all(w in order_list("beside_weeks") or w in _MARKS for w in rest)


def _told_before(desk: Desk, scene: Scene, period: Period) -> Span | None:
    """Return the weeks told alone where a splint was ordered in one of the few sentences before them."""
    before: Scene | None = scene
    for _ in range(_LINES_BACK):
        before = desk.scene_before(before) if before is not None else None
        if before is None or before.sentence.block < scene.sentence.block - 1 or is_other_section(before):
            return None
        if any(is_order(desk, before, m.i) for m in before.of("splint")):
            return period.i, period.j
        if any(q.unit == "week" for q in before.quantities) or before.words(before.sentence.i, before.sentence.j)[
            -1:
        ] == [":"]:
            return None
    return None


_LINES_BACK = 5  # a form tells wrist, knuckles and finger joints between its splint and the weeks


def _ended(scene: Scene, period: Period) -> Span | None:
    """'Splint off at 5 weeks', 'out of splint after week 6', 'wean splint at five weeks', 'splint through week 6'."""
    for i in range(scene.sentence.i, scene.sentence.j):
        if scene.page.words[i] not in _SPLINTS or max(i, period.i) - min(i, period.i) > 7:
            continue
        between = scene.words(max(scene.sentence.i, i - 3), period.i) if i < period.i else scene.words(period.j, i)
        apart = {",", ";", ".", "and"} & set(scene.words(min(i, period.j), max(i, period.i)))
        if (
            order_list("ends_splint") & set(between)
            and not apart
            and not {"night", "nights", "stitches"} & set(between)
        ):
            return i, i + 1
    return None


_SPLINTS = frozenset(["splint", "slab", "dbs", "plaster", "cast", "orthosis", "pop", "backslab"])


def _of_something_else(scene: Scene, period: Period, mark: Span, first: int) -> bool:
    """Tell whether weeks beside a splint are not how long it is worn: 'review in splint at 2 weeks'."""
    words = set(scene.words(*scene.part(period.i)))
    before = scene.word_before(period.i)
    if before in ("at", "after", "in") and "for" not in words:
        return True
    ahead = mark[0] >= period.j and bool(order_list("not_splint") & set(scene.words(first, period.i)))
    later = any(q.unit == "week" and 0 <= q.i - mark[1] <= 2 for q in scene.quantities)
    return ahead and later


def _splint_before(scene: Scene, period: Period, marks: list[Span], before: str) -> Span | None:
    """'DBS, wrist 20 flexed, MCPs 60, for 4 weeks': the weeks end a list that a splint began."""
    earlier = [m for m in marks if m[0] < period.i]
    if not earlier or before not in ("for", ",", "x", "full", "of", "during"):
        return None
    far = period.i - earlier[-1][1]
    between = set(scene.words(earlier[-1][1], period.i))
    if far > 12 and (before not in ("for", "during", ",") or between & order_list("not_splint") or far > 40):
        return None
    return earlier[-1]
