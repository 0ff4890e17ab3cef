"""Which parts of a note are in it at all: a heading with something behind it, else words that show the part."""

from dataclasses import dataclass
from itertools import islice

from notereader.reader.desk import Desk
from notereader.reader.layout.layout import ONE_LINE
from notereader.reader.page import Break, Mention, Page, Section, within
from notereader.reader.reasons import Reason
from notereader.reader.rules.whole_note.element_body import shown_by_text, symptom
from notereader.reader.rules.whole_note.element_words import left_open, shown_by_words
from notereader.reader.rules.whole_note.whole import NOWHERE, Span, element_list, scene_at
from notereader.vocabulary.doubts import doubt_table
from notereader.vocabulary.fields import field_specs

_MARKS = frozenset([":", ".", "..", "|", "=", ">", "]", ")", "?", "-", "--"])
_VALUE = 7  # words of a value shown with its heading at most
_SECONDS = {
    **dict.fromkeys(("assistant", "assist", "asst"), "assistant"),
    **dict.fromkeys(("tq", "cuff", "tourniquet"), "tourniquet"),
}
# What may stand right under a heading that has no words of its own.
_UNDER = {
    "instructions": ("splint", "instructions", "dressing", "admin", "narrative"),
    "closure": ("closure", "dressing"),
    "findings": ("narrative", "findings", "digit", "core", "zone"),
    "procedure": ("narrative", "digit", "side"),
    "indication": ("diagnosis", "mechanism", "injury_date", "indication", "date"),
}


@dataclass(slots=True)
class _Headed:
    """A heading with its section and the words behind it, i to j."""

    heading: Mention
    section: Section
    i: int
    j: int


def elements(desk: Desk) -> None:
    """Find which elements the note contains."""
    headed, unheaded = _headed(desk), doubt_table().unheaded
    for name in field_specs()["elements"]:
        spans = headed.get(name) or shown_by_words(desk, name) or shown_by_text(desk, name)
        if spans and name in _TOLD_AT_LENGTH and name not in headed:
            spans = [*spans, *_line_above(desk.page, spans[0][0])]
        reasons = [Reason("without_heading")] if name in unheaded and name not in headed else []
        if spans:
            desk.add(scene_at(desk, spans[0][0]), "elements", NOWHERE, name, True, spans, "part of the note", *reasons)


_TOLD_AT_LENGTH = frozenset(["indication", "findings", "procedure", "instructions"])
_TITLE = 5  # words of a line that stands above a paragraph at most


def _line_above(page: Page, k: int) -> list[Span]:
    """Return the short line above the paragraph of word k, or the label its line begins with: 'The story', 'Done:'."""
    first = k
    while first > 0 and page.breaks[first] < Break.LINE:
        first -= 1
    label = next((n for n in range(first, min(first + _TITLE, k)) if page.words[n] in (":", ".")), None)
    if label is not None and label > first:
        return [(first, label)]
    while first > 0 and page.breaks[first] != Break.BLANK:
        above = first - 1
        while above > 0 and page.breaks[above] < Break.LINE:
            above -= 1
        if first - above <= _TITLE and (page.breaks[above] == Break.BLANK or page.words[first - 1] == ":"):
            return [(above, first)]
        first = above
    if first == 0:
        return []
    above = first - 1
    while above > 0 and page.breaks[above] < Break.LINE:
        above -= 1
    alone = page.breaks[above] == Break.BLANK
    return [(above, first)] if alone and first - above <= _TITLE else []


def _headed(desk: Desk) -> dict[str, list[Span]]:
    """Return the elements shown by a heading with something behind it."""
    names = set(field_specs()["elements"])
    shown = [(part, _shown(desk, part)) for part in _parts(desk.page)]
    found: dict[str, list[Span]] = {}
    for part, name in sorted(shown, key=lambda f: (not _is_plain(desk.page, *f), f[0].heading.i)):
        if name in names:
            found.setdefault(name, _evidence(desk, part, name))
    for part, _ in shown:
        named = {w for w in desk.page.words[part.heading.i : part.heading.j] if w in ("indication", "diagnosis")}
        if len(named) == 2:  # 'Indication / diagnosis'
            for name in named:
                found.setdefault(name, [(part.heading.i, part.heading.j)])
    for part, name in shown:
        for other, span in _second_of_pair(desk.page, part, name):
            found.setdefault(other, [span])
    return found


def _is_plain(page: Page, part: _Headed, name: str) -> bool:
    """Tell whether a heading names its element outright: 'Closure' does, 'Out' and 'Leaving theatre' do not."""
    words = set(page.words[part.heading.i : part.heading.j])
    return name not in ("closure", "indication") or bool(words & element_list(f"plain_{name}"))


def _parts(page: Page) -> list[_Headed]:
    """Return the headings that have words behind them."""
    parts = []
    for n, section in enumerate(page.sections):
        heading = next(iter(within(page.headings, section.h, section.i)), None)
        if heading is None:
            continue
        after = page.sections[n + 1] if n + 1 < len(page.sections) else None
        limit = after.h if after else len(page.words)
        end = section.j if section.kind in ONE_LINE else max(section.j, limit)
        if section.kind in ONE_LINE and left_open(page, heading):
            continue
        if _has_content(page, section.i, min(end, limit)) or _has_parts_below(page, section, after):
            parts.append(_Headed(heading, section, section.i, min(end, limit)))
    return parts


def _has_content(page: Page, i: int, j: int) -> bool:
    """Tell whether something stands behind a heading that is not an unfilled choice."""
    told = (w for w in page.words[i:j] if w.isalnum() or any(c.isalnum() for c in w))
    words = list(islice(told, 2))  # two tell all: a narrative has hundreds
    if words[:1] == ["a"] and (len(words) == 1 or page.breaks[i] >= Break.LINE):
        words = words[1:]
    text = page.raw(i, j)
    if text.strip().startswith(("***", "{")) or "***" in text[:12]:
        return False
    return bool(words)


def _has_parts_below(page: Page, section: Section, after: Section | None) -> bool:
    """Tell whether a heading alone on its line heads the labelled lines right below it: 'Post op', 'Splint: ...'."""
    if after is None or after.h >= len(page.words) or page.breaks[after.h] != Break.LINE:
        return False
    if after.kind not in _UNDER.get(section.kind, ()):
        return False
    return page.words[section.i - 1] != ":" or section.kind in ("instructions", "closure")


# --- which element a heading shows


def _shown(desk: Desk, part: _Headed) -> str:
    """Return the element a heading shows, which its words or what stands behind it may change."""
    page, heading, kind = desk.page, part.heading, part.section.kind
    words = page.words[heading.i : heading.j]
    behind = page.words[part.i : part.i + 4]
    if kind == "narrative" and set(words) & {"findings", "found"}:
        return "findings"
    if heading.value == "procedure" and _only_a_date(page, part):
        return "date"
    if heading.value == "indication" and set(words) & element_list("plans"):
        return ""
    if heading.value == "indication" and set(words) <= {"patient", "before"}:
        told = [k for k, _ in symptom(desk, ("indication",)) if part.i <= k < part.j]
        return "indication" if told else ""
    if heading.value == "assistant" and "select" in behind:
        return ""
    if heading.value == "anaesthesia" and _names_only_person(desk, part):
        return "anaesthetist"
    is_person = bool(set(behind) & element_list("people"))
    if heading.value == "procedure" and is_person and set(words) <= {"op", "operation", "done"}:
        return "surgeon"
    if heading.value == "anaesthetist" and _names_drugs(desk, part):
        return "anaesthesia"
    if kind == "procedure" and heading.value == "instructions":
        return "procedure"
    return heading.value


def _only_a_date(page: Page, part: _Headed) -> bool:
    """Tell whether nothing but a date stands behind a heading: 'Operation: October 12, 2031'."""
    found = next((d for d in page.dates if 0 <= d.i - part.i <= 1), None)
    return found is not None and not any(w.isalnum() for w in page.words[found.j : part.j])


def _names_drugs(desk: Desk, part: _Headed) -> bool:
    """Tell whether an anaesthetic and nobody who gave it stands behind the heading: 'ANAES   regional: ...'."""
    given = any(part.i <= m.i < part.j for s in desk.having("anaesthesia") for m in s.of("anaesthesia"))
    return given and not set(desk.page.words[part.i : part.j]) & element_list("people")


def _names_only_person(desk: Desk, part: _Headed) -> bool:
    """Tell whether a person and no anaesthetic stands behind a heading: 'Anaesth: Dr Y', 'Narcosis: Dr. O.'."""
    given = any(part.i <= m.i < part.j for s in desk.having("anaesthesia") for m in s.of("anaesthesia"))
    first = set(desk.page.words[part.i : part.i + 4])
    return not given and bool(first & (element_list("titles") | element_list("grades")))


# --- evidence


def _evidence(desk: Desk, part: _Headed, name: str) -> list[Span]:
    """Return the words that show an element: its heading, with the value where the heading alone says little."""
    page, heading = desk.page, part.heading
    own = (heading.i, heading.j)
    if name == "closure":
        return [own, *(_stitched(desk, part) or shown_by_text(desk, "closure"))]
    if name == "indication":
        return [own, *([] if _is_plain(page, part, name) else symptom(desk, ("indication",)))]
    phrase = " ".join(page.words[heading.i : heading.j])
    if part.section.kind in ONE_LINE or phrase in element_list("vague"):
        end = _value_end(page, part)
        return [(heading.i, end), *shown_by_words(desk, name, end, part.j)]
    return [own]


def _value_end(page: Page, part: _Headed) -> int:
    """Return the word after the first clause behind a heading."""
    k = part.heading.j
    paired = "/" in page.words[part.heading.i : k + 1]
    if k < part.j and page.words[k] == "/":  # 'Abx / Tq   co-amoxiclav': the label has a second half
        k = next((m for m in range(k, part.j) if page.breaks[m] == Break.COLUMN or page.words[m] == ":"), k)
    while k < part.j and (page.words[k] in _MARKS or page.words[k].startswith("..")):
        k += 1
    first = k
    while k < part.j and k - first < _VALUE:
        new = page.breaks[k] >= Break.LINE or (page.breaks[k] == Break.COLUMN and k > first)
        ends = page.words[k] in (".", ",", ";", "|", "?") or (paired and page.words[k] == "/")
        if k > first and (ends or new):
            break
        k += 1
    return max(k, part.heading.j)


def _stitched(desk: Desk, part: _Headed) -> list[Span]:
    """Return the words that tell how the skin was closed, under a heading of the closure."""
    for scene in desk.scenes:
        if not part.i <= scene.sentence.i < part.j and not part.section.h <= scene.sentence.i < part.j:
            continue
        threads = [m for m in scene.of("material") if m.i >= part.i]
        skins = [m for m in scene.of("role") if m.value == "skin" and m.i >= part.i]
        skins.sort(key=lambda m: min((abs(m.i - t.i) for t in threads), default=0))
        for m in skins or threads:
            return [(m.i, m.j)]
    return []


def _second_of_pair(page: Page, part: _Headed, name: str) -> list[tuple[str, Span]]:
    """'Surgeon / assistant: consultant / core trainee', 'Abx / Tq   co-amoxiclav / 250 mmHg': the second of each."""
    if part.section.kind not in ONE_LINE:
        return []
    label = page.words[part.section.h : part.i + 4]
    if "/" not in label:
        return []
    at = part.section.h + label.index("/")
    second = next((page.words[k] for k in range(at + 1, min(at + 3, len(page.words))) if page.words[k].isalpha()), "")
    slashes = [k for k in range(max(part.i, at + 2), part.j) if page.words[k] == "/" and page.breaks[k] != Break.NONE]
    if _SECONDS.get(second, name) == name or not slashes:
        return []
    k = slashes[0] + 1
    end = next((m for m in range(k, part.j) if page.words[m] in ("/", ",", ".", ";")), part.j)
    return [(_SECONDS[second], (k, min(end, k + _VALUE)))] if end > k else []
