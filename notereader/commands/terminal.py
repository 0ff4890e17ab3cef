"""What every command needs to speak to a person or to the next program: exit status, output, progress."""

import io
import re
import shutil
import sys
import unicodedata

DONE = 0
# Something that was asked for could not be done; what it was stands on standard error.
REFUSED = 1
# The command was not called rightly; nothing was done.
WRONG_CALL = 2

# Marks that turn the direction of writing or cannot be seen: in a name they could show something that is not there.
_UNSEEN = {"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"}
_SPACES = re.compile(r"\s+")


def harmless(text: str) -> str:
    """Return a text on one line that a terminal shows as it is: no control characters, no unpaired surrogates."""
    seen = "".join("\ufffd" if unicodedata.category(c) in _UNSEEN and not c.isspace() else c for c in text)
    return _SPACES.sub(" ", seen).strip()


def say(sentence: str) -> None:
    """Tell the person something, on standard error, on one line."""
    print(harmless(sentence), file=sys.stderr)


def put(text: str) -> None:
    """Give the result, on standard output; a line feed closes it."""
    sys.stdout.write(text if text.endswith("\n") else text + "\n")


def put_in_utf8() -> None:
    """Make standard output UTF-8 where it goes to a file or another program, whatever the system's own encoding is.

    An unpaired surrogate from a record goes out in the escaped form that JSON has for it.
    """
    if isinstance(sys.stdout, io.TextIOWrapper) and not sys.stdout.isatty():
        sys.stdout.reconfigure(encoding="utf-8", errors="backslashreplace")


class Progress:
    """One line on a terminal that says how far the work is; silent where nobody looks on."""

    def __init__(self, total: int) -> None:
        self._total = total
        self._seen = total > 1 and sys.stderr.isatty()

    def show(self, number: int, name: str) -> None:
        """Say which of them is being worked on, counted from 1."""
        if self._seen:
            width = shutil.get_terminal_size().columns - 1
            line = f"{number} of {self._total}: {harmless(name)}"[:width]
            print(f"\r{line:<{width}}", end="", file=sys.stderr, flush=True)

    def clear(self) -> None:
        """Take the line away, so that something else can be said."""
        if self._seen:
            print("\r" + " " * (shutil.get_terminal_size().columns - 1), end="\r", file=sys.stderr, flush=True)
