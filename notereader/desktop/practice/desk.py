"""Everything practice in the window asks of cases, exercise book and markings. Knows no Qt.

Each function takes time and may raise PracticeFault: call it through the worker of practice.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from notereader.practice import (
    Case,
    CaseSet,
    CaseStanding,
    ExerciseBook,
    Marking,
    NextCase,
    OpenAttempt,
    PracticeFault,
    Progress,
    Return,
    TeacherView,
    due_on,
    exercise_book,
    keep_marking,
    kept_markings,
    load_set,
    mark,
    mark_what_waits,
    most_due,
    next_case,
    progress_of,
    read_markings,
    ready_set,
    returns,
    save_set,
    standings,
    take_in,
    teacher_view,
)
from notereader.practice.words import tables


@dataclass(frozen=True)
class Overview:
    """What the page of cases shows: where each case stands, what comes next, how many missed facts are due."""

    title: str
    lines: tuple[CaseStanding, ...]
    markings: tuple[Marking, ...]
    chosen: NextCase | None
    due: int
    faults: tuple[str, ...]
    caution: str


@dataclass(frozen=True)
class Standing:
    """What the page of progress shows."""

    markings: tuple[Marking, ...]
    progress: Progress
    coming: tuple[Return, ...]


@dataclass(frozen=True)
class ClassView:
    """What the teacher's page shows: the view, the markings under it, and what could not be taken in."""

    view: TeacherView | None
    markings: tuple[Marking, ...]
    faults: tuple[str, ...]


class Desk:
    """One student's exercise book and one set of cases; the set is read once."""

    def __init__(self, student: str, case_set: str = "", folder: Path | None = None):
        self.student = student
        self._case_set = case_set
        self._folder = folder
        self._cases: CaseSet | None = None

    def overview(self) -> Overview:
        """Look through cases and exercise book; what was handed in and never marked is marked now."""
        cases, book = self.cases(), self._book()
        attempts = book.attempts()
        faults = list(book.faults)
        mark_what_waits(book, cases.cases, attempts)
        markings, unread = kept_markings(book)
        return Overview(
            title=cases.title or "Cases",
            lines=tuple(standings(cases.cases, attempts, markings)),
            markings=tuple(markings),
            chosen=next_case(cases.cases, markings),
            due=len(due_on(markings, date.today())),
            faults=(*faults, *unread),
            caution=tables().caution,
        )

    def cases(self) -> CaseSet:
        """Return the cases, those that come with the program where no others were chosen."""
        if self._cases is None:
            self._cases = load_set(Path(self._case_set)) if self._case_set else ready_set()
        return self._cases

    def take(self, case_id: str) -> OpenAttempt:
        """Go on with the attempt at a case that is not handed in, or begin one."""
        case, book = self.cases().case(case_id), self._book()
        return book.unfinished(case) or book.start(case)

    def take_due(self) -> OpenAttempt:
        """Take the case with most missed facts due today, asking for those only."""
        book = self._book()
        markings, _ = kept_markings(book)
        found = most_due(self.cases().cases, markings, date.today())
        if found is None:
            raise PracticeFault("No missed fact is due again today. Take a case instead.")
        case, asked = found
        return book.unfinished(case, again=True) or book.start(case, "again", asked)

    def mark(self, attempt: OpenAttempt) -> Marking | None:
        """Mark an attempt that was handed in and keep the marking; None where the case came without its key."""
        if attempt.case.key is None:
            return None
        marking = mark(attempt.case, attempt.attempt)
        keep_marking(self._book(), marking)
        return marking

    def case_of(self, marking: Marking) -> Case | None:
        """Return the case a marking belongs to, where it is in this set."""
        return self.cases().of_note(marking.sha256)

    def standing(self) -> Standing:
        """Return progress and the missed facts that come back."""
        markings, _ = kept_markings(self._book())
        return Standing(tuple(markings), progress_of(markings, self.student), tuple(returns(markings)))

    def class_of(self, paths: Iterable[Path]) -> ClassView:
        """Put several students' files together: exports, markings, and attempts or answers, which are marked here."""
        markings: list[Marking] = []
        faults: list[str] = []
        for path in paths:
            try:
                markings += self._markings_of(path)
            except PracticeFault as fault:
                faults.append(str(fault))
        return ClassView(teacher_view(markings) if markings else None, tuple(markings), tuple(faults))

    def _markings_of(self, path: Path) -> Sequence[Marking]:
        try:
            return read_markings(path)
        except PracticeFault as no_markings:
            try:
                attempt, case = take_in(path, self.cases())
            except PracticeFault as no_answers:
                # An export of another version says more than that it is no answer sheet.
                raise (no_markings if "newer" in str(no_markings) else no_answers) from None
            return [mark(case, attempt)]

    def _book(self) -> ExerciseBook:
        return exercise_book(self.student, self._folder)


def make_set(paths: Sequence[Path], target: Path, *, keys: bool) -> int:
    """Write the cases of records with their notes, or of other sets, into one file; return how many there are."""
    cases = [case for path in paths for case in load_set(path).cases]
    save_set(cases, target, target.stem, keys=keys)
    return len(cases)
