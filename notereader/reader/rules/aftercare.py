"""What the surgeon ordered: splint and joint positions, and the programme of motion; `periods` reads days and weeks."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.periods import start, weeks
from notereader.reader.rules.whole import NOWHERE, Span, is_order, is_other_section, order_list
from notereader.reader.scene import Scene
from notereader.record.values import Interval

_JOINT_FIELDS = {"wrist": "wrist_flexion_deg", "mcp": "mcp_flexion_deg", "ip": "ip_flexion_deg"}
_CARE = frozenset(["instructions", "splint", "dressing", "closure"])
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
    for scene in desk.scenes:
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
    doubts = [] if named else ["the kind of splint is taken from how it is described"]
    spans = [span for _, span in same][:_SPANS]
    desk.add(same[0][0], "aftercare", NOWHERE, "splint", value, spans, "splint named", *doubts)


def _kind_of_splint(scene: Scene, m: Mention) -> tuple[str, Span]:
    """Return the kind of a splint and its words; 'a slab behind the hand to stop extension' is dorsal blocking too."""
    words = scene.page.words
    if m.value == "other":
        ahead = range(m.j, min(m.j + 15, scene.sentence.j))
        place = next((k for k in ahead if words[k] in ("dorsal", "behind", "back", "dorsally", "dorsum")), None)
        before = words[m.i - 1] == "dorsal" if m.i > scene.sentence.i else False
        stops = next((k for k in ahead if words[k] in order_list("blocks")), None)
        if stops is not None and (place is not None or before):
            return "dorsal blocking", (m.i - before, max(stops, place or 0) + 1)
    i = m.i
    while i > scene.sentence.i and words[i - 1] in order_list("splint_words"):
        i -= 1
    return m.value, (i, m.j)


def _is_bare(scene: Scene, span: Span) -> bool:
    """Tell whether only 'splint' or a heading was named; a splint told with its kind shows more."""
    return span[1] - span[0] == 1 and scene.sentence.section in ("splint", "instructions")


def _is_old_splint(scene: Scene, m: Mention) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if words[:2] == ["splint", "off"] or ("make" in words and "they" in words):
        return True
    word = " ".join(scene.words(m.i, m.j))
    return word in ("plaster", "cast", "pop") and scene.next_word(m.j) in ("room", "saw", "music")


# --- joint positions


def _positions(desk: Desk) -> None:
    """Find the angle each joint is to be held at; an addendum is read besides the first place that tells it."""
    done: set[tuple[str, bool]] = set()
    for scene in desk.scenes:
        joints = [m for m in scene.of("joint") if is_order(desk, scene, m.i)]
        if not joints or not _is_splint_position(desk, scene):
            continue
        corrects = scene.sentence.section == "addendum"
        for n, joint in enumerate(joints):
            low = joints[n - 1].j if n else scene.sentence.i
            high = joints[n + 1].i if n + 1 < len(joints) else scene.sentence.j
            name = _JOINT_FIELDS.get(joint.value)
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


def _fingers_straight(scene: Scene) -> Span | None:
    """'wrist 30 flexed, knuckles 60 flexed, fingers straight': the finger joints that have no name are straight."""
    for m in scene.of("direction"):
        named = scene.word_before(m.i) in ("fingers", "digits") and m.value in ("neutral", "extension")
        if named and not any(j.value == "ip" for j in scene.of("joint")):
            return m.i - 1, m.j
    return None


def _is_splint_position(desk: Desk, scene: Scene) -> bool:
    """Joint angles count as orders beside a splint or in the orders, not in an examination or a tension check."""
    if scene.sentence.section in ("indication", "diagnosis", "findings", "previous", "procedure"):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if scene.of("tension") or words & order_list("examination"):
        return False
    if scene.of("splint") or scene.sentence.section in _CARE:
        return True
    before = desk.scene_before(scene)
    return before is not None and "splint" in before.kinds and before.sentence.section != "indication"


def _position(scene: Scene, joint: Mention, low: int, high: int) -> tuple[Interval, int, int] | None:
    """Read the angle of one joint: a figure with its direction after it, else before it ('30 deg of wrist ext')."""
    after = _angle_after(scene, joint, high)
    return after if after is not None else _angle_before(scene, joint, low)


def _angle_after(scene: Scene, joint: Mention, high: int) -> tuple[Interval, int, int] | None:
    stop = next((k for k in range(joint.j, high) if scene.page.words[k] in (";", ".")), high)
    figures = [q for q in _figures(scene, joint.j, stop) if q.unit == "deg" or not _counts_else(scene, q)]
    directions = [m for m in scene.of("direction") if joint.j <= m.i < stop]
    neutral = next((m for m in directions if m.value == "neutral"), None)
    if figures and (neutral is None or figures[0].i < neutral.i):
        between = [m for m in directions if m.i < figures[0].i]
        close = [m for m in directions if -5 <= m.i - figures[0].j <= 3]
        return _signed(scene, figures[0], between or close or directions, joint)
    if neutral is not None and abs(neutral.i - joint.j) <= 6:
        return Interval(low=0, high=0), neutral.i, neutral.j
    return None


def _angle_before(scene: Scene, joint: Mention, low: int) -> tuple[Interval, int, int] | None:
    figures = [q for q in _figures(scene, low, joint.i)[-1:] if q.unit == "deg" and joint.i - q.j <= 4]
    directions = [m for m in scene.of("direction") if low <= m.i < joint.i][-1:]
    if figures:
        close = [m for m in scene.of("direction") if -5 <= m.i - figures[0].j <= 3]
        return _signed(scene, figures[0], close or directions, joint)
    if directions and directions[0].value == "neutral" and directions[0].j >= joint.i - 1:
        return Interval(low=0, high=0), directions[0].i, directions[0].j
    return None


def _figures(scene: Scene, low: int, high: int) -> list[Quantity]:
    """Return the figures from word low to high that may be degrees."""
    inside = [q for q in scene.quantities if low <= q.i < high and q.unit in ("deg", "")]
    return [q for q in inside if q.high is not None and q.high <= 110]


def _counts_else(scene: Scene, q: Quantity) -> bool:
    return scene.next_word(q.j) in order_list("counted") or scene.word_before(q.i) in order_list("counting")


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
    """Find the programme ordered: the first one in the orders, else the first one told anywhere."""
    found: list[tuple[Scene, str, Span]] = []
    for scene in desk.scenes:
        if is_other_section(scene) or scene.sentence.section in ("consent", "anaesthesia"):
            continue
        for m in scene.of("programme"):
            negated = scene.negated(m.i, m.j, 4) and not _denies_itself(scene, m)
            if is_order(desk, scene, m.i) and not negated and _is_programme(desk, scene, m):
                found.append((scene, m.value, (m.i, m.j)))
        rest = _ordered_rest(desk, scene)
        if rest is not None:
            found.append((scene, "immobilisation", rest))
    orders = [f for f in found if f[0].sentence.section in _CARE] or found
    if orders:
        scene, value, span = min(orders, key=lambda f: f[2])
        desk.add(scene, "aftercare", NOWHERE, "programme", value, [span], "programme ordered")


def _denies_itself(scene: Scene, m: Mention) -> bool:
    """Tell whether the negation belongs to the phrase: 'no motion for', 'no finger motion'."""
    return scene.page.words[m.i] == "no"


def _is_programme(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'active motion' on the table is a test, not an order; 'immobilised' needs no other word."""
    word = " ".join(scene.words(m.i, m.j))
    if scene.sentence.section in _CARE or m.value == "immobilisation":
        before = scene.words(max(scene.sentence.i, m.i - 3), m.i)
        return before[-1:] not in (["no"], ["without"]) and not {"later", "moving", "unless"} & set(before)
    if word.startswith("early") or m.value == "place and hold" or word in ("eam", "cam", "duran", "kleinert"):
        return True
    return bool(scene.of("therapy")) and bool(scene.quantities) and desk.page.standing[m.i] in ("", "plan")


def _ordered_rest(desk: Desk, scene: Scene) -> Span | None:
    """'No motion meanwhile', 'no exercises in that time': rest while the splint is on; 'until I say so' sets none."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j - 2):
        if words[k] not in ("no", "not") or not is_order(desk, scene, k):
            continue
        ahead = range(k + 1, min(k + 4, scene.sentence.j))
        moves = next((n for n in ahead if words[n] in order_list("moving")), None)
        if moves is None:
            continue
        rest = scene.words(moves + 1, min(moves + 8, scene.sentence.j))
        n = next((n for n in range(len(rest)) if " ".join(rest[n : n + 3]).startswith(_MEANWHILE)), None)
        if n is not None:
            return k, moves + 2 + n
    return None


_MEANWHILE = (
    *("meanwhile", "in that time", "in this time", "during that", "during this", "until then", "till then"),
    *("before then", "for that time", "in the meantime", "for this period", "for that period"),
)
