"""What other processes do to a casebook in the tests. Each runs until it is told to stop or is killed."""

from multiprocessing.connection import Connection
from pathlib import Path

from casebook_helpers import A2, SIZE, STRANDS, confirming, correcting

from notereader.casebook import Casebook, ChangedElsewhere, Edit


def edit_until_killed(path: Path, number: int, channel: Connection) -> None:
    """Edit one case without pause; after each edit that returned, send the revision."""
    case = Casebook(path).open(number)
    turn = case.revision
    while True:
        turn += 1
        if case.record.facts_of(A2) is None:
            edit = next(line for line in reversed(case.history()) if line.address == A2 and line.after is None)
            case.apply(Edit(A2, None, edit.before, position=0), who="worker")
        elif turn % 7 == 0:
            case.apply(Edit.dropping(case.record, A2), who="worker")
        elif turn % 3:
            case.apply(correcting(case, STRANDS, 2 + turn % 9), who="worker")
        else:
            there = correcting(case, SIZE, "3-0")
            back = Edit(SIZE, there.after, there.before)
            case.apply_all([there, back], who="worker")
        channel.send(case.revision)


def add_until_killed(path: Path, channel: Connection) -> None:
    """Add cases without pause; after each that returned, send its number."""
    from casebook_helpers import draft

    book = Casebook(path)
    while True:
        channel.send(book.add(draft()))


def correct_once(path: Path, number: int, value: int, channel: Connection) -> None:
    """Correct the strands of a case once and tell."""
    book = Casebook(path)
    case = book.open(number)
    case.apply(correcting(case, STRANDS, value), who="second process")
    book.close()
    channel.send(case.revision)


def correct_in_turn(path: Path, number: int, who: str, times: int, channel: Connection) -> None:
    """Add one to the strands and confirm the size many times, looking again whenever another was quicker."""
    book = Casebook(path, wait_seconds=60)
    case = book.open(number)
    conflicts = 0
    done = 0
    while done < times:
        try:
            case.apply(correcting(case, STRANDS, case.record.fact(STRANDS).value % 16 + 1), who=who)
            done += 1
        except ChangedElsewhere:
            conflicts += 1
            case.refresh()
    case.refresh()
    if who == "first":
        case.apply(confirming(case, SIZE), who=who)
    book.close()
    channel.send(conflicts)
