"""Deeds that were not done: 'FDS repair: no', 'Repair:  [ ] Y  [x] N', 'neither sutured nor trimmed'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene

_NO = frozenset(["no", "n"])
_CLOSES = frozenset(["", ".", ",", ";", ")", "|", "-"])


def answered_no(scene: Scene, mention: Mention) -> bool:
    """Tell whether no more than a 'no' answers the deed that a label asks about."""
    words = scene.page.words
    if mention.i == mention.j == scene.sentence.i and scene.sentence.prefix:
        answer = mention.i  # the label of a ticked box
    else:
        answer = next((k for k in range(mention.j, scene.sentence.j) if _is_answer(scene, k)), -1)
        asked = answer > mention.j and all(_is_mark(scene, k) for k in range(mention.j, answer))
        if not asked or not {":", "?"} & set(words[mention.j : answer]):
            return False
    return words[answer] in _NO and scene.next_word(answer + 1) in _CLOSES


def _is_answer(scene: Scene, k: int) -> bool:
    return scene.page.words[k][0].isalnum() and scene.told(k) and not _is_mark(scene, k)


def _is_mark(scene: Scene, k: int) -> bool:
    """Tell whether a word is a colon, an unticked option or the cross of a box."""
    word, after = scene.page.words[k], scene.next_word(k + 1)
    return not word[0].isalnum() or scene.page.standing[k] == "unticked" or (word == "x" and after in ("]", ")"))


def neither_mended(scene: Scene) -> list[Mention]:
    """'The nick was neither sutured nor trimmed', 'neither trimmed nor sewn': the words that say a cut was left."""
    if not {"neither", "nor"} <= scene.said:
        return []
    found = [m for m in scene.of("mending") if m.value == "left" and scene.page.words[m.i] == "neither"]
    found = [m for m in found if "nor" in scene.words(m.j, m.j + _FAR)]
    for deed in (d for d in scene.of("deed") if d.value == "repaired" and scene.word_before(d.i) == "nor"):
        lead = scene.words(max(scene.sentence.i, deed.i - 1 - _FAR), deed.i - 1)
        other = [d for d in scene.of("deed") if scene.word_before(d.i) == "neither" and d.j <= deed.i]
        found += [Mention("deed", "left", deed.i - 1, deed.j)] if other and "neither" in lead else []
    return found


_FAR = 3  # words
