"""Phrases that say how much tendon a core holds whatever else the sentence tells: 'bite from cut end: 8 mm'."""

from notereader.reader.page import Break, Quantity
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_NOUNS = frozenset(["bite", "bites", "purchase", "purch", "grip", "hold"])
_LABEL = word_list("sutures", "purchase_label")
_PLACES = word_list("sutures", "purchase_places")
_WOVEN = word_list("sutures", "woven")
_TENDON = frozenset(["tendon", "stump", "stumps", "fdp", "fds", "fpl", "profundus", "end", "ends"])
_EACH = frozenset(["each", "either", "both"])
_SIDES = frozenset(["side", "sides", "end", "ends", "stump", "stumps", "way"])
_FEW = 5  # words between a weave and the length it runs over
LEAST, MOST = 5, 25  # mm


def plainly_taken(scene: Scene, q: Quantity) -> bool:
    """Tell whether a length is named as tendon held, by its label or by the words around it."""
    if q.low is None or q.high is None or not LEAST <= q.low <= q.high <= MOST:
        return False
    if scene.of("pulley", "pulleys", "anynerve", "sided", "fracture"):
        return False
    return labelled(scene, q) or (q.unit == "mm" and (_in_words(scene, q) or _along(scene, q)))


def labelled(scene: Scene, q: Quantity) -> bool:
    """'Bite from cut end: 8 mm', 'FDP purchase (mm) ... 7', 'Suture hold 1 cm each side': a label begins a line.

    So does one behind a stop: 'Stitch: Becker; bite (mm): 8; knots: outside'.
    """
    named = {k for g in scene.setting.groups for k in range(g.i, g.j)}
    words = scene.page.words
    begin = next((k + 1 for k in range(q.i - 1, scene.sentence.i - 1, -1) if words[k] == ";"), scene.sentence.i)
    lead = [words[k] for k in range(begin, q.i) if k not in named]
    lead = lead[1:] if lead[:1] in (["core"], ["suture"]) else lead
    if _length_held(lead):
        return q.unit == "mm"
    if not lead or lead[0] not in _NOUNS or not all(w in _LABEL or w.isdecimal() or not w.strip(".") for w in lead[1:]):
        return False
    sided = scene.next_word(q.j) in _EACH or lead[0] not in ("hold", "grip")  # 'Hold 10 minutes'
    return sided and (q.unit == "mm" or (not q.unit and _closes(scene, q.j)))


def _length_held(lead: list[str]) -> bool:
    """'Length held: 10 mm', 'Tendon taken each side: 9 mm': a label without the noun."""
    label = set(lead[:-1])
    plain = label <= _HELD | _STUFF | _LABEL and bool(label & _HELD and label & _STUFF)
    return plain and lead[-1:] in ([":"], ["="], ["|"])


_HELD = frozenset(["held", "taken", "grasped", "gripped", "caught"])
_STUFF = frozenset(["tendon", "length", "stump", "mm"])


def _closes(scene: Scene, k: int) -> bool:
    if k < scene.sentence.j and scene.page.breaks[k] >= Break.LINE:
        return True
    return scene.next_word(k) in ("", ".", ",", ";", ")", "(", "/") or scene.next_word(k) in _EACH


def _in_words(scene: Scene, q: Quantity) -> bool:
    """'A centimetre of hold', 'is grasped 8 mm from the stump', 'took 10 mm on the near side', '1 cm away from it'."""
    lead, after = scene.words(max(scene.sentence.i, q.i - 4), q.i), scene.words(q.j, min(q.j + 5, scene.sentence.j))
    if after[:1] == ["of"] and after[1:2] != [] and after[1] in _NOUNS:
        return True
    from_end = after[:1] in (["from"], ["away"], ["off"]) and not _PLACES.isdisjoint(after)
    held = bool({"grasped", "gripped", "grasping", "gripping", "locks", "bite", "bites", "hold"}.intersection(lead))
    taken = lead[-1:] in (["took"], ["takes"]) or lead[-2:-1] in (["took"], ["takes"])
    sides = after[:1] in (["of"], ["on"], ["in"]) and not _SIDES.isdisjoint(after[1:4]) and not _OFF.intersection(after)
    return (from_end and held) or (taken and sides)


_OFF = frozenset(["off", "away", "from"])


def _along(scene: Scene, q: Quantity) -> bool:
    """'Woven into the terminal 10 mm of the FDP', 'run up the tendon 10 mm', 'criss-cross in the tendon over 1 cm'."""
    if _WOVEN.isdisjoint(scene.words(max(scene.sentence.i, q.i - 3 * _FEW), min(q.j + _FEW, scene.sentence.j))):
        return False
    lead, after = scene.words(max(scene.sentence.i, q.i - _FEW), q.i), scene.words(q.j, q.j + 4)
    last = lead[-1:] in (["terminal"], ["last"], ["distal"]) and after[:1] == ["of"]
    over = lead[-1:] in (["over"], ["for"])
    up = "up" in lead and not _TENDON.isdisjoint(lead)
    of_tendon = after[:2] == ["of", "tendon"] and "up" in lead
    return (last and not _TENDON.isdisjoint(after)) or of_tendon or up or (over and not _TENDON.isdisjoint(lead))
