"""Mending a damaged casebook file: the last good copy, and on top of it all that the damaged file still yields.

The damaged file itself is put aside untouched.
"""

import os
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

from notereader.casebook.backup import Backups, copy_database, exclusive, first_damage
from notereader.casebook.faults import CasebookFault
from notereader.casebook.salvage import Gain, salvage
from notereader.casebook.schema import prepare
from notereader.casebook.store import Store, beside, companions, damage_mark, faults_in_words, make_private, resolve

# Larger files are checked once a day when they are copied, not at every start.
CHECKED_AT_START = 64 * 1024 * 1024

# How many cases the notice names before it only counts.
_NAMED = 20

_HEADER = b"SQLite format 3\0"


def mend_if_damaged(path: Path, backups: Backups, wait_seconds: float) -> str:
    """Mend the casebook file where it is damaged, or lost though there are copies of it.

    Return what the person should be told, empty where all was well. Raises CasebookFault where nothing can be mended.
    """
    with faults_in_words(f"The casebook {path}"):
        if not _damaged(path, backups, wait_seconds):
            return ""
        with exclusive(path):
            # Another process may have mended it while this one waited.
            return _mend(path, backups) if _damaged(path, backups, wait_seconds) else ""


def _damaged(path: Path, backups: Backups, wait_seconds: float) -> bool:
    if damage_mark(path).exists() or _half_mended(path):
        return True
    if not path.exists() or path.stat().st_size == 0:
        return bool(backups.newest_first())
    return path.stat().st_size <= CHECKED_AT_START and bool(first_damage(path, wait_seconds))


def _half_mended(path: Path) -> bool:
    """True where the program was killed after the damaged file was put aside, before the mended one took its place."""
    return not path.exists() and beside(path, ".mended").exists()


def _mend(path: Path, backups: Backups) -> str:
    if _half_mended(path):
        # The log of the damaged file may still lie there, and would spoil the mended one.
        _put_aside(path)
        return _in_place(path, "The casebook file was damaged and has been mended. Look through the cases again.")
    copy = next((copy for copy in backups.newest_first() if not first_damage(copy)), None)
    if copy is None and not _is_database(path):
        raise _hopeless(path)
    fresh = beside(path, ".mending")
    gain = _build(fresh, path, copy)
    if copy is None and not gain.cases:
        fresh.unlink()
        raise _hopeless(path)
    # Under this name it is known to be complete, see _half_mended.
    os.replace(fresh, beside(path, ".mended"))
    aside = _put_aside(path)
    return _in_place(path, _told(copy, aside, gain))


def _in_place(path: Path, told: str) -> str:
    os.replace(beside(path, ".mended"), path)
    damage_mark(path).unlink(missing_ok=True)
    return told


def _hopeless(path: Path) -> CasebookFault:
    return CasebookFault(
        f"{path} is damaged beyond reading, or is no casebook, and there is no daily copy of it. Put a copy of your "
        "casebook in its place, or move the file away to begin a new casebook. Nothing was changed."
    )


def _is_database(path: Path) -> bool:
    if not path.exists():
        return False
    with path.open("rb") as stream:
        return stream.read(len(_HEADER)) == _HEADER


def _build(fresh: Path, damaged: Path, copy: Path | None) -> Gain:
    for leftover in (fresh, *companions(fresh)):
        leftover.unlink(missing_ok=True)
    make_private(fresh)
    if copy is not None:
        copy_database(copy, fresh)
    store = Store(*resolve(fresh), wait_seconds=5.0)
    try:
        prepare(store)
    finally:
        store.close()
    gain = salvage(damaged, fresh, copy)
    with closing(sqlite3.connect(fresh)) as connection:
        # One file without a log beside it, so that it can be moved into place in one step.
        connection.execute("PRAGMA journal_mode=DELETE").fetchall()
    return gain


def _put_aside(path: Path) -> Path | None:
    """Give the damaged file and what belongs to it another name; return it, None where there was no such file."""
    was_there = path.exists()
    stamp = datetime.now(UTC).strftime("%Y%m%d-%H%M%S-%f")
    aside = path.with_name(f"{path.stem}-damaged-{stamp}.db")
    for source, target in zip((path, *companions(path)), (aside, *companions(aside)), strict=True):
        if source.exists():
            os.replace(source, target)
    return aside if was_there else None


def _told(copy: Path | None, aside: Path | None, gain: Gain) -> str:
    lines = ["The casebook file was damaged and has been mended." if aside else "The casebook file was missing."]
    if copy is not None:
        lines.append(f"It was restored from the daily copy of {copy.stem[-10:]}.")
    if gain.cases:
        lines.append(f"{_count(gain.cases, 'case')} changed since could still be read from it and were taken over.")
    if gain.spoilt:
        numbers = ", ".join(str(number) for number in sorted(gain.spoilt)[:_NAMED])
        more = f" and {len(gain.spoilt) - _NAMED} more" if len(gain.spoilt) > _NAMED else ""
        lines.append(f"Not everything could be read of these cases, look through them again: number {numbers}{more}.")
    lines.append("Look through the cases you worked on last.")
    if aside is not None:
        lines.append(f"The damaged file is kept as {aside}.")
    return " ".join(lines)


def _count(things: set[int], word: str) -> str:
    return f"{len(things)} {word}{'' if len(things) == 1 else 's'}"
