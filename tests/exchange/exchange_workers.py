"""What another process exports in the tests until it is killed."""

from multiprocessing.connection import Connection
from pathlib import Path

from exchange_helpers import confirmed, example

from notereader.exchange import write_record


def export_until_killed(path: Path, channel: Connection) -> None:
    """Write two records in turn over one file; tell when the first stands."""
    write_record(example(), path)
    channel.send("ready")
    while True:
        write_record(confirmed(), path)
        write_record(example(), path, text=False)
