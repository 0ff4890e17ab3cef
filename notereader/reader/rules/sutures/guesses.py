"""'Probably with four strands', 'I think 3-0': what a writer only guesses is no count and no size."""

from notereader.reader.scene import Scene

_LEAD = 5  # words
_LEADING = frozenset(["with", "a", "the", "it", "was", "by", "using", "about", "some", "had", "there", "were", ","])
_HEDGES = frozenset(["probably", "possibly", "perhaps", "maybe", "presumably", "think", "believe", "apparently"])


def is_guess(scene: Scene, i: int) -> bool:
    """Tell whether a word of doubt leads up to the figure at word i."""
    lead = [w for w in scene.words(max(scene.sentence.i, i - _LEAD), i) if w not in _LEADING]
    return lead[-1:] != [] and lead[-1] in _HEDGES
