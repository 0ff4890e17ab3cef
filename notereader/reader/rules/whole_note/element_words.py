"""Parts of a note shown by words in the text where no heading names them."""

import re
from collections.abc import Iterator

from notereader.reader.desk import Desk
from notereader.reader.layout.layout import ONE_LINE
from notereader.reader.page import Break, Mention, Page, within
from notereader.reader.rules.whole_note.whole import Span, element_list, scene_at
from notereader.reader.scene import Scene

# Elements whose words are listed in care.toml.
_BY_WORDS = frozenset(
    [
        *("consent", "tourniquet", "antibiotics", "blood_loss", "complications", "specimens", "implants", "dressing"),
        *("surgeon", "assistant", "anaesthetist", "indication"),
    ]
)


def shown_by_words(desk: Desk, name: str, i: int = 0, j: int = -1) -> list[Span]:
    """Return the words between words i and j that show an element best, or nothing.

    Words that say little ('exsanguinated', 'risks explained') give way to words that say more.
    """
    if name not in _BY_WORDS:
        return []
    end = j if j >= 0 else len(desk.page.words)
    shown = [m for m in within(desk.page.elements, i, end) if m.value == name and _shows(desk, m, name)]
    if not shown:
        return []
    best = min(shown, key=lambda m: (_says_little(desk, m, name), m.i))
    if name == "dressing":
        return [_with_neighbours(desk.page, best, shown)]
    named = [m for m in shown if desk.page.words[m.j - 1].startswith("implant") and m is not best]
    return [(m.i, m.j) for m in (best, *named[:1])]


def _says_little(desk: Desk, m: Mention, name: str) -> int:
    """Return how little words say of an element: 0 they name it, 1 they point to it, 2 they stand in the titles."""
    weak = bool(set(desk.page.words[m.i : m.j]) & element_list("weak_words"))
    titled = name == "implants" and scene_at(desk, m.i).header
    return 2 * titled + weak


def _with_neighbours(page: Page, m: Mention, shown: list[Mention]) -> Span:
    """Return a list of dressings as one: 'Adaptic, fluff gauze and crepe'."""
    i, j = m.i, m.j
    for other in shown:
        if 0 <= other.i - j <= 3 and all(w in (",", "and", "+", "&") or w.isalpha() for w in page.words[j : other.i]):
            j = other.j
    return i, j


_LONGEST = 24  # words; more than any heading has


def _shows(desk: Desk, m: Mention, name: str) -> bool:
    """Tell whether words show an element of this operation; an empty form line and an unticked box do not."""
    page = desk.page
    standing = page.standing[m.i]
    if standing in ("history", "unticked") or _unticked(page, m.i):
        return False
    if standing in ("teaching", "conditional") and name != "consent":  # what may happen is what consent speaks of
        return False
    heads = [h for h in within(page.headings, m.i - _LONGEST, m.i + 1) if m.i < h.j]
    if any(h.value != name or _is_empty(page, h) for h in heads):
        return False
    if _BARE_LABEL.match(page.text, page.ends[m.j - 1]) or _LEFT_OPEN.match(page.text, page.ends[m.j - 1]):
        return False  # 'IMPL=nil     EBL=' at the end of its line
    rule = _RULES.get(name)
    return rule is None or rule(desk, scene_at(desk, m.i), m)


# What a program puts where nobody chose: 'Implants   [not entered]', 'sample   <none chosen>'; so 'not recorded'.
_LEFT_OPEN = re.compile(
    r"\W*[\[<](?:not entered|blank|none chosen|none selected|select|choose|name)\b"
    r"|\W{1,30}(?:not recorded|not stated|not documented|not entered|not filled in)[\]>)]?[ \t]*(?:[.;]|\n|\Z)",
    re.IGNORECASE,
)
# 'SPEC=          IMPL=nil': the next label stands where the answer would.
_BARE_LABEL = re.compile(r"[ \t]*=[ \t]*(?:\n|\Z|[ \t]{2,}\w+[ \t]*=)")
_NEXT_LABEL = re.compile(r"[ \t]*=[ \t]{2,}\w+[ \t]*=")


def left_open(page: Page, heading: Mention) -> bool:
    """'Implants =', 'Trouble ......', '[IMPLANTS -- ]', 'Blood loss ____  Complications none': nobody filled it in."""
    end = page.ends[heading.j - 1]
    if _LEFT_OPEN.match(page.text, end) or _NEXT_LABEL.match(page.text, end):
        return True
    k = next((k for k in range(heading.j, len(page.words)) if page.words[k][0].isalnum()), len(page.words) - 1)
    gap = page.text[page.ends[heading.j - 1] : page.starts[k]]
    if "]" in gap and page.words[heading.i - 1 : heading.i] == ["["] and gap.strip() != "]":
        return True
    if "__" in gap or ".." in gap:
        labels = [*within(page.headings, k, k + 1), *within(page.elements, k, k + 1)]
        next_label = any(m.i == k for m in labels) and page.breaks[k] >= Break.COLUMN
        if next_label or _only_a_unit(page, k):
            return True
    if "__" in gap:
        return "\n" in gap or any(h.i == k for h in within(page.headings, k, k + 1))
    return "\n" in gap and any(mark in gap.split("\n")[0] for mark in ("=", "...", "--", "***"))


def _only_a_unit(page: Page, k: int) -> bool:
    """'Blood loss ____ ml': the unit that was printed behind the blank, and nothing more on the line."""
    alone = k + 1 >= len(page.words) or page.breaks[k + 1] >= Break.COLUMN or page.words[k + 1] == "."
    return alone and page.words[k] in _PRINTED


_PRINTED = frozenset(["ml", "mls", "cc", "min", "mins", "minutes", "mmhg"])


def _is_empty(page: Page, heading: Mention) -> bool:
    section = next((s for s in page.sections if s.h <= heading.i < s.j), None)
    if section is None:
        return False
    if section.kind in ONE_LINE and left_open(page, heading):
        return True
    words = [w for w in page.words[section.i : section.j] if any(c.isalnum() for c in w)]
    return words in ([], ["a"])


def _unticked(page: Page, k: int) -> bool:
    """Tell whether an unticked box stands before word k."""
    return k >= 2 and page.words[k - 1] in (")", "]") and page.words[k - 2] in ("(", "[")


# --- one rule an element


def _consent(desk: Desk, scene: Scene, m: Mention) -> bool:
    return scene.sentence.section not in ("instructions", "signature")


def _person(desk: Desk, scene: Scene, m: Mention) -> bool:
    """Tell whether a person of the team is named; 'no assistant' says so too."""
    return desk.page.standing[m.i] not in ("story", "plan")


def _assistant(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'Retracted' is a helper's work only where a person is its subject; '--Select--', 'as per list' name nobody."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if scene.words(m.i, m.j) == ["retracted"]:
        return bool(set(scene.words(max(scene.sentence.i, m.i - 4), m.i)) & element_list("people"))
    elsewhere = "per" in scene.words(m.j, min(m.j + 4, scene.sentence.j))
    return _person(desk, scene, m) and "select" not in words and not elsewhere


def _blood_loss(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'The nerve had lost about a centimetre' is no loss of blood."""
    after = scene.words(m.j, min(m.j + 4, scene.sentence.j))
    return not {"cm", "mm", "centimetre", "centimeter", "centimetres", "flexion", "length"} & set(after)


def _implants(desk: Desk, scene: Scene, m: Mention) -> bool:
    """'Implants none' shows the part; an anchor considered or an old plate taken out does not."""
    words = scene.words(m.i, m.j)
    if words[-1].startswith("implant"):
        return desk.page.standing[m.i] in ("", "plan")
    gone = set(scene.words(scene.sentence.i, scene.sentence.j)) & element_list("not_implanted")
    if scene.sentence.section in ("specimens", "consent", "indication", "diagnosis"):
        return False
    return desk.page.standing[m.i] == "" and not scene.negated(m.i, m.j, 3) and not gone


def _dressing(desk: Desk, scene: Scene, m: Mention) -> bool:
    if scene.sentence.section in ("closure", "dressing"):
        return True
    return desk.page.standing[m.i] in ("", "plan") and scene.words(m.i, m.j) != ["wool"]


def _complications(desk: Desk, scene: Scene, m: Mention) -> bool:
    """A list of risks and 'anaesthesia was induced without incident' say nothing of the operation."""
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    denied = scene.words(m.i, m.j)[:1] in (["no"], ["nothing"], ["nil"], ["without"])
    if scene.sentence.section in ("indication", "consent") or desk.page.standing[m.i] == "story":
        return False
    if desk.page.standing[m.i] == "plan" and not denied:
        return False
    return not words & {"induced", "induction", "extubated", "risks"}


def _specimens(desk: Desk, scene: Scene, m: Mention) -> bool:
    denied = scene.words(m.i, m.j)[:1] in (["no"], ["nothing"], ["nil"])
    return desk.page.standing[m.i] != "story" and (desk.page.standing[m.i] != "plan" or denied)


def _antibiotics(desk: Desk, scene: Scene, m: Mention) -> bool:
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    return scene.sentence.section != "indication" or not words & {"allergic", "allergy"}


def _indication(desk: Desk, scene: Scene, m: Mention) -> bool:
    return desk.page.standing[m.i] in ("", "story") and scene.sentence.section != "diagnosis"


_RULES = {
    "consent": _consent,
    "surgeon": _person,
    "assistant": _assistant,
    "blood_loss": _blood_loss,
    "anaesthetist": _person,
    "implants": _implants,
    "dressing": _dressing,
    "complications": _complications,
    "specimens": _specimens,
    "antibiotics": _antibiotics,
    "indication": _indication,
}


def near_words(scene: Scene, firsts: frozenset[str], seconds: frozenset[str], reach: int) -> Iterator[Span]:
    """Yield the spans of a sentence in which a word of one list stands within `reach` words of one of another."""
    words, i, j = scene.page.words, scene.sentence.i, scene.sentence.j
    if firsts.isdisjoint(scene.said) or seconds.isdisjoint(scene.said):
        return
    for k in range(i, j):
        if words[k] not in firsts:
            continue
        for m in range(max(i, k - reach), min(j, k + reach + 1)):
            if m != k and words[m] in seconds:
                yield min(k, m), max(k, m) + 1
                break
