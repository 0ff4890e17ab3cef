"""The collections of notes with keys that the reader is held against, and their reading."""

import json
from functools import cache
from pathlib import Path
from typing import Any

from scoring import Tally, score

from notereader.reader import read

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


@cache
def record_of(text: str) -> dict[str, Any]:
    """Return the record of a note as JSON."""
    return read(text).model_dump(mode="json")


@cache
def tally_of(name: str) -> Tally:
    """Read a collection and hold it against its keys."""
    tally = Tally()
    for note, (text, key) in notes(places()[name]).items():
        tally.add(score(f"{name}/{note}", text, key, record_of(text)))
    return tally
