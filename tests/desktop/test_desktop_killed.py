"""A window killed without warning, at random moments of editing, has lost at most the edit in flight.

The ordinary run kills a few times; NOTEREADER_KILLS=50 kills fifty times.
"""

import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from desktop_driver import status_word
from desktop_samples import sample_record

from notereader.casebook import Casebook
from notereader.record import Address

DRIVER = Path(__file__).with_name("desktop_driver.py")
KILLS = int(os.environ.get("NOTEREADER_KILLS", "4"))
ENDS = Address("repairs", "ring", "FDP", None, "ends")


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this system cannot kill like that")
def test_a_killed_window_reopens_with_everything_it_showed(tmp_path):
    book = str(tmp_path / "casebook.db")
    Casebook(book).add(sample_record("02-terse-ring"), title="ring")
    chance = random.Random(20311203)
    edits_shown = 0
    for kill in range(KILLS):
        before = Casebook(book).open(1)
        lines, revision_before = _work_and_kill(book, tmp_path, chance.uniform(0.0, 0.35)), before.revision
        last = max((int(line.split()[1]) for line in lines if line.startswith("shown")), default=None)
        after = Casebook(book).open(1)
        history = after.history()
        first = 1 if before.record.fact(ENDS).value == status_word(0) else 0
        made = after.revision - revision_before
        shown = 0 if last is None else last - first + 1
        edits_shown += shown
        assert shown <= made <= shown + 1, f"kill {kill}: {shown} shown, {made} kept"
        if made:
            assert after.record.fact(ENDS).value == status_word(first + made - 1)
            assert history[-1].after == after.record.fact(ENDS)
        assert [line.revision for line in history] == list(range(after.revision + 1))
    print(f"{KILLS} kills, {edits_shown} edits shown before them, none lost")
    assert edits_shown > KILLS, "the window did get to work"


def _work_and_kill(book, folder, seconds):
    """Let a window edit, kill it `seconds` after its first edit began, and return what it told until then."""
    told = folder / "told.txt"
    with told.open("wb") as out:
        process = subprocess.Popen(
            [sys.executable, str(DRIVER), "work", book, "1", str(folder)], stdout=out, stderr=subprocess.PIPE
        )
        deadline = time.monotonic() + 300
        while b"ready" not in told.read_bytes():
            assert process.poll() is None, process.stderr.read().decode()
            assert time.monotonic() < deadline
            time.sleep(0.005)
        time.sleep(seconds)
        process.send_signal(signal.SIGKILL)
        process.wait(60)
        process.stderr.close()
    # A last line that the kill cut off has been read by nobody.
    return told.read_text(encoding="ascii").rpartition("\n")[0].splitlines()
