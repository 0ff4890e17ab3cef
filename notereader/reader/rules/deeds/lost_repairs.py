"""Repairs that did not outlive the operation: 'it ruptured on the table and was left', '... was not redone'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.rules.carried import carried
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_BROKE = word_list("lost_repairs", "broke")
_CAME = word_list("lost_repairs", "came")
_AWAY = word_list("lost_repairs", "away")
_NOT_REDONE = {phrase: phrase.split() for phrase in word_list("lost_repairs", "not_redone")}
_LEFT = {phrase: phrase.split() for phrase in word_list("lost_repairs", "left")}
_TAKEN_OUT = [phrase.split() for phrase in word_list("lost_repairs", "taken_out")]
_PARTS = word_list("lost_repairs", "parts")
_ON_TABLE = [phrase.split() for phrase in word_list("lost_repairs", "on_table")]
_THREADS = ("peripheral", "strandword", "knotword", "pulley", "structure", "sided", "anynerve")
_REACH = 24  # words from the loss to what was made of it
_MENDED = word_list("lost_repairs", "mended_pulleys")
_SEWN = ("repaired", "reinserted", "grafted", None)


@needs(words=_BROKE | _CAME)
def lost_repairs(desk: Desk, scene: Scene) -> None:
    """Take a tendon whose repair gave way on the table, and was not done again, for left."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        end = _gave_way(scene, k)
        if not end or not scene.told(k) or scene.negated(k, end) or scene.header:
            continue
        fate = _fate(desk, scene, end)
        if fate is None or any(k <= q.i < fate for q in scene.quantities if q.unit == "mm"):
            continue  # 'it parted by 2 mm, which was left'
        out = _taken_out(words, fate)
        value = "excised" if words[fate - 1] == "excised" or out else "left"
        for target in _whose(desk, scene, k, end):
            if out and not any(f.field == "treatment" and f.order < k for f in desk.told_of("repairs", target)):
                continue  # 'The FDP had ruptured. The tendon was excised': no repair of this operation
            known = len(desk.findings)
            span = (k, fate) if fate <= scene.sentence.j else (k, end)
            desk.tendon(scene, target, "treatment", value, [span], "a repair lost on the table")
            for finding in desk.findings[known:]:
                finding.addendum = True  # it replaces the repair told before


def _gave_way(scene: Scene, k: int) -> int:
    """Return the word behind 'ruptured', 'gave way', 'came apart' that begins at word k; 0 for none."""
    word, after = scene.page.words[k], scene.next_word(k + 1)
    if word in _BROKE:
        return k + 1
    return k + 2 if word in _CAME and after in _AWAY else 0


def _fate(desk: Desk, scene: Scene, end: int) -> int | None:
    """Return the word behind 'was left' or 'not redone' that follows a loss; None where it was not given up."""
    words, last = scene.page.words, scene.sentence.j
    after = desk.scene_after(scene)
    if after is not None and after.sentence.block == scene.sentence.block and not after.subjects:
        last = after.sentence.j  # 'It burst on the first pull. Not redone.'
    last = min(last, end + _REACH)
    out = _tendon_taken_out(desk, scene, end)
    if out is not None:
        return out
    on_table = any(_found(words, phrase, scene.sentence.i, last) for phrase in _ON_TABLE)
    phrases = [*_NOT_REDONE.values(), *(_LEFT.values() if on_table else ())]
    return min((at for phrase in phrases if (at := _found(words, phrase, end, last))), default=None)


def _tendon_taken_out(desk: Desk, scene: Scene, end: int) -> int | None:
    """'The repair parted on closing. The tendon was taken out and a rod put in.': the word behind it.

    Not so of a piece of it, or where it was sewn again.
    """
    words = scene.page.words
    if _REPAIRS.isdisjoint(scene.words(scene.part(end - 1)[0], end)):
        return None
    last, after = scene.sentence.j, desk.scene_after(scene)
    for _ in range(2):
        if after is None or after.sentence.block != scene.sentence.block:
            break
        last, after = after.sentence.j, desk.scene_after(after)
    last = min(last, end + _REACH)
    out = next((at for phrase in _TAKEN_OUT if (at := _found(words, phrase, end, last))), None)
    if out is None or not _AGAIN.isdisjoint(words[end : min(last, out + _SOON)]):
        return None
    noun = next(k for k in range(out - 1, 0, -1) if words[k] == "tendon")
    return out if words[noun - 1] in _WHOLE else None


def _taken_out(words: list[str], fate: int) -> bool:
    return any(words[fate - len(phrase) : fate] == phrase for phrase in _TAKEN_OUT)


_REPAIRS = frozenset(["repair", "tendon", "it", "join", "junction", "suture", "core", "tenorrhaphy", "fdp", "fpl"])
_WHOLE = frozenset(["the", "whole", "entire", "its", "this", ":", ",", ".", ";", "-", "and"])
_AGAIN = frozenset(["again", "redone", "repeated", "anew", "afresh", "resutured"])
_SOON = 8  # words


def _found(words: list[str], phrase: list[str], i: int, j: int) -> int:
    """Return the word behind a phrase within words i to j; 0 where it is not there."""
    return next((k + len(phrase) for k in range(i, j) if words[k : k + len(phrase)] == phrase), 0)


def _whose(desk: Desk, scene: Scene, k: int, end: int) -> list[Target]:
    """Return the sewn tendons that gave way: the ones named, those of the finger named, else the one spoken of."""
    first, _ = scene.part(k)
    first = k if _new_subject(scene, first, k) else first
    if any(first <= m.i < k for m in scene.of(*_THREADS)) or not _PARTS.isdisjoint(scene.words(first, k)):
        return []  # 'the peripheral suture broke and was left out', 'the third pass tore out and was abandoned'
    if _of_a_mended_pulley(scene, k):
        return []
    named, group = tendon_owner(desk, scene, k, end)
    digits = group.digits if group is not None else ()
    if group is not None and group.tendons:
        return [t for t in named if desk.treatments.get(t) in _SEWN]
    found = named or carried(desk, scene, digits or None)[0]
    if not named and not digits and len(found) > 1:
        return []  # which of them gave way is not told
    return [t for t in found if desk.treatments.get(t) in _SEWN]


def _of_a_mended_pulley(scene: Scene, k: int) -> bool:
    """'A2 was repaired, but the stitches cut out'; not so of 'after venting A4 it ruptured'."""
    named = [m for m in scene.of("tendon", "generic", "pulley", "pulley?") if m.j <= k]
    last = max(named, key=lambda m: m.i, default=None)
    mended = last is not None and not _MENDED.isdisjoint(scene.words(last.j, k))
    return last is not None and mended and last.kind in ("pulley", "pulley?")


def _new_subject(scene: Scene, first: int, k: int) -> bool:
    """'After A4 was vented it ruptured and was left': what opens the clause is not what gave way."""
    return scene.page.words[k - 1] == "it" and scene.page.words[first] in ("after", "once", "when", "while", "as")
