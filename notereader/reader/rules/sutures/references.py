"""Sutures told by reference: 'in the same manner', 'like the index', 'likewise', 'as line 1', 'same epitendinous'."""

from itertools import pairwise
from typing import NamedTuple

from notereader.reader.bearing.likened import identical_to
from notereader.reader.desk import Copy, Desk, Finding, is_correction
from notereader.reader.drafting.settling import words_cut_away
from notereader.reader.groups import Group, Target, has
from notereader.reader.needs import needs
from notereader.reader.reasons import Reason
from notereader.reader.rules.carried import carried
from notereader.reader.rules.sutures.roles import CORE, PERIPHERAL, TENDON, anchors
from notereader.reader.rules.sutures.threads import find_sizes, taken_back
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_CORE = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "knot")
_PERIPHERAL = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")
_SAME = word_list("references", "same")
_KNOWN_BY = ("strands", "stitch", "size")
_RESULTS = ("gap", "gap_mm", "glide", "test")
_THREAD = ("size", "material", "looped")
_STITCH = (*(f for f in _CORE if f not in ("purchase_mm", "knot")), *_PERIPHERAL)  # how much it holds is not told
_THREADS = frozenset(["thread", "material", "gauge"])  # 'Same thread' says nothing of the stitch
_ALIKE = frozenset(["likewise", "similarly", "identically", "ditto", "idem"])
# What may follow 'the same' that only qualifies it: 'the same but with 3-0'.
_QUALIFIED = ("but", "except", "excepting", "with", "using", "minus", "less", "without", "only", "apart", "save", "(")
_CLAUSE_STOPS = frozenset([",", ";", "."])
_COMPARES = _ALIKE | {"same", "identical", "similar", "as", "so", "repeated"}


class _Phrase(NamedTuple):
    """The words of a reference, the group it compares with if it names one, and which part of the suture is meant."""

    i: int
    j: int
    source: Group | None
    fields: str


@needs(words=_COMPARES | {"like"})
def references(desk: Desk, scene: Scene) -> None:
    """Note every 'the same was done' of a sentence; the facts are taken over once all are known."""
    if scene.sentence.section in ("instructions", "closure", "indication", "anaesthesia", "dressing"):
        return
    _take_back(desk, scene)
    found = _phrase(desk, scene, scene.sentence.i)
    if found is not None and taken_back(scene, found.j, min(found.j + _AT_ONCE, len(scene.page.words))):
        found = _phrase(desk, scene, found.j)  # 'the same thing, scratch that, 4-0 and the same running stitch'
    if found is None or _of_another_thing(scene, found):
        return
    i, j, source, fields = found
    if source is None and fields == "all" and _of_a_test(desk, scene):
        if not any(g.tendons or g.digits for g in scene.setting.groups):
            return  # 'then pulled the same way again'
        fields = "results"
    if source is not None and fields == "all" and _each_like_its_own(desk, scene, source, (i, j)):
        return
    if not _TESTED.isdisjoint(scene.words(max(scene.sentence.i, i - _AT_ONCE), i)):
        fields = "test"  # 'the index FDP was tested in the same way': what was seen is not told
    if scene.told(i):
        _lay_reference(desk, scene, found._replace(fields=fields))


def _of_another_thing(scene: Scene, phrase: _Phrase) -> bool:
    """Tell whether what was done 'the same' is denied, or was done to a pulley, a nerve, a vessel or the skin."""
    i, j = phrase.i, phrase.j
    if "not" in scene.words(max(scene.part(i)[0], i - 9), i):
        return True  # 'it was not repaired with the same core as the ring'
    if scene.words(i, j) == ["as", "above"] and scene.of("opened") and not scene.of("deed", "stitch", "role"):
        return True  # 'free once that pulley had been vented as above'
    if any(g.tendons for g in scene.setting.groups):
        return False
    skin = any(m.value == "skin" for m in scene.of("role"))  # 'the skin was closed in the same way'
    return skin or bool(scene.of("structure", "sided", "anynerve", "anyartery"))


def _lay_reference(desk: Desk, scene: Scene, phrase: _Phrase) -> None:
    """Note what the targets of a reference take over, without what the sentence says is otherwise."""
    i, j, source, fields = phrase
    targets = _targets(desk, scene, i, source)
    if not targets:
        return
    if fields == "all" and (_fewer_strands(scene, j) or _another_stitch(scene, j) or _as_another_stitch(scene, i, j)):
        fields = "thread"
    rim = _without_rim(scene, i)
    if fields == "all" and (rim is not None or _rim_left_open(scene, i)):
        fields = "core"
    for target, span in ((t, rim) for t in targets if rim is not None):
        desk.tendon(scene, target, "peripheral", "absent", [span], "the same but for the peripheral suture")
    desk.copies.append(Copy(scene, targets, _source(desk, scene, source), (i, j), fields))
    rim_too = _rim_the_same(scene, j) if fields in ("thread", "stitch", "core") else None
    if rim_too is not None:  # '3-0 of the same material, epi same'
        desk.copies.append(Copy(scene, targets, _source(desk, scene, source), rim_too, "peripheral"))


def _take_back(desk: Desk, scene: Scene) -> None:
    """'Addendum: FDS small was not the same as the ring': what was told alike before is so no more."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        begins = k - (words[k - 1] == "the")
        if words[k] not in _UNLIKE or words[begins - 1] != "not" or not scene.told(k) or not is_correction(scene):
            continue
        named = [g for g in scene.setting.groups if g.j <= begins and g.tendons and not g.reference]
        unlike = group_targets(scene, named[-1]) if named else []
        for copy in desk.copies:
            copy.targets = [t for t in copy.targets if t not in unlike]


_UNLIKE = frozenset(["same", "identical", "like"])
_AT_ONCE = 3  # words
_TESTED = frozenset(["tested", "checked", "examined"])


def _rim_left_open(scene: Scene, i: int) -> bool:
    """'Repaired likewise; epitendinous not recorded': whether there is one, the sentence leaves open."""
    return any(m.value == PERIPHERAL and m.i > i and not scene.told(m.i) for m in scene.of("role"))


def _told_itself(scene: Scene, k: int) -> bool:
    """'Likewise severed', 'likewise given four strands': what is alike stands right behind, and no more is alike."""
    n = k + 1
    while n < scene.sentence.j and scene.page.words[n] in _GIVEN_WITH:
        n += 1
    cut = any(m.i in (k + 1, n) for m in scene.of("extent", "hurt"))
    counted = any(n <= m.i <= n + 2 for m in scene.of("strandword")) and "," not in scene.words(n, n + 3)
    return cut or counted


_GIVEN_WITH = frozenset(
    ["given", "got", "received", "had", "has", "with", "a", "was", "were", "been", "repaired", "sewn"]
)


def _fewer_strands(scene: Scene, j: int) -> bool:
    """'As the ring but half the strands', 'same but fewer strands': neither its count nor its stitch is the same."""
    rest = scene.words(j, min(j + _FAR, scene.sentence.j))
    fewer = not _FEWER.isdisjoint(rest)
    once = any(a in _BUT and b == "single" for a, b in pairwise(rest)) or ("not", "double") in pairwise(rest)
    alone = once and not any(0 <= m.i - j < _FAR for m in scene.of("stitch", "material"))  # 'same as FDP but single'
    return alone or (fewer and (("but" in rest and "strands" in rest) or not _PASSES.isdisjoint(rest)))


def _another_stitch(scene: Scene, j: int) -> bool:
    """'Ditto but no epi, and 2 strand modified Kessler instead': another stitch of the same thread."""
    behind = scene.words(j, scene.sentence.j)
    stitch = any(m.i >= j and scene.told(m.i) for m in scene.of("stitch"))
    thread = any(m.i >= j for m in scene.of("material")) or any(s[1] >= j for s in find_sizes(scene))
    return stitch and not thread and behind[:1] == ["but"] and "instead" in behind


def _as_another_stitch(scene: Scene, i: int, j: int) -> bool:
    """'With the same suture as a two-strand Kessler': the same thread, in a stitch of its own."""
    if scene.page.words[j - 1] != "suture" or scene.words(j, j + 2) not in (["as", "a"], ["in", "a"], ["for", "a"]):
        return False
    return any(0 < m.i - j <= _FAR and scene.told(m.i) for m in scene.of("stitch")) and scene.told(i)


def _without_rim(scene: Scene, i: int) -> tuple[int, int] | None:
    """Return the words of 'the same with the exception of the peripheral suture', '..., core only', or None.

    'Except for the epitendinous, which was of 5-0' leaves none out.
    """
    words, end = scene.page.words, scene.sentence.j
    for k in range(i, end):
        if words[k] == "core" and scene.next_word(k + 1) == "only":
            return k, k + 2
        if words[k] not in _EXCEPTING:
            continue
        n = k + 1
        while n < end and words[n] in _OF_THE:
            n += 1
        if n >= end or words[n] not in _PERIPHERAL_NOUNS:
            continue
        n += 1 + (scene.next_word(n + 1) in _SUTURES)
        behind = [w for w in scene.words(n, min(n + _SHORTLY, end)) if w not in (",", ")", ".")]
        if not behind or (behind[0] in ("which", "that") and not _LEFT_OUT.isdisjoint(behind)):
            return k, n
    return None


_EXCEPTING = frozenset(["except", "excepting", "exception", "minus", "less", "bar", "save", "apart", "omitting"])
_OF_THE = frozenset(["for", "with", "of", "from", "the", "its", "a", "an", "that", "only"])
_SUTURES = frozenset(["suture", "stitch", "sutures", "one", "run"])
_LEFT_OUT = frozenset(["omitted", "out", "not", "skipped", "forgone", "unnecessary", "dispensed"])
_SHORTLY = 7  # words
_FAR = 7  # words
_BUT = frozenset(["but", ",", "only", "and"])
_FEWER = frozenset(["half", "fewer", "less", "minus", "without"])
_PASSES = frozenset(["pair", "pairs", "pass"])  # 'likewise less one pair'


def _each_like_its_own(desk: Desk, scene: Scene, source: Group, span: tuple[int, int]) -> bool:
    """'The ring finger tendons were dealt with as those of the middle finger': profundus as profundus, and so on."""
    several = next((g for g in scene.setting.groups if g.generic == "all" and g.digits and not g.tendons), None)
    if several is None or not source.digits or source.tendons or not scene.told(span[0]):
        return False
    for known in desk.repairable(source.digits):
        targets = [Target(d, known.tendon, known.slip) for d in several.digits if has(d, known.tendon)]
        desk.copies.append(Copy(scene, [t for t in targets if desk.may_be_repaired(t)], known, span, "all"))
    return True


def _of_a_test(desk: Desk, scene: Scene) -> bool:
    """'Ring pulled on: no gap. Small same.': what is the same is what was seen, not how it was sewn."""
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or scene.of("material", "stitch", "strandword"):
        return False
    return bool(before.of("gap", "glide", "test")) and not before.of("material", "stitch", "strandword", "pattern")


def _phrase(desk: Desk, scene: Scene, first: int) -> _Phrase | None:
    """Return the first reference of a sentence from word `first` on, or None."""
    compared = next((g for g in scene.setting.groups if g.i >= first and _is_compared(scene, g)), None)
    if compared is not None:
        part = scene.sentence.section if scene.sentence.section in (CORE, PERIPHERAL) else "all"
        begins = max(compared.i - 1, scene.sentence.i)
        return _Phrase(begins, compared.j, compared, _part_told(scene, compared.i) or part)
    if _COMPARES.isdisjoint(scene.words(scene.sentence.i, scene.sentence.j)):
        return None
    found = (_phrase_at(desk, scene, k) for k in range(first, scene.sentence.j))
    return next((phrase for phrase in found if phrase is not None), None)


def _is_compared(scene: Scene, group: Group) -> bool:
    """'Like the index', 'as for the ring FDP', 'identical stitch to the long finger'."""
    lead = scene.words(max(group.i - 5, scene.sentence.i), group.i)
    alike = not _LIKE.isdisjoint(lead) or identical_to(scene.words(max(group.i - 9, scene.sentence.i), group.i))
    return group.reference and alike


_LIKE = frozenset(["like", "as", "ditto"])


def _phrase_at(desk: Desk, scene: Scene, k: int) -> _Phrase | None:
    """Return the reference that word k makes, or None: 'likewise', 'so was ...', 'the same ...', 'as above'."""
    word, after = scene.page.words[k], scene.words(k + 1, k + 2)
    if word == "so" and after in (["was"], ["were"]) and _slip_behind(scene, k + 2):
        return _Phrase(k, k + 2, None, "slip")
    if word in _ALIKE:
        return None if _told_itself(scene, k) else _Phrase(k, k + 1, None, "all")
    if word in _THE_SAME and _FURTHER.isdisjoint(scene.words(max(scene.sentence.i, k - 3), k)):
        return _the_same(desk, scene, k)
    if word == "repeated" and _done_again(desk, scene, k):
        return _Phrase(k, k + 1, None, "all")
    if word == "as" and after in (["above"], ["before"]) and k > scene.sentence.i:
        named = any(g.tendons or g.digits or g.generic for g in scene.setting.groups)
        part = _part_told(scene, k) or ("all" if named else "")
        return _Phrase(k, k + 2, None, part) if part else None  # 'Peripheral suture as above.'
    return None


_THE_SAME = ("same", "identical", "similar")
_FURTHER = frozenset(["more", "another", "extra", "further"])


def _the_same(desk: Desk, scene: Scene, k: int) -> _Phrase | None:
    """Return what 'the same' at word k refers to: its noun's part, that of its label, or all; None for neither."""
    reach = 6 if scene.words(k + 2, k + 4) == ["-", "strand"] else 4  # 'the same four-strand method'
    after = scene.words(k + 1, min(k + reach, scene.sentence.j))
    cut = next((n for n, w in enumerate(after) if w in _QUALIFIED or w in _CLAUSE_STOPS), len(after))
    noun = next((n for n, w in enumerate(after[:cut]) if w in _SAME), None)  # not 'the same but no epitendinous'
    if noun is not None:
        return _Phrase(k, k + 2 + noun, None, _part_of_noun(scene, k, noun, after[:cut]))
    return _part_the_same(desk, scene, k) or _all_the_same(desk, scene, k, after)


def _part_of_noun(scene: Scene, k: int, noun: int, after: list[str]) -> str:
    """Return what the noun behind 'the same' at word k means: 'same thread', 'same running stitch', 'same core'."""
    word, described = after[noun], after[:noun]
    stitch = word in ("stitch", "suture")
    if word in _THREADS or (stitch and _stitch_beside(scene, k)):
        return "thread"
    if stitch and not _RUNNING.isdisjoint(described):
        return "peripheral"
    if word == "stitch":
        return "stitch"
    if word in ("epitendinous", "epi", "peripheral") or "epitendinous" in after:
        return "peripheral"
    core = "core" in (*described, word)
    return "core" if core and not _and_its_rim(scene.words(k + 2 + noun, scene.sentence.j)) else "all"


_RUNNING = frozenset(["running", "continuous"])


def _part_the_same(desk: Desk, scene: Scene, k: int) -> _Phrase | None:
    """'A Kessler of the same Ticron', 'same knot', 'epi same', 'Purchase: same': a part told without its noun."""
    if _same_thread_named(desk, scene, k):
        return _Phrase(k, k + 2, None, "thread")
    short = _told_in_short(scene, k)
    if short is not None:
        return _Phrase(k, short[0], None, short[1])
    if _rim_the_same(scene, k - 1) == (k - 1, k + 1):
        return _Phrase(k - 1, k + 1, None, "peripheral")  # 'FDP middle 2-strand Kessler 4-0, epi same'
    answered = _label_answered(scene, k)
    return _Phrase(scene.sentence.i, k + 1, None, answered) if answered else None


def _all_the_same(desk: Desk, scene: Scene, k: int, after: list[str]) -> _Phrase | None:
    """'FDP index the same', 'I gave just the same', 'the same was done': all of the repair."""
    led = _led_by_name(scene, k) or _led_by_count(desk, scene, k)
    after = after[1:] if after[:1] == ["again"] and led else after
    if led and (after[:1] or [""])[0] in _SAYS_NO_NOUN and scene.told(k):
        return _Phrase(k, k + 1, None, "all")  # 'FDP index the same, and a 6-0 Prolene running stitch'
    if _given_the_same(desk, scene, k):
        return _Phrase(k - 1, k + 1, None, "all")
    if after[:2] in (["was", "done"], ["again", "for"]) or after[:1] in (["for"], ["done"]):
        return _Phrase(k, k + 2, None, "all")
    return None


def _led_by_name(scene: Scene, k: int) -> bool:
    """'FDS RF -> same', 'Ring finger - identical', 'FDP was the same': whether a name stands right before word k."""
    words = scene.page.words
    begins = k - (words[k - 1] == "the")
    begins -= 2 * (words[begins - 2 : begins] == ["-", ">"])
    begins -= words[begins - 1] in (":", "-", ",", "done", "repaired")
    begins -= words[begins - 1] in ("was", "were")
    return any(g.j in (begins, k) for g in scene.setting.groups if g.i < g.j)


def _led_by_count(desk: Desk, scene: Scene, k: int) -> bool:
    """'Middle FDP: 4 str, same': a count between the name and what is the same, where the one before had so many."""
    count = next((m for m in scene.of("strandword") if m.j == k - (scene.word_before(k) in _BEFORE_SAME)), None)
    if count is None or not any(g.j <= count.i <= g.j + 3 for g in scene.setting.groups if g.tendons or g.digits):
        return False
    here = next((int(q.high) for q in scene.quantities if q.j in (count.i, count.i - 1) and q.high), 0)
    before = desk.laid("strands", since=max(0, scene.sentence.i - _FAR_BACK), before=scene.sentence.i)
    return bool(before) and before[-1].value == here


_FAR_BACK = 80  # words
_BEFORE_SAME = frozenset([",", "-", "the", ";"])


def _stitch_beside(scene: Scene, k: int) -> bool:
    """'FDS: Kessler, same stitch', 'a mattress of the same suture': beside a stitch of its own only the thread."""
    told = [m for m in scene.of("stitch") if 0 <= k - m.j <= 2 and scene.told(m.i)]
    return any(k - m.j <= 1 or scene.words(m.j, k) in _LED for m in told)


_LED = (["of", "the"], ["with", "the"], ["in", "the"])


def _same_thread_named(desk: Desk, scene: Scene, k: int) -> bool:
    """'A Kessler of the same Ticron': the core's thread told last, if it was of that make; not '4-0 of ...'."""
    named = next((m for m in scene.of("material") if m.i == k + 1 and scene.told(m.i)), None)
    sewn = any(m.j <= k for m in scene.of("stitch", "strandword"))
    if named is None or not sewn or find_sizes(scene):
        return False
    before = desk.laid("material", before=scene.sentence.i)
    return bool(before) and before[-1].value == named.value


def _told_in_short(scene: Scene, k: int) -> tuple[int, str] | None:
    """'Modified Kessler, same 3-0', '5-0 of the same', 'same knot', 'the same 4-strand': its end, what is meant."""
    behind = scene.words(k + 1, min(k + 4, scene.sentence.j))
    if any(i == k + 1 for _, i, _ in find_sizes(scene)) or (
        scene.words(k - 2, k) == ["of", "the"] and behind[:1] in ([], ["."], [","], [";"])
    ):
        threaded = scene.of("stitch", "strandword") or find_sizes(scene)
        once = scene.words(scene.sentence.i, scene.sentence.j).count("same") == 1  # else 'same 3-0, same pattern'
        return (k + 1 + bool(behind), "material") if threaded and once else None
    if behind[:1] in (["knot"], ["knots"]):
        return k + 2, "knot"
    if behind[1:3] == ["-", "strand"] and scene.next_word(k + 4) in _SAYS_NO_NOUN:
        return k + 4, "count"
    return None


_SAYS_NO_NOUN = frozenset(["", ",", ".", ";", "and", *_QUALIFIED])


def _rim_the_same(scene: Scene, first: int) -> tuple[int, int] | None:
    """Return the words of 'epi same', 'and the same epitendinous' from word `first` on, or None."""
    words = scene.page.words
    for k in range(max(first, scene.sentence.i) + 1, scene.sentence.j):
        if words[k] == "same" and scene.next_word(k + 1) in _PERIPHERAL_NOUNS and scene.told(k):
            return k, k + 2
        named = words[k] == "same" and words[k - 1] in _PERIPHERAL_NOUNS
        if named and scene.next_word(k + 1) in _SAYS_NO_NOUN and scene.told(k):
            return k - 1, k + 1
    return None


def _of_a_suture(desk: Desk, scene: Scene) -> bool:
    """Tell whether what is 'the same' is a repair: not where the sentence or the one before it tells of a test."""
    return not scene.of("gap", "glide", "test") and not _of_a_test(desk, scene)


def _done_again(desk: Desk, scene: Scene, k: int) -> bool:
    """'This was repeated for the ring finger', 'I repeated the same on the small FDP', right behind a repair."""
    before = desk.scene_before(scene)
    led = not _WHAT_WAS_DONE.isdisjoint(scene.words(max(scene.sentence.i, k - 4), k + 2))
    if not led or (scene.next_word(k + 1) not in _ONTO and scene.next_word(k + 2) not in _ONTO):
        return False
    sewn = before is not None and before.sentence.block == scene.sentence.block
    sewn = sewn and before is not None and bool(before.kinds & {"stitch", "strandword", "pattern", "material"})
    return sewn and _of_a_suture(desk, scene)


_WHAT_WAS_DONE = frozenset(["this", "same", "procedure", "technique", "repair", "it"])
_ONTO = frozenset(["on", "for", "in", "with", "at"])


def _and_its_rim(rest: list[str]) -> bool:
    """'The same core, same epi', 'the same core and epitendinous', not 'the same core but no epitendinous'."""
    return not _PERIPHERAL_NOUNS.isdisjoint(rest) and _NONE_OF_IT.isdisjoint(rest)


_NONE_OF_IT = frozenset(["no", "not", "without"])


def _given_the_same(desk: Desk, scene: Scene, k: int) -> bool:
    """'To the little finger I gave just the same', right behind a sentence on the suture of a tendon."""
    lead = [w for w in scene.words(max(scene.sentence.i, k - 5), k) if w not in _JUST]
    gives = lead[-1:] != [] and lead[-1] in _GAVE and scene.page.words[k - 1] == "the"
    ends = scene.next_word(k + 1) in ("to", "in", *_SAYS_NO_NOUN)
    before = desk.scene_before(scene)
    if not gives or not ends or before is None or before.sentence.block != scene.sentence.block:
        return False
    sewn = before.kinds & {"stitch", "strandword", "pattern", "material"}
    return bool(sewn) and before.kinds.isdisjoint(_OTHER_THINGS)


_JUST = frozenset(["the", "just", "exactly", "precisely", "much", "it", "all"])
_GAVE = frozenset(["gave", "given", "got", "did", "received"])
_OTHER_THINGS = frozenset(["structure", "sided", "anynerve", "anyartery", "pulley", "bundle"])


def _label_answered(scene: Scene, k: int) -> str:
    """'Epitendinous: the same', 'Purchase: same': the label tells what is the same as before; '' for any other."""
    first = scene.sentence.i
    lead = [w for w in scene.words(first, k) if w not in ("the", ":") and not w.startswith("..")]
    if scene.next_word(k + 1) not in ("", ".") or ":" not in scene.words(first, k) or len(lead) > 2:
        return ""
    if any(m.i == first for m in scene.of("bite")):
        return "purchase"
    return scene.sentence.section if scene.sentence.section in (CORE, PERIPHERAL) else ""


_PERIPHERAL_NOUNS = frozenset(["epitendinous", "peripheral", "epi", "circumferential", "outer"])


def _slip_behind(scene: Scene, k: int) -> bool:
    """'The radial slip was joined with a figure-of-eight, and so was the ulnar one.'"""
    behind = [g for g in scene.setting.groups if 0 <= g.i - k <= 1 and any(slip for _, _, slip in g.pairs)]
    return bool(behind) and any(g.j < k for g in scene.setting.groups if any(slip for _, _, slip in g.pairs))


def _part_told(scene: Scene, i: int) -> str:
    """'7/0 Prolene running, same as the middle': only the peripheral suture is told of, so only it is the same."""
    first, _ = scene.part(i)
    said = scene.words(scene.sentence.i, i)
    if [w for w in said[-6:] if w not in _LEADING_ON][-2:] in _ENDS_AS:
        return "ends"  # 'Ends as the FDP' says nothing of a suture
    if said.count("same") > 1 and {"core", "suture", "stitch"} & set(said) and _PERIPHERAL_NOUNS & set(said):
        return "all"  # 'with the same core suture and the same epitendinous suture as the index'
    told = {a.role for a in anchors(scene) if first <= a.i < i and a.role != TENDON}
    words = scene.words(first, i)
    if any(words[k] == "same" and words[k + 1] in ("core", "stitch", "suture") for k in range(len(words) - 1)):
        return "core"  # 'Same core as the index'
    if told == {CORE} and words[-2:-1] == ["core"] and _rim_too(scene.words(i, scene.sentence.j)):
        return "all"
    if told == {CORE} and words[-2:-1] == ["core"]:
        return "core"  # 'core as for the ring finger; no epitendinous'
    return "peripheral" if told and told <= {PERIPHERAL, "pattern"} else ""


_LEADING_ON = frozenset(["the", "in", "of", "were", ":", "those"])
_ENDS_AS = (["ends", "as"], ["ends", "like"], ["edges", "as"], ["edges", "like"], ["stumps", "as"], ["stumps", "like"])


def _rim_too(rest: list[str]) -> bool:
    """'FDP core as index (epitendinous too)', 'core as for the ring, peripheral suture also'."""
    nouns = [k + 1 + (rest[k + 1 : k + 2] == ["suture"]) for k, word in enumerate(rest) if word in _PERIPHERAL_NOUNS]
    return _NONE_OF_IT.isdisjoint(rest) and any(rest[k : k + 1] in _ALSO or rest[k : k + 2] in _ALSO for k in nouns)


_ALSO = (["too"], ["also"], ["likewise"], ["as", "well"], ["the", "same"])


def _led_to(between: list[str]) -> bool:
    """'... that of the little finger in the same way', '..., then the superficiales were sewn in similar manner'."""
    short = 0 < len(between) <= _NEXT_TO and "," not in between
    return short or (0 < len(between) <= _FAR and _WAS_SEWN.issuperset(between))


_NEXT_TO = 2  # words
_WAS_SEWN = frozenset(
    [
        *("was", "were", "also", "then", "all", "both", "each", "in", "a", "the", "an", "by", "with", "using"),
        *("repaired", "sutured", "sewn", "joined", "done", "mended", "treated", "managed"),
    ]
)


def _targets(desk: Desk, scene: Scene, i: int, source: Group | None) -> list[Target]:
    groups = [g for g in scene.setting.groups if g is not source and not g.reference and (g.tendons or g.digits)]
    if source is None and scene.words(i, i + 2) in (["so", "was"], ["so", "were"]):
        groups = [g for g in groups if 0 <= g.i - i - 2 <= 1]
    groups = _compared_there(scene, groups, i) if source is not None else _not_behind(scene, groups, i)
    beside = [g for g in groups if g.j == i or (g.j == i - 1 and scene.page.words[g.j] == "the")]
    if source is None and beside:
        groups = beside[-1:]  # 'the profundus with 3-0, the superficialis likewise', 'FDP index the same'
    elif source is None and groups and _led_to(scene.words(groups[-1].j, i)):
        groups = groups[-1:]  # '..., and that of the little finger in the same way'
    elif source is None and ";" in scene.words(scene.sentence.i, i):
        clause = i - scene.words(scene.sentence.i, i)[::-1].index(";")
        own = [g for g in groups if clause <= g.i < i]  # '...; the ring one, also cut, got the same core'
        groups = own or [g for g in groups if g.i >= i] or groups  # '...; the same thing for the FDS of the index'
    last = next((g for g in reversed(groups) if g.j <= i), None)
    stitches = [m.i for m in scene.of("stitch") if m.i < i]
    if source is None and last is not None and stitches and stitches[0] < last.i <= stitches[-1] <= i:
        groups = [last]  # '..., and in the middle FDP a cruciate of the same suture'
    done = next((g for g in groups if g.digits and not g.tendons and _done_for(scene, i, g)), None)
    groups = [done] if done is not None else groups
    named = [t for g in groups if g.tendons for t in group_targets(scene, g)]
    if not named and groups:
        digits = tuple(d for g in groups for d in g.digits)
        named = [t for t in desk.repairable(digits) if t.tendon in ("FDP", "FPL")] or desk.repairable(digits)
    named = named or carried(desk, scene)[0]
    return [t for t in named if desk.may_be_repaired(t)]


def _not_behind(scene: Scene, groups: list[Group], i: int) -> list[Group]:
    """'Small: same for FDP; FDS left': nothing behind the semicolon, where another is named before it."""
    stop = next((k for k in range(i, scene.sentence.j) if scene.page.words[k] == ";"), scene.sentence.j)
    here = [g for g in groups if g.i < stop]
    return here if any(g.tendons for g in here) else groups


def _compared_there(scene: Scene, groups: list[Group], i: int) -> list[Group]:
    """'FDPs four strands; FCR as FDP; PL left': what stands in the clause of the comparison."""
    stops = [k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] == ";"]
    first = max((k for k in stops if k < i), default=scene.sentence.i)
    last = min((k for k in stops if k > i), default=scene.sentence.j)
    here = [g for g in groups if first <= g.i < last]
    return here if stops and here else groups


def _done_for(scene: Scene, i: int, group: Group) -> bool:
    """'the same was done for the ring finger': the finger right behind is the one it was done for."""
    lead = [w for w in scene.words(i, group.i) if w != "the"]
    return lead[-1:] in (["for"], ["in"], ["to"], ["on"]) and len(lead) <= 4


def _source(desk: Desk, scene: Scene, source: Group | None) -> Target | None:
    if source is None:
        return None
    if source.tendons:
        named = group_targets(scene, source)
        sewn = [t for t in (*named, *desk.repairable()) if desk.may_be_repaired(t) and t.tendon in source.tendons]
        return next((t for t in sewn if t in named or not source.digits), named[0])
    kinds = [t.tendon for g in scene.setting.groups if g.tendons and not g.reference for t in group_targets(scene, g)]
    kinds = kinds or [t.tendon for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    possible = [t for t in desk.repairable(source.digits) if not kinds or t.tendon in kinds] or desk.repairable(
        source.digits
    )
    return next((t for t in possible if not kinds and t.tendon in ("FDP", "FPL")), possible[0] if possible else None)


def take_over(desk: Desk) -> None:
    """Give the suture of the source to every target of a reference that has none of its own."""
    for copy in desk.copies:
        source = copy.source or _before(desk, copy, _RESULTS if copy.fields in ("results", "test") else _KNOWN_BY)
        if source is None:
            continue
        known = desk.told_of("repairs", (source.digit, source.tendon, source.slip))
        given = [f for f in known if not f.header or copy.scene.header]  # a list under 'What was done' tells both
        away = words_cut_away(known)  # '3 mm taken back': no length that the other tendon could share
        given = [f for f in given if f.field != "purchase_mm" or away.isdisjoint(range(*f.spans[0]))]
        wanted = {
            "peripheral": _PERIPHERAL,
            "core": _CORE,
            "thread": _THREAD,
            "results": _RESULTS,
            "test": ("test",),
            "stitch": _STITCH,
            "purchase": ("purchase_mm",),
            "knot": ("knot",),
            "material": ("size", "material"),
            "count": tuple(f for f in _CORE if f not in ("purchase_mm", "knot")),
            "ends": ("ends",),
        }.get(copy.fields, (*_CORE, *_PERIPHERAL))
        for target in copy.targets:
            if target != source:
                _give(desk, copy, target, [f for f in given if f.field in wanted and f.order < copy.span[1]])


def _before(desk: Desk, copy: Copy, known_by: tuple[str, ...]) -> Target | None:
    """Return the tendon of which one of the fields was told last before a reference."""
    told = [f for f in desk.laid(*known_by, before=copy.span[0]) if f.group == "repairs"]
    told = [f for f in told if Target(*f.entry) not in copy.targets and (not f.header or copy.scene.header)]
    alike = [f for f in told if copy.targets and f.entry[1] == copy.targets[0].tendon]
    if alike and told[-1].entry[0] != copy.targets[0].digit:
        told = alike  # 'RF: FDP ditto' after the FDP and the FDS of another finger
    return Target(*told[-1].entry) if told else None


_BY_REFERENCE = "said by reference to another repair"


def _give(desk: Desk, copy: Copy, target: Target, given: list[Finding]) -> None:
    entry = (target.digit, target.tendon, target.slip)
    told = [f for f in desk.told_of("repairs", entry) if not f.header]
    own = {f.field for f in told}
    stitches = {f.value for f in told if f.field == "stitch"}
    if (
        copy.fields not in ("thread", "material", "purchase", "knot")
        and stitches
        and not stitches & {f.value for f in given if f.field == "stitch"}
    ):
        own.update(_CORE)  # a stitch of its own says that its core suture is another
    for f in given:
        if f.field not in own:
            # Seldom misread, so one look is asked for, at what the repair bears, and not one at each of its facts.
            doubts = [Reason("by_reference")] if f.field == "strands" else []
            desk.tendon(copy.scene, target, f.field, f.value, [copy.span], _BY_REFERENCE, *doubts)
