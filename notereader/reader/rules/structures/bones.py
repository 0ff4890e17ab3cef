"""Fractures fixed with wires, plates or screws."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, digits_at
from notereader.vocabulary.wordlists import word_list

_BONES = frozenset(["phalanx", "metacarpal"])
_METAL = word_list("bones", "metal")
# Words that mean a bone was fixed only where a break or metal is named as well.
_VAGUE = frozenset(
    [
        *("fixed", "was fixed", "secured", "held with", "fixation", "stabilised", "stabilized"),
        *("pins", "wires", "screw", "wired"),
    ]
)
_JOINTS = frozenset(["dipj", "pipj", "ipj", "mcpj", "joint", "jt", "dip", "ip", "tract", "needles"])
_BUTTONS = frozenset(["button", "anchor", "pull", "pullout"])
_BEFORE_BONE = {
    **dict.fromkeys(("thumb", "first", "1st"), "thumb"),
    **dict.fromkeys(("index", "second", "2nd", "ii"), "index"),
    **dict.fromkeys(("middle", "long", "third", "3rd", "iii"), "middle"),
    **dict.fromkeys(("ring", "fourth", "4th", "iv"), "ring"),
    **dict.fromkeys(("small", "little", "fifth", "5th", "v"), "small"),
}


@needs(kinds=["bone", "structure", "fracture", "deed"])
def bones(desk: Desk, scene: Scene) -> None:
    """Find fixed fractures: a bone or a fracture with wires, pins, plates or screws in one sentence or the next."""
    named = [m for m in scene.of("bone", "structure") if m.value in _BONES and scene.told(m.i)]
    _whole(desk, scene, named)
    broken = bool(scene.of("fracture")) or any(m.kind == "structure" for m in scene.mentions if m.value in _BONES)
    if named:
        digits = _digits(scene, named[0])
        if named[0].value == desk.last_bone[0] and digits == scene.setting.digits:
            digits = _as_broken(desk, named[0].value, digits)  # no finger named: the bone told of before
        desk.last_bone = (named[0].value, digits, broken or desk.last_bone[2])
    elif broken:
        desk.last_bone = (desk.last_bone[0], _as_broken(desk, desk.last_bone[0], digits_at(scene)), True)
    if broken and desk.last_bone[0] and desk.last_bone[:2] not in desk.broken:
        desk.broken.append(desk.last_bone[:2])
    if scene.sentence.section == "implants" or _only_a_joint(scene, named, broken):
        return
    if _not_fixed(desk, scene, named, broken):
        return
    fixed = next((m for m in scene.of("deed") if _fixes(scene, m)), None) or _plated(scene, named, broken)
    if fixed is None or not _of_a_bone(scene, fixed, named, broken):
        return
    name, digits, _ = desk.last_bone
    for digit in digits or (None,):
        if name:
            entry = (digit, name, None)
            desk.add(scene, "injuries", entry, "treatment", "fixed", [(fixed.i, fixed.j)], "bone fixed")


def _whole(desk: Desk, scene: Scene, named: list[Mention]) -> None:
    """'Phalanges not hurt', 'index proximal phalanx: no fracture', 'metacarpals not reached by the blade'."""
    for m in named[:1] if len({m.value for m in named}) == 1 else []:
        behind = [w for w in scene.words(m.j, min(m.j + _SOON, scene.sentence.j)) if w not in _LINKING]
        told = behind[:2] in _NOT_HURT or behind[:1] in _WHOLE_WORDS
        if not told or _METAL & scene.said or scene.of("deed", "tendon"):
            continue
        digits = _digits(scene, m)
        several = len(digits) > 1 or scene.page.words[m.j - 1] == "metacarpals"
        for digit in digits if digits and not several else (None,):
            entry = (digit, m.value, None)
            desk.add(
                scene, "injuries", entry, "extent", "intact", [(m.i, min(m.j + 3, scene.sentence.j))], "bone whole"
            )


_SOON = 6  # words
_LINKING = frozenset([":", "-", "was", "were", "is", "are", ",", "both", "all"])
_NOT_HURT = tuple(
    [["no", word] for word in ("fracture", "fractures", "break")]
    + [["not", word] for word in ("hurt", "injured", "reached", "broken", "fractured", "touched", "cut")]
)
_WHOLE_WORDS = (["intact"], ["unhurt"], ["uninjured"], ["whole"])


def _as_broken(desk: Desk, bone: str, digits: tuple[str | None, ...]) -> tuple[str | None, ...]:
    """Return the digits in focus where their bone was told broken, else those of the one bone that was."""
    told = [found for name, found in desk.broken if name == bone and found]
    if not told or any(set(found) & set(digits) for found in told):
        return digits
    return told[0] if len(set(told)) == 1 else digits


def _only_a_joint(scene: Scene, named: list[Mention], broken: bool) -> bool:
    """'DIPJ held at 15 flexion: K-wire', 'a wire tied over a button': metal that holds no fracture."""
    if broken:
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    return bool(words & _BUTTONS) or (not named and bool(words & _JOINTS))


def _plated(scene: Scene, named: list[Mention], broken: bool) -> Mention | None:
    """'Fifth metacarpal shaft fracture, 1.5 mm plate': the metal alone tells that it was fixed."""
    if not named or not broken or any(m.kind == "tendon" for m in scene.mentions):
        return None
    for k in range(named[0].i, scene.sentence.j):
        if scene.page.words[k] in _METAL - {"k"} and scene.told(k) and not scene.negated(k, k + 1, 4):
            return Mention("deed", "fixed", k, k + 1)
    return None


def _not_fixed(desk: Desk, scene: Scene, named: list[Mention], broken: bool) -> bool:
    """'The tuft fracture of the distal phalanx needed no fixation', 'P1 chip fracture: left'."""
    if not named or any(m.kind == "tendon" for m in scene.mentions):
        return False
    words = [m for m in scene.of("deed", "mending") if scene.told(m.i) and _leaves(scene, m, broken)]
    for m in words[:1]:
        for digit in desk.last_bone[1] or (None,):
            entry = (digit, named[0].value, None)
            desk.add(scene, "injuries", entry, "treatment", "left", [(m.i, m.j)], "bone not fixed")
    return bool(words)


def _leaves(scene: Scene, m: Mention, broken: bool) -> bool:
    if m.value == "fixed":
        needless = scene.words(m.j - 1, m.j) == ["fixation"] and scene.negated(m.i, m.j, 4)
        return needless or (broken and scene.negated(m.i, m.j, 2)) or scene.words(m.i, m.i + 1) == ["no"]
    bare = scene.words(m.i, m.j) == ["left"] and scene.next_word(m.j) not in ("", ".", ",", ";", "alone")
    return broken and m.value == "left" and not bare and scene.words(m.i, m.i + 1) != ["no", "suture"]


def _fixes(scene: Scene, m: Mention) -> bool:
    fixed = m.value == "fixed" or scene.page.words[m.j - 1] == "fixed"
    return (
        fixed and m.i < m.j and scene.told(m.i) and not scene.negated(m.i, m.j, 3)
    )  # the label of a cell says nothing


def _of_a_bone(scene: Scene, fixed: Mention, named: list[Mention], broken: bool) -> bool:
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if " ".join(scene.words(fixed.i, fixed.j)) in _VAGUE and not broken and not words & _METAL:
        return False
    return bool(named) or broken or not any(m.kind == "tendon" for m in scene.mentions)


def _digits(scene: Scene, m: Mention) -> tuple[str | None, ...]:
    """Return the digit of a bone: 'the middle proximal phalanx' and 'the fifth metacarpal' name it themselves."""
    own = _BEFORE_BONE.get(scene.word_before(m.i)) or _BEFORE_BONE.get(scene.next_word(m.j))
    bracket = [g.digits for g in scene.setting.groups if g.digits and g.i == m.j + 1 and scene.next_word(m.j) == "("]
    return (own,) if own else bracket[0] if bracket else digits_at(scene, None, m.i)
