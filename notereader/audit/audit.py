"""An audit from beginning to end: go through a source, count, compare, report. What can be resumed is."""

from collections.abc import Callable, Collection, Iterator
from concurrent.futures import Executor
from contextlib import suppress
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path

from notereader.audit import engine
from notereader.audit.concord import Agreement, agree, stem_of
from notereader.audit.faults import AuditFault, AuditStopped
from notereader.audit.journal import Journal, NoteRow
from notereader.audit.peers import records_in
from notereader.audit.results import PARTS, Part, Results, charts_of
from notereader.audit.sample import FILE_NAME as SAMPLE_FILE
from notereader.audit.sample import Comparison, compare, draw, hand_out
from notereader.audit.sources import NoteInput, Source
from notereader.audit.tally import Period, tally
from notereader.audit.work import Placed, carry_out, record_of
from notereader.intake import IntakeRefused
from notereader.record import Record, RecordRefused

# How many notes are saved together. A crash loses at most these, and they are read again.
SAVED_TOGETHER = 50


@dataclass(frozen=True, slots=True)
class Settings:
    """What a person chooses for an audit.

    `groups` are columns of the source or of the record (month, stitch, confirmed). `sample` is the size of the random
    sample to draw, 0 for none, drawn with `seed` and, where `sample_by` names a column, from each of its values.
    `confirmed` is where confirmed records lie, `other` the records of a second reader. `day` is the date that the
    report bears. `with_words` puts words of the notes into the report, `with_names` the names of notes and their links.
    """

    groups: tuple[str, ...] = ()
    period: Period = "month"
    seed: int = 0
    sample: int = 0
    sample_by: str = ""
    confirmed: str | Path | None = None
    other: str | Path | None = None
    day: date = field(default_factory=date.today)
    with_words: bool = False
    with_names: bool = True


@dataclass(frozen=True, slots=True)
class Progress:
    """How far the work is: notes done in all, of them refused, notes taken over from earlier work, and the total."""

    done: int = 0
    refused: int = 0
    kept: int = 0
    total: int | None = None


@dataclass(frozen=True, slots=True)
class Outcomes:
    """What an audit leaves behind: the results, the files of the report, and the sample to confirm, where drawn."""

    results: Results
    files: tuple[Path, ...]
    sample: Path | None = None


OnProgress = Callable[[Progress], None]


class Audit:
    """The audit of one source in one folder.

    With resume=True the work that lies in the folder is gone on with. Raises AuditFault where work lies there and
    resume is False, or where it was begun on another source, by another version, or without the words that are now
    asked for.
    """

    def __init__(self, source: Source, folder: Path, settings: Settings, *, resume: bool = False) -> None:
        self._source, self._folder, self._settings = source, folder, settings
        self._refuse_unknown_columns()
        self._journal = Journal(folder)
        try:
            self._begin(resume)
        except AuditFault:
            self._journal.close()
            raise

    def run(
        self,
        *,
        workers: int | None = None,
        executor: Executor | None = None,
        on_progress: OnProgress = lambda progress: None,
        stop: Callable[[], bool] = lambda: False,
    ) -> Outcomes:
        """Read what is not read yet, count, and write the report.

        Raises as read() does.
        """
        self.read(workers=workers, executor=executor, on_progress=on_progress, stop=stop)
        sample = self.draw()
        results = self.results()
        return Outcomes(results, tuple(self.write(results, self._folder)), sample)

    def read(
        self,
        *,
        workers: int | None = None,
        executor: Executor | None = None,
        on_progress: OnProgress = lambda progress: None,
        stop: Callable[[], bool] = lambda: False,
    ) -> None:
        """Read what is not read yet.

        `executor` is any executor of PEP 3148, with so many `workers` where that is known. Without one so many
        processes of our own do the work, or, with None, this process alone. Raises AuditStopped as soon as `stop`
        returns True: what is done is kept. Raises AuditFault.
        """
        journal, run = self._journal, self._journal.begin_run()
        progress = Progress(total=self._source.count())

        def unread() -> Iterator[Placed]:
            nonlocal progress
            for place, item in enumerate(self._inputs()):
                kept = self._kept(item)
                if journal.known(kept, place, run):
                    progress = replace(progress, done=progress.done + 1, kept=progress.kept + 1)
                else:
                    yield place, kept

        unsaved = 0
        for place, item, outcome in carry_out(unread(), self._settings.with_words, stop, workers, executor):
            if outcome.stamp != engine.stamp():
                raise AuditFault(
                    "A worker reads with another version of the program or other knowledge files than this one. "
                    "Install the same version everywhere, then go on with the work."
                )
            journal.write(item, place, run, outcome)
            unsaved += 1
            if unsaved == SAVED_TOGETHER:
                journal.save()
                unsaved = 0
            refused = progress.refused + (outcome.assessment is None)
            progress = replace(progress, done=progress.done + 1, refused=refused)
            on_progress(progress)
        journal.save()
        on_progress(progress)
        if stop():
            raise AuditStopped(f"Stopped after {progress.done:,} notes. What is done is kept.")
        journal.end_run(run)

    def draw(self) -> Path | None:
        """Draw the sample to be confirmed and put it into a casebook; None where none is asked for.

        The same settings draw the same notes, and a larger sample holds the smaller one: cases that are there already
        stay as they are. Raises AuditFault.
        """
        settings = self._settings
        if not settings.sample:
            return None
        keys = draw(self._journal, settings.sample, settings.seed, settings.sample_by)
        self._journal.note("sample", keys)
        self._journal.save()
        path = self._folder / SAMPLE_FILE
        hand_out(self._source, keys, path)
        return path

    def drawn(self) -> list[str]:
        """Return the keys of the sample that was drawn last, in the order in which they were drawn."""
        return self._journal.about("sample") or []

    def results(self) -> Results:
        """Count what was read and compare it with what people say of the same notes. Raises AuditFault."""
        settings = self._settings
        counted = tally(self._journal.rows(), settings.groups, settings.period)
        return Results(
            day=settings.day.isoformat(),
            source=self._source.words,
            engine=engine.engine(),
            settings=in_words(settings),
            tally=counted,
            copies=self._journal.copies(),
            drawn=len(self.drawn()),
            comparison=None if settings.confirmed is None else self.compare_with(settings.confirmed),
            agreement=None if settings.other is None else self.agree_with(settings.other),
            with_words=settings.with_words,
            with_names=settings.with_names,
            charts=charts_of(counted),
        )

    def write(self, results: Results, folder: Path, parts: Collection[Part] = PARTS) -> list[Path]:
        """Write these parts of the report into a folder and return their files. Raises AuditFault."""
        # Drawing is loaded where it is used: workers and the command line's help do without.
        from notereader.audit.report import write_report

        return write_report(results, self._journal, folder, parts)

    def hand_out(self, key: str, path: Path) -> int:
        """Put one note into a casebook file, unless it is there, and return the number of its case.

        Raises AuditFault where it was refused, or is no longer as it was read.
        """
        text = self._journal.text_of(key)
        if text is None:
            raise AuditFault("This note was refused, so there is nothing to open. The table of notes says why.")
        found = hand_out(self._source, [key], path).get(text)
        if found is None:
            raise AuditFault("This note has changed since it was read. Read and count again, then open it.")
        return found

    def notes(self) -> Iterator[NoteRow]:
        """Yield what was found of each note, in the order of the source."""
        return self._journal.rows()

    def compare_with(self, confirmed: str | Path) -> Comparison:
        """Compare what was read with the confirmed records of a casebook or a folder. Raises AuditFault."""
        return compare(self._journal, records_in(confirmed), self.drawn())

    def agree_with(self, other: str | Path) -> Agreement:
        """Compare the records of the source, or what the program reads from its notes, with a second reader's.

        Raises AuditFault.
        """
        second = list(records_in(other))
        texts = {record.note.sha256 for record in second} - {""}
        names = {stem_of(record.note.name) for record in second}
        lone = 0

        def first() -> Iterator[Record]:
            nonlocal lone
            for item in self._inputs():
                text = self._journal.text_of(item.key)
                if text in texts or stem_of(item.name) in names or item.kind == "record":
                    with suppress(IntakeRefused, RecordRefused):
                        yield record_of(item)[0]
                else:
                    # Nobody else read it: it need not be read again to be counted.
                    lone += text is not None

        found = agree(first(), second, self._settings.seed)
        found.only_first += lone
        return found

    def close(self) -> None:
        """Save and let go of the folder and the source."""
        self._journal.close()
        self._source.close()

    def _refuse_unknown_columns(self) -> None:
        known = self._source.columns
        for column in (*self._settings.groups, *filter(None, [self._settings.sample_by])):
            if column not in known:
                raise AuditFault(
                    f"There is no column '{column}' to group by. {self._source.words[:1].upper()}"
                    f"{self._source.words[1:]} has: {', '.join(known)}."
                )

    def _begin(self, resume: bool) -> None:
        begun = {
            "source": self._source.identity,
            "engine": engine.stamp(),
            "with words": self._settings.with_words,
        }
        if self._journal.is_new:
            for name, value in begun.items():
                self._journal.note(name, value)
            self._journal.save()
            return
        if not resume:
            raise AuditFault(
                f"{self._folder} holds the work of an audit already. Go on with it, begin afresh, or choose another "
                "folder."
            )
        reasons = {
            "source": "was begun on another source",
            "engine": "was begun by another version of the program or with other knowledge files",
            "with words": "was begun with another choice about the words of the notes",
        }
        for name, reason in reasons.items():
            if self._journal.about(name) != begun[name]:
                raise AuditFault(f"The work in {self._folder} {reason}. Begin afresh, or choose another folder.")

    def _inputs(self) -> Iterator[NoteInput]:
        """Yield the inputs of the source; the audit's own folder may lie within it and is none of them."""
        own = self._folder.absolute()
        return (item for item in self._source.inputs() if item.link is None or own not in item.link.parents)

    def _kept(self, item: NoteInput) -> NoteInput:
        """Return an input with only the columns that are asked for: the journal keeps no others."""
        wanted = (*self._settings.groups, self._settings.sample_by)
        return replace(item, columns=tuple((name, value) for name, value in item.columns if name in wanted))


def in_words(settings: Settings) -> dict[str, str]:
    """Return the choices that shape a report, by name."""
    said = {
        "Grouped by": ", ".join(settings.groups),
        "Period": settings.period,
        "Seed": str(settings.seed),
        "Sample drawn by": settings.sample_by,
        "Words of the notes": "in the tables" if settings.with_words else "left out",
        "Names of the notes": "shown; they may name patients" if settings.with_names else "left out",
    }
    return {name: words for name, words in said.items() if words}
