"""Progress and the teacher's view as readable text."""

from collections.abc import Iterable, Iterator

from notereader.practice.choosing import returns
from notereader.practice.marks import Marking
from notereader.practice.printing import fill, marking_line
from notereader.practice.progress import KindProgress, Progress, ordered
from notereader.practice.teacher import TeacherView

# More lines than this of the hardest facts are left to the table.
_MOST_FACTS = 15


def progress_text(progress: Progress, markings: Iterable[Marking]) -> str:
    """Return a student's progress as plain text."""
    line = list(markings)
    who = f": {progress.student}" if progress.student else ""
    parts = [f"PROGRESS{who}, {progress.cases} cases", ""]
    parts += [f"  {marking_line(marking)}" for marking in ordered(line)]
    parts += [
        "",
        "By kind of fact, the weakest first. Later cases count more; the bar spans the range the share may lie in.",
        "",
    ]
    parts += [_kind_line(kind) for kind in [*progress.kinds, progress.overall]]
    if coming := returns(line):
        parts += ["", "Missed facts and the day they come back:"]
        parts += [f"  {item.due.isoformat()}  {item.case}: {item.words}" for item in coming[:_MOST_FACTS]]
        if len(coming) > _MOST_FACTS:
            parts.append(f"  ... and {len(coming) - _MOST_FACTS} more")
    return "\n".join([*parts, "", *fill(progress.caution)]) + "\n"


def teacher_text(view: TeacherView) -> str:
    """Return the teacher's view as plain text."""
    parts = [
        f"STUDENTS: {len(view.students)}",
        "",
        f"  {'student':<16} cases  points  facts right  over-stated  read in  order of questions",
    ]
    for own in view.students:
        order = "     -" if own.rank_agreement is None else f"{own.rank_agreement:+6.2f}"
        facts = f"{own.right} of {own.trials}"
        counts = f"{own.cases:>5}  {own.share:>6.0%}  {facts:>11}  {own.over:>11}  {own.read_in:>7}"
        parts.append(f"  {own.student:<16} {counts}  {order}")
    parts += ["", "FIELDS AS ITEMS, the hardest first"]
    parts += fill(
        "share right with its range; discrimination: correlation with the rest of the test; D: upper less lower group. "
        f"{view.note}",
        "  ",
    )
    parts.append(f"  {'field':<34} students trials  right  range        discr.     D  over-stated")
    parts += [*_field_lines(view), "", "FACTS: over-stated and hardest first"]
    for fact in view.facts[:_MOST_FACTS]:
        instead = f"; instead: {', '.join(fact.said_instead)}" if fact.said_instead else ""
        parts += fill(
            f"{fact.case}: {fact.words}: right {fact.right} of {fact.students}, over-stated {fact.over}{instead}",
            "      ",
            "  ",
        )
    return "\n".join([*parts, "", *fill(view.caution)]) + "\n"


def _field_lines(view: TeacherView) -> Iterator[str]:
    for line in view.fields:
        discrimination = "     -" if line.discrimination is None else f"{line.discrimination:+6.2f}"
        index = "    -" if line.upper_lower is None else f"{line.upper_lower:+5.2f}"
        span = f"{line.low:.0%} to {line.high:.0%}"
        rates = f"{line.students:>8} {line.trials:>6} {line.difficulty:>6.0%}  {span:<12}"
        yield f"  {line.field:<34} {rates} {discrimination} {index} {line.over:>8}"


def _kind_line(kind: KindProgress) -> str:
    if kind.middle is None:
        return f"  {'not met yet':<22} {'':>11}  {kind.label}"
    width = 20
    low, high = round(kind.low * width), round(kind.high * width)
    bar = "." * low + "=" * max(1, high - low) + "." * (width - max(low + 1, high))
    over = f", {kind.over} over-stated" if kind.over else ""
    unsure = ", few trials" if kind.unsure else ""
    return f"  {bar[:width]}  {kind.middle:>4.0%} {kind.right:>3} of {kind.trials:>3}  {kind.label}{over}{unsure}"
