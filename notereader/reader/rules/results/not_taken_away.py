"""What a step did not take away is still there: 'the running suture was not enough to take away the bulk'."""

from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_TAKING_AWAY = word_list("quality", "taking_away")
_IN_TWO = frozenset(tuple(words.split()) for words in word_list("quality", "taking_away_in_two"))
_DENIALS = frozenset(["not", "never", "cannot", "n't", "couldn't", "didn't", "wouldn't", "failed", "fails", "unable"])
_BOUNDS = frozenset([",", ";", "and", "but", "with", "without", "no"])
_FAR = 6  # words


def not_taken_away(scene: Scene, i: int) -> bool:
    """'Flexing the wrist did not abolish the tension', 'failed to flatten the bulk': the denial is of the verb."""
    if _DENIALS.isdisjoint(scene.said):
        return False
    first = max(scene.sentence.i, i - _FAR)
    verb = next((k for k in range(i - 1, first - 1, -1) if takes_away(scene, k)), None)
    if verb is None or not _BOUNDS.isdisjoint(scene.words(verb, i)):
        return False
    lead = scene.words(max(scene.sentence.i, verb - _FAR), verb)
    return not _DENIALS.isdisjoint(lead) and "only" not in lead  # 'not only removed the bulk'


def takes_away(scene: Scene, k: int) -> bool:
    """Tell whether word k is a verb of taking away: 'flatten the bulk', 'take away the tension'."""
    return scene.page.words[k] in _TAKING_AWAY or tuple(scene.words(k, k + 2)) in _IN_TWO
