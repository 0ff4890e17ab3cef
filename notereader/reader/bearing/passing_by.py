"""Fingers named in passing: 'The index finger was normal', 'The wound ran from the index to the ring finger'.

What a note tells behind such a sentence, 'Core: four strands', is still of the finger it was at before.
"""

from itertools import pairwise

from notereader.reader.groups import Setting
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_SKIN_DEEP = frozenset(["scratched", "grazed", "abraded", "superficial", "skin-deep"])
_DENIED = frozenset(["not", "never"])
_LEFT_OUT = frozenset(
    [
        *("touched", "opened", "explored", "involved", "operated", "injured", "hurt", "harmed", "affected"),
        "entered",
    ]
)
_TO_LEAVE_OUT = frozenset([("to", "touch"), ("to", "open"), ("to", "explore"), ("to", "enter")])
_NO_NEED = frozenset(["need", "reason", "cause", "call", "occasion"])
_DONE = frozenset(["done", "repaired", "sutured", "needed"])
_SKIN_ALONE = frozenset(["only", "closed", "sutured", "stitched"])  # 'the ring finger had a skin wound, closed'
_OTHER_PARTS = frozenset(
    [*("structure", "sided", "bundle", "anynerve", "anyartery"), *("pulley", "pulleys", "bone", "fracture", "joint")]
)
_BONES = frozenset(["bone", "bones", "joint", "joints", "capsule", "vessels"])
_STATES = word_list("bearing", "passing_states")
_WOUNDS = frozenset(["wound", "wounds", "cut", "laceration", "gash", "incision", "scar", "line"])
_RUNS = frozenset(
    ["ran", "runs", "crossed", "crosses", "extended", "extends", "reached", "reaches", "went", "goes", "passed"]
)
_ARTICLES = frozenset(["the", "a", "this", "her", "his", "skin", "long", "oblique", "transverse", "deep"])
# What a sentence that turns to a finger tells of it.
_TELLING = frozenset(
    [
        "tendon",
        "generic",
        "pulley",
        "strandword",
        "stitch",
        "material",
        "zone",
        "gap",
        "glide",
        "ends",
        "deed",
        "extent",
    ]
)
_SHORT, _LONG = 12, 20  # words


def passes_by(page: Page, sentence: Sentence, setting: Setting) -> bool:
    """Tell whether a sentence names a digit in passing; one that names a tendon mostly turns to it all the same."""
    tendons = any(g.tendons for g in setting.groups)
    mentions = setting.mentions
    if _none_of(page, sentence) or _unexplored(page, sentence, setting):
        return True
    if tendons or any(g.generic == "all" and g.digits for g in setting.groups):
        return _looked_at(page, sentence, setting)
    if not (setting.digits or not setting.groups):
        return False
    return (
        _left_out(page, sentence, mentions)
        or _only_seen(page, sentence, mentions)
        or _of_a_web(page, sentence, mentions)
        or _of_its_size(page, sentence, mentions)
    )


def _none_of(page: Page, sentence: Sentence) -> bool:
    """'No tendon of the middle or small finger lay in the wound.'"""
    opens = page.words[sentence.i] == "no" and sentence.j - sentence.i <= _LONG
    return opens and not _STRUCTURES.isdisjoint(page.words[sentence.i + 1 : sentence.i + 4])


_STRUCTURES = frozenset(["tendon", "tendons", "structure", "structures", "flexor", "flexors", "injury"])


def _looked_at(page: Page, sentence: Sentence, setting: Setting) -> bool:
    """'I looked into the index through the same wound, its profundus was intact': a paragraph ends with a look beside.

    What the next paragraph tells is of the finger that was worked on.
    """
    if not setting.digits:
        return False
    first = next(g.i for g in setting.groups if g.tendons or g.generic)
    behind = [m for m in setting.mentions if m.i >= first]  # not what the look went through
    told = {m.value for m in behind if m.kind == "extent"}
    if told != {"intact"} or any(m.kind in _TELLING - _WHOLE_TENDONS for m in behind):
        return False
    named = {d for g in setting.groups for d in g.digits}
    others = named.difference(setting.digits)
    if len(others) != 1:
        return False
    if not _BESIDE.isdisjoint(sentence.said) or _so_was(page, sentence):
        return True
    looked = not _LOOKS.isdisjoint(sentence.said) and not _goes_on_in_block(page, sentence)
    return looked and named == others and _named_only_here(page, sentence, setting.mentions)


def _so_was(page: Page, sentence: Sentence) -> bool:
    """'The FDS of the small finger was whole and so was the FDP of the ring': a further finger, by the way."""
    return any(a == "so" and b in ("was", "were") for a, b in pairwise(page.words[sentence.i : sentence.j]))


_BESIDE = frozenset(["neighbouring", "neighboring", "adjacent", "adjoining"])


def _unexplored(page: Page, sentence: Sentence, setting: Setting) -> bool:
    """'FDP and FDS of the ring finger not explored', 'Middle and small: not seen': what follows is not of them."""
    named = {d for g in setting.groups for d in g.digits}
    if not named or not named.isdisjoint(setting.digits) or sentence.j - sentence.i > _SHORT:
        return False
    words = page.words[sentence.i : sentence.j]
    denied = any(
        a in _DENIED | {"nothing"} and not _UNSEEN.isdisjoint(words[n + 1 : n + 3]) for n, a in enumerate(words)
    )
    other = any(m.kind in _TOLD_OF_IT for m in setting.mentions)
    return (denied or "unexplored" in words) and not other and _named_only_here(page, sentence, setting.mentions)


_TOLD_OF_IT = (_TELLING - {"tendon", "generic"}) | _OTHER_PARTS
_UNSEEN = word_list("bearing", "not_looked_at")


def _goes_on_in_block(page: Page, sentence: Sentence) -> bool:
    return any(s.block == sentence.block and s.i >= sentence.j for s in page.sentences)


_LOOKS = word_list("bearing", "looks")
_WHOLE_TENDONS = frozenset(["tendon", "generic", "extent"])


def _of_a_web(page: Page, sentence: Sentence, mentions: list[Mention]) -> bool:
    """'The common digital nerve to the ring-small web was cut', 'in the cleft between ring and small finger'."""
    digits = [m for m in mentions if m.kind == "digit"]
    if len(digits) == 1 and not _WEBS.isdisjoint(page.words[digits[0].j : digits[0].j + 1]):
        return True  # 'The thumb web was free'
    if len({m.value for m in digits}) != _SIDES_OF_A_WEB or digits[-1].j - digits[0].i > _SHORT:
        return False
    before = page.words[max(0, digits[0].i - _NEAR) : digits[0].i]
    between = "between" in before and "common" in sentence.said  # 'the common digital nerve between ring and small'
    return not _WEBS.isdisjoint(page.words[digits[-1].j : digits[-1].j + 1]) or not _WEBS.isdisjoint(before) or between


_WEBS = frozenset(["web", "webspace", "web-space", "cleft", "interspace", "webs"])
_SIDES_OF_A_WEB = 2
_NEAR = 4  # words


def _only_seen(page: Page, sentence: Sentence, mentions: list[Mention]) -> bool:
    """'The little finger had been stiff for years', 'The wound ran from the index to the ring finger'."""
    if sentence.j - sentence.i > _SHORT or any(m.kind in _TELLING for m in mentions):
        return False
    words = [w for w in page.words[sentence.i : sentence.j] if w not in _ARTICLES]
    runs = words[:1] != [] and words[0] in _WOUNDS and words[1:2] != [] and words[1] in _RUNS
    return runs or (not _STATES.isdisjoint(words) and _named_only_here(page, sentence, mentions))


def _of_its_size(page: Page, sentence: Sentence, mentions: list[Mention]) -> bool:
    """'Small finger, small wound.' of a child whose ring finger is in every title: how big it is, and not which."""
    named = {m.value for m in mentions if m.kind == "digit"}
    told = any(m.kind in _TELLING for m in mentions) or sentence.j - sentence.i > _SHORT
    first = next((m for m in mentions if m.kind == "digit"), None)
    if told or len(named) != 1 or first is None or page.words[first.i] not in _SIZES:
        return False
    opens = first.i == sentence.i or page.words[first.i - 1] == ":"
    if not opens or page.words[first.j : first.j + 1] in ([":"], ["-"]):
        return False
    titles = [s for s in page.sections if s.kind in ("procedure", "diagnosis")]
    titled = {m.value for s in titles for m in within(page.mentions, s.i, s.j) if m.kind == "digit"}
    goes_on = sentence.j < len(page.words) and page.breaks[sentence.j] < Break.LINE
    return bool(titled) and titled.isdisjoint(named) and goes_on and _named_only_here(page, sentence, mentions)


_SIZES = frozenset(["small", "little", "long"])


def _named_only_here(page: Page, sentence: Sentence, mentions: list[Mention]) -> bool:
    """Tell whether one of the digits is named nowhere else: one that was worked on has a title or a sentence more."""
    elsewhere = {m.value for m in page.mentions if m.kind == "digit" and not sentence.i <= m.i < sentence.j}
    return any(m.kind == "digit" and m.value not in elsewhere for m in mentions)


def _left_out(page: Page, sentence: Sentence, mentions: list[Mention]) -> bool:
    """'The ring finger was not touched', 'Ring: skin only, sheath closed' name a digit without turning to it."""
    said, length = sentence.said, sentence.j - sentence.i
    skin_deep = not _SKIN_DEEP.isdisjoint(said) or ("skin" in said and "only" in said)
    parts = any(m.kind in _OTHER_PARTS for m in mentions) or not _BONES.isdisjoint(said)
    not_so = not _DENIED.isdisjoint(said) or ("no" in said and not _NO_NEED.isdisjoint(said))
    verbs = pairwise(page.words[sentence.i : sentence.j])
    worked_on = not _LEFT_OUT.isdisjoint(said) or ("to" in said and any(pair in _TO_LEAVE_OUT for pair in verbs))
    denied = not_so and worked_on and not parts  # not 'Ring: A2 not opened'
    if length <= _SHORT and (skin_deep or denied):
        return True
    if length > _LONG or parts:
        return False  # 'Index: radial digital nerve bruised, nothing done'
    nothing = "nothing" in said and any(
        a == "nothing" and b in _DONE for a, b in pairwise(page.words[sentence.i : sentence.j])
    )
    return nothing or ("skin" in said and not _SKIN_ALONE.isdisjoint(said))
