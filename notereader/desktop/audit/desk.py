"""The audit as the window works it. Knows no Qt; everything here takes time and belongs into a thread of its own."""

import hashlib
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from datetime import date
from heapq import nlargest
from pathlib import Path

from notereader.audit import engine
from notereader.audit.audit import Audit, Progress, Settings, in_words
from notereader.audit.criteria import FIELDS, NEEDS, criteria_lists
from notereader.audit.faults import AuditFault
from notereader.audit.journal import FILE_NAME, Journal, discard
from notereader.audit.report import rows
from notereader.audit.report.notes import COUNTED, NoteLine, note_lines
from notereader.audit.report.page import sample_words, summary
from notereader.audit.report.words import notes_words
from notereader.audit.results import Part, Results
from notereader.audit.sample import FILE_NAME as SAMPLE_FILE
from notereader.audit.sources import (
    FROM_RECORD,
    TABLES,
    CasebookSource,
    Columns,
    Source,
    headings_of,
    likely_text,
    open_source,
    sheets_of,
)
from notereader.audit.states import note_state
from notereader.audit.tables import audit_tables
from notereader.audit.tally import day_of, group_value, period_of
from notereader.casebook import Casebook, CasebookFault
from notereader.desktop.audit.asking import Choice, Counting, Drawing, Found, Opening, Overview, Sheet, Want
from notereader.desktop.audit.drawing import drawn
from notereader.desktop.charts import DRAWING, Picture

# The casebook of notes that were opened from an audit without being of its sample.
OPENED_FILE = "opened.db"
# More notes than this are not shown at once; a figure leads to fewer.
MOST_NOTES = 1000


class Desk:
    """One audit under work. `home` is where the work of every audit lies, `own` the person's own casebook.

    The work of a source lies in a folder of its own, so that choosing the source again goes on with it. Methods raise
    AuditFault and AuditStopped.
    """

    def __init__(self, home: Path, own: str | None) -> None:
        self._home, self._own = home, own
        self._choice, self._settings = Choice(), Settings()
        self._folder = home
        self._known: Results | None = None

    # What is to be read

    def look(self, choice: Choice) -> Found:
        """Return what a source is, and whether notes of it were read before."""
        path = Path(choice.place).expanduser()
        headings: tuple[str, ...] = ()
        sheets: tuple[str, ...] = ()
        is_table = path.suffix.lower() in TABLES and path.is_file()
        if is_table:
            sheets = sheets_of(path)
            headings = tuple(h for h in headings_of(path, choice.sheet) if h)
            guess = likely_text(headings)
            if not choice.text and not choice.file:
                if not guess:
                    words = f"the table {path.name}. Which of its columns holds the text of the notes?"
                    return Found(words, True, sheets, headings, "", (*headings, *FROM_RECORD))
                choice = replace(choice, text=guess)
        with closing(self._open(choice)) as source:
            text = "" if choice.file else choice.text
            return Found(source.words, is_table, sheets, headings, text, source.columns, *self._kept(source))

    def read(
        self,
        choice: Choice,
        counting: Counting,
        on_progress: Callable[[Progress], None],
        stop: Callable[[], bool],
    ) -> Overview:
        """Read what is not read yet, count everything, and compare with what was confirmed of the sample."""
        with closing(self._open(choice)) as source:
            folder = self._folder_of(source)
            if counting.afresh or not self._kept(source)[0]:
                discard(folder)
        self._choice, self._folder, self._known = choice, folder, None
        self._settings = Settings(
            groups=counting.groups, period=counting.period, with_words=counting.with_words, day=date.today()
        )
        with self._audit() as audit:
            audit.read(workers=counting.processes, on_progress=on_progress, stop=stop)
            results = audit.results()
            if self._sample.exists():
                results = replace(results, comparison=audit.compare_with(self._sample))
            self._known = results
        return self.overview()

    def overview(self) -> Overview:
        """Return what was counted."""
        results = self._results
        with closing(self._open(self._choice)) as source:
            strata = source.columns
        return Overview(
            standing=f"{notes_words(results.tally.counted)} counted, from {results.source}, {results.day}.",
            summary=summary(results),
            counts=tuple(results.gist().items()),
            cautions=tuple(caution.words for caution in audit_tables().caution),
            lists=tuple((each.kind, each.title) for each in criteria_lists() if results.listed(each.kind)),
            columns=results.tally.groups,
            strata=strata,
            charted=tuple((c.key, rows.label_of(c)) for c in results.listed(NEEDS) if c.key in results.charts),
            with_words=results.with_words,
        )

    # What was counted

    def states(self, kind: str) -> Sheet:
        """Return a list of criteria with the share of notes in each state."""
        return Sheet(tuple(rows.states_head(self._results)), tuple(rows.states_lines(self._results, kind)))

    def groups(self, column: str) -> Sheet:
        """Return what changes the work most, by the groups of a column."""
        shown, every = rows.groups_shown(self._results, column), self._results.tally.by_group[column]
        words = f"The {len(shown)} largest of {len(every)} groups." if len(shown) < len(every) else ""
        return Sheet(
            tuple(rows.group_head(self._results, column)), tuple(rows.group_lines(self._results, column)), words
        )

    def group_names(self, column: str) -> list[str]:
        """Return the groups of the columns of groups()."""
        return rows.groups_shown(self._results, column)

    def periods(self, key: str) -> Sheet:
        """Return a criterion over time, point by point."""
        return Sheet(rows.PERIOD_HEAD, tuple(rows.period_lines(self._results.charts[key])))

    def signals(self) -> Sheet:
        """Return the signals in the charts of what changes the work most."""
        found = tuple(rows.signal_lines(self._results))
        points = max((len(chart.points) for chart in self._results.charts.values()), default=0)
        words = "" if found else "No signal in the charts of what changes the work most."
        if points < 20:
            words += f" With {points} periods the limits are provisional."
        return Sheet(rows.SIGNAL_HEAD, found, words.strip())

    def notes(self, want: Want) -> Sheet:
        """Return the notes that are wanted, those with the most gaps first."""
        found = 0

        def wanted() -> Iterator[NoteLine]:
            nonlocal found
            for line in note_lines(self._results, audit.notes(), self._folder):
                if self._is_wanted(line, want):
                    found += 1
                    yield line

        with self._audit() as audit:
            worst = nlargest(MOST_NOTES, wanted(), key=lambda line: line.weight)
        head = ("Note", *self._settings.groups, "Date", "Standing", "Weighty gaps", "Silent on", "Contradictory")
        words = notes_words(found)
        if want.words:
            words += f": {want.words}"
        if found > len(worst):
            words += f". The {len(worst):,} with the most gaps are shown."
        return Sheet(head, tuple(rows.Line(line.row.key, _note_cells(line)) for line in worst), words)

    def charts(self, what: str, detail: str, how: Drawing) -> list[Picture]:
        """Draw charts: 'states' of a list, 'groups' of a column, 'period' of a criterion, or 'corrected' shares."""
        return drawn(self._results, what, detail, how)

    # Opening notes

    def open_note(self, key: str) -> Opening:
        """Return the case of a note; one that has none yet is put into a casebook in the folder of the audit."""
        with closing(self._open(self._choice)) as source:
            if isinstance(source, CasebookSource):
                return Opening(self._choice.place, int(key.partition(" ")[2]), key)
        with self._audit() as audit:
            place = self._sample if key in audit.drawn() else self._folder / OPENED_FILE
            number = audit.hand_out(key, place)
        return Opening(str(place), number, key)

    # The sample

    def draw(self, size: int, column: str, seed: int) -> Sheet:
        """Draw a random sample and return it."""
        self._settings = replace(self._settings, sample=size, sample_by=column, seed=seed)
        with self._audit() as audit:
            if column and column not in self._settings.groups:
                # Brings the column of every note into the journal; nothing is read again.
                audit.read(workers=None)
            audit.draw()
            self._known = replace(self._results, drawn=len(audit.drawn()))
        return self.sample()

    def sample(self) -> Sheet:
        """Return the sample with how far each note is confirmed."""
        head = ("Note", "Standing")
        if not self._sample.exists():
            return Sheet(head, (), "No sample is drawn yet.")
        try:
            with closing(Casebook(self._sample)) as book:
                cases = sorted(book.cases(limit=1_000_000), key=lambda case: case.id)
        except CasebookFault as fault:
            raise AuditFault(str(fault)) from None
        done = sum(not case.facts_open for case in cases)
        lines = [rows.Line(str(case.id), (case.title, _standing(case.facts_open))) for case in cases]
        return Sheet(head, tuple(lines), f"{done} of {notes_words(len(cases))} confirmed.")

    def open_sampled(self, number: int, title: str) -> Opening:
        """Return a case of the sample."""
        return Opening(str(self._sample), number, title)

    def compare(self) -> Sheet:
        """Compare what was read with what is confirmed of the sample by now."""
        if not self._sample.exists():
            raise AuditFault("No sample is drawn yet. Draw one, confirm its notes, then compare.")
        with self._audit() as audit:
            self._known = replace(self._results, comparison=audit.compare_with(self._sample))
        return self.reader()

    def reader(self) -> Sheet:
        """Return how often the program erred, as far as it is known."""
        results = self._results
        words = sample_words(results) if results.comparison is not None else "Nothing is compared yet."
        lines = tuple(rows.reader_lines(results, (NEEDS, FIELDS))) if results.compared else ()
        return Sheet(rows.READER_HEAD, lines, words)

    # The second reader

    def agree(self, place: str) -> tuple[Sheet, Sheet]:
        """Compare with a second reader's records; return the agreement by field and where the two differ."""
        with self._audit() as audit:
            found = audit.agree_with(place)
            texts = {each.text for each in found.disagreements}
            held = ((row.assessment.sha256, row.key) for row in audit.notes() if row.assessment is not None)
            keys = {text: key for text, key in held if text in texts}
        self._known = replace(self._results, agreement=found)
        shown = replace(self._results, with_words=True, with_names=True)
        words = (
            f"{notes_words(found.shared)} read by both; {found.only_first} only by the first, {found.only_second} only "
            "by the second. Silence counts as a value."
        )
        differ = [
            rows.Line(keys.get(line.key, ""), line.cells)
            for _, line in zip(range(MOST_NOTES), rows.disagreement_lines(shown), strict=False)
        ]
        every = len(found.disagreements)
        told = f"{every:,} places differ." if every <= MOST_NOTES else f"{every:,} places differ; {MOST_NOTES:,} shown."
        return (
            Sheet(rows.AGREEMENT_HEAD, tuple(rows.agreement_lines(shown)), words),
            Sheet(rows.DISAGREEMENT_HEAD, tuple(differ), told),
        )

    # The report

    def save(self, folder: str, parts: tuple[Part, ...], with_names: bool) -> list[str]:
        """Write the report into a folder and return the names of its files."""
        settings = replace(self._settings, with_names=with_names)
        results = replace(self._results, with_names=with_names, settings=in_words(settings))
        with DRAWING, self._audit() as audit:
            return [path.name for path in audit.write(results, Path(folder), parts)]

    # Where things lie

    @property
    def _results(self) -> Results:
        if self._known is None:
            raise AuditFault("Nothing is counted yet. Choose what to read, then read and count.")
        return self._known

    @property
    def _sample(self) -> Path:
        return self._folder / SAMPLE_FILE

    def _open(self, choice: Choice) -> Source:
        if not choice.place:
            return CasebookSource(self._own)
        columns = Columns(
            text=choice.text,
            file=choice.file,
            name=choice.name,
            day=choice.day,
            day_first=choice.day_first,
            sheet=choice.sheet,
        )
        return open_source(choice.place, columns)

    def _folder_of(self, source: Source) -> Path:
        return self._home / hashlib.sha256(source.identity.encode("utf-8", "surrogatepass")).hexdigest()[:16]

    def _kept(self, source: Source) -> tuple[int, bool]:
        """Return how many notes of a source were read before, and whether with other knowledge than now."""
        folder = self._folder_of(source)
        if not (folder / FILE_NAME).exists():
            return 0, False
        with closing(Journal(folder)) as journal:
            count = journal.count()
            return count, count > 0 and journal.about("engine") != engine.stamp()

    @contextmanager
    def _audit(self) -> Iterator[Audit]:
        with closing(Audit(self._open(self._choice), self._folder, self._settings, resume=True)) as audit:
            yield audit

    def _is_wanted(self, line: NoteLine, want: Want) -> bool:
        row, found = line.row, line.row.assessment
        if not (want.key or want.column or want.period):
            return True
        if found is None or line.status != COUNTED:
            return False
        if want.column and group_value(row, want.column) != want.group:
            return False
        if want.period and period_of(day_of(row), self._settings.period) != want.period:
            return False
        letters = found.states.get(want.key, "")
        return not want.key or (bool(letters) and want.letter in ("", note_state(letters)))


def _note_cells(line: NoteLine) -> tuple[str, ...]:
    standing = "confirmed by a person" if line.confirmed else "as read"
    if line.status != COUNTED:
        standing = f"left out: {line.said or line.status}"
    gaps, contradictions = ", ".join(line.gaps), ", ".join(line.contradictions)
    weighty = str(line.heavy) if line.status == COUNTED else ""
    return (line.name, *line.groups, line.day, standing, weighty, gaps, contradictions)


def _standing(facts_open: int) -> str:
    if not facts_open:
        return "✓ confirmed"
    return f"○ {facts_open} {'fact' if facts_open == 1 else 'facts'} to settle"
