"""notereader read: notes in, records out."""

from argparse import ArgumentParser, Namespace
from collections.abc import Callable
from pathlib import Path

from notereader.commands.inputs import named_files, open_note
from notereader.commands.inside import inside_words
from notereader.commands.outputs import Places, keep_work
from notereader.commands.terminal import DONE, REFUSED, WRONG_CALL, Progress, put, say
from notereader.exchange import ExportFault, write_record
from notereader.intake import IntakeRefused
from notereader.reading import read_note
from notereader.record import dump_record
from notereader.vocabulary.places import ResourceFault

_PROPOSED = "Every fact is a proposal of the program. A person has to confirm each against the note."


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument(
        "notes",
        nargs="+",
        metavar="NOTE",
        help="text, Word, RTF or PDF file, or picture of a page; - for standard input",
    )
    parser.add_argument("--out", type=Path, metavar="FOLDER", help="write NAME.json for each note into this folder")
    parser.add_argument("--no-text", action="store_true", help="leave the note's own text out of the record")


def run(arguments: Namespace) -> int:
    """Read the notes; print the one record or write one file for each. Return the exit status."""
    names = named_files(arguments.notes)
    if arguments.out is not None:
        return _write_all(names, arguments.out, text=not arguments.no_text)
    if len(names) > 1:
        say(f"{len(names)} notes make {len(names)} records. Say where to write them: --out FOLDER")
        return WRONG_CALL
    return _attempt(lambda name: put(dump_record(read_note(open_note(name)), text=not arguments.no_text)), names[0])


def _write_all(names: list[str], folder: Path, *, text: bool) -> int:
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        say(f"{folder} cannot be used as a folder: {fault.strerror or fault}. Give another one with --out.")
        return WRONG_CALL
    places = Places(folder, ".json")
    progress = Progress(len(names))
    refused = 0
    for number, name in enumerate(names, 1):
        progress.show(number, name)
        status = _attempt(lambda name: _write_one(name, places, text=text), name, progress)
        refused += status != DONE
    progress.clear()
    say(f"{_count(len(names) - refused, 'note')} read into {folder}, {refused} refused. {_PROPOSED}")
    return REFUSED if refused else DONE


def _attempt(work: Callable[[str], None], name: str, progress: Progress | None = None) -> int:
    """Do the work on one note; say why where it cannot be done. One bad note must not end the others."""
    try:
        work(name)
        return DONE
    except (IntakeRefused, ExportFault) as refused:
        words = str(refused)
    except (BrokenPipeError, ResourceFault):
        # Neither gets better with the next note.
        raise
    except Exception as fault:
        words = f"{name}: {inside_words(fault)}"
    if progress:
        progress.clear()
    say(words)
    return REFUSED


def _write_one(name: str, places: Places, *, text: bool) -> None:
    record = read_note(open_note(name))
    path = places.place_for(name)
    keep_work(path, only_drafts=True)
    write_record(record, path, text=text)


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
