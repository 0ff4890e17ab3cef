"""Bad states denied but for a rest of them: 'no gap, except for 1 mm', 'no tension but for the last 20 degrees'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_SAVE = frozenset(tuple(words.split()) for words in word_list("quality", "but_for"))
_REST = word_list("quality", "rest_of_it")
_STOPS = frozenset([",", ";", ".", ")", "which", "when", "where"])
_TO_SPEAK_OF = (["to", "speak", "of"], ["to", "talk", "of"], ["worth", "a", "mention"])
_MUCH = 3  # words of 'no gap to speak of'
_FAR = 9  # words of what is excepted


def but_for_some(scene: Scene, mention: Mention) -> bool:
    """Tell whether a gap, tension or bulk that a sentence denies is owned up to in part, before or behind."""
    k = mention.j + _MUCH * (scene.words(mention.j, mention.j + _MUCH) in _TO_SPEAK_OF)
    k += scene.next_word(k) in (",", "(")
    if (behind := _object(scene, k, scene.sentence.j)) is not None:
        return _owns_up(scene, mention, *behind)
    first = scene.sentence.i
    before = next((b for n in range(first, mention.i) if (b := _object(scene, n, mention.i)) is not None), None)
    return before is not None and before[0] - first <= _FAR and _owns_up(scene, mention, *before)


def _object(scene: Scene, k: int, last: int) -> tuple[int, int] | None:
    """Return the words of what is excepted by the phrase at word k, or None where there is no such phrase."""
    lengths = [n for n in (1, 2, 3, 4) if tuple(scene.words(k, k + n)) in _SAVE]
    if not lengths:
        return None
    i = k + max(lengths)
    return i, next((n for n in range(i, min(i + _FAR, last)) if scene.page.words[n] in _STOPS), min(i + _FAR, last))


def _owns_up(scene: Scene, mention: Mention, i: int, j: int) -> bool:
    if any(i <= g.i < j and (g.digits or g.tendons) for g in scene.setting.groups):
        return False  # 'no gap except in the ring'
    wide = any(q.unit == "mm" and q.high and i <= q.i < j for q in scene.quantities)
    same = any(i <= m.i < j and m.value in ("seen", "present") for m in scene.of(mention.kind))
    return wide or same or not _REST.isdisjoint(scene.words(i, j))
