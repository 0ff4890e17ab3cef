"""The marking as data: everything that is shown, printed and exported."""

from datetime import datetime
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field

from notereader.practice.attempts import Scope
from notereader.practice.promise import Leaning
from notereader.practice.quotes import Proof
from notereader.practice.words import Bears

MARKING_FORMAT: Literal["notereader-marking"] = "notereader-marking"
MARKING_VERSION = 1

Outcome = Literal["right", "wrong words", "wrong", "missed", "read in", "silence seen", "silence unsaid"]
OUTCOMES: tuple[Outcome, ...] = (
    "right",
    "wrong words",
    "wrong",
    "missed",
    "read in",
    "silence seen",
    "silence unsaid",
)
# Outcomes with which there is nothing to learn.
GOOD: frozenset[Outcome] = frozenset({"right", "silence seen"})


class Model(BaseModel):
    """Base of the parts of a marking."""

    model_config = ConfigDict(extra="forbid")


class Words(Model):
    """Words of the note with their place in code points, the end not included."""

    quote: str
    start: int
    end: int


class FactMark(Model):
    """How one fact was read.

    `address` is the key's; where the student claimed what the key does not hold, the student's own. `said` and `true`
    are the values in words, '' where nothing was said or nothing stands. `over` is True where the student's value
    promises more than the note does. `tip` says what counts as what, where the value is wrong. `worth` is what the
    fact can bring, `points` what it brought.
    """

    address: str
    where: str
    label: str
    kind: str
    field: str
    outcome: Outcome
    leaning: Leaning | None = None
    said: str = ""
    true: str = ""
    implied: bool = False
    proof: Proof | None = None
    worth: float = 0.0
    points: float = 0.0
    sentence: str = ""
    tip: str = ""
    why: str = ""
    bears: Bears | None = None
    source: str = ""
    said_words: list[Words] = []
    key_words: list[Words] = []

    @property
    def over(self) -> bool:
        """True for an over-statement, the worst fault."""
        return self.leaning == "over" and self.outcome in ("wrong", "read in")


class EntryMark(Model):
    """Whether a tendon, pulley or structure stands where it belongs; `filed_under` is the student's wrong place."""

    address: str
    where: str
    filed_under: str = ""
    right: bool
    points: float = 0.0
    sentence: str = ""
    why: str = ""


class ContradictionMark(Model):
    """One contradiction: named, missed, unusual (odd, rightly named) or unfounded (named though there is none)."""

    outcome: Literal["named", "missed", "unusual", "unfounded"]
    title: str
    words: str
    places: list[str]
    sentence: str = ""
    worth: float = 0.0
    points: float = 0.0
    key_words: list[Words] = []


class AskedMark(Model):
    """One question of the student: its place in the appraisal's order (from 1), None where it is not among them."""

    address: str
    asked: str
    place: int | None
    effect: float
    sentence: str = ""


class BestQuestion(Model):
    """One of the questions that the appraisal puts first."""

    text: str
    where: str
    reason: str
    effect: float


class QuestionsMark(Model):
    """The student's ranking against the appraisal's order.

    `among_best`: how many of the student's questions are among the first ones. `rank_agreement`: Somers' D of the
    student's order on what the answers are worth, 1 for the right order, -1 for the reverse. `worth_share`: discounted
    worth of the ranking as a share of the best possible. Both are None where they cannot be reckoned.
    """

    asked: list[AskedMark]
    best: list[BestQuestion]
    among_best: int
    rank_agreement: float | None
    worth_share: float | None


class KindTally(Model):
    """Trials and successes for one kind of fact in one marking."""

    key: str
    label: str
    trials: int
    right: int
    over: int = 0


class Marking(Model):
    """One attempt held against its key. `share` is points over worth, not below 0; `raw_share` may be.

    `kappa` is Cohen's agreement beyond chance on which facts the note states and on which it is silent.
    """

    format: Literal["notereader-marking"] = MARKING_FORMAT
    format_version: Annotated[int, Field(ge=1, le=MARKING_VERSION)] = MARKING_VERSION
    cautions: list[str]
    case: str
    sha256: str
    difficulty: int
    attempt: str
    student: str
    scope: Scope
    handed_in_at: datetime | None
    share: float
    raw_share: float
    counts: dict[Outcome, int]
    over: int
    kappa: float | None
    facts: list[FactMark]
    entries: list[EntryMark]
    contradictions: list[ContradictionMark]
    questions: QuestionsMark | None
    kinds: list[KindTally]
    teaches: str = ""
    remark: str = ""

    @property
    def differences(self) -> list[FactMark]:
        """The facts there is something to learn from, over-statements first, then by what they cost."""
        open_marks = [mark for mark in self.facts if mark.outcome not in GOOD]
        return sorted(open_marks, key=lambda mark: (not mark.over, mark.points - mark.worth))

    @property
    def perfect(self) -> bool:
        """True where there is no difference at all; questions are judged apart."""
        return (
            not self.differences
            and all(entry.right for entry in self.entries)
            and all(hit.outcome in ("named", "unusual") for hit in self.contradictions)
        )

    def without_words(self) -> "Marking":
        """Return the marking without any words of the note, for exports that shall hold none."""
        bare = self.model_copy(deep=True)
        for mark in bare.facts:
            mark.said_words, mark.key_words = [], []
        for hit in bare.contradictions:
            hit.key_words, hit.words = [], hit.title
        bare.teaches = bare.remark = ""
        return bare
