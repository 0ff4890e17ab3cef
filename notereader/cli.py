"""The way in: the command line, and the window where no command is given.

Only what a command needs is imported, and only once it has been asked for: neither Qt nor spaCy to print the schema,
no Qt to read a note.
"""

import argparse
import os
import sys
import threading
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import NamedTuple, Protocol

from notereader import __version__
from notereader.commands.inside import inside_words
from notereader.commands.terminal import REFUSED, WRONG_CALL, put_in_utf8, say
from notereader.intake import serve_if_asked

# As shells report a program that was stopped from the keyboard.
_STOPPED = 130


class _Command(Protocol):
    def add_arguments(self, parser: argparse.ArgumentParser) -> None:
        """Add the options of the command."""

    def run(self, arguments: argparse.Namespace) -> int:
        """Do the work and return the exit status."""


class _Entry(NamedTuple):
    about: str
    load: Callable[[], _Command]


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; without arguments open the window.

    Return the exit status: 0 done, 1 something could not be done, 2 not called rightly.
    """
    _serve_others()
    arguments = list(sys.argv[1:] if argv is None else argv)
    put_in_utf8()
    return _guarded(lambda: _run(arguments))


def window() -> int:
    """Open the window; the entry point of the program without a console."""
    _serve_others()
    return _guarded(lambda: _window(sys.argv[1:]))


def _serve_others() -> None:
    """Do the work and leave, where this process was started as a helper of another one."""
    serve_if_asked()
    if getattr(sys, "frozen", False):
        from multiprocessing import freeze_support

        freeze_support()


def _guarded(work: Callable[[], int]) -> int:
    """Do the work; turn whatever goes wrong into one sentence and an exit status."""
    from notereader.vocabulary.places import ResourceFault

    try:
        with _faults_without_words():
            status = work()
        if sys.stdout is not None:
            # A full disk may show itself only here.
            sys.stdout.flush()
        return status
    except KeyboardInterrupt:
        say("Stopped.")
        return _STOPPED
    except BrokenPipeError:
        # The program that took the output has ended, as 'head' does when it has enough.
        _let_go_of_output()
    except ResourceFault as fault:
        say(f"{fault} Every fault of the resource files is told by: notereader check-resources")
    except OSError as fault:
        say(f"The work broke off: {fault.strerror or type(fault).__name__}. Check the disk and try again.")
        _let_go_of_output()
    except MemoryError:
        say("There was not enough memory for this. Close other programs, or do it in smaller parts.")
    except Exception as fault:
        say(inside_words(fault))
    return REFUSED


def _let_go_of_output() -> None:
    """Send what could not be written nowhere, or the interpreter would complain once more at its end."""
    own = sys.__stdout__
    if own is not None and sys.stdout is own:
        os.dup2(os.open(os.devnull, os.O_WRONLY), own.fileno())


def _run(arguments: list[str]) -> int:
    if not arguments:
        return _window([])
    name = arguments[0]
    if not name.startswith("-") and name not in _COMMANDS and Path(name).exists():
        say(f"'{name}' is no command. To read the note: notereader read {name}   To see it: notereader open {name}")
        return WRONG_CALL
    asked = _parser(name).parse_args(arguments)
    return int(asked.run(asked))


def _parser(chosen: str) -> argparse.ArgumentParser:
    """Return the parser of all commands; only the chosen one is loaded and gets its options."""
    parser = argparse.ArgumentParser(
        prog="notereader",
        description="Reads the operative note of a flexor tendon repair and proposes every fact with the words that "
        "prove it. Without a command the window opens.",
        epilog="Exit status: 0 done; 1 something could not be done, as said on standard error; 2 not called rightly.",
    )
    parser.add_argument("--version", action="version", version=f"notereader {__version__}")
    commands = parser.add_subparsers(metavar="COMMAND", required=True)
    for name, entry in _COMMANDS.items():
        command = commands.add_parser(name, help=entry.about, description=entry.about)
        if name == chosen:
            module = entry.load()
            module.add_arguments(command)
            command.set_defaults(run=module.run)
    return parser


def _window(arguments: list[str]) -> int:
    from notereader.desktop.window import run

    return run(arguments)


@contextmanager
def _faults_without_words() -> Iterator[None]:
    """Say the faults that Qt and threads report by themselves as all others: their texts may quote a note."""
    hooks = sys.excepthook, threading.excepthook, sys.unraisablehook

    def told(fault: BaseException | None) -> None:
        if fault is not None and not isinstance(fault, SystemExit) and sys.stderr is not None:
            say(inside_words(fault))

    sys.excepthook = lambda kind, fault, trace: told(fault)
    threading.excepthook = lambda report: told(report.exc_value)
    sys.unraisablehook = lambda report: told(report.exc_value)
    try:
        yield
    finally:
        sys.excepthook, threading.excepthook, sys.unraisablehook = hooks


def _appraise() -> _Command:
    from notereader.commands import appraise

    return appraise


def _audit() -> _Command:
    from notereader.audit import command

    return command


def _explain() -> _Command:
    from notereader.commands import explain

    return explain


def _export() -> _Command:
    from notereader.commands import export

    return export


def _open() -> _Command:
    from notereader import opening

    return opening


def _practise() -> _Command:
    from notereader.practice import command

    return command


def _read() -> _Command:
    from notereader.commands import read

    return read


def _resources() -> _Command:
    from notereader.commands import resources

    return resources


def _schema() -> _Command:
    from notereader.commands import schema

    return schema


def _share() -> _Command:
    from notereader.commands import share

    return share


_COMMANDS = {
    "read": _Entry("read notes and give their records as JSON", _read),
    "explain": _Entry("show where each proposed fact of a note comes from", _explain),
    "appraise": _Entry(
        "show what the facts of a record mean: gaps, questions, strength against load, glide", _appraise
    ),
    "export": _Entry("give records as a summary, a table or JSON", _export),
    "share": _Entry("make a copy of a note or record without identifiers, once you have looked at them", _share),
    "audit": _Entry("count what many notes give and leave out", _audit),
    "practise": _Entry("read a case unaided and have it marked", _practise),
    "open": _Entry("open the window, with a note in it where one is named", _open),
    "schema": _Entry("print the JSON Schema of a record", _schema),
    "check-resources": _Entry("look for faults in the files that hold the trade's words and figures", _resources),
}
