"""What the surgeon ordered: splint and joint positions, and the programme of motion; `periods` reads days and weeks."""

import re
from collections.abc import Iterator
from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Mention, Quantity
from notereader.reader.reasons import Reason
from notereader.reader.rules.orders.periods import start, weeks
from notereader.reader.rules.orders.rest import ordered_rest
from notereader.reader.rules.orders.rest_then_motion import rests_before_motion
from notereader.reader.rules.whole_note.whole import NOWHERE, Span, is_order, is_other_section, order_list
from notereader.reader.scene import Scene
from notereader.record.values import Interval

_JOINT_FIELDS = {"wrist": "wrist_flexion_deg", "mcp": "mcp_flexion_deg", "ip": "ip_flexion_deg"}
_CARE = frozenset(["instructions", "splint", "dressing", "closure"])
_NONE = frozenset(["none", "nil", "no", "n/a", "not"])
_SPANS = 3  # a splint is shown in three places at most


def aftercare(desk: Desk) -> None:
    """Find the orders of the whole note."""
    _splint(desk)
    _positions(desk)
    _programme(desk)
    start(desk)
    weeks(desk)


# --- splint


def _splint(desk: Desk) -> None:
    """Find the splint; a dorsal one that blocks extension counts before a plain one."""
    told: list[tuple[Scene, str, Span]] = []
    for scene in desk.having("splint"):
        if scene.sentence.section in ("indication", "diagnosis", "procedure", "previous"):
            continue
        for m in scene.of("splint"):
            if is_order(desk, scene, m.i) and not scene.negated(m.i, m.j, 2) and not _is_old_splint(scene, m):
                told.append((scene, *_kind_of_splint(scene, m)))
    if not told:
        return
    value = "dorsal blocking" if any(kind == "dorsal blocking" for _, kind, _ in told) else "other"
    same = [(scene, span) for scene, kind, span in told if kind == value]
    same.sort(key=lambda f: (_is_bare(f[0], f[1]), f[1]))
    named = any(m.value == value for scene, _ in same for m in scene.of("splint"))
    doubts = [] if named else [Reason("splint_described")]
    spans = [span for _, span in same][:_SPANS]
    desk.add(same[0][0], "aftercare", NOWHERE, "splint", value, spans, "splint named", *doubts)


_DIP = frozenset(["dip", "dipj", "dips", "dipjs"])


def _kind_of_splint(scene: Scene, m: Mention) -> tuple[str, Span]:
    """Return the kind of a splint and its words; 'a slab behind the hand to stop extension' is dorsal blocking too."""
    words = scene.page.words
    if m.value == "other":
        ahead = range(m.j, min(m.j + 15, scene.sentence.j))
        place = next((k for k in ahead if words[k] in ("dorsal", "behind", "back", "dorsally", "dorsum")), None)
        behind = range(m.j, min(m.j + 6, scene.sentence.j))
        said = [words[k] for k in behind if words[k] not in _ANSWER_MARKS and not scene.page.standing[k]]
        if said[:1] in (["dorsal"], ["dorsally"]) and said[1:2] not in (["skin"], ["hand"], ["wound"]):
            return "dorsal blocking", (m.i, words.index(said[0], m.j) + 1)
        before = words[m.i - 1] == "dorsal" if m.i > scene.sentence.i else False
        stops = next((k for k in ahead if words[k] in order_list("blocks")), None)
        if stops is not None and (place is not None or before):
            return "dorsal blocking", (m.i - before, max(stops, place or 0) + 1)
    if scene.words(m.i, m.j) == ["dorsal", "splint"] and not _DIP.isdisjoint(scene.words(m.j, m.j + 3)):
        return "other", (m.i, m.j)  # 'a dorsal splint over the DIP joint only': the wrist and knuckles are free
    i = m.i
    while i > scene.sentence.i and words[i - 1] in order_list("splint_words"):
        i -= 1
    return m.value, (i, m.j)


_ANSWER_MARKS = frozenset([",", "(", ":", "[", "]", "x", ")"])


def _is_bare(scene: Scene, span: Span) -> bool:
    """Tell whether only 'splint' or a heading was named; a splint told with its kind shows more."""
    return span[1] - span[0] == 1 and scene.sentence.section in ("splint", "instructions")


def _is_old_splint(scene: Scene, m: Mention) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if words[:2] == ["splint", "off"] or ("make" in words and "they" in words):
        return True
    answer = [w for w in scene.words(m.j, min(m.j + 3, scene.sentence.j)) if w not in (":", "-", "|", "?")]
    if answer[:1] and answer[0] in _NONE and scene.next_word(m.j) not in ("no", "not"):
        return True
    if not _FORMER.isdisjoint(scene.words(m.i - 2, m.i)):
        return True  # 'The previous splint was removed'
    word = " ".join(scene.words(m.i, m.j))
    return word in ("plaster", "cast", "pop") and scene.next_word(m.j) in ("room", "saw", "music")


_FORMER = frozenset(["previous", "old", "former", "earlier", "emergency"])


# --- joint positions


def _positions(desk: Desk) -> None:
    """Find the angle each joint is to be held at; an addendum is read besides the first place that tells it."""
    done: set[tuple[str, bool]] = set()
    below = -1
    for scene in desk.scenes:
        if "joint" not in scene.kinds and "w" not in scene.said:
            continue
        joints = _joints(desk, scene)
        goes_on = scene.sentence.label and scene.sentence.i == below and joints[:1] != []
        if not joints or not (goes_on or _is_splint_position(desk, scene)):
            continue
        below = scene.sentence.j  # the joints of a form stand in lines of their own
        corrects = desk.page.in_addendum(scene.sentence)
        for n, joint in enumerate(joints):
            low = joints[n - 1].j if n else scene.sentence.i
            high = joints[n + 1].i if n + 1 < len(joints) else scene.sentence.j
            name = _field_of(scene, joint)
            if name is None or (name, corrects) in done:
                continue
            found = _position(scene, joint, low, high)
            if found is not None:
                value, i, j = found
                done.add((name, corrects))
                span = (min(i, joint.i), max(j, joint.j))
                desk.add(scene, "aftercare", NOWHERE, name, value, [span], "joint position ordered")
        fingers = _fingers_straight(scene) if ("ip_flexion_deg", corrects) not in done else None
        if fingers is not None:
            done.add(("ip_flexion_deg", corrects))
            straight = Interval(low=0, high=0)
            desk.add(scene, "aftercare", NOWHERE, "ip_flexion_deg", straight, [fingers], "joint position ordered")


def _field_of(scene: Scene, joint: Mention) -> str | None:
    """Return the field of a joint; 'PIP straight' with no other finger joint named stands for the finger joints."""
    words = set(scene.words(joint.i, joint.j))
    if joint.value == "single" and words & {"pip", "pipj", "pips", "pipjs"}:
        others = [m for m in scene.of("joint") if m is not joint and m.value in ("ip", "single")]
        straight = any(m.value == "neutral" and 0 <= m.i - joint.j <= 2 for m in scene.of("direction"))
        return "ip_flexion_deg" if straight and not others else None
    return _JOINT_FIELDS.get(joint.value)


def _joints(desk: Desk, scene: Scene) -> list[Mention]:
    """Return the joints of a sentence; 'the knuckles (MCP joints)' is one, what is held only in exercise is none."""
    found: list[Mention] = []
    figures = {q.i for q in scene.quantities}
    short = [
        k for k in range(scene.sentence.i, scene.sentence.j) if k + 1 in figures and scene.page.raw(k, k + 1) == "W"
    ]
    named = [*scene.of("joint"), *(Mention("joint", "wrist", k, k + 1) for k in short)]  # 'W 0 / MCP 45'
    for m in sorted(named, key=lambda m: m.i):
        if not is_order(desk, scene, m.i) or _in_exercise(scene, m):
            continue
        if (
            found
            and found[-1].value == m.value
            and m.i - found[-1].j <= 2
            and scene.word_before(m.i) in ("(", "/", "=")
        ):
            found[-1] = Mention(m.kind, m.value, found[-1].i, m.j)
        else:
            found.append(m)
    return found


def _in_exercise(scene: Scene, m: Mention) -> bool:
    """'Hold wrist 30 ext during holds only', 'synergistic wrist motion': no position of the splint."""
    first, last = scene.part(m.i)
    last = next((k for k in range(m.j, last) if scene.page.words[k] == "."), last)
    first = next((k + 1 for k in range(m.i - 1, first, -1) if scene.page.words[k] == "."), first)
    return bool({"during", "tenodesis", "synergistic"} & set(scene.words(first, last)))


def _fingers_straight(scene: Scene) -> Span | None:
    """'wrist 30 flexed, knuckles 60 flexed, fingers straight': the finger joints that have no name are straight."""
    for m in scene.of("direction"):
        named = scene.word_before(m.i) in _ALL_OF_IT and m.value in ("neutral", "extension")
        if named and not scene.of("tension") and not any(j.value == "ip" for j in scene.of("joint")):
            return m.i - 1, m.j
    return None


_ALL_OF_IT = frozenset(["fingers", "digits", "finger", "digit"])


def _is_splint_position(desk: Desk, scene: Scene) -> bool:
    """Joint angles count as orders beside a splint or in the orders, not in an examination or a tension check."""
    if is_other_section(scene):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if (scene.of("tension") and not scene.of("splint")) or words & order_list("examination"):
        return False
    if scene.of("splint") or scene.sentence.section in _CARE:
        return True
    before = desk.scene_before(scene)
    return before is not None and "splint" in before.kinds and before.sentence.section != "indication"


def _position(scene: Scene, joint: Mention, low: int, high: int) -> tuple[Interval, int, int] | None:
    """Read the angle of one joint: a figure with its direction after it, else before it ('30 deg of wrist ext')."""
    if (there := _at_the_joint(scene, joint, low)) is not None:
        return there
    before = _angle_before(scene, joint, low)
    if before is not None and (scene.word_before(joint.i) in ("of", "in", "at", "for") or _right_before(scene, joint)):
        return before  # '20 degrees flexion of the wrist and 50 degrees flexion in the MP joints'
    after = _angle_after(scene, joint, high)
    return after if after is not None else before


def _at_the_joint(scene: Scene, joint: Mention, low: int) -> tuple[Interval, int, int] | None:
    """'Neutral wrist, seventy at the MPs, straight at the IPs': what stands right before 'at the', figure or word."""
    lead = 1 + (scene.word_before(joint.i) == "the")
    at = joint.i - lead
    own = joint.j + (scene.next_word(joint.j) in ("at", ":", "=", "in"))
    behind = any(q.i == own for q in _figures(scene, joint.j, min(own + 1, scene.sentence.j)))
    if at <= low or scene.page.words[at] not in ("at", "in") or behind:
        return None
    figure = next((q for q in _figures(scene, low, at) if q.j == at and not _counts_else(scene, q)), None)
    if figure is not None and joint.value != "wrist":
        return _signed(scene, figure, [], joint)
    straight = next((m for m in scene.of("direction") if m.j == at and m.i >= low and m.value == "neutral"), None)
    return (Interval(low=0, high=0), straight.i, straight.j) if straight is not None else None


def _right_before(scene: Scene, joint: Mention) -> bool:
    """'30 deg wrist flexion, 60 deg MCP flexion': a figure right before its joint, behind no other."""
    for q in scene.quantities:
        if q.j == joint.i and q.unit == "deg":
            return not any(0 <= q.i - other.j <= 2 for other in scene.of("joint"))
    return False


def _angle_after(scene: Scene, joint: Mention, high: int) -> tuple[Interval, int, int] | None:
    stop = next((k for k in range(joint.j, high) if scene.page.words[k] in (";", ".")), high)
    figures = [q for q in _figures(scene, joint.j, stop) if q.unit == "deg" or not _counts_else(scene, q)]
    directions = [m for m in scene.of("direction") if joint.j <= m.i < stop]
    neutral = next((m for m in directions if m.value == "neutral"), None)
    straight = _straight(scene, joint, stop, directions)
    if straight is not None:
        return straight
    if figures and (neutral is None or figures[0].i < neutral.i):
        between = [m for m in directions if m.i < figures[0].i]
        close = [m for m in directions if -5 <= m.i - figures[0].j <= 3]
        return _signed(scene, figures[0], between or close or directions, joint)
    beside = neutral is not None and not any(m.i < neutral.i for m in directions if m is not neutral)
    if neutral is not None and beside and sum(w not in ("=", "/") for w in scene.words(joint.j, neutral.i)) <= 6:
        return Interval(low=0, high=0), neutral.i, neutral.j
    return None


def _straight(scene: Scene, joint: Mention, stop: int, directions: list[Mention]) -> tuple[Interval, int, int] | None:
    """'IPJs extended', 'IPs ext', 'IP O' of a scan: finger joints whose extension has no figure are straight."""
    told = [m for m in directions if m.value == "extension" and m.i - joint.j <= 4]
    if joint.value in ("ip", "single") and told and not _own_figures(scene, joint.j, stop, told[0]):
        return Interval(low=0, high=0), told[0].i, told[0].j
    at = joint.j + (scene.next_word(joint.j) in ("at", ":", "=", "in"))
    return (Interval(low=0, high=0), at, at + 1) if at < stop and scene.page.words[at] == "o" else None


def _own_figures(scene: Scene, low: int, stop: int, told: Mention) -> bool:
    """Tell whether a figure belongs to a direction: between the joint and it, or right behind it."""
    return any(
        q.i < told.i or not {",", ";", "and"} & set(scene.words(told.j, q.i)) for q in _figures(scene, low, stop)
    )


def _angle_before(scene: Scene, joint: Mention, low: int) -> tuple[Interval, int, int] | None:
    figures = [q for q in _figures(scene, low, joint.i)[-1:] if q.unit == "deg" and joint.i - q.j <= 5]
    directions = [m for m in scene.of("direction") if low <= m.i < joint.i][-1:]
    if figures:
        close = [m for m in scene.of("direction") if -5 <= m.i - figures[0].j <= 3]
        of_joint = scene.word_before(joint.i) == "of"  # '10 degrees of wrist extension, 50 degrees of MP flexion'
        own = [m for m in close if 0 <= m.i - figures[0].j <= 1 or (m.i == joint.j and of_joint)]
        close = own or close
        between = scene.words(figures[0].j, joint.i)
        return None if {",", "and", ";", "+"} & set(between) else _signed(scene, figures[0], close or directions, joint)
    if directions and directions[0].value == "neutral" and directions[0].j >= joint.i - 1:
        return Interval(low=0, high=0), directions[0].i, directions[0].j
    return None


def _figures(scene: Scene, low: int, high: int) -> list[Quantity]:
    """Return the figures from word low to high that may be degrees."""
    inside = [q for q in scene.quantities if low <= q.i < high and q.unit in ("deg", "")]
    return [q for q in inside if q.high is not None and q.high <= 110]


def _counts_else(scene: Scene, q: Quantity) -> bool:
    """'MP left free   Weeks: 6', 'wrist a little bent, for I do not trust boys of six': no figure of an angle."""
    lead = [w for w in scene.words(max(scene.sentence.i, q.i - 3), q.i) if w not in _MARKS]
    asked = lead[-1:] in (["weeks"], ["week"]) or (lead[-1:] == ["of"] and not _PEOPLE.isdisjoint(lead[-2:-1]))
    return asked or scene.next_word(q.j) in order_list("counted") or scene.word_before(q.i) in order_list("counting")


_MARKS = frozenset([":", "?", "=", "-"])
_PEOPLE = frozenset(["boy", "boys", "girl", "girls", "child", "children", "man", "woman", "lady", "patient"])


def _signed(scene: Scene, q: Quantity, directions: list[Mention], joint: Mention) -> tuple[Interval, int, int] | None:
    """Give a figure its sign: extension is negative; the wrist needs a word, other joints are flexed."""
    chosen = directions[0] if directions else None
    if chosen is None and joint.value == "wrist":
        return (Interval(low=0, high=0), q.i, q.j) if q.high == 0 else None
    low, high = float(q.low or 0), float(q.high or 0)
    if chosen is not None and chosen.value == "extension":
        low, high = -high, -low
    j = max(q.j, chosen.j) if chosen is not None and chosen.i >= q.j else q.j
    return Interval(low=low + 0.0, high=high + 0.0), q.i, j


# --- programme


def _programme(desk: Desk) -> None:
    """Find the programme ordered: the first one in the orders, else the first one told anywhere; and a correction."""
    found: list[tuple[Scene, str, Span]] = []
    for scene in desk.scenes:
        if is_other_section(scene) or scene.sentence.section in ("consent", "anaesthesia"):
            continue
        found += [(scene, value, span) for value, span in _programmes(desk, scene)]
        rest = ordered_rest(desk, scene)
        if rest is not None:
            found.append((scene, "immobilisation", rest))
    found = found or [(r.scene, "immobilisation", r.span) for r in rests_before_motion(desk)]
    found = [f for f in found if not _turned_down(f[0], f[2][1])]
    found = [f for f in found if not _only_wanted(f[0], f[2][0])] or found
    corrected = [f for f in found if desk.page.in_addendum(f[0].sentence)]
    told = [f for f in found if f not in corrected] or found
    orders = [f for f in told if f[0].sentence.section in _CARE] or told
    for group in (orders, [f for f in corrected if f not in orders]):
        if group:
            scene, value, span = min(group, key=lambda f: f[2])
            desk.add(scene, "aftercare", NOWHERE, "programme", value, [span], "programme ordered")


def _only_wanted(scene: Scene, k: int) -> bool:
    """'The registrar wanted early passive', 'I wrote early active': what was wished for, or written and taken back."""
    lead = scene.words(max(scene.part(k)[0], k - _NEAR_WISH), k)
    return not _WISHED.isdisjoint(lead)


_WISHED = frozenset(["wanted", "wished", "wrote", "suggested", "said"])
_NEAR_WISH = 5  # words


def _turned_down(scene: Scene, k: int) -> bool:
    """'Early active was considered, but he decided against it; ...', 'early active? NO': asked about only."""
    words, last = scene.page.words, scene.sentence.j
    if words[k : k + 2] in (["?", "no"], [":", "no"]) and scene.next_word(k + 2) in _ENDS_ANSWER:
        return True
    end = next((n for n in range(k, last) if words[n] in (";", ".", ":") or words[n] in _MOTIONS), last)
    behind = f" {' '.join(words[k:end])} "
    return any(f" {phrase} " in behind for phrase in order_list("turned_down"))


_ENDS_ANSWER = frozenset(["", ".", ",", ";", "(", "-", ")"])


def _programmes(desk: Desk, scene: Scene) -> list[tuple[str, Span]]:
    """Return the programmes a sentence orders; 'place and hold or early active' leaves the choice to others."""
    if "programme" not in scene.kinds and _MOTIONS.keys().isdisjoint(scene.said):
        return []
    found: list[tuple[str, Span]] = []
    for m in scene.of("programme"):
        negated = scene.negated(m.i, m.j, 4) and not _denies_itself(scene, m)
        if is_order(desk, scene, m.i) and not negated and _is_programme(desk, scene, m):
            found.append((m.value, (m.i, m.j)))
    motions = _motions(desk, scene)
    if found:
        motions = [
            (v, (i, j)) for v, (i, j) in motions if j - i == 1 and not any(a - 1 <= i < b for _, (a, b) in found)
        ]
    found = sorted([*found, *motions], key=lambda f: f[1])
    if _left_to_therapist(scene):
        return []
    if any(value == "place and hold" for value, _ in found):  # 'passive flexion and active place-and-hold'
        found = [f for f in found if f[0] != "early passive" or scene.page.words[f[1][0]] != "passive"]
    chosen = len({value for value, _ in found}) > 1 and any(
        "or" in scene.words(a[1], b[0]) and b[0] - a[1] <= 3 for (_, a), (_, b) in pairwise(found)
    )
    return [] if chosen or any(_or_the_other(scene, value, span[1]) for value, span in found) else found


def _or_the_other(scene: Scene, value: str, k: int) -> bool:
    """'Early active or passive at your discretion': the other motion behind word k."""
    behind = scene.words(k, min(k + 2, scene.sentence.j))
    return behind[:1] == ["or"] and _MOTIONS.get(behind[-1], value) != value


def _left_to_therapist(scene: Scene) -> bool:
    """'Regime: ... therapist to choose', 'early active or whatever you prefer': no programme is ordered."""
    words = scene.said
    if "guess" in words:
        return True  # 'I'd guess passive only'
    if bool({"choose", "decide"} & words and {"therapist", "therapists", "ht", "therapy"} & words):
        return True
    said = f" {' '.join(scene.words(scene.sentence.i, scene.sentence.j))} "
    return "or" in words and any(f" or {phrase} " in said for phrase in order_list("left_open"))


def _denies_itself(scene: Scene, m: Mention) -> bool:
    """Tell whether the negation belongs to the phrase: 'no motion for', 'no finger motion'."""
    return scene.page.words[m.i] == "no"


def _first_days_only(scene: Scene, m: Mention) -> bool:
    """'No movement for the first days; early active movement is begun on day 4': a rest before the programme.

    So is 'immobile until day 4, then place and hold'.
    """
    behind = [w for w in scene.words(m.j, min(m.j + 6, scene.sentence.j)) if w not in ("for", "the", "few")]
    told = behind[:1] in (["first"], ["until"], ["till"]) and bool({"day", "days", "pod"} & set(behind[1:3]))
    return told and any(other.i > m.j and other.value != m.value for other in scene.of("programme"))


def _is_programme(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'active motion' on the table is a test, not an order; 'immobilised' needs no other word."""
    word = " ".join(scene.words(m.i, m.j))
    if m.value == "immobilisation" and _first_days_only(scene, m):
        return False
    if scene.sentence.section in _CARE or m.value == "immobilisation":
        if scene.next_word(m.j) in (":", "[") and scene.of("splint"):
            return False  # 'Immobilisation: POP slab' heads the splint
        before = scene.words(max(scene.sentence.i, m.i - 3), m.i)
        return before[-1:] not in (["no"], ["without"]) and not {"later", "moving", "unless"} & set(before)
    if (
        word.startswith("early")
        or scene.word_before(m.i) == "early"
        or m.value == "place and hold"
        or word in ("eam", "cam", "duran", "kleinert")
    ):
        return True
    earlier = desk.scene_before(scene)
    after_splint = earlier is not None and "splint" in earlier.kinds and 2 * m.i > len(desk.page.words)
    led = bool(scene.of("therapy")) or after_splint  # 'DBS, six weeks. Passive programme only from day 5.'
    timed = bool(scene.quantities) or any(_SHORT_DAY.match(w) for w in scene.said)
    if word == "passive only" and earlier is not None and (earlier.of("therapy") or led):
        return desk.page.standing[m.i] in ("", "plan")
    return led and timed and desk.page.standing[m.i] in ("", "plan")


def _motions(desk: Desk, scene: Scene) -> list[tuple[str, Span]]:
    """'Passive DIP flex from d2', 'active flexion to half a fist', 'start passive', 'move it passively': as orders."""
    ordered = scene.of("therapy") and any(True for _ in _start_words(scene))
    if scene.sentence.section not in _CARE and not ordered:
        return []
    words, found = scene.page.words, []
    for k in range(scene.sentence.i, scene.sentence.j):
        kind = _MOTIONS.get(words[k])
        if kind is None or not is_order(desk, scene, k) or scene.negated(k, k + 1, 4) or _comes_later(scene, k):
            continue
        if scene.sentence.section not in _CARE and _on_the_table(scene, k):
            continue
        ahead = words[k + 1 : min(k + 4, scene.sentence.j)]
        moved = next((n for n, w in enumerate(ahead) if w in order_list("motions")), None)
        led = set(words[max(scene.sentence.i, k - 3) : k]) & order_list("motion_leads")
        if {"extension", "resisted", "strengthening"} & set(ahead[:2]):
            continue
        if moved is not None:
            found.append((kind, (k, k + 2 + moved)))
        elif led or _ends_an_order(scene, k) or _from_a_day(ahead) or _answers_regime(scene, k):
            found.append((kind, (k, k + 1)))
    return found


def _from_a_day(ahead: list[str]) -> bool:
    """'Active from day 4', 'active from D3', 'active from the outset': the day behind the word for the motion."""
    if ahead[:1] != ["from"] or len(ahead) == 1:
        return False
    outset = ahead[1] == "the" and ahead[2:3] in (["outset"], ["start"], ["beginning"])
    return outset or ahead[1] in ("day", "tomorrow") or _SHORT_DAY.match(ahead[1]) is not None


def _answers_regime(scene: Scene, k: int) -> bool:
    """'Regime: passive', 'Programme [x] passive [ ] active': all that is answered to the question for it."""
    asked = scene.page.words[scene.sentence.i] in _REGIMES and k - scene.sentence.i <= _BOXES_BETWEEN
    behind = scene.next_word(k + 1)
    alone = behind in ("", ".", ",", ";") or (behind in ("[", "(") and not scene.told(k + 1))
    return asked and alone and scene.word_before(k) in (":", "]", ")")


_REGIMES = frozenset(["regime", "regimen", "programme", "program", "protocol", "motion", "therapy", "rehab"])
_BOXES_BETWEEN = 12  # words: 'Regime ( ) active ( ) place/hold (x) passive'


def _on_the_table(scene: Scene, k: int) -> bool:
    """'Passive through full range on table, no gap': how a finished repair was tried, and no order."""
    marks = [n for n in range(scene.sentence.i, scene.sentence.j) if scene.page.words[n] == ";"]
    first = max((n for n in marks if n < k), default=scene.sentence.i)
    last = min((n for n in marks if n > k), default=scene.sentence.j)
    seen = any(first <= m.i < last and scene.told(m.i) for m in scene.of("gap", "glide"))
    return "table" in scene.words(first, last) or (seen and _THERAPY.isdisjoint(scene.words(first, k)))


_THERAPY = frozenset(["therapy", "therapist", "therapists", "physio", "physiotherapy", "ht", "ot"])


_SHORT_DAY = re.compile(r"(?:d|pod)\d{1,2}\Z")
_MOTIONS = {
    **dict.fromkeys(("active", "actively"), "early active"),
    **dict.fromkeys(("passive", "passively"), "early passive"),
}


def _ends_an_order(scene: Scene, k: int) -> bool:
    """'Physio from POD 5 - passive', 'HT D3, passive; active D14': the word alone behind the therapy and its day."""
    if scene.next_word(k + 1) not in ("", ",", ".", ";", "only", "with") or not scene.of("therapy"):
        return False
    before = scene.words(max(scene.sentence.i, k - 5), k)
    days = any(_SHORT_DAY.match(w) or w in ("day", "days", "pod") for w in before)
    beside = scene.page.words[k - 1] in (",", "-", ":", ">") or scene.page.words[k - 1][-1:].isdecimal()
    return days and beside


def _start_words(scene: Scene) -> Iterator[int]:
    return (k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] in order_list("begins"))


def _comes_later(scene: Scene, k: int) -> bool:
    """'Active motion after 4 weeks', 'then active': what follows the programme is not the programme."""
    first, last = scene.part(k)
    words = scene.words(first, last)
    if {"later", "then", "thereafter", "afterwards"} & set(words[: k - first + 4]):
        return True
    weeks = [q for q in scene.quantities if q.unit == "week" and (q.low or 0) >= 2]
    started = [m.i for m in scene.of("therapy") if m.i < first]  # 'physio after 3 weeks, passive ROM'
    weeks = [q for q in weeks if first <= q.i < last or (started and started[-1] < q.i < first)]
    weeks = [q for q in weeks if not any(k < m.i < q.i for m in scene.of("splint"))]  # 'and the splint goes after 5'
    return any(scene.word_before(q.i) in ("at", "after", "from", "week", "in") for q in weeks)
