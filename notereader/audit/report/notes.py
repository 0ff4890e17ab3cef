"""The notes of an audit as the report lists them, one after another."""

import os
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

from notereader.audit.criteria import NEEDS, criteria
from notereader.audit.journal import NoteRow
from notereader.audit.results import Results
from notereader.audit.states import CONTRADICTORY, SILENT, note_state
from notereader.audit.tally import day_of, group_value

COUNTED, LEFT_OUT, REFUSED = "counted", "its record is counted instead", "refused"


@dataclass(frozen=True, slots=True)
class NoteLine:
    """One note: its number in the source, its name and link where names are shown, its groups and its gaps.

    `gaps` and `contradictions` name needs; `heavy` counts the gaps and contradictions that change the work most.
    """

    number: int
    name: str
    link: str
    groups: tuple[str, ...]
    day: str
    status: str
    said: str
    confirmed: bool
    gaps: tuple[str, ...]
    contradictions: tuple[str, ...]
    heavy: int
    row: NoteRow

    @property
    def weight(self) -> tuple[int, int, int]:
        """How much it leaves out, for sorting: what changes the work most, then all; the earlier of equals first."""
        return self.heavy, len(self.gaps), -self.number


def note_lines(results: Results, rows: Iterable[NoteRow], folder: Path) -> Iterator[NoteLine]:
    """Yield every note of a journal; links are relative to the folder of the report."""
    for number, row in enumerate(rows, 1):
        yield _line(results, number, row, folder)


def _line(results: Results, number: int, row: NoteRow, folder: Path) -> NoteLine:
    found = row.assessment
    gaps: list[str] = []
    contradictions: list[str] = []
    heavy = 0
    for criterion in criteria():
        letters = found.states.get(criterion.key, "") if found and criterion.kind == NEEDS else ""
        state = note_state(letters) if letters else ""
        if state in (SILENT, CONTRADICTORY):
            (gaps if state == SILENT else contradictions).append(criterion.label)
            heavy += criterion.weight == 3
    status = REFUSED if found is None else LEFT_OUT if row.has_record else COUNTED
    named = results.with_names
    return NoteLine(
        number=number,
        name=row.name if named else f"note {number}",
        link=_link(row.link, folder) if named and row.link else "",
        groups=tuple(group_value(row, column) for column in results.tally.groups),
        day=day_of(row),
        status=status,
        said=" ".join(filter(None, [row.refusal, row.warning])),
        confirmed=bool(found and found.confirmed),
        gaps=tuple(gaps),
        contradictions=tuple(contradictions),
        heavy=heavy,
        row=row,
    )


def _link(path: str, folder: Path) -> str:
    try:
        return quote(Path(os.path.relpath(path, folder.absolute())).as_posix())
    except ValueError:
        # On Windows another drive has no relative path.
        return Path(path).as_uri()
