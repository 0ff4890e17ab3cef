"""Gaps denied only by halves, or denied and then owned up to: 'almost no gap', 'no gap, no, I tell a lie, 1 mm'."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.results.behaviour import behaving, lay_behaviour
from notereader.reader.rules.results.told_apart import repairs_of
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
    if _one_side_only(scene, mention) or _before_something(scene, mention):
        return True
    k = mention.j + (scene.next_word(mention.j) == ",")
    save = any(tuple(words[k : k + len(phrase)]) == phrase for phrase in _SAVE)
    return save and not any((g.digits or g.tendons) and 0 < g.i - k <= _NAMED_NEXT for g in scene.setting.groups)


def _before_something(scene: Scene, mention: Mention) -> bool:
    """'Gap: nil before closing the sheath, 1 mm after': what was seen in the end is told behind it."""
    words = scene.words(mention.j, min(mention.j + _FAR, scene.sentence.j))
    later = any(q.unit == "mm" and q.high and 0 < q.i - mention.j <= _FAR for q in scene.quantities)
    return later and "before" in words and not _LATER.isdisjoint(words)


_LATER = frozenset(["after", "afterwards", "then", "later", "thereafter"])


def not_told(scene: Scene, mention: Mention) -> bool:
    """Tell whether a gap is named only as what was or was not looked for, aimed at, avoided or left in doubt.

    'I did not test for gapping', 'no gap of more than 1 mm', 'no gap was the aim', 'gapping cannot be excluded',
    'the gap did not increase'.
    """
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 4), mention.i) if w not in ("a", "any", "the")]
    behind = scene.words(mention.j, min(mention.j + 4, scene.sentence.j))
    sought = (
        lead[-1:] == ["for"]
        and not _LOOKING.isdisjoint(lead)
        and not _DENIED.isdisjoint(scene.words(*_before(scene, mention)))
    )
    shunned = lead[-1:] != [] and (lead[-1] in _AVOIDING or lead[-2:] in _AVOIDING_IN_TWO)
    bounded = any(tuple(behind[: len(words)]) == words for words in _AT_MOST)
    wanted = behind[:1] in (["was"], ["is"], ["being"]) and not _AIMS.isdisjoint(behind[1:])
    doubted = not _DENIED.isdisjoint(behind) and not _RULED_OUT.isdisjoint(behind)
    unchanged = not _DENIED.isdisjoint(behind[:3]) and not _CHANGES.isdisjoint(behind)
    return sought or shunned or bounded or wanted or doubted or unchanged


def _before(scene: Scene, mention: Mention) -> tuple[int, int]:
    return max(scene.sentence.i, mention.i - _NEAR), mention.i


_NEAR = 7  # words
_LOOKING = word_list("quality", "looking")
_DENIED = frozenset(["not", "never", "n't", "cannot", "nor", "without", "no", "none", "nobody", "neither"])
_AVOIDING = word_list("quality", "avoiding")
_AVOIDING_IN_TWO = (["protect", "against"], ["guard", "against"], ["risk", "of"], ["danger", "of"], ["fear", "of"])
_AT_MOST = frozenset(
    [("of", "more", "than"), ("more", "than"), ("greater", "than"), ("larger", "than"), ("wider", "than"), ("over",)]
)
# 'The gap did not increase at the second pull': one was there.
_CHANGES = frozenset(["increase", "widen", "grow", "change", "progress", "worsen", "enlarge", "increased", "widened"])
_AIMS = frozenset(["aim", "goal", "hope", "intention", "target", "objective", "idea"])
_RULED_OUT = frozenset(["excluded", "ruled", "exclude"])


def then_seen(scene: Scene, mention: Mention) -> Quantity | None:
    """Return the width that the same repair showed after all, or None.

    'No gap at rest, but 1 mm on full extension', 'Gap: none passive, 1 mm active', 'no gap, on traction 1 mm'.
    """
    last = next((g.i for g in scene.setting.groups if g.i >= mention.j and (g.digits or g.tendons)), scene.sentence.j)
    last = min(last, mention.j + _FAR)
    at = next((k for k in range(mention.j, last) if scene.page.words[k] in _TURNS), None)
    if at is None:
        return None
    width = next((q for q in scene.quantities if at < q.i < last and _is_width(q)), None)
    if width is None or any(at < m.i < width.i for m in scene.of(*_OTHER_LENGTHS)):
        return None
    if width.i - at < _NAMED_NEXT and _AT_EASE.intersection(scene.words(mention.j, at)):
        return width
    around = [*scene.words(at, width.i), *scene.words(width.j, width.j + _NAMED_NEXT)]
    return None if _STRAINS.isdisjoint(around) else width


_PLAIN_TURNS = frozenset(["but", "however", "though", "yet", ";"])
_TURNS = _PLAIN_TURNS | {",", "/", "(", "and", "then"}
_AT_EASE = frozenset(["rest", "flexion", "neutral", "relaxed", "first", "flexed"])
_STRAINS = word_list("quality", "strains")
_OTHER_LENGTHS = ("pulley", "opened", "deed", "bite", "restored", "endword", "stitch", "structure", "wound")


def _is_width(q: Quantity) -> bool:
    return q.unit == "mm" and q.high is not None and 0 < q.high <= _WIDEST


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
    return _is_width(q) and 0 < q.i - mention.j <= _FAR and scene.told(q.i)
