"""How the repair runs through sheath and pulleys."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.rules.behaviour import after_repair, behaving, foreign, lay_behaviour
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_IS_GLIDE_WORDS = word_list("quality", "is_glide_words")
_IS_GLIDE_WORDS_2 = word_list("quality", "is_glide_words_2")
_FREE_WORDS_WORDS = word_list("quality", "free_words_words")
_GLIDE_FORMS = word_list("quality", "glide_forms")


def glide(desk: Desk, scene: Scene) -> None:
    """Find how the repair ran: 'glided freely', 'caught on A2', 'no triggering'."""
    if "glide" not in scene.kinds and _GLIDE_FORMS.isdisjoint(scene.words(scene.sentence.i, scene.sentence.j)):
        return
    if not (desk.repairable() or scene.setting.focus):
        return
    last: tuple[Mention, str] | None = None
    for mention in scene.of("glide"):
        if not scene.told(mention.i) or not _is_glide(scene, mention):
            continue
        value = mention.value
        negated = scene.negated(mention.i, mention.j, 4) and not _new_clause(scene, mention)
        if negated and value == "free":
            value = "catching" if scene.of("glide")[0].value == "catching" else "restricted"
        elif negated:
            value = "free"
        if value == "catching" and _until(scene, mention):
            continue
        if last is not None and last[1] == "catching" and mention.value == "free" and negated:
            continue
        if last is not None and last[1] == "catching" and value == "restricted":
            continue
        last = (mention, value)
        targets = behaving(desk, scene, mention.i, mention.j)
        lay_behaviour(desk, scene, targets, "glide", value, mention.i, mention.j, f"glide {value}")
    _free_words(desk, scene)


def _new_clause(scene: Scene, mention: Mention) -> bool:
    """'no gap and the repair glided freely': the 'no' reaches only the gap."""
    before = scene.words(max(scene.sentence.i, mention.i - 4), mention.i)
    return (
        "and" in before
        and "no" in before[: before.index("and")]
        and not {"no", "not"} & set(before[before.index("and") :])
    )


def _until(scene: Scene, mention: Mention) -> bool:
    """'caught until A2 was vented, then ran free' is told by its last word alone."""
    later = [m for m in scene.of("glide") if m.i > mention.j and m.value == "free" and scene.told(m.i)]
    return any(not scene.negated(m.i, m.j, 4) for m in later)


def _is_glide(scene: Scene, mention: Mention) -> bool:
    """Catching words live elsewhere too: hair caught, a finger caught in a door, tendon caught by the core."""
    word = " ".join(scene.words(mention.i, mention.j))
    if scene.sentence.section in ("diagnosis", "indication", "procedure"):
        return False
    if word in _IS_GLIDE_WORDS:
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        place = words & _IS_GLIDE_WORDS_2 or scene.of("test")
        if (
            word in ("caught", "catching")
            and any(q.unit == "mm" and abs(q.i - mention.i) < 8 for q in scene.quantities)
            and not words & {"edge", "lip", "pulley", "margin"}
        ):
            return False
        if (
            word in ("caught", "catching")
            and words & {"centimetre", "cm", "each", "side"}
            and "tendon" in words
            and not words & {"edge", "lip", "margin"}
        ):
            return False
        if words & {"swollen", "stump"} and not words & {"repair"}:
            return False
        subject = scene.owner(mention.i, mention.j)
        if subject is not None and subject.group is None:
            return False
        return bool(place)
    return not foreign(scene, mention.i, mention.j)


def _free_words(desk: Desk, scene: Scene) -> None:
    """'glides free through', 'a free glide': a form of glide with a word for free close by."""
    if any(scene.told(m.i) for m in scene.of("glide")):
        return
    page = scene.page
    for k in range(scene.sentence.i, scene.sentence.j):
        if page.words[k] in _GLIDE_FORMS and scene.told(k):
            near = range(max(scene.sentence.i, k - 4), min(scene.sentence.j, k + 6))
            free = next((n for n in near if page.words[n] in _FREE_WORDS_WORDS), None)
            if free is None or page.words[min(free + 1, len(page.words) - 1)] in ("fist",):
                continue
            if any(page.words[n] in ("tip", "nerve", "exercises") for n in near) or not after_repair(desk, scene):
                continue
            i, j = min(free, k), max(free, k) + 1
            value = "restricted" if scene.negated(i, j, 4) else "free"
            lay_behaviour(desk, scene, behaving(desk, scene, i, j), "glide", value, i, j, f"glide {value}")
            return
