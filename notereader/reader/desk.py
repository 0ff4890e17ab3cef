"""Where rules lay down what they found, and what is known so far of each tendon."""

import itertools
from collections.abc import Set
from dataclasses import dataclass
from dataclasses import field as made_by

from notereader.reader.earlier_stages import tells_of_second
from notereader.reader.groups import DIGITS, WRIST, Group, Target, resolve_pairs
from notereader.reader.measures import count_of
from notereader.reader.page import Page
from notereader.reader.scene import Scene, group_targets
from notereader.record.values import Value
from notereader.vocabulary.wordlists import word_list

_CORRECTS = frozenset(["correction", "corrected", "erratum"])
HURT_KINDS = ("complete", "partial")
_OF_CORE = frozenset(["strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm", "knot"])
_SEWN = ("repaired", "reinserted", "grafted")


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
    reasons: list[str] = made_by(default_factory=list)
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
        *reasons: str,
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
        self.findings = [f for f in self.findings if id(f) not in gone]

    def take_back(
        self, group: str, entry: tuple[str | None, str, str | None], name: str, before: int, since: int = 0
    ) -> None:
        """Take back what was told of one field before a word, and since another: a later sentence says it is not so."""
        told = self._told.get((group, entry), [])
        gone = {id(f) for f in told if f.field == name and since <= f.order < before}
        self._told[(group, entry)] = [f for f in told if id(f) not in gone]
        self.findings = [f for f in self.findings if id(f) not in gone]

    def tendon(
        self,
        scene: Scene,
        target: Target,
        name: str,
        value: Value,
        spans: list[tuple[int, int]],
        rule: str,
        *reasons: str,
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
            known = {t.digit for t in targets}
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
        slipped = {(t.digit, t.tendon) for t in self.treatments if t.slip}
        return [t for t in found if t.slip or (t.digit, t.tendon) not in slipped]

    def sewn(self, digits: tuple[str, ...] | None = None) -> list[Target]:
        """Return, of the tendons that may be repaired, those whose suture was told; all where fewer than two."""
        possible = self.repairable(digits)
        told = [t for t in possible if self.treatments.get(t) in _SEWN or self.has_suture(t)]
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


def tendon_owner(desk: Desk, scene: Scene, i: int, j: int) -> tuple[list[Target], Group | None]:
    """Return the named tendons that words i to j belong to, and their group; ([], None) where no tendon owns them."""
    subject = scene.owner(i, j)
    if subject is None or subject.group is None:
        return [], None
    group = subject.group
    taken_up = _taken_up(desk, scene, group) if group.generic else []
    if taken_up:
        return taken_up, group
    shared = _shared_tendon(scene, group) if subject.i >= j else None
    digits = _fingers_meant(scene, group) if shared is not None else ()
    if shared is not None and digits:
        return resolve_pairs(shared, digits), shared
    if subject.kind != "tendon" or group.generic:
        return [], group
    if group.collective:
        return [t for t in desk.repairable() if t.tendon in group.tendons], group
    behind = _digits_behind(scene, group, j)
    if behind:
        return resolve_pairs(group, behind), group
    targets = [_known_one(desk, scene, group, t) for t in group_targets(scene, group)]
    return targets if group.digits else _without_finger(desk, scene, group, targets, i), group


def _without_finger(desk: Desk, scene: Scene, group: Group, targets: list[Target], i: int) -> list[Target]:
    """Return the tendons meant where a group names no finger and words from i on are said of it.

    `targets` are those of the fingers spoken of.
    """
    sewn = _those_sewn(desk, scene, group, targets)
    if sewn is not None:
        return sewn
    if _of_repairs(scene, group):
        targets = [t for t in targets if desk.treatments.get(t) not in _UNSEWN] or targets
    targets = _with_all_of_the_wrist(desk, group, targets)
    if group.four:
        return _of_four_fingers(desk, scene, group, targets, i)
    if group.every:
        targets = _of_every_finger(desk, scene, group, targets)
    counted = [t for t in _counted(scene, group) if desk.extents.get(t) != "intact"]
    if not any(t.digit for t in targets) or (group.every and len(targets) < len(counted)):
        return counted or targets
    return targets


_UNSEWN = ("left", "trimmed", "excised")


def _those_sewn(desk: Desk, scene: Scene, group: Group, targets: list[Target]) -> list[Target] | None:
    """Return the sewn tendons of a kind where repairs are spoken of, or None where those of the finger are meant."""
    if group.four == 1 and (_of_repairs(scene, group) or scene.of("stitch", "strandword")):
        return [t for t in desk.repairable() if t.tendon in group.tendons]  # 'All FDP repairs were tested'
    unsewn = bool(targets) and all(desk.treatments.get(t) in _UNSEWN for t in targets)
    if unsewn and _of_repairs(scene, group) and not is_correction(scene):
        # 'the superficialis repair' behind words on a finger whose own was only trimmed; where no other was sewn, it
        # is the one that was cut out later: 'FDS repaired with a Kessler. The FDS was then excised.'
        return _with_suture(desk, group) or targets
    if len(targets) == 1 and "repairs" in scene.words(group.j - 1, group.j + 1):
        own = _with_suture(desk, group)
        return own if len(own) > 1 else None  # 'no gap in the FDS repairs' behind words on one finger
    return None


def _with_suture(desk: Desk, group: Group) -> list[Target]:
    """Return the tendons of a group's kinds of which a core suture is told."""
    return [t for t in desk.repairable() if t.tendon in group.tendons and desk.has_suture(t)]


def _of_four_fingers(desk: Desk, scene: Scene, group: Group, targets: list[Target], i: int) -> list[Target]:
    """'All FDPs', 'FDP x 4', of which words from i on tell: of the fingers worked on, or of all four."""
    own = [t for t in targets if t.tendon not in ("FDP", "FDS")]
    told = [d for d in scene.setting.digits if d != "thumb"] if group.four == 1 else []
    if group.four == 1 and not desk.at_wrist and not _headed_apart(desk, scene):
        told = [d for d in scene.every_digit if d != "thumb"]  # 'All FDPs' where three fingers were worked on
    if desk.at_wrist and any(m.value == "intact" and m.i == i for m in scene.of("extent")):
        told = []  # 'FPL and all the FDPs intact': those of all four fingers
    fours = told if len(told) > 1 else DIGITS[1:]
    fingers = [*own, *(Target(d, t) for t in group.tendons if t in ("FDP", "FDS") for d in fours)]
    return [t for t in fingers if group.four == 2 or desk.extents.get(t) not in HURT_KINDS]


def _of_every_finger(desk: Desk, scene: Scene, group: Group, targets: list[Target]) -> list[Target]:
    """'Both FDPs', 'the profundi': of every finger of which one was named or told hurt so far."""
    named = dict.fromkeys([*desk.named, *spoken_of(desk, scene)])
    wide = [t for t in named if t.tendon in group.tendons and t.slip is None and t.digit]
    if len({t.digit for t in wide}) <= (0 if desk.at_wrist and "extent" not in scene.kinds else 1):
        return targets
    wrist = [t for t in targets if t.digit is None and t.tendon not in ("FDP", "FDS")]
    return [*wrist, *([t for t in wide if desk.extents.get(t) != "intact"] or wide)]


def _headed_apart(desk: Desk, scene: Scene) -> bool:
    """Tell whether a sentence stands under a heading for its fingers alone: 'INDEX AND MIDDLE: ...'."""
    before: Scene | None = scene
    while before is not None and before.sentence.block == scene.sentence.block:
        if before.sentence.section == "digit":
            return True
        before = desk.scene_before(before)
    return False


def _with_all_of_the_wrist(desk: Desk, group: Group, targets: list[Target]) -> list[Target]:
    """'FCU, FDS ring and small cut; FDP small half. FCU and FDS repaired': beside a wrist flexor every FDS cut."""
    if group.digits or not any(t.digit is None and t.tendon in WRIST for t in targets):
        return targets
    found: list[Target] = []
    for target in targets:
        cut = [t for t in desk.repairable() if t.tendon == target.tendon and t.digit and t.slip is None]
        found += cut if target.tendon in ("FDP", "FDS") and target.slip is None and cut else [target]
    return list(dict.fromkeys(found))


_COUNTS = {"both": 2, "two": 2, "three": 3, "four": 4, "2": 2, "3": 3, "4": 4}


def _counted(scene: Scene, group: Group) -> list[Target]:
    """'All three FDP were cut', 'each profundus was sewn' before any is named by finger: of the note's fingers."""
    if group.digits or len(group.tendons) != 1:
        return []  # 'both FDP and FDS' are two of one finger
    return [Target(d, t) for d in _fingers_meant(scene, group) for t in group.tendons if t in ("FDP", "FDS")]


def _shared_tendon(scene: Scene, finger: Group) -> Group | None:
    """'The superficialis was cut in the middle finger, half cut in the ring', 'FDS intact in all three': the one."""
    before = [g for g in scene.setting.groups if g.tendons and not g.reference and g.j <= finger.i]
    led = [w for w in scene.words(max(scene.sentence.i, finger.i - 2), finger.i) if w not in ("the", "both")][-1:]
    if len(before) != 1 or before[0].digits or finger.tendons or led not in (["in"], ["of"]):
        return None
    return before[0] if set(before[0].tendons) <= {"FDP", "FDS"} else None


def _fingers_meant(scene: Scene, group: Group) -> tuple[str, ...]:
    """Return the digits of 'in the ring finger', 'in both fingers', 'in all three', 'of each'."""
    if group.digits:
        return group.digits
    if not group.every and group.generic != "all":
        return ()
    words = scene.words(max(scene.sentence.i, group.i - 2), group.j)
    counted = next((_COUNTS[w] for w in words if w in _COUNTS), 0)
    fingers = tuple(d for d in scene.every_digit if d != "thumb")
    return (
        fingers if len(fingers) == counted or (not counted and len(fingers) > 1 and not _EACH.isdisjoint(words)) else ()
    )


_EACH = frozenset(["each", "every"])


def _of_repairs(scene: Scene, group: Group) -> bool:
    words = scene.words(group.j - 1, min(group.j + 1, scene.sentence.j))
    return not {"repair", "repairs", "repaired", "sutured", "joins", "tested"}.isdisjoint(words)


_CUTS = frozenset(
    ["cut", "divided", "lacerated", "severed", "torn", "transected", "division", "laceration", "transection", "injury"]
)


def _digits_behind(scene: Scene, group: Group, j: int) -> tuple[str, ...]:
    """'the superficialis was intact in the ring and half cut in the small': each state names its finger behind it."""
    if group.digits or group.four:
        return ()
    if scene.next_word(j) in _CUTS:
        j += 1  # '60% cut in the middle finger, 30% cut in the ring'
    if scene.next_word(j) in _ONLY:
        j += 1  # 'was repaired only in the ring'
    named = [g for g in scene.setting.groups if g.digits and not g.tendons and g.i >= group.j and not g.reference]
    led = [g for g in named if tuple(w for w in scene.words(g.i - 2, g.i) if w != "the")[-1:] in (("in",), ("on",))]
    beside = next((g for g in led if 0 < g.i - j <= 2), None)
    if group.every:
        return beside.digits if beside is not None and len(led) > 1 else ()
    after, every = scene.words(j, j + 3), scene.every_digit
    if after[:2] == ["in", "both"] and after[2:] in ([], ["."], [","], [";"], ["fingers"], ["digits"]):
        return every if len(every) == 2 else scene.setting.digits if len(scene.setting.digits) == 2 else ()
    if after in (["in", "all", "three"], ["in", "all", "3"]):
        return every if len(every) == 3 else ()
    return beside.digits if beside is not None and len(led) > 1 else ()


_ONLY = frozenset(["only", "solely", "just"])


def spoken_of(desk: Desk, scene: Scene) -> list[Target]:
    """Return the tendons that the sentences before one tell hurt, 'cut' without saying how far."""
    before = (s for s in desk.having("hurt") if s.sentence.i < scene.sentence.i and not s.header)
    groups = ((s, g) for s in before for g in s.setting.groups if g.tendons and not (g.reference or g.excepted))
    return [t for s, g in groups if s.told(g.i) for t in group_targets(s, g)]


def _taken_up(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'..., and the ends of all of them were crushed': every tendon named before it in the sentence.

    'For the FDP ..., knots inside the repair': 'the repair' is that of the tendon named before it.
    """
    before = [g for g in scene.setting.groups if g.j <= group.i and (g.tendons or g.generic) and not g.reference]
    if group.generic == "one" and before and before[-1].tendons and not group.digits:
        named = [group_targets(scene, g) for g in reversed(before) if g.tendons]
        return next((ts for ts in named if any(desk.may_be_repaired(t) for t in ts)), named[0])
    if not {"them", "these", "those"} & set(scene.words(group.i, group.j)):
        return []
    groups = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
    if not groups and len(scene.setting.focus) > 1:
        return list(scene.setting.focus)
    if not groups and both_of_them(desk, scene, group):
        return both_of_them(desk, scene, group)
    return [t for g in groups for t in group_targets(scene, g)]


def both_of_them(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Same core for both of them', where two were cut and the one named last is one of them: the two.

    Of more that were cut, the two deep flexors where the one named last is one of these.
    """
    words = scene.words(group.i, group.j)
    meant = "both" in words and not _THESE.isdisjoint(words) and len(scene.setting.focus) < 2
    pair = desk.repairable() if meant else []
    deep = [t for t in pair if t.tendon in ("FDP", "FPL")]
    if len(pair) > 2 and len(deep) == 2 and all(t in deep for t in scene.setting.focus):
        return deep
    return pair if len(pair) == 2 else []


_THESE = frozenset(["them", "these", "those"])


def _known_one(desk: Desk, scene: Scene, group: Group, target: Target) -> Target:
    """A tendon named without a digit, where the digit in focus has none that was cut: the one that was."""
    named = any(g.digits and g.j <= group.i and not g.reference for g in scene.setting.groups)
    if group.digits or named or target.tendon not in ("FDP", "FDS") or scene.word_before(group.i) == "its":
        return target
    sound = desk.extents.get(target) == "intact" and target not in desk.treatments
    sound = sound or (target.slip is not None and desk.extents.get(target._replace(slip=None)) == "intact")
    parted = any(m.value == "complete" and m.j == group.i for m in scene.of("extent"))
    sound = sound or (parted and desk.extents.get(target) == "partial")  # 'the transected superficialis'
    if not sound and (target in desk.named or not desk.settled):
        return target
    known = [t for t in desk.named if t.tendon == target.tendon and t.slip == target.slip and desk.is_cut(t)]
    whole = [t for t in known if desk.extents.get(t) == "complete"]  # 'Core FDP: ...' where another was nicked
    return known[0] if len(known) == 1 else whole[0] if len(whole) == 1 else target


_THEY = frozenset(["they", "them"])  # 'The FDS tendons were thinner. In the ring finger they received a Kessler'


def _deep_just_named(focus: list[Target], possible: list[Target]) -> bool:
    """Tell whether the deep flexor was named last, and only the superficial one of its finger is known to be sewn."""
    deep = {t.digit for t in focus if t.tendon == "FDP" and t.slip is None}
    return (
        len(deep) == 1 == len(focus) and bool(possible) and all(t.tendon == "FDS" and t.digit in deep for t in possible)
    )


def carried(desk: Desk, scene: Scene, digits: tuple[str, ...] | None = None) -> tuple[list[Target], str]:
    """Return the repaired tendons a sentence without a named tendon is about, and a reason where that is a guess."""
    wanted = digits or None
    told_of_all = _told_of_all(desk, scene, wanted)
    if told_of_all:
        return told_of_all, ""
    focus = [t for t in scene.setting.focus if desk.may_be_repaired(t) and (wanted is None or t.digit in wanted)]
    focus = _live(desk, focus)
    possible = desk.repairable(wanted)
    possible += _unclear(desk, wanted or scene.setting.digits, possible)
    near = [t for t in focus if t in possible]
    if wanted and len(wanted) > 1 and len({t.digit for t in near}) < len(wanted):
        kinds = {t.tendon for t in focus} or {"FDP"}
        near = [t for t in possible if t.tendon in kinds] or possible
    deep = [t for t in possible if t.tendon in _DEEP and t.digit in (wanted or scene.setting.digits)]
    own = scene.setting.labelled and len(near) == 1 and len(scene.sentence.prefix) == 1
    if scene.sentence.prefix and deep and not own:
        return deep, ""  # a cell under 'core' or 'gap' tells of what was sewn first
    relabelled = scene.setting.relabelled and wanted is None
    if deep and (relabelled or _none_sewn(desk, scene, focus, deep) or _second_core(desk, scene, focus, deep)):
        near = deep
    if near:
        return near, ""
    spoken = _spoken_of_last(desk, scene, focus, possible, deep) if wanted is None else None
    return (spoken, "") if spoken is not None else _last_resort(desk, scene, focus, possible, wanted)


_DEEP = ("FDP", "FPL")


def _told_of_all(desk: Desk, scene: Scene, wanted: tuple[str, ...] | None) -> list[Target]:
    """'Both were repaired. A core of 3-0': of all repaired, or of all of the kind that was named as such."""
    if scene.setting.all_before and wanted is None and (repaired := desk.repairable()):
        return repaired
    if scene.setting.wide and (wanted is None or not _THEY.isdisjoint(scene.said)):
        return [t for t in desk.repairable(wanted) if t.tendon in scene.setting.wide]
    return []


def _none_sewn(desk: Desk, scene: Scene, focus: list[Target], deep: list[Target]) -> bool:
    """'FDP cut. FDS cut. A four-strand core': of the superficialis in focus no suture is told, nor one before it."""
    if not focus or scene.setting.labelled:
        return False
    if any(t.tendon != "FDS" or not _untold(desk, t, scene, deep) or desk.has_suture(t) for t in focus):
        return False
    return not all(_sewn_before(desk, t, focus[0]) for t in deep)


def _spoken_of_last(
    desk: Desk, scene: Scene, focus: list[Target], possible: list[Target], deep: list[Target]
) -> list[Target] | None:
    """Return whom a sentence goes on about that names no finger either; None where what was said before leaves it open.

    Better nothing than another finger's tendon.
    """
    if not scene.setting.focus and len(scene.setting.digits) > 1 and len(deep) > 1:
        return deep  # under 'BOTH FINGERS'
    if _spent(desk, scene):
        return []
    if focus and _elsewhere(scene, focus, possible):
        return focus  # 'Middle (me): ... It has a Kessler' where only the index is known to be cut
    if _deep_just_named(focus, possible):
        return focus  # 'FDS: radial slip sutured. ... FDP ends smooth. Lim-Tsai, six strands'
    return None


def _last_resort(
    desk: Desk, scene: Scene, focus: list[Target], possible: list[Target], wanted: tuple[str, ...] | None
) -> tuple[list[Target], str]:
    """Return the only tendon that can be meant, or with a reason the only deep flexor; nothing where there are more."""
    if len(possible) == 1:
        return possible, ""
    if focus and not possible:
        if desk.settled and _only_named(desk, scene, focus):
            return [], ""
        return (_deep_beside(desk, focus) if _only_seen(desk, focus) else focus), ""
    here = [t for t in possible if t.digit in scene.setting.digits]
    if len(here) == 1:
        return here, ""
    deep = [t for t in (here or possible) if t.tendon in _DEEP]
    if len(deep) != 1:
        deep = [] if possible or focus or len(desk.deep_named) != 1 else _unclear(desk, wanted, possible)
    return deep, "the tendon is not named here; taken for the deep flexor" if deep else ""


def _second_core(desk: Desk, scene: Scene, focus: list[Target], deep: list[Target]) -> bool:
    """'FDP repaired. FDS repaired with 5-0. Four-strand cruciate 3-0 was used.': the core of the one without one."""
    if not focus or any(t.tendon != "FDS" for t in focus):
        return False
    last = max(_last_core(desk, scene, t) for t in deep)
    if last >= 0:
        return last > _named_at(desk, scene, "FDS") >= 0  # what follows that core is of the same tendon
    own = any(_last_core(desk, scene, t) >= 0 for t in focus)
    return own and bool(scene.of("strandword", "stitch")) and _OF_THE_SAME.isdisjoint(scene.said)


_OF_THE_SAME = frozenset(["slip", "slips", "tail", "tails", "half", "sorry", "correction"])


def _last_core(desk: Desk, scene: Scene, target: Target) -> int:
    """Return the word at which the last core suture of a tendon was told before a sentence, or -1."""
    told = (f for f in desk.told_of("repairs", target) if f.order < scene.sentence.i and not f.header)
    return max((f.order for f in told if f.field in ("size", "stitch", "strands", "peripheral")), default=-1)


def named_so_far(desk: Desk, scene: Scene, targets: list[Target], collective: bool = False) -> list[Target]:
    """Leave out a superficialis of which a note tells only further down: what is said of a finger is not of it.

    `collective`: words such as 'both tendons' or 'all ends' may take it up before it is named.
    """
    if collective and any(g.generic for g in scene.setting.groups):
        return targets
    kept = [t for t in targets if t.tendon != "FDS" or _told_by(desk, scene, t)]
    return kept if any(t.tendon != "FDS" for t in kept) else targets


def _told_by(desk: Desk, scene: Scene, target: Target) -> bool:
    entries = [target._replace(slip=slip) for slip in (None, "radial", "ulnar")]
    named = any("FDS" in g.tendons for g in scene.setting.groups)
    named = named or any(desk.hurt.get(t, scene.sentence.j) < scene.sentence.i for t in entries)
    return named or any(f.order < scene.sentence.i for t in entries for f in desk.told_of("repairs", t))


def _named_at(desk: Desk, scene: Scene, tendon: str) -> int:
    """Return the word at which a kind of tendon was last named before a sentence, or -1."""
    before = (s for s in reversed(desk.having("tendon")) if s.sentence.i < scene.sentence.i)
    named = (g.i for s in before for g in reversed(s.setting.groups) if tendon in g.tendons and not g.reference)
    return next(named, -1)


def _only_seen(desk: Desk, focus: list[Target]) -> bool:
    """'FDS was in good shape. ... The stump was pulled out over a button': a superficialis of which no cut is told."""
    told = any(t in desk.extents or t in desk.treatments or desk.has_suture(t) for t in focus)
    deep = any(t.tendon == "FDP" and t.digit in {f.digit for f in focus} for t in (*desk.named, *desk.deep_named))
    return all(t.tendon == "FDS" for t in focus) and deep and not told


def _only_named(desk: Desk, scene: Scene, focus: list[Target]) -> bool:
    """'A nodule on the superficialis. ... 4-0 nylon to both.': a thread behind a tendon of which no harm is told."""
    told = any(t in desk.extents or t in desk.treatments or desk.has_suture(t) for t in focus)
    sewing = scene.kinds & {"stitch", "strandword", "role", "deed", "mending", "ends", "endword"}
    return bool(scene.of("material")) and not told and not sewing


def _deep_beside(desk: Desk, focus: list[Target]) -> list[Target]:
    digits = {t.digit for t in focus}
    return [t for t in desk.deep_named if t.tendon == "FDP" and t.digit in digits and desk.may_be_repaired(t)]


_TAKES_UP = _THEY | {"it"}


def _untold(desk: Desk, target: Target, scene: Scene, deep: list[Target]) -> bool:
    """Tell whether what became of a tendon was not told before a sentence: not at all, or behind it or in a title.

    A word behind the sentence counts too where the tendon was named again after a core of the deep flexor.
    """
    told = [f for f in desk.told_of("repairs", target) if f.field == "treatment"]
    taken_up = not _TAKES_UP.isdisjoint(scene.said) and bool(
        scene.of("stitch")
    )  # 'The FDS was flat. I gave it a Kessler'
    if target not in desk.treatments and not taken_up:
        return True
    if target in desk.treatments and (not told or any(f.order < scene.sentence.i and not f.header for f in told)):
        return False
    at = max(_named_at(desk, scene, target.tendon), 0)
    cores = (f for t in deep for f in desk.told_of("repairs", t) if f.field in ("strands", "stitch", "size"))
    return not any(f.order < at and not f.header for f in cores)


def _sewn_before(desk: Desk, deep: Target, other: Target) -> bool:
    """'FDP cut. Core 3-0, 4 strands. FDS cut. Core 4-0, 2 strands.': the first core was told before the second cut."""
    cores = [f.order for f in desk.told_of("repairs", deep) if f.field in ("strands", "stitch", "size")]
    cuts = [f.order for f in desk.told_of("repairs", other) if f.field == "extent" and not f.header]
    return bool(cores) and bool(cuts) and min(cores) < max(cuts)


def _elsewhere(scene: Scene, focus: list[Target], possible: list[Target]) -> bool:
    """Tell whether the finger spoken of has a deep flexor in focus, and what is known to be cut is another finger's."""
    digits = set(scene.setting.digits)
    deep = all(t.tendon in ("FDP", "FPL") and t.digit in digits for t in focus)
    return deep and len(digits) == 1 and bool(possible) and not any(t.digit in digits for t in possible)


def _spent(desk: Desk, scene: Scene) -> bool:
    """'Index - proximal FDP excised. Distal stump fixed to P2': the finger spoken of has no tendon left to sew."""
    digits = scene.setting.digits
    if len(digits) != 1 or len(scene.every_digit) < 2 or desk.repairable(digits):
        return False
    known = [t for t in desk.named if t.digit in digits and t.tendon in ("FDP", "FPL")]
    focused = any(t.digit in digits for t in scene.setting.focus)
    return focused and any(desk.treatments.get(t) in ("excised", "left", "tenodesed") for t in known)


def _unclear(desk: Desk, digits: tuple[str, ...] | None, possible: list[Target]) -> list[Target]:
    """Return the deep flexors that the note names without a word known for how they were hurt or mended.

    Of the digits given, where nothing else of that digit may have been sewn: 'ring finger, FDP revision'.
    """
    taken = {t.digit for t in possible if t.tendon != "FDS" or desk.treatments.get(t) in _SEWN}
    found = [t for t in desk.deep_named if digits is None or t.digit in digits]
    if digits == ("thumb",) and not desk.cut(digits) and Target("thumb", "FPL") not in found:
        found.append(Target("thumb", "FPL"))  # a thumb has no other flexor tendon
    return [t for t in found if t.digit not in taken and t not in possible and desk.may_be_repaired(t)]


def owners(desk: Desk, scene: Scene, i: int, j: int) -> tuple[list[Target], list[str]]:
    """Return the tendons that words i to j speak of, named or carried, with reasons to look twice.

    Nothing where the words belong to another structure.
    """
    targets, group = tendon_owner(desk, scene, i, j)
    if targets:
        return _live(desk, targets), []
    subject = scene.owner(i, j)
    if subject is not None and subject.group is None:
        return [], []
    if group is not None and group.collective:
        return [], []
    if group is not None and group.generic == "others":
        return others(desk, scene, group, desk.repairable()), []
    if group is not None and group.generic == "all" and pair_in_focus(desk, scene, group):
        return list(scene.setting.focus), []
    if group is not None and group.generic == "all":
        digits = group.digits or _fingers(scene, group)
        words = set(scene.words(group.i, group.j))
        sewn = desk.sewn(digits or None)
        if group.digits:
            sewn = [t for t in sewn if t.digit] or sewn  # 'the ring and small finger tendons': not those of the wrist
        return meant_by_all(desk, scene, group.i, words, sewn), []
    if group is not None and group.every and not group.tendons and len(group.digits) < 2:
        return desk.sewn(), []
    found, reason = carried(desk, scene, near_digits(scene, group) if group is not None else None)
    return found, [reason] if reason else []


def pair_in_focus(desk: Desk, scene: Scene, group: Group) -> bool:
    """'FDS ring and small: 3-0. Neither was given an epitendinous suture.': the two tendons spoken of right before."""
    two = scene.words(group.i, group.j) in (["neither"], ["both"]) and not group.digits and group.i == scene.sentence.i
    focus = scene.setting.focus
    return two and len(focus) == 2 and all(desk.may_be_repaired(t) and desk.has_suture(t) for t in focus)


_PAIRS = frozenset(["both", "either", "neither"])


def meant_by_all(desk: Desk, scene: Scene, i: int, words: set[str], sewn: list[Target]) -> list[Target]:
    """Return, of the sewn tendons, those that 'both', 'either' or 'each of them' at word i takes up.

    'Each profundus received a core. A running 6-0 was placed round both.' speaks of the two deep flexors, and not of
    the superficialis that was sewn too.
    """
    sewn = sewn if "any" in words else _sewn_so_far(desk, scene, sewn)  # what is denied of any holds of all
    named = _named_last(desk, scene, i, sewn)
    if not words.isdisjoint(_PAIRS):
        if len(sewn) <= 2:
            return sewn
        through = _both_cut_through(desk, scene, i, sewn)
        if through:
            return through
        deep = [t for t in sewn if t.tendon in ("FDP", "FPL")]
        here = [t for t in sewn if (t.digit,) == scene.setting.digits]
        # 'a running 6-0 in both', 'I moved both fingers: both slid freely': in both fingers
        named_both = any(
            g.every and not (g.tendons or g.generic or g.digits) and g.j <= i for g in scene.setting.groups
        )
        # 'IF gap 0, MF gap 0, both slide free'
        told = [g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference) and g.j <= i]
        two = len({g.digits for g in told}) == 2
        fingers = len(deep) == 2 and (scene.word_before(i) == "in" or named_both or two)
        deep = here if len(here) == 2 and not fingers else deep
        return named if len(named) == 2 else deep if len(deep) == 2 else sewn
    deep = [t for t in sewn if t.tendon in ("FDP", "FPL")]
    counted = max((count_of(w) for w in words), default=0)
    if counted == len(deep) != len(sewn) and counted > 1:
        return deep  # 'A running 6-0 round all three' of three deep flexors and a superficialis
    if desk.at_wrist and _of_each_tendon(scene):
        return [t for t in sewn if t in named or _last_core(desk, scene, t) < 0]  # 'FCU cut. FDS cut. Each tendon ...'
    return named if "each" in words and len(named) > 1 else sewn


def _both_cut_through(desk: Desk, scene: Scene, i: int, sewn: list[Target]) -> list[Target]:
    """'Both divided tendons got a cruciate', where a third was cut in part and sewn too: the two cut through."""
    words = scene.words(scene.sentence.i, i + 3)
    said = any(
        a in _PAIRS and b in _CUTS and c in _TENDONS for a, b, c in zip(words, words[1:], words[2:], strict=False)
    )
    through = [t for t in sewn if desk.extents.get(t) == "complete"] if said else []
    return through if len(through) == 2 else []


_TENDONS = frozenset(["tendon", "tendons", "flexors"])


def _of_each_tendon(scene: Scene) -> bool:
    """Tell whether a sentence gives a core to 'each tendon', of whatever kind."""
    core = scene.of("strandword", "stitch", "material")
    return bool(core) and ("each", "tendon") in itertools.pairwise(scene.words(scene.sentence.i, scene.sentence.j))


def _sewn_so_far(desk: Desk, scene: Scene, sewn: list[Target]) -> list[Target]:
    """'In each the purchase was 9 mm. ... The radial slip was then sewn': not of what is only sewn further down."""
    done = [t for t in sewn if desk.has_suture(t)]
    return [t for t in sewn if t in done or not _sewn_later(desk, scene, t)] if len(done) > 1 else sewn


def _sewn_later(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether a note tells of the repair of a tendon, and only behind a sentence."""
    told = [f.order for f in desk.told_of("repairs", target) if f.field == "treatment" and not f.header]
    return bool(told) and min(told) >= scene.sentence.j


def _named_last(desk: Desk, scene: Scene, i: int, sewn: list[Target]) -> list[Target]:
    """Return, of the sewn tendons, those named last before word i: in the sentence, or at most two before it."""
    told = [g for g in scene.setting.groups if g.tendons and not g.reference and g.j <= i]
    fingers = [g for g in scene.setting.groups if g.digits and not g.reference and g.j <= i]
    before = desk.scene_before(scene)
    for _ in range(2):
        if told or before is None or before.sentence.block != scene.sentence.block:
            break
        told = [g for g in before.setting.groups if g.tendons and not g.reference]
        fingers = [g for g in before.setting.groups if g.digits and not g.reference]
        before = desk.scene_before(before)
    kinds = {t for g in told for t in g.tendons}
    digits = {d for g in fingers for d in g.digits}
    return [t for t in sewn if t.tendon in kinds and (not digits or t.digit in digits)]


def others(desk: Desk, scene: Scene, group: Group, possible: list[Target]) -> list[Target]:
    """Return, of the tendons possible, those that 'the others' or 'the remaining two' leaves to be spoken of."""
    before = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
    named = {t for g in before if g.tendons for t in group_targets(scene, g)}
    digits = {d for g in before if not g.tendons for d in g.digits}
    spoken = named | {t for t in possible if t.digit in digits} or set(scene.setting.focus)
    left = [t for t in possible if t not in spoken]
    if not left and (named or digits):  # 'FDP of the ring and small hurt. The ring took six strands, the other four.'
        focus = [t for t in scene.setting.focus if t not in named and t.digit not in digits]
        left = [t for t in focus if desk.may_be_repaired(t)]
    unsewn = [t for t in left if not desk.has_suture(t)]
    return (unsewn if scene.of("material", "stitch", "strandword") else []) or left


def near_digits(scene: Scene, group: Group) -> tuple[str, ...]:
    """Return the digits of a group, or for 'that tendon' those named before it in the sentence."""
    if group.digits or group.generic != "one":
        return group.digits
    before = [g for g in scene.setting.groups if g.digits and g.j <= group.i and not g.reference]
    return before[-1].digits if before else ()


def _fingers(scene: Scene, group: Group) -> tuple[str, ...]:
    """Return the digits that stand in the part of 'both tendons': 'in the index both tendons'.

    'IF gap 0, MF gap 0, both slide free' takes up both fingers.
    """
    named = [g for g in scene.setting.groups if g.digits and not g.tendons and g is not group and g.j <= group.i]
    fingers = tuple(dict.fromkeys(d for g in named for d in g.digits))
    return fingers if len(fingers) == len(named) == 2 else next((g.digits for g in named), ())


def _live(desk: Desk, targets: list[Target]) -> list[Target]:
    """Where a tendon's slips went different ways, what is said of the repaired tendon belongs to its repaired slips."""
    found: list[Target] = []
    for target in targets:
        slips = [t for t in desk.treatments if (t.digit, t.tendon) == (target.digit, target.tendon) and t.slip]
        if target.slip is None and slips:
            found += [t for t in slips if desk.treatments[t] == "repaired"] or [target]
        else:
            found.append(target)
    return list(dict.fromkeys(found))
