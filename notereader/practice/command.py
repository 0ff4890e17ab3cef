"""The command line of practice: list, take, mark, report and make."""

import argparse
import sys
from collections.abc import Callable, Iterable, Sequence
from datetime import date
from pathlib import Path

from notereader.practice.attempts import ExerciseBook, Scope, exercise_book
from notereader.practice.cases import Case
from notereader.practice.choosing import due_on, next_case
from notereader.practice.exports import (
    export_json,
    facts_csv,
    model_json,
    progress_csv,
    read_markings,
    save_text,
    teacher_csv,
)
from notereader.practice.faults import PracticeFault
from notereader.practice.handins import take_in
from notereader.practice.keeping import MARKING_ENDING, keep_marking, kept_markings, most_due, standings
from notereader.practice.marking import mark
from notereader.practice.marks import Marking
from notereader.practice.printing import marking_line, marking_text, seen
from notereader.practice.progress import progress_of
from notereader.practice.reporting import progress_text, teacher_text
from notereader.practice.sets import CaseSet, load_set, ready_set, save_set
from notereader.practice.taking import take
from notereader.practice.teacher import teacher_view
from notereader.record import Address
from notereader.vocabulary.places import ResourceFault


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add what the subcommand `practise` takes to its parser."""
    parser.description = (
        "Read an operative note unaided, hand in what it says and what it leaves unsaid, and see the difference to "
        "its key. Start with: notereader practise take"
    )
    rooms = parser.add_subparsers(dest="practise", required=True, metavar="WHAT")
    listing = rooms.add_parser("list", help="list the cases, what was done, and what to take next")
    _common(listing)
    taking = rooms.add_parser("take", help="take a case: read the note and answer in lines; every line is saved")
    taking.add_argument("case", nargs="?", default="", help="name of the case or a part of it; without it the next one")
    taking.add_argument("--again", action="store_true", help="answer only the facts that were missed and are due again")
    taking.add_argument(
        "--whole", action="store_true", help="also ask for the parts that every note owes (surgeon ...)"
    )
    taking.add_argument("--answers", type=Path, metavar="FILE", help="take the answer lines from a file")
    _common(taking)
    marking = rooms.add_parser("mark", help="mark what students handed in: attempts, answer sheets or records")
    marking.add_argument("files", nargs="+", type=Path, metavar="FILE", help="files, or folders of them")
    marking.add_argument("--out", type=Path, metavar="DIR", help="write one marking per student and case, and tables")
    marking.add_argument("--whole", action="store_true", help="also mark the parts that every note owes")
    marking.add_argument("--words", action="store_true", help="let the exports hold the words of the notes")
    _set_argument(marking)
    reporting = rooms.add_parser("report", help="your progress, or several students side by side")
    reporting.add_argument(
        "files", nargs="*", type=Path, metavar="FILE", help="markings of students, or folders of them"
    )
    reporting.add_argument("--teacher", action="store_true", help="the teacher's view, also of a single student")
    reporting.add_argument("--chart", type=Path, metavar="FILE", help="draw a chart (.png, .svg or .pdf)")
    reporting.add_argument("--csv", type=Path, metavar="FILE", help="write the table")
    reporting.add_argument("--json", type=Path, metavar="FILE", help="write everything")
    reporting.add_argument("--words", action="store_true", help="let the export hold the words of the notes")
    _common(reporting)
    making = rooms.add_parser("make", help="make a set of cases to hand out, from confirmed records or another set")
    making.add_argument("files", nargs="+", type=Path, metavar="FILE", help="records with their notes, or sets")
    making.add_argument("--out", type=Path, required=True, metavar="FILE", help="the single file to hand out")
    making.add_argument("--title", default="", help="title of the set")
    making.add_argument("--difficulty", type=int, choices=range(1, 6), help="how hard they are, 1 to 5")
    making.add_argument("--without-keys", action="store_true", help="students can read the cases and not mark them")


def run(args: argparse.Namespace) -> int:
    """Do what was asked. Returns 0, or 1 where something could not be done; what it was stands on standard error."""
    rooms: dict[str, Callable[[argparse.Namespace], int]] = {
        "list": _list,
        "take": _take,
        "mark": _mark,
        "report": _report,
        "make": _make,
    }
    try:
        return rooms[args.practise](args)
    except (PracticeFault, ResourceFault) as fault:
        _tell(str(fault))
        return 1


def _common(parser: argparse.ArgumentParser) -> None:
    _set_argument(parser)
    parser.add_argument("--student", default="", help="whose work it is, where several share a computer")
    parser.add_argument(
        "--book", type=Path, metavar="DIR", help="where the work is kept (default: your own data folder)"
    )


def _set_argument(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--set", type=Path, metavar="PATH", help="folder or file with the cases (default: the samples)")


def _cases(args: argparse.Namespace) -> CaseSet:
    return load_set(args.set) if args.set else ready_set()


def _markings(book: ExerciseBook) -> list[Marking]:
    """Return the markings kept in an exercise book; a damaged one is told and left out."""
    found, faults = kept_markings(book)
    for fault in faults:
        _tell(fault)
    return found


def _put(text: str) -> None:
    print(seen(text), end="" if text.endswith("\n") else "\n")


def _tell(sentence: str) -> None:
    print(f"notereader practise: {seen(sentence)}", file=sys.stderr)


def _list(args: argparse.Namespace) -> int:
    cases, book = _cases(args), exercise_book(args.student, args.book)
    markings = _markings(book)
    attempts = book.attempts()
    for fault in book.faults:
        _tell(fault)
    print(cases.title or "Cases")
    print("difficulty 1 is plain, 5 is hard\n")
    for standing in standings(cases.cases, attempts, markings):
        print(f"  {standing.case.difficulty}  {standing.case.id:<28} {standing.words}")
    _suggest(cases, markings)
    return 0


def _suggest(cases: CaseSet, markings: Sequence[Marking]) -> None:
    print()
    if due := due_on(markings, date.today()):
        print(f"{len(due)} missed facts are due again: notereader practise take --again")
    if chosen := next_case(cases.cases, markings):
        print(f"Next: notereader practise take {chosen.case.id}  ({chosen.reason})")


def _take(args: argparse.Namespace) -> int:
    cases, book = _cases(args), exercise_book(args.student, args.book)
    markings = _markings(book)
    if args.again:
        case, asked = _due(cases, markings, args.case)
        attempt = book.unfinished(case, again=True) or book.start(case, "again", asked)
    else:
        case = _chosen(cases, markings, args.case)
        scope: Scope = "whole" if args.whole else "therapy"
        attempt = book.unfinished(case) or book.start(case, scope)
    lines = _lines(args.answers) if args.answers else None
    handed_in, misunderstood = take(attempt, lines)
    if not handed_in:
        print(f"\nYour work is kept. Go on with: notereader practise take {case.id}")
    elif case.key is None:
        print(f"\nHanded in. Send this file to whoever gave you the cases: {attempt.path}")
    else:
        marking = mark(case, attempt.attempt)
        keep_marking(book, marking)
        print()
        _put(marking_text(marking))
        _suggest(cases, [*markings, marking])
    # Who types sees what was not understood and mends it; a file of answers cannot.
    return 1 if misunderstood and lines is not None else 0


def _lines(path: Path) -> list[str]:
    try:
        return path.read_text(encoding="utf-8-sig").splitlines()
    except (OSError, UnicodeDecodeError) as fault:
        raise PracticeFault(f"{path} could not be read: {fault}.") from None


def _chosen(cases: CaseSet, markings: Sequence[Marking], name: str) -> Case:
    if name and name != "next":
        return cases.case(name)
    chosen = next_case(cases.cases, markings)
    return chosen.case if chosen else cases.cases[0]


def _due(cases: CaseSet, markings: Sequence[Marking], name: str) -> tuple[Case, list[Address]]:
    """Return the case with most missed facts due today, and those facts."""
    wanted = [cases.case(name)] if name else cases.cases
    found = most_due(wanted, markings, date.today())
    if found is None:
        raise PracticeFault("No missed fact is due again today. Take a case: notereader practise take")
    return found


def _files(paths: Iterable[Path], endings: tuple[str, ...]) -> list[Path]:
    """Return the files, those of folders included. Raises PracticeFault where a folder holds none."""
    found: list[Path] = []
    for path in paths:
        if path.is_dir():
            inside = sorted(p for p in path.rglob("*") if p.name.endswith(endings) and p.is_file())
            if not inside:
                raise PracticeFault(f"{path} holds no file that ends in {' or '.join(endings)}.")
            found += inside
        else:
            found.append(path)
    return found


def _mark(args: argparse.Namespace) -> int:
    cases = _cases(args)
    done: list[Marking] = []
    failed = 0
    paths = [p for p in _files(args.files, (".json", ".txt")) if not p.name.endswith(MARKING_ENDING)]
    for path in paths:
        try:
            attempt, case = take_in(path, cases, "whole" if args.whole else "therapy")
            done.append(mark(case, attempt))
        except PracticeFault as fault:
            failed += 1
            _tell(f"not marked: {fault}")
    if len(done) == 1 and not failed:
        _put(marking_text(done[0]))
    else:
        for marking in done:
            _put(f"{marking.student or '(no name)':<16} {marking_line(marking)}")
        print(f"\n{len(done)} marked, {failed} not. {done[0].cautions[0] if done else ''}".rstrip())
    if args.out and done:
        _write_markings(done, args.out, args.words)
    return 1 if failed else 0


def _write_markings(markings: Sequence[Marking], folder: Path, words: bool) -> None:
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        raise PracticeFault(f"{folder} cannot be made: {fault.strerror or type(fault).__name__}.") from None
    for marking in markings:
        name = f"{marking.student or 'student'}-{marking.case}"
        stem = "".join(c if c.isalnum() or c in "-_." else "-" for c in name)
        save_text(folder / f"{stem}{MARKING_ENDING}", export_json([marking], words=words))
        save_text(folder / f"{stem}.txt", marking_text(marking if words else marking.without_words()))
    save_text(folder / "facts.csv", facts_csv(markings, words=words))
    print(f"Written to {folder}: one marking per student and case, and facts.csv for all.")


def _report(args: argparse.Namespace) -> int:
    paths = _files(args.files, (".json",)) if args.files else []
    if paths:
        markings = [m for path in paths for m in read_markings(path)]
    else:
        markings = _markings(exercise_book(args.student, args.book))
    if not markings:
        raise PracticeFault("There is no marking to report on yet. Take a case: notereader practise take")
    students = {marking.student for marking in markings}
    if args.teacher or len(students) > 1:
        return _report_class(args, markings)
    return _report_own(args, markings, students.pop())


def _report_own(args: argparse.Namespace, markings: list[Marking], student: str) -> int:
    from notereader.practice.charts import progress_figure, save_figure

    progress = progress_of(markings, student)
    _put(progress_text(progress, markings))
    if args.chart:
        save_figure(progress_figure(progress), args.chart)
    if args.csv:
        save_text(args.csv, progress_csv(progress))
    if args.json:
        save_text(args.json, export_json(markings, progress, words=args.words))
    return 0


def _report_class(args: argparse.Namespace, markings: list[Marking]) -> int:
    from notereader.practice.charts import save_figure, teacher_figure

    view = teacher_view(markings)
    _put(teacher_text(view))
    if args.chart:
        save_figure(teacher_figure(view), args.chart)
    if args.csv:
        save_text(args.csv, teacher_csv(view))
    if args.json:
        save_text(args.json, model_json(view))
    return 0


def _make(args: argparse.Namespace) -> int:
    cases = [case for path in args.files for case in load_set(path).cases]
    if args.difficulty:
        cases = [case.model_copy(update={"difficulty": args.difficulty}) for case in cases]
    save_set(cases, args.out, args.title, keys=not args.without_keys)
    keys = "without their keys" if args.without_keys else "with their keys"
    print(f"Written: {args.out}, {len(cases)} cases {keys}. Take one with: notereader practise take --set {args.out}")
    return 0
