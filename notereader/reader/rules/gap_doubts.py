"""Gaps denied only by halves, or denied and then owned up to: 'almost no gap', 'no gap, no, I tell a lie, 1 mm'."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.behaviour import behaving, lay_behaviour
from notereader.reader.rules.told_apart import repairs_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_NEARLY = word_list("quality", "nearly")
_SAVE = frozenset(tuple(words.split()) for words in word_list("quality", "save"))
_SWORN = word_list("quality", "sworn")
_AT_FIRST = (
    ("at", "first"),
    ("initially",),
    ("to", "begin", "with"),
    ("at", "the", "start"),
)  # and later there was one
_DENIALS = frozenset(["not", "cannot", "nobody", "n't", "never", "couldn't", "wouldn't"])
_FAR = 10  # words from a denial to the width that takes its place
_WIDEST = 6.0  # mm; what opens by more is no gap of a repair


def half_denied(scene: Scene, mention: Mention) -> bool:
    """'almost no gap', 'no gap, bar a hairline', 'I would not swear there was no gap': no word that none was there."""
    words = scene.page.words
    lead = scene.words(max(scene.sentence.i, mention.i - _FAR), mention.i)
    if lead and lead[-1] in _NEARLY:
        return True
    if any(tuple(words[mention.j : mention.j + len(phrase)]) == phrase for phrase in _AT_FIRST):
        return True
    sworn = next((n for n, word in enumerate(lead) if word in _SWORN), None)
    if sworn is not None and not _DENIALS.isdisjoint(lead[:sworn]):
        return True
    if _one_side_only(scene, mention):
        return True
    k = mention.j + (scene.next_word(mention.j) == ",")
    save = any(tuple(words[k : k + len(phrase)]) == phrase for phrase in _SAVE)
    return save and not any((g.digits or g.tendons) and 0 < g.i - k <= _NAMED_NEXT for g in scene.setting.groups)


def _one_side_only(scene: Scene, mention: Mention) -> bool:
    """'No gap on the palmar side; dorsally 1 mm'."""
    behind = scene.words(mention.j, mention.j + 4)
    sided = behind[:1] in (["on"], ["at"], ["along"]) and not _SIDES.isdisjoint(behind)
    return sided and any(q.unit == "mm" and 0 < q.i - mention.j <= _FAR for q in scene.quantities)


_SIDES = frozenset(["palmar", "volar", "dorsal", "front", "back", "radial", "ulnar"])
_NAMED_NEXT = 4  # words: 'no gap except in the ring' is none in the others


@needs(kinds=["gap"])
def gap_owned_up(desk: Desk, scene: Scene) -> None:
    """'There was no gap, no, I tell a lie, 1 mm': the width behind a denial that was taken back."""
    for mention in scene.of("gap"):
        if mention.value != "none" or scene.page.standing[mention.i] != "teaching":
            continue
        width = next((q for q in scene.quantities if _owned_up(scene, q, mention)), None)
        if width is None:
            continue
        group = next((g for g in scene.setting.groups if g.digits and 0 < g.i - width.j <= _NAMED_NEXT), None)
        targets = repairs_of(desk, scene, group) if group else behaving(desk, scene, width.i, width.j)
        rule = "a gap denied and owned up to"
        lay_behaviour(desk, scene, targets, "gap", "seen", width.i, width.j, rule)
        lay_behaviour(desk, scene, targets, "gap_mm", float(width.high or 0), width.i, width.j, rule)


def _owned_up(scene: Scene, q: Quantity, mention: Mention) -> bool:
    width = q.unit == "mm" and q.high is not None and 0 < q.high <= _WIDEST
    return width and 0 < q.i - mention.j <= _FAR and scene.told(q.i)
