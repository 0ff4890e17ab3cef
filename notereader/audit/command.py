"""The audit for the command line: what can be asked for, and how far the work is."""

import os
import sys
import time
from argparse import ArgumentParser, Namespace
from collections.abc import Iterator
from concurrent.futures import Executor
from contextlib import contextmanager
from datetime import date
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from notereader.audit.audit import Audit, Outcomes, Progress
    from notereader.audit.sources import Source

# Exit codes: done; cannot be done as asked; stopped by the person (128 and the number of the signal, as shells count).
DONE, FAULT, STOPPED = 0, 1, 130

SECONDS_BETWEEN_LINES = 5.0


def add_arguments(parser: ArgumentParser) -> None:
    """Add what the audit can be asked for to a parser."""
    parser.add_argument(
        "source",
        nargs="?",
        help="a folder of notes or of exported records, a table (.csv, .tsv, .xlsx) with a note in each row, or the "
        "file of a casebook",
    )
    parser.add_argument(
        "--casebook",
        nargs="?",
        const="",
        metavar="PLACE",
        help="audit a casebook instead: your own, or the one at this file or URL",
    )
    parser.add_argument("--out", required=True, type=Path, metavar="FOLDER", help="where the report goes")
    table = parser.add_argument_group("columns of a table")
    table.add_argument("--text-column", default="", metavar="NAME", help="column with the text of the notes")
    table.add_argument("--file-column", default="", metavar="NAME", help="column with the file of each note instead")
    table.add_argument("--name-column", default="", metavar="NAME", help="column that tells notes apart in the report")
    table.add_argument("--date-column", default="", metavar="NAME", help="column with the date of the operation")
    order = table.add_mutually_exclusive_group()
    order.add_argument("--day-first", dest="day_first", action="store_true", default=None, help="3/4/2031 is in April")
    order.add_argument("--month-first", dest="day_first", action="store_false", help="3/4/2031 is in March")
    table.add_argument("--sheet", default="", metavar="NAME", help="sheet of a workbook, the first unless told")
    _add_counting(parser)
    _add_work(parser)


def _add_counting(parser: ArgumentParser) -> None:
    counting = parser.add_argument_group("what is counted and shown")
    counting.add_argument(
        "--group",
        action="append",
        default=[],
        metavar="COLUMN",
        help="group by a column of the table, or by folder, month, stitch or confirmed; may be given several times",
    )
    counting.add_argument("--period", choices=("month", "quarter", "year"), default="month", help="of charts over time")
    counting.add_argument("--sample", type=_count, default=0, metavar="N", help="draw a random sample to be confirmed")
    counting.add_argument("--sample-by", default="", metavar="COLUMN", help="draw it from each value of this column")
    counting.add_argument("--seed", type=int, default=0, metavar="N", help="of everything drawn at random (0)")
    counting.add_argument(
        "--confirmed", metavar="PLACE", help="casebook or folder with confirmed records: how often did the program err?"
    )
    counting.add_argument(
        "--second", metavar="PLACE", help="casebook or folder with a second reader's records: how well do they agree?"
    )
    counting.add_argument("--with-text", action="store_true", help="put the words that prove each fact into the tables")
    counting.add_argument("--without-names", action="store_true", help="number the notes instead of naming them")
    counting.add_argument(
        "--date", type=_day, default=None, metavar="YYYY-MM-DD", help="date that the report bears, today unless told"
    )


def _add_work(parser: ArgumentParser) -> None:
    work = parser.add_argument_group("how it is carried out")
    work.add_argument(
        "--workers", type=_count, default=1, metavar="N", help="processes at work, 0 for one on each core"
    )
    work.add_argument("--dask", metavar="ADDRESS", help="hand the work to the Dask cluster at this address")
    again = work.add_mutually_exclusive_group()
    again.add_argument("--resume", action="store_true", help="go on with the work that lies in the folder")
    again.add_argument(
        "--afresh", action="store_true", help="throw away the work that lies in the folder and begin anew"
    )


def run(args: Namespace) -> int:
    """Carry the audit out and return the exit code; what goes wrong is said on the error stream."""
    from notereader.audit.faults import AuditFault, AuditStopped

    try:
        outcomes = _carried_out(args)
    except AuditStopped as stopped:
        print(f"{stopped} Add --resume to go on.", file=sys.stderr)
        return STOPPED
    except AuditFault as fault:
        print(fault, file=sys.stderr)
        return FAULT
    _tell(outcomes)
    return DONE


def _carried_out(args: Namespace) -> "Outcomes":
    from notereader.audit.audit import Audit, Settings
    from notereader.audit.faults import AuditFault
    from notereader.audit.journal import FILE_NAME, discard

    settings = Settings(
        groups=tuple(dict.fromkeys(args.group)),
        period=args.period,
        seed=args.seed,
        sample=args.sample,
        sample_by=args.sample_by,
        confirmed=args.confirmed,
        other=args.second,
        day=args.date or date.today(),
        with_words=args.with_text,
        with_names=not args.without_names,
    )
    source = _source(args)
    if args.afresh:
        discard(args.out)
    elif not args.resume and (args.out / FILE_NAME).exists():
        raise AuditFault(
            f"{args.out} holds the work of an audit already. Add --resume to go on with it or --afresh to begin anew, "
            "or choose another folder."
        )
    audit = Audit(source, args.out, settings, resume=args.resume)
    try:
        return _worked(audit, args)
    finally:
        audit.close()


def _source(args: Namespace) -> "Source":
    from notereader.audit.faults import AuditFault
    from notereader.audit.sources import CasebookSource, Columns, open_source

    if (args.source is None) == (args.casebook is None):
        raise AuditFault("Say what to audit: a folder, a table or a casebook, and only one of them.")
    if args.casebook is not None:
        return CasebookSource(args.casebook or None)
    columns = Columns(
        text=args.text_column,
        file=args.file_column,
        name=args.name_column,
        day=args.date_column,
        day_first=args.day_first,
        sheet=args.sheet,
    )
    return open_source(args.source, columns)


def _worked(audit: "Audit", args: Namespace) -> "Outcomes":
    from notereader.audit.faults import AuditStopped

    told = _Teller()
    try:
        if args.dask:
            with _cluster(args.dask) as (executor, workers):
                return audit.run(workers=workers, executor=executor, on_progress=told)
        # One alone is this process itself.
        alone = args.workers == 1
        return audit.run(workers=None if alone else args.workers or os.cpu_count(), on_progress=told)
    except KeyboardInterrupt:
        raise AuditStopped("Stopped. What is done is kept.") from None


@contextmanager
def _cluster(address: str) -> Iterator[tuple[Executor, int]]:
    """Open an executor at a Dask cluster, with the number of its workers."""
    from notereader.audit.faults import AuditFault

    try:
        dask: Any = import_module("distributed")
    except ModuleNotFoundError:
        raise AuditFault("For --dask install notereader with its 'dask' extra.") from None
    try:
        client = dask.Client(address, timeout=10, set_as_default=False)
    except (OSError, ValueError) as fault:
        raise AuditFault(f"There is no Dask cluster to be reached at {address} ({type(fault).__name__}).") from None
    try:
        threads = sum(client.nthreads().values())
        yield client.get_executor(), threads
    finally:
        client.close()


class _Teller:
    """Says now and then how far the work is."""

    def __init__(self) -> None:
        self._last = time.monotonic()

    def __call__(self, progress: "Progress") -> None:
        if time.monotonic() - self._last >= SECONDS_BETWEEN_LINES:
            self._last = time.monotonic()
            whole = f" of {progress.total:,}" if progress.total is not None else ""
            refused = f", {progress.refused:,} refused" if progress.refused else ""
            print(f"{progress.done:,}{whole} notes{refused}", file=sys.stderr)


def _tell(outcomes: "Outcomes") -> None:
    from notereader.audit.report.page import summary

    print(summary(outcomes.results))
    print(f"Report: {outcomes.files[0]}")
    if outcomes.sample is not None:
        print(f"Sample to confirm: {outcomes.sample}. Open it as a casebook, confirm the notes, then add")
        print("  --resume --confirmed and the same file.")


def _count(text: str) -> int:
    number = int(text)
    if number < 0:
        raise ValueError
    return number


def _day(text: str) -> date:
    return date.fromisoformat(text)


# What argparse calls these kinds in its messages.
_count.__name__, _day.__name__ = "whole number", "date"
