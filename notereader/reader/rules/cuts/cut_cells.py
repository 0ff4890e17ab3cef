"""How far a tendon was cut, told by a bare word in a cell of a grid or as the answer on a form."""

from notereader.reader.desk import Desk
from notereader.reader.layout.boxes import BOX_ENDS, BOX_SIGNS
from notereader.reader.page import Break, Mention, within
from notereader.reader.rules.cuts.cut_likeness import CUT
from notereader.reader.rules.cuts.cut_shares import part_cut
from notereader.reader.scene import Scene, group_targets

FAR = {
    **dict.fromkeys(("whole", "full", "total", "totally", "through", "all"), "complete"),
    **dict.fromkeys(("none", "nil", "no", "uncut"), "intact"),
    "half": "half",
}

_NONE_OF_IT = {"0": "intact"}  # 'FDP   0' under 'cut?'
_HOW_FAR = frozenset(
    [
        *("cut", "cut %", "cut?", "lesion", "injury", "damage", "how much", "how far", "extent"),
        *("divided", "division", "laceration"),
    ]
)
_WHOLLY = frozenset(["total", "totally"])  # said of a tendon, they mean a cut without being asked for one
_OF_NO_WEIGHT = frozenset([",", ":", "(", ")", "%", "percent", "finger", "-", "/", "of", "the", "?", "state", "found"])


def cell_of_how_far(desk: Desk, scene: Scene) -> None:
    """'FDS 3   whole   yes' under 'tendon   cut   repaired': how far, told by a word that means it only there."""
    first, prefix = scene.sentence.i, scene.sentence.prefix
    ends = scene.next_word(first + 1) in ("", ",", ";", ".") or _is_ticked(scene, first + 1)
    ends = ends or scene.words(first, first + 3) == ["no", "(", "intact"]
    if not prefix or not ends or not scene.told(first):
        return
    word = scene.page.words[first]
    titles = [_without_names(scene, *label) for label in prefix]
    asked = not _HOW_FAR.isdisjoint(titles) or (word in _WHOLLY and set(titles) <= {""})
    value = _NONE_OF_IT.get(word, FAR.get(word)) if asked else "intact" if word == "whole" else None
    label = next((g for g in scene.setting.groups if g.i == g.j == first and g.tendons), None)
    if value is None or label is None or (word == "whole" and value == "complete" and _ends_row(desk, scene)):
        return  # 'FDP   -   whole' with nothing behind it: wholly cut or not at all
    for target in group_targets(scene, label):
        if value == "half":
            part_cut(desk, scene, [target], 50.0, first, first + 1)
        else:
            desk.tendon(scene, target, "extent", value, [(first, first + 1)], f"cell of a grid: {word}")


def _without_names(scene: Scene, i: int, j: int) -> str:
    """Return what a label asks without the number of its row, the finger and the tendon: 'cut' of '6 FDP, cut'."""
    words = scene.page.words
    named = {k for m in within(scene.page.mentions, i, j) if m.kind in ("tendon", "digit") for k in range(m.i, m.j)}
    told = [words[k] for k in range(i, j) if not words[k].isdecimal() and k not in named]
    return " ".join(w for w in told if w not in _OF_NO_WEIGHT)


def _is_ticked(scene: Scene, k: int) -> bool:
    """Tell whether a ticked box stands at word k: 'all \u2612', 'cut (x)'."""
    words = scene.words(k, min(k + 3, scene.sentence.j))
    return words[:1] in (["\u2611"], ["\u2612"]) or (
        words[:1] in (["("], ["["]) and words[1:2] in (["x"], ["v"]) and words[2:] in ([")"], ["]"])
    )


def _ends_row(desk: Desk, scene: Scene) -> bool:
    after = desk.scene_after(scene)
    return after is None or after.sentence.prefix[:1] != scene.sentence.prefix[:1]


def labels_extent(scene: Scene, mention: Mention) -> bool:
    """'DIVISION  [ ] complete  [x] partial', 'Division: partial': a word that asks how far, and does not tell it."""
    words, k = scene.page.words, mention.j
    if mention.i == mention.j:  # of the label of a cell
        return any(m.j > m.i for m in scene.of("extent"))
    asks = mention.i == scene.sentence.i and words[mention.i] in _ASKS_CUT
    if not asks or k >= scene.sentence.j or words[mention.i] == "cut":
        return False  # 'cut' says how far only as a ticked option: 'cut [x] part [ ]'
    answered = any(m.i > k and scene.told(m.i) for m in scene.of("extent"))
    return words[k] in BOX_SIGNS or (words[k] in (":", "?") and answered)


def answered_cut(desk: Desk, scene: Scene) -> None:
    """'Cut: complete', 'Zone: II   Condition: explored, intact', 'CUT  [ ] complete  [x] partial' under a tendon."""
    words, focus = scene.page.words, scene.setting.focus
    if len(focus) != 1 or any(g.tendons or g.digits for g in scene.setting.groups):
        return
    asked = range(scene.sentence.i, scene.sentence.j - 1)
    marks = BOX_SIGNS | {":"}
    k = next((k for k in asked if words[k] in _ASKS_CUT and words[k + 1] in marks), None)
    if k is not None and _asks_of_another(scene, k):
        return
    told = [m for m in scene.of("extent") if k is not None and m.i > k + 1 and scene.told(m.i)]
    if k is not None and not told and words[k + 1] == ":" and scene.told(k + 2):
        told = _far_answered(scene, k + 2)
    if k is None or len(told) != 1 or told[0].value == "contused":
        return
    boxed = words[k + 1] in BOX_SIGNS
    if (told[0].i - k > _SOON_ANSWERED and not boxed) or (boxed and words[told[0].i - 1] not in BOX_ENDS):
        return
    if not scene.negated(told[0].i, told[0].j):
        desk.tendon(scene, focus[0], "extent", told[0].value, [(k, told[0].j)], f"extent {told[0].value}")
    share = next((q for q in scene.quantities if boxed and q.unit == "%" and 0 <= q.i - told[0].j <= _NEAR), None)
    if share is not None and told[0].value == "partial" and share.high:
        part_cut(desk, scene, [focus[0]], share.high, share.i, share.j)


def _asks_of_another(scene: Scene, k: int) -> bool:
    """'Pulley status: A2 intact', 'Nerve condition: whole': the label at word k is not of the tendon."""
    before = scene.word_before(k)
    named = before[:1].isalpha() and before not in _OF_THE_TENDON and scene.page.breaks[k] < Break.COLUMN
    return named or any(k < m.i <= k + _SOON_ANSWERED for m in scene.of(*_OTHER_THINGS))


_OF_THE_TENDON = frozenset(["tendon", "of", "the", "degree", "found", "its", "flexor", "amount", "and", "or"])
_OTHER_THINGS = ("pulley", "structure", "sided", "anynerve", "anyartery", "bundle", "bone")


def _far_answered(scene: Scene, k: int) -> list[Mention]:
    """'Tendon: FDP   Cut: full', 'Cut: none': one word, which says how far only where it is asked for."""
    value = FAR.get(scene.next_word(k))
    closed = scene.next_word(k + 1) in ("", ".", ",", ";") or scene.page.breaks[k + 1] >= Break.COLUMN
    return [Mention("extent", value, k, k + 1)] if value in ("complete", "intact") and closed else []


_SOON_ANSWERED = 5  # words
_NEAR = 3  # words
_ASKS_CUT = frozenset(["cut", "extent", "division", "damage", "laceration", "injury", "state", "status", "condition"])


_OF_ONE_PLACE = frozenset(["FPL", "FCR", "FCU", "PL"])  # tendons that need no finger


def cell_of_cut(desk: Desk, scene: Scene) -> None:
    """'FDP   cut, stump 4 mm   cut' in a grid: a cell that a tendon heads says 'cut' where others say how far."""
    first = scene.sentence.i
    if scene.page.words[first] == "all" and scene.next_word(first + 1) in CUT:
        first += 1  # 'all cut, clean, 4-0 Fiberwire'
    if scene.words(first + 1, first + 2) == [","] and scene.words(first + 2, scene.sentence.j) == ["cut"]:
        first += 2  # 'thin, cut'
    after = scene.next_word(first + 1)
    ends = after in ("", ",", ";", ".") or _is_ticked(scene, first + 1)
    if not scene.sentence.prefix or scene.page.words[first] not in CUT or not ends:
        return
    shares = bool(scene.of("fraction", "extent")) or any(q.unit == "%" for q in scene.quantities)
    at = scene.sentence.i
    label = next((g for g in scene.setting.groups if g.i == g.j == at and g.tendons), None)
    if label is None or not (label.digits or _OF_ONE_PLACE.issuperset(label.tendons)):
        return
    if not shares and scene.told(first):
        for target in group_targets(scene, label):
            desk.tendon(scene, target, "extent", "complete", [(first, first + 1)], "cell of a grid: cut")
