"""Tendons fixed to a bone, a pulley or a neighbour: what is a tenodesis, of which tendon, and what only sounds so."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.rules.deeds.cut_away import SEWN_WITH
from notereader.reader.scene import Scene, group_targets
from notereader.reader.standing.lending import joined_into

_DIP = frozenset(["dip", "dipj"])


def tenodesis_of_the_joint(desk: Desk, scene: Scene) -> None:
    """'DIPJ flexor tenodesis, R middle finger': a title whose joint tells the tendon, the deep flexor."""
    if _DIP.isdisjoint(scene.said):
        return
    tendons = any(g.tendons for g in scene.setting.groups)
    for deed in (d for d in scene.of("deed") if d.value == "tenodesed" and scene.told(d.i)):
        if _DIP.isdisjoint(scene.words(max(scene.sentence.i, deed.i - 3), deed.j + 4)):
            continue
        fingers = finger_behind(scene, deed) if tendons else [d for g in scene.setting.groups for d in g.digits]
        for digit in dict.fromkeys(d for d in fingers if d != "thumb"):
            target = Target(digit, "FDP")
            desk.tendon(scene, target, "treatment", "tenodesed", [(deed.i, deed.j)], "treatment tenodesed")


def finger_behind(scene: Scene, deed: Mention) -> list[str]:
    """'FDP repair ring + DIP tenodesis little': the finger named right behind the joint's tenodesis."""
    if _DIP.isdisjoint(scene.words(max(scene.sentence.i, deed.i - 2), deed.j)):
        return []
    return [d for g in scene.setting.groups if g.i == deed.j and not g.tendons for d in g.digits]


def woven_into_a_neighbour(desk: Desk, scene: Scene) -> None:
    """'The index profundus was woven into the intact middle profundus': tenodesed, and nothing done to the other."""
    for group in (g for g in scene.setting.groups if g.tendons and g.reference):
        verb = joined_into(scene.page, group, scene.sentence)
        if verb < 0 or not scene.told(verb) or scene.negated(verb, verb + 1):
            continue
        deed = Mention("deed", "tenodesed", verb, group.i)
        for target in stump_fixed(desk, scene, deed):
            desk.tendon(scene, target, "treatment", "tenodesed", [(verb, group.j)], "treatment tenodesed")


def stump_fixed(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the tendon named before a tenodesis in its sentence, else the one whose stump was spoken of."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and not g.reference]
    if named:
        return group_targets(scene, named[-1])
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    return focus if len(focus) == 1 else []


def by_way_of(scene: Scene, mention: Mention) -> bool:
    """'The far stump was fixed to the radius as a tenodesis': what the deed before it comes to."""
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i + 1)
    return not _LEADS_TO_TENODESIS.isdisjoint(lead)


def to_a_side(scene: Scene, mention: Mention) -> bool:
    """'Sewn to the side of the ring FDP': fixed to a neighbour."""
    return mention.value == "tenodesed" and scene.words(mention.j - 2, mention.j) == ["side", "of"]


_LEADS_TO_TENODESIS = frozenset(["as", "by", "of"])


def no_tenodesis(scene: Scene, mention: Mention) -> bool:
    """'tenodesis effect normal', 'wrist tenodesis test', 'to teach tenodesis exercises', 'passive tenodesis'."""
    word = scene.next_word(mention.j + (scene.next_word(mention.j) in ("then", "now", "also", "again")))
    moved = scene.page.words[mention.j - 1] == "tenodesis" and scene.word_before(mention.i) in _MOVED_BY
    behind = scene.words(mention.j, min(mention.j + 5, scene.sentence.j))
    moved = moved or (behind[:1] in (["by"], ["with"], ["of"], ["at"]) and "wrist" in behind)  # 'by moving the wrist'
    return moved or word in _OF_A_TEST or not _CHECKED_BY_IT.isdisjoint(scene.said)


_MOVED_BY = frozenset(["passive", "wrist", "passively", "gentle", "dynamic"])
_CHECKED_BY_IT = frozenset(["rotation", "malrotation", "cascade", "scissoring"])  # of the fingers, not of a tendon
_OF_A_TEST = frozenset(
    [
        *("effect", "test", "exercise", "exercises", "check", "manoeuvre", "movement", "arc", "action", "cascade"),
        *("showed", "shows", "demonstrated", "confirmed", "opened", "opens"),  # 'Tenodesis then showed free gliding'
    ]
)


def undone_again(scene: Scene, mention: Mention) -> bool:
    """'I had at first tied the FDP to its neighbour as a tenodesis; ... that suture was removed': not so in the end."""
    before, behind = scene.words(scene.sentence.i, mention.i), scene.words(mention.j, scene.sentence.j)
    return "first" in before and not SEWN_WITH.isdisjoint(behind) and not _TAKEN_AWAY.isdisjoint(behind)


_TAKEN_AWAY = frozenset(["removed", "undone", "unpicked", "cut"])
