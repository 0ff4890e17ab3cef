"""What to do next: the case that exercises the weakest kinds, and the missed facts that come back."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from notereader.practice.cases import Case
from notereader.practice.marks import GOOD, Marking
from notereader.practice.progress import KindProgress, Progress, ordered, progress_of
from notereader.practice.words import CONTRADICTIONS, SILENCE, kind_of, name_of, tables
from notereader.record import Address


@dataclass(frozen=True, slots=True)
class NextCase:
    """A case to take and the reason for it; `again` is True where every case was taken before."""

    case: Case
    reason: str
    again: bool = False


@dataclass(frozen=True, slots=True)
class Return:
    """A fact that was missed and comes back: in which case, from which day, how often it was missed."""

    sha256: str
    case: str
    address: str
    due: date
    missed: int

    @property
    def words(self) -> str:
        """Say which fact it is."""
        return Address.parse(self.address).words()


def next_case(cases: Sequence[Case], markings: Iterable[Marking]) -> NextCase | None:
    """Return the case to take next, or None where there is no case with a key.

    Cases not yet taken come first; among them the one with most facts of the kinds that go worst, near the student's
    level and at most one step harder than what was taken before. Once all are taken, the one that was taken longest
    ago comes back.
    """
    done = ordered(markings)
    known = [case for case in cases if case.key is not None]
    if not known:
        return None
    taken = {marking.sha256: number for number, marking in enumerate(done)}
    fresh = [case for case in known if case.sha256 not in taken]
    if not fresh:
        oldest = min(known, key=lambda case: taken[case.sha256])
        return NextCase(oldest, "every case was taken; this one was taken longest ago", again=True)
    progress = progress_of(done)
    need = {kind.key: _need(kind) for kind in progress.kinds}
    level = level_of(progress)
    reach = 1 + max((marking.difficulty for marking in done), default=0)
    within = [case for case in fresh if case.difficulty <= reach] or fresh
    worth = {case.id: _worth(case, need, level) for case in within}
    chosen = max(within, key=lambda case: (worth[case.id], -case.difficulty, case.id))
    return NextCase(chosen, _reason(progress))


def level_of(progress: Progress) -> float:
    """Return the difficulty that fits the student, 1 to 5; 1 before the first case, rising with the sure part."""
    return 1.0 + 4.0 * progress.overall.low if progress.cases else 1.0


def coverage(case: Case) -> Counter[str]:
    """Return how many facts of each kind a case holds."""
    found: Counter[str] = Counter()
    for place, fact in case.answers.walk():
        found[kind_of(name_of(place)) if fact.live else SILENCE] += 1
    if case.contradictions:
        found[CONTRADICTIONS] = len(case.contradictions)
    return found


def returns(markings: Iterable[Marking]) -> list[Return]:
    """Return every missed fact with the day on which it is due again, the earliest first.

    A fact comes back after the days of return_days in practice.toml, one step further each time it is right, from the
    start again when it is missed again; after the last step it is learnt.
    """
    steps = tables().progress.return_days
    found: dict[tuple[str, str], tuple[int, Return]] = {}
    line = sorted((m.handed_in_at, m.attempt, m) for m in markings if m.handed_in_at is not None)
    for when, _, marking in line:
        day = when.astimezone().date()
        for mark in marking.facts:
            key = (marking.sha256, mark.address)
            if mark.outcome not in GOOD:
                missed = found[key][1].missed + 1 if key in found else 1
                due = day + timedelta(days=steps[0])
                found[key] = (0, Return(marking.sha256, marking.case, mark.address, due, missed))
            elif key in found:
                step, before = found.pop(key)
                if step + 1 < len(steps):
                    due = day + timedelta(days=steps[step + 1])
                    found[key] = (step + 1, Return(before.sha256, before.case, before.address, due, before.missed))
    return sorted((item for _, item in found.values()), key=lambda item: (item.due, item.case, item.address))


def due_on(markings: Iterable[Marking], day: date) -> list[Return]:
    """Return the missed facts that are due on a day."""
    return [item for item in returns(markings) if item.due <= day]


def _need(kind: KindProgress) -> float:
    """Return how much a kind wants practice, 0 to 1: what may still go wrong, all of it where it was never tried."""
    return 1.0 - kind.low


def _worth(case: Case, need: dict[str, float], level: float) -> float:
    figures = tables().progress
    held = coverage(case)
    gain = sum(need[key] * min(count, figures.enough_facts) / figures.enough_facts for key, count in held.items())
    most = sum(need.values()) or 1.0
    return gain / most - figures.difficulty_step * abs(case.difficulty - level)


def _reason(progress: Progress) -> str:
    """Say why a case was chosen without telling what is in it."""
    if not progress.cases:
        return "a plain one to begin with"
    tried = [kind for kind in progress.kinds if kind.trials]
    faulty = [kind.label for kind in tried if kind.right < kind.trials][:2]
    if faulty:
        return f"chosen for what goes worst so far: {'; '.join(faulty)}"
    return f"nothing went wrong so far; chosen for what was tried least: {'; '.join(k.label for k in tried[:2])}"
