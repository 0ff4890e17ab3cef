"""'FDP cut through. Repaired.': a deed that names no tendon, of the cut ones spoken of just before."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.rules.carried import carried
from notereader.reader.scene import Scene, Subject
from notereader.vocabulary.wordlists import word_list


def sewn_now(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'FDP cut through. Repaired.', 'It was sutured the same day': the cut tendons spoken of just before."""
    words = scene.words(mention.i, mention.j) or [""]
    noun = not any(w.endswith("ed") for w in words) and words[-1] not in ("sewn", "rep'd", "rpr'd")
    noun = noun and words[0] != "through"  # 'passed through drill holes in the distal phalanx'
    if _of_other_kind(desk, scene) or words in (["secured"], ["was", "fixed"]) or (noun and not _opens(scene, mention)):
        return []
    focus = [t for t in scene.setting.focus if desk.is_cut(t)]
    found = focus or carried(desk, scene)[0]
    before = (
        (None, "repaired") if mention.value == "reinserted" else (None,)
    )  # 'A Krackow suture ... tied over a button'
    return [t for t in found if desk.treatments.get(t) in before and desk.extents.get(t) != "intact"]


def _opens(scene: Scene, mention: Mention) -> bool:
    """'Repair.', 'Direct suture.', 'Repair was done.': a deed as a noun that is nearly all the sentence says."""
    return mention.i == scene.sentence.i and _DONE.issuperset(scene.words(mention.j, scene.sentence.j))


_DONE = word_list("tendons", "done")


def _of_other_kind(desk: Desk, scene: Scene) -> bool:
    """'The nerve was cut. Repaired.', 'A3 was torn. It was sutured.': what was named last was no tendon or finger."""
    before = desk.scene_before(scene)
    if before is None:
        return False
    named = [s for s in before.subjects if s.kind != "role" and not _is_where(before, s)]
    return bool(named) and named[-1].kind not in ("tendon", "digit")


def _is_where(scene: Scene, subject: Subject) -> bool:
    """'The proximal end had retracted to the level of A2': a pulley named for a place."""
    before = [w for w in scene.words(max(scene.sentence.i, subject.i - 3), subject.i) if w != "the"]
    return subject.kind == "pulley" and (before[-1:] in _AT_IT or before[-2:] == ["level", "of"])


_AT_IT = (["to"], ["at"], ["under"], ["near"], ["beneath"], ["behind"], ["beyond"], ["through"], ["past"])
