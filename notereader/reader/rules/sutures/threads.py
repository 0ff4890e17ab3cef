"""The sutures named in a sentence: each size with the material beside it."""

from dataclasses import dataclass, field
from itertools import pairwise

from notereader.reader.mentions.measures import NUMBER_WORDS
from notereader.reader.page import Mention, Page, within
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import word_list

_TAKEN_BACK = word_list("sutures", "taken_back")
_CLUSTER_GLUE = word_list("sutures", "cluster_glue")
_ZERO = word_list("sutures", "zero")
_OLD = word_list("sutures", "old")
_PUT_ASIDE = frozenset(
    [
        ("not", "used"),
        ("never", "used"),
        ("was", "abandoned"),
        ("put", "aside"),
        ("set", "aside"),
        ("was", "discarded"),
        ("too", "thick"),
        ("too", "thin"),
        ("back", "on"),
        ("laid", "aside"),
        ("was", "rejected"),
        ("went", "back"),
        ("but", "changed"),
        ("then", "changed"),
    ]
)


@dataclass(slots=True)
class Thread:
    """A suture named in a sentence: size and material that stand together, words i to j."""

    i: int
    j: int
    size: str = ""
    size_at: tuple[int, int] = (0, 0)
    material: str = ""
    material_at: tuple[int, int] = (0, 0)
    looped: bool | None = None
    role: str = ""
    retold: bool = False  # told in place of one that the speaker took back
    reasons: list[Reason] = field(default_factory=list)


_NO_THREADS = frozenset(["button", "buttons", "mesh", "drain", "drains", "plate", "cup", "sponge", "bolster"])
_WIRES = frozenset(["wire", "wires", "suture", "sutures", "thread", "monofilament", "loop", ".", ","])


def find_threads(scene: Scene) -> list[Thread]:
    """Return the sutures named in a sentence: each size with the material beside it, and materials without a size."""
    threads = [Thread(i, j, size, (i, j)) for size, i, j in find_sizes(scene)]
    if not threads and "material" not in scene.kinds:
        return []
    for mention in scene.of("material"):
        thread = _beside(scene, threads, mention)
        if (
            thread is None
            and scene.words(mention.i, mention.j) == ["steel"]
            and scene.next_word(mention.j) not in _WIRES
        ):
            continue  # 'the steel having made a neat cut'
        if thread is None and scene.next_word(mention.j) in _NO_THREADS:
            continue  # 'Implants: polypropylene button'
        if thread is None:
            threads.append(Thread(mention.i, mention.j, "", (0, 0), mention.value, (mention.i, mention.j)))
        else:
            thread.material, thread.material_at = mention.value, (mention.i, mention.j)
            thread.i, thread.j = min(thread.i, mention.i), max(thread.j, mention.j)
        if mention.rescued:
            (thread or threads[-1]).reasons.append(Reason("misspelt", (mention.value,)))
    threads = _without_second_names(scene, threads)
    threads = _without_taken_back(scene, threads)
    for mention in (m for m in looped_threads(scene) if scene.told(m.i)):
        near = [t for t in threads if -4 <= t.i - mention.j <= 3 or 0 <= mention.i - t.j <= 2 or t.i <= mention.i < t.j]
        for thread in near[:1]:
            unlooped = scene.words(mention.i - 2, mention.i) == ["non", "-"] or scene.word_before(mention.i) == "non"
            thread.looped = mention.value == "yes" and not (unlooped or scene.negated(mention.i, mention.j, 2))
            thread.i, thread.j = min(thread.i, mention.i), max(thread.j, mention.j)
    for thread in threads:
        if scene.next_word(thread.j) == "loop" and thread.looped is None:
            thread.looped, thread.j = True, thread.j + 1  # '3-0 Supramid loop'
        elif scene.word_before(thread.i) == "loop" and thread.looped is None:
            thread.looped, thread.i = True, thread.i - 1  # 'M-Tang, loop nylon 4-0'
        elif thread.looped is None and "loop" in scene.words(thread.i, thread.j):
            thread.looped = True  # '4-0 loop (nylon)'
    threads.sort(key=lambda t: t.i)
    for n, thread in enumerate(threads):
        same = _of_the_same(scene, thread) if not thread.material else None
        alike = [t for t in threads[:n] if t.material and (thread.size in _FINE or t.size not in _FINE)]
        if same and alike:  # a thick thread is of the same as the last thick one
            thread.material, thread.material_at = alike[-1].material, same
    return threads


def _of_the_same(scene: Scene, thread: Thread) -> tuple[int, int] | None:
    """Return the words of 'a continuous 6-0 of the same', '5-0 of the same material', 'the same thread in 6-0'."""
    if scene.words(thread.j, thread.j + 3) == ["of", "the", "same"]:
        j = thread.j + 3 + (scene.next_word(thread.j + 3) in _STUFF)
        closed = scene.next_word(j) in _SAYS_NO_MORE
        return (thread.j, j) if closed else None
    lead = scene.words(max(scene.sentence.i, thread.i - 3), thread.i)
    led = lead[:1] == ["same"] and lead[1:2] != [] and lead[1] in _STUFF and lead[2:] == ["in"]
    return (thread.i - 3, thread.i - 1) if led else None


_FINE = frozenset(["6-0", "7-0", "8-0"])
_STUFF = frozenset(["material", "thread", "suture", "stuff", "make"])
_SAYS_NO_MORE = frozenset(["", ".", ",", ";", ")", "and", "round", "around", "as", "for", "on", "in"])


def looped_threads(scene: Scene) -> list[Mention]:
    """Return the words for a looped thread; not 'every loop of it locked', 'a second loop of the same'."""
    return [
        m
        for m in scene.of("looped")
        if scene.words(m.i, m.j) != ["loop", "of"]
        or (scene.next_word(m.j) not in _OF_IT and scene.word_before(m.i) not in _EVERY)
    ]


_OF_IT = frozenset(["it", "the", "them", "this", "that", "these", "tendon"])
_EVERY = frozenset(["every", "each", "second", "first", "last"])


def find_sizes(scene: Scene) -> list[tuple[str, int, int]]:
    """Return the sizes of a sentence: '4-0', 'four-oh', '4 - 0', '000' beside a material, 'size 0'."""
    figures = scene.page.figures_in(scene.sentence.i, scene.sentence.j)
    if not figures:
        return []
    words, found, reach = scene.page.words, [], 0
    for k in figures:
        size, j = _size_at(scene.page, k, scene.sentence.j) if k >= reach else ("", k)
        if size:
            found.append((size, k, j))
            reach = j
    return [f for f in found if not _not_a_suture(words, f[1], f[2])]


def _size_at(page: Page, k: int, end: int) -> tuple[str, int]:
    word = page.words[k]
    if len(word) >= 3 and word.endswith("-0") and word[:-2].isdecimal():
        size = "0" if word == "1-0" else word
        return (size, k + 1) if size in sizes() else ("", k)
    if (word in NUMBER_WORDS and 0 < NUMBER_WORDS[word] <= 12) or (word.isdecimal() and 0 < int(word) <= 12):
        at = k + 1
        if at < end and page.words[at] in ("-", "/"):
            at += 1
        spaced = at == k + 1 and _names_thread(page, k, at + 1)
        if at < end and page.words[at] in _ZERO and (at > k + 1 or spaced or page.words[at] not in ("0", "o")):
            number = NUMBER_WORDS.get(word) or int(word)
            size = "0" if number == 1 else f"{number}-0"
            return (size, at + 1) if size in sizes() else ("", k)
    if set(word) == {"0"} and 2 <= len(word) <= 6 and (_material_next(page, k + 1) or _named_before(page, k)):
        return f"{len(word)}-0", k + 1
    sized = k > 0 and page.words[k - 1] in ("size", "#") and page.words[k + 1 : k + 2] not in _KINDS_OF_STITCH
    if word in ("0", "1", "2") and sized:
        return word, k + 1
    return "", k


# 'by the Yoshizu #1 technique'
_KINDS_OF_STITCH = [["technique"], ["method"], ["type"], ["modification"], ["variant"]]


def _names_thread(page: Page, k: int, j: int) -> bool:
    """'6 0 Prolene', 'the looped nylon that is 4 0': a size typed with a space, beside its material."""
    before = page.words[k - 2 : k] == ["that", "is"] and any(
        m.kind == "material" for m in within(page.mentions, k - 4, k)
    )
    return before or _material_next(page, j)


def _material_next(page: Page, k: int) -> bool:
    return any(m.kind == "material" for m in within(page.mentions, k, k + 1))


def _named_before(page: Page, k: int) -> bool:
    """'Ethibond 000', 'silk 00', 'Size: 00': noughts right behind a material, or answering what size it was."""
    if page.words[k - 2 : k] == ["size", ":"]:
        return True
    return any(m.kind == "material" and m.j == k for m in within(page.mentions, k - _LONG_NAME, k))


_LONG_NAME = 3  # words


def _not_a_suture(words: list[str], i: int, j: int) -> bool:
    after = words[j] if j < len(words) else ""
    return after in ("scale", "score", "mmhg", "forceps", "scalpel")


def _beside(scene: Scene, threads: list[Thread], mention: Mention) -> Thread | None:
    """Return the size a material belongs to: right after it ('4-0 undyed nylon') or right before ('Prolene 4-0')."""
    for thread in threads:
        if thread.material:
            continue
        if thread.j <= mention.i and mention.i - thread.j <= 5 and _joined(scene, thread.j, mention.i):
            return thread
    for thread in threads:
        if (
            not thread.material
            and mention.j <= thread.i
            and thread.i - mention.j <= 2
            and _joined(scene, mention.j, thread.i)
        ):
            return thread
    return None


def _joined(scene: Scene, i: int, j: int) -> bool:
    between = scene.words(i, j)
    return all(w in _CLUSTER_GLUE for w in between) and between not in ([","],) and between.count(",") < 2


def _without_taken_back(scene: Scene, threads: list[Thread]) -> list[Thread]:
    kept: list[Thread] = []
    for thread in threads:
        if kept and taken_back(scene, kept[-1].j, thread.i):
            kept.pop()
            thread.retold = True
        kept.append(thread)
    return kept


def taken_back(scene: Scene, i: int, j: int) -> bool:
    """Tell whether the words between two values take the first one back: '3-0 Prolene, hang on, no that was Ticron'."""
    text = f" {' '.join(w for w in scene.words(i, j) if w not in (',', '.', ';'))} "
    return j - i <= 12 and any(f" {p} " in text for p in _TAKEN_BACK)


def _without_second_names(scene: Scene, threads: list[Thread]) -> list[Thread]:
    """'4-0 looped nylon (Supramid)' names one thread twice."""
    kept: list[Thread] = []
    for thread in sorted(threads, key=lambda t: t.i):
        if not thread.size and kept and thread.i - kept[-1].j <= 2 and scene.words(kept[-1].j, thread.i)[-1:] == ["("]:
            kept[-1].j = thread.j
            continue
        kept.append(thread)
    return kept


def is_old(scene: Scene, thread: Thread) -> bool:
    """'both old Prolene strands were pulled out': a thread of the earlier operation."""
    before = scene.words(max(scene.sentence.i, thread.i - 2), thread.i)
    if before in (["first", "with"], ["first", "using"], ["first", ","]):
        return False  # 'FDS was repaired first using 4-0 Ethibond'
    if before == ["out", "of"] and scene.words(thread.i - 3, thread.i - 2) in (["run"], ["ran"], ["running"]):
        return True  # 'we had run out of 3-0 by then'
    end = min(thread.j + 10, scene.sentence.j)
    another = [k for _, k, _ in find_sizes(scene) if k >= thread.j]  # '4-0 (the 3-0 was opened and not used)'
    rims = [
        m.i for m in scene.of("role") if m.value == "peripheral" and m.i >= thread.j
    ]  # '..., no rim: it was abandoned'
    behind = scene.words(thread.j, min([end, *another, *rims[:1]]))
    if ("given", "up") in pairwise(behind[: behind.index(";")] if ";" in behind else behind):
        return True  # 'a loop of steel wire was first prepared, and given up as too stiff'
    again = ("back", "and") in pairwise(behind)  # '... with 4-0, then I went back and did a second one'
    if any(pair in _PUT_ASIDE and not (again and pair == ("went", "back")) for pair in pairwise(behind)):
        return True  # 'We had opened a 3-0 but it was too thick and was put aside'
    if before[-1:] == ["the"] and scene.words(thread.j, thread.j + 1) == ["had"]:
        return True  # 'with 4-0 Ethibond this time, because the 3-0 had frayed the fibres'
    return any(w in _OLD for w in before)
