"""Which of the things named in a sentence a word speaks of: 'A3 was released', 'released A3', 'A1 intact, A2 vented'.

A word that touches a thing, with nothing but small words between, belongs to that thing. Otherwise it belongs to the
thing before it, unless another subject has taken over since, or to the one that follows soon.
"""

from dataclasses import dataclass
from itertools import pairwise

from notereader.reader.page import Break, Mention, within
from notereader.reader.rules.asides import aside_words, in_an_aside
from notereader.reader.scene import Scene, Subject
from notereader.reader.standing.negation import next_field, speaker_anew, too_much_for
from notereader.vocabulary.wordlists import word_list

_LINK = word_list("attach", "link")
_SEEN = word_list("attach", "seen")
WEAK = word_list("attach", "weak")
_LEAD = word_list("attach", "lead")
_MEASURE = word_list("attach", "measure")
_PLACE = word_list("attach", "place")
_ASIDE = word_list("attach", "aside")
_CHAIN = word_list("attach", "chain")
_ACTIVE = word_list("attach", "active")
_PASSIVE = word_list("attach", "passive")
_DETERMINED = word_list("attach", "determined")
_BREAKS = word_list("attach", "breaks")
_DENIAL_ENDS = word_list("attach", "denial_ends")
_DENIES_A_LIST = word_list("attach", "denies_a_list")
_TELLING = word_list("attach", "telling")
_OF = frozenset(["of", "the", "a", "an", "this", "its", "was", "were", "is", "pulley"])
_NEEDLESS = (["not", "necessary"], ["not", "needed"], ["not", "required"], ["not", "done"], ["not", "performed"])
_ARE = (["were"], ["was"], ["are"], ["is"])
_ABBREVIATED = frozenset(["prox", "dist", "approx", "ca"])
_STOP = frozenset([";", ".", "|"])
_YES = (["y", ","], ["yes", ","])
_SAME = frozenset(["same", "that", "this"])  # 'the ulnar nerve of the same finger was normal'
_FINGERS = frozenset(["finger", "digit", "hand", "side"])
_EMPTY = frozenset(["unticked", "unfilled", "considered"])


@dataclass(frozen=True, slots=True)
class Thing:
    """Something named in words i to j; `n` is its number among the rule's own things, -1 for any other subject."""

    i: int
    j: int
    n: int = -1
    vague: bool = False  # 'the tendon', 'the repair': takes over only where it touches the word


def others(scene: Scene, kinds: tuple[str, ...]) -> list[Thing]:
    """Return the subjects of the kinds given that may take over a sentence, without those named in passing."""
    found = [s for s in scene.subjects if s.kind in kinds and not _in_passing(scene, s)]
    return [Thing(s.i, s.j, -1, s.group is not None and bool(s.group.generic)) for s in found]


def _in_passing(scene: Scene, subject: Subject) -> bool:
    """Tell whether a subject stands only in a phrase of purpose or place: 'to deliver the profundus'."""
    first = max(scene.sentence.i, subject.i - 3)
    before = scene.words(first, subject.i)
    if in_an_aside(scene, subject.i):
        return True
    if subject.kind == "role" and "its" in before[-2:]:
        return True  # 'A2 shows its old incision'
    while before and before[-1] in ("the", "its", "a", "an", "both", "of", "that"):
        before = before[:-1]
    return bool(before) and before[-1] in _ASIDE


def is_denied(scene: Scene, m: Mention, reach: int = 4) -> bool:
    """Tell whether a word is denied by one before it; 'could not be saved and was excised' denies only the saving."""
    words = scene.page.words
    if too_much_for(scene.page, m.i, scene.sentence) is not None:
        return True
    for cue in within(scene.page.cues, scene.sentence.i, m.i):
        if cue.value != "negated" or cue.j > m.i or m.i - cue.j > reach:
            continue
        between = words[cue.j : m.i]
        alone = words[cue.i] not in _DENIES_A_LIST
        other = alone and ("and" in between or any(cue.j <= s.i < m.i and s.kind != "digit" for s in scene.subjects))
        goes_on = any(a == "and" and b in _GOES_ON for a, b in pairwise(between)) or speaker_anew(between)
        goes_on = goes_on or next_field(scene.page, cue.j, m.i) or _denies_a_good_one(scene, cue.j, m)
        if not (other or goes_on) and not (_DENIAL_ENDS | _TELLING) & set(between):
            return True
    return _needless(scene, m)


def _denies_a_good_one(scene: Scene, k: int, m: Mention) -> bool:
    """'A2 not intact (vented)', 'A2 no longer whole: vented': denied from word k on is the good state, no opening."""
    good = (g for g in scene.of("opened") if g.value == "intact" and k <= g.i and g.j <= m.i)
    return m.value != "intact" and any(True for _ in good)


# 'could be preserved in neither digit and were released': a verb of its own ends the denial.
_GOES_ON = frozenset(["was", "were", "had", "has", "have", "is", "are", "so", "therefore", "i", "we", "then"])


def _needless(scene: Scene, m: Mention) -> bool:
    """Tell whether a deed was not needed: 'venting of A2 was not necessary'."""
    names = {k for p in scene.mentions if p.kind not in ("cue", "opened", "deed") for k in range(p.i, p.j)}
    k = m.j
    while k < scene.sentence.j and k - m.j < 10 and (k in names or scene.page.words[k] in _OF):
        k += 1
    return scene.words(k, min(k + 2, scene.sentence.j)) in _NEEDLESS


def _shortens(words: list[str], k: int) -> bool:
    """'A2: prox. 6 mm open': a stop that ends no sentence, before a figure."""
    return words[max(0, k - 1)] in _ABBREVIATED and words[k + 1 : k + 2] != [] and words[k + 1][0].isdecimal()


class Attachment:
    """The things of one sentence, own and other, asked which of them a word belongs to."""

    def __init__(
        self, scene: Scene, own: list[Thing], other: list[Thing], said: list[Mention], part_words: frozenset[str]
    ) -> None:
        self.scene = scene
        groups = [g for g in scene.setting.groups if g.digits and not g.tendons]
        self.fingers = {k for g in groups for k in range(g.i, g.j)}  # 'of the latter' where a finger is meant
        self.said = {k for m in said for k in range(m.i, m.j)}
        taken = {k for t in own for k in range(t.i, t.j)}
        rest = [t for t in other if not any(k in taken for k in range(t.i, t.j))]
        self.things = sorted([*own, *rest], key=lambda t: (t.i, t.j))
        self.part_words = part_words
        self.asides = aside_words(scene)

    def owners(self, m: Mention, loosely: bool = True) -> list[int]:
        """Return the numbers of the own things that a word speaks of; not `loosely`: only of those it touches."""
        listed = self._listed(m)
        if listed:
            return listed
        thing = self._owner(m, loosely)
        if thing is None:
            return []
        chain = self._chain(thing) if thing.i < m.i else self._chain_ahead(thing)
        if thing.i < m.i and self.scene.word_before(m.i) in ("i", "we"):
            chain = [t for t in chain if t is thing or not self._has_its_own(t)]
        return [t.n for t in chain if t.n >= 0]

    def _has_its_own(self, thing: Thing) -> bool:
        """Tell whether a word of its own leads to a thing: 'I did not disturb the A2, and the A1 I divided'."""
        k = thing.i - 1
        while k >= max(self.scene.sentence.i, thing.i - 7) and k not in self.said:
            word = self.scene.page.words[k]
            if word not in _LEAD and not self._measure(word):
                return False
            k -= 1
        return k in self.said  # 'open the distal half of A2, and A3 I divided'

    def with_others(self, m: Mention) -> bool:
        """Tell whether a word is said of own and other things together: 'A2, FDP and FDS were divided'."""
        thing = self.touches_back(m)
        if thing is None:
            return False
        chain = self._chain(thing)
        return any(t.n < 0 for t in chain) and any(t.n >= 0 for t in chain)

    def touches_back(self, m: Mention) -> Thing | None:
        """Return the thing right before a word, with only small words between."""
        too = too_much_for(self.scene.page, m.i, self.scene.sentence)  # 'cut, too distal to repair'
        begin = m.i if too is None else too
        for thing in reversed(self.things):
            if thing.j <= begin:
                return thing if self._bridged(thing.j, begin) else None
        return None

    def _bridged(self, i: int, j: int) -> bool:
        """Tell whether only small words lead from a thing to what is said of it: 'was seen and', 'torn, '."""
        before = ""
        words = self._between(i, j)
        words = words[2:] if words[:2] in _YES else words  # 'A2 Y, vented 6 mm'
        said = any(k in self.said for k in range(i, j))
        for n, word in enumerate(words):
            bridge = word in _LINK or self._measure(word) or word.startswith("..")
            seen = word in ("and", ",", "+", "&") and _SEEN.intersection([before, *words[max(0, n - 5) : n]])
            led = word == "," and not _SEEN.isdisjoint(words[n + 1 : n + 2])  # '..., seen to be continuous'
            all_of_them = word == "," and words[n + 1 : n + 2] in (["both"], ["each"], ["all"])
            aside = (
                word == "," and words[n + 1 : n + 2] in _ARE
            )  # 'its counterpart, and both nerves of the ring, were fine'
            if not (bridge or seen or led or all_of_them or aside or (said and word in (",", "and"))):
                return False
            before = word
        return len(words) <= 14

    def touches_ahead(self, m: Mention) -> Thing | None:
        """Return the thing right after a word, with only small words between."""
        for thing in self.things:
            if thing.i >= m.j:
                column = Break.COLUMN in self.scene.page.breaks[m.j : thing.i + 1]
                if column and ("_" in self.scene.words(m.j, thing.i) or thing.j in self.said):
                    return None  # 'A2 _intact_   A3 _cut_' of a form filled in, 'A2 sewn back 4-0   A4 ok'
                between = self._between(m.j, thing.i)
                between = [
                    w for w in between if w != "," or not self.scene.header
                ]  # 'Complete laceration, ulnar nerve'
                near = len(between) <= 14 and all(w in _LEAD or self._measure(w) for w in between)
                return thing if near and not _PLACE & set(between) - {"over"} else None
        return None

    def _measure(self, word: str) -> bool:
        return word in _MEASURE or word[:1].isdecimal() or word in self.part_words

    def _between(self, i: int, j: int) -> list[str]:
        """Return the words from i to j but those that say which finger or say something themselves."""
        page = self.scene.page
        kept = (k for k in range(i, j) if k not in self.said and k not in page.digit_words and k not in self.fingers)
        kept = (k for k in kept if page.words[k] not in _SAME or page.words[k + 1] not in _FINGERS)
        kept = (k for k in kept if k not in self.asides)  # 'A1, against which the suture knocked, is incised'
        return [page.words[k] for k in kept if page.standing[k] not in _EMPTY and page.words[k].strip("_")]

    def _owner(self, m: Mention, loosely: bool) -> Thing | None:
        back, ahead = self.touches_back(m), self.touches_ahead(m)
        if back is not None and ahead is not None:
            return ahead if self._leads(m) and not self._of_another_clause(m, ahead) else back
        if back is not None or ahead is not None or not loosely:
            return back or ahead
        return self._loose(m)

    def _of_another_clause(self, m: Mention, ahead: Thing) -> bool:
        """'A2 was divided and then repaired and A4 was intact': what is ahead is the subject of its own verb."""
        joined = self.scene.next_word(m.j) in ("and", ",", "but")
        return joined and self.scene.next_word(ahead.j) in ("was", "were", "is", "are")

    def _leads(self, m: Mention) -> bool:
        """Tell whether a word between two things points ahead: 'A1: release of A2', 'in A2 I vented 4 mm of A4'."""
        inside = self.scene.page.words[m.j - 1] == "in"  # 'A2 left, small window made in A4'
        return (
            inside
            or self.scene.next_word(m.j) == "of"
            or self.scene.word_before(m.i) in ("i", "we", "then", "to", "also")
        )

    def _loose(self, m: Mention) -> Thing | None:
        back, ahead = self._loose_back(m), self._loose_ahead(m)
        if back is None or ahead is None:
            return back or ahead
        before = self.scene.word_before(m.i)
        objects = ("it", "them", "this", "both", "one")
        if self.scene.next_word(m.j) in objects or self.scene.page.words[m.j - 1] in objects:
            return back
        if before in _ACTIVE or before in ("", ";", "."):
            return ahead
        if before in _PASSIVE or (before in (",", ";", "(") and ahead.n < 0):
            return back
        return back if m.i - back.j <= ahead.i - m.j else ahead

    def _loose_back(self, m: Mention) -> Thing | None:
        """Return the last thing before a word in its clause, unless words of another subject stand between."""
        for thing in reversed(self.things):
            if thing.j <= m.i and not thing.vague:
                between = self._between(thing.j, m.i)
                return None if self._stopped(between) or self._new_subject(between) else thing
        return None

    def _stopped(self, between: list[str]) -> bool:
        """Tell whether a thing's clause has ended; a semicolon lets pass what has no subject: 'bruised; left alone'."""
        stops = (k for k, w in enumerate(between) if w == ".")
        if "|" in between or not all(_shortens(between, k) for k in stops):
            return True
        last = max((k for k, w in enumerate(between) if w == ";"), default=-1)
        return last >= 0 and not all(w in _LINK or w in (",", "and") or self._measure(w) for w in between[last + 1 :])

    def _new_subject(self, between: list[str]) -> bool:
        """Tell whether the last stretch before a word has a noun of its own: 'A2 was kept, the cuff released'."""
        cuts = [k for k, w in enumerate(between) if w in _BREAKS]
        for first, last in pairwise(cuts):
            if between[first + 1] in _DETERMINED and self._strange(between[first + 1 : last]):
                return True
        stretch = between[cuts[-1] + 1 :] if cuts else between
        strange = self._strange(stretch)
        where = not cuts and stretch[:1] and stretch[0] in _ASIDE  # 'the nerve to the third web was divided'
        return bool(strange) and not where and (stretch[0] in _DETERMINED or len(stretch) <= 3)

    def _strange(self, stretch: list[str]) -> list[str]:
        """Return the words of a stretch that may name something of their own."""
        if any(w in self.part_words or w in ("pulley", "rest", "whole", "what") for w in stretch):
            return []
        if stretch[:2] in (["that", "of"], ["the", "same"]):
            return []  # 'A2 was found torn, the same was repaired'
        return [w for w in stretch if w not in _LINK and not w.endswith("ly")]

    def _loose_ahead(self, m: Mention) -> Thing | None:
        for thing in self.things:
            if thing.i >= m.j and not thing.vague:
                between = self._between(m.j, thing.i)
                column = Break.COLUMN in self.scene.page.breaks[m.j : thing.i + 1]
                if (
                    column
                    or len(between) > 8
                    or set(between) & (_STOP | _PLACE | {",", "but", "then", ":", "by", "than", "except", "besides"})
                ):
                    return None
                return thing
        return None

    def _listed(self, m: Mention) -> list[int]:
        """Return the things of a list headed by a word: 'Not cut: FPL, median nerve', 'Unharmed are the ...'."""
        after = self.scene.next_word(m.j)
        if not self._opens(m) or after not in (":", "are", "were", "is", "was", "-", "="):
            return []
        found: list[int] = []
        at = m.j + 1
        for thing in self.things:
            if thing.i < at:
                continue
            between = self.scene.words(at, thing.i)
            if not all(w in _CHAIN or w in _LEAD or self._measure(w) for w in between):
                break
            if thing.n >= 0:
                found.append(thing.n)
            at = thing.j
        return found

    def _opens(self, m: Mention) -> bool:
        """Tell whether a word stands at the head of its clause, before anything is named."""
        first = max(self.scene.sentence.i, m.i - 4)
        before = self.scene.words(first, m.i)
        cut = max((k for k, w in enumerate(before) if w in (".", ";", ":", ")", "*")), default=-1)
        clear = first == self.scene.sentence.i or cut >= 0
        return clear and not any(first + cut < t.j <= m.i for t in self.things)

    def _chain_ahead(self, thing: Thing) -> list[Thing]:
        """Return a thing and those chained to it by a second 'of': 'severance of the FDP and of the ulnar nerve'."""
        k = self.things.index(thing)
        found = [thing]
        for after in self.things[k + 1 :]:
            between = self._between(found[-1].j, after.i)
            plain = all(w in _CHAIN or w == "zone" or w[:1].isdecimal() for w in between)
            if not {"and", "of"} <= set(between) or len(between) > 7 or not plain:
                break
            found.append(after)
        return found

    def _chain(self, thing: Thing) -> list[Thing]:
        """Return a thing and those chained before it: 'FDP, FDS and the radial digital nerve were divided'."""
        found = [thing]
        k = self.things.index(thing)
        joined = "and" in self.scene.words(thing.i, thing.j)
        while k > 0:
            between = self._between(self.things[k - 1].j, self.things[k].i)
            joined = joined or bool({"and", "&"} & set(between)) or between == ["+"]
            plain = all(w in _CHAIN or self._measure(w) for w in between)
            told = self._told_between(self.things[k - 1].j, self.things[k].i)
            if not joined or not between or len(between) > 7 or not plain or told:
                break  # 'the A2 pulley was left untouched and the A4 pulley was incised'
            k -= 1
            found.append(self.things[k])
        return found

    def _told_between(self, i: int, j: int) -> bool:
        """Tell whether what is said of a thing ends before the next is named: 'A2 was left, and the A4 was incised'."""
        last = max((k for k in range(i, j) if k in self.said), default=-1)
        return last >= 0 and bool({"and", ",", "&"} & set(self.scene.words(last + 1, j)))
