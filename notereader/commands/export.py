"""notereader export: records out in other forms."""

from argparse import ArgumentParser, Namespace
from collections.abc import Callable, Iterable
from pathlib import Path

from notereader.commands.inputs import named_files, open_record
from notereader.commands.outputs import Places, keep_work
from notereader.commands.shelf import casebook_cases
from notereader.commands.terminal import DONE, REFUSED, WRONG_CALL, put, say
from notereader.exchange import (
    CaseOut,
    ExportFault,
    facts_csv,
    fhir_json,
    summary_html,
    summary_text,
    with_caution,
    write_database,
    write_facts,
    write_file,
)
from notereader.record import Record, RecordRefused, dump_record

_ENDINGS = {"text": ".txt", "html": ".html", "json": ".json", "fhir": ".fhir.json"}

# What puts all records into one file.
_TOGETHER = ("csv", "sqlite")

_FORMS = {
    "text": "a summary to read or print (default)",
    "html": "the same as a page for a browser",
    "json": "the record itself",
    "fhir": "a FHIR R4B Bundle for other health software (extra 'fhir')",
    "csv": "one table of all facts, for spreadsheets, with a dictionary of its columns",
    "sqlite": "one database of all facts, for analysts, with the same dictionary; needs --out FILE",
}


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument("records", nargs="*", metavar="RECORD", help="a record in JSON; - for standard input")
    parser.add_argument(
        "--casebook",
        nargs="?",
        const="",
        metavar="PLACE",
        help="every case of a casebook instead: your own, or the one at this file or URL; with --csv or --sqlite",
    )
    form = parser.add_mutually_exclusive_group()
    for name, about in _FORMS.items():
        form.add_argument(f"--{name}", dest="form", action="store_const", const=name, help=about)
    parser.add_argument(
        "--out",
        type=Path,
        metavar="PLACE",
        help="write to this file, or into this folder where there are several records",
    )
    parser.add_argument(
        "--no-text",
        action="store_true",
        help="with --json leave out the note's text, with --fhir, --csv and --sqlite its quoted words too",
    )
    parser.set_defaults(form="text")


def run(arguments: Namespace) -> int:
    """Write the records in the form asked for. Return the exit status."""
    names = named_files(arguments.records)
    wrong = _wrong_call(names, arguments)
    if wrong:
        say(wrong)
        return WRONG_CALL
    try:
        if arguments.casebook is not None:
            return _casebook(arguments)
        return _files(names, arguments)
    except ExportFault as fault:
        say(str(fault))
        return REFUSED


def _wrong_call(names: list[str], arguments: Namespace) -> str:
    if bool(names) == (arguments.casebook is not None):
        return "Say what to export: records, or a casebook with --casebook, and only one of them."
    together = arguments.form in _TOGETHER
    if arguments.casebook is not None and not together:
        return "A casebook is exported as one table or one database: add --csv or --sqlite."
    if arguments.form == "sqlite" and arguments.out is None:
        return "A database needs a place: --out FILE"
    if not together and arguments.out is None and len(names) > 1:
        return f"{len(names)} records make {len(names)} files. Say where to write them: --out FOLDER"
    return ""


def _files(names: list[str], arguments: Namespace) -> int:
    records = {name: record for name in names if (record := _opened(name)) is not None}
    for name, record in records.items():
        _say_what_is_open(name, record)
    if arguments.form not in _TOGETHER:
        _each(records, len(names), arguments)
    elif records:
        cases = (CaseOut(number, record) for number, record in enumerate(records.values(), 1))
        _together(cases, arguments)
    return DONE if len(records) == len(names) else REFUSED


def _casebook(arguments: Namespace) -> int:
    refused: list[str] = []
    with casebook_cases(arguments.casebook, refused.append) as cases:
        _together(cases, arguments)
    for words in refused:
        say(words)
    return REFUSED if refused else DONE


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


def _together(cases: Iterable[CaseOut], arguments: Namespace) -> None:
    path, words = arguments.out, not arguments.no_text
    if arguments.form == "sqlite":
        count = write_database(cases, path, words=words)
        say(
            f"{path} holds {count} {'case' if count == 1 else 'cases'}; its table 'columns' says what its columns mean."
        )
    elif path is None:
        put(facts_csv((case.record for case in cases), words=words))
    else:
        keep_work(path)
        dictionary = write_facts((case.record for case in cases), path, words=words)
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
    "json": lambda record, text: dump_record(with_caution(record), text=text) + "\n",
    "fhir": lambda record, text: fhir_json(record, text=text),
}
