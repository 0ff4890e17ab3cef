"""Tendons counted as cut and then named: 'Nine tendons were divided, all of them ragged: the FCR, the PL, ...'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_NOUNS = word_list("told_then_listed", "nouns")
_CUT = word_list("told_then_listed", "cut")
_DOUBTED = word_list("told_then_listed", "doubted")
_LEADS = frozenset([":", "(", "namely", "viz", "i.e"])
# What the names of a list may not be mixed with: each would say something of its own.
_OWN = ("extent", "fraction", "ends", "deed", "structure", "sided", "anynerve", "anyartery", "pulley", "slip")


@needs(kinds=["extent"])
def told_then_listed(desk: Desk, scene: Scene) -> None:
    """Lay down how far the tendons of a list were cut, and how their ends were, where the words before it say so."""
    if _NOUNS.isdisjoint(scene.said) or _CUT.isdisjoint(scene.said) or scene.header:
        return
    groups = [g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)]
    lead = _lead(scene, groups[0].i) if groups else None
    if lead is None:
        return
    cut = next((m for m in scene.of("extent") if m.value == "complete" and m.j <= lead and _is_said(scene, m)), None)
    listed = _of_the_list(scene, groups, lead)
    if cut is None or scene.words(cut.i, cut.j)[-1] not in _CUT or not listed or _is_doubted(scene, cut, lead):
        return
    looks = [m for m in scene.of("ends") if m.j <= lead and scene.told(m.i)]
    for group, target in listed:
        desk.tendon(scene, target, "extent", "complete", [(cut.i, cut.j), (group.i, group.j)], "extent complete")
        if len({m.value for m in looks}) == 1:
            spans = [(looks[0].i, looks[0].j), (group.i, group.j)]
            desk.tendon(scene, target, "ends", looks[0].value, spans, f"ends {looks[0].value}")


def _lead(scene: Scene, first: int) -> int | None:
    """Return the word that leads to the list beginning at word `first`, where a noun for tendons stands before it."""
    k = first - 1
    while k > scene.sentence.i and scene.page.words[k] in ("the", "both", "all"):
        k -= 1
    led = scene.page.words[k] in _LEADS and not _NOUNS.isdisjoint(scene.words(scene.sentence.i, k))
    return k if led and scene.sentence.i < k else None


def _of_the_list(scene: Scene, groups: list[Group], lead: int) -> list[tuple[Group, Target]]:
    """Return the tendons named behind the lead, up to the bracket that closes; none where more is told of some."""
    close = next((k for k in range(lead, scene.sentence.j) if scene.page.words[k] in (")", ";")), scene.sentence.j)
    if any(lead < m.i < close for m in scene.of(*_OWN)) or "%" in scene.units:
        return []
    here = [g for g in groups if lead < g.i < close]
    return [(g, t) for g in here for t in group_targets(scene, g) if t.digit or t.tendon not in ("FDP", "FDS")]


def _is_said(scene: Scene, cut: Mention) -> bool:
    """Tell whether 'divided' is said of the tendons: not 'a nerve was divided and these tendons were seen: ...'."""
    others = scene.of("structure", "sided", "anynerve", "anyartery", "pulley", "bundle")
    return scene.told(cut.i) and not any(m.j <= cut.i for m in others)


def _is_doubted(scene: Scene, cut: Mention, lead: int) -> bool:
    """'None of the tendons was divided: ...', 'the tendons that may be divided: ...'."""
    return not _DOUBTED.isdisjoint(scene.words(scene.sentence.i, lead)) or scene.negated(cut.i, cut.j)
