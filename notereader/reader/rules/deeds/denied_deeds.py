"""Deeds that were not done: 'FDS repair: no', 'how sewn | nothing', 'Repair: [ ] Y [x] N', 'neither sewn nor ...'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention, within
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_NO = frozenset(["no", "n"])
_NEEDED = frozenset(["needed", "required", "necessary", "done", "placed", "made", "indicated"])
_MEANS = frozenset(["with", "by", "using"])
_NOUNS = word_list("denied_deeds", "nouns")
_IN_LABELS = word_list("denied_deeds", "in_labels")
_CLOSES = frozenset(["", ".", ",", ";", ")", "|", "-"])


def answered_no(scene: Scene, mention: Mention) -> bool:
    """Tell whether no more than a 'no', a 'nothing' or a 'none needed' answers the deed that a label asks about."""
    words = scene.page.words
    if mention.i == mention.j == scene.sentence.i and scene.sentence.prefix:
        answer = mention.i  # the label of a ticked box
    else:
        end = mention.j + (scene.next_word(mention.j) in _MEANS)  # 'Sutured with: nothing'
        answer = next((k for k in range(end, scene.sentence.j) if _is_answer(scene, k)), -1)
        asked = answer > end and all(_is_mark(scene, k) for k in range(end, answer))
        if not asked or not {":", "?"} & set(words[end:answer]):
            return False
    if words[answer] not in _NO and not (words[answer] in _NOTHING and _asks_of_deed_alone(scene, mention)):
        return False
    needed = words[answer] in _NOTHING and scene.next_word(answer + 1) in _NEEDED  # 'Repair: none needed'
    behind = answer + 1 + needed
    return scene.next_word(behind) in _CLOSES or scene.page.breaks[behind] >= Break.LINE


def _asks_of_deed_alone(scene: Scene, mention: Mention) -> bool:
    """'How sewn', 'FDS repair': a label of nothing but the deed; 'ring suture', 'gap in the FDP repair' ask of more."""
    labels = scene.sentence.prefix if mention.i == mention.j else [(scene.sentence.i, mention.j)]
    for first, last in labels:
        inside = within(scene.page.mentions, first, last)
        named = {k for m in inside if m.kind in ("tendon", "digit", "slip") for k in range(m.i, m.j)}
        deeds = {k for m in inside if m.kind == "deed" for k in range(m.i, m.j)}
        rest = {scene.page.words[k] for k in range(first, last) if k not in named | deeds}
        if deeds:
            return rest <= _IN_LABELS
    return False


def _is_answer(scene: Scene, k: int) -> bool:
    return scene.page.words[k][0].isalnum() and scene.told(k) and not _is_mark(scene, k)


def _is_mark(scene: Scene, k: int) -> bool:
    """Tell whether a word is a colon, an unticked option or the cross of a box."""
    word, after = scene.page.words[k], scene.next_word(k + 1)
    return not word[0].isalnum() or scene.page.standing[k] == "unticked" or (word == "x" and after in ("]", ")"))


def denied_below(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Repair of FDS', 'FDS REPAIR' and on the next line 'treatment: [x] none', 'core technique: n/a - not sutured'.

    A title of what was not done.
    """
    titled = scene.page.words[mention.j - 1] in ("repair", "repairs") and _nothing_but_names(scene, mention)
    after = desk.scene_after(scene)
    if not titled or after is None:
        return False
    k = after.sentence.i
    while k < after.sentence.j - 1 and after.page.words[k] in _MANNER_LABELS:
        k += 1
    return k > after.sentence.i and after.answer(k) in _NOTHING | _NOT_APPLICABLE


def _nothing_but_names(scene: Scene, mention: Mention) -> bool:
    """Tell whether a sentence is no more than its deed and the tendons and fingers it names."""
    own = {k for g in scene.setting.groups for k in range(g.i, g.j)} | set(range(mention.i, mention.j))
    rest = {scene.page.words[k] for k in range(scene.sentence.i, scene.sentence.j) if k not in own}
    return any(g.tendons for g in scene.setting.groups) and rest <= _IN_TITLES


_IN_TITLES = frozenset([":", "of", "the", "."])
_NOT_APPLICABLE = frozenset(["n", "na", "not"])


_MANNER_LABELS = word_list("denied_deeds", "manner_labels")
_NOTHING = frozenset(["none", "nil", "no", "not", "nothing"])


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


def not_worth_it(scene: Scene) -> list[Mention]:
    """'Just a nick not worth a stitch', 'not thought worth repairing': the words that say a cut was left."""
    words, found = scene.page.words, []
    for k in range(scene.sentence.i + 1, scene.sentence.j - 1) if "worth" in scene.said else ():
        no = k - 1 - (words[k - 1] in _DEEMED)
        if words[k] != "worth" or words[no] not in _NOT:
            continue
        noun = k + 1 + (words[k + 1] in ("a", "the", "any"))
        gone = not _TAKEN_AWAY.isdisjoint(scene.words(k, scene.sentence.j))
        if noun < scene.sentence.j and words[noun] in _SEWING and not gone:
            found.append(Mention("deed", "left", no, noun + 1))
    return found


_DEEMED = frozenset(["thought", "considered", "felt", "deemed", "judged", "found", "really", "quite"])


def weighed_and_left(scene: Scene, mention: Mention) -> bool:
    """Tell whether a suture is only weighed: 'not worth a suture', 'a suture was not worth the bulk'."""
    lead = scene.words(max(scene.sentence.i, mention.i - 4), mention.i)
    behind = scene.words(mention.j, min(mention.j + 4, scene.sentence.j))
    return any(a in _NOT and b == "worth" for near in (lead, behind) for a, b in pairwise(near))


_NOT = frozenset(["not", "never", "hardly", "scarcely", "n't", "nothing"])
_SEWING = frozenset(
    ["stitch", "stitching", "suture", "sutures", "suturing", "repair", "repairing", "sewing", "mending"]
)
# 'Not worth sewing, and I cut it away'
_TAKEN_AWAY = frozenset(["away", "out", "off", "removed", "excised", "resected", "trimmed", "smoothed", "pared"])


def only_required(scene: Scene, mention: Mention) -> bool:
    """'The nick did not require suture', 'it needed trimming': whether a deed is only said to be called for."""
    return not _REQUIRED.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 3), mention.i))


_REQUIRED = frozenset(["require", "required", "requires", "requiring", "need", "needed", "needing"])


def none_needed(scene: Scene, mention: Mention) -> bool:
    """'No slip had to be excised', 'no part of the FDS needed to be': not 'there was no room and the FDS had to be'."""
    k = mention.i - 3
    if scene.words(k, mention.i) not in _NEEDED_TO_BE:
        return False
    lead = scene.words(max(scene.sentence.i, k - _LONG_NAME), k)
    return any(a in ("no", "neither") and b in _PIECES_OF_TENDON for a, b in pairwise(lead))


_NEEDED_TO_BE = (["had", "to", "be"], ["needed", "to", "be"], ["have", "to", "be"], ["need", "to", "be"])
_LONG_NAME = 7  # words
_PIECES_OF_TENDON = frozenset(["slip", "slips", "tendon", "tendons", "part", "portion", "segment", "further", "flexor"])


def but_otherwise(scene: Scene, mention: Mention) -> bool:
    """'Repaired not with six strands but with four': the deed stands, only its manner is denied."""
    return scene.words(mention.j, mention.j + 2) == ["not", "with"] and "but" in scene.said


def noun_alone(scene: Scene, mention: Mention) -> bool:
    """Tell whether a deed is only named, 'suture', 'graft': it is told by a title, or as the answer to a label."""
    word = " ".join(scene.words(mention.i, mention.j))
    if word not in _NOUNS or scene.header:
        return False
    return word == "advancement" or not _answers(scene, mention)


def _answers(scene: Scene, mention: Mention) -> bool:
    """'Treatment (FPL, left thumb): suture', 'gesture: graft': a noun that answers a label."""
    closes = scene.next_word(mention.j) in ("", ".", ",", ";")
    return closes and scene.word_before(mention.i) == ":"
