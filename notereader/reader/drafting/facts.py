"""A finding that was chosen becomes a proposed fact: its words and its rivals, and the reasons to look twice at it."""

from dataclasses import dataclass, field

from notereader.reader.desk import Desk, Finding
from notereader.reader.drafting.doubts import Doubts
from notereader.reader.drafting.settling import CORE
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene
from notereader.record import Evidence, Fact, Rival, source_of
from notereader.record.values import check_value, show_value
from notereader.vocabulary.fields import field_specs

# How many further places that say the same are shown beside the one that decided.
_ECHOES = 4
_STRENGTH = frozenset([*CORE, "peripheral", "gap", "tension", "bulk", "glide"])


Span = tuple[int, int]  # words


@dataclass(slots=True)
class FactMaker:
    """Makes the facts of one note."""

    desk: Desk
    source: str = field(init=False)
    places: dict[Span, Evidence] = field(init=False, default_factory=dict)  # words -> the evidence that they are
    doubts: Doubts = field(init=False)

    def __post_init__(self) -> None:
        """Compute once what every fact of the note needs."""
        self.source = source_of(self.desk.page.text)
        self.doubts = Doubts(self.desk)

    def fact(self, chosen: Finding, rivals: list[Finding], found: list[Finding]) -> Fact:
        """Return the proposed fact of a finding; `found` are all findings of its field."""
        spec = field_specs()[chosen.group][chosen.field]
        return Fact(
            value=check_value(spec, chosen.value),
            basis="implied" if chosen.implied else "stated",
            evidence=self._evidence([chosen, *_echoes(chosen, found)]),
            rivals=[Rival(value=r.value, evidence=self._evidence([r])) for r in rivals],
            rule=chosen.rule,
        )

    def words_of(self, scene: Scene) -> list[Evidence]:
        """Return the place of a whole sentence."""
        return [self._place((scene.sentence.i, scene.sentence.j))]

    def reasons(self, chosen: Finding, rivals: list[Finding]) -> list[Reason]:
        """Return the reasons to look twice at a finding that was chosen: its rule's own, its rivals, the titles."""
        unit = field_specs()[chosen.group][chosen.field].unit
        reasons = [*chosen.reasons, *[Reason("also_says", (show_value(r.value, unit),)) for r in rivals]]
        if chosen.header and chosen.field in _STRENGTH and chosen.group == "repairs":
            reasons.append(Reason("only_titled"))
        return list(dict.fromkeys([*reasons, *self.doubts.of(chosen)]))

    def _evidence(self, findings: list[Finding]) -> list[Evidence]:
        """Return the words of the findings, the first one's first; words that overlap are given as one."""
        return [self._place(span) for span in _joined([span for f in findings for span in f.spans])]

    def _place(self, span: Span) -> Evidence:
        """Return the evidence that words are, made once however many facts they prove."""
        if span not in self.places:
            page, (i, j) = self.desk.page, span
            self.places[span] = Evidence.at(page.text, page.starts[i], page.ends[j - 1], self.source)
        return self.places[span]


def _joined(spans: list[Span]) -> list[Span]:
    """Return spans in the order given, those that overlap joined."""
    if len(spans) == 1:  # as with most facts
        return spans
    joined: list[Span] = []
    for i, j in spans:
        n = next((n for n, (a, b) in enumerate(joined) if i < b and a < j), len(joined))
        a, b = joined[n] if n < len(joined) else (i, j)
        joined[n : n + 1] = [(min(a, i), max(b, j))]
    return joined


def _echoes(chosen: Finding, found: list[Finding]) -> list[Finding]:
    """Return the other places that say the same: a title and the body prove a fact together."""
    return [f for f in found if f is not chosen and f.value == chosen.value and f.implied == chosen.implied][:_ECHOES]
