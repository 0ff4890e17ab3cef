"""How the core holds: locking or grasping, where the words are said of the core."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.rules.sutures.roles import CORE, PERIPHERAL, TENDON, Anchor, role_of
from notereader.reader.rules.sutures.suture_owners import lay_suture
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_HOLDS_CORE_WORDS = word_list("sutures", "holds_core_words")
_LOCK_WORDS_WORDS = word_list("sutures", "lock_words_words")
_TELLING = word_list("sutures", "told_of_a_hold")

_ONE_SIDE = frozenset([("one", "side"), ("one", "end"), ("one", "stump")])
_OF_RECORDS = frozenset(["saved", "record", "form", "entry", "signed", "printed", "version", "document"])


@needs(kinds=["hold"])
def hold(desk: Desk, scene: Scene, found: list[Anchor]) -> None:
    """Find 'locking' and 'grasping' where they are said of the core."""
    stated = {m.value for m in scene.of("hold")}
    for mention in scene.of("hold"):
        if not scene.told(mention.i) or not _holds_core(desk, scene, mention, found) or _open_choice(scene, mention):
            continue
        if scene.negated(mention.i, mention.j, 3) and mention.value == "locking":
            continue
        if mention.value == "grasping" and scene.negated(mention.i, mention.j, 2):
            continue
        if _of_a_finger(scene, mention) or _put_right(scene, mention) or _lost(scene, mention):
            continue
        if (_rather_than(scene, mention.i) and len(stated) > 1) or scene.next_word(mention.j) == "?":
            continue
        if any(m.i <= mention.i < m.j for m in scene.of("pattern")) and scene.page.words[mention.i] == "locks":
            continue  # 'a 6-0 that runs round and locks'
        answer = _answered(scene, mention)
        if answer == "no" or _locked_grasp(scene, mention):
            continue
        if answer != "yes" and mention.i == scene.sentence.i and scene.next_word(mention.j) == ":":
            continue  # 'Locked: registrar' closes a record
        if answer != "yes" and mention.j < scene.sentence.j and scene.page.standing[mention.j] == "unticked":
            continue  # 'Locks   [ ] locking   [ ] grasping'
        behind = scene.words(mention.j, min(mention.j + 7, scene.sentence.j))
        if mention.value == "locking" and "only" in behind and not _ONE_SIDE.isdisjoint(pairwise(behind)):
            continue  # 'a locked stitch on one side only'
        if mention.value == "locking" and answer != "yes" and _not_of_suture(scene, mention, found):
            continue  # 'while fitting a lock', 'came out again before it was locked'
        if scene.word_before(mention.i) == "[" and scene.next_word(mention.j) == "]":
            continue  # '[ Locked ]' closes a record
        if mention.value == "locking" and not _OF_RECORDS.isdisjoint(scene.said) and not found:
            continue  # '[ Saved 18:05 ]  [ Locked ]'
        lay_suture(desk, scene, mention.i, mention.j, "hold", mention.value, f"{mention.value} hold stated")


def _answered(scene: Scene, mention: Mention) -> str:
    """'Locking: yes', 'Locking   [x] yes  [ ] no': the answer a label of this kind was given, or ''."""
    opens = mention.i == scene.sentence.i or scene.page.breaks[mention.i] >= Break.COLUMN
    if not opens or mention.value != "locking":
        return ""
    last = min(mention.j + _LONGEST_ANSWER, scene.sentence.j)
    behind = [k for k in range(mention.j, last) if scene.page.words[k] not in _BOXES]
    told = [scene.page.words[k] for k in behind if scene.told(k)][:1]
    return _ANSWERS.get(told[0], "") if told else ""


_LONGEST_ANSWER = 9  # words, boxes and their marks counted
_BOXES = frozenset(["[", "]", "(", ")", "x", ":", "?", "/"])
_ANSWERS = {"yes": "yes", "y": "yes", "no": "no", "n": "no"}


def _locked_grasp(scene: Scene, mention: Mention) -> bool:
    """'Each grasp was locked with a loop': the noun for what the thread takes, and it locks."""
    noun = scene.words(mention.i, mention.j) in (["grasp"], ["grasps"])
    return noun and not {"locked", "locking"}.isdisjoint(scene.words(mention.j, mention.j + 4))


def _put_right(scene: Scene, mention: Mention) -> bool:
    """'lock the bites er no not locked just grasping': a speaker takes the lock back and says what it is instead."""
    behind = [m for m in scene.of("hold") if mention.value == "locking" and m.i >= mention.j and m.value == "grasping"]
    lead = (scene.words(max(mention.j, m.i - 2), m.i) for m in behind if scene.page.words[m.i] == "not")
    return any("no" in words for words in lead)


def _lost(scene: Scene, mention: Mention) -> bool:
    """'The locking loops had straightened and were not made again': locks that are there no more."""
    behind = scene.words(mention.j, min(mention.j + _SOON_LOST, scene.part(mention.i)[1]))
    gone = next((n for n, word in enumerate(behind) if word in _GONE), -1)
    return mention.value == "locking" and gone >= 0 and _KEPT.isdisjoint(behind[: gone + 1])


_SOON_LOST = 10  # words: 'loops of the first suture were'
_GONE = word_list("sutures", "locks_gone")
_KEPT = frozenset(["not", "no", "none", "never", "without", "one", "until", "if"])


def _of_a_finger(scene: Scene, mention: Mention) -> bool:
    """'The finger was locking before', 'a grasping hand': how a hand behaves, and not its suture."""
    lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    behaves = len(lead) > 1 and lead[-1] in _BEHAVING and not _OF_HAND.isdisjoint(lead[:-1])
    return behaves or scene.next_word(mention.j) in _OF_HAND


_BEHAVING = frozenset(["was", "is", "been", "kept", "started", "keeps", "began"])
_OF_HAND = frozenset(["finger", "fingers", "thumb", "digit", "joint", "joints", "hand"])


def _not_of_suture(scene: Scene, mention: Mention, found: list[Anchor]) -> bool:
    """Tell whether a bare 'lock' or 'locked' stands among no words of a suture, or tells of what did not come to be."""
    if scene.words(mention.i - 3, mention.i) in (["before", "it", "was"], ["before", "they", "were"]):
        return True
    bare = scene.words(mention.i, mention.j) in (["lock"], ["locked"], ["locks"])
    if bare and scene.next_word(mention.j) == "of" and any(m.i == mention.j + 1 for m in scene.of("material")):
        return True  # 'overlock of polypropylene 6-0': what is locked is a thread told by itself
    return bare and not found and _TELLING.isdisjoint(scene.said) and not scene.of("material", "looped")


def _open_choice(scene: Scene, mention: Mention) -> bool:
    """'Locking: Y / N' was never answered."""
    choice = [w for w in scene.words(mention.j, min(mention.j + 6, scene.sentence.j)) if w not in (":", "?", ".")]
    return choice[:3] in (["y", "/", "n"], ["yes", "/", "no"]) and len(choice) <= 3


def _rather_than(scene: Scene, i: int) -> bool:
    before = scene.words(max(scene.sentence.i, i - 3), i)
    return any(w in ("than", "not", "of") for w in before) and (
        "rather" in before or "not" in before or "instead" in before
    )


def _holds_core(desk: Desk, scene: Scene, mention: Mention, found: list[Anchor]) -> bool:
    """'locking' said of plates, of a finger that locks, or only of the peripheral suture says nothing of the core."""
    if "core" in scene.words(mention.i, mention.j):
        return True
    if scene.next_word(mention.j) in ("forceps", "instrument") or scene.word_before(mention.i) in (
        "can",
        "to",
        "could",
    ):
        return False
    if scene.words(mention.j, mention.j + 2) == ["was", "attempted"]:
        return False
    if scene.word_before(mention.i) in ("finger", "thumb", "digit"):
        return False
    if (
        scene.next_word(mention.j) in _HOLDS_CORE_WORDS
        and mention.j - mention.i == 1  # not 'locking loops of 2 mm'
        and mention.value == "locking"
        and not any(a.role == CORE for a in found)
    ):
        return False
    if any(m.kind == "structure" for m in scene.mentions) and not any(a.role == CORE for a in found):
        return False
    role = role_of(scene, mention.i, mention.j, [a for a in found if not (a.i <= mention.i < a.j)])
    if role in (PERIPHERAL, "pattern") and scene.sentence.section != CORE:
        first, last = scene.part(mention.i)
        in_part = [a for a in found if first <= a.i < last]
        return any(a.role == CORE for a in in_part) and not any(a.role == PERIPHERAL for a in in_part)
    if role in (CORE, TENDON):
        return True
    if role:
        return False
    return desk.topic in (CORE, TENDON) or (desk.topic == PERIPHERAL and bool(_lock_words(scene)))


def _lock_words(scene: Scene) -> bool:
    return any(w in _LOCK_WORDS_WORDS for w in scene.words(scene.sentence.i, scene.sentence.j))
