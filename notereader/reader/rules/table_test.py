"""How the finished repair was tested on the table."""

from notereader.reader.bearing import Target
from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.rules.behaviour import after_repair, behaving, foreign, lay_behaviour, names_repair
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_IS_TEST_WORDS = word_list("quality", "is_test_words")
_IS_TEST_CONTEXT = word_list("quality", "is_test_context")
_IS_TEST_WORDS_2 = word_list("quality", "is_test_words_2")
# Words between two that tell of one test: 'pulled on the FDP under traction'.
_NEAR = 12
_EXAM = word_list("quality", "exam")
_EXAM_PHRASES = ("before the", "in ed", "on arrival", "on examination")


def table_test(desk: Desk, scene: Scene) -> None:
    """Find how the finished repair was tested on the table; examinations before it are none."""
    mentions = [m for m in scene.of("test") if scene.told(m.i) and _is_test(desk, scene, m)]
    if not mentions or not after_repair(desk, scene):
        return
    order = {"active": 0, "traction": 1, "passive": 2}
    mention = min(mentions, key=lambda m: (order[m.value], m.i))
    targets = behaving(desk, scene, mention.i, mention.j)
    if any(g.generic == "all" for g in scene.setting.groups) or "all" in scene.words(
        scene.sentence.i, scene.sentence.i + 2
    ):
        targets = desk.repairable() or targets
    later = [g for g in scene.setting.groups if g.digits and g.i >= mention.j]
    if not [g for g in scene.setting.groups if g.j <= mention.i] and len(later) > 1:
        targets = desk.repairable(tuple(d for g in later for d in g.digits)) or targets
    if not names_repair(scene) and mention.value == "active":
        targets = _of_digits(desk, scene) or targets
    near = [m for m in mentions if m.value == mention.value and abs(m.i - mention.i) <= _NEAR]
    i, j = min(m.i for m in near), max(m.j for m in near)
    lay_behaviour(desk, scene, targets, "test", mention.value, i, j, f"{mention.value} test on the table")


def _of_digits(desk: Desk, scene: Scene) -> list[Target]:
    digits = tuple(d for g in scene.setting.groups for d in g.digits)
    if not digits and {"fist", "fists", "fingers", "them"} & set(scene.words(scene.sentence.i, scene.sentence.j)):
        return desk.repairable()
    digits = digits or scene.setting.digits
    return (
        [t for t in desk.repairable(digits or None) if t.tendon in ("FDP", "FPL")]
        if not digits
        else desk.repairable(digits)
    )


def _is_test(desk: Desk, scene: Scene, mention: Mention) -> bool:
    section = scene.sentence.section
    if section in ("indication", "diagnosis", "procedure", "consent", "previous", "findings") and not desk.topic:
        return False
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if set(words) & _EXAM or any(p in " ".join(words) for p in _EXAM_PHRASES if p != "before the"):
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    if scene.words(mention.i, mention.i + 1) == ["i"] and scene.word_before(mention.i) in ("when", "if", "as", "until"):
        return False
    if foreign(scene, mention.i, mention.j) and word in ("traction", "pulled", "pull", "himself", "herself", "ranged"):
        return False
    if word in _IS_TEST_WORDS:
        context = _IS_TEST_CONTEXT
        if not set(words) & context:
            return False
    if (
        word in ("traction", "pull", "pulled", "under traction", "gentle traction", "proximal traction")
        and set(words) & _IS_TEST_WORDS_2
        and not set(words) & {"gap", "gapping", "test", "tested", "checked"}
    ):
        return False
    if scene.negated(mention.i, mention.j, 4) and mention.value != "active":
        return not set(words) & {"tested", "test", "performed", "done"}
    text = " ".join(words)
    return not any(
        p in text
        for p in (
            "not tested",
            "not test",
            "no test",
            "never tested",
            "was dropped",
            "we dropped",
            "not attempted",
            "could not be tested",
            "not possible",
        )
    )
