"""Strand counts: 'four-strand', 'two two-strand repairs', 'strands: 4', a bare count carried on."""

import re
from itertools import pairwise, zip_longest

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import NUMBER_WORDS
from notereader.reader.page import Break, Mention, Page
from notereader.reader.rules.sutures.corrected_counts import put_right
from notereader.reader.rules.sutures.counted_by_others import other_counts
from notereader.reader.rules.sutures.counts_of_excepted import bare_counts, excepted_with
from notereader.reader.rules.sutures.guesses import is_guess
from notereader.reader.rules.sutures.lost_strands import (
    LOOPS,
    lay_the_rest,
    lay_what_is_left,
    less_the_lost,
    lost,
    lost_of_them,
)
from notereader.reader.rules.sutures.pairs_added import with_added_pair
from notereader.reader.rules.sutures.roles import of_thing_sewn
from notereader.reader.rules.sutures.stitches import of_other_structure
from notereader.reader.rules.sutures.strands_that_held import left_of_those_before, that_held
from notereader.reader.rules.sutures.suture_owners import all_in_turn, respective, suture_owners
from notereader.reader.rules.sutures.threads import taken_back
from notereader.reader.scene import Scene
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import word_list

_SUMS_UP = word_list("sutures", "sums_up")
_ADDED_CORE = word_list("sutures", "added_core")
_TISSUE = word_list("sutures", "tissue")
_BOX = word_list("sutures", "box")
_OF_REPAIR = word_list("sutures", "of_repair")
_CROSSING = word_list("sutures", "crossing")
_COUNT_WORDS = {word: int(n) for word, _, n in (pair.partition("=") for pair in word_list("sutures", "count_words"))}
_REPAIR_WORDS = word_list("sutures", "repair_words")
# Words between a count and its strands: 'four separate core strands', '6 x strands'.
_BETWEEN = frozenset(["-", "core", "main", "separate", "full", "x", "individual", "parallel", "longitudinal", "suture"])
_ONE_WORD = re.compile(r"(1?[0-9])(strands?|stranded|str|strd|s|st)\Z")
_GLUED = frozenset(
    f"{n}{word}" for n in range(1, 17) for word in ("strand", "strands", "stranded", "str", "strd", "s", "st")
)
_TIMES = re.compile(r"([2468])x\Z")

_ENDS = frozenset(["ends", "edges", "stumps"])

# 'These are two-strand repairs' speaks of sutures told before it.
_POINTING = frozenset([("these", "are"), ("they", "are"), ("those", "are")])


def _of_a_part(desk: Desk, scene: Scene, count: tuple[int, int, int]) -> bool:
    """'Four strands. ... before the second pair of strands was tied': some of those that were counted before."""
    number, i, j = count
    ordered = scene.word_before(i) in _ORDER and scene.page.words[j - 1] == "strands"
    return ordered and any(_more(f, number) for f in desk.laid("strands", before=i))


def _more(f: Finding, number: int) -> bool:
    return isinstance(f.value, int | float) and f.value > number


_ORDER = frozenset(["first", "second", "third", "fourth", "last", "final", "next", "remaining", "other"])


def _of_old_suture(scene: Scene, j: int) -> bool:
    """'4 strands of old suture were removed', '... of the previous repair were still there'."""
    behind = scene.words(j, min(j + 3, scene.sentence.j))
    return behind[:1] == ["of"] and not _OLD.isdisjoint(behind)


_OLD = frozenset(["old", "previous", "former"])


def _of_the_wire(scene: Scene, i: int, j: int) -> bool:
    """'A seven-strand 4-0 wire', 'a multi-strand (seven filament) wire': of what the thread itself is made."""
    if not _FILAMENTS.isdisjoint(scene.words(i, j + 1)):
        return True
    behind = [
        w for w in scene.words(j, min(j + 4, scene.sentence.j)) if w not in _KIND_OF_WIRE and not w[0].isdecimal()
    ]
    return (
        behind[:1] != [] and behind[0] in _WIRES and behind[1:2] not in (["core"], ["repair"], ["suture"], ["sutures"])
    )


_FILAMENTS = frozenset(["filament", "filaments"])
_KIND_OF_WIRE = frozenset([")", "(", "steel", "stainless", "braided", "-", "0"])
_WIRES = frozenset(["wire", "thread", "cable", "braid"])


def strands(desk: Desk, scene: Scene) -> list[tuple[int, int, int]]:
    """Find the strand counts of a sentence, give each to its tendons, and return them with their words."""
    of_them = lost_of_them(desk, scene)
    if of_them is not None:
        lay_the_rest(desk, scene, of_them, of_them=True)
    if "strandword" not in scene.kinds:
        left = left_of_those_before(scene)
        if left is not None:
            lay_what_is_left(desk, scene, left)
    if "strandword" not in scene.kinds and (_GLUED | LOOPS).isdisjoint(scene.said):
        return []
    counts = [
        c
        for c in find_strands(scene)
        if scene.told(c[1]) and scene.told(c[2] - 1) and not of_other_structure(scene, c[1], c[2])
    ]
    counts = [c for c in counts if not of_thing_sewn(scene, c[1])]
    counts = [c for c in counts if not (_of_old_suture(scene, c[2]) or _of_the_wire(scene, *c[1:]))]
    counts = [c for c in counts if not _of_a_part(desk, scene, c)]
    counts = _with_the_first(scene, counts) + _left_out(scene, counts) + _but_with(scene, counts)
    counts += other_counts(scene, counts)
    if scene.left_out and counts:
        counts += [c for c in bare_counts(scene) if all(c[1] != i for _, i, _ in counts)]
    counts = [with_added_pair(scene, put_right(scene, count)) for count in counts]
    counts = [a for a, b in zip_longest(counts, counts[1:]) if b is None or not taken_back(scene, a[2], b[1])]
    held = that_held(scene)
    counts = [held] if held is not None else counts
    gone = lost(scene) if held is None else None
    whole, counts = counts, less_the_lost(counts, gone) if gone is not None else counts
    if gone is not None and not counts:
        lay_the_rest(desk, scene, gone)
    for count, i, j in counts:
        if _not_with(scene, i) or is_guess(scene, i):
            continue
        own = excepted_with(desk, scene, i)
        for target in own:
            entry = (target.digit, target.tendon, target.slip)
            desk.add(scene, "repairs", entry, "strands", count, [(i, j)], "count of the excepted", of_excepted=True)
        if not own and not scene.negated(i, j, 3) and count <= 16 and not (_added_on(scene, i) or _at_most(scene, i)):
            targets, doubts = suture_owners(desk, scene, i, j)
            if len(counts) == 1 and not _POINTING.isdisjoint(pairwise(scene.words(scene.sentence.i, i))):
                targets = [t for t in targets if desk.has_suture(t)] or targets
            peers = [c[1] for c in counts]
            for target in respective(scene, i, peers, all_in_turn(desk, scene, peers) or targets):
                laid = len(desk.findings)
                desk.tendon(scene, target, "strands", count, [(i, j)], "strand count stated", *doubts)
                for finding in desk.findings[laid:]:  # none where the sentence leaves the tendon out
                    finding.addendum = finding.addendum or _sums_up(desk, scene, target, count, i)
    if whole:
        desk.strands_at = scene.sentence.j
    return whole


def _not_with(scene: Scene, i: int) -> bool:
    """'It was not repaired with six strands', 'repaired not with six strands but with four'."""
    lead = scene.words(max(scene.sentence.i, i - _LEAD), i)
    behind = lead[len(lead) - lead[::-1].index("not") :] if "not" in lead else ["not"]
    return _SEWN_WITH.issuperset(behind)


_LEAD = 5  # words
_SEWN_WITH = frozenset(
    ["repaired", "sutured", "sewn", "done", "joined", "with", "by", "using", "in", "a", "the", "full"]
)


def _but_with(scene: Scene, counts: list[tuple[int, int, int]]) -> list[tuple[int, int, int]]:
    """'Not repaired with six strands but with four': the second count goes without its noun."""
    if len(counts) != 1 or not _not_with(scene, counts[0][1]):
        return []
    k = next((k for k in range(counts[0][2], scene.sentence.j - 1) if scene.page.words[k] == "but"), -1)
    k += 1 + (scene.next_word(k + 1) in ("with", "only", "by"))
    count = _count_at(scene.page, k) if 0 < k < scene.sentence.j else 0
    return [(count, k, k + 1)] if count in (2, 4, 6, 8) and scene.next_word(k + 1) in ("", ".", ",", ";") else []


def _added_on(scene: Scene, i: int) -> bool:
    """'It parted, so I put in another two strands': how many were added, not how many cross the repair."""
    return scene.word_before(i) in ("another", "further")


def _at_most(scene: Scene, i: int) -> bool:
    """'Up to six strands', 'fewer than four': no count, and more than was perhaps placed."""
    lead = scene.words(max(scene.sentence.i, i - 3), i)
    return lead == ["no", "more", "than"] or lead[-2:] in _FEWER or lead[-1:] in _NEARLY


_FEWER = (["up", "to"], ["at", "most"], ["fewer", "than"], ["less", "than"], ["short", "of"])
_NEARLY = (["almost"], ["nearly"], ["under"], ["below"])


def _with_the_first(scene: Scene, counts: list[tuple[int, int, int]]) -> list[tuple[int, int, int]]:
    """'repaired with six, four and two strands respectively': all but the last count have no noun of their own."""
    if len(counts) != 1 or "respectively" not in scene.said:
        return counts
    found = list(counts)
    k = counts[0][1] - 1
    while k > scene.sentence.i and scene.page.words[k] in ("and", ","):
        k -= scene.page.words[k - 1] == ","  # ', and'
        count = _count_at(scene.page, k - 1)
        if count not in (2, 4, 6, 8):
            break
        found.insert(0, (count, k - 1, k))
        k -= 2
    return found if len(found) > 1 else [*found, *_behind_its_label(scene, counts[0][2])]


def _behind_its_label(scene: Scene, k: int) -> list[tuple[int, int, int]]:
    """'Strands: 6 and 4 respectively': the counts behind the first, up to what deals them out."""
    found: list[tuple[int, int, int]] = []
    while k < scene.sentence.j and scene.page.words[k] in ("and", ",", "/"):
        k += 1
        count = _count_at(scene.page, k)
        if count in (2, 4, 6, 8):
            found.append((count, k, k + 1))
            k += 1
    return found if scene.next_word(k) == "respectively" else []


def _left_out(scene: Scene, counts: list[tuple[int, int, int]]) -> list[tuple[int, int, int]]:
    """'the FDP of the small finger with four strands, the FDP of the ring with six, ...': the noun is left out."""
    if len(counts) != 1:
        return []
    named = [g for g in scene.setting.groups if (g.digits or g.tendons) and g.i >= counts[0][2]]
    for group in (g for g in named if scene.next_word(g.j) == "with" and g.j + 1 < scene.sentence.j):
        closes = scene.next_word(group.j + 2) in ("", ",", ".", ";", "and")
        count = _count_at(scene.page, group.j + 1)
        if count in (2, 4, 6, 8) and closes and scene.told(group.j + 1):
            return [(count, group.j + 1, group.j + 2)]
    return (
        _bracketed_next(scene, counts[0][2]) or _and_two_in(scene, named) or _the_other_six(scene, named, counts[0][1])
    )


def _bracketed_next(scene: Scene, k: int) -> list[tuple[int, int, int]]:
    """'Strands: 4 (FDP), 2 (FDS)': the counts behind the first, each with its tendon or finger in brackets."""
    found: list[tuple[int, int, int]] = []
    while scene.next_word(k) == "(":
        group = next((g for g in scene.setting.groups if g.i == k + 1 and scene.next_word(g.j) == ")"), None)
        if group is None:
            return []
        j = group.j + 1 + (scene.next_word(group.j + 1) in (",", ";", "and", "/"))
        count = _count_at(scene.page, j) if j < scene.sentence.j else None
        if count not in (2, 4, 6, 8) or scene.next_word(j + 1) != "(":
            break
        found.append((count, j, j + 1))
        k = j + 1
    return found


def _the_other_six(scene: Scene, named: list[Group], i: int) -> list[tuple[int, int, int]]:
    """'The index got four strands and the ring two': a bare count behind a finger, as the first stood behind one."""
    if not any(g.digits and g.j <= i for g in scene.setting.groups):
        return []
    for group in (g for g in named if g.digits and not g.tendons):
        led = scene.word_before(group.i - (scene.word_before(group.i) == "the"))
        k = _behind_its_aside(scene, group)
        count = _count_at(scene.page, k) if k < scene.sentence.j else 0
        closes = scene.next_word(k + 1) in ("", ",", ".", ";")
        if led in ("and", ",", ";", "but") and count in (2, 4, 6, 8) and closes and scene.told(k):
            return [(count, k, k + 1)]
    return []


def _behind_its_aside(scene: Scene, group: Group) -> int:
    """'..., the small, whose ends were ragged, two': the word behind a finger and what is said of it in passing."""
    if scene.words(group.j, group.j + 2) not in _ASIDES:
        return group.j
    behind = range(group.j + 1, min(group.j + _ASIDE, scene.sentence.j))
    return next((k + 1 for k in behind if scene.page.words[k] == ","), group.j)


_ASIDES = ([",", "whose"], [",", "with"], [",", "its"], [",", "which"], [",", "where"])
_ASIDE = 9  # words


def _and_two_in(scene: Scene, named: list[Group]) -> list[tuple[int, int, int]]:
    """'Four strands of 3-0 in the profundus tendons and two in the superficialis tendons'."""
    for group in named:
        k = group.i - 1 - (scene.word_before(group.i) == "the")
        led = scene.words(k - 2, k + 1)
        count = _count_at(scene.page, k - 1)
        if led[:1] in (["and"], [","]) and led[-1] in ("in", "for", "to") and count in (2, 4, 6, 8) and scene.told(k):
            return [(count, k - 1, k)]
    return []


def _sums_up(desk: Desk, scene: Scene, target: Target, count: int, i: int) -> bool:
    """'a second one at right angles, so in all we count four strands': the sum of cores told one by one."""
    before = desk.scene_before(scene)
    words = scene.words(before.sentence.i if before is not None else scene.sentence.i, scene.sentence.j)
    text = f" {' '.join(words)} "
    if _totals(scene, i) and all(v < count for v in _told_counts(desk, target, count)):
        return True
    drawn = _draws_the_sum(scene, i)
    added = not _ADDED_CORE.isdisjoint(words) or (drawn and _then_another(scene, i))
    if not added or not (drawn or any(f" {p} " in text for p in _SUMS_UP)):
        return False
    told = _told_counts(desk, target, count)
    return not told or any(v and count % v == 0 and v < count for v in told)


def _told_counts(desk: Desk, target: Target, but: int) -> list[int]:
    """Return the other strand counts told of a tendon so far."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    return [f.value for f in told if f.field == "strands" and isinstance(f.value, int) and f.value != but]


def _totals(scene: Scene, i: int) -> bool:
    """'..., 2 strand, then a cruciate on top, 4 strand, total six strands': the count at word i is called the total."""
    lead = scene.words(max(scene.sentence.i, i - 3), i)
    wished = not all(scene.told(k) for k in range(scene.sentence.i, i))
    return lead[-1:] == ["total"] or (lead[-2:] == ["total", "of"] and not wished)


def _draws_the_sum(scene: Scene, i: int) -> bool:
    """Tell whether 'so' or 'makes' leads to the count at word i, in words that tell of nothing merely wished for."""
    lead = scene.words(max(scene.sentence.i, i - 5), i)
    wished = ("so", "as") in pairwise(lead) or not all(scene.told(k) for k in range(scene.sentence.i, i))
    return not wished and not _SO.isdisjoint(lead)


_SO = frozenset(["so", "thus", "hence", "makes", "making", "giving", "gives"])


def _then_another(scene: Scene, i: int) -> bool:
    """'a modified Kessler, two strands, and then a horizontal mattress, so that makes four strands'."""
    stitches = [m for m in scene.of("stitch") if m.j <= i and scene.told(m.i)]
    return len(stitches) > 1 and "then" in scene.words(stitches[0].j, stitches[-1].i)


def find_strands(scene: Scene) -> list[tuple[int, int, int]]:
    """Return (count, i, j) of every strand count in a sentence: 'four-strand', '6 strands', 'strands: 4'."""
    found: list[tuple[int, int, int]] = []
    page = scene.page
    found += [m for k in range(scene.sentence.i, scene.sentence.j) for m in _in_one_word(scene, k)]
    for mention in scene.of("strandword"):
        k = mention.i - 1 if mention.i < mention.j else -1
        while k > scene.sentence.i and page.words[k] in _BETWEEN:
            k -= 1
        k = _before_the_thread(scene, k)
        count = _count_at(page, k)
        ticked = _ticked_before(page, k, scene.sentence.i)
        if ticked is not None:
            found.append(ticked)
            continue
        if count is None:
            count, k = _count_word(page, k, scene.sentence.i)
        if count is None:
            count, end = _count_after(page, mention.j, scene.sentence.j, mention.i if mention.i == mention.j else -1)
            if count is None and _heads_its_line(scene, mention):
                count, end = _count_at(page, mention.j), mention.j + 1
            if count is not None:
                found.append((count, mention.i, end))
            continue
        if page.words[mention.j - 1] == "stranded" and count == 2 and page.words[k] == "double":
            continue
        if _is_tissue(scene, mention.j) or scene.next_word(mention.j) in ("drain", "glove", "wire", "rubber"):
            continue
        behind = scene.words(mention.j, min(mention.j + 5, scene.sentence.j))
        ends = behind[:1] == [","] and not _ENDS.isdisjoint(behind[1:3])  # '4 strands, ends trimmed'
        if not ends and {"trimmed", "torn", "frayed"} & set(behind):
            continue  # strands of a torn tendon or muscle
        if _ends_range(page, k):
            found.append((_count_at(page, k - 2) or count, k - 2, mention.j))  # of a range the weaker
            continue
        i = k
        times = _times_before(page, k, scene.sentence.i)
        if times:
            count, i = count * times[0], times[1]
        found.append((count, i, mention.j))
    return found


def _heads_its_line(scene: Scene, mention: Mention) -> bool:
    """'Strands 4.', 'Strands 6, knots buried': a label without a mark, and its figure closes the statement."""
    opens = mention.i == scene.sentence.i and scene.words(mention.i, mention.j) == ["strands"]
    return opens and scene.next_word(mention.j + 1) in ("", ".", ",", ";")


def _ticked_before(page: Page, k: int, first: int) -> tuple[int, int, int] | None:
    """'[ ] 2 [x] 4 [ ] 6 strands': the ticked one of the counts ahead of the word, with its words."""
    if k < first or page.standing[k] != "unticked":
        return None
    for m in range(k, first + 2, -1):
        count = _count_at(page, m)
        if count is not None and page.words[m - 1] in ("]", ")") and page.words[m - 2] in ("x", "v", "y"):
            return count, m, m + 1
    return None


def _count_word(page: Page, k: int, first: int) -> tuple[int | None, int]:
    """Read 'tetra-strand', 'VI-strand', '(2)-strand', '4x strand', 'half a dozen strands', 'a pair of strands'."""
    word = page.words[k] if k >= first else ""
    if word in _COUNT_WORDS:
        return _COUNT_WORDS[word], k
    if word == ")" and k - 2 >= first and page.words[k - 2] == "(":
        return _count_at(page, k - 1), k - 2
    if page.words[max(first, k - 2) : k + 1] == ["half", "a", "dozen"]:
        return 6, k - 2
    if page.words[max(first, k - 1) : k + 1] in (["pair", "of"], ["couple", "of"]):
        return 2, k - 1
    if k - 2 >= first and page.words[k - 1 : k + 1] == ["pairs", "of"] and (_count_at(page, k - 2) or _MANY) < _MANY:
        return 2 * (_count_at(page, k - 2) or 0), k - 2
    times = _TIMES.match(word)
    return (int(times.group(1)), k) if times else (None, k)


_MANY = 5  # pairs


def _before_the_thread(scene: Scene, k: int) -> int:
    """'Four 3-0 Ethibond strands', '4x 4-0 nylon core strands': the word before the thread that ends at word k."""
    named = {n for m in scene.of("material") for n in range(m.i, m.j)}
    first = k
    while first > scene.sentence.i and (first in named or (first < k and scene.page.words[first] in sizes())):
        first -= 1
    return first - (first < k and scene.page.words[first] == "x")


def _in_one_word(scene: Scene, k: int) -> list[tuple[int, int, int]]:
    """Read '4strand', '6str', and '4S' beside words of a repair: count and strands in one word."""
    word = scene.page.words[k]
    if not word[0].isdecimal():
        return []
    match = _ONE_WORD.match(word)
    if match is None:
        return []
    if match.group(2) in ("s", "st"):
        near = scene.words(max(scene.sentence.i, k - 6), min(scene.sentence.j, k + 4))
        written = match.group(2) == "st" or scene.page.raw(k, k + 1)[-1] == "S"
        named = any(-4 <= m.i - k <= 3 for m in scene.of("stitch"))
        if not written or (not named and _REPAIR_WORDS.isdisjoint(near)) or int(match.group(1)) not in (2, 4, 6, 8):
            return []
    return [(int(match.group(1)), k, k + 1)]


def _ends_range(page: Page, k: int) -> bool:
    """Tell whether the count at word k is the upper end of a range: 'four to six', '4-6', 'four or six'."""
    if k < 2 or _count_at(page, k - 2) is None:
        return False
    tight = page.breaks[k - 1] == page.breaks[k] == Break.NONE
    between = page.words[k - 1] == "and" and page.words[k - 3 : k - 2] == ["between"]  # 'between four and six'
    return between or page.words[k - 1] in ("to", "or") or (page.words[k - 1] in ("-", "/") and tight)


def _count_at(page: Page, k: int) -> int | None:
    if not 0 <= k < len(page.words):
        return None
    word = page.words[k]
    if word in NUMBER_WORDS:
        return NUMBER_WORDS[word] or None
    return int(word) if word.isdecimal() and 1 <= int(word) <= 16 else None


def _count_after(page: Page, j: int, end: int, virtual: int = -1) -> tuple[int | None, int]:
    """Read 'strands: 4', 'strands x 4', 'strands in tendon [ ] 2 [x] 4'."""
    k = _box_after(page, j, end)
    if k == j:
        k = _label_goes_on(page, j, end)
    start = k
    while k < end and page.words[k] in (":", "=", "x", "-", "|", "?") and k - start < 2:  # 'how many strands? Six'
        k += 1
    chosen = k
    while k < end and (page.standing[k] == "unticked" or (k > chosen and page.words[k] == ">")):
        k += 1  # 'strands: 2 / 4 / 6 -> 4'
    if k == j and page.words[k : k + 1] in _WAS and _counted_label(page, j):
        k += 1  # 'number of strands was four'
    right = _put_right_at(page, k if k > j else j + (page.words[j : j + 1] in (["count"], ["number"])))
    if right and _count_at(page, right):
        return _count_at(page, right), right + 1
    column = k < end and page.breaks[k] >= Break.COLUMN  # 'Core suture strands      4'
    if (k == j and j != virtual and not _counted_label(page, j) and not column) or k >= end:
        return None, j
    return _count_at(page, k), k + 1


def _put_right_at(page: Page, k: int) -> int:
    """Return the word after 'should read', 'is to be corrected to' at word k, else 0: 'strand count should be four'."""
    words = page.words
    j = k
    while j < len(words) and j - k < _LONGEST_VERB and words[j] in _PUTS_RIGHT:
        j += 1
    return (
        j if words[k : k + 1] in (["should"], ["must"], ["is"], ["to"], ["corrected"], ["amended"]) and j - k > 1 else 0
    )


_LONGEST_VERB = 5  # words
_PUTS_RIGHT = frozenset(["should", "must", "is", "to", "read", "be", "have", "been", "corrected", "amended", "changed"])


def _label_goes_on(page: Page, j: int, end: int) -> int:
    """Return the word after 'strands crossing the site', 'strand count', up to its mark or figure; else word j."""
    k = j
    while k < end and k - j < 6 and page.words[k] in _CROSSING:
        k += 1
    marked = k < end and (page.words[k] in (":", "=") or "count" in page.words[j:k])
    behind = k > j and page.words[k + 1 : k + 3] == ["in", "number"]
    counted = "count" in page.words[j:k] or _counted_label(page, j)
    if k > j and page.words[k : k + 1] in _WAS and counted:
        # 'the number of strands crossing the repair is 6', 'the strand count is in fact 4'
        return next((n for n in range(k + 1, min(k + 4, end)) if page.words[n] not in _IN_FACT), k + 1)
    return k if marked or behind else j


_WAS = (["was"], ["were"], ["is"])
_IN_FACT = frozenset(["in", "fact", "actually", "really", "truth", "only", "reality"])


def _counted_label(page: Page, j: int) -> bool:
    """'number of core strands two', 'No. of strands four (4)'."""
    before = page.words[max(0, j - 6) : j]
    return "of" in before and not {"number", "no", "nos"}.isdisjoint(before)


def _box_after(page: Page, j: int, end: int) -> int:
    """Return the word of the ticked answer after a label that ends before word j, or j where no boxes follow."""
    k = j
    while k < end and (page.words[k] in _OF_REPAIR or page.words[k].startswith("..")):
        k += 1
    boxed = k < end and (page.words[k] in ("[", "(") or page.standing[k] == "unticked")
    if not boxed and not (k > j and page.words[k - 1].startswith("..")):
        return j
    while k < end and (page.words[k] in _BOX or page.standing[k] == "unticked"):
        k += 1
    return k


def _times_before(page: Page, k: int, first: int) -> tuple[int, int] | None:
    """Read 'two two-strand repairs' as four strands in all; the 2 of 'FDP x2 4 strand cruciate' counts tendons."""
    if page.words[k - 2] == "x" and k - 3 in page.tendon_words:
        return None
    if k - 1 >= first and page.words[k - 1] in ("two", "three", "2", "3") and page.breaks[k] > 0:
        times = _count_at(page, k - 1)
        return (times, k - 1) if times else None
    return None


def _is_tissue(scene: Scene, j: int) -> bool:
    """'a strand of scar' is no suture; 'eight strands of it', 'six strands of 4-0 nylon' are."""
    if scene.next_word(j) != "of":
        return False
    after = scene.words(j + 1, min(j + 3, scene.sentence.j))
    if (
        not after
        or after[0] == "it"
        or after == ["the", "same"]
        or any(m.kind in ("material",) and j < m.i <= j + 3 for m in scene.mentions)
    ):
        return False
    return after[0] in _TISSUE
