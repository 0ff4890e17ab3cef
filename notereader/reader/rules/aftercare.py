"""What the surgeon ordered: splint and joint positions, programme, start of motion, weeks of splint."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention, Quantity
from notereader.reader.scene import Scene
from notereader.record.values import Interval, Value

_NOWHERE = ("", "", None)
_JOINT_FIELDS = {"wrist": "wrist_flexion_deg", "mcp": "mcp_flexion_deg", "ip": "ip_flexion_deg"}
_CARE = frozenset(["instructions", "splint", "dressing", "closure"])


def aftercare(desk: Desk) -> None:
    """Find the orders of the whole note."""
    _splint(desk)
    _positions(desk)
    _programme(desk)
    _start(desk)
    _weeks(desk)


def _add(desk: Desk, scene: Scene, name: str, value: Value, i: int, j: int, rule: str) -> None:
    desk.add(scene, "aftercare", _NOWHERE, name, value, [(i, j)], rule)


def _ordered(desk: Desk, scene: Scene, k: int) -> bool:
    """Tell whether word k is an order: not conditional, not history, not a teaching remark."""
    standing = desk.page.standing[k]
    if standing in ("history", "teaching", "considered", "conditional", "story"):
        return False
    return not (scene.sentence.section == "instructions" and _conditional(desk, scene, k))


def _conditional(desk: Desk, scene: Scene, k: int) -> bool:
    """In the orders a clause with 'if', 'should the ...' or 'may consider' is no order."""
    for cue in desk.page.cues:
        if scene.sentence.i <= cue.i < scene.sentence.j and cue.value == "conditional" and cue.i <= k:
            return True
        if scene.sentence.i <= cue.i <= scene.sentence.i + 2 and cue.value == "conditional":
            return True
    words = scene.words(scene.sentence.i, k)
    return any(a == "may" and b == "consider" for a, b in zip(words, words[1:], strict=False))


def _splint(desk: Desk) -> None:
    found: list[tuple[int, Scene, Mention]] = []
    for scene in desk.scenes:
        for m in scene.of("splint"):
            if not _ordered(desk, scene, m.i) or scene.sentence.section in ("indication", "diagnosis", "procedure"):
                continue
            if scene.negated(m.i, m.j, 3) or _is_old_splint(scene, m):
                continue
            found.append((0 if m.value == "dorsal blocking" else 1, scene, m))
    if found:
        _, scene, m = min(found, key=lambda f: (f[0], f[2].i))
        _add(desk, scene, "splint", m.value, m.i, m.j, "splint named")


def _is_old_splint(scene: Scene, m: Mention) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if words[:2] == ["splint", "off"] or "make" in words and "they" in words:
        return True
    word = " ".join(scene.words(m.i, m.j))
    return word in ("plaster", "cast", "pop") and scene.next_word(m.j) in ("room", "saw", "music")


# --- joint positions


def _positions(desk: Desk) -> None:
    done: set[str] = set()
    for scene in desk.scenes:
        joints = [m for m in scene.of("joint") if _ordered(desk, scene, m.i)]
        if not joints or not _is_splint_position(desk, scene):
            continue
        for n, joint in enumerate(joints):
            low = joints[n - 1].j if n else scene.sentence.i
            high = joints[n + 1].i if n + 1 < len(joints) else scene.sentence.j
            name = _JOINT_FIELDS.get(joint.value)
            if name is None or name in done:
                continue
            found = _position(scene, joint, low, high)
            if found is not None:
                value, i, j = found
                done.add(name)
                _add(desk, scene, name, value, min(i, joint.i), max(j, joint.j), "joint position ordered")


def _is_splint_position(desk: Desk, scene: Scene) -> bool:
    """Joint angles count as orders beside a splint or in the orders, not in an examination or a tension check."""
    if scene.sentence.section in ("indication", "diagnosis", "findings", "previous", "procedure"):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if scene.of("tension") or words & {"contracture", "preoperatively", "flexor tendons", "approach"}:
        return False
    if scene.of("splint") or scene.sentence.section in _CARE:
        return True
    n = desk.scenes.index(scene)
    near = desk.scenes[max(0, n - 1) : n]
    return any(s.of("splint") and s.sentence.section not in ("indication",) for s in near) and len(scene.of("joint")) >= 1


def _position(scene: Scene, joint: Mention, low: int, high: int) -> tuple[Interval, int, int] | None:
    """Read the angle of one joint: a figure with its direction after the joint, else before it ('30 degrees of wrist extension')."""
    after = _angle(scene, joint.j, high, joint)
    if after is not None:
        return after
    return _angle(scene, low, joint.i, joint, backwards=True)


def _angle(scene: Scene, low: int, high: int, joint: Mention, backwards: bool = False) -> tuple[Interval, int, int] | None:
    figures = [q for q in scene.quantities if low <= q.i < high and q.unit in ("deg", "") and q.high is not None and q.high <= 110]
    figures = [q for q in figures if q.unit == "deg" or not _counts_else(scene, q)]
    directions = [m for m in scene.of("direction") if low <= m.i < high]
    if joint.kind == "joint" and not backwards:
        stop = next((k for k in range(joint.j, high) if scene.page.words[k] in (";", ".")), high)
        figures = [q for q in figures if q.i < stop]
        directions = [m for m in directions if m.i < stop]
    if backwards:
        figures, directions = figures[-1:], directions[-1:]
        if figures and figures[0].unit != "deg" or (figures and joint.i - figures[0].j > 4):
            return None
        if not figures and (not directions or directions[0].j < joint.i - 1):
            return None
    neutral = next((m for m in directions if m.value == "neutral"), None)
    if figures and (neutral is None or figures[0].i < neutral.i):
        return _figure_angle(scene, figures[0], directions, joint, backwards)
    if neutral is not None and abs(neutral.i - joint.j) <= 6:
        return Interval(low=0, high=0), neutral.i, neutral.j
    return None


def _counts_else(scene: Scene, q: Quantity) -> bool:
    return scene.next_word(q.j) in ("weeks", "days", "times", "hours", "x", "hourly", "minutes") or scene.word_before(q.i) in ("day", "days", "for", "x", "week", "d")


def _figure_angle(scene: Scene, q: Quantity, directions: list[Mention], joint: Mention, backwards: bool) -> tuple[Interval, int, int] | None:
    """Give a figure its sign: extension is negative; the wrist needs a word, other joints are flexed."""
    close = [m for m in directions if -5 <= m.i - q.j <= 3]
    between = [m for m in directions if joint.j <= m.i < q.i] if not backwards else []
    chosen = (between or close or directions)[:1]
    if not chosen and joint.value == "wrist":
        if q.high == 0:
            return Interval(low=0, high=0), q.i, q.j
        return None
    low, high = float(q.low or 0), float(q.high or 0)
    if chosen and chosen[0].value == "extension":
        low, high = -high, -low
    j = max(q.j, chosen[0].j) if chosen and chosen[0].i >= q.j else q.j
    return Interval(low=low + 0.0, high=high + 0.0), q.i, j


# --- programme, start, weeks

_PROGRAMME_ORDER = ["immobilisation", "early passive", "place and hold", "early active"]


def _programme(desk: Desk) -> None:
    found: list[tuple[Scene, Mention]] = []
    for scene in desk.scenes:
        if scene.sentence.section in ("indication", "diagnosis", "findings", "consent", "previous", "anaesthesia"):
            continue
        for m in scene.of("programme"):
            if _ordered(desk, scene, m.i) and not scene.negated(m.i, m.j, 4) and _is_programme(desk, scene, m):
                found.append((scene, m))
    orders = [f for f in found if f[0].sentence.section in _CARE] or found
    seen: set[str] = set()
    for scene, m in orders:
        if m.value not in seen:
            seen.add(m.value)
            _add(desk, scene, "programme", m.value, m.i, m.j, "programme ordered")
            return


def _is_programme(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'active motion' on the table is a test, not an order; 'immobilised' needs no other word."""
    word = " ".join(scene.words(m.i, m.j))
    if scene.sentence.section in _CARE or m.value == "immobilisation":
        return scene.word_before(m.i) not in ("no", "without") and not {"later", "moving", "unless"} & set(scene.words(max(scene.sentence.i, m.i - 3), m.i))
    if word.startswith("early") or m.value == "place and hold" or word in ("eam", "cam", "duran", "kleinert"):
        return True
    return bool(scene.of("therapy")) and bool(scene.quantities) and desk.page.standing[m.i] in ("", "plan")


def _start(desk: Desk) -> None:
    """'from day 4', 'D3-5', 'on the third postoperative day', 'day 3-5, early active'."""
    for scene in desk.scenes:
        if scene.sentence.section in ("indication", "diagnosis", "findings", "consent", "previous", "procedure", "date"):
            continue
        if not scene.of("therapy", "programme") or scene.sentence.section == "anaesthesia":
            continue
        found = _start_day(scene)
        if found is not None and _ordered(desk, scene, found[1]) and not _other_visit(scene, found[1]):
            low, high = found[0]
            _add(desk, scene, "start_day", Interval(low=low, high=high), found[1], found[2], "start of motion or therapy")
            return


_ORDINALS = {"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "1st": 1, "2nd": 2, "3rd": 3, "4th": 4, "5th": 5, "6th": 6, "7th": 7, "next": 1}


def _start_day(scene: Scene) -> tuple[tuple[float, float], int, int] | None:
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        word = words[k]
        if word in ("day", "days", "pod", "d") or (word[0] == "d" and word[1:].isdigit() and 0 < int(word[1:]) < 30 and len(word) < 4):
            found = _after_day(scene, k)
            if found is not None:
                return found
        if word in _ORDINALS and k + 1 < scene.sentence.j and "day" in words[k + 1 : k + 4]:
            day = float(_ORDINALS[word])
            return (day, day), k, min(k + 3, scene.sentence.j)
    for q in scene.quantities:
        if q.unit == "day" and q.low is not None and q.high is not None:
            around = set(scene.words(max(scene.sentence.i, q.i - 6), min(scene.sentence.j, q.j + 5)))
            if around & {"starts", "start", "starting", "begin", "begins", "beginning", "commence", "commences", "from", "at", "post", "postop", "after", "within", "in", "see", "seen"} and not around & {"for", "stitches", "sutures", "ros", "antibiotics", "wound"}:
                return (q.low, q.high), q.i, q.j
    return None


def _after_day(scene: Scene, k: int) -> tuple[tuple[float, float], int, int] | None:
    words = scene.page.words
    q = next((q for q in scene.quantities if 0 <= q.i - k - 1 <= 1 and q.unit in ("", "day")), None)
    if q is not None and q.low is not None and q.high is not None:
        return (q.low, q.high), k, q.j
    if words[k][1:].isdigit():
        low = high = float(words[k][1:])
        j = k + 1
        if j + 1 < scene.sentence.j and words[j] in ("-", "to") and words[j + 1].lstrip("d").isdigit():
            high, j = float(words[j + 1].lstrip("d")), j + 2
        return ((low, high), k, j) if high >= low else None
    return None


def _other_visit(scene: Scene, k: int) -> bool:
    """Tell whether the day is that of the stitches, the wound or an X-ray."""
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if words & {"stitches", "sutures", "ros", "xr", "film", "wound", "antibiotics", "suture"} and not scene.of("programme"):
        first, last = scene.part(k)
        return not any(m.kind == "therapy" and first <= m.i < last for m in scene.mentions)
    return False


def _weeks(desk: Desk) -> None:
    """'splint 6/52', 'immobilised four weeks', 'in the slab 4 weeks', 'DBS for 6 weeks'."""
    for scene in desk.scenes:
        if scene.sentence.section in ("indication", "diagnosis", "findings", "consent", "previous", "procedure"):
            continue
        weeks = [q for q in scene.quantities if q.unit == "week" and q.low is not None and q.high is not None and _ordered(desk, scene, q.i)]
        for q in weeks:
            splint = _splint_beside(desk, scene, q)
            if splint is not None:
                _add(desk, scene, "splint_weeks", Interval(low=q.low, high=q.high), min(splint[0], q.i), max(splint[1], q.j), "weeks of splint")
                return


_NOT_SPLINT = frozenset("wires wire pins button stitches sutures lifting driving sport clinic review film xr rugby pe load resistance loading gripping work ros appointment see seen return reviewed heavy wound abx antibiotics strengthening school follow visit".split())


def _splint_beside(desk: Desk, scene: Scene, q: Quantity) -> tuple[int, int] | None:
    first, last = scene.part(q.i)
    words = scene.words(first, last)
    marks = [m for m in scene.of("splint", "programme") if (m.kind == "splint" or m.value == "immobilisation")]
    inside = [m for m in marks if first <= m.i < last]
    if set(words) & _NOT_SPLINT and not inside:
        return None
    if set(scene.words(max(first, q.i - 4), min(last, q.j + 2))) & {"at", "review", "clinic", "after"} and not inside:
        return None
    splinting = next((k for k in range(first, last) if scene.page.words[k] in ("splinting", "splintage", "worn", "splinted", "protection")), None)
    if inside:
        if scene.word_before(q.i) in ("at", "after", "in") and scene.words(q.i - 1, q.i) != ["for"] and not {"for"} & set(words):
            return None
        return inside[0].i, inside[0].j
    if splinting is not None:
        return splinting, splinting + 1
    if marks and marks[0].i < q.i and q.i - marks[-1].j <= 12 and not set(words) & _NOT_SPLINT and scene.word_before(q.i) in ("for", ",", "x", "full", "of"):
        return marks[-1].i, marks[-1].j
    return None
