"""Runs a parser in a process of its own, with limits on time and memory, where its library cannot be trusted.

A plain subprocess, not multiprocessing: it starts in a third of the time, does not import the caller's main module
again, and leaves nothing running.
"""

import json
import os
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import nullcontext, suppress
from threading import Thread
from typing import Literal

from notereader.intake import limits
from notereader.intake.note import IntakeRefused
from notereader.intake.parsed import Parsed
from notereader.intake.worker import PARSE_FLAG

Task = Literal["docx", "rtf", "pdf", "image", "pdf-picture", "image-picture"]

_LOOK_EVERY = 0.05  # seconds between looks at the memory
_PASTE = "Copy the note's text out of it and paste it here."


def parse_apart(task: Task, data: bytes, page: int = 0) -> Parsed:
    """Parse a document in a process of its own; `page`, from 0, is the one to picture for the picture tasks.

    Raises IntakeRefused where the parser refuses, breaks down, or takes more time or memory than the limits allow.
    """
    try:
        process = subprocess.Popen(
            [*_command(), PARSE_FLAG, task, str(page)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            bufsize=0,
            env=_environment(),
            creationflags=no_window(),
        )
    except OSError as fault:
        raise IntakeRefused(f"The process that reads such files did not start ({fault.strerror}).", _PASTE) from None
    with process:
        try:
            out = _watched(process, data)
        finally:
            process.kill()
    return _understood(out)


def no_window() -> int:
    """Return the flag that keeps Windows from opening a console for a subprocess, 0 elsewhere."""
    return getattr(subprocess, "CREATE_NO_WINDOW", 0)


def _command() -> list[str]:
    if getattr(sys, "frozen", False):
        return [sys.executable]
    return [sys.executable, "-P", "-m", "notereader.intake"]


def _environment() -> dict[str, str]:
    """Return an environment in which the same packages are found, however this program was installed."""
    paths = [path or os.getcwd() for path in sys.path]
    return {**os.environ, "PYTHONPATH": os.pathsep.join(paths)}


def _watched(process: subprocess.Popen[bytes], data: bytes) -> bytes:
    """Give a process its input and return its output; raise IntakeRefused where it goes beyond a limit."""
    taken = _gauge(process.pid)
    # On a busy machine a sound file takes long by the clock; what it may cost is counted in work.
    deadline = time.monotonic() + limits.PARSE_SECONDS * limits.PARSE_PATIENCE
    # Threads, because Popen.communicate forgets the rest of its input when it is called again after a time-out.
    out: list[bytes] = []
    Thread(target=_send, args=(process, data), daemon=True).start()
    reader = Thread(target=lambda: out.append(_received(process)), daemon=True)
    reader.start()
    while True:
        reader.join(_LOOK_EVERY)
        if not reader.is_alive():
            return out[0]
        seconds, memory = taken()
        if seconds > limits.PARSE_SECONDS or time.monotonic() > deadline:
            raise IntakeRefused(f"Reading it took longer than {limits.PARSE_SECONDS:.0f} seconds.", _PASTE)
        if memory > limits.PARSE_MEMORY_BYTES:
            raise IntakeRefused(
                f"Reading it took more than {limits.PARSE_MEMORY_BYTES // 1_000_000:,} MB of memory.", _PASTE
            )


def _send(process: subprocess.Popen[bytes], data: bytes) -> None:
    rest = memoryview(data)
    # A process that was stopped, or broke down, no longer takes its input.
    with suppress(OSError, ValueError), process.stdin or nullcontext() as stream:
        while stream and rest:
            rest = rest[stream.write(rest) :]


def _received(process: subprocess.Popen[bytes]) -> bytes:
    pieces = []
    with suppress(OSError, ValueError):
        while process.stdout and (piece := process.stdout.read(1_000_000)):
            pieces.append(piece)
    return b"".join(pieces)


def _gauge(pid: int) -> Callable[[], tuple[float, int]]:
    """Return what tells the seconds of work and the bytes of memory a process has taken, 0 once it has ended."""
    import psutil  # type: ignore[import-untyped]

    def taken() -> tuple[float, int]:
        try:
            watched = psutil.Process(pid)
            work = watched.cpu_times()
            return work.user + work.system, int(watched.memory_info().rss)
        except psutil.Error:
            return 0.0, 0

    return taken


def _understood(out: bytes) -> Parsed:
    try:
        raw = json.loads(out)
        if "refused" in raw:
            what, advice = raw["refused"]
            raise IntakeRefused(what, advice)
        return Parsed.from_json(raw)
    except (ValueError, KeyError, TypeError):
        raise IntakeRefused("The file is damaged: reading it broke off.", _PASTE) from None
