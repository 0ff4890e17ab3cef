"""Faults of the program itself, said in a sentence that quotes nothing: a fault's own text may hold words of a note."""

import traceback
from pathlib import Path

from notereader import __version__

_PACKAGE = Path(__file__).resolve().parent.parent


def inside_words(fault: BaseException) -> str:
    """Say what kind of fault it was, where in the program, and what to do."""
    return (
        f"Something went wrong inside notereader {__version__} ({type(fault).__name__}{_place(fault)}). It is a fault "
        "of the program and not yours. Please report this line without the note."
    )


def _place(fault: BaseException) -> str:
    """Return the last place within the program, such as ' at record/models.py line 12', or nothing."""
    for frame in reversed(traceback.extract_tb(fault.__traceback__)):
        path = Path(frame.filename).resolve()
        if path.is_relative_to(_PACKAGE):
            return f" at {path.relative_to(_PACKAGE).as_posix()} line {frame.lineno}"
    return ""
