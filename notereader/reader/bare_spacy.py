"""Loads spaCy without its own command line, which brings a downloader and with it several network clients.

That command line is imported by spaCy's first line and is never used here. Without it spaCy takes a third less time to
load, and no program that could reach a network is in the process at all.
"""

import sys
from types import ModuleType

_COMMAND_LINE = ("spacy.cli", "spacy.cli.info")


def load_spacy() -> None:
    """Import spaCy, unless somebody did already; whoever wants its command line later still gets it."""
    if "spacy" in sys.modules:
        return
    stand_ins = {name: ModuleType(name) for name in _COMMAND_LINE}
    stand_ins["spacy.cli.info"].__dict__["info"] = None
    sys.modules.update(stand_ins)
    try:
        import spacy  # noqa: F401
    finally:
        for name, stand_in in stand_ins.items():
            if sys.modules.get(name) is stand_in:
                del sys.modules[name]
