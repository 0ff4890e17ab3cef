"""A side told whole by a word: 'Ulnar bundle cut. Radial side all fine.': its digital nerve and its artery."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.rules.structures.part_digits import PAIRED, told_of
from notereader.reader.scene import Scene

_ACROSS = {"radial": "ulnar", "ulnar": "radial"}
_FILLER = frozenset(["the", "of", "-", "*", ":", "finger", "digit", "thumb", "on", "and"])
_CLOSES = frozenset(["", ".", ";"])
_SOON = 60  # words


def whole_side(desk: Desk, scene: Scene) -> None:
    """Find a side that is whole, right after a nerve or an artery of the finger's other side was told of."""
    for b in scene.of("border"):
        side = b.value.split()[0]
        state = next((m for m in scene.of("nervestate", "extent") if m.value == "intact" and m.i >= b.j), None)
        if state is None or side not in _ACROSS or not (scene.told(b.i) and _is_all(scene, b, state)):
            continue
        digit = _finger_told(desk, scene, _ACROSS[side], b.i)
        for name in sorted(PAIRED) if digit else ():
            if not desk.told_of("injuries", (digit, name, side)):
                span = [(b.i, state.j)]
                desk.add(scene, "injuries", (digit, name, side), "extent", "intact", span, "the other side told whole")


def _is_all(scene: Scene, b: Mention, state: Mention) -> bool:
    """Tell whether a statement says no more than that a side is whole: 'Radial side was normal.'"""
    words, first = scene.page.words, scene.sentence.i
    begin = next((k + 1 for k in range(b.i - 1, first - 1, -1) if words[k] in (";", ".")), first)
    lead = [k for k in range(begin, b.i) if k not in scene.page.digit_words and words[k] not in _FILLER]
    between = [w for w in scene.words(b.j, state.i) if w not in ("was", "is", "all", ":", "-", "looked")]
    return words[b.j - 1] == "side" and not lead and not between and scene.next_word(state.j) in _CLOSES


def _finger_told(desk: Desk, scene: Scene, across: str, k: int) -> str | None:
    """Return the one finger whose nerve or artery of the other side was told of shortly before word k."""
    told = [f for name in PAIRED for f in told_of(desk, name) if 0 <= k - f.order < _SOON and not f.header]
    digits = {f.entry[0] for f in told}
    named = set(scene.setting.digits) or digits
    here = {f.entry[0] for f in told if f.entry[2] == across}
    return next(iter(here)) if len(digits) == len(here) == 1 and here <= named else None
