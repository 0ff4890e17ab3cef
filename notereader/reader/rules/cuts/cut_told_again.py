"""A cut told again in a sentence that names nobody: 'Under the loupe the division is complete.', 'so a partial cut'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_LEADS = word_list("tendons", "leads_to_cut_again")
_EVENTS = frozenset(["operation", "surgery", "exploration", "inspection"])
_ENDS = frozenset(["", ".", ",", ";", "and", "only", "after", "at", "on", "in"])
_OTHERS = ("structure", "sided", "bundle", "anynerve", "anyartery", "bone", "pulley", "pulleys", "slip")
_STOPS = frozenset([",", ";", ":", "."])


def told_again(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the one tendon in focus where the words before a word of extent lead to nothing else; else []."""
    focus = scene.setting.focus
    if len(focus) != 1 or mention.value not in ("complete", "partial") or desk.extents.get(focus[0]) == "intact":
        return []
    named = any(g.tendons or g.digits or g.generic for g in scene.setting.groups)
    if scene.header or named or scene.of(*_OTHERS) or scene.next_word(mention.j) not in _ENDS:
        return []
    first = scene.sentence.i
    begin = next((k + 1 for k in range(mention.i - 1, first - 1, -1) if scene.page.words[k] in _STOPS), first)
    lead = scene.words(begin, mention.i)
    event = any(a == "the" and b in _EVENTS for a, b in pairwise(lead))  # 'The operation was complete after 90 minutes'
    return list(focus) if lead and _LEADS.issuperset(lead) and not event else []
