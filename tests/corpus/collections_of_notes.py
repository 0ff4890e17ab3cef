"""The collections of notes with keys that the reader is held against, and their reading.

A run of the tests reads a kept note once: what one process read is laid down for the others in the folder that
conftest.py names. Outside such a run nothing is laid down.
"""

import hashlib
import json
import os
import zlib
from functools import cache
from pathlib import Path
from typing import Any

from scoring import Tally, score

from notereader.reader import read
from notereader.record import Record, dump_record, load_record

READINGS = "NOTEREADER_TEST_READINGS"
EVERY_NOTE = "NOTEREADER_TEST_EVERY_NOTE"
ROOT = Path(__file__).parents[2]
# Notes that other projects share; a checkout may stand alone, without them.
PRACTICE = ROOT.parent / "shared" / "corpus" / "practice"


def places() -> dict[str, Path]:
    """Return every collection that is there, by name."""
    found = {folder.name: folder for folder in sorted((ROOT / "tests" / "notes").iterdir()) if folder.is_dir()}
    found["samples"] = ROOT / "samples"
    if PRACTICE.is_dir():
        found["practice"] = PRACTICE
    return found


def notes(folder: Path) -> dict[str, tuple[str, dict[str, Any]]]:
    """Return text and key of every note of a folder that has both."""
    return {
        key.stem: (key.with_suffix(".txt").read_bytes().decode("utf-8"), json.loads(key.read_text(encoding="utf-8")))
        for key in sorted(folder.glob("*.json"))
        if key.with_suffix(".txt").exists()
    }


def its_turn(name: str) -> bool:
    """Tell whether a note is tried in this run: one in twenty-four is, by name, and all under --every-note."""
    return bool(os.environ.get(EVERY_NOTE)) or zlib.crc32(name.encode()) % _TURNS == 0


_TURNS = 24


@cache
def reading_of(text: str) -> Record:
    """Return the record of a note, read or laid down by a process of the same run."""
    folder = os.environ.get(READINGS)
    if folder is None:
        return read(text)
    kept = Path(folder, hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest())
    if kept.exists():
        return load_record(kept.read_bytes())
    record = read(text)
    written = kept.with_suffix(f".{os.getpid()}")
    written.write_text(dump_record(record), encoding="utf-8")
    written.replace(kept)
    return record


@cache
def record_of(text: str) -> dict[str, Any]:
    """Return the record of a note as JSON."""
    return reading_of(text).model_dump(mode="json")


@cache
def tally_of(name: str) -> Tally:
    """Read a collection and hold it against its keys."""
    tally = Tally()
    for note, (text, key) in notes(places()[name]).items():
        tally.add(score(f"{name}/{note}", text, key, record_of(text)))
    return tally
