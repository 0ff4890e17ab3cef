"""The teacher's view: several students' markings put together."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence

from pydantic import BaseModel, ConfigDict

from notereader.practice.items import Scores, difficulty, item_rest_correlation, upper_lower
from notereader.practice.marks import FactMark, Marking
from notereader.practice.measures import wilson
from notereader.practice.progress import ordered
from notereader.practice.words import tables
from notereader.record import Address
from notereader.vocabulary import field_specs

_VALUE_RIGHT = ("right", "wrong words")
_STATED = ("right", "wrong words", "wrong", "missed")


class _Model(BaseModel):
    model_config = ConfigDict(extra="forbid")


class StudentLine(_Model):
    """One student over all cases taken for the first time."""

    student: str
    cases: int
    share: float
    right: int
    trials: int
    over: int
    read_in: int
    rank_agreement: float | None


class FieldLine(_Model):
    """One field as a test item. `difficulty` is the share right: the lower, the harder.

    `discrimination` is the correlation with the rest of the test, `upper_lower` the index D; both are None with too
    few students or no spread. `low` and `high` are the range of the share right, taken as independent trials.
    """

    field: str
    label: str
    students: int
    trials: int
    difficulty: float
    low: float
    high: float
    discrimination: float | None
    upper_lower: float | None
    over: int


class FactLine(_Model):
    """One fact of one case: how many students had it right, and what the others entered."""

    case: str
    address: str
    words: str
    students: int
    right: int
    over: int
    said_instead: list[str]


class TeacherView(_Model):
    """Students, fields as items, and the hardest facts."""

    caution: str
    note: str
    students: list[StudentLine]
    fields: list[FieldLine]
    facts: list[FactLine]


def teacher_view(markings: Iterable[Marking]) -> TeacherView:
    """Put the markings of several students together; of a case taken twice only the first time counts."""
    by_student: dict[str, list[Marking]] = defaultdict(list)
    for marking in ordered(markings):
        own = by_student[marking.student]
        if all(other.sha256 != marking.sha256 for other in own):
            own.append(marking)
    least = tables().progress.discrimination_least
    note = ""
    if len(by_student) < least:
        note = f"Fewer than {least} students: no discrimination is shown, and every rate is rough."
    return TeacherView(
        caution=tables().caution,
        note=note,
        students=[_student(name, own) for name, own in sorted(by_student.items())],
        fields=_fields(by_student, len(by_student) >= least),
        facts=_facts(by_student),
    )


def _student(name: str, own: Sequence[Marking]) -> StudentLine:
    agreements = [
        m.questions.rank_agreement for m in own if m.questions is not None and m.questions.rank_agreement is not None
    ]
    return StudentLine(
        student=name or "(no name)",
        cases=len(own),
        share=round(sum(m.share for m in own) / len(own), 4),
        right=sum(m.counts["right"] + m.counts["wrong words"] for m in own),
        trials=sum(m.counts[outcome] for m in own for outcome in m.counts if outcome in _STATED),
        over=sum(m.over for m in own),
        read_in=sum(m.counts["read in"] for m in own),
        rank_agreement=round(sum(agreements) / len(agreements), 4) if agreements else None,
    )


def _tried(marks: Iterable[FactMark]) -> list[FactMark]:
    """Return the marks that are trials of a field: what the note states, and what was read into it."""
    return [mark for mark in marks if mark.outcome in (*_STATED, "read in")]


def _fields(by_student: dict[str, list[Marking]], enough: bool) -> list[FieldLine]:
    marks = {name: _tried(m for marking in own for m in marking.facts) for name, own in by_student.items()}
    names = [f"{group}.{name}" for group, specs in field_specs().items() for name in specs]
    items = [name for name in names if any(mark.field == name for own in marks.values() for mark in own)]
    scores: Scores = [[_share(own, item) for item in items] for own in marks.values()]
    lines = [
        _field([m for own in marks.values() for m in own if m.field == item], scores, number, enough)
        for number, item in enumerate(items)
    ]
    return sorted(lines, key=lambda line: (line.difficulty, line.field))


def _share(marks: Iterable[FactMark], item: str) -> float | None:
    own = [mark.outcome in _VALUE_RIGHT for mark in marks if mark.field == item]
    return sum(own) / len(own) if own else None


def _field(marks: list[FactMark], scores: Scores, number: int, enough: bool) -> FieldLine:
    right = sum(mark.outcome in _VALUE_RIGHT for mark in marks)
    rate = wilson(right, len(marks), tables().progress.interval)
    group, _, name = marks[0].field.partition(".")
    return FieldLine(
        field=marks[0].field,
        label=field_specs()[group][name].label,
        students=sum(row[number] is not None for row in scores),
        trials=len(marks),
        difficulty=round(difficulty(scores, number) or 0.0, 4),
        low=round(rate.low, 4),
        high=round(rate.high, 4),
        discrimination=_rounded(item_rest_correlation(scores, number)) if enough else None,
        upper_lower=_rounded(upper_lower(scores, number, tables().progress.group_share)) if enough else None,
        over=sum(mark.over for mark in marks),
    )


def _rounded(figure: float | None) -> float | None:
    return None if figure is None else round(figure, 4)


def _facts(by_student: dict[str, list[Marking]]) -> list[FactLine]:
    met: dict[tuple[str, str], list[FactMark]] = defaultdict(list)
    for own in by_student.values():
        for marking in own:
            for mark in _tried(marking.facts):
                met[marking.case, mark.address].append(mark)
    lines = [_fact(case, address, marks) for (case, address), marks in met.items()]
    return sorted(lines, key=lambda line: (-line.over, line.right / line.students, line.case, line.address))


def _fact(case: str, address: str, marks: list[FactMark]) -> FactLine:
    wrong = Counter(mark.said or "nothing" for mark in marks if mark.outcome not in _VALUE_RIGHT)
    return FactLine(
        case=case,
        address=address,
        words=Address.parse(address).words(),
        students=len(marks),
        right=sum(mark.outcome in _VALUE_RIGHT for mark in marks),
        over=sum(mark.over for mark in marks),
        said_instead=[f"{said} ({count})" for said, count in wrong.most_common(3)],
    )
