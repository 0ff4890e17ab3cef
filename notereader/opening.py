"""notereader open: the window, with a note in it."""

from argparse import ArgumentParser, Namespace


def add_arguments(parser: ArgumentParser) -> None:
    """Add the options of this command."""
    parser.add_argument("note", nargs="?", metavar="NOTE", help="a note or a record to open")
    parser.add_argument(
        "--casebook", metavar="PLACE", help="file or database address of the casebook; without it, your own"
    )


def run(arguments: Namespace) -> int:
    """Open the window and return its exit status once it is closed."""
    from notereader.desktop.window import run as run_window

    asked = [arguments.note] if arguments.note else []
    return run_window([*asked, *(["--casebook", arguments.casebook] if arguments.casebook else [])])
