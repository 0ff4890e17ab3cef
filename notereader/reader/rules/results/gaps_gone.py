"""A gap that the last test found gone: 'one more throw, and on repeating the test there was none'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.rules.results.gap_answers import NOUGHT
from notereader.reader.scene import Scene

_GONE = (
    ["there", "was", "none"],
    ["there", "was", "nothing"],
    ["was", "none", "left"],
    ["none", "was", "left"],
    ["none", "was", "seen"],
    ["none", "was", "visible"],
    *(["again", mark, said] for mark in (",", ":", "-") for said in ("nothing", "none", "nil", "0", "shut", "closed")),
)
_RECHECKED = frozenset(["recheck", "rechecked", "retest", "retested", "repeated"])


@needs(words={"none", "nothing", "again", "longer"} | _RECHECKED)
def gap_gone(desk: Desk, scene: Scene) -> None:
    """'A gap of 1 mm opened. One more throw, and on repeating the test there was none.': the last test decides."""
    words = scene.page.words
    within_it = range(scene.sentence.i, scene.sentence.j)
    spot = next((k for k in within_it if words[k : k + 3] in _GONE and _closes(scene, k + 3)), None)
    spot = spot if spot is not None else _rechecked(scene)
    spot = spot if spot is not None else _seen_no_more(scene)
    if spot is None or not scene.told(spot):
        return
    first = scene
    if not any(m.value == "seen" and m.j <= spot for m in scene.of("gap")):
        before = _gap_before(desk, scene)
        if before is None or any(m.i != spot for m in scene.of("gap")):
            return
        first = before
    seen = [f for f in desk.laid("gap", since=first.sentence.i) if f.value == "seen"]
    fingers = next((g.digits for g in reversed(scene.setting.groups) if g.digits and g.j <= spot), ())
    if fingers and not any(f.entry[0] in fingers for f in seen):
        # 'The gap was in the ring and not in the small, where there was none': that of another finger is not gone
        for target in (t for t in desk.repairable(fingers) if t.tendon in ("FDP", "FPL") and t.digit in fingers):
            desk.tendon(scene, target, "gap", "none", [(spot, spot + 3)], "gap none")
        return
    for target in dict.fromkeys(Target(*f.entry) for f in seen if f.order <= spot):
        desk.tendon(scene, target, "gap", "none", [(spot, spot + 3)], "gap none")


def _rechecked(scene: Scene) -> int | None:
    """Return the word of 'recheck 0', 'retested: none'."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] not in _RECHECKED or scene.word_before(k) in ("not", "never", "no"):
            continue
        at = next((n for n in range(k + 1, min(k + 4, scene.sentence.j)) if words[n] not in _MARKS), k)
        if words[at] in NOUGHT - {"no"} and scene.next_word(at + 1) in ("", ".", ",", ";", ")"):
            return k
    return None


def _seen_no_more(scene: Scene) -> int | None:
    """Return the word of 'after two more bites I could no longer see one', where only a repair is spoken of."""
    words = scene.page.words
    if not scene.kinds.isdisjoint(_OTHERS):
        return None
    places = (k for k in range(scene.sentence.i, scene.sentence.j) if words[k : k + 2] == ["no", "longer"])
    return next((k for k in places if not _SEEN.isdisjoint(scene.words(k + 2, min(k + 5, scene.sentence.j)))), None)


_SEEN = frozenset(["see", "seen", "visible"])
_OTHERS = ("structure", "sided", "bundle", "anynerve", "anyartery", "bone")
_MARKS = frozenset([":", ",", "-", ">", "="])


def _closes(scene: Scene, k: int) -> bool:
    """'Pulled again: none seen', but not 'The wound was washed again, nothing else', 'Bled again: closed by a clip'."""
    if scene.page.words[k - 1] in ("shut", "closed"):
        return scene.next_word(k) in ("", ".", ",", ";") and scene.kinds.isdisjoint(_OTHERS)
    return scene.next_word(k) not in ("else", "done", "more", "further", "added")


def _gap_before(desk: Desk, scene: Scene) -> Scene | None:
    """Return the sentence, at most three back in the paragraph, that told of a gap."""
    before = desk.scene_before(scene)
    for _ in range(3):
        if before is None or before.sentence.block != scene.sentence.block:
            return None
        if any(m.value == "seen" for m in before.of("gap")):
            return before
        before = desk.scene_before(before)
    return None
