"""'Tight' as a statement or a question of its own: 'Tight!', 'Tight? n', 'bent to bring it together = tight'."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Break
from notereader.reader.rules.results.behaviour import behaving, lay_behaviour
from notereader.reader.scene import Scene

_NO = frozenset(["n", "no", "nil", "none", "not"])
_YES = frozenset(["y", "yes", "some", "slightly", "little", "moderately"])
_ENDED = frozenset(["", ".", "!", ";", ","])
_SEWN_LAST = frozenset(["tendon", "core", "peripheral", "bone"])
_MET = frozenset(["meet", "met", "together", "reach", "reached", "ends", "stumps"])
_LONGEST_ANSWER = 6  # words, dots, boxes and brackets before them counted
_ASKS = frozenset(["?", ":", "[", "("])
_ANSWERS = frozenset(["yes", "no", ")", "]"])  # of the question before it on the line


@needs(words=["tight"])
def tight(desk: Desk, scene: Scene) -> None:
    """Find 'tight' that stands alone or is asked for; beside a verb it is a wording of tension or of glide."""
    if scene.sentence.prefix or scene.of("glide"):
        return  # a cell 'tight' under 'FDP gliding'
    for k in range(scene.sentence.i, scene.sentence.j):
        if scene.page.words[k] != "tight" or not scene.told(k) or any(m.i <= k < m.j for m in scene.of("tension")):
            continue
        asked = scene.next_word(k + 1) in _ASKS
        value = _asked(scene, k) if asked else _stated(desk, scene, k)
        if value and desk.sewn():
            targets = behaving(desk, scene, k, k + 1)
            lay_behaviour(desk, scene, targets, "tension", value, k, k + 1, f"tension {value}")


def _asked(scene: Scene, k: int) -> str:
    """'Tight? n', '21 Tight? .. N', 'Tight [ ] yes [x] no': the answer right behind the question."""
    before = scene.word_before(k)
    opens = k == scene.sentence.i or scene.page.breaks[k] >= Break.COLUMN or before.isdecimal() or before in _ANSWERS
    behind = range(k + 2, min(k + 2 + _LONGEST_ANSWER, scene.sentence.j))
    told = (scene.page.words[n] for n in behind if scene.told(n))
    answer = next((w for w in told if w[0].isalpha() and w != "x"), "")
    if not opens or answer not in _NO | _YES:
        return ""
    return "none" if answer in _NO else "present"


def _stated(desk: Desk, scene: Scene, k: int) -> str:
    """'FDP repaired. Tight!', 'lifted to meet, tight, wrist flexed', 'had to be bent to bring it together = tight'."""
    if scene.next_word(k + 1) not in _ENDED or scene.negated(k, k + 1, 3):
        return ""
    alone = k == scene.sentence.i and k + 2 >= scene.sentence.j and desk.topic in _SEWN_LAST
    led = scene.word_before(k) in (",", "=") and not _MET.isdisjoint(scene.words(scene.sentence.i, k))
    return "present" if alone or led else ""
