"""Where rules lay down what they found, and what is known so far of each tendon."""

import itertools
from bisect import bisect_left, bisect_right
from collections.abc import Set
from dataclasses import dataclass
from dataclasses import field as made_by
from operator import itemgetter

from notereader.reader.groups import WRIST, Group, Target
from notereader.reader.page import Page
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene, group_targets
from notereader.reader.standing.earlier_stages import tells_of_second
from notereader.record.values import Value
from notereader.vocabulary.wordlists import word_list

_CORRECTS = frozenset(["correction", "corrected", "erratum"])
HURT_KINDS = ("complete", "partial")
_OF_CORE = frozenset(["strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot"])
SEWN = ("repaired", "reinserted", "grafted")


@dataclass(slots=True)
class Finding:
    """A value for one field of one entry, the words that say so and the rule that decided."""

    group: str
    entry: tuple[str | None, str, str | None]  # digit, part, side; ('', '', '') where there is none
    field: str
    value: Value
    spans: list[tuple[int, int]]  # words
    rule: str
    header: bool = False
    implied: bool = False
    reasons: list[Reason] = made_by(default_factory=list)
    order: int = 0
    addendum: bool = False
    carried: bool = False  # the tendon was not named beside it


@dataclass(slots=True)
class Copy:
    """'repaired in the same manner': the targets take over the suture of the source, or of the tendon before."""

    scene: Scene
    targets: list[Target]
    source: Target | None
    span: tuple[int, int]
    fields: str  # all, core or peripheral


@dataclass(slots=True)
class _Shelf:
    """The findings of one field, in the order of the words they begin at."""

    orders: list[int] = made_by(default_factory=list)
    found: list[tuple[int, Finding]] = made_by(default_factory=list)  # each with its number among all that were laid

    def put(self, number: int, finding: Finding) -> None:
        at = bisect_right(self.orders, finding.order)
        self.orders.insert(at, finding.order)
        self.found.insert(at, (number, finding))

    def between(self, since: int, before: int | None) -> list[tuple[int, Finding]]:
        last = len(self.orders) if before is None else bisect_left(self.orders, before)
        return self.found[bisect_left(self.orders, since) : last]

    def drop(self, gone: Set[int]) -> None:
        """Take away the findings whose id is among those gone."""
        self.found = [(number, f) for number, f in self.found if id(f) not in gone]
        self.orders = [f.order for _, f in self.found]


@dataclass(slots=True)
class Desk:
    """The findings of a note, in the order found, and the tendons named so far."""

    page: Page
    scenes: list[Scene]
    findings: list[Finding] = made_by(default_factory=list)
    named: dict[Target, None] = made_by(default_factory=dict)
    extents: dict[Target, str] = made_by(default_factory=dict)
    treatments: dict[Target, str] = made_by(default_factory=dict)
    settled: bool = False  # every scene has been read for extents and treatments
    copies: list["Copy"] = made_by(default_factory=list)
    topic: str = ""  # what the surgeon was last working on
    last_pulleys: list[tuple[str, tuple[str | None, ...]]] = made_by(default_factory=list)
    last_pulleys_told: list[tuple[str, tuple[str | None, ...]]] = made_by(default_factory=list)  # each by itself, too
    last_pulley_end: int = -1  # where the last sentence that named pulleys ended
    last_parts: list[tuple[str, tuple[str | None, ...], tuple[str | None, ...]]] = made_by(default_factory=list)
    last_parts_end: int = -1  # where the last sentence about another structure ended
    listed: str = ""  # the nerve or artery whose sides the lines tell one by one
    last_bone: tuple[str, tuple[str | None, ...], bool] = ("", (), False)  # bone, digits, whether it is broken
    broken: list[tuple[str, tuple[str | None, ...]]] = made_by(default_factory=list)  # bones told broken, with digits
    last_pulley_named: bool = False  # the pulleys spoken of last were named, not only a place of something else
    hurt: dict[Target, int] = made_by(default_factory=dict)  # tendons cut with no word of how far -> where first told
    redone: set[Target] = made_by(default_factory=set)  # tendons whose first core was taken out again
    taken_out: dict[Target, tuple[int, int]] = made_by(default_factory=dict)  # where it is told of, till another is
    _deep_named: list[Target] | None = None  # once looked for
    _at_wrist: bool | None = None  # once looked for
    _harvested: bool | None = None  # once looked for
    _second_stage: bool | None = None  # once looked for
    failed: list[tuple[str, Scene | None]] = made_by(default_factory=list)  # rules that failed, and on which sentence
    strands_at: int = -1  # where the last sentence with a strand count ended
    _told: dict[tuple[str, tuple[str | None, str, str | None]], list[Finding]] = made_by(
        init=False, default_factory=dict
    )
    _shelves: dict[str, _Shelf] = made_by(init=False, default_factory=dict)  # field -> its findings
    _count: int = 0  # findings laid down so far, those taken back again among them
    _values: dict[str, frozenset[str]] = made_by(init=False, default_factory=dict)
    _having: dict[str, list[Scene]] = made_by(init=False)
    _holders: list[int] = made_by(init=False, default_factory=list)  # word -> number of the first scene that holds it
    _places: dict[int, int] = made_by(init=False)  # id of a scene -> its number

    def __post_init__(self) -> None:
        """Index the scenes, which never change once they are built."""
        self._having = {}
        for scene in self.scenes:
            for kind in scene.kinds:
                self._having.setdefault(kind, []).append(scene)
        self._places = {id(scene): n for n, scene in enumerate(self.scenes)}

    @property
    def second_stage(self) -> bool:
        """Whether the note names a second stage of a repair."""
        if self._second_stage is None:
            self._second_stage = tells_of_second(self.page.words)
        return self._second_stage

    def having(self, kind: str) -> list[Scene]:
        """Return the scenes that have a mention of a kind, in the order of the note."""
        return self._having.get(kind, [])

    def saying(self, words: Set[str]) -> list[Scene]:
        """Return the scenes that hold at least one of the words, in the order of the note."""
        return [scene for scene in self.scenes if not scene.said.isdisjoint(words)]

    def values_told(self, kind: str) -> frozenset[str]:
        """Return the values of all mentions of a kind that stand as findings of this operation."""
        if kind not in self._values:
            told = (m.value for scene in self.having(kind) for m in scene.of(kind) if scene.told(m.i))
            self._values[kind] = frozenset(told)
        return self._values[kind]

    def scene_at(self, k: int) -> Scene:
        """Return the scene that word k stands in, or the last one before it where no sentence holds the word."""
        if not self._holders:
            self._holders = [-1] * len(self.page.words)
            for n in range(len(self.scenes) - 1, -1, -1):
                sentence = self.scenes[n].sentence
                self._holders[sentence.i : sentence.j] = [n] * (sentence.j - sentence.i)
        n = self._holders[k] if 0 <= k < len(self._holders) else -1
        if n >= 0:
            return self.scenes[n]
        before = [s for s in self.scenes if s.sentence.i <= k]
        return max(before, key=lambda s: s.sentence.i, default=self.scenes[0])

    def scene_before(self, scene: Scene) -> Scene | None:
        """Return the scene before one of the note's, or None for the first."""
        n = self._places[id(scene)]
        return self.scenes[n - 1] if n else None

    def scene_after(self, scene: Scene) -> Scene | None:
        """Return the scene after one of the note's, or None for the last."""
        n = self._places[id(scene)] + 1
        return self.scenes[n] if n < len(self.scenes) else None

    def add(
        self,
        scene: Scene,
        group: str,
        entry: tuple[str | None, str, str | None],
        name: str,
        value: Value,
        spans: list[tuple[int, int]],
        rule: str,
        *reasons: Reason,
        implied: bool = False,
        of_excepted: bool = False,
    ) -> None:
        """Lay down a finding. Words of a grid's label prove it together with their cell.

        `of_excepted`: it is what an exception tells of the one left out, 'none gapped except the ring'.
        """
        spans = [span if span[0] < span[1] else (scene.sentence.i, scene.sentence.j) for span in spans]
        whose = group in ("repairs", "pulleys")
        left_out = whose and not of_excepted and scene.excepts(entry[0], entry[1], *spans[0])
        if left_out or (whose and scene.unplaced(name, value, spans[0][0])):
            return
        finding = Finding(
            group,
            entry,
            name,
            value,
            spans,
            rule,
            scene.header,
            implied,
            list(reasons),
            spans[0][0],
            is_correction(scene) or (name in _OF_CORE and group == "repairs" and Target(*entry) in self.redone),
        )
        self.findings.append(finding)
        self._told.setdefault((group, entry), []).append(finding)
        self._shelves.setdefault(name, _Shelf()).put(self._count, finding)
        self._count += 1

    def laid(self, *fields: str, since: int = 0, before: int | None = None) -> list[Finding]:
        """Return the findings of some fields that begin in words `since` to `before`, in the order found.

        A field that two groups have, such as the extent of tendons and of nerves, brings the findings of both.
        """
        shelves = [self._shelves[name] for name in fields if name in self._shelves]
        numbered = [each for shelf in shelves for each in shelf.between(since, before)]
        return [f for _, f in sorted(numbered, key=itemgetter(0))]

    def told_of(self, group: str, entry: tuple[str | None, str, str | None]) -> list[Finding]:
        """Return the findings laid down so far of one tendon ('repairs') or pulley ('pulleys'), in the order found."""
        return list(self._told.get((group, entry), ()))

    def withdraw(self, target: Target, fields: tuple[str, ...], before: int, since: int = 0) -> None:
        """Take back what was told of a tendon's fields before a word, and since another: it was undone again."""
        entry = (target.digit, target.tendon, target.slip)
        kept = [
            f
            for f in self._told.get(("repairs", entry), ())
            if f.field not in fields or f.header or not since <= f.order < before
        ]
        gone = {id(f) for f in self._told.get(("repairs", entry), ())} - {id(f) for f in kept}
        self._told[("repairs", entry)] = kept
        self.drop(gone)

    def take_back(
        self, group: str, entry: tuple[str | None, str, str | None], name: str, before: int, since: int = 0
    ) -> None:
        """Take back what was told of one field before a word, and since another: a later sentence says it is not so."""
        told = self._told.get((group, entry), [])
        gone = {id(f) for f in told if f.field == name and since <= f.order < before}
        self._told[(group, entry)] = [f for f in told if id(f) not in gone]
        self.drop(gone)

    def drop(self, gone: Set[int]) -> None:
        """Take away the findings whose id is among those gone."""
        if gone:
            self.findings = [f for f in self.findings if id(f) not in gone]
            for shelf in self._shelves.values():
                shelf.drop(gone)

    def tendon(
        self,
        scene: Scene,
        target: Target,
        name: str,
        value: Value,
        spans: list[tuple[int, int]],
        rule: str,
        *reasons: Reason,
    ) -> None:
        """Lay down a finding about a tendon and remember what it says of the tendon's state."""
        if self._of_extensor(scene) or (target.tendon == "PL" and name != "extent" and self._palmaris_harvested):
            return
        self.named.setdefault(target)
        if scene.left_out and scene.excepts(target.digit, target.tendon, *spans[0]):
            return  # 'All were repaired except PL': of its state nothing is told either
        if name == "extent":
            hurt = self.extents.get(target) in HURT_KINDS or self.treatments.get(target) in (
                "repaired",
                "reinserted",
                "grafted",
            )
            if not (value == "intact" and hurt) and not (
                self.extents.get(target) == "complete" and value == "partial" and scene.header
            ):
                self.extents[target] = str(value)
        elif name == "treatment" and not (scene.header and target in self.treatments):
            self.treatments[target] = str(value)
        self.add(scene, "repairs", (target.digit, target.tendon, target.slip), name, value, spans, rule, *reasons)

    def _of_extensor(self, scene: Scene) -> bool:
        """'The EPL was cut. ... Tendon repaired with 4-0 PDS': whether the tendon spoken of last is an extensor.

        A paragraph of its own goes back to the flexors where one is known to be cut.
        """
        if not self._having.get("structure") or any(g.tendons or g.digits for g in scene.setting.groups):
            return False
        before: Scene | None = scene
        while before is not None:
            if any(g.tendons for g in before.setting.groups if not g.reference) or not _FLEXORS.isdisjoint(before.said):
                return False
            if _hurt_extensor(before):
                return before.sentence.block == scene.sentence.block or not self.repairable()
            before = self.scene_before(before)
        return False

    @property
    def _palmaris_harvested(self) -> bool:
        """'Palmaris longus harvested by two incisions. It was sutured to the rod': a graft, no repair of its own."""
        if self._harvested is None:
            words = self.page.words
            spots = [m for m in self.page.mentions if m.kind == "tendon" and m.value == "PL"]
            self._harvested = any(
                _tells_donor(words[m.j : m.j + _SOON]) or _taken_as_donor(words[max(0, m.i - _AHEAD) : m.i])
                for m in spots
            )
        return self._harvested

    @property
    def at_wrist(self) -> bool:
        """Tell whether the note is of a wrist or a forearm, where all the tendons, nerves and arteries run together."""
        if self._at_wrist is None:
            found = {m.value for m in self.page.mentions if m.kind in ("tendon", "zone", "structure", "pulley")}
            self._at_wrist = bool(found & _OF_WRIST) or not _WRIST_WORDS.isdisjoint(self.page.words)
        return self._at_wrist

    @property
    def deep_named(self) -> list[Target]:
        """Return the deep flexors named as this operation's; none where a tendon went another way than end to end."""
        if self._deep_named is None:
            named = [(s, g) for s in self.having("tendon") for g in s.setting.groups if g.tendons]
            told = [(s, g) for s, g in named if s.told(g.i)]
            before = [
                (s, g) for s, g in named if self.page.standing[g.i] in ("history", "story")
            ]  # what ruptured again
            targets = _named_by(told)
            # A superficialis of which is only told that it is whole leaves open what the deep flexor of its finger got.
            known = {t.digit for t in _named_by([(s, g) for s, g in told if not _only_whole(s, g)])}
            targets |= {t: None for t in _named_by(before) if t.digit not in known}
            told_deeds = self.values_told("deed")
            deep = [t for t in targets if t.tendon in ("FDP", "FPL") and t.slip is None]
            otherwise = told_deeds & {"tenodesed", "reinserted"} or ("grafted" in told_deeds and len(deep) != 1)
            self._deep_named = [] if otherwise else deep
        return self._deep_named

    def cut(self, digits: tuple[str, ...] | None = None) -> list[Target]:
        """Return the tendons known to be cut or treated, of the digits given."""
        known = dict.fromkeys([*self.named, *self.hurt])
        found = [t for t in known if self._of(t, digits) and self.is_cut(t)]
        placed = {t.tendon for t in found if t.digit}
        return [t for t in found if t.digit or t.tendon in WRIST or t.tendon not in placed]  # 'Repair of FDS x 2'

    def is_cut(self, target: Target) -> bool:
        """Tell whether a tendon is known to be cut or to have been treated."""
        extent = self.extents.get(target)
        hurt = extent in HURT_KINDS or target in self.hurt or target in self.treatments or self.has_suture(target)
        return extent != "intact" and hurt

    def repairable(self, digits: tuple[str, ...] | None = None) -> list[Target]:
        """Return the tendons that were repaired or, being cut, not said to have been treated otherwise."""
        found = [t for t in self.cut(digits) if self.may_be_repaired(t)]
        found = [t for t in found if not self._only_grazed(t)] or found
        slipped = {(t.digit, t.tendon) for t in self.treatments if t.slip}
        return [t for t in found if t.slip or (t.digit, t.tendon) not in slipped]

    def _only_grazed(self, target: Target) -> bool:
        """'FDS scored, 10 %': of 'all tendons' none that is meant to be sewn, where no stitch in it is told."""
        if self.extents.get(target) != "partial" or target in self.treatments or self.has_suture(target):
            return False
        told = self._told.get(("repairs", (target.digit, target.tendon, target.slip)), ())
        return any(f.field == "extent_percent" and float(str(f.value)) <= _GRAZE for f in told)

    def sewn(self, digits: tuple[str, ...] | None = None) -> list[Target]:
        """Return, of the tendons that may be repaired, those whose suture was told; all where fewer than two."""
        possible = self.repairable(digits)
        told = [t for t in possible if self.treatments.get(t) in SEWN or self.has_suture(t)]
        return told if len(told) > 1 else possible

    def has_suture(self, target: Target) -> bool:
        """Tell whether a core suture of a tendon was told."""
        entry = (target.digit, target.tendon, target.slip)
        if any(f.field in ("strands", "stitch", "size") for f in self._told.get(("repairs", entry), ())):
            return True
        return any(target in copy.targets for copy in self.copies if copy.fields != "ends")

    def is_donor(self, target: Target) -> bool:
        """Tell whether a tendon was only taken as a graft for another."""
        return target.tendon == "PL" and self.treatments.get(target) == "grafted"

    def may_be_repaired(self, target: Target) -> bool:
        """Return whether nothing known of a tendon speaks against a repair."""
        if self.extents.get(target) == "intact" or self.is_donor(target):
            return False
        return self.treatments.get(target, "repaired") in ("repaired", "reinserted", "grafted", "tenodesed")

    def _of(self, target: Target, digits: tuple[str, ...] | None) -> bool:
        return digits is None or not digits or target.digit in digits or target.digit is None


_GRAZE = 20  # per cent of a tendon; so small a cut is smoothed or left
_HARVEST = frozenset(["harvested", "harvesting"])


def _tells_donor(words: list[str]) -> bool:
    """'... was harvested', '... was used as a bridging graft'."""
    used = "used" in words and "as" in words  # not 'kept aside as a graft'
    as_graft = used and "graft" in words[words.index("as") : words.index("as") + _NAMED_GRAFT]
    return as_graft or not _HARVEST.isdisjoint(words)


def _taken_as_donor(lead: list[str]) -> bool:
    """'... rebuilt by three turns of' the palmaris; what stands in the sentence before is of something else."""
    stop = max((n for n, word in enumerate(lead) if word == "."), default=-1)
    return not _TAKEN.isdisjoint(lead[stop + 1 :])


_TAKEN = word_list("grafts", "taken")  # 'rebuilt by three turns of palmaris', 'I took the palmaris longus'
_AHEAD = 6  # words
_NAMED_GRAFT = 5  # words: 'as a free tendon graft'
_SOON = 9  # words
_OF_WRIST = frozenset(["FCR", "FCU", "PL", "IV", "V", "median nerve", "radial nerve branch", "flexor retinaculum"])
_WRIST_WORDS = frozenset(["forearm", "carpal", "guyon"])
_FLEXORS = frozenset(["flexor", "flexors"])
_BENEATH = frozenset(["deep", "under", "beneath", "below", "around", "over"])


_CLOSED = frozenset(["closure", "closed", "repair", "suture", "reapproximated"])


def _hurt_extensor(scene: Scene) -> bool:
    """Tell whether a sentence speaks of an extensor tendon that was cut or mended."""
    named = [m for m in scene.of("structure") if m.value == "extensor tendon" and scene.told(m.i)]
    if not any(_BENEATH.isdisjoint(scene.words(max(scene.sentence.i, m.i - 3), m.i)) for m in named):
        return False  # 'two wraps around the bone deep to the extensor'
    if any(not _CLOSED.isdisjoint(scene.words(m.j, min(m.j + 3, scene.sentence.j))) for m in named):
        return True  # 'After EPL closure the tendon ran smoothly', 'Extensor hood was closed'
    hurt = [m for m in scene.of("extent", "hurt", "deed", "mending") if m.value != "intact" and scene.told(m.i)]
    subjects = [scene.owner(m.i, m.j) for m in hurt]
    return any(s is not None and s.mention is not None and s.mention.value == "extensor tendon" for s in subjects)


def _only_whole(scene: Scene, group: Group) -> bool:
    """'FDS was whole', 'The FDS had been sewn too and was intact': no more is told of a superficialis in a sentence."""
    told = {m.value for m in scene.of("extent", "hurt")}
    return set(group.tendons) == {"FDS"} and told == {"intact"}


def _named_by(named: list[tuple[Scene, Group]]) -> dict[Target, None]:
    """Return the tendons that groups of scenes name, but for those compared with or left out."""
    return dict.fromkeys(t for s, g in named if not (g.reference or g.excepted) for t in group_targets(s, g))


def is_correction(scene: Scene) -> bool:
    """Tell whether a sentence corrects what stands before: under 'Addendum', or with 'correction', 'should read'."""
    if scene.page.in_addendum(scene.sentence) or not _CORRECTS.isdisjoint(scene.said):
        return True
    if "should" not in scene.said:
        return False
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return any(a == "should" and b == "read" for a, b in itertools.pairwise(words))
