"""Figures put right by words that say nothing else: 'Purchase 10 mm. Make that 7 mm.', 'six, pardon, four'."""

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.scene import Scene
from notereader.record import Interval
from notereader.record.values import Value
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_CUES = phrases_by_first_word("figures_put_right", "cues")
_LEADS = word_list("figures_put_right", "leads")
_LENGTHS = ("purchase_mm", "lock_mm")
_FIELDS = ("strands", "size", *_LENGTHS)
_STRANDS = frozenset(["strand", "strands"])
_ENDS = frozenset(["", ".", ",", ";", ":", ")"])
_BACK = 8  # words between the figure that was wrong and the correction
_RULE = "figure put right"


@needs(words=_CUES)
def figures_put_right(desk: Desk, scene: Scene) -> None:
    """Lay down the figure behind a correction for whatever the last figure before it was told of."""
    k = scene.sentence.i
    while k < scene.sentence.j:
        end = _cue_end(scene, k) if scene.told(k) and (k == scene.sentence.i or scene.word_before(k) == ",") else k
        if end > k:
            _put_right(desk, scene, k, end)
        k = max(end, k + 1)


def _cue_end(scene: Scene, k: int) -> int:
    """Return the word behind a correction and what leads on from it, or word k itself where none begins there."""
    words = scene.page.words
    found = [p for p in _CUES.get(words[k], ()) if words[k : k + len(p)] == p]
    if not found:
        return k
    end = k + max(len(p) for p in found)
    while end < scene.sentence.j and words[end] in _LEADS:
        end += 1
    return end


def _put_right(desk: Desk, scene: Scene, cue: int, k: int) -> None:
    before = desk.laid(*_FIELDS, since=max(0, cue - _BACK), before=cue)
    if not before or k >= scene.sentence.j or not _same_paragraph(desk, scene, before[-1].order):
        return
    last = max(f.spans[0][0] for f in before)
    for wrong in [f for f in before if f.spans[0][0] == last]:
        value, end = _value_at(scene, k, wrong)
        if value is None or value == wrong.value or _longer(value, wrong.value) or scene.next_word(end) not in _ENDS:
            continue
        laid = len(desk.findings)
        desk.tendon(scene, Target(*wrong.entry), wrong.field, value, [(k, end)], _RULE)
        for finding in desk.findings[laid:]:
            finding.addendum = True  # it replaces the figure told before


def _longer(value: Value, wrong: Value) -> bool:
    """'Bites of 7 mm, no, I mean 12 mm': of two lengths the shorter promises less, and stays the one proposed."""
    if not (isinstance(value, Interval) and isinstance(wrong, Interval)):
        return False
    return (value.low or 0) > (wrong.low or 0)


def _same_paragraph(desk: Desk, scene: Scene, order: int) -> bool:
    before = desk.scene_before(scene)
    here = order >= scene.sentence.i
    return here or (before is not None and before.sentence.block == scene.sentence.block and order >= before.sentence.i)


def _value_at(scene: Scene, k: int, wrong: Finding) -> tuple[Value | None, int]:
    """Return the figure at word k as a value of the field of the one put right, and the word behind it."""
    word = scene.page.words[k]
    if wrong.field == "size":
        return (word, k + 1) if word in sizes() else (None, k)
    count = count_of(word)
    if wrong.field == "strands":
        n = k + 1 + (scene.next_word(k + 1) == "-")
        return (int(count) or None, n + (scene.next_word(n) in _STRANDS)) if count == int(count) else (None, k)
    figure = next((q for q in scene.quantities if q.i == k and q.unit in ("mm", "")), None)
    if figure is None:
        return None, k
    return Interval(low=figure.low, high=figure.high), figure.j
