"""Pulleys rebuilt at a first stage and found sound at the second: 'both reconstructed pulleys were firm'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention, within
from notereader.reader.scene import Scene, digits_at
from notereader.vocabulary.wordlists import word_list

_MADE = word_list("pulleys", "made_before")
_SOUND = word_list("pulleys", "found_sound")
_BEING = frozenset(["are", "were", "is", "was", "be", "found", "seen", "proved", "both", "looked", "felt", "seemed"])
_REACH = 3  # words from the verb to how they were: 'were quite firm'
_DENIED = frozenset(["not", "no", "neither", "less", "hardly", "nor", "until", "only"])
_TAKES_UP = frozenset(["these", "they", "both"])
_STARTS = frozenset([";", ",", ".", "and"])
RULE = "pulley rebuilt before and found sound"


def rebuilt_before(desk: Desk, scene: Scene) -> None:
    """Lay down as whole what an earlier stage rebuilt and this operation found to hold."""
    if _SOUND.isdisjoint(scene.said) or scene.header or not desk.second_stage:
        return
    words, first, last = scene.page.words, scene.sentence.i, scene.sentence.j
    made = next((k for k in range(first, last) if words[k] in _MADE), None)
    start = made if made is not None else _taken_up(scene)
    sound = next((k for k in range(start, last) if _found_sound(scene, k)), None) if start is not None else None
    if sound is None or any(m.i > sound and m.value != "intact" for m in scene.of("opened")):
        return
    named, where = [m for m in scene.of("pulley") if m.j <= sound], scene
    if not named and (made is None or "pulleys" in scene.said):
        named, where = _named_before(desk, scene)
    for m in named:
        fingers: list[str | None] = [d for d in digits_at(where, None, m.i) if d != "thumb"]
        for digit in fingers or [None]:
            entry = (digit, m.value, None)
            if not any(f.field == "finding" for f in desk.told_of("pulleys", entry)):
                desk.add(scene, "pulleys", entry, "finding", "intact", [(sound, sound + 1)], RULE)


def _taken_up(scene: Scene) -> int | None:
    """Return the word of 'these' or 'they' that opens a clause and may stand for pulleys told of just before."""
    spots = range(scene.sentence.i, scene.sentence.j)
    words = scene.page.words
    return next((k for k in spots if words[k] in _TAKES_UP and scene.word_before(k) in _STARTS | {""}), None)


def _found_sound(scene: Scene, k: int) -> bool:
    """'were firm', 'are solid', 'seen to be strong', 'were both intact'; not 'were not firm'."""
    lead = scene.words(max(scene.sentence.i, k - _REACH), k)
    return scene.page.words[k] in _SOUND and not _BEING.isdisjoint(lead) and _DENIED.isdisjoint(lead)


def _named_before(desk: Desk, scene: Scene) -> tuple[list[Mention], Scene]:
    """Return the pulleys the note told of last as made before, and where; none where it went on to others since."""
    here = desk.scene_before(scene)
    while here is not None:
        pulleys = [m for m in within(here.page.mentions, here.sentence.i, here.sentence.j) if m.kind == "pulley"]
        if pulleys or "tendon" in here.kinds:
            return ([], here) if _MADE.isdisjoint(here.said) else (pulleys, here)
        here = desk.scene_before(here)
    return [], scene
