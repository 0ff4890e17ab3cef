"""A deed that a form asks about, and its answer: 'FDS repair: no', 'Repair:  [ ] Y  [x] N'."""

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
