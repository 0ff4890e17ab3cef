"""spaCy comes without its downloader; nothing that could reach a network is loaded to read a note."""

import json
import subprocess
import sys

CLIENTS = {"httpx", "requests", "urllib3", "weasel", "typer", "smart_open", "cloudpathlib"}

_READ = """
import json, sys
from notereader.reader import read
record = read("The FDP of the ring finger was repaired with a four-strand core of 4-0 nylon.")
print(json.dumps([sorted(sys.modules), [fact.value for _, fact in record.walk()]]))
"""

_LATER = """
import notereader.reader
import spacy.cli
print(callable(spacy.cli.info), callable(spacy.cli.download))
"""


def said_by(program: str) -> str:
    return subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=True, timeout=120
    ).stdout


def test_reading_loads_no_network_client() -> None:
    modules, values = json.loads(said_by(_READ))
    assert 4 in values
    assert "spacy.language" in modules
    assert CLIENTS & {name.partition(".")[0] for name in modules} == set()


def test_who_wants_the_command_line_of_spacy_later_gets_it() -> None:
    assert said_by(_LATER).split() == ["True", "True"]
