"""Words with which a speaker who makes no stops opens a new statement: 'there was no gap', 'so was the FDS'."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Page, within
from notereader.vocabulary.wordlists import word_list

_PAIRS = frozenset(tuple(pair.split()) for pair in word_list("breaths", "pairs"))
_TURNS = frozenset(tuple(pair.split()) for pair in word_list("breaths", "turns"))  # 'going on', to another finger
_MOVES = word_list("breaths", "moves")  # 'it glided'
_HANGS = word_list("breaths", "hangs")  # 'as it glided'
_FREELY = word_list("breaths", "freely")  # 'good free glide'
_SEWN = frozenset(["repair", "core", "suture", "stitch", "repairs"])
_SHARES = frozenset(["complete", "partial", "full", "total"])
_FEWEST = 2  # words of a statement: 'no gap'
_NEAR = 3  # words
_SHARED = 5  # words: 'percent of the FDS'
_NAMED = 5  # words within which a finger is named


def turns(page: Page, k: int) -> bool:
    """Tell whether word k turns to another finger, whatever was said before: 'starting with the index finger'."""
    if tuple(page.words[k : k + 2]) not in _TURNS or page.words[k - 1] in _HANGS:
        return False
    return any(m.kind == "digit" for m in within(page.mentions, k + 2, k + _NAMED))


def turns_to_finger(page: Page, first: int, k: int) -> bool:
    """'no gap | then the small finger', '..., in the long finger, the FDP was cut': one not spoken of before.

    `first` is where the run begins.
    """
    words = page.words
    if words[k] not in _TOWARDS or words[k - 1] in _HANGS:
        return False
    finger = next((m for m in within(page.mentions, k + 1, k + _NAMED) if m.kind == "digit"), None)
    if finger is None or not _BEFORE_FINGER.issuperset(words[k + 1 : finger.i]):
        return False
    named = [m.value for m in within(page.mentions, first, k) if m.kind == "digit"]
    if not named or named[-1] == finger.value:
        return False
    behind_it = words[finger.j : finger.j + 1]
    if words[k] in ("then", "now", "next") or (words[k - 1] == "," and behind_it == [","]):
        return True
    if any(m.j == k and m.kind in _NAMES for m in within(page.mentions, k - _NEAR, k)) or not _HAS.isdisjoint(
        behind_it
    ):
        return False  # 'the severed ulnar slip in the middle finger was resected'
    behind = within(page.mentions, finger.j, finger.j + _NAMED)
    if any(m.kind == "generic" and m.i == finger.j for m in behind):
        return True  # 'in the long finger both tendons were cut'
    return any(m.kind in ("tendon", "extent") and m.i - finger.j <= _BOTH_THE for m in behind)


_NAMES = frozenset(["tendon", "slip", "pulley", "sided", "structure", "anynerve", "anyartery"])
_TOWARDS = frozenset(["then", "now", "next", "in", "on", "for"])
_BEFORE_FINGER = frozenset(["the", "his", "her", "for", "in", "okay", "um", "uh"])
_BOTH_THE = 2  # words: 'both the'


def opens_statement(page: Page, first: int, k: int) -> bool:
    """Tell whether word k opens a new statement that names nothing yet, behind one made from word `first` on."""
    words = page.words
    if k - first < _FEWEST or words[k - 1] in _HANGS or _tendon_there(page, k):
        return False
    if _finger_behaves(page, k):
        return True
    if so_was(page, k) or _share_of(page, k) or _counts_strands(page, k, so_was(page, first)):
        return True
    result = tuple(words[k : k + 2]) in _PAIRS or (
        words[k] == "it" and words[k + 1 : k + 2] != [] and words[k + 1] in _MOVES
    )
    result = result or (words[k] in _FREELY and any(m.kind == "glide" for m in within(page.mentions, k, k + 2)))
    # 'with traction in the palm it ran through fine' is one statement
    return result and not any(m.kind == "test" for m in within(page.mentions, first, k))


def _tendon_there(page: Page, k: int) -> bool:
    """'and the FDS there was not cut', but not '... of the FDS | there was no gap'."""
    named = page.words[k] == "there" and any(m.kind == "tendon" and m.j == k for m in within(page.mentions, k - 2, k))
    return named and page.words[k + 2 : k + 3] not in (["no"], ["a"], ["an"], ["nothing"], ["some"], ["none"], ["then"])


def _finger_behaves(page: Page, k: int) -> bool:
    """'... through by hand | middle no gap | ring opened up by one millimetre | the ring is under some tension'."""
    if page.words[k - 1] in _JOINED:
        return False
    i = k + (page.words[k] == "the")
    finger = next((m for m in within(page.mentions, i, i + 1) if m.kind in ("digit", "digit?")), None)
    if finger is None:
        return False
    verb = page.words[finger.j : finger.j + 1] in (["is"], ["was"])
    behind = within(page.mentions, finger.j, finger.j + 1 + verb * 2)  # 'is under a bit of tension', 'was a bit bulky'
    sure = finger.kind == "digit"
    return any((sure and m.kind in ("gap", "glide")) or (verb and m.kind in ("tension", "bulk")) for m in behind)


_JOINED = frozenset(["the", "and", "both", "in", "of", "on", "for", "or", "to", "with"])


def _share_of(page: Page, k: int) -> bool:
    """'... intact | complete cut of the profundus'."""
    words = page.words
    here = next((m for m in within(page.mentions, k, k + 1) if m.kind == "extent"), None)
    return here is not None and words[k] in _SHARES and words[here.j : here.j + 1] == ["of"]


def so_was(page: Page, k: int) -> bool:
    """'so was the superficialis' says all it says with a name."""
    return page.words[k : k + 2] in (["so", "was"], ["so", "were"])


def _counts_strands(page: Page, k: int, told: bool) -> bool:
    """'... was cut about 30 percent | four strand repair of the profundus': a count that nothing leads to."""
    words = page.words
    if not count_of(words[k]):
        return False
    strand = next((m for m in within(page.mentions, k + 1, k + _NEAR) if m.kind == "strandword"), None)
    if strand is None or not _SEWN.intersection(words[strand.j : strand.j + 1]):
        return False
    told = told or any(
        m.j == k and m.kind in ("extent", "glide", "gap", "opened") for m in within(page.mentions, k - 6, k)
    )
    share = any(m.j == k for m in within(page.mentions, k - _NEAR, k)) and "percent" in words[max(0, k - _SHARED) : k]
    return told or share or words[k - 1] in ("percent", "%", ",")


def leads_with_finger(page: Page, i: int, first: int, digit: str) -> bool:
    """'... A2 not opened | in the ring finger the profundus was cut': a finger that nothing before it was told of."""
    named = [m for m in within(page.mentions, first, i) if m.kind == "digit"]
    return bool(named) and all(m.value != digit for m in named)


def verb_after(page: Page, k: int) -> int | None:
    """Return the verb behind a name that ends before word k, 'the FDS of the ring finger was', where one follows."""
    verb = next((n for n in range(k, min(k + 5, len(page.words))) if page.words[n] in _HAS), None)
    return verb if verb is not None and all_name(page, k, verb) else None


def all_name(page: Page, i: int, j: int) -> bool:
    """Tell whether words i to j only go on with a name: '(superficialis) to the little finger'."""
    return all(page.words[n] in _OF_THE_FINGER or n in page.tendon_words for n in range(i, j))


_HAS = frozenset(["has", "is", "was", "had", "were"])
_OF_THE_FINGER = frozenset(
    ["of", "to", "the", "and", "in", "index", "middle", "long", "ring", "small", "little", "finger", "thumb"]
)
