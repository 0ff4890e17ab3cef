"""Words of bulk that tell of no repair that it is bulky or slim: 'bulk acceptable', 'slid with no bunching'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_ACCEPTED = word_list("quality", "accepted_bulk")
_LEADS = word_list("quality", "leads_to_accepted")
_RAN = word_list("quality", "ran_with")
_NEAR = 8  # words


def tells_no_bulk(scene: Scene, mention: Mention) -> bool:
    """Tell whether words of bulk only accept it, or tell how the tendon ran."""
    return _accepted(scene, mention) or _as_it_ran(scene, mention)


def _accepted(scene: Scene, mention: Mention) -> bool:
    """'Bulk: acceptable', 'the bulk of the repair was tolerable': there is some, and how much nobody says."""
    if scene.page.words[mention.j - 1] != "bulk":
        return False
    k = mention.j
    while k < scene.sentence.j and scene.page.words[k] in _LEADS:
        k += 1
    return scene.next_word(k) in _ACCEPTED and scene.next_word(k + 1) in ("", ".", ",", ";", "and")


def _as_it_ran(scene: Scene, mention: Mention) -> bool:
    """'It slid nicely under the oblique with no bunching': nothing caught, and no girth is told."""
    if not scene.page.words[mention.j - 1].startswith("bunch"):
        return False
    lead = scene.words(max(scene.sentence.i, mention.i - _NEAR), mention.i)
    return not _RAN.isdisjoint(lead)
