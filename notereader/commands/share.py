"""notereader share: a copy of a note or record without identifiers, once a person has looked at what was found."""

import json
from argparse import ArgumentParser, Namespace
from collections.abc import Sequence
from pathlib import Path

from notereader.commands.inputs import STANDARD_INPUT, open_note, open_record
from notereader.commands.terminal import DONE, REFUSED, WRONG_CALL, harmless, put, say
from notereader.exchange import ExportFault, write_file
from notereader.intake import IntakeRefused
from notereader.record import Record, RecordRefused, dump_record
from notereader.sharing import (
    INCOMPLETE,
    MIXED_DATES,
    CleanCopy,
    Find,
    action_words,
    everywhere,
    find_identifiers,
    find_in_record,
    mixed_dates,
    random_shift,
    share_record,
)

_LOOK = "Nothing was written. Look at each of these and at the whole note, then say: --looked --out PLACE."
_CHANGE = "--keep NUMBER leaves one as it is, --blank WORDS adds what was missed."


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument("source", metavar="NOTE|RECORD", help="a note, or a record with the text of its note")
    parser.add_argument("--out", type=Path, metavar="PLACE", help="write the copy to this file, which must not exist")
    parser.add_argument(
        "--looked", action="store_true", help="you have looked at the finds and at the whole note: write the copy"
    )
    parser.add_argument(
        "--keep", type=int, action="append", default=[], metavar="NUMBER", help="leave this find of the list as it is"
    )
    parser.add_argument(
        "--blank", action="append", default=[], metavar="WORDS", help="blank these words too, wherever they stand"
    )
    parser.epilog = f"{INCOMPLETE} Dates move back by one random number of days, which is kept nowhere."


def run(arguments: Namespace) -> int:
    """List what was found or, once a person has looked, write the copy. Return the exit status."""
    if arguments.looked and arguments.out is None:
        say("The copy needs a place: --out PLACE")
        return WRONG_CALL
    try:
        source = _opened(arguments.source)
        text = (source.note.text or "") if isinstance(source, Record) else source
        found = find_in_record(source) if isinstance(source, Record) else find_identifiers(text)
    except (IntakeRefused, RecordRefused) as refused:
        say(str(refused))
        return REFUSED
    wrong = [number for number in arguments.keep if not 1 <= number <= len(found)]
    if wrong:
        say(f"There is no find number {wrong[0]}; the list has {len(found)}. Without --keep it is shown.")
        return WRONG_CALL
    chosen = [find for number, find in enumerate(found, 1) if number not in arguments.keep]
    for words in arguments.blank:
        chosen = everywhere(text, words, chosen)
    if mixed_dates([find for find in found if find not in chosen], chosen):
        say(MIXED_DATES)
    if not arguments.looked:
        return _show(text, found, chosen)
    return _write(source, text, chosen, arguments.out)


def _opened(name: str) -> Record | str:
    """Return the record, or the text of the note, of that name. Raises IntakeRefused or RecordRefused."""
    if name != STANDARD_INPUT and _is_json(Path(name)):
        return open_record(name)
    return open_note(name).text


def _is_json(path: Path) -> bool:
    try:
        with path.open("rb") as stream:
            return stream.read(64).lstrip(b"\xef\xbb\xbf \t\r\n").startswith(b"{")
    except OSError:
        return False


def _show(text: str, found: Sequence[Find], chosen: Sequence[Find]) -> int:
    for number, find in enumerate(found, 1):
        put(f"{number:>4}  {_line(text, find, 'kept' if find not in chosen else action_words(find))}")
    for find in chosen:
        if find not in found:
            put(f"   +  {_line(text, find, action_words(find))}")
    put("")
    put(f"{len(found)} found. {INCOMPLETE}")
    say(f"{_LOOK}   {_CHANGE}")
    return DONE


def _line(text: str, find: Find, becomes: str) -> str:
    line = text.count("\n", 0, find.start) + 1
    return (
        f"line {line:<4} {find.kind:<22} {json.dumps(harmless(find.words), ensure_ascii=False)}  {becomes} ({find.why})"
    )


def _write(source: Record | str, text: str, chosen: Sequence[Find], path: Path) -> int:
    if path.exists():
        say(f"{path} exists and was left as it is. Give another place.")
        return REFUSED
    days = random_shift()
    try:
        if isinstance(source, Record):
            content = dump_record(share_record(source, chosen, days)) + "\n"
        else:
            content = CleanCopy(text, chosen, days).text
        write_file(path, content)
    except (ExportFault, RecordRefused) as fault:
        say(str(fault))
        return REFUSED
    say(f"{path} is the copy: {len(chosen)} places changed, dates moved. {INCOMPLETE}")
    return DONE
