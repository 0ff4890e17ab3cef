"""notereader export: records out in other forms."""

from argparse import ArgumentParser, Namespace
from collections.abc import Callable
from pathlib import Path

from notereader.commands.inputs import named_files, open_record
from notereader.commands.outputs import Places, keep_work
from notereader.commands.terminal import DONE, REFUSED, WRONG_CALL, put, say
from notereader.exchange import ExportFault, facts_csv, summary_html, summary_text, write_facts, write_file
from notereader.record import Record, RecordRefused, dump_record

_ENDINGS = {"text": ".txt", "html": ".html", "json": ".json"}


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument("records", nargs="+", metavar="RECORD", help="a record in JSON; - for standard input")
    form = parser.add_mutually_exclusive_group()
    form.add_argument(
        "--text", dest="form", action="store_const", const="text", help="a summary to read or print (default)"
    )
    form.add_argument(
        "--html", dest="form", action="store_const", const="html", help="the same as a page for a browser"
    )
    form.add_argument("--json", dest="form", action="store_const", const="json", help="the record itself")
    form.add_argument(
        "--csv", dest="form", action="store_const", const="csv", help="one table of all facts, for spreadsheets"
    )
    parser.add_argument(
        "--out",
        type=Path,
        metavar="PLACE",
        help="write to this file, or into this folder where there are several records",
    )
    parser.add_argument(
        "--no-text", action="store_true", help="with --json leave out the note's text, with --csv its quoted words"
    )
    parser.set_defaults(form="text")


def run(arguments: Namespace) -> int:
    """Write the records in the form asked for. Return the exit status."""
    names = named_files(arguments.records)
    if arguments.form != "csv" and arguments.out is None and len(names) > 1:
        say(f"{len(names)} records make {len(names)} files. Say where to write them: --out FOLDER")
        return WRONG_CALL
    records = {name: record for name in names if (record := _opened(name)) is not None}
    for name, record in records.items():
        _say_what_is_open(name, record)
    try:
        if arguments.form == "csv":
            _table(list(records.values()), arguments.out, words=not arguments.no_text)
        else:
            _each(records, len(names), arguments)
    except ExportFault as fault:
        say(str(fault))
        return REFUSED
    return DONE if len(records) == len(names) else REFUSED


def _opened(name: str) -> Record | None:
    try:
        return open_record(name)
    except RecordRefused as refused:
        say(str(refused))
        return None


def _say_what_is_open(name: str, record: Record) -> None:
    facts = [fact for _, fact in record.walk()]
    proposed = sum(fact.status == "proposed" for fact in facts)
    if proposed:
        say(f"{name}: {proposed} of {len(facts)} facts are only proposed by the program; nobody has confirmed them.")


def _table(records: list[Record], path: Path | None, *, words: bool) -> None:
    if path is None:
        put(facts_csv(records, words=words))
    elif records:
        keep_work(path)
        dictionary = write_facts(records, path, words=words)
        say(f"{path} holds the facts, {dictionary} says what its columns mean.")


def _each(records: dict[str, Record], asked: int, arguments: Namespace) -> None:
    write = _WRITERS[arguments.form]
    places = Places(arguments.out, _ENDINGS[arguments.form]) if arguments.out else None
    for name, record in records.items():
        content = write(record, not arguments.no_text)
        if places is None:
            put(content)
            continue
        path = arguments.out if asked == 1 and not arguments.out.is_dir() else places.place_for(name)
        keep_work(path)
        write_file(path, content)


_WRITERS: dict[str, Callable[[Record, bool], str]] = {
    "text": lambda record, text: summary_text(record),
    "html": lambda record, text: summary_html(record),
    "json": lambda record, text: dump_record(record, text=text) + "\n",
}
