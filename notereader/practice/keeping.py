"""What an exercise book keeps beside the attempts: their markings; and from both, where each case stands."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from notereader.practice.attempts import Attempt, ExerciseBook
from notereader.practice.cases import Case
from notereader.practice.choosing import due_on
from notereader.practice.exports import export_json, read_markings, save_text
from notereader.practice.faults import PracticeFault
from notereader.practice.marking import mark
from notereader.practice.marks import Marking
from notereader.practice.progress import ordered
from notereader.record import Address

MARKING_ENDING = ".marking.json"


@dataclass(frozen=True, slots=True)
class CaseStanding:
    """Where a student stands with a case: whether an attempt waits to be handed in, and the last marking."""

    case: Case
    begun: bool
    marking: Marking | None

    @property
    def words(self) -> str:
        """Say it in a few words."""
        if self.begun:
            return "begun, not handed in"
        return "new" if self.marking is None else f"marked, {self.marking.share:.0%} of the points"


def keep_marking(book: ExerciseBook, marking: Marking) -> None:
    """Put a marking beside its attempt. Raises PracticeFault where it cannot be written."""
    save_text(book.folder / f"{marking.attempt}{MARKING_ENDING}", export_json([marking], words=True))


def kept_markings(book: ExerciseBook) -> tuple[list[Marking], list[str]]:
    """Return the markings of an exercise book and a sentence for each file that could not be read."""
    found: list[Marking] = []
    faults: list[str] = []
    for path in sorted(book.folder.glob(f"*{MARKING_ENDING}")):
        try:
            found += read_markings(path)
        except PracticeFault as fault:
            faults.append(str(fault))
    return found, faults


def mark_what_waits(book: ExerciseBook, cases: Iterable[Case], attempts: Iterable[Attempt]) -> list[Marking]:
    """Mark and keep what was handed in but never marked, because the program ended or the key was missing then."""
    keyed = {case.sha256: case for case in cases if case.key is not None}
    done = []
    for attempt in attempts:
        waits = attempt.handed_in_at and not (book.folder / f"{attempt.id}{MARKING_ENDING}").exists()
        if waits and attempt.sha256 in keyed:
            done.append(mark(keyed[attempt.sha256], attempt))
            keep_marking(book, done[-1])
    return done


def standings(cases: Iterable[Case], attempts: Iterable[Attempt], markings: Iterable[Marking]) -> list[CaseStanding]:
    """Return where each case stands; what only comes again for single facts changes nothing."""
    last = {marking.sha256: marking for marking in ordered(markings)}
    begun = {a.sha256 for a in attempts if not a.handed_in_at and a.scope != "again"}
    return [CaseStanding(case, case.sha256 in begun, last.get(case.sha256)) for case in cases]


def most_due(cases: Iterable[Case], markings: Sequence[Marking], day: date) -> tuple[Case, list[Address]] | None:
    """Return the case with most missed facts due on a day, and those facts; None where nothing is due."""
    due = due_on(markings, day)
    known = [case for case in cases if any(item.sha256 == case.sha256 for item in due)]
    if not known:
        return None
    case = max(known, key=lambda c: sum(item.sha256 == c.sha256 for item in due))
    return case, [Address.parse(item.address) for item in due if item.sha256 == case.sha256]
