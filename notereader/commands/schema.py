"""notereader schema: the JSON Schema of a record."""

import json
from argparse import ArgumentParser, Namespace

from notereader.commands.terminal import DONE, put
from notereader.record import record_schema


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command: there are none."""


def run(arguments: Namespace) -> int:
    """Print the schema. Return the exit status."""
    put(json.dumps(record_schema(), ensure_ascii=False, indent=1))
    return DONE
