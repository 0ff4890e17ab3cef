"""What words say of a nerve, an artery or another structure: how much of it was cut and what was done."""

from notereader.reader.page import Mention
from notereader.reader.rules.cuts.nearly_through import spares_fibres
from notereader.reader.rules.pulleys.attach import is_denied
from notereader.reader.rules.structures.counted_fascicles import counted_fascicles
from notereader.reader.scene import Scene
from notereader.reader.standing.unachieved import gives_up
from notereader.vocabulary.wordlists import word_list

# A bruise or a cut beats 'intact'.
EXTENTS = ("contused", "partial", "complete", "intact")
# Of several deeds in one sentence the first of these tells most: a graft is sewn in, a tied vessel was cut.
TELLS_MOST = ("grafted", "conduit", "ligated", "fixed", "repaired", "left")
_TREATMENTS = {name: name for name in TELLS_MOST} | {"reinserted": "repaired"}
_NO_EXTENT = frozenset(["through", "out", "off"])
# 'all divided', 'both repaired' are one phrase of quantity; what they tell is in their last word.
_ALL_TOLD = {"divided": ("extent", "complete"), "repaired": ("deed", "repaired"), "sutured": ("deed", "repaired")}
# 'cut back to sound fascicles' is no injury.
_NOT_CUT = frozenset(["back", "to", "down", "away", "short", "flush", "open"])
_CUTTING = word_list("injuries", "cutting")
_HARM = word_list("injuries", "harm")
_FINE = frozenset(["7-0", "8-0", "9-0", "10-0", "11-0"])
_FINE_FIGURES = frozenset(["7", "8", "9", "10", "11"])
_FINE_WORDS = frozenset(["seven", "eight", "nine", "ten"])
_AFTER_LEFT = frozenset(["", ".", ",", ";", ")", "alone", "as", "it", "to", "unrepaired", "and", "be", "for"])
_LIGATABLE = frozenset(["digital artery", "radial artery", "ulnar artery"])
_FIXABLE = frozenset(["joint", "volar plate", "collateral ligament"])


def words_said(scene: Scene) -> list[Mention]:
    """Return the words of extent and treatment of a sentence; of overlapping ones of a kind the longest."""
    found = [*_kept(scene, ("extent", "nervestate")), *_kept(scene, ("mending", "deed"))]
    found += [Mention("extent", "partial", i, j) for i, j in _shares(scene)]
    found += [Mention("unhurt", "intact", i, j) for i, j in _no_injury(scene)]
    found += [Mention("cut", value, i, j) for value, i, j in _hurt(scene)]
    found += [Mention("unbroken", "intact", k, k + 2) for k in _in_continuity(scene)]
    for m in scene.of("quantifier"):
        last = scene.page.words[m.j - 1]
        if m.j - m.i > 1 and last in _ALL_TOLD and scene.told(m.i):
            found.append(Mention(*_ALL_TOLD[last], m.j - 1, m.j))
    return sorted(found, key=lambda m: m.i)


def _kept(scene: Scene, kinds: tuple[str, ...]) -> list[Mention]:
    taken: set[int] = set()
    kept: list[Mention] = []
    for m in sorted(scene.of(*kinds), key=lambda m: (m.i - m.j, kinds.index(m.kind))):
        if scene.next_word(m.j) == "?" and scene.next_word(m.j + 1) not in ("yes", "y"):
            continue  # 'Both nerves OK? Radial: intact.'
        if m.value == "conduit" and not _STILL_THERE.isdisjoint(scene.words(max(scene.sentence.i, m.i - 2), m.i)):
            continue  # 'a third cut, fascicles still bridging'
        if m.value == "contused" and scene.next_word(m.j) in _OF_ITS_ENDS:
            continue  # 'a defect once its bruised fascicles were cut away'
        if scene.words(m.i, m.j) in _RUNS and _leads_to_thread(scene, m.j):
            continue  # 'UDN: running 9-0 nylon'
        if scene.told(m.i) and not any(k in taken for k in range(m.i, m.j)):
            taken.update(range(m.i, m.j))
            kept.append(m)
    return kept


def _leads_to_thread(scene: Scene, k: int) -> bool:
    """Tell whether a size, a material or the noun of a suture stands right behind: 'running 9-0'."""
    behind = scene.words(k, min(k + 2, scene.sentence.j))
    sized = any(w.endswith("-0") or w in _THREADS for w in behind)
    return sized or any(k <= m.i <= k + 1 for m in scene.of("material"))


_RUNS = (["running"], ["continuous"])
_THREADS = frozenset(["suture", "sutures", "stitch", "stitches", "thread"])
_OF_ITS_ENDS = frozenset(["fascicles", "fascicle", "ends", "end", "stumps", "stump"])
_STILL_THERE = frozenset(["still", "fascicle", "fascicles", "fibres", "fibers", "strands", "bundles", "epineurium"])


def _hurt(scene: Scene) -> list[tuple[str, int, int]]:
    """Return 'cut' said of a nerve or a vessel, which means cut through unless a share is told, and 'partly torn'."""
    half = ("partly", "partially", "incompletely")
    found = [("partial", m.i - 1, m.j) for m in scene.of("hurt") if scene.word_before(m.i) in half]
    told = {k for m in scene.of("extent", "neutral") for k in range(m.i, m.j)} | {i for _, i, _ in found}
    for k in range(scene.sentence.i, scene.sentence.j):
        cut = scene.page.words[k] == "cut" and k not in told and k - 1 not in told
        noun = scene.word_before(k) in _ARTICLES and scene.next_word(k + 1) not in _NERVES  # 'away from the cut'
        if cut and not noun and not _shares(scene) and scene.next_word(k + 1) not in _NOT_CUT:
            found.append(("complete", k, k + 1))
    return [f for f in found if scene.told(f[1])]


_ARTICLES = frozenset(["the", "a", "this", "that", "skin"])
_NERVES = frozenset(["nerve", "nerves", "artery", "arteries", "digital", "one", "ones"])


def _shares(scene: Scene) -> list[tuple[int, int]]:
    """Return the shares of a cut: 'one third through', 'cut for 30 %'."""
    found = [(m.i, m.j) for m in scene.of("fraction")]
    counted = counted_fascicles(scene)
    found += [(q.i, q.j) for q in scene.quantities if q.unit == "%" and q.high is not None and q.high < 100]
    return [*counted, *((i, j) for i, j in found if scene.told(i) and _of_a_cut(scene, i, j))]


def _of_a_cut(scene: Scene, i: int, j: int) -> bool:
    behind = scene.words(j, min(j + 3, scene.sentence.j))
    around = [*scene.words(max(scene.sentence.i, i - 3), i), *behind]
    if not _FASCICLES.isdisjoint(behind[:3]):
        return True  # 'median nerve: two thirds of the fascicles, the rest holding'
    return bool(_CUTTING & set(around))


_FASCICLES = frozenset(["fascicles", "fasciculi"])


def _no_injury(scene: Scene) -> list[tuple[int, int]]:
    """Return 'no injury to', 'neither ... was injured'."""
    words = scene.page.words
    found = [(m.i, m.j) for m in scene.of("hurt") if _denied_of_both(scene, m)]
    for k in range(scene.sentence.i, scene.sentence.j - 2):
        alone = words[k] == "without" and words[k + 2] in (".", ",", ";", "and")
        if words[k] in ("no", "without") and words[k + 1] in _HARM and (alone or words[k + 2] in ("to", "of", "in")):
            found.append((k, k + 2 if alone else k + 3))
    found += [(k, k + 4) for k in range(scene.sentence.i, scene.sentence.j) if words[k : k + 4] == _NEITHER_TOUCHED]
    for k in range(scene.sentence.i, scene.sentence.j - 1):
        if words[k] == "none" and words[k + 1] in _HURT:  # 'nerves seen on both sides, none cut'
            found.append((k, k + 2))
        answer = _answer(scene, k + 1) if words[k] in _HARM else None
        if answer is not None:  # 'Nerve injury: [ ] radial [x] none'
            found.append((answer, answer + 1))
    return [(i, j) for i, j in found if scene.told(i)]


_NEITHER_TOUCHED = ["neither", "had", "been", "touched"]  # by the wound, where 'was touched' may be the surgeon's doing
_HURT = frozenset(["cut", "divided", "injured", "damaged", "hurt", "lacerated", "severed", "harmed"])


def _answer(scene: Scene, k: int) -> int | None:
    """Return the word of the answer 'none' behind a label that ends before word k, or None."""
    words = scene.page.words
    if k >= scene.sentence.j or (words[k] not in (":", "=") and not words[k].startswith("..")):
        return None
    rest = [m for m in range(k, scene.sentence.j) if scene.told(m) and words[m].isalpha() and words[m] != "x"]
    return rest[0] if rest and words[rest[0]] in ("none", "nil", "no") and len(rest) == 1 else None


def _denied_of_both(scene: Scene, m: Mention) -> bool:
    return "neither" in scene.words(scene.sentence.i, m.i) and is_denied(scene, m, _FAR)


_FAR = 9  # words: 'neither nerve of the ring finger had been harmed'


def _in_continuity(scene: Scene) -> list[int]:
    pairs = range(scene.sentence.i, scene.sentence.j - 1)
    return [k for k in pairs if scene.words(k, k + 2) == ["in", "continuity"] and scene.told(k)]


# --- extent


_GRAZED = frozenset(["scuff", "graze"])


def extent_said(scene: Scene, structure: str, m: Mention) -> str:
    """Return the extent a word tells, or ''; of a denied cut only 'neither was cut' tells that both are intact."""
    if m.value == "complete" and m.j - m.i == 1 and scene.answer(m.j) in ("none", "nil", "no"):
        return "intact"  # 'Digital nerve cut: [ ] radial [ ] ulnar [x] nil'
    if m.value == "complete" and scene.next_word(m.j) in _PRESERVED:
        return "intact"  # 'nerve and artery complete preserved'
    if m.kind == "cut" and m.value == "complete" and structure.split()[-1] not in ("nerve", "artery", "branch"):
        return ""
    if m.kind == "unhurt" or (m.kind == "unbroken" and not is_denied(scene, m, 3)):
        return "intact"
    if m.kind not in ("extent", "nervestate", "cut") or m.value not in EXTENTS:
        return ""
    if m.value == "contused" and _of_its_ends(scene, m):
        return ""
    word = " ".join(scene.words(m.i, m.j))
    if not _GRAZED.isdisjoint(scene.words(m.i, m.j)):
        return "contused"  # 'a scuff only' leaves a tendon whole; a nerve it has bruised
    if word.startswith("all ") and scene.word_before(m.i) in _LOOKED:
        return ""  # 'fine, I saw all of it'
    if structure in _FIXABLE and "off" in scene.words(m.i, m.j + 1):
        return ""  # a plate torn off its bone
    if structure in _FIXABLE and m.value == "contused" and "stretched" in word:
        return ""  # 'the stretched volar plate', which is slack and not bruised
    if word == "good" and scene.next_word(m.j).isalpha() and scene.next_word(m.j) not in _JOINS_STATE:
        return ""  # 'end to end 8-0, good flow', 'good match', 'good Allen test'
    if word in _NO_EXTENT and not (word == "through" and scene.next_word(m.j) in ("", ",", ".", ";", ")")):
        return ""
    if is_denied(scene, m, 3) and not word.startswith(("not", "no ", "un", "without")):
        return "intact" if _denied_of_both(scene, m) and m.value in ("complete", "partial") else ""
    if m.value == "complete" and spares_fibres(scene, m.j):
        return "partial"
    return m.value


def _of_its_ends(scene: Scene, m: Mention) -> bool:
    """'Divided and crushed at both ends', 'cut, the stumps were bruised': the ends of what was cut."""
    lead = scene.words(max(scene.sentence.i, m.i - _NEAR_END), m.i)
    behind = scene.words(m.j, min(m.j + _NEAR_END, scene.sentence.j))
    return not _END_WORDS.isdisjoint(lead) or (behind[:1] == ["at"] and not _END_WORDS.isdisjoint(behind))


_JOINS_STATE = frozenset(
    ["and", "but", "too", "throughout", "also", "as", "all", "in", "on", "both", "there", "though"]
)
_NEAR_END = 3  # words
_END_WORDS = frozenset(["end", "ends", "stump", "stumps"])
_PRESERVED = frozenset(["preserved", "intact", "spared", "conserved"])
_LOOKED = frozenset(["saw", "seen", "see", "viewed", "inspected", "followed", "traced"])


def only_a_share(scene: Scene, i: int) -> bool:
    """'The radial half of the median nerve was divided', '40 % of the nerve was cut', 'RDN: half of it gone'."""
    before = scene.words(max(scene.sentence.i, i - 4), i)
    while before and before[-1] in ("the", "a", "its"):
        before = before[:-1]
    if len(before) > 1 and before[-1] == "of" and before[-2] in _SHARES:
        return True
    gone = next((k for k in range(i, scene.sentence.j) if scene.page.words[k] in _GONE), i)
    lead = [w for w in scene.words(max(i, gone - _SHARE_NEAR), gone) if w not in ("was", "is")]
    return gone > i and not _SHARES.isdisjoint(lead[-3:-2] if lead[-2:] == ["of", "it"] else lead[-1:])


_GONE = frozenset(["gone", "missing"])
_SHARE_NEAR = 5  # words: 'half of it was gone'


_SHARES = word_list("injuries", "shares")


# --- treatment


def deed_said(scene: Scene, structure: str, m: Mention) -> str:
    """Return what a word says was done to a structure, or ''."""
    if m.kind not in ("deed", "mending") or m.value not in _TREATMENTS:
        return ""
    word = " ".join(scene.words(m.i, m.j))
    value = _TREATMENTS[m.value]
    if not _possible(structure, value) or _no_deed(scene, m, value, word):
        return ""
    if word.startswith(("not", "no ", "un", "nothing", "without")):
        return value
    after = scene.words(m.j, min(m.j + 2, scene.sentence.j))
    if (
        is_denied(scene, m, 1 if value == "left" else 3)
        or after in (["was", "not"], ["were", "not"])
        or after[:1] in (["omitted"], ["deferred"])
        or _given_up(scene, m.j)
    ):
        return "left" if value == "repaired" else ""
    return value


def _given_up(scene: Scene, first: int) -> bool:
    """'Repair of the ulnar digital nerve was dispensed with', 'UDN repair not carried out': the deed before a word."""
    words = scene.page.words
    last = scene.sentence.j
    end = next((k for k in range(first, last) if words[k] in (",", ";", ".", "and", "but")), last)
    return any(gives_up(scene.page, k, last) for k in range(first, end))


def _possible(structure: str, value: str) -> bool:
    """Tell whether that can be done to such a structure: only vessels are tied, only plates and the like fixed."""
    return structure in {"fixed": _FIXABLE, "ligated": _LIGATABLE}.get(value, frozenset([structure]))


def _no_deed(scene: Scene, m: Mention, value: str, word: str) -> bool:
    """Tell whether a word is no deed here: 'left' before a noun, 'sutures' as things."""
    if value == "left" and word in ("left", "was left", "were left"):
        return scene.next_word(m.j) not in _AFTER_LEFT
    if word in ("repair", "repairs") and _held_since(scene, m):
        return True
    if word in ("repair", "repairs") and scene.next_word(m.j) != "of":
        return scene.word_before(m.i) in ("both", "the", "each", "all", "these", "two", "either", "this", "three")
    return word in ("suture", "sutures") and not scene.header and scene.next_word(m.j) not in ("of", "to")


def _held_since(scene: Scene, m: Mention) -> bool:
    """'Ulnar nerve repair in continuity', 'the nerve repair was intact': a repair found, of an earlier operation."""
    k = m.j + (scene.next_word(m.j) in ("was", "were", "is", "still", "remained"))
    return scene.next_word(k) in ("intact", "sound", "whole") or scene.words(k, k + 2) == ["in", "continuity"]


def fine_suture_at(scene: Scene, structure: str, i: int, j: int, high: int) -> int | None:
    """Return the word of a fine suture right beside a nerve or an artery in words i to j: 'RDN next, 9-0 nylon'."""
    if structure.split()[-1] not in ("nerve", "artery", "branch"):
        return None
    taken = [s.i for s in scene.subjects if s.kind in ("tendon", "pulley") and s.i >= j]
    for k in range(j, min([high, j + 14, *taken])):
        if is_fine_suture(scene, k):
            return k
    first = max(scene.sentence.i, i - 7)
    stops = {";", ".", "and"} if first == scene.sentence.i else {",", ";", ".", "and"}
    if stops & set(scene.words(first, i)):
        return None
    return next((k for k in range(first, i) if is_fine_suture(scene, k)), None)


def is_fine_suture(scene: Scene, k: int) -> bool:
    """Tell whether word k begins the size of a suture for nerves and vessels: '9-0', 'nine oh'."""
    words = scene.page.words
    if words[k] in _FINE:
        return scene.told(k)
    if words[k] in _FINE_FIGURES and words[k + 1 : k + 3] in (["-", "0"], ["/", "0"], ["-", "o"], ["/", "o"]):
        return scene.told(k)
    spoken = words[k] in _FINE_WORDS and words[k + 1 : k + 2] in (["-"], ["zero"], ["oh"], ["o"])
    return spoken and words[k + 2 : k + 3] in (["zero"], ["oh"], ["o"], ["nylon"], ["prolene"], ["ethilon"])
