"""Nerves and arteries named by others told before: 'the artery beside it', 'the remaining digital nerves'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.rules.structures.injury_words import words_said
from notereader.reader.rules.structures.part_digits import PAIRED, Part, digits_of, told_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_COMPANIONS = word_list("structures", "companions")
_BESIDE = word_list("structures", "beside")
_IT = frozenset(["it", "them", "this", "that", "which", "these", "each"])
_REST = frozenset(["other", "remaining", "others"])
_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5, "six": 6, "6": 6, "eight": 8}
_BOTH_SIDES = ("radial", "ulnar")
_LEAD_NOUNS = frozenset(["side", "aspect", "border"])


def beside(desk: Desk, scene: Scene, m: Mention, structure: str, before: list[Part]) -> list[Part]:
    """'the artery next to it', 'their companion arteries': on the side and in the digit of the nerves named last."""
    if not _is_beside(scene, m):
        return []
    near = [(p.sides, digits_of(desk, scene, p)) for p in before if p.structure in PAIRED and p.structure != structure]
    if not near and scene.sentence.i == desk.last_parts_end:
        near = [(sides, digits) for n, sides, digits in desk.last_parts if n in PAIRED and n != structure]
    if not scene.words(m.i, m.j)[-1].endswith("s"):
        near = near[-1:]
    return [Part(m.i, m.j, structure, sides, digits=digits) for sides, digits in near]


def only_told_by(scene: Scene, m: Mention) -> bool:
    """'The arteries accompanying these two nerves': the nerves only say which arteries are meant."""
    before = scene.words(max(scene.sentence.i, m.i - 4), m.i)
    while before and before[-1] in ("the", "these", "those", "this", "that", "two", "three", "both", "to"):
        before = before[:-1]
    arteries = [a for a in scene.of("anyartery", "structure") if a.j == m.i - 1 or 0 <= m.i - a.j <= 4]
    return bool(before) and before[-1] in _BESIDE - {"with"} and bool(arteries)


def _is_beside(scene: Scene, m: Mention) -> bool:
    if scene.word_before(m.i) in _COMPANIONS:
        return "both" not in scene.words(max(scene.sentence.i, m.i - 2), m.i)  # 'and both its nerves'
    after = scene.words(m.j, min(m.j + 4, scene.sentence.j))
    while after and after[0] in ("that", "which", "right", "just", "close", "immediately"):
        after = after[1:]
    if after[:1] == ["alongside"]:
        return True
    return len(after) > 1 and after[0] in _BESIDE and (after[1] in _IT or (after[1] == "to" and after[2:3] in _TO_IT))


_TO_IT = (["it"], ["them"], ["this"], ["which"])


def rest_of(desk: Desk, scene: Scene, m: Mention, structure: str, before: list[Part]) -> list[Part] | None:
    """'the remaining three digital nerves', 'all four digital arteries', 'the other nerve of each finger'.

    RETURNS the sides of each digit that were not told hurt; none where the count does not agree with what was told,
    and None where the words do not speak of the rest.
    """
    ahead = scene.words(max(scene.sentence.i, m.i - 4), m.i)
    cut = max((k for k, w in enumerate(ahead) if w in (",", ";", ":", ".", "and")), default=-1)
    ahead = ahead[cut + 1 :]
    others = bool(_REST & set(ahead))
    count = next((_COUNTS[w] for w in ahead if w in _COUNTS), 0)
    every = "all" in ahead and count > 2
    if not others and not every:
        return None
    digits = _scope(desk, scene, m, structure)
    slots = [(d, s) for d in digits for s in _BOTH_SIDES]
    if others:
        own = [p for p in before if p.structure == structure]
        hurt = _hurt(desk, structure) | {(d, s) for p in own for d in digits_of(desk, scene, p) for s in p.sides}
        if not hurt & set(slots):
            return None
        slots = [slot for slot in slots if slot not in hurt]
    if count and len(slots) != count:
        slots = [slot for slot in slots if slot not in _told(desk, structure)]
    last = next((w for w in reversed(scene.words(m.i, m.j)) if w != "."), "")
    plural = last.endswith("s") or last in ("nn", "nn.", "aa", "aa.")
    if (count and len(slots) != count) or (not plural and len({d for d, _ in slots}) != len(slots)):
        return []
    return [Part(m.i, m.j, structure, (s,), digits=(d,)) for d, s in slots]


def all_the_rest(desk: Desk, scene: Scene, m: Mention, rest: list[Part]) -> list[Part]:
    """'The ulnar nerve is bruised, the remaining neurovascular structures are unharmed': both arteries too."""
    unsaid = sorted(PAIRED - {p.structure for p in rest})
    if len(unsaid) != 1 or scene.page.words[m.j - 1] != "structures" or _told(desk, unsaid[0]):
        return []
    return [Part(m.i, m.j, unsaid[0], _BOTH_SIDES, digits=(d,)) for d in dict.fromkeys(p.digits[0] for p in rest)]


def counted_ones(desk: Desk, scene: Scene, m: Mention, structure: str) -> list[Part] | None:
    """'the two nerves were repaired', 'the divided nerves': those told cut, where they are as many.

    RETURNS None where the nerves are not told by their number or their cut.
    """
    ahead = scene.words(max(scene.sentence.i, m.i - 4), m.i)
    cut = max((k for k, w in enumerate(ahead) if w in (",", ";", ":", ".", "and", "of")), default=-1)
    count = next((_COUNTS[w] for w in ahead[cut + 1 :] if w in _COUNTS), 0)
    if not count and _CUT.isdisjoint(ahead[cut + 1 :]):
        return None
    told = [f for f in told_of(desk, structure) if f.value in ("complete", "partial") and f.entry[2]]
    slots = list(dict.fromkeys((f.entry[0], f.entry[2]) for f in told))
    if count and len(slots) != count:
        return [] if scene.header or slots else None
    return [Part(m.i, m.j, structure, (s,), digits=(d,)) for d, s in slots]


_CUT = frozenset(["divided", "cut", "severed", "lacerated", "transected"])


def all_whole(desk: Desk, scene: Scene, m: Mention, structure: str) -> bool:
    """'Nerves intact', 'The vessels were all fine': both of the one finger spoken of, where none was told hurt."""
    digits = scene.setting.digits
    if len(digits) != 1 or desk.at_wrist:
        return False
    k = m.i - 1
    while k >= scene.sentence.i and (k in scene.page.digit_words or scene.page.words[k] in _OPENERS):
        k -= 1
    begins = k < scene.sentence.i or scene.page.words[k] in _CLAUSE_ENDS or scene.page.breaks[k + 1] >= Break.COLUMN
    said = [w for w in words_said(scene) if w.i >= m.j and w.kind in ("extent", "nervestate", "unbroken")]
    whole = bool(said) and said[0].value == "intact" and all(w in _STATE_LEADS for w in scene.words(m.j, said[0].i))
    elsewhere = not _FINGERS.isdisjoint(scene.words(m.j, scene.sentence.j))  # 'all fine on small'
    hurt = elsewhere or any(f.entry[0] in digits and f.value != "intact" for f in told_of(desk, structure))
    return begins and whole and not hurt


_OPENERS = frozenset(["the", "all", "-", "*", "finger", "its", "digital"])
_CLAUSE_ENDS = frozenset([".", ";", ",", ":", "|", "and", ")"])
_FINGERS = frozenset(["thumb", "index", "middle", "long", "ring", "small", "little"])
_STATE_LEADS = word_list("structures", "state_leads")


def _scope(desk: Desk, scene: Scene, m: Mention, structure: str) -> tuple[str | None, ...]:
    """Return the digits whose nerves are meant: those named behind, else all that the note works on."""
    behind = [g for g in scene.setting.groups if 0 <= g.i - m.j <= 5 and (g.digits or g.every)]
    own = digits_of(desk, scene, Part(m.i, m.j, structure, ())) if behind else ()
    return own or scene.every_digit or scene.setting.digits


def _hurt(desk: Desk, structure: str) -> set[tuple[str | None, str | None]]:
    return {(f.entry[0], f.entry[2]) for f in told_of(desk, structure) if f.value != "intact"}


def _told(desk: Desk, structure: str) -> set[tuple[str | None, str | None]]:
    return {(f.entry[0], f.entry[2]) for f in told_of(desk, structure)}


def leading_side(scene: Scene, m: Mention) -> str | None:
    """'On the ulnar side the nerve and the artery were cut', 'Radial: nerve fine': the side its clause begins with."""
    first = scene.sentence.i
    led = [b for b in scene.of("border", "sided") if b.j <= m.i]
    if not led or not _leads(scene, led[-1], first):
        return None
    return led[-1].value.split()[0]


def _leads(scene: Scene, b: Mention, first: int) -> bool:
    page = scene.page
    k = b.i - 1
    while k >= first and (k in page.digit_words or page.words[k] in _LEAD_FILLER):
        k -= 1
    if k >= first and page.words[k] not in (";", ":", "."):
        return False
    last, after = page.words[b.j - 1], scene.next_word(b.j)
    if b.kind == "sided":
        return b.value.endswith("bundle") and after in (":", "-")
    return last in _LEAD_NOUNS or after in (":", "structures")


_LEAD_FILLER = frozenset(["on", "the", "both", "-", "*", "finger", "its", ",", "in", "and", "(", ")"])


def is_lead(scene: Scene, m: Mention) -> bool:
    """'Ulnar bundle: nerve divided, artery intact': a bundle that only heads what is told of its parts."""
    if not _leads(scene, m, scene.sentence.i):
        return False
    ahead = scene.words(m.j + 1, min(m.j + 4, scene.sentence.j))
    return bool({"nerve", "artery", "n", "a"} & set(ahead))
