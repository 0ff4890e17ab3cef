"""'A second core was omitted on account of bulk', 'not closed because of tension': why something was not done."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_REASONS = frozenset(tuple(words.split()) for words in word_list("quality", "reasons"))
_DETERMINING = frozenset(["the", "its", "their", "a", "any", "some", "too", "much", "excess", "excessive", "undue"])
_LONGEST = 3  # words


def as_a_reason(scene: Scene, mention: Mention) -> bool:
    """Tell whether bulk or tension is only given as the reason for a deed, so that no 'not' before it denies it."""
    k = mention.i
    while scene.word_before(k) in _DETERMINING:
        k -= 1
    return any(tuple(scene.words(max(scene.sentence.i, k - n), k)) in _REASONS for n in range(1, _LONGEST + 1))
