"""'A modified Kessler of 4-0 and nothing more': no peripheral suture besides the core suture just told of.

That a repair has none promises nothing, so a bare 'nothing round it' is believed of what was sewn in the same sentence.
"""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.rules.sutures.roles import Anchor
from notereader.reader.rules.sutures.suture_owners import suture_owners, targets_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_NOTHING = frozenset(["nothing", "nil"])
_MORE = frozenset(["more", "further", "else"])
_AROUND = frozenset(["around", "round", "outside"])
_IT = frozenset(
    ["it", "them", "that", "those", "these", "the", "edge", "edges", "rim", "one", "ones", "either", "this"]
)
_CLOSES = frozenset(["", ".", ",", ";", ")"])
_LEADS = frozenset(["and", ",", ";", ".", "-", "with", "but", "so"])
_CORE = ("stitch", "size", "strands")
_SOON = 16  # words
_LEFT = (["not", "done"], ["left", "off"], ["not", "used"], ["not", "given"], ["left", "out"], ["did", "not"])
_PLACED = frozenset(["in", "on", "for", "to", "the", ";", ",", "and", "but"])
RULE = "peripheral suture said to be left out"


def none_besides(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """Lay down the tendons whose core suture is told of with nothing besides, and those left out behind others."""
    if _NOTHING & scene.said and scene.kinds.isdisjoint(("gap", "glide", "test")):
        _nothing_more(desk, scene)
    if spots and scene.kinds.isdisjoint(("gap", "glide", "test")):
        _left_out_behind(desk, scene, spots)
    if {"core", "only"} <= scene.said and scene.kinds.isdisjoint(("gap", "glide", "test")):
        _core_only(desk, scene)


def _nothing_more(desk: Desk, scene: Scene) -> None:
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] not in _NOTHING or words[k - 1] not in _LEADS or not scene.told(k) or not _says_so(scene, k + 1):
            continue
        told = desk.laid(*_CORE, since=k - _SOON, before=k)
        alone = k == scene.sentence.i and "outside" in scene.said  # 'FDS: mattress, 4-0 Prolene. Nothing outside.'
        told = [f for f in told if alone or f.order >= scene.sentence.i]
        last = max((f.order for f in told), default=-1)
        for target in dict.fromkeys(Target(*f.entry) for f in told if f.order == last):
            if not any(
                f.field == "peripheral" and f.order >= scene.sentence.i for f in desk.told_of("repairs", target)
            ):
                desk.tendon(scene, target, "peripheral", "absent", [(k, k + 2)], RULE)


def _says_so(scene: Scene, k: int) -> bool:
    """Tell whether 'more', 'else', 'round it' or 'on the outside' stands at word k and closes the clause."""
    if scene.next_word(k) in _MORE:
        return scene.next_word(k + 1) in _CLOSES
    k += 2 * (scene.words(k, k + 2) == ["on", "the"])
    if scene.next_word(k) not in _AROUND:
        return False
    k += 1
    while scene.next_word(k) in _IT:
        k += 1
    return scene.next_word(k) in _CLOSES


def _core_only(desk: Desk, scene: Scene) -> None:
    """'Middle FDS: core only', 'two-strand Kessler, core suture only', 'the FDS (core only)': no edge suture."""
    words = scene.page.words
    for k in (k for k in range(scene.sentence.i, scene.sentence.j) if words[k] == "core" and scene.told(k)):
        end = k + 1 + (scene.next_word(k + 1) in ("suture", "sutures", "stitch", "stitches", "repair"))
        opens = k == scene.sentence.i or words[k - 1] in _OPEN_CORE or any(g.j == k for g in scene.setting.groups)
        if scene.next_word(end) != "only" or scene.next_word(end + 1) not in _CLOSES or not opens:
            continue
        for target in suture_owners(desk, scene, k, end)[0]:
            if not any(f.field == "peripheral" for f in desk.told_of("repairs", target)):
                desk.tendon(scene, target, "peripheral", "absent", [(k, end + 1)], RULE)


_OPEN_CORE = frozenset([":", ",", ";", "-", "(", "=", "a", "with", "had", "got", "took", "received", "given"])


def _left_out_behind(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'The FDP received a running epitendinous 5-0; the FDS did not', '..., in the FDS not done', '...; FDS none'."""
    for group in (g for g in scene.setting.groups if g.tendons and g.i > spots[0].i and not g.reference):
        behind = scene.words(group.j, group.j + 2)
        none = behind[:1] == ["none"] and scene.word_before(group.i) in (";", ",")
        left = behind in _LEFT and scene.next_word(group.j + 2) in _CLOSES | {"for", "as", "because"}
        led = scene.word_before(group.i) in _PLACED
        if (none or (left and led)) and scene.told(group.i):
            for target in targets_of(desk, scene, group):
                desk.tendon(scene, target, "peripheral", "absent", [(group.i, group.j + 1 + left)], RULE)


def finger_went_without(desk: Desk, scene: Scene, told: bool) -> None:
    """'A running 6-0 went round the index and ring; the middle went without', 'in the middle this was omitted'.

    `told`: a peripheral suture is told of in the sentence or was in the one before.
    """
    if not told or _DENIES.isdisjoint(scene.said) or not scene.kinds.isdisjoint(_OF_OTHERS):
        return
    for group in (g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference)):
        last = scene.part(group.j - 1)[1]
        if scene.page.words[group.j : group.j + 1] == [","]:
            last = scene.part(group.j + 1)[1]  # 'in all but the middle, where it was omitted'
        tail = tuple(w for w in scene.words(group.j, last) if w not in _NOT_SAYING)
        if tail in _WITHOUT and last - group.j <= _SOON and scene.told(group.i):
            deep = [t for t in desk.repairable(group.digits) if t.tendon in ("FDP", "FPL") and desk.has_suture(t)]
            for target in deep:
                desk.tendon(scene, target, "peripheral", "absent", [(group.i, last)], RULE)


_OF_OTHERS = ("gap", "glide", "test", "pulley", "structure", "sided", "strandword", "stitch")
_WITHOUT = frozenset(tuple(phrase.split()) for phrase in word_list("sutures", "went_without"))
_DENIES = frozenset(phrase[0] for phrase in _WITHOUT)
_NOT_SAYING = word_list("sutures", "not_saying")
