"""What was found of and done to each pulley; the last thing done wins."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, digits_at, is_landmark
from notereader.record.values import Value

_THUMB_ONLY = frozenset(["oblique", "variable"])
_SKIP = frozenset(["instructions", "closure", "dressing", "admin", "anaesthesia", "blood_loss", "specimens"])
_GLUE = frozenset("and , & + / or the both together with pulleys pulley as well to also a -".split())
_PART_WORDS = {"distal": "distal", "distally": "distal", "dist": "distal", "proximal": "proximal", "proximally": "proximal", "prox": "proximal", "middle": "middle", "central": "middle", "far": "distal", "near": "proximal"}
_PART_OF = frozenset("part bit half edge third thirds two one quarter quarters portion end margin lip mm of fibres fibers third, segment percent % . - the 1/3 2/3 1/2 three aspect".split())
_ANNULAR = ("A1", "A2", "A3", "A4", "A5")


def pulleys(desk: Desk, scene: Scene) -> None:
    """Find the state of every pulley named in a sentence."""
    if scene.sentence.section in _SKIP:
        return
    _all_annular(desk, scene)
    groups = _pulley_groups(scene)
    for group in groups:
        if not scene.told(group[0].i):
            continue
        action = _action(desk, scene, group, groups)
        if action is not None:
            _lay(desk, scene, group, action)
    if not groups:
        _pronoun(desk, scene)
    else:
        desk.last_pulley_end = scene.sentence.j
        desk.last_pulleys = [(m.value, _digits(scene, m)) for m in groups[-1]]


def _pulley_groups(scene: Scene) -> list[list[Mention]]:
    """Return the pulleys of a sentence, those named together as one group; landmarks are left out."""
    groups: list[list[Mention]] = []
    mentions = [m for m in scene.of("pulley", "pulley?")]
    beside = any(m.kind == "pulley" and (m.value in _THUMB_ONLY or "thumb" in _digits(scene, m)) for m in mentions) or _names_fpl(scene)
    for mention in mentions:
        if mention.kind == "pulley?" and not (beside or len(mentions) > 1 or _bare_thumb(scene, mention)):
            continue
        if is_landmark(scene, mention):
            continue
        if groups and mention.i - groups[-1][-1].j <= 4 and all(w in _GLUE for w in scene.words(groups[-1][-1].j, mention.i)):
            groups[-1].append(mention)
        else:
            groups.append([mention])
    return groups


def _names_fpl(scene: Scene) -> bool:
    return any(t.tendon == "FPL" for t in scene.setting.focus) or "thumb" in scene.setting.digits


def _bare_thumb(scene: Scene, mention: Mention) -> bool:
    return "thumb" in scene.setting.digits and scene.next_word(mention.j) in ("was", "kept", "preserved", "intact", "left", "and", "pulley", "released", "opened", "cut", "is", "divided")


def _action(desk: Desk, scene: Scene, group: list[Mention], groups: list[list[Mention]]) -> Mention | None:
    """Return the word that says what became of a group of pulleys: after it up to the next pulleys, else before it."""
    i, j = group[0].i, group[-1].j
    following = next((g[0].i for g in groups if g[0].i >= j), scene.sentence.j)
    preceding = next((g[-1].j for g in reversed(groups) if g[-1].j <= i), scene.sentence.i)
    candidates = [m for m in scene.of("opened") if scene.told(m.i)]
    after = [m for m in candidates if j <= m.i < following and not _other_subject(scene, j, m.i)]
    before = [m for m in candidates if preceding <= m.i and m.j <= i and _leads_to(scene, m, i)]
    if before and (not after or i - before[-1].j <= after[0].i - j or _of_link(scene, before[-1], i)):
        return _strongest(before[-1:], scene)
    return _strongest(after, scene) if after else None


def _of_link(scene: Scene, m: Mention, i: int) -> bool:
    between = scene.words(m.j, i)
    return bool(between) and between[0] == "of" and len(between) <= 5


def _other_subject(scene: Scene, i: int, k: int) -> bool:
    """Tell whether another structure takes over between a pulley and a later word."""
    for s in scene.subjects:
        if i <= s.i < k and s.kind in ("tendon", "structure", "sided", "bundle", "role", "anynerve", "bone", "fracture"):
            words = scene.words(s.i - 2, s.i) if s.i >= 2 else []
            if any(w in ("to", "for", "of", "allow", "deliver", "let", "under", "over", "around") for w in words):
                continue
            if s.group is not None and s.group.generic:
                continue
            return True
    return False


def _leads_to(scene: Scene, m: Mention, i: int) -> bool:
    """Tell whether an action word before the pulleys governs them: 'I released A3', 'venting of A4', 'A1 release'."""
    between = scene.words(m.j, i)
    if len(between) > 7 or any(w in (",", ";", ".", "but", "then", ":") for w in between):
        return False
    if any(s for s in scene.subjects if m.j <= s.i < i and s.kind in ("tendon", "structure", "sided", "role")):
        return False
    return not any(w in ("at", "under", "beyond", "beneath", "past", "near", "between", "by", "until") for w in between)


def _strongest(mentions: list[Mention], scene: Scene) -> Mention:
    """Of the words for one pulley the last deed wins; how it was found gives way; 'over its full length' makes a release."""
    deeds = [m for m in mentions if m.value not in ("intact", "injured")]
    full = [m for m in deeds if m.value == "released"]
    if full and all(m.value in ("released", "vented") for m in deeds):
        return full[-1]
    chosen = deeds or mentions
    real = [m for m in chosen if not scene.negated(m.i, m.j, 3) or m.value == "intact"]
    return (real or chosen)[-1] if deeds else chosen[0]


def _lay(desk: Desk, scene: Scene, group: list[Mention], action: Mention) -> None:
    value = _state(scene, action)
    if value is None:
        return
    i, j = min(group[0].i, action.i), max(group[-1].j, action.j)
    if value == "vented" and any(i - 3 <= m.i and m.j <= j + 8 and scene.part(m.i)[0] <= j for m in scene.of("fully")):
        value = "released"
    span = (i, j) if j - i <= 24 else (action.i, action.j)
    share = _share(scene, group, action) if value in ("vented", "trimmed", "released", "excised", "injured", "repaired") else {}
    if value == "vented" and share.get("extent_percent") == 100:
        value, share = "released", {}
    if value in ("released", "excised") and "extent_percent" in share:
        value = "vented" if value == "released" else "trimmed"
    for mention in group:
        for digit in _digits(scene, mention, _known_digits(desk, mention)):
            _put(desk, scene, digit, mention.value, "finding", value, span, f"pulley {value}")
            if value in ("vented", "trimmed"):
                for name, figure in share.items():
                    _put(desk, scene, digit, mention.value, name, figure, span, f"how much of the pulley was {value}")


def _put(desk: Desk, scene: Scene, digit: str | None, pulley: str, name: str, value: Value, span: tuple[int, int], rule: str) -> None:
    digit = "thumb" if pulley in _THUMB_ONLY else None if pulley == "flexor retinaculum" else digit
    desk.add(scene, "pulleys", (digit, pulley, None), name, value, [span], rule)


def _state(scene: Scene, action: Mention) -> str | None:
    """Return what became of a pulley; a negated opening is an intact pulley, a negated 'intact' says nothing sure."""
    word = " ".join(scene.words(action.i, action.j))
    negated = scene.negated(action.i, action.j, 4) and not word.startswith(("not", "never", "no ", "un"))
    if action.value == "intact":
        if word in ("left", "was left") and scene.next_word(action.j) not in ("", ".", ",", ";", "alone", "intact", "in", "and", "as", "closed"):
            return None
        return None if negated else "intact"
    if negated:
        return "intact" if action.value in ("vented", "released", "excised", "trimmed") else None
    if action.value == "vented" and word in ("cut", "divided", "released", "release"):
        if word == "cut":
            return "injured"
        return _whole_or_part(scene, action)
    return action.value


def _whole_or_part(scene: Scene, action: Mention) -> str:
    """'released' and 'divided' alone mean the whole length; with a share or a length only that much."""
    first, last = scene.part(action.i)
    words = scene.words(max(first, action.i - 10), min(last, action.j + 8))
    if any(w in _PART_WORDS for w in words) or {"partially", "partly", "half", "mm", "edge", "part"} & set(words):
        return "vented"
    if any(q.unit in ("%", "mm") and first <= q.i < last for q in scene.quantities):
        return "vented"
    return "released"


def _share(scene: Scene, group: list[Mention], action: Mention) -> dict[str, Value]:
    """Return how much of the pulley was opened and which part."""
    found: dict[str, Value] = {}
    i, j = min(group[0].i, action.i), max(group[-1].j, action.j)
    low, high = max(scene.sentence.i, i - 8), min(scene.sentence.j, j + 8)
    low = max([low, *(k + 1 for k in range(low, i) if scene.page.words[k] in (".", ";", "but") or (scene.page.words[k] == "," and k < i - 4))])
    high = min([high, *(k for k in range(j, high) if scene.page.words[k] in (".", ";", "but"))])
    later = [m.i for m in scene.of("pulley") if m.i >= j and m not in group]
    high = min([high, *later])
    for q in scene.quantities:
        if not low <= q.i < high or q.high is None:
            continue
        if q.unit == "%" and "extent_percent" not in found:
            found["extent_percent"] = q.high
        elif q.unit == "mm" and "extent_mm" not in found and q.high <= 30:
            found["extent_mm"] = q.high
    for m in scene.of("fraction"):
        if low <= m.i < high and "extent_percent" not in found:
            found["extent_percent"] = float(m.value)
    for k in range(low, high):
        word = scene.page.words[k]
        after = scene.page.words[k + 1] if k + 1 < len(scene.page.words) else ""
        if after == "." and word in ("dist", "prox") and k + 2 < len(scene.page.words):
            after = scene.page.words[k + 2]
        if word in _PART_WORDS and (after in _PART_OF or (k + 1 < high and scene.page.words[k - 1] in ("its", "the", "of") and after in _PART_OF)):
            found.setdefault("part", _PART_WORDS[word])
    if "extent_percent" not in found and _third(scene, low, high):
        found["extent_percent"] = 33.0
    return found


def _third(scene: Scene, low: int, high: int) -> bool:
    words = scene.words(low, high)
    return "third" in words and any(w in _PART_WORDS for w in words[: words.index("third")])


def _known_digits(desk: Desk, mention: Mention) -> tuple[str | None, ...]:
    """Return the one digit for which this pulley was already hurt or opened, if it is one."""
    digits = {f.entry[0] for f in desk.findings if f.group == "pulleys" and f.entry[1] == mention.value and f.value == "injured"}
    return tuple(digits) if len(digits) == 1 else ()


def _digits(scene: Scene, mention: Mention, known: tuple[str | None, ...] = ()) -> tuple[str | None, ...]:
    if any(g.every and not g.tendons and not g.digits for g in scene.setting.groups):
        return scene.every_digit or (None,)
    found = digits_at(scene, None, mention.i)
    own = [g for g in scene.setting.groups if g.digits and 0 <= g.i - mention.j <= 3]
    if own:
        found = own[0].digits
    if not own and not any(g.digits for g in scene.setting.groups) and known:
        return known
    return found or (None,)


def _all_annular(desk: Desk, scene: Scene) -> None:
    """'all five annular pulleys were left alone'."""
    for mention in scene.of("pulleys"):
        phrase = scene.words(mention.i, mention.j)
        if mention.value != "annular" or not {"all", "five"} & set(phrase) or not scene.told(mention.i):
            continue
        after = [m for m in scene.of("opened") if m.i >= mention.j and scene.told(m.i)]
        if after and _state(scene, after[0]) == "intact":
            for digit in _digits(scene, mention):
                for pulley in _ANNULAR:
                    _put(desk, scene, digit, pulley, "finding", "intact", (mention.i, after[0].j), "all annular pulleys intact")


def _pronoun(desk: Desk, scene: Scene) -> None:
    """'Released it over its full length' after a sentence about a pulley."""
    if not desk.last_pulleys or scene.sentence.i != desk.last_pulley_end:
        return
    actions = [m for m in scene.of("opened") if scene.told(m.i) and m.value in ("released", "excised", "vented", "widened", "repaired", "reconstructed")]
    if not actions or scene.setting.groups or actions[0].i - scene.sentence.i > 3:
        return
    words = scene.words(scene.sentence.i, scene.sentence.i + 6)
    if "it" not in words and "this" not in words:
        return
    value = _state(scene, _strongest(actions, scene))
    for pulley, digits in desk.last_pulleys:
        for digit in digits:
            if value:
                _put(desk, scene, digit, pulley, "finding", value, (actions[0].i, actions[-1].j), f"pulley {value}")

