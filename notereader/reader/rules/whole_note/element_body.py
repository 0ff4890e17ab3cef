"""Parts of a note shown only by what the text says: why, what was found, what was done and ordered."""

import re
from collections.abc import Callable

from notereader.reader.desk import Desk, Finding
from notereader.reader.mentions.measures import UNITS
from notereader.reader.rules.whole_note.element_people import anaesthetist, assistant, signature, surgeon
from notereader.reader.rules.whole_note.element_words import near_words, shown_by_words
from notereader.reader.rules.whole_note.mechanism import is_no_thing
from notereader.reader.rules.whole_note.whole import Span, element_list, scene_at
from notereader.reader.scene import Scene

_TITLES = 10  # sentences among which a title line stands
_SHOWN = 8  # words of a sentence shown at most
_STATE = frozenset(["extent", "ends", "hurt", "nervestate", "fracture"])
_DIAGNOSIS = frozenset(["dx", "diagnosis", "diagnoses"])
_BLOOD = frozenset(["loss", "lost", "bleeding", "blood"])
_STOP = frozenset(["barrier", "stop", "block", "lock"])
_REASON = re.compile(r"\b(?:hence the operation|brought (?:him|her|them) to theatre|is indicated)\b")
_REASONS = frozenset(["hence", "brought", "indicated"])  # no sentence without one of these gives that reason
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


# --- consent, tourniquet, blood, specimens


def _consent(desk: Desk) -> Span | None:
    """'told of the hazards and signed', 'Form 1 signed', 'has undersigned', in the story or the text of the note."""
    for scene in desk.scenes:
        told = desk.page.standing[scene.sentence.i] == "story" or scene.sentence.section in _TOLD_IN
        if not told or scene.sentence.section in ("signature", "instructions"):
            continue
        if scene.said.isdisjoint(("undersigned", "signed", "signature")):
            continue
        for k in range(scene.sentence.i, scene.sentence.j):
            word = scene.page.words[k]
            before = set(scene.words(scene.sentence.i, k)) or _risks_before(desk, scene)
            if word == "undersigned" or (word in _SIGNED and before & element_list("signs_consent")):
                return max(scene.sentence.i, k - 1), k + 1
    return None


_SIGNED = ("signed", "signature")
_TOLD_IN = ("surgeon", "narrative", "procedure")


def _risks_before(desk: Desk, scene: Scene) -> set[str]:
    """'Risks incl rupture, stiff IPJ. Signed.': the words of the sentence before, where it tells of risks."""
    before = desk.scene_before(scene)
    words = set(before.words(before.sentence.i, before.sentence.j)) if before is not None else set()
    return {"told"} if words & _TOLD_OF else set()


_TOLD_OF = frozenset(
    ["risks", "risk", "discussed", "explained", "counselled", "rupture", "adhesions", "stiffness", "talked", "told"]
)


def _complications(desk: Desk) -> Span | None:
    """'Compl -> 0', 'Trouble   nil', 'Upsets  none'."""
    for scene in desk.saying(element_list("mishaps")):
        for span in near_words(scene, element_list("mishaps"), element_list("none"), 3):
            return span
    return None


def _diagnosis(desk: Desk) -> Span | None:
    """'Dx R palm - ski edge', 'preop diagnosis laceration left index': the word with what it names behind it."""
    for scene in desk.saying(_DIAGNOSIS):
        if desk.page.standing[scene.sentence.i] not in ("", "story", "plan"):
            continue
        for k in range(scene.sentence.i, scene.sentence.j - 2):
            if scene.page.words[k] in _DIAGNOSIS and scene.page.words[k + 1].isalpha():
                return k, min(k + 4, scene.sentence.j)
    return None


def _blood_loss(desk: Desk) -> Span | None:
    """'Loss 20 mls', 'Bleeding negligible', 'About 10 ml of blood', 'Next to no bleeding'."""
    for scene in desk.saying(_BLOOD):
        if not _said(desk, scene) or scene.sentence.section in ("indication", "instructions"):
            continue
        for k in range(scene.sentence.i, scene.sentence.j):
            if scene.page.words[k] not in _BLOOD:
                continue
            near = range(max(scene.sentence.i, k - 4), min(scene.sentence.j, k + 5))
            measured = [m for m in near if scene.page.words[m] in element_list("little_blood")]
            if measured and measured[0] > k and _LABEL_ENDS.issuperset(scene.words(k + 1, measured[0])):
                measured = [m for m in measured if scene.page.words[m] not in UNITS]  # 'Blood loss: ____ ml'
            if scene.page.words[k] == "loss" and k == scene.sentence.i and scene.next_word(k + 1).isdecimal():
                return k, k + 2  # 'Loss 30.'
            if measured:
                return min(k, measured[0] - 1 if measured[0] > scene.sentence.i else k), max(k, measured[-1]) + 1
    return None


_LABEL_ENDS = frozenset([":", "=", "-", ".", "loss"])


def _specimens(desk: Desk) -> Span | None:
    """'Nothing to pathology', 'cultures sent', 'Nothing sent'."""
    for scene in desk.saying(element_list("sent_off")):
        if scene.sentence.section in ("indication", "instructions", "consent") or not _said(desk, scene):
            continue
        for span in near_words(scene, element_list("sent_off"), element_list("sent_to"), 3):
            return span
    return None


def _tourniquet(desk: Desk) -> Span | None:
    """'Blood barrier at the upper arm 280 mmHg'."""
    for scene in desk.saying(_STOP):
        for span in near_words(scene, frozenset(["blood"]), _STOP, 1):
            return span
    return None


# --- why, what was found, what was done, what comes next


def _indication(desk: Desk) -> Span | None:
    """A symptom told before the operation, else a sentence that tells who the patient is and what happened."""
    told = symptom(desk)
    if told:
        return told[0]
    for scene in desk.scenes[: max(12, len(desk.scenes) // 2)]:
        if not scene.said.isdisjoint(_REASONS):
            said = " ".join(scene.words(scene.sentence.i, scene.sentence.j))
            reason = _REASON.search(said)
            if reason:
                k = scene.sentence.i + len(said[: reason.start()].split())
                return k, k + len(reason.group().split())
        person = element_list("patient") & scene.said
        hurt = [m for m in scene.of("mechanism") if not is_no_thing(scene, m)]
        if person and hurt and not scene.header:
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
        bends = [
            *near_words(scene, element_list("cannot"), element_list("bends"), 6),
            *near_words(scene, element_list("weakly"), element_list("bends"), 2),
        ]
        found = listed or ([] if scene.said & element_list("operative") else bends)
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
    before = (scene for scene in desk.scenes if scene.sentence.i < first)
    earlier = next((s for s in map(_tells_state, before) if s), None) if spans else None
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
    if element_list("was").isdisjoint(scene.said):
        return None
    words = range(scene.sentence.i, scene.sentence.j)
    things = [m for m in scene.mentions if m.kind in _THINGS]
    wide = [*things, *scene.of("pulley", "pulleys"), *(m for m in scene.of("role") if m.value == "sheath")]
    states = [m.j for m in scene.mentions if m.kind in _STATE] if things else []
    states += [k + 1 for k in words if scene.page.words[k] in element_list("states")] if wide else []
    return (scene.sentence.i, min(states)) if states else None


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
    treated = sorted(desk.laid("treatment"), key=lambda f: f.order)
    return treated[0].spans[0] if treated else None


def _closure(desk: Desk) -> Span | None:
    """'Skin was closed with 4-0 nylon', '4-0 nylon throughout' before the dressing."""
    for scene in reversed(desk.having("role")):
        for m in scene.of("role"):
            if m.value == "skin" and desk.page.standing[m.i] in ("", "plan") and _sews(scene):
                return m.i, m.j
    for scene in reversed(desk.saying(element_list("closes"))):
        k = _closed_at(desk, scene)
        if k is not None:
            return k, min(k + 5, scene.sentence.j)
    dressed = next((m.i for m in desk.page.elements if m.value == "dressing" and not desk.page.standing[m.i]), None)
    for scene in reversed(desk.scenes):
        beside = dressed is not None and scene.sentence.i <= dressed <= scene.sentence.j + 1
        if dressed is not None and beside and scene.sentence.i > 0 and _is_thread(scene, dressed):
            return _start_of(scene)
    return None


def _closed_at(desk: Desk, scene: Scene) -> int | None:
    """'I closed with 4-0 nylon', 'Closed 5/0 Rapide', 'Wound 4-0 nylon', 'Closing in layers': the wound alone."""
    if 4 * scene.sentence.i < len(desk.page.words) or desk.page.standing[scene.sentence.i] not in ("", "plan"):
        return None
    other = scene.of("tendon", "pulley", "sided", "structure", "anynerve", "anyartery", "bundle")
    other += [m for m in scene.of("role") if m.value not in ("skin", "drain")]
    words = scene.words(scene.sentence.i, scene.sentence.j)
    threads = bool(scene.of("material")) or any(w.endswith("-0") for w in words) or "layers" in words
    if other or not threads:
        return None
    opening = range(scene.sentence.i, min(scene.sentence.i + 4, scene.sentence.j))
    return next((k for k in opening if scene.page.words[k] in element_list("closes")), None)


def _is_thread(scene: Scene, dressed: int) -> bool:
    """Tell whether a short sentence before the dressing names only a thread and no tendon, nerve, vessel or pulley."""
    threads = [m for m in scene.of("material") if m.i < dressed]
    return bool(threads) and not scene.of("tendon", "pulley", "sided", "structure", "anynerve", "anyartery", "bundle")


def _sews(scene: Scene) -> bool:
    words = scene.said
    sized = any(w.endswith("-0") for w in words) or bool(scene.of("material"))
    return bool(words & element_list("sews")) or (sized and "skin" in words)


def _instructions(desk: Desk) -> Span | None:
    """An order without a heading after the closure: therapy, splint time, stitches out, review."""
    after = _after_closure(desk)
    for scene in desk.scenes:
        words = scene.said
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
    closing = [s for s in desk.having("role") if any(m.value == "skin" for m in s.of("role")) and _sews(s)]
    late = int(len(desk.page.words) * 0.6)
    return closing[-1].sentence.j if closing and closing[-1].sentence.j > late // 2 else late


_RULES: dict[str, Callable[[Desk], Span | None]] = {
    "surgeon": surgeon,
    "assistant": assistant,
    "anaesthetist": anaesthetist,
    "complications": _complications,
    "diagnosis": _diagnosis,
    "consent": _consent,
    "tourniquet": _tourniquet,
    "blood_loss": _blood_loss,
    "specimens": _specimens,
    "indication": _indication,
    "procedure": _procedure,
    "closure": _closure,
    "instructions": _instructions,
    "signature": signature,
}
