"""How long a casebook of many cases takes to open, list, search and save: printed, never asserted.

Run: python tests/benchmarks/benchmark_casebook.py [number of cases, 10000 unless told] [server URL]
"""

import os
import platform
import random
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

from notereader.casebook import Casebook, Edit
from notereader.casebook.backup import Backups, DailyBackup, first_damage
from notereader.record import Address, Evidence, Fact, Interval, Note, Record, Value, source_of
from notereader.vocabulary import FieldSpec, field_specs

# What was measured, and milliseconds: median and worst.
Row = tuple[str, float, float]

DIGITS = ("thumb", "index", "middle", "ring", "small")
WORDS = (  # noqa: SIM905
    "tendon repaired core suture strand pulley vented intact glide free profundus superficialis zone sheath wound "
    "irrigated closed dressing splint wrist flexion nerve artery bundle identified retrieved stump purchase locking"
).split()


def value_for(spec: FieldSpec, chance: random.Random) -> Value:
    """Return a possible value of a field."""
    low, high = int(spec.low or 0), int(spec.high or 0)
    possible: dict[str, Callable[[], Value]] = {
        "choice": lambda: chance.choice(spec.values),
        "whole": lambda: chance.randint(low, high),
        "number": lambda: chance.randint(low, high),
        "size": lambda: "4-0",
        "interval": lambda: Interval(low=low, high=high),
        "date": lambda: date(2031, 1 + chance.randrange(12), 1 + chance.randrange(28)).isoformat(),
        "yes-no": lambda: chance.random() < 0.5,
        "named": lambda: True,
    }
    return possible[spec.kind]()


def invented(number: int) -> Record:
    """Return a draft of about 70 facts with evidence on a note of 600 words."""
    chance = random.Random(number)
    text = f"Case {number}. " + " ".join(chance.choice(WORDS) for _ in range(600))
    source, digit = source_of(text), chance.choice(DIGITS[1:])
    record = Record(note=Note.of(text, f"case-{number:05d}.txt"))
    entries = [Address("operation"), Address("aftercare"), Address("elements")]
    entries += [Address("repairs", digit, tendon) for tendon in ("FDP", "FDS")]
    entries += [Address("pulleys", digit, pulley) for pulley in ("A2", "A4")]
    for entry in entries:
        for name, spec in field_specs()[entry.group].items():
            start = chance.randrange(len(text) - 20)
            evidence = Evidence.at(text, start, start + 12, source)
            record.put(entry.field_of(name), Fact(value=value_for(spec, chance), evidence=[evidence]))
    return record


def timed(what: str, work: Callable[[], object], times: int = 1) -> Row:
    """Return how long something takes in milliseconds, median and worst."""
    took = []
    for _ in range(times):
        begun = time.perf_counter()
        work()
        took.append((time.perf_counter() - begun) * 1000)
    return what, statistics.median(took), max(took)


def shown(row: Row) -> str:
    """Return one line of the table."""
    what, median, worst = row
    return f"{what:<58}{median:>10.1f}{worst:>10.1f}"


def measure(place: str | Path, cases: int) -> Iterator[Row]:
    """Fill a casebook and measure work on it."""
    book = Casebook(place)
    numbers: list[int] = []
    drafts = [invented(number) for number in range(200)]
    yield timed("add one case", lambda: numbers.append(book.add(drafts[len(numbers) % 200])), cases)
    book.add(Record(note=Note.of("the only needle in it")), title="straw")
    book.close()
    yield timed("open the casebook", lambda: Casebook(place).close(), 5)
    book = Casebook(place)
    yield timed("list 500 cases", lambda: book.cases(), 20)
    yield timed("list all cases", lambda: book.cases(limit=100_000), 3)
    yield timed("list 500 cases in work", lambda: book.cases(state="in work"), 20)
    yield timed("search, everything matches", lambda: book.cases("tendon repaired"), 10)
    yield timed("search, one match", lambda: book.cases("needle"), 10)
    yield timed("search, no match", lambda: book.cases("nothing like it"), 10)
    chance = random.Random(1)
    yield timed("open one case", lambda: book.open(chance.choice(numbers)), 100)
    case = book.open(chance.choice(numbers))
    places = [place for place, _ in case.record.walk()]

    def confirm_one() -> None:
        address = chance.choice(places)
        fact = case.record.fact(address)
        assert fact is not None
        status = "confirmed" if fact.status == "proposed" else "proposed"
        case.apply(Edit(address, fact, fact.model_copy(update={"status": status})), who="ward")

    yield timed("save one edit", confirm_one, 200)
    yield timed("read a history of 200 lines", case.history, 10)
    yield timed("look for changes by others", case.refresh, 100)
    book.close()


def measure_file(path: Path) -> Iterator[Row]:
    """Measure what only a file needs: checking and copying."""
    yield timed("check the whole file", lambda: first_damage(path), 3)
    yield timed("make the daily copy (in the background)", lambda: Backups(path).make(date(2031, 3, 14)))


def main() -> None:
    """Measure as the command line says."""
    cases = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    print(f"{platform.platform()}, Python {platform.python_version()}, {os.cpu_count()} cores; {cases} cases")
    facts = len(list(invented(0).walk()))
    print(f"{f'milliseconds ({facts} facts a case)':<58}{'median':>10}{'worst':>10}")
    # The copy is measured by itself below.
    DailyBackup.remind = lambda self: None  # type: ignore[method-assign]
    if len(sys.argv) > 2:
        for row in measure(sys.argv[2], cases):
            print(shown(row), flush=True)
        return
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "casebook.db"
        for row in (*measure(path, cases), *measure_file(path)):
            print(shown(row))
        print(f"size of the file: {path.stat().st_size / 1e6:.0f} MB")


if __name__ == "__main__":
    main()
