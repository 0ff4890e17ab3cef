"""The last part of a list of peripheral sutures, which has none: 'epitendinous 6-0 Prolene, ring not done'."""

from notereader.reader.desk import Desk
from notereader.reader.rules.sutures.roles import Anchor
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_NOT_DONE = word_list("bearing", "not_done_there")


def named_without(desk: Desk, scene: Scene, spots: list[Anchor], rule: str) -> None:
    """Lay down that a tendon left out of what a sentence tells of peripheral sutures has none."""
    named = [spot.i for spot in spots] or [m.i for m in scene.of("pattern")]  # 'a running 6-0, the FDS none'
    if not named and scene.sentence.section != "peripheral":
        return
    first = named[0] if named else scene.sentence.i
    for group in (g for g in scene.setting.groups if g.excepted and g.i > first):
        behind = [w for w in scene.words(group.j, scene.sentence.j) if w not in (".", "was", "finger", "were")]
        if " ".join(behind) not in _NOT_DONE or not scene.told(group.i):
            continue
        own = group_targets(scene, group) if group.tendons else desk.repairable(group.digits)
        for entry in [(t.digit, t.tendon, t.slip) for t in own if t in desk.repairable()]:
            spans = [(group.i, scene.sentence.j)]
            desk.add(scene, "repairs", entry, "peripheral", "absent", spans, rule, of_excepted=True)
