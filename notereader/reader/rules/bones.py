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
_BEFORE_BONE = {
    **dict.fromkeys(("thumb", "first", "1st"), "thumb"),
    **dict.fromkeys(("index", "second", "2nd"), "index"),
    **dict.fromkeys(("middle", "long", "third", "3rd"), "middle"),
    **dict.fromkeys(("ring", "fourth", "4th"), "ring"),
    **dict.fromkeys(("small", "little", "fifth", "5th"), "small"),
}


@needs(kinds=["bone", "structure", "fracture", "deed"])
def bones(desk: Desk, scene: Scene) -> None:
    """Find fixed fractures: a bone or a fracture with wires, pins, plates or screws in one sentence or the next."""
    named = [m for m in scene.of("bone", "structure") if m.value in _BONES and scene.told(m.i)]
    broken = bool(scene.of("fracture")) or any(m.kind == "structure" for m in scene.mentions if m.value in _BONES)
    if named:
        digits = _digits(scene, named[0])
        if named[0].value == desk.last_bone[0] and digits == scene.setting.digits and desk.last_bone[1]:
            digits = desk.last_bone[1]  # no finger named: the bone told of before
        desk.last_bone = (named[0].value, digits, broken or desk.last_bone[2])
    elif broken:
        desk.last_bone = (desk.last_bone[0], desk.last_bone[1], True)
    _not_fixed(desk, scene, named)
    fixed = [m for m in scene.of("deed") if _fixes(scene, m)]
    if not fixed or scene.sentence.section == "implants" or not _of_a_bone(scene, fixed, named, broken):
        return
    name, digits, _ = desk.last_bone
    for digit in digits or (None,):
        if name:
            entry = (digit, name, None)
            desk.add(scene, "injuries", entry, "treatment", "fixed", [(fixed[0].i, fixed[0].j)], "bone fixed")


def _not_fixed(desk: Desk, scene: Scene, named: list[Mention]) -> None:
    """'The tuft fracture of the distal phalanx needed no fixation.'"""
    for m in scene.of("deed") if named else []:
        needless = scene.words(m.j - 1, m.j) == ["fixation"] and scene.negated(m.i, m.j, 2)
        if scene.told(m.i) and (needless or scene.words(m.i, m.j) == ["no", "fixation", "needed"]):
            for digit in desk.last_bone[1] or (None,):
                entry = (digit, named[0].value, None)
                desk.add(scene, "injuries", entry, "treatment", "left", [(m.i - 1, m.j)], "bone not fixed")


def _fixes(scene: Scene, m: Mention) -> bool:
    fixed = m.value == "fixed" or scene.page.words[m.j - 1] == "fixed"
    return (
        fixed and m.i < m.j and scene.told(m.i) and not scene.negated(m.i, m.j, 3)
    )  # the label of a cell says nothing


def _of_a_bone(scene: Scene, fixed: list[Mention], named: list[Mention], broken: bool) -> bool:
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    vague = any(" ".join(scene.words(m.i, m.j)) in _VAGUE for m in fixed)
    if vague and not broken and not words & _METAL:
        return False
    return bool(named) or broken or not any(m.kind == "tendon" for m in scene.mentions)


def _digits(scene: Scene, m: Mention) -> tuple[str | None, ...]:
    """Return the digit of a bone: 'the middle proximal phalanx' and 'the fifth metacarpal' name it themselves."""
    own = _BEFORE_BONE.get(scene.word_before(m.i)) or _BEFORE_BONE.get(scene.next_word(m.j))
    return (own,) if own else digits_at(scene, None, m.i)
