"""Nerves and arteries listed under a label: 'Nerves: radial cut, ulnar intact', 'IF uln: cut' below a line 'Nerves'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.rules.structures.injury_words import is_fine_suture
from notereader.reader.rules.structures.part_digits import PAIRED, Part
from notereader.reader.scene import Scene

_MARKS = frozenset([":", "-", "=", "?", ">"])
_TICKS = _MARKS | {"[", "]", "x", "(", ")"}
_BULLETS = frozenset(["-", "*", "(", ")", ".", "/", "|", ">"])
_NOUNS = frozenset(["digital", "dig", "dig.", "one", "n", "n.", "dn", "side"])
_JOINS = frozenset([",", ";", ".", ":", "and", "+", "&", "/", "-", "|", "(", "="])
_DIGITS = frozenset(["thumb", "index", "middle", "long", "ring", "small", "little"])
_SAYING = ("extent", "deed", "nervestate", "mending", "hurt")
_VERBS = frozenset(["was", "were", "is", "are", "had", "has"])


def label_of(scene: Scene) -> Mention | None:
    """Return the nerve or the artery that a line begins with as the label of what it lists, or None."""
    for m in scene.of("anynerve", "anyartery", "structure"):
        if m.kind == "structure" and m.value not in PAIRED:
            continue
        titled = m.i == m.j == scene.sentence.i  # the title of a grid's column stands before its cells
        if titled or (all(_is_bullet(scene, k) for k in range(scene.sentence.i, m.i)) and _labels(scene, m.j)):
            return m
        return None
    return None


def _is_bullet(scene: Scene, k: int) -> bool:
    word = scene.page.words[k]
    return word in _BULLETS or word.isdecimal() or k in scene.page.digit_words or len(word) == 1


def _labels(scene: Scene, j: int) -> bool:
    if j >= scene.sentence.j:
        return True
    return scene.page.words[j] in _MARKS or scene.page.breaks[j] >= Break.COLUMN or scene.page.words[j].startswith("..")


def structure_of(m: Mention) -> str:
    """Return what nerve or artery a label names."""
    if m.kind == "structure":
        return m.value
    return "digital nerve" if m.kind == "anynerve" else "digital artery"


def listed_parts(desk: Desk, scene: Scene) -> list[Part]:
    """Return the sides that a list of nerves or arteries tells of, each by itself; notes which list goes on below."""
    label = label_of(scene)
    if label is not None:
        desk.listed = structure_of(label)
    if not desk.listed:
        return []
    first = label.j if label is not None else scene.sentence.i
    made = [p for b in scene.of("border") if b.i >= first and (p := _side_told(scene, b, desk.listed))]
    made += [p for q in scene.of("quantifier") if q.i >= first and (p := _both_told(scene, q, desk.listed))]
    if not made and label is None:
        desk.listed = ""
    return sorted(made, key=lambda p: p.i)


def _side_told(scene: Scene, b: Mention, structure: str) -> Part | None:
    j = b.j
    while scene.next_word(j) in _NOUNS:
        j += 1
    if _begins(scene, b.i) and _says(scene, j):
        return Part(b.i, j, structure, (b.value,), bare=True)
    return None


def _both_told(scene: Scene, q: Mention, structure: str) -> Part | None:
    if scene.words(q.i, q.j) != ["both"] or not _begins(scene, q.i) or not _says(scene, q.j):
        return None
    return Part(q.i, q.j, structure, ("radial", "ulnar"), bare=True)


def _begins(scene: Scene, k: int) -> bool:
    """Tell whether a new item begins at word k: at the line's start, after a comma or after the name of a finger."""
    if k <= scene.sentence.i or scene.page.breaks[k] >= Break.COLUMN:
        return True
    before = scene.page.words[k - 1]
    return before in _JOINS or before in _DIGITS or k - 1 in scene.page.digit_words or before.startswith("..")


def _says(scene: Scene, k: int) -> bool:
    """Tell whether something is said at word k: 'cut', ': intact', 'and ulnar severed'."""
    words, standing = scene.page.words, scene.page.standing
    while k < scene.sentence.j and (words[k] in _TICKS or words[k].startswith("..") or standing[k] == "unticked"):
        k += 1
    if k >= scene.sentence.j:
        return False
    if words[k : k + 2] == ["in", "continuity"]:
        return True
    if scene.page.words[k] in _VERBS or is_fine_suture(scene, k) or any(m.i == k for m in scene.of(*_SAYING)):
        return True
    joined = scene.page.words[k] in ("and", "+", "&")
    return joined and any(k < b.i <= k + 3 and _says(scene, b.j) for b in scene.of("border"))
