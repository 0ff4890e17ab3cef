"""notereader appraise: what the facts of a record mean."""

from argparse import ArgumentParser, Namespace

from notereader.commands.inputs import open_record
from notereader.commands.terminal import DONE, REFUSED, WRONG_CALL, put, say
from notereader.record import RecordRefused


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument("record", metavar="RECORD", help="a record in JSON; - for standard input")
    parser.add_argument("--day", type=int, metavar="N", help="days after the operation, from 0")
    parser.add_argument(
        "--posture", type=float, default=0.0, metavar="DEGREES", help="how far the tendon is bent at the repair, from 0"
    )
    parser.add_argument("--json", action="store_true", help="print it as JSON")


def run(arguments: Namespace) -> int:
    """Print the appraisal of one record. Return the exit status."""
    from notereader.appraisal import printed_appraisal

    try:
        record = open_record(arguments.record)
    except RecordRefused as refused:
        say(str(refused))
        return REFUSED
    try:
        put(printed_appraisal(record, arguments.day, arguments.posture, as_json=arguments.json))
    except ValueError as fault:
        say(str(fault))
        return WRONG_CALL
    return DONE
