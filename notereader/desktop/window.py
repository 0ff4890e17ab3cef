"""Starts the window. Importable without Qt, so that a missing library is said in words."""

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

# What Qt misses most often on a bare Linux, and the Debian package that brings it.
_PACKAGES = {
    "libEGL.so": "libegl1",
    "libGL.so": "libgl1",
    "libxkbcommon.so": "libxkbcommon0",
    "libxkbcommon-x11.so": "libxkbcommon-x11-0",
    "libfontconfig.so": "libfontconfig1",
    "libdbus-1.so": "libdbus-1-3",
    "libxcb-cursor.so": "libxcb-cursor0",
    "libxcb-icccm.so": "libxcb-icccm4",
    "libxcb-keysyms.so": "libxcb-keysyms1",
    "libxcb-image.so": "libxcb-image0",
    "libxcb-render-util.so": "libxcb-render-util0",
    "libxcb-xkb.so": "libxcb-xkb1",
    "libxcb-randr.so": "libxcb-randr0",
    "libxcb-shape.so": "libxcb-shape0",
    "libX11-xcb.so": "libx11-xcb1",
    "libX11.so": "libx11-6",
    "libfreetype.so": "libfreetype6",
    "libglib-2.0.so": "libglib2.0-0",
}


def run(argv: Sequence[str] | None = None) -> int:
    """Open the window and return when it is closed; 0, or 2 where it cannot be opened (the reason is on stderr).

    `argv` may hold one file to open and --casebook with a file or a database URL; None takes the command line.
    """
    asked = _parser().parse_args(None if argv is None else list(argv))
    try:
        from notereader.desktop.application import open_window
        from notereader.desktop.platform_check import missing_library
    except ImportError as fault:
        if (fault.name or "").partition(".")[0] == "notereader":
            raise
        print(missing_in_words(str(fault)), file=sys.stderr)
        return 2
    missing = missing_library()
    if missing:
        print(missing_in_words(missing), file=sys.stderr)
        return 2
    return open_window(asked.note, asked.casebook)


def missing_in_words(fault: str) -> str:
    """Say in one sentence which system library Qt misses and which Debian package brings it."""
    library = next((name for name in _PACKAGES if name in fault), None)
    if library is not None:
        return (
            f"The window cannot open because the system library {library} is missing; "
            f"on Debian or Ubuntu install it with: apt-get install {_PACKAGES[library]}"
        )
    return (
        f"The window cannot open because Qt cannot be loaded ({fault}); install PySide6-Essentials and its libraries."
    )


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="notereader-window", description="Read the operative note of a flexor tendon repair beside its facts."
    )
    parser.add_argument("note", nargs="?", type=Path, help="a note or an exported record to open")
    parser.add_argument("--casebook", help="file or database URL of the casebook; without it, this person's own")
    return parser
