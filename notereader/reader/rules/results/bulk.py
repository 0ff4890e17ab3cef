"""Bulk of a repair: 'not bulky', 'slim repair', 'bulky'."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.results.at_last import settle_at_last
from notereader.reader.rules.results.behaviour import after_repair, behaving, foreign, lay_behaviour, names_repair
from notereader.reader.rules.results.bulk_asides import only_spoken_of
from notereader.reader.rules.results.but_for import but_for_some
from notereader.reader.rules.results.dealt_results import not_denied
from notereader.reader.rules.results.not_taken_away import not_taken_away
from notereader.reader.rules.results.said_to_be_none import NONE, of_nobody, said_to_be_none
from notereader.reader.rules.results.sought import sought_in_vain
from notereader.reader.rules.results.told_apart import told_apart
from notereader.reader.rules.strangers import of_sheath_or_pulley
from notereader.reader.rules.sutures.given_reasons import as_a_reason
from notereader.reader.rules.sutures.threads import find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_BULK_WORDS = word_list("quality", "bulk_words")
_JOIN_NOUNS = word_list("quality", "join_nouns")
_OF_JOIN = word_list("quality", "of_join")
_DRESSINGS = word_list("quality", "dressings")


@needs(kinds=["bulk"])
def bulk(desk: Desk, scene: Scene) -> None:
    """Find the bulk of the repair: 'not bulky', 'slim repair', 'bulky'."""
    if not (desk.repairable() or scene.setting.focus):
        return
    found = [m for m in scene.of("bulk") if scene.told(m.i) and not foreign(scene, m.i, m.j)]
    for mention in found:
        word = " ".join(scene.words(mention.i, mention.j))
        if _no_repair(desk, scene, mention, word) or only_spoken_of(scene, mention, word):
            continue
        if word == "bulk" and scene.next_word(mention.j) == ":" and any(m.i > mention.j for m in found):
            continue  # 'Bulk: acceptable, not bulky'
        answers, label = told_apart(desk, scene, mention)
        for told in answers:
            said = "present" if told.yes else "none"
            lay_behaviour(desk, scene, told.targets, "bulk", said, told.i, told.j, f"bulk {said}")
        value = None if label else _value_of_bulk(desk, scene, mention, word)
        if value is None or _lies_on_bone(scene, mention, word):
            continue
        if value == "none" and of_sheath_or_pulley(scene, mention.i):
            continue
        targets = behaving(desk, scene, mention.i, mention.j)
        if value == "none":
            settle_at_last(desk, scene, targets, "bulk", mention.i)
        lay_behaviour(desk, scene, targets, "bulk", value, mention.i, mention.j, f"bulk {value}")


def _no_repair(desk: Desk, scene: Scene, mention: Mention, word: str) -> bool:
    """Tell whether what is thick, slim or flat is no finished repair: a finger, a thread, a button, a dressing."""
    before, after = scene.word_before(mention.i), scene.next_word(mention.j)
    told_of_repair = names_repair(scene) or not scene.said.isdisjoint(_OF_REPAIRS)
    if word in _BULK_WORDS and not told_of_repair and not scene.of("gap", "test", "glide"):
        return True
    if word in _OF_JOIN and scene.said.isdisjoint(_JOIN_NOUNS):
        return True
    if word in _OF_JOIN and before in ("this", "such") and scene.of("tendon", "digit"):
        return True  # 'in this slender small finger FDP'
    if word.endswith("thick") and find_sizes(scene) and not names_repair(scene):
        return True  # 'a 3-0 was opened but was too thick'
    if word == "thicker" and _of_a_thread(scene, mention):
        return True
    if word == "lies flat" and before == "tendon":
        return True  # 'the button held, the tendon lies flat': in its bed, of its repair nothing is told
    if word.endswith("flat") and scene.words(*scene.part(mention.i))[:2] == ["the", "button"]:
        return True  # 'The button sat flat'
    if word == "bulk" and after == "of" and scene.said.isdisjoint(_JOIN_NOUNS):
        return True  # 'the bulk of the muscle'
    if after in _DRESSINGS or _closes_a_dressing(scene, mention):
        return True  # 'Dressing bulky.', 'Jelonet, bulky'
    return mention.value == "present" and not after_repair(desk, scene)  # 'the end thick and soft', not yet sewn


_OF_REPAIRS = frozenset(["join", "repair", "junction"])


def _value_of_bulk(desk: Desk, scene: Scene, mention: Mention, word: str) -> str | None:
    """Return whether a repair was bulky or not, as all the words around it say; None where bulk is only a reason."""
    value, answer = mention.value, scene.answer(mention.j)
    if value == "present" and (answer in NONE or (answer is None and _is_denied(desk, scene, mention))):
        if as_a_reason(scene, mention):
            return None  # 'A peripheral suture was not placed because of bulk'
        value = "none"
    if value == "none" and word.endswith("slim") and _slim_denied(scene, mention):
        value = "present"
    none = of_nobody(scene, mention) or said_to_be_none(scene, mention) or sought_in_vain(desk, scene, mention)
    if word == "neither bulky" or none:
        value = "none"  # 'neither of the two profundus sutures was bulky', 'none bulky'
    return "present" if value == "none" and but_for_some(scene, mention) else value


def _is_denied(desk: Desk, scene: Scene, mention: Mention) -> bool:
    if not scene.negated(mention.i, mention.j) or not_denied(desk, scene, mention):
        return False
    return not not_taken_away(scene, mention.i)


def _lies_on_bone(scene: Scene, mention: Mention, word: str) -> bool:
    """'The tendon lay flat on the bone', 'the edges were flat', 'bulky on bone': how it lies, and no bulk."""
    if scene.words(mention.j, mention.j + 2) == ["on", "bone"]:
        return True
    if not word.endswith("flat"):
        return False
    ends = not {"edges", "edge", "ends"}.isdisjoint(scene.words(*scene.part(mention.i)))
    return ends or scene.words(mention.j, mention.j + 3)[-1:] == ["bone"]


def _of_a_thread(scene: Scene, mention: Mention) -> bool:
    """'Nothing thicker would go in', 'no thicker needle': what there was no room for, not the finished repair."""
    lead, after = scene.word_before(mention.i), scene.next_word(mention.j)
    return (lead in ("nothing", "anything", "something") and after != "than") or after in _THREAD_NOUNS


_THREAD_NOUNS = frozenset(["suture", "sutures", "thread", "threads", "stitch", "needle", "material", "gauge", "nylon"])


def _closes_a_dressing(scene: Scene, mention: Mention) -> bool:
    """'Jelonet, gauze, bulky', 'wet-to-dry, bulky': a list of dressings, and no repair named in it."""
    first = scene.part(mention.i)[0]
    lead = scene.words(max(scene.sentence.i, first - _LIST_BEFORE), mention.i)
    return not scene.setting.groups and not _DRESSINGS.isdisjoint(lead)


_LIST_BEFORE = 6  # words


def _slim_denied(scene: Scene, mention: Mention) -> bool:
    """'I will not pretend that it is slim', 'nobody would say it is slim'."""
    return not _DENYING.isdisjoint(scene.words(scene.part(mention.i)[0], mention.i))


_DENYING = frozenset(["not", "never", "nobody", "hardly", "pretend", "cannot", "wouldn't", "can't"])
