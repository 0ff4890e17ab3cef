"""A word denied of all or answered with a nought: 'none of the repairs was under tension', 'bulk 0', 'tension nil'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene

NONE = frozenset(["neither", "no", "none", "nil", "n", "nothing", "absent", "0", "zero", "not"])
_NOBODY = frozenset(["none", "neither"])


def of_nobody(scene: Scene, mention: Mention) -> bool:
    """'None of the five repairs was under tension', but not 'neither repair gapped and both were bulky'."""
    lead = scene.words(scene.part(mention.i)[0], mention.i)
    spots = [n for n, word in enumerate(lead) if word in _NOBODY]
    return bool(spots) and "and" not in lead[spots[-1] :]


def said_to_be_none(scene: Scene, mention: Mention) -> bool:
    """'Bulk 0.', 'Tension on FCR join: 0', 'tension nil': a sign for none behind the word or its label."""
    words, last = scene.page.words, scene.sentence.j
    if _was_nil(scene, mention) or _nil_behind_remark(scene, mention):
        return True
    for k in range(mention.j, min(mention.j + _LONG_LABEL, last)):
        if words[k] in _ZERO and (k == mention.j or words[k - 1] in (":", "=")):
            return scene.next_word(k + 1) in ("", ".", ",", ";")
    return False


def _nil_behind_remark(scene: Scene, mention: Mention) -> bool:
    """'Tension (at wrist neutral): none', 'Tension at repair (1, 3): [x] none': a remark in brackets ends the label."""
    label = [k for k in range(mention.j, scene.sentence.j) if scene.page.words[k] not in _TICK]
    at = next((n for n, k in enumerate(label) if scene.page.words[k] == ":"), 0)
    closed = at and scene.page.words[label[at - 1]] == ")" and at < _LONGEST_REMARK
    answer = label[at + 1 : at + 2]
    return bool(closed and answer) and scene.page.words[answer[0]] in _NIL and scene.told(answer[0])


_TICK = frozenset(["[", "x", "]"])
_LONGEST_REMARK = 14  # words


def _was_nil(scene: Scene, mention: Mention) -> bool:
    """'Tension on the repair, with the wrist straight, was nil', 'tension at the join was none': the verb's answer.

    What stands between is where and when it was looked for, and tells no other finding.
    """
    words, last = scene.page.words, scene.sentence.j
    verb = next((k for k in range(mention.j, last - 1) if words[k] in ("was", "is") and words[k + 1] in _NIL), last)
    between = scene.words(mention.j, verb)
    closed = verb < last and scene.next_word(verb + 2) in ("", ".", ",", ";", "and")
    others = any(mention.j <= m.i < verb for m in scene.of("gap", "glide", "bulk"))
    closed = closed and ("," not in between or between[-1] == ",")  # not 'tension slight, blood loss was nil'
    return closed and not others and _VERBS.isdisjoint(between) and ";" not in between


_NIL = frozenset(["nil", "none", "zero", "absent"])
_VERBS = frozenset(["was", "were", "is", "and", "but"])
_ZERO = frozenset(["0", "nil", "zero"])
_LONG_LABEL = 7  # words
