"""Which parts of a note are in it at all: a heading with something behind it, else words that show the part."""

import re

from notereader.reader.desk import Desk
from notereader.reader.layout import ONE_LINE
from notereader.reader.page import Break, Mention, Page
from notereader.reader.scene import Scene
from notereader.vocabulary.fields import field_specs

_NOWHERE = ("", "", None)
_BY_WORDS = ("consent", "tourniquet", "antibiotics", "blood_loss", "complications", "specimens", "implants", "dressing", "surgeon", "assistant", "anaesthetist", "signature", "findings", "indication")
_PERSON = frozenset("consultant cons surgeon registrar reg fellow resident attending staff sho spr st5 st6 st4 st3 hand".split())


def elements(desk: Desk) -> None:
    """Find which elements the note contains."""
    headed = _headed(desk)
    for name in field_specs()["elements"]:
        found = headed.get(name) or _by_words(desk, name) or _other_ways(desk, name)
        if found is not None:
            i, j = found
            scene = next(s for s in desk.scenes if s.sentence.i <= i < s.sentence.j)
            desk.add(scene, "elements", _NOWHERE, name, True, [(i, j)], "part of the note")


def _headed(desk: Desk) -> dict[str, tuple[int, int]]:
    """Return the elements shown by a heading with something behind it."""
    page = desk.page
    found: dict[str, tuple[int, int]] = {}
    names = set(field_specs()["elements"])
    for n, section in enumerate(page.sections):
        heading = next((h for h in page.headings if section.h <= h.i < section.i), None)
        if heading is None or heading.value not in names:
            continue
        following = page.sections[n + 1].h if n + 1 < len(page.sections) else len(page.words)
        end = section.j if section.kind in ONE_LINE else max(section.j, following)
        if _has_content(page, section.i, min(end, following) if section.kind in ONE_LINE else end):
            name = _real_kind(page, heading, section.i)
            found.setdefault(name, (heading.i, heading.j))
    return found


def _real_kind(page: Page, heading: Mention, k: int) -> str:
    """'Op: consultant hand surgeon' names the surgeon, not the operation."""
    if heading.value == "procedure" and set(page.words[k : k + 3]) & _PERSON and page.words[heading.i] in ("op", "operation", "done"):
        return "surgeon"
    return heading.value


def _has_content(page: Page, i: int, j: int) -> bool:
    """Tell whether something stands behind a heading that is not an unfilled choice."""
    words = [w for w in page.words[i:j] if any(c.isalnum() for c in w)]
    if words[:1] == ["a"] and (len(words) == 1 or page.breaks[i] >= Break.LINE):
        words = words[1:]
    text = page.raw(i, j)
    if text.strip().startswith(("***", "{")) or "***" in text[:12]:
        return False
    return bool(words)


def _by_words(desk: Desk, name: str) -> tuple[int, int] | None:
    if name not in _BY_WORDS:
        return None
    for mention in desk.page.elements:
        if mention.value != name:
            continue
        scene = next(s for s in desk.scenes if s.sentence.i <= mention.i < s.sentence.j)
        if _shows(desk, scene, mention, name):
            return mention.i, mention.j
    return None


def _shows(desk: Desk, scene: Scene, mention: Mention, name: str) -> bool:
    """Tell whether words show an element of this operation; an empty form line does not."""
    standing = desk.page.standing[mention.i]
    heading = next((h for h in desk.page.headings if h.i == mention.i), None)
    if heading is not None and heading.value == name:
        section = next((s for s in desk.page.sections if s.h <= mention.i < s.j), None)
        if section is not None and not _has_content(desk.page, section.i, section.j):
            return False
    if standing in ("history", "teaching", "conditional"):
        return False
    if _unticked(desk.page, mention.i):
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    if name == "implants":
        return standing in ("", "plan") and not scene.negated(mention.i, mention.j, 3) or word.startswith("no ")
    if name == "dressing":
        return standing in ("", "plan") and word not in ("wool",) or scene.sentence.section in ("closure", "dressing")
    if name == "complications" and word in ("complications", "complication"):
        return scene.sentence.section not in ("indication", "consent") and standing != "story"
    if name in ("surgeon", "assistant", "anaesthetist"):
        return standing not in ("story", "plan")
    if name == "specimens":
        return standing != "story"
    if name == "tourniquet" and word == "cuff":
        return standing not in ("story",)
    if name == "antibiotics":
        return scene.sentence.section != "indication" or "allergic" not in scene.words(scene.sentence.i, scene.sentence.j)
    return True


def _unticked(page: Page, k: int) -> bool:
    """Tell whether an unticked box stands before word k."""
    return k >= 2 and page.words[k - 1] in (")", "]") and page.words[k - 2] in ("(", "[")


def _other_ways(desk: Desk, name: str) -> tuple[int, int] | None:
    return {"closure": _closure, "findings": _findings, "procedure": _procedure, "instructions": _instructions, "signature": _signature, "indication": _indication}.get(name, lambda _: None)(desk)


def _closure(desk: Desk) -> tuple[int, int] | None:
    """'Skin was closed with 4-0 nylon', 'wounds closed'."""
    for scene in reversed(desk.scenes):
        for m in scene.of("role"):
            if m.value == "skin" and desk.page.standing[m.i] in ("", "plan"):
                words = set(scene.words(scene.sentence.i, scene.sentence.j))
                sized = any(w.endswith("-0") for w in words) or scene.of("material")
                if words & {"closed", "closure", "sutured", "sewn", "approximated", "closing", "shut", "stitched", "together"} or (sized and "skin" in words):
                    return m.i, m.j
    return None


def _findings(desk: Desk) -> tuple[int, int] | None:
    """The first sentence of the body that says what was cut."""
    for finding in sorted(desk.findings, key=lambda f: f.order):
        if finding.group in ("repairs", "injuries") and finding.field == "extent" and not finding.header:
            return finding.spans[0]
    for finding in sorted(desk.findings, key=lambda f: f.order):
        if finding.group in ("repairs", "injuries", "pulleys") and finding.field in ("extent", "finding", "ends") and not finding.header:
            return finding.spans[0]
    return None


def _procedure(desk: Desk) -> tuple[int, int] | None:
    """A title line without a heading: the first treatment named before the body, else the first one at all."""
    repaired = [f for f in sorted(desk.findings, key=lambda f: f.order) if f.field == "treatment" and f.group in ("repairs", "injuries")]
    return repaired[0].spans[0] if repaired else None


def _instructions(desk: Desk) -> tuple[int, int] | None:
    """An order without a heading: therapy, splint time, stitches out, review."""
    page = desk.page
    tail = int(len(page.words) * 0.6)
    for scene in desk.scenes:
        if scene.sentence.i < tail:
            continue
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        orders = words & {"therapist", "therapy", "clinic", "review", "elevate", "elevation", "splint", "stitches", "sutures", "told", "returns", "follow", "weeks", "home"}
        if len(orders) >= 2 or (orders and words & {"will", "see", "back", "days", "told", "keep", "remove", "please"}):
            return scene.sentence.i, min(scene.sentence.j, scene.sentence.i + 8)
    return None


_INITIALS = re.compile(r"\s*(?:[A-Z]\.\s?){2,3}(?:,.*|\s*/.*|\(.*)?\Z|\s*[A-Z]\.\s?[A-Z]\.?,? .{0,60}\Z")


def _signature(desk: Desk) -> tuple[int, int] | None:
    """Initials on the last line."""
    page = desk.page
    if not page.words:
        return None
    first = max((k for k in range(len(page.words)) if page.breaks[k] >= Break.LINE), default=0)
    text = page.raw(first, len(page.words))
    if len(text) < 80 and _INITIALS.match(text):
        return first, len(page.words)
    return None


def _indication(desk: Desk) -> tuple[int, int] | None:
    """A sentence that tells who the patient is and what happened."""
    for scene in desk.scenes[: max(12, len(desk.scenes) // 2)]:
        words = scene.words(scene.sentence.i, scene.sentence.j)
        person = {"year", "yo", "patient", "boy", "girl", "man", "woman", "lady", "he", "she"} & set(words)
        if person and any(m.kind == "mechanism" for m in scene.mentions) and scene.sentence.section not in ("diagnosis", "procedure"):
            return scene.sentence.i, min(scene.sentence.j, scene.sentence.i + 14)
    return None
