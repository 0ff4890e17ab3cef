"""notereader explain: where each proposed fact of a note comes from."""

from argparse import ArgumentParser, Namespace

from notereader.commands.explaining import explained
from notereader.commands.inputs import open_note, open_record
from notereader.commands.terminal import DONE, REFUSED, put, say
from notereader.intake import IntakeRefused
from notereader.reading import read_note
from notereader.record import Record, RecordRefused


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument(
        "note", metavar="NOTE", help="a note, or a record whose name ends in .json; - for a note on standard input"
    )


def run(arguments: Namespace) -> int:
    """Print every fact with its words and reasons. Return the exit status."""
    try:
        record = _record_of(arguments.note)
    except (IntakeRefused, RecordRefused) as refused:
        say(str(refused))
        return REFUSED
    put(explained(record))
    return DONE


def _record_of(name: str) -> Record:
    return open_record(name) if name.lower().endswith(".json") else read_note(open_note(name))
