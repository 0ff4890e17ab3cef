"""Taking a case at the terminal: the note with line numbers, answers line by line, each saved at once."""

import sys
from collections.abc import Iterable, Iterator

from notereader.casebook import ChangedElsewhere, EditRefused
from notereader.practice.attempts import OpenAttempt
from notereader.practice.cases import Case
from notereader.practice.faults import PracticeFault
from notereader.practice.printing import WIDTH, fill, seen
from notereader.practice.sheet import HELP, answer_lines, enter_line
from notereader.practice.typed import hint_of
from notereader.practice.words import tip
from notereader.record import Address, ValueRefused
from notereader.vocabulary import field_specs

_GROUPS = {
    "operation": "the operation",
    "repairs": "a tendon (name finger and tendon)",
    "pulleys": "a pulley (name finger and pulley)",
    "injuries": "another structure (name finger, side and structure)",
    "aftercare": "orders for after the operation",
    "elements": "parts that every note owes",
}


def take(attempt: OpenAttempt, lines: Iterable[str] | None = None) -> tuple[bool, int]:
    """Show the note and take answer lines from the keyboard, or those given, until 'done', 'leave' or the end.

    Return whether the attempt was handed in and how many lines were not understood.
    """
    print(seen("\n".join(_opening(attempt))))
    misunderstood = 0
    for line in _typed() if lines is None else lines:
        word = line.strip().casefold()
        if not word or word.startswith("#"):
            continue
        if word in ("leave", "quit", "exit"):
            return False, misunderstood
        if word in ("done", "hand in"):
            attempt.hand_in()
            return True, misunderstood
        try:
            print(seen(_reply(attempt, line, word)))
        except (PracticeFault, ValueRefused, EditRefused, ChangedElsewhere) as fault:
            misunderstood += 1
            print(seen(f"  not saved: {fault}"))
    return False, misunderstood


def note_lines(case: Case) -> Iterator[str]:
    """Yield the note with line numbers; long lines are wrapped, the layout of short ones (tables) is kept."""
    for number, line in enumerate(case.text.split("\n"), 1):
        yield from fill(line, "      ", f"{number:>4}  ") if len(line) > WIDTH else [f"{number:>4}  {line}".rstrip()]


def _reply(attempt: OpenAttempt, line: str, word: str) -> str:
    if word == "note":
        return "\n".join(note_lines(attempt.case))
    if word == "answers":
        return "\n".join(f"  {entered}" for entered in answer_lines(attempt)) or "  Nothing is entered yet."
    if word == "fields":
        return "\n".join(_field_lines(attempt))
    if word == "help":
        return HELP
    return f"  {enter_line(attempt, line)}"


def _opening(attempt: OpenAttempt) -> Iterator[str]:
    case = attempt.case
    yield f"CASE {case.id}, difficulty {case.difficulty} of 5"
    yield ""
    yield from note_lines(case)
    yield ""
    if attempt.attempt.scope == "again":
        yield "Answer again only these, missed before:"
        yield from (f"  {Address.parse(place).words()}" for place in attempt.attempt.asked)
        yield ""
    else:
        yield "Enter what the note says of this operation, what matters and is left unsaid, any contradiction,"
        yield "and the three questions worth asking the surgeon."
    yield 'One line each, for instance:  ring FDP strands: 4 "four-strand"'
    yield "'help' explains the lines, 'fields' lists what can be entered, 'done' hands in, 'leave' keeps it for later."
    if entered := sum(1 for _ in answer_lines(attempt)):
        yield f"{entered} answers are there from before; 'answers' shows them."


def _field_lines(attempt: OpenAttempt) -> Iterator[str]:
    for group, specs in field_specs().items():
        if group == "elements" and attempt.attempt.scope != "whole":
            continue
        yield f"{_GROUPS[group]}:"
        if group == "elements":
            yield f"  {', '.join(spec.label.lower() for spec in specs.values())}: yes"
            continue
        for name, spec in specs.items():
            label = spec.label.lower()
            short = name.replace("_", " ")
            called = "" if label == short else f" ({label})"
            what = f"{short}{called}: {hint_of(spec)}. {tip(f'{group}.{name}')}".rstrip()
            yield from fill(what, "      ", "  ")


def _typed() -> Iterator[str]:
    """Yield what is typed until the end of the input; a prompt only where somebody sits there."""
    prompt = "> " if sys.stdin.isatty() else ""
    while True:
        try:
            yield input(prompt)
        except (EOFError, KeyboardInterrupt):
            return
