"""Parts of a note shown only by what the text says: who operated, why, what was found, what was done and ordered."""

import re
from collections.abc import Callable

from notereader.reader.desk import Desk, Finding
from notereader.reader.page import Break
from notereader.reader.rules.element_words import near_words, shown_by_words
from notereader.reader.rules.whole import Span, element_list, scene_at
from notereader.reader.scene import Scene

_TITLES = 10  # sentences among which a title line stands
_SHOWN = 8  # words of a sentence shown at most
_STATE = frozenset(["extent", "ends", "hurt", "nervestate", "fracture"])
_THINGS = frozenset(["tendon", "generic", "slip", "structure", "bundle", "sided", "anynerve", "anyartery", "bone"])


def shown_by_text(desk: Desk, name: str) -> list[Span]:
    """Return the words of the text that show an element, or nothing."""
    if name == "findings":
        return _findings(desk)
    rule = _RULES.get(name)
    span = rule(desk) if rule is not None and desk.scenes else None
    return [span] if span is not None else []


def _start_of(scene: Scene, length: int = _SHOWN) -> Span:
    return scene.sentence.i, min(scene.sentence.j, scene.sentence.i + length)


def _said(desk: Desk, scene: Scene) -> bool:
    """Tell whether a sentence speaks of this operation."""
    return desk.page.standing[scene.sentence.i] in ("", "story", "considered", "plan")


# --- people


def _surgeon(desk: Desk) -> Span | None:
    """'The registrar who operated', 'Operating consultant'."""
    for scene in desk.scenes:
        if scene.sentence.section not in ("indication", "previous", "instructions"):
            for span in near_words(scene, element_list("operates"), element_list("people"), 3):
                return span
    return _letter_writer(desk)


def _letter_writer(desk: Desk) -> Span | None:
    """In a letter the surgeon is who signs it: 'Consultant hand surgeon' on the last line."""
    last = _last_line(desk)
    words = set(desk.page.words[last[0] : last[1]])
    return last if words & {"surgeon", "consultant"} and last[1] - last[0] <= 12 else None


def _assistant(desk: Desk) -> Span | None:
    """'Consultant hand surgeon with associate specialist'."""
    for scene in desk.scenes[: max(6, len(desk.scenes) // 3)]:
        words = scene.page.words
        for k in range(scene.sentence.i + 1, scene.sentence.j - 1):
            team = set(scene.words(max(scene.sentence.i, k - 4), k)) & {"surgeon", "consultant", "attending"}
            if words[k] in ("with", "+") and team and set(words[k + 1 : k + 4]) & element_list("people"):
                return k + 1, min(k + 3, scene.sentence.j)
    return None


def _anaesthetist(desk: Desk) -> Span | None:
    """'by the anesthesia service', 'given by anaesthesia PG', 'colleague on duty'."""
    for scene in desk.scenes:
        for i, j in near_words(scene, frozenset(["anaesthesia", "anesthesia"]), element_list("anaesthetic_people"), 2):
            if not any(h.i < j and i < h.j for h in desk.page.headings):
                return i, j
        if scene.sentence.section == "anaesthesia":
            for span in near_words(scene, frozenset(["colleague", "doctor", "dr"]), frozenset(["duty", "call"]), 4):
                return span
    return None


# --- consent, tourniquet, blood, specimens


def _consent(desk: Desk) -> Span | None:
    """'told of the hazards and signed', 'Form 1 signed', 'has undersigned', in the story or early in the note."""
    for scene in desk.scenes[: max(8, len(desk.scenes) * 2 // 3)]:
        told = desk.page.standing[scene.sentence.i] == "story" or scene.sentence.section in ("surgeon", "narrative")
        if not told or scene.sentence.section in ("signature", "instructions"):
            continue
        for k in range(scene.sentence.i, scene.sentence.j):
            word = scene.page.words[k]
            before = set(scene.words(scene.sentence.i, k))
            if word == "undersigned" or (word == "signed" and before & element_list("signs_consent")):
                return max(scene.sentence.i, k - 1), k + 1
    return None


def _blood_loss(desk: Desk) -> Span | None:
    """'Loss 20 mls', 'Bleeding negligible', 'About 10 ml of blood', 'Next to no bleeding'."""
    for scene in desk.scenes:
        if not _said(desk, scene) or scene.sentence.section in ("indication", "instructions"):
            continue
        for k in range(scene.sentence.i, scene.sentence.j):
            if scene.page.words[k] not in ("loss", "lost", "bleeding", "blood"):
                continue
            near = range(max(scene.sentence.i, k - 4), min(scene.sentence.j, k + 5))
            measured = [m for m in near if scene.page.words[m] in element_list("little_blood")]
            if measured:
                return min(k, measured[0] - 1 if measured[0] > scene.sentence.i else k), max(k, measured[-1]) + 1
    return None


def _specimens(desk: Desk) -> Span | None:
    """'Nothing to pathology', 'cultures sent', 'Nothing sent'."""
    for scene in desk.scenes:
        if scene.sentence.section in ("indication", "instructions", "consent") or not _said(desk, scene):
            continue
        for span in near_words(scene, element_list("sent_off"), element_list("sent_to"), 3):
            return span
    return None


def _tourniquet(desk: Desk) -> Span | None:
    """'Blood barrier at the upper arm 280 mmHg'."""
    for scene in desk.scenes:
        for span in near_words(scene, frozenset(["blood"]), frozenset(["barrier", "stop", "block", "lock"]), 1):
            return span
    return None


# --- why, what was found, what was done, what comes next


def _indication(desk: Desk) -> Span | None:
    """A symptom told before the operation, else a sentence that tells who the patient is and what happened."""
    told = symptom(desk)
    if told:
        return told[0]
    for scene in desk.scenes[: max(12, len(desk.scenes) // 2)]:
        words = scene.words(scene.sentence.i, scene.sentence.j)
        said = " ".join(words)
        reason = re.search(r"\b(?:hence the operation|brought (?:him|her|them) to theatre|is indicated)\b", said)
        if reason:
            k = scene.sentence.i + len(said[: reason.start()].split())
            return k, k + len(reason.group().split())
        person = element_list("patient") & set(words)
        if person and any(m.kind == "mechanism" for m in scene.mentions) and not scene.header:
            return _start_of(scene, 14)
    return None


def symptom(desk: Desk, sections: tuple[str, ...] = ()) -> list[Span]:
    """Return the first words that say what the hand could no longer do: 'unable to flex', 'neither joint would bend'.

    `sections`: where to look; without it, in the sentences before the operation.
    """
    early = desk.scenes if sections else desk.scenes[: max(12, len(desk.scenes) // 2)]
    for scene in early:
        if (sections and scene.sentence.section not in sections) or scene.header:
            continue
        if desk.page.standing[scene.sentence.i] not in ("", "story"):
            continue
        listed = shown_by_words(desk, "indication", scene.sentence.i, scene.sentence.j)
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        bends = near_words(scene, element_list("cannot"), element_list("bends"), 6)
        found = listed or ([] if words & element_list("operative") else list(bends))
        if found:
            return [min(found)]
    return []


def _findings(desk: Desk) -> list[Span]:
    """The first sentence of the body that tells what was hurt, and an earlier one that tells another state."""
    laid = sorted((f for f in desk.findings if _is_state(f)), key=lambda f: f.order)
    hurt = [f for f in laid if f.field == "extent" and f.value in ("complete", "partial")]
    spans: list[Span] = []
    for f in [*hurt[:1], *laid[:1]]:
        scene = scene_at(desk, f.spans[0][0])
        spans.append(_heading_of_grid(desk, scene) or _up_to(scene, f.spans[0]))
    first = min((s[0] for s in spans), default=len(desk.page.words))
    earlier = next((s for s in map(_tells_state, desk.scenes) if s and s[0] < first), None) if spans else None
    return list(dict.fromkeys([*spans, *([earlier] if earlier else [])]))


def _is_state(f: Finding) -> bool:
    """Tell whether a finding says in what state something was found, not what was done to it."""
    if f.header or f.group not in ("repairs", "injuries", "pulleys"):
        return False
    return f.field in ("extent", "ends") or (f.field == "finding" and f.value in ("intact", "injured"))


def _up_to(scene: Scene, span: Span) -> Span:
    """Return the words from the start of the sentence to the end of a span, where they are few, else the span."""
    return (scene.sentence.i, span[1]) if 0 < span[1] - scene.sentence.i <= 25 else span


def _heading_of_grid(desk: Desk, scene: Scene) -> Span | None:
    """Return the heading of the grid a sentence is a cell of."""
    if not scene.sentence.prefix:
        return None
    above = [h for h in desk.page.headings if h.i < scene.sentence.i]
    heads = bool(above) and above[-1].value in ("findings", "narrative", "procedure")
    return (above[-1].i, above[-1].j) if heads else None


def _tells_state(scene: Scene) -> Span | None:
    """Return the words of a sentence of the body that say in what state something was, if it does."""
    standing = scene.page.standing[scene.sentence.i]
    if scene.header or standing or scene.sentence.section in element_list("not_findings") or scene.of("mechanism"):
        return None
    words = range(scene.sentence.i, scene.sentence.j)
    was = any(scene.page.words[k] in element_list("was") for k in words)
    things = [m for m in scene.mentions if m.kind in _THINGS]
    wide = [*things, *scene.of("pulley", "pulleys"), *(m for m in scene.of("role") if m.value == "sheath")]
    states = [m.j for m in scene.mentions if m.kind in _STATE] if things else []
    states += [k + 1 for k in words if scene.page.words[k] in element_list("states")] if wide else []
    return (scene.sentence.i, min(states)) if was and states else None


def _procedure(desk: Desk) -> Span | None:
    """A title line, else a heading of the narrative, else the first core suture or treatment told."""
    for scene in desk.scenes[:_TITLES]:
        if scene.sentence.block > 1:
            break
        if not scene.sentence.label:
            continue
        words = scene.words(scene.sentence.i, scene.sentence.j)
        at = next((k for k, w in enumerate(words) if w in element_list("operations")), None)
        titled = scene.sentence.section in ("narrative", "procedure") and not set(words) & element_list("was")
        if at is not None and titled:
            return scene.sentence.i, min(scene.sentence.j, scene.sentence.i + max(at + 1, _SHOWN))
    for heading in desk.page.headings:
        if heading.value == "narrative" and set(desk.page.words[heading.i : heading.j]) & element_list("narratives"):
            return heading.i, heading.j
    for scene in desk.scenes:
        sewn = [f for f in desk.findings if f.group == "repairs" and scene.sentence.i <= f.order < scene.sentence.j]
        if any(f.field in ("stitch", "strands") or f.value == "repaired" for f in sewn):
            return _start_of(scene)
    treated = sorted((f for f in desk.findings if f.field == "treatment"), key=lambda f: f.order)
    return treated[0].spans[0] if treated else None


def _closure(desk: Desk) -> Span | None:
    """'Skin was closed with 4-0 nylon', '4-0 nylon throughout' before the dressing."""
    for scene in reversed(desk.scenes):
        for m in scene.of("role"):
            if m.value == "skin" and desk.page.standing[m.i] in ("", "plan") and _sews(scene):
                return m.i, m.j
    dressed = next((m.i for m in desk.page.elements if m.value == "dressing" and not desk.page.standing[m.i]), None)
    for scene in reversed(desk.scenes):
        beside = dressed is not None and scene.sentence.i <= dressed <= scene.sentence.j + 1
        if dressed is not None and beside and scene.sentence.i > 0 and _is_thread(scene, dressed):
            return _start_of(scene)
    return None


def _is_thread(scene: Scene, dressed: int) -> bool:
    """Tell whether a short sentence before the dressing names only a thread and no tendon, nerve, vessel or pulley."""
    threads = [m for m in scene.of("material") if m.i < dressed]
    return bool(threads) and not scene.of("tendon", "pulley", "sided", "structure", "anynerve", "anyartery", "bundle")


def _sews(scene: Scene) -> bool:
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    sized = any(w.endswith("-0") for w in words) or bool(scene.of("material"))
    return bool(words & element_list("sews")) or (sized and "skin" in words)


def _instructions(desk: Desk) -> Span | None:
    """An order without a heading after the closure: therapy, splint time, stitches out, review."""
    after = _after_closure(desk)
    for scene in desk.scenes:
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        if scene.header or words & {"dictated", "follow", "complications"}:
            continue
        therapy = bool(scene.of("therapy")) and bool(words & element_list("orders"))
        ahead = "will" in words and bool(scene.of("splint", "therapy", "programme"))
        if scene.sentence.i >= after and (scene.of("programme") or therapy or len(words & element_list("orders")) >= 2):
            return _start_of(scene)
        late = scene.sentence.i >= len(desk.page.words) // 2
        if ahead and late and desk.page.standing[scene.sentence.i] in ("", "plan"):
            return _start_of(scene)
    return None


def _after_closure(desk: Desk) -> int:
    """Return the word after the sentence that closes the skin, else the word at three fifths of the note."""
    closing = [s for s in desk.scenes if any(m.value == "skin" for m in s.of("role")) and _sews(s)]
    late = int(len(desk.page.words) * 0.6)
    return closing[-1].sentence.j if closing and closing[-1].sentence.j > late // 2 else late


# --- signature

_INITIALS = re.compile(r"\s*[(\[]?(?:[A-Z]\.[ ]?){2,3}(?:,.*|\s*/.*|\(.*|,? .{0,60})?\Z")


def _signature(desk: Desk) -> Span | None:
    """Words of signing or initials on the last lines; 'signed' of a consent is none."""
    page = desk.page
    for i, j in _endings(desk):
        words = page.words[i:j]
        if set(words) & element_list("signs") and not set(words) & {"consent", "form"}:
            k = i + next(n for n, w in enumerate(words) if w in element_list("signs"))
            return _around(page.words, k, i, j)
        if len(page.raw(i, j)) < 80 and _INITIALS.match(page.raw(i, j)):
            return i, j
    i, j = _last_line(desk)
    told = set(page.words[i:j])
    named = told & {"consultant", "surgeon", "registrar", "attending", "fellow", "resident", "specialist"}
    return (i, j) if named and j - i <= 6 and page.breaks[i] == Break.BLANK else None


def _around(words: list[str], k: int, i: int, j: int) -> Span:
    """Return word k with the words before and after it in its clause, seven at most on each side."""
    first, last = k, k + 1
    while first > i and k - first < 7 and words[first - 1] not in (".", ";"):
        first -= 1
    while last < j and last - k < 7 and words[last] not in (".", ";"):
        last += 1
    return first, last


def _endings(desk: Desk) -> list[Span]:
    """Return the last lines of the note, or its last sentences where a line is long, the last one first."""
    found: list[Span] = []
    for i, j in _last_lines(desk):
        inside = [(s.sentence.i, s.sentence.j) for s in desk.scenes if i <= s.sentence.i < j]
        found += inside[:-3:-1] if j - i > 40 else [(i, j)]
    return found[:3]


def _last_line(desk: Desk) -> Span:
    return _last_lines(desk, 1)[0]


def _last_lines(desk: Desk, count: int = 3) -> list[Span]:
    """Return the last lines of the note, the last one first."""
    page = desk.page
    starts = [0, *(k for k, gap in enumerate(page.breaks) if k and gap >= Break.LINE)]
    ends = [*starts[1:], len(page.words)]
    return list(zip(starts, ends, strict=True))[-count:][::-1]


_RULES: dict[str, Callable[[Desk], Span | None]] = {
    "surgeon": _surgeon,
    "assistant": _assistant,
    "anaesthetist": _anaesthetist,
    "consent": _consent,
    "tourniquet": _tourniquet,
    "blood_loss": _blood_loss,
    "specimens": _specimens,
    "indication": _indication,
    "procedure": _procedure,
    "closure": _closure,
    "instructions": _instructions,
    "signature": _signature,
}
