"""Running the command line: in this process, or in one of its own as a person would."""

import json
import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from notereader.record import Evidence, Record

# Invented for these tests. Line 4 holds the count, line 1 says another one.
NOTE = """OPERATION: Two-strand repair of FDP, left ring finger
Date of operation: 14 March 2031

The FDP of the ring finger was completely divided in zone II and repaired with a four-strand cruciate of 4-0 braided
polyester. A running 6-0 polypropylene epitendinous suture was added. There was no gap. The repair glided freely.
The A2 pulley was intact.
Splint: dorsal blocking splint with the wrist in 20 degrees of extension.
"""

NO_REPAIR = (
    "Left hand. The wound over the thenar was washed out. FDP of the index finger was intact. Skin closed with nylon."
)


def run_notereader(
    arguments: Sequence[str | Path],
    *,
    standard_input: bytes = b"",
    environment: dict[str, str] | None = None,
    folder: Path | None = None,
) -> subprocess.CompletedProcess[bytes]:
    """Run the command in a process of its own, in a folder; return what it wrote and its exit status."""
    return subprocess.run(
        [sys.executable, "-m", "notereader", *map(str, arguments)],
        input=standard_input,
        capture_output=True,
        timeout=120,
        check=False,
        cwd=folder,
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen", **(environment or {})},
    )


def saved_note(folder: Path, name: str = "ring.txt", text: str = NOTE) -> Path:
    """Write a note into a folder and return its path."""
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


def quotes_of(record: Record) -> list[Evidence]:
    """Return all evidence of a record: of facts, rivals and remarks."""
    found = [e for _, fact in record.walk() for e in [*fact.evidence, *(e for r in fact.rivals for e in r.evidence)]]
    return found + [e for remark in record.remarks for e in remark.evidence]


def only_a_sentence(words: str) -> bool:
    """Tell whether an error is one line for people and no traceback."""
    return bool(words.strip()) and "Traceback" not in words and len(words.strip().splitlines()) == 1


def parsed(text: str | bytes) -> dict[str, Any]:
    """Return JSON as a dictionary."""
    data = json.loads(text)
    assert isinstance(data, dict)
    return data
